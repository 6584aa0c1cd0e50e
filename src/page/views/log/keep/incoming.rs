//! A file from elsewhere: what it would bring is shown, then taken or left.

use super::super::fields::press;
use super::super::told;
use super::KeepProps;
use crate::page::focus;
use crate::page::log::{self, Incoming, NotCompared, compare};
use crate::page::shared::Shared;
use crate::page::views::site::refusal;
use crate::site::log::{Conflict, Id, LineFlaw, Record};
use crate::words::Argument;
use gloo::file::File;
use gloo::file::callbacks::{FileReader, read_as_bytes};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// So many conflicts are shown side by side.
const SHOWN: usize = 50;

/// The id of the heading of this part. It takes the focus when the buttons below it go: how many were taken is only
/// told, below it, when all of them are.
const HEADING: &str = "log-in";

/// What became of the file.
#[derive(Clone, Default, PartialEq)]
enum Step {
    #[default]
    None,
    Reading,
    Refused(String),
    Compared(Incoming),
    Left,
}

/// Opens a file, compares it, takes it.
#[component]
pub fn Taking(props: &KeepProps) -> Html {
    let shared = &props.seen.shared;
    let step = use_state(Step::default);
    let reader = use_mut_ref(|| None::<FileReader>);
    let onchange = {
        let (step, shared) = (step.clone(), shared.clone());
        move |event: Event| {
            let input: HtmlInputElement = event.target_unchecked_into();
            let Some(file) = input.files().and_then(|files| files.get(0)).map(File::from) else { return };
            if file.size() > crate::site::log::MOST_BYTES as u64 {
                // Never read into memory.
                input.set_value("");
                return step.set(Step::Refused(shared.say("log-file-too-big")));
            }
            step.set(Step::Reading);
            let (step, shared) = (step.clone(), shared.clone());
            *reader.borrow_mut() = Some(read_as_bytes(&file, move |bytes| {
                input.set_value("");
                let Ok(bytes) = bytes else { return step.set(Step::Refused(shared.say("file-unread"))) };
                let step = step.clone();
                let shared = shared.clone();
                yew::platform::spawn_local(async move {
                    step.set(match compare(bytes).await {
                        Ok(incoming) => Step::Compared(incoming),
                        Err(NotCompared::Refused(found)) => Step::Refused(refusal(&shared, &found)),
                        Err(NotCompared::Trouble(trouble)) => Step::Refused(told::trouble(&shared, &trouble)),
                    });
                });
            }));
        }
    };
    let taken = match &props.seen.held.taken {
        Some(Ok(0)) => Some(shared.say("log-taken-mended")),
        Some(Ok(n)) => Some(shared.tell("log-taken", &[("n", told::count(shared, *n))])),
        Some(Err(trouble)) => Some(told::trouble(shared, trouble)),
        None => None,
    };
    let shown = match &*step {
        Step::None => taken.map(|taken| html! { <p>{ taken }</p> }).unwrap_or_default(),
        Step::Reading => html! { <p>{ busy(shared, &props.seen.held) }</p> },
        Step::Refused(why) => {
            html! { <div class="mistake"><p>{ shared.say("log-refused") }</p><p>{ why }</p></div> }
        }
        Step::Left => html! { <p>{ shared.say("log-left-out") }</p> },
        Step::Compared(incoming) => compared(shared, incoming, &step),
    };
    html! {
        <section aria-labelledby={HEADING}>
            <h2 id={HEADING} tabindex="-1">{ shared.say("log-in") }</h2>
            <div class="field">
                <label for="log-open">{ shared.say("log-open") }</label>
                <input id="log-open" name="log-open" type="file" accept=".ndjson,.jsonl,application/x-ndjson" {onchange} aria-describedby="log-open-hint" />
                <p class="hint" id="log-open-hint">{ shared.say("log-open-hint") }</p>
            </div>
            <div role="status">{ shown }</div>
        </section>
    }
}

fn busy(shared: &Shared, held: &log::Held) -> String {
    match held.busy {
        Some(busy) => {
            let told = [("done", told::count(shared, busy.done)), ("of", told::count(shared, busy.of))];
            shared.tell(&format!("log-busy-{}", busy.doing.code()), &told)
        }
        None => shared.say("log-reading-file"),
    }
}

fn compared(shared: &Shared, incoming: &Incoming, step: &UseStateHandle<Step>) -> Html {
    let known = incoming.records.saturating_sub(incoming.added);
    let told = [
        ("records", told::count(shared, incoming.records)),
        ("added", told::count(shared, incoming.added)),
        ("known", told::count(shared, known)),
    ];
    let take = {
        let (step, incoming) = (step.clone(), incoming.clone());
        move || {
            log::take(&incoming);
            step.set(Step::None);
            focus::soon(HEADING.to_owned());
        }
    };
    let leave = {
        let step = step.clone();
        move || {
            step.set(Step::Left);
            focus::soon(HEADING.to_owned());
        }
    };
    html! {
        <div class="remark news" data-added={incoming.added.to_string()}>
            <p><strong>{ shared.tell("log-compared", &told) }</strong></p>
            if let Some(found) = &incoming.broken {
                <p class="mistake">{ shared.say("log-file-broken") }{ " " }{ told::broken(shared, found, "log-broken-file-do") }</p>
            }
            if !incoming.erased.is_empty() {
                <p>{ shared.tell("log-file-erases", &[("n", told::count(shared, incoming.erased.len()))]) }</p>
            }
            if !incoming.altered.is_empty() {
                <p class="mistake" data-altered={incoming.altered.len().to_string()}>
                    { shared.tell("log-file-altered", &[("records", altered(&incoming.altered))]) }
                </p>
            }
            { flaws(shared, &incoming.flaws, incoming.more) }
            { conflicts(shared, &incoming.conflicts) }
            <div class="buttons">
                if incoming.brings() { { press(shared, if incoming.broken.is_some() { "log-take-broken" } else { "log-take" }, take) } }
                { press(shared, "log-leave", leave) }
            </div>
        </div>
    }
}

/// The first of them by name.
fn altered(all: &[Id]) -> Argument {
    let more = if all.len() > SHOWN { ", …" } else { "" };
    let names: Vec<String> = all.iter().take(SHOWN).map(ToString::to_string).collect();
    Argument::text(format!("{}{more}", names.join(", ")))
}

fn flaws(shared: &Shared, flaws: &[LineFlaw], more: usize) -> Html {
    if flaws.is_empty() {
        return Html::default();
    }
    let line = |one: &LineFlaw| {
        let at = shared.tell("log-line", &[("line", Argument::text(one.line.to_string()))]);
        format!("{at} {}", told::flaw(shared, &one.flaw))
    };
    html! {
        <>
            <p class="mistake">{ shared.tell("log-flaws", &[("n", told::count(shared, flaws.len() + more))]) }</p>
            <ul>{ for flaws.iter().map(|one| html! { <li>{ line(one) }</li> }) }</ul>
        </>
    }
}

/// Two records under one number, side by side.
fn conflicts(shared: &Shared, all: &[Conflict]) -> Html {
    if all.is_empty() {
        return Html::default();
    }
    let side = |record: &Record| html! { <td>{ told::record(shared, record) }</td> };
    let row = |one: &Conflict| {
        html! { <tr><th scope="row">{ one.id.to_string() }</th>{ for one.records.iter().take(2).map(side) }</tr> }
    };
    let columns = ["log-column-record", "log-column-one", "log-column-other"];
    html! {
        <>
            <p class="mistake">{ shared.tell("log-conflicts", &[("n", told::count(shared, all.len()))]) }</p>
            { crate::page::views::table(shared, "log-conflict-table", &columns, all.iter().take(SHOWN).map(row).collect()) }
        </>
    }
}
