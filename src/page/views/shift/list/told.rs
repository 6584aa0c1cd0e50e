//! What is told of a file: how many areas, numbers with two readings, and what is to be mended by its line.

use super::columns::short;
use super::{Opened, Stage, list, number};
use crate::form::What;
use crate::number::{Marks, write};
use crate::page::shared::Shared;
use crate::site::area_list::{Flaw, Imported, MOST_AREAS, Mapping, Wrong};
use crate::words::Argument;
use yew::prelude::*;

/// Lines that are told; who has more mends these first.
const MOST: usize = 30;

/// What a glance and a screen reader are told, and whether that stands in the way of taking the file.
pub(super) fn said(shared: &Shared, stage: &Stage, read: Option<&Imported>) -> (String, bool) {
    let to_mend = |count: usize| match count {
        0 => String::new(),
        count => format!(" {}", shared.tell("csv-to-mend", &[("n", number(count))])),
    };
    match (stage, read) {
        (Stage::Open(opened), Some(read)) => {
            let there = if opened.behind { shared.typed.site.areas.len() } else { 0 };
            let all = there + read.areas.len();
            let found = |code| opened.mapping.source(code).from.is_some();
            if !found("name") && !found("size") {
                return (shared.say("csv-choose"), true);
            }
            if all > MOST_AREAS {
                return (shared.tell("csv-full", &[("n", number(all))]), true);
            }
            let file = ("file", Argument::text(short(&opened.name)));
            let will = shared.tell("csv-will", &[("n", number(read.areas.len())), file]);
            (will + &to_mend(read.flaws.len()), false)
        }
        (Stage::Taken(count, flaws), _) => {
            (shared.tell("csv-read", &[("n", number(*count))]) + &to_mend(flaws.len()), false)
        }
        (Stage::Left, _) => (shared.say("csv-left"), false),
        _ => (String::new(), false),
    }
}

/// Asks once for the whole file what a number with two readings means.
pub(super) fn two_readings(shared: &Shared, opened: &Opened, read: &Imported, to: &Callback<Stage>) -> Html {
    let found = read.two_readings().map(|(text, decimal, grouped)| (text.to_owned(), decimal, grouped));
    let Some((text, decimal, grouped)) = found.clone().or_else(|| opened.asked.clone()) else {
        return Html::default();
    };
    // The mark of this number, as the decimal mark and between thousands.
    let (as_decimal, as_grouped) =
        if text.contains('.') { (Marks::POINT, Marks::COMMA) } else { (Marks::COMMA, Marks::POINT) };
    let told = |value: f64| write(value, 12, shared.marks());
    let options = [
        (String::new(), shared.say("areas-marks-unknown")),
        ("grouped".to_owned(), told(grouped)),
        ("decimal".to_owned(), told(decimal)),
    ];
    let chosen = match opened.mapping.marks {
        None => "",
        Some(marks) if marks == as_decimal => "decimal",
        Some(_) => "grouped",
    };
    let onchoose = {
        let (opened, to, text) = (opened.clone(), to.clone(), text.clone());
        move |code: String| {
            let mut opened = opened.clone();
            opened.asked = Some((text.clone(), decimal, grouped));
            opened.mapping.marks = match code.as_str() {
                "decimal" => Some(as_decimal),
                "grouped" => Some(as_grouped),
                _ => None,
            };
            to.emit(Stage::Open(opened));
        }
    };
    let label = shared.tell("areas-marks", &[("typed", Argument::text(text))]);
    let hint = Some(shared.say("areas-marks-hint"));
    list("areas-marks", label, &options, chosen, hint, Html::default(), &onchoose.into())
}

/// What is to be mended, line by line.
pub(super) fn flaws(shared: &Shared, read: &Imported) -> Vec<String> {
    let told = |flaw: &Flaw| {
        let line = Argument::text(flaw.line.to_string());
        shared.tell("csv-flaw", &[("line", line), ("what", Argument::text(what(shared, flaw)))])
    };
    read.flaws.iter().map(told).collect()
}

/// Columns that an area needs and that were not chosen: told once, not in every line.
pub(super) fn lacking(shared: &Shared, mapping: &Mapping) -> Html {
    let lacking = [("size", "csv-no-size"), ("floor", "csv-no-floor")];
    let lacking = lacking.iter().filter(|(code, _)| mapping.source(code).from.is_none());
    html! { { for lacking.map(|(_, key)| html! { <p class="hint">{ shared.say(key) }</p> }) } }
}

fn what(shared: &Shared, flaw: &Flaw) -> String {
    let label = shared.say(&format!("csv-column-{}", flaw.column.code));
    let text = short(&flaw.text);
    let (field, typed) = (("field", Argument::text(label.clone())), ("typed", Argument::text(text.clone())));
    match flaw.what {
        Wrong::Number(mistake) => {
            shared.words.trouble(&What::Number(mistake), &label, None, (&text, flaw.unit))
        }
        Wrong::Unknown => shared.tell("csv-unknown", &[field, typed]),
        Wrong::Missing => shared.tell("csv-missing", &[field]),
        Wrong::Choice(taken) => {
            let words = flaw.column.words().join(", ");
            let (words, taken) = (("words", Argument::text(words)), ("taken", Argument::text(taken)));
            shared.tell("csv-choice", &[field, typed, words, taken])
        }
        Wrong::Long => shared.tell("csv-long", &[field]),
        Wrong::Lines => shared.tell("csv-lines", &[field]),
        Wrong::Quote => shared.say("csv-quote"),
    }
}

/// The first of these lines, and how many more there are.
pub(super) fn listed(shared: &Shared, flaws: &[String]) -> Html {
    if flaws.is_empty() {
        return Html::default();
    }
    let rest = flaws.len().saturating_sub(MOST);
    html! {
        <ul>
            { for flaws.iter().take(MOST).map(|flaw| html! { <li>{ flaw }</li> }) }
            if rest > 0 { <li>{ shared.tell("csv-more", &[("n", number(rest))]) }</li> }
        </ul>
    }
}
