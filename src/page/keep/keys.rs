//! The supervisor’s key, the key that this device is pinned to, and the site that was last passed on or taken.

use crate::site::passing::{Pin, PublicKey, Secret, backup, read, write};
use crate::site::{Site, demo};
use web_sys::Storage;

const SECRET: &str = "brimline.key";
const PIN: &str = "brimline.pin";
const BASE: &str = "brimline.base";

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

fn storage() -> Option<Storage> {
    gloo::utils::window().local_storage().ok().flatten()
}

fn kept(key: &str) -> Option<String> {
    storage()?.get_item(key).ok()?
}

/// Keeps a text or lets go of it; tells whether the browser took it.
fn keep(key: &str, text: Option<&str>) -> bool {
    let Some(storage) = storage() else { return false };
    match text {
        Some(text) => storage.set_item(key, text).is_ok(),
        None => storage.remove_item(key).is_ok(),
    }
}

/// The key of this device, where it has one.
pub fn secret() -> Option<Secret> {
    backup::read(&kept(SECRET)?).ok()
}

/// Keeps a key.
pub fn keep_secret(secret: &Secret) -> bool {
    keep(SECRET, Some(&backup::write(secret)))
}

/// A new key, from the browser’s own random numbers; none where it has none to give.
pub fn new_secret() -> Option<Secret> {
    let mut random = [0_u8; 32];
    gloo::utils::window().crypto().ok()?.get_random_values_with_u8_array(&mut random).ok()?;
    Some(Secret::new(random))
}

/// Whose sites and links this device takes.
pub fn pinned() -> Pinned {
    match kept(PIN) {
        None => Pinned::No,
        Some(text) => PublicKey::read(&text).map_or(Pinned::Unreadable, |key| Pinned::To(Pin(key))),
    }
}

/// Pins the device to a key, or to none.
pub fn pin_to(key: Option<&PublicKey>) -> bool {
    keep(PIN, key.map(PublicKey::text).as_deref())
}

/// What two sites have grown apart from: the site that was last passed on or taken, and before that the demo, from
/// which every device starts. Records that are new on both sides are two records, whatever their ids.
pub fn base() -> Site {
    let kept = kept(BASE).and_then(|text| read(text).ok());
    kept.map_or_else(demo, |opened| opened.site)
}

/// Keeps it.
pub fn keep_base(site: &Site) -> bool {
    write(site).is_ok_and(|text| keep(BASE, Some(&text)))
}
