//! Catch tests of a machine's settings, and the flows that they come to.

use super::super::table;
use crate::answer::Value;
use crate::form::flow::calibrate::{Calibration, Setting, Tested, work};
use crate::form::{Action, Field};
use crate::number;
use crate::page::components::{button, fold, number_field, workings};
use crate::page::drawing::calibration;
use crate::page::focus;
use crate::page::shared::Shared;
use crate::site::Entry;
use crate::units::{Flow, Kind, Quantity, unit};
use crate::words::Argument;
use yew::prelude::*;

/// The section, which unfolds on demand.
pub fn calibrate(shared: &Shared) -> Html {
    let calibration = work(&shared.typed, shared.marks());
    fold(shared, &calibration.outcome, "calibrate", &["catch-"], |shared, _| tests(shared))
}

fn tests(shared: &Shared) -> Html {
    let calibration = work(&shared.typed, shared.marks());
    let count = shared.typed.machine().map_or(0, |machine| machine.tests.len());
    let added = {
        let act = shared.act.clone();
        move |_: MouseEvent| {
            act.emit(Action::AddCatch);
            focus::soon(Field::TestSetting(count).name());
        }
    };
    html! {
        <>
            <p class="hint">{ shared.say("calibrate-hint") }</p>
            { for (0..count).map(|row| test(shared, &calibration, row)) }
            <div class="buttons">
                <button type="button" id="catch-add" name="catch-add" onclick={added}>
                    { shared.say("catch-add") }
                </button>
            </div>
            { result(shared, &calibration) }
        </>
    }
}

/// The name of the button that removes a catch test, from 0.
fn remove_name(row: usize) -> String {
    format!("catch-{}-remove", row + 1)
}

/// One catch test, to type over.
fn test(shared: &Shared, calibration: &Calibration, row: usize) -> Html {
    let n = || ("n", Argument::text((row + 1).to_string()));
    let field = |field: Field| {
        let told = Argument::text(shared.say(field.key()));
        let label = shared.tell("catch-row", &[n(), ("field", told)]);
        number_field(shared, &calibration.outcome, field, Some(label))
    };
    let name = remove_name(row);
    let onclick = {
        let act = shared.act.clone();
        // This button goes with the last test; the next one's, or adding one, takes the focus.
        let count = shared.typed.machine().map_or(0, |machine| machine.tests.len());
        let next = if row + 1 < count { name.clone() } else { "catch-add".to_owned() };
        move |_: MouseEvent| {
            act.emit(Action::DropCatch(row));
            focus::soon(next.clone());
        }
    };
    html! {
        <div class="fields caught">
            { field(Field::TestSetting(row)) }
            { field(Field::TestTime(row)) }
            { field(Field::TestCaught(row)) }
            <div class="buttons">
                <button type="button" id={name.clone()} {name} {onclick}>{ shared.tell("catch-remove", &[n()]) }</button>
            </div>
        </div>
    }
}

/// What the tests say, once they say something.
fn result(shared: &Shared, calibration: &Calibration) -> Html {
    let Some(line) = &calibration.line else {
        return html! { <p class="hint">{ shared.say("calibrate-few") }</p> };
    };
    let flow = |si: f64| Value::new(Flow::from_si(si), Kind::Flow);
    let verdict = if calibration.fits {
        shared.tell("calibrate-line", &[("flow", shared.argument(flow(line.slope)))])
    } else if calibration.rises {
        shared.say("calibrate-table")
    } else {
        shared.say("calibrate-falls")
    };
    let outlier = |tested: &Tested| {
        let n = Argument::text((tested.row + 1).to_string());
        html! { <p class="mistake">{ shared.tell("calibrate-outlier", &[("n", n)]) }</p> }
    };
    let take = entries(shared, calibration);
    let now = shared.typed.machine().map_or(0, |machine| machine.settings.len());
    let count = |number: usize| Argument::number(number as f64, number.to_string());
    html! {
        <>
            <p>{ verdict }</p>
            { for calibration.tests.iter().filter(|tested| tested.outlier).map(outlier) }
            { calibration::plot(shared, calibration) }
            { settings(shared, calibration) }
            { workings(shared, &calibration.outcome.answer.steps) }
            if calibration.rises || calibration.fits {
                if take.len() != now {
                    <p class="hint">{ shared.tell("calibrate-count", &[("n", count(take.len())), ("now", count(now))]) }</p>
                }
                <div class="buttons">
                    { button(shared, "calibrate-take", shared.say("calibrate-take"), move || Action::TakeFlows(take.clone())) }
                </div>
            }
        </>
    }
}

/// The flows in the reader's unit, as they would be typed.
fn entries(shared: &Shared, calibration: &Calibration) -> Vec<Entry> {
    let unit = Kind::Flow.unit(shared.system()).or_else(|| unit("l_per_min"));
    let marks = number::Marks { group: '\u{0}', ..shared.marks() };
    let entry = |setting: &Setting| {
        let unit = unit?;
        let text = number::write(unit.from_si(setting.flow.si()), 3, marks).replace('\u{0}', "");
        Some(Entry::new(text, unit.code))
    };
    calibration.settings.iter().filter_map(entry).collect()
}

fn settings(shared: &Shared, calibration: &Calibration) -> Html {
    let row = |setting: &Setting| {
        let count =
            calibration.tests.iter().filter(|tested| tested.setting.total_cmp(&setting.number).is_eq());
        let tested: Vec<String> =
            count.map(|tested| shared.show(Value::new(tested.flow, Kind::Flow))).collect();
        html! {
            <tr>
                <th scope="row">{ setting.number }</th>
                <td>{ shared.show(Value::new(setting.flow, Kind::Flow)) }</td>
                <td>{ setting.error.map(|error| shared.show(Value::new(error, Kind::Flow))) }</td>
                <td>{ tested.join("; ") }</td>
            </tr>
        }
    };
    let columns = ["column-setting", "column-flow", "column-error", "column-tests"];
    table(shared, "calibrate-settings", &columns, calibration.settings.iter().map(row).collect())
}
