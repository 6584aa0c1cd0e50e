//! Writes numbers, values and texts of a block.

use super::super::Si;
use std::collections::HashMap;
use std::sync::Arc;

/// Rows, and the table of their texts.
#[derive(Default)]
pub struct Writer {
    rows: Vec<u8>,
    texts: Vec<Arc<str>>,
    places: HashMap<Arc<str>, u64>,
}

impl Writer {
    /// A number, LEB128.
    pub fn number(&mut self, number: u64) {
        leb(&mut self.rows, number);
    }

    /// A byte.
    pub fn byte(&mut self, byte: u8) {
        self.rows.push(byte);
    }

    /// A value, or that it is unknown.
    pub fn value(&mut self, si: Si) {
        self.byte(u8::from(si.value().is_some()));
        if let Some(value) = si.value() {
            self.rows.extend(value.to_le_bytes());
        }
    }

    /// A text: its place in the table.
    pub fn text(&mut self, text: &Arc<str>) {
        if let Some(place) = self.places.get(text) {
            return self.number(*place);
        }
        let place = self.texts.len() as u64;
        self.texts.push(text.clone());
        self.places.insert(text.clone(), place);
        self.number(place);
    }

    /// The table, then the rows.
    pub fn with_table(self) -> Vec<u8> {
        let mut all = Vec::with_capacity(self.rows.len() * 2);
        leb(&mut all, self.texts.len() as u64);
        for text in &self.texts {
            leb(&mut all, text.len() as u64);
            all.extend(text.as_bytes());
        }
        all.extend(self.rows);
        all
    }
}

fn leb(bytes: &mut Vec<u8>, mut number: u64) {
    loop {
        let [low, ..] = number.to_le_bytes();
        number >>= 7;
        if number == 0 {
            return bytes.push(low & 0x7f);
        }
        bytes.push(low | 0x80);
    }
}
