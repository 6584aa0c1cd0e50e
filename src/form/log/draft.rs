//! What is typed about the log on this device and not yet written down.
//!
//! It holds initials and notes, so it stays on the device: no saved answer and no passed-on site carries it.

use super::{Entered, Sought};
use crate::coded::coded;
use crate::document::document;
use crate::form::typed::Ask;
use crate::site::Entry;
use crate::site::log::questions::By;

coded! {
    /// What is done on Log.
    #[derive(Default)]
    Part {
        /// Looks at the fills.
        #[default]
        Fills = "fills",
        /// Ticks off the end of the shift.
        Shift = "shift",
        /// Asks.
        Questions = "questions",
        /// Saves, opens, checks and erases.
        Keep = "keep",
    }
}

document! {
    /// What was counted on the shelf.
    Counted {
        /// The id of the product.
        product: String,
        /// Containers, parts of one among them.
        containers: Entry = Entry::new("", "one"),
        /// The day, year-month-day.
        day: String,
    }
}

document! {
    /// All of it.
    Draft {
        /// What people call this device; empty for no name.
        station: String,
        /// Initials of who works at this device on [`Draft::day`].
        by: String,
        /// The day on which they were typed, year-month-day; empty where an earlier version kept them.
        day: String,
        /// Initials of an earlier day, to be taken over by one tap.
        before: String,
        /// What is being done.
        part: Part,
        /// What a person adds to the fill that Fill shows.
        fill: Entered,
        /// What the last record was planned for, as [`planned_for`] tells it; empty where `fill` waits for no other.
        after: String,
        /// A fill that is written down by hand.
        hand: Entered,
        /// Whether it is being written.
        by_hand: bool,
        /// The record that is being corrected, `device/number`; empty for none.
        of: String,
        /// It as it shall be.
        correction: Entered,
        /// Which fills are looked at.
        sought: Sought,
        /// What use is counted by.
        by_what: By = By::Product,
        /// What stands on the shelf.
        stock: Vec<Counted>,
        /// Initials that are to be erased.
        erase: String,
    }
}

/// What a fill is planned for, to tell one plan from another: machine, product and floor.
pub fn planned_for(ask: &Ask) -> String {
    [&*ask.machine, &*ask.product, &*ask.floor].join("\n")
}

impl Draft {
    /// Whether what was added after a record would go with one of another machine, product or floor.
    ///
    /// ```
    /// use brimline::form::log::Draft;
    /// let draft = Draft { after: "machine-a".into(), ..Draft::default() };
    /// assert!(draft.is_of_another("machine-b") && !draft.is_of_another("machine-a"));
    /// assert!(!Draft::default().is_of_another("machine-a"), "nothing was recorded yet");
    /// ```
    pub fn is_of_another(&self, planned_for: &str) -> bool {
        !self.after.is_empty() && self.after != planned_for
    }

    /// Goes on on a day. Initials of another one are asked anew: whoever stands here in the morning may be somebody else.
    ///
    /// * `today`: by the device's clock, year-month-day.
    ///
    /// ```
    /// use brimline::form::log::Draft;
    /// let mut draft = Draft { by: "JD".into(), day: "2026-03-07".into(), ..Draft::default() };
    /// draft.go_on("2026-03-07");
    /// assert_eq!((&*draft.by, draft.offered()), ("JD", None));
    /// draft.go_on("2026-03-08");
    /// assert_eq!((&*draft.by, draft.offered()), ("", Some("JD")));
    /// draft.take_over();
    /// assert_eq!((&*draft.by, draft.offered()), ("JD", None));
    /// ```
    pub fn go_on(&mut self, today: &str) {
        if self.day != today {
            today.clone_into(&mut self.day);
            if !self.by.trim().is_empty() {
                self.before = std::mem::take(&mut self.by);
            }
        }
    }

    /// Initials of an earlier day, while nobody has said whose go with the records of this one.
    pub fn offered(&self) -> Option<&str> {
        let before = self.before.trim();
        (self.by.trim().is_empty() && !before.is_empty()).then_some(before)
    }

    /// Takes the initials of an earlier day over, also for a fill that is being written down by hand.
    pub fn take_over(&mut self) {
        self.by.clone_from(&self.before);
        if self.by_hand && self.hand.who.trim().is_empty() {
            self.hand.who.clone_from(&self.by);
        }
    }

    /// Takes these initials out of all that is typed, since their owner asked for it.
    ///
    /// ```
    /// use brimline::form::log::Draft;
    /// let mut draft = Draft { by: "JD".into(), erase: "jd".into(), ..Draft::default() };
    /// draft.forget("JD");
    /// assert_eq!(draft, Draft::default());
    /// ```
    pub fn forget(&mut self, initials: &str) {
        let wanted = initials.trim().to_lowercase();
        let texts = [
            &mut self.by,
            &mut self.before,
            &mut self.erase,
            &mut self.sought.who,
            &mut self.fill.who,
            &mut self.hand.who,
            &mut self.correction.who,
        ];
        for text in texts {
            if text.trim().to_lowercase() == wanted {
                text.clear();
            }
        }
    }

    /// What was counted of a product; blank where nobody has.
    pub fn counted(&self, product: &str) -> Counted {
        let found = self.stock.iter().find(|one| one.product == product).cloned();
        found.unwrap_or_else(|| Counted { product: product.to_owned(), ..Counted::default() })
    }

    /// The same with another count.
    #[must_use]
    pub fn with_count(mut self, counted: Counted) -> Self {
        self.stock.retain(|one| one.product != counted.product);
        self.stock.push(counted);
        self
    }
}
