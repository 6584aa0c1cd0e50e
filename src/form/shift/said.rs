//! What must be said beside a shift.

use super::costs::Prices;
use super::fleet::Fitted;
use super::strengths::step;
use super::{Amounts, Round, Row};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::floor::FloorVerdict;
use crate::form::cautions::{self, UsePh, mixing};
use crate::form::{Outcome, Typed};
use crate::number::Marks;
use crate::trade::alone::Misfit;
use crate::trade::setting::Fit;
use crate::trade::shift::Act;
use crate::units::{Duration, Flow, Kind, Volume, VolumeFraction};

/// More names than these are counted.
const NAMED: usize = 8;

/// The names of some areas, one after the other.
fn listed(names: &[&str]) -> Fact {
    let mut text = names.iter().take(NAMED).copied().collect::<Vec<_>>().join(", ");
    if let Some(more) = names.len().checked_sub(NAMED).filter(|more| *more > 0) {
        text = format!("{text} … (+{more})");
    }
    Fact::Text(text)
}

/// Foam stands before the amounts; each floor is held against its product, each area against its machine.
pub(super) fn remarks(
    out: &mut Outcome,
    typed: &Typed,
    rows: &[Row],
    rounds: &[Round],
    fleet: &[Option<Fitted>],
    forced: Option<usize>,
    marks: Marks,
) {
    about_products(out, typed, rows, marks);
    about_floors(out, typed, rows, marks);
    let areas = |of: &dyn Fn(&Row) -> bool| -> Vec<&str> {
        rows.iter().filter(|row| of(row)).map(|row| typed.site.areas[row.area].name.as_str()).collect()
    };
    let (short, wet) = if forced.is_some() {
        ("remark-forced-short", "remark-forced-too-wet")
    } else {
        ("remark-shift-short", "remark-shift-too-wet")
    };
    for (code, fit) in [(short, Fit::Short), (wet, Fit::TooWet)] {
        let named = areas(&|row| row.fit == fit);
        if !named.is_empty() {
            let remark = Remark::new(code, Weight::Warn).with("area", listed(&named));
            let number = forced.map_or(0, |index| index + 1);
            out.answer.remark(remark.value("n", Value::plain(number as f64, Kind::Count)));
        }
    }
    let heavy = areas(&|row| row.passes > 1.0);
    if !heavy.is_empty() {
        out.answer.remark(Remark::new("remark-heavy", Weight::Assumed).with("area", listed(&heavy)));
    }
    for round in rounds {
        if let Some(fitted) = &fleet[round.machine] {
            about_machine(out, typed, rows, round, fitted, marks);
        }
    }
    for pair in changes(rows, rounds) {
        let (before, next) = (&typed.site.products[pair.0], &typed.site.products[pair.1]);
        let remark = mixing::after(before, next, Weight::Warn);
        // Every change is a dump and a rinse; what may not meet at all is named.
        if remark.code != "remark-before-other" {
            out.answer.remark(remark);
        }
    }
    let loose = areas(&|row| row.task.mopping > Duration::ZERO);
    if !loose.is_empty() {
        let time = rows.iter().map(|row| row.task.mopping).sum::<Duration>();
        let remark = Remark::new("remark-dry-mop", Weight::Warn).with("area", listed(&loose));
        out.answer.remark(remark.value("time", Value::new(time, Kind::Time)));
    }
    let walked = rounds.iter().filter(|round| round.labour() >= round.plan.run_time()).count();
    if walked > 1 {
        let people = Value::plain(walked as f64, Kind::Count);
        out.answer.remark(Remark::new("remark-people", Weight::Assumed).value("n", people));
    }
    if rows.len() > rounds.len() {
        out.answer.remark(Remark::new("remark-moves", Weight::Assumed));
    }
}

/// Which product follows which in a tank, each pair once.
fn changes(rows: &[Row], rounds: &[Round]) -> Vec<(usize, usize)> {
    let mut found = Vec::new();
    for pair in rounds.iter().flat_map(|round| round.rows.windows(2)) {
        let pair = (rows[pair[0]].product, rows[pair[1]].product);
        if pair.0 != pair.1 && !found.contains(&pair) {
            found.push(pair);
        }
    }
    found
}

/// What each product does in the machines that take it.
fn about_products(out: &mut Outcome, typed: &Typed, rows: &[Row], marks: Marks) {
    let about_floor =
        |remark: &Remark| remark.code.starts_with("remark-floor-") || remark.code == cautions::LEFT_OUT;
    let mut pairs: Vec<(usize, usize)> = Vec::new();
    for row in rows {
        if !pairs.contains(&(row.machine, row.product)) {
            pairs.push((row.machine, row.product));
        }
    }
    let mut own = typed.without_areas();
    for (index, (machine, product)) in pairs.iter().copied().enumerate() {
        // What was in the tank before the shift is told of one machine, and meets its first product only.
        let asked = typed.site.machines[machine].id == typed.ask.machine;
        if !asked || pairs[..index].iter().any(|(before, _)| *before == machine) {
            own.ask.before.clear();
        } else {
            own.ask.before.clone_from(&typed.ask.before);
        }
        own.ask.machine.clone_from(&typed.site.machines[machine].id);
        own.ask.product.clone_from(&typed.site.products[product].id);
        for remark in cautions::remarks(&own, marks).into_iter().filter(|remark| !about_floor(remark)) {
            if !out.answer.remarks.iter().any(|one| one.code == remark.code) {
                out.answer.remark(remark);
            }
        }
    }
}

/// What each product does to the floors that take it.
fn about_floors(out: &mut Outcome, typed: &Typed, rows: &[Row], marks: Marks) {
    let site = &typed.site;
    let mut known: Vec<(usize, &str, FloorVerdict)> = Vec::new();
    let mut phs: Vec<(usize, UsePh)> = Vec::new();
    let mut ph_of = |product: usize| {
        if let Some((_, ph)) = phs.iter().find(|(of, _)| *of == product) {
            return *ph;
        }
        let ph = UsePh::by_label(typed, &site.products[product], marks);
        phs.push((product, ph));
        ph
    };
    let (mut harmed, mut unknown, mut left_out) = (Vec::new(), Vec::new(), Vec::new());
    for row in rows {
        let area = &site.areas[row.area];
        let standard = typed.in_force(&area.floor).filter(|one| one.product == site.products[row.product].id);
        if standard.is_some_and(|one| one.left_out(&site.machines[row.machine].id).is_some()) {
            left_out.push(area.name.as_str());
        }
        let before =
            known.iter().find(|(product, floor, _)| (*product, *floor) == (row.product, &area.floor));
        let verdict = match (before, typed.floor_of(area)) {
            (Some((_, _, verdict)), _) => verdict.clone(),
            (None, None) => continue,
            (None, Some(floor)) => {
                let ground = cautions::ground(site, floor, marks);
                let product = &site.products[row.product];
                // What Fill says holds here too; the estimate can only make it worse.
                let by_label = cautions::on_floor(product, ground, marks);
                let verdict = by_label.and(ph_of(row.product).verdict(product, ground));
                known.push((row.product, &area.floor, verdict.clone()));
                verdict
            }
        };
        match verdict {
            FloorVerdict::DoesNotFit { .. } => harmed.push(area.name.as_str()),
            FloorVerdict::Unknown { .. } => unknown.push(area.name.as_str()),
            FloorVerdict::Fits => {}
        }
    }
    let stop = if typed.ask.stop_read { Weight::Warn } else { Weight::Stop };
    for (code, weight, areas) in [
        ("remark-shift-floor", stop, harmed),
        ("remark-shift-floor-unknown", Weight::Warn, unknown),
        ("remark-shift-left-out", Weight::Warn, left_out),
    ] {
        if !areas.is_empty() {
            out.answer.remark(Remark::new(code, weight).with("area", listed(&areas)));
        }
    }
}

/// Where a machine does not work on its own, and what its tanks and its battery ask for.
fn about_machine(
    out: &mut Outcome,
    typed: &Typed,
    rows: &[Row],
    round: &Round,
    fitted: &Fitted,
    marks: Marks,
) {
    let machine = &typed.site.machines[round.machine];
    let named = |code, weight| Remark::new(code, weight).with("machine", Fact::Text(machine.name.clone()));
    let answer = &mut out.answer;
    let area = |row: &Row| typed.site.areas[row.area].name.as_str();
    let own = || round.rows.iter().map(|row| &rows[*row]);
    let asks = fitted.alone.unwrap_or_default();
    for (code, misfit, lane) in [
        ("remark-alone-narrow", Misfit::Narrow, asks.least),
        ("remark-alone-wide", Misfit::Wide, asks.most),
        ("remark-alone-lacking", Misfit::Lacking, None),
        ("remark-alone-unknown", Misfit::Unknown, None),
    ] {
        let areas: Vec<&str> = own().filter(|row| row.misfit == Some(misfit)).map(area).collect();
        if !areas.is_empty() {
            let mut remark = named(code, Weight::Warn).with("area", listed(&areas));
            if let Some(lane) = lane {
                remark = remark.value("lane", Value::new(lane, Kind::Lane));
            }
            if asks.around && lane.is_none() {
                remark = remark.with("needs", Fact::Text(machine.needs.trim().to_owned()));
            }
            answer.remark(remark);
        }
    }
    if let Some(recovery) = fitted.recovery.filter(|_| fitted.filled_to < fitted.tank) {
        let remark = named("remark-recovery", Weight::Warn);
        let fill = Value::new(fitted.filled_to, Kind::Fill);
        answer
            .remark(remark.value("fill", fill).value("recovery", Value::new::<Volume>(recovery, Kind::Fill)));
    }
    let charges = round.plan.count_of(|act| act == Act::Charge);
    if let Some(battery) = fitted.battery.filter(|_| charges > 0) {
        let time = |time: Duration| Value::new(time, Kind::Time);
        let remark = named("remark-battery", Weight::Warn).value("run", time(round.plan.run_time()));
        let remark = remark.value("lasts", time(battery.lasts)).value("charge", time(battery.charge));
        answer.remark(remark.value("n", Value::plain(charges as f64, Kind::Count)));
    }
    for (task, row) in own().enumerate() {
        let done = round.plan.done[task];
        if let Some(closes) = row.closes.filter(|closes| done > *closes * (1.0 + 1e-9)) {
            let remark =
                Remark::new("remark-late", Weight::Warn).with("area", Fact::Text(area(row).to_owned()));
            let time = |time: Duration| Value::new(time, Kind::Time);
            answer.remark(remark.value("done", time(done)).value("closes", time(closes)));
        }
    }
    if let Some(fading) = fitted.fading {
        let share = |flow: Flow| fading.last(flow).fraction_of(flow);
        let last = fitted.flows.first().map_or(VolumeFraction::new(1.0), |flow| share(*flow));
        answer
            .remark(named("remark-shift-fades", Weight::Warn).value("last", Value::new(last, Kind::Percent)));
    }
    let own_coarse = round.rounded.iter().filter(|rounded| rounded.is_none()).count();
    if own_coarse > 0 && step(typed, marks).is_some() {
        let remark = named("remark-shift-coarse", Weight::Warn);
        answer.remark(remark.value("n", Value::plain(own_coarse as f64, Kind::Count)));
    }
    if fitted.motion.spent < 1.0 {
        let share = Value::new(VolumeFraction::new(1.0 - fitted.motion.spent), Kind::Percent);
        let remark = Remark::new("remark-reuse", Weight::Assumed).value("share", share);
        if !answer.remarks.contains(&remark) {
            answer.remark(remark);
        }
    }
}

/// What is not in the cost and not in the month.
pub(super) fn about_prices(
    out: &mut Outcome,
    typed: &Typed,
    amounts: &Amounts,
    prices: &Prices,
    left_out: &[&str],
) {
    let answer = &mut out.answer;
    if answer.get(crate::form::names::COST_TOTAL).is_some() {
        let used = (0..amounts.concentrate.len()).filter(|one| amounts.concentrate[*one] > Volume::ZERO);
        let unknown: Vec<&str> = used
            .filter(|one| !prices.knows(*one))
            .map(|one| typed.site.products[one].name.as_str())
            .collect();
        if !unknown.is_empty() {
            answer
                .remark(Remark::new("remark-cost-no-price", Weight::Warn).with("product", listed(&unknown)));
        }
        if prices.water.is_none() {
            answer.remark(Remark::new("remark-cost-no-water", Weight::Assumed));
        }
        if prices.wage.is_none() {
            answer.remark(Remark::new("remark-cost-no-wage", Weight::Assumed));
        }
    }
    if !left_out.is_empty() {
        let remark = Remark::new("remark-month-left-out", Weight::Warn);
        answer.remark(remark.with("area", listed(left_out)));
    }
}
