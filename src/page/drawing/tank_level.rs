//! The tank over a shift: it falls while areas are cleaned, and rises where it is filled.

use crate::answer::Value;
use crate::form::shift::Round;
use crate::page::shared::Shared;
use crate::trade::shift::Level;
use crate::units::{Kind, Quantity, Volume};
use crate::words::Argument;
use yew::prelude::*;

const LEFT: f64 = 8.0;
const WIDTH: f64 = 262.0;
const TOP: f64 = 26.0;
const HEIGHT: f64 = 110.0;
/// More fills than these are drawn without their numbers.
const NUMBERED: usize = 16;

/// One line, with the number of each fill at its top; the fills stand in the table beside it. The machine is
/// named where there are several.
pub fn tank_level(shared: &Shared, round: &Round, machine: Option<String>) -> Html {
    let plan = &round.plan;
    let levels = &plan.levels;
    let most = levels.iter().map(|level| level.solution).fold(Volume::ZERO, Volume::max);
    let x = |at: f64| LEFT + WIDTH * at / plan.total.si().max(f64::MIN_POSITIVE);
    let y = |level: f64| TOP + HEIGHT * (1.0 - level / most.si().max(f64::MIN_POSITIVE));
    let point = |(index, level): (usize, &Level)| {
        let letter = if index == 0 { 'M' } else { 'L' };
        format!("{letter}{:.1} {:.1}", x(level.at.si()), y(level.solution.si()))
    };
    let line: String = levels.iter().enumerate().map(point).collect();
    let bottom = TOP + HEIGHT;
    let (time, tank) = (Value::new(plan.total, Kind::Time), Value::new(most, Kind::Fill));
    let fills = Argument::number(plan.fills.len() as f64, plan.fills.len().to_string());
    let title = shared.tell(
        "drawing-tank-level",
        &[("n", fills), ("time", shared.argument(time)), ("tank", shared.argument(tank))],
    );
    let number = |(index, fill): (usize, &crate::trade::shift::Fill)| {
        html! {
            <text x={format!("{:.1}", x(fill.at.si()).clamp(LEFT, WIDTH))} y={format!("{:.1}", y(fill.solution.si()) - 6.0)}>
                { index + 1 }
            </text>
        }
    };
    html! {
        <>
        if let Some(machine) = machine { <p class="drawing-of">{ machine }</p> }
        <svg class="drawing" role="img" aria-label={title} viewBox={format!("0 0 280 {}", bottom + 28.0)}>
            <path class="level" d={format!("{line}L{:.1} {bottom}L{LEFT} {bottom}Z", x(plan.total.si()))} />
            <path class="line" d={line} />
            <path class="vessel" d={format!("M{LEFT} {TOP}V{bottom}H{}", LEFT + WIDTH)} />
            if plan.fills.len() <= NUMBERED { { for plan.fills.iter().enumerate().map(number) } }
            <text x={LEFT.to_string()} y={(bottom + 22.0).to_string()}>{ shared.show(tank) }</text>
            <text x={(LEFT + WIDTH).to_string()} y={(bottom + 22.0).to_string()} text-anchor="end">
                { shared.show(time) }
            </text>
        </svg>
        </>
    }
}
