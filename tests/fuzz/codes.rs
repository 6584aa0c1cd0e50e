//! What is scanned or typed from somebody else's page: the link of a session and the code of a result.

use super::changed::{changed, corpus};
use super::fuzz;
use base64ct::{Base64UrlUnpadded, Encoding};
use bech32::{Bech32m, Hrp};
use brimline::number::Marks;
use brimline::practice::{Attempt, Level, Mark, Session, Stock, Topic, Tries, Way};
use brimline::site::demo;
use brimline::site::passing::link::{pack, unpack};
use brimline::units::System;

/// A session of the demo, small enough for a link.
fn session(seed: u32, level: Level) -> Session {
    let session = Session {
        seed,
        topics: Topic::ALL.to_vec(),
        level,
        count: 5,
        stock: Stock::of(&demo(), System::Us, Marks::POINT),
    };
    session.for_all()
}

/// A link around any JSON, with the length and the CRC-32 that it asks for (`site/passing/link.rs`).
fn framed(json: &[u8]) -> Vec<u8> {
    let content = miniz_oxide::deflate::compress_to_vec(json, 6);
    let length = u16::try_from(content.len()).unwrap_or(u16::MAX).to_be_bytes();
    let head = [1, length[0], length[1]];
    let sum = crc32fast::hash(&[&head[..], &content].concat()).to_be_bytes();
    Base64UrlUnpadded::encode_string(&[&head[..], &sum, &content].concat()).into_bytes()
}

#[test]
fn links_of_sessions() {
    let sessions: Vec<Session> =
        Level::ALL.iter().flat_map(|level| [session(3, *level), session(9, *level)]).collect();
    let links = corpus(sessions.iter().map(|one| pack(one).expect("it fits")));
    // Below the checksum.
    let inside = corpus(sessions.iter().map(|one| serde_json::to_string(one).expect("JSON")));
    let draw = |rng: &mut fastrand::Rng| {
        if rng.u8(..4) == 0 { changed(&links, rng) } else { framed(&changed(&inside, rng)) }
    };
    fuzz("links of sessions", 5, 4_000, draw, |bytes| {
        let Ok(session) = unpack::<Session>(&String::from_utf8_lossy(bytes)) else { return false };
        assert_eq!(unpack(&pack(&session).expect("what was taken fits")), Ok(session.clone()));
        // It may lack something; it is told, and what can be asked is asked.
        let (flaw, found) = (session.flaw(), session.exercises().len());
        assert!(flaw.is_some() || found == session.count as usize, "{found} of {}", session.count);
        true
    });
}

#[test]
fn codes_of_results() {
    let mark = |n: usize| Mark {
        tries: Tries::ALL[n % Tries::ALL.len()],
        way: Way::ALL.get(n * 3).copied().into_iter().collect(),
    };
    let codes = corpus((1..30).map(|count| {
        let (session, date) = (format!("{:08x}", count * 0x0123_4567_usize), format!("2026-03-{count:02}"));
        let initials = ["A", "bc", "ÅÖ", "Ж", "xyz"][count % 5].to_owned();
        Attempt { session, initials, date, marks: (0..count).map(mark).collect() }.to_code().expect("a code")
    }));
    let hrp = Hrp::parse("brim").expect("a prefix");
    let draw = |rng: &mut fastrand::Rng| {
        if rng.bool() {
            return changed(&codes, rng);
        }
        // Below the checksum: version, session, day, initials, marks, each as it comes.
        let mut bytes: Vec<u8> = (0..7).map(|_| rng.u8(..)).collect();
        bytes[0] = if rng.u8(..8) == 0 { rng.u8(..) } else { 1 };
        let initials = ["A", "é", "", "ABCDE", " b", "\u{0}"][rng.usize(..6)];
        bytes.push(if rng.u8(..8) == 0 { rng.u8(..) } else { u8::try_from(initials.len()).unwrap_or(0) });
        bytes.extend(initials.bytes());
        let marks = rng.u8(..31);
        bytes.push(if rng.u8(..8) == 0 { rng.u8(..) } else { marks });
        bytes.extend((0..marks).map(|_| rng.u8(..)));
        bech32::encode::<Bech32m>(hrp, &bytes).map_or_else(|_| Vec::new(), String::into_bytes)
    };
    fuzz("codes of results", 6, 20_000, draw, |bytes| {
        let Ok(attempt) = Attempt::from_code(&String::from_utf8_lossy(bytes)) else { return false };
        let code = attempt.to_code().unwrap_or_else(|mistake| panic!("{attempt:?}: {mistake:?}"));
        assert_eq!(Attempt::from_code(&code), Ok(attempt));
        true
    });
}
