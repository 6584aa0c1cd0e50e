//! What the host of a sealed page should know, for programs and for people.

use crate::desk::headers::{ALWAYS, ASK, KEEP, KINDS};
use std::fmt::Write;

/// What is not in the version's folder, as addresses.
const ASKED_ABOUT: [&str; 6] =
    ["/", "/index.html", "/worker.js", "/brimline.webmanifest", "/icons/*", "/words-*"];

const READ_ME: &str = include_str!("read-me.txt");

/// The headers as a list of addresses, each with its own lines below it. No address is in two lists with the same
/// header, since hosts put such headers one behind the other.
pub fn headers(version: &str) -> String {
    let mut text = String::from(
        "# What to send with the page. READ-ME.txt, which came with it, says the same in words.\n",
    );
    let mut rule = |address: &str, headers: &[(&str, &str)]| {
        // Writing to a String cannot fail.
        let _ = writeln!(text, "\n{address}");
        for (name, value) in headers {
            let _ = writeln!(text, "  {}: {value}", spelt(name));
        }
    };
    rule("/*", &ALWAYS);
    rule(&format!("/{version}/*"), &[("cache-control", KEEP)]);
    for address in ASKED_ABOUT {
        rule(address, &[("cache-control", ASK)]);
    }
    for (ending, kind) in KINDS {
        rule(&format!("/*.{ending}"), &[("content-type", kind)]);
    }
    text
}

/// The text for people.
pub fn read_me(version: &str) -> String {
    let always = ALWAYS.map(|(name, value)| format!("    {}: {value}", spelt(name))).join("\n");
    let kinds = KINDS.map(|(ending, kind)| format!("    .{ending:<14}{kind}")).join("\n");
    READ_ME
        .replace("__ALWAYS__", &always)
        .replace("__KINDS__", &kinds)
        .replace("__VERSION__", version)
        .replace("__KEEP__", KEEP)
        .replace("__ASK__", ASK)
}

/// A header's name as people write it: the first letter of each word large.
fn spelt(name: &str) -> String {
    let word = |word: &str| word.get(..1).unwrap_or("").to_uppercase() + word.get(1..).unwrap_or("");
    name.split('-').map(word).collect::<Vec<_>>().join("-")
}
