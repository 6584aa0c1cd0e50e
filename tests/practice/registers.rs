//! What a trainer gathers: which codes are taken, who has shown what until when, and that a removal removes.

use super::runs::{right, wrong};
use super::stocks;
use brimline::number::Marks;
use brimline::practice::{
    ClassMistake, CodeMistake, Given, Level, Made, Refused, Register, Run, Session, Shown, Topic, shown,
};
use brimline::site::log::{Log, Part, Stamp, Words, current, verify};
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
    let known: Vec<Session> = all[..2].iter().map(|(session, _)| session.clone()).collect();
    let good = code(&all[0], "AB", "2026-03-07", |_| true);
    let other = code(&all[1], "CD", "2026-03-07", |_| false);
    let stray = code(&all[2], "EF", "2026-03-07", |_| true);
    let mut slip = good.clone();
    slip.replace_range(8..9, if &slip[8..9] == "q" { "p" } else { "q" });
    let text = [&*good, "", &other.to_uppercase(), &good, &stray, &slip].join("\n");
    let mut register = Register::default();
    let (taken, refused) = register.take(&text, &known);
    let expected = [
        (&good, ClassMistake::Twice),
        (&stray, ClassMistake::OtherSession),
        (&slip, ClassMistake::Code(CodeMistake::Altered)),
    ];
    assert_eq!(taken, 2);
    assert_eq!(refused, expected.map(|(line, why)| Refused { line: line.clone(), why }));
    assert_eq!(register.class(&known[0]).attempts().len(), 1);
    assert_eq!(register.class(&known[1]).by_topic(&all[1].1)[0].right, 0);
    // What is saved as a file opens again.
    let mut back = Register::default();
    assert_eq!(back.take(&register.codes.join("\n"), &known), (2, Vec::new()));
    assert_eq!(back, register);
}

/// Who has shown what by the codes of a register alone.
fn of(register: &Register, all: &[Made]) -> Vec<Shown> {
    let lessons = register.lessons(all);
    shown(lessons.iter().map(|(who, lesson)| (who.as_str(), lesson)))
}

/// Months later by the calendar, the last day where a month is shorter: as `dateutil.relativedelta` of Python adds
/// them (its documentation, example of 31 January and one month). The dates are worked out by hand.
#[test]
fn what_was_shown_holds_until_the_month_that_was_typed() {
    let all = [made(&[Topic::Units, Topic::Pairs], 4, 1)];
    let sessions = [all[0].0.clone()];
    let pairs = |at: usize| all[0].1[at].topic == Topic::Pairs;
    let mut register = Register::default();
    register.take(&code(&all[0], "AB", "2026-08-31", |at| !pairs(at)), &sessions);
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
    let sessions: Vec<Session> = all.iter().map(|(session, _)| session.clone()).collect();
    let mut register = Register::default();
    register.take(&code(&all[1], "ab", "2026-05-02", |at| at == 0), &sessions);
    register.take(&code(&all[0], "AB", "2026-05-01", |_| true), &sessions);
    assert_eq!(of(&register, &all), []);
    register.take(&code(&all[0], "AB", "2026-05-03", |_| true), &sessions);
    assert_eq!(of(&register, &all)[0].date, day("2026-05-03"));
    register.take(&code(&all[1], "AB", "2026-05-03", |_| false), &sessions);
    assert_eq!(of(&register, &all), [], "of one day the worse counts");
}

#[test]
fn nothing_of_a_person_is_left_after_a_removal() {
    let all = [made(&[Topic::Units], 2, 1), made(&[Topic::Ppe], 2, 2)];
    let sessions: Vec<Session> = all.iter().map(|(session, _)| session.clone()).collect();
    let mut register = Register::default();
    let codes =
        [(0, "AB"), (1, "ab"), (0, "CD")].map(|(at, who)| code(&all[at], who, "2026-05-01", |_| true));
    assert_eq!(register.take(&codes.join("\n"), &sessions).0, 3);
    assert_eq!(register.people(), ["AB", "CD"]);
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
    let sessions: Vec<Session> = all.iter().map(|(session, _)| session.clone()).collect();
    let mut register = Register::default();
    register.take(&code(&all[0], "AB", "2026-05-01", |_| true), &sessions);
    register.take(&code(&all[1], "AB", "2026-05-02", |at| at == 0), &sessions);
    register.take(&code(&all[1], "CD", "2026-05-02", |_| true), &sessions);
    let mut log = Log::default();
    let stamp = Stamp { device: "station-1", when: "2026-05-02T09:00:00Z", random: [7; 32] };
    for (who, lesson) in register.lessons(&all) {
        log.lesson(&stamp, lesson, Words::default().with(Part::Who, &*who)).expect("taken");
    }
    let said = |log: &Log| shown(current(log).lessons.iter().map(|one| (&*one.who, &one.lesson)));
    assert_eq!(said(&log), of(&register, &all));
    assert_eq!(said(&log).len(), 2, "pairs of AB, units of CD");
    for (id, parts) in log.naming("ab") {
        log.erase(&stamp, &id, &parts, Words::default()).expect("erased");
    }
    assert!(said(&log).iter().all(|one| one.initials == "CD"));
    assert_eq!(verify(log.records()), Ok(()));
}
