//! A small page, sealed, and held against what other programs make of it.

use super::{Files, folder, notes, packed, page, with_packed};
use crate::desk::headers::{self, ASK, KEEP};
use flate2::read::GzDecoder;
use std::fs;
use std::io::Read;
use std::path::PathBuf;
use std::process::Command;
use std::sync::atomic::{AtomicU32, Ordering};

const WORKER: &str = "const V = \"__VERSION__\";\nconst F = {/* __FILES__ */};\n";
const FRAME: &str =
    "<link href=./main.css rel=stylesheet><link href=\"./icons/jug.svg\"><script src=./boot.js></script>";

/// What Trunk makes, in small.
fn built() -> Files {
    let style = "main { color: black }\n".repeat(40);
    let all = [
        ("index.html", FRAME),
        ("boot.js", "await import('./app.js');"),
        ("app.js", "1"),
        ("main.css", &style),
        ("brimline.webmanifest", "{}"),
        ("words-es-0123456789abcdef.ftl", "yes = sí"),
        ("icons/jug.svg", "<svg/>"),
        ("worker.js", "an earlier one"),
    ];
    all.map(|(name, text)| (name.to_owned(), text.as_bytes().to_vec())).into()
}

fn text<'a>(files: &'a Files, name: &str) -> &'a str {
    std::str::from_utf8(files.get(name).unwrap_or_else(|| panic!("{name} is there"))).expect("text")
}

/// A new folder, for one test.
fn scratch() -> PathBuf {
    static NUMBER: AtomicU32 = AtomicU32::new(0);
    let name = format!("brimline-seal-{}-{}", std::process::id(), NUMBER.fetch_add(1, Ordering::Relaxed));
    let folder = std::env::temp_dir().join(name);
    let _ = fs::remove_dir_all(&folder);
    folder
}

#[test]
fn what_never_changes_stands_in_a_folder_with_its_digest() {
    let (files, version) = page(built(), WORKER).expect("it can be sealed");
    let frame = text(&files, "index.html");
    assert_eq!(
        frame,
        format!(
            "<link href=./{version}/main.css rel=stylesheet><link href=\"./icons/jug.svg\"><script src=./{version}/boot.js></script>"
        )
    );
    let worker = text(&files, "worker.js");
    for (name, _) in files.iter().filter(|(name, _)| *name != "worker.js" && *name != "index.html") {
        // Other languages stand in what starts the page.
        let listed = worker.contains(&format!("\n  \"{name}\": \"sha256-"));
        assert_eq!(listed, !name.starts_with("words-"), "{name} in {worker}");
        let kept = headers::kept(&format!("/{name}"));
        assert_eq!(kept == KEEP, name.starts_with(&version), "{name}");
    }
    assert!(worker.contains("\n  \"./\": \"sha256-"), "{worker}");
    assert_eq!(headers::kept("/worker.js"), ASK);
}

#[test]
fn another_page_has_another_folder_and_the_same_one_the_same() {
    let version = |style: &str| {
        let mut files = built();
        files.insert("main.css".to_owned(), style.as_bytes().to_vec());
        page(files, WORKER).expect("it can be sealed").1
    };
    assert_eq!(version("a"), version("a"));
    assert_ne!(version("a"), version("b"));
}

#[test]
fn a_page_whose_frame_is_another_one_is_refused() {
    let mut files = built();
    files.insert("index.html".to_owned(), b"<script src=/elsewhere.js></script>".to_vec());
    assert!(page(files, WORKER).is_err());
    assert!(page(Files::new(), WORKER).is_err());
}

#[test]
fn packed_files_hold_what_lies_beside_them() {
    let files = with_packed(built()).expect("they can be packed");
    assert!(!files.contains_key("icons/jug.svg.gz"), "six bytes do not become fewer");
    let style = &files["main.css"];
    let mut out = Vec::new();
    GzDecoder::new(&*files["main.css.gz"]).read_to_end(&mut out).expect("gzip");
    assert_eq!(&out, style);
    out.clear();
    brotli::BrotliDecompress(&mut &*files["main.css.br"], &mut out).expect("Brotli");
    assert_eq!(&out, style);
    // RFC 1952, 2.3.1: four bytes of time, and a flag for a name: neither says anything.
    assert_eq!(files["main.css.gz"][3..8], [0; 5]);
    assert!(!packed::is_worth_it("icons/jug-192.png") && !packed::is_worth_it("LICENSE"));
}

#[test]
fn another_tool_checks_the_sums() {
    let (out, files) = (scratch(), built());
    folder::write(&out, &files).expect("a new folder");
    let check = Command::new("sha256sum").args(["-c", folder::SUMS]).current_dir(&out).output();
    let check = check.expect("sha256sum runs");
    assert!(check.status.success(), "{}", String::from_utf8_lossy(&check.stdout));
    assert_eq!(String::from_utf8_lossy(&check.stdout).lines().count(), files.len());
    fs::remove_dir_all(out).expect("it was there");
}

#[test]
fn its_own_folder_is_written_anew_and_nothing_stays_behind() {
    let (out, mut files) = (scratch(), built());
    folder::write(&out, &files).expect("a new folder");
    files.remove("icons/jug.svg");
    folder::write(&out, &files).expect("its own folder");
    assert!(out.join("main.css").is_file() && !out.join("icons").exists());
    assert_eq!(fs::read_to_string(out.join(folder::SUMS)).expect("the list"), folder::sums(&files));
    fs::remove_dir_all(out).expect("it was there");
}

#[test]
fn a_folder_with_anything_else_in_it_is_left_as_it_is() {
    let refused = |out: &PathBuf, words: &str| {
        let before = super::precache::read(out).expect("it can be read");
        let fault = folder::write(out, &built()).expect_err("something would be lost").to_string();
        assert!(fault.contains(words) && fault.contains("Choose an empty folder"), "{fault}");
        assert_eq!(super::precache::read(out).expect("it can be read"), before);
    };
    let out = scratch();
    fs::create_dir_all(&out).expect("a folder");
    fs::write(out.join("notes.txt"), "mine").expect("a file");
    refused(&out, "is not empty");
    fs::remove_file(out.join("notes.txt")).expect("it was there");
    folder::write(&out, &built()).expect("an empty folder");
    fs::write(out.join("notes.txt"), "mine").expect("a file");
    refused(&out, "notes.txt was not written by this tool");
    fs::remove_file(out.join("notes.txt")).expect("it was there");
    fs::write(out.join("main.css"), "mine").expect("a file");
    refused(&out, "main.css was changed since");
    let file = out.join("main.css");
    assert!(folder::write(&file, &built()).expect_err("no folder").to_string().contains("is a file"));
    fs::remove_dir_all(out).expect("it was there");
}

/// Each address meets every header once: hosts put two of one name one behind the other.
#[test]
fn the_list_of_headers_says_of_each_address_what_this_server_sends() {
    let (files, version) = page(built(), WORKER).expect("it can be sealed");
    let list = notes::headers(&version);
    let rules: Vec<(&str, Vec<(String, &str)>)> = list
        .split("\n\n")
        .skip(1)
        .map(|rule| {
            let (address, lines) = rule.split_once('\n').expect("an address and its headers");
            let lines = lines.lines().filter_map(|line| line.trim().split_once(": "));
            (address, lines.map(|(name, value)| (name.to_lowercase(), value)).collect())
        })
        .collect();
    let meets = |rule: &str, address: &str| match rule.split_once('*') {
        Some((start, end)) => address.starts_with(start) && address.ends_with(end),
        None => rule == address,
    };
    for address in files.keys().map(|name| format!("/{name}")).chain(["/".to_owned()]) {
        let mut sent: Vec<(String, &str)> =
            rules.iter().filter(|(rule, _)| meets(rule, &address)).flat_map(|(_, all)| all.clone()).collect();
        sent.sort();
        let ending = address.rsplit_once('.').map_or("html", |(_, ending)| ending);
        let kind = headers::KINDS.iter().find(|(one, _)| *one == ending).expect("a kind").1;
        let mut expected: Vec<(String, &str)> =
            headers::ALWAYS.iter().map(|(name, value)| ((*name).to_owned(), *value)).collect();
        expected.push(("cache-control".to_owned(), headers::kept(&address)));
        if address != "/" {
            expected.push(("content-type".to_owned(), kind));
        }
        expected.sort();
        assert_eq!(sent, expected, "{address}");
    }
}

#[test]
fn people_are_told_all_of_it() {
    let text = notes::read_me("v-0123456789abcdef");
    assert!(!text.contains("__"), "{text}");
    for (_, value) in headers::ALWAYS.iter().chain(&headers::KINDS) {
        assert!(text.contains(value), "{value}");
    }
    assert!(text.contains("v-0123456789abcdef/") && text.contains(KEEP) && text.contains(ASK));
}
