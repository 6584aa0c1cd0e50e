//! Say which pair must never meet.

use super::super::picture::{Bottles, Picture};
use super::super::road::{Harm, Led, Road, Way};
use super::super::{Draw, Level, Ready, Topic};
use super::{Exercise, Fact, Key, Said, mixed};
use crate::chemistry::family::Family;
use crate::chemistry::pairs::{self, Meeting, Severity};
use crate::form::cautions::mixing::meet;
use crate::source::Source;

/// Two that could meet, and what is known of it.
struct Couple {
    said: Said,
    meeting: Meeting,
}

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let mut couples = if level == Level::First { Vec::new() } else { of_products(ready) };
    let never = |one: &Couple| matches!(one.meeting, Meeting::Never(_));
    let unlisted = |one: &Couple| one.meeting == Meeting::NoPairListed;
    if !couples.iter().any(never) || couples.iter().filter(|one| unlisted(one)).count() < 3 {
        couples = of_families();
    }
    draw.shuffle(&mut couples);
    let at = couples.iter().position(never)?;
    let first = couples.swap_remove(at);
    let others = if level == Level::First { 2 } else { 3 };
    if level != Level::Third {
        let rest = couples.into_iter().filter(unlisted).take(others);
        return Some(one_of(level, ready, first, rest, draw));
    }
    // At least one that must be marked and one that must not; the others as they come.
    let at = couples.iter().position(unlisted)?;
    let clear = couples.swap_remove(at);
    Some(some_of(ready, [first, clear].into_iter().chain(couples.into_iter().take(others)), draw))
}

fn couple(a: Fact, b: Fact, meeting: Meeting) -> Couple {
    let said = Said { key: "practice-pair".to_owned(), facts: vec![("a", a), ("b", b)] };
    Couple { said, meeting }
}

fn of_products(ready: &Ready) -> Vec<Couple> {
    let mut out = Vec::new();
    for (index, one) in ready.products.iter().enumerate() {
        for other in &ready.products[index + 1..] {
            let name = |text: &str| Fact::Text(text.to_owned());
            out.push(couple(name(&one.name), name(&other.name), meet(one, other)));
        }
    }
    out
}

fn of_families() -> Vec<Couple> {
    let mut out = Vec::new();
    for (index, one) in Family::ALL.iter().enumerate() {
        for other in &Family::ALL[index + 1..] {
            let key = |family: &Family| Fact::Key(family.key().to_owned());
            let meeting = pairs::meet(&[*one], &[*other]);
            // A strong acid beside an acid is no pair that anybody asks about.
            if !one.is_a(*other) && !other.is_a(*one) {
                out.push(couple(key(one), key(other), meeting));
            }
        }
    }
    out
}

fn one_of(
    level: Level,
    ready: &Ready,
    first: Couple,
    rest: impl Iterator<Item = Couple>,
    draw: &mut Draw,
) -> Exercise {
    let hurts = hurts(&first.meeting);
    let told = first.said.clone();
    let options = [first.said].into_iter().chain(rest.map(|one| one.said)).collect::<Vec<_>>();
    let (options, place) = mixed(draw, &options);
    let count = options.len();
    let right = place[0];
    let asked = vec![Said::new("practice-ask-pair")];
    let mut exercise = Exercise::new(Topic::Pairs, level, ready, asked, Key::Choice { options, right });
    let road = |index: usize| Road { harm: hurts, ..Road::new(Way::PairMissed, Led::Choice(index)) };
    exercise.roads = (0..count).filter(|index| *index != right).map(road).collect();
    because(&mut exercise, told, &first.meeting);
    exercise
}

fn some_of(ready: &Ready, couples: impl Iterator<Item = Couple>, draw: &mut Draw) -> Exercise {
    let couples: Vec<Couple> = couples.collect();
    let (options, place) = mixed(draw, &couples.iter().map(|one| one.said.clone()).collect::<Vec<_>>());
    let mut right = Vec::new();
    let mut ranked: Vec<(u8, Road)> = Vec::new();
    for (couple, index) in couples.iter().zip(place) {
        let (rank, road) = match &couple.meeting {
            Meeting::Never(_) => {
                let harm = hurts(&couple.meeting);
                (u8::from(harm.is_none()) * 2, Road { harm, ..Road::new(Way::PairMissed, Led::Lacks(index)) })
            }
            Meeting::Unknown => (1, Road::harms(Way::UnknownCleared, Led::Lacks(index), Harm::ForbiddenPair)),
            Meeting::NoPairListed => (3, Road::new(Way::PairNotListed, Led::Has(index))),
        };
        if couple.meeting != Meeting::NoPairListed {
            right.push(index);
        }
        ranked.push((rank, road));
    }
    right.sort_unstable();
    ranked.sort_by_key(|(rank, _)| *rank);
    let asked = vec![Said::new("practice-ask-pairs")];
    let mut exercise =
        Exercise::new(Topic::Pairs, Level::Third, ready, asked, Key::Several { options, right });
    exercise.roads = ranked.into_iter().map(|(_, road)| road).collect();
    for couple in couples {
        because(&mut exercise, couple.said, &couple.meeting);
    }
    exercise
}

/// Whether people could be hurt, and not only the work.
fn hurts(meeting: &Meeting) -> Option<Harm> {
    let Meeting::Never(pairs) = meeting else { return None };
    pairs.iter().any(|pair| pair.severity > Severity::Spoils).then_some(Harm::ForbiddenPair)
}

/// What happens when they meet, and what to do.
fn because(exercise: &mut Exercise, said: Said, meeting: &Meeting) {
    match meeting {
        Meeting::Never(pairs) => {
            let Some(pair) = pairs.first() else { return };
            if let (None, [(_, a), (_, b)]) = (&exercise.picture, said.facts.as_slice()) {
                let names = [a.clone(), b.clone()];
                exercise.picture = Some(Picture::Bottles(Bottles { names, happens: pair.happens }));
            }
            exercise.because(said, pair.source);
            exercise.because(Said::new(pair.happens), pair.source);
            exercise.because(Said::new(pair.act), pair.source);
        }
        Meeting::Unknown => {
            exercise.because(said, Source::COMMON_PRACTICE);
            exercise.because(Said::new("pair-meeting-unknown"), Source::COMMON_PRACTICE);
        }
        Meeting::NoPairListed => {}
    }
}
