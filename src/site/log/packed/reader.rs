//! Reads numbers, values and texts of a block.

use super::super::Si;
use std::sync::Arc;

/// What is left of a block, and the table of its texts.
pub struct Reader<'a> {
    left: &'a [u8],
    texts: Vec<Arc<str>>,
}

impl<'a> Reader<'a> {
    /// Reads the table.
    pub fn of(body: &'a [u8]) -> Option<Self> {
        let mut reader = Self { left: body, texts: Vec::new() };
        let count = reader.count()?;
        reader.texts.reserve(count);
        for _ in 0..count {
            let length = reader.count()?;
            let (text, left) = reader.left.split_at_checked(length)?;
            reader.left = left;
            reader.texts.push(std::str::from_utf8(text).ok()?.into());
        }
        Some(reader)
    }

    /// A number, LEB128.
    pub fn number(&mut self) -> Option<u64> {
        let mut number = 0;
        for shift in (0..u64::BITS).step_by(7) {
            let byte = self.byte()?;
            number |= u64::from(byte & 0x7f) << shift;
            if byte < 0x80 {
                return Some(number);
            }
        }
        None
    }

    /// How many there are of something that takes at least a byte each.
    pub fn count(&mut self) -> Option<usize> {
        let count = usize::try_from(self.number()?).ok()?;
        (count <= self.left.len()).then_some(count)
    }

    /// A byte.
    pub fn byte(&mut self) -> Option<u8> {
        let (byte, left) = self.left.split_first()?;
        self.left = left;
        Some(*byte)
    }

    /// Yes or no.
    pub fn flag(&mut self) -> Option<bool> {
        match self.byte()? {
            0 => Some(false),
            1 => Some(true),
            _ => None,
        }
    }

    /// A value, or that it is unknown.
    pub fn value(&mut self) -> Option<Si> {
        if !self.flag()? {
            return Some(Si::UNKNOWN);
        }
        let (bytes, left) = self.left.split_first_chunk()?;
        self.left = left;
        Si::kept(f64::from_le_bytes(*bytes))
    }

    /// A text.
    pub fn text(&mut self) -> Option<Arc<str>> {
        let place = usize::try_from(self.number()?).ok()?;
        self.texts.get(place).cloned()
    }

    /// Whether nothing is left.
    pub fn is_done(&self) -> bool {
        self.left.is_empty()
    }
}
