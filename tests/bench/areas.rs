//! As large a site as is wanted, all from the demo's own floors, products and machines.

use brimline::form::Typed;
use brimline::site::{Area, Entry};

/// Every run measures the same shift.
const SEED: u64 = 65;
/// The smallest and the largest area, ft²: a store room and a hall.
const SIZES: std::ops::RangeInclusive<u32> = 200..=12_000;
/// Liquids that a shift takes, in the order of work: three changes, however many areas there are.
const PRODUCTS: [&str; 4] = ["neutral", "degreaser", "vinegar", "quat"];
/// One area in so many has a time to open.
const OPENS: usize = 10;

/// The demo with `count` areas in the place of its own.
///
/// Sizes, floors and machines are drawn; products stand together, as the page offers to order them.
pub fn demo_with(count: usize) -> Typed {
    let mut draws = fastrand::Rng::with_seed(SEED);
    let mut typed = Typed::default();
    let site = &mut typed.site;
    site.areas.clear();
    for index in 0..count {
        let floor = &site.floors[draws.usize(..site.floors.len())];
        let machine = &site.machines[draws.usize(..site.machines.len())];
        site.areas.push(Area {
            id: format!("a{index}"),
            name: format!("Room {}", index + 1),
            size: Entry::new(draws.u32(SIZES).to_string(), "ft2"),
            floor: floor.id.clone(),
            included: true,
            product: PRODUCTS[index * PRODUCTS.len() / count].to_owned(),
            opens: Entry::new(if index % OPENS == 0 { "1/2" } else { "" }, "h"),
            machine: machine.id.clone(),
            ..Area::default()
        });
    }
    typed
}
