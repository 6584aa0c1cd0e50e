//! What a comparison of two sites says: every field and every choice that a site can hold has its words.

use brimline::form::Typed;
use brimline::form::site::proof::prove;
use brimline::number::Marks;
use brimline::shape::{Shape, Shaped};
use brimline::site::passing::{compare, no_numbers};
use brimline::site::{Entry, LeftOut, Override, Site, Standard, Standing, demo};
use brimline::words::{CHOICES, Words};
use std::collections::BTreeSet;

/// Every field of a site with its list, every part of a record with the field that holds it.
fn places(
    shape: &'static Shape,
    of: &'static str,
    out: &mut Vec<(&'static str, &'static str, &'static Shape)>,
) {
    match shape {
        Shape::List(shape) => places(shape, of, out),
        Shape::Object { fields, .. } if fields.len() != 2 || fields[0].0 != "text" => {
            for (field, shape) in *fields {
                // Records are told by their names and never by their ids; lists of them have no name of their own.
                let is_list_of_records = of.is_empty() && matches!(shape, Shape::List(_));
                if *field != "id" && !is_list_of_records {
                    out.push((of, field, shape));
                }
                places(shape, field, out);
            }
        }
        _ => {}
    }
}

fn all() -> Vec<(&'static str, &'static str, &'static Shape)> {
    let mut out = Vec::new();
    places(Site::SHAPE, "", &mut out);
    out
}

/// A key, a code, a checksum or a field of a document: nothing that a supervisor knows.
fn is_inner(text: &str) -> bool {
    let word = |word: &str| {
        let bare = word.trim_matches(|c: char| !c.is_alphanumeric() && c != '_' && c != '-');
        bare.contains('_')
            || ["remark-", "finding-", "told-", "standing-"].iter().any(|start| bare.starts_with(start))
            || bare.len() == 16 && bare.chars().all(|c| c.is_ascii_hexdigit())
    };
    text.split_whitespace().any(word) || text.contains('{')
}

#[test]
fn every_field_of_a_site_has_a_name() {
    let words = Words::english();
    let unknown = words.say("told-field");
    let all = all();
    assert!(all.len() > 130, "{}", all.len());
    for (of, field, _) in all {
        // Warnings that were let pass are told as heading and reason, machines left out as name and reason.
        if matches!(of, "overrides" | "leaves_out") {
            continue;
        }
        let name = words.field_name(of, field);
        assert!(name != unknown && !is_inner(&name), "{of}.{field}: {name}");
    }
    for list in ["machines", "products", "floors", "measures", "areas", "finishes", "trials", "standards"] {
        assert!(!words.list_name(list).contains(list), "{list}");
    }
}

#[test]
fn every_choice_of_a_site_has_a_name() {
    let words = Words::english();
    let unknown = words.say("told-choice");
    let mut fields = BTreeSet::new();
    for (of, field, shape) in all() {
        let shape = if let Shape::List(shape) = shape { shape } else { shape };
        let Shape::Choice(codes) = shape else { continue };
        fields.insert(field);
        for code in *codes {
            let name = words.choice_name(field, code);
            assert!(name != unknown && !is_inner(&name), "{of}.{field} {code}: {name}");
        }
    }
    assert_eq!(fields, CHOICES.iter().map(|(field, _)| *field).collect(), "the table has what sites have");
}

/// Every warning that a check of the demo's floors and products finds, as a standard keeps it.
#[test]
fn every_warning_that_can_be_let_pass_has_a_heading() {
    let words = Words::english();
    let mut codes = BTreeSet::new();
    let start = Typed::default();
    for floor in &start.site.floors {
        for product in &start.site.products {
            let standard = Standard {
                id: "s".into(),
                floor: floor.id.clone(),
                product: product.id.clone(),
                dilution: product.label.clone(),
                ..Standard::default()
            };
            codes.extend(
                prove(&start, &standard, "2026-01-01", Marks::POINT)
                    .findings
                    .iter()
                    .map(|one| one.remark.code),
            );
        }
    }
    assert!(codes.len() > 8, "{codes:?}");
    for code in codes {
        assert!(!is_inner(&words.finding_name(code)), "{code}: {}", words.finding_name(code));
    }
    assert_eq!(words.finding_name("remark-of-a-later-version"), "a warning");
}

/// The demo with a value of every kind changed, as a supervisor reads it.
#[test]
fn what_is_different_is_told_in_words() {
    let words = Words::english();
    let mut old = demo();
    let standard = Standard {
        id: "s1".into(),
        floor: "vinyl".into(),
        product: "neutral".into(),
        dilution: "1:64".into(),
        version: 1,
        proved: "0123456789abcdef".into(),
        ..Standard::default()
    };
    old.standards = vec![
        standard.clone(),
        Standard { id: "s2".into(), name: "Hall, daily".into(), version: 2, ..standard },
    ];
    let mut new = old.clone();
    new.machines[0].tank = Entry::new("12", "l");
    new.machines[0].vacuum = false;
    new.products[1].families.push(brimline::chemistry::family::Family::Solvent);
    new.products[1].parts[0].high = Entry::new("6", "percent_ww");
    new.floors[0].finish = "gloss".into();
    new.areas[0].floor = "wood".into();
    new.areas[4].included = true;
    new.trials[0].patches[2].note = "Sticky".into();
    new.address = "https://floors.example/".into();
    let two = &mut new.standards[1];
    two.standing = Standing::InForce;
    two.replaces = "s1".into();
    two.proved = "fedcba9876543210".into();
    two.overrides =
        vec![Override { finding: "finding-no-setting".into(), reason: "The maker sets it.".into() }];
    two.leaves_out = vec![LeftOut { machine: "self-driving".into(), reason: "It foams there.".into() }];
    let told: Vec<String> = compare(&old, &new)
        .iter()
        .map(|change| words.change((&old, &new), change, &[]).replace('\u{202f}', " "))
        .collect();
    for line in &told {
        assert!(!is_inner(line), "{line}");
        assert!(
            !line.contains(&words.say("told-choice")) && !line.contains(&words.say("told-field")),
            "{line}"
        );
    }
    for expected in [
        "The site, Address of this page for phones: nothing → https://floors.example/",
        "Machine “Small walk-behind”, Solution tank: 10 gal → 12 L",
        "Machine “Small walk-behind”, It picks the solution up with a vacuum: yes → no",
        "Floor “Reading room vinyl, three coats of finish”, Finish on it: nothing → Gloss finish for vinyl",
        "Area “Reading room”, Floor: Reading room vinyl, three coats of finish → Sports hall, sealed wood",
        "Area “Store”, Cleaned this shift: no → yes",
        "Standard “Hall, daily, version 2”, Where it stands: draft → in force",
        "Standard “Hall, daily, version 2”, It takes the place of: nothing → Reading room vinyl, three coats of finish, version 1",
        "Standard “Hall, daily, version 2”: it was checked with other records",
        "Standard “Hall, daily, version 2”, Warnings that were let pass: nothing → No flow setting (The maker sets it.)",
        "Standard “Hall, daily, version 2”, Machines that it is not for: nothing → Self-driving, reuses its solution (It foams there.)",
    ] {
        let is = |line: &String| line.to_lowercase() == expected.to_lowercase();
        assert!(told.iter().any(is), "{expected} in {told:#?}");
    }
    assert_eq!(told.len(), compare(&old, &new).len());
    let parts = told.iter().find(|line| line.contains("What it is made of")).expect("the parts");
    assert!(
        parts.contains("Name of the part: Sodium hydroxide") && parts.contains("Most of it: 6 %"),
        "{parts}"
    );
}

#[test]
fn a_number_that_is_none_is_told_where_it_stands() {
    let words = Words::english();
    let old = demo();
    let mut new = demo();
    new.machines[0].tank.text = "ten".into();
    new.machines[1].settings[2].text = "1/0".into();
    new.products[0].price.text = String::new();
    new.products[1].parts[1].low.text = "about 2".into();
    new.floors[0].target_low = Entry::new("0.3", "buckets");
    new.areas.push(brimline::site::Area {
        id: "new".into(),
        name: "Attic".into(),
        size: Entry::new("big", "ft2"),
        ..new.areas[0].clone()
    });
    let told: Vec<(String, usize)> = compare(&old, &new)
        .iter()
        .map(|change| {
            let wrong = no_numbers(change, &new, Marks::POINT);
            (words.change((&old, &new), change, &wrong), wrong.len())
        })
        .collect();
    for (part, count) in [
        ("No number here: Solution tank, “ten”.", 1),
        ("No number here: Flow of each setting, “1/0”.", 1),
        ("One container costs", 0),
        ("No number here: Least of it, “about 2”.", 1),
        ("No number here: Floor should get at least, “0.3 buckets”.", 1),
        ("Area “Attic”: new No number here: Size, “big”.", 1),
    ] {
        assert!(
            told.iter().any(|(line, wrong)| line.contains(part) && *wrong == count),
            "{part} in {told:#?}"
        );
    }
    // A comma is a decimal mark where the reader's own numbers have one.
    let mut comma = demo();
    comma.machines[0].tank.text = "10,5".into();
    let change = &compare(&old, &comma)[0];
    assert_eq!(no_numbers(change, &comma, Marks::COMMA), vec![]);
}
