//! Whatever bytes come, the readers come to an end and say something.

use brimline::site::passing::{Handover, Secret, backup, link, read, sign, verify, write};
use brimline::site::{Machine, Site, demo};
use proptest::prelude::*;
use std::sync::atomic::{AtomicUsize, Ordering};

static RUNS: AtomicUsize = AtomicUsize::new(0);

/// Whatever is taken can be written and read again.
fn feed(bytes: &[u8]) {
    RUNS.fetch_add(1, Ordering::Relaxed);
    if let Ok(opened) = read(bytes) {
        verify(&opened);
        let again = write(&opened.site).expect("what was taken goes out");
        assert_eq!(read(again).expect("and comes in").site, opened.site);
    }
    let _ = Handover::read(bytes);
    let text = String::from_utf8_lossy(bytes);
    let _ = link::unpack::<Site>(&text);
    let _ = backup::read(&text);
}

/// Pieces of site files.
fn pieces() -> impl Strategy<Value = Vec<String>> {
    let piece = prop_oneof![
        Just("{\"brimline\":\"site\",\"schema\":1,\"site\":{".to_owned()),
        prop::sample::select(vec![
            "{",
            "}",
            "[",
            "]",
            ":",
            ",",
            "\"",
            "null",
            "true",
            "1e999",
            "-0",
            "\\",
            "\\ud800",
            "\"id\":\"a\"",
            "\"areas\":[",
            "\"floors\":[{\"id\":\"a\"}]",
            "\"floor\":\"a\"",
            "\"replaces\":",
            "\"standards\":[",
            "\"name\":",
            "\"tank\":{\"text\":\"1\"}",
            "\"signed\":{\"by\":",
            "}}",
            "\u{feff}",
            " ",
            "\n",
        ])
        .prop_map(str::to_owned),
        ".{0,8}",
    ];
    prop::collection::vec(piece, 0..24)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2_000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_bytes(bytes in prop::collection::vec(any::<u8>(), 0..600)) {
        feed(&bytes);
    }

    #[test]
    fn pieces_of_files(pieces in pieces()) {
        feed(pieces.concat().as_bytes());
    }

    /// A real file with some bytes changed, left out or put in.
    #[test]
    fn files_with_faults(faults in prop::collection::vec((any::<usize>(), 0..4_u8, any::<u8>()), 1..6)) {
        let mut site = demo();
        site.areas.truncate(2);
        site.machines.truncate(1);
        site.products.truncate(1);
        site.areas.iter_mut().for_each(|area| area.product = String::new());
        site.areas.iter_mut().for_each(|area| area.machine = String::new());
        let mut file = sign(&site, &Secret::new([1; 32])).expect("it goes out").into_bytes();
        for (at, what, byte) in faults {
            let at = at % file.len();
            match what {
                0 => file[at] = byte,
                1 => drop(file.remove(at)),
                2 => file.insert(at, byte),
                _ => file.truncate(at.max(1)),
            }
        }
        feed(&file);
    }

    #[test]
    fn links_of_any_characters(link in "[A-Za-z0-9_-]{0,200}|AQ[A-Za-z0-9_-]{0,200}|.{0,40}") {
        RUNS.fetch_add(1, Ordering::Relaxed);
        let _ = link::unpack::<Machine>(&link);
    }
}

/// Runs after the others only by its name, and counts at least its own.
#[test]
fn zz_how_many_runs() {
    for length in 0..1_000_usize {
        let bytes: Vec<u8> = (0..length).map(|at| (at * 31 + length) as u8).collect();
        feed(&bytes);
    }
    println!("{} executions of the readers, no panic", RUNS.load(Ordering::Relaxed));
}
