//! Records are copied, retired and found; what is referred to stays.

use super::{after, draft, published};
use brimline::form::action::{Line, Shelf, StandardLine};
use brimline::form::site::library::{check, found};
use brimline::form::site::references::referrers;
use brimline::form::site::{Act, may_go};
use brimline::form::{Action, Field, Typed};
use brimline::number::Marks;
use brimline::site::Standing;
use proptest::prelude::*;

#[test]
fn a_copy_has_a_name_and_an_id_of_its_own_and_changes_alone() {
    let typed = after(
        Typed::default(),
        [
            Act::Copy(Shelf::Product, "neutral".into()).action(),
            Act::Copy(Shelf::Product, "neutral".into()).action(),
            Action::Text(Line::Label, "1:100".into()),
        ],
    );
    let named: Vec<&str> = typed.site.products.iter().map(|one| one.name.as_str()).collect();
    assert_eq!(&named[named.len() - 2..], ["Neutral cleaner 2", "Neutral cleaner 3"]);
    let mut ids: Vec<&str> = typed.site.products.iter().map(|one| one.id.as_str()).collect();
    ids.sort_unstable();
    ids.dedup();
    assert_eq!(ids.len(), typed.site.products.len());
    assert_eq!(typed.site.products.iter().filter(|one| one.label == "1:100").count(), 1);
}

#[test]
fn what_is_referred_to_is_retired_and_not_removed() {
    let typed = Typed::default();
    let floor = typed.site.areas[0].floor.clone();
    assert!(!may_go(&typed, Shelf::Floor, &floor));
    let kept =
        after(typed.clone(), [Action::Pick(Shelf::Floor, floor.clone()), Action::Remove(Shelf::Floor, 0)]);
    assert!(kept.site.floors.iter().any(|one| one.id == floor));
    let kept = after(typed.clone(), [Act::Discard(Shelf::Floor, floor.clone()).action()]);
    assert_eq!(kept.site.floors, typed.site.floors);
    let retired = after(typed, [Act::Retire(Shelf::Floor, floor.clone(), true).action()]);
    assert!(retired.site.floors.iter().any(|one| one.id == floor && one.retired));
    let back = after(retired, [Act::Retire(Shelf::Floor, floor.clone(), false).action()]);
    assert!(back.site.floors.iter().any(|one| one.id == floor && !one.retired));
}

#[test]
fn a_retired_area_is_not_cleaned() {
    let typed = Typed::default();
    let total = |typed: &Typed| {
        let answer = brimline::form::shift::work(typed, Marks::POINT).outcome.answer;
        answer.get(brimline::form::names::SHIFT_AREA).expect("an area").si
    };
    let retired =
        after(typed.clone(), [Act::Retire(Shelf::Area, typed.site.areas[0].id.clone(), true).action()]);
    let size: f64 =
        0.092_903_04 * typed.site.areas[0].size.text.replace(',', "").parse::<f64>().expect("ft²");
    assert!((total(&typed) - total(&retired) - size).abs() < 1e-6);
}

#[test]
fn what_was_published_is_never_rewritten() {
    let one = published(draft("vinyl", "neutral", "1:64"), "2026-01-06");
    let before = one.standard().expect("a standard").clone();
    assert_eq!((before.standing, before.version), (Standing::InForce, 1));
    let tried = after(
        one.clone(),
        [
            Action::Text(Line::Rule(StandardLine::Dilution), "1:10".into()),
            Action::Write(Field::StandardContact, "9".into()),
            Act::Rinse(true).action(),
            Act::StandardProduct("vinegar".into()).action(),
            Act::Discard(Shelf::Standard, before.id.clone()).action(),
        ],
    );
    assert_eq!(tried.site.standards, one.site.standards);

    let two =
        after(one, [Act::Revise.action(), Action::Text(Line::Rule(StandardLine::Dilution), "1:80".into())]);
    let two = published(two, "2026-03-01");
    let standing: Vec<_> = two.site.standards.iter().map(|one| (one.standing, one.version)).collect();
    assert_eq!(standing, [(Standing::Replaced, 1), (Standing::InForce, 2)]);
    assert_eq!(two.site.standards[1].replaces, before.id);
    assert_eq!(two.in_force("vinyl").map(|one| one.dilution.as_str()), Some("1:80"));
    assert_eq!(referrers(&two.site, Shelf::Standard, &before.id).len(), 1);
}

#[test]
fn the_search_wants_every_word_and_minds_no_capitals() {
    let search = |text: &str| {
        let mut typed = Typed::default();
        typed.ask.site.search = text.to_owned();
        found(&typed).iter().map(|(_, one)| one.id().to_owned()).collect::<Vec<_>>()
    };
    assert_eq!(search("RIDE"), ["ride-on"]);
    assert_eq!(search("ride walk"), Vec::<String>::new());
    assert_eq!(search("  ").len(), Typed::default().site.machines.len());
}

#[test]
fn every_number_of_a_record_is_held_to_its_limit() {
    for shelf in [Shelf::Machine, Shelf::Product, Shelf::Floor, Shelf::Measure] {
        assert!(check(&Typed::default(), shelf, Marks::POINT).troubles.is_empty(), "{shelf:?}");
    }
    let wrong = after(Typed::default(), [Action::Write(Field::Recovery, "1e9".into())]);
    assert!(check(&wrong, Shelf::Machine, Marks::POINT).at("machine-recovery").is_some());
    let label = after(Typed::default(), [Action::Text(Line::Label, "a lot".into())]);
    assert!(check(&label, Shelf::Product, Marks::POINT).at("product-label").is_some());
}

#[test]
fn two_records_of_one_name_are_told_at_the_name() {
    for (shelf, name) in [
        (Shelf::Machine, "machine-name"),
        (Shelf::Product, "product-name"),
        (Shelf::Floor, "floor-name"),
        (Shelf::Measure, "measure-name"),
        (Shelf::Area, "area-1-name"),
    ] {
        let mut typed = Typed::default();
        assert!(check(&typed, shelf, Marks::POINT).at(name).is_none(), "{shelf:?}");
        let first = shelf.records(&typed.site)[0].name().to_owned();
        let site = &mut typed.site;
        match shelf {
            Shelf::Machine => site.machines[1].name = first,
            Shelf::Product => site.products[1].name = first,
            Shelf::Floor => site.floors[1].name = first,
            Shelf::Measure => site.measures[1].name = first,
            _ => site.areas[1].name = first,
        }
        assert!(check(&typed, shelf, Marks::POINT).at(name).is_some(), "{shelf:?}");
    }
}

#[test]
fn a_standard_is_numbered_by_the_floor_it_is_published_for() {
    let vinyl = published(draft("vinyl", "neutral", "1:64"), "2026-01-06");
    let begun = Act::Draft { floor: "vinyl".into(), product: "neutral".into(), dilution: "1:80".into() };
    let typed = after(vinyl, [begun.action()]);
    assert_eq!(typed.standard().map(|one| one.version), Some(2));
    let typed = after(typed, [Act::StandardFloor("tile".into()).action()]);
    assert_eq!(typed.standard().map(|one| one.version), Some(1), "the first for tile");
    // Two drafts for one floor: the one that is published later counts later.
    let again = Act::Draft { floor: "tile".into(), product: "neutral".into(), dilution: "1:90".into() };
    let first = typed.ask.site.standard.clone();
    let typed = published(after(typed, [again.action()]), "2026-01-07");
    let typed = published(after(typed, [Action::Pick(Shelf::Standard, first)]), "2026-01-08");
    let tile: Vec<(u32, &str)> = typed
        .site
        .standards
        .iter()
        .filter(|one| one.floor == "tile")
        .map(|one| (one.version, one.dilution.as_str()))
        .collect();
    assert_eq!(tile, [(2, "1:80"), (1, "1:90")]);
}

proptest! {
    #[test]
    fn no_run_of_acts_leaves_a_reference_to_nothing(steps in proptest::collection::vec((0..8_usize, 0..6_usize, 0..12_usize), 0..40)) {
        let mut typed = Typed::default();
        for (shelf, what, which) in steps {
            let shelf = Shelf::ALL[shelf];
            let id = shelf.records(&typed.site).get(which).map(|one| one.id().to_owned()).unwrap_or_default();
            let action = match what {
                0 => Act::Copy(shelf, id).action(),
                1 => Act::Discard(shelf, id).action(),
                2 => Act::Retire(shelf, id, true).action(),
                3 => Act::Add(shelf).action(),
                4 => Act::Publish { date: "2026-01-01".into(), proved: String::new() }.action(),
                _ => Action::Pick(shelf, id),
            };
            typed = after(typed, [action]);
            let site = &typed.site;
            for area in &site.areas {
                prop_assert!(site.floors.iter().any(|one| one.id == area.floor));
            }
            for floor in &site.floors {
                prop_assert!(floor.finish.is_empty() || site.finishes.iter().any(|one| one.id == floor.finish));
            }
            for one in &site.standards {
                prop_assert!(one.replaces.is_empty() || site.standards.iter().any(|old| old.id == one.replaces));
            }
            for floor in &site.floors {
                let standing = site.standards.iter().filter(|one| one.floor == floor.id && one.standing == Standing::InForce);
                prop_assert!(standing.count() <= 1, "one standard a floor");
            }
        }
    }
}

/// The shelf of a list of a site's file.
fn shelf_of(list: &str) -> Shelf {
    let code = list.strip_suffix("es").filter(|code| *code == "finish").or(list.strip_suffix('s'));
    code.and_then(Shelf::from_code).expect("a shelf")
}

#[test]
fn what_a_file_counts_as_a_reference_keeps_a_record_from_being_removed() {
    use brimline::site::passing::REFERENCES;
    for row in REFERENCES {
        let mut site = serde_json::to_value(Typed::default().site).expect("a site");
        for list in [row.list, row.target] {
            site[list] = serde_json::json!([{"id": format!("{list}-1")}, {"id": format!("{list}-2")}]);
        }
        let id = format!("{}-2", row.target);
        site[row.list][0][row.field] =
            if row.within.is_empty() { id.clone().into() } else { serde_json::json!([{ row.within: id }]) };
        let site = serde_json::from_value(site).expect("a site");
        let by = referrers(&site, shelf_of(row.target), &id);
        assert!(by.iter().any(|one| one.shelf == shelf_of(row.list)), "{}.{}", row.list, row.field);
    }
}
