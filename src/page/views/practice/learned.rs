//! Who has shown what until when: by the codes that were taken and by the log, and everybody's way out of both.

use super::class::Gone;
use super::{count, press};
use crate::limits;
use crate::page::components::Typing;
use crate::page::keep::log_draft;
use crate::page::keep::practice::change;
use crate::page::keep::today;
use crate::page::log::{self, Stage, use_log};
use crate::page::shared::Shared;
use crate::page::views::captioned;
use crate::page::views::log::waiting::waiting;
use crate::practice::{Ended, Made, Register, Shown, is_of, same, shown, whole};
use crate::site::log::{Attended, Id, Lesson, Part, Words};
use crate::trade::calendar::Date;
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// What is drawn.
#[derive(Properties)]
pub struct LearnedProps {
    /// What every part needs.
    pub shared: Shared,
    /// The codes.
    pub register: Rc<Register>,
    /// The sessions that were handed out, and their exercises.
    pub made: Rc<Vec<Made>>,
    /// Is given what was, when somebody was taken off the device alone.
    pub ongone: Callback<Gone>,
}

impl PartialEq for LearnedProps {
    /// By where they lie: exercises are made anew only where the sessions are others.
    fn eq(&self, other: &Self) -> bool {
        self.shared == other.shared
            && Rc::ptr_eq(&self.register, &other.register)
            && Rc::ptr_eq(&self.made, &other.made)
    }
}

/// The list of people.
#[component]
pub fn Learned(props: &LearnedProps) -> Html {
    let LearnedProps { shared, register, made, ongone } = props;
    let held = use_log();
    let written: Vec<&Attended> = held.view.lessons.iter().filter(|one| !one.who.is_empty()).collect();
    let is_written = |who: &str, lesson: &Lesson| {
        written.iter().any(|one| same(&one.who, who) && is_of(&one.lesson, lesson))
    };
    let new: Vec<(String, Lesson)> =
        register.lessons(made).into_iter().filter(|(who, lesson)| !is_written(who, lesson)).collect();
    let all = shown(
        written
            .iter()
            .map(|one| (&*one.who, &one.lesson))
            .chain(new.iter().map(|(who, lesson)| (who.as_str(), lesson))),
    );
    let people = people(register, &written);
    if people.is_empty() {
        return Html::default();
    }
    let label = shared.say("class-months");
    let wrong = whole(&register.months, &limits::MONTHS, shared.marks()).err().map(|what| {
        let told = shared.words.trouble(&what, &label, None, (&register.months, "one"));
        format!("{told} {}", shared.say("class-months-wrong"))
    });
    let oninput = |text| change(|held| Rc::make_mut(&mut held.register).months = text);
    let told = [("n", count(shared, written.len())), ("new", count(shared, new.len()))];
    let write = {
        let new = new.clone();
        move || {
            let by = log_draft::now().by.clone();
            for (who, lesson) in &new {
                let words = Words::default().with(Part::Who, who.trim());
                let by = if same(&by, who) { "" } else { by.trim() };
                log::attended(lesson.clone(), words.with(Part::By, by));
            }
        }
    };
    html! {
        <>
            <h3>{ shared.say("class-shown") }</h3>
            <p>{ shared.say("class-shown-hint") }</p>
            <Typing id="class-months" {label} mistake={wrong} number=true value={register.months.clone()} {oninput} />
            if held.stage == Stage::Open {
                <p role="status" data-logged={written.len().to_string()}>{ shared.tell("class-logged", &told) }</p>
            }
            if !new.is_empty() && held.waiting.is_empty() { <div class="buttons">{ press(shared, "class-log", write) }</div> }
            <p class="hint">{ shared.say("class-log-hint") }</p>
            { waiting(shared, &held) }
            { for (1..).zip(people).map(|(n, who)| {
                let shown: Vec<Shown> = all.iter().filter(|one| same(&one.initials, &who)).cloned().collect();
                let of = written.iter().filter(|one| same(&one.who, &who));
                let written: Vec<Id> = of.map(|one| one.id.clone()).collect();
                let key = who.to_lowercase();
                html! { <Person {key} shared={shared.clone()} {n} {who} {shown} {written} ongone={ongone.clone()} /> }
            }) }
        </>
    }
}

/// Everybody who has a result, in the order in which they came.
fn people(register: &Register, written: &[&Attended]) -> Vec<String> {
    let mut people = register.people();
    for one in written {
        if !people.iter().any(|who| same(who, &one.who)) {
            people.push(one.who.to_string());
        }
    }
    people
}

/// What is drawn of one person.
#[derive(Properties, PartialEq)]
struct PersonProps {
    shared: Shared,
    n: usize,
    who: String,
    shown: Vec<Shown>,
    written: Vec<Id>,
    ongone: Callback<Gone>,
}

#[component]
fn Person(props: &PersonProps) -> Html {
    let PersonProps { shared, n, who, shown, written, ongone } = props;
    let asks = use_state(|| false);
    let columns = ["class-column-topic", "class-column-level", "class-column-date", "class-column-until"];
    let today = Date::read(&today::now());
    let row = |one: &Shown| {
        let ended = today.and_then(|today| one.ended(today)).map(|ended| match ended {
            Ended::Lost(day) => ("class-lost", day),
            Ended::RanOut(day) => ("class-ran-out", day),
        });
        let until = match (ended, one.expires) {
            (Some((key, day)), _) => shared.tell(key, &[("day", shared.day(&day.to_string()))]),
            (None, Some(day)) => shared.words.day(&day.to_string()),
            (None, None) => shared.say("class-until-unknown"),
        };
        html! {
            <tr data-shown={one.topic.code()}>
                <th scope="row">{ shared.say(&format!("practice-topic-{}", one.topic.code())) }</th>
                <td>{ shared.say(&format!("practice-level-{}", one.level.code())) }</td>
                <td class="unbroken">{ shared.words.day(&one.date.to_string()) }</td>
                <td data-ended={ended.map(|(key, _)| key)}>{ until }</td>
            </tr>
        }
    };
    let rows: Vec<Html> = shown.iter().map(row).collect();
    let named = [("who", Argument::text(&**who)), ("n", count(shared, written.len()))];
    let remove = {
        let (own, who, ongone) = (written.clone(), who.clone(), ongone.clone());
        move || {
            let mut before = None;
            change(|held| {
                before = Some(held.clone());
                held.forget(&who);
            });
            for id in &own {
                log::erase(id.clone(), vec![Part::Who], Words::default());
            }
            // What is erased from the log is gone for good.
            if let Some(before) = before.filter(|_| own.is_empty()) {
                ongone.emit(before);
            }
        }
    };
    let ask = |wanted: bool| {
        let asks = asks.clone();
        move || asks.set(wanted)
    };
    let onclick = {
        let asks = asks.clone();
        move |_: MouseEvent| asks.set(true)
    };
    let (warning, does) = if written.is_empty() {
        ("class-remove-codes", "class-remove-off")
    } else {
        ("class-remove-warning", "class-remove-do")
    };
    html! {
        <section data-person={who.clone()} aria-label={who.clone()}>
            if rows.is_empty() {
                <p>{ shared.tell("class-shown-nothing", &named) }</p>
            } else {
                { captioned(shared, shared.tell("class-shown-by", &named), &columns, rows) }
            }
            <div class="buttons">
                <button type="button" name={format!("class-{n}-remove")} {onclick}>{ shared.tell("class-remove", &named) }</button>
            </div>
            if *asks {
                <div class="remark" role="alert" data-remark="class-remove">
                    <p>{ shared.tell(warning, &named) }</p>
                    <div class="buttons">{ press(shared, does, remove) }{ press(shared, "class-remove-leave", ask(false)) }</div>
                </div>
            }
        </section>
    }
}
