//! What Fill says is in the first load: nobody reads a key there while the rest is on its way.

use brimline::chemistry::family::Family;
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::site::Act;
use brimline::form::station::Job;
use brimline::form::{Action, Field, Typed, fill};
use brimline::number::Marks;
use brimline::site::Record;
use brimline::trade::governing::Aim;
use brimline::words::Words;
use std::collections::BTreeSet;

/// Labels of every shape, and some that nobody can read.
const LABELS: &[&str] = &[
    "1:64",
    "1 in 65",
    "2-4 oz/gal",
    "15 mL/L",
    "0.5 %",
    "3 to 6 oz per tank",
    "200 ppm",
    "30 g/L",
    "1 tablet per 2 gal",
    "64:1",
    "2:5",
    "",
    "?",
    "1:0",
    "1:1",
    "1:99999999",
    "3 oz",
    "half a cup",
];

fn ids<T: Record>(all: &[T]) -> Vec<String> {
    all.iter().map(|one| one.id().to_owned()).chain(std::iter::once(String::new())).collect()
}

/// The demo site, asked in many ways.
fn questions() -> Vec<Typed> {
    let start = Typed::default();
    let mut out = Vec::new();
    for machine in ids(&start.site.machines) {
        for product in ids(&start.site.products) {
            for measure in ids(&start.site.measures) {
                let picks = [
                    Action::Pick(Shelf::Machine, machine.clone()),
                    Action::Pick(Shelf::Product, product.clone()),
                    Action::Pick(Shelf::Measure, measure.clone()),
                ];
                let asked = picks.into_iter().fold(start.clone(), reduce);
                for floor in ids(&start.site.floors) {
                    out.push(reduce(asked.clone(), Action::Pick(Shelf::Floor, floor)));
                }
                out.push(reduce(asked, Action::Aim(Aim::High)));
            }
        }
    }
    for product in ids(&start.site.products) {
        let asked = reduce(start.clone(), Action::Pick(Shelf::Product, product));
        for label in LABELS {
            for line in [Line::Label, Line::Standard] {
                out.push(reduce(asked.clone(), Action::Text(line, (*label).to_owned())));
            }
        }
        for field in Field::SINGLE {
            for text in ["0", "?", "999999999", "1.5", ""] {
                out.push(reduce(asked.clone(), Action::Write(*field, text.to_owned())));
            }
        }
    }
    // A finish narrows what its floor bears; of one without a window, or that is lost, nothing is known.
    for finish in ids(&start.site.finishes).into_iter().chain(["lost".to_owned()]) {
        for product in ids(&start.site.products) {
            let picks = [
                Action::Pick(Shelf::Product, product),
                Act::FloorFinish(finish.clone()).action(),
                Action::Text(Line::Ph, "8.8".into()),
                Action::Family(Family::Neutral, true),
            ];
            out.extend(
                (2..=picks.len()).map(|count| picks[..count].iter().cloned().fold(start.clone(), reduce)),
            );
        }
    }
    for shelf in [Shelf::Machine, Shelf::Product, Shelf::Floor, Shelf::Measure] {
        out.push(reduce(start.clone(), Action::Add(shelf)));
    }
    assert!(start.ask.station.job == Job::Fill, "the first view");
    out
}

#[test]
fn fill_speaks_with_the_words_of_the_first_load() {
    let (first, all) = (Words::of_fill(), Words::english());
    let mut codes = BTreeSet::new();
    for typed in questions() {
        let fill = fill::work(&typed, Marks::POINT);
        for remark in &fill.outcome.answer.remarks {
            assert_eq!(first.remark(remark, typed.system), all.remark(remark, typed.system));
            assert_eq!(first.remark_title(remark), all.remark_title(remark));
            codes.insert(remark.code.to_owned());
        }
        for step in &fill.outcome.answer.steps {
            assert_eq!(first.say(step.formula.code), all.say(step.formula.code));
            codes.insert(step.formula.code.to_owned());
        }
        for trouble in &fill.outcome.troubles {
            let spoken = |words: &Words| words.trouble(&trouble.what, "", None, ("", ""));
            assert_eq!(spoken(&first), spoken(&all));
            codes.insert(spoken(&all));
        }
    }
    println!("{} remarks, formulas and mistakes of Fill", codes.len());
    assert!(codes.len() > 60, "the questions reach {} of them", codes.len());
}

#[test]
fn no_message_stands_in_two_files() {
    let mut seen = BTreeSet::new();
    for resource in Words::resources() {
        let words = Words::read(resource).expect("each file reads alone");
        assert!(words.keys().all(|key| seen.insert(key.to_owned())), "a key twice");
    }
}
