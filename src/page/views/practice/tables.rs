//! The tables of a class.

use super::count;
use crate::answer::Value;
use crate::page::shared::Shared;
use crate::page::views::{captioned, table};
use crate::practice::{Attempt, Class, Exercise, Tries};
use crate::units::{Kind, VolumeFraction};
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
                <td>{ shared.words.day(&one.date) }</td>
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
