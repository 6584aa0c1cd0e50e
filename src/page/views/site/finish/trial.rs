//! Trial patches: what to mix, what was seen, and what that says.

use super::fits::reasons;
use crate::answer::Value;
use crate::form::Field;
use crate::form::action::{Line, Shelf};
use crate::form::site::Act;
use crate::form::site::finish::end_key;
use crate::form::site::finish::trial::{DATE, FLOOR, Mix, PRODUCT, Tried, WET_SLIP, WET_SLIP_SOURCE};
use crate::form::site::library::shares_name;
use crate::page::components::{
    Choice, Text, assumptions, choice, computed, computed_as, number_field, picker, text_field,
    troubles_beside, warnings,
};
use crate::page::shared::Shared;
use crate::page::views::site::library::shelf_buttons;
use crate::page::views::site::standards::diluted;
use crate::page::views::table;
use crate::site::{Film, Patch, Record};
use crate::units::{Kind, System};
use crate::words::Argument;
use yew::prelude::*;

/// The trial asked about.
pub fn trial(shared: &Shared, tried: &Tried) -> Html {
    let Some(trial) = shared.typed.trial() else {
        return html! { <><p>{ shared.say("trial-none") }</p>{ shelf_buttons(shared, Shelf::Trial, "trial-name") }</> };
    };
    let text = |line, name: &'static str, value: &str| {
        let mistake =
            tried.outcome.at(name).map(|what| shared.words.trouble(what, &shared.say(name), None, ("", "")));
        let same = name == "trial-name" && shares_name(&shared.typed, Shelf::Trial, trial);
        let mistake = mistake.or_else(|| same.then(|| shared.say("mistake-same-name")));
        let value = value.to_owned();
        text_field(shared, Text { line, name: name.to_owned(), key: name, value, tall: false, mistake })
    };
    html! {
        <>
            { troubles_beside(shared, &tried.outcome) }
            <div class="fields">
                { picker(shared, Shelf::Trial) }
                { text(Line::TrialName, "trial-name", &trial.name) }
                { record(shared, FLOOR, &trial.floor, &shared.typed.site.floors, Act::TrialFloor) }
                { record(shared, PRODUCT, &trial.product, &shared.typed.site.products, Act::TrialProduct) }
                { text(Line::TrialDate, DATE, &trial.date) }
                { text(Line::TrialBy, "trial-by", &trial.by) }
                { number_field(shared, &tried.outcome, Field::Batch, None) }
            </div>
            { shelf_buttons(shared, Shelf::Trial, "trial-name") }
            <p>{ shared.say("trial-how") }</p>
            { mixes(shared, tried) }
            { warnings(shared, &tried.outcome.answer.remarks) }
            { for trial.patches.iter().enumerate().filter_map(|(index, seen)| {
                let mix = tried.mixes.iter().find(|mix| mix.patch == index);
                // What was seen stays in sight while nothing can be mixed.
                (mix.is_some() || tried.mixes.is_empty()).then(|| patch(shared, tried, index, seen, mix))
            }) }
            { slip_source(shared) }
            { assumptions(shared, &tried.outcome.answer.remarks) }
        </>
    }
}

/// A list of records of which one belongs to the trial.
fn record<T: Record>(
    shared: &Shared,
    name: &'static str,
    chosen: &str,
    all: &[T],
    act: fn(String) -> Act,
) -> Html {
    let offered = all.iter().filter(|one| !one.retired() || one.id() == chosen);
    let list = Choice {
        name: name.into(),
        label: shared.say(name),
        options: offered.map(|one| (one.id().to_owned(), one.name().to_owned())).collect(),
        chosen: chosen.to_owned(),
        hint: None,
    };
    choice(shared, list, move |id| act(id).action())
}

/// A dilution under the name of its place in the range.
pub fn titled(shared: &Shared, key: &str, mix: &Mix) -> String {
    let end = Argument::text(shared.say(end_key(mix.aim)));
    let dilution = diluted(shared, &mix.dilution, shared.system());
    shared.tell(key, &[("end", end), ("dilution", Argument::text(dilution))])
}

/// An amount in the reader's units and in the other ones: a small cylinder has millilitres.
fn both(shared: &Shared, value: Value) -> String {
    let other = if shared.system() == System::Metric { System::Us } else { System::Metric };
    let (one, other) = (shared.show(value), shared.words.value(value, other));
    shared.tell("trial-two", &[("one", Argument::text(other)), ("other", Argument::text(one))])
}

fn mixes(shared: &Shared, tried: &Tried) -> Html {
    if tried.mixes.is_empty() {
        return Html::default();
    }
    let row = |mix: &Mix| {
        let name = |what: &str| format!("finish.patch.{}.{what}", mix.patch + 1);
        let cell = |what: &str, value: Option<Value>| {
            html! { <td>{ for value.map(|value| computed(shared, name(what), value)) }</td> }
        };
        let rounded = mix.rounded.map_or_else(
            || html! { { shared.say("trial-too-little") } },
            |value| computed_as(name("rounded"), value, both(shared, value)),
        );
        html! {
            <tr class={(tried.suggested == Some(mix.patch)).then_some("chosen")}>
                <th scope="row">{ titled(shared, "trial-patch", mix) }</th>
                <td>{ rounded }</td>
                <td>{ for mix.water.map(|value| computed_as(name("water"), value, both(shared, value))) }</td>
                { cell("exact", Some(mix.amount)) }
                { cell("makes", mix.makes) }
                <td data-suits={mix.candidate.suits.key()}>{ shared.say(mix.candidate.suits.key()) }</td>
                <td>{ reasons(shared, &mix.candidate) }</td>
            </tr>
        }
    };
    let columns = [
        "column-patch",
        "column-concentrate",
        "column-water",
        "column-exact",
        "column-makes",
        "column-fits",
        "column-why",
    ];
    table(shared, "trial-table", &columns, tried.mixes.iter().map(row).collect())
}

/// What was seen on one patch.
fn patch(shared: &Shared, tried: &Tried, index: usize, record: &Patch, mix: Option<&Mix>) -> Html {
    let number = index + 1;
    let title = mix.map_or_else(|| shared.say(end_key(record.aim)), |mix| titled(shared, "trial-patch", mix));
    let film = Choice {
        name: format!("patch-{number}-film").into(),
        label: shared.say("patch-film"),
        options: Film::ALL
            .iter()
            .map(|one| (one.code().to_owned(), shared.say(&format!("film-{}", one.code().replace('_', "-")))))
            .collect(),
        chosen: record.film.code().to_owned(),
        hint: None,
    };
    let seen = move |code: String| Act::Film(index, Film::from_code(&code).unwrap_or_default()).action();
    let noted = Text {
        line: Line::PatchNote(index),
        name: format!("patch-{number}-note"),
        key: "patch-note",
        value: record.note.clone(),
        tall: false,
        mistake: None,
    };
    html! {
        <fieldset>
            <legend>{ title }</legend>
            <div class="fields">
                { choice(shared, film, seen) }
                { number_field(shared, &tried.outcome, Field::PatchGloss(index), None) }
                { number_field(shared, &tried.outcome, Field::PatchSlip(index), None) }
                { text_field(shared, noted) }
            </div>
        </fieldset>
    }
}

fn slip_source(shared: &Shared) -> Html {
    let told = [
        ("least", shared.argument(Value::plain(WET_SLIP, Kind::Ratio))),
        ("source", Argument::text(WET_SLIP_SOURCE.cite)),
    ];
    html! { <p class="source">{ shared.tell("trial-slip-source", &told) }</p> }
}
