//! Which machines take a use solution: its foam, its vapour, and what each allows for a full tank.

use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::floor::Reason;
use crate::chemistry::foam::{FoamVerdict, verdict};
use crate::form::cautions::panel;
use crate::form::rules::machine_window;
use crate::form::site::asked::in_use;
use crate::form::{Field, Outcome, Typed};
use crate::number::Marks;
use crate::site::{Machine, Product};
use crate::trade::governing::{Bound, Governs};
use crate::trade::label::Window;
use crate::units::{Kind, Volume, VolumeFraction};

/// What a full tank is given.
#[derive(Clone, Copy, Debug)]
pub(super) enum Dose {
    /// A share of whatever tank.
    Share(VolumeFraction),
    /// The same amount for every tank.
    PerTank(Volume),
    /// No liquid: a machine's own limits say nothing of it.
    Solid,
}

/// What the machines of a site say of a use solution.
#[derive(Clone, Debug, Default)]
pub(super) struct Machines {
    /// Whether one takes it.
    pub takes: bool,
    /// Whether one may: something is not known.
    pub unknown: bool,
    /// What speaks against it in each of the others.
    pub notes: Vec<Remark>,
}

/// Asks every machine in use.
pub(super) fn ask(typed: &Typed, product: &Product, dose: Dose, marks: Marks) -> Machines {
    let mut all = Machines::default();
    let burns = panel(product).burns();
    for machine in in_use(&typed.site.machines) {
        let foam = verdict(product.foam, machine.vacuum);
        let against = if burns && machine.vacuum {
            Some(told("remark-fit-burns", machine))
        } else if foam == FoamVerdict::Refuse {
            Some(told("remark-fit-foams", machine))
        } else {
            None
        };
        if let Some(against) = against {
            all.notes.push(against);
            continue;
        }
        match limits(typed, machine, dose, marks) {
            Limits::Leaves(remark) => all.notes.push(*remark),
            Limits::Unknown(code) => {
                all.unknown = true;
                all.notes.push(told(code, machine));
            }
            Limits::Keeps if foam == FoamVerdict::TestFirst => {
                all.unknown = true;
                all.notes.push(told("remark-fit-shake", machine));
            }
            Limits::Keeps => all.takes = true,
        }
    }
    if in_use(&typed.site.machines).next().is_none() {
        all.unknown = true;
        all.notes.push(Remark::new("remark-fit-no-machine", Weight::Warn));
    }
    all
}

fn told(code: &'static str, machine: &Machine) -> Remark {
    Remark::new(code, Weight::Warn).with("machine", Fact::Text(machine.name.clone()))
}

/// What a machine's own window says.
enum Limits {
    Keeps,
    Leaves(Box<Remark>),
    Unknown(&'static str),
}

fn limits(typed: &Typed, machine: &Machine, dose: Dose, marks: Marks) -> Limits {
    let mut own = typed.without_areas();
    own.ask.machine.clone_from(&machine.id);
    let mut aside = Outcome::default();
    let (tank, window) =
        (aside.need::<Volume>(&own, Field::Tank, marks), machine_window(&mut aside, &own, marks));
    let (Some(tank), Some(window)) = (tank, window) else {
        return Limits::Unknown("remark-fit-machine-unknown");
    };
    let full = match dose {
        Dose::Share(share) => share * tank,
        Dose::PerTank(amount) => amount,
        Dose::Solid if window.is_none() => return Limits::Keeps,
        Dose::Solid => return Limits::Unknown("remark-fit-machine-solid"),
    };
    let Some(Window { low, high }) = window else { return Limits::Keeps };
    if (Bound { by: Governs::Machine, window: Window { low, high } }).allows(full) {
        return Limits::Keeps;
    }
    let remark = told("remark-fit-machine-window", machine)
        .window("takes", low, high, Kind::Dose)
        .value("dose", Value::new(full, Kind::Dose));
    Limits::Leaves(Box::new(remark))
}

/// A remark with why a product does not fit a floor.
pub(super) fn because(remark: Remark, reason: &Reason) -> Remark {
    let remark = remark.with("why", Fact::Key(reason.key().to_owned()));
    match reason {
        Reason::Family(_) => remark,
        Reason::TooAcid(window) | Reason::TooAlkaline(window) => remark
            .value("low", Value::plain(window.low, Kind::Ph))
            .value("high", Value::plain(window.high, Kind::Ph)),
    }
}
