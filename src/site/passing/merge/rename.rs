//! Two new records that happen to have one id.

use super::Renamed;
use crate::site::passing::records::{self, find, id, records as list_of};
use crate::site::passing::references::REFERENCES;
use serde_json::Value;
use std::collections::BTreeSet;

/// Gives records of theirs another id where ours has another new record with that id, and changes every
/// field of theirs that names them. Devices count ids up by themselves, so that two people who each add a
/// record are likely to have made the same one.
pub(super) fn apart(base: &Value, ours: &Value, theirs: &mut Value) -> Vec<Renamed> {
    let mut renamed = Vec::new();
    for list in records::fields() {
        let [was, our, their] = [base, ours, &*theirs].map(|site| list_of(site, list));
        let mut used: BTreeSet<String> =
            [was, our, their].into_iter().flatten().map(|one| id(one).to_owned()).collect();
        let others = their
            .iter()
            .filter(|new| find(was, id(new)).is_none() && find(our, id(new)).is_some_and(|own| own != *new));
        for record in others {
            let from = id(record).to_owned();
            let mut to = from.clone();
            for count in 2_u64.. {
                to = format!("{from}-{count}");
                if !used.contains(&to) {
                    break;
                }
            }
            used.insert(to.clone());
            renamed.push(Renamed { list: list.to_owned(), from, to });
        }
    }
    for Renamed { list, from, to } in &renamed {
        if let Some(Value::Array(records)) = theirs.get_mut(list)
            && let Some(record) = records.iter_mut().find(|record| id(record) == from)
        {
            record["id"] = to.as_str().into();
        }
        for row in REFERENCES.iter().filter(|row| row.target == list) {
            let Some(Value::Array(records)) = theirs.get_mut(row.list) else { continue };
            records
                .iter_mut()
                .filter_map(|record| record.get_mut(row.field))
                .for_each(|held| replace(held, row.within, from, to));
        }
    }
    renamed
}

/// Puts one id in the place of another, in a field or in the list that it is, of ids or of what has one `within`.
pub(super) fn replace(held: &mut Value, within: &str, from: &str, to: &str) {
    match held {
        Value::Array(ids) => ids.iter_mut().for_each(|held| replace(held, within, from, to)),
        Value::Object(entry) => {
            if let Some(held) = entry.get_mut(within) {
                replace(held, within, from, to);
            }
        }
        Value::String(id) if id == from => to.clone_into(id),
        _ => {}
    }
}
