//! What the page is made of: every crate in it, as a software bill of materials (`CycloneDX` 1.6, ECMA-424).
//!
//! It has no time and no number of its own: the same sources give the same bytes.

use super::child;
use super::fault::Fault;
use serde_json::{Value, json};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use std::process::Command;

/// How Cargo is asked: what stands in the page, without what only runs while it is built.
const ASKED: [&str; 14] = [
    "tree",
    "--locked",
    "--package",
    "brimline",
    "--edges",
    "normal,no-proc-macro",
    "--target",
    "wasm32-unknown-unknown",
    "--features",
    "split",
    "--prefix",
    "depth",
    "--format",
    // The depth comes before it.
    "\t{p}\t{l}",
];

/// What Cargo puts behind a crate whose own needs it has told already.
const TOLD: &str = " (*)";

/// A crate in the page.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
struct Part {
    name: String,
    version: String,
    licence: String,
}

impl Part {
    /// Its name in the world (ECMA-427, package URL).
    fn purl(&self) -> String {
        format!("pkg:cargo/{}@{}", self.name, self.version.replace('+', "%2B"))
    }
}

/// The page's parts, each with what it is made of itself; the page is the first.
#[derive(Debug)]
struct Tree {
    page: Part,
    needs: BTreeMap<Part, BTreeSet<Part>>,
}

/// The bill for the checkout at `root`.
///
/// # Errors
/// When Cargo cannot be asked or says something else than this reads.
pub fn written(root: &Path) -> Result<String, Fault> {
    let path = root.join("Cargo.lock");
    let lock = fs::read_to_string(&path).map_err(|error| Fault::file(&path, &error))?;
    let mut cargo = Command::new("cargo");
    cargo.args(ASKED).current_dir(root);
    let tree = child::answer(&mut cargo).as_deref().and_then(read).ok_or_else(|| {
        Fault::new("What the page is made of could not be read.").by_hand(child::by_hand(&cargo))
    })?;
    let compiler = child::answer(Command::new("rustc").arg("--version"));
    let compiler = compiler.as_deref().and_then(|text| text.split_whitespace().nth(1)).unwrap_or("unknown");
    Ok(format!("{:#}\n", bill(&tree, &lock, compiler)))
}

/// Reads Cargo's tree.
fn read(text: &str) -> Option<Tree> {
    let mut needs: BTreeMap<Part, BTreeSet<Part>> = BTreeMap::new();
    let mut above: Vec<Part> = Vec::new();
    for line in text.lines() {
        let mut cells = line.trim_end_matches(TOLD).split('\t');
        let depth: usize = cells.next()?.parse().ok()?;
        let mut words = cells.next()?.split_whitespace();
        let part = Part {
            name: words.next()?.to_owned(),
            version: words.next()?.strip_prefix('v')?.to_owned(),
            // Cargo once took a slash for "or".
            licence: cells.next()?.split('/').map(str::trim).collect::<Vec<_>>().join(" OR "),
        };
        above.truncate(depth);
        if let Some(parent) = above.last() {
            needs.get_mut(parent)?.insert(part.clone());
        }
        needs.entry(part.clone()).or_default();
        above.push(part);
    }
    Some(Tree { page: above.into_iter().next()?, needs })
}

fn bill(tree: &Tree, lock: &str, compiler: &str) -> Value {
    let whole = |part: &Part, kind: &str| {
        let mut one = json!({
            "type": kind,
            "bom-ref": part.purl(),
            "name": part.name,
            "version": part.version,
            "purl": part.purl(),
            "licenses": [{ "expression": part.licence }],
        });
        if let Some(sum) = checksum(lock, part) {
            one["hashes"] = json!([{ "alg": "SHA-256", "content": sum }]);
        }
        one
    };
    let standard = Part {
        name: "rust-std".to_owned(),
        version: compiler.to_owned(),
        licence: "MIT OR Apache-2.0".to_owned(),
    };
    let standard_purl = format!("pkg:generic/rust-std@{compiler}");
    let mut components: Vec<Value> =
        tree.needs.keys().filter(|part| **part != tree.page).map(|part| whole(part, "library")).collect();
    let mut library = whole(&standard, "library");
    library["purl"] = json!(standard_purl);
    library["bom-ref"] = json!(standard_purl);
    components.push(library);
    let mut dependencies: Vec<Value> = Vec::new();
    for (part, needs) in &tree.needs {
        let mut on: Vec<String> = needs.iter().map(Part::purl).collect();
        on.push(standard_purl.clone());
        dependencies.push(json!({ "ref": part.purl(), "dependsOn": on }));
    }
    json!({
        "$schema": "http://cyclonedx.org/schema/bom-1.6.schema.json",
        "bomFormat": "CycloneDX",
        "specVersion": "1.6",
        "version": 1,
        "metadata": { "component": whole(&tree.page, "application") },
        "components": components,
        "dependencies": dependencies,
    })
}

/// The digest of a crate's package, from Cargo.lock.
fn checksum<'a>(lock: &'a str, part: &Part) -> Option<&'a str> {
    let entry = format!("name = \"{}\"\nversion = \"{}\"\n", part.name, part.version);
    let rest = lock.split("[[package]]\n").find_map(|one| one.strip_prefix(&entry))?;
    rest.lines().find_map(|line| line.strip_prefix("checksum = \"")?.strip_suffix('"'))
}

#[cfg(test)]
mod tests;
