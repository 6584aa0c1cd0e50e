//! Warnings that the standard's author let pass.

use crate::answer::{Fact, Remark, Value, Weight};
use crate::form::Typed;
use crate::form::site::changed_since;
use crate::form::site::proof::{BLOCKS, TOO_COARSE};
use crate::site::{Standard, says_why};
use crate::units::Kind;

/// The key of the line that stands in the place of such a warning.
pub const LET_PASS: &str = "remark-let-pass";

/// Turns each warning that the governing standard lets pass, with a reason, into what is taken for granted: it is said
/// in one line, and stands in the way of nothing. Never what blocks a standard, nor what is of this measure or of what
/// was in the tank before, of which its author knew nothing; and none where a record was changed since.
pub(super) fn note(remarks: &mut [Remark], typed: &Typed) {
    let Some(standard) = typed.governing().filter(|one| !one.overrides.is_empty()) else { return };
    if changed_since(typed, standard) {
        return;
    }
    for remark in remarks.iter_mut().filter(|one| one.weight != Weight::Assumed) {
        let Some(reason) = given(standard, remark.code) else { continue };
        let version = Value::plain(f64::from(standard.version), Kind::Count);
        remark.weight = Weight::Assumed;
        remark.facts.push(("let-pass", Fact::Text(reason.to_owned())));
        remark.facts.push(("author", Fact::Text(standard.author.clone())));
        remark.facts.push(("number", Fact::Value(version)));
    }
}

/// The reason for which a standard lets a warning pass, by its code, as on Fill: none where it blocks, where nothing says
/// why, or where a record was changed since.
pub fn let_pass<'a>(typed: &Typed, standard: &'a Standard, code: &str) -> Option<&'a str> {
    given(standard, code).filter(|_| !changed_since(typed, standard))
}

fn given<'a>(standard: &'a Standard, code: &str) -> Option<&'a str> {
    let one = standard.overrides.iter().find(|one| one.finding == code && may_pass(code))?;
    says_why(&one.reason).then(|| one.reason.trim())
}

fn may_pass(code: &str) -> bool {
    !BLOCKS.contains(&code) && !TOO_COARSE.contains(&code) && !code.starts_with("remark-before-")
}
