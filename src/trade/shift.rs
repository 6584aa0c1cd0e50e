//! The shift of one machine as a list of whole events: fill, go, clean, refill, change, charge.

mod walk;

use crate::units::{ApplicationRate, Area, Duration, Productivity, Volume, VolumeFraction};

/// One area to clean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Task {
    /// Its size, m², above 0.
    pub size: Area,
    /// Solution that leaves the tank for good on each area of floor, all passes together, m³/m², above 0.
    pub spent: ApplicationRate,
    /// Floor area cleaned a time, all passes together, m²/s, above 0.
    pub productivity: Productivity,
    /// Which product it takes; equal numbers are one product.
    pub product: usize,
    /// Concentrate in that product's use solution.
    pub strength: VolumeFraction,
    /// Not begun before this time of the shift, s.
    pub opens: Duration,
    /// The way to it from the fill station, s, 0 or above.
    pub way: Duration,
    /// Dry mopping before the machine may come, s, 0 or above.
    pub mopping: Duration,
}

impl Task {
    /// An area beside the fill station that needs nothing but the machine.
    pub fn plain(
        size: Area,
        spent: ApplicationRate,
        productivity: Productivity,
        strength: VolumeFraction,
    ) -> Self {
        let none = Duration::ZERO;
        Self { size, spent, productivity, product: 0, strength, opens: none, way: none, mopping: none }
    }
}

/// A machine, as far as a shift needs it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Means {
    /// What its solution tank is filled to, m³, above 0.
    pub tank: Volume,
    /// One drain of the recovery tank, rinse and refill, s, 0 or above.
    pub refill: Duration,
    /// One dump, rinse and fill for another product, s, 0 or above.
    pub change: Duration,
    /// Its battery; none where it has a cord.
    pub battery: Option<Battery>,
}

/// A battery.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Battery {
    /// How long the machine cleans on one charge, s, above 0.
    pub lasts: Duration,
    /// How long a charge takes, s, 0 or above.
    pub charge: Duration,
}

/// One fill of the tank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fill {
    /// Index of the task for which it is done.
    pub task: usize,
    /// Area of that task cleaned before it, m².
    pub after: Area,
    /// When the tank is full, s since the start; the first is filled before the start.
    pub at: Duration,
    /// Use solution, m³.
    pub solution: Volume,
    /// Concentrate in it, m³.
    pub concentrate: Volume,
}

/// What is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Act {
    /// Waiting for an area to open.
    Wait,
    /// Dry mopping by hand.
    Mop,
    /// Cleaning.
    Clean,
    /// Going between the fill station and an area.
    Go,
    /// Draining the recovery tank, rinsing, and this fill.
    Refill(usize),
    /// Dumping, rinsing, and this fill of another product.
    Change(usize),
    /// Charging the battery.
    Charge,
}

/// Something done, from when and how long.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Event {
    /// What.
    pub act: Act,
    /// The task that it is done for.
    pub task: usize,
    /// Since the start, s.
    pub from: Duration,
    /// s, above 0.
    pub lasts: Duration,
}

/// How much solution is in the tank at one time of the shift.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Level {
    /// Time since the start, s.
    pub at: Duration,
    /// Use solution in the tank, m³.
    pub solution: Volume,
}

/// A shift worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The fills, in order; the last one of each product only as large as needed.
    pub fills: Vec<Fill>,
    /// What is done, in order and without a gap; the first fill is done before.
    pub events: Vec<Event>,
    /// The tank: between two of these it falls evenly, and it rises where it is filled.
    pub levels: Vec<Level>,
    /// Run time of each task, s.
    pub run: Vec<Duration>,
    /// When each task is done, s since the start.
    pub done: Vec<Duration>,
    /// Solution spent on each task, m³.
    pub spent: Vec<Volume>,
    /// The end, back at the fill station, s since the start.
    pub total: Duration,
}

impl Plan {
    /// Run time of all tasks, s.
    pub fn run_time(&self) -> Duration {
        self.run.iter().copied().sum()
    }

    /// Use solution of all fills, m³.
    pub fn solution(&self) -> Volume {
        self.fills.iter().map(|fill| fill.solution).sum()
    }

    /// Concentrate of all fills, m³.
    pub fn concentrate(&self) -> Volume {
        self.fills.iter().map(|fill| fill.concentrate).sum()
    }

    /// Water of all fills, m³.
    pub fn water(&self) -> Volume {
        self.solution() - self.concentrate()
    }

    /// The time that everything of one sort takes, s.
    pub fn time_of(&self, of: impl Fn(Act) -> bool) -> Duration {
        self.events.iter().filter(|event| of(event.act)).map(|event| event.lasts).sum()
    }

    /// How often something is done.
    pub fn count_of(&self, of: impl Fn(Act) -> bool) -> usize {
        self.events.iter().filter(|event| of(event.act)).count()
    }
}

/// The most fills, and the most charges, that one plan lists: more means a tank or a battery far too small
/// for the floor.
pub const MOST_FILLS: usize = 10_000;

/// Works out the shift of one machine.
///
/// For each task `spent = a × A` and `run = A / P`. The tank is filled when it is empty and work is left, to
/// `min(T, what this product still needs)`; each fill takes `c = r × V` of concentrate. Every refill, change
/// and charge is a way back to the fill station and out again. Between two neighbours that take different
/// products stands a change.
///
/// * `tasks`: in the order of work.
/// * `means`: the machine, with a charged battery and an empty tank.
///
/// Returns the plan, or `None` when it would need more than [`MOST_FILLS`] fills or charges. A tank is taken
/// to give all that it holds; what a pump leaves behind is not modelled. Going from one area straight to the
/// next is not counted: there is no map. The battery drains while the machine cleans and at no other time.
/// Source: definition.
///
/// ```
/// use brimline::trade::shift::{Means, Task, plan};
/// use brimline::units::{ApplicationRate, Area, Duration, Productivity, Volume, VolumeFraction};
/// let (rate, pace) = (ApplicationRate::new(0.5), Productivity::new(1.0));
/// let task = Task::plain(Area::new(50.0), rate, pace, VolumeFraction::new(0.1));
/// let refill = Duration::new(5.0);
/// let means = Means { tank: Volume::new(10.0), refill, change: Duration::new(20.0), battery: None };
/// let whole = plan(&[task], means).unwrap();
/// let sizes: Vec<Volume> = whole.fills.iter().map(|fill| fill.solution).collect();
/// assert_eq!(sizes, [Volume::new(10.0), Volume::new(10.0), Volume::new(5.0)]);
/// assert_eq!(whole.total, Duration::new(60.0));
/// let two = plan(&[task, Task { product: 1, way: Duration::new(2.0), ..task }], means).unwrap();
/// assert_eq!(two.total, Duration::new(60.0 + 20.0 + 2.0 + 50.0 + 2.0 * (5.0 + 4.0) + 2.0));
/// ```
pub fn plan(tasks: &[Task], means: Means) -> Option<Plan> {
    walk::walk(tasks, means)
}
