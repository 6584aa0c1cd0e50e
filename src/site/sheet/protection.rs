//! What section 8 asks to wear, line by line.

use super::MOST_EACH;
use super::found::{Finding, Gear, What};
use super::lines::Line;
use super::scan::squeezed;

/// How such a line begins, letters only.
const OPENINGS: &[(&str, Gear)] = &[
    ("handprotection", Gear::Hands),
    ("protectivegloves", Gear::Hands),
    ("gloves", Gear::Hands),
    ("eyeprotection", Gear::Eyes),
    ("eyefaceprotection", Gear::Eyes),
    ("eyeandfaceprotection", Gear::Eyes),
    ("skinprotection", Gear::Body),
    ("skinandbodyprotection", Gear::Body),
    ("bodyprotection", Gear::Body),
    ("respiratoryprotection", Gear::Breathing),
];

/// Lines under the heading of section 8 that begin with what they protect.
pub(super) fn find(lines: &[Line]) -> Vec<Finding> {
    let own: Vec<&Line> = lines.iter().filter(|line| line.section == Some(8)).collect();
    let mut out = Vec::new();
    for (at, line) in own.iter().enumerate() {
        let letters = squeezed(&line.text, 400);
        let Some((opening, gear)) = OPENINGS.iter().find(|(opening, _)| letters.starts_with(opening)) else {
            continue;
        };
        let finding = Finding::new(line, What::Protection(*gear));
        // The words alone, and what to wear in the next line.
        let next = own.get(at + 1).filter(|_| letters.len() == opening.len());
        out.push(next.map_or(finding.clone(), |next| finding.and(next)));
        if out.len() >= MOST_EACH {
            break;
        }
    }
    out
}
