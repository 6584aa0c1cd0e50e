//! What a tab knows of the log and nobody draws.

use super::database::Database;
use super::held::{Backup, Lost, Stage, change};
use super::meta::{self, Ends, Gap};
use super::{Trouble, tabs};
use crate::site::log::Id;
use std::cell::RefCell;
use std::rc::Rc;

/// What the tab knows.
#[derive(Default)]
struct Tab {
    database: Option<Rc<Database>>,
    device: String,
    ends: Ends,
    backup: Option<meta::Saved>,
    loose: usize,
    unsettled: usize,
}

/// While it lives, the ends that the tab knows and the fills that it holds may not be of one moment.
pub struct Unsettled;

impl Unsettled {
    /// Begins.
    pub fn begin() -> Self {
        TAB.with_borrow_mut(|tab| tab.unsettled += 1);
        Self
    }
}

impl Drop for Unsettled {
    fn drop(&mut self) {
        TAB.with_borrow_mut(|tab| tab.unsettled -= 1);
    }
}

/// Whether the ends and the fills are of one moment.
pub fn is_settled() -> bool {
    TAB.with_borrow(|tab| tab.unsettled == 0)
}

thread_local! {
    static TAB: RefCell<Tab> = RefCell::default();
}

/// The database, opened where it is not.
pub async fn database() -> Result<Rc<Database>, Trouble> {
    let open = TAB.with_borrow(|tab| tab.database.clone()).filter(|database| !database.is_closed());
    if let Some(database) = open {
        return Ok(database);
    }
    let held_up = || change(|held| held.stage = Stage::Shut(Trouble::Blocked));
    let database = Rc::new(Database::open(held_up).await?);
    TAB.with_borrow_mut(|tab| tab.database = Some(database.clone()));
    tabs::listen();
    Ok(database)
}

/// This device; empty where nobody knows yet.
pub fn device() -> String {
    TAB.with_borrow(|tab| tab.device.clone())
}

/// The ends of the chains, as this tab knows them.
pub fn ends() -> Ends {
    TAB.with_borrow(|tab| tab.ends.clone())
}

/// Counts records that no block has; how many there are now.
pub fn loosen(count: usize) -> usize {
    TAB.with_borrow_mut(|tab| {
        tab.loose += count;
        tab.loose
    })
}

/// All records are in blocks.
pub fn packed() {
    TAB.with_borrow_mut(|tab| tab.loose = 0);
}

/// Takes over what the database knows of the whole log.
pub fn know(device: &str, ends: Ends, backup: Option<meta::Saved>, lost: &[Gap]) {
    TAB.with_borrow_mut(|tab| {
        device.clone_into(&mut tab.device);
        for (device, end) in ends {
            know_later(&mut tab.ends, device, end);
        }
        tab.backup = backup;
    });
    tell(|held| {
        let lost = lost.iter().map(|gap| Lost { device: gap.device.clone(), from: gap.from, to: gap.to });
        held.lost = lost.collect();
    });
}

/// Takes over the end of one chain.
pub fn know_end(device: &str, end: meta::End) {
    TAB.with_borrow_mut(|tab| know_later(&mut tab.ends, device.to_owned(), end));
}

/// A chain only grows: what was read before it did changes nothing.
fn know_later(ends: &mut Ends, device: String, end: meta::End) {
    match ends.get_mut(&device) {
        Some(known) if known.number > end.number => {}
        Some(known) => *known = end,
        None => drop(ends.insert(device, end)),
    }
}

/// Takes over a backup.
pub fn know_backup(saved: meta::Saved) {
    TAB.with_borrow_mut(|tab| tab.backup = Some(saved));
}

/// Changes what the page holds, and what follows from the ends of the chains with it.
pub fn tell(with: impl FnOnce(&mut super::Held)) {
    let (device, heads, back, backup) = TAB.with_borrow(|tab| {
        let back = tab.ends.get(&tab.device).map(|end| end.back.clone()).unwrap_or_default();
        let backup = tab.backup.as_ref().map(|saved| since(saved, &tab.ends));
        (tab.device.clone(), meta::heads(&tab.ends), back, backup)
    });
    change(|held| {
        held.clock_back = back.into_iter().map(|number| Id::new(device.as_str(), number)).collect();
        held.device = device;
        held.heads = heads;
        held.backup = backup;
        with(held);
    });
}

fn since(saved: &meta::Saved, ends: &Ends) -> Backup {
    let in_it = |device: &String| {
        saved.heads.iter().find(|head| head.device == *device).map_or(0, |head| head.number)
    };
    let since: u64 = ends.iter().map(|(device, end)| end.number.saturating_sub(in_it(device))).sum();
    Backup { when: saved.when.clone(), since: usize::try_from(since).unwrap_or(usize::MAX) }
}
