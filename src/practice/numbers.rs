//! Numbers that a person plays with: how much product a ratio is in a tank, and how much solution lies on a floor.

mod film;
mod input;
mod mix;
mod units;

pub use film::{Film, SHEET, tile};
pub use input::Input;
pub use mix::{Mix, Way as MixWay};

use crate::coded::coded;
use crate::document::document;
use crate::form::{Outcome, What};
use crate::limits::{self, Limit};
use crate::number::Marks;
use crate::site::{Entry, Machine, Measure, Site};
use crate::units::{Plain, Quantity, System};

coded! {
    /// Where the amount on the floor comes from.
    #[derive(Default)]
    Laid {
        /// It is typed.
        #[default]
        Rate = "rate",
        /// A flow setting, a speed and a path make it.
        Setting = "setting",
    }
}

document! {
    /// What is typed, as it was typed.
    Numbers {
        /// Whose units they stand in, where nobody chose another one.
        system: System,
        /// The machine whose tank it is, by its id; none where the tank was typed.
        machine: String,
        /// What the tank holds.
        tank: Entry,
        /// How full it is.
        level: Entry,
        /// Parts of water to one part of product, with or without "1:" before it.
        parts: String,
        /// The measure whose step it is, by its id; none where the step was typed.
        measure: String,
        /// One step of the cup.
        step: Entry,
        /// Where the amount on the floor comes from.
        laid: Laid,
        /// What is laid on the floor.
        rate: Entry,
        /// The machine whose setting it is, a space, and the number of the setting; none where it was typed.
        setting: String,
        /// The flow of the setting.
        flow: Entry,
        /// How fast the machine moves.
        speed: Entry,
        /// How wide it cleans.
        path: Entry,
        /// How much of that two passes share.
        overlap: Entry,
    }
}

/// The parts of water that one press chooses.
pub const USUAL_PARTS: [u32; 5] = [16, 32, 64, 128, 256];

/// The least and the most parts of the slider.
pub const SLIDER: (u32, u32) = (1, 512);

/// What is seen of the numbers.
#[derive(Clone, Debug, Default)]
pub struct Seen {
    /// Figures, workings, remarks, and what stands in the way.
    pub outcome: Outcome,
    /// The cup and the tank; none where a number of them is missing.
    pub mix: Option<Mix>,
    /// The film on the floor; none where a number of it is missing.
    pub film: Option<Film>,
}

impl Numbers {
    /// What the play begins with: the tank, the step and the first setting of a site, 1 part to 64, and a usual rate.
    ///
    /// * `site`: a site; what it lacks is taken as a 10 gal or 40 L tank and a step of 1 fl oz or 10 mL.
    /// * `machine`, `measure`: ids of the ones to begin with.
    ///
    /// ```
    /// use brimline::number::Marks;
    /// use brimline::practice::Numbers;
    /// use brimline::site::demo;
    /// use brimline::units::System;
    /// let numbers = Numbers::begin(&demo(), "walk-behind", "jug", System::Us);
    /// assert_eq!(numbers.tank.text, "10");
    /// assert!(numbers.work(System::Us, Marks::POINT).outcome.troubles.is_empty());
    /// ```
    pub fn begin(site: &Site, machine: &str, measure: &str, system: System) -> Self {
        let (tank, step, rate) = match system {
            System::Us => (("10", "gal_us"), ("1", "floz_us"), ("1.2", "gal_us_per_1000ft2")),
            System::Metric => (("40", "l"), ("10", "ml"), ("50", "ml_per_m2")),
            System::Imperial => (("10", "gal_imp"), ("1", "floz_imp"), ("1", "gal_imp_per_1000ft2")),
        };
        let entry = |(text, unit): (&str, &str)| Entry::new(text, unit);
        let (flow, speed, path, overlap) = match system {
            System::Us => (("0.3", "gal_us_per_min"), ("2.5", "mph"), ("20", "in"), ("", "in")),
            System::Metric => (("1", "l_per_min"), ("4", "km_per_h"), ("50", "cm"), ("", "cm")),
            System::Imperial => (("0.25", "gal_imp_per_min"), ("2.5", "mph"), ("20", "in"), ("", "in")),
        };
        let mut out = Self {
            system,
            tank: entry(tank),
            level: Entry::new("100", "percent"),
            parts: "64".to_owned(),
            step: entry(step),
            rate: entry(rate),
            flow: entry(flow),
            speed: entry(speed),
            path: entry(path),
            overlap: entry(overlap),
            ..Self::default()
        };
        if let Some(one) = site.machines.iter().find(|one| one.id == machine) {
            out.take_machine(one);
            out.take_setting(one, 1);
        }
        if let Some(one) = site.measures.iter().find(|one| one.id == measure && one.dispenser.steps()) {
            out.take_measure(one);
        }
        out
    }

    /// Whether nobody has played yet.
    pub fn is_untouched(&self) -> bool {
        self.tank.unit.is_empty()
    }

    /// Takes the tank of a machine, as it stands there: [`Numbers::put_into`] brings it into the reader's units.
    pub fn take_machine(&mut self, machine: &Machine) {
        self.machine.clone_from(&machine.id);
        self.tank.clone_from(&machine.tank);
    }

    /// Takes the step of a measure.
    pub fn take_measure(&mut self, measure: &Measure) {
        self.measure.clone_from(&measure.id);
        self.step.clone_from(&measure.step);
    }

    /// Takes a flow setting of a machine with its speed and path; nothing where it has no such setting.
    ///
    /// * `number`: of the setting, from 1.
    pub fn take_setting(&mut self, machine: &Machine, number: usize) {
        let Some(flow) = number.checked_sub(1).and_then(|index| machine.settings.get(index)) else { return };
        self.setting = format!("{} {number}", machine.id);
        self.flow.clone_from(flow);
        self.speed.clone_from(&machine.speed);
        self.path.clone_from(&machine.path);
        self.overlap.clone_from(&machine.overlap);
    }

    /// Types into a field; what was taken from a record is then no longer that record's.
    pub fn write(&mut self, input: Input, text: String) {
        input.of_mut(self).text = text;
        self.let_go(input);
    }

    /// Chooses the unit of a field.
    pub fn choose_unit(&mut self, input: Input, code: String) {
        input.of_mut(self).unit = code;
        self.let_go(input);
    }

    fn let_go(&mut self, input: Input) {
        match input {
            Input::Tank => self.machine.clear(),
            Input::Step => self.measure.clear(),
            Input::Flow | Input::Speed | Input::Path | Input::Overlap => self.setting.clear(),
            Input::Level | Input::Rate => {}
        }
    }

    /// The parts of water; `1:64`, `1 to 64` and `64` say the same.
    ///
    /// # Errors
    /// As of a number within [`limits::PARTS`].
    pub fn parts(&self, marks: Marks) -> Result<f64, crate::error::Mistake> {
        let text = self.parts.trim();
        let ratio = text.strip_prefix('1').map(str::trim_start);
        let after = ratio.and_then(|rest| rest.strip_prefix(':').or_else(|| rest.strip_prefix("to ")));
        Entry::new(after.unwrap_or(text).trim(), "one").read::<Plain>(&limits::PARTS, marks).map(Quantity::si)
    }

    /// Works all of it out, each part by itself: what is wrong with the tank does not hide the film.
    ///
    /// Figures: [`crate::form::names`] with `numbers.`.
    ///
    /// * `system`: whose tile is drawn; `marks`: how the texts are read.
    pub fn work(&self, system: System, marks: Marks) -> Seen {
        let mut seen = Seen::default();
        seen.mix = mix::work(self, &mut seen.outcome, marks);
        seen.film = film::work(self, &mut seen.outcome, system, marks);
        seen
    }

    /// Reads a field; a mistake is noted at it.
    fn read<Q: Quantity>(&self, out: &mut Outcome, input: Input, marks: Marks) -> Option<Q> {
        self.within(out, input, input.field().limit(), marks)
    }

    fn within<Q: Quantity>(
        &self,
        out: &mut Outcome,
        input: Input,
        limit: &'static Limit,
        marks: Marks,
    ) -> Option<Q> {
        let read = input.of(self).read(limit, marks);
        read.map_err(|mistake| out.trouble(input.name(), What::Number(mistake))).ok()
    }
}
