//! Nothing in the page makes markup, script or an address to run out of text.
//!
//! The content policy refuses it too (W3C Trusted Types); here it is not even written.

#![cfg(not(target_arch = "wasm32"))]

use std::fs;
use std::path::{Path, PathBuf};

/// What turns text into markup or script: the injection sinks of W3C Trusted Types (section 2.1) and of HTML, by the
/// names that they have in Rust and in scripts, and the way of Yew to write markup as it is.
const SINKS: [&str; 22] = [
    "inner_html",
    "innerHTML",
    "outer_html",
    "outerHTML",
    "insert_adjacent_html",
    "insertAdjacentHTML",
    "create_contextual_fragment",
    "createContextualFragment",
    "parse_from_string",
    "DOMParser",
    "document.write",
    "write_1(",
    "srcdoc",
    "from_html_unchecked",
    "VRaw",
    "eval(",
    "Function(",
    "new_no_args",
    "new_with_args",
    "javascript:",
    "importScripts",
    "create_element(\"script\")",
];

/// Every file below a folder.
fn files(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
    let paths = entries.map(|entry| entry.expect("an entry").path());
    paths.flat_map(|path| if path.is_dir() { files(&path) } else { vec![path] }).collect()
}

/// All sources of the page, the desk tool's own left out: it makes no page by itself.
fn sources() -> Vec<(PathBuf, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let all = files(&root.join("src")).into_iter().filter(|path| !path.starts_with(root.join("src/desk")));
    let text = |path: &PathBuf| {
        ["rs", "js", "html"].iter().any(|ending| path.extension().is_some_and(|other| other == *ending))
    };
    let all = all.filter(text).chain([root.join("index.html")]);
    all.map(|path| (path.clone(), fs::read_to_string(&path).expect("text"))).collect()
}

/// Lines of the page with one of these in them.
fn lines_with(marks: &[&str]) -> Vec<String> {
    let mut found = Vec::new();
    for (path, text) in sources() {
        for (number, line) in text.lines().enumerate() {
            if marks.iter().any(|mark| line.contains(mark)) {
                found.push(format!("{}:{}: {}", path.display(), number + 1, line.trim()));
            }
        }
    }
    found
}

#[test]
fn no_text_becomes_markup_or_script() {
    assert!(sources().len() > 300, "the page's sources are found");
    assert_eq!(lines_with(&SINKS), Vec::<String>::new());
}

#[test]
fn one_policy_is_made_and_it_gives_one_address() {
    let made = lines_with(&["createPolicy", "create_policy"]);
    assert_eq!(made.len(), 1, "{made:?}");
    assert!(
        made[0].contains("boot.js") && made[0].contains("createScriptURL: () => \"./worker.js\""),
        "{made:?}"
    );
}

/// HTML, “event handler content attributes”; scripts and styles in the frame; addresses elsewhere.
#[test]
fn the_frame_has_no_script_style_or_handler_of_its_own() {
    let frame =
        fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("index.html")).expect("it is there");
    for mark in
        ["<script", "<style", " style=", " onload=", " onerror=", " onclick=", "http://", "https://", "//www"]
    {
        assert!(!frame.contains(mark), "{mark}");
    }
    let mut elsewhere = lines_with(&["=\"http://", "=\"https://", "(\"http://", "(\"https://"]);
    // Examples in the documentation name addresses that lead nowhere.
    elsewhere.retain(|line| !line.contains(": /// "));
    assert_eq!(elsewhere, Vec::<String>::new());
}
