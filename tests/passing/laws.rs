//! The laws of the merge.

use super::edits::{edited, is_reference, lists, other, site, value};
use brimline::site::passing::{Merged, Side, compare, decide, merge, write};
use brimline::site::{Site, demo};
use proptest::prelude::*;

/// What came out without anything left to decide.
fn clean(merged: Merged) -> Site {
    assert_eq!(merged.conflicts, [], "nothing clashes");
    assert_eq!(merged.renamed, [], "no id is taken twice");
    merged.site
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn merging_with_itself_and_with_the_base(base in edited("b"), a in edited("a")) {
        for (ours, theirs) in [(&a, &a), (&a, &base), (&base, &a)] {
            let merged = clean(merge(&base, ours, theirs));
            prop_assert!(merged == a, "{:#?}", compare(&a, &merged));
        }
    }

    /// Whatever clashes, the result holds together and each decision takes its conflict away.
    #[test]
    fn every_merge_holds_together(base in edited("b"), ours in edited("n"), theirs in edited("n"), sides in any::<u64>()) {
        let merged = merge(&base, &ours, &theirs);
        prop_assert!(write(&merged.site).is_ok(), "{:?}", write(&merged.site));
        prop_assert_eq!(merge(&base, &ours, &theirs), merged.clone());
        let mut decisions = Vec::new();
        let mut left = merged.conflicts;
        for round in 0.. {
            if left.is_empty() {
                break;
            }
            prop_assert!(round < 4, "decisions lead to new conflicts for ever: {left:?}");
            let side = |at: usize| if sides >> (at % 64) & 1 == 0 { Side::Ours } else { Side::Theirs };
            decisions.extend(left.iter().enumerate().map(|(at, one)| one.take(side(at))));
            let decided = decide(&base, &ours, &theirs, &decisions);
            prop_assert!(write(&decided.site).is_ok(), "{:?}", write(&decided.site));
            left = decided.conflicts;
        }
    }
}

/// An edit of one of three people who never touch the same.
#[derive(Clone, Debug)]
enum Own {
    Field { list: usize, record: usize, field: usize },
    Remove { list: usize, record: usize },
    Add { list: usize },
    Move { from: usize, to: usize },
}

fn own() -> impl Strategy<Value = Vec<Own>> {
    let n = || 0..64_usize;
    let one = prop_oneof![
        4 => (n(), n(), n()).prop_map(|(list, record, field)| Own::Field { list, record, field }),
        1 => (n(), n()).prop_map(|(list, record)| Own::Remove { list, record }),
        2 => n().prop_map(|list| Own::Add { list }),
        1 => (n(), n()).prop_map(|(from, to)| Own::Move { from, to }),
    ];
    prop::collection::vec(one, 0..10)
}

/// Every fourth record is shared, field by field; of the others each has its third. Only person 0 changes the
/// order of areas. New records stand at the end, and the last of the old ones stays.
fn apart(edits: &[Own], who: usize) -> Site {
    let base = value(&demo());
    let mut whole = base.clone();
    for (count, edit) in edits.iter().enumerate() {
        let lists = lists();
        match edit {
            Own::Field { list, record, field } => {
                let (list, fields) = lists[list % lists.len()];
                let old = base[list].as_array().expect("a list");
                if old.is_empty() {
                    continue;
                }
                let fields: Vec<_> = fields.iter().filter(|(field, _)| !is_reference(field)).collect();
                let (record, field) = (record % old.len(), field % fields.len());
                let mine = if record % 4 == 3 { field % 3 == who } else { record % 4 == who };
                let id = &old[record]["id"];
                let found =
                    whole[list].as_array_mut().expect("a list").iter_mut().find(|one| one["id"] == *id);
                if let Some(found) = found.filter(|_| mine) {
                    let (field, shape) = fields[field];
                    other(&mut found[*field], shape);
                }
            }
            Own::Remove { list, record } => {
                let list = ["areas", "measures"][list % 2];
                let old = base[list].as_array().expect("a list");
                let record = record % (old.len() - 1);
                if record % 4 == who {
                    let id = &old[record]["id"];
                    whole[list].as_array_mut().expect("a list").retain(|one| one["id"] != *id);
                }
            }
            Own::Add { list } => {
                let (list, _) = lists[list % lists.len()];
                let mut copy = base[list][0].clone();
                // Ids in no order, as different devices make them.
                copy["id"] = format!("{}-{who}-{count}", (count * 7 + who * 3) % 10).into();
                whole[list].as_array_mut().expect("a list").push(copy);
            }
            Own::Move { from, to } if who == 0 => {
                let areas = whole["areas"].as_array_mut().expect("areas");
                let area = areas.remove(from % areas.len());
                areas.insert(to % (areas.len() + 1), area);
            }
            Own::Move { .. } => {}
        }
    }
    site(whole)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn disjoint_edits_come_out_the_same_whoever_merges(a in own(), b in own(), c in own()) {
        let base = demo();
        let [a, b, c] = [apart(&a, 0), apart(&b, 1), apart(&c, 2)];
        let both = clean(merge(&base, &a, &b));
        prop_assert_eq!(&both, &clean(merge(&base, &b, &a)));
        let left = clean(merge(&base, &both, &c));
        let right = clean(merge(&base, &a, &clean(merge(&base, &b, &c))));
        prop_assert_eq!(left, right);
    }

    /// Nothing that one of them typed is lost.
    #[test]
    fn every_disjoint_edit_is_there(a in own(), b in own()) {
        let base = demo();
        let [a, b] = [apart(&a, 0), apart(&b, 1)];
        let merged = value(&clean(merge(&base, &a, &b)));
        let (base, sides) = (value(&base), [value(&a), value(&b)]);
        for (list, fields) in lists() {
            let find = |site: &serde_json::Value, id: &serde_json::Value| {
                site[list].as_array().expect("a list").iter().find(|one| one["id"] == *id).cloned()
            };
            for side in &sides {
                for record in side[list].as_array().expect("a list") {
                    let Some(was) = find(&base, &record["id"]) else {
                        prop_assert_eq!(find(&merged, &record["id"]), Some(record.clone()));
                        continue;
                    };
                    for (field, _) in fields.iter().filter(|(field, _)| record[*field] != was[*field]) {
                        let now = find(&merged, &record["id"]).map(|one| one[*field].clone());
                        prop_assert_eq!(now, Some(record[*field].clone()));
                    }
                }
            }
        }
    }
}
