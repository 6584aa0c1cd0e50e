//! Records that name each other.

use super::records::{id, records};
use super::{Reason, Refusal};
use crate::site::unknown;
use serde_json::Value;
use std::collections::BTreeMap;

/// A field that holds the id of another record, or a list of such ids.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reference {
    /// The list of the record.
    pub list: &'static str,
    /// Its field.
    pub field: &'static str,
    /// The list that the id is of.
    pub target: &'static str,
    /// Where the field is a list of objects, the one of their fields that holds the id; empty elsewhere.
    pub within: &'static str,
}

const fn row(list: &'static str, field: &'static str, target: &'static str) -> Reference {
    Reference { list, field, target, within: "" }
}

/// Every field that names another record. What is empty names none, and so does what
/// [`unknown`] marks: a name to choose a record for.
pub const REFERENCES: &[Reference] = &[
    row("areas", "floor", "floors"),
    row("areas", "product", "products"),
    row("areas", "machine", "machines"),
    row("floors", "finish", "finishes"),
    row("trials", "floor", "floors"),
    row("trials", "product", "products"),
    row("standards", "floor", "floors"),
    row("standards", "product", "products"),
    row("standards", "replaces", "standards"),
    Reference { within: "machine", ..row("standards", "leaves_out", "machines") },
];

/// One id that a record holds of another.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Held<'a> {
    /// The row of the table.
    pub(super) row: &'static Reference,
    /// The index of the record that holds it.
    pub(super) index: usize,
    /// The id of the record that holds it.
    pub(super) by: &'a str,
    /// The id held.
    pub(super) id: &'a str,
}

/// All ids that records of a site hold of others, in the order of the table and the lists.
pub(super) fn held(site: &Value) -> impl Iterator<Item = Held<'_>> {
    REFERENCES.iter().flat_map(move |row| {
        let records = records(site, row.list).iter().enumerate();
        records.flat_map(move |(index, record)| of(row, index, record))
    })
}

fn of<'a>(row: &'static Reference, index: usize, record: &'a Value) -> impl Iterator<Item = Held<'a>> {
    let ids = match record.get(row.field) {
        Some(Value::Array(ids)) => ids.as_slice(),
        Some(one) => std::slice::from_ref(one),
        None => &[],
    };
    let names = ids.iter().filter_map(|one| one.get(row.within).unwrap_or(one).as_str());
    let names = names.filter(|id| !id.is_empty() && unknown::name(id).is_none());
    names.map(move |name| Held { row, index, by: id(record), id: name })
}

/// That every record has an id of its own, that what is named is there, and that nothing names itself by way of
/// others.
pub(super) fn check(site: &Value) -> Result<(), Refusal> {
    let ids = ids(site)?;
    for held in held(site) {
        if !ids.contains_key(&(held.row.target, held.id)) {
            let nowhere = Reason::Nowhere { id: held.id.to_owned(), list: held.row.target };
            return Err(Refusal::at(path(&held), nowhere));
        }
    }
    match circle(site) {
        Some(circle) => {
            let ids = circle.iter().map(|held| held.by.to_owned()).collect();
            let closing = circle.last().map(path).unwrap_or_default();
            Err(Refusal::at(closing, Reason::Circle(ids)))
        }
        None => Ok(()),
    }
}

fn path(held: &Held) -> String {
    format!("site.{}[{}].{}", held.row.list, held.index, held.row.field)
}

/// The index of each record by list and id.
fn ids(site: &Value) -> Result<BTreeMap<(&str, &str), usize>, Refusal> {
    let mut found = BTreeMap::new();
    for (list, value) in site.as_object().into_iter().flatten() {
        for (index, record) in
            value.as_array().into_iter().flatten().enumerate().filter(|(_, one)| one.is_object())
        {
            let id = id(record);
            let at = || format!("site.{list}[{index}].id");
            if id.trim().is_empty() || unknown::name(id).is_some() {
                return Err(Refusal::at(at(), Reason::NoId));
            }
            if found.insert((list.as_str(), id), index).is_some() {
                return Err(Refusal::at(at(), Reason::SameId(id.to_owned())));
            }
        }
    }
    Ok(found)
}

/// The first circle of references, in order: each holds the id of the next one's record, the last that of the
/// first. Walks without calling itself, since a chain may be as long as a list.
pub(super) fn circle(site: &Value) -> Option<Vec<Held<'_>>> {
    let mut from: BTreeMap<(&str, &str), Vec<Held>> = BTreeMap::new();
    for held in held(site) {
        from.entry((held.row.list, held.by)).or_default().push(held);
    }
    // Each step of the way: a record, and how many of its references were followed.
    let mut done: BTreeMap<(&str, &str), bool> = BTreeMap::new();
    for start in from.keys() {
        let mut way = if done.contains_key(start) { vec![] } else { vec![(*start, 0)] };
        done.entry(*start).or_insert(false);
        while let Some((node, next)) = way.last_mut() {
            let Some(held) = from.get(node).and_then(|all| all.get(*next)) else {
                done.insert(*node, true);
                way.pop();
                continue;
            };
            *next += 1;
            let target = (held.row.target, held.id);
            match done.get(&target) {
                None => {
                    done.insert(target, false);
                    way.push((target, 0));
                }
                Some(true) => {}
                Some(false) => {
                    let steps = way.iter().skip_while(|(node, _)| *node != target);
                    return Some(
                        steps.filter_map(|(node, next)| from.get(node)?.get(next - 1).cloned()).collect(),
                    );
                }
            }
        }
    }
    None
}
