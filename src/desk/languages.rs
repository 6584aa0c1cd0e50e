//! The words of every language but English as one file each, which the page fetches when somebody chooses it.

use super::digest::{Pieces, integrity};
use super::fault::Fault;
use super::places::Places;
use super::shorten::bare;
use crate::words::{LANGUAGES, Language};
use std::fmt::Write;
use std::fs;
use std::path::Path;

/// The resource files of a language, as English has them.
const PARTS: [&str; 5] = ["fill", "rest", "site", "log", "practice"];
/// What starts the page, and where it is told which files there are.
const STARTER: &str = "boot.js";
const MARK: &str = "/* __WORDS__ */";
/// What asks for them, relative to the checkout. It becomes a part of the starter.
const ASKER: &str = "src/page/offline/language.js";
/// 64 bits of the digest are plenty to tell one build from the next.
const DIGEST: usize = 16;

/// Writes the files into the build that Trunk is about to finish, and their names into its starter.
///
/// # Errors
/// When a file cannot be read or written, or the starter has no place for the names.
pub fn run(places: &Places, build: &Path) -> Result<(), Fault> {
    let starter = build.join(STARTER);
    let text = fs::read_to_string(&starter).map_err(|error| Fault::file(&starter, &error))?;
    if text.matches(MARK).count() != 1 {
        return Err(Fault::new(format!("{STARTER} has no {MARK}, or two.")));
    }
    let mut names = String::new();
    for language in others() {
        let words = words(places.root(), language)?;
        let mut digest = Pieces::default();
        digest.add(language.code, words.as_bytes());
        let name = format!("{}{}.ftl", start(language), &digest.hex()[..DIGEST]);
        let file = build.join(&name);
        // Writing to a String cannot fail.
        let _ = write!(names, " {}: [\"{name}\", \"{}\"],", language.code, integrity(words.as_bytes()));
        fs::write(&file, words).map_err(|error| Fault::file(&file, &error))?;
    }
    let text = text.replace(MARK, &format!("{names} "));
    fs::write(&starter, bare(&format!("{}{text}", asker(places.root())?)))
        .map_err(|error| Fault::file(&starter, &error))
}

/// What asks for a language and keeps it.
///
/// # Errors
/// When it cannot be read.
pub fn asker(root: &Path) -> Result<String, Fault> {
    let file = root.join(ASKER);
    fs::read_to_string(&file).map_err(|error| Fault::file(&file, &error))
}

/// All languages but English.
pub fn others() -> impl Iterator<Item = &'static Language> {
    LANGUAGES.iter().filter(|one| **one != *Language::english())
}

/// How the name of a language's file begins.
pub fn start(language: &Language) -> String {
    format!("words-{}-", language.code)
}

/// All that a language says, without the notes of its translators. A part that nobody has translated yet is not there.
///
/// # Errors
/// When a file cannot be read.
pub fn words(root: &Path, language: &Language) -> Result<String, Fault> {
    let folder = root.join("src/words").join(language.code);
    let mut out = String::new();
    for part in PARTS {
        let file = folder.join(part).with_extension("ftl");
        if !file.exists() {
            continue;
        }
        let text = fs::read_to_string(&file).map_err(|error| Fault::file(&file, &error))?;
        for line in text.lines().filter(|line| !line.is_empty() && !line.starts_with('#')) {
            out += line;
            out.push('\n');
        }
    }
    Ok(out)
}
