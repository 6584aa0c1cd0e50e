//! Erasing what names a person, on request.

use super::super::fields::{press, text_at};
use super::super::told;
use super::KeepProps;
use crate::page::keep::log_draft::change;
use crate::page::keep::practice;
use crate::page::log::{self, Trouble};
use crate::site::log::{Id, Part, Words};
use crate::words::Argument;
use yew::prelude::*;

/// What was found for some initials.
#[derive(Clone, Default, PartialEq)]
enum Found {
    #[default]
    Nothing,
    Looking,
    Texts(String, Vec<(Id, Vec<Part>)>),
    Done(usize),
    Failed(Trouble),
}

/// Asks for initials, shows how much names them, erases it.
#[component]
pub fn Erase(props: &KeepProps) -> Html {
    let seen = &props.seen;
    let shared = &seen.shared;
    let found = use_state(Found::default);
    let initials = seen.draft.erase.trim().to_owned();
    let look = {
        let (found, initials) = (found.clone(), initials.clone());
        move || {
            if initials.is_empty() {
                return;
            }
            found.set(Found::Looking);
            let (found, initials) = (found.clone(), initials.clone());
            yew::platform::spawn_local(async move {
                found.set(match log::naming(&initials).await {
                    Ok(texts) => Found::Texts(initials, texts),
                    Err(trouble) => Found::Failed(trouble),
                });
            });
        }
    };
    // Results of practice that are on this device and not in the log.
    let class = practice::now().register.count_of(&initials);
    let shown = match &*found {
        Found::Nothing => Html::default(),
        Found::Failed(trouble) => html! { <p>{ told::trouble(shared, trouble) }</p> },
        Found::Looking => html! { <p>{ shared.say("log-erase-looking") }</p> },
        Found::Done(0) => html! { <p>{ shared.say("log-erase-class-done") }</p> },
        Found::Done(n) => {
            let key = if seen.held.waiting.is_empty() { "log-erase-done" } else { "log-erase-doing" };
            html! { <p>{ shared.tell(key, &[("n", told::count(shared, *n))]) }</p> }
        }
        Found::Texts(of, _) if *of != initials => Html::default(),
        Found::Texts(of, texts) if texts.is_empty() && class == 0 => {
            html! { <p>{ shared.tell("log-erase-none", &[("who", Argument::text(of.clone()))]) }</p> }
        }
        Found::Texts(of, texts) => {
            let told = [("n", told::count(shared, texts.len())), ("who", Argument::text(of.clone()))];
            let does = {
                let (texts, found, of) = (texts.clone(), found.clone(), of.clone());
                move || {
                    let n = texts.len();
                    change(|draft| draft.forget(&of));
                    practice::change(|held| held.forget(&of));
                    for (id, parts) in &texts {
                        log::erase(id.clone(), parts.clone(), Words::default());
                    }
                    found.set(Found::Done(n));
                }
            };
            let leave = {
                let found = found.clone();
                move || found.set(Found::Nothing)
            };
            html! {
                <div class="remark" data-remark="log-erase">
                    if !texts.is_empty() { <p>{ shared.tell("log-erase-found", &told) }</p> }
                    if class > 0 { <p data-class={class.to_string()}>{ shared.tell("log-erase-class", &[("n", told::count(shared, class))]) }</p> }
                    <p>{ shared.say("log-erase-warning") }</p>
                    <div class="buttons">{ press(shared, "log-erase-do", does) }{ press(shared, "log-erase-leave", leave) }</div>
                </div>
            }
        }
    };
    html! {
        <section aria-labelledby="log-erasing">
            <h2 id="log-erasing">{ shared.say("log-erasing") }</h2>
            <p>{ shared.say("log-erasing-hint") }</p>
            { text_at(shared, "log-erase", &seen.draft.erase, false, None, |draft| &mut draft.erase) }
            <div class="buttons">{ press(shared, "log-erase-look", look) }</div>
            <div role="status">{ shown }</div>
        </section>
    }
}
