//! What the device's clocks say, and turns to breathe in long work.

use gloo::timers::future::TimeoutFuture;
use js_sys::Date;

/// Milliseconds of work at a time: less than a frame, so that nobody feels it.
const SLICE: f64 = 12.0;
/// The same where nobody sees the page.
const UNSEEN: f64 = 500.0;
/// Milliseconds between two words on how far it is: drawing them takes time, too.
const TOLD: f64 = 150.0;

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
        let slice = if gloo::utils::document().hidden() { UNSEEN } else { SLICE };
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
