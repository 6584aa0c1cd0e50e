//! Whatever a person does in whatever order: nothing breaks, and nothing typed is lost.

use brimline::chemistry::family::Family;
use brimline::chemistry::floor::Surface;
use brimline::chemistry::foam::Foam;
use brimline::chemistry::ghs::SignalWord;
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::saved::{View, recompute, save};
use brimline::form::station::{Job, Method, Mishap, Rest};
use brimline::form::{Action, Field, Filling, Typed, fill, flow, shift};
use brimline::number::Marks;
use brimline::site::{Dispenser, Entry, Site};
use brimline::trade::governing::Aim;
use brimline::trade::order::Place;
use brimline::trade::porosity::Porosity;
use brimline::units::System;
use proptest::prelude::*;
use proptest::sample::select;
use std::collections::BTreeMap;

fn any_field() -> impl Strategy<Value = Field> {
    prop_oneof![
        6 => select(Field::SINGLE.to_vec()),
        1 => (0..7_usize).prop_map(Field::Setting),
        1 => (0..7_usize).prop_map(Field::AreaSize),
        1 => (0..7_usize).prop_map(Field::AreaOpens),
        1 => (0..7_usize).prop_map(Field::AreaCloses),
        1 => (0..4_usize).prop_map(Field::Tip),
        1 => (0..3_usize).prop_map(Field::TestSetting),
        1 => (0..3_usize).prop_map(Field::TestTime),
        1 => (0..3_usize).prop_map(Field::TestCaught),
    ]
}

fn any_line() -> impl Strategy<Value = Line> {
    prop_oneof![
        select(vec![
            Line::MachineName,
            Line::ProductName,
            Line::Label,
            Line::Codes,
            Line::Ph,
            Line::Notes,
            Line::FloorName,
            Line::MeasureName,
        ]),
        (0..7_usize).prop_map(Line::AreaName),
    ]
}

fn any_shelf() -> impl Strategy<Value = Shelf> {
    select(vec![Shelf::Machine, Shelf::Product, Shelf::Floor, Shelf::Measure, Shelf::Area])
}

fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![
        3 => (0..2_000_u32).prop_map(|n| (f64::from(n) / 8.0).to_string()),
        2 => select(vec!["", "0", "-1", "1e9", "1,5", "½", "1 1/2", "100", "1:64", "2 oz", "6 oz per tank", "H314"])
            .prop_map(str::to_owned),
        1 => "\\PC{0,20}",
    ]
}

fn any_id() -> impl Strategy<Value = String> {
    select(vec![
        "self-driving",
        "ride-on",
        "quat",
        "vinegar",
        "marble",
        "concrete",
        "pump",
        "cap",
        "n1",
        "n2",
        "none",
        "",
    ])
    .prop_map(str::to_owned)
}

fn any_code() -> impl Strategy<Value = String> {
    select(vec![
        "gal_us", "l", "gal_imp", "percent", "floz_us", "ml", "in", "cm", "ft2", "m2", "min", "mph", "",
        "firkin",
    ])
    .prop_map(str::to_owned)
}

fn any_action() -> impl Strategy<Value = Action> {
    prop_oneof![
        4 => (any_field(), any_text()).prop_map(|(field, text)| Action::Write(field, text)),
        2 => (any_line(), any_text()).prop_map(|(line, text)| Action::Text(line, text)),
        1 => (any_field(), any_code()).prop_map(|(field, code)| Action::Unit(field, code)),
        2 => (any_shelf(), any_id()).prop_map(|(shelf, id)| Action::Pick(shelf, id)),
        1 => any_shelf().prop_map(Action::Add),
        1 => (any_shelf(), 0..7_usize).prop_map(|(shelf, index)| Action::Remove(shelf, index)),
        1 => (0..7_usize).prop_map(Action::MoveUp),
        1 => select(System::ALL.to_vec()).prop_map(Action::System),
        1 => select(Filling::ALL.to_vec()).prop_map(Action::Filling),
        1 => select(Aim::ALL.to_vec()).prop_map(Action::Aim),
        1 => select(Foam::ALL.to_vec()).prop_map(Action::Foam),
        1 => select(SignalWord::ALL.to_vec()).prop_map(Action::Signal),
        1 => (select(Family::ALL.to_vec()), any::<bool>()).prop_map(|(family, is)| Action::Family(family, is)),
        1 => any::<bool>().prop_map(Action::Vacuum),
        1 => Just(Action::AddSetting),
        1 => Just(Action::DropSetting),
        1 => select(Surface::ALL.to_vec()).prop_map(Action::Surface),
        1 => select(Porosity::ALL.to_vec()).prop_map(Action::Porosity),
        1 => select(Dispenser::ALL.to_vec()).prop_map(Action::Dispenser),
        1 => (0..7_usize, any_id()).prop_map(|(index, id)| Action::AreaFloor(index, id)),
        1 => (0..7_usize, any::<bool>()).prop_map(|(index, included)| Action::Include(index, included)),
        1 => Just(Action::StopRead),
        1 => Just(Action::Replace(Box::new(Typed { site: Site::default(), ..Typed::default() }))),
        1 => Just(Action::Replace(Box::default())),
        6 => any_later_action(),
    ]
}

/// Those of the fill station, of catch tests and of the order of areas.
fn any_later_action() -> impl Strategy<Value = Action> {
    prop_oneof![
        select(Job::ALL.to_vec()).prop_map(Action::Job),
        select(Rest::ALL.to_vec()).prop_map(Action::Rest),
        select(Mishap::ALL.to_vec()).prop_map(Action::Mishap),
        select(Method::ALL.to_vec()).prop_map(Action::Method),
        any_id().prop_map(Action::Other),
        Just(Action::AddTip),
        Just(Action::DropTip),
        Just(Action::AddCatch),
        (0..4_usize).prop_map(Action::DropCatch),
        (0..7_usize, any_id()).prop_map(|(index, id)| Action::AreaProduct(index, id)),
        (0..7_usize, select(Place::ALL.to_vec())).prop_map(|(index, place)| Action::AreaPlace(index, place)),
        Just(vec![4, 2, 0, 1, 3]).prop_map(Action::Order),
        proptest::collection::vec(0..7_usize, 0..7).prop_map(Action::Order),
    ]
}

/// Every text that somebody typed, by the record and the place where it stands.
fn texts(typed: &Typed) -> BTreeMap<String, String> {
    let mut out = BTreeMap::new();
    let mut put = |key: String, text: &str| drop(out.insert(key, text.to_owned()));
    for one in &typed.site.machines {
        put(format!("machine {} name", one.id), &one.name);
        let entries: [(&str, &Entry); 8] = [
            ("tank", &one.tank),
            ("least", &one.least),
            ("most", &one.most),
            ("reuse", &one.reuse),
            ("path", &one.path),
            ("overlap", &one.overlap),
            ("speed", &one.speed),
            ("efficiency", &one.efficiency),
        ];
        for (name, entry) in entries {
            put(format!("machine {} {name}", one.id), &entry.text);
        }
        for (index, entry) in one.settings.iter().enumerate() {
            put(format!("machine {} setting {index}", one.id), &entry.text);
        }
    }
    for one in &typed.site.products {
        for (name, text) in [
            ("name", &one.name),
            ("label", &one.label),
            ("codes", &one.codes),
            ("ph", &one.ph),
            ("notes", &one.notes),
        ] {
            put(format!("product {} {name}", one.id), text);
        }
    }
    for one in &typed.site.floors {
        put(format!("floor {} name", one.id), &one.name);
        put(format!("floor {} low", one.id), &one.target_low.text);
        put(format!("floor {} high", one.id), &one.target_high.text);
    }
    for one in &typed.site.measures {
        put(format!("measure {} name", one.id), &one.name);
        put(format!("measure {} step", one.id), &one.step.text);
    }
    for one in &typed.site.areas {
        put(format!("area {} name", one.id), &one.name);
        put(format!("area {} size", one.id), &one.size.text);
    }
    put("level".to_owned(), &typed.ask.level.text);
    put("refill".to_owned(), &typed.ask.refill.text);
    out
}

/// How many of the texts that stood before an action may be gone or changed after it.
fn may_change(action: &Action) -> usize {
    match action {
        Action::Write(..) | Action::Text(..) | Action::DropSetting => 1,
        Action::Porosity(_) => 2,
        Action::Remove(..) | Action::Replace(_) => usize::MAX,
        _ => 0,
    }
}

fn after(actions: &[Action]) -> Typed {
    actions.iter().cloned().fold(Typed::default(), reduce)
}

proptest! {
    #[test]
    fn nothing_else_is_lost(actions in proptest::collection::vec(any_action(), 0..25), last in any_action()) {
        let before = after(&actions);
        let then = texts(&before);
        let now = texts(&reduce(before, last.clone()));
        let lost = then.iter().filter(|(key, text)| now.get(*key) != Some(*text)).count();
        prop_assert!(lost <= may_change(&last), "{:?} changed {} texts", last, lost);
    }

    #[test]
    fn what_was_typed_stands_in_its_field(
        actions in proptest::collection::vec(any_action(), 0..12), field in any_field(), text in any_text(),
    ) {
        let before = after(&actions);
        let exists = field.entry(&before).is_some();
        let now = reduce(before, Action::Write(field, text.clone()));
        prop_assert_eq!(field.entry(&now).map(|entry| entry.text.as_str()), exists.then_some(text.as_str()));
    }

    /// Every view answers or says what is in the way, and an answer can be saved and found again.
    #[test]
    fn every_view_stands(actions in proptest::collection::vec(any_action(), 0..25), comma: bool) {
        let typed = after(&actions);
        let marks = if comma { Marks::COMMA } else { Marks::POINT };
        let views = [
            (View::Fill, fill::work(&typed, marks).outcome),
            (View::Flow, flow::work(&typed, marks).outcome),
            (View::Shift, shift::work(&typed, marks).outcome),
        ];
        for (view, outcome) in views {
            let answered = !outcome.answer.figures.is_empty();
            prop_assert!(answered || !outcome.troubles.is_empty(), "{:?} neither answers nor says why", view);
            let finite = outcome.answer.figures.iter().all(|figure| figure.value.si.is_finite());
            prop_assert!(finite, "{:?}", outcome.answer.figures);
            let file = save(view, &typed, marks);
            prop_assert!(recompute(&file).is_ok(), "{:?}", recompute(&file));
        }
        for view in [View::TopUp, View::Rescue, View::Reading] {
            let file = save(view, &typed, marks);
            prop_assert!(recompute(&file).is_ok(), "{:?}", recompute(&file));
        }
        let _ = (flow::calibrate::work(&typed, marks), shift::best_order(&typed, &shift::work(&typed, marks), marks));
        let text = serde_json::to_string(&typed).unwrap();
        prop_assert_eq!(serde_json::from_str::<Typed>(&text).unwrap(), typed);
    }
}

#[test]
fn a_shelf_keeps_its_last_record() {
    for shelf in [Shelf::Machine, Shelf::Product, Shelf::Floor, Shelf::Measure] {
        let typed = after(&vec![Action::Remove(shelf, 0); 20]);
        assert!(typed.machine().is_some() && typed.product().is_some());
        assert!(typed.floor().is_some() && typed.measure().is_some());
    }
    assert!(after(&vec![Action::Remove(Shelf::Area, 0); 20]).site.areas.is_empty());
}

#[test]
fn a_new_record_is_blank_and_chosen() {
    let typed = after(&[Action::System(System::Metric), Action::Add(Shelf::Machine)]);
    let machine = typed.machine().unwrap();
    assert_eq!((machine.id.as_str(), machine.tank.clone()), ("n1", Entry::new("", "l")));
    assert!(machine.vacuum, "foam is feared until somebody says there is no vacuum");
    let typed = after(&[Action::Add(Shelf::Product)]);
    assert_eq!(
        (typed.product().unwrap().foam, typed.product().unwrap().signal),
        (Foam::Unknown, SignalWord::Unknown)
    );
    let typed = after(&[Action::MoveUp(1), Action::MoveUp(0), Action::MoveUp(99)]);
    assert_eq!(typed.site.areas[0].id, "a2");
}
