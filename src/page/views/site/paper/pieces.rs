//! Which machines of a wall chart stand on one sheet of paper.
//!
//! A browser tells nobody how it will break a page before it prints it. What stands on a sheet is therefore reckoned, in
//! millimetres and on the safe side, for the smaller of the two papers and a wide font.

use super::facts::let_pass;
use crate::form::cautions::panel;
use crate::form::site::chart::{Chart, Row};
use crate::form::site::in_force::next;
use crate::page::language::unchecked;
use crate::page::shared::Shared;
use crate::site::Standard;
use crate::units::System;
use crate::words::Language;
use std::ops::Range;

/// A Letter sheet within its margins: 279 mm less 30.
const SHEET: f64 = 249.0;

/// The line that runs on top, the title, and the heads of the table.
const HEADS: f64 = 40.0;

/// A line of 12 pt.
const LINE: f64 = 5.0;

/// A line of 28 pt.
const LARGE: f64 = 10.5;

/// Characters of 28 pt that a quarter of the width surely holds.
const WIDE: usize = 9;

/// Characters of a line of 12 pt.
const CHARACTERS: usize = 72;

/// Lines that the code takes from what runs on beside it.
const CODE: usize = 5;

/// Characters of the cautions that every product has, in English; other languages take up to a third more.
const ALWAYS: usize = 420;

/// What the check finds of one machine, where it has no dose or no setting.
const OF_MACHINE: [&str; 2] = ["finding-no-dose", "finding-no-setting"];

/// What a sheet has for machines, under all that holds for each of them.
pub fn room(shared: &Shared, chart: &Chart, asked: &[(String, String)]) -> f64 {
    let length = |text: String| text.chars().count() + 2;
    let panel = panel(&chart.product);
    let kinds = chart.product.kinds();
    let hazards = panel.elements.statements.iter().map(|hazard| length(shared.say(&hazard.key())) + 6);
    let worn = panel.advice.ppe().map(|ppe| length(shared.say(ppe.key())));
    let never = panel
        .never
        .iter()
        .map(|pair| length(shared.say(pair.other_than(&kinds).key())) + length(shared.say(pair.happens)));
    let asked = asked.iter().map(|(name, text)| length(name.clone()) + length(text.clone()));
    let warned = chart.warnings.iter().map(|remark| {
        length(shared.words.remark_title(remark).unwrap_or_default())
            + length(shared.words.remark(remark, shared.system()))
            + let_pass(shared, &chart.standard, remark.code).map_or(0, length)
    });
    let always = if *shared.words.language() == *Language::english() { ALWAYS } else { ALWAYS + ALWAYS / 3 };
    let unchecked: usize = unchecked(&shared.words).into_iter().flatten().map(length).sum();
    let all: usize =
        always + unchecked + hazards.chain(worn).chain(never).chain(asked).chain(warned).sum::<usize>();
    // Until when it holds, where that is known.
    let until = if next(&shared.typed, &chart.standard).is_some() { 2 } else { 0 };
    SHEET - HEADS - LINE * (all.div_ceil(CHARACTERS) + CODE + until) as f64
}

/// About what a machine takes of it: its name, its tank levels, its doses at 28 pt one above the other, and three lines
/// for each thing that stands against it. `doses` are the texts of each level.
pub fn height(shared: &Shared, standard: &Standard, row: &Row, doses: &[Vec<String>]) -> f64 {
    let name = 2.0 * LINE;
    let codes = row
        .clashes
        .iter()
        .map(|clash| clash.code)
        .chain(OF_MACHINE)
        .chain(row.setting.iter().flat_map(|setting| setting.remarks.iter().map(|remark| remark.code)));
    let passed = codes.filter_map(|code| let_pass(shared, standard, code));
    let passed: usize = passed.map(|text| text.chars().count().div_ceil(CHARACTERS)).sum();
    let name = name + LINE * passed as f64;
    if row.barred().is_some() {
        return name + 2.0 * LINE;
    }
    let against = row.clashes.len() + usize::from(doses.len() < row.cells.len());
    let large = |text: &String| if text.chars().count() > WIDE { 2 } else { 1 };
    let lines = doses.iter().map(|texts| texts.iter().map(large).sum::<usize>()).max().unwrap_or(0);
    // "8.33 imp gal · 37.85 L" takes two lines of a quarter.
    let levels = if shared.system() == System::Imperial { 2 } else { 1 };
    name + LINE * (levels + 3 * against) as f64 + LARGE * lines as f64
}

/// Runs of machines, in order, each no higher than `room`; one that is higher stands alone.
pub fn pieces(heights: &[f64], room: f64) -> Vec<Range<usize>> {
    let mut all = Vec::new();
    let (mut start, mut taken) = (0, 0.0);
    for (index, height) in heights.iter().enumerate() {
        if index > start && taken + height > room {
            all.push(start..index);
            (start, taken) = (index, 0.0);
        }
        taken += height;
    }
    if start < heights.len() {
        all.push(start..heights.len());
    }
    all
}
