//! Answers saved by earlier versions: they open, and they stand.
//!
//! A file is added here whenever the schema changes, and none is ever taken away.

#![cfg(not(target_arch = "wasm32"))]

use brimline::form::saved::{View, open, recompute};

const SAVED: [(&str, View, usize); 33] = [
    (include_str!("saved/fill-schema-1.json"), View::Fill, 12),
    (include_str!("saved/flow-schema-1.json"), View::Flow, 6),
    (include_str!("saved/shift-schema-1.json"), View::Shift, 7),
    (include_str!("saved/fill-schema-2.json"), View::Fill, 21),
    (include_str!("saved/fill-powder-schema-2.json"), View::Fill, 7),
    (include_str!("saved/top-up-schema-2.json"), View::TopUp, 7),
    (include_str!("saved/rescue-schema-2.json"), View::Rescue, 5),
    (include_str!("saved/reading-schema-2.json"), View::Reading, 4),
    (include_str!("saved/flow-schema-2.json"), View::Flow, 9),
    (include_str!("saved/shift-schema-2.json"), View::Shift, 7),
    (include_str!("saved/fill-schema-3.json"), View::Fill, 21),
    (include_str!("saved/fill-powder-schema-3.json"), View::Fill, 7),
    (include_str!("saved/top-up-schema-3.json"), View::TopUp, 7),
    (include_str!("saved/rescue-schema-3.json"), View::Rescue, 5),
    (include_str!("saved/reading-schema-3.json"), View::Reading, 4),
    (include_str!("saved/flow-schema-3.json"), View::Flow, 11),
    (include_str!("saved/shift-schema-3.json"), View::Shift, 29),
    (include_str!("saved/fill-schema-4.json"), View::Fill, 21),
    (include_str!("saved/fill-powder-schema-4.json"), View::Fill, 7),
    (include_str!("saved/fill-standard-schema-4.json"), View::Fill, 20),
    (include_str!("saved/top-up-schema-4.json"), View::TopUp, 7),
    (include_str!("saved/rescue-schema-4.json"), View::Rescue, 5),
    (include_str!("saved/reading-schema-4.json"), View::Reading, 4),
    (include_str!("saved/flow-schema-4.json"), View::Flow, 11),
    (include_str!("saved/shift-schema-4.json"), View::Shift, 29),
    (include_str!("saved/fill-schema-5.json"), View::Fill, 21),
    (include_str!("saved/fill-powder-schema-5.json"), View::Fill, 7),
    (include_str!("saved/fill-standard-schema-5.json"), View::Fill, 20),
    (include_str!("saved/top-up-schema-5.json"), View::TopUp, 7),
    (include_str!("saved/rescue-schema-5.json"), View::Rescue, 5),
    (include_str!("saved/reading-schema-5.json"), View::Reading, 4),
    (include_str!("saved/flow-schema-5.json"), View::Flow, 11),
    (include_str!("saved/shift-schema-5.json"), View::Shift, 29),
];

#[test]
fn every_saved_answer_opens_and_stands() {
    for (file, view, figures) in SAVED {
        let (opened, typed) = open(file).expect("it opens");
        assert_eq!(opened, view);
        assert_eq!(typed.ask.machine, "self-driving");
        let agreement = recompute(file).expect("it stands");
        assert_eq!((agreement.view, agreement.figures), (view, figures));
    }
}

#[test]
fn the_desk_tool_tells_what_stands_and_what_does_not() {
    let run = |file: &str| {
        let out = std::process::Command::new(env!("CARGO_BIN_EXE_brimline"))
            .args(["recompute", file])
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .output()
            .expect("the desk tool runs");
        let told = if out.status.success() { out.stdout } else { out.stderr };
        (out.status.code(), String::from_utf8(told).expect("plain text"))
    };
    let write = |name: &str, text: &str| {
        let path = std::env::temp_dir().join(format!("brimline-{}-{name}", std::process::id()));
        std::fs::write(&path, text).expect("a file in the temporary folder");
        path.display().to_string()
    };
    let fill = SAVED[0].0;

    let (code, told) = run("tests/saved/fill-schema-1.json");
    assert_eq!(code, Some(0), "{told}");
    assert_eq!(
        told.trim(),
        "tests/saved/fill-schema-1.json: the answer of Fill stands. 12 figures were worked out again and agree."
    );

    let dose =
        serde_json::from_str::<serde_json::Value>(fill).expect("JSON")["figures"]["fill.dose"].to_string();
    let changed = [
        ("input.json", fill.replace("2-4 oz/gal", "2-5 oz/gal"), "what was typed has been changed"),
        (
            "answer.json",
            fill.replace(&format!("\"fill.dose\": {dose}"), "\"fill.dose\": 0.001"),
            "fill.dose does not stand",
        ),
        (
            "later.json",
            fill.replace("\"schema\": 1", "\"schema\": 99"),
            "saved by a later version (schema 99)",
        ),
        ("cut.json", fill[..fill.len() / 2].to_owned(), "or it is damaged"),
        (
            "other.json",
            "{\"kind\": \"letter\", \"schema\": 1}".to_owned(),
            "is not an answer saved by Brimline",
        ),
        ("noise.json", "\u{0}\u{1}not JSON".to_owned(), "is not an answer saved by Brimline"),
    ];
    for (name, text, message) in changed {
        assert_ne!(text, fill, "{name} is a change");
        let path = write(name, &text);
        let (code, told) = run(&path);
        assert_eq!(code, Some(1), "{name}: {told}");
        assert!(told.contains(message), "{name}: {told}");
        std::fs::remove_file(path).expect("the file goes");
    }
    let (code, told) = run("tests/saved/nowhere.json");
    assert_eq!(code, Some(1));
    assert!(told.starts_with("tests/saved/nowhere.json cannot be read:"), "{told}");
}
