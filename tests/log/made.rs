//! Logs that a machine makes up.

use brimline::site::log::{
    Amount, Checklist, Deviation, Draft, Fill, Kind, Lesson, Log, Named, Part, Reading, Scale, Si, Stamp,
    Task, Words, changed,
};
use proptest::prelude::*;

/// Something that is done to a log.
#[derive(Clone, Debug)]
pub enum Act {
    Fill(Box<Fill>, String),
    Correct(usize, Box<Fill>, String),
    Erase(usize, usize),
    Show(Box<Lesson>, String),
}

fn name() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => "[a-z]{1,3}".prop_map(|text| text),
        1 => Just("Größe \"½\" \\ \u{1f9fd}\ttab".to_owned()),
        1 => Just("=1+1".to_owned()),
        1 => Just(String::new()),
    ]
}

fn named() -> impl Strategy<Value = Named> {
    ("[a-d]?", name()).prop_map(|(id, name)| Named::new(id, name))
}

fn amount() -> impl Strategy<Value = Amount> {
    let value = prop_oneof![Just(f64::NAN), Just(0.0), 0.0..1e-3, 0.0..1.0, 0.0..1e9, 0.0..1e-15];
    (value, name()).prop_map(|(si, text)| Amount::new(si, text))
}

fn one_of<T: Copy + std::fmt::Debug + 'static>(all: &'static [T]) -> impl Strategy<Value = T> {
    prop::sample::select(all)
}

/// When a fill was done: at the time of writing, or another day.
fn at() -> impl Strategy<Value = String> {
    prop_oneof![
        3 => Just(String::new()),
        1 => (1..29_u32, 0..24_u32).prop_map(|(day, hour)| format!("2026-03-{day:02}T{hour:02}:15-05:00")),
    ]
}

pub fn lesson() -> impl Strategy<Value = Lesson> {
    let topics = prop::collection::btree_set("[a-z]{1,6}", 1..4);
    ("[0-9a-f]{8}", 1..4_u32, 1..29_u32, any::<bool>(), topics, 0..4_usize).prop_map(
        |(session, level, day, ends, topics, right)| {
            let topics: Vec<String> = topics.into_iter().collect();
            let (shown, missed) = topics.split_at(right.min(topics.len()));
            let until = if ends { format!("2027-03-{day:02}") } else { String::new() };
            Lesson {
                session,
                level,
                day: format!("2026-03-{day:02}"),
                until,
                shown: shown.to_vec(),
                missed: missed.to_vec(),
            }
        },
    )
}

pub fn fill() -> impl Strategy<Value = Fill> {
    let names = (named(), prop::collection::vec(named(), 0..3), named(), named(), named(), 0..4_u32);
    let amounts = (amount(), amount(), amount(), amount());
    let reading = (one_of(Scale::ALL), amount());
    let tasks = prop::array::uniform5(one_of(Task::ALL));
    (at(), names, amounts, reading, one_of(Deviation::ALL), tasks, prop::bool::weighted(0.1)).prop_map(
        |(at, names, amounts, (scale, read), deviation, tasks, struck)| {
            let (machine, areas, product, floor, standard, version) = names;
            let (concentrate, water, level, measured) = amounts;
            let reading = Reading { scale, si: read.si, text: read.text };
            let [drain, rinse, filters, brush, squeegee] = tasks;
            let checklist = Checklist { drain, rinse, filters, brush, squeegee };
            Fill {
                at: at.into(),
                machine,
                areas,
                product,
                floor,
                standard,
                version,
                concentrate,
                water,
                level,
                measured,
                reading,
                deviation,
                checklist,
                struck,
            }
        },
    )
}

pub fn acts(most: usize) -> impl Strategy<Value = Vec<Act>> {
    let act = prop_oneof![
        5 => (fill(), name()).prop_map(|(fill, who)| Act::Fill(Box::new(fill), who)),
        2 => (any::<usize>(), fill(), name()).prop_map(|(of, fill, who)| Act::Correct(of, Box::new(fill), who)),
        1 => (any::<usize>(), any::<usize>()).prop_map(|(of, part)| Act::Erase(of, part)),
        1 => (lesson(), "[A-M]{2}").prop_map(|(lesson, who)| Act::Show(Box::new(lesson), who)),
    ];
    prop::collection::vec(act, 0..most)
}

/// Does it all on one device; what the log refuses is left out.
pub fn done(log: &mut Log, device: &str, acts: &[Act]) {
    for (count, act) in acts.iter().enumerate() {
        let when = format!("2026-03-{:02}T{:02}:30:00-05:00", count % 28 + 1, count * 7 % 24);
        let mut random = [u8::try_from(count % 251).expect("small"); 32];
        random[..device.len()].copy_from_slice(device.as_bytes());
        let stamp = Stamp { device, when: &when, random };
        let words = |who: &str| {
            Words::default().with(Part::Who, who).with(Part::By, "ZZ").with(Part::Notes, who.repeat(2))
        };
        let chosen = |of: usize| {
            let all = log.records();
            (!all.is_empty()).then(|| all[of % all.len()].clone())
        };
        match act {
            Act::Fill(fill, who) => {
                log.fill(&stamp, (**fill).clone(), words(who)).expect("a fill is taken");
            }
            Act::Correct(of, fill, who) => {
                let Some(record) = chosen(*of).filter(|one| one.kind == Kind::Fill) else { continue };
                let changes = changed(&record.fill, fill);
                let _ = log.correct(&stamp, &record.id(), &changes, words(who));
            }
            Act::Erase(of, part) => {
                let Some(record) = chosen(*of) else { continue };
                let part = Part::ALL[part % Part::ALL.len()];
                let _ = log.erase(&stamp, &record.id(), &[part], words("ER"));
            }
            Act::Show(lesson, who) => {
                log.lesson(&stamp, (**lesson).clone(), words(who)).expect("a lesson is taken");
            }
        }
    }
}

/// A log of one device.
pub fn one(device: &'static str) -> impl Strategy<Value = Log> {
    acts(12).prop_map(move |acts| {
        let mut log = Log::default();
        done(&mut log, device, &acts);
        log
    })
}

/// A log of two devices, each of which goes on from what the other wrote.
pub fn several() -> impl Strategy<Value = Log> {
    (acts(8), acts(8), acts(5)).prop_map(|(a, b, c)| {
        let mut log = Log::default();
        done(&mut log, "d1", &a);
        done(&mut log, "d2", &b);
        done(&mut log, "d1", &c);
        log
    })
}

/// A small log with every kind of record and every field of them said.
pub fn whole() -> Log {
    let stamp = |when, byte| Stamp { device: "station-1", when, random: [byte; 32] };
    let fill = Fill {
        at: "2026-03-06T06:10:00-05:00".into(),
        machine: Named::new("machine-1", "Ride-on"),
        areas: vec![Named::new("area-1", "Reading room"), Named::new("area-2", "Entrance")],
        product: Named::new("product-1", "Neutral cleaner"),
        floor: Named::new("floor-1", "Vinyl"),
        standard: Named::new("standard-1", "Vinyl, daily"),
        version: 2,
        concentrate: Amount::new(0.000_582_4, "582 mL"),
        water: Amount::new(0.037_27, "37.3 L"),
        level: Amount::new(0.037_854_117_84, "10 gal"),
        measured: Amount::new(0.000_6, "600 mL"),
        reading: Reading {
            scale: Scale::Active,
            si: Si::new(0.21).expect("an amount"),
            text: "210 ppm".into(),
        },
        deviation: Deviation::More,
        checklist: Checklist {
            drain: Task::Done,
            rinse: Task::Done,
            filters: Task::NotDone,
            brush: Task::Done,
            squeegee: Task::NotDone,
        },
        struck: true,
    };
    let words = Words::default()
        .with(Part::By, "AB")
        .with(Part::Who, "CD")
        .with(Part::Reason, "Heavy soil")
        .with(Part::Notes, "Salt at the entrance");
    let at = stamp("2026-03-06T18:30:00-05:00", 1);
    let first = Draft::fill(fill.clone()).at_station("Fill station, library");
    let mut log = Log::of([first.after(None, &at, words.clone()).expect("taken")]);
    let first = log.records()[0].id();
    let second = log.fill(&stamp("2026-03-07T18:30:00-05:00", 2), fill.clone(), words).expect("taken");
    let right = Fill { measured: Amount::new(0.000_58, "580 mL"), struck: false, ..fill.clone() };
    let why = Words::default().with(Part::By, "AB").with(Part::Who, "EF").with(Part::Why, "Read again");
    log.correct(&stamp("2026-03-07T19:00:00-05:00", 3), &first, &changed(&fill, &right), why).expect("taken");
    let asked = Words::default().with(Part::By, "AB").with(Part::Why, "Asked for");
    log.erase(&stamp("2026-04-01T08:00:00-04:00", 4), &second, &[Part::Who, Part::Notes], asked)
        .expect("taken");
    let lesson = Lesson {
        session: "0badcafe".into(),
        level: 2,
        day: "2026-04-02".into(),
        until: "2027-04-02".into(),
        shown: vec!["label".into(), "dose".into()],
        missed: vec!["foam".into()],
    };
    let who = Words::default().with(Part::Who, "GH").with(Part::By, "AB");
    log.lesson(&stamp("2026-04-02T08:00:00-04:00", 5), lesson, who).expect("taken");
    log
}
