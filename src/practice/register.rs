//! What a trainer gathers: the codes of a class, and who has shown what until when.

use super::class::{Class, ClassMistake};
use super::exercise::Exercise;
use super::result::{Attempt, Tries};
use super::session::Session;
use super::topic::{Level, Topic};
use super::whole;
use crate::document::document;
use crate::limits;
use crate::number::Marks;
use crate::site::log::Lesson;
use crate::trade::calendar::Date;

document! {
    /// The results of classes as their codes, and how long what was shown holds.
    Register {
        /// The codes.
        codes: Vec<String>,
        /// For how many months, as typed.
        months: String = "12".into(),
    }
}

/// A line that was not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refused {
    /// The line.
    pub line: String,
    /// Why.
    pub why: ClassMistake,
}

/// A session and its exercises.
pub type Made = (Session, Vec<Exercise>);

/// Something that a person has shown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// Initials.
    pub initials: String,
    /// What.
    pub topic: Topic,
    /// How hard it was.
    pub level: Level,
    /// When.
    pub date: Date,
    /// Until when it holds; none where no months are typed.
    pub expires: Option<Date>,
}

impl Register {
    /// Takes codes, one a line, each to the session that it belongs to; how many were taken, and the lines that
    /// were not.
    ///
    /// * `sessions`: those that were handed out.
    ///
    /// ```
    /// use brimline::practice::{ClassMistake, CodeMistake, Register};
    /// let (taken, refused) = Register::default().take("brim 1no", &[]);
    /// assert_eq!((taken, &refused[0].why), (0, &ClassMistake::Code(CodeMistake::Altered)));
    /// ```
    pub fn take(&mut self, text: &str, sessions: &[Session]) -> (usize, Vec<Refused>) {
        let (mut taken, mut refused) = (0, Vec::new());
        for line in text.lines().map(str::trim).filter(|line| !line.is_empty()) {
            match self.one(line, sessions) {
                Ok(code) => {
                    taken += 1;
                    self.codes.push(code);
                }
                Err(why) => refused.push(Refused { line: line.to_owned(), why }),
            }
        }
        (taken, refused)
    }

    fn one(&self, line: &str, sessions: &[Session]) -> Result<String, ClassMistake> {
        let attempt = Attempt::from_code(line).map_err(ClassMistake::Code)?;
        let session = sessions.iter().find(|one| one.check() == attempt.session);
        let session = session.ok_or(ClassMistake::OtherSession)?;
        let code = attempt.to_code().map_err(ClassMistake::Code)?;
        self.class(session).add(attempt).map(|()| code)
    }

    /// The results of one session.
    pub fn class(&self, session: &Session) -> Class {
        let check = session.check();
        let mut class = Class::new(&check, usize::try_from(session.count).unwrap_or(usize::MAX));
        for attempt in self.attempts().filter(|one| one.session == check) {
            // What was taken once fits once more.
            let _ = class.add(attempt);
        }
        class
    }

    fn attempts(&self) -> impl Iterator<Item = Attempt> {
        self.codes.iter().filter_map(|code| Attempt::from_code(code).ok())
    }

    /// Whether there are results of the session with this check.
    pub fn has(&self, check: &str) -> bool {
        self.attempts().any(|one| one.session == check)
    }

    /// The people, by their initials, in the order in which they came.
    pub fn people(&self) -> Vec<String> {
        let mut out: Vec<String> = Vec::new();
        for attempt in self.attempts() {
            if !out.iter().any(|one| same(one, &attempt.initials)) {
                out.push(attempt.initials);
            }
        }
        out
    }

    /// Takes all results of a person out, of every session.
    pub fn remove(&mut self, initials: &str) {
        self.codes.retain(|code| !Attempt::from_code(code).is_ok_and(|one| same(&one.initials, initials)));
    }

    /// For how many months a thing shown holds; none where that is no whole number within its limit.
    pub fn holds_for(&self) -> Option<u32> {
        whole(&self.months, &limits::MONTHS, Marks::POINT).ok()
    }

    /// What each result says, as the log keeps it: whose it is, and which topics were right as a whole, at the first
    /// or a later try.
    ///
    /// * `sessions`: those that were handed out; results of others say nothing.
    pub fn lessons(&self, sessions: &[Made]) -> Vec<(String, Lesson)> {
        let lesson = |attempt: Attempt| {
            let (session, exercises) = sessions.iter().find(|(one, _)| one.check() == attempt.session)?;
            let day = Date::read(&attempt.date)?;
            let mut lesson = Lesson {
                session: attempt.session.clone(),
                level: session.level.number(),
                day: attempt.date.clone(),
                until: self.until(day).map_or_else(String::new, |until| until.to_string()),
                ..Lesson::default()
            };
            for topic in &session.topics {
                let mut own =
                    exercises.iter().zip(&attempt.marks).filter(|(one, _)| one.topic == *topic).peekable();
                if own.peek().is_none() {
                    continue;
                }
                let right = own.all(|(_, mark)| !matches!(mark.tries, Tries::Open | Tries::Never));
                let topics = if right { &mut lesson.shown } else { &mut lesson.missed };
                topics.push(topic.code().to_owned());
            }
            Some((attempt.initials, lesson))
        };
        self.attempts().filter_map(lesson).collect()
    }

    /// Until when what was shown on a day holds; none where no months are typed.
    fn until(&self, day: Date) -> Option<Date> {
        self.holds_for().and_then(|months| day.months_later(months))
    }
}

/// Who has shown what: every exercise of a topic right, at the first or a later try, in the latest session that asked
/// for it at that level. A later one with a wrong answer takes it away, and of one day the worse counts. That this is
/// enough is common practice, no source: a person who can judge it says who may work alone.
///
/// * `lessons`: initials, and what was shown in a session. Those without initials are nobody's.
pub fn shown<'a>(lessons: impl IntoIterator<Item = (&'a str, &'a Lesson)>) -> Vec<Shown> {
    let mut out: Vec<(Shown, bool)> = Vec::new();
    for (initials, lesson) in lessons.into_iter().filter(|(initials, _)| !initials.trim().is_empty()) {
        let (Some(date), Some(level)) = (Date::read(&lesson.day), Level::of(lesson.level)) else { continue };
        let each = |topics: &'a [String], right: bool| {
            topics.iter().filter_map(|code| Topic::from_code(code)).map(move |topic| (topic, right))
        };
        for (topic, right) in each(&lesson.shown, true).chain(each(&lesson.missed, false)) {
            let expires = Date::read(&lesson.until);
            let new = Shown { initials: initials.to_owned(), topic, level, date, expires };
            let before = out
                .iter_mut()
                .find(|(one, _)| same(&one.initials, initials) && (one.topic, one.level) == (topic, level));
            match before {
                Some((one, held)) if one.date == date => *held = *held && right,
                Some((one, _)) if one.date > date => {}
                Some(before) => *before = (new, right),
                None => out.push((new, right)),
            }
        }
    }
    out.into_iter().filter(|(_, right)| *right).map(|(shown, _)| shown).collect()
}

/// People are told apart by their initials.
pub fn same(one: &str, other: &str) -> bool {
    one.trim().to_lowercase() == other.trim().to_lowercase()
}
