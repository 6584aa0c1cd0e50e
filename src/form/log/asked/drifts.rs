//! Whether readings wander.

use super::{Told, count};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::site::log::questions::{Drift, drift};
use crate::site::log::{Current, Scale};
use crate::trade::formula;
use crate::units::{Kind, MassConcentration, VolumeFraction};

/// From fewer readings a line has no doubt that could be told.
pub const FEWEST_READINGS: usize = 3;

/// One reading.
#[derive(Clone, Debug, PartialEq)]
pub struct Read {
    /// When, as it was given.
    pub when: String,
    /// Days since the first.
    pub day: f64,
    /// In SI units of the scale.
    pub si: f64,
}

/// The readings of one recipe on one scale.
#[derive(Clone, Debug, PartialEq)]
pub struct DriftRow {
    /// The product's name.
    pub product: String,
    /// The standard's name; empty for none.
    pub standard: String,
    /// Its version.
    pub version: u32,
    /// What the readings tell.
    pub scale: Scale,
    /// The readings, by time.
    pub readings: Vec<Read>,
    /// Their line; none where there are too few, or all at one time.
    pub line: Option<Drift>,
}

impl DriftRow {
    /// A reading as it is shown.
    pub fn value(&self, si: f64) -> Value {
        match self.scale {
            Scale::Active => Value::new(MassConcentration::new(si), Kind::Active),
            Scale::Ratio | Scale::None => Value::new(VolumeFraction::new(si), Kind::Percent),
        }
    }
}

/// Readings, recipe by recipe.
#[derive(Clone, Debug, Default)]
pub struct Drifts {
    /// The answer.
    pub told: Told,
    /// The recipes, the one with the most readings first.
    pub rows: Vec<DriftRow>,
}

/// Whether readings wander, recipe by recipe: another product or another version of the standard is no drift.
///
/// * `fills`: by time.
///
/// Formula and source: [`drift`].
pub fn drifts<'a>(fills: impl IntoIterator<Item = &'a Current>) -> Drifts {
    let mut groups: Vec<Vec<&Current>> = Vec::new();
    let mut told = Told::default();
    let recipe = |one: &Current| {
        let fill = &one.fill;
        (fill.reading.scale, fill.product.id.clone(), fill.standard.id.clone(), fill.version)
    };
    for one in fills {
        told.fills += 1;
        if one.fill.reading.scale == Scale::None || one.fill.reading.si.value().is_none() {
            told.uncounted += 1;
            continue;
        }
        match groups.iter_mut().find(|group| group.first().is_some_and(|first| recipe(first) == recipe(one)))
        {
            Some(group) => group.push(one),
            None => groups.push(vec![one]),
        }
    }
    let mut rows: Vec<DriftRow> = groups.iter().filter_map(|group| row(group)).collect();
    rows.sort_by_key(|row| std::cmp::Reverse(row.readings.len()));
    say(&mut told, &rows);
    Drifts { told, rows }
}

fn row(group: &[&Current]) -> Option<DriftRow> {
    let first = group.first()?;
    let begin = first.when.instant();
    let scale = first.fill.reading.scale;
    let read = |one: &&Current| {
        let day = (one.when.instant() - begin) as f64 / 86_400.0;
        Some(Read { when: one.said.to_string(), day, si: one.fill.reading.si.value()? })
    };
    let readings: Vec<Read> = group.iter().filter_map(read).collect();
    let enough = readings.len() >= FEWEST_READINGS;
    Some(DriftRow {
        product: first.fill.product.name.to_string(),
        standard: first.fill.standard.name.to_string(),
        version: first.fill.version,
        scale,
        line: enough.then(|| drift(group.iter().copied(), scale).ok()).flatten(),
        readings,
    })
}

fn say(told: &mut Told, rows: &[DriftRow]) {
    let answer = &mut told.answer;
    let Some((row, line)) = rows.iter().find_map(|row| Some((row, row.line?))) else {
        let none = Remark::new("remark-log-drift-few", Weight::Assumed);
        return answer.remark(none.value("fewest", count(FEWEST_READINGS)));
    };
    let code = match line {
        line if !line.is_clear() => "remark-log-drift-steady",
        line if line.slope > 0.0 => "remark-log-drift-rises",
        _ => "remark-log-drift-falls",
    };
    let error = line.error.unwrap_or(0.0);
    answer.remark(
        Remark::new(code, Weight::Assumed)
            .with("product", Fact::Text(row.product.clone()))
            .value("n", count(line.readings))
            .value("mean", row.value(line.mean))
            .value("week", row.value(line.slope.abs() * 7.0))
            .value("doubt", row.value(line.doubt().unwrap_or(0.0) * 7.0)),
    );
    let (scatter, slope) = (row.value(error * 7.0), row.value(line.slope.abs() * 7.0));
    answer.step(&formula::LOG_DRIFT, &[("n", count(line.readings)), ("s(b)", scatter)], slope);
}
