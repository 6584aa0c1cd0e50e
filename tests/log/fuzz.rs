//! Whatever bytes come, the reader comes to an end and says something.

use super::made::whole;
use crate::faults::with_faults;
use crate::times::times;
use brimline::number::Marks;
use brimline::site::log::questions::{By, Filter, usage};
use brimline::site::log::{Id, Log, When, csv, current, read, write};
use brimline::units::System;
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use std::cell::Cell;

/// What is taken goes out, comes back the same, and answers.
fn feed(bytes: &[u8], other: &Log) {
    let text = String::from_utf8_lossy(bytes);
    let _ = (Id::read(&text), When::read(&text));
    let Ok(opened) = read(bytes) else { return };
    let _ = opened.verify();
    let log = opened.log();
    let again = read(write(&log)).expect("what was taken goes out");
    assert_eq!((again.flaws.len(), again.log()), (0, log.clone()));
    assert_eq!(log.merge(other).log, other.merge(&log).log);
    let view = current(&log);
    csv(&view.fills, System::Us, Marks::COMMA);
    usage(Filter::default().of(&view.fills), By::Area);
}

/// Pieces of logs.
fn pieces() -> impl Strategy<Value = Vec<String>> {
    let line = prop::sample::select(write(&whole()).lines().map(str::to_owned).collect::<Vec<_>>());
    let piece = prop::sample::select(vec![
        "{\"brimline\":\"log\",\"schema\":1,\"heads\":[]}\n",
        "\n",
        "{",
        "}",
        "\"kind\":\"fill\",",
        "\"device\":\"d\",\"number\":1,",
        "\"when\":\"2026-03-07T18:30Z\",",
        "\"own\":\"\"",
        "\"changes\":{\"water\":{\"si\":1e999}}",
        "\"si\":0.1234567890123456789",
        "\"erased\":[\"by\"]",
        "null",
        "\u{feff}",
        "\\ud800",
    ]);
    let piece = prop_oneof![2 => piece.prop_map(str::to_owned), 3 => line, 1 => ".{0,8}"];
    prop::collection::vec(prop_oneof![3 => piece, 1 => Just("\n".to_owned())], 0..16)
}

#[test]
fn the_reader_never_panics() {
    let (runs, other) = (Cell::new(0_usize), whole());
    let run = |cases, strategy: BoxedStrategy<Vec<u8>>| {
        let cases = cases * times();
        let config = ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() };
        let fed = |bytes: Vec<u8>| {
            runs.set(runs.get() + 1);
            feed(&bytes, &other);
            Ok(())
        };
        TestRunner::new(config).run(&strategy, fed).expect("it comes to an end");
    };
    run(3_000, prop::collection::vec(any::<u8>(), 0..600).boxed());
    run(2_000, pieces().prop_map(|pieces| pieces.concat().into_bytes()).boxed());
    let file = write(&whole()).into_bytes();
    let faults = || prop::collection::vec((any::<usize>(), 0..3_u8, any::<u8>()), 1..6);
    let digits = prop::collection::vec((any::<usize>(), Just(0_u8), b'0'..=b'9'), 1..4);
    let (same, cut) = (file.clone(), file.clone());
    run(2_000, faults().prop_map(move |faults| with_faults(file.clone(), &faults)).boxed());
    run(2_000, digits.prop_map(move |faults| with_faults(same.clone(), &faults)).boxed());
    run(1_000, any::<usize>().prop_map(move |at| with_faults(cut.clone(), &[(at, 3, 0)])).boxed());
    println!("{} executions of the reader and of all that comes after it, no panic", runs.get());
    assert!(runs.get() >= 10_000);
    assert_eq!(Log::default().merge(&Log::default()).log, Log::default());
}
