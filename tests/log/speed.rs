//! How long large logs take.

use brimline::site::log::questions::{By, Filter, dosing, usage};
use brimline::site::log::{
    Amount, Fill, Kind, Log, Named, Part, Record, Stamp, Words, current, pack, read, unpack, verify, write,
};
use brimline::trade::calendar::Date;
use std::time::{Duration, Instant};

/// Fills of three carts over some years.
fn fills(count: usize) -> impl Iterator<Item = (&'static str, String, Fill, &'static str, [u8; 32])> {
    let mut random = fastrand::Rng::with_seed(11);
    (0..count).map(move |number| {
        let day = Date::from_days(20_000 + i64::try_from(number / 60).expect("few")).expect("a day");
        let when = format!("{day}T{:02}:30:00-05:00", number % 24);
        let mut pick = |kind: &str, of: u8| {
            let at = random.u8(..of);
            Named::new(format!("{kind}-{at}"), format!("{kind} {at}"))
        };
        let names =
            [pick("machine", 8), pick("area", 60), pick("product", 6), pick("floor", 9), pick("standard", 9)];
        let [machine, area, product, floor, standard] = names;
        let planned = 0.000_2 + random.f64() * 0.001;
        let fill = Fill {
            machine,
            areas: vec![area],
            product,
            floor,
            standard,
            version: 1,
            concentrate: Amount::new(planned, "so much"),
            water: Amount::new(0.04, "40 L"),
            level: Amount::new(0.04, "40 L"),
            measured: Amount::new(planned * (0.8 + 0.4 * random.f64()), "so much"),
            ..Fill::default()
        };
        let mut bytes = [0; 32];
        random.fill(&mut bytes);
        (["cart-1", "cart-2", "cart-3"][number % 3], when, fill, ["AB", "CD", "EF"][random.usize(..3)], bytes)
    })
}

/// A log of them.
pub fn many(count: usize) -> Log {
    let mut log = Log::default();
    for (device, when, fill, who, random) in fills(count) {
        let words = Words::default().with(Part::Who, who);
        log.fill(&Stamp { device, when: &when, random }, fill, words).expect("taken");
    }
    log
}

/// The same without hashes, which take longer than what is measured of them.
fn unhashed(count: usize) -> Log {
    let mut numbers = [0; 3];
    Log::of(fills(count).enumerate().map(|(at, (device, when, fill, who, _))| {
        numbers[at % 3] += 1;
        let words = Words::default().with(Part::Who, who);
        Record {
            device: device.to_owned(),
            number: numbers[at % 3],
            when,
            kind: Kind::Fill,
            fill,
            words,
            ..Record::default()
        }
    }))
}

fn timed<T>(name: &str, work: impl FnOnce() -> T) -> (T, Duration) {
    let began = Instant::now();
    let made = work();
    let took = began.elapsed();
    println!("{name}: {took:?}");
    (made, took)
}

/// What a person waits for is a filter and a sum; reading the file and its hashes happens once.
#[test]
#[ignore = "measures; `cargo run -- test` runs it"]
fn a_hundred_thousand_fills() {
    let log = unhashed(100_000);
    let (view, _) = timed("100,000 fills as they stand", || current(&log));
    let (block, _) = timed("packed", || pack(&view.fills));
    println!("{} bytes a fill", block.len() / 100_000);
    let (unpacked, _) = timed("unpacked", || unpack(&block));
    assert_eq!(unpacked.as_ref(), Some(&view.fills));
    let (copy, _) = timed("copied", || view.clone());
    assert_eq!(copy.fills.len(), 100_000);
    let filter = Filter { product: "product-3".into(), month: "2025-06".into(), ..Filter::default() };
    let (count, filtered) = timed("filtered", || filter.of(&view.fills).count());
    let (uses, narrow) =
        timed("a product in a month, by machine", || usage(filter.of(&view.fills), By::Machine));
    assert!(!uses.is_empty() && uses.iter().map(|one| one.fills).sum::<usize>() == count);
    let (uses, areas) = timed("all, by area", || usage(Filter::default().of(&view.fills), By::Area));
    assert_eq!(uses.len(), 60);
    let who = Filter { who: "ab".into(), ..Filter::default() };
    let (found, doses) = timed("doses of a person", || dosing(who.of(&view.fills), 0.1));
    assert!(!found.over.is_empty());
    // Unoptimized, everything takes some ten times as long.
    let most = Duration::from_millis(if cfg!(debug_assertions) { 1_000 } else { 100 });
    for took in [filtered, narrow, areas, doses] {
        assert!(took < most, "{took:?}");
    }
}

#[test]
#[ignore = "measures; `cargo run -- test` runs it"]
fn ten_thousand_hashes() {
    let (log, _) = timed("writing down 10,000 fills", || many(10_000));
    let (file, _) = timed("written as a file", || write(&log));
    println!("{} bytes a fill", file.len() / 10_000);
    let (opened, _) = timed("read", || read(&file).expect("it opens"));
    let (held, _) = timed("verified", || verify(&opened.records));
    assert_eq!(held, Ok(()));
    let (merged, _) = timed("merged with itself", || log.merge(&opened.log()));
    assert_eq!((merged.added, merged.log), (0, log));
}
