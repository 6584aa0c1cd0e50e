//! Any text is read to its end, without a panic, and in a time that grows with its length.

use super::layouts::{names, sheet};
use crate::times::times;
use brimline::number::Marks;
use brimline::site::Product;
use brimline::site::sheet::{Sheet, Statements, read, take};
use brimline::words::Words;
use std::time::{Duration, Instant};

fn statements() -> Statements {
    let words = Words::english();
    Statements::of(|key| words.find(key))
}

/// Pieces that sheets are made of, and pieces that tear them.
#[rustfmt::skip]
const PIECES: &[&str] = &[
    "SECTION 2: Hazards identification", "SECTION 3: Composition", "SECTION 8: Exposure controls",
    "SECTION 9: Physical and chemical properties", "14. Transport information", "Signal word", "Danger",
    ":", "H314", "P305+P351+P338", "P305 +", "+", "+351", "H", "P", "EUH208", "1310-73-2", "1310-73-3",
    "64 - 19 - 7", "200-580-7", "-", "–", "<", "≤", ">=", "±", "%", "5", "10", "0,5", "1.000", "5-10",
    "999999999999999999999999999", "Sodium hydroxide", "C9-11,", "(6 EO)", "CAS", "Name", "pH", "p", "H",
    "UN", "UN1719", "UN number", "density", "specific gravity", "(water = 1)", "(", ")", "g/cm3", "kg/m³",
    "lb/gal", "°C", "20", "not applicable", "balance", "\t", "|", "  ", "\n", "\r\n", "\u{ad}", "\u{ad}\n",
    "\u{a0}", "\u{feff}", "\u{2028}", "é", "漢", "🧼", "\0", "Ⅻ", "½", "١", "ﬁ", "İ", "ẞ", ".", ",", ";",
    "M=10", "C", "SECTION 11: Toxicological information", "LD50", "oral", "dermal", "ATE", "mg/kg", "2,000",
    "M-factor (acute)", "H410",
];

fn drawn(draw: &mut fastrand::Rng, pieces: usize) -> String {
    let mut text = String::new();
    for _ in 0..draw.usize(..pieces) {
        match draw.u8(..20) {
            0 => text.extend(draw.u32(..0x11_0000).try_into().ok().into_iter().collect::<Vec<char>>()),
            1 => text.push(' '),
            _ => text.push_str(PIECES[draw.usize(..PIECES.len())]),
        }
        if draw.bool() {
            text.push(' ');
        }
    }
    text
}

/// What holds for every text.
fn sound(text: &str, sheet: &Sheet) {
    let lines = text
        .lines()
        .count()
        .max(text.matches(['\r', '\u{85}', '\u{2028}', '\u{2029}']).count() + text.matches('\n').count() + 1);
    for finding in &sheet.findings {
        assert!((1..=lines).contains(&finding.line), "line {} of {lines} in {text:?}", finding.line);
        assert!(finding.doubts.windows(2).all(|two| two[0] != two[1]));
    }
    assert!(sheet.findings.windows(2).all(|two| two[0].line <= two[1].line), "{text:?}");
    assert!(sheet.findings.len() <= 9 * 300);
    for clash in &sheet.clashes {
        assert!(clash.findings.len() > 1 && clash.findings.iter().all(|at| *at < sheet.findings.len()));
    }
    let once = take(&Product::default(), &sheet.findings, Marks::POINT);
    assert_eq!(take(&once, &sheet.findings, Marks::POINT), once, "{text:?}");
}

/// Texts put together at random from the pieces of sheets.
#[test]
fn texts_of_torn_pieces() {
    let statements = statements();
    let mut draw = fastrand::Rng::with_seed(20);
    let (mut runs, mut found) = (0_u32, 0_usize);
    for _ in 0..12_000 * times() {
        let text = drawn(&mut draw, 40);
        let sheet = read(&text, &statements);
        found += sheet.findings.len();
        sound(&text, &sheet);
        runs += 1;
    }
    println!("{runs} executions on torn pieces, {found} findings");
    assert!(found > 10_000, "the pieces make sheets: {found}");
}

/// Our sheets with characters and lines struck out, doubled, swapped and replaced.
#[test]
fn sheets_with_faults() {
    let statements = statements();
    let mut draw = fastrand::Rng::with_seed(21);
    let mut runs = 0_u32;
    for name in names() {
        let whole: Vec<char> = sheet(&name).chars().collect();
        for _ in 0..400 * times() {
            let mut text = whole.clone();
            for _ in 0..draw.usize(1..12) {
                if text.len() < 2 {
                    break;
                }
                let at = draw.usize(..text.len());
                match draw.u8(..5) {
                    0 => drop(text.remove(at)),
                    1 => text.insert(at, text[at]),
                    2 => text[at] = PIECES[draw.usize(..PIECES.len())].chars().next().unwrap_or(' '),
                    3 => {
                        let other = draw.usize(..text.len());
                        text.swap(at, other);
                    }
                    _ => text.truncate(at.max(1)),
                }
            }
            let text: String = text.into_iter().collect();
            sound(&text, &read(&text, &statements));
            runs += 1;
        }
    }
    println!("{runs} executions on sheets with faults");
}

/// A sheet of whose characters any prefix is read: somebody pasted while the page was still loading.
#[test]
fn every_beginning_of_a_sheet() {
    let statements = statements();
    let mut runs = 0_u32;
    for name in ["degreaser-torn", "quat-classes"] {
        let text = sheet(name);
        for (at, _) in text.char_indices() {
            sound(&text[..at], &read(&text[..at], &statements));
            runs += 1;
        }
    }
    println!("{runs} executions on beginnings");
}

/// Ten megabytes of what almost is something: no reader may stop early, and none may look at a line twice.
#[test]
fn ten_megabytes_of_noise() {
    let near = [
        "P3 ",
        "H3",
        "1310-73-",
        "1-",
        "pH ",
        "density (",
        "UN ",
        "UN17",
        "5 - ",
        "SECTION ",
        "(",
        "<",
        "+",
        "Causes serious eye ",
        "12345678901234567890",
        "漢",
        "Sodium hydroxide",
        "a",
        "\t",
        "Signal wor",
        "64 - 19 - ",
        "not regula",
        "C ≥ ",
        ", ",
    ];
    let mut draw = fastrand::Rng::with_seed(22);
    let mut noise = String::new();
    for one in near {
        noise.push_str(&one.repeat(200_000 / one.len()));
        noise.push('\n');
    }
    while noise.len() < 10_000_000 {
        noise.push_str(near[draw.usize(..near.len())]);
        if draw.u8(..60) == 0 {
            noise.push('\n');
        }
    }
    let spent = timed(&noise);
    // Nobody waits for a hang; a slow machine is none.
    assert!(spent < Duration::from_secs(180), "{spent:?}");
}

/// Ten megabytes of findings: far more than are kept.
#[test]
fn ten_megabytes_of_findings() {
    let mut draw = fastrand::Rng::with_seed(23);
    let mut noise = String::new();
    for one in ["P305+", "1310-73-2\n", "5 %\n", "UN1719 ", "pH 7 ", "\u{ad}\n", "SECTION 3 ", "SECTION 9\n"]
    {
        noise.push_str(&one.repeat(200_000 / one.len()));
        noise.push('\n');
    }
    while noise.len() < 10_000_000 {
        noise.push_str(&drawn(&mut draw, 2_000));
    }
    let spent = timed(&noise);
    assert!(spent < Duration::from_secs(180), "{spent:?}");
}

fn timed(noise: &str) -> Duration {
    let statements = statements();
    let begun = Instant::now();
    let sheet = read(noise, &statements);
    let spent = begun.elapsed();
    println!(
        "{:.1} MB of noise read in {:.2} s: {} findings, {} clashes, cut: {}",
        noise.len() as f64 / 1e6,
        spent.as_secs_f64(),
        sheet.findings.len(),
        sheet.clashes.len(),
        sheet.cut
    );
    sound(noise, &sheet);
    spent
}
