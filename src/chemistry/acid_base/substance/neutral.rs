//! What neither takes nor gives a proton in a use solution: solvents, surfactants, salts of strong acids
//! and strong bases whose ions are few and large.

use super::{Brings, Substance};
use crate::source::Source;

const fn nothing(cas: &'static str, name: &'static str) -> Substance {
    Substance { cas, name, brings: Brings::Nothing, source: Source::COMMON_PRACTICE }
}

/// The rows. A technical surfactant may carry some alkali from its making.
#[rustfmt::skip]
pub(super) static ALL: &[Substance] = &[
    nothing("7732-18-5", "water"),
    nothing("64-17-5", "ethanol"),
    nothing("67-63-0", "propan-2-ol"),
    nothing("100-51-6", "benzyl alcohol"),
    nothing("56-81-5", "glycerol"),
    nothing("57-55-6", "propane-1,2-diol"),
    nothing("111-76-2", "2-butoxyethanol"),
    nothing("112-34-5", "2-(2-butoxyethoxy)ethanol"),
    nothing("107-98-2", "1-methoxypropan-2-ol"),
    nothing("34590-94-8", "dipropylene glycol methyl ether"),
    nothing("20324-33-8", "tripropylene glycol methyl ether"),
    nothing("5131-66-8", "1-butoxypropan-2-ol"),
    nothing("5989-27-5", "(R)-limonene"),
    nothing("57-13-6", "urea"),
    nothing("68439-46-3", "alcohols C9-11, ethoxylated"),
    nothing("68131-39-5", "alcohols C12-15, ethoxylated"),
    nothing("68439-50-9", "alcohols C12-14, ethoxylated"),
    nothing("68515-73-1", "alkyl polyglucoside C8-10"),
    nothing("110615-47-9", "alkyl polyglucoside C10-16"),
    nothing("151-21-3", "sodium dodecyl sulfate"),
    nothing("9004-82-4", "sodium lauryl ether sulfate"),
    nothing("68585-34-2", "sodium C10-16 ether sulfate"),
    nothing("68891-38-3", "sodium C12-14 ether sulfate"),
    nothing("25155-30-0", "sodium dodecylbenzenesulfonate"),
    nothing("1300-72-7", "sodium xylenesulfonate"),
    nothing("28348-53-0", "sodium cumenesulfonate"),
    nothing("7173-51-5", "didecyldimethylammonium chloride"),
    nothing("68424-85-1", "benzalkonium chloride C12-16"),
    nothing("63449-41-2", "benzalkonium chloride C8-18"),
    nothing("68956-79-6", "ethylbenzalkonium chloride C12-18"),
];
