//! The records of the site: found, and held to their limits.

use super::super::action::Shelf;
use super::super::rules::{LABEL, STANDARD};
use super::super::{Field, Outcome, Typed, What};
use crate::number::Marks;
use crate::site::Record;
use crate::trade::label::{self, LabelMistake};

/// The name of the field with a standard's dilution.
pub const DILUTION: &str = "standard-dilution";

/// Holds the record asked about to what its fields take: every number to its limit, its label and its dilution to
/// what reads as one. What is left empty is no mistake here.
pub fn check(typed: &Typed, shelf: Shelf, marks: Marks) -> Outcome {
    let mut out = Outcome::default();
    for field in fields(typed, shelf) {
        let Some(entry) = field.entry(typed) else { continue };
        if let Err(mistake) = entry.check(field.limit(), field.units(), marks) {
            out.trouble(field.name(), What::Number(mistake));
        }
    }
    let labels: Vec<(&str, &String)> = match shelf {
        Shelf::Product => typed
            .product()
            .map(|product| vec![(LABEL, &product.label), (STANDARD, &product.standard)])
            .unwrap_or_default(),
        Shelf::Standard => typed.standard().map(|one| vec![(DILUTION, &one.dilution)]).unwrap_or_default(),
        _ => Vec::new(),
    };
    for (name, text) in labels {
        match label::read(text, typed.system) {
            Ok(_) | Err(LabelMistake::Empty) => {}
            Err(mistake) => out.trouble(name, What::Label(mistake)),
        }
    }
    let own = shelf
        .chosen(typed)
        .and_then(|id| shelf.records(&typed.site).into_iter().enumerate().find(|(_, one)| one.id() == id));
    if let Some((index, _)) = own.filter(|(_, own)| shares_name(typed, shelf, *own)) {
        let name = match shelf {
            Shelf::Area => format!("area-{}-name", index + 1),
            _ => format!("{}-name", shelf.code()),
        };
        out.trouble(name, What::SameName);
    }
    out
}

/// Whether another record of the shelf that is in use bears the name of this one. Capitals and spaces make no other
/// name; the versions of a standard for one floor may share theirs.
///
/// ```
/// use brimline::form::{Typed, action::Shelf, site::library::shares_name};
/// let mut typed = Typed::default();
/// assert!(!shares_name(&typed, Shelf::Machine, &typed.site.machines[0]));
/// typed.site.machines[1].name = typed.site.machines[0].name.to_uppercase();
/// assert!(shares_name(&typed, Shelf::Machine, &typed.site.machines[0]));
/// ```
pub fn shares_name(typed: &Typed, shelf: Shelf, record: &dyn Record) -> bool {
    let plain = |name: &str| name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
    let name = plain(record.name());
    let floor = |id: &str| typed.site.standards.iter().find(|one| one.id == id).map(|one| one.floor.as_str());
    let another = |one: &dyn Record| {
        one.id() != record.id()
            && !one.retired()
            && plain(one.name()) == name
            && (shelf != Shelf::Standard || floor(one.id()) != floor(record.id()))
    };
    !name.is_empty() && !record.retired() && shelf.records(&typed.site).into_iter().any(another)
}

/// The number fields of the record asked about.
pub fn fields(typed: &Typed, shelf: Shelf) -> Vec<Field> {
    let area = typed.area().and_then(|area| typed.site.areas.iter().position(|one| one.id == area.id));
    let ours = |field: &Field| {
        let key = field.key();
        match shelf {
            Shelf::Machine => key.starts_with("machine-") || key.starts_with("catch-"),
            Shelf::Product => key.starts_with("product-") || key.starts_with("part-"),
            Shelf::Floor => key.starts_with("floor-"),
            Shelf::Finish => key.starts_with("finish-"),
            Shelf::Measure => key.starts_with("measure-"),
            Shelf::Area => key.starts_with("area-") && field.number() == area.map(|index| index + 1),
            Shelf::Trial => key.starts_with("trial-") || key.starts_with("patch-"),
            Shelf::Standard => key.starts_with("standard-"),
        }
    };
    Field::all(typed).into_iter().filter(ours).collect()
}

/// The records of the open shelf whose name has every word that was searched for, with their places in the list.
///
/// ```
/// use brimline::form::{Typed, site::library::found};
/// let mut typed = Typed::default();
/// typed.ask.site.search = "WALK small".into();
/// let names: Vec<&str> = found(&typed).iter().map(|(_, one)| one.name()).collect();
/// assert_eq!(names, ["Small walk-behind"]);
/// ```
pub fn found(typed: &Typed) -> Vec<(usize, &dyn Record)> {
    let words: Vec<String> = typed.ask.site.search.split_whitespace().map(str::to_lowercase).collect();
    let has = |(_, record): &(usize, &dyn Record)| {
        let name = record.name().to_lowercase();
        words.iter().all(|word| name.contains(word.as_str()))
    };
    typed.ask.site.shelf.records(&typed.site).into_iter().enumerate().filter(has).collect()
}
