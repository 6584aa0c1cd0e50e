//! What a merge leaves to people, and what each decision does.

use brimline::site::passing::{Clash, Decision, Merged, Side, decide, merge};
use brimline::site::{Area, Floor, Product, Record, Site, demo, unknown};

fn ids<T: Record>(all: &[T]) -> Vec<&str> {
    all.iter().map(Record::id).collect()
}

fn area(id: &str, floor: &str) -> Area {
    Area { id: id.into(), name: format!("Area {id}"), floor: floor.into(), ..Area::default() }
}

fn floor(id: &str) -> Floor {
    Floor { id: id.into(), name: format!("Floor {id}"), ..Floor::default() }
}

fn base() -> Site {
    Site {
        floors: vec![floor("vinyl"), floor("stone")],
        areas: vec![area("hall", "vinyl"), area("bar", "vinyl"), area("gym", "")],
        ..Site::default()
    }
}

fn only(merged: &Merged) -> (&str, &str, &str, &str) {
    assert_eq!(merged.conflicts.len(), 1, "{:?}", merged.conflicts);
    let one = &merged.conflicts[0];
    (one.code(), &one.list, &one.id, one.field())
}

fn take(merged: &Merged, side: Side) -> Vec<Decision> {
    merged.conflicts.iter().map(|one| one.take(side)).collect()
}

#[test]
fn the_same_field_twice() {
    let (base, mut ours, mut theirs) = (demo(), demo(), demo());
    ours.products[0].label = "1:32".into();
    theirs.products[0].label = "1:128".into();
    theirs.products[0].name = "New name".into();
    ours.name = "A".into();
    theirs.name = "B".into();
    let merged = merge(&base, &ours, &theirs);
    assert_eq!(merged.conflicts.len(), 2);
    assert_eq!((merged.site.products[0].label.as_str(), merged.site.name.as_str()), ("1:32", "A"));
    assert_eq!(merged.site.products[0].name, "New name");
    let Clash::Field { field, base: was, ours: our, theirs: their } = &merged.conflicts[1].clash else {
        panic!("{:?}", merged.conflicts)
    };
    assert_eq!(
        (field.as_str(), was, our, their),
        ("label", &base.products[0].label.clone().into(), &"1:32".into(), &"1:128".into())
    );
    let theirs_taken = decide(&base, &ours, &theirs, &[merged.conflicts[1].take(Side::Theirs)]);
    assert_eq!((theirs_taken.site.products[0].label.as_str(), theirs_taken.conflicts.len()), ("1:128", 1));
    let ours_taken = decide(&base, &ours, &theirs, &take(&merged, Side::Ours));
    assert_eq!((ours_taken.site, ours_taken.conflicts.len()), (merged.site, 0));
}

#[test]
fn removed_by_one_and_changed_by_the_other() {
    let (base, mut without, mut changed) = (base(), base(), base());
    without.areas.remove(2);
    changed.areas[2].name = "Big gym".into();
    let here = merge(&base, &without, &changed);
    assert_eq!(only(&here), ("conflict-removed-here", "areas", "gym", ""));
    assert_eq!(here.site, without, "ours is kept");
    assert_eq!(decide(&base, &without, &changed, &take(&here, Side::Theirs)).site, changed);
    assert_eq!(decide(&base, &without, &changed, &take(&here, Side::Ours)).site, without);
    let there = merge(&base, &changed, &without);
    assert_eq!(only(&there), ("conflict-removed-there", "areas", "gym", ""));
    assert_eq!(there.site, changed);
    assert_eq!(decide(&base, &changed, &without, &take(&there, Side::Theirs)).site, without);
    assert_eq!(decide(&base, &changed, &without, &take(&there, Side::Ours)).site, changed);
}

/// One removes a floor that nobody uses any more; the other lays it in another area.
#[test]
fn removed_by_one_and_named_by_the_other() {
    let (base, mut without, mut named) = (base(), base(), base());
    without.floors.remove(1);
    named.areas[2].floor = "stone".into();
    for (ours, theirs, removed, other) in
        [(&without, &named, Side::Ours, Side::Theirs), (&named, &without, Side::Theirs, Side::Ours)]
    {
        let merged = merge(&base, ours, theirs);
        assert_eq!(only(&merged), ("conflict-still-used", "floors", "stone", ""));
        assert_eq!(ids(&merged.site.floors), ["vinyl", "stone"], "what is used stays");
        let Clash::StillUsed { removed_by, used } = &merged.conflicts[0].clash else { panic!() };
        assert_eq!(
            (*removed_by, used.len(), used[0].list.as_str(), used[0].id.as_str(), used[0].field.as_str()),
            (removed, 1, "areas", "gym", "floor")
        );
        let kept = decide(&base, ours, theirs, &take(&merged, other));
        assert_eq!((&kept.site, kept.conflicts.len()), (&merged.site, 0));
        let gone = decide(&base, ours, theirs, &take(&merged, removed));
        assert_eq!((ids(&gone.site.floors), gone.conflicts.len()), (vec!["vinyl"], 0));
        assert_eq!(gone.site.areas[2].floor, unknown::id("Floor stone"), "the area asks for another floor");
    }
}

#[test]
fn two_orders_of_the_areas() {
    let (base, mut ours, mut theirs) = (base(), base(), base());
    ours.areas.swap(0, 1);
    theirs.areas.swap(1, 2);
    let merged = merge(&base, &ours, &theirs);
    assert_eq!(only(&merged), ("conflict-order", "areas", "", ""));
    assert_eq!(merged.site, ours);
    assert_eq!(decide(&base, &ours, &theirs, &take(&merged, Side::Theirs)).site, theirs);
    assert_eq!(decide(&base, &ours, &theirs, &take(&merged, Side::Ours)).site, ours);
}

/// What was added stands behind what it was added behind, and an order that one changed is kept.
#[test]
fn additions_stand_where_they_were_put() {
    let (base, mut ours, mut theirs) = (base(), base(), base());
    ours.areas.swap(0, 1);
    ours.areas.insert(1, area("ours", ""));
    theirs.areas.insert(0, area("first", ""));
    theirs.areas.insert(2, area("theirs", ""));
    let merged = merge(&base, &ours, &theirs);
    assert_eq!(ids(&merged.site.areas), ["first", "bar", "ours", "hall", "theirs", "gym"]);
    assert_eq!(merged.site, merge(&base, &theirs, &ours).site);
}

/// Devices count ids up: two new records with one id are two records, and each area keeps its own product.
#[test]
fn two_new_records_with_one_id() {
    let product = |name: &str| Product { id: "n1".into(), name: name.into(), ..Product::default() };
    let with = |name: &str, id: &str| {
        let mut site = base();
        site.products.push(product(name));
        site.areas.push(Area { product: "n1".into(), ..area(id, "vinyl") });
        site
    };
    let (ours, theirs) = (with("Neutral", "n1"), with("Degreaser", "n2"));
    let merged = merge(&base(), &ours, &theirs);
    assert_eq!(merged.conflicts, []);
    assert_eq!(
        (merged.renamed.len(), merged.renamed[0].from.as_str(), merged.renamed[0].to.as_str()),
        (1, "n1", "n1-2")
    );
    let name = |area: &str| {
        let area = merged.site.areas.iter().find(|one| one.id == area).expect("the area");
        merged.site.products.iter().find(|one| one.id == area.product).expect("its product").name.as_str()
    };
    assert_eq!((name("n1"), name("n2")), ("Neutral", "Degreaser"));
    let same = merge(&base(), &ours, &ours);
    assert_eq!((same.site, same.renamed.len()), (ours, 0));
}

/// A site that names what it does not have is not made whole behind its owner's back, nor made worse.
#[test]
fn what_hung_in_the_air_still_does() {
    let mut ours = base();
    ours.floors.remove(0);
    let mut theirs = base();
    theirs.name = "Annex".into();
    let merged = merge(&base(), &ours, &theirs);
    assert_eq!((ids(&merged.site.floors), merged.site.areas[0].floor.as_str()), (vec!["stone"], "vinyl"));
    assert_eq!(merged.conflicts, []);
}

/// Five thousand areas, every second one changed by one, the others by the other, and every floor gone and used.
#[test]
fn large_sites_are_merged_in_time() {
    let floors: Vec<Floor> = (0..5_000).map(|n| floor(&format!("f{n}"))).collect();
    let areas: Vec<Area> = (0..5_000).map(|n| area(&format!("a{n}"), "")).collect();
    let base = Site { floors, areas, ..Site::default() };
    let (mut ours, mut theirs) = (base.clone(), base.clone());
    ours.floors.clear();
    for (n, area) in theirs.areas.iter_mut().enumerate() {
        area.floor = format!("f{n}");
    }
    for (n, area) in ours.areas.iter_mut().enumerate() {
        area.name = format!("Hall {n}");
    }
    let begun = std::time::Instant::now();
    let merged = merge(&base, &ours, &theirs);
    println!("5,000 areas on 5,000 floors merged in {:.2} s", begun.elapsed().as_secs_f64());
    assert_eq!((merged.conflicts.len(), merged.site.floors.len()), (5_000, 5_000));
    assert!(begun.elapsed().as_secs() < 60);
}
