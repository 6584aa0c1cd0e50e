//! Catch tests as points, with the line or the table that they come to, and a band of two standard errors.

use crate::answer::Value;
use crate::form::flow::calibrate::Calibration;
use crate::page::shared::Shared;
use crate::units::{Flow, Kind, Quantity};
use yew::prelude::*;

const LEFT: f64 = 14.0;
const WIDTH: f64 = 250.0;
const HEIGHT: f64 = 160.0;

/// The plot; its numbers stand in the table beside it.
pub fn plot(shared: &Shared, calibration: &Calibration) -> Html {
    let settings = &calibration.settings;
    let highest = settings.iter().map(|setting| setting.number).fold(1.0, f64::max) + 0.5;
    let flows = calibration.tests.iter().map(|test| test.flow.si());
    let most =
        flows.chain(settings.iter().map(|setting| setting.flow.si())).fold(f64::MIN_POSITIVE, f64::max)
            * 1.15;
    let x = |number: f64| LEFT + WIDTH * number / highest;
    let y = |flow: f64| HEIGHT - (HEIGHT - 10.0) * (flow / most).max(0.0);
    let ends = |by: f64| settings.iter().map(move |setting| (setting, by));
    let point = |(index, (number, flow)): (usize, (f64, f64))| {
        format!("{}{:.1} {:.1}", if index == 0 { 'M' } else { 'L' }, x(number), y(flow))
    };
    let at = |by: f64| {
        ends(by).map(|(setting, by)| {
            let error = setting.error.map_or(0.0, crate::units::quantity::Quantity::si);
            (setting.number, setting.flow.si() + by * error)
        })
    };
    let path = |all: Vec<(f64, f64)>| all.into_iter().enumerate().map(point).collect::<String>();
    let line = path(at(0.0).collect());
    let band = at(2.0).chain(at(-2.0).collect::<Vec<_>>().into_iter().rev()).collect();
    html! {
        <svg class="drawing" role="img" aria-label={shared.say("calibrate-drawing")} viewBox={format!("0 0 280 {}", HEIGHT + 26.0)}>
            if calibration.fits { <path class="band" d={path(band) + "Z"} /> }
            <text x={(LEFT + 8.0).to_string()} y="18">{ shared.show(Value::new(Flow::new(most), Kind::Flow)) }</text>
            <path class="vessel" d={format!("M{LEFT} 4V{HEIGHT}H{}", LEFT + WIDTH)} />
            <path class="pointer" d={line} />
            { for calibration.tests.iter().map(|test| html! {
                <circle class={classes!("dot", test.outlier.then_some("far"))} r="5"
                    cx={format!("{:.1}", x(test.setting))} cy={format!("{:.1}", y(test.flow.si()))} />
            }) }
            { for settings.iter().map(|setting| html! {
                <text x={format!("{:.1}", x(setting.number))} y={(HEIGHT + 20.0).to_string()} text-anchor="middle">
                    { setting.number }
                </text>
            }) }
        </svg>
    }
}
