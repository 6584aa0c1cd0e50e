//! Taking some of the changes that another site brings.

use super::change::{Change, What};
use super::file::hold;
use super::records::{self, find, id};
use super::{Reason, Refusal};
use crate::site::Site;
use serde_json::Value;

/// The older site with the chosen ones of the changes that [`compare`](super::compare) found between the two.
/// With all of them it is the newer site, with none the older.
///
/// # Errors
/// A [`Refusal`] where the choice does not hold together: an area was taken without the floor that it names.
///
/// ```
/// use brimline::site::{demo, passing::{choose, compare}};
/// let (old, mut new) = (demo(), demo());
/// new.machines[0].tank.text = "15".into();
/// new.products[0].name = "Another name".into();
/// let changes = compare(&old, &new);
/// let mut wanted = old.clone();
/// wanted.machines[0].tank.text = "15".into();
/// assert_eq!(choose(&old, &new, &changes[..1]), Ok(wanted));
/// assert_eq!(choose(&old, &new, &changes), Ok(new));
/// ```
pub fn choose(old: &Site, new: &Site, chosen: &[Change]) -> Result<Site, Refusal> {
    let (mut site, newer) = (records::value(old), records::value(new));
    for change in chosen.iter().filter(|change| change.list.is_empty()) {
        put(&mut site, change);
    }
    for list in records::fields() {
        let of_list: Vec<&Change> = chosen.iter().filter(|change| change.list == list).collect();
        if let Some(Value::Array(all)) = site.get_mut(list).filter(|_| !of_list.is_empty()) {
            take(all, records::records(&newer, list), &of_list);
        }
    }
    hold(&site)?;
    records::site(&site).map_err(|words| Refusal::at("site", Reason::Unreadable(words)))
}

fn put(record: &mut Value, change: &Change) {
    if let (What::Field { field, after, .. }, Value::Object(object)) = (&change.what, record) {
        object.insert(field.clone(), after.clone());
    }
}

fn take(all: &mut Vec<Value>, newer: &[Value], chosen: &[&Change]) {
    for change in chosen {
        match change.what {
            What::Removed => all.retain(|record| id(record) != change.id),
            What::Field { .. } => {
                all.iter_mut().filter(|one| id(one) == change.id).for_each(|one| put(one, change));
            }
            What::Added { .. } | What::Moved { .. } => {}
        }
    }
    // From the first on: what stands before a record is in its place when the record comes.
    for (index, record) in newer.iter().enumerate() {
        let change = chosen.iter().find(|change| {
            change.id == id(record) && matches!(change.what, What::Added { .. } | What::Moved { .. })
        });
        let own = match change.map(|change| &change.what) {
            Some(What::Added { .. }) => record.clone(),
            Some(_) => match all.iter().position(|one| id(one) == id(record)) {
                Some(at) => all.remove(at),
                None => continue,
            },
            None => continue,
        };
        let before =
            newer[..index].iter().rev().find_map(|one| all.iter().position(|own| id(own) == id(one)));
        debug_assert!(find(all, id(record)).is_none(), "no record twice");
        all.insert(before.map_or(0, |at| at + 1), own);
    }
}
