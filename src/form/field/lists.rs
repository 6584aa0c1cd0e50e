//! Fields of lists: how many there are, which one it is, and what it is called.

use super::Field;
use crate::form::Typed;

impl Field {
    /// Every number field that there is now.
    pub fn all(typed: &Typed) -> Vec<Self> {
        let of = |count: usize, fields: &[fn(usize) -> Self]| -> Vec<Self> {
            (0..count).flat_map(|index| fields.iter().map(move |field| field(index))).collect()
        };
        let (machine, measure) = (typed.machine(), typed.measure());
        let mut out = Self::SINGLE.to_vec();
        out.extend(of(machine.map_or(0, |machine| machine.settings.len()), &[Self::Setting]));
        let tests: [fn(usize) -> Self; 3] = [Self::TestSetting, Self::TestTime, Self::TestCaught];
        out.extend(of(machine.map_or(0, |machine| machine.tests.len()), &tests));
        out.extend(of(measure.map_or(0, |measure| measure.tips.len()), &[Self::Tip]));
        let parts: [fn(usize) -> Self; 6] = [
            Self::PartLow,
            Self::PartHigh,
            Self::PartOral,
            Self::PartDermal,
            Self::PartMAcute,
            Self::PartMChronic,
        ];
        out.extend(of(typed.product().map_or(0, |product| product.parts.len()), &parts));
        let patches: [fn(usize) -> Self; 2] = [Self::PatchGloss, Self::PatchSlip];
        out.extend(of(typed.trial().map_or(0, |trial| trial.patches.len()), &patches));
        let areas: [fn(usize) -> Self; 6] = [
            Self::AreaSize,
            Self::AreaOpens,
            Self::AreaCloses,
            Self::AreaLane,
            Self::AreaFrequency,
            Self::AreaWay,
        ];
        out.extend(of(typed.site.areas.len(), &areas));
        out
    }

    /// Which of its list it is, from 1; none for a field of which there is one.
    pub fn number(self) -> Option<usize> {
        match self {
            Self::Setting(index)
            | Self::TestSetting(index)
            | Self::TestTime(index)
            | Self::TestCaught(index)
            | Self::Tip(index)
            | Self::PartLow(index)
            | Self::PartHigh(index)
            | Self::PartOral(index)
            | Self::PartDermal(index)
            | Self::PatchGloss(index)
            | Self::PatchSlip(index)
            | Self::PartMAcute(index)
            | Self::PartMChronic(index)
            | Self::AreaLane(index)
            | Self::AreaFrequency(index)
            | Self::AreaWay(index)
            | Self::AreaSize(index)
            | Self::AreaOpens(index)
            | Self::AreaCloses(index) => Some(index + 1),
            _ => None,
        }
    }

    /// The stable name: the input's `name` on the page.
    pub fn name(self) -> String {
        match self {
            Self::Setting(index) => format!("machine-setting-{}", index + 1),
            Self::TestSetting(index) => format!("catch-{}-setting", index + 1),
            Self::TestTime(index) => format!("catch-{}-time", index + 1),
            Self::TestCaught(index) => format!("catch-{}-volume", index + 1),
            Self::Tip(index) => format!("measure-tip-{}", index + 1),
            Self::AreaOpens(index) => format!("area-{}-opens", index + 1),
            Self::AreaCloses(index) => format!("area-{}-closes", index + 1),
            Self::PartLow(index) => format!("part-{}-low", index + 1),
            Self::PartHigh(index) => format!("part-{}-high", index + 1),
            Self::PartOral(index) => format!("part-{}-oral", index + 1),
            Self::PartDermal(index) => format!("part-{}-dermal", index + 1),
            Self::PatchGloss(index) => format!("patch-{}-gloss", index + 1),
            Self::PatchSlip(index) => format!("patch-{}-slip", index + 1),
            Self::PartMAcute(index) => format!("part-{}-m-acute", index + 1),
            Self::PartMChronic(index) => format!("part-{}-m-chronic", index + 1),
            Self::AreaLane(index) => format!("area-{}-lane", index + 1),
            Self::AreaFrequency(index) => format!("area-{}-frequency", index + 1),
            Self::AreaWay(index) => format!("area-{}-way", index + 1),
            Self::AreaSize(index) => format!("area-{}-size", index + 1),
            other => other.key().to_owned(),
        }
    }
}
