//! An answer saved to a file, worked out again, and doubted when it should be.

use crate::after;
use brimline::form::action::Shelf;
use brimline::form::saved::{Agreement, Doubt, View, recompute, save};
use brimline::form::typed::SCHEMA;
use brimline::form::{Action, Field, Typed, names};
use brimline::number::Marks;
use serde_json::{Value, json};

const VIEWS: [View; 3] = [View::Fill, View::Flow, View::Shift];

/// A saved fill with one change.
#[track_caller]
fn changed(change: impl FnOnce(&mut Value)) -> Result<Agreement, Doubt> {
    let mut file: Value = serde_json::from_str(&save(View::Fill, &Typed::default(), Marks::POINT)).unwrap();
    change(&mut file);
    recompute(&file.to_string())
}

#[test]
fn what_is_saved_is_found_again() {
    for marks in [Marks::POINT, Marks::COMMA] {
        for machine in ["walk-behind", "self-driving", "ride-on"] {
            for product in ["neutral", "degreaser", "vinegar", "quat", "hand-soap"] {
                let typed = after([
                    Action::Pick(Shelf::Machine, machine.into()),
                    Action::Pick(Shelf::Product, product.into()),
                    Action::Write(Field::Level, if marks == Marks::POINT { "82.5" } else { "82,5" }.into()),
                ]);
                for view in VIEWS {
                    let figures = view.answer(&typed, marks).figures.len();
                    assert_eq!(recompute(&save(view, &typed, marks)), Ok(Agreement { view, figures }));
                    assert!(figures >= 6);
                }
            }
        }
    }
}

#[test]
fn a_mistake_is_saved_as_it_stands() {
    let typed = after([Action::Write(Field::Tank, "ten \"gallons\" \u{0}\n🧴".into())]);
    for view in VIEWS {
        assert_eq!(recompute(&save(view, &typed, Marks::POINT)), Ok(Agreement { view, figures: 0 }));
    }
}

#[test]
fn a_changed_input_is_told_from_a_wrong_figure() {
    let input = changed(|file| file["input"]["site"]["machines"][0]["tank"]["text"] = json!("12"));
    assert_eq!(input, Err(Doubt::InputChanged));
    let check = changed(|file| file["check"] = json!("0000000000000000"));
    assert_eq!(check, Err(Doubt::InputChanged));

    let dose =
        brimline::form::fill::work(&Typed::default(), Marks::POINT).outcome.answer.get(names::FILL_DOSE);
    let now = dose.map(|value| value.si);
    for wrong in [0.0, -1.0, 1e300, 0.000_582_371] {
        let differs = Doubt::Differs { name: names::FILL_DOSE.to_owned(), saved: Some(wrong), now };
        assert_eq!(changed(|file| file["figures"][names::FILL_DOSE] = json!(wrong)), Err(differs));
    }
    let extra = changed(|file| file["figures"]["fill.luck"] = json!(7.0));
    let differs = Doubt::Differs { name: "fill.luck".to_owned(), saved: Some(7.0), now: None };
    assert_eq!(extra, Err(differs));
    let short = changed(|file| drop(file["figures"].as_object_mut().unwrap().remove(names::FILL_DOSE)));
    assert_eq!(short, Err(Doubt::Differs { name: names::FILL_DOSE.to_owned(), saved: None, now }));
    assert_eq!(changed(|file| file["remarks"] = json!([])), Err(Doubt::Remarks));
    assert_eq!(changed(|file| file["view"] = json!("flow")), Err(Doubt::InputChanged));
    assert_eq!(changed(|file| file["decimal"] = json!(",")), Err(Doubt::InputChanged));
}

#[test]
fn a_later_version_says_so() {
    assert_eq!(changed(|file| file["schema"] = json!(SCHEMA + 1)), Err(Doubt::Later(SCHEMA + 1)));
    // Even where it has what this version does not know.
    let later = changed(|file| {
        file["schema"] = json!(9);
        file["weather"] = json!("rain");
    });
    assert_eq!(later, Err(Doubt::Later(9)));
}

#[test]
fn what_is_no_answer_is_unreadable() {
    let whole = save(View::Shift, &Typed::default(), Marks::POINT);
    for end in (0..whole.len()).step_by(97).filter(|end| whole.is_char_boundary(*end)) {
        assert!(matches!(recompute(&whole[..end]), Err(Doubt::Unreadable(_))), "cut at {end}");
    }
    let deep = "[".repeat(100_000);
    for text in [
        "",
        " ",
        "null",
        "{}",
        "[]",
        "1:64",
        "{\"kind\":\"a song\",\"schema\":1}",
        "\u{feff}{}",
        deep.as_str(),
    ] {
        assert!(matches!(recompute(text), Err(Doubt::Unreadable(_))), "{text:.20}");
    }
    assert!(matches!(changed(|file| file["kind"] = json!("song")), Err(Doubt::Unreadable(_))));
    // What nobody knows, a later version may have added: it is passed over.
    assert!(changed(|file| file["weather"] = json!("rain")).is_ok());
    assert!(matches!(changed(|file| file["schema"] = json!(-1)), Err(Doubt::Unreadable(_))));
    let nothing = changed(|file| file["figures"]["fill.dose"] = json!(null));
    assert!(matches!(nothing, Err(Doubt::Differs { saved: None, .. })));
    assert_eq!(changed(|file| file["input"]["system"] = json!("troy")), Err(Doubt::InputChanged));
}
