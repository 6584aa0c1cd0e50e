//! A whole number as it was typed.

use crate::form::What;
use crate::limits::Limit;
use crate::number::Marks;
use crate::site::Entry;
use crate::units::{Plain, Quantity};

/// Reads a whole number within a limit.
///
/// # Errors
/// As of any number of the page, and [`What::Whole`] where it is none.
///
/// ```
/// use brimline::form::What;
/// use brimline::limits;
/// use brimline::number::Marks;
/// use brimline::practice::whole;
/// assert_eq!(whole(" 12 ", &limits::MONTHS, Marks::POINT), Ok(12));
/// assert_eq!(whole("1.5", &limits::MONTHS, Marks::POINT), Err(What::Whole));
/// assert!(matches!(whole("121", &limits::MONTHS, Marks::POINT), Err(What::Number(_))));
/// ```
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held to a limit, and whole")]
pub fn whole(text: &str, limit: &'static Limit, marks: Marks) -> Result<u32, What> {
    let number = Entry::new(text, "one").read::<Plain>(limit, marks).map_err(What::Number)?.si();
    if number.fract() == 0.0 { Ok(number as u32) } else { Err(What::Whole) }
}
