//! The tables of weak acids and of substances hold together.

use brimline::chemistry::acid_base::substance::{self, Brings};
use brimline::chemistry::acid_base::weak;
use brimline::chemistry::cas;
use brimline::source::Standing;

#[test]
fn every_number_keeps_its_check_digit_and_stands_once() {
    let mut seen = Vec::new();
    for row in substance::all() {
        assert!(cas::check(row.cas).is_some(), "{} {}", row.cas, row.name);
        assert!(!seen.contains(&row.cas), "{} stands twice", row.cas);
        seen.push(row.cas);
        assert_eq!(substance::find(row.cas), Some(row));
    }
    assert!(seen.len() > 90);
}

/// A digit that is mistyped breaks the number, but for one case in some places.
#[test]
fn mistyped_numbers_are_told() {
    for row in substance::all() {
        for (place, right) in row.cas.char_indices().filter(|(_, one)| one.is_ascii_digit()) {
            for wrong in ('0'..='9').filter(|wrong| *wrong != right) {
                let mut typed = row.cas.to_owned();
                typed.replace_range(place..=place, &wrong.to_string());
                if typed.starts_with('0') {
                    continue; // zeros before a number do not belong to it
                }
                // Counted from the right, the check digit as 0: a digit at place n weighs n, so that one at
                // an even place may be 5 off unseen.
                let place = row.cas[place + 1..].bytes().filter(u8::is_ascii_digit).count();
                let off = place * (wrong as usize).abs_diff(right as usize);
                let unseen = place > 0 && off.is_multiple_of(10);
                assert_eq!(cas::check(&typed).is_some(), unseen, "{typed} for {}", row.cas);
            }
        }
    }
    for wrong in [
        "",
        "-",
        "--",
        "7732-18-",
        "7732-18-55",
        "77321-8-5",
        "7-18-5",
        "12345678-18-5",
        "a732-18-5",
        "٧732-18-5",
    ] {
        assert!(cas::check(wrong).is_none(), "{wrong}");
    }
}

#[test]
fn acids_give_their_protons_in_order() {
    for row in weak::ALL {
        assert!(row.pka.is_sorted() && !row.pka.is_empty() && row.pka.len() <= 5, "{}", row.name);
        assert!(row.pka.iter().all(|pka| (0.0..14.0).contains(pka)), "{}", row.name);
        assert!(matches!(row.source.standing, Standing::Published | Standing::Unverified), "{}", row.name);
        assert!(!row.source.cite.is_empty(), "{}", row.name);
        assert_eq!(weak::ALL.iter().filter(|other| **other == *row).count(), 1, "{}", row.name);
    }
}

/// A substance carries no charge: what its strong ions carry is made up by protons that its acids have lost,
/// a whole number of them and no more than they have. Sulfuric acid has one more to give than its row.
#[test]
fn substances_carry_no_charge() {
    for row in substance::all().filter(|row| matches!(row.brings, Brings::Just(_))) {
        for makeup in row.makeups().filter(|makeup| !makeup.weak.is_empty()) {
            let full: f64 = makeup.weak.iter().map(|(acid, count)| count * f64::from(acid.charge)).sum();
            let protons: f64 = makeup.weak.iter().map(|(acid, count)| count * acid.pka.len() as f64).sum();
            let lost = full + makeup.plus - makeup.minus;
            let least = if row.name == "sulfuric acid" { -1.0 } else { 0.0 };
            assert!((least..=protons).contains(&lost) && lost.fract().abs() < 1e-12, "{}: {lost}", row.name);
        }
    }
}
