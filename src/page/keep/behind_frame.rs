//! What is done behind the frame, a little at a time: between two pieces the page hears what is typed.

use super::after_paint::{AfterPaint, after_paint};
use gloo::events::EventListener;
use gloo::timers::future::TimeoutFuture;
use js_sys::Date;
use std::cell::{Cell, RefCell};
use std::collections::VecDeque;
use std::future::poll_fn;
use std::task::Poll;

/// Milliseconds after which the page listens again. A task of more than 50 is long (W3C, Long Tasks API); a device may be
/// four times slower than this one, and the last piece of a task runs over.
const SLICE: f64 = 5.0;
/// Milliseconds without a key by which typing rests: what comes within them is felt to come at once (R. B. Miller,
/// "Response time in man-computer conversational transactions", 1968, from memory).
const REST: u32 = 100;

/// What is still to be done, the first first.
type Jobs = VecDeque<Box<dyn FnOnce()>>;

thread_local! {
    static WAITING: RefCell<(Jobs, Option<AfterPaint>)> = const { RefCell::new((VecDeque::new(), None)) };
    // Whether something was typed since typing was last seen to rest. No clock: a device sets its own back now and then.
    static TYPED: Cell<bool> = const { Cell::new(false) };
    // Whether somebody waits for all of it, and sees nothing meanwhile.
    static AT_ONCE: Cell<bool> = const { Cell::new(false) };
}

/// Does `job` once the next frame is painted, in the order of the calls.
pub fn then(job: impl FnOnce() + 'static) {
    let first = WAITING.with_borrow_mut(|(jobs, frame)| {
        jobs.push_back(Box::new(job));
        frame.is_none()
    });
    if first {
        busy(true);
        let frame = after_paint(|| yew::platform::spawn_local(work_off()));
        WAITING.with_borrow_mut(|(_, waiting)| *waiting = Some(frame));
    }
}

/// Something was typed: what waits, waits until typing rests.
pub fn hold() {
    TYPED.set(true);
}

/// Does all that waits, in the task that this is called in: what is printed is up to date.
pub fn finish() {
    AT_ONCE.set(true);
    yew::platform::spawn_local(work_off());
}

/// Finishes whenever something is about to be printed.
pub fn finish_before_print() {
    EventListener::new(&gloo::utils::window(), "beforeprint", |_| finish()).forget();
}

fn next() -> Option<Box<dyn FnOnce()>> {
    WAITING.with_borrow_mut(|(jobs, _)| jobs.pop_front())
}

async fn work_off() {
    let mut began = Date::now();
    loop {
        while TYPED.replace(false) && !AT_ONCE.get() {
            TimeoutFuture::new(REST).await;
            began = Date::now();
        }
        let Some(job) = next() else { break };
        job();
        behind_what_waits().await;
        if Date::now() - began >= SLICE && !AT_ONCE.get() {
            TimeoutFuture::new(0).await;
            began = Date::now();
        }
    }
    AT_ONCE.set(false);
    WAITING.with_borrow_mut(|(_, frame)| *frame = None);
    busy(false);
}

/// Goes on behind what waits already: what a job has asked to be drawn is drawn then.
async fn behind_what_waits() {
    let mut waited = false;
    poll_fn(|context| {
        if std::mem::replace(&mut waited, true) {
            return Poll::Ready(());
        }
        context.waker().wake_by_ref();
        Poll::Pending
    })
    .await;
}

/// Says whether parts of the page are still to be drawn (WAI-ARIA 1.2, `aria-busy`).
fn busy(yes: bool) {
    if let Some(page) = gloo::utils::document().get_element_by_id("main") {
        // Setting an attribute of that name cannot fail.
        let _ = page.set_attribute("aria-busy", if yes { "true" } else { "false" });
    }
}
