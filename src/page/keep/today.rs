//! The date that a printed sheet carries.

use super::event::use_event;
use yew::prelude::*;

/// The day by the device's clock, as ISO 8601 writes it; asked again whenever something is printed.
#[hook]
pub fn use_today() -> String {
    use_event("beforeprint", now)
}

/// The day by the device’s clock, year-month-day.
pub fn now() -> String {
    let date = js_sys::Date::new_0();
    format!("{}-{:02}-{:02}", date.get_full_year(), date.get_month() + 1, date.get_date())
}
