//! The form of a record: beside Fill's answer, by hand, and to correct one.

use super::fields::{self, lack, number, pick, pick_of, press, select, tick};
use super::list::row_of;
use super::shift::who;
use super::{Seen, now};
use crate::form::action::Shelf;
use crate::form::log::{Base, DOSES, Draft, Entered, Lack, Reader, TANKS, doubts, filled, scale_unit, words};
use crate::page::components::{named, warnings};
use crate::page::focus;
use crate::page::keep::log_draft::change;
use crate::page::log;
use crate::page::shared::Shared;
use crate::site::Entry;
use crate::site::log::{Current, Deviation, Fill, Id, Named, Part, Scale, Words, changed};
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
    fn whole(&self, base: &Base) -> Html {
        let (entered, old) = (self.entered, &base.fill);
        html! {
            <>
                <div class="fields">
                    { self.at() }
                    { self.one_of("log-product", Shelf::Product, &old.product, &entered.product, |one| &mut one.product) }
                    { self.one_of("log-machine", Shelf::Machine, &old.machine, &entered.machine, |one| &mut one.machine) }
                    { self.one_of("log-floor", Shelf::Floor, &old.floor, &entered.floor, |one| &mut one.floor) }
                    { self.line("log-done-by", &entered.who, false, |one| &mut one.who) }
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

/// The way to a record by hand, or the form that is open.
pub fn forms(seen: &Seen) -> Html {
    let (shared, draft) = (&seen.shared, &seen.draft);
    if let Some(one) = found(seen, &draft.of) {
        return correction(seen, one);
    }
    if draft.by_hand {
        return by_hand(seen);
    }
    let own = shared.clone();
    let open = move || {
        let ask = own.typed.ask.clone();
        change(|draft| {
            draft.by_hand = true;
            if draft.hand == Entered::default() {
                draft.hand.machine = ask.machine;
                draft.hand.product = ask.product;
                draft.hand.floor = ask.floor;
                draft.hand.who.clone_from(&draft.by);
            }
        });
        focus::soon("log-form".to_owned());
    };
    html! { <div class="buttons">{ press(shared, "log-by-hand", open) }</div> }
}

/// The fill that a text names.
pub fn found<'a>(seen: &'a Seen, id: &str) -> Option<&'a Current> {
    let id = Id::read(id)?;
    seen.held.view.fills.iter().rev().find(|one| one.id == id)
}

/// The record that the fields say, read as this device's people write, by its clock.
///
/// # Errors
/// What is in the way.
pub fn read(shared: &Shared, base: &Base, entered: &Entered) -> Result<Fill, Vec<Lack>> {
    let write = |entry: &Entry| shared.words.entry(entry);
    let reader = Reader { marks: shared.marks(), write: &write, now: now(), offset: &log::offset };
    filled(base, entered, &shared.typed.site, &reader)
}

fn by_hand(seen: &Seen) -> Html {
    let (shared, draft) = (&seen.shared, &seen.draft);
    let base = Base::default();
    let result = read(shared, &base, &draft.hand);
    let lacks = result.as_ref().err().cloned().unwrap_or_default();
    let form = Form { shared, entered: &draft.hand, lacks: &lacks, of: |draft| &mut draft.hand };
    let doubt = form.doubts(&result);
    let record = {
        let words = words(&base.entered, &draft.hand, &draft.by);
        move || match &result {
            Ok(fill) => {
                log::record(fill.clone(), words.clone());
                change(|draft| {
                    draft.hand = Entered::default();
                    draft.by_hand = false;
                });
                focus::soon("log-said".to_owned());
            }
            Err(lacks) => lead_to(lacks),
        }
    };
    let leave = move || change(|draft| draft.by_hand = false);
    shell(
        shared,
        "log-hand-heading",
        html! {
            <>
                <p class="hint">{ shared.say("log-hand-hint") }</p>
                { form.whole(&base) }
                { doubt }
                <div class="buttons">
                    { press(shared, "log-hand-record", record) }
                    { press(shared, "log-leave-form", leave) }
                </div>
            </>
        },
    )
}

fn correction(seen: &Seen, one: &Current) -> Html {
    let (shared, draft) = (&seen.shared, &seen.draft);
    let base = Base::of(one, shared.system(), shared.marks());
    let result = read(shared, &base, &draft.correction);
    let mut lacks = result.as_ref().err().cloned().unwrap_or_default();
    let no_why = draft.correction.why.trim().is_empty();
    if no_why {
        lacks.push(Lack::Why);
    }
    let form = Form { shared, entered: &draft.correction, lacks: &lacks, of: |draft| &mut draft.correction };
    let doubt = form.doubts(&result);
    let said = words(&base.entered, &draft.correction, &draft.by);
    let unchanged = result.as_ref().is_ok_and(|fill| {
        changed(&base.fill, fill).is_empty()
            && said.clone().with(Part::Why, "").with(Part::By, "") == Words::default()
    });
    let save = {
        let (lacks, id, was, result, said) =
            (lacks.clone(), one.id.clone(), base.fill.clone(), result.clone(), said.clone());
        move || match &result {
            Ok(fill) if lacks.is_empty() => {
                if !unchanged {
                    log::correct(id.clone(), changed(&was, fill), said.clone());
                    close();
                }
            }
            _ => lead_to(&lacks),
        }
    };
    let strike = {
        let (id, was) = (one.id.clone(), base.fill.clone());
        let struck = crate::site::log::Fill { struck: !was.struck, ..was.clone() };
        let said =
            Words::default().with(Part::Why, draft.correction.why.trim()).with(Part::By, draft.by.trim());
        move || {
            if no_why {
                return lead_to(&[Lack::Why]);
            }
            log::correct(id.clone(), changed(&was, &struck), said.clone());
            close();
        }
    };
    shell(
        shared,
        "log-correct-heading",
        html! {
            <>
                <p>{ super::told::title(shared, one) }</p>
                <p class="hint">{ shared.say("log-correct-hint") }</p>
                { form.whole(&base) }
                { doubt }
                { who(seen) }
                { form.line("log-why", &draft.correction.why, false, |entered| &mut entered.why) }
                if unchanged { <p class="hint">{ shared.say("log-nothing-new") }</p> }
                <div class="buttons">
                    { press(shared, "log-correct-save", save) }
                    { press(shared, if base.fill.struck { "log-unstrike" } else { "log-strike" }, strike) }
                    { press(shared, "log-leave-form", close) }
                </div>
                <p class="hint">{ shared.say("log-strike-hint") }</p>
            </>
        },
    )
}

/// Closes the form and goes back to the row that it was about.
fn close() {
    change(|draft| {
        focus::soon(row_of(&draft.of));
        draft.of.clear();
        draft.correction = Entered::default();
    });
}

/// Opens the form that corrects a fill.
pub fn open(shared: &Shared, one: &Current) {
    let base = Base::of(one, shared.system(), shared.marks());
    let id = one.id.to_string();
    change(|draft| {
        // What was typed to correct the same fill goes on.
        if draft.of != id {
            draft.of = id;
            draft.correction = base.entered;
        }
        draft.part = crate::form::log::Part::Fills;
    });
    focus::soon("log-form".to_owned());
}

fn lead_to(lacks: &[Lack]) {
    if let Some(first) = lacks.first() {
        focus::on(first.at());
    }
}

fn shell(shared: &Shared, heading: &'static str, content: Html) -> Html {
    html! {
        <section class="remark news" id="log-form" tabindex="-1" aria-labelledby={heading}>
            <h2 id={heading}>{ shared.say(heading) }</h2>
            { content }
        </section>
    }
}
