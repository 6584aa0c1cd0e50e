//! References that run in a circle only when both sites are put together.

use super::{Clash, Side, Work, index};
use crate::site::passing::records::{id, records as list_of};
use crate::site::passing::references::{circle, held};
use serde_json::Value;

/// Opens circles that neither site has alone: fields of theirs go back to ours, or, where theirs was decided,
/// ours to theirs.
pub(super) fn open(work: &mut Work, site: &mut Value) {
    // Each round takes one field to one side for good, and there are two sides.
    for _ in 0..=2 * held(site).count() {
        let Some(round) = circle(site) else { return };
        let fields: Vec<(&str, String, &str)> =
            round.iter().map(|one| (one.row.list, one.by.to_owned(), one.row.field)).collect();
        let of = |site: &Value, (list, id, field): &(&str, String, &str)| {
            index(list_of(site, list)).get(id.as_str()).and_then(|one| one.get(*field)).cloned()
        };
        let from = |side: Side, at: &&(&str, String, &str)| {
            let own = if side == Side::Ours { work.ours } else { work.theirs };
            of(own, at).is_some_and(|own| Some(own) != of(site, at))
        };
        let decided = |at: &(&str, String, &str)| work.decided(at.0, &at.1, at.2);
        let back =
            fields.iter().filter(|at| from(Side::Ours, at)).find(|at| decided(at) != Some(Side::Theirs));
        let (at, taken) = match (back, fields.iter().find(|at| from(Side::Theirs, at))) {
            (Some(at), _) => (at.clone(), Side::Ours),
            (None, Some(at)) => (at.clone(), Side::Theirs),
            (None, None) => return,
        };
        let [ours, theirs] = [work.ours, work.theirs].map(|site| of(site, &at).unwrap_or_default());
        let value = if taken == Side::Ours { ours.clone() } else { theirs.clone() };
        let undecided = decided(&at).is_none() && taken == Side::Ours;
        let Some(Value::Array(records)) = site.get_mut(at.0) else { return };
        let Some(record) = records.iter_mut().find(|record| id(record) == at.1) else { return };
        record[at.2] = value;
        if undecided {
            let record = record.clone();
            work.clash(at.0, Some(&record), Clash::Circle { field: at.2.to_owned(), ours, theirs });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::site::passing::{Conflict, Decision};
    use serde_json::json;

    /// Records of `standards` with what each replaces.
    fn standards(replaces: [&str; 3]) -> Value {
        let one = |(id, replaces): (&str, &str)| json!({"id": id, "name": id, "replaces": replaces});
        let all: Value = ["a", "b", "c"].into_iter().zip(replaces).map(one).collect();
        json!({ "standards": all })
    }

    /// What both say of `replaces`, field by field and ours first, and how a merge opens the circle in it.
    fn opened(
        ours: [&str; 3],
        theirs: [&str; 3],
        mixed: [&str; 3],
        decisions: &[Decision],
    ) -> (Value, Vec<Conflict>) {
        let (base, ours, theirs, mut site) =
            (standards(["", "", ""]), standards(ours), standards(theirs), standards(mixed));
        let mut work = Work { base: &base, ours: &ours, theirs: &theirs, decisions, conflicts: Vec::new() };
        open(&mut work, &mut site);
        assert_eq!(circle(&site), None);
        (site, work.conflicts)
    }

    #[test]
    fn a_circle_that_neither_has_alone_is_opened_and_told() {
        let (ours, theirs) = (["b", "", ""], ["", "a", "b"]);
        let (site, conflicts) = opened(ours, theirs, ["b", "a", "b"], &[]);
        assert_eq!(site, standards(["b", "", "b"]), "ours is kept, and what is in no circle");
        assert_eq!(conflicts.len(), 1);
        assert_eq!(
            (conflicts[0].code(), conflicts[0].id.as_str(), conflicts[0].field()),
            ("conflict-circle", "b", "replaces")
        );
        let theirs_taken = opened(ours, theirs, ["b", "a", "b"], &[conflicts[0].take(Side::Theirs)]);
        assert_eq!(theirs_taken, (standards(["", "a", "b"]), vec![]));
        let ours_taken = opened(ours, theirs, ["b", "a", "b"], &[conflicts[0].take(Side::Ours)]);
        assert_eq!(ours_taken, (standards(["b", "", "b"]), vec![]));
    }

    #[test]
    fn a_circle_of_three() {
        let (site, conflicts) = opened(["b", "c", ""], ["", "", "a"], ["b", "c", "a"], &[]);
        assert_eq!((site, conflicts.len()), (standards(["b", "c", ""]), 1));
    }
}
