//! Every number field: its name on the page, where its text is kept, its limit and its units.

use super::Typed;
use crate::limits::{self, Limit};
use crate::site::Entry;

/// A number field.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Field {
    /// The machine's solution tank.
    Tank,
    /// The machine's least concentrate for a full tank.
    Least,
    /// The machine's most concentrate for a full tank.
    Most,
    /// The share of its solution that the machine uses again.
    Reuse,
    /// Cleaning path.
    Path,
    /// Overlap of two passes.
    Overlap,
    /// Travel speed.
    Speed,
    /// Time at work in the time spent.
    Efficiency,
    /// The flow of a setting, from 0.
    Setting(usize),
    /// How full the tank is filled.
    Level,
    /// One graduation, stroke or cap.
    MeasureStep,
    /// The least solution that the floor should get.
    TargetLow,
    /// The most solution that the floor should get.
    TargetHigh,
    /// The size of an area, from 0.
    AreaSize(usize),
    /// One drain, rinse and refill.
    Refill,
}

impl Field {
    /// Those of which there is one.
    pub const SINGLE: [Self; 13] = [
        Self::Tank,
        Self::Least,
        Self::Most,
        Self::Reuse,
        Self::Path,
        Self::Overlap,
        Self::Speed,
        Self::Efficiency,
        Self::Level,
        Self::MeasureStep,
        Self::TargetLow,
        Self::TargetHigh,
        Self::Refill,
    ];

    /// The stable name: the input's `name` on the page, and the word key of its label.
    pub fn name(self) -> String {
        match self {
            Self::Setting(index) => format!("machine-setting-{}", index + 1),
            Self::AreaSize(index) => format!("area-{}-size", index + 1),
            other => other.key().to_owned(),
        }
    }

    /// The word key of its label and hint.
    pub fn key(self) -> &'static str {
        match self {
            Self::Tank => "machine-tank",
            Self::Least => "machine-least",
            Self::Most => "machine-most",
            Self::Reuse => "machine-reuse",
            Self::Path => "machine-path",
            Self::Overlap => "machine-overlap",
            Self::Speed => "machine-speed",
            Self::Efficiency => "machine-efficiency",
            Self::Setting(_) => "machine-setting",
            Self::Level => "fill-level",
            Self::MeasureStep => "measure-step",
            Self::TargetLow => "floor-target-low",
            Self::TargetHigh => "floor-target-high",
            Self::AreaSize(_) => "area-size",
            Self::Refill => "shift-refill",
        }
    }

    /// What it may hold.
    pub fn limit(self) -> &'static Limit {
        match self {
            Self::Tank => &limits::TANK,
            Self::Least | Self::Most => &limits::MACHINE_DOSE,
            Self::Reuse => &limits::REUSE,
            Self::Path => &limits::PATH,
            Self::Overlap => &limits::OVERLAP,
            Self::Speed => &limits::SPEED,
            Self::Efficiency => &limits::EFFICIENCY,
            Self::Setting(_) => &limits::FLOW,
            Self::Level => &limits::LEVEL,
            Self::MeasureStep => &limits::MEASURE,
            Self::TargetLow | Self::TargetHigh => &limits::RATE,
            Self::AreaSize(_) => &limits::AREA,
            Self::Refill => &limits::REFILL_TIME,
        }
    }

    /// The codes of the units that can stand beside it.
    pub fn units(self) -> &'static [&'static str] {
        match self {
            Self::Tank => &["gal_us", "l", "gal_imp"],
            Self::Level => &["percent", "gal_us", "l", "gal_imp"],
            Self::Least | Self::Most | Self::MeasureStep => &["floz_us", "ml", "floz_imp"],
            Self::Reuse | Self::Efficiency => &["percent"],
            Self::Path | Self::Overlap => &["in", "cm", "mm"],
            Self::Speed => &["mph", "ft_per_min", "km_per_h", "m_per_min"],
            Self::Setting(_) => {
                &["gal_us_per_min", "l_per_min", "gal_imp_per_min", "floz_us_per_min", "ml_per_min"]
            }
            Self::TargetLow | Self::TargetHigh => &["gal_us_per_1000ft2", "ml_per_m2", "gal_imp_per_1000ft2"],
            Self::AreaSize(_) => &["ft2", "m2"],
            Self::Refill => &["min", "s"],
        }
    }

    /// What was typed into it; `None` where the site has no such record.
    pub fn entry(self, typed: &Typed) -> Option<&Entry> {
        Some(match self {
            Self::Tank => &typed.machine()?.tank,
            Self::Least => &typed.machine()?.least,
            Self::Most => &typed.machine()?.most,
            Self::Reuse => &typed.machine()?.reuse,
            Self::Path => &typed.machine()?.path,
            Self::Overlap => &typed.machine()?.overlap,
            Self::Speed => &typed.machine()?.speed,
            Self::Efficiency => &typed.machine()?.efficiency,
            Self::Setting(index) => typed.machine()?.settings.get(index)?,
            Self::Level => &typed.ask.level,
            Self::MeasureStep => &typed.measure()?.step,
            Self::TargetLow => &typed.floor()?.target_low,
            Self::TargetHigh => &typed.floor()?.target_high,
            Self::AreaSize(index) => &typed.site.areas.get(index)?.size,
            Self::Refill => &typed.ask.refill,
        })
    }

    /// The place of its text, to change.
    pub fn entry_mut(self, typed: &mut Typed) -> Option<&mut Entry> {
        Some(match self {
            Self::Tank => &mut typed.machine_mut()?.tank,
            Self::Least => &mut typed.machine_mut()?.least,
            Self::Most => &mut typed.machine_mut()?.most,
            Self::Reuse => &mut typed.machine_mut()?.reuse,
            Self::Path => &mut typed.machine_mut()?.path,
            Self::Overlap => &mut typed.machine_mut()?.overlap,
            Self::Speed => &mut typed.machine_mut()?.speed,
            Self::Efficiency => &mut typed.machine_mut()?.efficiency,
            Self::Setting(index) => typed.machine_mut()?.settings.get_mut(index)?,
            Self::Level => &mut typed.ask.level,
            Self::MeasureStep => &mut typed.measure_mut()?.step,
            Self::TargetLow => &mut typed.floor_mut()?.target_low,
            Self::TargetHigh => &mut typed.floor_mut()?.target_high,
            Self::AreaSize(index) => &mut typed.site.areas.get_mut(index)?.size,
            Self::Refill => &mut typed.ask.refill,
        })
    }
}
