//! Files that mean harm, or that an accident left.

use super::made::{several, whole};
use brimline::site::log::{MOST_FLAWS, MOST_LINE, Why, read, write};
use proptest::prelude::*;
use std::time::{Duration, Instant};

const HEADER: &str = "{\"brimline\":\"log\",\"schema\":1,\"heads\":[]}\n";

/// Ten million bytes that are no log come to an end soon, whatever they are.
#[test]
fn ten_megabytes_of_noise() {
    let mut random = fastrand::Rng::with_seed(7);
    let noise: Vec<u8> = std::iter::repeat_with(|| random.u8(..)).take(10_000_000).collect();
    let fills: [(&str, Vec<u8>); 6] = [
        ("noise", noise),
        ("one line", vec![b'a'; 10_000_000]),
        ("line ends", vec![b'\n'; 10_000_000]),
        ("short lines", b"{\n".repeat(5_000_000)),
        ("deep lists", [vec![b'['; 60_000], vec![b'\n']].concat().repeat(160)),
        ("deep objects", [b"{\"a\":".repeat(12_000), vec![b'\n']].concat().repeat(160)),
    ];
    for (name, bytes) in fills {
        let began = Instant::now();
        assert!(read(&bytes).is_err(), "{name} has no first line");
        let opened = read([HEADER.as_bytes(), &bytes].concat()).expect("its first line is right");
        let took = began.elapsed();
        println!("{name}: {} lines named, {} more, {took:?}", opened.flaws.len(), opened.more);
        assert!(opened.records.is_empty() && opened.flaws.len() <= MOST_FLAWS);
        assert_eq!(opened.flaws.is_empty(), name == "line ends");
        assert!(took < Duration::from_secs(60), "{name} took {took:?}");
    }
}

/// A line that is too long is named and not looked into; its neighbours are kept.
#[test]
fn a_huge_line_between_others() {
    let log = whole();
    let file = write(&log);
    let mut lines: Vec<&str> = file.lines().collect();
    let huge = "[".repeat(MOST_LINE + 1);
    lines.insert(2, &huge);
    let opened = read(lines.join("\n")).expect("it opens");
    assert_eq!((opened.flaws[0].line, opened.flaws[0].flaw.code()), (3, "log-long-line"));
    assert_eq!((opened.verify(), opened.log()), (Ok(()), log));
}

/// A last line that is whole and wrong is not taken for one that was cut off.
#[test]
fn a_wrong_last_line() {
    let opened = read(format!("{HEADER}{{\"device\":7}}")).expect("it opens");
    assert_eq!(opened.flaws[0].flaw.code(), "passing-type");
}

/// A line that is not UTF-8 takes none of the others with it.
#[test]
fn bytes_that_are_no_text() {
    let log = whole();
    let mut file = write(&log).into_bytes();
    file.extend(b"\xff\xfe\n");
    let opened = read(&file).expect("it opens");
    assert_eq!((opened.flaws[0].line, opened.flaws[0].flaw.code()), (7, "passing-not-text"));
    assert_eq!(opened.log(), log);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, failure_persistence: None, ..ProptestConfig::default() })]

    /// Cut off anywhere, all full lines are kept, the rest is named, and what is missing as well.
    #[test]
    fn a_file_that_was_cut_off(log in several(), at in any::<usize>()) {
        let file = write(&log);
        let header = file.lines().next().expect("a line").len();
        let at = header + 1 + at % (file.len() - header);
        let cut = &file.as_bytes()[..at];
        let opened = read(cut).expect("its first line is whole");
        let ends = cut.split(|byte| *byte == b'\n');
        let rest = ends.clone().next_back().unwrap_or_default();
        let full = ends.count() - 2 + usize::from(opened.flaws.is_empty() && !rest.is_empty());
        prop_assert_eq!(&opened.records[..], &log.records()[..full]);
        if !opened.flaws.is_empty() {
            prop_assert_eq!((opened.flaws.len(), opened.flaws[0].flaw.code()), (1, "log-cut-off"));
            prop_assert_eq!(opened.flaws[0].line, full + 2);
        }
        if full < log.records().len() {
            let why = opened.verify().expect_err("records are missing").why;
            prop_assert!(matches!(why, Why::Missing | Why::WordsGone(_)), "{:?}", why);
        }
    }
}
