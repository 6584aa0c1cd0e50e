//! Choosing what to practise: topics, level, how many, and the number that the tasks are drawn by.

use super::{Props, press};
use crate::form::{Typed, What};
use crate::limits;
use crate::page::components::Typing;
use crate::page::focus;
use crate::page::keep::practice::at_desk;
use crate::page::log::random;
use crate::page::shared::Shared;
use crate::page::views::log::fields::pick;
use crate::practice::{Desk, DeskMistake, Lack, Run, Session, Stock, Topic};
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// What the fields need.
#[derive(Properties, PartialEq)]
pub struct FieldsProps {
    /// What every part needs.
    pub shared: Shared,
    /// What is chosen.
    pub desk: Rc<Desk>,
    /// The name of the button, and the key of its words.
    pub button: &'static str,
    /// Is given the session.
    pub onmade: Callback<Session>,
}

/// Chooses, and begins.
#[component]
pub fn Choose(props: &Props) -> Html {
    let onmade = |session| {
        at_desk(|desk| desk.run = Run::begin(session));
        focus::soon("practice-task".to_owned());
    };
    html! {
        <section aria-labelledby="practice-choose">
            <h2 id="practice-choose" tabindex="-1">{ props.shared.say("practice-choose-heading") }</h2>
            <Fields shared={props.shared.clone()} desk={props.held.desk.clone()} button="practice-begin" {onmade} />
        </section>
    }
}

/// The same site, by where it lies.
struct Asked(Rc<Typed>, Stock);

impl PartialEq for Asked {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0) || self.1 == other.1
    }
}

/// The fields, and the button that makes a session of them.
#[component]
pub fn Fields(props: &FieldsProps) -> Html {
    let (shared, desk) = (&props.shared, &props.desk);
    let wrong = use_state(|| None::<String>);
    let stock = Stock::of(&shared.typed.site, shared.system(), shared.marks());
    let lacks = use_memo((Asked(shared.typed.clone(), stock.clone()), desk.level), |(asked, level)| {
        Topic::ALL.iter().map(|one| asked.1.lacks(*one, *level)).collect::<Vec<Option<Lack>>>()
    });
    let make = {
        let (shared, wrong, desk, onmade) =
            (shared.clone(), wrong.clone(), desk.clone(), props.onmade.clone());
        move || {
            // Without random numbers of the browser's own the clock has to do: nothing secret hangs on it.
            let drawn = random().map_or_else(
                |_| u32::try_from(js_sys::Date::now().to_bits() % 1_000_000).unwrap_or_default(),
                |bytes| u32::from_be_bytes([bytes[0], bytes[1], bytes[2], bytes[3]]),
            );
            match desk.session(&stock, shared.marks(), drawn) {
                Ok(session) => {
                    wrong.set(None);
                    onmade.emit(session);
                }
                Err(DeskMistake::Count(what)) => wrong.set(Some(count_wrong(&shared, &desk, &what))),
                Err(mistake) => wrong.set(Some(shared.say(mistake.code()))),
            }
        }
    };
    let all = move |on: bool| {
        move || at_desk(|desk| desk.topics = if on { Topic::ALL.to_vec() } else { Vec::new() })
    };
    html! {
        <>
            <fieldset class="topics">
                <legend>{ shared.say("practice-topics") }</legend>
                { for Topic::ALL.iter().zip(&*lacks).map(|(topic, lack)| tickable(shared, desk, *topic, *lack)) }
                <div class="buttons">
                    { press(shared, "practice-topics-all", all(true)) }
                    { press(shared, "practice-topics-none", all(false)) }
                </div>
            </fieldset>
            <div class="fields">
                <div>
                    { pick(shared, "practice-level", desk.level, |level| at_desk(|desk| desk.level = level)) }
                    <p class="hint">{ shared.say(&format!("practice-level-{}-is", desk.level.code())) }</p>
                </div>
                <Typing id="practice-count" label={shared.say("practice-count")} hint={most(shared)} mistake={desk.tasks(shared.marks()).err().map(|what| count_wrong(shared, desk, &what))} number=true
                    value={desk.count.clone()} oninput={|text| at_desk(|desk| desk.count = text)} />
                <Typing id="practice-seed" label={shared.say("practice-seed")} hint={shared.say("practice-seed-hint")} mistake={None::<String>}
                    number=true value={desk.seed.clone()} oninput={|text| at_desk(|desk| desk.seed = text)} />
            </div>
            <div class="mistake" role="alert">{ for wrong.as_ref().map(|text| html! { <p>{ text }</p> }) }</div>
            <div class="buttons">{ press(shared, props.button, make) }</div>
        </>
    }
}

/// How many tasks there may be at most.
fn most(shared: &Shared) -> String {
    let most = Argument::text(shared.words.number(limits::TASKS.high));
    shared.tell("practice-count-hint", &[("most", most)])
}

/// What is wrong with the number of tasks.
fn count_wrong(shared: &Shared, desk: &Desk, what: &What) -> String {
    shared.words.trouble(what, &shared.say("practice-count"), None, (&desk.count, "one"))
}

/// A topic, and what the site lacks for it.
fn tickable(shared: &Shared, desk: &Desk, topic: Topic, lack: Option<Lack>) -> Html {
    let name = format!("practice-topic-{}", topic.code());
    let on = desk.topics.contains(&topic);
    let onchange = move |_: Event| {
        at_desk(|desk| {
            desk.topics.retain(|one| *one != topic);
            if !on {
                desk.topics.push(topic);
            }
        });
    };
    let why = format!("{name}-lack");
    html! {
        <div>
            <label class="switch">
                <input type="checkbox" id={name.clone()} name={name.clone()} checked={on} {onchange} aria-describedby={lack.map(|_| why.clone())} />
                <span>{ shared.say(&name) }</span>
            </label>
            if let Some(lack) = lack {
                <p class="unknown" id={why.clone()} data-lack={lack.code()}>{ shared.say(&format!("practice-lack-{}", lack.code())) }</p>
            }
        </div>
    }
}
