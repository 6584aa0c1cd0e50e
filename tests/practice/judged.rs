//! The key is right in every unit, and no wrong road is.

use brimline::number::{Marks, plain};
use brimline::practice::{Amount, Exercise, Harm, Key, Led, Reply, Road, Verdict, judge};
use brimline::units::UNITS;

/// Holds what the core says of the key, of each road and of what lies between.
pub fn check(exercise: &Exercise) {
    match &exercise.key {
        Key::Amount(key) => amounts(exercise, key),
        Key::Choice { options, right } => {
            for index in 0..options.len() {
                let verdict = judge(exercise, Reply::Chosen(&[index]), Marks::POINT);
                assert_eq!(verdict.is_right(), index == *right);
                // Every wrong choice is a road of its own.
                let road = exercise.roads.iter().find(|road| road.led == Led::Choice(index));
                assert_eq!(road.is_some(), index != *right, "{:?} {:?}", exercise.asked, exercise.roads);
                if let Some(road) = road {
                    assert_eq!(verdict, Verdict::Wrong { way: Some(road.way), harm: road.harm });
                }
            }
        }
        Key::Several { options, right } => several(exercise, options.len(), right),
        Key::Order { options, right } => order(exercise, options.len(), right),
    }
}

fn of(exercise: &Exercise, si: f64, code: &str) -> Verdict {
    let unit = UNITS.iter().find(|unit| unit.code == code).expect("a unit");
    judge(exercise, Reply::Number { text: &plain(unit.from_si(si), 15, '.'), unit: code }, Marks::POINT)
}

fn amounts(exercise: &Exercise, key: &Amount) {
    assert!(key.si > 0.0 && key.si.is_finite() && key.within > 0.0 && key.within < key.si / 2.0, "{key:?}");
    let own = UNITS.iter().find(|unit| unit.code == key.unit).expect("its unit");
    // The unit that an amount was given in is the one that it is to be changed out of.
    let given =
        |code: &str| exercise.roads.iter().any(|road| matches!(road.led, Led::In(unit) if unit == code));
    for unit in UNITS.iter().filter(|unit| unit.dimension == own.dimension && !given(unit.code)) {
        assert_eq!(of(exercise, key.si, unit.code), Verdict::Right, "{} in {}", key.si, unit.code);
    }
    let other = UNITS.iter().find(|unit| unit.dimension != own.dimension).expect("another dimension");
    assert!(matches!(of(exercise, key.si, other.code), Verdict::NotRead(_)));
    for side in [-1.0, 1.0] {
        assert!(of(exercise, key.si + side * key.within * 0.999, key.unit).is_right(), "what still counts");
        let beyond = key.si + side * key.within * 1.001;
        let poured = key.poured.is_some_and(|poured| (beyond - poured.si).abs() <= poured.si * 0.006);
        assert!(poured || !of(exercise, beyond, key.unit).is_right(), "what does not");
    }
    for road in &exercise.roads {
        let si = match road.led {
            Led::To(si) => si,
            Led::In(code) => {
                let told = Verdict::Wrong { way: Some(road.way), harm: None };
                assert_eq!(of(exercise, key.si, code), told, "{:?}", exercise.asked);
                continue;
            }
            ref led => panic!("an amount has roads to amounts: {led:?}"),
        };
        match of(exercise, si, key.unit) {
            Verdict::Wrong { way, harm } => {
                assert_eq!(way, Some(road.way), "{:?} {:?}", exercise.asked, exercise.roads);
                let over = exercise.most.is_some_and(|most| si > most * 1.000_001 + key.within);
                assert_eq!(harm, over.then_some(Harm::OverLabel));
            }
            other => panic!("{road:?} is {other:?}"),
        }
        // What is off by more than a twentieth of where a road leads was not got by that road.
        for beyond in [si * 0.94, si * 1.06] {
            if let Verdict::Wrong { way: Some(way), .. } = of(exercise, beyond, key.unit) {
                let leads = |one: &Road| matches!(one.led, Led::To(there) if (beyond / there - 1.0).abs() <= 0.05 + 1e-9);
                assert!(
                    exercise.roads.iter().any(|one| one.way == way && leads(one)),
                    "{beyond} is no {way:?}"
                );
            }
        }
    }
    if let Some(most) = exercise.most {
        assert!(key.si <= most * (1.0 + 1e-9), "the key itself keeps to the label: {:?}", exercise.asked);
    }
}

fn several(exercise: &Exercise, count: usize, right: &[usize]) {
    let turned: Vec<usize> = right.iter().rev().copied().collect();
    assert_eq!(judge(exercise, Reply::Chosen(&turned), Marks::POINT), Verdict::Right, "in any order");
    assert!(matches!(judge(exercise, Reply::Chosen(&[]), Marks::POINT), Verdict::NotRead(_)));
    for road in &exercise.roads {
        let mut chosen = right.to_vec();
        match road.led {
            Led::Lacks(one) => {
                assert!(right.contains(&one));
                chosen.retain(|other| *other != one);
                if chosen.is_empty() {
                    chosen.extend((0..count).find(|other| *other != one));
                }
            }
            Led::Has(one) => {
                assert!(!right.contains(&one) && one < count);
                chosen.push(one);
            }
            ref led => panic!("{led:?} of several"),
        }
        let verdict = judge(exercise, Reply::Chosen(&chosen), Marks::POINT);
        assert_eq!(verdict, Verdict::Wrong { way: Some(road.way), harm: road.harm }, "{:?}", exercise.asked);
    }
    // Whatever else is chosen is wrong, and there is something to tell of it.
    let all: Vec<usize> = (0..count).collect();
    let singles = all.chunks(1).map(<[usize]>::to_vec);
    let but_one = all.iter().map(|left| all.iter().copied().filter(|one| one != left).collect());
    for chosen in singles.chain(but_one).chain([all.clone()]).filter(|chosen: &Vec<usize>| *chosen != right) {
        let verdict = judge(exercise, Reply::Chosen(&chosen), Marks::POINT);
        assert!(matches!(verdict, Verdict::Wrong { way: Some(_), .. }), "{chosen:?} of {:?}", exercise.asked);
    }
}

fn order(exercise: &Exercise, count: usize, right: &[usize]) {
    assert_eq!(judge(exercise, Reply::Chosen(right), Marks::POINT), Verdict::Right);
    assert!(matches!(judge(exercise, Reply::Chosen(&right[1..]), Marks::POINT), Verdict::NotRead(_)));
    assert_eq!(exercise.roads.len(), count * (count - 1) / 2, "any two that are turned");
    for road in &exercise.roads {
        let Led::After(first, second) = road.led else { panic!("{road:?} of an order") };
        let mut chosen: Vec<usize> = right.iter().copied().filter(|one| *one != first).collect();
        let at = chosen.iter().position(|one| *one == second).expect("the other");
        chosen.insert(at + 1, first);
        let verdict = judge(exercise, Reply::Chosen(&chosen), Marks::POINT);
        assert_eq!(verdict, Verdict::Wrong { way: Some(road.way), harm: road.harm });
    }
}
