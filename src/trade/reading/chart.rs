//! Readings of the active substance: test strips and drop tests.

use super::{Doubt, Reading, ReadingMistake, as_strength};
use crate::source::Source;
use crate::trade::label::Window;
use crate::units::{MassConcentration, Quantity, VolumeFraction};

/// Why a strip is never read closer than a block: what was found of their errors.
pub static STRIP_SOURCES: [Source; 3] = [
    Source::published("Wells et al. 2016, PLOS ONE 11:e0152442: 5.2 to 48 % at 500 and 5000 ppm chlorine"),
    Source::published("Murray and Lantagne 2015, J Water Health 13:79: 5.1 to 40.5 %, strips worst"),
    Source::published("Water Conditioning & Purification, September 2001: about one colour block"),
];

/// What colour a strip has beside its chart. Blocks are counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// The colour of a block.
    At(usize),
    /// Between a block and the next.
    Between(usize),
}

/// Reads a test strip.
///
/// The reading is p blocks up the chart, a half where it lies between two; it can be anything from
/// p − 1 to p + 1 blocks, and `m = c / C` of either. Beyond the last block it can be neat.
///
/// * `seen`: the block, or the two.
/// * `blocks`: the chart, kg/m³ of active substance, rising; 1 ppm is 0.001 kg/m³.
/// * `concentrate`: C, active substance in the concentrate, kg/m³, above 0
///   ([`crate::trade::actives::in_concentrate`]).
///
/// Returns the strength with its limits. Old strips, warm or buffered water and the wait before
/// reading are not checked: the strip's own leaflet says what it bears. Source: an error of one
/// block, [`STRIP_SOURCES`].
///
/// # Errors
/// [`ReadingMistake::NoSuchBlock`], [`ReadingMistake::BlocksNotRising`],
/// [`ReadingMistake::NoActive`].
///
/// ```
/// use brimline::trade::reading::{Seen, strip};
/// use brimline::units::{MassConcentration, VolumeFraction};
/// let blocks = [0.0, 0.05, 0.1, 0.2, 0.4].map(MassConcentration::new);
/// let reading = strip(Seen::At(3), &blocks, MassConcentration::new(100.0)).unwrap();
/// assert_eq!(reading.strength, VolumeFraction::new(0.002));
/// assert_eq!(reading.bounds().low, VolumeFraction::new(0.001));
/// assert_eq!(reading.bounds().high, VolumeFraction::new(0.004));
/// ```
pub fn strip(
    seen: Seen,
    blocks: &[MassConcentration],
    concentrate: MassConcentration,
) -> Result<Reading, ReadingMistake> {
    if concentrate <= MassConcentration::ZERO {
        return Err(ReadingMistake::NoActive);
    }
    if !blocks.is_sorted_by(|a, b| a < b) {
        return Err(ReadingMistake::BlocksNotRising);
    }
    let found = |active: Option<MassConcentration>| active.ok_or(ReadingMistake::NoSuchBlock);
    let block = |index: usize| blocks.get(index).copied();
    // Half way between two blocks; below the chart is nothing.
    let half = |low: Option<usize>| {
        let below = low.map_or(Some(MassConcentration::ZERO), block)?;
        Some((below + block(low.map_or(0, |low| low + 1))?) * 0.5)
    };
    let (read, low, high) = match seen {
        Seen::At(index) => (
            found(block(index))?,
            index.checked_sub(1).map_or(Some(MassConcentration::ZERO), block),
            block(index + 1),
        ),
        Seen::Between(index) => {
            let below = index.checked_sub(1).map_or(Some(MassConcentration::ZERO), |low| half(Some(low)));
            (found(half(Some(index)))?, below, half(Some(index + 1)))
        }
    };
    let strength = |active: MassConcentration| as_strength(active, concentrate);
    let window = Window {
        low: strength(low.unwrap_or(MassConcentration::ZERO)),
        high: high.map_or(VolumeFraction::new(1.0), strength),
    };
    Ok(Reading { strength: strength(read), doubt: Doubt::Limits(window) })
}

/// Reads a drop test.
///
/// `c = d × k`, and `(d − 1) × k` to `(d + 1) × k`; `m = c / C` of each.
///
/// * `count`: d, the drops until the colour turned.
/// * `each`: k, active substance that one drop stands for, kg/m³, above 0.
/// * `concentrate`: C, active substance in the concentrate, kg/m³, above 0.
///
/// Returns the strength with its limits. The size of the drops and of the sample is not checked: hold
/// the bottle upright, fill the tube to its mark. Source: one drop either way, common practice.
///
/// # Errors
/// [`ReadingMistake::NoActive`].
///
/// ```
/// use brimline::trade::reading::drops;
/// use brimline::units::{MassConcentration, VolumeFraction};
/// let reading = drops(8, MassConcentration::new(0.25), MassConcentration::new(64.0)).unwrap();
/// assert_eq!(reading.strength, VolumeFraction::new(0.03125));
/// assert_eq!(reading.bounds().low, VolumeFraction::new(0.02734375));
/// ```
pub fn drops(
    count: u32,
    each: MassConcentration,
    concentrate: MassConcentration,
) -> Result<Reading, ReadingMistake> {
    if concentrate <= MassConcentration::ZERO {
        return Err(ReadingMistake::NoActive);
    }
    let strength = |count: f64| as_strength(MassConcentration::from_si(each.si() * count), concentrate);
    let count = f64::from(count);
    let window = Window { low: strength(count - 1.0), high: strength(count + 1.0) };
    Ok(Reading { strength: strength(count), doubt: Doubt::Limits(window) })
}
