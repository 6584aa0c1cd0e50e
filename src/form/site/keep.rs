//! Keeping the records: what only Site does with them.

use crate::form::action::Shelf;
use crate::form::action::records::{blank, fresh_id, ids, may_go};
use crate::form::{Field, Typed};
use crate::site::{Finish, Record, Standard, Standing, Trial};

/// Adds a blank finish, trial or standard, and chooses it. The other records are added by what every view has.
pub(super) fn add(typed: &mut Typed, shelf: Shelf) {
    let site = &typed.site;
    match shelf {
        Shelf::Finish => {
            let finish = Finish {
                id: fresh_id(
                    ids(&site.finishes).chain(site.floors.iter().map(|floor| floor.finish.as_str())),
                ),
                coverage: blank(typed, Field::FinishCoverage),
                ..Finish::default()
            };
            typed.ask.site.finish.clone_from(&finish.id);
            typed.site.finishes.push(finish);
        }
        Shelf::Trial => {
            let trial = Trial {
                id: fresh_id(ids(&site.trials)),
                floor: typed.ask.floor.clone(),
                product: typed.ask.product.clone(),
                ..Trial::default()
            };
            typed.ask.site.trial.clone_from(&trial.id);
            typed.site.trials.push(trial);
        }
        Shelf::Standard => {
            let standard = Standard {
                id: fresh_id(ids(&site.standards)),
                floor: typed.ask.floor.clone(),
                product: typed.ask.product.clone(),
                ..Standard::default()
            };
            typed.ask.site.standard.clone_from(&standard.id);
            typed.site.standards.push(standard);
        }
        Shelf::Machine | Shelf::Product | Shelf::Floor | Shelf::Measure | Shelf::Area => {}
    }
}

/// `Neutral cleaner` becomes `Neutral cleaner 2`, that becomes `Neutral cleaner 3`: the first that no other has.
fn next_name(name: &str, used: &[&str]) -> String {
    let stem = name.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end();
    let mut number = 2_u32;
    loop {
        let next = format!("{stem} {number}");
        if !used.contains(&next.as_str()) {
            return next;
        }
        number += 1;
    }
}

/// The list of a shelf, whatever it holds: what is done with it and with the id of the chosen one.
macro_rules! on_shelf {
    ($typed:ident, $shelf:ident, $all:ident, $chosen:ident => $do:expr) => {
        match $shelf {
            Shelf::Machine => on_shelf!(@ $typed.site.machines, $typed.ask.machine, $all, $chosen => $do),
            Shelf::Product => on_shelf!(@ $typed.site.products, $typed.ask.product, $all, $chosen => $do),
            Shelf::Floor => on_shelf!(@ $typed.site.floors, $typed.ask.floor, $all, $chosen => $do),
            Shelf::Measure => on_shelf!(@ $typed.site.measures, $typed.ask.measure, $all, $chosen => $do),
            Shelf::Area => on_shelf!(@ $typed.site.areas, $typed.ask.site.area, $all, $chosen => $do),
            Shelf::Finish => on_shelf!(@ $typed.site.finishes, $typed.ask.site.finish, $all, $chosen => $do),
            Shelf::Trial => on_shelf!(@ $typed.site.trials, $typed.ask.site.trial, $all, $chosen => $do),
            Shelf::Standard => on_shelf!(@ $typed.site.standards, $typed.ask.site.standard, $all, $chosen => $do),
        }
    };
    (@ $list:expr, $id:expr, $all:ident, $chosen:ident => $do:expr) => {{
        let ($all, $chosen) = (&mut $list, &mut $id);
        $do
    }};
}

/// Copies a record under a new id and the next name, and chooses the copy. A copied standard is a draft.
pub(super) fn copy(typed: &mut Typed, shelf: Shelf, id: &str) -> Option<()> {
    on_shelf!(typed, shelf, all, chosen => {
        let mut copied = all.iter().find(|one| one.id == id)?.clone();
        copied.id = fresh_id(ids(all));
        let names: Vec<&str> = all.iter().map(|one| one.name.as_str()).collect();
        copied.name = next_name(&copied.name, &names);
        chosen.clone_from(&copied.id);
        all.push(copied);
    });
    if shelf == Shelf::Standard {
        let standard = typed.site.standards.last_mut()?;
        standard.standing = Standing::Draft;
        standard.version = 0;
        for text in
            [&mut standard.effective, &mut standard.published, &mut standard.replaces, &mut standard.proved]
        {
            text.clear();
        }
        standard.overrides.clear();
    }
    Some(())
}

/// Takes a record away that nothing refers to. The last one that a question needs stays, and so does a standard
/// that was published.
pub(super) fn discard(typed: &mut Typed, shelf: Shelf, id: &str) -> Option<()> {
    if !may_go(typed, shelf, id) {
        return None;
    }
    on_shelf!(typed, shelf, all, chosen => {
        all.retain(|one| one.id != id);
        if chosen == id {
            *chosen = all.first().map(|one| one.id.clone()).unwrap_or_default();
        }
    });
    Some(())
}

/// Takes a record out of use or back into it. Trials and standards are never in use in that sense.
pub(super) fn retire(typed: &mut Typed, shelf: Shelf, id: &str, retired: bool) -> Option<()> {
    fn find<'a, T: Record>(all: &'a mut [T], id: &str) -> Option<&'a mut T> {
        all.iter_mut().find(|one| one.id() == id)
    }
    let site = &mut typed.site;
    *match shelf {
        Shelf::Machine => &mut find(&mut site.machines, id)?.retired,
        Shelf::Product => &mut find(&mut site.products, id)?.retired,
        Shelf::Floor => &mut find(&mut site.floors, id)?.retired,
        Shelf::Measure => &mut find(&mut site.measures, id)?.retired,
        Shelf::Area => &mut find(&mut site.areas, id)?.retired,
        Shelf::Finish => &mut find(&mut site.finishes, id)?.retired,
        Shelf::Trial | Shelf::Standard => return None,
    } = retired;
    Some(())
}
