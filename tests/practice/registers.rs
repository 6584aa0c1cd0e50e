//! What a trainer gathers: which codes are taken, who has shown what until when, and that a removal removes.

use super::runs::{right, wrong};
use super::stocks;
use brimline::number::Marks;
use brimline::practice::{
    ClassMistake, CodeMistake, Ended, Given, Known, Level, Made, Refused, Register, Run, Session, Shown,
    Topic, shown,
};
use brimline::site::log::{Lesson, Log, Part, Stamp, Words, current, verify};
use brimline::trade::calendar::Date;

fn made(topics: &[Topic], count: u32, seed: u32) -> Made {
    let stock = stocks::all(0).swap_remove(0);
    let session = Session { seed, topics: topics.to_vec(), level: Level::First, count, stock };
    let exercises = session.exercises();
    (session, exercises)
}

/// The code of somebody who answers by `of`, which is told the place and gives right or wrong.
fn code((session, exercises): &Made, initials: &str, day: &str, of: impl Fn(usize) -> bool) -> String {
    let mut run = Run::begin(session.clone());
    for (at, exercise) in exercises.iter().enumerate() {
        for given in if of(at) { vec![right(exercise)] } else { vec![wrong(exercise), Given::default()] } {
            run.reply = given;
            run.check(exercise, Marks::POINT);
        }
        run.go_on(day);
    }
    run.initials = initials.into();
    run.attempt().to_code().expect("a code")
}

fn day(text: &str) -> Date {
    Date::read(text).expect("a day")
}

#[test]
fn codes_are_taken_to_their_sessions_and_refused_by_name() {
    let all = [made(&[Topic::Units], 3, 1), made(&[Topic::Pairs], 3, 2), made(&[Topic::Units], 3, 3)];
    let known = Known { made: &all[..2], ..Known::default() };
    let good = code(&all[0], "AB", "2026-03-07", |_| true);
    let other = code(&all[1], "CD", "2026-03-07", |_| false);
    let stray = code(&all[2], "EF", "2026-03-07", |_| true);
    let mut slip = good.clone();
    slip.replace_range(8..9, if &slip[8..9] == "q" { "p" } else { "q" });
    let text = [&*good, "", &other.to_uppercase(), &good, &stray, &slip].join("\n");
    let mut register = Register::default();
    let (taken, refused) = register.take(&text, known);
    let expected = [
        (&good, ClassMistake::Twice),
        (&stray, ClassMistake::OtherSession),
        (&slip, ClassMistake::Code(CodeMistake::Altered)),
    ];
    assert_eq!(taken, 2);
    assert_eq!(refused, expected.map(|(line, why)| Refused { line: line.clone(), why }));
    assert_eq!(register.class(&all[0].0).attempts().len(), 1);
    assert_eq!(register.class(&all[1].0).by_topic(&all[1].1)[0].right, 0);
    // What is saved as a file opens again.
    let mut back = Register::default();
    assert_eq!(back.take(&register.codes.join("\n"), known), (2, Vec::new()));
    assert_eq!(back, register);
}

fn known(made: &[Made]) -> Known<'_> {
    Known { made, ..Known::default() }
}

/// Who has shown what, and has not lost it since, by the codes of a register alone.
fn of(register: &Register, all: &[Made]) -> Vec<Shown> {
    ever(register, all).into_iter().filter(|one| one.lost.is_none()).collect()
}

/// The same with what was lost.
fn ever(register: &Register, all: &[Made]) -> Vec<Shown> {
    let lessons = register.lessons(all);
    shown(lessons.iter().map(|(who, lesson)| (who.as_str(), lesson)))
}

/// What was shown does not vanish: the day stays, and beside it when it was lost or ran out.
#[test]
fn what_was_lost_keeps_its_day_and_says_when_it_ended() {
    let all = [made(&[Topic::Units], 2, 1), made(&[Topic::Units], 2, 2)];
    let sessions = known(&all);
    let mut register = Register::default();
    register.take(&code(&all[0], "AB", "2026-05-01", |_| true), sessions);
    let one = |register: &Register| ever(register, &all).swap_remove(0);
    assert_eq!(one(&register).ended(day("2027-05-01")), None, "its last day counts");
    assert_eq!(one(&register).ended(day("2027-05-02")), Some(Ended::RanOut(day("2027-05-01"))));
    // Two wrong ones later: the first of them took it away, whichever code came first.
    register.take(&code(&all[1], "AB", "2026-05-09", |_| false), sessions);
    register.take(&code(&all[1], "ab", "2026-05-03", |at| at == 0), sessions);
    let lost = one(&register);
    assert_eq!((lost.date, lost.lost), (day("2026-05-01"), Some(day("2026-05-03"))));
    assert_eq!(lost.ended(day("2026-06-01")), Some(Ended::Lost(day("2026-05-03"))));
    // Shown once more it counts once more.
    register.take(&code(&all[0], "AB", "2026-05-10", |_| true), sessions);
    let again = one(&register);
    assert_eq!((again.date, again.lost, again.ended(day("2026-06-01"))), (day("2026-05-10"), None, None));
    // Who only failed has shown nothing.
    register.take(&code(&all[1], "CD", "2026-05-09", |_| false), sessions);
    assert!(ever(&register, &all).iter().all(|one| one.initials != "CD"));
}

/// What is in doubt is asked about and not taken: the field keeps its line, and whoever is sure takes it.
#[test]
fn a_code_from_tomorrow_is_asked_about() {
    let all = [made(&[Topic::Units], 2, 1)];
    let [today, tomorrow] = ["2026-05-01", "2026-05-02"]
        .map(|date| code(&all[0], if date < "2026-05-02" { "AB" } else { "CD" }, date, |_| true));
    let known = Known { today: Some(day("2026-05-01")), ..known(&all) };
    let mut register = Register::default();
    let text = format!("{today}\n{tomorrow}");
    let ahead = Refused { line: tomorrow.clone(), why: ClassMistake::Ahead };
    assert_eq!(register.take(&text, known), (1, vec![ahead.clone()]));
    assert!(ahead.why.is_doubt() && !ClassMistake::Twice.is_doubt());
    assert_eq!(register.people(), ["AB"]);
    assert_eq!(register.take(&tomorrow, Known { sure: true, ..known }), (1, Vec::new()));
    assert_eq!(register.people(), ["AB", "CD"]);
}

/// The log keeps that initials were erased, and an old code brings nobody back by itself. Where it is wanted it is a
/// new record.
#[test]
fn a_code_from_before_an_erasure_is_asked_about() {
    let all = [made(&[Topic::Units, Topic::Pairs], 4, 1), made(&[Topic::Units], 2, 2)];
    let [old, newer] =
        [(0, "2026-05-01"), (1, "2026-05-04")].map(|(at, date)| code(&all[at], "AB", date, |_| true));
    let mut register = Register::default();
    register.take(&old, known(&all));
    let mut log = Log::default();
    let stamp = Stamp { device: "station-1", when: "2026-05-02T09:00:00Z", random: [7; 32] };
    let write = |log: &mut Log, register: &Register| {
        for (who, lesson) in register.lessons(&all) {
            log.lesson(&stamp, lesson, Words::default().with(Part::Who, &*who)).expect("taken");
        }
    };
    write(&mut log, &register);
    register.remove("AB");
    for (id, parts) in log.naming("ab") {
        log.erase(&stamp, &id, &parts, Words::default()).expect("erased");
    }
    let nameless = |log: &Log| -> Vec<Lesson> {
        current(log).lessons.into_iter().filter(|one| one.who.is_empty()).map(|one| one.lesson).collect()
    };
    let erased = nameless(&log);
    // For how many months it holds now does not make it another one.
    register.months = "6".into();
    let asked = Known { nameless: &erased, ..known(&all) };
    let (taken, refused) = register.take(&format!("{old}\n{newer}"), asked);
    assert_eq!((taken, refused), (1, vec![Refused { line: old.clone(), why: ClassMistake::Erased }]));
    assert_eq!(register.take(&old, Known { sure: true, ..asked }), (1, Vec::new()));
    write(&mut log, &register);
    let told = shown(current(&log).lessons.iter().map(|one| (&*one.who, &one.lesson)));
    assert_eq!(told.len(), 2, "units and pairs, by records of their own: {told:?}");
    assert_eq!(nameless(&log), erased, "what was erased stays erased");
    assert_eq!(verify(log.records()), Ok(()));
}

/// Months later by the calendar, the last day where a month is shorter: as `dateutil.relativedelta` of Python adds
/// them (its documentation, example of 31 January and one month). The dates are worked out by hand.
#[test]
fn what_was_shown_holds_until_the_month_that_was_typed() {
    let all = [made(&[Topic::Units, Topic::Pairs], 4, 1)];
    let sessions = known(&all);
    let pairs = |at: usize| all[0].1[at].topic == Topic::Pairs;
    let mut register = Register::default();
    register.take(&code(&all[0], "AB", "2026-08-31", |at| !pairs(at)), sessions);
    let found = of(&register, &all);
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(
        (found[0].topic, found[0].level, found[0].date),
        (Topic::Units, Level::First, day("2026-08-31"))
    );
    for (months, until) in
        [("12", "2027-08-31"), ("6", "2027-02-28"), (" 18 ", "2028-02-29"), ("1", "2026-09-30")]
    {
        register.months = months.into();
        assert_eq!(of(&register, &all)[0].expires, Some(day(until)), "{months}");
    }
    for months in ["", "0", "121", "1.5", "long"] {
        register.months = months.into();
        assert_eq!(of(&register, &all)[0].expires, None, "{months:?} is no end");
    }
}

#[test]
fn a_later_wrong_answer_takes_away_what_was_shown() {
    let all = [made(&[Topic::Units], 2, 1), made(&[Topic::Units], 2, 2)];
    let sessions = known(&all);
    let mut register = Register::default();
    register.take(&code(&all[1], "ab", "2026-05-02", |at| at == 0), sessions);
    register.take(&code(&all[0], "AB", "2026-05-01", |_| true), sessions);
    assert_eq!(of(&register, &all), []);
    register.take(&code(&all[0], "AB", "2026-05-03", |_| true), sessions);
    assert_eq!(of(&register, &all)[0].date, day("2026-05-03"));
    register.take(&code(&all[1], "AB", "2026-05-03", |_| false), sessions);
    assert_eq!(of(&register, &all), [], "of one day the worse counts");
}

#[test]
fn nothing_of_a_person_is_left_after_a_removal() {
    let all = [made(&[Topic::Units], 2, 1), made(&[Topic::Ppe], 2, 2)];
    let sessions = known(&all);
    let mut register = Register::default();
    let codes =
        [(0, "AB"), (1, "ab"), (0, "CD")].map(|(at, who)| code(&all[at], who, "2026-05-01", |_| true));
    assert_eq!(register.take(&codes.join("\n"), sessions).0, 3);
    assert_eq!(register.people(), ["AB", "CD"]);
    // Codes that are typed and not taken yet are a person's too.
    let typed = format!("{}\nhalf a code\n {} \n{}", codes[0].to_uppercase(), codes[1], codes[2]);
    assert_eq!(Register::without(&typed, " ab "), format!("half a code\n{}", codes[2]));
    assert_eq!((register.count_of("Ab"), register.count_of("CD")), (2, 1));
    register.remove("AB");
    assert_eq!(register.people(), ["CD"]);
    let kept = serde_json::to_string(&register).expect("it is written");
    for code in &codes[..2] {
        assert!(!kept.contains(code.as_str()), "{kept}");
    }
    assert!(kept.contains(codes[2].as_str()));
    assert!(of(&register, &all).iter().all(|one| one.initials == "CD"));
}

/// What the log keeps of a class says the same as its codes did, and what was erased there names nobody.
#[test]
fn the_log_says_who_has_shown_what() {
    let all = [made(&[Topic::Units, Topic::Pairs], 4, 1), made(&[Topic::Units], 2, 2)];
    let sessions = known(&all);
    let mut register = Register::default();
    register.take(&code(&all[0], "AB", "2026-05-01", |_| true), sessions);
    register.take(&code(&all[1], "AB", "2026-05-02", |at| at == 0), sessions);
    register.take(&code(&all[1], "CD", "2026-05-02", |_| true), sessions);
    let mut log = Log::default();
    let stamp = Stamp { device: "station-1", when: "2026-05-02T09:00:00Z", random: [7; 32] };
    for (who, lesson) in register.lessons(&all) {
        log.lesson(&stamp, lesson, Words::default().with(Part::Who, &*who)).expect("taken");
    }
    let said = |log: &Log| shown(current(log).lessons.iter().map(|one| (&*one.who, &one.lesson)));
    assert_eq!(said(&log), ever(&register, &all));
    assert_eq!(said(&log).iter().filter(|one| one.lost.is_none()).count(), 2, "pairs of AB, units of CD");
    for (id, parts) in log.naming("ab") {
        log.erase(&stamp, &id, &parts, Words::default()).expect("erased");
    }
    assert!(said(&log).iter().all(|one| one.initials == "CD"));
    assert_eq!(verify(log.records()), Ok(()));
}
