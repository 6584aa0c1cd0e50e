//! How much of a long list is drawn: a thousand areas are no use on one screen, and slow to type beside.

use crate::form::Outcome;
use crate::page::shared::Shared;
use crate::words::Argument;
use std::cell::RefCell;
use std::ops::Range;
use std::rc::Rc;
use yew::prelude::*;

/// So many areas are typed on one page of the list.
const AREAS: usize = 25;
/// So many rows a table shows before it is asked for all.
const ROWS: usize = 100;

/// What is drawn of the lists, and how that is changed.
#[derive(Clone)]
pub struct Shown {
    from: UseStateHandle<usize>,
    whole: UseStateHandle<bool>,
    /// Areas of other pages where something was to be mended since this one was turned to: the first right
    /// digit must not take the field away under the hand that types it.
    mended: Rc<RefCell<Vec<usize>>>,
}

/// At first the beginning of each list.
#[hook]
pub fn use_shown() -> Shown {
    Shown { from: use_state(|| 0), whole: use_state(|| false), mended: use_mut_ref(Vec::new) }
}

impl Shown {
    fn page(&self, count: usize) -> Range<usize> {
        // Areas may have gone since the page was turned.
        let last = count.saturating_sub(1) / AREAS * AREAS;
        let from = (*self.from).min(last);
        from..(from + AREAS).min(count)
    }

    /// The areas of this page of the list, and those of other pages where something is to be mended.
    pub fn areas(&self, count: usize, outcome: &Outcome) -> Vec<usize> {
        let page = self.page(count);
        let number = |name: &str| name.strip_prefix("area-")?.split('-').next()?.parse::<usize>().ok();
        let wrong = outcome.troubles.iter().filter_map(|trouble| number(&trouble.name)?.checked_sub(1));
        let mut mended = self.mended.borrow_mut();
        mended.extend(wrong.filter(|area| !page.contains(area)).take(AREAS));
        mended.sort_unstable();
        mended.dedup();
        mended.retain(|area| *area < count);
        let mut shown = mended.clone();
        shown.extend(page);
        shown.sort_unstable();
        shown.dedup();
        shown
    }

    /// Where this page is in the list, and the ways to the others.
    pub fn turn(&self, shared: &Shared, count: usize) -> Html {
        if count <= AREAS {
            return Html::default();
        }
        let page = self.page(count);
        let number = |number: usize| Argument::number(number as f64, shared.words.number(number as f64));
        let place = [("from", number(page.start + 1)), ("to", number(page.end)), ("n", number(count))];
        let to = |name: &'static str, from: Option<usize>| {
            let (handle, mended) = (self.from.clone(), self.mended.clone());
            let disabled = from.is_none();
            let onclick = move |_: MouseEvent| {
                if let Some(from) = from {
                    mended.borrow_mut().clear();
                    handle.set(from);
                }
            };
            html! { <button type="button" {name} {disabled} {onclick}>{ shared.say(name) }</button> }
        };
        html! {
            <div class="buttons">
                { to("areas-before", page.start.checked_sub(AREAS)) }
                { to("areas-after", Some(page.end).filter(|end| *end < count)) }
                <p role="status">{ shared.tell("areas-page", &place) }</p>
            </div>
        }
    }

    /// The rows of a table that are drawn.
    pub fn rows(&self, count: usize, row: impl Fn(usize) -> Html) -> Vec<Html> {
        let drawn = if *self.whole { count } else { count.min(ROWS) };
        (0..drawn).map(row).collect()
    }

    /// The way to the rest of a table, which opens all tables.
    pub fn rest(&self, shared: &Shared, count: usize) -> Html {
        if *self.whole || count <= ROWS {
            return Html::default();
        }
        let whole = self.whole.clone();
        let number = |number: usize| Argument::number(number as f64, shared.words.number(number as f64));
        let told = shared.tell("rows-all", &[("n", number(count))]);
        html! {
            <div class="cut">
                <p>{ shared.tell("rows-cut", &[("shown", number(ROWS)), ("n", number(count))]) }</p>
                <button type="button" name="rows-all" onclick={move |_: MouseEvent| whole.set(true)}>{ told }</button>
            </div>
        }
    }
}
