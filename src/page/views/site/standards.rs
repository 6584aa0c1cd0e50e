//! The standards of the site: written, checked, published, replaced.

mod checked;

pub use checked::checked;

use crate::answer::Value;
use crate::form::action::{Line, Shelf, StandardLine};
use crate::form::site::finish::dilution::parts;
use crate::form::site::in_force::{Phase, phase};
use crate::form::site::library::{DILUTION, check};
use crate::form::site::{Act, changed_since};
use crate::form::{Action, Field};
use crate::page::components::{
    Choice, Text, button, choice, loose_field, named, number_field, switch, text_field,
};
use crate::page::focus;
use crate::page::shared::Shared;
use crate::site::{Machine, Record, Standard, Standing, says_why};
use crate::units::{Kind, System};
use crate::words::Argument;
use yew::prelude::*;

/// The list of standards and the one asked about, to write or to read.
pub fn writing(shared: &Shared) -> Html {
    let standards = &shared.typed.site.standards;
    let mut order: Vec<&Standard> = standards.iter().collect();
    order.sort_by_key(|one| match phase(&shared.typed, one) {
        Phase::InForce => 0,
        Phase::Waits => 1,
        Phase::Draft => 2,
        Phase::Replaced => 3,
    });
    html! {
        <section id="site-standards" tabindex="-1" aria-labelledby="standards-heading">
            <h2 id="standards-heading">{ shared.say("standards") }</h2>
            if standards.is_empty() { <p>{ shared.say("standards-none") }</p> }
            <ul class="records">{ for order.into_iter().map(|one| line(shared, one)) }</ul>
            <div class="buttons">{ begun(shared) }</div>
            { shared.typed.standard().map(|standard| match standard.standing {
                Standing::Draft => draft(shared, standard),
                Standing::InForce | Standing::Replaced => published(shared, standard),
            }).unwrap_or_default() }
        </section>
    }
}

/// What people call a standard: its own name, or its floor.
pub fn title(shared: &Shared, standard: &Standard) -> String {
    let floor = shared.typed.site.floors.iter().find(|one| one.id == standard.floor);
    let own = [standard.name.trim(), floor.map_or("", |floor| floor.name.trim())];
    let name = own.into_iter().find(|name| !name.is_empty()).unwrap_or_default();
    let version = Argument::text(standard.version.to_string());
    shared.tell("standard-title", &[("name", Argument::text(name)), ("version", version)])
}

/// A dilution as it was written, and in parts of water where that is another way to say it.
pub fn diluted(shared: &Shared, dilution: &str, system: System) -> String {
    let text = Argument::text(dilution.trim());
    match parts(dilution, system) {
        Some(parts) => {
            let ratio = shared.argument(Value::plain(parts, Kind::Ratio));
            shared.tell("fits-ratio", &[("dilution", text), ("ratio", ratio)])
        }
        None => dilution.trim().to_owned(),
    }
}

/// The units that a standard's dilution means: a draft is read in those of whoever writes it.
pub fn read_in(shared: &Shared, standard: &Standard) -> System {
    if standard.standing == Standing::Draft { shared.system() } else { standard.system }
}

fn line(shared: &Shared, standard: &Standard) -> Html {
    let chosen = shared.typed.standard().is_some_and(|one| one.id == standard.id);
    let id = standard.id.clone();
    let onclick = shared.on(move |_: MouseEvent| Action::Pick(Shelf::Standard, id.clone()));
    let standing = format!("standing-{}", phase(&shared.typed, standard).code().replace('_', "-"));
    let day = shared.day(&standard.effective);
    html! {
        <li key={standard.id.clone()}>
            <button type="button" name="standard-open" data-id={standard.id.clone()} aria-pressed={chosen.to_string()} {onclick}>
                { title(shared, standard) }
                <span class="retired">{ shared.tell(&standing, &[("day", day)]) }</span>
            </button>
        </li>
    }
}

/// The way to a new draft: for the floor and product asked about, at the dilution of the label.
fn begun(shared: &Shared) -> Html {
    let typed = shared.typed.clone();
    let act = shared.act.clone();
    let onclick = move |_: MouseEvent| {
        let (Some(floor), Some(product)) = (typed.floor(), typed.product()) else { return };
        act.emit(
            Act::Draft {
                floor: floor.id.clone(),
                product: product.id.clone(),
                dilution: product.label.clone(),
            }
            .action(),
        );
        focus::soon("standard-name".to_owned());
    };
    html! { <button type="button" name="standard-add" {onclick}>{ shared.say("standard-add") }</button> }
}

fn draft(shared: &Shared, standard: &Standard) -> Html {
    let outcome = check(&shared.typed, Shelf::Standard, shared.marks());
    let text = |line: StandardLine, key: &'static str, value: &str, tall: bool| {
        let short = line == StandardLine::Reason && !value.trim().is_empty() && !says_why(value);
        let mistake =
            outcome.at(key).map(|what| shared.words.trouble(what, &shared.say(key), None, ("", "")));
        let mistake = mistake.or_else(|| short.then(|| shared.say("reason-short")));
        let text = Text {
            line: Line::Rule(line),
            name: key.to_owned(),
            key,
            value: value.to_owned(),
            tall,
            mistake,
        };
        text_field(shared, text)
    };
    let one_of = |shelf: Shelf, name: &'static str, chosen: &str| {
        let mut options = named(shared, shelf);
        if !options.iter().any(|(id, _)| id == chosen) {
            options.insert(0, (chosen.to_owned(), shared.say(&format!("{name}-none"))));
        }
        Choice { name: name.into(), label: shared.say(name), options, chosen: chosen.to_owned(), hint: None }
    };
    let number = |field: Field| number_field(shared, &outcome, field, None);
    let gone = standard.id.clone();
    html! {
        <>
            <div class="fields">
                { text(StandardLine::Name, "standard-name", &standard.name, false) }
                { choice(shared, one_of(Shelf::Floor, "standard-floor", &standard.floor), |id| Act::StandardFloor(id).action()) }
                { choice(shared, one_of(Shelf::Product, "standard-product", &standard.product), |id| Act::StandardProduct(id).action()) }
                { text(StandardLine::Dilution, DILUTION, &standard.dilution, false) }
                { text(StandardLine::Pad, "standard-pad", &standard.pad, false) }
                { number(Field::StandardContact) }
                { number(Field::StandardFrequency) }
                { switch(shared, "standard-rinse", shared.say("standard-rinse"), standard.rinse, |on| Act::Rinse(on).action()) }
                { text(StandardLine::Order, "standard-order", &standard.order, true) }
                { text(StandardLine::Ppe, "standard-ppe", &standard.ppe, true) }
                { text(StandardLine::Effective, "standard-effective", &standard.effective, false) }
                { text(StandardLine::Author, "standard-author", &standard.author, false) }
                { text(StandardLine::Reason, "standard-reason", &standard.reason, true) }
            </div>
            { machines(shared, standard) }
            <div class="buttons">
                { button(shared, "standard-remove", shared.say("standard-remove"),
                    move || Act::Discard(Shelf::Standard, gone.clone()).action()) }
            </div>
        </>
    }
}

/// Which machines it is not for, and why: a tick each of those in use, and of others that it names.
fn machines(shared: &Shared, standard: &Standard) -> Html {
    let offered = |machine: &&Machine| !machine.retired || standard.left_out(&machine.id).is_some();
    let one = |(index, machine): (usize, &Machine)| {
        let number = index + 1;
        let place = standard.leaves_out.iter().position(|one| one.machine == machine.id);
        let id = machine.id.clone();
        let told = |key: &str| shared.tell(key, &[("machine", Argument::text(machine.name.clone()))]);
        html! {
            <>
                { switch(shared, format!("leave-{number}"), told("leave"), place.is_some(), move |out| Act::LeaveOut(id.clone(), out).action()) }
                { place.map(|place| loose_text(shared, format!("leave-{number}-reason"), told("leave-reason"), place, &standard.leaves_out[place].reason)).unwrap_or_default() }
            </>
        }
    };
    let machines = shared.typed.site.machines.iter().filter(offered).enumerate();
    html! {
        <fieldset class="settings">
            <legend>{ shared.say("standard-left-out") }</legend>
            <p class="hint">{ shared.say("standard-left-out-hint") }</p>
            { for machines.map(one) }
        </fieldset>
    }
}

/// Why a machine is left out, from 0.
fn loose_text(shared: &Shared, name: String, label: String, place: usize, reason: &str) -> Html {
    let mistake = (!says_why(reason)).then(|| shared.say("reason-short"));
    let oninput = shared.on(move |text| Action::Text(Line::LeftOut(place), text));
    loose_field(name, label, reason.to_owned(), mistake, oninput)
}

/// The machines that a standard is not for, each with the reason.
pub fn left_out(shared: &Shared, standard: &Standard) -> Html {
    if standard.leaves_out.is_empty() {
        return Html::default();
    }
    let name = |id: &str| {
        let machine = shared.typed.site.machines.iter().find(|one| one.id() == id);
        machine.map_or_else(|| shared.say("paper-gone"), |machine| machine.name.clone())
    };
    html! {
        <>
            <h3>{ shared.say("standard-left-out") }</h3>
            <ul>{ for standard.leaves_out.iter().map(|one| html! {
                <li data-left-out={one.machine.clone()}><strong>{ shared.words.headed(&name(&one.machine)) }</strong>{ " " }{ &one.reason }</li>
            }) }</ul>
        </>
    }
}

/// What was published is read, not written: the next version takes its place.
fn published(shared: &Shared, standard: &Standard) -> Html {
    let site = &shared.typed.site;
    let name = |found: Option<&str>| found.unwrap_or_default().to_owned();
    let floor = site.floors.iter().find(|one| one.id == standard.floor).map(|one| one.name.as_str());
    let product = site.products.iter().find(|one| one.id == standard.product).map(|one| one.name.as_str());
    let rows = [
        ("standard-floor", name(floor)),
        ("standard-product", name(product)),
        ("standard-dilution", diluted(shared, &standard.dilution, standard.system)),
        ("standard-pad", standard.pad.clone()),
        ("standard-contact", shared.words.entry(&standard.contact)),
        ("standard-frequency", shared.words.entry(&standard.frequency)),
        ("standard-rinse", if standard.rinse { shared.say("yes") } else { shared.say("no") }),
        ("standard-order", standard.order.clone()),
        ("standard-ppe", standard.ppe.clone()),
        ("standard-effective", standard.effective.clone()),
        ("standard-published", standard.published.clone()),
        ("standard-author", standard.author.clone()),
        ("standard-reason", standard.reason.clone()),
    ];
    let next = {
        let act = shared.act.clone();
        move |_: MouseEvent| {
            act.emit(Act::Revise.action());
            focus::soon("standard-name".to_owned());
        }
    };
    html! {
        <>
            if matches!(phase(&shared.typed, standard), Phase::InForce | Phase::Waits) && changed_since(&shared.typed, standard) {
                <div class="remark" data-remark="standard-changed"><p>{ shared.say("standard-changed") }</p></div>
            }
            <dl class="standard">
                { for rows.into_iter().filter(|(_, value)| !value.is_empty()).map(|(key, value)| html! {
                    <><dt>{ shared.say(key) }</dt><dd>{ value }</dd></>
                }) }
            </dl>
            { left_out(shared, standard) }
            if !standard.overrides.is_empty() {
                <h3>{ shared.say("standard-overrides") }</h3>
                <ul>{ for standard.overrides.iter().filter(|one| !one.reason.trim().is_empty()).map(|one| html! {
                    <li>{ shared.words.said_of(&checked::heading(shared, &one.finding), &one.reason) }</li>
                }) }</ul>
            }
            <div class="buttons">
                <button type="button" name="standard-next" onclick={next}>{ shared.say("standard-next") }</button>
            </div>
        </>
    }
}
