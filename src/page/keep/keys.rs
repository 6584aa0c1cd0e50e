//! The supervisor’s key and those before it, the key that this device is pinned to, and the site and the edition that
//! were last passed on or taken.

use super::texts;
use crate::site::passing::{Chain, Pin, Secret, backup, read, write};
use crate::site::{Site, demo};

const SECRET: &str = "brimline.key";
const PIN: &str = "brimline.pin";
const BASE: &str = "brimline.base";
const EDITION: &str = "brimline.edition";
const CHAIN: &str = "brimline.handovers";

/// Whose sites and links this device takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pinned {
    /// Anybody’s.
    No,
    /// Those of one key.
    To(Pin),
    /// What is kept does not read: nobody’s.
    Unreadable,
}

/// The key of this device, where it has one.
pub fn secret() -> Option<Secret> {
    backup::read(&texts::get(SECRET)?).ok()
}

/// Keeps a key.
pub fn keep_secret(secret: &Secret) -> bool {
    texts::put(SECRET, &backup::write(secret))
}

/// A new key, from the browser’s own random numbers; none where it has none to give.
pub fn new_secret() -> Option<Secret> {
    let mut random = [0_u8; 32];
    gloo::utils::window().crypto().ok()?.get_random_values_with_u8_array(&mut random).ok()?;
    Some(Secret::new(random))
}

/// Whose sites and links this device takes.
pub fn pinned() -> Pinned {
    match texts::get(PIN) {
        None => Pinned::No,
        Some(text) => Pin::read(&text).map_or(Pinned::Unreadable, Pinned::To),
    }
}

/// Pins the device to a key, or to none. Pinned once more to the key that it knows, it keeps the edition that it has.
pub fn pin_to(pin: Option<Pin>) -> bool {
    let known = match (pinned(), pin) {
        (Pinned::To(known), Some(pin)) if known.key == pin.key => known.edition,
        _ => 0,
    };
    match pin {
        Some(pin) => texts::put(PIN, &pin.took(known).text()),
        None => texts::remove(PIN),
    }
}

/// The highest edition that was signed or taken here; 0 for none.
pub fn edition() -> u32 {
    texts::get(EDITION).and_then(|text| text.parse().ok()).unwrap_or(0)
}

/// Counts an edition that was signed or taken here, for what is signed next and for what a pinned device takes next.
pub fn count(number: u32) -> bool {
    let counted = texts::put(EDITION, &edition().max(number).to_string());
    match pinned() {
        Pinned::To(pin) => pin_to(Some(pin.took(number))) && counted,
        Pinned::No | Pinned::Unreadable => counted,
    }
}

/// The handovers up to the key of this device, as far as they are known here.
pub fn chain() -> Option<Chain> {
    Chain::read(texts::get(CHAIN)?).ok()
}

/// Keeps them.
pub fn keep_chain(chain: &Chain) -> bool {
    texts::put(CHAIN, &chain.write())
}

/// What two sites have grown apart from: the site that was last passed on or taken, and before that the demo, from
/// which every device starts. Records that are new on both sides are two records, whatever their ids.
pub fn base() -> Site {
    let kept = texts::get(BASE).and_then(|text| read(text).ok());
    kept.map_or_else(demo, |opened| opened.site)
}

/// Keeps it.
pub fn keep_base(site: &Site) -> bool {
    write(site).is_ok_and(|text| texts::put(BASE, &text))
}
