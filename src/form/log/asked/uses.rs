//! How much was used, against what was planned.

use super::{Told, count};
use crate::answer::{Remark, Value, Weight};
use crate::form::names;
use crate::site::log::Current;
use crate::site::log::questions::{By, Use, usage};
use crate::trade::formula;
use crate::units::{Kind, Quantity, Volume, VolumeFraction};

/// Use of one product, machine, area or month.
#[derive(Clone, Debug, PartialEq)]
pub struct UseRow {
    /// What was counted.
    pub of: Use,
    /// Measured less planned, of the fills that have both, m³: below 0 for less. None where no fill has both.
    pub off: Option<f64>,
    /// The same as a share of what was planned.
    pub share: Option<f64>,
}

/// Use, row by row.
#[derive(Clone, Debug, Default)]
pub struct Uses {
    /// The answer.
    pub told: Told,
    /// The rows.
    pub rows: Vec<UseRow>,
    /// Fills that were for several areas, where use is by area.
    pub shared: usize,
}

/// How much was used, against what was planned.
///
/// `d = M − P`, M and P of the fills that have both; `d / P` of it
///
/// Source: definition.
pub fn uses<'a>(fills: impl IntoIterator<Item = &'a Current> + Clone, by: By) -> Uses {
    // All of them as one, since areas share fills and their rows do not add up.
    let mut all = Use::default();
    for month in usage(fills.clone(), By::Month) {
        all.fills += month.fills;
        all.assumed += month.assumed;
        all.unknown += month.unknown;
        all.used += month.used;
        all.compared += month.compared;
        all.compared_planned += month.compared_planned;
        all.compared_measured += month.compared_measured;
    }
    let rows: Vec<UseRow> = usage(fills, by).into_iter().map(row).collect();
    let shared = if by == By::Area { rows.iter().map(|row| row.of.shared).sum() } else { 0 };
    let mut told = Told { fills: all.fills, uncounted: all.unknown, ..Told::default() };
    let answer = &mut told.answer;
    answer.figure(names::LOG_USED, Value::new(all.used, Kind::Fill));
    let compared = row(all.clone());
    match (compared.off, compared.share) {
        (Some(off), Some(share)) => {
            answer.figure(names::LOG_PLANNED, Value::new(all.compared_planned, Kind::Dose));
            answer.figure(names::LOG_MEASURED, Value::new(all.compared_measured, Kind::Dose));
            let code = match off {
                off if off.abs() <= 1e-9 * all.compared_planned.si() => "remark-log-use-even",
                off if off > 0.0 => "remark-log-use-over",
                _ => "remark-log-use-under",
            };
            let amount = Volume::new(off.abs());
            answer.remark(
                Remark::new(code, Weight::Assumed)
                    .value("used", Value::new(all.used, Kind::Fill))
                    .value("fills", count(all.fills - all.unknown))
                    .value("measured", count(all.compared))
                    .value("off", Value::new(amount, Kind::Dose))
                    .value("share", Value::new(VolumeFraction::new(share.abs()), Kind::Percent)),
            );
            let given = [
                ("M", Value::new(all.compared_measured, Kind::Dose)),
                ("P", Value::new(all.compared_planned, Kind::Dose)),
            ];
            let ratio = all.compared_measured / all.compared_planned;
            answer.step(&formula::LOG_SHARE, &given, Value::new(VolumeFraction::new(ratio), Kind::Percent));
        }
        _ if all.fills > all.unknown => answer.remark(
            Remark::new("remark-log-use-planned", Weight::Assumed)
                .value("used", Value::new(all.used, Kind::Fill))
                .value("fills", count(all.fills - all.unknown)),
        ),
        _ => answer.remark(Remark::new("remark-log-use-none", Weight::Assumed)),
    }
    if all.assumed > 0 && compared.off.is_some() {
        answer.remark(Remark::new("remark-log-assumed", Weight::Assumed).value("n", count(all.assumed)));
    }
    if shared > 0 {
        answer.remark(Remark::new("remark-log-shared", Weight::Assumed).value("n", count(shared)));
    }
    Uses { told, rows, shared }
}

fn row(of: Use) -> UseRow {
    let has_both = of.compared_planned > Volume::ZERO;
    let off = has_both.then(|| of.compared_measured.si() - of.compared_planned.si());
    let share = of.share();
    UseRow { of, off, share }
}
