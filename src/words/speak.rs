//! Values, remarks, mistakes and sources as text.

use super::limit::End;
use super::{Argument, Words};
use crate::answer::{Fact, Remark, Value};
use crate::error::Mistake;
use crate::form::fill::LET_PASS;
use crate::form::{Field, What};
use crate::limits::OutOfRange;
use crate::number::{self, NumberMistake};
use crate::site::Entry;
use crate::source::{Source, Standing};
use crate::trade::label::{self, LabelMistake};
use crate::trade::reading::ReadingMistake;
use crate::units::{Dimension, Kind, System, Unit, unit};

/// Between a number and its unit: narrow, and no place to break a line.
const THIN_SPACE: char = '\u{202f}';

/// The digits that a dose, a tank mark or a catch test can support.
const DIGITS: i32 = 3;

impl Words {
    /// A number with as many digits as can be measured.
    pub fn number(&self, value: f64) -> String {
        number::write(value, DIGITS, self.marks())
    }

    /// A value in a unit where so many digits are asked for: 1.10 and not 1.1.
    pub fn in_unit_full(&self, si: f64, unit: &Unit) -> String {
        let number = number::write_full(unit.from_si(si), DIGITS, self.marks());
        format!("{number}{THIN_SPACE}{}", self.symbol(unit))
    }

    /// A number with all its digits, so that it reads back the same.
    fn exact(&self, value: f64) -> String {
        number::write(value, 12, self.marks())
    }

    /// Both ways to write a number that can be read in two.
    pub fn readings(&self, what: &What) -> Vec<String> {
        match what {
            What::Number(Mistake::Number(NumberMistake::TwoReadings { decimal, grouped })) => {
                [*decimal, *grouped].map(|value| self.exact(value)).into()
            }
            _ => Vec::new(),
        }
    }

    /// A value in a unit.
    pub fn in_unit(&self, si: f64, unit: &Unit) -> String {
        // Money has no unit here: its sign stands where the page knows it.
        let space = if unit.symbol.is_empty() { "" } else { "\u{202f}" };
        format!("{}{space}{}", self.number(unit.from_si(si)), self.symbol(unit))
    }

    /// What was typed, with the symbol of its unit; empty where nothing was.
    pub fn entry(&self, entry: &Entry) -> String {
        match entry.text.trim() {
            "" => String::new(),
            text => format!("{text}{THIN_SPACE}{}", self.symbol_of(&entry.unit)),
        }
    }

    /// A value in the reader's units; no number can be more than the limit that it came from, so that
    /// an unlimited one is a dash.
    pub fn value(&self, value: Value, system: System) -> String {
        match (value.kind, value.kind.unit(system)) {
            (Kind::Time, _) => self.time(value.si),
            // A nearly full tank must not read as a full one.
            (Kind::Fill, Some(unit)) if unit.from_si(value.si) >= 10.0 => {
                let number = number::write(unit.from_si(value.si), DIGITS + 1, self.marks());
                format!("{number}{THIN_SPACE}{}", self.symbol(unit))
            }
            (Kind::Money | Kind::AreaPrice | Kind::VolumePrice | Kind::Wage, Some(unit)) => {
                let amount = number::write_money(unit.from_si(value.si), self.marks());
                if unit.symbol.is_empty() {
                    amount
                } else {
                    format!("{amount}{THIN_SPACE}{}", self.symbol(unit))
                }
            }
            (_, Some(unit)) => self.in_unit(value.si, unit),
            (_, None) => self.number(value.si),
        }
    }

    /// What lies between two values: both, one where they read the same, or the end that is closed.
    pub fn window(&self, low: Value, high: Value, system: System) -> String {
        let (least, most) = (self.value(low, system), self.value(high, system));
        let ends = [("low", Argument::text(self.bare(low, system))), ("high", Argument::text(most.clone()))];
        if !high.si.is_finite() {
            self.tell("window-least", &[("low", Argument::text(least))])
        } else if low.si <= 0.0 {
            self.tell("window-most", &ends)
        } else if least == most {
            most
        } else {
            self.tell("window", &ends)
        }
    }

    /// The number of a value alone, where its unit stands beside it.
    pub fn bare(&self, value: Value, system: System) -> String {
        self.number(value.kind.unit(system).map_or(value.si, |unit| unit.from_si(value.si)))
    }

    /// Seconds below two minutes, then minutes, and hours and minutes from one hour on.
    fn time(&self, seconds: f64) -> String {
        if seconds < 120.0 && seconds > 0.0 {
            return format!("{}{THIN_SPACE}s", self.number(seconds));
        }
        let minutes = seconds / 60.0;
        if minutes < 60.0 {
            return format!("{}{THIN_SPACE}min", self.number(minutes));
        }
        let minutes = minutes.round();
        let (hours, rest) = ((minutes / 60.0).floor(), minutes % 60.0);
        format!("{}{THIN_SPACE}h {}{THIN_SPACE}min", self.number(hours), self.number(rest))
    }

    /// A remark's sentence.
    pub fn remark(&self, remark: &Remark, system: System) -> String {
        let text = self.remark_part(remark.code, remark, system);
        if remark.facts.iter().all(|(name, _)| *name != "let-pass") {
            return text;
        }
        // Its author knows the warning: its heading is enough.
        let what = self.remark_title(remark).unwrap_or(text);
        self.remark_part(LET_PASS, &remark.clone().with("what", Fact::Text(what)), system)
    }

    /// The short heading of a remark, where it has one.
    pub fn remark_title(&self, remark: &Remark) -> Option<String> {
        self.find(&format!("{}-title", remark.code))
    }

    fn remark_part(&self, key: &str, remark: &Remark, system: System) -> String {
        let values: Vec<(&str, Argument)> = remark
            .facts
            .iter()
            .filter_map(|(name, fact)| match fact {
                Fact::Value(value) => Some((*name, Argument::number(value.si, self.value(*value, system)))),
                Fact::Window(low, high) => Some((*name, Argument::text(self.window(*low, *high, system)))),
                Fact::Text(text) => Some((*name, Argument::text(text.clone()))),
                Fact::Day(day) => Some((*name, Argument::text(self.day(day)))),
                Fact::Key(_) => None,
            })
            .collect();
        // A fact that is itself a message may use the values beside it.
        let mut arguments = values.clone();
        for (name, fact) in &remark.facts {
            if let Fact::Key(key) = fact {
                arguments.push((name, Argument::text(self.tell(key, &values))));
            }
        }
        self.tell(key, &arguments)
    }

    /// Where something comes from.
    pub fn source(&self, source: Source) -> String {
        match source.standing {
            Standing::Published => source.cite.to_owned(),
            Standing::Definition => self.say("source-definition"),
            Standing::CommonPractice => self.say("source-common-practice"),
            Standing::Unverified => self.say("source-unverified"),
        }
    }

    /// What is wrong at a number field and how to mend it; `typed` is the text and the unit's code.
    pub fn trouble(&self, what: &What, label: &str, field: Option<Field>, typed: (&str, &str)) -> String {
        let label = ("field", Argument::text(label));
        match what {
            What::Number(mistake) => self.mistake(*mistake, label, field, typed),
            What::Label(mistake) => self.label_mistake(mistake),
            What::AboveTank => self.say("mistake-above-tank"),
            What::NoRoom => self.say("mistake-no-room"),
            What::Neat => self.say("mistake-neat"),
            What::TooWeak => self.say("mistake-too-weak"),
            What::NoLiquid => self.say("mistake-no-liquid"),
            What::PowderMeasure => self.say("mistake-powder-measure"),
            What::PacketTooBig => self.say("mistake-packet-too-big"),
            What::NotByHand => self.say("mistake-not-by-hand"),
            What::Ratios => self.say("mistake-ratios"),
            What::AboveTotal => self.say("mistake-above-total"),
            What::NoTip => self.say("mistake-no-tip"),
            What::LeastAboveMost => self.say("mistake-least-above-most"),
            What::OverlapTakesPath => self.say("mistake-overlap-takes-path"),
            What::NoRecord => self.tell("mistake-no-record", &[label]),
            What::TankEmpty => self.say("mistake-tank-empty"),
            What::NoOther => self.say("mistake-no-other"),
            What::Blocks => self.say("mistake-blocks"),
            What::Reading(mistake) => self.say(reading_key(*mistake)),
            What::NoFloor => self.say("mistake-no-floor"),
            What::FloorTarget => self.say("mistake-floor-target"),
            What::NoProduct => self.say("mistake-no-product"),
            What::Cas => self.say("mistake-cas"),
            What::NoSetting => self.say("mistake-no-setting"),
            What::FoamGrows => self.say("mistake-foam-grows"),
            What::Efficiency => self.say("mistake-efficiency"),
            What::NoMachine => self.say("mistake-no-machine"),
            What::MachineUnsound => self.say("mistake-machine-unsound"),
            What::ProductUnsound => self.say("mistake-product-unsound"),
            What::NothingCame => self.say("mistake-nothing-came"),
            What::Whole => self.say("mistake-whole"),
            What::NoArea => self.say("mistake-no-area"),
            What::TooManyFills => self.say("mistake-too-many-fills"),
            What::Date => self.say("mistake-date"),
            What::SameName => self.say("mistake-same-name"),
            What::Time => self.say("mistake-time"),
        }
    }

    fn mistake(
        &self,
        mistake: Mistake,
        label: (&str, Argument),
        field: Option<Field>,
        (text, code): (&str, &str),
    ) -> String {
        let typed = ("typed", Argument::text(text));
        match mistake {
            Mistake::Missing => self.tell("mistake-missing", &[label]),
            Mistake::Number(NumberMistake::Empty | NumberMistake::NotANumber) => {
                self.tell("mistake-not-a-number", &[label, typed])
            }
            Mistake::Number(NumberMistake::TwoReadings { decimal, grouped }) => {
                let [decimal, grouped] = [decimal, grouped].map(|value| Argument::text(self.exact(value)));
                self.tell("mistake-two-readings", &[label, typed, ("decimal", decimal), ("grouped", grouped)])
            }
            Mistake::Unit => self.tell("mistake-unit", &[label]),
            Mistake::Range(out) => {
                let (key, limit, end) = match out {
                    OutOfRange::Below(limit) => ("mistake-below", limit, End::Least),
                    OutOfRange::Above(limit) => ("mistake-above", limit, End::Most),
                };
                let bound = Argument::text(self.bound(limit, end, field, code));
                self.tell(key, &[label, ("bound", bound), typed])
            }
        }
    }

    /// What a label text that is offered means: its numbers, its units, and what it is an amount of.
    /// Words of the label's own stay.
    ///
    /// ```
    /// use brimline::words::{LANGUAGES, Words};
    /// let french = "number-decimal = ,\nmeant-made-up = { $amount } par { $other } de solution finie";
    /// let words = Words::of(&LANGUAGES[2], french).unwrap();
    /// assert_eq!(words.meant("1.5 mL per L made up"), "1,5 mL par L de solution finie");
    /// assert_eq!(words.meant("1,5 mL/L"), "1,5 mL/L");
    /// ```
    pub fn meant(&self, offered: &str) -> String {
        let Some((joint, one, other)) = label::apart(offered) else {
            // No text of ours has a comma: its numbers are as the label wrote them.
            return if offered.contains(',') { offered.to_owned() } else { self.equation(offered) };
        };
        let told = |side| Argument::text(self.meant(side));
        self.tell(joint.code(), &[("amount", told(one)), ("other", told(other))])
    }

    /// What is wrong with a label and how to mend it.
    pub fn label_mistake(&self, mistake: &LabelMistake) -> String {
        match mistake {
            LabelMistake::Unknown { word } => {
                self.tell(mistake.code(), &[("word", Argument::text(word.clone()))])
            }
            LabelMistake::Range(out) => {
                let (limit, bound, key) = match out {
                    OutOfRange::Below(limit) => (limit, limit.low, "label-too-weak"),
                    OutOfRange::Above(limit) => (limit, limit.high, "label-too-strong"),
                };
                let shown = match limit.dimension {
                    Dimension::VolumeFraction => "percent",
                    _ => "ml",
                };
                let bound = unit(shown).map(|unit| self.in_unit(bound, unit)).unwrap_or_default();
                self.tell(key, &[("bound", Argument::text(bound))])
            }
            other => self.say(other.code()),
        }
    }
}

fn reading_key(mistake: ReadingMistake) -> &'static str {
    match mistake {
        ReadingMistake::NoSuchBlock => "mistake-no-such-block",
        ReadingMistake::BlocksNotRising => "mistake-blocks",
        ReadingMistake::NoActive => "mistake-no-active",
        ReadingMistake::NoSpan => "mistake-no-span",
        ReadingMistake::BeyondCalibration => "mistake-beyond-calibration",
        ReadingMistake::NothingCaught => "mistake-nothing-caught",
        ReadingMistake::MoreThanWhole => "mistake-more-than-whole",
    }
}
