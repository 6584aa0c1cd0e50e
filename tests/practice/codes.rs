//! Codes of results: held by every slip, and a class that counts right.

use super::stocks;
use brimline::practice::{Attempt, Class, ClassMistake, CodeMistake, Draw, Mark, Session, Topic, Tries, Way};

const LETTERS: &str = "qpzry9x8gf2tvdw0s3jn54khce6mua7l1bio";

fn attempt(draw: &mut Draw) -> Attempt {
    let initials = ["A", "bc", "ÅÖ", "Ж", "D.E", "xyz", "ÅÖЖÜ"];
    let mark = |draw: &mut Draw| {
        let way = if draw.one_in(2) { draw.pick(Way::ALL).copied() } else { None };
        Mark { tries: *draw.pick(Tries::ALL).expect("a try"), way: way.into_iter().collect() }
    };
    Attempt {
        session: format!("{:08x}", draw.bits()),
        initials: (*draw.pick(&initials).expect("initials")).to_owned(),
        date: format!("20{:02}-{:02}-{:02}", draw.below(100), 1 + draw.below(12), 1 + draw.below(28)),
        marks: (0..=draw.below(30)).map(|_| mark(draw)).collect(),
    }
}

#[test]
fn a_code_reads_back_however_it_is_typed() {
    let mut draw = Draw::new(3);
    let mut longest = 0;
    for _ in 0..500 {
        let attempt = attempt(&mut draw);
        let code = attempt.to_code().expect("a code");
        let plain: String = code.split(' ').collect();
        longest = longest.max(plain.len());
        let typed =
            [code.clone(), plain.clone(), plain.to_uppercase(), code.replace(' ', "-"), format!(" {code}\n")];
        for text in typed {
            assert_eq!(Attempt::from_code(&text), Ok(attempt.clone()), "{text}");
        }
        assert!(plain[5..].chars().all(|one| LETTERS[..32].contains(one)), "no look-alikes: {plain}");
    }
    println!("the longest code has {longest} characters");
    // BIP 350 is sure of up to four wrong characters only up to 90.
    assert!(longest <= 90);
}

/// Bytes made by hand: version, session, days since 2000-01-01, initials, and for each mark `tries × places + way`. A
/// code of version 1 had 48 places, since there were 47 ways; the way that stands at the end now may have no place there.
#[test]
fn a_code_says_by_its_bytes_what_it_says() {
    use bech32::{Bech32m, Hrp};
    let hrp = Hrp::parse("brim").expect("a prefix");
    let code = |version: u8, marks: &[u8]| {
        let mut bytes = vec![version, 0x0b, 0xad, 0xca, 0xfe, 0, 31, 2, b'A', b'B'];
        bytes.push(u8::try_from(marks.len()).expect("few"));
        bytes.extend(marks);
        bech32::encode::<Bech32m>(hrp, &bytes).expect("a code")
    };
    let marks = [
        (Tries::First, None),
        (Tries::Second, Some(Way::PartsForTotal)),
        (Tries::Open, Some(Way::OrderMixed)),
    ];
    for (version, places) in [(1_u8, 48), (2, 51)] {
        let byte = |(tries, way): (Tries, Option<Way>)| {
            let tries = Tries::ALL.iter().position(|one| *one == tries).expect("a try");
            let way = way.map_or(0, |way| Way::ALL.iter().position(|one| *one == way).expect("a way") + 1);
            u8::try_from(tries * places + way).expect("a byte")
        };
        let read = Attempt::from_code(&code(version, &marks.map(byte))).expect("it is read");
        assert_eq!(
            (read.session.as_str(), read.date.as_str(), read.initials.as_str()),
            ("0badcafe", "2000-02-01", "AB")
        );
        let found: Vec<_> = read.marks.iter().map(|mark| (mark.tries, mark.way.first().copied())).collect();
        assert_eq!(found, marks, "version {version}");
    }
    assert_eq!(Attempt::from_code(&code(3, &[0])), Err(CodeMistake::Later));
    assert_eq!(Attempt::from_code(&code(0, &[0])), Err(CodeMistake::Altered));
    assert_eq!(Attempt::from_code(&code(2, &[50])), Err(CodeMistake::Altered), "there is no such way");
    assert_eq!(Attempt::from_code(&code(2, &[255])), Err(CodeMistake::Altered), "there is no such try");
}

/// BIP 350, test vectors: valid Bech32m that is no code of a result, and invalid ones.
#[test]
fn what_is_no_code_is_refused() {
    for text in [
        "A1LQFN3A",
        "abcdef1l7aum6echk45nj3s0wdvt2fg8x9yrzpqzd3ryx",
        "M1VUXWEZ",
        "y1b0jsk6g",
        "lt1igcx5c0",
        "brim1",
        "brim",
        "",
        "not a code",
        "bc1p0xlxvlhemja6c4dqv22uapctqupfhlxm9h8z3k2e72q4k9hcz7vqzk5jj0",
    ] {
        assert_eq!(Attempt::from_code(text), Err(CodeMistake::Altered), "{text}");
    }
}

#[test]
fn one_changed_character_is_found() {
    let mut draw = Draw::new(4);
    let mut tried = 0;
    for _ in 0..20 {
        let code: Vec<char> =
            attempt(&mut draw).to_code().expect("a code").replace(' ', "").chars().collect();
        for at in 0..code.len() {
            for letter in LETTERS.chars().filter(|letter| *letter != code[at]) {
                let mut changed = code.clone();
                changed[at] = letter;
                let text: String = changed.iter().collect();
                assert!(Attempt::from_code(&text).is_err(), "{text}");
                tried += 1;
            }
            let mut short = code.clone();
            short.remove(at);
            assert!(Attempt::from_code(&short.iter().collect::<String>()).is_err());
        }
    }
    println!("{tried} changed characters");
}

#[test]
fn two_swapped_characters_are_found() {
    let mut draw = Draw::new(5);
    let mut tried = 0;
    for _ in 0..40 {
        let code: Vec<char> =
            attempt(&mut draw).to_code().expect("a code").replace(' ', "").chars().collect();
        for one in 0..code.len() {
            for other in one + 1..code.len() {
                if code[one] != code[other] {
                    let mut changed = code.clone();
                    changed.swap(one, other);
                    let text: String = changed.iter().collect();
                    assert!(Attempt::from_code(&text).is_err(), "{text}");
                    tried += 1;
                }
            }
        }
    }
    println!("{tried} swapped characters");
}

#[test]
fn a_result_that_is_not_whole_has_no_code() {
    let whole = attempt(&mut Draw::new(6));
    let with = |change: fn(&mut Attempt)| {
        let mut out = whole.clone();
        change(&mut out);
        out.to_code().expect_err("no code")
    };
    assert_eq!(with(|one| one.initials.clear()), CodeMistake::Initials);
    assert_eq!(with(|one| one.initials = "Somebody’s name".into()), CodeMistake::Initials);
    assert_eq!(with(|one| one.initials = "Anna".repeat(2)), CodeMistake::Initials);
    assert_eq!(with(|one| one.date = "yesterday".into()), CodeMistake::Day);
    assert_eq!(with(|one| one.date = "1999-12-31".into()), CodeMistake::Day);
    assert_eq!(with(|one| one.session.clear()), CodeMistake::Session);
    assert_eq!(with(|one| one.session = "0000000g".into()), CodeMistake::Session);
    assert_eq!(with(|one| one.marks.clear()), CodeMistake::Marks);
    assert_eq!(with(|one| one.marks = vec![Mark::default(); 31]), CodeMistake::Marks);
}

/// Counted by hand: three exercises, two people, one of them twice.
#[test]
fn a_class_counts_the_later_try_and_keeps_both() {
    let stock = stocks::all(0).swap_remove(0);
    let topics = vec![Topic::Units, Topic::Foam];
    let session = Session { seed: 2, topics, count: 3, stock, ..Session::default() };
    let exercises = session.exercises();
    let units = exercises.iter().filter(|one| one.topic == Topic::Units).count();
    assert_eq!((exercises.len(), (1..3).contains(&units)), (3, true));
    let result = |initials: &str, date: &str, tries: Tries, way: Option<Way>| Attempt {
        session: session.check(),
        initials: initials.into(),
        date: date.into(),
        marks: vec![Mark { tries, way: way.into_iter().collect() }; 3],
    };
    let mut class = Class::new(&session.check(), 3);
    let codes = [
        result("AB", "2026-03-02", Tries::Never, Some(Way::DecimalSlip)),
        result("CD", "2026-03-02", Tries::Second, Some(Way::UpsideDown)),
        result("ab", "2026-03-09", Tries::First, None),
        result("CD", "2026-03-01", Tries::Open, Some(Way::DecimalSlip)),
    ]
    .map(|one| one.to_code().expect("a code"));
    assert!(class.add_codes(&codes.join("\n\n")).iter().all(Result::is_ok));
    assert_eq!(class.attempts().len(), 4, "all are kept");
    let counting: Vec<(&str, &str)> =
        class.counting().iter().map(|one| (one.initials.as_str(), one.date.as_str())).collect();
    assert_eq!(counting, [("ab", "2026-03-09"), ("CD", "2026-03-02")]);
    let of_units = class.by_topic(&exercises)[0];
    let each = u32::try_from(units).expect("few");
    assert_eq!((of_units.topic, of_units.asked, of_units.first), (Topic::Units, 2 * each, each));
    assert_eq!((of_units.right, of_units.open), (2 * each, 0));
    assert!((of_units.share() - 1.0).abs() < 1e-12);
    let taken: Vec<(Way, u32)> = class.taken().iter().map(|one| (one.way, one.times)).collect();
    assert_eq!(taken, [(Way::UpsideDown, 3)], "roads of results that do not count are not told");
    // The file of a class is its codes.
    let mut again = Class::new(&session.check(), 3);
    again.add_codes(&class.to_codes().expect("codes"));
    assert_eq!(again, class);
    assert_eq!(class.add_codes(&codes[0]), [Err(ClassMistake::Twice)]);
    let mut other = Class::new("00000000", 3);
    assert_eq!(other.add_codes(&codes[0]), [Err(ClassMistake::OtherSession)]);
    assert!(matches!(other.add_codes("brim1")[..], [Err(ClassMistake::Code(CodeMistake::Altered))]));
}
