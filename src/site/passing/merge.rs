//! Two sites that grew apart from one, as one again.

use super::conflict::{Clash, Conflict, Decision, Side};
use super::order::weave;
use super::records::{self, id, name, records as list_of};
use crate::site::Site;
use serde_json::{Map, Value};
use std::collections::BTreeSet;

mod circles;
mod rename;
mod used;

/// What came out of a merge.
#[derive(Clone, Debug, PartialEq)]
pub struct Merged {
    /// The site.
    pub site: Site,
    /// What is still to be decided.
    pub conflicts: Vec<Conflict>,
    /// Records of theirs that got another id, since ours has another record with theirs.
    pub renamed: Vec<Renamed>,
}

/// A record that got another id, everywhere.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Renamed {
    /// Its list.
    pub list: String,
    /// The id that it had in their site.
    pub from: String,
    /// The id that it has in the merged one.
    pub to: String,
}

/// Merges what two people made of one site, field by field.
///
/// What one changed and the other did not is taken. What both changed in the same way is taken once. Where they
/// differ, a [`Conflict`] shows both. New records with the same id are the same one if they say the same; else
/// both stay, theirs under a new id. Sites whose edits touch different records come out the same whoever merges
/// and in whatever order.
///
/// ```
/// use brimline::site::{demo, passing::{Side, decide, merge}};
/// let (base, mut ours, mut theirs) = (demo(), demo(), demo());
/// ours.machines[0].tank.text = "15".into();
/// theirs.machines[0].tank.text = "12".into();
/// theirs.machines[1].name = "Robot".into();
/// let merged = merge(&base, &ours, &theirs);
/// assert_eq!(merged.site.machines[0].tank.text, "15");
/// assert_eq!(merged.site.machines[1].name, "Robot");
/// let decision = merged.conflicts[0].take(Side::Theirs);
/// let decided = decide(&base, &ours, &theirs, &[decision]);
/// assert_eq!(decided.site.machines[0].tank.text, "12");
/// assert!(decided.conflicts.is_empty());
/// ```
pub fn merge(base: &Site, ours: &Site, theirs: &Site) -> Merged {
    decide(base, ours, theirs, &[])
}

/// Merges as [`merge`] does, with what somebody decided about its conflicts. Only what is still to be decided
/// comes back as a conflict.
pub fn decide(base: &Site, ours: &Site, theirs: &Site, decisions: &[Decision]) -> Merged {
    let [base, our, mut their] = [base, ours, theirs].map(records::value);
    let renamed = rename::apart(&base, &our, &mut their);
    let mut work = Work { base: &base, ours: &our, theirs: &their, decisions, conflicts: Vec::new() };
    let mut site = Value::Object(work.site());
    circles::open(&mut work, &mut site);
    let conflicts = work.conflicts;
    // Made of three sites, value for value: a site. Should it not be one, ours is not lost.
    let site = records::site(&site).unwrap_or_else(|_| ours.clone());
    Merged { site, conflicts, renamed }
}

struct Work<'a> {
    base: &'a Value,
    ours: &'a Value,
    theirs: &'a Value,
    decisions: &'a [Decision],
    conflicts: Vec<Conflict>,
}

impl<'a> Work<'a> {
    fn decided(&self, list: &str, id: &str, field: &str) -> Option<Side> {
        let is = |one: &&Decision| one.list == list && one.id == id && one.field == field;
        self.decisions.iter().rfind(is).map(|one| one.side)
    }

    fn clash(&mut self, list: &str, record: Option<&Value>, clash: Clash) {
        let [id, name] = [id, name].map(|of| record.map(of).unwrap_or_default().to_owned());
        self.conflicts.push(Conflict { list: list.to_owned(), id, name, clash });
    }

    fn site(&mut self) -> Map<String, Value> {
        let of_itself: Vec<&str> =
            records::fields().filter(|field| !self.ours.get(*field).is_some_and(Value::is_array)).collect();
        let mut site = self.fields("", self.base, self.ours, self.theirs, of_itself.iter().copied());
        let lists: Vec<&str> = records::fields().filter(|field| !of_itself.contains(field)).collect();
        let mut stay: Vec<(&str, Vec<Value>)> = lists.iter().map(|list| (*list, self.list(list))).collect();
        used::keep(self, &mut stay);
        for (list, records) in stay {
            let records = self.ordered(list, &records);
            site.insert(list.to_owned(), records);
        }
        site
    }

    /// Field by field; `ours` is the record that conflicts are told of.
    fn fields<'k>(
        &mut self,
        list: &str,
        base: &Value,
        ours: &Value,
        theirs: &Value,
        fields: impl Iterator<Item = &'k str>,
    ) -> Map<String, Value> {
        let mut record = Map::new();
        for field in fields {
            let [was, our, their] =
                [base, ours, theirs].map(|record| record.get(field).cloned().unwrap_or_default());
            let value = if our == their || their == was {
                our
            } else if our == was {
                their
            } else {
                let told = (!list.is_empty()).then_some(ours);
                match self.decided(list, told.map(id).unwrap_or_default(), field) {
                    Some(Side::Ours) => our,
                    Some(Side::Theirs) => their,
                    None => {
                        let kept = our.clone();
                        let field = field.to_owned();
                        self.clash(list, told, Clash::Field { field, base: was, ours: our, theirs: their });
                        kept
                    }
                }
            };
            record.insert(field.to_owned(), value);
        }
        record
    }

    /// The records that stay, in no order yet.
    fn list(&mut self, list: &str) -> Vec<Value> {
        let [base, ours, theirs] = [self.base, self.ours, self.theirs].map(|site| list_of(site, list));
        let mut seen = BTreeSet::new();
        let ids: Vec<&str> = ours.iter().chain(theirs).map(id).filter(|id| seen.insert(*id)).collect();
        let [base, ours, theirs] = [base, ours, theirs].map(index);
        ids.into_iter()
            .filter_map(|id| self.record(list, base.get(id), ours.get(id), theirs.get(id)))
            .collect()
    }

    fn record(
        &mut self,
        list: &str,
        base: Option<&&'a Value>,
        ours: Option<&&'a Value>,
        theirs: Option<&&'a Value>,
    ) -> Option<Value> {
        match (base, ours, theirs) {
            (Some(was), Some(our), Some(their)) => {
                let keys = our.as_object().into_iter().flat_map(|record| record.keys().map(String::as_str));
                Some(Value::Object(self.fields(list, was, our, their, keys)))
            }
            (None, Some(new), _) | (None, None, Some(new)) => Some((*new).clone()),
            (Some(was), Some(our), None) => {
                let side = self.decided(list, id(our), "");
                if was == our || side == Some(Side::Theirs) {
                    return None;
                }
                if side.is_none() {
                    self.clash(list, Some(our), Clash::RemovedThere { ours: (*our).clone() });
                }
                Some((*our).clone())
            }
            (Some(was), None, Some(their)) => {
                let side = self.decided(list, id(their), "");
                if was == their || side == Some(Side::Ours) {
                    return None;
                }
                if side.is_none() {
                    self.clash(list, Some(their), Clash::RemovedHere { theirs: (*their).clone() });
                    return None;
                }
                Some((*their).clone())
            }
            (_, None, None) => None,
        }
    }

    fn ordered(&mut self, list: &str, records: &[Value]) -> Value {
        let [base, ours, theirs] = [self.base, self.ours, self.theirs]
            .map(|site| list_of(site, list).iter().map(id).collect::<Vec<&str>>());
        let side = self.decided(list, "", "");
        let staying = index(records);
        let woven = weave(&base, &ours, &theirs, |id| staying.contains_key(id), side == Some(Side::Theirs));
        if woven.clash && side.is_none() {
            self.clash(list, None, Clash::Order);
        }
        woven.ids.iter().filter_map(|id| staying.get(id).map(|record| (*record).clone())).collect()
    }
}

fn index(records: &[Value]) -> std::collections::BTreeMap<&str, &Value> {
    records.iter().map(|record| (id(record), record)).collect()
}
