//! What a merge cannot decide.

use serde_json::Value;

/// One of the two sites that are merged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// The site of whoever merges.
    Ours,
    /// The site that came.
    Theirs,
}

/// A field that holds the id of a record.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Use {
    /// The list of the record that holds it.
    pub list: String,
    /// The id of that record.
    pub id: String,
    /// The field.
    pub field: String,
}

/// Where both sites changed the same, and not in the same way. Until somebody decides, what the merged site has
/// is told with each kind.
#[derive(Clone, Debug, PartialEq)]
pub struct Conflict {
    /// The list of the record; empty for what the site says of itself.
    pub list: String,
    /// The id of the record; empty for the site itself and for the order of a list.
    pub id: String,
    /// What people call the record.
    pub name: String,
    /// What clashes.
    pub clash: Clash,
}

/// What clashes.
#[derive(Clone, Debug, PartialEq)]
pub enum Clash {
    /// One field was changed to two things. Ours stands.
    Field {
        /// The field.
        field: String,
        /// What it said before.
        base: Value,
        /// What it says in our site.
        ours: Value,
        /// What it says in theirs.
        theirs: Value,
    },
    /// We removed the record and they changed it. It is removed.
    RemovedHere {
        /// The record as they have it.
        theirs: Value,
    },
    /// They removed the record and we changed it. It stays.
    RemovedThere {
        /// The record as we have it.
        ours: Value,
    },
    /// One removed the record, and a record of the other names it. It stays. Where it is removed after all, those
    /// that name it ask for another one.
    StillUsed {
        /// Who removed it.
        removed_by: Side,
        /// What names it.
        used: Vec<Use>,
    },
    /// Both changed the order of the list. Ours stands.
    Order,
    /// What both say would make records name each other in a circle. Ours stands.
    Circle {
        /// The field.
        field: String,
        /// What it says in our site.
        ours: Value,
        /// What it says in theirs.
        theirs: Value,
    },
}

impl Conflict {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self.clash {
            Clash::Field { .. } => "conflict-field",
            Clash::RemovedHere { .. } => "conflict-removed-here",
            Clash::RemovedThere { .. } => "conflict-removed-there",
            Clash::StillUsed { .. } => "conflict-still-used",
            Clash::Order => "conflict-order",
            Clash::Circle { .. } => "conflict-circle",
        }
    }

    /// The field; empty where the record or the order of the list is in question.
    pub fn field(&self) -> &str {
        match &self.clash {
            Clash::Field { field, .. } | Clash::Circle { field, .. } => field,
            _ => "",
        }
    }

    /// The decision for one side.
    pub fn take(&self, side: Side) -> Decision {
        let field = self.field().to_owned();
        Decision { list: self.list.clone(), id: self.id.clone(), field, side }
    }
}

/// What somebody decided about a [`Conflict`]; [`Conflict::take`] makes it. A record is there or not as on the
/// side that is taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Decision {
    /// The list of the record, as in the conflict.
    pub list: String,
    /// The id of the record.
    pub id: String,
    /// The field.
    pub field: String,
    /// Whose.
    pub side: Side,
}
