//! Which fills are looked at.

use super::Seen;
use super::fields::{press, select};
use crate::form::log::{Choices, Sought};
use crate::page::day::month_in;
use crate::page::keep::log_draft::change;
use crate::page::shared::Shared;
use yew::prelude::*;

/// The lists to choose from, and how many fills there are of what is chosen.
pub fn seek(seen: &Seen, found: &Choices, shown: usize) -> Html {
    let (shared, sought) = (&seen.shared, &seen.draft.sought);
    let number = |n: usize| super::told::count(shared, n);
    let all = seen.held.view.fills.len();
    // Told as days are told; what is chosen by stays as it is kept.
    let months: Vec<_> =
        found.months.iter().map(|(id, month)| (id.clone(), month_in(&shared.words, month))).collect();
    html! {
        <section aria-label={shared.say("log-seek")} class="seek">
            <div class="fields">
                { list(shared, "seek-month", &months, &sought.month, |sought| &mut sought.month) }
                { list(shared, "seek-product", &found.products, &sought.product, |sought| &mut sought.product) }
                { list(shared, "seek-machine", &found.machines, &sought.machine, |sought| &mut sought.machine) }
                { list(shared, "seek-area", &found.areas, &sought.area, |sought| &mut sought.area) }
                { list(shared, "seek-standard", &found.standards, &sought.standard, |sought| &mut sought.standard) }
                { list(shared, "seek-who", &found.who, &sought.who, |sought| &mut sought.who) }
            </div>
            <div class="cut">
                <p role="status" data-shown={shown.to_string()}>
                    { shared.tell("log-shown", &[("shown", number(shown)), ("n", number(all))]) }
                </p>
                if *sought != Sought::default() {
                    { press(shared, "seek-all", || change(|draft| draft.sought = Sought::default())) }
                }
            </div>
        </section>
    }
}

fn list(
    shared: &Shared,
    name: &'static str,
    all: &[(String, String)],
    chosen: &str,
    place: fn(&mut Sought) -> &mut String,
) -> Html {
    let mut options = vec![(String::new(), shared.say("seek-any"))];
    options.extend(all.iter().cloned());
    if !options.iter().any(|(id, _)| id == chosen) {
        options.push((chosen.to_owned(), chosen.to_owned()));
    }
    select(name, shared.say(name), options, chosen, move |id| {
        change(|draft| *place(&mut draft.sought) = id);
    })
}
