//! What general libraries of another language say of the same files and links.

use brimline::shape::Shaped;
use brimline::site::demo;
use brimline::site::passing::link::pack;
use brimline::site::passing::{Secret, sign, strip};
use serde_json::{Value, json};
use std::io::Write;
use std::process::{Command, Stdio};

/// Python's `cryptography`, `hashlib`, `zlib` and `base64`.
#[test]
#[ignore = "needs the Python reference libraries; `cargo run -- test` runs it"]
fn other_libraries_find_the_same() {
    let python = std::env::var("BRIMLINE_PYTHON").expect("BRIMLINE_PYTHON names a Python with cryptography");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/passing.py");
    let secrets: Vec<Secret> = (0..8).map(|n| Secret::new([n * 31; 32])).collect();
    let mut site = demo();
    site.areas[0].name = "Größe \"½\" \\ \u{1f9fd}\u{fb33}\n\ttab".into();
    let mut files: Vec<Value> = secrets
        .iter()
        .map(|secret| serde_json::from_str(&sign(&site, secret, 40).expect("it goes out")).expect("JSON"))
        .collect();
    files.push(files[0].clone());
    files[8]["site"]["name"] = "Another".into();
    let links: Vec<String> = demo().products.iter().map(|one| pack(one).expect("it fits")).collect();
    let asked = json!({"files": files, "links": links}).to_string();
    // Nine sites are more than a command line takes.
    let mut python = Command::new(python)
        .arg(script)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("Python starts");
    python.stdin.take().expect("its input").write_all(asked.as_bytes()).expect("Python reads");
    let run = python.wait_with_output().expect("Python ends");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let theirs: Value = serde_json::from_slice(&run.stdout).expect("JSON");
    let expected: Vec<bool> = (0..9).map(|at| at < 8).collect();
    assert_eq!(theirs["signed"], json!(expected), "eight signed files, and one that was changed");
    for (secret, print) in secrets.iter().zip(theirs["fingerprints"].as_array().expect("a list")) {
        assert_eq!(*print, secret.public().fingerprint());
    }
    for (product, content) in demo().products.iter().zip(theirs["links"].as_array().expect("a list")) {
        let whole = serde_json::to_value(product).expect("JSON");
        assert_eq!(*content, strip(&whole, brimline::site::Product::SHAPE));
    }
}
