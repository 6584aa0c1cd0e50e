//! Exercises as text: the same words on the page and on paper.

use super::{Argument, Words};
use crate::answer::Value;
use crate::form::What;
use crate::number::{self, Marks};
use crate::practice::{Amount, Exercise, Fact, Key, Reply, Said, Verdict, Way};
use crate::site::Entry;
use crate::source::Source;
use crate::units::unit;
use std::borrow::Cow;

/// A line of the workings and where it comes from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// What is told.
    pub text: String,
    /// Where it comes from.
    pub source: String,
}

impl Words {
    /// What an exercise asks, as one text.
    ///
    /// ```
    /// use brimline::practice::{Session, Topic};
    /// use brimline::words::Words;
    /// let session = Session { seed: 1, topics: vec![Topic::Units], count: 1, ..Session::default() };
    /// let told = Words::english().exercise(&session.exercises()[0]);
    /// assert!(told.starts_with("How many"), "{told}");
    /// ```
    pub fn exercise(&self, exercise: &Exercise) -> String {
        exercise.asked.iter().map(|said| self.said(said, exercise)).collect::<Vec<_>>().join(" ")
    }

    /// One sentence of an exercise, or one of its choices.
    pub fn said(&self, said: &Said, exercise: &Exercise) -> String {
        let argument = |fact: &Fact| match fact {
            Fact::Entry(entry) => Argument::text(self.shown(entry)),
            Fact::Text(text) => Argument::text(text.clone()),
            Fact::Key(key) => Argument::text(self.say(key)),
            Fact::Count(count) => Argument::number(f64::from(*count), self.number(f64::from(*count))),
            Fact::Window(low, high) => Argument::text(self.window(*low, *high, exercise.system)),
        };
        let facts: Vec<(&str, Argument)> =
            said.facts.iter().map(|(name, fact)| (*name, argument(fact))).collect();
        self.tell(&said.key, &facts)
    }

    /// A number as typed; digits alone are grouped and marked as the language does.
    fn shown(&self, entry: &Entry) -> String {
        let digits = entry.text.bytes().all(|byte| byte.is_ascii_digit() || byte == b'.');
        match number::read(&entry.text, Marks::POINT) {
            Ok(value) if digits => {
                self.entry(&Entry::new(number::write(value, 12, self.marks()), &entry.unit))
            }
            _ => self.entry(entry),
        }
    }

    /// The choices of an exercise, in their order; empty where an amount is asked for.
    pub fn choices(&self, exercise: &Exercise) -> Vec<String> {
        match &exercise.key {
            Key::Amount(_) => Vec::new(),
            Key::Choice { options, .. } | Key::Several { options, .. } | Key::Order { options, .. } => {
                options.iter().map(|said| self.said(said, exercise)).collect()
            }
        }
    }

    /// The right answer, for the key on paper and for whoever gave up.
    pub fn right_answer(&self, exercise: &Exercise) -> String {
        let choices = self.choices(exercise);
        match &exercise.key {
            Key::Amount(amount) => self.amount(amount),
            Key::Choice { right, .. } => choices.get(*right).cloned().unwrap_or_default(),
            Key::Several { right, .. } | Key::Order { right, .. } => {
                // Steps are whole sentences; what belongs together is a list.
                let between = if matches!(exercise.key, Key::Order { .. }) { " " } else { "; " };
                right
                    .iter()
                    .filter_map(|index| choices.get(*index).cloned())
                    .collect::<Vec<_>>()
                    .join(between)
            }
        }
    }

    /// The exact amount to three digits and, where a measure was named, what is poured with it.
    fn amount(&self, amount: &Amount) -> String {
        let Some(unit) = unit(amount.unit) else { return self.number(amount.si) };
        if amount.to_digits() {
            return self.in_unit_full(amount.si, unit);
        }
        let exact = self.in_unit(amount.si, unit);
        let Some(poured) = amount.poured else { return exact };
        // Whole steps are round numbers: all of their digits count.
        let own = unit.from_si(poured.si);
        let whole = self.entry(&Entry::new(number::write(own, 12, self.marks()), unit.code));
        if whole == exact && (own - poured.count).abs() < 1e-6 {
            return exact;
        }
        let facts = [
            ("exact", Argument::text(exact)),
            ("poured", Argument::text(whole)),
            ("n", Argument::number(poured.count, self.number(poured.count))),
        ];
        self.tell("practice-answer-poured", &facts)
    }

    /// What came of an answer: right, or what to do instead and what could have happened.
    pub fn verdict(&self, exercise: &Exercise, reply: Reply, verdict: &Verdict) -> String {
        match verdict {
            Verdict::Right => self.say("practice-right"),
            Verdict::Rounded => {
                let exact = Argument::text(self.right_answer(exercise));
                self.tell("practice-rounded", &[("exact", exact)])
            }
            Verdict::Wrong { way: Some(Way::AsGiven), .. } => {
                let unit = match &exercise.key {
                    Key::Amount(amount) => self.symbol_of(amount.unit),
                    _ => Cow::default(),
                };
                self.tell("practice-as-given", &[("unit", Argument::text(unit))])
            }
            Verdict::Wrong { way, harm } => {
                let way = way.map(|way| self.say(&format!("practice-way-{}", way.code())));
                let way = way.unwrap_or_else(|| self.say("practice-wrong"));
                match harm {
                    Some(harm) => format!("{way} {}", self.say(&format!("practice-harm-{}", harm.code()))),
                    None => way,
                }
            }
            Verdict::NotRead(mistake) => match reply {
                Reply::Number { text, unit } => {
                    let label = self.say("practice-answer");
                    let told = self.trouble(&What::Number(*mistake), &label, None, (text, unit));
                    format!("{told} {}", self.say("practice-no-try"))
                }
                Reply::Chosen(_) => self.say("practice-choose"),
            },
            Verdict::NotAbove => {
                format!("{} {}", self.say("practice-above-nothing"), self.say("practice-no-try"))
            }
        }
    }

    /// A value of the workings. What is the answer has the digits that the answer has, in whatever unit.
    fn worked(&self, value: Value, exercise: &Exercise) -> String {
        let own = value.kind.unit(exercise.system);
        match (&exercise.key, own) {
            (Key::Amount(key), Some(own)) if key.to_digits() && key.is(value) => {
                self.in_unit_full(value.si, own)
            }
            _ => self.value(value, exercise.system),
        }
    }

    /// The workings, line by line, with their sources.
    pub fn workings(&self, exercise: &Exercise) -> Vec<Told> {
        let steps = exercise.steps.iter().map(|step| {
            let value = |(symbol, value): &(&str, Value)| {
                format!("{} = {}", self.equation(symbol), self.worked(*value, exercise))
            };
            let given = step.given.iter().map(value).collect::<Vec<_>>().join(", ");
            let facts = [
                ("what", self.say(step.formula.code)),
                ("symbol", self.equation(step.formula.result)),
                ("equation", self.equation(step.formula.equation)),
                ("given", given),
                ("result", self.worked(step.result, exercise)),
            ];
            let facts = facts.map(|(name, text)| (name, Argument::text(text)));
            Told { text: self.tell("practice-step", &facts), source: self.source(step.formula.source) }
        });
        let reasons = exercise.reasons.iter();
        // In the unit that was asked for, whatever the workings are shown in.
        let so = match exercise.key {
            Key::Amount(_) if !exercise.steps.is_empty() => {
                let text =
                    self.tell("practice-so", &[("answer", Argument::text(self.right_answer(exercise)))]);
                Some(Told { text, source: self.source(Source::DEFINITION) })
            }
            _ => None,
        };
        steps
            .chain(so)
            .chain(
                reasons.map(|one| Told {
                    text: self.said(&one.said, exercise),
                    source: self.source(one.source),
                }),
            )
            .collect()
    }
}
