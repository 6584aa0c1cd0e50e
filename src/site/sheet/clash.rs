//! Findings that cannot all be right. Both are shown; a person decides.

use super::found::{Finding, Of, Part, Span, What};
use crate::chemistry::cas;
use crate::chemistry::ghs::mixture::EXTREME_PH;
use std::collections::BTreeMap;

/// What disagrees.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Disagreement {
    /// Two signal words.
    Signals,
    /// The signal word and what the hazard statements ask for.
    SignalAndStatements,
    /// Not hazardous, and a hazard statement.
    NotHazardousAndStatements,
    /// An extreme pH, and no statement that it burns.
    PhAndStatements,
    /// Two pH of the same.
    Phs,
    /// A pH, and that there is none.
    PhAndNone,
    /// Two densities.
    Densities,
    /// Two UN numbers.
    Uns,
    /// A UN number, and that it is no dangerous good.
    UnAndNotRegulated,
    /// Two shares of one ingredient.
    Shares,
    /// Ingredients that are more than the whole even by their least.
    MoreThanWhole,
}

impl Disagreement {
    /// All of them.
    pub const ALL: [Self; 11] = [
        Self::Signals,
        Self::SignalAndStatements,
        Self::NotHazardousAndStatements,
        Self::PhAndStatements,
        Self::Phs,
        Self::PhAndNone,
        Self::Densities,
        Self::Uns,
        Self::UnAndNotRegulated,
        Self::Shares,
        Self::MoreThanWhole,
    ];

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Signals => "sheet-clash-signals",
            Self::SignalAndStatements => "sheet-clash-signal-and-statements",
            Self::NotHazardousAndStatements => "sheet-clash-not-hazardous",
            Self::PhAndStatements => "sheet-clash-ph-and-statements",
            Self::Phs => "sheet-clash-phs",
            Self::PhAndNone => "sheet-clash-ph-and-none",
            Self::Densities => "sheet-clash-densities",
            Self::Uns => "sheet-clash-uns",
            Self::UnAndNotRegulated => "sheet-clash-un-and-not-regulated",
            Self::Shares => "sheet-clash-shares",
            Self::MoreThanWhole => "sheet-clash-more-than-whole",
        }
    }
}

/// Findings that disagree, by their places in the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Clash {
    /// In what.
    pub what: Disagreement,
    /// Which; two or more.
    pub findings: Vec<usize>,
}

/// Every disagreement, once.
pub(super) fn find(findings: &[Finding]) -> Vec<Clash> {
    let mut out = Vec::new();
    let mut add = |what, findings: Vec<usize>| {
        if findings.len() > 1 {
            out.push(Clash { what, findings });
        }
    };
    let places = |test: &dyn Fn(&What) -> bool| -> Vec<usize> {
        findings.iter().enumerate().filter(|(_, one)| test(&one.what)).map(|(at, _)| at).collect()
    };
    let signals = places(&|what| matches!(what, What::Signal(_)));
    let not_hazardous = places(&|what| matches!(what, What::NotHazardous));
    let hazards = places(&|what| matches!(what, What::Hazard(_)));
    let uns = places(&|what| matches!(what, What::Un(_)));
    let not_regulated = places(&|what| matches!(what, What::NotRegulated));
    let no_ph = places(&|what| matches!(what, What::NoPh));
    let phs = places(&|what| matches!(what, What::Ph { .. }));

    add(Disagreement::Signals, signals.clone());
    add(Disagreement::SignalAndStatements, another_signal(findings, &signals, &hazards));
    let both = |a: &[usize], b: &[usize]| {
        if a.is_empty() || b.is_empty() { Vec::new() } else { [a, b].concat() }
    };
    add(Disagreement::NotHazardousAndStatements, both(&not_hazardous, &hazards));
    add(Disagreement::PhAndNone, both(&phs, &no_ph));
    add(Disagreement::Uns, uns.clone());
    add(Disagreement::UnAndNotRegulated, both(&uns, &not_regulated));
    add(Disagreement::PhAndStatements, burns_unsaid(findings, &hazards, &not_hazardous));
    for of in [Of::NotSaid, Of::UseSolution] {
        add(Disagreement::Phs, apart(findings, |what| ph_of(what, of), 0.0));
    }
    add(Disagreement::Densities, apart(findings, density, 0.03));
    for shares in shares(findings) {
        add(Disagreement::Shares, shares);
    }
    add(Disagreement::MoreThanWhole, more_than_whole(findings));
    out
}

/// The signal words, and the statements that ask for a stronger one or all of which ask for a weaker one.
fn another_signal(findings: &[Finding], signals: &[usize], hazards: &[usize]) -> Vec<usize> {
    let word = |at: &usize| match findings[*at].what {
        What::Signal(word) => Some(word),
        _ => None,
    };
    let hazard = |at: &usize| match findings[*at].what {
        What::Hazard(hazard) => Some(hazard),
        _ => None,
    };
    let Some(strongest) = signals.iter().filter_map(word).max() else { return Vec::new() };
    // Of a code that two categories share the label may bear the weaker word.
    let asks_for_more = |at: &&usize| hazard(at).is_some_and(|one| one.signal > strongest && !one.varies);
    let stronger: Vec<usize> = hazards.iter().filter(asks_for_more).copied().collect();
    let all_weaker =
        !hazards.is_empty() && hazards.iter().filter_map(hazard).all(|hazard| hazard.signal < strongest);
    if !stronger.is_empty() {
        [signals, &stronger].concat()
    } else if all_weaker {
        [signals, hazards].concat()
    } else {
        Vec::new()
    }
}

/// A pH of 2 or less or 11.5 or more of the product as sold, and statements none of which says that it burns.
fn burns_unsaid(findings: &[Finding], hazards: &[usize], not_hazardous: &[usize]) -> Vec<usize> {
    let extreme = |what: &What| match what {
        What::Ph { span, of: Of::NotSaid | Of::Concentrate } => {
            span.high <= EXTREME_PH.low || span.low >= EXTREME_PH.high
        }
        _ => false,
    };
    let said =
        |at: &usize| matches!(findings[*at].what, What::Hazard(one) if matches!(one.code, "H314" | "H318"));
    let told = [hazards, not_hazardous].concat();
    let phs: Vec<usize> =
        findings.iter().enumerate().filter(|(_, one)| extreme(&one.what)).map(|(at, _)| at).collect();
    if phs.is_empty() || told.is_empty() || hazards.iter().any(said) {
        Vec::new()
    } else {
        [phs, told].concat()
    }
}

fn ph_of(what: &What, wanted: Of) -> Option<Span> {
    let same = |of: Of| of == wanted || (of == Of::Concentrate && wanted == Of::NotSaid);
    match what {
        What::Ph { span, of } if same(*of) => Some(*span),
        _ => None,
    }
}

fn density(what: &What) -> Option<Span> {
    match what {
        What::Density { span, unit } => {
            let factor = if *unit == "lb_per_gal_us" { 0.119_826_427_3 } else { 1.0 };
            Some(Span { low: span.low * factor, high: span.high * factor })
        }
        _ => None,
    }
}

/// All findings of a kind if two neighbours among them lie apart by more than a part of their size.
fn apart(findings: &[Finding], span: impl Fn(&What) -> Option<Span>, slack: f64) -> Vec<usize> {
    let all: Vec<(usize, Span)> =
        findings.iter().enumerate().filter_map(|(at, one)| Some((at, span(&one.what)?))).collect();
    let lowest_high = all.iter().map(|(_, span)| span.high).fold(f64::INFINITY, f64::min);
    let highest_low = all.iter().map(|(_, span)| span.low).fold(f64::NEG_INFINITY, f64::max);
    if highest_low > lowest_high * (1.0 + slack) {
        all.into_iter().map(|(at, _)| at).collect()
    } else {
        Vec::new()
    }
}

fn part(finding: &Finding) -> Option<&Part> {
    match &finding.what {
        What::Part(part) => Some(part),
        _ => None,
    }
}

/// Rows of one CAS number with different shares.
fn shares(findings: &[Finding]) -> Vec<Vec<usize>> {
    let mut rows: BTreeMap<_, Vec<(usize, Span)>> = BTreeMap::new();
    for (at, finding) in findings.iter().enumerate() {
        let Some(part) = part(finding) else { continue };
        if let (Some(cas), Some(share)) = (cas::check(&part.cas), part.share) {
            rows.entry(cas).or_default().push((at, share));
        }
    }
    let differ = |all: &Vec<(usize, Span)>| all.iter().any(|(_, share)| *share != all[0].1);
    rows.into_values().filter(differ).map(|all| all.into_iter().map(|(at, _)| at).collect()).collect()
}

fn more_than_whole(findings: &[Finding]) -> Vec<usize> {
    let rows: Vec<(usize, f64)> = findings
        .iter()
        .enumerate()
        .filter_map(|(at, finding)| Some((at, part(finding)?.share?.low)))
        .collect();
    let sum: f64 = rows.iter().map(|(_, low)| low).sum();
    if sum > 100.0 + 1e-9 { rows.into_iter().map(|(at, _)| at).collect() } else { Vec::new() }
}
