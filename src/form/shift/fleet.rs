//! The machines of a shift, each read with the products that it takes there.

use super::strengths::{Strength, strength};
use crate::form::flow::{Fading, Motion, flows, motion};
use crate::form::{Field, Outcome, Typed};
use crate::number::Marks;
use crate::trade::alone::Asks;
use crate::trade::coverage::productivity;
use crate::trade::recovery::{dumped_share, fill_for};
use crate::trade::shift::Battery;
use crate::units::{Duration, Flow, Length, Productivity, Volume, VolumeFraction};

/// A machine, read.
#[derive(Clone, Debug)]
pub(super) struct Fitted {
    pub tank: Volume,
    /// How far it may be filled for its recovery tank.
    pub filled_to: Volume,
    pub recovery: Option<Volume>,
    /// The part of what is spent that ends in the recovery tank.
    pub dumped: f64,
    pub motion: Motion,
    pub efficiency: VolumeFraction,
    /// Floor cleaned a time in one pass.
    pub pace: Productivity,
    /// The flow of each setting, with a full tank where gravity feeds the machine.
    pub flows: Vec<Flow>,
    /// How it fades, where no pump feeds it.
    pub fading: Option<Fading>,
    pub battery: Option<Battery>,
    /// What it asks of a place before it works alone there; none where somebody walks with it.
    pub alone: Option<Asks>,
    pub sweeps: bool,
    /// The strength of each product of the site that it takes.
    pub strengths: Vec<Option<Strength>>,
}

/// What a shift takes of one machine.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Wanted {
    /// Whether any area takes it.
    pub taken: bool,
    /// Whether an area takes it with each product of the site.
    pub products: Vec<bool>,
}

/// The machines of the site that areas take, and the one asked about, each as it was read.
///
/// * `bare`: what was typed, without the areas.
/// * `wanted`: a row a machine of the site.
///
/// Mistakes of the machine and the product asked about are noted at their fields; others have none on this
/// view, so that an area which takes them tells of it.
pub(super) fn fleet(out: &mut Outcome, bare: &Typed, wanted: &[Wanted], marks: Marks) -> Vec<Option<Fitted>> {
    let asked = (bare.machine().map(|one| &one.id), bare.product().map(|one| &one.id));
    let (mut fleet, mut remarks) = (Vec::new(), Vec::new());
    for (machine, wanted) in bare.site.machines.iter().zip(wanted) {
        let here = asked.0 == Some(&machine.id);
        if !(here || wanted.taken) {
            fleet.push(None);
            continue;
        }
        let mut own = bare.clone();
        own.ask.machine.clone_from(&machine.id);
        let mut aside = Outcome::default();
        let mut fitted = machine_of(if here { &mut *out } else { &mut aside }, &own, marks);
        for (index, product) in bare.site.products.iter().enumerate() {
            let chosen = asked.1 == Some(&product.id);
            let taken = wanted.products.get(index).is_some_and(|taken| *taken);
            // What is asked about is read in any case: its mistakes stand at its fields.
            if !(taken || here && chosen) {
                continue;
            }
            own.ask.product.clone_from(&product.id);
            let mut aside = Outcome::default();
            let note = if here && chosen { &mut *out } else { &mut aside };
            let tank = own.machine().and_then(|one| one.tank.read(Field::Tank.limit(), marks).ok());
            let strength = tank.and_then(|tank| strength(note, &own, tank, marks));
            if let Some(fitted) = &mut fitted {
                fitted.strengths[index] = strength;
            }
            remarks.append(&mut aside.answer.remarks);
            out.answer.steps.append(&mut aside.answer.steps);
        }
        fleet.push(fitted);
    }
    for remark in remarks {
        if !out.answer.remarks.contains(&remark) {
            out.answer.remark(remark);
        }
    }
    fleet
}

/// The machine asked about; mistakes are noted.
fn machine_of(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Fitted> {
    let tank = out.need::<Volume>(typed, Field::Tank, marks);
    let motion = motion(out, typed, marks);
    let efficiency = out.need::<VolumeFraction>(typed, Field::Efficiency, marks);
    let flows = flows(out, typed, marks);
    let recovery = out.may::<Volume>(typed, Field::Recovery, marks);
    let pick_up = out.may::<VolumeFraction>(typed, Field::PickUp, marks);
    let lasts = out.may::<Duration>(typed, Field::Battery, marks);
    // A battery that is charged in no time would be no limit.
    let charges = matches!(lasts, Some(Some(_)));
    let charge = if charges {
        out.need::<Duration>(typed, Field::Charge, marks).map(Some)
    } else {
        out.may::<Duration>(typed, Field::Charge, marks)
    };
    let fading = Fading::read(out, typed, marks);
    let least = out.may::<Length>(typed, Field::LaneLeast, marks);
    let most = out.may::<Length>(typed, Field::LaneMost, marks);
    let machine = typed.machine()?;
    let (tank, motion, efficiency, recovery) = (tank?, motion?, efficiency?, recovery?);
    let dumped =
        pick_up?.map_or(1.0, |pick_up| dumped_share(pick_up, VolumeFraction::new(1.0 - motion.spent)));
    let charge = charge?.unwrap_or(Duration::ZERO);
    let asks = Asks { least: least?, most: most?, around: !machine.needs.trim().is_empty() };
    Some(Fitted {
        tank,
        filled_to: recovery.map_or(tank, |recovery| fill_for(tank, recovery, dumped)),
        recovery,
        dumped,
        motion,
        efficiency,
        pace: productivity(motion.passing, efficiency),
        flows: flows?,
        fading,
        battery: lasts?.map(|lasts| Battery { lasts, charge }),
        alone: machine.unattended.then_some(asks),
        sweeps: machine.sweeps,
        strengths: vec![None; typed.site.products.len()],
    })
}
