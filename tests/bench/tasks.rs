//! The tasks of a site, as the spreadsheet works them out too.

use brimline::form::Typed;
use brimline::limits;
use brimline::number::Marks;
use brimline::site::{Area, Entry};
use brimline::trade::coverage::{passing, productivity};
use brimline::trade::shift::Task;
use brimline::units::{ApplicationRate, Quantity, VolumeFraction};

/// Of the plan that the spreadsheet works out too, whose areas all take one product: 1 to 64.
pub const STRENGTH: f64 = 1.0 / 65.0;

/// Its areas, read: each gets the middle of what its floor should get, at the pace of its machine. `None`
/// where one cannot be read.
pub fn tasks_of(typed: &Typed) -> Option<Vec<Task>> {
    let task = |area: &Area| {
        let floor = typed.floor_of(area)?;
        let (low, high): (ApplicationRate, ApplicationRate) =
            (read(&floor.target_low, &limits::RATE)?, read(&floor.target_high, &limits::RATE)?);
        let machine = typed.machine_of(area)?;
        let width = (read(&machine.path, &limits::PATH)?, read(&machine.overlap, &limits::OVERLAP)?);
        let passing = passing(read(&machine.speed, &limits::SPEED)?, width.0, width.1);
        let productivity = productivity(passing, read(&machine.efficiency, &limits::EFFICIENCY)?);
        Some(Task::plain(
            read(&area.size, &limits::AREA)?,
            low + (high - low) * 0.5,
            productivity,
            VolumeFraction::new(STRENGTH),
        ))
    };
    typed.site.areas.iter().map(task).collect()
}

/// What was typed, if it can be read.
pub fn read<Q: Quantity>(entry: &Entry, limit: &'static limits::Limit) -> Option<Q> {
    entry.read(limit, Marks::POINT).ok()
}
