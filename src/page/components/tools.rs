//! What stands in the way of an answer, and what can be done with one.

use crate::form::saved::View;
use crate::form::{Field, Outcome, Trouble};
use crate::page::focus;
use crate::page::keep::{behind_frame, download};
use crate::page::rest;
use crate::page::shared::Shared;
use crate::words::Argument;
use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// What to mend before there is an answer; each line leads to its field.
pub fn troubles(shared: &Shared, outcome: &Outcome) -> Html {
    listed(shared, outcome, "troubles")
}

/// The same beside an answer that stands without them.
pub fn troubles_beside(shared: &Shared, outcome: &Outcome) -> Html {
    listed(shared, outcome, "troubles-beside")
}

/// The same under another heading.
pub fn troubles_under(shared: &Shared, outcome: &Outcome, heading: &str) -> Html {
    listed(shared, outcome, heading)
}

/// More mistakes than these are counted: nobody mends a thousand at once.
const TOLD: usize = 30;

fn listed(shared: &Shared, outcome: &Outcome, heading: &str) -> Html {
    if outcome.troubles.is_empty() {
        return Html::default();
    }
    html! {
        <section class="troubles">
            <h2>{ shared.say(heading) }</h2>
            <ul>
                { for outcome.troubles.iter().take(TOLD).map(|trouble| {
                    let target = trouble.name.clone();
                    let onclick = move |_| focus::on(&target);
                    html! { <li><button type="button" class="link" {onclick}>{ trouble_text(shared, trouble) }</button></li> }
                }) }
            </ul>
            if let Some(more) = outcome.troubles.len().checked_sub(TOLD).filter(|more| *more > 0) {
                <p>{ shared.tell("troubles-more", &[("n", Argument::number(more as f64, shared.words.number(more as f64)))]) }</p>
            }
        </section>
    }
}

fn field_of(shared: &Shared, trouble: &Trouble) -> Option<Field> {
    Field::all(&shared.typed).into_iter().find(|field| field.name() == trouble.name)
}

/// What the field is called that a mistake stands at.
pub fn trouble_label(shared: &Shared, trouble: &Trouble) -> String {
    match field_of(shared, trouble) {
        Some(field) => match field.number() {
            Some(number) => format!("{} {number}", shared.say(field.key())),
            None => shared.say(field.key()),
        },
        None => shared.words.find(&trouble.name).unwrap_or_else(|| shared.say("area-floor")),
    }
}

/// The same words as at the field.
pub fn trouble_text(shared: &Shared, trouble: &Trouble) -> String {
    let (field, label) = (field_of(shared, trouble), trouble_label(shared, trouble));
    let entry = field.and_then(|field| field.entry(&shared.typed));
    let (text, unit) = entry.map_or(("", ""), |entry| (entry.text.as_str(), entry.unit.as_str()));
    let told = shared.words.trouble(&trouble.what, &label, field, (text, unit));
    // Of a hundred areas the message names the one it is about.
    match area_name(shared, &trouble.name) {
        Some(area) => format!("{area}: {told}"),
        None => told,
    }
}

/// The name of the area that an input belongs to.
fn area_name<'a>(shared: &'a Shared, input: &str) -> Option<&'a str> {
    let number: usize = input.strip_prefix("area-")?.split('-').next()?.parse().ok()?;
    let area = shared.typed.site.areas.get(number.checked_sub(1)?)?;
    Some(area.name.as_str()).filter(|name| !name.is_empty())
}

/// Saves the answer as a file, and prints the view.
pub fn answer_tools(shared: &Shared, view: View) -> Html {
    let onsave = {
        let shared = shared.clone();
        move |_| {
            let shared = shared.clone();
            yew::platform::spawn_local(async move {
                let Ok(rest) = rest::load().await else {
                    // There is no place of its own to say it in, and it must not pass unseen.
                    return gloo::dialogs::alert(&shared.say("view-failed"));
                };
                let name = format!("brimline-{}.json", view.code());
                download::offer(&name, download::JSON, &(rest.save)(view, &shared.typed, shared.marks()));
            });
        }
    };
    html! {
        <div class="buttons tools">
            <button type="button" name="answer-save" onclick={onsave}>{ shared.say("answer-save") }</button>
            { print_button(shared) }
        </div>
    }
}

/// Prints the view.
pub fn print_button(shared: &Shared) -> Html {
    let onprint = |_| {
        behind_frame::finish();
        // Behind this task: by then all of it is drawn.
        Timeout::new(0, || {
            // Where a browser has no printer the button does nothing, and nothing is lost.
            let _ = gloo::utils::window().print();
        })
        .forget();
    };
    html! { <button type="button" name="answer-print" onclick={onprint}>{ shared.say("answer-print") }</button> }
}
