//! A guided first fill: which steps there are, where a person is, and what the page says of each.
//!
//! It guides through the page as it stands and changes nothing in it: what is typed, chosen and recorded there is done by
//! the person. No step holds anybody back. What is kept says where a person is, without a name.

mod seen;

pub use seen::{Seen, Standing};

use crate::coded::coded;
use crate::document::document;
use crate::form::cautions::panel;
use crate::site::Product;

coded! {
    /// The steps, in the order of the work.
    #[derive(Default)]
    Step {
        /// What the label asks for is put on.
        #[default]
        Wear = "wear",
        /// The machine is chosen.
        Machine = "machine",
        /// The product is chosen, and its label looked at.
        Product = "product",
        /// The floor is chosen, and its standard read.
        Floor = "floor",
        /// How full, and with which measure.
        Level = "level",
        /// The amount is read, and why water goes first.
        Amount = "amount",
        /// The fill is written down.
        Record = "record",
        /// The end of the shift is ticked off.
        Shift = "shift",
    }
}

coded! {
    /// How far the guide is.
    #[derive(Default)]
    Stage {
        /// Nobody has begun.
        #[default]
        Idle = "idle",
        /// A step is shown.
        Running = "running",
        /// It was left, to be gone on with.
        Paused = "paused",
        /// All steps are behind; what was passed over is shown.
        Ended = "ended",
        /// It was put away.
        Closed = "closed",
    }
}

coded! {
    /// Why water goes into the tank before the product: what may be answered.
    Reason {
        /// The product costs less.
        Cheaper = "cheaper",
        /// It foams and splashes less.
        Splash = "splash",
        /// It makes no difference.
        Same = "same",
    }
}

document! {
    /// A step that is behind.
    Passed {
        /// Which.
        step: Step,
        /// Whether the page said that it was done.
        done: bool,
    }
}

document! {
    /// Where a person is. It has no name; its one time is that of its beginning.
    FirstFill {
        /// How far the guide is.
        stage: Stage,
        /// The step that is shown.
        at: Step,
        /// The steps that are behind, each once.
        passed: Vec<Passed>,
        /// The id of the product for whose label things were put on; empty for none.
        wears_for: String,
        /// What its label asked for then.
        wears: String,
        /// The answer why water goes first; one at most.
        reason: Vec<Reason>,
        /// When it began, as records of the log write their time. What was recorded before is none of it.
        begun: String,
    }
}

impl Step {
    /// Its place among the steps, from 0.
    pub fn place(self) -> usize {
        Self::ALL.iter().position(|one| *one == self).unwrap_or_default()
    }

    /// The key of what there is to do. A device that is set to its standards lets nobody choose a product or change a
    /// label.
    pub fn text_key(self, locked: bool) -> String {
        let fixed = locked && matches!(self, Self::Product | Self::Floor);
        format!("first-fill-{}-{}", self.code(), if fixed { "locked" } else { "do" })
    }

    /// The key of how far this step is. What is chosen is told alike with a warning and without; the warning comes
    /// after it.
    pub fn standing_key(self, standing: Standing) -> String {
        let chosen = matches!(self, Self::Product | Self::Floor | Self::Level);
        let warned = matches!(standing, Standing::Stopped | Standing::Warned);
        let told = if chosen && warned { Standing::Done } else { standing };
        format!("first-fill-{}-{}", self.code(), told.code())
    }

    fn beside(self, by: isize) -> Option<Self> {
        Self::ALL.get(self.place().checked_add_signed(by)?).copied()
    }
}

impl Reason {
    /// Whether it is the reason: water first, and acid into water, never water into acid. Common practice, no source.
    pub const fn is_right(self) -> bool {
        matches!(self, Self::Splash)
    }
}

impl FirstFill {
    /// Begins at the first step, whatever was before.
    ///
    /// * `begun`: now, as the log writes it.
    ///
    /// ```
    /// use brimline::practice::first_fill::{FirstFill, Stage, Step};
    /// let mut guide = FirstFill::begin("2026-03-07T18:30:00-05:00");
    /// assert_eq!((guide.stage, guide.at), (Stage::Running, Step::Wear));
    /// guide.next(false);
    /// guide.pause();
    /// guide.resume();
    /// assert_eq!((guide.stage, guide.at), (Stage::Running, Step::Machine)); // where it was left
    /// ```
    pub fn begin(begun: &str) -> Self {
        Self { stage: Stage::Running, begun: begun.to_owned(), ..Self::default() }
    }

    /// Whether there is something to go on with.
    pub fn is_held(&self) -> bool {
        matches!(self.stage, Stage::Running | Stage::Paused)
    }

    /// Goes on; after the last step the guide has ended. A step that is not done is passed over, which nobody is kept
    /// from.
    ///
    /// * `done`: whether the page says that this one is.
    pub fn next(&mut self, done: bool) {
        if self.stage != Stage::Running {
            return;
        }
        self.passed.retain(|one| one.step != self.at);
        self.passed.push(Passed { step: self.at, done });
        self.passed.sort_by_key(|one| one.step.place());
        match self.at.beside(1) {
            Some(next) => self.at = next,
            None => self.stage = Stage::Ended,
        }
    }

    /// Goes back; from the first step nowhere.
    pub fn back(&mut self) {
        if let (Stage::Running, Some(before)) = (self.stage, self.at.beside(-1)) {
            self.at = before;
        }
    }

    /// Goes to any step, to look at it again.
    pub fn go_to(&mut self, step: Step) {
        self.stage = Stage::Running;
        self.at = step;
    }

    /// Leaves it as it is, to be gone on with.
    pub fn pause(&mut self) {
        if self.stage == Stage::Running {
            self.stage = Stage::Paused;
        }
    }

    /// Goes on where it was left.
    pub fn resume(&mut self) {
        if self.stage == Stage::Paused {
            self.stage = Stage::Running;
        }
    }

    /// Puts it away, all that is left of it passed over.
    pub fn close(&mut self) {
        self.stage = Stage::Closed;
    }

    /// The steps that were passed over, or not come to.
    pub fn skipped(&self) -> impl Iterator<Item = Step> {
        let done = |step: &Step| self.passed.iter().any(|one| one.step == *step && one.done);
        Step::ALL.iter().copied().filter(move |step| !done(step))
    }

    /// Says that what the label asks for is on, or takes it back.
    pub fn put_on(&mut self, product: &Product, on: bool) {
        (self.wears_for, self.wears) =
            if on { (product.id.clone(), asked_for(product)) } else { <(String, String)>::default() };
    }

    /// Whether what this product's label asks for was put on. Another product, or a label that asks for something else
    /// than it did then, is looked at anew.
    pub fn is_on(&self, product: &Product) -> bool {
        !self.wears_for.is_empty() && self.wears_for == product.id && self.wears == asked_for(product)
    }

    /// Whether something was put on, and for something else than what this product's label asks for.
    pub fn is_on_for_another(&self, product: &Product) -> bool {
        !self.wears_for.is_empty() && !self.is_on(product)
    }

    /// Answers why water goes first.
    pub fn say(&mut self, reason: Reason) {
        self.reason = vec![reason];
    }
}

/// What a label asks a person to wear, and whether anybody knows, as codes.
fn asked_for(product: &Product) -> String {
    let panel = panel(product);
    let known = format!("{:?}", panel.knowledge);
    panel.advice.ppe().map(|one| one.key().to_owned()).chain([known]).collect::<Vec<_>>().join(" ")
}

/// The word keys that are put together for the guide.
pub(super) fn word_keys() -> impl Iterator<Item = String> {
    let steps = Step::ALL.iter().flat_map(|step| {
        let title = format!("first-fill-{}", step.code());
        let said = step.standings().iter().map(|one| step.standing_key(*one)).collect::<Vec<_>>();
        [title, step.text_key(false), step.text_key(true)].into_iter().chain(said)
    });
    steps.chain(Reason::ALL.iter().map(|one| format!("first-fill-why-{}", one.code())))
}
