//! Seals a build for offline use: writes the list of its real files, each with its digest, and a
//! version made from them into the service worker.
//!
//! `pack` calls this after each build.

use super::digest::{Pieces, integrity};
use super::fault::Fault;
use super::fingerprint::files;
use super::languages;
use super::places::Places;
use super::shorten::bare;
use std::collections::BTreeMap;
use std::fmt::Write;
use std::fs;
use std::path::Path;

/// The worker's source, relative to the checkout.
pub const TEMPLATE: &str = "src/page/offline/worker.js";
/// The worker's name in a build. It is not in its own list: the browser keeps it by itself.
pub const WORKER: &str = "worker.js";
/// What the template says where the version goes, and the files.
const VERSION_MARK: &str = "__VERSION__";
const FILES_MARK: &str = "/* __FILES__ */";
/// A version's length: 64 bits of the digest are plenty to tell one build from the next.
const VERSION_LENGTH: usize = 16;

/// Seals the build that Trunk is about to finish.
///
/// # Errors
/// When no build is named, or its files cannot be read or written.
pub fn run(places: &Places, build: &Path) -> Result<(), Fault> {
    let template = places.root().join(TEMPLATE);
    let template = fs::read_to_string(&template).map_err(|error| Fault::file(&template, &error))?;
    let worker = build.join(WORKER);
    fs::write(&worker, bare(&seal(&template, &read(build)?)?)).map_err(|error| Fault::file(&worker, &error))
}

/// All files of a build by their names.
///
/// # Errors
/// When one cannot be read.
pub fn read(build: &Path) -> Result<BTreeMap<String, Vec<u8>>, Fault> {
    let mut found = BTreeMap::new();
    for (name, path) in files(build, build)? {
        found.insert(name, fs::read(&path).map_err(|error| Fault::file(&path, &error))?);
    }
    Ok(found)
}

/// The worker's text for these files. Those of other languages are kept only where somebody reads them: they are not in
/// its list, and it reads them in what starts the page.
///
/// # Errors
/// When the template has no place for them.
pub fn seal(template: &str, files: &BTreeMap<String, Vec<u8>>) -> Result<String, Fault> {
    let mut version = Pieces::default();
    version.add(WORKER, template.as_bytes());
    let mut list = String::new();
    // The frame is asked for by the folder's address; some servers redirect the other one, and a
    // browser refuses a redirected answer from a worker.
    let address = |name: &str| if name == "index.html" { "./".to_owned() } else { name.to_owned() };
    let addressed: BTreeMap<String, &Vec<u8>> = files
        .iter()
        .filter(|(name, _)| *name != WORKER)
        .map(|(name, bytes)| (address(name), bytes))
        .collect();
    for (address, bytes) in &addressed {
        version.add(address, bytes);
        let name = address.rsplit('/').next().unwrap_or(address);
        if languages::others().all(|one| !name.starts_with(&languages::start(one))) {
            // Writing to a String cannot fail.
            let _ = write!(list, "\n  {}: \"{}\",", quoted(address), integrity(bytes));
        }
    }
    let version = &version.hex()[..VERSION_LENGTH];
    let parts = [(VERSION_MARK, version.to_owned()), (FILES_MARK, format!("{list}\n"))];
    parts.into_iter().try_fold(template.to_owned(), |text, (mark, part)| {
        if text.contains(mark) {
            Ok(text.replace(mark, &part))
        } else {
            Err(Fault::new(format!("{TEMPLATE} has no {mark}.")))
        }
    })
}

/// A JSON string is a JavaScript string.
fn quoted(text: &str) -> String {
    serde_json::Value::from(text).to_string()
}

#[cfg(test)]
mod tests {
    use super::seal;
    use std::collections::BTreeMap;

    const TEMPLATE: &str = "const V = \"__VERSION__\";\nconst F = {/* __FILES__ */};\n";

    fn pages(script: &str) -> BTreeMap<String, Vec<u8>> {
        [("index.html", "page"), ("app.js", script)].map(|(name, text)| (name.to_owned(), text.into())).into()
    }

    #[test]
    fn lists_every_file_with_its_digest() {
        let worker = seal(TEMPLATE, &pages("alert('Hello, world.');")).expect("the template has its marks");
        let line = "\n  \"app.js\": \"sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng=\",\n};";
        assert!(worker.contains(line), "{worker}");
        assert!(worker.contains("\n  \"./\": \"sha256-"), "{worker}");
        assert!(!worker.contains("__"), "{worker}");
    }

    #[test]
    fn a_language_is_not_listed_and_yet_makes_another_version() {
        let mut all = pages("a");
        let before = seal(TEMPLATE, &all).expect("the template has its marks");
        all.insert("words-es-0123456789abcdef.ftl".to_owned(), "yes = sí".into());
        let worker = seal(TEMPLATE, &all).expect("the template has its marks");
        assert!(worker.contains("app.js") && !worker.contains("words-es"), "{worker}");
        assert_ne!(before.lines().next(), worker.lines().next());
    }

    #[test]
    fn the_same_files_give_the_same_worker_and_others_another() {
        let seal = |script| seal(TEMPLATE, &pages(script)).expect("the template has its marks");
        assert_eq!(seal("a"), seal("a"));
        assert_ne!(seal("a").lines().next(), seal("b").lines().next());
    }

    #[test]
    fn a_template_without_its_marks_is_refused() {
        assert!(seal("const V = 1;", &pages("a")).is_err());
    }
}
