//! What the supervisor does: keeps the site's records, writes standards, brings in a finish.

mod act;
pub mod asked;
pub mod carried;
pub mod chart;
pub mod finish;
pub mod history;
pub mod in_force;
mod keep;
pub mod library;
pub mod proof;
pub mod references;

pub use super::action::records::may_go;
pub use act::{Act, Deed};
pub use proof::changed_since;

use super::action::Shelf;
use crate::coded::coded;
use crate::document::document;
use crate::site::Entry;

coded! {
    /// What a supervisor does on Site.
    #[derive(Default)]
    Part {
        /// Keeps the records.
        #[default]
        Library = "library",
        /// Writes standards, and puts them into force.
        Standards = "standards",
        /// Brings in a finish.
        Finish = "finish",
        /// Prints what hangs on the wall.
        Paper = "paper",
        /// Passes the site on.
        Passing = "passing",
        /// Sets this device.
        Device = "device",
    }
}

document! {
    /// What is asked on Site.
    SiteAsk {
        /// What is being done.
        part: Part,
        /// The shelf that is open.
        shelf: Shelf,
        /// What its records are searched for.
        search: String,
        /// The id of the area.
        area: String,
        /// The id of the finish.
        finish: String,
        /// The id of the trial.
        trial: String,
        /// The id of the standard.
        standard: String,
        /// The floor that is stripped and coated.
        coat_area: Entry = Entry::new("", "ft2"),
        /// The id of the stripper; empty for the product asked about.
        stripper: String,
        /// Its dilution, written as labels are.
        strip_dilution: String,
        /// How much strip solution is laid down: 10 gal/1000 ft² is common practice, no source.
        strip_rate: Entry = Entry::new("10", "gal_us_per_1000ft2"),
        /// How long it stays.
        strip_dwell: Entry = Entry::new("10", "min"),
        /// The pH that the last rinse reads.
        rinse_ph: Entry = Entry::new("", "one"),
        /// The day of the first coat, year-month-day.
        first_coat: String,
        /// The time of the first coat, hours:minutes.
        first_coat_at: String,
    }
}
