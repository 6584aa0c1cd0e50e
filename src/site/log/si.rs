//! A number of the log.

use crate::document::{Part, Seen, kept};
use crate::shape::{Shape, Shaped};

/// Significant digits that a number keeps: more than any measure is exact to. Up to fifteen come back from a file
/// bit for bit, whoever reads them (Clinger, PLDI 1990).
const DIGITS: usize = 12;

/// The decimals that it keeps at most: a power of ten up to 22 is exact, too.
const DECIMALS: i32 = 20;

/// No amount is greater.
const MOST: f64 = 1e15;

/// A value in SI units, 0 or above, or unknown; rounded to twelve digits, so that its text and its hash are the same
/// on every device.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Si(Option<f64>);

/// No value is NaN.
impl Eq for Si {}

impl Si {
    /// What nobody knows.
    pub const UNKNOWN: Self = Self(None);

    /// A value; none where it is below 0, no number, or 10¹⁵ and more.
    ///
    /// ```
    /// use brimline::site::log::Si;
    /// assert_eq!(Si::new(0.1 + 0.2).unwrap().value(), Some(0.3));
    /// assert_eq!(Si::new(-1.0), None);
    /// assert_eq!(Si::UNKNOWN.value(), None);
    /// ```
    pub fn new(value: f64) -> Option<Self> {
        (0.0..MOST).contains(&value).then(|| Self(Some(rounded(value))))
    }

    /// A value that is rounded already, as [`Si::value`] gave it.
    pub(super) fn kept(value: f64) -> Option<Self> {
        (0.0..MOST).contains(&value).then_some(Self(Some(value)))
    }

    /// The value, where it is known.
    pub fn value(self) -> Option<f64> {
        self.0
    }
}

/// The nearest value with so many digits: its digits as a whole number, times or by a power of ten, both exact.
fn rounded(value: f64) -> f64 {
    let text = format!("{value:.*e}", DIGITS - 1);
    let (mantissa, exponent) = text.split_once('e').unwrap_or((&text, "0"));
    let digit = |byte: u8| f64::from(byte - b'0');
    let digits = mantissa.bytes().filter(u8::is_ascii_digit).fold(0.0, |sum, byte| sum * 10.0 + digit(byte));
    let last = exponent.parse::<i32>().unwrap_or_default() - 11;
    // Zeros at the end would ask for a larger power than is exact.
    let (mut digits, mut last) = (digits, last);
    while last < 0 && digits > 0.0 && digits % 10.0 == 0.0 {
        (digits, last) = (digits / 10.0, last + 1);
    }
    if last < -DECIMALS {
        let coarse = 10_f64.powi(DECIMALS);
        return (value * coarse).round() / coarse;
    }
    if last < 0 { digits / 10_f64.powi(-last) } else { digits * 10_f64.powi(last) }
}

impl Shaped for Si {
    const SHAPE: &'static Shape = &Shape::Perhaps;
}

impl Part for Si {
    fn blank() -> Self {
        Self::UNKNOWN
    }

    fn seen(&self) -> Seen<'_> {
        self.0.map_or(Seen::Unknown, Seen::Fraction)
    }

    fn take(&mut self, value: Seen) -> bool {
        let taken = match value {
            Seen::Unknown => Some(Self::UNKNOWN),
            // No whole number below 10^15 has more than the 53 bits of an f64.
            Seen::Number(number) => Self::new(number as f64),
            Seen::Fraction(number) => Self::new(number),
            _ => None,
        };
        taken.map(|si| *self = si).is_some()
    }
}

kept!(Si);
