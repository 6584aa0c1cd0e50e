//! The tables of a class.

use super::count;
use crate::answer::Value;
use crate::limits;
use crate::page::components::Typing;
use crate::page::keep::practice::change;
use crate::page::shared::Shared;
use crate::page::views::{captioned, table};
use crate::practice::{Attempt, Class, Exercise, Made, Register, Shown, Tries, whole};
use crate::units::{Kind, VolumeFraction};
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// Topic by topic.
pub fn by_topic(shared: &Shared, class: &Class, exercises: &[Exercise]) -> Html {
    let columns = [
        "class-column-topic",
        "class-column-asked",
        "class-column-first",
        "class-column-right",
        "class-column-share",
    ];
    let rows = class.by_topic(exercises).into_iter().map(|one| {
        let share = Value::new(VolumeFraction::new(one.share()), Kind::Percent);
        html! {
            <tr data-topic={one.topic.code()}>
                <th scope="row">{ shared.say(&format!("practice-topic-{}", one.topic.code())) }</th>
                <td>{ one.asked }</td>
                <td>{ one.first }</td>
                <td>{ one.right }</td>
                <td>{ shared.show(share) }</td>
            </tr>
        }
    });
    table(shared, "class-by-topic", &columns, rows.collect())
}

/// Person by person: the result that counts.
pub fn by_person(shared: &Shared, class: &Class) -> Html {
    let columns = [
        "class-column-who",
        "class-column-date",
        "class-column-first",
        "class-column-second",
        "class-column-wrong",
        "class-column-open",
    ];
    let row = |one: &&Attempt| {
        let n = |tries: &[Tries]| one.marks.iter().filter(|mark| tries.contains(&mark.tries)).count();
        html! {
            <tr data-who={one.initials.clone()}>
                <th scope="row">{ &one.initials }</th>
                <td>{ &one.date }</td>
                <td>{ n(&[Tries::First]) }</td>
                <td>{ n(&[Tries::Second, Tries::Later]) }</td>
                <td>{ n(&[Tries::Never]) }</td>
                <td>{ n(&[Tries::Open]) }</td>
            </tr>
        }
    };
    let caption = shared.tell("class-by-person", &[("n", count(shared, class.counting().len()))]);
    captioned(shared, caption, &columns, class.counting().iter().map(row).collect())
}

/// The usual wrong roads, and what to do instead.
pub fn roads(shared: &Shared, class: &Class) -> Html {
    let row = |(way, times): (&'static str, u32)| {
        html! {
            <tr data-way={way}>
                <td>{ times }</td>
                <td>{ shared.say(&format!("practice-way-{way}")) }</td>
            </tr>
        }
    };
    let rows: Vec<Html> = class.taken().into_iter().map(|one| row((one.way.code(), one.times))).collect();
    if rows.is_empty() {
        return html! { <p>{ shared.say("class-no-roads") }</p> };
    }
    table(shared, "class-roads", &["class-column-times", "class-column-way"], rows)
}

/// Who has shown what until when, and everybody's way out of this device.
pub fn shown(shared: &Shared, register: &Register, made: &[Made]) -> Html {
    let people = register.people();
    if people.is_empty() {
        return Html::default();
    }
    let all = register.shown(made);
    let label = shared.say("class-months");
    let wrong = whole(&register.months, &limits::MONTHS, shared.marks()).err().map(|what| {
        let told = shared.words.trouble(&what, &label, None, (&register.months, "one"));
        format!("{told} {}", shared.say("class-months-wrong"))
    });
    let oninput = |text| change(|held| Rc::make_mut(&mut held.register).months = text);
    html! {
        <>
            <h3>{ shared.say("class-shown") }</h3>
            <p>{ shared.say("class-shown-hint") }</p>
            <Typing id="class-months" {label} mistake={wrong} number=true value={register.months.clone()} {oninput} />
            { for (1..).zip(&people).map(|(n, who)| person(shared, n, who, &all)) }
        </>
    }
}

fn person(shared: &Shared, n: usize, who: &str, all: &[Shown]) -> Html {
    let columns = ["class-column-topic", "class-column-level", "class-column-date", "class-column-until"];
    let own = all.iter().filter(|one| one.initials.to_lowercase() == who.to_lowercase());
    let row = |one: &Shown| {
        html! {
            <tr data-shown={one.topic.code()}>
                <th scope="row">{ shared.say(&format!("practice-topic-{}", one.topic.code())) }</th>
                <td>{ shared.say(&format!("practice-level-{}", one.level.code())) }</td>
                <td>{ one.date.to_string() }</td>
                <td>{ one.expires.map_or_else(|| shared.say("class-until-unknown"), |date| date.to_string()) }</td>
            </tr>
        }
    };
    let rows: Vec<Html> = own.map(row).collect();
    let named = [("who", Argument::text(who))];
    let remove = {
        let who = who.to_owned();
        move |_: MouseEvent| change(|held| Rc::make_mut(&mut held.register).remove(&who))
    };
    html! {
        <section data-person={who.to_owned()} aria-label={who.to_owned()}>
            if rows.is_empty() {
                <p>{ shared.tell("class-shown-nothing", &named) }</p>
            } else {
                { captioned(shared, shared.tell("class-shown-by", &named), &columns, rows) }
            }
            <div class="buttons">
                <button type="button" name={format!("class-{n}-remove")} onclick={remove}>{ shared.tell("class-remove", &named) }</button>
            </div>
        </section>
    }
}
