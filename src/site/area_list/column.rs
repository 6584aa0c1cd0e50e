//! The columns of the list, one row each.

use crate::error::Mistake;
use crate::limits;
use crate::number::Marks;
use crate::site::{Area, Entry, Record, Site};
use crate::trade::alone::Around;
use crate::trade::order::Place;
use crate::trade::soil::Soil;
use crate::units::{self, Duration, Frequency, Length, System, Unit, unit};

/// A column of the list.
#[derive(Debug)]
pub struct Column {
    /// The stable code: in names of inputs and in word keys.
    pub code: &'static str,
    /// What it is called in a file that is written.
    pub header: &'static str,
    /// What else it may be called in one that is read, in lower case, the most telling first.
    pub also: &'static [&'static str],
    /// What its cells hold.
    pub kind: Kind,
}

/// What the cells of a column hold, how they are written and how read.
#[derive(Debug)]
pub enum Kind {
    /// A text as it stands.
    Text {
        /// The text of an area.
        get: fn(&Area) -> &str,
        /// Puts it there.
        set: fn(&mut Area, String),
    },
    /// A number, with its unit in the header.
    Quantity {
        /// The codes of the units that the page offers beside it; the first, or the first of the site's
        /// system, is the usual one.
        units: &'static [&'static str],
        /// What was typed for an area.
        get: fn(&Area) -> &Entry,
        /// Puts it there.
        set: fn(&mut Area, Entry),
        /// What is wrong with it, where anything is.
        check: fn(&Entry, Marks) -> Result<(), Mistake>,
    },
    /// A record of the site, told by its name.
    Record {
        /// Id and name of each.
        known: fn(&Site) -> Vec<(&str, &str)>,
        /// The id that an area holds; empty for none.
        get: fn(&Area) -> &str,
        /// Puts it there.
        set: fn(&mut Area, String),
        /// Whether an area cannot do without.
        needed: bool,
    },
    /// One of a few words.
    Choice {
        /// The words.
        words: &'static [&'static str],
        /// The word of an area.
        get: fn(&Area) -> &'static str,
        /// Puts it there.
        set: fn(&mut Area, &str),
    },
}

const YES_NO: &[&str] = &["yes", "no"];

fn yes(is: bool) -> &'static str {
    if is { "yes" } else { "no" }
}

fn named<T: Record>(all: &[T]) -> Vec<(&str, &str)> {
    all.iter().map(|one| (one.id(), one.name())).collect()
}

/// All columns, in the order in which they are written.
///
/// ```
/// use brimline::site::area_list::COLUMNS;
/// assert_eq!((COLUMNS[0].header, COLUMNS[1].header), ("name", "size"));
/// ```
pub static COLUMNS: [Column; 15] = [
    Column {
        code: "name",
        header: "name",
        also: &["area name", "room name", "room", "space", "zone", "location", "description", "area"],
        kind: Kind::Text { get: |area| &area.name, set: |area, text| area.name = text },
    },
    Column {
        code: "size",
        header: "size",
        also: &["floor area", "surface area", "area size", "floor space", "area"],
        kind: Kind::Quantity {
            units: &["ft2", "m2"],
            get: |area| &area.size,
            set: |area, entry| area.size = entry,
            check: |entry, marks| entry.read::<units::Area>(&limits::AREA, marks).map(drop),
        },
    },
    Column {
        code: "floor",
        header: "floor",
        also: &["flooring", "floor type", "surface", "covering"],
        kind: Kind::Record {
            known: |site| named(&site.floors),
            get: |area| &area.floor,
            set: |area, id| area.floor = id,
            needed: true,
        },
    },
    Column {
        code: "product",
        header: "product",
        also: &["cleaner", "chemical", "detergent"],
        kind: Kind::Record {
            known: |site| named(&site.products),
            get: |area| &area.product,
            set: |area, id| area.product = id,
            needed: false,
        },
    },
    Column {
        code: "machine",
        header: "machine",
        also: &["scrubber", "equipment"],
        kind: Kind::Record {
            known: |site| named(&site.machines),
            get: |area| &area.machine,
            set: |area, id| area.machine = id,
            needed: false,
        },
    },
    Column {
        code: "clean",
        header: "clean",
        also: &["included", "include", "cleaned", "this shift"],
        kind: Kind::Choice {
            words: YES_NO,
            get: |area| yes(area.included),
            set: |area, word| area.included = word == "yes",
        },
    },
    Column {
        code: "place",
        header: "place",
        also: &["place in the shift", "position"],
        kind: Kind::Choice {
            words: &[Place::Free.code(), Place::First.code(), Place::Last.code()],
            get: |area| area.place.code(),
            set: |area, word| area.place = Place::from_code(word).unwrap_or_default(),
        },
    },
    Column {
        code: "opens",
        header: "not before",
        also: &["opens", "open from", "earliest"],
        kind: Kind::Quantity {
            units: &["h", "min"],
            get: |area| &area.opens,
            set: |area, entry| area.opens = entry,
            check: |entry, marks| entry.read_optional::<Duration>(&limits::SHIFT_TIME, marks).map(drop),
        },
    },
    Column {
        code: "closes",
        header: "done by",
        also: &["closes", "open until", "latest", "deadline", "until"],
        kind: Kind::Quantity {
            units: &["h", "min"],
            get: |area| &area.closes,
            set: |area, entry| area.closes = entry,
            check: |entry, marks| entry.read_optional::<Duration>(&limits::SHIFT_TIME, marks).map(drop),
        },
    },
    Column {
        code: "soil",
        header: "soil",
        also: &["soil level", "dirt", "how dirty"],
        kind: Kind::Choice {
            words: &[Soil::Usual.code(), Soil::Heavy.code()],
            get: |area| area.soil.code(),
            set: |area, word| area.soil = Soil::from_code(word).unwrap_or_default(),
        },
    },
    Column {
        code: "loose",
        header: "loose debris",
        also: &["loose", "debris"],
        kind: Kind::Choice {
            words: YES_NO,
            get: |area| yes(area.loose),
            set: |area, word| area.loose = word == "yes",
        },
    },
    Column {
        code: "lane",
        header: "lane",
        also: &["lane width", "aisle width", "aisle", "open width"],
        kind: Kind::Quantity {
            units: &["ft", "m", "in", "cm"],
            get: |area| &area.lane,
            set: |area, entry| area.lane = entry,
            check: |entry, marks| entry.read_optional::<Length>(&limits::LANE, marks).map(drop),
        },
    },
    Column {
        code: "around",
        header: "needs around it",
        also: &["machine needs", "around", "needs"],
        kind: Kind::Choice {
            words: &[Around::Unknown.code(), Around::There.code(), Around::Lacking.code()],
            get: |area| area.around.code(),
            set: |area, word| area.around = Around::from_code(word).unwrap_or_default(),
        },
    },
    Column {
        code: "times",
        header: "times",
        also: &["frequency", "times cleaned", "how often", "often"],
        kind: Kind::Quantity {
            units: &["per_week", "per_day", "per_month", "per_year"],
            get: |area| &area.frequency,
            set: |area, entry| area.frequency = entry,
            check: |entry, marks| entry.read_optional::<Frequency>(&limits::FREQUENCY, marks).map(drop),
        },
    },
    Column {
        code: "way",
        header: "way",
        also: &["way there", "travel time", "walking time"],
        kind: Kind::Quantity {
            units: &["min", "s"],
            get: |area| &area.way,
            set: |area, entry| area.way = entry,
            check: |entry, marks| entry.read_optional::<Duration>(&limits::WAY, marks).map(drop),
        },
    },
];

/// Columns are rows of one table: the code tells them apart.
impl PartialEq for Column {
    fn eq(&self, other: &Self) -> bool {
        self.code == other.code
    }
}

impl Column {
    /// The column of this code.
    ///
    /// ```
    /// use brimline::site::area_list::Column;
    /// assert_eq!(Column::of("opens").map(|column| column.header), Some("not before"));
    /// assert!(Column::of("colour").is_none());
    /// ```
    pub fn of(code: &str) -> Option<&'static Self> {
        COLUMNS.iter().find(|column| column.code == code)
    }

    /// The codes of its units; none where it holds no quantity.
    pub fn units(&self) -> &'static [&'static str] {
        if let Kind::Quantity { units, .. } = &self.kind { units } else { &[] }
    }

    /// The words of its cells; none where it has no list of them.
    pub fn words(&self) -> &'static [&'static str] {
        if let Kind::Choice { words, .. } = &self.kind { words } else { &[] }
    }

    /// The unit that a site of this system uses; none where it holds no quantity.
    ///
    /// ```
    /// use brimline::site::area_list::Column;
    /// use brimline::units::System;
    /// let usual = |code, system| Column::of(code).and_then(|column| column.usual(system)).map(|unit| unit.code);
    /// assert_eq!((usual("lane", System::Imperial), usual("lane", System::Metric)), (Some("ft"), Some("m")));
    /// assert_eq!((usual("times", System::Us), usual("name", System::Us)), (Some("per_week"), None));
    /// ```
    pub fn usual(&self, system: System) -> Option<&'static Unit> {
        let mut own = self.units().iter().filter_map(|code| unit(code));
        own.clone().find(|unit| unit.system == Some(system)).or_else(|| own.next())
    }
}
