//! Below Fill's answer: the fill written down by one tap, and what a person may add to it.

use super::fields::{lack, press};
use super::form::{self, Form};
use super::shift::{left_line, way};
use super::{Props, day, initials, now, told, waiting};
use crate::answer::{Remark, Value};
use crate::form::fill::Fill as Asked;
use crate::form::log::{
    Entered, Lack, Shown, left_undone, measured_remark, plan, planned_for, reading, words,
};
use crate::form::names;
use crate::page::asked;
use crate::page::components::warnings;
use crate::page::focus;
use crate::page::keep::log_draft::{change, use_draft};
use crate::page::log::{self, Held, Stage, use_log};
use crate::page::shared::Shared;
use crate::page::views::fill::amount::in_measure;
use crate::site::log::{Current, Deviation, Fill};
use crate::units::{Kind, Volume};
use crate::words::Argument;
use gloo::timers::callback::Timeout;
use std::cell::RefCell;
use yew::prelude::*;

/// So long the button rests after a fill was recorded, unless the answer changes: no second tap records it twice.
const REST: u32 = 8_000;

thread_local! {
    /// What was recorded last in this tab, and when by [`log::lapsed`]: whoever looks at another view in between comes
    /// back to a button that rests.
    static LATEST: RefCell<Option<(Fill, f64)>> = const { RefCell::new(None) };
}

/// The plan that was just recorded, while the button still rests.
fn just_recorded() -> Option<Fill> {
    let (fill, at) = LATEST.with_borrow(Clone::clone)?;
    (log::lapsed() - at < f64::from(REST)).then_some(fill)
}

/// The part below Fill's answer.
#[component]
pub fn Recording(props: &Props) -> Html {
    let shared = &props.shared;
    let (held, draft) = (use_log(), use_draft());
    let rests = use_state(just_recorded);
    let warned = use_state(|| None::<(Fill, Remark)>);
    // Beside the state, which a second tap may come before: it counts once the view is drawn anew.
    let timer = use_mut_ref(|| None::<(Fill, Timeout)>);
    {
        let (rests, timer) = (rests.clone(), timer.clone());
        use_effect_with((), move |()| {
            if let Some(fill) = just_recorded() {
                *timer.borrow_mut() = Some((fill, Timeout::new(REST, move || rests.set(None))));
            }
        });
    }
    let failed = use_state(|| false);
    let here = planned_for(&shared.typed.ask);
    use_effect_with(draft.is_of_another(&here), |another| {
        // What was added after a record of one machine must not go with one of another.
        if *another {
            change(|draft| {
                draft.fill = Entered::default();
                draft.after.clear();
            });
        }
    });
    let asked = asked::fill(shared);
    let Some(planned) = plan(&shared.typed, &asked, &shown(shared, &asked)) else {
        let stopped = asked.outcome.answer.stopped();
        let told = || {
            html! {
                <p class="hint">{ shared.say("log-stopped") }{ " " }<a href="#log">{ shared.say("log-stopped-way") }</a></p>
            }
        };
        return stopped.then(told).unwrap_or_default();
    };
    let of_plan = [("product", &planned.product.name), ("dose", &planned.concentrate.text)]
        .map(|(name, text)| (name, Argument::text(&**text)));
    let (base, entered) = draft.fill.beside(&planned, &shared.tell("log-planned-other", &of_plan));
    let entered = Entered { who: draft.by.clone(), ..entered };
    let other = entered.deviation == Deviation::OtherProduct;
    let result = form::read(shared, &base, &entered);
    let lacks = result.as_ref().err().cloned().unwrap_or_default();
    let resting = rests.as_ref() == Some(&planned);
    let measured = result.as_ref().ok().and_then(|fill| fill.measured.si.value()).map(Volume::new);
    // The plan says nothing of another product.
    let far = measured
        .filter(|_| !other)
        .and_then(|volume| measured_remark(&shared.typed, &asked, volume, shared.marks()));
    let said = words(&base.entered, &entered, &draft.by);
    let label = match (resting, held.waiting.is_empty()) {
        (false, _) => "record-fill",
        (true, true) => "record-fill-rests",
        (true, false) => "record-fill-waits",
    };
    // After a tap that recorded nothing the word of an earlier record would mislead, also once the way is free.
    let (state, heard) = match (*failed, lacks.first()) {
        (true, Some(first)) => ("mistake", not_recorded(shared, &lacks, first, &entered)),
        (true, None) => ("said", String::new()),
        (false, _) => ("said", confirmed(shared, &held)),
    };
    let goes_with = [("machine", &planned.machine), ("product", &planned.product)]
        .map(|(name, one)| (name, Argument::text(&*one.name)));
    let onclick = {
        let (rests, lacks, failed, planned) = (rests.clone(), lacks.clone(), failed.clone(), planned.clone());
        let (warned, far) = (warned.clone(), far.clone());
        move |_: MouseEvent| {
            let rests_already = timer.borrow().as_ref().is_some_and(|(fill, _)| *fill == planned);
            if resting || rests_already {
                return;
            }
            failed.set(result.is_err());
            let Ok(fill) = &result else {
                return focus::on(lacks.first().map_or("log-details", Lack::at));
            };
            rests.set(Some(planned.clone()));
            // What is in the tank is still in it.
            warned.set(far.clone().map(|far| (planned.clone(), far)));
            LATEST.set(Some((planned.clone(), log::lapsed())));
            let (wakes, timed) = (rests.clone(), timer.clone());
            let wake = Timeout::new(REST, move || {
                timed.borrow_mut().take();
                wakes.set(None);
            });
            *timer.borrow_mut() = Some((planned.clone(), wake));
            log::record(fill.clone(), said.clone());
            change(|draft| {
                draft.fill = Entered::default();
                draft.after.clone_from(&here);
            });
        }
    };
    let told_before = warned.as_ref().filter(|(of, _)| *of == planned).map(|(_, far)| far.clone());
    let form = Form { shared, entered: &draft.fill, lacks: &lacks, of: |draft| &mut draft.fill };
    let by = initials::field(shared, &draft);
    html! {
        <section class="recording" aria-labelledby="recording">
            <h2 id="recording" class="unseen">{ shared.say("log-recording") }</h2>
            { undone(shared, &held) }
            // It stays where it is when it rests, so that the focus does not go.
            <button type="button" class="large" name="record-fill" aria-disabled={resting.to_string()} {onclick}>
                { shared.say(label) }
            </button>
            <p id="log-said" class={state} role="status" tabindex="-1">{ heard }</p>
            { correct_it(shared, &held) }
            { waiting::waiting(shared, &held) }
            { initials::next(shared, &draft) }
            { far.or(told_before).map(|far| warnings(shared, &[far])).unwrap_or_default() }
            // A tabindex of -1 on the fold itself would take its summary out of the tab order: the summary hangs below it.
            <details class="more">
                <summary id="log-details">{ shared.say("log-details") }</summary>
                <p>{ shared.tell(if resting { "log-details-next" } else { "log-details-for" }, &goes_with) }</p>
                <p class="hint">{ shared.say("log-details-hint") }</p>
                <div class="fields">
                    { by }
                    if planned.concentrate.si.value().is_some() { { form.measured() } } else { <p class="hint">{ shared.say("log-no-volume") }</p> }
                    { form.reading() }
                    { form.deviation(true) }
                    if other { { form.other_product(&planned.product) } }
                </div>
                if other {
                    <p class="unknown" data-remark="log-other-rest">
                        { shared.tell("log-other-rest", &of_plan[..1]) }{ " " }<a href="#cautions">{ shared.say("log-other-way") }</a>
                    </p>
                }
                { take_reading(shared) }
                { form.areas(&[]) }
                { form.notes() }
            </details>
        </section>
    }
}

/// The amounts as Fill shows them: in the measure, and what that comes to where it is counted.
pub fn shown(shared: &Shared, asked: &Asked) -> Shown {
    let answer = &asked.outcome.answer;
    let value = |name| answer.get(name);
    let show = |value: Option<Value>| value.map(|value| shared.show(value)).unwrap_or_default();
    let dose = asked.headline().map(|(_, value)| {
        let counted = in_measure(shared, asked, value);
        let poured = answer.get(names::FILL_ROUNDED).or_else(|| answer.get(names::FILL_DOSE));
        match poured.map(|poured| shared.show(poured)) {
            Some(poured) if poured != counted && value.kind != Kind::Mass => format!("{counted} ({poured})"),
            _ => counted,
        }
    });
    Shown {
        dose: dose.unwrap_or_default(),
        water: show(value(names::FILL_WATER)),
        level: show(value(names::FILL_TOTAL)),
    }
}

/// The fill that this tab last had confirmed; none where that was no fill.
fn last(held: &Held) -> Option<&Current> {
    let last = held.last.as_ref()?;
    // It is among the latest unless clocks differ by weeks.
    held.view.fills.iter().rev().take(2_000).find(|one| one.id == last.id)
}

/// Why a tap wrote nothing down.
fn not_recorded(shared: &Shared, lacks: &[Lack], first: &Lack, entered: &Entered) -> String {
    let entry = if first.at() == "log-measured" { &entered.measured } else { &entered.reading };
    let why = lack(shared, lacks, first.at(), (&entry.text, &entry.unit)).unwrap_or_default();
    shared.tell("log-not-recorded", &[("why", Argument::text(why))])
}

/// What the browser has confirmed. A fill of another machine or another day than now is told with both.
pub fn confirmed(shared: &Shared, held: &Held) -> String {
    let Some(saved) = &held.last else { return String::new() };
    let date = saved.when.get(..10).unwrap_or_default();
    let told = [
        ("time", Argument::text(told::clock(&saved.when))),
        ("number", Argument::number(saved.id.number as f64, saved.id.number.to_string())),
    ];
    let now = shared.typed.machine().map(|machine| machine.id.as_str()).unwrap_or_default();
    let today = day().map(|today| today.to_string());
    let is_today = |day: &str| today.as_deref().is_none_or(|today| today == day);
    match last(held) {
        // Of a fill of another day its own day is told, not the one on which it was written down.
        Some(one)
            if !is_today(date) || !is_today(&one.when.date.to_string()) || *one.fill.machine.id != *now =>
        {
            let machine = ("machine", Argument::text(&*one.fill.machine.name));
            let day = ("day", shared.day(&one.when.date.to_string()));
            shared.tell("log-recorded-other", &[&told[..], &[machine, day]].concat())
        }
        _ => shared.tell("log-recorded", &told),
    }
}

fn correct_it(shared: &Shared, held: &Held) -> Html {
    let Some(one) = last(held).cloned() else { return Html::default() };
    let own = shared.clone();
    let open = move || {
        form::open(&own, &one);
        // Without an address the form is found on Log all the same.
        let _ = gloo::utils::window().location().set_hash("log");
    };
    html! { <div class="buttons">{ press(shared, "log-correct-it", open) }</div> }
}

/// What the machine's last shift left undone, also where nobody ticked it off.
fn undone(shared: &Shared, held: &Held) -> Html {
    if !matches!(held.stage, Stage::Open) {
        return Html::default();
    }
    let Some(now) = now() else { return Html::default() };
    let machine = shared.typed.machine().map(|machine| machine.id.as_str()).unwrap_or_default();
    let left = left_undone(&held.view.fills, now);
    let Some(shift) = left.iter().find(|shift| *shift.last.fill.machine.id == *machine) else {
        return Html::default();
    };
    html! {
        <p class="unknown" data-remark="log-left-undone">
            { left_line(shared, ["log-left-undone", "log-left-undone-unticked"], shift) }{ " " }{ way(shared) }
        </p>
    }
}

/// Takes over what the job of reading the strength has worked out.
fn take_reading(shared: &Shared) -> Html {
    let Some((scale, entry)) = reading(&shared.typed, shared.marks()) else { return Html::default() };
    let told = shared.tell("log-reading-take", &[("reading", Argument::text(shared.words.entry(&entry)))]);
    let onclick = move |_: MouseEvent| {
        change(|draft| {
            draft.fill.scale = scale;
            draft.fill.reading = entry.clone();
        });
    };
    html! { <div class="buttons"><button type="button" name="log-reading-take" {onclick}>{ told }</button></div> }
}
