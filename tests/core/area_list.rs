//! The list of areas to and from spreadsheets. CSV by RFC 4180; 1 ft² = 0.09290304 m² exactly.

use brimline::number::Marks;
use brimline::site::area_list::{Flaw, export, import};
use brimline::site::{Area, Site, demo};
use brimline::units::unit;
use proptest::prelude::*;

fn sizes(areas: &[Area]) -> Vec<(&str, &str)> {
    areas.iter().map(|area| (area.size.text.as_str(), area.size.unit.as_str())).collect()
}

#[test]
fn what_was_saved_comes_back() {
    let site = demo();
    for (code, marks) in [("ft2", Marks::POINT), ("m2", Marks::COMMA)] {
        let text = export(&site, unit(code).expect(code), marks);
        let read = import(&text, &site, "ft2");
        assert_eq!(read.flaws, [], "{text}");
        for (before, after) in site.areas.iter().zip(&read.areas) {
            assert_eq!(
                (&before.name, &before.floor, before.included),
                (&after.name, &after.floor, after.included)
            );
            assert_eq!(after.size.unit, code);
        }
    }
    let metric = export(&site, unit("m2").expect("a row"), Marks::COMMA);
    assert!(metric.contains("Reading room;557,41824;"), "6000 ft² exactly: {metric}");
}

#[test]
fn it_is_read_as_people_keep_it() {
    let site = demo();
    let quoted = "\u{feff}Name,Notes,Size (m2),Floor\r\n\"Hall, west\",\"two\nlines\",120,foyer MARBLE\r\n\r\n\"A \"\"b\"\"\",,7.5,Entrance terrazzo\r\n";
    let read = import(quoted, &site, "ft2");
    assert_eq!(read.flaws, []);
    assert_eq!(sizes(&read.areas), [("120", "m2"), ("7.5", "m2")]);
    assert_eq!((read.areas[0].name.as_str(), read.areas[1].name.as_str()), ("Hall, west", "A \"b\""));
    assert_eq!(read.areas[0].floor, "marble");
    let tabs = import("room\tsize\tclean\tfloor\nHall\t1.200,5\tno\tfoyer marble\n", &site, "m2");
    assert_eq!(sizes(&tabs.areas), [("1.200,5", "m2")], "kept as it was typed, and asked about at its field");
    assert!(!tabs.areas[0].included);
}

#[test]
fn what_cannot_be_read_is_kept_and_told() {
    let site = demo();
    let read = import(
        "area;size;floor;product\nHall;big;Moon;Soap\n;;;\nBar;12;foyer marble;vinegar\n",
        &site,
        "ft2",
    );
    assert_eq!(read.flaws, [(2, Flaw::Size), (2, Flaw::Floor), (2, Flaw::Product)]);
    assert_eq!(sizes(&read.areas), [("big", "ft2"), ("12", "ft2")]);
    assert_eq!(read.areas[1].product, "vinegar", "by its id as well");
    assert_eq!(import("a,b\n1,2\n", &site, "ft2").flaws, [(1, Flaw::NoName)]);
    assert_eq!(import("name,b\n1,2\n", &site, "ft2").flaws, [(1, Flaw::NoSize)]);
    assert!(import("", &site, "ft2").areas.is_empty());
}

/// A spreadsheet computes what begins like a formula: such names go out with an apostrophe and come back
/// without it.
#[test]
fn a_name_is_never_a_formula() {
    let mut site = demo();
    site.areas[0].name = "=HYPERLINK(1)".to_owned();
    site.areas[1].name = "-12 stairs".to_owned();
    let text = export(&site, unit("ft2").expect("a row"), Marks::POINT);
    assert!(text.lines().all(|line| !line.starts_with(['=', '-', '+', '@'])), "{text}");
    let read = import(&text, &site, "ft2");
    assert_eq!((read.areas[0].name.as_str(), read.areas[1].name.as_str()), ("=HYPERLINK(1)", "-12 stairs"));
}

proptest! {
    /// Whatever the names: each row comes back, in its order.
    #[test]
    fn any_names_come_back(names in proptest::collection::vec("[^\r\n]{1,20}", 1..20)) {
        let mut site: Site = demo();
        let area = site.areas[0].clone();
        let trimmed: Vec<String> = names.iter().map(|name| name.trim().to_owned()).collect();
        prop_assume!(trimmed.iter().all(|name| !name.is_empty() && !name.starts_with(['\'', '\u{feff}'])));
        site.areas = trimmed.iter().map(|name| Area { name: name.clone(), ..area.clone() }).collect();
        let text = export(&site, unit("ft2").expect("a row"), Marks::POINT);
        let read: Vec<String> = import(&text, &site, "ft2").areas.into_iter().map(|area| area.name).collect();
        prop_assert_eq!(read, trimmed, "{}", text);
    }

    /// Any bytes at all: nothing breaks, and no row is lost without a word.
    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,200}", tail in "[a-z,;\"\n]{0,80}") {
        let _ = import(&text, &demo(), "ft2");
        let _ = import(&format!("name;size\n{tail}"), &demo(), "m2");
    }
}
