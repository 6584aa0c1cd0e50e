//! Holds records to their chains, one at a time: no log has to be in memory.

use super::words::State;
use super::{Broken, Head, Id, Kind, Part, Record, Why, digest};
use std::collections::{HashMap, HashSet};
use std::hash::{DefaultHasher, Hash, Hasher};

/// Takes records one by one, those of one device in the order of their numbers, and says at the end whether all
/// hold. [`super::verify()`] and [`super::verify_to()`] are this over a slice.
///
/// ```
/// use brimline::site::log::{Draft, Fill, Stamp, Verifier, Words};
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let record = Draft::fill(Fill::default()).after(None, &stamp, Words::default()).unwrap();
/// let mut verifier = Verifier::default();
/// verifier.next(&record);
/// assert_eq!(verifier.finish(), Ok(()));
/// ```
#[derive(Clone, Debug, Default)]
pub struct Verifier {
    /// How many records it was given.
    count: usize,
    /// The chains, by device.
    chains: HashMap<String, Chain>,
    /// The heads that were kept, in their order, and where the record of each stands, with its hash.
    heads: Vec<(Head, Option<(usize, String)>)>,
    /// Texts that were blanked, in the order of the records.
    blanked: Vec<(usize, Id, Part)>,
    /// Texts that records say were blanked.
    erased: HashSet<(String, Part)>,
    /// The first record that does not hold, whatever comes after it.
    broken: Option<Broken>,
    /// It may be missing, or only come later: this one.
    late: Option<(Id, bool)>,
}

/// What is known of a chain: a mark of each record, and the hash of the last.
#[derive(Clone, Debug, Default)]
struct Chain {
    marks: Vec<u64>,
    own: String,
}

impl Verifier {
    /// Holds the chains to heads that were kept, too: each must still be there, as it was.
    pub fn to(heads: &[Head]) -> Self {
        Self { heads: heads.iter().map(|head| (head.clone(), None)).collect(), ..Self::default() }
    }

    /// Takes the next record.
    pub fn next(&mut self, record: &Record) {
        let place = self.count;
        self.count += 1;
        if record.kind == Kind::Erasure {
            self.erased.extend(record.erased.iter().map(|part| (record.of.clone(), *part)));
        }
        for (head, found) in &mut self.heads {
            if head.number == record.number && head.device == record.device && found.is_none() {
                *found = Some((place, record.own.clone()));
            }
        }
        if self.broken.is_none() {
            if let Err(why) = self.hold(place, record) {
                self.broken = Some(Broken { place, id: record.id(), why });
            }
        } else if let Some((id, comes)) = &mut self.late {
            *comes |= id.number == record.number && *id.device == *record.device;
        }
    }

    fn hold(&mut self, place: usize, record: &Record) -> Result<(), Why> {
        let chain = self.chains.entry(record.device.clone()).or_default();
        let expected = chain.marks.len() as u64 + 1;
        if record.number < expected {
            let first = usize::try_from(record.number)
                .ok()
                .and_then(|number| chain.marks.get(number.wrapping_sub(1)));
            let same = first == Some(&mark(record)) && digest(record) == record.own;
            return Err(if same { Why::Doubled } else { Why::Forked });
        }
        if record.number > expected {
            // Which of the two it is shows in what comes after.
            self.late = Some((Id::new(record.device.clone(), expected), false));
            return Err(Why::Moved);
        }
        if digest(record) != record.own {
            return Err(Why::Altered);
        }
        if record.before != chain.own {
            return Err(Why::Unlinked);
        }
        chain.marks.push(mark(record));
        chain.own.clone_from(&record.own);
        for part in Part::ALL {
            match record.words.state(*part, &record.seals) {
                State::Altered => return Err(Why::WordsAltered(*part)),
                State::Blanked => self.blanked.push((place, record.id(), *part)),
                State::None | State::Whole => {}
            }
        }
        Ok(())
    }

    /// Whether all that it took holds.
    ///
    /// # Errors
    /// [`Broken`]: the first record at which it does not; then the first head that is missing or another one.
    pub fn finish(self) -> Result<(), Broken> {
        let unsaid = |(_, id, part): &&(usize, Id, Part)| !self.erased.contains(&(id.to_string(), *part));
        if let Some((place, id, part)) = self.blanked.iter().find(unsaid) {
            return Err(Broken { place: *place, id: id.clone(), why: Why::WordsGone(*part) });
        }
        match (self.broken, self.late) {
            (Some(broken), Some((id, false))) => return Err(Broken { id, why: Why::Missing, ..broken }),
            (Some(broken), _) => return Err(broken),
            (None, _) => {}
        }
        for (head, found) in &self.heads {
            let broken =
                |place, number, why| Err(Broken { place, id: Id::new(head.device.clone(), number), why });
            match found {
                Some((_, own)) if *own == head.own => {}
                Some((place, _)) => return broken(*place, head.number, Why::Replaced),
                None => {
                    // The first of those that are missing.
                    let there = self.chains.get(&head.device).map_or(0, |chain| chain.marks.len() as u64);
                    return broken(self.count, there + 1, Why::Missing);
                }
            }
        }
        Ok(())
    }
}

/// Tells a record that holds from another one of its device and number, by its hash and its words.
fn mark(record: &Record) -> u64 {
    let mut hasher = DefaultHasher::new();
    record.own.hash(&mut hasher);
    for part in Part::ALL {
        let text = record.words.get(*part);
        (&text.salt, &text.text).hash(&mut hasher);
    }
    hasher.finish()
}
