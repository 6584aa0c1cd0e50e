//! The form of a record: beside Fill's answer, by hand, and to correct one.

mod whole;

pub use whole::{forms, found, open, read};

use super::fields::{self, lack, number, pick, pick_of, select, tick};
use crate::form::action::Shelf;
use crate::form::log::{Base, DOSES, Draft, Entered, Lack, TANKS, doubts, scale_unit};
use crate::page::components::{named, warnings};
use crate::page::keep::log_draft::change;
use crate::page::shared::Shared;
use crate::site::Entry;
use crate::site::log::{Deviation, Fill, Named, Scale};
use yew::prelude::*;

/// Where the fields of a form stand in the draft.
pub type Of = fn(&mut Draft) -> &mut Entered;

/// So many areas are ticked off; of more they are picked from a list.
const TICKED: usize = 12;

/// What a form draws from.
pub struct Form<'a> {
    /// What every part needs.
    pub shared: &'a Shared,
    /// What is typed.
    pub entered: &'a Entered,
    /// What is in the way.
    pub lacks: &'a [Lack],
    /// Where it stands.
    pub of: Of,
}

impl Form<'_> {
    fn mistake(&self, name: &str, entry: &Entry) -> Option<String> {
        lack(self.shared, self.lacks, name, (&entry.text, &entry.unit))
    }

    fn amount(
        &self,
        name: &'static str,
        entry: &Entry,
        units: &'static [&'static str],
        place: fn(&mut Entered) -> &mut Entry,
    ) -> Html {
        let of = self.of;
        let label = self.shared.say(name);
        let mistake = self.mistake(name, entry);
        number(self.shared, name, label, entry, units, mistake, move |draft| place(of(draft)))
    }

    /// Concentrate as it was measured out.
    pub fn measured(&self) -> Html {
        self.amount("log-measured", &self.entered.measured, DOSES, |entered| &mut entered.measured)
    }

    /// What was planned, where nobody else tells.
    pub fn planned(&self) -> Html {
        let entered = self.entered;
        html! {
            <>
                { self.amount("log-concentrate", &entered.concentrate, DOSES, |entered| &mut entered.concentrate) }
                { self.amount("log-water", &entered.water, TANKS, |entered| &mut entered.water) }
                { self.amount("log-level", &entered.level, TANKS, |entered| &mut entered.level) }
            </>
        }
    }

    /// A reading, and what it tells.
    pub fn reading(&self) -> Html {
        let (of, entered) = (self.of, self.entered);
        let scale = pick(self.shared, "log-scale", entered.scale, move |scale| {
            change(|draft| {
                let entered = of(draft);
                entered.scale = scale;
                scale_unit(scale).clone_into(&mut entered.reading.unit);
            });
        });
        let units: &'static [&'static str] = match entered.scale {
            Scale::None => &["one"],
            Scale::Active => &["mg_per_l"],
            Scale::Ratio => &["percent"],
        };
        let told = lack(self.shared, self.lacks, "log-scale", ("", ""));
        html! {
            <>
                { scale }
                { self.amount("log-reading", &entered.reading, units, |entered| &mut entered.reading) }
                if let Some(told) = told { <p class="mistake">{ told }</p> }
            </>
        }
    }

    /// What was done otherwise, and why.
    ///
    /// * `planned`: whether the product is the planned one: only then can another one have gone in.
    pub fn deviation(&self, planned: bool) -> Html {
        let (of, entered) = (self.of, self.entered);
        let is_open =
            |one: &Deviation| planned || *one != Deviation::OtherProduct || *one == entered.deviation;
        let asks = entered.deviation != Deviation::None || !entered.reason.is_empty();
        html! {
            <>
                { pick_of(self.shared, "log-deviation", entered.deviation, is_open, move |one| change(|draft| of(draft).deviation = one)) }
                if asks { { self.line("log-reason", &entered.reason, false, |entered| &mut entered.reason) } }
            </>
        }
    }

    /// Which other product than the planned one went in: one of the site, or one by its name.
    pub fn other_product(&self, planned: &Named) -> Html {
        let of = self.of;
        let mut options = vec![(String::new(), self.shared.say("log-other-unlisted"))];
        options.extend(named(self.shared, Shelf::Product).into_iter().filter(|(id, _)| **id != *planned.id));
        let chosen = &self.entered.product;
        let known = options.iter().any(|(id, _)| id == chosen);
        let label = self.shared.say("log-other-product");
        let list = select("log-other-product", label, options, if known { chosen } else { "" }, move |id| {
            change(|draft| of(draft).product = id);
        });
        let by_name = !known || chosen.is_empty();
        html! {
            <>
                { list }
                if by_name { { self.line("log-product", &self.entered.unlisted, false, |entered| &mut entered.unlisted) } }
            </>
        }
    }

    /// A line of text.
    pub fn line(
        &self,
        name: &'static str,
        value: &str,
        tall: bool,
        place: fn(&mut Entered) -> &mut String,
    ) -> Html {
        let of = self.of;
        let mistake = lack(self.shared, self.lacks, name, (value, ""));
        fields::text_at(self.shared, name, value, tall, mistake, move |draft| place(of(draft)))
    }

    /// Notes.
    pub fn notes(&self) -> Html {
        self.line("log-notes", &self.entered.notes, true, |entered| &mut entered.notes)
    }

    /// The areas that it is for.
    pub fn areas(&self, known: &[Named]) -> Html {
        let of = self.of;
        let mut all = named(self.shared, Shelf::Area);
        for one in known.iter().filter(|one| !all.iter().any(|(id, _)| **id == *one.id)).collect::<Vec<_>>() {
            all.push((one.id.to_string(), one.name.to_string()));
        }
        if all.is_empty() {
            return Html::default();
        }
        let chosen = &self.entered.areas;
        let few = all.len() <= TICKED;
        let set = move |id: String, on: bool| {
            change(|draft| {
                let areas = &mut of(draft).areas;
                areas.retain(|one| *one != id);
                if on {
                    areas.push(id);
                }
            });
        };
        let ticks = all.iter().enumerate().filter(|(_, (id, _))| few || chosen.contains(id));
        let ticks = ticks.map(|(index, (id, name))| {
            let own = id.clone();
            let on = chosen.contains(id);
            tick(format!("log-area-{}", index + 1), name.clone(), on, move |on| set(own.clone(), on))
        });
        let mut options = vec![(String::new(), self.shared.say("log-area-more"))];
        options.extend(all.iter().filter(|(id, _)| !chosen.contains(id)).cloned());
        html! {
            <fieldset>
                <legend>{ self.shared.say("log-areas") }</legend>
                { for ticks }
                if !few { { select("log-area", self.shared.say("log-area"), options, "", move |id| set(id, true)) } }
            </fieldset>
        }
    }

    /// The machine, the product or the floor.
    fn one_of(
        &self,
        name: &'static str,
        kind: Shelf,
        old: &Named,
        chosen: &str,
        place: fn(&mut Entered) -> &mut String,
    ) -> Html {
        let of = self.of;
        // A fill is of some product; a machine and a floor may be forgotten.
        let unchosen = if kind == Shelf::Product { "log-choose-product" } else { "log-unknown-record" };
        let mut options = vec![(String::new(), self.shared.say(unchosen))];
        options.extend(named(self.shared, kind));
        if !options.iter().any(|(id, _)| **id == *old.id) {
            options.push((old.id.to_string(), old.name.to_string()));
        }
        let list = select(name, self.shared.say(name), options, chosen, move |id| {
            change(|draft| *place(of(draft)) = id);
        });
        let told = lack(self.shared, self.lacks, name, ("", ""));
        html! { <>{ list }if let Some(told) = told { <p class="mistake">{ told }</p> }</> }
    }

    /// What is written down and can hardly be so, or should not be cleaned with.
    fn doubts(&self, result: &Result<Fill, Vec<Lack>>) -> Html {
        let found = result.as_ref().map(|fill| doubts(&self.shared.typed, fill, self.shared.marks()));
        html! { <div role="status">{ for found.iter().map(|found| warnings(self.shared, found)) }</div> }
    }

    /// When it was done, where that is not now.
    fn at(&self) -> Html {
        let (of, entered) = (self.of, self.entered);
        let put =
            |value: &str, name: &'static str, kind: &'static str, place: fn(&mut Entered) -> &mut String| {
                let mistake = lack(self.shared, self.lacks, name, (value, ""));
                let label = self.shared.say(name);
                fields::moment(kind, name, label, value.to_owned(), mistake, move |text| {
                    change(|draft| *place(of(draft)) = text);
                })
            };
        html! {
            <>
                { put(&entered.day, "log-day", "date", |one| &mut one.day) }
                { put(&entered.time, "log-time", "time", |one| &mut one.time) }
            </>
        }
    }

    /// All that a record by hand or a correction has.
    ///
    /// * `who`: what is offered for who did it.
    fn whole(&self, base: &Base, who: Html) -> Html {
        let (entered, old) = (self.entered, &base.fill);
        html! {
            <>
                <div class="fields">
                    { self.at() }
                    { self.one_of("log-product", Shelf::Product, &old.product, &entered.product, |one| &mut one.product) }
                    { self.one_of("log-machine", Shelf::Machine, &old.machine, &entered.machine, |one| &mut one.machine) }
                    { self.one_of("log-floor", Shelf::Floor, &old.floor, &entered.floor, |one| &mut one.floor) }
                    <div>{ self.line("log-done-by", &entered.who, false, |one| &mut one.who) }{ who }</div>
                    { self.planned() }
                    { self.measured() }
                    { self.reading() }
                    { self.deviation(false) }
                </div>
                { self.areas(&old.areas) }
                { self.notes() }
            </>
        }
    }
}
