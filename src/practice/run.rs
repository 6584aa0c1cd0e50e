//! A session under way: where a person is in it, what was answered, and what came of each exercise.

use super::exercise::{Exercise, Key};
use super::judge::{Reply, Verdict, judge};
use super::result::{Attempt, Mark, Tries};
use super::session::Session;
use crate::document::document;
use crate::number::Marks;

/// How often an exercise may be answered before its workings are shown. Common practice, no source.
const TRIES: u32 = 2;

document! {
    /// An answer as it was given.
    Given {
        /// What was typed.
        text: String,
        /// The code of the unit beside it; empty for the one that was asked for.
        unit: String,
        /// What was chosen, from 0; of what is put in order all of it, or nothing where it lies as it was dealt.
        chosen: Vec<u32>,
    }
}

document! {
    /// A session under way. It has neither a name nor an hour.
    Run {
        /// The session; one without a topic is none.
        session: Session,
        /// Which exercise, from 0.
        at: u32,
        /// The answer that is being given.
        reply: Given,
        /// The one that was judged last; one at most.
        judged: Vec<Given>,
        /// How often this exercise was answered wrongly.
        wrong: u32,
        /// What this exercise has come to so far.
        mark: Mark,
        /// What came of those that are over.
        marks: Vec<Mark>,
        /// The day that the last one was over, year-month-day.
        day: String,
        /// Initials, where they were typed.
        initials: String,
    }
}

impl Given {
    /// Hands the answer on as it is judged.
    pub fn as_reply<T>(&self, exercise: &Exercise, then: impl FnOnce(Reply) -> T) -> T {
        if let Key::Amount(amount) = &exercise.key {
            let unit = if self.unit.is_empty() { amount.unit } else { &self.unit };
            return then(Reply::Number { text: &self.text, unit });
        }
        then(Reply::Chosen(&self.choices(exercise)))
    }

    /// What was chosen; of what is put in order all of it, as it lies.
    pub fn choices(&self, exercise: &Exercise) -> Vec<usize> {
        match &exercise.key {
            Key::Order { options, .. } if self.chosen.len() != options.len() => (0..options.len()).collect(),
            _ => self.chosen.iter().filter_map(|one| usize::try_from(*one).ok()).collect(),
        }
    }

    /// Chooses: the one alone, or one more or less of several.
    pub fn choose(&mut self, exercise: &Exercise, one: u32, on: bool) {
        if matches!(exercise.key, Key::Several { .. }) {
            self.chosen.retain(|other| *other != one);
        } else {
            self.chosen.clear();
        }
        if on {
            self.chosen.push(one);
        }
        self.chosen.sort_unstable();
    }

    /// Moves one of what is put in order a place up or down; at the end it stays.
    pub fn shift(&mut self, exercise: &Exercise, one: usize, up: bool) {
        let mut order = self.choices(exercise);
        let Some(place) = order.iter().position(|other| *other == one) else { return };
        let there = if up { place.checked_sub(1) } else { Some(place + 1).filter(|to| *to < order.len()) };
        if let Some(there) = there {
            order.swap(place, there);
        }
        self.chosen = order.into_iter().filter_map(|one| u32::try_from(one).ok()).collect();
    }
}

impl Run {
    /// A session that begins.
    pub fn begin(session: Session) -> Self {
        Self { session, ..Self::default() }
    }

    /// Whether there is one.
    pub fn is_held(&self) -> bool {
        !self.session.topics.is_empty()
    }

    /// The exercise that is asked; none when all are over.
    ///
    /// * `exercises`: those of the session.
    pub fn exercise<'a>(&self, exercises: &'a [Exercise]) -> Option<&'a Exercise> {
        exercises.get(usize::try_from(self.at).ok()?)
    }

    /// Whether this exercise is over: it was right, or was wrong for the last time.
    pub fn is_closed(&self) -> bool {
        self.marks.len() as u64 > u64::from(self.at)
    }

    /// What came of the answer that was judged last.
    pub fn verdict(&self, exercise: &Exercise, marks: Marks) -> Option<Verdict> {
        Some(self.judged.first()?.as_reply(exercise, |reply| judge(exercise, reply, marks)))
    }

    /// Judges the answer. What does not read and what is no amount counts as no try; the second wrong one closes the exercise.
    ///
    /// * `exercise`: the one that is asked; `marks`: the reader's decimal mark.
    ///
    /// ```
    /// use brimline::number::Marks;
    /// use brimline::practice::{Run, Session, Topic};
    /// let session = Session { topics: vec![Topic::Units], count: 1, ..Session::default() };
    /// let exercises = session.exercises();
    /// let mut run = Run::begin(session);
    /// run.reply.text = "a lot".into();
    /// run.check(&exercises[0], Marks::POINT);
    /// assert!(!run.is_closed() && run.wrong == 0); // it was no number, and so no try
    /// ```
    pub fn check(&mut self, exercise: &Exercise, marks: Marks) {
        if self.is_closed() {
            return;
        }
        self.judged = vec![self.reply.clone()];
        match self.verdict(exercise, marks) {
            None | Some(Verdict::NotRead(_) | Verdict::NotAbove) => {}
            Some(Verdict::Wrong { way, .. }) => {
                self.wrong += 1;
                if self.mark.way.is_empty() {
                    self.mark.way.extend(way);
                }
                if self.wrong >= TRIES {
                    self.close(Tries::Never);
                }
            }
            Some(Verdict::Right | Verdict::Rounded) => {
                self.close(if self.wrong == 0 { Tries::First } else { Tries::Second });
            }
        }
    }

    fn close(&mut self, tries: Tries) {
        self.marks.push(Mark { tries, way: std::mem::take(&mut self.mark.way) });
    }

    /// Goes on; an exercise that is not over is left as it is.
    ///
    /// * `day`: today, year-month-day.
    pub fn go_on(&mut self, day: &str) {
        if !self.is_closed() {
            self.close(if self.wrong == 0 { Tries::Open } else { Tries::Never });
        }
        self.at += 1;
        day.clone_into(&mut self.day);
        self.wrong = 0;
        self.reply = Given::default();
        self.judged.clear();
        self.mark = Mark::default();
    }

    /// What is handed in, of the day that it was over.
    pub fn attempt(&self) -> Attempt {
        Attempt {
            session: self.session.check(),
            initials: self.initials.trim().to_owned(),
            date: self.day.clone(),
            marks: self.marks.clone(),
        }
    }

    /// How many were right at that try.
    pub fn right_at(&self, tries: Tries) -> usize {
        self.marks.iter().filter(|mark| mark.tries == tries).count()
    }
}
