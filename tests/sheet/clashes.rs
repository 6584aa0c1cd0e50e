//! Findings that cannot all be right are shown beside each other.

use super::layouts::english;
use brimline::site::sheet::Disagreement;

/// What disagrees, and the lines that do.
fn clashes(text: &str) -> Vec<(Disagreement, Vec<usize>)> {
    let sheet = english(text);
    let lines = |findings: &[usize]| findings.iter().map(|at| sheet.findings[*at].line).collect();
    sheet.clashes.iter().map(|clash| (clash.what, lines(&clash.findings))).collect()
}

#[test]
fn what_disagrees_is_told() {
    use Disagreement::{
        Densities, MoreThanWhole, NotHazardousAndStatements, PhAndNone, PhAndStatements, Phs, Shares,
        SignalAndStatements, Signals, UnAndNotRegulated, Uns,
    };
    let two = "2. Hazards identification\n";
    let three = "3. Composition/information on ingredients\n";
    let nine = "9. Physical and chemical properties\n";
    let fourteen = "14. Transport information\n";
    for (text, wanted) in [
        (format!("{two}Signal word: Danger\nSignal word: Warning\nH314"), vec![(Signals, vec![2, 3])]),
        (format!("{two}Signal word: Warning\nH314\nH290"), vec![(SignalAndStatements, vec![2, 3])]),
        (format!("{two}Signal word: Danger\nH319"), vec![(SignalAndStatements, vec![2, 3])]),
        (format!("{two}Signal word: None\nH319"), vec![(SignalAndStatements, vec![2, 3])]),
        // H272 is Danger in one category and Warning in the other.
        (format!("{two}Signal word: Warning\nH272"), vec![]),
        (format!("{two}Signal word: None\nH412"), vec![]),
        (
            format!("{two}Not a hazardous substance or mixture\nH319"),
            vec![(NotHazardousAndStatements, vec![2, 3])],
        ),
        (
            format!("{three}Water 7732-18-5 80 %\nWater 7732-18-5 90 %"),
            vec![(Shares, vec![2, 3]), (MoreThanWhole, vec![2, 3])],
        ),
        (format!("{three}Water 7732-18-5 80 %\nWater 7732-18-5 80 %\n"), vec![(MoreThanWhole, vec![2, 3])]),
        (format!("{three}Water 7732-18-5 80-100 %\nAcetic acid 64-19-7 5-20 %"), vec![]),
        (format!("{nine}pH: 7\npH: 9"), vec![(Phs, vec![2, 3])]),
        (format!("{nine}pH: 7\npH (concentrate): 9"), vec![(Phs, vec![2, 3])]),
        (format!("{nine}pH: 7-8\npH: 7.5"), vec![]),
        (format!("{nine}pH: 13\npH (1 % solution): 11"), vec![]),
        (format!("{nine}pH: 7\npH: not applicable"), vec![(PhAndNone, vec![2, 3])]),
        (format!("{two}H319\n{nine}pH: 13"), vec![(PhAndStatements, vec![4, 2])]),
        (format!("{two}H314\n{nine}pH: 13"), vec![]),
        (format!("{nine}Density: 1.05 g/mL\nSpecific gravity: 1.20"), vec![(Densities, vec![2, 3])]),
        (format!("{nine}Density: 1.05 g/mL\nDensity: 8.76 lb/gal\nSpecific gravity: 1.05"), vec![]),
        (format!("{fourteen}UN1719\nUN1760"), vec![(Uns, vec![2, 3])]),
        (format!("{fourteen}UN1719\nNot regulated"), vec![(UnAndNotRegulated, vec![2, 3])]),
    ] {
        assert_eq!(clashes(&text), wanted, "{text}");
    }
}
