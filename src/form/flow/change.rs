//! What to change when no setting serves: the speed, the passes, the setting.

use super::{Motion, Row};
use crate::answer::{Answer, Remark, Value, Weight};
use crate::form::names;
use crate::trade::coverage::speed_for;
use crate::trade::formula;
use crate::trade::label::Window;
use crate::trade::setting::{Choice, Fit, Passes, next_lower, passes};
use crate::units::{ApplicationRate, Flow, Kind, Speed};

/// What the advice is worked out from.
pub(super) struct Situation<'a> {
    pub rows: &'a [Row],
    pub motion: Motion,
    pub target: Window<ApplicationRate>,
    pub choice: Choice,
}

/// The number of a setting, as people count.
fn number(index: usize) -> Value {
    Value::plain((index + 1) as f64, Kind::Count)
}

impl Situation<'_> {
    /// Says what would meet the target, where the chosen setting does not.
    pub(super) fn note(&self, answer: &mut Answer) {
        let Some(speed) = self.choice.speed else { return };
        let short = self.choice.fit == Fit::Short;
        let bound = if short { self.target.low } else { self.target.high };
        self.speed_step(answer, self.choice.index, bound, speed);
        answer.figure(names::FLOW_SPEED, Value::new(speed, Kind::Speed));
        let code = if short { "remark-flow-short" } else { "remark-flow-too-wet" };
        let passing = self.motion.passing;
        let remark = Remark::new(code, Weight::Warn)
            .value("setting", number(self.choice.index))
            .value("rate", Value::new(self.rows[self.choice.index].rate, Kind::Rate))
            .window("target", self.target.low, self.target.high, Kind::Rate)
            .value("speed", Value::new(speed, Kind::Speed))
            .window("flow", self.target.low * passing, self.target.high * passing, Kind::Flow);
        answer.remark(remark);
        let rates: Vec<ApplicationRate> = self.rows.iter().map(|row| row.rate).collect();
        if short {
            self.passes(answer, passes(&rates, self.choice.index, self.target));
        } else {
            let flows: Vec<Flow> = self.rows.iter().map(|row| row.flow).collect();
            let Some(lower) = next_lower(&flows, self.choice.index) else { return };
            self.lower(answer, lower);
            let found = passes(&rates, lower, self.target);
            self.passes(answer, found.filter(|passes| passes.fit == Fit::Meets));
        }
    }

    fn speed_step(&self, answer: &mut Answer, index: usize, bound: ApplicationRate, speed: Speed) {
        let given = [
            ("Q", Value::new(self.rows[index].flow, Kind::Flow)),
            ("a", Value::new(bound, Kind::Rate)),
            ("w − o", Value::new(self.motion.width, Kind::Width)),
        ];
        answer.step(&formula::SPEED_FOR, &given, Value::new(speed, Kind::Speed));
    }

    /// A lower setting, slower.
    fn lower(&self, answer: &mut Answer, index: usize) {
        let speed = |rate| speed_for(self.rows[index].flow, rate, self.motion.width);
        let (slowest, fastest) = (speed(self.target.high), speed(self.target.low));
        self.speed_step(answer, index, self.target.low, fastest);
        answer.remark(Remark::new("remark-flow-lower", Weight::Warn).value("setting", number(index)).window(
            "speed",
            slowest,
            fastest,
            Kind::Speed,
        ));
    }

    /// More passes than one.
    fn passes(&self, answer: &mut Answer, found: Option<Passes>) {
        let Some(passes) = found else { return };
        let (setting, count) = (number(passes.index), Value::plain(passes.count, Kind::Count));
        let fits = passes.fit == Fit::Meets;
        if fits {
            let given = [
                ("a₀", Value::new(self.target.low, Kind::Rate)),
                ("a", Value::new(self.rows[passes.index].rate, Kind::Rate)),
            ];
            answer.figure(names::FLOW_PASSES, count);
            answer.figure(names::FLOW_PASSES_SETTING, setting);
            answer.step(&formula::PASSES, &given, count);
        }
        let code = if fits { "remark-flow-passes" } else { "remark-flow-passes-over" };
        answer.remark(
            Remark::new(code, Weight::Warn)
                .value("setting", setting)
                .value("n", count)
                .value("total", Value::new(passes.total, Kind::Rate)),
        );
    }
}
