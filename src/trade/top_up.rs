//! Topping up a tank that still holds something.

use super::label::Window;
use crate::units::{Volume, VolumeFraction};

/// What a tank holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Content {
    /// How much, m³.
    pub volume: Volume,
    /// Concentrate in it.
    pub strength: VolumeFraction,
}

/// What is done to a tank, in this order: drain, then water, then concentrate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Work {
    /// Use solution to drain first, m³.
    pub drain: Volume,
    /// Water to add, m³.
    pub water: Volume,
    /// Concentrate to add, m³.
    pub concentrate: Volume,
}

impl Work {
    /// What the tank holds afterwards.
    ///
    /// `V = V₀ − D + W + X`, `r = (r₀ × (V₀ − D) + X) / V`
    ///
    /// * `before`: V₀, m³, at least the drain, and r₀, 0 to 1.
    ///
    /// An empty tank has the strength 0. What is drained is taken to be as strong as the rest: the
    /// tank is mixed. Source: definition of the volume fraction.
    ///
    /// ```
    /// use brimline::trade::top_up::{Content, Work};
    /// use brimline::units::{Volume, VolumeFraction};
    /// let before = Content { volume: Volume::new(4.0), strength: VolumeFraction::new(0.5) };
    /// let work = Work { drain: Volume::new(2.0), water: Volume::new(1.0), concentrate: Volume::new(1.0) };
    /// let after = work.on(before);
    /// assert_eq!((after.volume, after.strength), (Volume::new(4.0), VolumeFraction::new(0.5)));
    /// ```
    #[must_use]
    pub fn on(self, before: Content) -> Content {
        let kept = before.volume - self.drain;
        let volume = kept + self.water + self.concentrate;
        let concentrate = before.strength * kept + self.concentrate;
        let strength =
            if volume > Volume::ZERO { concentrate.fraction_of(volume) } else { VolumeFraction::ZERO };
        Content { volume, strength }
    }
}

/// What is wanted in the tank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wanted {
    /// V, the level to fill to, m³, above 0.
    pub level: Volume,
    /// r, the strength to have then, 0 to 1.
    pub strength: VolumeFraction,
    /// T, the tank, m³.
    pub tank: Volume,
}

/// What does not go into the tank.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unfit {
    /// The wanted level is above the tank's.
    Level,
    /// More is said to be left than the tank holds.
    Residue,
}

/// How a tank of known strength is topped up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TopUp {
    /// Add water and concentrate; nothing is drained.
    Add(Work),
    /// Drain first, then add water only: the rest is too strong, or more than the wanted level.
    DrainStrong(Work),
    /// Drain first, then add concentrate only: the rest is so weak that it takes the room.
    DrainWeak(Work),
}

impl TopUp {
    /// What is done.
    pub fn work(self) -> Work {
        match self {
            Self::Add(work) | Self::DrainStrong(work) | Self::DrainWeak(work) => work,
        }
    }
}

/// Tops up a tank whose strength is known.
///
/// `X = r × V − r₀ × V₀`, `W = V − V₀ − X`. Where one is below 0, drain first: what is too strong by
/// `D = V₀ − r × V / r₀`, then water to V; what is weak and in the way by
/// `D = V₀ − V × (1 − r) / (1 − r₀)`, then concentrate to V.
///
/// * `left`: V₀, m³, 0 to the tank, and r₀, 0 to 1.
/// * `wanted`: V, m³, above 0 up to the tank; r, 0 to 1; T, m³.
///
/// Returns what to do; afterwards the strength is exactly r at the level V, whatever was left.
/// Whether the two are the same product is not checked, nor how long the solution has stood.
/// Source: conservation of the concentrate; mixing is taken as additive in volume.
///
/// # Errors
/// [`Unfit`] where the level or what is left is more than the tank.
///
/// ```
/// use brimline::trade::top_up::{Content, TopUp, Wanted, top_up};
/// use brimline::units::{Volume, VolumeFraction};
/// let left = Content { volume: Volume::new(25.0), strength: VolumeFraction::new(0.02) };
/// let (level, tank) = (Volume::new(100.0), Volume::new(120.0));
/// let wanted = Wanted { level, strength: VolumeFraction::new(0.01), tank };
/// let TopUp::Add(work) = top_up(left, wanted).unwrap() else { unreachable!() };
/// assert_eq!((work.concentrate, work.water), (Volume::new(0.5), Volume::new(74.5)));
/// ```
pub fn top_up(left: Content, wanted: Wanted) -> Result<TopUp, Unfit> {
    fits(left.volume, wanted)?;
    let (level, strength) = (wanted.level, wanted.strength);
    let concentrate = strength * level - left.strength * left.volume;
    let water = level - left.volume - concentrate;
    // What is below 0 by rounding alone is nothing.
    let crumb = Volume::ZERO - level * 1e-12;
    if concentrate >= crumb && water >= crumb {
        let (water, concentrate) = (water.max(Volume::ZERO), concentrate.max(Volume::ZERO));
        Ok(TopUp::Add(Work { drain: Volume::ZERO, water, concentrate }))
    } else if left.strength >= strength {
        let kept = left.volume.min(level * (strength / left.strength));
        let drain = left.volume - kept;
        Ok(TopUp::DrainStrong(Work { drain, water: level - kept, concentrate: Volume::ZERO }))
    } else {
        let kept = left.volume.min(level * (strength.water() / left.strength.water()));
        let drain = left.volume - kept;
        Ok(TopUp::DrainWeak(Work { drain, water: Volume::ZERO, concentrate: level - kept }))
    }
}

fn fits(left: Volume, wanted: Wanted) -> Result<(), Unfit> {
    let most = wanted.tank * (1.0 + 1e-9);
    if wanted.level > most {
        Err(Unfit::Level)
    } else if left > most {
        Err(Unfit::Residue)
    } else {
        Ok(())
    }
}

/// How many times the label's strength an unknown rest is taken to be at most: somebody may have
/// dosed it twice. Common practice, no source.
pub const TWICE: f64 = 2.0;

/// Why a rest is not topped up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// It could be anything from water to [`TWICE`] the label's strength.
    UnknownStrength,
}

/// What is done with a rest of unknown strength.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fresh {
    /// Why: always the same, kept so that a view can say it.
    pub why: Why,
    /// Drain all of it, rinse, and fill afresh.
    pub work: Work,
    /// What keeping it could lead to, were it no stronger than the label allows.
    pub by_label: Bounds,
    /// What keeping it could lead to at its worst, [`TWICE`] as strong.
    pub at_worst: Bounds,
}

/// What topping up a rest of unknown strength can lead to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// Concentrate that the top-up would need, from the strongest rest to plain water, m³. The
    /// least is 0 where the strongest rest would already be too strong.
    pub concentrate: Window<Volume>,
    /// The strength after filling up with solution of the wanted strength, the rest kept.
    pub strength: Window<VolumeFraction>,
}

/// Bounds of a top-up when the rest is anything from water to `most`.
///
/// `X` from `max(0, r × V − rₘ × V₀)` to `r × V`. Filled up with solution of the strength r to
/// `N = max(V, V₀)`: `r × (N − V₀) / N` to `(r × (N − V₀) + rₘ × V₀) / N`.
///
/// * `left`: V₀, m³, 0 or above.
/// * `most`: rₘ, the strongest that it can be, 0 to 1.
/// * `wanted`: V, m³, above 0, and r.
///
/// Whether it fits is not checked. Source: interval arithmetic on the top-up.
///
/// ```
/// use brimline::trade::top_up::{Wanted, bounds};
/// use brimline::units::{Volume, VolumeFraction};
/// let level = Volume::new(100.0);
/// let wanted = Wanted { level, strength: VolumeFraction::new(0.02), tank: level };
/// let bounds = bounds(Volume::new(50.0), VolumeFraction::new(0.02), wanted);
/// assert_eq!((bounds.concentrate.low, bounds.concentrate.high), (Volume::new(1.0), Volume::new(2.0)));
/// assert_eq!(bounds.strength.low, VolumeFraction::new(0.01));
/// ```
pub fn bounds(left: Volume, most: VolumeFraction, wanted: Wanted) -> Bounds {
    let all = wanted.strength * wanted.level;
    let end = wanted.level.max(left);
    let added = wanted.strength * (end - left);
    Bounds {
        concentrate: Window { low: (all - most * left).max(Volume::ZERO), high: all },
        strength: Window { low: added.fraction_of(end), high: (added + most * left).fraction_of(end) },
    }
}

/// The safe choice when nobody knows how strong the rest is: drain it, rinse, fill afresh.
///
/// `D = V₀`, `X = r × V`, `W = V − X`
///
/// * `left`: V₀, m³, 0 to the tank.
/// * `label`: the greatest strength that the label allows, 0 to 1.
/// * `wanted`: V, m³, above 0 up to the tank; r, 0 to 1; T, m³.
///
/// Whether the rest is the same product is not checked. Source: common practice; the bounds by
/// [`bounds`].
///
/// # Errors
/// [`Unfit`] where the level or what is left is more than the tank.
///
/// ```
/// use brimline::trade::top_up::{Wanted, fresh};
/// use brimline::units::{Volume, VolumeFraction};
/// let (level, r) = (Volume::new(100.0), VolumeFraction::new(0.02));
/// let fresh = fresh(Volume::new(50.0), r, Wanted { level, strength: r, tank: level }).unwrap();
/// assert_eq!((fresh.work.drain, fresh.work.concentrate), (Volume::new(50.0), Volume::new(2.0)));
/// assert_eq!(fresh.at_worst.strength.high, VolumeFraction::new(0.03));
/// ```
pub fn fresh(left: Volume, label: VolumeFraction, wanted: Wanted) -> Result<Fresh, Unfit> {
    fits(left, wanted)?;
    let concentrate = wanted.strength * wanted.level;
    let work = Work { drain: left, water: wanted.level - concentrate, concentrate };
    let twice = (label * TWICE).min(VolumeFraction::new(1.0));
    Ok(Fresh {
        why: Why::UnknownStrength,
        work,
        by_label: bounds(left, label, wanted),
        at_worst: bounds(left, twice, wanted),
    })
}
