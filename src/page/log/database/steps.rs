//! The versions of the database, and the step from each to the next.

use super::{ABOUT, META, PACKED, RECORDS};
use crate::page::log::script::{call, get};
use wasm_bindgen::JsValue;

/// A step: what it makes of the version before, by the database and the transaction that changes it.
type Step = fn(&JsValue, &JsValue) -> Result<(), JsValue>;

/// All steps, in order, so many as [`VERSION`] says; none is ever taken away. A record stays as it was written through all of them.
const STEPS: [Step; VERSION as usize] = [
    // 1: the records, what is known of the whole, and fills as they stand.
    |base, _| {
        for name in [RECORDS, META, PACKED] {
            call(base, "createObjectStore", &[&name.into()])?;
        }
        Ok(())
    },
    // 2: which records name which. What was derived is made anew, and that with it.
    |base, whole| {
        call(base, "createObjectStore", &[&ABOUT.into()])?;
        let packed = call(whole, "objectStore", &[&PACKED.into()])?;
        call(&packed, "clear", &[]).map(drop)
    },
];

/// The version as it is now.
pub const VERSION: u32 = 2;

/// Takes a database from a version, 0 for none, to this one.
pub fn take(request: &JsValue, from: f64) -> Result<(), JsValue> {
    let (base, whole) = (get(request, "result")?, get(request, "transaction")?);
    let done = STEPS.iter().enumerate().filter(|(version, _)| *version as f64 >= from);
    done.map(|(_, step)| step).try_for_each(|step| step(&base, &whole))
}
