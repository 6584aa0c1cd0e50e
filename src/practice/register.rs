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

/// What codes are held against before they are taken.
#[derive(Clone, Copy, Debug, Default)]
pub struct Known<'a> {
    /// The sessions that were handed out.
    pub made: &'a [Made],
    /// The device's day; none where it is not known.
    pub today: Option<Date>,
    /// What the log says of people whose initials were erased from it.
    pub nameless: &'a [Lesson],
    /// Whether what is in doubt is taken all the same.
    pub sure: bool,
}

/// Something that a person has shown, and may have lost since.
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
    /// The day of the first wrong answer since; none where there is none.
    pub lost: Option<Date>,
}

/// Why something that was shown does not count any more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ended {
    /// A later answer was wrong, on this day.
    Lost(Date),
    /// Its time is over; this was its last day.
    RanOut(Date),
}

impl Shown {
    /// Why it does not count on a day; none where it does.
    ///
    /// ```
    /// use brimline::practice::{Ended, Level, Shown, Topic};
    /// use brimline::trade::calendar::Date;
    /// let day = |text| Date::read(text).unwrap();
    /// let (initials, date, expires) = ("AB".to_owned(), day("2026-03-07"), Some(day("2027-03-07")));
    /// let shown = Shown { initials, topic: Topic::Dose, level: Level::First, date, expires, lost: None };
    /// assert_eq!(shown.ended(day("2027-03-07")), None);
    /// assert_eq!(shown.ended(day("2027-03-08")), Some(Ended::RanOut(day("2027-03-07"))));
    /// ```
    pub fn ended(&self, today: Date) -> Option<Ended> {
        let out = self.expires.filter(|last| *last < today);
        match self.lost {
            // What was over by then could be lost no more.
            Some(lost) if self.expires.is_none_or(|last| lost <= last) => Some(Ended::Lost(lost)),
            _ => out.map(Ended::RanOut),
        }
    }
}

impl Register {
    /// Takes codes, one a line, each to the session that it belongs to; how many were taken, and the lines that
    /// were not. What is in doubt is not taken without being asked for: a day after the device's own, and a result
    /// like one in the log whose initials were erased on request. Where it is asked for it is a new result.
    ///
    /// ```
    /// use brimline::practice::{ClassMistake, CodeMistake, Known, Register};
    /// let (taken, refused) = Register::default().take("brim 1no", Known::default());
    /// assert_eq!((taken, &refused[0].why), (0, &ClassMistake::Code(CodeMistake::Altered)));
    /// ```
    pub fn take(&mut self, text: &str, known: Known) -> (usize, Vec<Refused>) {
        let (mut taken, mut refused) = (0, Vec::new());
        for line in text.lines().map(str::trim).filter(|line| !line.is_empty()) {
            match self.one(line, known) {
                Ok(code) => {
                    taken += 1;
                    self.codes.push(code);
                }
                Err(why) => refused.push(Refused { line: line.to_owned(), why }),
            }
        }
        (taken, refused)
    }

    fn one(&self, line: &str, known: Known) -> Result<String, ClassMistake> {
        let attempt = Attempt::from_code(line).map_err(ClassMistake::Code)?;
        let made = known.made.iter().find(|(one, _)| one.check() == attempt.session);
        let (session, exercises) = made.ok_or(ClassMistake::OtherSession)?;
        let code = attempt.to_code().map_err(ClassMistake::Code)?;
        let lesson = self.lesson(&attempt, session, exercises);
        let day = Date::read(&attempt.date);
        self.class(session).add(attempt)?;
        let is_like = |other: &Lesson| lesson.as_ref().is_some_and(|one| is_of(one, other));
        if known.sure {
            Ok(code)
        } else if known.today.zip(day).is_some_and(|(today, day)| day > today) {
            Err(ClassMistake::Ahead)
        } else if known.nameless.iter().any(is_like) {
            Err(ClassMistake::Erased)
        } else {
            Ok(code)
        }
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

    /// A text without the lines that are codes of a person.
    ///
    /// ```
    /// use brimline::practice::Register;
    /// assert_eq!(Register::without("not a code\nneither", "AB"), "not a code\nneither");
    /// ```
    pub fn without(text: &str, initials: &str) -> String {
        let names = |line: &&str| Attempt::from_code(line).is_ok_and(|one| same(&one.initials, initials));
        text.lines().filter(|line| !names(line)).collect::<Vec<_>>().join("\n")
    }

    /// How many results there are of a person.
    pub fn count_of(&self, initials: &str) -> usize {
        self.attempts().filter(|one| same(&one.initials, initials)).count()
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
            Some((attempt.initials.clone(), self.lesson(&attempt, session, exercises)?))
        };
        self.attempts().filter_map(lesson).collect()
    }

    fn lesson(&self, attempt: &Attempt, session: &Session, exercises: &[Exercise]) -> Option<Lesson> {
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
        Some(lesson)
    }

    /// Until when what was shown on a day holds; none where no months are typed.
    fn until(&self, day: Date) -> Option<Date> {
        self.holds_for().and_then(|months| day.months_later(months))
    }
}

/// Whether two say the same result: of one session and one day, with the same topics. For how long it holds does not
/// tell two apart.
///
/// ```
/// use brimline::practice::is_of;
/// use brimline::site::log::Lesson;
/// let one = Lesson { day: "2026-03-07".into(), ..Lesson::default() };
/// assert!(is_of(&one, &Lesson { until: "2027-03-07".into(), ..one.clone() }));
/// ```
pub fn is_of(one: &Lesson, other: &Lesson) -> bool {
    *one == Lesson { until: one.until.clone(), ..other.clone() }
}

/// A topic at a level, and what came of it on a day.
#[derive(Clone, Copy)]
struct Day {
    date: Date,
    right: bool,
    expires: Option<Date>,
}

/// Who has shown what: every exercise of a topic right, at the first or a later try, in one session that asked for it
/// at that level. A later one with a wrong answer takes it away, which [`Shown::lost`] tells; of one day the worse
/// counts. That this is enough is common practice, no source: a person who can judge it says who may work alone.
///
/// * `lessons`: initials, and what was shown in a session. Those without initials are nobody's.
pub fn shown<'a>(lessons: impl IntoIterator<Item = (&'a str, &'a Lesson)>) -> Vec<Shown> {
    let mut all: Vec<(String, Topic, Level, Vec<Day>)> = Vec::new();
    for (initials, lesson) in lessons.into_iter().filter(|(initials, _)| !initials.trim().is_empty()) {
        let (Some(date), Some(level)) = (Date::read(&lesson.day), Level::of(lesson.level)) else { continue };
        let each = |topics: &'a [String], right: bool| {
            topics.iter().filter_map(|code| Topic::from_code(code)).map(move |topic| (topic, right))
        };
        for (topic, right) in each(&lesson.shown, true).chain(each(&lesson.missed, false)) {
            let day = Day { date, right, expires: Date::read(&lesson.until) };
            let of = |one: &&mut (String, Topic, Level, Vec<Day>)| {
                same(&one.0, initials) && (one.1, one.2) == (topic, level)
            };
            match all.iter_mut().find(of) {
                Some((.., days)) => match days.iter_mut().find(|one| one.date == date) {
                    Some(before) => before.right &= right,
                    None => days.push(day),
                },
                None => all.push((initials.to_owned(), topic, level, vec![day])),
            }
        }
    }
    let latest = |(initials, topic, level, days): (String, Topic, Level, Vec<Day>)| {
        let right = days.iter().filter(|day| day.right).max_by_key(|day| day.date)?;
        let wrong = days.iter().filter(|day| !day.right && day.date > right.date);
        let lost = wrong.map(|day| day.date).min();
        Some(Shown { initials, topic, level, date: right.date, expires: right.expires, lost })
    };
    all.into_iter().filter_map(latest).collect()
}

/// People are told apart by their initials.
pub fn same(one: &str, other: &str) -> bool {
    one.trim().to_lowercase() == other.trim().to_lowercase()
}
