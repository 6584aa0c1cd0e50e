//! What a supervisor can do with the records, and what it changes.

use super::super::Typed;
use super::super::action::{Action, Shelf};
use super::Part;
use super::keep;
use crate::site::{Film, LeftOut, Site, Standard, Standing};

/// One thing that a supervisor did.
#[derive(Clone, Debug, PartialEq)]
pub enum Act {
    /// Chose what to do.
    Part(Part),
    /// Opened a shelf.
    Shelf(Shelf),
    /// Added a blank finish, trial or standard.
    Add(Shelf),
    /// Copied a record, by its id, and chose the copy.
    Copy(Shelf, String),
    /// Took a record away, by its id, that nothing refers to.
    Discard(Shelf, String),
    /// Took a record out of use, by its id, or back into it.
    Retire(Shelf, String, bool),
    /// Said which finish is on the floor asked about, by its id; none for no finish.
    FloorFinish(String),
    /// Said whether the finish is burnished.
    Burnish(bool),
    /// Chose the stripper, by its id; none for the product asked about.
    Stripper(String),
    /// Chose the floor of the trial, by its id.
    TrialFloor(String),
    /// Chose its product.
    TrialProduct(String),
    /// Said what was seen on a patch, from 0.
    Film(usize, Film),
    /// Chose the floor of the standard, by its id.
    StandardFloor(String),
    /// Chose its product.
    StandardProduct(String),
    /// Said whether the floor is rinsed after it.
    Rinse(bool),
    /// Said that it is, or is not, for a machine, by the machine's id.
    LeaveOut(String, bool),
    /// Began a draft with this floor, product and dilution.
    Draft {
        /// The id of the floor.
        floor: String,
        /// The id of the product.
        product: String,
        /// The dilution.
        dilution: String,
    },
    /// Began a draft that will take the place of the chosen standard.
    Revise,
    /// Put another site, or what came out of two, in the place of this one.
    TakeSite(Box<Site>),
    /// Put the chosen draft into force.
    Publish {
        /// The day, year-month-day.
        date: String,
        /// Checksum of the records that it was checked with.
        proved: String,
    },
}

/// An [`Act`] with what carries it out: the first part of the page, which keeps what was typed, then needs to know
/// neither.
#[derive(Clone, Debug)]
pub struct Deed {
    /// What was done.
    pub act: Act,
    does: fn(&mut Typed, Act) -> Option<()>,
}

impl PartialEq for Deed {
    fn eq(&self, other: &Self) -> bool {
        self.act == other.act
    }
}

impl Deed {
    /// Carries it out.
    pub(in crate::form) fn carry_out(self, typed: &mut Typed) -> Option<()> {
        (self.does)(typed, self.act)
    }
}

impl Act {
    /// Whether it only looks at something else.
    pub fn only_asks(&self) -> bool {
        matches!(self, Self::Part(_) | Self::Shelf(_))
    }

    /// The action that does it.
    pub fn action(self) -> Action {
        Action::Site(Deed { act: self, does: act })
    }
}

/// Carries it out; where the record it is about does not exist, or may not be changed, nothing changes.
fn act(typed: &mut Typed, act: Act) -> Option<()> {
    match act {
        Act::Part(part) => typed.ask.site.part = part,
        Act::Shelf(shelf) => {
            typed.ask.site.shelf = shelf;
            typed.ask.site.search.clear();
        }
        Act::Add(shelf) => {
            keep::add(typed, shelf);
            if shelf == Shelf::Standard {
                number(typed)?;
            }
        }
        Act::Copy(shelf, id) => {
            keep::copy(typed, shelf, &id)?;
            if shelf == Shelf::Standard {
                number(typed)?;
            }
        }
        Act::Discard(shelf, id) => keep::discard(typed, shelf, &id)?,
        Act::Retire(shelf, id, retired) => keep::retire(typed, shelf, &id, retired)?,
        Act::FloorFinish(id) => typed.floor_mut()?.finish = id,
        Act::Burnish(burnish) => typed.finish_mut()?.burnish = burnish,
        Act::Stripper(id) => typed.ask.site.stripper = id,
        Act::TrialFloor(id) => typed.trial_mut()?.floor = id,
        Act::TrialProduct(id) => typed.trial_mut()?.product = id,
        Act::Film(index, film) => typed.trial_mut()?.patches.get_mut(index)?.film = film,
        Act::StandardFloor(id) => {
            typed.draft_mut()?.floor = id;
            number(typed)?;
        }
        Act::StandardProduct(id) => typed.draft_mut()?.product = id,
        Act::Rinse(rinse) => typed.draft_mut()?.rinse = rinse,
        Act::LeaveOut(machine, out) => {
            let draft = typed.draft_mut()?;
            draft.leaves_out.retain(|one| one.machine != machine);
            if out {
                draft.leaves_out.push(LeftOut { machine, reason: String::new() });
            }
        }
        Act::Draft { floor, product, dilution } => {
            keep::add(typed, Shelf::Standard);
            let draft = typed.draft_mut()?;
            (draft.floor, draft.product, draft.dilution) = (floor, product, dilution);
            number(typed)?;
            typed.ask.site.part = Part::Standards;
        }
        Act::Revise => {
            let old = typed.standard()?.clone();
            keep::add(typed, Shelf::Standard);
            let draft = typed.draft_mut()?;
            let replaces = if old.standing == Standing::InForce { old.id.clone() } else { String::new() };
            *draft = Standard {
                id: draft.id.clone(),
                standing: Standing::Draft,
                replaces,
                effective: String::new(),
                published: String::new(),
                reason: String::new(),
                proved: String::new(),
                overrides: Vec::new(),
                ..old
            };
            number(typed)?;
        }
        Act::TakeSite(site) => typed.site = *site,
        Act::Publish { date, proved } => publish(typed, date, proved)?,
    }
    Some(())
}

/// Numbers the draft: one more than the greatest number that a standard for its floor was published with. It counts
/// by the floor that it has then, and anew when it is published.
fn number(typed: &mut Typed) -> Option<()> {
    let floor = typed.draft_mut()?.floor.clone();
    let published = |one: &&Standard| one.floor == floor && one.standing != Standing::Draft;
    let versions = typed.site.standards.iter().filter(published).map(|one| one.version);
    let next = versions.max().unwrap_or(0).saturating_add(1);
    typed.draft_mut()?.version = next;
    Some(())
}

/// Publishes the draft. From its first day on it takes the place of what was published for the same floor before it;
/// what was to begin on that day or later never does.
fn publish(typed: &mut Typed, date: String, proved: String) -> Option<()> {
    number(typed)?;
    let system = typed.system;
    let draft = typed.draft_mut()?;
    if let Some(first) = draft.first_day() {
        draft.effective = first.to_string();
    }
    let (id, floor, first, begun) =
        (draft.id.clone(), draft.floor.clone(), draft.first_day(), draft.has_begun(&date));
    let mut earlier: Vec<&mut Standard> = (typed.site.standards.iter_mut())
        .filter(|one| one.floor == floor && one.standing == Standing::InForce)
        .collect();
    earlier.sort_by_key(|one| one.rank());
    let replaces = earlier.last().map(|one| one.id.clone()).unwrap_or_default();
    for one in earlier {
        if begun || one.first_day() >= first {
            one.standing = Standing::Replaced;
        }
    }
    let standard = typed.site.standards.iter_mut().find(|one| one.id == id)?;
    standard.standing = Standing::InForce;
    standard.system = system;
    standard.replaces = replaces;
    standard.published = date;
    standard.proved = proved;
    Some(())
}
