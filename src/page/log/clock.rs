//! What the device's clocks say, and turns to breathe in long work.

use super::script::{call, get, window};
use crate::site::log::When;
use crate::trade::calendar::Date;
use gloo::timers::future::TimeoutFuture;
use wasm_bindgen::JsValue;

/// Milliseconds of work at a time: less than a frame, so that nobody feels it.
const SLICE: f64 = 12.0;
/// The same where nobody sees the page.
const UNSEEN: f64 = 500.0;
/// Milliseconds between two words on how far it is: drawing them takes time, too.
const TOLD: f64 = 150.0;

/// The clock on the wall and how far it is from UTC, as [`When::read`](crate::site::log::When::read) takes it.
pub fn now() -> String {
    let date: JsValue = js_sys::Date::new_0().into();
    let number = |name| call(&date, name, &[]).ok().and_then(|number| number.as_f64()).map_or(0, whole);
    // Minutes from here to UTC: the other way round from how ISO 8601 writes them.
    let ahead = -number("getTimezoneOffset");
    let local = number("getTime").div_euclid(1_000) + ahead * 60;
    let when = Date::from_days(local.div_euclid(86_400)).map(|date| When {
        date,
        second: local.rem_euclid(86_400),
        offset: ahead,
    });
    when.map(|when| when.to_string()).unwrap_or_default()
}

/// How many minutes local time is ahead of UTC on a day, so many minutes after midnight: summer time counts.
pub fn offset(date: Date, minute: i64) -> i64 {
    let text = format!("{date}T{:02}:{:02}:00", minute / 60, minute % 60);
    let date: JsValue = js_sys::Date::new(&text.into()).into();
    let behind = call(&date, "getTimezoneOffset", &[]).ok().and_then(|number| number.as_f64());
    behind.filter(|behind| behind.is_finite()).map_or(0, |behind| -whole(behind))
}

fn whole(number: f64) -> i64 {
    format!("{number:.0}").parse().unwrap_or_default()
}

/// Milliseconds since the page was opened: this clock never goes back.
pub fn lapsed() -> f64 {
    let lapsed = get(&window(), "performance").and_then(|clock| call(&clock, "now", &[]));
    lapsed.ok().and_then(|lapsed| lapsed.as_f64()).unwrap_or_default()
}

/// Whether nobody sees the page.
fn is_hidden() -> bool {
    get(&window(), "document").and_then(|page| get(&page, "hidden")).is_ok_and(|hidden| hidden.is_truthy())
}

/// Long work, slice by slice.
pub struct Slices {
    began: f64,
    told: f64,
}

impl Slices {
    /// Begins.
    pub fn begin() -> Self {
        Self { began: lapsed(), told: lapsed() }
    }

    /// Lets the browser draw and answer where the slice is over; whether it is time to tell how far the work is.
    pub async fn breathe(&mut self) -> bool {
        // A page that nobody sees gets a turn a second.
        let slice = if is_hidden() { UNSEEN } else { SLICE };
        if lapsed() - self.began < slice {
            return false;
        }
        TimeoutFuture::new(0).await;
        self.began = lapsed();
        let tells = self.began - self.told > TOLD;
        if tells {
            self.told = self.began;
        }
        tells
    }
}
