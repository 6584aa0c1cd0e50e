//! A product: its label and how that was read, its foam, its cautions.

use crate::chemistry::family::Family;
use crate::chemistry::ghs::SignalWord;
use crate::form::action::{Line, Shelf};
use crate::form::cautions::mixing::{NOT_KNOWN, RINSED};
use crate::form::cautions::ph_is_wrong;
use crate::form::fill::{LABEL, STANDARD};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{
    Choice, Text, button, choice, fold, named, number_field, pick, shelf_buttons, switch, text_field,
};
use crate::page::shared::Shared;
use crate::site::Product;
use crate::trade::label;
use crate::words::Argument;
use yew::prelude::*;

fn text(line: Line, key: &'static str, value: &str, tall: bool) -> Text {
    Text { line, name: key.to_owned(), key, value: value.to_owned(), tall, mistake: None }
}

/// The dilution as the label writes it, with the other readings to choose from.
pub fn label_field(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(product) = shared.typed.product() else { return Html::default() };
    let mistake =
        outcome.at(LABEL).map(|what| shared.words.trouble(what, &shared.say(LABEL), None, ("", "")));
    let (title, readings) = match label::read(&product.label, shared.system()) {
        Ok(label) => ("label-others", label.others),
        Err(mistake) => ("label-readings", mistake.readings().to_vec()),
    };
    // Said in the reader's language; what goes into the label is in the label's.
    let choose = |reading: &String| {
        let text = reading.clone();
        button(shared, "label-reading", (shared.meant)(shared, reading), move || {
            Action::Text(Line::Label, text.clone())
        })
    };
    html! {
        <div>
            { text_field(shared, Text { mistake, ..text(Line::Label, LABEL, &product.label, false) }) }
            if !readings.is_empty() && !shared.forbids(&Action::Text(Line::Label, String::new())) {
                <p class="readings"><span>{ shared.say(title) }</span>{ for readings.iter().map(choose) }</p>
            }
        </div>
    }
}

fn foam_choice(shared: &Shared, product: &Product) -> Html {
    pick(shared, "product-foam", "foam-class", product.foam, Action::Foam)
}

fn signal_choice(shared: &Shared, product: &Product) -> Html {
    let list = Choice {
        name: "product-signal".into(),
        label: shared.say("product-signal"),
        options: SIGNALS.map(|one| (one.key().to_owned(), shared.say(one.key()))).to_vec(),
        chosen: product.signal.key().to_owned(),
        hint: Some(shared.say("product-signal-hint")),
    };
    choice(shared, list, |key| {
        Action::Signal(SIGNALS.into_iter().find(|one| one.key() == key).unwrap_or(SignalWord::Unknown))
    })
}

/// In the order in which a label is read: nothing known yet comes first.
const SIGNALS: [SignalWord; 4] =
    [SignalWord::Unknown, SignalWord::None, SignalWord::Warning, SignalWord::Danger];

/// Name and foam class.
pub fn product_basics(shared: &Shared, outcome: &Outcome) -> Html {
    if shared.typed.product().is_none() {
        return Html::default();
    }
    fold(shared, outcome, "product-more", &[], basics)
}

fn basics(shared: &Shared, _: &Outcome) -> Html {
    let Some(product) = shared.typed.product() else { return Html::default() };
    html! {
        <>
            <div class="fields">
                { text_field(shared, text(Line::ProductName, "product-name", &product.name, false)) }
                { foam_choice(shared, product) }
            </div>
            <p class="hint">{ shared.say("product-more-hint") }</p>
            { shelf_buttons(shared, Shelf::Product) }
        </>
    }
}

/// Whether its active substance is given by mass, which needs the density.
pub fn by_mass(shared: &Shared) -> bool {
    shared.typed.product().is_some_and(|product| product.active.unit == "percent_ww")
}

/// What beside the label says how much of it to use: the site's standard, a law, the contact time; and
/// its active substance, where no other place asks for that.
pub fn product_rules(shared: &Shared, outcome: &Outcome, active: bool) -> Html {
    if shared.typed.product().is_none() {
        return Html::default();
    }
    let mut names = vec![STANDARD, "product-minimum", "product-contact"];
    if active {
        names.extend(["product-active", "product-density"]);
    }
    fold(shared, outcome, "product-rules", &names, move |shared, outcome| rules(shared, outcome, active))
}

fn rules(shared: &Shared, outcome: &Outcome, active: bool) -> Html {
    let Some(product) = shared.typed.product() else { return Html::default() };
    let mistake =
        outcome.at(STANDARD).map(|what| shared.words.trouble(what, &shared.say(STANDARD), None, ("", "")));
    let rule = |field: Field| number_field(shared, outcome, field, None);
    html! {
        <div class="fields">
            { text_field(shared, Text { mistake, ..text(Line::Standard, STANDARD, &product.standard, false) }) }
            { rule(Field::Minimum) }
            { rule(Field::Contact) }
            if active { { active_fields(shared, outcome) } }
        </div>
    }
}

/// Its active substance, which a strip or a drop test counts.
pub fn active_fields(shared: &Shared, outcome: &Outcome) -> Html {
    html! {
        <>
            { number_field(shared, outcome, Field::Active, None) }
            if by_mass(shared) { { number_field(shared, outcome, Field::Density, None) } }
        </>
    }
}

/// All that its label and safety data sheet say about handling it.
pub fn product_cautions(shared: &Shared) -> Html {
    let Some(product) = shared.typed.product() else { return Html::default() };
    let ph = |line: Line, key: &'static str, value: &str| {
        let mistake = ph_is_wrong(value, shared.marks()).then(|| shared.say("mistake-ph"));
        text_field(shared, Text { mistake, ..text(line, key, value, false) })
    };
    let found: Vec<String> = product.found_kinds().iter().map(|one| shared.say(one.key())).collect();
    let family = |family: Family| {
        let (name, on) = (format!("product-{}", family.key()), product.families.contains(&family));
        switch(shared, name, shared.say(family.key()), on, move |is| Action::Family(family, is))
    };
    html! {
        <>
            <div class="fields">
                { text_field(shared, text(Line::ProductName, "product-name", &product.name, false)) }
                { foam_choice(shared, product) }
                { signal_choice(shared, product) }
                { ph(Line::Ph, "product-ph", &product.ph) }
                { ph(Line::PhNeat, "product-ph-neat", &product.ph_neat) }
                { pick(shared, "product-reserve", "reserve", product.reserve, Action::Reserve) }
                { text_field(shared, text(Line::Codes, "product-codes", &product.codes, true)) }
                { text_field(shared, text(Line::Notes, "product-notes", &product.notes, true)) }
            </div>
            <fieldset>
                <legend>{ shared.say("product-families") }</legend>
                <p class="hint">{ shared.say("product-families-hint") }</p>
                <div class="switches">{ for Family::ALL.iter().copied().map(family) }</div>
                if !found.is_empty() { <p class="unknown">{ shared.tell("found-kinds", &[("kinds", Argument::text(found.join(", ")))]) }</p> }
            </fieldset>
        </>
    }
}

/// What was in the tank before: its residue counts as meeting.
pub fn tank_before(shared: &Shared) -> Html {
    let mut options = named(shared, Shelf::Product);
    let beside =
        [("", "tank-before-unsaid"), (RINSED, "tank-before-none"), (NOT_KNOWN, "tank-before-not-known")];
    // The last one first, since each is put at the head.
    for (id, key) in beside.into_iter().rev() {
        options.insert(0, (id.to_owned(), shared.say(key)));
    }
    // One answer, for the machine that is asked about: another one is asked anew.
    let label = match shared.typed.machine().map(|machine| machine.name.clone()) {
        Some(name) => shared.tell("tank-before-in", &[("machine", Argument::text(name))]),
        None => shared.say("tank-before"),
    };
    let list = Choice {
        name: "tank-before".into(),
        label,
        options,
        chosen: shared.typed.ask.before.clone(),
        hint: None,
    };
    choice(shared, list, Action::Before)
}
