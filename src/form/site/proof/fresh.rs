//! What is known of a new finish on the floor of a standard, and of the trials there, that speaks against it.

use super::Proof;
use crate::answer::{Fact, Remark, Weight};
use crate::form::site::finish::{self, trial::slippery};
use crate::form::{Field, Typed};
use crate::number::Marks;
use crate::site::{Film, Patch, Standard, Trial};
use crate::trade::calendar::{Date, Moment};
use crate::units::{Plain, Quantity};

/// Notes what warns.
pub(super) fn note(proof: &mut Proof, typed: &Typed, standard: &Standard, marks: Marks) {
    let of_it = |trial: &&Trial| trial.floor == standard.floor && trial.product == standard.product;
    let trials: Vec<&Trial> = typed.site.trials.iter().filter(of_it).collect();
    if trials.iter().any(|trial| is_filmed(trial)) {
        proof.find(standard, Remark::new("finding-film", Weight::Warn), false, None);
    }
    let patches = trials.iter().flat_map(|trial| &trial.patches);
    let read = |patch: &Patch| {
        let slip = patch.slip.read_optional::<Plain>(Field::PatchSlip(0).limit(), marks).ok().flatten()?;
        Some((patch.aim, slip.si()))
    };
    // The worst alone: one reason lets it pass.
    let worst = patches.filter_map(read).min_by(|(_, one), (_, other)| one.total_cmp(other));
    if let Some(remark) = worst.and_then(|(aim, slip)| slippery(aim, slip)) {
        proof.find(standard, remark, false, None);
    }
    if let Some(remark) = before_scrub(typed, standard, marks) {
        proof.find(standard, remark, false, None);
    }
}

/// Whether somebody looked and every patch that was looked at kept a film.
fn is_filmed(trial: &Trial) -> bool {
    let seen = || trial.patches.iter().filter(|patch| patch.film != Film::NotSeen);
    seen().next().is_some() && seen().all(|patch| patch.film != Film::None)
}

/// That it begins before the new finish on its floor may be scrubbed wet, or that nobody knows when that is. Nothing
/// where no first coat is planned on that floor.
fn before_scrub(typed: &Typed, standard: &Standard, marks: Marks) -> Option<Remark> {
    let first = Date::read(typed.ask.site.first_coat.trim())?;
    let lies = typed.site.floors.iter().find(|floor| floor.id == standard.floor)?;
    let planned = typed.finish()?;
    // On a floor that bears no finish yet the new one goes where it is asked about.
    let asked = lies.finish.is_empty() && typed.floor().is_some_and(|floor| floor.id == lies.id);
    if lies.finish != planned.id && !asked {
        return None;
    }
    let begins = standard.first_day()?;
    let found = finish::work(typed, marks);
    let Some(scrub) = found.scrub else {
        return found.outcome.answer.remarks.into_iter().find(|one| one.code == "remark-cure-unknown");
    };
    // A coat of which only the day is known went on no later.
    let scrub = scrub.at.or_else(|| Moment::last_of(first).after(scrub.after))?;
    let begins = Moment { date: begins, minute: 0 };
    (begins < scrub).then(|| {
        Remark::new("finding-before-scrub", Weight::Warn)
            .with("day", Fact::Day(scrub.date.to_string()))
            .with("time", Fact::Text(scrub.clock()))
    })
}
