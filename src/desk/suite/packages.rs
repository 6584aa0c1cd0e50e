//! What Cargo brings in: under which licence, from where, and how often.
//!
//! Known weaknesses are not looked for: their list is kept where no package registry has it. The output says so.

use super::tally::Tally;
use crate::desk::child;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use serde_json::Value;
use spdx::{Expression, ParseMode};
use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

/// Licences under which a package may be used and passed on with ours, by their SPDX names. None of them asks
/// that what uses it be passed on under the same licence.
const ALLOWED: [&str; 8] =
    ["0BSD", "Apache-2.0", "BSD-3-Clause", "BSL-1.0", "MIT", "Unicode-3.0", "Unlicense", "Zlib"];

/// Packages that are there in more than one series, since what needs them has not moved on together. The page itself
/// holds two of `thiserror` alone, which is gone when the page is compiled.
const TWICE: [&str; 9] = [
    "getrandom",
    "http",
    "proc-macro-crate",
    "syn",
    "thiserror",
    "thiserror-impl",
    "toml_datetime",
    "toml_edit",
    "winnow",
];

/// A package as `cargo metadata` tells it.
struct Package<'a> {
    name: &'a str,
    version: &'a str,
    licence: Option<&'a str>,
    /// None for a folder of this machine.
    source: Option<&'a str>,
}

/// Runs the checks over all packages that Cargo.lock names, the desk's and the tests' own among them.
///
/// # Errors
/// When Cargo cannot be asked.
pub fn run(places: &Places) -> Result<Tally, Fault> {
    let mut cargo = Command::new("cargo");
    cargo.args(["metadata", "--locked", "--format-version", "1"]).current_dir(places.root());
    println!("> {}", child::by_hand(&cargo));
    let text = child::answer(&mut cargo).unwrap_or_default();
    let all: Value = serde_json::from_str(&text).map_err(|error| {
        Fault::new(format!("Cargo does not tell its packages: {error}.")).by_hand(child::by_hand(&cargo))
    })?;
    let packages: Vec<Package> =
        all["packages"].as_array().into_iter().flatten().filter_map(Package::of).collect();
    let mut sum = Tally::default();
    for (what, faults) in
        [("licences", licences(&packages)), ("sources", sources(&packages)), ("doubles", doubles(&packages))]
    {
        for fault in &faults {
            println!("    {fault}");
        }
        let well = faults.is_empty() && !packages.is_empty();
        println!("    {what} of {} packages: {}", packages.len(), if well { "passed" } else { "FAILED" });
        sum += Tally::one(well);
    }
    println!("    known weaknesses: NOT CHECKED, their list cannot be fetched from a package registry");
    Ok(sum)
}

impl<'a> Package<'a> {
    fn of(told: &'a Value) -> Option<Self> {
        Some(Self {
            name: told["name"].as_str()?,
            version: told["version"].as_str()?,
            licence: told["license"].as_str(),
            source: told["source"].as_str(),
        })
    }
}

/// Packages whose licence is not one of ours to take.
fn licences(packages: &[Package]) -> Vec<String> {
    let refused = packages.iter().filter(|one| !one.licence.is_some_and(is_allowed));
    refused
        .map(|Package { name, version, licence, .. }| {
            format!("{name} {version} stands under {}", licence.unwrap_or("no licence that it names"))
        })
        .collect()
}

/// Whether one of the ways that the expression offers is allowed.
fn is_allowed(licence: &str) -> bool {
    let known = |name: Option<&str>| name.is_some_and(|name| ALLOWED.contains(&name));
    // Cargo once took a slash for "or".
    Expression::parse_mode(licence, ParseMode::LAX)
        .is_ok_and(|terms| terms.evaluate(|term| known(term.license.id().map(|id| id.name))))
}

/// Packages that come neither from this checkout nor from the one registry.
fn sources(packages: &[Package]) -> Vec<String> {
    let from = |one: &Package| one.source.unwrap_or("a folder").to_owned();
    let registry: BTreeSet<&str> = packages.iter().filter_map(|one| one.source).collect();
    let usual = registry.iter().find(|source| source.starts_with("registry+"));
    let fits = |one: &Package| match one.source {
        Some(source) => usual.is_some_and(|usual| *usual == source),
        None => one.name == "brimline",
    };
    let strange = packages.iter().filter(|one| !fits(one));
    strange.map(|one| format!("{} {} comes from {}", one.name, one.version, from(one))).collect()
}

/// Packages that are there twice and need not be, or are listed as such and are not.
fn doubles(packages: &[Package]) -> Vec<String> {
    let mut versions: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for one in packages {
        versions.entry(one.name).or_default().insert(one.version);
    }
    let twice = |name: &str| versions.get(name).is_some_and(|all| all.len() > 1);
    let more = versions.keys().filter(|name| twice(name) && !TWICE.contains(name));
    let gone = TWICE.iter().filter(|name| !twice(name));
    more.map(|name| format!("{name} is there as {:?}: choose versions that need only one", versions[name]))
        .chain(gone.map(|name| format!("{name} is there once: take it from the list")))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::{Package, TWICE, doubles, is_allowed, licences, sources};

    fn package<'a>(name: &'a str, version: &'a str, licence: &'a str, source: &'a str) -> Package<'a> {
        let some = |text: &'a str| (!text.is_empty()).then_some(text);
        Package { name, version, licence: some(licence), source: some(source) }
    }

    /// SPDX 2.3, annex D: “or” leaves the choice, “and” asks for both, and binds closer.
    #[test]
    fn an_expression_is_allowed_if_one_of_its_ways_is() {
        for fine in
            ["MIT", "MIT/Apache-2.0", "Apache-2.0 OR GPL-2.0-only", "(MIT OR Apache-2.0) AND Unicode-3.0"]
        {
            assert!(is_allowed(fine), "{fine}");
        }
        for not in
            ["GPL-3.0-only", "MIT AND GPL-2.0-only", "GPL-2.0-only OR MIT AND LGPL-3.0-only", "Own", ""]
        {
            assert!(!is_allowed(not), "{not}");
        }
        assert_eq!(licences(&[package("a", "1", "", "registry+x"), package("b", "1", "MIT", "")]).len(), 1);
    }

    #[test]
    fn packages_come_from_one_registry() {
        let usual = [package("brimline", "1", "MIT", ""), package("a", "1", "MIT", "registry+x")];
        assert_eq!(sources(&usual), Vec::<String>::new());
        for (name, source) in [("b", "git+x"), ("b", "registry+y"), ("b", "")] {
            let [page, first] =
                usual.each_ref().map(|one| package(one.name, one.version, "MIT", one.source.unwrap_or("")));
            assert_eq!(
                sources(&[page, first, package(name, "1", "MIT", source)]).len(),
                1,
                "{name} {source}"
            );
        }
    }

    #[test]
    fn a_package_is_there_once_unless_it_is_listed() {
        let all = |extra: &[Package<'static>]| {
            let listed =
                TWICE.iter().flat_map(|name| ["1", "2"].map(|version| package(name, version, "MIT", "")));
            let others = extra.iter().map(|one| package(one.name, one.version, "MIT", ""));
            doubles(&listed.chain(others).collect::<Vec<_>>())
        };
        assert_eq!(all(&[]), Vec::<String>::new());
        assert_eq!(all(&[package("a", "1", "", "")]), Vec::<String>::new());
        assert_eq!(all(&[package("a", "1", "", ""), package("a", "2", "", "")]).len(), 1);
        assert_eq!(doubles(&[]).len(), TWICE.len());
    }
}
