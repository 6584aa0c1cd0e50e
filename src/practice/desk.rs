//! What the page of practice holds: what is chosen, what is under way, and the sessions that were handed out.

use super::run::Run;
use super::session::{Session, SessionMistake};
use super::topic::{Level, Topic};
use super::{Numbers, Register, Stock, whole};
use crate::coded::coded;
use crate::document::document;
use crate::form::What;
use crate::limits;
use crate::number::Marks;

coded! {
    /// The parts of the view.
    #[derive(Default)]
    Part {
        /// Practise.
        #[default]
        Practise = "practise",
        /// Play with numbers.
        Numbers = "numbers",
        /// Hand a session out.
        HandOut = "hand-out",
        /// What a class did.
        Class = "class",
    }
}

document! {
    /// What is chosen and what is under way. No name and no initials but those of the run.
    Desk {
        /// The part that is open.
        part: Part,
        /// What is to be practised.
        topics: Vec<Topic>,
        /// How hard.
        level: Level,
        /// How many exercises, as typed.
        count: String = "10".into(),
        /// The number that the exercises are drawn by, as typed; none draws one.
        seed: String,
        /// The numbers that are played with.
        numbers: Numbers,
        /// The session under way.
        run: Run,
        /// The sessions that were handed out, the latest last.
        given: Vec<Session>,
        /// The check of the one that is looked at.
        shown: String,
    }
}

/// So many sessions are kept; those with results are kept in any case.
const KEPT: usize = 30;

/// What a number that is drawn stays below, so that it can be read out to a class.
const DRAWN_BELOW: u32 = 1_000_000;

/// Why what is chosen makes no session.
#[derive(Clone, Debug, PartialEq)]
pub enum DeskMistake {
    /// The number that exercises are drawn by is none.
    Seed,
    /// The number of tasks is none that fits.
    Count(What),
    /// The session cannot be held.
    Session(SessionMistake),
}

impl DeskMistake {
    /// The stable code and word key.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Seed => "practice-session-seed",
            Self::Count(_) => SessionMistake::Count.code(),
            Self::Session(mistake) => mistake.code(),
        }
    }
}

impl Desk {
    /// The session that is chosen. By a number that was typed it is the one that a class has, else it is made of all
    /// records.
    ///
    /// * `marks`: how the number of tasks is read; `random`: what it is drawn by where no number was typed.
    ///
    /// # Errors
    /// [`DeskMistake`].
    ///
    /// ```
    /// use brimline::number::Marks;
    /// use brimline::practice::{Desk, DeskMistake, Stock, Topic};
    /// let mut desk = Desk { topics: vec![Topic::Units], seed: "42".into(), ..Desk::default() };
    /// let made = desk.session(&Stock::default(), Marks::POINT, 7);
    /// assert_eq!(made.map(|one| (one.seed, one.count)), Ok((42, 10)));
    /// desk.seed = "x".into();
    /// assert_eq!(desk.session(&Stock::default(), Marks::POINT, 7), Err(DeskMistake::Seed));
    /// ```
    pub fn session(&self, stock: &Stock, marks: Marks, random: u32) -> Result<Session, DeskMistake> {
        let typed = self.seed.trim();
        let seed = match typed.parse() {
            Ok(seed) if typed.bytes().all(|one| one.is_ascii_digit()) => seed,
            _ if typed.is_empty() => random % DRAWN_BELOW,
            _ => return Err(DeskMistake::Seed),
        };
        let count = self.tasks(marks).map_err(DeskMistake::Count)?;
        let session =
            Session { seed, topics: self.in_order(), level: self.level, count, stock: stock.clone() };
        match session.flaw() {
            None => Ok(if typed.is_empty() { session } else { session.for_all() }),
            Some(flaw) => Err(DeskMistake::Session(flaw)),
        }
    }

    /// How many tasks were typed.
    ///
    /// # Errors
    /// As of [`whole`].
    pub fn tasks(&self, marks: Marks) -> Result<u32, What> {
        whole(&self.count, &limits::TASKS, marks)
    }

    /// The topics in the order shown, so that the same ones make the same session.
    fn in_order(&self) -> Vec<Topic> {
        Topic::ALL.iter().copied().filter(|one| self.topics.contains(one)).collect()
    }

    /// Keeps a session that is handed out, and looks at it.
    ///
    /// * `register`: whose sessions stay.
    pub fn give(&mut self, session: Session, register: &Register) {
        self.shown = session.check();
        self.given.retain(|one| one.check() != self.shown);
        self.given.push(session);
        while self.given.len() > KEPT {
            let idle =
                self.given.iter().position(|one| !register.has(&one.check()) && one.check() != self.shown);
            let Some(idle) = idle else { break };
            self.given.remove(idle);
        }
    }

    /// The session that is looked at: the one chosen, else the latest.
    pub fn looked_at(&self) -> Option<&Session> {
        self.given.iter().find(|one| one.check() == self.shown).or(self.given.last())
    }
}
