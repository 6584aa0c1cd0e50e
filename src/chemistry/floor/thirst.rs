//! How thirsty a floor is by all that is known of it: a guide to its porosity class, with its reasons.

use super::Surface;
use super::tile::TileClass;
use crate::coded::{Coded, coded};
use crate::source::Source;
use crate::trade::porosity::Porosity;
use crate::units::{Duration, Quantity, VolumeFraction};

coded! {
    /// The texture of a floor.
    #[derive(Default)]
    Texture {
        /// Nobody has said yet.
        #[default]
        Unknown = "unknown",
        /// Smooth or polished.
        Smooth = "smooth",
        /// Textured, profiled or rough: solution stays in its low places.
        Textured = "textured",
    }
}

coded! {
    /// The joints between tiles or boards.
    #[derive(Default)]
    Joints {
        /// Nobody has said yet.
        #[default]
        Unknown = "unknown",
        /// There are none, or they are closed by a film.
        None = "none",
        /// Sealed, or of epoxy.
        Sealed = "sealed",
        /// Open cement: they drink.
        Open = "open",
    }
}

/// What is known of a floor's thirst.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Known {
    /// What it is made of or coated with.
    pub surface: Surface,
    /// The water that its tile takes up, as a share of the tile's mass, 0 or above.
    pub absorption: Option<VolumeFraction>,
    /// Its texture.
    pub texture: Texture,
    /// Its joints.
    pub joints: Joints,
    /// How long a drop of water stays on it, s.
    pub drop: Option<Duration>,
}

/// Why a class is pointed to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reason {
    /// What the floor is made of.
    Surface,
    /// A seal or finish lies over all of it.
    Seal,
    /// A glaze closes the tile, so that the body's absorption does not count.
    Glaze,
    /// How much water the tile takes up, which tells more than what the floor is called.
    Absorption(TileClass),
    /// A drop on this very floor, which tells more than a data sheet.
    Drop,
    /// A drop that a seal should have held: it may be worn.
    WornSeal,
    /// The texture: one class wetter.
    Texture,
    /// The open joints: one class wetter.
    Joints,
    /// Both at once: one class wetter all the same.
    TextureAndJoints,
}

impl Reason {
    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Surface => "class-reason-surface",
            Self::Seal => "class-reason-seal",
            Self::Glaze => "class-reason-glaze",
            Self::Absorption(_) => "class-reason-absorption",
            Self::Drop => "class-reason-drop",
            Self::WornSeal => "class-reason-worn",
            Self::Texture => "class-reason-texture",
            Self::Joints => "class-reason-joints",
            Self::TextureAndJoints => "class-reason-both",
        }
    }
}

/// The reasons in the order of their weight, each with the class that it points to after those before it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Guide {
    /// The reasons; there is at least one.
    pub reasons: Vec<(Reason, Porosity)>,
    /// What the last of them points to.
    pub class: Porosity,
}

/// Where the rules of [`guide`] come from.
pub const SOURCE: Source = Source::COMMON_PRACTICE;

/// The porosity class that all that is known of a floor points to.
///
/// The surface points to a class. The water absorption of the very tile counts before it, unless a seal or
/// a glaze lies over the tile. A drop test of the very floor counts before both ([`Porosity::by_drop`]).
/// Texture or open joints then point one class wetter, but no further than [`Porosity::Medium`]: only a
/// floor that drinks with its whole surface is [`Porosity::High`]. A sealed or finished floor stays
/// [`Porosity::Sealed`] whatever lies under the film, unless the drop test says otherwise.
///
/// * `known`: the absorption as a share, 0 or above; the drop's time in s, 0 or above.
///
/// Returns `None` where neither surface, absorption nor drop is known. A guide that decides nothing: all of
/// it is common practice, no source; the limits of the absorption classes are [`super::tile::SOURCE`].
///
/// ```
/// use brimline::chemistry::floor::Surface;
/// use brimline::chemistry::floor::thirst::{Joints, Known, Texture, guide};
/// use brimline::trade::porosity::Porosity;
/// use brimline::units::VolumeFraction;
/// let tile = Known {
///     surface: Surface::SemiVitreousTile,
///     absorption: Some(VolumeFraction::new(0.02)),
///     texture: Texture::Smooth,
///     joints: Joints::Open,
///     drop: None,
/// };
/// // The surface says medium, 2 % says low, the open joints lift that to medium again.
/// assert_eq!(guide(tile).unwrap().class, Porosity::Medium);
/// ```
pub fn guide(known: Known) -> Option<Guide> {
    let mut reasons = Vec::new();
    let sealed =
        matches!(known.surface, Surface::FinishedVinyl | Surface::SealedWood | Surface::SealedConcrete);
    let glazed = known.surface == Surface::GlazedTile;
    if let Some(class) = by_surface(known.surface) {
        reasons.push((if sealed { Reason::Seal } else { Reason::Surface }, class));
    }
    if let Some(tile) = known.absorption.and_then(|share| TileClass::of(share.percent())) {
        if glazed {
            reasons.push((Reason::Glaze, Porosity::Sealed));
        } else if !sealed {
            reasons.push((Reason::Absorption(tile), by_tile(tile)));
        }
    }
    if let Some(time) = known.drop.filter(|time| time.si() >= 0.0) {
        let class = Porosity::by_drop(time);
        let worn = sealed && class != Porosity::Sealed;
        reasons.push((if worn { Reason::WornSeal } else { Reason::Drop }, class));
    }
    let (_, class) = *reasons.last()?;
    let wetter = match (known.texture, known.joints) {
        (Texture::Textured, Joints::Open) => Some(Reason::TextureAndJoints),
        (Texture::Textured, _) => Some(Reason::Texture),
        (_, Joints::Open) => Some(Reason::Joints),
        _ => None,
    };
    let lifted = match class {
        Porosity::Sealed => Porosity::Low,
        Porosity::Low => Porosity::Medium,
        as_it_is => as_it_is,
    };
    if let Some(reason) = wetter.filter(|_| !sealed && lifted != class) {
        reasons.push((reason, lifted));
    }
    let class = reasons.last().map_or(class, |(_, class)| *class);
    Some(Guide { reasons, class })
}

/// What a floor of this kind mostly is. Common practice, no source.
fn by_surface(surface: Surface) -> Option<Porosity> {
    Some(match surface {
        Surface::Unknown => return None,
        Surface::FinishedVinyl
        | Surface::SealedWood
        | Surface::SealedConcrete
        | Surface::Linoleum
        | Surface::Rubber
        | Surface::GlazedTile
        | Surface::ImperviousTile => Porosity::Sealed,
        Surface::Terrazzo | Surface::Granite | Surface::VitreousTile => Porosity::Low,
        Surface::CalcareousStone | Surface::SemiVitreousTile => Porosity::Medium,
        Surface::NonVitreousTile | Surface::BareConcrete => Porosity::High,
    })
}

/// What a tile of this class drinks. Common practice, no source.
fn by_tile(tile: TileClass) -> Porosity {
    match tile {
        TileClass::Impervious => Porosity::Sealed,
        TileClass::Vitreous => Porosity::Low,
        TileClass::SemiVitreous => Porosity::Medium,
        TileClass::NonVitreous => Porosity::High,
    }
}

/// The word keys of choices and reasons.
pub fn word_keys() -> impl Iterator<Item = String> {
    let reasons = [
        Reason::Surface,
        Reason::Seal,
        Reason::Glaze,
        Reason::Absorption(TileClass::Impervious),
        Reason::Drop,
        Reason::WornSeal,
        Reason::Texture,
        Reason::Joints,
        Reason::TextureAndJoints,
    ];
    let of = |start: &'static str, codes: &'static [&'static str]| {
        codes.iter().map(move |code| format!("{start}-{code}"))
    };
    of("texture", Texture::CODES)
        .chain(of("joints", Joints::CODES))
        .chain(of("class", Porosity::CODES))
        .chain(reasons.map(|reason| reason.key().to_owned()))
}
