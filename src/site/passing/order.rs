//! The order of lists that were changed.

use std::collections::{BTreeMap, BTreeSet};

/// Of places that should rise and do not, the fewest that must move so that the rest rises: those outside a
/// longest rising run (patience sorting, n log n).
pub(super) fn moved(places: &[usize]) -> BTreeSet<usize> {
    // For each length, the index of the smallest place that a rising run of that length ends in.
    let mut ends: Vec<usize> = Vec::new();
    let mut before: Vec<Option<usize>> = Vec::new();
    for (index, place) in places.iter().enumerate() {
        let length = ends.partition_point(|end| places[*end] < *place);
        before.push(length.checked_sub(1).map(|shorter| ends[shorter]));
        ends.truncate(ends.len().max(length));
        match ends.get_mut(length) {
            Some(end) => *end = index,
            None => ends.push(index),
        }
    }
    let mut stay = BTreeSet::new();
    let mut at = ends.last().copied();
    while let Some(index) = at {
        stay.insert(places[index]);
        at = before[index];
    }
    places.iter().copied().filter(|place| !stay.contains(place)).collect()
}

/// Three orders as one.
pub(super) struct Woven<'a> {
    /// The ids that stay, in order.
    pub(super) ids: Vec<&'a str>,
    /// Whether both changed the order of what was there, and not in the same way.
    pub(super) clash: bool,
}

/// Weaves two orders that grew out of one.
///
/// What was there before stands in the order of whoever changed it, in ours where both did (in theirs if
/// `prefer_theirs`). What was added stands behind the same record as where it was added. Two runs that were
/// added at one place are woven by taking the smaller of their next ids: each keeps its own order, and it does
/// not matter who takes from whom.
pub(super) fn weave<'a>(
    base: &[&'a str],
    ours: &[&'a str],
    theirs: &[&'a str],
    stays: impl Fn(&str) -> bool,
    prefer_theirs: bool,
) -> Woven<'a> {
    let (in_base, in_ours, in_theirs) = (set(base), set(ours), set(theirs));
    // The order can only be compared of what all three have.
    let common = |list: &[&'a str]| -> Vec<&'a str> {
        let has = |id: &&str| in_base.contains(id) && in_ours.contains(id) && in_theirs.contains(id);
        list.iter().copied().filter(has).collect()
    };
    let [was, our, their] = [base, ours, theirs].map(common);
    let clash = our != was && their != was && our != their;
    let take_theirs = if clash { prefer_theirs } else { our == was };
    let (lead, other) = if take_theirs { (theirs, ours) } else { (ours, theirs) };
    // What only one of them kept of the old, and the old order of it: behind what stood before it.
    let in_lead = if take_theirs { &in_theirs } else { &in_ours };
    let old = |list: &[&'a str]| -> Vec<&'a str> {
        list.iter().copied().filter(|id| in_base.contains(id)).collect()
    };
    let restored = runs(&old(other), |id| in_lead.contains(id));
    let mut bones = Vec::new();
    let put = |anchor: Option<&'a str>, bones: &mut Vec<&'a str>| {
        bones.extend(restored.get(&anchor).into_iter().flatten());
    };
    put(None, &mut bones);
    for id in old(lead) {
        bones.push(id);
        put(Some(id), &mut bones);
    }
    bones.retain(|id| stays(id));
    let fixed: BTreeSet<&str> = bones.iter().copied().collect();
    let added = |list: &[&'a str]| {
        let living: Vec<&'a str> = list.iter().copied().filter(|id| stays(id)).collect();
        runs(&living, |id| fixed.contains(id))
    };
    let (from_ours, from_theirs) = (added(ours), added(theirs));
    let mut ids = Vec::new();
    for anchor in std::iter::once(None).chain(bones.iter().copied().map(Some)) {
        ids.extend(anchor);
        let run = |of: &BTreeMap<Option<&'a str>, Vec<&'a str>>| of.get(&anchor).cloned().unwrap_or_default();
        zip(&run(&from_ours), &run(&from_theirs), &mut ids);
    }
    let mut seen = BTreeSet::new();
    ids.retain(|id| seen.insert(*id));
    Woven { ids, clash }
}

fn set<'a>(list: &[&'a str]) -> BTreeSet<&'a str> {
    list.iter().copied().collect()
}

/// What stands in a list without an anchor, by the anchor before it.
fn runs<'a>(list: &[&'a str], is_anchor: impl Fn(&str) -> bool) -> BTreeMap<Option<&'a str>, Vec<&'a str>> {
    let mut all: BTreeMap<Option<&'a str>, Vec<&'a str>> = BTreeMap::new();
    let mut anchor = None;
    for id in list {
        if is_anchor(id) {
            anchor = Some(*id);
        } else {
            all.entry(anchor).or_default().push(id);
        }
    }
    all
}

fn zip<'a>(one: &[&'a str], other: &[&'a str], out: &mut Vec<&'a str>) {
    let (mut one, mut other) = (one, other);
    while let ([a, ..], [b, ..]) = (one, other) {
        let from = if a <= b { &mut one } else { &mut other };
        out.push(from[0]);
        *from = &from[1..];
    }
    out.extend(one.iter().chain(other));
}
