//! The log of a month on paper, with its totals.

use super::{COLUMNS, Seen, cells, told};
use crate::answer::Value;
use crate::form::log::Sought;
use crate::page::components::print_part;
use crate::page::day::month_in;
use crate::page::log::history;
use crate::page::shared::Shared;
use crate::page::views::site::sheet;
use crate::site::log::questions::{By, Use, usage};
use crate::site::log::{Current, Deviation, Id, Kind, Part, Record, State, Task};
use crate::units::{Kind as Shown, Volume};
use crate::words::Argument;
use yew::prelude::*;

/// The sheet of the month that is looked at, which unfolds on demand; nothing while no month is chosen.
pub fn month(seen: &Seen) -> Html {
    let (shared, sought) = (&seen.shared, &seen.draft.sought);
    if sought.month.is_empty() {
        return html! { <p class="hint">{ shared.say("log-print-hint") }</p> };
    }
    html! {
        <details class="more" id="log-paper">
            <summary>{ shared.say("log-paper") }</summary>
            <div class="buttons">{ print_part(shared, "log-print", "log") }</div>
            <div data-part="log"><Paper seen={seen.clone()} /></div>
        </details>
    }
}

/// What the sheet draws from.
#[derive(Properties, PartialEq)]
struct PaperProps {
    seen: Seen,
}

/// The sheet; who corrected what and why is read from the records of the fills that it shows.
#[component]
fn Paper(props: &PaperProps) -> Html {
    let (shared, sought, held) = (&props.seen.shared, &props.seen.draft.sought, &props.seen.held);
    let (fills, heads) = (&held.view.fills, &held.heads);
    let filter = sought.filter();
    let corrections = use_state(Vec::<Record>::new);
    {
        let corrections = corrections.clone();
        let of = fills.iter().filter(|one| one.is_corrected() && filter.fits(one));
        let of: Vec<(Id, Vec<Id>)> = of.map(|one| (one.id.clone(), one.corrections.clone())).collect();
        use_effect_with(of, move |of| {
            let of = of.clone();
            yew::platform::spawn_local(async move {
                let mut found = Vec::new();
                for (id, _) in of {
                    found.extend(history(&id).await.into_iter().filter(tells));
                }
                corrections.set(found);
            });
        });
    }
    let counted: Vec<&Current> = filter.of(fills).collect();
    let shown: Vec<&Current> = fills.iter().filter(|one| filter.fits(one)).collect();
    let month = ("month", Argument::text(month_in(&shared.words, &sought.month)));
    let named = [
        (
            "seek-product",
            shown.first().map(|one| &one.fill.product.name).filter(|_| !sought.product.is_empty()),
        ),
        (
            "seek-machine",
            shown.first().map(|one| &one.fill.machine.name).filter(|_| !sought.machine.is_empty()),
        ),
    ];
    let only: Vec<String> = named
        .into_iter()
        .filter_map(|(key, name)| Some(shared.words.said_of(&shared.say(key), name?)))
        .chain((!sought.who.is_empty()).then(|| shared.words.said_of(&shared.say("seek-who"), &sought.who)))
        .collect();
    let is_part = Sought { month: sought.month.clone(), ..Sought::default() } != *sought;
    let content = html! {
        <>
            <h2>{ shared.tell("log-paper-title", std::slice::from_ref(&month)) }</h2>
            if is_part { <p>{ shared.say("log-paper-part") }{ " " }{ only.join("; ") }</p> }
            { totals(shared, &counted) }
            { crate::page::views::table(shared, "log-paper-table", &columns(), shown.iter().map(|one| row(shared, one, &corrections)).collect()) }
            <h3>{ shared.say("log-heads") }</h3>
            <ul class="plain">{ for heads.iter().map(|end| html! { <li>{ format!("{}/{} {}", end.device, end.number, end.own) }</li> }) }</ul>
        </>
    };
    html! { <div class="flowing">{ sheet(shared, shared.tell("log-paper-title", &[month]), content) }</div> }
}

fn totals(shared: &Shared, fills: &[&Current]) -> Html {
    let columns = [
        "log-column-product",
        "log-column-fills",
        "log-column-used",
        "log-column-water",
        "log-column-uncounted",
        "log-column-compared-planned",
        "log-column-compared",
        "log-column-share",
    ];
    let show = |volume| shared.show(Value::new(volume, Shown::Fill));
    let row = |one: &Use| {
        html! {
            <tr>
                <th scope="row">{ &one.name }</th>
                <td>{ one.fills }</td>
                <td>{ show(one.used) }</td>
                <td>{ for (one.water > Volume::ZERO).then(|| show(one.water)) }</td>
                <td>{ one.unknown }</td>
                <td>{ for (one.compared > 0).then(|| show(one.compared_planned)) }</td>
                <td>{ for (one.compared > 0).then(|| show(one.compared_measured)) }</td>
                <td>{ for one.share().map(|share| told::share(shared, share)) }</td>
            </tr>
        }
    };
    let all = usage(fills.iter().copied(), By::Product);
    html! {
        <>
            { crate::page::views::table(shared, "log-paper-totals", &columns, all.iter().map(row).collect()) }
            <p>{ shared.tell("log-assumed-in", &[("n", told::count(shared, all.iter().map(|one| one.assumed).sum()))]) }</p>
        </>
    }
}

/// Whether a correction says more than what is ticked off.
fn tells(record: &Record) -> bool {
    record.kind == Kind::Correction && record.changes.keys().any(|field| field != "checklist")
}

fn row(shared: &Shared, one: &Current, corrections: &[Record]) -> Html {
    let fill = &one.fill;
    let own = corrections.iter().filter(|record| one.corrections.contains(&record.id()));
    html! {
        <tr class={fill.struck.then_some("struck")} data-fill={one.id.to_string()}>
            <th scope="row">
                { unbroken(shared, &one.said) }
                if fill.struck { { " " }{ shared.say("log-struck") } }
            </th>
            { cells(one, Html::default()) }
            <td>{ otherwise(shared, one) }{ for own.map(|record| html! { <p class="corrected">{ corrected(shared, record) }</p> }) }</td>
        </tr>
    }
}

/// A day and a time that break nowhere.
fn unbroken(shared: &Shared, when: &str) -> String {
    told::moment(shared, when).replace(' ', "\u{a0}").replace('-', "\u{2011}")
}

/// Who corrected it, when and why.
fn corrected(shared: &Shared, record: &Record) -> String {
    let struck = record.changes.get("struck").map(|struck| struck.as_bool() == Some(true));
    let key = match struck {
        Some(true) => "log-paper-struck",
        Some(false) => "log-paper-unstruck",
        None => "log-paper-corrected",
    };
    let said = |part: Part, none: &str| match record.words.state(part, &record.seals) {
        State::Whole => record.words.get(part).text.clone(),
        State::None => shared.say(none),
        State::Blanked => shared.say("log-blanked"),
        State::Altered => shared.say("log-altered-text"),
    };
    let told = [
        ("when", unbroken(shared, &record.when)),
        ("who", said(Part::By, "log-paper-nobody")),
        ("why", said(Part::Why, "log-paper-no-why")),
    ];
    shared.tell(key, &told.map(|(name, text)| (name, Argument::text(text))))
}

/// The columns of a fill on paper: those of the screen, and what was done otherwise.
fn columns() -> Vec<&'static str> {
    COLUMNS.into_iter().chain(["log-column-otherwise"]).collect()
}

/// What was done otherwise and why, what was left undone, and notes.
fn otherwise(shared: &Shared, one: &Current) -> String {
    let fill = &one.fill;
    let deviation = match fill.deviation {
        Deviation::None => String::new(),
        other => shared.say(&format!("log-deviation-{}", other.code().replace('_', "-"))),
    };
    let undone: Vec<&str> = fill
        .checklist
        .tasks()
        .into_iter()
        .filter(|(_, task)| *task == Task::NotDone)
        .map(|(code, _)| code)
        .collect();
    let undone = if undone.is_empty() {
        String::new()
    } else {
        shared.words.said_of(&shared.say("log-state-not-done"), &told::tasks(shared, &undone))
    };
    let texts = [deviation, one.reason.to_string(), undone, one.notes.to_string()];
    texts.into_iter().filter(|text| !text.is_empty()).collect::<Vec<_>>().join("; ")
}
