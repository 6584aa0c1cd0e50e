//! What the records of the patches say, and no more than they say.

use super::Mix;
use crate::answer::{Fact, Remark, Value, Weight};
use crate::form::site::finish::candidates::Suits;
use crate::form::site::finish::end_key;
use crate::form::{Outcome, names};
use crate::site::{Film, Patch};
use crate::source::Source;
use crate::trade::governing::Aim;
use crate::units::Kind;

/// The least wet dynamic coefficient of friction of an indoor floor that is walked on wet. The standard
/// says itself that it predicts no slip, and another kind of meter reads another number.
pub const WET_SLIP: f64 = 0.42;
/// Where it comes from.
pub const WET_SLIP_SOURCE: Source = Source::unverified(
    "ANSI A326.3-2021, level interior floors walked on wet; seen in summaries, second-hand",
);

/// Notes what the records say; returns which patch they point to, from 0.
///
/// That is the weakest without a film, where its slip was not read as too low and no rule forbids its dilution:
/// a suggestion, since nobody here has seen the floor.
pub(super) fn note(out: &mut Outcome, mixes: &[Mix], patches: &[Patch]) -> Option<usize> {
    let film = |mix: &Mix| patches.get(mix.patch).map_or(Film::NotSeen, |patch| patch.film);
    let aim = |mix: &Mix| Fact::Key(end_key(mix.aim).to_owned());
    let slips = mixes.iter().filter_map(|mix| slippery(mix.aim, mix.slip?));
    slips.for_each(|remark| out.answer.remark(remark));
    glosses(out, mixes);
    if mixes.iter().all(|mix| film(mix) == Film::NotSeen) {
        out.answer.remark(Remark::new("remark-trial-not-seen", Weight::Assumed));
        return None;
    }
    let good = |mix: &&Mix| {
        film(mix) == Film::None
            && mix.slip.is_none_or(|slip| slip >= WET_SLIP)
            && mix.candidate.suits != Suits::DoesNotFit
    };
    let Some(at) = mixes.iter().position(|mix| good(&mix)) else {
        let code = if mixes.iter().any(|mix| film(mix) == Film::NotSeen) {
            "remark-trial-none-yet"
        } else {
            "remark-trial-none"
        };
        out.answer.remark(Remark::new(code, Weight::Warn));
        return None;
    };
    let chosen = &mixes[at];
    out.answer.remark(Remark::new("remark-trial-suggests", Weight::Assumed).with("aim", aim(chosen)));
    if mixes[..at].iter().any(|mix| film(mix) == Film::NotSeen) {
        out.answer.remark(Remark::new("remark-trial-weaker", Weight::Assumed).with("aim", aim(chosen)));
    }
    out.answer.figure(names::TRIAL_SUGGESTED, Value::plain((chosen.patch + 1) as f64, Kind::Count));
    Some(chosen.patch)
}

/// What is said of a patch of which a slip meter reads less than a wet floor should have; none of one with as much.
pub fn slippery(aim: Aim, slip: f64) -> Option<Remark> {
    (slip < WET_SLIP).then(|| {
        Remark::new("remark-trial-slippery", Weight::Warn)
            .with("aim", Fact::Key(end_key(aim).to_owned()))
            .value("slip", Value::plain(slip, Kind::Ratio))
            .value("least", Value::plain(WET_SLIP, Kind::Ratio))
    })
}

/// How far the readings of gloss lie apart. Nobody read the floor before, so nothing is said of that.
fn glosses(out: &mut Outcome, mixes: &[Mix]) {
    let read: Vec<f64> = mixes.iter().filter_map(|mix| mix.gloss).collect();
    let least = read.iter().copied().fold(f64::INFINITY, f64::min);
    let most = read.iter().copied().fold(0.0, f64::max);
    let (code, spread) = match read.len() {
        0 => return,
        1 => ("remark-trial-gloss-one", 0.0),
        _ => ("remark-trial-gloss", most - least),
    };
    out.answer.remark(
        Remark::new(code, Weight::Assumed)
            .value("least", Value::plain(least, Kind::Ratio))
            .value("most", Value::plain(most, Kind::Ratio))
            .value("spread", Value::plain(spread, Kind::Ratio)),
    );
}
