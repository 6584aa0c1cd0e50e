//! The date that a printed sheet carries.

use gloo::events::EventListener;
use yew::prelude::*;

/// The day by the device's clock, as ISO 8601 writes it; asked again whenever something is printed.
#[hook]
pub fn use_today() -> String {
    let today = use_state_eq(now);
    {
        let today = today.clone();
        use_effect_with((), move |()| {
            let listener =
                EventListener::new(&gloo::utils::window(), "beforeprint", move |_| today.set(now()));
            move || drop(listener)
        });
    }
    (*today).clone()
}

/// The day by the device’s clock, year-month-day.
pub fn now() -> String {
    let date = js_sys::Date::new_0();
    format!("{}-{:02}-{:02}", date.get_full_year(), date.get_month() + 1, date.get_date())
}
