//! The bill of a small tree, and of this checkout, held against the standard's own schema.

use super::{Tree, bill, read, written};
use serde_json::{Value, json};
use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};

const TREE: &str = "0\tbrimline v0.1.0 (/somewhere)\tMIT\n1\ta v1.0.0\tMIT/Apache-2.0\n2\tc v2.0.0+x\tUnlicense OR MIT\n1\tb v0.2.0\t0BSD\n2\ta v1.0.0\tMIT/Apache-2.0 (*)\n";
const LOCK: &str = "[[package]]\nname = \"a\"\nversion = \"1.0.0\"\nsource = \"registry\"\nchecksum = \"00ff\"\n\n[[package]]\nname = \"a\"\nversion = \"0.9.0\"\nchecksum = \"11ee\"\n";

fn small() -> Tree {
    read(TREE).expect("Cargo's words")
}

#[test]
fn each_crate_is_named_once_with_its_licence_and_digest() {
    let bill = bill(&small(), LOCK, "1.90.0");
    let names: Vec<&str> = bill["components"]
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(|one| one["purl"].as_str())
        .collect();
    assert_eq!(
        names,
        ["pkg:cargo/a@1.0.0", "pkg:cargo/b@0.2.0", "pkg:cargo/c@2.0.0%2Bx", "pkg:generic/rust-std@1.90.0"]
    );
    let first = &bill["components"][0];
    assert_eq!(first["licenses"], json!([{"expression": "MIT OR Apache-2.0"}]));
    assert_eq!(first["hashes"], json!([{"alg": "SHA-256", "content": "00ff"}]));
    assert_eq!(bill["components"][1].get("hashes"), None, "the lock knows none");
    assert_eq!(bill["metadata"]["component"]["name"], "brimline");
}

#[test]
fn what_a_crate_needs_is_told_where_cargo_told_it_first() {
    let bill = bill(&small(), LOCK, "1.90.0");
    let needs = |purl: &str| {
        let all = bill["dependencies"].as_array().expect("a list");
        let one = all.iter().find(|one| one["ref"] == purl).unwrap_or_else(|| panic!("{purl} is there"));
        one["dependsOn"].as_array().expect("a list").len() - 1
    };
    assert_eq!(["pkg:cargo/brimline@0.1.0", "pkg:cargo/a@1.0.0", "pkg:cargo/b@0.2.0"].map(needs), [2, 1, 1]);
}

#[test]
fn other_words_are_refused() {
    for text in ["", "brimline v0.1.0", "0\tbrimline\tMIT", "0\tbrimline v1\n", "1\ta v1\tMIT\n2\tb"] {
        assert!(read(text).is_none(), "{text}");
    }
}

fn ours() -> Value {
    let text = written(Path::new(env!("CARGO_MANIFEST_DIR"))).expect("Cargo tells its tree");
    serde_json::from_str(&text).expect("JSON")
}

/// What only runs while the page is built is not in it, and what is in it is not missing.
#[test]
fn the_page_has_its_crates_and_none_of_the_tools() {
    let ours = ours();
    let named =
        |name: &str| ours["components"].as_array().expect("a list").iter().find(|one| one["name"] == name);
    for name in
        ["yew", "serde", "serde_json", "wasm-bindgen", "ed25519-dalek", "qrcode", "wasm_split_helpers"]
    {
        let digest =
            named(name).unwrap_or_else(|| panic!("{name} is in the page"))["hashes"][0]["content"].as_str();
        assert_eq!(digest.map(str::len), Some(64), "{name}");
    }
    for name in ["axum", "tokio", "brotli", "proptest", "syn", "wasm-bindgen-macro", "serde_derive"] {
        assert!(named(name).is_none(), "{name}");
    }
}

/// CycloneDX’s published JSON schema 1.6 (ECMA-424), strict, as `cyclonedx-python-lib` carries it; that library also
/// reads every package URL (ECMA-427) and licence expression.
#[test]
#[ignore = "needs the Python reference libraries; `cargo run -- test` runs it"]
fn the_standards_own_schema_takes_it() {
    let python = std::env::var("BRIMLINE_PYTHON").expect("BRIMLINE_PYTHON names a Python with cyclonedx");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/bom.py");
    let theirs = |bill: &Value| {
        let mut python = Command::new(&python)
            .arg(script)
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .expect("Python starts");
        python.stdin.take().expect("its input").write_all(bill.to_string().as_bytes()).expect("Python reads");
        let run = python.wait_with_output().expect("Python ends");
        assert!(run.status.success());
        serde_json::from_slice::<Value>(&run.stdout).expect("JSON")
    };
    let ours = ours();
    let count = ours["components"].as_array().expect("a list").len();
    assert_eq!(theirs(&ours), json!({"faults": [], "crates": count - 1, "components": count}));
    println!("{count} components, as CycloneDX 1.6 asks");
    // It would find something.
    let mut wrong = ours;
    wrong["components"][0]["hashes"][0]["content"] = json!("short");
    assert_eq!(theirs(&wrong)["faults"].as_array().map(Vec::len), Some(1));
}
