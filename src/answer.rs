//! An answer as data: figures, the steps that led to them, and remarks. Views draw it; they never
//! compute.

use crate::source::Source;
use crate::units::{Kind, Quantity};

/// A value and what it is, from which a view chooses the unit and the digits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Value {
    /// In SI units; a plain number for ratios and counts.
    pub si: f64,
    /// What it is.
    pub kind: Kind,
}

impl Value {
    /// A quantity shown as `kind`.
    pub fn new<Q: Quantity>(quantity: Q, kind: Kind) -> Self {
        debug_assert_eq!(kind.dimension(), Some(Q::DIMENSION));
        Self { si: quantity.si(), kind }
    }

    /// A plain number: a ratio or a count.
    pub fn plain(number: f64, kind: Kind) -> Self {
        debug_assert_eq!(kind.dimension(), None);
        Self { si: number, kind }
    }
}

/// A value with its stable name, which files, tests and assistive tools rely on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figure {
    /// From [`crate::form::names`].
    pub name: &'static str,
    /// The value.
    pub value: Value,
}

/// A formula, as the workings show it.
#[derive(Debug)]
pub struct Formula {
    /// The stable name, and the key of its explanation in words.
    pub code: &'static str,
    /// The equation, in symbols.
    pub equation: &'static str,
    /// The symbol of the result.
    pub result: &'static str,
    /// Where it comes from.
    pub source: Source,
}

/// One formula with its numbers.
#[derive(Clone, Debug)]
pub struct Step {
    /// The formula.
    pub formula: &'static Formula,
    /// Symbol and number of each input.
    pub given: Vec<(&'static str, Value)>,
    /// The result.
    pub result: Value,
    /// The name of the machine that it is about, where there are several; empty where there is one.
    pub about: String,
}

/// How much a remark weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// Stands where the amount would stand.
    Stop,
    /// Stands beside the amount and says what to do.
    Warn,
    /// What was taken for granted.
    Assumed,
}

/// A fact inside a remark's sentence.
#[derive(Clone, Debug, PartialEq)]
pub enum Fact {
    /// A value, shown in the reader's units.
    Value(Value),
    /// The least and the greatest, of one kind; a least of nothing and an infinite greatest are open
    /// ends.
    Window(Value, Value),
    /// A key of the language file.
    Key(String),
    /// What the user wrote: a name.
    Text(String),
    /// A day, as ISO 8601 has it, shown as the reader's language has it.
    Day(String),
}

/// A warning or an assumption, with a stable code that is the key of its words.
#[derive(Clone, Debug, PartialEq)]
pub struct Remark {
    /// The stable code.
    pub code: &'static str,
    /// How much it weighs.
    pub weight: Weight,
    /// Placeholder and fact.
    pub facts: Vec<(&'static str, Fact)>,
}

impl Remark {
    /// One without facts.
    pub fn new(code: &'static str, weight: Weight) -> Self {
        Self { code, weight, facts: Vec::new() }
    }

    /// With one more fact.
    #[must_use]
    pub fn with(mut self, placeholder: &'static str, fact: Fact) -> Self {
        self.facts.push((placeholder, fact));
        self
    }

    /// With one more window.
    #[must_use]
    pub fn window<Q: Quantity>(self, placeholder: &'static str, low: Q, high: Q, kind: Kind) -> Self {
        self.with(placeholder, Fact::Window(Value::new(low, kind), Value::new(high, kind)))
    }

    /// With one more value.
    #[must_use]
    pub fn value(self, placeholder: &'static str, value: Value) -> Self {
        self.with(placeholder, Fact::Value(value))
    }
}

/// What a view shows.
#[derive(Clone, Debug, Default)]
pub struct Answer {
    /// Every computed figure.
    pub figures: Vec<Figure>,
    /// The workings, in order.
    pub steps: Vec<Step>,
    /// Warnings and assumptions.
    pub remarks: Vec<Remark>,
}

impl Answer {
    /// The value with this name.
    pub fn get(&self, name: &str) -> Option<Value> {
        self.figures.iter().find(|figure| figure.name == name).map(|figure| figure.value)
    }

    /// Adds a figure.
    pub fn figure(&mut self, name: &'static str, value: Value) {
        self.figures.push(Figure { name, value });
    }

    /// Puts another value in the place of a figure that it has.
    pub fn replace(&mut self, name: &str, value: Value) {
        for figure in self.figures.iter_mut().filter(|figure| figure.name == name) {
            figure.value = value;
        }
    }

    /// Adds a step.
    pub fn step(&mut self, formula: &'static Formula, given: &[(&'static str, Value)], result: Value) {
        self.steps.push(Step { formula, given: given.to_vec(), result, about: String::new() });
    }

    /// Adds a remark.
    pub fn remark(&mut self, remark: Remark) {
        self.remarks.push(remark);
    }

    /// The remarks of one weight.
    pub fn of_weight(&self, weight: Weight) -> impl Iterator<Item = &Remark> {
        self.remarks.iter().filter(move |remark| remark.weight == weight)
    }

    /// Whether something must stand where the amount would stand.
    pub fn stopped(&self) -> bool {
        self.of_weight(Weight::Stop).next().is_some()
    }
}
