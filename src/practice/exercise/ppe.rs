//! Choose what to wear from a label.

use super::super::picture::{Picture, Wear};
use super::super::ready::Guarded;
use super::super::road::{Harm, Led, Road, Way};
use super::super::{Draw, Level, Ready, Topic};
use super::{Exercise, Key, Said};
use crate::chemistry::advice::Ppe;
use crate::chemistry::ghs::Knowledge;
use crate::source::Source;

/// The choice that nothing is asked for.
const NOTHING: &str = "practice-ppe-nothing";

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let product = draw.pick(&ready.guarded)?;
    let asked_for: Vec<Ppe> = product.panel.advice.ppe().collect();
    let full = product.panel.knowledge == Knowledge::Full;
    // What is not known, and a label that asks for nothing, are the harder cases.
    if level != Level::Third && (!full || asked_for.is_empty()) {
        return None;
    }
    // That nothing is asked for is only said of a label without a hazard.
    if asked_for.is_empty() && !product.panel.codes.hazards.is_empty() {
        return None;
    }
    let wear = asked_for.iter().map(|one| one.key()).collect();
    let nothing = Ppe::ALL.len();
    let options = Ppe::ALL.iter().map(|one| Said::new(one.key())).chain([Said::new(NOTHING)]).collect();
    let mut right: Vec<usize> = (0..nothing).filter(|index| asked_for.contains(&Ppe::ALL[*index])).collect();
    if right.is_empty() {
        right.push(nothing);
    }
    let roads = roads(&right, nothing);
    let key = Key::Several { options, right };
    let mut exercise = Exercise::new(Topic::Ppe, level, ready, asked(level, product), key);
    exercise.roads = roads;
    let pictograms = product.panel.elements.pictograms.clone();
    exercise.picture = Some(Picture::Wear(Wear { pictograms, signal: product.signal, wear }));
    for one in &asked_for {
        reasons(&mut exercise, product, *one);
    }
    if asked_for.is_empty() {
        exercise.because(Said::new("practice-because-nothing"), Source::COMMON_PRACTICE);
    }
    if !full {
        exercise.because(Said::new("practice-because-unknown"), Source::COMMON_PRACTICE);
    }
    Some(exercise)
}

/// Why one thing is worn: each statement of the label that calls for it, or that not all of the label is known.
fn reasons(exercise: &mut Exercise, product: &Guarded, ppe: Ppe) {
    let codes = &product.panel.codes;
    let causes = ppe.causes(&codes.hazards, &codes.precautions);
    if causes.is_empty() {
        let said = Said::new("practice-because-wear-unknown").words("piece", ppe.key());
        exercise.because(said, Source::COMMON_PRACTICE);
    }
    for cause in causes {
        let said = Said::new("practice-because-wear").words("piece", ppe.key());
        exercise.because(said.text("code", cause.code).words("statement", &cause.key), cause.source);
    }
}

fn asked(level: Level, product: &Guarded) -> Vec<Said> {
    let mut asked =
        vec![Said::new("practice-ppe").text("product", &product.name).words("signal", product.signal)];
    if level == Level::First {
        let hazards = product.panel.codes.hazards.iter();
        asked.extend(hazards.map(|hazard| Said::new("practice-ppe-says").words("statement", &hazard.key())));
    } else if product.codes.trim().is_empty() {
        asked.push(Said::new("practice-ppe-no-codes"));
    } else {
        asked.push(Said::new("practice-ppe-codes").text("codes", product.codes.trim()));
    }
    asked.push(Said::new("practice-ask-ppe"));
    asked
}

/// What is left off, the eyes first, and then what is put on without need.
fn roads(right: &[usize], nothing: usize) -> Vec<Road> {
    let lack = |ppe: Ppe| match ppe {
        Ppe::Goggles | Ppe::FaceShield => (0, Way::NoEyes, Harm::NoEyes),
        Ppe::Gloves | Ppe::Apron | Ppe::Boots => (1, Way::NoSkin, Harm::NoSkin),
        Ppe::Ventilation | Ppe::Respirator => (2, Way::NoAir, Harm::NoAir),
    };
    let mut lacking: Vec<(u8, Road)> = Vec::new();
    for index in right.iter().filter(|index| **index < nothing) {
        let (rank, way, harm) = lack(Ppe::ALL[*index]);
        lacking.push((rank, Road::harms(way, Led::Lacks(*index), harm)));
    }
    lacking.sort_by_key(|(rank, _)| *rank);
    let more = (0..=nothing).filter(|index| !right.contains(index));
    lacking
        .into_iter()
        .map(|(_, road)| road)
        .chain(more.map(|index| Road::new(Way::MoreThanAsked, Led::Has(index))))
        .collect()
}
