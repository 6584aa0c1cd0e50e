//! What a link leaves out says the same for ever.

use super::edits::{edited, value};
use brimline::shape::{Shape, Shaped};
use brimline::site::Site;
use brimline::site::passing::{link, restore, strip};
use proptest::prelude::*;
use serde_json::{Map, Value};

proptest! {
    #[test]
    fn what_is_left_out_comes_back(site in edited("x")) {
        let whole = value(&site);
        let short = strip(&whole, Site::SHAPE);
        prop_assert!(short.to_string().len() < whole.to_string().len() / 2);
        prop_assert_eq!(restore(&short, Site::SHAPE), whole);
    }
}

/// The blank of every record, by its place.
fn blanks(shape: &Shape, path: &str, out: &mut Map<String, Value>) {
    match shape {
        Shape::List(shape) => blanks(shape, path, out),
        Shape::Object { fields, .. } => {
            out.insert(path.to_owned(), shape.blank());
            fields.iter().for_each(|(field, shape)| blanks(shape, &format!("{path}.{field}"), out));
        }
        _ => {}
    }
}

/// A link does not send what is blank. If a blank value changes, links that people have say something else: the
/// version of the link must rise with it. New fields are no change.
#[test]
fn no_blank_value_has_changed_since_this_version_of_the_link() {
    let mut now = Map::new();
    blanks(Site::SHAPE, "site", &mut now);
    let then: Map<String, Value> = serde_json::from_str(include_str!("blanks-link-1.json")).expect("JSON");
    assert_eq!(link::VERSION, 1, "a new version needs a file of its own");
    assert!(then.len() > 30, "{}", then.len());
    for (path, blank) in &then {
        for (field, blank) in blank.as_object().expect("fields") {
            assert_eq!(now.get(path).and_then(|one| one.get(field)), Some(blank), "{path}.{field}");
        }
    }
}
