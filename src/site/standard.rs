//! What a supervisor writes: a finish, the trial of a product on a floor, and the standard for a floor.

use super::Entry;
use super::record::Record;
use crate::coded::coded;
use crate::document::shaped as document;
use crate::trade::calendar::Date;
use crate::trade::governing::Aim;
use crate::units::System;

document! {
    /// A floor finish: what its maker's sheet says.
    Finish {
        /// Never changes, whatever the name.
        id: String,
        /// What people call it.
        name: String,
        /// The lowest pH that it bears; may be empty.
        ph_low: Entry = Entry::new("", "one"),
        /// The highest.
        ph_high: Entry = Entry::new("", "one"),
        /// Where these are written, in the user's words.
        source: String,
        /// How many coats.
        coats: Entry = Entry::new("", "one"),
        /// What one coat of a volume covers.
        coverage: Entry = Entry::new("", "ft2_per_gal_us"),
        /// How long a coat dries before the next; empty for an estimate from the room's air.
        dry: Entry = Entry::new("", "min"),
        /// The share of it that stays when it dries; may be empty.
        solids: Entry = Entry::new("", "percent"),
        /// How long after the last coat a machine may scrub it wet.
        cure: Entry = Entry::new("", "h"),
        /// Whether it is burnished.
        burnish: bool,
        /// Whether it is out of use.
        retired: bool,
    }
}

coded! {
    /// What somebody saw on a patch after it dried.
    #[derive(Default)]
    Film {
        /// Nobody has looked.
        #[default]
        NotSeen = "not_seen",
        /// No film, no streaks.
        None = "none",
        /// A little, seen against the light.
        Slight = "slight",
        /// Plain to see, or sticky.
        Plain = "plain",
    }
}

document! {
    /// One patch of a trial.
    Patch {
        /// Where in the label's range.
        aim: Aim,
        /// What a gloss meter reads at 60°, in gloss units; may be empty.
        gloss: Entry = Entry::new("", "one"),
        /// The film that stayed.
        film: Film,
        /// What a slip meter reads wet, as a coefficient of friction; may be empty.
        slip: Entry = Entry::new("", "one"),
        /// Anything else, in the user's words.
        note: String,
    }
}

document! {
    /// A product tried on patches of a floor before it becomes the standard.
    Trial {
        /// Never changes.
        id: String,
        /// What people call it.
        name: String,
        /// The id of the floor.
        floor: String,
        /// The id of the product.
        product: String,
        /// The day, year-month-day.
        date: String,
        /// Who looked: initials.
        by: String,
        /// How much use solution is mixed for each patch.
        batch: Entry = Entry::new("1", "l"),
        /// The patches, one an aim.
        patches: Vec<Patch> = Aim::ALL.iter().map(|aim| Patch { aim: *aim, ..Patch::default() }).collect(),
    }
}

coded! {
    /// Where a standard stands.
    #[derive(Default)]
    Standing {
        /// Being written; nobody goes by it.
        #[default]
        Draft = "draft",
        /// What everybody goes by.
        InForce = "in_force",
        /// A later one took its place.
        Replaced = "replaced",
    }
}

document! {
    /// A warning that was overridden, and why.
    Override {
        /// The code of what was found.
        finding: String,
        /// Why it does not count here, in the author's words.
        reason: String,
    }
}

document! {
    /// A machine that a standard is not for, and why.
    LeftOut {
        /// The id of the machine.
        machine: String,
        /// Why, in the author's words.
        reason: String,
    }
}

document! {
    /// A site's written rule for one floor.
    Standard {
        /// Never changes.
        id: String,
        /// What people call it.
        name: String,
        /// The id of the floor.
        floor: String,
        /// The id of the product.
        product: String,
        /// The dilution, written as labels are.
        dilution: String,
        /// The units that "oz" and "gal" in it mean.
        system: System,
        /// The grade of pad or brush, in the user's words.
        pad: String,
        /// The order of work, in the user's words; empty for the usual one.
        order: String,
        /// What to wear beside what the label asks, in the user's words.
        ppe: String,
        /// How long the floor must stay wet; empty for what the label asks.
        contact: Entry = Entry::new("", "min"),
        /// Whether the floor is rinsed with water after it.
        rinse: bool,
        /// How often.
        frequency: Entry = Entry::new("", "per_week"),
        /// The first day it holds, year-month-day.
        effective: String,
        /// Who wrote it.
        author: String,
        /// Its number, from 1.
        version: u32,
        /// Why it is as it is.
        reason: String,
        /// Where it stands.
        standing: Standing,
        /// The day it was published, year-month-day.
        published: String,
        /// The id of the standard whose place it took; empty for none.
        replaces: String,
        /// Warnings that were overridden.
        overrides: Vec<Override>,
        /// Machines that it is not for.
        leaves_out: Vec<LeftOut>,
        /// Checksum of the records that it was checked with when it was published.
        proved: String,
    }
}

impl Standard {
    /// Why it is not for a machine, by the machine's id; none where it is.
    ///
    /// ```
    /// use brimline::site::{LeftOut, Standard};
    /// let leaves_out = vec![LeftOut { machine: "m".into(), reason: "It leaves streaks".into() }];
    /// let standard = Standard { leaves_out, ..Standard::default() };
    /// assert_eq!(standard.left_out("m"), Some("It leaves streaks"));
    /// assert_eq!(standard.left_out("n"), None);
    /// ```
    pub fn left_out(&self, machine: &str) -> Option<&str> {
        self.leaves_out.iter().find(|one| one.machine == machine).map(|one| one.reason.trim())
    }

    /// Its first day, where that reads as one.
    pub fn first_day(&self) -> Option<Date> {
        Date::read(&self.effective)
    }

    /// Whether its first day has come, `today` being year-month-day. Where either day is not known nothing says that
    /// it waits.
    ///
    /// ```
    /// use brimline::site::Standard;
    /// let standard = Standard { effective: "2026-03-01".into(), ..Standard::default() };
    /// assert!(!standard.has_begun("2026-02-28"));
    /// assert!(standard.has_begun("2026-03-01") && standard.has_begun(""));
    /// ```
    pub fn has_begun(&self, today: &str) -> bool {
        !matches!((self.first_day(), Date::read(today)), (Some(first), Some(today)) if first > today)
    }

    /// What comes first where two would hold: the later day, then the higher number.
    pub fn rank(&self) -> (Option<Date>, u32) {
        (self.first_day(), self.version)
    }
}

/// Whether a text says why: two words at least, or ten letters.
///
/// ```
/// use brimline::site::says_why;
/// assert!(says_why("Maker confirmed") && says_why("Neuversiegelung"));
/// assert!(!says_why("x") && !says_why("x x") && !says_why(" ok "));
/// ```
pub fn says_why(text: &str) -> bool {
    let letters = |word: &str| word.chars().filter(|one| one.is_alphanumeric()).count();
    text.split_whitespace().filter(|word| letters(word) > 1).count() > 1 || letters(text) >= 10
}

impl Record for Trial {
    fn id(&self) -> &str {
        &self.id
    }
    fn name(&self) -> &str {
        &self.name
    }
    fn retired(&self) -> bool {
        false
    }
}

impl Record for Standard {
    fn id(&self) -> &str {
        &self.id
    }
    fn name(&self) -> &str {
        &self.name
    }
    fn retired(&self) -> bool {
        self.standing == Standing::Replaced
    }
}
