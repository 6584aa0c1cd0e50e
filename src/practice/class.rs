//! What a class did in one session, from the codes of its people.

use super::exercise::Exercise;
use super::result::{Attempt, CodeMistake, Tries};
use super::{Topic, Way};
use crate::trade::calendar::Date;

/// The results of one session.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Class {
    session: String,
    count: usize,
    attempts: Vec<Attempt>,
}

/// Why a result is not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ClassMistake {
    /// The code does not read.
    Code(CodeMistake),
    /// It belongs to another session.
    OtherSession,
    /// It stands there already.
    Twice,
    /// Its day is after this device's.
    Ahead,
    /// The log has a result like it whose initials were erased.
    Erased,
}

impl ClassMistake {
    /// The stable code and word key.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Code(mistake) => mistake.code(),
            Self::OtherSession => "practice-class-other",
            Self::Twice => "practice-class-twice",
            Self::Ahead => "practice-class-ahead",
            Self::Erased => "practice-class-erased",
        }
    }

    /// Whether it is a question and no mistake: whoever knows better may take the result all the same.
    pub const fn is_doubt(&self) -> bool {
        matches!(self, Self::Ahead | Self::Erased)
    }
}

/// How a topic stands in a class.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// The topic.
    pub topic: Topic,
    /// Answers that could have been given.
    pub asked: u32,
    /// Right at the first try.
    pub first: u32,
    /// Right at any try, the first included.
    pub right: u32,
    /// Not answered.
    pub open: u32,
}

impl Standing {
    /// The share that was right at any try, 0 to 1; 0 where nothing was asked.
    pub fn share(&self) -> f64 {
        if self.asked == 0 { 0.0 } else { f64::from(self.right) / f64::from(self.asked) }
    }
}

/// How often a road was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Taken {
    /// The road.
    pub way: Way,
    /// How often it was the first wrong one.
    pub times: u32,
}

impl Class {
    /// An empty class of a session.
    ///
    /// * `check`: of the session; `count`: how many exercises it has.
    pub fn new(check: &str, count: usize) -> Self {
        Self { session: check.to_owned(), count, attempts: Vec::new() }
    }

    /// Takes a result.
    ///
    /// # Errors
    /// [`ClassMistake`]; then the class is as it was.
    ///
    /// ```
    /// use brimline::practice::{Attempt, Class, ClassMistake, Mark};
    /// let attempt = Attempt { session: "0badcafe".into(), marks: vec![Mark::default()], ..Attempt::default() };
    /// let mut class = Class::new("0badcafe", 1);
    /// assert_eq!(class.add(attempt.clone()), Ok(()));
    /// assert_eq!(class.add(attempt), Err(ClassMistake::Twice));
    /// ```
    pub fn add(&mut self, attempt: Attempt) -> Result<(), ClassMistake> {
        if attempt.session != self.session || attempt.marks.len() != self.count {
            return Err(ClassMistake::OtherSession);
        }
        if self.attempts.contains(&attempt) {
            return Err(ClassMistake::Twice);
        }
        self.attempts.push(attempt);
        Ok(())
    }

    /// Takes a code, or a file of codes, one a line; what each line came to, blank lines left out.
    pub fn add_codes(&mut self, text: &str) -> Vec<Result<(), ClassMistake>> {
        let lines = text.lines().filter(|line| !line.trim().is_empty());
        lines
            .map(|line| {
                Attempt::from_code(line).map_err(ClassMistake::Code).and_then(|attempt| self.add(attempt))
            })
            .collect()
    }

    /// The file of all codes, one a line.
    ///
    /// # Errors
    /// [`CodeMistake`], where a result was added that has no code.
    pub fn to_codes(&self) -> Result<String, CodeMistake> {
        let mut out = String::new();
        for attempt in &self.attempts {
            out += &attempt.to_code()?;
            out.push('\n');
        }
        Ok(out)
    }

    /// Every result, in the order in which they came.
    pub fn attempts(&self) -> &[Attempt] {
        &self.attempts
    }

    /// The results that count, one a person: the one of the latest day, and of one day the one that came last.
    /// People are told apart by their initials.
    pub fn counting(&self) -> Vec<&Attempt> {
        let mut out: Vec<&Attempt> = Vec::new();
        for attempt in &self.attempts {
            let same = |one: &&mut &Attempt| {
                one.initials.trim().to_lowercase() == attempt.initials.trim().to_lowercase()
            };
            match out.iter_mut().find(same) {
                Some(before) if Date::read(&before.date) <= Date::read(&attempt.date) => *before = attempt,
                Some(_) => {}
                None => out.push(attempt),
            }
        }
        out
    }

    /// Topic by topic, in the order of [`Topic::ALL`], those that the session has.
    ///
    /// * `exercises`: those of the session.
    pub fn by_topic(&self, exercises: &[Exercise]) -> Vec<Standing> {
        let counting = self.counting();
        let standing = |topic: Topic| {
            let mut out = Standing { topic, asked: 0, first: 0, right: 0, open: 0 };
            for attempt in &counting {
                let own = attempt.marks.iter().zip(exercises).filter(|(_, one)| one.topic == topic);
                for (mark, _) in own {
                    out.asked += 1;
                    out.first += u32::from(mark.tries == Tries::First);
                    out.right += u32::from(!matches!(mark.tries, Tries::Open | Tries::Never));
                    out.open += u32::from(mark.tries == Tries::Open);
                }
            }
            out
        };
        let has = |topic: &Topic| exercises.iter().any(|one| one.topic == *topic);
        Topic::ALL.iter().copied().filter(has).map(standing).collect()
    }

    /// The roads that were taken, the most usual first.
    pub fn taken(&self) -> Vec<Taken> {
        let counting = self.counting();
        let times = |way: Way| {
            let marks = counting.iter().flat_map(|attempt| &attempt.marks);
            Taken { way, times: marks.map(|mark| u32::from(mark.way.contains(&way))).sum() }
        };
        let mut out: Vec<Taken> =
            Way::ALL.iter().copied().map(times).filter(|taken| taken.times > 0).collect();
        out.sort_by_key(|taken| std::cmp::Reverse(taken.times));
        out
    }
}
