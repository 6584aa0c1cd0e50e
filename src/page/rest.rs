//! What Fill does not need: with the feature `split` a wasm chunk of its own, loaded when first needed.

use super::aside;
use super::carried;
use super::components::trouble_label;
use super::day;
use super::keep::today;
use super::place::Place;
use super::shared::Shared;
use super::views;
use crate::form::Typed;
use crate::form::saved::{self, Agreement, Doubt};
use crate::form::site::in_force::{Lacking, held_to_standards, lacking};
use crate::number::Marks;
use crate::words::{Argument, Days, Words};
use gloo::timers::callback::Timeout;
use gloo::timers::future::TimeoutFuture;
use std::rc::Rc;
use yew::prelude::*;

/// Milliseconds after the first drawing: by then the answer stands and the device is idle.
const SOON: u32 = 1_500;

/// A view.
pub type View = fn(&Shared) -> Html;

/// The entries of the chunk: pointers into the function table that both chunks share.
#[derive(Clone, Copy)]
pub struct Rest {
    /// Flow.
    pub flow: View,
    /// Shift.
    pub shift: View,
    /// Cautions.
    pub cautions: View,
    /// Log.
    pub log: View,
    /// What stands below Fill's answer: the fill written down.
    pub record: View,
    /// Site.
    pub site: View,
    /// Practice.
    pub practice: View,
    /// The station's other jobs.
    pub station: View,
    /// The guide through a first fill, on whatever view it is.
    pub guide: fn(&Shared, Place) -> Html,
    /// Why a view matters.
    pub why: fn(&Shared, &'static str) -> Html,
    /// Says what a label text that is offered means.
    pub meant: fn(&Shared, &str) -> String,
    /// The English of all views.
    pub words: fn() -> Rc<Words>,
    /// Writes a day as a language does.
    pub day: Days,
    /// Holds what was typed to the standards in force, and says which measures lack a figure.
    pub held: fn(Shared) -> Shared,
    /// What a link brings, and whether the device held nothing before.
    pub carried: fn(&Shared, bool) -> Html,
    /// What another tab did: whether this one is behind, and what looks again.
    pub aside: fn(&Shared, bool, &Callback<()>) -> Html,
    /// Writes an answer into a file's text.
    pub save: fn(saved::View, &Typed, Marks) -> String,
    /// Reads one.
    pub open: fn(&str) -> Result<(saved::View, Typed), Doubt>,
    /// Works one out again.
    pub recompute: fn(&str) -> Result<Agreement, Doubt>,
}

/// The chunk could not be loaded; the next call tries again.
#[derive(Debug)]
pub struct NotLoaded;

#[cfg(feature = "split")]
impl From<wasm_split_helpers::SplitLoaderError> for NotLoaded {
    fn from(_: wasm_split_helpers::SplitLoaderError) -> Self {
        Self
    }
}

// Nothing outside this function may name what it names: it would be in the first chunk, too.
#[cfg_attr(feature = "split", wasm_split_helpers::wasm_split(rest, fallible))]
#[allow(clippy::unnecessary_wraps, reason = "the chunk may not be there; without the feature it always is")]
fn entries() -> Result<Rest, NotLoaded> {
    Ok(Rest {
        flow: views::flow_view,
        shift: views::shift_view,
        cautions: views::cautions_view,
        log: views::log_view,
        record: views::record_and_offer,
        site: views::site_view,
        practice: views::practice_view,
        station: views::station_view,
        guide: views::guide,
        why: views::why,
        meant: |shared, text| shared.words.meant(text),
        words,
        day: day::written,
        held,
        carried: carried::carried,
        aside: aside::aside,
        save: saved::save,
        open: saved::open,
        recompute: saved::recompute,
    })
}

/// The English of all views, read once.
fn words() -> Rc<Words> {
    thread_local! {
        static ENGLISH: Rc<Words> = Rc::new(Words::english().with_days(day::written));
    }
    ENGLISH.with(Rc::clone)
}

/// What a device that is set to its standards shows.
fn held(shared: Shared) -> Shared {
    let typed = Rc::new(held_to_standards(&shared.typed, shared.marks()));
    let lacking = lacking(&typed, shared.marks());
    let shared = Shared { typed, ..shared };
    let told = |one: &Lacking| format!("{} ({})", one.name, trouble_label(&shared, &one.trouble));
    let told = Argument::text(lacking.iter().map(told).collect::<Vec<_>>().join("; "));
    let told = shared.tell("measure-lacking", &[("measures", told)]);
    let ids = lacking.into_iter().map(|one| one.measure).collect();
    Shared { lacking: Rc::new((ids, told)), ..shared }
}

/// Loads the chunk.
///
/// # Errors
/// When the network does not give it.
#[allow(clippy::unused_async, reason = "without the feature there is nothing to wait for")]
pub async fn load() -> Result<Rest, NotLoaded> {
    #[cfg(feature = "split")]
    return entries().await;
    #[cfg(not(feature = "split"))]
    entries()
}

/// Whether the first answer stands for a while: the chunk is loaded then, so that nobody waits for it later.
#[hook]
fn use_soon() -> bool {
    let soon = use_state_eq(|| false);
    {
        let soon = soon.clone();
        use_effect_with((), move |()| {
            let timer = Timeout::new(SOON, move || soon.set(true));
            || drop(timer)
        });
    }
    *soon
}

/// What is known of the chunk.
#[derive(Clone, Copy)]
pub enum Loaded {
    /// It is being loaded, or was not asked for.
    Waiting,
    /// It is here.
    Here(Rest),
    /// It could not be loaded.
    Failed,
}

/// The chunk, which is loaded as soon as it is `wanted`, and after a while in any case.
#[hook]
pub fn use_rest(wanted: bool) -> Loaded {
    let loaded = use_state(|| Loaded::Waiting);
    let soon = use_soon();
    {
        let loaded = loaded.clone();
        // Whoever opens what is missing has it tried again.
        use_effect_with((wanted, soon), move |(wanted, soon)| {
            if (*wanted || *soon) && !matches!(*loaded, Loaded::Here(_)) {
                if matches!(*loaded, Loaded::Failed) {
                    loaded.set(Loaded::Waiting);
                }
                yew::platform::spawn_local(async move {
                    let found = load().await.map_or(Loaded::Failed, Loaded::Here);
                    // Tasks of their own: between them a keystroke is heard.
                    TimeoutFuture::new(0).await;
                    if let Loaded::Here(rest) = found {
                        let words = (rest.words)();
                        TimeoutFuture::new(0).await;
                        // The first day that is written has the browser read its tables.
                        words.day(&today::now());
                        TimeoutFuture::new(0).await;
                    }
                    loaded.set(found);
                });
            }
        });
    }
    *loaded
}
