//! The lines of text that can be typed into.

use crate::form::Typed;
use crate::site::{Override, Standard};

/// A line of text, as opposed to a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Line {
    /// The name of the site.
    SiteName,
    /// The name of the machine asked about.
    MachineName,
    /// The name of the product asked about.
    ProductName,
    /// Its label.
    Label,
    /// Its H and P codes.
    Codes,
    /// The pH its maker prints.
    Ph,
    /// The pH of the concentrate.
    PhNeat,
    /// What its safety data sheet adds.
    Notes,
    /// The name of the floor asked about.
    FloorName,
    /// The name of the measure asked about.
    MeasureName,
    /// The ppm of a test strip's blocks.
    Blocks,
    /// The ratios that the machine asked about can meter.
    Ratios,
    /// What the site's standard asks of the product asked about.
    Standard,
    /// What the machine asked about needs around it to work on its own.
    Needs,
    /// What the site's money is called.
    Currency,
    /// Whom to call for first aid.
    Emergency,
    /// Where other devices open the page.
    Address,
    /// The name of a part of the product asked about, from 0.
    PartName(usize),
    /// Its CAS number.
    PartCas(usize),
    /// Its H codes.
    PartCodes(usize),
    /// The name of an area, from 0.
    AreaName(usize),
    /// What the records of a shelf are searched for.
    Search,
    /// The name of the finish asked about.
    FinishName,
    /// Where its pH window is written.
    FinishSource,
    /// The dilution of the stripper.
    StripDilution,
    /// The day of the first coat.
    FirstCoat,
    /// Its time.
    FirstCoatAt,
    /// The name of the trial asked about.
    TrialName,
    /// Its day.
    TrialDate,
    /// Who looked.
    TrialBy,
    /// What else was seen on a patch, from 0.
    PatchNote(usize),
    /// Why a warning about the draft asked about does not count, by the warning's code.
    Override(&'static str),
    /// Why the draft asked about is not for a machine, by its place among those that it leaves out, from 0.
    LeftOut(usize),
    /// A line of the standard asked about, while it is a draft.
    Rule(StandardLine),
}

impl Line {
    /// The place of its text.
    pub fn text_mut(self, typed: &mut Typed) -> Option<&mut String> {
        Some(match self {
            Self::SiteName => &mut typed.site.name,
            Self::MachineName => &mut typed.machine_mut()?.name,
            Self::ProductName => &mut typed.product_mut()?.name,
            Self::Label => &mut typed.product_mut()?.label,
            Self::Codes => &mut typed.product_mut()?.codes,
            Self::Ph => &mut typed.product_mut()?.ph,
            Self::PhNeat => &mut typed.product_mut()?.ph_neat,
            Self::Notes => &mut typed.product_mut()?.notes,
            Self::FloorName => &mut typed.floor_mut()?.name,
            Self::MeasureName => &mut typed.measure_mut()?.name,
            Self::Ratios => &mut typed.machine_mut()?.ratios,
            Self::Standard => &mut typed.product_mut()?.standard,
            Self::Needs => &mut typed.machine_mut()?.needs,
            Self::Emergency => &mut typed.site.emergency,
            Self::Address => &mut typed.site.address,
            Self::Currency => &mut typed.site.currency,
            Self::Blocks => &mut typed.ask.station.blocks,
            Self::PartName(index) => &mut typed.product_mut()?.parts.get_mut(index)?.name,
            Self::PartCas(index) => &mut typed.product_mut()?.parts.get_mut(index)?.cas,
            Self::PartCodes(index) => &mut typed.product_mut()?.parts.get_mut(index)?.codes,
            Self::AreaName(index) => &mut typed.site.areas.get_mut(index)?.name,
            Self::Search => &mut typed.ask.site.search,
            Self::FinishName => &mut typed.finish_mut()?.name,
            Self::FinishSource => &mut typed.finish_mut()?.source,
            Self::StripDilution => &mut typed.ask.site.strip_dilution,
            Self::FirstCoat => &mut typed.ask.site.first_coat,
            Self::FirstCoatAt => &mut typed.ask.site.first_coat_at,
            Self::TrialName => &mut typed.trial_mut()?.name,
            Self::TrialDate => &mut typed.trial_mut()?.date,
            Self::TrialBy => &mut typed.trial_mut()?.by,
            Self::PatchNote(index) => &mut typed.trial_mut()?.patches.get_mut(index)?.note,
            Self::Override(finding) => {
                let overrides = &mut typed.draft_mut()?.overrides;
                let index = overrides.iter().position(|one| one.finding == finding).unwrap_or_else(|| {
                    overrides.push(Override { finding: finding.to_owned(), reason: String::new() });
                    overrides.len() - 1
                });
                &mut overrides.get_mut(index)?.reason
            }
            Self::LeftOut(index) => &mut typed.draft_mut()?.leaves_out.get_mut(index)?.reason,
            Self::Rule(line) => line.text_mut(typed.draft_mut()?),
        })
    }
}

/// A line of a standard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(missing_docs, reason = "each is the line of the same name in the document")]
pub enum StandardLine {
    Name,
    Dilution,
    Pad,
    Order,
    Ppe,
    Effective,
    Author,
    Reason,
}

impl StandardLine {
    fn text_mut(self, standard: &mut Standard) -> &mut String {
        match self {
            Self::Name => &mut standard.name,
            Self::Dilution => &mut standard.dilution,
            Self::Pad => &mut standard.pad,
            Self::Order => &mut standard.order,
            Self::Ppe => &mut standard.ppe,
            Self::Effective => &mut standard.effective,
            Self::Author => &mut standard.author,
            Self::Reason => &mut standard.reason,
        }
    }
}
