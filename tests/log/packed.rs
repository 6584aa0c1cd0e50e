//! Fills as blocks: nothing is lost in them, and what is not a whole block is refused.

use super::made;
use brimline::site::log::{current, pack, unpack};
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn packed_and_unpacked_is_the_same(log in made::several()) {
        let fills = current(&log).fills;
        prop_assert_eq!(unpack(&pack(&fills)), Some(fills));
    }

    #[test]
    fn a_torn_or_altered_block_is_refused(log in made::one("d1"), at in any::<prop::sample::Index>(), bit in 0..8_u8) {
        let block = pack(&current(&log).fills);
        let at = at.index(block.len());
        prop_assert_eq!(unpack(&block[..at]), None);
        let mut altered = block.clone();
        altered[at] ^= 1 << bit;
        prop_assert_eq!(unpack(&altered), None);
        let mut longer = block;
        longer.push(0);
        prop_assert_eq!(unpack(&longer), None);
    }

    /// One whose checksum was made to fit is read or refused, and never more than its bytes can hold.
    #[test]
    fn hostile_bytes_do_no_harm(body in prop::collection::vec(any::<u8>(), 0..200)) {
        let mut block = vec![2];
        block.extend(brimline::document::fnv(&body).to_le_bytes());
        block.extend(&body);
        if let Some(fills) = unpack(&block) {
            prop_assert!(fills.len() <= body.len());
        }
    }
}

#[test]
fn nothing_packs_to_a_block_too() {
    assert_eq!(unpack(&pack(&[])), Some(Vec::new()));
    assert_eq!(unpack(&[]), None);
}
