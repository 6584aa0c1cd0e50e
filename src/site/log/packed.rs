//! Fills as they stand as few bytes that are read fast. They are derived from records and never the only copy of
//! anything: whatever does not read is made anew.
//!
//! A block is: a byte for the version of the layout; a checksum (FNV-1a, 64 bit) of what follows; a table of texts,
//! each once; a row a fill, whose texts are places in that table. Numbers are LEB128, values in SI units the eight
//! bytes of a double (IEEE 754), little-endian.

mod reader;
mod row;
mod writer;

use super::Current;
use crate::document::fnv;
use reader::Reader;
use writer::Writer;

/// The version of the layout: raised with any change of it, or of what a fill has.
const LAYOUT: u8 = 2;

/// The bytes before the table.
const HEAD: usize = 9;

/// Packs fills.
///
/// ```
/// use brimline::site::log::{Fill, Log, Stamp, Words, current, pack, unpack};
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// log.fill(&stamp, Fill::default(), Words::default()).unwrap();
/// let fills = current(&log).fills;
/// let mut block = pack(&fills);
/// assert_eq!(unpack(&block), Some(fills));
/// block[20] ^= 1;
/// assert_eq!(unpack(&block), None);
/// ```
pub fn pack(fills: &[Current]) -> Vec<u8> {
    let mut rows = Writer::default();
    rows.number(fills.len() as u64);
    for fill in fills {
        row::write(&mut rows, fill);
    }
    let body = rows.with_table();
    let mut block = Vec::with_capacity(HEAD + body.len());
    block.push(LAYOUT);
    block.extend(fnv(&body).to_le_bytes());
    block.extend(body);
    block
}

/// Reads what [`pack()`] made; none of it where it is torn, altered, or of another version.
pub fn unpack(block: &[u8]) -> Option<Vec<Current>> {
    let (head, body) = block.split_at_checked(HEAD)?;
    let (layout, sum) = head.split_first()?;
    if *layout != LAYOUT || sum != fnv(body).to_le_bytes() {
        return None;
    }
    let mut reader = Reader::of(body)?;
    let count = reader.count()?;
    let mut fills = Vec::with_capacity(count);
    for _ in 0..count {
        fills.push(row::read(&mut reader)?);
    }
    reader.is_done().then_some(fills)
}
