//! Every byte of a signed file, changed.

use brimline::site::passing::{Chain, Handover, Pin, Secret, admit, read, sign};
use brimline::site::{Area, Floor, Site};
use std::collections::BTreeMap;

/// A change of any one byte is refused with a reason, or changes nothing: the site that is admitted is the one
/// that was signed.
#[test]
fn every_changed_byte_of_a_signed_file_is_caught() {
    let secret = Secret::new([1; 32]);
    let pin = Pin::to(secret.public());
    let site = Site {
        name: "Größe".into(),
        floors: vec![Floor { id: "f".into(), ..Floor::default() }],
        areas: vec![Area { id: "a".into(), floor: "f".into(), ..Area::default() }],
        ..Site::default()
    };
    let file = sign(&site, &secret, 3).expect("it goes out").into_bytes();
    // Each bit, and what JSON is made of in the place of the byte.
    let flips = (0..8).map(|bit| move |byte: u8| byte ^ (1 << bit));
    let puts = b" \n\t\"\\,:{}[]0aAz".map(|put| move |_: u8| put);
    let kinds: Vec<Box<dyn Fn(u8) -> u8>> = flips
        .map(|change| Box::new(change) as Box<dyn Fn(u8) -> u8>)
        .chain(puts.map(|change| Box::new(change) as Box<dyn Fn(u8) -> u8>))
        .collect();
    let mut reasons: BTreeMap<&str, usize> = BTreeMap::new();
    for at in 0..file.len() {
        for change in &kinds {
            let mut changed = file.clone();
            changed[at] = change(file[at]);
            if changed == file {
                continue;
            }
            let reason = match read(&changed) {
                Err(refusal) => refusal.code(),
                Ok(opened) => match admit(opened, Some(&pin)) {
                    Err(why) => why.code(),
                    Ok(admitted) => {
                        assert_eq!(admitted, site, "byte {at} became {:?}", changed[at] as char);
                        "the same site"
                    }
                },
            };
            *reasons.entry(reason).or_default() += 1;
        }
    }
    println!("{} bytes, {} changes: {reasons:#?}", file.len(), reasons.values().sum::<usize>());
    assert!(reasons.values().sum::<usize>() > 20 * file.len());
    assert!(reasons.contains_key("passing-not-admitted-altered") && reasons.contains_key("passing-not-json"));
    assert_eq!(reasons.get("the same site"), None, "no byte of a compact file is without meaning");
}

/// The same for a chain of statements of one key about the next.
#[test]
fn every_changed_byte_of_a_handover_is_caught() {
    let [old, newer, newest] = [1, 2, 3].map(|n| Secret::new([n; 32]));
    let chain = Chain::of(Handover::new(&old, &newer.public())).then(Handover::new(&newer, &newest.public()));
    let file = chain.write().into_bytes();
    let mut caught = 0;
    for at in 0..file.len() {
        for bit in 0..8 {
            let mut changed = file.clone();
            changed[at] ^= 1 << bit;
            let followed = Chain::read(&changed).map(|chain| chain.follow(&Pin::to(old.public())));
            assert!(!matches!(followed, Ok(Ok(_))), "byte {at}, bit {bit}");
            caught += 1;
        }
    }
    println!("{caught} changes of a handover, all caught");
}
