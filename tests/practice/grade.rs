//! How hard the exercises, and what the page says around them, are to read.
//!
//! Flesch–Kincaid grade level: `0.39 × words/sentences + 11.8 × syllables/words − 15.59` (J. P. Kincaid, R. P.
//! Fishburne, R. L. Rogers, B. S. Chissom, Research Branch Report 8-75, Naval Technical Training Command, 1975).
//! A number, a unit and a code count as a word of one syllable; syllables are counted by groups of vowels, less a
//! silent e.

use super::stocks;
use brimline::practice::{Level, Session, Topic};
use brimline::words::{Argument, Words};
use std::collections::BTreeMap;

#[derive(Clone, Copy, Default)]
struct Count {
    sentences: f64,
    words: f64,
    syllables: f64,
}

impl Count {
    fn grade(self) -> f64 {
        0.39 * self.words / self.sentences + 11.8 * self.syllables / self.words - 15.59
    }

    fn add(&mut self, other: Self) {
        self.sentences += other.sentences;
        self.words += other.words;
        self.syllables += other.syllables;
    }
}

fn syllables(word: &str) -> f64 {
    let word = word.to_lowercase();
    let vowel = |one: char| "aeiouyåäöéü".contains(one);
    let letters: Vec<char> = word.chars().filter(|one| one.is_alphabetic()).collect();
    let groups =
        (0..letters.len()).filter(|at| vowel(letters[*at]) && (*at == 0 || !vowel(letters[*at - 1]))).count();
    let end: String = letters.iter().collect();
    // "made", "takes" and "named" have a silent e; "table", "ounces" and "needed" do not.
    let silent = (end.ends_with('e') && !end.ends_with("le"))
        || (end.ends_with("es")
            && !["ses", "ces", "ges", "ches", "shes", "xes", "zes", "les"]
                .iter()
                .any(|one| end.ends_with(one)))
        || (end.ends_with("ed") && !end.ends_with("ted") && !end.ends_with("ded"));
    f64::from(u32::try_from(groups.saturating_sub(usize::from(silent && groups > 1)).max(1)).expect("few"))
}

fn count(text: &str) -> Count {
    let text = text.replace('\u{202f}', " ");
    let mut out = Count::default();
    for word in text.split_whitespace() {
        if word.chars().any(char::is_alphanumeric) {
            out.words += 1.0;
            out.syllables += if word.chars().any(|one| one.is_ascii_digit()) { 1.0 } else { syllables(word) };
        }
        let bare = word.trim_end_matches(['”', '"', ')']);
        out.sentences += f64::from(u8::from(bare.ends_with(['.', '?'])));
    }
    out.sentences = out.sentences.max(1.0);
    out
}

/// By hand: 6 words, 1 sentence, 6 syllables: 0.39 × 6 + 11.8 − 15.59 = −1.45.
#[test]
fn the_grade_is_what_its_formula_says() {
    assert!((count("The cat sat on the mat.").grade() + 1.45).abs() < 1e-9);
    for (word, expected) in [
        ("product", 2.0),
        ("water", 2.0),
        ("measure", 2.0),
        ("table", 2.0),
        ("mixed", 1.0),
        ("imperial", 3.0),
    ] {
        assert!((syllables(word) - expected).abs() < 1e-9, "{word} {}", syllables(word));
    }
}

#[test]
fn exercises_and_verdicts_read_at_grade_six() {
    let words = Words::english();
    let demo = stocks::all(0).swap_remove(0);
    let mut by_topic: BTreeMap<&str, Count> = BTreeMap::new();
    for seed in 0..60 {
        for level in Level::ALL {
            let session =
                Session { seed, topics: Topic::ALL.to_vec(), level: *level, count: 22, stock: demo.clone() };
            for exercise in session.exercises() {
                by_topic.entry(exercise.topic.code()).or_default().add(count(&words.exercise(&exercise)));
            }
        }
    }
    let mut all = Count::default();
    for (topic, count) in &by_topic {
        println!(
            "{topic:8} grade {:.1}, {:.1} words a sentence",
            count.grade(),
            count.words / count.sentences
        );
        all.add(*count);
    }
    println!("all exercises: grade {:.2}", all.grade());
    let mut told = Count::default();
    for key in words
        .keys()
        .filter(|key| ["practice-way-", "practice-harm-"].iter().any(|start| key.starts_with(start)))
    {
        told.add(count(&words.say(key)));
    }
    println!("what is told of wrong roads: grade {:.2}", told.grade());
    assert!(all.grade() <= 6.0, "{}", all.grade());
    assert!(told.grade() <= 6.0, "{}", told.grade());
    assert!(by_topic.values().all(|count| count.grade() <= 6.0), "each topic too");
}

/// The messages of a language file under its headings: key and text, a placeholder read as a number, each form of a
/// counted message by itself.
fn by_heading(file: &str) -> Vec<(&str, Vec<(&str, String)>)> {
    let mut out: Vec<(&str, Vec<(&str, String)>)> = Vec::new();
    let mut key = "";
    for line in file.lines() {
        if let Some(heading) = line.strip_prefix("## ") {
            out.push((heading, Vec::new()));
            continue;
        }
        let text = if let Some((of, text)) = line.split_once(" = ").filter(|_| !line.starts_with([' ', '#']))
        {
            key = of;
            text
        } else if let Some((_, text)) = line.split_once("] ").filter(|_| line.starts_with(' ')) {
            text
        } else {
            continue;
        };
        let mut plain = String::new();
        for (index, part) in text.split(['{', '}']).enumerate() {
            plain.push_str(if index % 2 == 0 { part } else { "5" });
        }
        if let Some((_, all)) = out.last_mut() {
            all.push((key, plain));
        }
    }
    out
}

/// Whole sentences only: a label is none. Each message alone, each part of the page, and all of it.
#[test]
fn what_the_page_says_reads_at_grade_six() {
    let file = include_str!("../../src/words/en/practice.ftl");
    let is_told = |text: &str| text.contains(['.', '?']) && text.split_whitespace().count() >= 5;
    let (mut all, mut over) = (Count::default(), Vec::new());
    let mut parts = Vec::new();
    for (heading, messages) in by_heading(file) {
        let mut part = Count::default();
        for (key, text) in messages.iter().filter(|(_, text)| is_told(text)) {
            let one = count(text);
            if one.grade() > 6.0 {
                over.push((one.grade(), *key, text.clone()));
            }
            part.add(one);
        }
        if part.words > 0.0 {
            parts.push((heading, part.grade()));
            all.add(part);
        }
    }
    for (heading, grade) in &parts {
        println!("{heading}: grade {grade:.1}");
    }
    over.sort_by(|one, other| other.0.total_cmp(&one.0));
    for (grade, key, text) in &over {
        println!("over six: {grade:.1} {key}: {text}");
    }
    println!("all that the page says: grade {:.2}, {} messages over six", all.grade(), over.len());
    assert!(parts.len() > 8 && all.words > 1_000.0, "the file was read");
    assert!(all.grade() <= 6.0, "{}", all.grade());
    assert!(parts.iter().all(|(_, grade)| *grade <= 6.0), "{parts:?}");
    assert!(over.is_empty(), "{over:?}");
}

/// What stands for a placeholder: the demo's own names and amounts.
fn filled(words: &Words, key: &str) -> String {
    let given = |name: &str| match name {
        "product" => "Neutral cleaner",
        "wear" => "Splash goggles; Gloves that resist this product",
        "machine" => "Small walk-behind",
        "floor" => "Foyer marble",
        "measure" => "Jug",
        "label" => "1:64",
        "control" => "Product",
        "tasks" => "Tanks drained",
        "tank" | "level" | "amount" => "10 gal",
        _ => "2",
    };
    let arguments: Vec<(&str, Argument)> =
        words.placeholders(key).into_iter().map(|name| (name, Argument::text(given(name)))).collect();
    words.tell(key, &arguments)
}

#[test]
fn the_first_fill_and_why_it_matters_read_at_grade_six() {
    let words = Words::english();
    let of = |start: &str| {
        words.keys().filter(|key| key.starts_with(start)).map(str::to_owned).collect::<Vec<_>>()
    };
    let mut all = Count::default();
    for key in of("first-fill-") {
        let one = count(&filled(&words, &key));
        // A button is no sentence; a long text must not hide behind short ones.
        if one.words >= 12.0 {
            println!("{key:32} grade {:.1}", one.grade());
            assert!(one.grade() <= 6.0, "{key}: {:.1}", one.grade());
            all.add(one);
        }
    }
    println!("the first fill: grade {:.2}", all.grade());
    for key in of("why-").into_iter().filter(|key| words.find(&format!("{key}-drawing")).is_some()) {
        let text = words.say(&key);
        let one = count(&text);
        println!("{key:32} grade {:.1}", one.grade());
        assert!(one.grade() <= 6.0, "{key}: {:.1}", one.grade());
        assert!((2.0..=4.0).contains(&one.sentences), "{key}: two to four sentences");
        assert!(one.words / one.sentences <= 16.0, "{key}: short ones");
    }
}
