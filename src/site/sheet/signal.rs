//! The signal word, or that there is none.

use super::MOST_EACH;
use super::doubt::Doubt;
use super::found::{Finding, What};
use super::lines::Line;
use super::scan::squeezed;
use crate::chemistry::ghs::SignalWord;

/// Words by which a sheet says that its product is not classified, letters only. They must not go on with
/// what limits them to one hazard or to transport.
const NOT_HAZARDOUS: &[&str] = &[
    "notahasardoussubstance",
    "notahasardousmixture",
    "notahasardousproduct",
    "notclassifiedashasardous",
    "notclassifiedasahasardous",
    "notconsideredhasardous",
    "notconsideredahasardous",
    "isnothasardous",
    "doesnotmeetthecriteriaforclassification",
    "nonhasardousproduct",
    "nonhasardousmixture",
];

const ONE_HAZARD_ONLY: &[&str] = &["environment", "aquatic", "transport", "water", "unless", "if"];

/// Signal words and statements that there is none, each once.
pub(super) fn find(lines: &[Line]) -> Vec<Finding> {
    let own: Vec<&Line> = lines.iter().filter(|line| line.belongs_to(2)).collect();
    let mut out: Vec<Finding> = Vec::new();
    for (at, line) in own.iter().enumerate() {
        let next = own.get(at + 1).copied();
        let found = labelled(line, next)
            .or_else(|| torn(line, &own[at + 1..]))
            .or_else(|| alone(line))
            .or_else(|| not_hazardous(line));
        if let Some(found) = found {
            match out.iter_mut().find(|other| other.what == found.what) {
                // What is said twice is told by the clearer place.
                Some(other) if found.doubts.len() < other.doubts.len() => *other = found,
                Some(_) => (),
                None => out.push(found),
            }
        }
        if out.len() >= MOST_EACH {
            break;
        }
    }
    out
}

/// "Signal word: Danger", the word in the same line or the next one.
fn labelled(line: &Line, next: Option<&Line>) -> Option<Finding> {
    let lower = line.text.to_ascii_lowercase();
    let rest = &lower[lower.find("signal")? + "signal".len()..];
    let rest = rest.trim_start_matches([' ', '-']).strip_prefix("word")?;
    let rest = rest.strip_prefix("(s)").or_else(|| rest.strip_prefix('s')).unwrap_or(rest).trim_start();
    let rest = match rest.strip_prefix('(').and_then(|inner| inner.split_once(')')) {
        Some((_, after)) => after,
        None => rest,
    };
    if squeezed(rest, 1).is_empty() {
        let next = next.filter(|next| !next.heading)?;
        let word = word(&next.text)?;
        return Some(Finding::new(line, What::Signal(word)).and(next));
    }
    word(rest).map(|word| Finding::new(line, What::Signal(word)))
}

/// "Signal" at the end of a line, "word" and the word itself behind it in the next one or two.
fn torn(line: &Line, below: &[&Line]) -> Option<Finding> {
    let opens = below.first().filter(|next| !next.heading)?;
    let ends = line.text.trim_end().to_ascii_lowercase().ends_with("signal");
    if !ends || !opens.text.trim_start().to_ascii_lowercase().starts_with("word") {
        return None;
    }
    let both = Line { text: format!("{} {}", line.text.trim_end(), opens.text.trim_start()), ..line.clone() };
    let found = labelled(&both, below.get(1).copied())?;
    let mut whole = Finding::new(line, found.what).and(opens);
    if found.line != line.number || found.doubts.contains(&Doubt::SeveralLines) {
        whole = whole.and(below[1]);
    }
    Some(whole)
}

/// The signal word that a text opens with. Letters may stand apart, as in "D A N G E R".
pub(super) fn word(text: &str) -> Option<SignalWord> {
    let letters = squeezed(text, 24);
    let opens = |words: &[&str]| words.iter().any(|word| letters.starts_with(word));
    if opens(&["danger"]) {
        Some(SignalWord::Danger)
    } else if opens(&["warning"]) {
        Some(SignalWord::Warning)
    } else if opens(&["none", "nosignalword", "notapplicable", "notrequired", "notclassified"])
        || letters == "na"
    {
        Some(SignalWord::None)
    } else {
        None
    }
}

/// "DANGER" in a line of its own.
fn alone(line: &Line) -> Option<Finding> {
    let word = match squeezed(&line.text, 10).as_str() {
        "danger" => SignalWord::Danger,
        "warning" => SignalWord::Warning,
        _ => return None,
    };
    Some(Finding::new(line, What::Signal(word)).doubt(Doubt::Alone))
}

fn not_hazardous(line: &Line) -> Option<Finding> {
    let letters = squeezed(&line.text, 400);
    if letters == "notclassified" || letters == "nothasardous" {
        return Some(Finding::new(line, What::NotHazardous).doubt(Doubt::Alone));
    }
    let (at, words) = NOT_HAZARDOUS.iter().find_map(|words| Some((letters.find(words)?, words)))?;
    let after = &letters[at + words.len()..];
    let limited = ONE_HAZARD_ONLY.iter().any(|word| after.contains(word));
    (!limited).then(|| Finding::new(line, What::NotHazardous))
}
