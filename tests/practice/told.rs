//! What a person reads of an exercise: whole sentences, no key and no placeholder left.

use super::exact::{fact, is, said, text, typed};
use super::stocks;
use brimline::number::Marks;
use brimline::practice::{Exercise, Key, Led, Level, Picture, Reply, Session, Stock, Topic, judge};
use brimline::site::{Entry, demo};
use brimline::units::System;
use brimline::words::Words;

fn exercises(seed: u32) -> Vec<Exercise> {
    let stocks = stocks::all(3);
    let sessions = stocks.into_iter().flat_map(|stock| {
        Level::ALL.iter().map(move |level| Session {
            seed,
            topics: Topic::ALL.to_vec(),
            level: *level,
            count: 30,
            stock: stock.clone(),
        })
    });
    sessions.flat_map(|session| session.exercises()).collect()
}

#[track_caller]
fn whole(text: &str) {
    let open = ["practice-", "formula-", "foam-", "ppe-", "pair-", "family-", "ghs-", "source-"];
    // A key has no space behind its hyphen, and a placeholder without its fact is its name behind a "$".
    let key = text.split(' ').any(|word| open.iter().any(|start| word.starts_with(start)));
    assert!(!text.trim().is_empty() && !text.contains('$') && !key, "{text}");
}

#[test]
fn all_that_is_told_has_its_words() {
    let words = Words::english();
    for exercise in (0..8).flat_map(exercises) {
        whole(&words.exercise(&exercise));
        whole(&words.right_answer(&exercise));
        words.choices(&exercise).iter().for_each(|choice| whole(choice));
        for line in words.workings(&exercise) {
            whole(&line.text);
            whole(&line.source);
        }
        for road in &exercise.roads {
            let (text, chosen);
            let reply = match (&exercise.key, &road.led) {
                (Key::Amount(key), Led::To(si)) => {
                    let unit = brimline::units::unit(key.unit).expect("its unit");
                    text = brimline::number::plain(unit.from_si(*si), 12, '.');
                    Reply::Number { text: &text, unit: key.unit }
                }
                (_, Led::Choice(one) | Led::Has(one)) => {
                    chosen = [*one];
                    Reply::Chosen(&chosen)
                }
                _ => continue,
            };
            let verdict = judge(&exercise, reply, Marks::POINT);
            let told = words.verdict(&exercise, reply, &verdict);
            whole(&told);
            if let Some(harm) = road.harm {
                let said = words.say(&format!("practice-harm-{}", harm.code()));
                assert!(told.ends_with(&said), "{told}");
            }
        }
        for reply in [Reply::Number { text: "lots", unit: "ml" }, Reply::Chosen(&[99])] {
            whole(&words.verdict(&exercise, reply, &judge(&exercise, reply, Marks::POINT)));
        }
    }
}

/// "2 oz/gal" may mean a gallon of water or of the whole mix: the task says which, and where it asks for just that
/// neither reading is called wrong.
#[test]
fn a_label_that_leaves_its_reading_open_is_told_or_not_held_against_anyone() {
    let (mut told, mut asked) = (0, 0);
    let open = |text: &str| text.contains('/') && !text.contains("made up") && !text.contains("oz wt");
    for exercise in (0..8).flat_map(exercises) {
        let Some(label) = said(&exercise, "practice-label") else { continue };
        let rule = said(&exercise, "practice-standard").map(|said| text(said, "rule"));
        if !open(text(label, "label")) && !rule.is_some_and(open) {
            continue;
        }
        if said(&exercise, "practice-ask-convention").is_some() {
            let Key::Choice { options, .. } = &exercise.key else { panic!("a choice") };
            assert!(options.iter().all(|one| one.key != "practice-means-made-up"), "{:?}", exercise.asked);
            asked += 1;
        } else {
            assert!(said(&exercise, "practice-means-per-water").is_some(), "{:?}", exercise.asked);
            told += 1;
        }
    }
    assert!(told > 100 && asked > 5, "{told} told, {asked} asked");
}

/// Where foam can do nothing, nothing warns of it: neither the workings nor the words beside the picture.
#[test]
fn where_foam_is_no_problem_nothing_warns_of_it() {
    let words = Words::english();
    let warning = words.say("foam-why");
    let (mut fits, mut warned) = (0, 0);
    for exercise in (0..12).flat_map(exercises).filter(|one| one.topic == Topic::Foam) {
        let no_vacuum = said(&exercise, "practice-foam-no-vacuum").is_some();
        let right = words.right_answer(&exercise);
        let is_fine = no_vacuum || right == words.say("foam-verdict-fits");
        let told: String = words.workings(&exercise).into_iter().map(|line| line.text).collect();
        let Some(Picture::Foam(drawn)) = &exercise.picture else { panic!("a picture of foam") };
        if is_fine {
            fits += 1;
            assert!(!told.contains(&warning), "{right}: {told}");
            assert_ne!(drawn.key(), "practice-picture-foam", "{right}");
        } else if right == words.say("foam-verdict-refuse") {
            warned += 1;
            assert!(told.contains(&warning), "{told}");
        }
    }
    assert!(fits > 30 && warned > 5, "{fits} fit, {warned} do not");
}

/// Figures of a key as they stand there: in SI units, and the text with its unit.
fn figures(words: &Words, exercise: &Exercise) -> Vec<(f64, String)> {
    let mut out = Vec::new();
    for (step, line) in exercise.steps.iter().zip(words.workings(exercise)) {
        let told = line.text.split_once("With ").map(|(_, told)| told.trim_end_matches('.').to_owned());
        let told = told.expect("what it was worked out with");
        let texts = told.split(", ").filter_map(|one| one.rsplit_once(" = ")).map(|(_, text)| text);
        let values = step.given.iter().map(|(_, value)| value).chain([&step.result]);
        assert_eq!(texts.clone().count(), values.clone().count(), "{told}");
        out.extend(values.zip(texts).map(|(value, text)| (value.si, text.to_owned())));
    }
    if let Key::Amount(key) = exercise.key {
        // What is poured stands behind the exact amount.
        let exact = words.right_answer(exercise);
        out.push((key.si, exact.split(';').next().unwrap_or_default().to_owned()));
    }
    out
}

/// A person who holds two lines of a key side by side must not find 11.85 in the one and 11.8 in the other.
#[test]
fn a_figure_has_the_same_digits_throughout_a_key() {
    let words = Words::english();
    let (mut keys, mut twice) = (0, 0);
    for exercise in (0..12).flat_map(exercises) {
        let figures = figures(&words, &exercise);
        keys += u32::from(figures.len() > 1);
        let unit = |text: &str| text.rsplit('\u{202f}').next().unwrap_or_default().to_owned();
        for (index, (si, text)) in figures.iter().enumerate() {
            for (other, also) in &figures[..index] {
                if (si / other - 1.0).abs() < 1e-9 && unit(text) == unit(also) {
                    assert_eq!(text, also, "{:?}", exercise.asked);
                    twice += 1;
                }
            }
        }
    }
    assert!(keys > 1_000 && twice > 1_000, "{keys} keys, {twice} figures that stand twice");
}

/// "Use the least that the label allows" beside "the rule of your site says" asks for two amounts.
#[test]
fn no_ticket_asks_for_an_end_of_the_range_and_tells_a_rule_beside_it() {
    let (mut ruled, mut aimed) = (0, 0);
    for exercise in (0..24).flat_map(exercises) {
        let aim = exercise.asked.iter().any(|said| said.key.starts_with("practice-aim-"));
        let rule = said(&exercise, "practice-standard").is_some();
        assert!(!(aim && rule), "{:?}", exercise.asked);
        (ruled, aimed) = (ruled + u32::from(rule), aimed + u32::from(aim));
    }
    assert!(ruled > 50 && aimed > 500, "{ruled} with a rule, {aimed} with an end");
}

/// What is put into whole steps is what the step before came to, whichever rule decides.
#[test]
fn the_workings_leave_no_step_out() {
    let words = Words::english();
    let (mut decided, mut governed, mut limited) = (0, 0, 0);
    for exercise in (0..72).flat_map(exercises) {
        for pair in exercise.steps.windows(2).filter(|pair| pair[1].formula.code == "formula-round") {
            let (came, taken) = (pair[0].result.si, pair[1].given[0].1.si);
            assert!((came / taken - 1.0).abs() < 1e-9, "{came}, then {taken}: {:?}", exercise.asked);
        }
        for step in &exercise.steps {
            let given: Vec<f64> = step.given.iter().map(|(_, value)| value.si).collect();
            match step.formula.code {
                "formula-govern" => {
                    assert!(
                        (step.result.si / given[0].min(given[1]) - 1.0).abs() < 1e-12,
                        "{:?}",
                        exercise.asked
                    );
                    governed += 1;
                }
                "formula-machine-window" => {
                    let limits = ["practice-machine-least", "practice-machine-most"];
                    let mut told = limits.iter().filter_map(|key| said(&exercise, key));
                    let is_told = told.any(|one| is(given[0], &fact(one, "amount")));
                    assert!(is_told, "{}: {:?}", given[0], exercise.asked);
                    limited += 1;
                }
                _ => {}
            }
        }
        let rule = exercise.reasons.iter().find(|one| one.said.key == "remark-standard-narrows");
        if rule.is_some() {
            assert!(said(&exercise, "practice-standard").is_some(), "{:?}", exercise.asked);
            let told: Vec<String> = words.workings(&exercise).into_iter().map(|line| line.text).collect();
            assert!(told.contains(&words.say("practice-because-standard")), "{told:?}");
            decided += 1;
        }
    }
    assert!(decided > 50, "{decided} by the rule of a site");
    assert!(governed > 50 && limited >= governed, "{limited} by a machine, {governed} of them by its most");
}

/// A full tank of 10 gal, 1,280 fl oz, at 1:10 to 1:16 takes 75.29 to 116.4 fl oz (by definition). A machine that needs
/// at least 100 fl oz raises the least of it, and nothing smaller governs; of one that needs at least 130 fl oz the most
/// that the label allows does.
#[test]
fn the_least_of_a_machine_raises_a_dose_within_the_label() {
    let words = Words::english();
    for (least, codes, answer) in [
        ("100", &["formula-machine-window"][..], "100 fl oz"),
        ("130", &["formula-machine-window", "formula-govern"], "116 fl oz"),
    ] {
        let mut site = demo();
        site.machines.retain(|one| one.tank.text == "10");
        site.products.retain(|one| one.label == "1:10 to 1:16");
        for machine in &mut site.machines {
            (machine.least, machine.most) = (Entry::new(least, "floz_us"), Entry::new("", "floz_us"));
        }
        let (topics, stock) = (vec![Topic::Dose], Stock::of(&site, System::Us, Marks::POINT));
        let sessions = (0..20).map(|seed| Session {
            seed,
            topics: topics.clone(),
            level: Level::Third,
            count: 10,
            stock: stock.clone(),
        });
        let low = |one: &Exercise| {
            said(one, "practice-aim-low").is_some() && said(one, "practice-fill-full").is_some()
        };
        let exercise = sessions.flat_map(|one| one.exercises()).find(low).expect("a full tank at its least");
        let of_it = |code: &&str| code.starts_with("formula-machine") || *code == "formula-govern";
        let steps: Vec<&str> = exercise.steps.iter().map(|step| step.formula.code).filter(of_it).collect();
        assert_eq!(steps, codes, "{:?}", exercise.asked);
        let told = words.right_answer(&exercise).replace('\u{202f}', " ");
        assert!(told.starts_with(answer), "{told}");
        for step in exercise.steps.iter().filter(|step| step.formula.code == "formula-govern") {
            let least = step.given[0].1.si.min(step.given[1].1.si);
            assert!((step.result.si / least - 1.0).abs() < 1e-12, "{told}");
        }
    }
}

/// Of the demo’s degreaser the label says 4 to 8 oz/gal of water and the site 5 oz/gal. A full tank of 10 gal is
/// 1,280 fl oz (NIST SP 811, appendix B), of which 4 / 132, 8 / 136 and 5 / 133 are product: 38.79, 75.29 and 48.12.
#[test]
fn the_rule_of_a_site_is_told_beside_what_the_label_allows() {
    let words = Words::english();
    let stock = stocks::all(0).swap_remove(0);
    let full = |exercise: &Exercise| {
        let tank = said(exercise, "practice-tank").is_some_and(|one| typed(one, "tank").text == "10");
        let plain = said(exercise, "practice-fill-full").is_some()
            && said(exercise, "practice-machine-most").is_none()
            && said(exercise, "practice-machine-least").is_none();
        tank && plain && said(exercise, "practice-standard").is_some()
    };
    let sessions = (0..60).map(|seed| Session {
        seed,
        topics: vec![Topic::Dose],
        level: Level::Third,
        count: 30,
        stock: stock.clone(),
    });
    let exercise = sessions.flat_map(|one| one.exercises()).find(full).expect("a full tank by the rule");
    let told: Vec<String> =
        words.workings(&exercise).into_iter().map(|line| line.text.replace('\u{202f}', " ")).collect();
    println!("{}\n{told:#?}", words.exercise(&exercise));
    let held =
        "The label allows 38.8 to 75.3 fl oz, your standard asks for 48.1 fl oz. Both hold with 48.1 fl oz.";
    assert!(told.iter().any(|line| line == held), "{told:#?}");
    assert!(told.iter().any(|line| line.ends_with("c = 48.1 fl oz.")), "{told:#?}");
    assert!(words.right_answer(&exercise).starts_with("48.1"), "{}", words.right_answer(&exercise));
}

/// Digits that say something: all from the first that is not zero on. Common practice, no source.
#[test]
fn an_answer_to_three_digits_has_three() {
    let words = Words::english();
    let (mut asked, mut zeros) = (0, 0);
    for exercise in (0..12).flat_map(exercises) {
        if !exercise.asked.last().is_some_and(|said| words.said(said, &exercise).contains("three digits")) {
            continue;
        }
        let text = words.right_answer(&exercise);
        let number = text.split('\u{202f}').next().unwrap_or_default();
        let digits: String = number.chars().filter(char::is_ascii_digit).collect();
        let counted = digits.trim_start_matches('0').len();
        assert!(counted == 3 || counted > 3 && !number.contains('.'), "{text}");
        asked += 1;
        zeros += u32::from(number.contains('.') && number.ends_with('0'));
    }
    assert!(asked > 500 && zeros > 50, "{asked} to three digits, {zeros} of them with a zero at the end");
}

/// The demo, seed 3, first level: a dose as it stands on the page and on paper.
#[test]
fn an_exercise_reads_as_a_person_would_say_it() {
    let words = Words::english();
    let stock = stocks::all(0).swap_remove(0);
    let session = Session { seed: 3, topics: vec![Topic::Dose], count: 1, stock, ..Session::default() };
    let exercise = &session.exercises()[0];
    let plain = |text: String| text.replace('\u{202f}', " ");
    println!("{}\n{}", plain(words.exercise(exercise)), plain(words.right_answer(exercise)));
    for line in words.workings(exercise) {
        println!("{} ({})", plain(line.text), line.source);
    }
    assert_eq!(plain(words.exercise(exercise)), TOLD);
    assert_eq!(plain(words.right_answer(exercise)), ANSWER);
}

const TOLD: &str = "The label of Finish stripper says “1:10 to 1:16”. It means 1 part product and that many parts of water. \
     Use the most that the label allows. The tank of Small walk-behind holds 10 gal. You fill it to the top. Water \
     and product make a full tank. You measure with this: Jug with 1 fl oz marks. One step is 1 fl oz. How much \
     product do you pour in? Half a step more or less will do.";
/// 10 × 128 / 11 = 116.4.
const ANSWER: &str = "116 fl oz";
