//! What the page shows, as far as the guide asks it: nothing is ticked off that the page itself can tell.

use super::{FirstFill, Step};
use crate::answer::{Remark, Weight};
use crate::coded::coded;
use crate::form::Typed;
use crate::form::cautions::LEFT_OUT;
use crate::form::fill::{Fill, RATIOS};
use crate::form::log::{Shift, end_of_shift};
use crate::site::log::{Current, When};

coded! {
    /// How far a step is, by what the page shows.
    Standing {
        /// Something is missing on the page, or cannot be read.
        Lacks = "lacks",
        /// A warning stands where the amount would stand.
        Stopped = "stopped",
        /// It is to be done.
        Open = "open",
        /// It is done, and Fill warns about what was chosen.
        Warned = "warned",
        /// It is done.
        Done = "done",
    }
}

/// What the page shows.
#[derive(Clone, Copy, Debug)]
pub struct Seen<'a> {
    /// What was typed.
    pub typed: &'a Typed,
    /// The fill that was worked out of it.
    pub fill: &'a Fill,
    /// The fills of the log as they stand, by time; none while it is not open.
    pub fills: &'a [Current],
    /// The name of this device in the log.
    pub device: &'a str,
    /// Now, where the clock can be read.
    pub now: Option<When>,
}

impl Standing {
    /// Whether the step is behind, with a warning or without.
    pub const fn is_done(self) -> bool {
        matches!(self, Self::Done | Self::Warned)
    }
}

impl Step {
    /// How far it can be.
    pub const fn standings(self) -> &'static [Standing] {
        use Standing::{Done, Lacks, Open, Stopped, Warned};
        match self {
            Self::Wear | Self::Shift => &[Lacks, Open, Done],
            Self::Machine => &[Lacks, Done],
            Self::Product | Self::Floor | Self::Level => &[Lacks, Stopped, Warned, Done],
            Self::Amount | Self::Record => &[Lacks, Stopped, Open, Done],
        }
    }

    /// The remarks of Fill that speak of what is chosen in this step.
    const fn warnings(self) -> &'static [&'static str] {
        match self {
            Self::Product => &[
                "remark-families-clash",
                "remark-not-neutral",
                "remark-flammable",
                "remark-extreme-ph",
                "remark-hazards-unknown",
                "remark-foam-refuse",
                "remark-foam-test-first",
                "remark-product-retired",
            ],
            Self::Floor => {
                &["remark-floor-does-not-fit", LEFT_OUT, "remark-floor-unknown", "remark-standard-other"]
            }
            Self::Level => &["remark-measure-too-big", "remark-measure-coarse", "remark-packets-level"],
            Self::Wear | Self::Machine | Self::Amount | Self::Record | Self::Shift => &[],
        }
    }
}

impl Seen<'_> {
    /// Whether something is wrong at an input whose name is this, or begins so.
    fn wrong(&self, names: &[&str]) -> bool {
        let troubles = &self.fill.outcome.troubles;
        troubles.iter().any(|trouble| names.iter().any(|name| trouble.name.starts_with(name)))
    }

    /// What Fill warns about in what is chosen in a step, the weightiest first.
    pub fn warned(&self, step: Step) -> impl Iterator<Item = &Remark> {
        let remarks = &self.fill.outcome.answer.remarks;
        let of = move |weight| {
            let own = move |one: &&Remark| one.weight == weight && step.warnings().contains(&one.code);
            remarks.iter().filter(own)
        };
        of(Weight::Stop).chain(of(Weight::Warn))
    }

    /// The last fill of the machine asked about that this device wrote down since `begun`, unless it was struck.
    fn recorded(&self, begun: &str) -> Option<&Current> {
        let (begun, machine) = (When::read(begun)?.instant(), &self.typed.machine()?.id);
        let mine = |one: &&Current| {
            *one.id.device == *self.device && *one.fill.machine.id == **machine && !one.fill.struck
        };
        self.fills.iter().rev().take_while(|one| one.when.instant() >= begun).find(mine)
    }

    /// The shift of the machine asked about that is to be ticked off.
    pub fn shift(&self) -> Option<Shift<'_>> {
        let machine = &self.typed.machine()?.id;
        let offered = end_of_shift(self.fills, self.now?);
        offered.into_iter().find(|shift| *shift.last.fill.machine.id == **machine)
    }
}

impl FirstFill {
    /// How far a step is, by what the page shows.
    ///
    /// ```
    /// use brimline::form::{Typed, fill::work};
    /// use brimline::number::Marks;
    /// use brimline::practice::first_fill::{FirstFill, Seen, Standing, Step};
    /// let typed = Typed::default();
    /// let fill = work(&typed, Marks::POINT);
    /// let seen = Seen { typed: &typed, fill: &fill, fills: &[], device: "station-1", now: None };
    /// let mut guide = FirstFill::begin("2026-03-07T18:30:00-05:00");
    /// assert_eq!(guide.standing(Step::Wear, &seen), Standing::Open);
    /// guide.put_on(typed.product().unwrap(), true);
    /// assert_eq!(guide.standing(Step::Wear, &seen), Standing::Done);
    /// assert_eq!(guide.standing(Step::Record, &seen), Standing::Open); // nothing is in the log
    /// ```
    pub fn standing(&self, step: Step, seen: &Seen) -> Standing {
        let set = |is: bool| match seen.warned(step).next().map(|remark| remark.weight) {
            _ if !is => Standing::Lacks,
            Some(Weight::Stop) => Standing::Stopped,
            Some(_) => Standing::Warned,
            None => Standing::Done,
        };
        let answer = &seen.fill.outcome.answer;
        let amount = |done: bool| match seen.fill.headline() {
            _ if done => Standing::Done,
            _ if answer.stopped() => Standing::Stopped,
            Some(_) => Standing::Open,
            None => Standing::Lacks,
        };
        match step {
            Step::Wear => match seen.typed.product() {
                Some(product) if self.is_on(product) => Standing::Done,
                Some(_) => Standing::Open,
                None => Standing::Lacks,
            },
            Step::Machine => set(seen.typed.machine().is_some() && !seen.wrong(&["machine-tank"])),
            Step::Product => set(seen.typed.product().is_some() && seen.fill.label.is_some()),
            Step::Floor => set(seen.typed.floor().is_some()),
            Step::Level => {
                let wrong = seen.wrong(&["fill-level", "measure-", RATIOS, "machine-bottle", "machine-tank"]);
                set(seen.typed.machine().is_some() && seen.typed.measure().is_some() && !wrong)
            }
            // The amount must stand there to be read, whatever was answered before.
            Step::Amount => {
                let right = self.reason.first().is_some_and(|one| one.is_right());
                amount(right && !answer.stopped() && seen.fill.headline().is_some())
            }
            Step::Record => amount(seen.recorded(&self.begun).is_some()),
            Step::Shift => match seen.shift() {
                Some(shift) if shift.undone().is_empty() => Standing::Done,
                Some(_) => Standing::Open,
                None => Standing::Lacks,
            },
        }
    }
}
