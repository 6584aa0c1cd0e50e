//! Records that one side removed and the other names.

use super::{Clash, Side, Work, index, rename::replace};
use crate::site::passing::conflict::Use;
use crate::site::passing::records::{id, name, records as list_of};
use crate::site::passing::references::{Held, REFERENCES, held};
use crate::site::unknown;
use serde_json::{Map, Value};
use std::collections::{BTreeMap, BTreeSet};

/// Brings back a record that one side removed and something of the merged site names, or, where the removal was
/// decided, makes what names it ask for another one by its name.
pub(super) fn keep(work: &mut Work, lists: &mut [(&str, Vec<Value>)]) {
    let missing = missing(work.ours, lists);
    let targets: BTreeSet<&str> = missing.keys().map(|(list, _)| *list).collect();
    let mut told = BTreeSet::new();
    for target in targets {
        let [ours, theirs] = [work.ours, work.theirs].map(|site| index(list_of(site, target)));
        for ((_, id), used) in missing.iter().filter(|((list, _), _)| *list == target) {
            let (record, removed_by, other) = match (ours.get(id.as_str()), theirs.get(id.as_str())) {
                (None, Some(record)) => (*record, Side::Ours, Side::Theirs),
                (Some(record), None) => (*record, Side::Theirs, Side::Ours),
                // It hung in the air in their site already, and still does.
                _ => continue,
            };
            let decided = work.decided(target, id, "");
            if decided == Some(removed_by) {
                ask(lists, target, id, &unknown::id(name(record)));
                continue;
            }
            if decided != Some(other) {
                told.insert((target, id.clone()));
                work.clash(target, Some(record), Clash::StillUsed { removed_by, used: used.clone() });
            }
            if let Some((_, records)) = lists.iter_mut().find(|(list, _)| *list == target) {
                records.push(record.clone());
            }
        }
    }
    // That it is used says more than that the other one changed it.
    work.conflicts.retain(|known| match known.clash {
        Clash::RemovedHere { .. } | Clash::RemovedThere { .. } => {
            !told.contains(&(known.list.as_str(), known.id.clone()))
        }
        _ => true,
    });
}

/// By list and id, the records that are named and not there, with what names them; without those that our site
/// names from the same field and does not have either.
fn missing(ours: &Value, lists: &[(&str, Vec<Value>)]) -> BTreeMap<(&'static str, String), Vec<Use>> {
    let merged = lists.iter().map(|(list, records)| ((*list).to_owned(), Value::Array(records.clone())));
    let merged = Value::Object(merged.collect::<Map<_, _>>());
    let (here, there) = (Ids::of(&merged), Ids::of(ours));
    let mut missing: BTreeMap<_, Vec<Use>> = BTreeMap::new();
    for one in held(&merged).filter(|one| here.lacks(one) && !(there.lacks(one) && there.holds(one))) {
        let [list, id, field] = [one.row.list, one.by, one.row.field].map(str::to_owned);
        missing.entry((one.row.target, one.id.to_owned())).or_default().push(Use { list, id, field });
    }
    missing
}

/// What a site has and names.
struct Ids<'a> {
    has: BTreeSet<(&'a str, &'a str)>,
    held: BTreeSet<(&'a str, &'a str, &'a str, &'a str)>,
}

impl<'a> Ids<'a> {
    fn of(site: &'a Value) -> Self {
        let targets = REFERENCES.iter().map(|row| row.target);
        let has = targets
            .flat_map(|list| list_of(site, list).iter().map(move |record| (list, id(record))))
            .collect();
        Self { has, held: held(site).map(|one| (one.row.list, one.row.field, one.by, one.id)).collect() }
    }

    fn lacks(&self, one: &Held) -> bool {
        !self.has.contains(&(one.row.target, one.id))
    }

    fn holds(&self, one: &Held) -> bool {
        self.held.contains(&(one.row.list, one.row.field, one.by, one.id))
    }
}

/// Puts what asks for another record in the place of every id of this one.
fn ask(lists: &mut [(&str, Vec<Value>)], target: &str, id: &str, asks: &str) {
    for row in REFERENCES.iter().filter(|row| row.target == target) {
        let records = lists.iter_mut().filter(|(list, _)| *list == row.list).flat_map(|(_, all)| all);
        records.filter_map(|one| one.get_mut(row.field)).for_each(|held| replace(held, row.within, id, asks));
    }
}
