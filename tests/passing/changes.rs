//! What differs between two sites, and taking some of it.

use super::edits::edited;
use brimline::number::Marks;
use brimline::site::passing::{Unread, What, choose, compare, readable, unread};
use brimline::site::{Area, Entry, Floor, demo};
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    /// None of the changes is the older site, all of them the newer one.
    #[test]
    fn all_changes_make_the_newer_site(old in edited("o"), new in edited("n")) {
        let changes = compare(&old, &new);
        prop_assert_eq!(changes.is_empty(), old == new);
        prop_assert_eq!(choose(&old, &new, &[]), Ok(old.clone()));
        prop_assert_eq!(choose(&old, &new, &changes), Ok(new.clone()));
        prop_assert_eq!(compare(&old, &new), changes);
    }

    /// What was taken is no change any more, and what was left still is one.
    #[test]
    fn some_changes_leave_the_others(old in edited("o"), new in edited("n"), taken in any::<u64>()) {
        let changes = compare(&old, &new);
        let fields = |changes: &[brimline::site::passing::Change]| -> Vec<(String, String, String)> {
            let field = |change: &brimline::site::passing::Change| match &change.what {
                What::Field { field, .. } => Some((change.list.clone(), change.id.clone(), field.clone())),
                _ => None,
            };
            changes.iter().filter_map(field).collect()
        };
        let is_taken = |at: usize| taken >> (at % 64) & 1 == 1;
        let some: Vec<_> = changes.iter().enumerate().filter(|(at, _)| is_taken(*at)).map(|(_, one)| one.clone()).collect();
        let Ok(site) = choose(&old, &new, &some) else {
            // It did not hold together: a record was taken or removed without what goes with it.
            return Ok(());
        };
        let left = fields(&compare(&site, &new));
        for change in fields(&some) {
            prop_assert!(!left.contains(&change), "{change:?} was taken");
        }
        let others: Vec<_> =
            changes.iter().enumerate().filter(|(at, _)| !is_taken(*at)).map(|(_, one)| one.clone()).collect();
        for change in fields(&others) {
            prop_assert!(left.contains(&change), "{change:?} was left");
        }
    }
}

#[test]
fn each_kind_is_told() {
    let old = demo();
    let mut new = demo();
    new.name = "Annex".into();
    new.machines[1].tank = Entry::new("15", "gal_us");
    new.machines[1].settings.pop();
    let gone = new.measures.remove(0);
    new.floors.push(Floor { id: "n1".into(), name: "Cork".into(), ..Floor::default() });
    let first = new.areas.remove(0);
    new.areas.push(first);
    let told: Vec<String> = compare(&old, &new)
        .iter()
        .map(|change| {
            let what = match &change.what {
                What::Field { field, before, after } => {
                    format!("{field}: {} -> {}", readable(before), readable(after))
                }
                What::Added { to } => format!("at {to}"),
                What::Moved { from, to } => format!("{from} -> {to}"),
                What::Removed => String::new(),
            };
            format!("{} {}/{} ({}) {what}", change.code(), change.list, change.id, change.name)
        })
        .collect();
    let (last, areas) = (old.floors.len() + 1, old.areas.len());
    assert_eq!(
        told,
        [
            "change-field / () name: Alder County library and sports hall (invented) -> Annex".to_owned(),
            "change-field machines/self-driving (Self-driving, reuses its solution) settings: 0.08 gal_us_per_min, \
             0.12 gal_us_per_min, 0.18 gal_us_per_min, 0.26 gal_us_per_min -> 0.08 gal_us_per_min, 0.12 \
             gal_us_per_min, 0.18 gal_us_per_min"
                .to_owned(),
            "change-field machines/self-driving (Self-driving, reuses its solution) tank: 10 gal_us -> 15 gal_us"
                .to_owned(),
            format!("change-added floors/n1 (Cork) at {last}"),
            format!("change-removed measures/{} ({}) ", gone.id, gone.name),
            format!("change-moved areas/{} ({}) 1 -> {areas}", old.areas[0].id, old.areas[0].name),
        ]
    );
}

/// One record that went to another place is one change, not a change of every record between.
#[test]
fn the_fewest_records_move() {
    let area = |n: usize| Area { id: format!("n{n}"), ..Area::default() };
    let old = brimline::site::Site { areas: (0..5_000).map(area).collect(), ..Default::default() };
    let mut new = old.clone();
    new.areas.rotate_left(1);
    new.areas.swap(10, 20);
    let changes = compare(&old, &new);
    assert_eq!(changes.len(), 3);
    assert_eq!(choose(&old, &new, &changes), Ok(new));
}

/// What does not hold together by itself is refused, and tells what is missing.
#[test]
fn a_choice_must_hold_together() {
    let old = demo();
    let mut new = demo();
    new.floors.push(Floor { id: "n1".into(), ..Floor::default() });
    new.areas.push(Area { id: "n1".into(), floor: "n1".into(), ..Area::default() });
    let changes = compare(&old, &new);
    assert_eq!(changes.len(), 2);
    let refusal = choose(&old, &new, &changes[1..]).expect_err("the floor is missing");
    assert_eq!(
        (refusal.code(), refusal.place.to_string()),
        ("passing-nowhere", format!("site.areas[{}].floor", old.areas.len()))
    );
    assert!(choose(&old, &new, &changes[..1]).is_ok());
}

/// Every number that does not read is found with its record, also in the parts of a record; what is empty is none.
#[test]
fn numbers_that_do_not_read_are_found_in_a_whole_site() {
    let mut site = demo();
    assert_eq!(unread(&site, Marks::POINT), []);
    site.machines[1].tank.text = "1O".into();
    site.products[0].price.text = "1,5,0".into();
    site.floors[0].drop.text = String::new();
    let wrong = unread(&site, Marks::POINT);
    let told =
        |one: &Unread| (one.list.clone(), one.id.clone(), one.number.field.clone(), one.number.text.clone());
    let place = |list: &str, id: &str, field: &str, text: &str| {
        (list.to_owned(), id.to_owned(), field.to_owned(), text.to_owned())
    };
    let all: Vec<_> = wrong.iter().map(told).collect();
    assert_eq!(all.len(), 2, "{all:?}");
    assert!(all.contains(&place("machines", &site.machines[1].id, "tank", "1O")), "{all:?}");
    assert!(all.contains(&place("products", &site.products[0].id, "price", "1,5,0")), "{all:?}");
}
