//! A session: what a trainer chose, and the exercises that follow from it.

use super::exercise::{Exercise, Fact, Key, Said, make};
use super::stock::lack;
use super::{Draw, Lack, Level, Ready, Stock, Topic};
use crate::document::{checksum, shaped as document};
use crate::limits;
use crate::site::passing::link::{LinkMistake, pack};
use crate::units::Kind;

/// The characters of a link that a code holds behind an address of up to 155: version 27 at level L holds 1,465
/// (ISO/IEC 18004, table 7).
const ROOM: usize = 1_310;

/// Which exercises a session makes. It rises with every change of them: the marks of a result stand in their order, and
/// those of an earlier version would be counted to other topics.
const DRAWN: u32 = 3;

/// How often an exercise that came before is drawn anew before its topic is given up.
const TRIES: usize = 60;

/// How far the seeds of two levels lie apart: 2³² by the golden ratio, so that neighbours stay apart. Source: D. E.
/// Knuth, The Art of Computer Programming 3, 6.4.
const GOLDEN: u32 = 0x9e37_79b9;

document! {
    /// What a trainer chose. The same session makes the same exercises on every device.
    Session {
        /// Where its numbers come from.
        seed: u32,
        /// What is practised.
        topics: Vec<Topic>,
        /// How hard.
        level: Level,
        /// How many exercises.
        count: u32 = 10,
        /// What they are made of.
        stock: Stock,
    }
}

/// Why a session cannot be held.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SessionMistake {
    /// No topic was chosen.
    NoTopic,
    /// No exercise, or more than [`limits::TASKS`] lets through.
    Count,
    /// The stock has too little for a topic.
    Lacks(Topic, Lack),
    /// There are fewer different exercises than were asked for.
    Fewer(usize),
    /// It does not go into a link of that length.
    Link(LinkMistake),
}

impl SessionMistake {
    /// The stable code and word key.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::NoTopic => "practice-session-no-topic",
            Self::Count => "practice-session-count",
            Self::Lacks(..) => "practice-session-lacks",
            Self::Fewer(_) => "practice-session-fewer",
            Self::Link(_) => "practice-session-link",
        }
    }
}

impl Session {
    /// Its exercises: the topics in turn, each round in an order of its own, none twice, and no sum twice under other
    /// names where there is another one.
    ///
    /// A topic that the stock has too little for, or has no more different exercises of, is passed over; where
    /// none is left there are fewer than were asked for. [`Session::flaw`] tells beforehand.
    ///
    /// ```
    /// use brimline::practice::{Session, Topic};
    /// let session = Session { seed: 5, topics: vec![Topic::Units], count: 3, ..Session::default() };
    /// let (one, other) = (session.exercises(), session.exercises());
    /// assert_eq!(one.len(), 3);
    /// assert!(one.iter().zip(&other).all(|(a, b)| a.asked == b.asked && a.key == b.key));
    /// ```
    pub fn exercises(&self) -> Vec<Exercise> {
        let ready = Ready::of(&self.stock);
        // Another level of the same seed draws other numbers.
        let level = (0..).zip(Level::ALL).find(|(_, one)| **one == self.level).map_or(0, |(at, _)| at);
        let mut draw = Draw::new(self.seed.wrapping_add(GOLDEN.wrapping_mul(level)));
        let chosen = Topic::ALL.iter().copied().filter(|one| self.topics.contains(one));
        let mut topics: Vec<Topic> = chosen.filter(|one| lack(&ready, *one, self.level).is_none()).collect();
        let wanted =
            |made: usize| made < self.count as usize && limits::TASKS.check_si(made as f64 + 1.0).is_ok();
        let mut out: Vec<Exercise> = Vec::new();
        while wanted(out.len()) && !topics.is_empty() {
            draw.shuffle(&mut topics);
            for topic in topics.clone() {
                if !wanted(out.len()) {
                    break;
                }
                // One that is told otherwise and is the same sum will do where there is no other.
                let mut retold = None;
                let another = |_| {
                    let new = make(topic, self.level, &ready, &mut draw)
                        .filter(|new| !out.iter().any(|one| same(one, new)))?;
                    if out.iter().any(|one| same_sum(one, &new)) {
                        retold.get_or_insert(new);
                        return None;
                    }
                    Some(new)
                };
                match (0..TRIES).find_map(another).or(retold) {
                    Some(exercise) => out.push(exercise),
                    None => topics.retain(|one| *one != topic),
                }
            }
        }
        out
    }

    /// What stands in its way; none where it can be held.
    ///
    /// ```
    /// use brimline::practice::{Lack, Session, SessionMistake, Topic};
    /// let session = Session { topics: vec![Topic::Dose], ..Session::default() };
    /// assert_eq!(session.flaw(), Some(SessionMistake::Lacks(Topic::Dose, Lack::Machine)));
    /// ```
    pub fn flaw(&self) -> Option<SessionMistake> {
        if self.topics.is_empty() {
            return Some(SessionMistake::NoTopic);
        }
        if limits::TASKS.check_si(f64::from(self.count)).is_err() {
            return Some(SessionMistake::Count);
        }
        let ready = Ready::of(&self.stock);
        let lacking = self.topics.iter().find_map(|one| Some((*one, lack(&ready, *one, self.level)?)));
        if let Some((topic, lack)) = lacking {
            return Some(SessionMistake::Lacks(topic, lack));
        }
        let found = self.exercises().len();
        (found < self.count as usize).then_some(SessionMistake::Fewer(found))
    }

    /// Eight digits that hold results to this session: a session with another seed, level or stock has others, and so
    /// has the same one where a version of the page draws other exercises from it. They find a slip, not a forger.
    ///
    /// ```
    /// use brimline::practice::Session;
    /// let other = Session { seed: 1, ..Session::default() };
    /// assert_ne!(Session::default().check(), other.check());
    /// assert_eq!(other.check().len(), 8);
    /// ```
    pub fn check(&self) -> String {
        let text = serde_json::to_string(self).unwrap_or_default();
        checksum(&format!("{DRAWN} {text}"))[..8].to_owned()
    }

    /// The session as a whole class has it, by its link or by the number that it is drawn by: with as much of its
    /// stock as a code holds, wherever the page is. Where nothing fits it is left whole, for paper.
    ///
    /// ```
    /// use brimline::practice::{Session, Topic};
    /// let session = Session { topics: vec![Topic::Units], ..Session::default() }.for_all();
    /// assert_eq!(session.clone().for_all(), session);
    /// ```
    #[must_use]
    pub fn for_all(self) -> Self {
        self.fitting(ROOM).map_or(self, |(fitting, _)| fitting)
    }

    /// The session with as much of its stock as a link of so many characters has room for, and that link's
    /// fragment. Its exercises are those of the smaller stock, on the trainer's device too.
    ///
    /// * `most`: characters, less those of the address before it. A QR code of version 27 at level M holds 1,125 bytes (ISO/IEC 18004, table 7).
    ///
    /// # Errors
    /// [`SessionMistake`], where it cannot be held at all or not even the smallest stock fits.
    ///
    /// ```
    /// use brimline::practice::{Session, Topic};
    /// use brimline::site::passing::link::unpack;
    /// let session = Session { topics: vec![Topic::Units], ..Session::default() };
    /// let (held, link) = session.fitting(1_125).unwrap();
    /// assert_eq!(unpack(&link), Ok(held));
    /// ```
    pub fn fitting(&self, most: usize) -> Result<(Self, String), SessionMistake> {
        let stock = &self.stock;
        let longest = [stock.machines.len(), stock.products.len(), stock.floors.len(), stock.measures.len()];
        let longest = longest.into_iter().max().unwrap_or_default();
        let mut why = None;
        for records in (1..=longest.max(1)).rev() {
            let smaller = Self { stock: stock.at_most(records), ..self.clone() };
            match pack(&smaller) {
                Ok(link) if link.len() <= most => {
                    return match smaller.flaw() {
                        None => Ok((smaller, link)),
                        Some(flaw) => Err(flaw),
                    };
                }
                Ok(_) => why = Some(LinkMistake::TooLarge),
                Err(mistake) => why = Some(mistake),
            }
        }
        Err(SessionMistake::Link(why.unwrap_or(LinkMistake::TooLarge)))
    }
}

/// Whether two exercises are the same sum with other names around it: the same question with the same answer, and where
/// there is something to choose by the same numbers.
fn same_sum(one: &Exercise, other: &Exercise) -> bool {
    if one.topic != other.topic || one.asked.last() != other.asked.last() {
        return false;
    }
    match (&one.key, &other.key) {
        (Key::Amount(a), Key::Amount(b)) if a.kind != Kind::Count => (a.si / b.si - 1.0).abs() < 1e-9,
        _ => !numbers(one).is_empty() && numbers(one) == numbers(other),
    }
}

/// The numbers that a task tells and offers, in their order.
fn numbers(exercise: &Exercise) -> Vec<&Fact> {
    let offered = match &exercise.key {
        Key::Amount(_) => &[][..],
        Key::Choice { options, .. } | Key::Several { options, .. } | Key::Order { options, .. } => options,
    };
    let facts = exercise.asked.iter().chain(offered).flat_map(|said| &said.facts).map(|(_, fact)| fact);
    facts.filter(|fact| matches!(fact, Fact::Entry(_) | Fact::Count(_))).collect()
}

/// Whether two exercises ask the same and have the same answer, in whatever order the choices stand.
fn same(one: &Exercise, other: &Exercise) -> bool {
    let (a, b) = (right(&one.key), right(&other.key));
    one.asked == other.asked && a.len() == b.len() && a.iter().all(|said| b.contains(said))
}

fn right(key: &Key) -> Vec<&Said> {
    match key {
        Key::Amount(_) => Vec::new(),
        Key::Choice { options, right } => vec![&options[*right]],
        Key::Several { options, right } | Key::Order { options, right } => {
            right.iter().map(|index| &options[*index]).collect()
        }
    }
}
