//! Which view is open, by the fragment of the address: back and forward work, nothing is loaded.

use super::keep::event::use_event;
use yew::prelude::*;

/// The views.
#[derive(Clone, Copy, PartialEq)]
pub enum Place {
    /// How much concentrate.
    Fill,
    /// Which setting.
    Flow,
    /// What the shift takes.
    Shift,
    /// What the product does.
    Cautions,
    /// What was filled.
    Log,
    /// What the site keeps and goes by.
    Site,
    /// What can be learnt from it.
    Practice,
}

impl Place {
    /// All, in the order shown.
    pub const ALL: [Self; 7] =
        [Self::Fill, Self::Flow, Self::Shift, Self::Cautions, Self::Log, Self::Site, Self::Practice];

    /// The fragment.
    pub fn code(self) -> &'static str {
        match self {
            Self::Fill => "fill",
            Self::Flow => "flow",
            Self::Shift => "shift",
            Self::Cautions => "cautions",
            Self::Log => "log",
            Self::Site => "site",
            Self::Practice => "practice",
        }
    }

    /// Whether a device that is set to its standards shows it.
    pub fn is_asking(self) -> bool {
        self != Self::Shift
    }

    fn of(hash: &str) -> Self {
        // A fill or a session that a link carries stands behind the view.
        let view = hash.trim_start_matches('#').split('=').next().unwrap_or_default();
        Self::ALL.into_iter().find(|place| view == place.code()).unwrap_or(Self::Fill)
    }
}

/// Whether the page was opened from a file, without a server.
pub fn is_file() -> bool {
    gloo::utils::window().location().protocol().is_ok_and(|protocol| protocol == "file:")
}

/// Follows the address.
#[hook]
pub fn use_place() -> Place {
    Place::of(&use_event("hashchange", address))
}

/// The view that the address names now.
pub fn now() -> Place {
    Place::of(&address())
}

fn address() -> String {
    gloo::utils::window().location().hash().unwrap_or_default()
}
