//! The site that a first visitor finds: invented from top to bottom, and replaceable by typing.

use super::Site;

/// The invented county library and sports hall.
///
/// # Panics
/// Never: a test reads the file.
pub fn demo() -> Site {
    serde_json::from_str(include_str!("demo.json")).expect("the demo file is part of the build")
}
