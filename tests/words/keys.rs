//! Every key that the code can ask for has its words, and every message is asked for.

use brimline::answer::Formula;
use brimline::chemistry::ghs::mixture::Reserve;
use brimline::form::site::Part;
use brimline::form::station::{Job, Method, Mishap, Rest};
use brimline::form::{Field, names};
use brimline::site::{Dispenser, area_list};
use brimline::trade::formula;
use brimline::trade::order::Place;
use brimline::units::{System, UNITS};
use brimline::words::Words;
use std::collections::BTreeSet;
use std::path::Path;

/// The text of every source file, the language files left out.
fn sources() -> String {
    fn collect(folder: &Path, out: &mut String) {
        for entry in std::fs::read_dir(folder).expect("the source folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                collect(&path, out);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                out.push_str(&std::fs::read_to_string(&path).expect("a source file"));
            }
        }
    }
    let mut out = String::new();
    collect(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &mut out);
    out
}

/// The strings in the sources that have the shape of a key.
fn literals(sources: &str) -> BTreeSet<&str> {
    let key = |text: &&str| {
        text.starts_with(|c: char| c.is_ascii_lowercase())
            && text.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-' || c == '_')
    };
    sources.split('"').filter(key).collect()
}

/// Keys that are put together: each start with all its ends.
fn composed() -> Vec<String> {
    let mut out: Vec<String> = brimline::chemistry::word_keys().collect();
    out.extend(brimline::practice::word_keys());
    let mut all = |start: &str, ends: &[&str]| out.extend(ends.iter().map(|end| format!("{start}{end}")));
    let views = ["fill", "flow", "shift", "cautions", "log", "site", "practice"];
    all("view-", &views);
    all("view-", &["top_up", "rescue", "reading"]);
    for view in views.into_iter().chain(["top-up", "rescue", "reading"]) {
        all("why-", &[view, &format!("{view}-drawing")]);
    }
    all("site-", &Part::ALL.iter().map(|one| one.code()).collect::<Vec<_>>());
    all("standing-", &["draft", "waits", "in-force", "replaced"]);
    let shelves: Vec<&str> = ["machine", "product", "floor", "finish", "measure", "area"].to_vec();
    all("shelf-", &shelves);
    all("", &["finish-add", "standard-add", "standard-floor-none", "standard-product-none"]);
    all("", &views.map(|view| format!("{view}-heading")).each_ref().map(String::as_str));
    all("units-", &System::ALL.iter().map(|one| one.code()).collect::<Vec<_>>());
    all("aim-", &["low", "middle", "high"]);
    all("job-", &Job::ALL.iter().map(|one| one.code()).collect::<Vec<_>>());
    all("station-rest-", &Rest::ALL.iter().map(|one| one.code()).collect::<Vec<_>>());
    all("station-mishap-", &Mishap::ALL.iter().map(|one| one.code()).collect::<Vec<_>>());
    all("reading-method-", &Method::ALL.iter().map(|one| one.code()).collect::<Vec<_>>());
    all("filling-", &["made-up", "on-top"]);
    all("dispenser-", &Dispenser::ALL.iter().map(|one| one.code()).collect::<Vec<_>>());
    all("count-", &["pump", "cap", "chamber", "scoop", "packet"]);
    all("porosity-", &["sealed", "low", "medium", "high"]);
    all("place-", &Place::ALL.iter().map(|one| one.code()).collect::<Vec<_>>());
    all("reserve-", &Reserve::ALL.iter().map(|one| one.code()).collect::<Vec<_>>());
    all("container-holds-", &["use-solution", "concentrate"]);
    all("soil-", &["usual", "heavy"]);
    all("symbol-", &["label", "machine", "packet", "packets", "round", "ceil", "alone"]);
    all("symbol-", &["refills", "changes", "ways", "mopping", "charges", "waits"]);
    all("around-", &["unknown", "there", "lacking"]);
    for own in ["area-machine", "area-product"] {
        all(own, &["", "-asked", "-none"]);
    }
    log(&mut all);
    all("csv-column-", &area_list::COLUMNS.iter().map(|one| one.code).collect::<Vec<_>>());
    all(
        "told-",
        &[
            "retired",
            "machine-tests",
            "product-parts",
            "product-listed",
            "product-container",
            "product-price",
        ],
    );
    all("told-", &["area-included", "trial-patches", "patch-aim", "catch-caught"]);
    all("told-standard-", &["leaves-out", "system", "version", "standing", "replaces", "proved"]);
    all("fill-level-", &["25", "50", "75", "100"]);
    all("film-", &["not-seen", "none", "slight", "plain"]);
    all("weekday-", &["1", "2", "3", "4", "5", "6", "7"]);
    for shelf in ["machine", "product", "floor", "measure", "finish", "trial"] {
        all(shelf, &["-add", "-remove"]);
    }
    all("area", &["-add", "-up-of", "-remove-of"]);
    let shown = |name: &&&str| {
        // The month and the year stand beside the shift, under its words.
        let over_time = name.starts_with("month.")
            || name.starts_with("year.") && !["year.concentrate", "year.cost"].contains(*name);
        !over_time
            && ![
                "flow.setting",
                "cautions.ph_low",
                "cautions.ph_high",
                "cautions.ph_leaves",
                "cautions.ph_leaves_surely",
                "fill.dose",
                "fill.rounded",
            ]
            .contains(*name)
    };
    out.extend(
        names::ALL.iter().filter(shown).map(|name| format!("figure-{}", name.replace(['.', '_'], "-"))),
    );
    out.extend(UNITS.iter().filter(|unit| unit.is_worded()).map(|unit| format!("unit-{}", unit.code)));
    out.extend(formula::ALL.iter().map(|formula: &&Formula| formula.code.to_owned()));
    out.extend(Field::SINGLE.iter().map(|field| field.key().to_owned()));
    out
}

/// The choices of the log, the codes of its core, and what is put together in its view.
fn log(all: &mut impl FnMut(&str, &[&str])) {
    use brimline::site::log::questions::By;
    use brimline::site::log::{Checklist, Deviation, Kind, Part, Scale, Task};
    use brimline::trade::control::Rule;
    let dashed = |codes: Vec<&str>| codes.iter().map(|code| code.replace('_', "-")).collect::<Vec<_>>();
    let mut of = |start: &str, codes: Vec<&str>| {
        let codes = dashed(codes);
        all(start, &codes.iter().map(String::as_str).collect::<Vec<_>>());
    };
    of("log-", brimline::form::log::Part::ALL.iter().map(|one| one.code()).collect());
    of("log-by-", By::ALL.iter().map(|one| one.code()).collect());
    of("log-kind-", Kind::ALL.iter().map(|one| one.code()).collect());
    of("log-scale-", Scale::ALL.iter().map(|one| one.code()).collect());
    of("log-deviation-", Deviation::ALL.iter().map(|one| one.code()).collect());
    of("log-state-", Task::ALL.iter().map(|one| one.code()).collect());
    of("log-part-", Part::ALL.iter().map(|one| one.code()).collect());
    of("log-task-", Checklist::default().tasks().iter().map(|(code, _)| *code).collect());
    of("first-fill-shift-", Checklist::default().tasks().iter().map(|(code, _)| *code).collect());
    of("log-busy-", vec!["opening", "reading", "comparing", "writing", "saving"]);
    of("", Rule::ALL.iter().map(|one| one.code()).collect());
    of("ask-", vec!["use", "doses", "cost", "stock", "drift", "undone"]);
}

#[test]
fn every_key_that_is_put_together_has_its_words() {
    let words = Words::english();
    let keys: BTreeSet<&str> = words.keys().collect();
    let missing: Vec<String> = composed().into_iter().filter(|key| !keys.contains(key.as_str())).collect();
    assert!(missing.is_empty(), "no words for {missing:?}");
}

#[test]
fn every_key_in_the_sources_has_its_words() {
    let (words, sources) = (Words::english(), sources());
    let keys: BTreeSet<&str> = words.keys().collect();
    // What is said, told or used as a code must have its words.
    for opening in [".say(\"", ".tell(\"", "Remark::new(\""] {
        for rest in sources.split(opening).skip(1) {
            let key = rest.split('"').next().unwrap_or_default();
            // The example in the documentation brings its own language file.
            assert!(keys.contains(key) || key == "fills", "no words for {key:?}");
        }
    }
    for start in [
        "remark-",
        "basis-",
        "note-",
        "mistake-",
        "label-",
        "fit-",
        "column-",
        "glance-",
        "recompute-",
        "finding-",
    ] {
        for key in literals(&sources).into_iter().filter(|key| key.starts_with(start)) {
            // Names of inputs and of windows, not of messages.
            let other = ["label-reading", "label-range"].contains(&key) || key.ends_with('-');
            assert!(other || keys.contains(key), "no words for {key:?}");
        }
    }
}

#[test]
fn no_message_is_idle() {
    let (words, sources) = (Words::english(), sources());
    let (literals, composed) = (literals(&sources), composed());
    let asked = |key: &str| {
        let stem = key.strip_suffix("-hint").or_else(|| key.strip_suffix("-title")).unwrap_or(key);
        [key, stem].iter().any(|key| literals.contains(key) || composed.iter().any(|one| one == key))
    };
    let idle: Vec<&str> = words.keys().filter(|key| !asked(key)).collect();
    assert!(idle.is_empty(), "nobody asks for {idle:?}");
}
