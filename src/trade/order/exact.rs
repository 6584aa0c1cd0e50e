//! The best order of a few areas.

use super::{Place, Stop, Walked};
use crate::units::Duration;

/// A way to have done a set of areas.
#[derive(Clone)]
struct Way {
    walked: Walked,
    turns: Vec<usize>,
}

/// The best order; `None` where none keeps all times.
///
/// Of the ways to have done one set of areas and to stand at one of them, only those are kept that no
/// other beats in both changes and time: a later end may cost a time window, more changes never help.
pub(super) fn best(stops: &[Stop], change: Duration) -> Option<(Vec<usize>, Walked)> {
    let count = stops.len();
    let whole = (1_usize << count) - 1;
    let mut ways: Vec<Vec<Way>> = vec![Vec::new(); 1 << count];
    ways[0].push(Way { walked: Walked::START, turns: Vec::new() });
    for done in 0..whole {
        for way in std::mem::take(&mut ways[done]) {
            for next in (0..count).filter(|next| done & (1 << next) == 0 && may_follow(stops, done, *next)) {
                let Some(walked) = way.walked.then(stops, next, change) else { continue };
                let mut turns = way.turns.clone();
                turns.push(next);
                keep(&mut ways[done | 1 << next], Way { walked, turns });
            }
        }
    }
    let mut found = ways.swap_remove(whole).into_iter();
    let first = found.next()?;
    let best = found.fold(first, |best, way| if way.walked.beats(best.walked) { way } else { best });
    Some((best.turns, best.walked))
}

/// Whether an area may come now: a first one only at the beginning, a last one only at the end.
fn may_follow(stops: &[Stop], done: usize, next: usize) -> bool {
    let left = stops.len() - done.count_ones() as usize;
    match stops[next].place {
        Place::First => done == 0,
        Place::Last => left == 1,
        Place::Free => done > 0 || stops.iter().all(|stop| stop.place != Place::First),
    }
}

fn keep(ways: &mut Vec<Way>, new: Way) {
    let beats = |a: &Way, b: &Way| {
        a.walked.last == b.walked.last
            && a.walked.changes <= b.walked.changes
            && a.walked.ends <= b.walked.ends
    };
    if ways.iter().any(|way| beats(way, &new)) {
        return;
    }
    ways.retain(|way| !beats(&new, way));
    ways.push(new);
}
