//! Practice: exercises made from a site's own machines, products and floors, judged, with their workings.
//!
//! ```text
//! Site -> Stock -> Session -> Exercise -> Verdict -> Attempt -> Class
//! ```
//!
//! | part | what it does |
//! |---|---|
//! | [`Stock`] | what exercises are made of; tells which topics it is enough for |
//! | [`Session`] | a seed, topics, a level and a stock: on every device the same exercises |
//! | [`Exercise`] | what is asked, the key, the usual wrong roads, the workings; data, no sentences |
//! | [`judge()`] | an answer in any unit of the kind: right, right for the measure, wrong and on which road |
//! | [`Run`] | a session under way: the answer, the tries, what came of each exercise |
//! | [`Attempt`] | what one person did, as a document and as a short code |
//! | [`Class`] | what a class did: by topic, and the roads that were taken most |
//! | [`Register`] | the codes that a trainer gathers, and who has shown what until when |
//! | [`Numbers`] | a tank, a cup and a film on a floor to play with |
//! | [`Desk`] | what is chosen, what is under way, what was handed out |
//! | [`first_fill`] | a guide through the page: its steps, where a person is, what the page says of each |
//!
//! Nothing here asks for the time or draws a number of its own: the seed and the date are the caller's. The words
//! stand in `words/en/practice.ftl`, and [`crate::words`] tells an exercise as text for page and paper alike.
//!
//! An exercise teaches arithmetic and habits. At work the label, the safety data sheet, the site's standard and
//! qualified people govern.

mod class;
mod desk;
mod draw;
mod exercise;
pub mod first_fill;
mod judge;
mod numbers;
mod picture;
mod ready;
mod register;
mod result;
mod road;
mod round;
mod run;
mod session;
mod stock;
mod topic;
mod whole;

pub use class::{Class, ClassMistake, Standing, Taken};
pub use desk::{Desk, DeskMistake, Part};
pub use draw::Draw;
pub use exercise::{Amount, Exercise, Fact, Key, Poured, Reason, Said, make};
pub use judge::{Reply, Verdict, judge};
pub use numbers::{Film, Input, Laid, Mix, MixWay, Numbers, SHEET, SLIDER, Seen, USUAL_PARTS, tile};
pub use picture::{Bottles, Fill, Foam, Picture, Range, Rates, Scales, State, Strip, Tanks, Ticket, Wear};
pub use ready::Ready;
pub use register::{Ended, Known, Made, Refused, Register, Shown, is_of, same, shown};
pub use result::{Attempt, CodeMistake, Mark, Tries};
pub use road::{Harm, Led, Road, Way};
pub use run::{Given, Run};
pub use session::{Session, SessionMistake};
pub use stock::Stock;
pub use topic::{Lack, Level, Topic};
pub use whole::whole;

/// The word keys that are put together here.
pub fn word_keys() -> impl Iterator<Item = String> {
    let topics = Topic::ALL.iter().map(|one| format!("practice-topic-{}", one.code()));
    let levels = Level::ALL.iter().flat_map(|one| {
        [format!("practice-level-{}", one.code()), format!("practice-level-{}-is", one.code())]
    });
    let lacks = Lack::ALL.iter().map(|one| format!("practice-lack-{}", one.code()));
    let ways = Way::ALL.iter().map(|one| format!("practice-way-{}", one.code()));
    let harms = Harm::ALL.iter().map(|one| format!("practice-harm-{}", one.code()));
    let made = Way::ON_TICKETS.iter().map(|one| format!("practice-made-{}", one.code()));
    let parts = Part::ALL.iter().map(|one| format!("practice-{}", one.code()));
    let laid = Laid::ALL.iter().map(|one| format!("numbers-laid-{}", one.code()));
    let fields = Input::ALL.iter().map(|one| one.name().to_owned());
    let states =
        ["before", "topped", "found", "drained", "rescued"].map(|one| format!("practice-state-{one}"));
    let tries = Tries::ALL.iter().map(|one| format!("practice-tries-{}", one.code()));
    first_fill::word_keys()
        .chain(topics)
        .chain(levels)
        .chain(parts)
        .chain(tries)
        .chain(lacks)
        .chain(ways)
        .chain(harms)
        .chain(made)
        .chain(laid)
        .chain(fields)
        .chain(states)
}
