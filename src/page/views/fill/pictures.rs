//! A fill to look at: the jug and the tank, and the windows of all rules.

use super::amount::step_unit;
use crate::answer::Value;
use crate::form::fill::Fill;
use crate::form::{Field, names};
use crate::page::drawing::{JugAndTank, WindowRow, Windows, jug_and_tank, windows};
use crate::page::shared::Shared;
use crate::site::Dispenser;
use crate::trade::governing::Governs;
use crate::units::{Kind, Volume};
use yew::prelude::*;

/// The jug and the tank.
pub fn drawing(shared: &Shared, fill: &Fill) -> Html {
    let answer = &fill.outcome.answer;
    // Nothing is measured in a jug where the machine or the wall unit draws it, nor a powder.
    let dose = answer.get(names::FILL_DOSE).filter(|_| !fill.dispenser.draws());
    let Some(dose) = dose else { return Html::default() };
    let tank = Field::Tank.entry(&shared.typed);
    let tank = tank.and_then(|tank| tank.read::<Volume>(Field::Tank.limit(), shared.marks()).ok());
    let (Some(tank), Some(total)) = (tank, answer.get(names::FILL_TOTAL)) else { return Html::default() };
    let dose = answer.get(names::FILL_ROUNDED).unwrap_or(dose);
    let step = match (answer.get(names::FILL_COUNT), fill.dispenser) {
        (Some(count), Dispenser::Cup) => Some(Value { si: dose.si / count.si, ..dose }),
        _ => None,
    };
    let unit = step_unit(shared).map(|unit| unit.code);
    jug_and_tank(shared, &JugAndTank { tank: Value::new(tank, Kind::Fill), total, dose, step, unit })
}

/// The windows of all rules on one axis.
pub fn rules(shared: &Shared, fill: &Fill) -> Html {
    let answer = &fill.outcome.answer;
    let powder = || answer.get(names::FILL_MASS_ROUNDED).or(answer.get(names::FILL_MASS));
    let poured = answer.get(names::FILL_ROUNDED).or(answer.get(names::FILL_DOSE));
    let Some(dose) = poured.or_else(powder) else { return Html::default() };
    // A powder has its label alone.
    let governs = fill.governs.unwrap_or(Governs::Label);
    let row = |key: &str, low, high, who| {
        let (low, high) = (answer.get(low)?, answer.get(high));
        Some(WindowRow { name: shared.say(key), low, high, governs: governs == who })
    };
    let rows = [
        row("window-label", names::LABEL_LOW, names::LABEL_HIGH, Governs::Label),
        row("window-label", names::POWDER_LOW, names::POWDER_HIGH, Governs::Label),
        row("window-minimum", names::MINIMUM_LOW, "", Governs::Minimum),
        row("window-standard", names::STANDARD_LOW, names::STANDARD_HIGH, Governs::Standard),
        row("window-machine", names::MACHINE_LOW, names::MACHINE_HIGH, Governs::Machine),
    ];
    let rows: Vec<WindowRow> = rows.into_iter().flatten().collect();
    // One number needs no picture of a window.
    if rows.len() < 2 && rows.iter().all(|row| row.high == Some(row.low)) {
        return Html::default();
    }
    windows(shared, &Windows { rows, dose })
}
