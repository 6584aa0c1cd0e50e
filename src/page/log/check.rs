//! Holds every record to its chain.

use super::held::{Check, change, held};
use super::{Trouble, fold, tab};
use crate::site::log::Verifier;

/// Holds every record to its chain and each chain to its end, in slices: the page stays alive. What comes of it
/// lands in [`Held::check`](super::Held::check).
pub fn check_now() {
    if matches!(held().check, Check::Running { .. }) {
        return;
    }
    change(|held| held.check = Check::Running { done: 0, of: 0 });
    yew::platform::spawn_local(async {
        let check = check().await.unwrap_or_else(Check::Failed);
        change(|held| held.check = check);
    });
}

async fn check() -> Result<Check, Trouble> {
    let heads = held().heads.clone();
    let of = heads.iter().map(|head| usize::try_from(head.number).unwrap_or_default()).sum();
    let mut verifier = Verifier::to(&heads);
    let mut records = 0;
    let running = |done| change(|held| held.check = Check::Running { done, of });
    fold::each(
        |record| {
            records += 1;
            verifier.next(&record);
        },
        running,
    )
    .await?;
    tab::tell(|_| {});
    Ok(verifier.finish().map_or_else(Check::Broken, |()| Check::Whole { records }))
}
