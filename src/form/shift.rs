//! Shift: areas and machines in; fills, gallons, hours and money out.

pub mod compare;
mod costs;
mod efficiency;
mod fleet;
mod rows;
mod said;
mod strengths;
mod totals;
mod turns;

pub use costs::{Cost, Stock};
pub use efficiency::{Efficiency, efficiency};
pub use rows::Row;
pub use totals::Amounts;
pub use turns::{Better, Turns, best_order};

use super::{Field, Outcome, Typed, What};
use crate::number::Marks;
use crate::trade::measure::Rounded;
use crate::trade::shift::{Act, Means, Plan, Task, plan};
use crate::units::{Duration, Plain, Productivity, Quantity, Volume};
use fleet::{Fitted, fleet};
use rows::{Reader, wanted};

/// What one machine does in a shift.
#[derive(Clone, Debug)]
pub struct Round {
    /// The place of the machine in the site's list.
    pub machine: usize,
    /// Its areas in the order of work, each an index into [`Shift::rows`]: what the plan's tasks count.
    pub rows: Vec<usize>,
    /// The plan.
    pub plan: Plan,
    /// The concentrate of each fill in whole marks, strokes or caps of the measure, where that is near.
    pub rounded: Vec<Option<Rounded>>,
    /// What its tank is filled to.
    pub tank: Volume,
    /// The time that a person is with it, for each of its areas.
    pub labours: Vec<Duration>,
    /// What is drained out of its recovery tank.
    pub waste: Volume,
}

impl Round {
    /// Parts of water to 1 that the rounded concentrate of a fill makes.
    pub fn makes(&self, fill: usize) -> Option<f64> {
        let (fill, rounded) = (self.plan.fills.get(fill)?, (*self.rounded.get(fill)?)?);
        Some(rounded.dose.fraction_of(fill.solution).parts_of_water())
    }

    /// The time that a person is with it.
    pub fn labour(&self) -> Duration {
        self.labours.iter().copied().sum()
    }
}

/// What Shift shows.
#[derive(Clone, Debug, Default)]
pub struct Shift {
    /// The answer and what is in its way.
    pub outcome: Outcome,
    /// The areas, in the order of the list.
    pub rows: Vec<Row>,
    /// The machines that clean them, in the order of the site's list; empty where the shift does not work out.
    pub rounds: Vec<Round>,
    /// What the shift takes.
    pub amounts: Amounts,
    /// What it costs, as far as prices are known.
    pub cost: Cost,
    /// What a mean year takes and costs, and what to keep of each product, where areas say how often.
    pub year: Option<(Amounts, Cost, Vec<Stock>)>,
}

/// What the whole shift is worked out with.
#[derive(Clone, Copy, Debug)]
struct Times {
    refill: Duration,
    change: Duration,
}

/// Works a shift out.
///
/// Figures: [`super::names`] with `shift.`, `cost.`, `month.` and `year.`.
///
/// ```
/// use brimline::form::{Typed, names, shift::work};
/// use brimline::number::Marks;
/// let shift = work(&Typed::default(), Marks::POINT);
/// let fills = shift.outcome.answer.get(names::SHIFT_FILLS).unwrap().si;
/// assert_eq!(fills as usize, shift.rounds.iter().map(|round| round.plan.fills.len()).sum::<usize>());
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Shift {
    work_with(typed, marks, None)
}

/// The same with one flow setting, from 0, on every floor.
fn work_with(typed: &Typed, marks: Marks, forced: Option<usize>) -> Shift {
    let mut view = Shift::default();
    let out = &mut view.outcome;
    let bare = typed.without_areas();
    let counts =
        |area: &crate::site::Area| area.cleaned() || !area.retired && !area.frequency.text.trim().is_empty();
    let fleet = fleet(out, &bare, &wanted(typed, counts), marks);
    let refill = out.may::<Duration>(typed, Field::Refill, marks);
    let change = out.may::<Duration>(typed, Field::Change, marks);
    let mop = out.may::<Productivity>(typed, Field::DryMop, marks).flatten();
    if let Some(number) = other_setting(out, typed, marks) {
        // Of the machines that clean, the one with the fewest settings.
        let cleans = wanted(typed, |area| area.included);
        let taken = fleet.iter().zip(cleans).filter(|(_, wanted)| wanted.taken);
        let fewest = taken.filter_map(|(fitted, _)| Some(fitted.as_ref()?.flows.len())).min();
        if fewest.is_some_and(|fewest| number > fewest) {
            out.trouble(Field::OtherSetting.name(), What::NoSetting);
        }
    }
    let prices = costs::Prices::read(out, &bare, marks);

    let reader = Reader::new(typed, marks, &fleet, mop, forced);
    let areas = || typed.site.areas.iter().enumerate();
    let mut sound = true;
    for (index, _) in areas().filter(|(_, area)| area.cleaned()) {
        match reader.row(out, index) {
            Some(row) => view.rows.push(row),
            None => sound = false,
        }
    }
    if sound && view.rows.is_empty() {
        out.trouble("area-add", What::NoArea);
        return view;
    }
    let (true, Some(refill), Some(change)) = (sound, refill, change) else { return view };
    let nothing = Duration::ZERO;
    let times = Times { refill: refill.unwrap_or(nothing), change: change.unwrap_or(nothing) };

    let Some(rounds) = rounds(typed, &view.rows, &fleet, times, marks) else {
        out.trouble(Field::Tank.name(), What::TooManyFills);
        return view;
    };
    view.amounts = totals::of_shift(&view.rows, &rounds, typed.site.products.len());
    view.cost = prices.cost(&view.amounts);
    totals::steps(out, typed, &view.rows, &rounds, &fleet);
    totals::figures(out, &rounds, &view.amounts);
    costs::figures(out, &view.amounts, view.cost);

    let mut aside = Outcome::default();
    let others = areas().filter(|(_, area)| !area.cleaned() && counts(area));
    let (mut other_rows, mut left_out) = (Vec::new(), Vec::new());
    for (index, area) in others {
        match reader.row(&mut aside, index) {
            Some(row) => other_rows.push(row),
            None => left_out.push(area.name.as_str()),
        }
    }
    let mut labours = totals::labours(&view.rows, &rounds);
    labours.extend(other_rows.iter().map(|row| totals::labour_alone(row, &fleet, times)));
    let all: Vec<Row> = view.rows.iter().copied().chain(other_rows).collect();
    let year = totals::of_year(&all, &labours, &fleet, typed.site.products.len());
    view.year = year.map(|amounts| {
        let cost = prices.cost(&amounts);
        let stocks = prices.stocks(&amounts);
        (amounts, cost, stocks)
    });
    if let Some((amounts, cost, _)) = &view.year {
        totals::year_figures(out, amounts);
        costs::year_figures(out, *cost);
    }
    said::remarks(out, typed, &view.rows, &rounds, &fleet, forced, marks);
    said::about_prices(out, typed, &view.amounts, &prices, &left_out);
    view.rounds = rounds;
    view
}

/// A setting to compare with is a whole number.
fn other_setting(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<usize> {
    let field = Field::OtherSetting;
    let number = out.may::<Plain>(typed, field, marks)??.si();
    if number.fract() > 0.0 {
        out.trouble(field.name(), What::Whole);
        return None;
    }
    // A whole number within the field's limit.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "1 to 99")]
    Some(number as usize)
}

/// What each machine does; none where a tank or a battery is far too small.
fn rounds(
    typed: &Typed,
    rows: &[Row],
    fleet: &[Option<Fitted>],
    times: Times,
    marks: Marks,
) -> Option<Vec<Round>> {
    let step = strengths::step(typed, marks);
    let mut rounds = Vec::new();
    for (machine, fitted) in fleet.iter().enumerate() {
        let Some(fitted) = fitted else { continue };
        let own: Vec<usize> = (0..rows.len()).filter(|row| rows[*row].machine == machine).collect();
        if own.is_empty() {
            continue;
        }
        let tasks: Vec<Task> = own.iter().map(|row| rows[*row].task).collect();
        let Times { refill, change } = times;
        let plan = plan(&tasks, Means { tank: fitted.filled_to, refill, change, battery: fitted.battery })?;
        let rounded = |fill: &crate::trade::shift::Fill| {
            fitted.strengths[tasks[fill.task].product]?.rounded(fill, step?)
        };
        let rounded = plan.fills.iter().map(rounded).collect();
        let waste = plan.spent.iter().copied().sum::<Volume>() * fitted.dumped;
        let labours = labours(&plan, &own, rows, fitted);
        rounds.push(Round { machine, rows: own, plan, rounded, tank: fitted.filled_to, labours, waste });
    }
    Some(rounds)
}

/// The time that a person is with a machine, area by area: all but waiting and charging, and with one that
/// works on its own only what it cannot do.
fn labours(plan: &Plan, own: &[usize], rows: &[Row], fitted: &Fitted) -> Vec<Duration> {
    let mut labours = vec![Duration::ZERO; own.len()];
    for event in &plan.events {
        let with = match event.act {
            Act::Wait | Act::Charge => false,
            Act::Clean => fitted.alone.is_none() || rows[own[event.task]].misfit.is_some(),
            Act::Mop | Act::Go | Act::Refill(_) | Act::Change(_) => true,
        };
        if with {
            labours[event.task] += event.lasts;
        }
    }
    labours
}
