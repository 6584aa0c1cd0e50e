//! Each column of ours with the file's column that it comes from.

use super::{Opened, list, number};
use crate::page::components::shown;
use crate::page::shared::Shared;
use crate::site::area_list::{COLUMNS, Column, Mapping, Source};
use crate::units::{Unit, unit};
use crate::words::Argument;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// What most files have; the others unfold.
const USUAL: [&str; 5] = ["name", "size", "floor", "product", "machine"];

/// Characters of a header or a cell that are shown: more do not fit on a phone.
const SHOWN: usize = 30;

/// The beginning of a text, with dots where there was more.
pub(super) fn short(text: &str) -> String {
    let begin: String = text.chars().take(SHOWN).collect();
    if begin.len() < text.len() { begin + "…" } else { begin }
}

/// All columns; `put` is given the mapping as it was corrected.
pub(super) fn columns(shared: &Shared, opened: &Opened, put: &Callback<Mapping>) -> Html {
    let titles = titles(shared, opened);
    let all = COLUMNS.iter().zip(&opened.mapping.sources).enumerate();
    let rows =
        all.map(|(index, (column, source))| Row { shared, opened, put, index, column, source: *source });
    let (usual, others): (Vec<Row>, Vec<Row>) = rows.partition(|row| USUAL.contains(&row.column.code));
    let found = others.iter().filter(|row| row.source.from.is_some()).count();
    let more = match found {
        0 => shared.say("csv-columns"),
        found => shared.tell("csv-columns-found", &[("n", number(found))]),
    };
    html! {
        <>
            <div class="fields">{ for usual.iter().map(|row| row.draw(&titles)) }</div>
            <details class="more">
                <summary>{ more }</summary>
                <div class="fields">{ for others.iter().map(|row| row.draw(&titles)) }</div>
            </details>
        </>
    }
}

/// What the file's columns are called, told apart where two are called the same.
fn titles(shared: &Shared, opened: &Opened) -> Vec<String> {
    let titles = opened.mapping.titles(&opened.table);
    let told = |(at, title): (usize, &String)| {
        let n = ("n", number(at + 1));
        if title.is_empty() {
            let untitled = shared.tell("csv-untitled", &[n]);
            return match first(opened, at) {
                Some(value) => format!("{untitled}: {value}"),
                None => untitled,
            };
        }
        if titles.iter().filter(|other| *other == title).count() > 1 {
            return shared.tell("csv-twin", &[("title", Argument::text(short(title))), n]);
        }
        short(title)
    };
    titles.iter().enumerate().map(told).collect()
}

/// The first thing that stands in a column of the file.
fn first(opened: &Opened, at: usize) -> Option<String> {
    let mut cells = opened.mapping.body(&opened.table).iter().map(|row| row.cell(at));
    cells.find(|cell| !cell.is_empty()).map(short)
}

/// One of our columns.
struct Row<'a> {
    shared: &'a Shared,
    opened: &'a Opened,
    put: &'a Callback<Mapping>,
    index: usize,
    column: &'static Column,
    source: Source,
}

impl Row<'_> {
    fn draw(&self, titles: &[String]) -> Html {
        let name = format!("areas-column-{}", self.column.code);
        let label = self.shared.say(&format!("csv-column-{}", self.column.code));
        let mut options = vec![(String::new(), self.shared.say("csv-none"))];
        options.extend(titles.iter().enumerate().map(|(at, title)| (at.to_string(), title.clone())));
        let onchoose = {
            let (opened, put, index) = (self.opened.clone(), self.put.clone(), self.index);
            move |value: String| {
                let mut mapping = opened.mapping.clone();
                mapping.choose(&opened.table, index, value.parse().ok());
                put.emit(mapping);
            }
        };
        let chosen = self.source.from.map(|at| at.to_string()).unwrap_or_default();
        let beside = self.source.from.and(self.source.unit).map(|unit| self.units(&name, &label, unit));
        list(&name, label, &options, &chosen, self.hint(), beside.unwrap_or_default(), &onchoose.into())
    }

    /// What stands there first, which words are known, and whether the unit was told.
    fn hint(&self) -> Option<String> {
        let at = self.source.from?;
        let first = first(self.opened, at)
            .map(|value| self.shared.tell("csv-first", &[("value", Argument::text(value))]));
        let words = self.column.words().join(", ");
        let words =
            (!words.is_empty()).then(|| self.shared.tell("csv-words", &[("words", Argument::text(words))]));
        let unit = (self.source.unit.is_some() && !self.source.named).then(|| self.shared.say("csv-no-unit"));
        let parts: Vec<String> = [first, words, unit].into_iter().flatten().collect();
        (!parts.is_empty()).then(|| parts.join(" · "))
    }

    /// The unit of a column: those that its field offers, and one that only the file has.
    fn units(&self, name: &str, label: &str, chosen: &'static Unit) -> Html {
        let onchange = {
            let (mapping, put, index) = (self.opened.mapping.clone(), self.put.clone(), self.index);
            move |event: Event| {
                let code = event.target_unchecked_into::<HtmlSelectElement>().value();
                let mut mapping = mapping.clone();
                if let Some(source) = mapping.sources.get_mut(index) {
                    source.unit = unit(&code).or(source.unit);
                }
                put.emit(mapping);
            }
        };
        let mut offered: Vec<&'static Unit> =
            self.column.units().iter().filter_map(|code| unit(code)).collect();
        if !offered.contains(&chosen) {
            offered.push(chosen);
        }
        let of_what = self.shared.tell("unit-of", &[("field", Argument::text(label))]);
        html! {
            <select class="unit" name={format!("{name}-unit")} aria-label={of_what} {onchange} ~value={shown(chosen.code)}>
                { for offered.into_iter().map(|unit| html! {
                    <option value={unit.code} selected={unit == chosen}>{ self.shared.words.symbol(unit) }</option>
                }) }
            </select>
        }
    }
}
