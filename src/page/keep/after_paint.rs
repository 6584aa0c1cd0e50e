//! Does something once the next frame is painted: what no keystroke has to wait for.

use gloo::events::EventListener;
use gloo::render::{AnimationFrame, request_animation_frame};
use gloo::timers::callback::Timeout;
use std::cell::Cell;
use std::rc::Rc;

/// What is to be done, until it is.
type Job = Rc<Cell<Option<Box<dyn FnOnce()>>>>;

/// Something that is still to be done; dropped before, it is not.
pub struct AfterPaint {
    job: Job,
    _waits: Option<(AnimationFrame, [EventListener; 2])>,
}

impl Drop for AfterPaint {
    fn drop(&mut self) {
        drop(self.job.take());
    }
}

/// Does `job` behind the next frame. A page that goes or is hidden draws none any more: it does it at once.
pub fn after_paint(job: impl FnOnce() + 'static) -> AfterPaint {
    let job: Job = Rc::new(Cell::new(Some(Box::new(job))));
    let document = gloo::utils::document();
    if document.hidden() {
        run(&job);
        return AfterPaint { job, _waits: None };
    }
    let frame = {
        let job = job.clone();
        // What a frame calls runs before it is painted; a timer that it sets comes behind.
        request_animation_frame(move |_| drop(Timeout::new(0, move || run(&job)).forget()))
    };
    let going = when_going({
        let job = job.clone();
        move || run(&job)
    });
    AfterPaint { job, _waits: Some((frame, going)) }
}

/// Does `job` whenever the page goes or is hidden: it may never come back.
pub fn when_going(job: impl Fn() + Clone + 'static) -> [EventListener; 2] {
    let going =
        [("pagehide", gloo::utils::window().into()), ("visibilitychange", gloo::utils::document().into())];
    going.map(|(name, target): (_, web_sys::EventTarget)| {
        let job = job.clone();
        EventListener::new(&target, name, move |_| job())
    })
}

/// Does it, once.
fn run(job: &Job) {
    if let Some(job) = job.take() {
        job();
    }
}
