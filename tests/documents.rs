//! What the documents say of the code is so.

#![cfg(not(target_arch = "wasm32"))]

use brimline::form::{Field, names};

const DEVELOPERS: &str = include_str!("../DEVELOPERS.md");
const README: &str = include_str!("../README.md");

/// The names in back quotes between `<!-- mark -->` and `<!-- /mark -->`.
fn listed(mark: &str) -> Vec<&str> {
    let (open, close) = (format!("<!-- {mark} -->"), format!("<!-- /{mark} -->"));
    let inside = DEVELOPERS.split(&open).nth(1).and_then(|rest| rest.split(&close).next()).expect(mark);
    inside.split('`').skip(1).step_by(2).collect()
}

#[test]
fn the_list_of_figures_is_complete() {
    assert_eq!(listed("names"), names::ALL);
}

#[test]
fn the_list_of_number_fields_is_complete() {
    assert_eq!(listed("inputs"), Field::SINGLE.iter().map(|field| field.key()).collect::<Vec<_>>());
}

#[test]
fn the_readme_opens_with_the_job() {
    let first = README.lines().nth(2).expect("a first paragraph");
    assert!(first.starts_with("Before every shift somebody fills"), "{first}");
    for command in ["cargo run ", "cargo run -- test", "cargo run -- recompute"] {
        assert!(README.contains(command), "{command}");
    }
}
