//! What the device's clocks say, and turns to breathe in long work.

use gloo::timers::future::TimeoutFuture;
use js_sys::Date;

/// Milliseconds of work at a time: less than a frame, so that nobody feels it.
const SLICE: f64 = 12.0;

/// The clock on the wall and how far it is from UTC, as [`When::read`](crate::site::log::When::read) takes it.
pub fn now() -> String {
    let date = Date::new_0();
    // Minutes from here to UTC: the other way round from how ISO 8601 writes them.
    let ahead = -date.get_timezone_offset();
    let minutes = ahead.abs();
    format!(
        "{:04}-{:02}-{:02}T{:02}:{:02}:{:02}{}{:02}:{:02}",
        date.get_full_year(),
        date.get_month() + 1,
        date.get_date(),
        date.get_hours(),
        date.get_minutes(),
        date.get_seconds(),
        if ahead < 0.0 { '-' } else { '+' },
        (minutes / 60.0).floor(),
        minutes % 60.0,
    )
}

/// Milliseconds since the page was opened: this clock never goes back.
pub fn lapsed() -> f64 {
    gloo::utils::window().performance().map_or_else(Date::now, |clock| clock.now())
}

/// Long work, slice by slice.
pub struct Slices(f64);

impl Slices {
    /// Begins.
    pub fn begin() -> Self {
        Self(lapsed())
    }

    /// Lets the browser draw and answer where the slice is over; whether it was.
    pub async fn breathe(&mut self) -> bool {
        let over = lapsed() - self.0 > SLICE;
        if over {
            TimeoutFuture::new(0).await;
            self.0 = lapsed();
        }
        over
    }
}
