//! The areas of a shift, each with its machine, product and setting.

use super::fleet::{Fitted, Wanted};
use crate::form::flow::target_of;
use crate::form::{Field, Outcome, Typed, What};
use crate::number::Marks;
use crate::site;
use crate::trade::alone::{Misfit, misfit};
use crate::trade::coverage::application_rate;
use crate::trade::label::Window;
use crate::trade::setting::{Choice, Fit, choose, fit};
use crate::trade::shift::Task;
use crate::units::{ApplicationRate, Area, Duration, Frequency, Length, Productivity, Volume};

/// One area of the shift, worked out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// Its place in the site's list.
    pub area: usize,
    /// The place of its machine in the site's list.
    pub machine: usize,
    /// The place of its product in the site's list.
    pub product: usize,
    /// The number of the flow setting.
    pub setting: usize,
    /// What that lays down in one pass, on the mean of a tank.
    pub rate: ApplicationRate,
    /// How it meets the floor's target.
    pub fit: Fit,
    /// How often the machine passes over it.
    pub passes: f64,
    /// The work on it.
    pub task: Task,
    /// Done by this time of the shift.
    pub closes: Option<Duration>,
    /// Why its machine does not work there on its own.
    pub misfit: Option<Misfit>,
    /// How often it is cleaned.
    pub often: Option<Frequency>,
}

impl Row {
    /// Its size.
    pub fn size(&self) -> Area {
        self.task.size
    }

    /// Time at the floor.
    pub fn run(&self) -> Duration {
        self.task.size / self.task.productivity
    }

    /// Solution spent.
    pub fn solution(&self) -> Volume {
        self.task.spent * self.task.size
    }
}

/// Which machines and products the areas take that `counts` says.
pub(super) fn wanted(typed: &Typed, counts: impl Fn(&site::Area) -> bool) -> Vec<Wanted> {
    let products = vec![false; typed.site.products.len()];
    let mut wanted = vec![Wanted { taken: false, products }; typed.site.machines.len()];
    for area in typed.site.areas.iter().filter(|area| counts(area)) {
        let (machine, product) = (machine_index(typed, area), product_index(typed, area));
        if let Some(wanted) = machine.and_then(|machine| wanted.get_mut(machine)) {
            wanted.taken = true;
            if let Some(taken) = product.and_then(|product| wanted.products.get_mut(product)) {
                *taken = true;
            }
        }
    }
    wanted
}

fn machine_index(typed: &Typed, area: &site::Area) -> Option<usize> {
    let own = typed.machine_of(area)?;
    typed.site.machines.iter().position(|one| one.id == own.id)
}

fn product_index(typed: &Typed, area: &site::Area) -> Option<usize> {
    let own = typed.product_of(area)?;
    typed.site.products.iter().position(|one| one.id == own.id)
}

/// What all rows are read with.
pub(super) struct Reader<'a> {
    typed: &'a Typed,
    marks: Marks,
    fleet: &'a [Option<Fitted>],
    /// The target of each floor of the site.
    targets: Vec<Option<Window<ApplicationRate>>>,
    mop: Option<Productivity>,
    /// A setting that is taken on every floor, from 0.
    forced: Option<usize>,
}

impl<'a> Reader<'a> {
    pub(super) fn new(
        typed: &'a Typed,
        marks: Marks,
        fleet: &'a [Option<Fitted>],
        mop: Option<Productivity>,
        forced: Option<usize>,
    ) -> Self {
        let targets = typed.site.floors.iter().map(|floor| target_of(floor, marks)).collect();
        Self { typed, marks, fleet, targets, mop, forced }
    }

    /// One area; mistakes are noted.
    pub(super) fn row(&self, out: &mut Outcome, index: usize) -> Option<Row> {
        let (typed, marks) = (self.typed, self.marks);
        let area = typed.site.areas.get(index)?;
        let at = |what: &str| format!("area-{}-{what}", index + 1);
        let size = out.need::<Area>(typed, Field::AreaSize(index), marks);
        // What is wrong with these is said, and the shift worked out without them.
        let mut may = |field: Field| out.may::<Duration>(typed, field, marks).flatten();
        let opens = may(Field::AreaOpens(index)).unwrap_or(Duration::ZERO);
        let closes = may(Field::AreaCloses(index));
        let way = may(Field::AreaWay(index)).unwrap_or(Duration::ZERO);
        let lane = out.may::<Length>(typed, Field::AreaLane(index), marks).flatten();
        let often = out.may::<Frequency>(typed, Field::AreaFrequency(index), marks).flatten();
        let floor = typed.site.floors.iter().position(|floor| floor.id == area.floor);
        let target = floor.and_then(|floor| self.targets[floor]);
        if target.is_none() {
            out.trouble(at("floor"), if floor.is_none() { What::NoFloor } else { What::FloorTarget });
        }
        let (machine, product) = (machine_index(typed, area), product_index(typed, area));
        if product.is_none() {
            out.trouble(at("product"), What::NoProduct);
        }
        let fitted = machine.and_then(|machine| self.fleet[machine].as_ref());
        if machine.is_none() {
            out.trouble(at("machine"), What::NoMachine);
        } else if fitted.is_none() && !area.machine.is_empty() {
            out.trouble(at("machine"), What::MachineUnsound);
        }
        let (size, target, machine, product, fitted) = (size?, target?, machine?, product?, fitted?);
        let Some(strength) = fitted.strengths[product] else {
            if !area.product.is_empty() || !area.machine.is_empty() {
                out.trouble(at("product"), What::ProductUnsound);
            }
            return None;
        };
        let Choice { index: setting, fit, .. } = self.choice(fitted, target)?;
        let flow = fitted.flows[setting];
        let mean = fitted.fading.map_or(flow, |fading| fading.mean(flow));
        let rate = application_rate(mean, fitted.motion.passing);
        let passes = area.soil.passes();
        let mopping = if area.loose && !fitted.sweeps { self.mop.map(|mop| size / mop) } else { None };
        let task = Task {
            size,
            spent: rate * (fitted.motion.spent * passes),
            productivity: fitted.pace / passes,
            product,
            strength: strength.aim,
            opens,
            way,
            mopping: mopping.unwrap_or(Duration::ZERO),
        };
        let misfit = fitted.alone.and_then(|asks| misfit(asks, lane, area.around));
        let setting = setting + 1;
        Some(Row { area: index, machine, product, setting, rate, fit, passes, task, closes, misfit, often })
    }

    fn choice(&self, fitted: &Fitted, target: Window<ApplicationRate>) -> Option<Choice> {
        let motion = fitted.motion;
        match self.forced {
            // A machine without that setting keeps to what the floor needs; it is said at the field.
            Some(index) if index < fitted.flows.len() => {
                let rate = application_rate(fitted.flows[index], motion.passing);
                Some(Choice { index, fit: fit(rate, target), speed: None })
            }
            _ => choose(&fitted.flows, target, motion.speed, motion.width),
        }
    }
}
