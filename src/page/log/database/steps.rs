//! The versions of the database, and the step from each to the next.

use super::{ABOUT, META, PACKED, RECORDS, has_store, of};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{IdbDatabase, IdbOpenDbRequest, IdbTransaction};

/// A step: what it makes of the version before.
type Step = fn(&IdbDatabase, &IdbTransaction) -> Result<(), JsValue>;

/// All steps, in order, so many as [`VERSION`] says; none is ever taken away. A record stays as it was written through all of them.
const STEPS: [Step; VERSION as usize] = [
    // 1: the records, what is known of the whole, and fills as they stand.
    |base, _| {
        for name in [RECORDS, META, PACKED] {
            if !has_store(base, name) {
                base.create_object_store(name)?;
            }
        }
        Ok(())
    },
    // 2: which records name which. What was derived is made anew, and that with it.
    |base, whole| {
        base.create_object_store(ABOUT)?;
        whole.object_store(PACKED)?.clear()?;
        Ok(())
    },
];

/// The version as it is now.
pub const VERSION: u32 = 2;

/// Takes a database from a version, 0 for none, to this one.
pub fn take(request: &IdbOpenDbRequest, from: f64) -> Result<(), JsValue> {
    let base = of(request)?;
    let whole = request.transaction().ok_or(JsValue::UNDEFINED)?.unchecked_into();
    let done = STEPS.iter().enumerate().filter(|(version, _)| *version as f64 >= from);
    done.map(|(_, step)| step).try_for_each(|step| step(&base, &whole))
}
