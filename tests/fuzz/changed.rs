//! Right texts, changed at random.

use fastrand::Rng;

/// Pieces that readers of any kind stumble over.
const PIECES: [&str; 40] = [
    "\"",
    "\\",
    "{",
    "}",
    "[",
    "]",
    ",",
    ";",
    ":",
    "\t",
    "\n",
    "\r\n",
    "\0",
    "null",
    "true",
    "1e999",
    "-0",
    "NaN",
    "\u{feff}",
    "\u{a0}",
    "\u{ad}",
    "\u{2009}",
    "\u{202e}",
    "½",
    "⅔",
    "⁄",
    "−",
    "١",
    "漢",
    "🧹",
    "é",
    "\\ud800",
    "1:",
    "oz/gal",
    "%",
    "per",
    "0.0000000000000000001",
    "99999999999999999999",
    "=1+1",
    "'",
];

/// One of the right texts with a few changes, or rarely none.
pub fn changed(corpus: &[Vec<u8>], rng: &mut Rng) -> Vec<u8> {
    let mut text = corpus[rng.usize(..corpus.len())].clone();
    for _ in 0..rng.usize(..5) {
        change(&mut text, corpus, rng);
    }
    text
}

fn change(text: &mut Vec<u8>, corpus: &[Vec<u8>], rng: &mut Rng) {
    let at = rng.usize(..=text.len());
    let until = (at + 1 + rng.usize(..8)).min(text.len());
    match rng.u8(..9) {
        0 if at < text.len() => text[at] = rng.u8(..),
        1 => drop(text.drain(at..until)),
        2 => {
            let again = text[at..until].to_vec();
            text.splice(at..at, again);
        }
        3 => drop(text.splice(at..at, PIECES[rng.usize(..PIECES.len())].bytes())),
        4 => drop(text.splice(at..until, PIECES[rng.usize(..PIECES.len())].bytes())),
        5 => {
            // A digit stays a digit: what is said changes, not how.
            let digits: Vec<usize> = (0..text.len()).filter(|at| text[*at].is_ascii_digit()).collect();
            if let Some(at) = rng.choice(digits) {
                text[at] = rng.u8(b'0'..=b'9');
            }
        }
        6 if rng.u8(..4) == 0 => text.truncate(at),
        7 => {
            let other = &corpus[rng.usize(..corpus.len())];
            let from = rng.usize(..=other.len());
            let to = (from + rng.usize(..40)).min(other.len());
            text.splice(at..at, other[from..to].iter().copied());
        }
        _ if at < text.len() => {
            let other = rng.usize(..text.len());
            text.swap(at, other);
        }
        _ => {}
    }
}

/// The same of texts.
pub fn corpus<T: AsRef<str>>(texts: impl IntoIterator<Item = T>) -> Vec<Vec<u8>> {
    texts.into_iter().map(|text| text.as_ref().as_bytes().to_vec()).collect()
}
