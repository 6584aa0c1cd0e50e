//! Files that are broken, or that somebody made to break something.

use super::edits::value;
use brimline::document::MOST_BYTES;
use brimline::shape::{Shape, Shaped};
use brimline::site::passing::{Json, MOST_ENTRIES, Place, Reason, read, write};
use brimline::site::{Site, demo};
use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::time::Instant;

fn file(site: &Value) -> String {
    json!({"brimline": "site", "schema": 1, "site": site}).to_string()
}

/// A download that stopped, at every 97th byte.
#[test]
fn every_beginning_of_a_file_is_refused() {
    let whole = write(&demo()).expect("it goes out");
    let mut cut = 0;
    for end in (0..whole.len()).step_by(97) {
        let refusal = read(&whole.as_bytes()[..end]).expect_err("the end is missing");
        assert!(matches!(refusal.reason, Reason::CutOff | Reason::NotText), "{end}: {refusal:?}");
        cut += 1;
    }
    println!("{cut} beginnings of {} bytes", whole.len());
    assert!(cut > 140);
}

#[test]
fn ten_megabytes_are_not_looked_at() {
    let spaces = " ".repeat(10_000_000);
    let begun = Instant::now();
    let refusal = read(&spaces).expect_err("too large");
    assert_eq!((refusal.place, refusal.reason), (Place::Bytes(10_000_000), Reason::TooLarge(MOST_BYTES)));
    assert!(begun.elapsed().as_millis() < 50);
    assert_eq!(read(&spaces[..MOST_BYTES]).expect_err("nothing in it").code(), "passing-cut-off");
}

#[test]
fn a_hundred_thousand_brackets_do_not_fill_the_stack() {
    for (open, close) in [("[", "]"), ("{\"a\":", "}"), ("[{\"brimline\":", "}]")] {
        let deep = format!("{}1{}", open.repeat(100_000), close.repeat(100_000));
        assert_eq!(read(&deep).expect_err("too deep").reason, Reason::TooDeep, "{open}");
        let inside = format!("{{\"brimline\":\"site\",\"schema\":1,\"site\":{{\"later\":{deep}}}}}");
        assert_eq!(read(&inside).expect_err("too deep").reason, Reason::TooDeep, "{open}");
    }
}

/// Every place of a site with its shape, in the demo, where every list has something in it.
fn places(value: &Value, shape: &'static Shape, path: &str, out: &mut Vec<(String, Json, bool)>) {
    out.push((path.to_owned(), Json::of(value), matches!(shape, Shape::Choice(_))));
    match (shape, value) {
        (Shape::List(shape), Value::Array(list)) => {
            list.iter().enumerate().for_each(|(at, one)| places(one, shape, &format!("{path}/{at}"), out));
        }
        (Shape::Object { fields, .. }, Value::Object(object)) => {
            for (field, shape) in *fields {
                places(&object[*field], shape, &format!("{path}/{field}"), out);
            }
        }
        _ => {}
    }
}

/// A JSON pointer as the path of a refusal.
fn path(pointer: &str) -> String {
    let step =
        |step: &str| if step.parse::<usize>().is_ok() { format!("[{step}]") } else { format!(".{step}") };
    format!("site{}", pointer.split('/').skip(1).map(step).collect::<String>())
}

/// A site of two records of each kind, with every list filled.
fn small() -> Value {
    let mut site = demo();
    let demo = demo();
    site.machines = demo
        .machines
        .into_iter()
        .filter(|one| ["walk-behind", "ride-on"].contains(&one.id.as_str()))
        .collect();
    site.areas.truncate(2);
    site.measures.truncate(2);
    let mut site = value(&site);
    site["machines"][0]["tests"] = json!([{}, {}]);
    for list in ["machines", "products"] {
        for record in site[list].as_array_mut().expect("a list") {
            for inner in ["tests", "parts"] {
                let Some(one) = record.get_mut(inner) else { continue };
                let shape = super::edits::lists().iter().find(|(name, _)| *name == list).expect("a list").1;
                let (_, Shape::List(of)) = shape.iter().find(|(name, _)| *name == inner).expect("a field")
                else {
                    panic!("{inner} is a list")
                };
                *one = json!([of.blank()]);
            }
            if let Some(families) = record.get_mut("families") {
                *families = json!(["acid"]);
            }
        }
    }
    site
}

/// Each place of a site with each other kind of JSON in it: refused, with that place.
#[test]
fn every_wrong_type_at_every_place() {
    let site = small();
    read(file(&site)).expect("the site itself is taken");
    let mut all = Vec::new();
    places(&site, Site::SHAPE, "", &mut all);
    let others = [json!(null), json!(true), json!(7), json!("text"), json!([]), json!({})];
    let mut tried = 0;
    for (pointer, kind, choice) in &all {
        for other in others.iter().filter(|other| Json::of(other) != *kind || *choice) {
            let mut wrong = site.clone();
            *wrong.pointer_mut(pointer).expect("a place") = other.clone();
            let refusal = read(file(&wrong)).expect_err(pointer);
            assert_eq!(refusal.place, Place::Path(path(pointer)), "{other}");
            let found = Json::of(other);
            let reason = if found == *kind {
                Reason::Choice("text".into())
            } else {
                Reason::Type { expected: *kind, found }
            };
            assert_eq!(refusal.reason, reason, "{pointer}");
            tried += 1;
        }
    }
    let fields: BTreeSet<_> = all.iter().map(|(pointer, ..)| pointer.replace(char::is_numeric, "")).collect();
    println!("{tried} wrong types at {} places of {} fields", all.len(), fields.len());
    assert!(fields.len() > 150, "every field of every record");
}

/// The same id twice, in every list.
#[test]
fn the_same_id_twice_in_every_list() {
    for (list, _) in super::edits::lists() {
        let mut site = value(&demo());
        let all = site[list].as_array_mut().expect("a list");
        if all.is_empty() {
            all.push(json!({"id": "first"}));
        }
        let (id, last) = (all[0]["id"].as_str().expect("an id").to_owned(), all.len());
        all.push(all[0].clone());
        let refusal = read(file(&site)).expect_err(list);
        assert_eq!(refusal.place, Place::Path(format!("site.{list}[{last}].id")));
        assert_eq!(refusal.reason, Reason::SameId(id));
    }
}

/// Each record of `standards` names the one that it replaces.
fn standards(replaces: &[(&str, &str)]) -> String {
    let one = |(id, replaces): &(&str, &str)| json!({"id": id, "replaces": replaces});
    file(&json!({"standards": replaces.iter().map(one).collect::<Value>()}))
}

#[test]
fn circles_are_found_and_told_in_order() {
    let circles = [
        (vec![("a", "a")], 0, vec!["a"]),
        (vec![("a", "b"), ("b", "a")], 1, vec!["a", "b"]),
        (vec![("x", "a"), ("a", "b"), ("b", "c"), ("c", "a"), ("y", "")], 3, vec!["a", "b", "c"]),
        (vec![("a", ""), ("b", "a"), ("c", "d"), ("d", "e"), ("e", "d")], 4, vec!["d", "e"]),
    ];
    for (replaces, closing, ids) in circles {
        let refusal = read(standards(&replaces)).expect_err("a circle");
        assert_eq!(refusal.place, Place::Path(format!("site.standards[{closing}].replaces")), "{replaces:?}");
        assert_eq!(refusal.reason, Reason::Circle(ids.into_iter().map(str::to_owned).collect()));
    }
    for fine in [vec![("a", ""), ("b", "a"), ("c", "b")], vec![("a", "c"), ("b", "c"), ("c", "")], vec![]] {
        read(standards(&fine)).expect("no circle");
    }
    let nowhere = read(standards(&[("a", "z")])).expect_err("nothing to replace");
    assert_eq!(nowhere.reason, Reason::Nowhere { id: "z".into(), list: "standards" });
}

/// A chain and a circle as long as a file may hold.
#[test]
fn long_chains_do_not_fill_the_stack() {
    let ids: Vec<String> = (0..MOST_ENTRIES).map(|n| format!("s{n}")).collect();
    let next = |n: usize| ids.get(n + 1).map_or("", String::as_str);
    let chain: Vec<(&str, &str)> = ids.iter().enumerate().map(|(n, id)| (id.as_str(), next(n))).collect();
    let begun = Instant::now();
    read(standards(&chain)).expect("a chain is no circle");
    let mut circle = chain.clone();
    circle[MOST_ENTRIES - 1].1 = "s0";
    assert!(
        matches!(read(standards(&circle)).expect_err("a circle").reason, Reason::Circle(ids) if ids.len() == MOST_ENTRIES)
    );
    println!("two chains of {MOST_ENTRIES} in {:.2} s", begun.elapsed().as_secs_f64());
}

/// A refusal names the first thing that is wrong, the same one each time.
#[test]
fn refusals_do_not_depend_on_chance() {
    let site =
        json!({"areas": [{"id": "a", "floor": "x"}, {"id": "a", "floor": "y", "name": 1}], "name": "\u{7}"});
    let first = read(file(&site)).expect_err("wrong");
    assert_eq!(first.place, Place::Path("site.name".into()));
    assert!((0..20).all(|_| read(file(&site)).expect_err("wrong") == first));
}
