//! Signatures against the published vectors, and whom a device believes.

use brimline::site::demo;
use brimline::site::passing::{
    Chain, Followed, Handover, MOST_STEPS, Pin, PublicKey, Secret, Standing, Why, admit, canonical,
    next_edition, read, sign, verify, write,
};
use sha2::{Digest, Sha256};

fn hex<const N: usize>(text: &str) -> [u8; N] {
    let byte = |at: usize| u8::from_str_radix(&text[2 * at..2 * at + 2], 16).expect("hexadecimal");
    (0..text.len() / 2).map(byte).collect::<Vec<u8>>().try_into().expect("the length")
}

/// RFC 8032 (2017), section 7.1, tests 1 to 3: secret key, public key, message, signature.
#[test]
fn the_published_vectors() {
    let vectors: [(&str, &str, &[u8], &str); 3] = [
        (
            "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
            "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
            &[],
            "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
        ),
        (
            "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
            "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
            &[0x72],
            "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
        ),
        (
            "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
            "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025",
            &[0xaf, 0x82],
            "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a",
        ),
    ];
    for (secret, public, message, signature) in vectors {
        let secret = Secret::new(hex(secret));
        assert_eq!(secret.public().bytes(), hex::<32>(public));
        assert_eq!(secret.signature(message), hex::<64>(signature));
        let key = PublicKey::of(&hex(public)).expect("a key");
        assert!(key.signed(message, &hex(signature)));
        assert!(!key.signed(b"another message", &hex(signature)));
        for byte in 0..64 {
            let mut wrong = hex::<64>(signature);
            wrong[byte] ^= 1;
            assert!(!key.signed(message, &wrong), "byte {byte}");
        }
    }
}

/// RFC 8785 (2020), section 3.2.3: the order of names by UTF-16 units, which differs from that of UTF-8 in the
/// last two. Section 3.2.2.2: what is escaped, and how.
#[test]
fn the_canonical_text_is_that_of_the_standard() {
    let names = ["\u{20ac}", "\r", "\u{fb33}", "1", "\u{1f600}", "\u{80}", "\u{f6}"];
    let object: serde_json::Map<_, _> = names.into_iter().map(|name| (name.to_owned(), 0.into())).collect();
    assert_eq!(
        canonical(&object.into()),
        "{\"\\r\":0,\"1\":0,\"\u{80}\":0,\"\u{f6}\":0,\"\u{20ac}\":0,\"\u{1f600}\":0,\"\u{fb33}\":0}"
    );
    let text = "\u{20ac}$\u{f}\nA'B\"\\\\\"/\u{7f}";
    assert_eq!(canonical(&text.into()), "\"\u{20ac}$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\u{7f}\"");
}

/// Points under which a signature says nothing: of small order, RFC 7748, section 6.1 and RFC 8032, section 5.1.
#[test]
fn keys_that_say_nothing_are_no_keys() {
    let mut one = [0; 32];
    one[0] = 1;
    for weak in [[0; 32], one] {
        assert_eq!(PublicKey::of(&weak), None);
    }
    // FIPS 180-4: SHA-256 is that of the library; the fingerprint is its first ten bytes.
    let key = Secret::new([9; 32]).public();
    let digest = format!("{:02x?}", &Sha256::digest(key.bytes())[..10]).replace(['[', ']', ',', ' '], "");
    assert_eq!(key.fingerprint().replace(' ', ""), digest);
    assert!(key.fingerprint().split(' ').all(|group| group.len() == 4));
}

#[test]
fn a_secret_does_not_show_itself() {
    let secret = Secret::new(hex("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60"));
    let shown = format!("{secret:?} {secret:#?}");
    assert!(shown.contains(&secret.public().fingerprint()));
    assert!(!shown.contains("9d") && !shown.contains("157"), "{shown}");
}

/// A file signed with the key of RFC 8032, section 7.1, test 1, kept for good: what is signed does not change
/// under devices that are pinned. Python's `cryptography` found the same signature under the bytes that the
/// documentation tells.
#[test]
fn the_first_signed_file_still_holds() {
    let opened = read(include_str!("site-schema-1.json")).expect("it opens");
    let by = PublicKey::of(&hex("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a"))
        .expect("a key");
    assert_eq!(verify(&opened), Standing::Signed { by, edition: 0 });
}

#[test]
fn a_pinned_device_takes_one_key_only() {
    let (ours, others) = (Secret::new([1; 32]), Secret::new([2; 32]));
    let pin = Pin::to(ours.public());
    let open = |file: &str| read(file).expect("it opens");
    let signed = sign(&demo(), &ours, 1).expect("it goes out");
    let foreign = sign(&demo(), &others, 1).expect("it goes out");
    let unsigned = write(&demo()).expect("it goes out");
    let altered = signed.replace("Small walk-behind", "Large walk-behind");
    assert_ne!(altered, signed);
    assert_eq!(admit(open(&signed), Some(&pin)), Ok(demo()));
    assert_eq!(
        admit(open(&foreign), Some(&pin)),
        Err(Why::OtherKey { by: others.public(), pinned: ours.public() })
    );
    assert_eq!(admit(open(&unsigned), Some(&pin)), Err(Why::Unsigned));
    assert_eq!(admit(open(&altered), Some(&pin)), Err(Why::Altered));
    for file in [&signed, &foreign, &unsigned] {
        assert_eq!(admit(open(file), None), Ok(demo()));
    }
    assert_eq!(admit(open(&altered), None), Err(Why::Altered));
    // The signature of one and the key of another.
    let mixed = foreign.replace(&others.public().text(), &ours.public().text());
    assert_eq!(admit(open(&mixed), Some(&pin)), Err(Why::Altered));
    // A field that this version passes over is signed as well.
    let more = signed.replacen("\"site\":{", "\"site\":{\"a\":1,", 1);
    assert_eq!(verify(&open(&more)), Standing::Altered);
}

/// How the text is laid out is not signed: what it says is.
#[test]
fn spaces_and_the_order_of_fields_change_nothing() {
    let file = sign(&demo(), &Secret::new([1; 32]), 1).expect("it goes out");
    let value: serde_json::Value = serde_json::from_str(&file).expect("JSON");
    let pretty = serde_json::to_string_pretty(&value).expect("JSON");
    let opened = read(&pretty).expect("it opens");
    assert!(matches!(verify(&opened), Standing::Signed { .. }));
    assert_eq!(opened.site, demo());
}

/// A file from before editions were counted is older than any that has a number; one that was signed cannot be given
/// another number, nor lose it.
#[test]
fn no_older_edition_is_taken() {
    let ours = Secret::new([1; 32]);
    let open = |file: &str| read(file).expect("it opens");
    let edition = |number| sign(&demo(), &ours, number).expect("it goes out");
    let mut pin = Pin::to(ours.public());
    for (number, taken) in [(1, true), (1, true), (7, true), (6, false), (1, false), (7, true), (8, true)] {
        match admit(open(&edition(number)), Some(&pin)) {
            Ok(site) => {
                assert!(taken, "edition {number}");
                assert_eq!(site, demo());
                pin = pin.took(number);
            }
            Err(why) => {
                assert!(!taken, "edition {number}");
                assert_eq!(why, Why::Older { edition: number, taken: pin.edition });
            }
        }
    }
    assert_eq!(pin.edition, 8);
    assert_eq!(pin.took(3), pin, "it only counts up");
    let before = open(include_str!("site-schema-1.json"));
    let Standing::Signed { by, edition: 0 } = verify(&before) else { panic!("it holds, uncounted") };
    assert!(admit(before.clone(), Some(&Pin::to(by))).is_ok());
    assert_eq!(admit(before, Some(&Pin::to(by).took(1))), Err(Why::Older { edition: 0, taken: 1 }));
    let seven = edition(7);
    let renumbered = seven.replace("\"edition\":7", "\"edition\":9");
    assert_ne!(renumbered, seven);
    assert_eq!(admit(open(&renumbered), Some(&pin)), Err(Why::Altered));
    for (other, code) in [
        ("\"edition\":0", "passing-not-an-edition"),
        ("\"edition\":1.5", "passing-not-an-edition"),
        ("\"edition\":-7", "passing-not-an-edition"),
        ("\"edition\":4294967296", "passing-not-an-edition"),
        ("\"edition\":\"7\"", "passing-type"),
        ("\"edited\":7", "passing-unknown-field"),
    ] {
        assert_eq!(read(seven.replace("\"edition\":7", other)).expect_err(other).code(), code);
    }
    assert_eq!(read(seven.replace("\"edition\":7,", "")).expect_err("none").code(), "passing-missing");
    // As the first version, the number would be an unknown field, and without it the signature is another one.
    let first = seven.replacen("\"schema\":2", "\"schema\":1", 1);
    assert_eq!(read(&first).expect_err("a number").code(), "passing-unknown-field");
    assert_eq!(admit(open(&first.replace("\"edition\":7,", "")), None), Err(Why::Altered));
}

/// A merge is newer than both, whoever makes it.
#[test]
fn a_merge_takes_the_higher_edition_and_one_more() {
    assert_eq!(next_edition(0, 0), 1);
    for (ours, theirs) in [(3, 8), (8, 3), (8, 8)] {
        assert_eq!(next_edition(ours, theirs), 9);
    }
    assert_eq!(next_edition(u32::MAX, 1), u32::MAX, "no number is lower than one that was given");
}

/// The file of the first version, with one statement, kept for good.
const FIRST_HANDOVER: &str =
    r#"{"brimline":"handover","from":"FROM","schema":1,"signature":"SIGNATURE","to":"TO"}"#;

#[test]
fn a_key_hands_over_to_the_next() {
    let [old, new, stranger] = [1, 2, 3].map(|n| Secret::new([n; 32]));
    let pin = Pin::to(old.public()).took(5);
    let statement = Handover::new(&old, &new.public());
    let chain = Chain::of(statement.clone());
    let file = chain.write();
    assert_eq!(Chain::read(&file), Ok(chain.clone()));
    let Followed { pin: next, steps } = chain.follow(&pin).expect("the old key says so");
    assert_eq!((next, steps), (Pin { key: new.public(), edition: 5 }, vec![statement]));
    let admitted =
        |edition| admit(read(sign(&demo(), &new, edition).expect("signed")).expect("opens"), Some(&next));
    assert_eq!(admitted(6), Ok(demo()));
    assert_eq!(admitted(4), Err(Why::Older { edition: 4, taken: 5 }), "the count goes on under the next key");
    // It does not lead back, and not away from another key.
    assert_eq!(chain.follow(&next), Ok(Followed { pin: next, steps: vec![] }));
    let away = Pin::to(stranger.public());
    let other = Why::OtherKey { by: old.public(), pinned: stranger.public() };
    assert_eq!(chain.follow(&away), Err(other));
    // A stranger cannot say it in the old key's name.
    let forged = Chain::of(Handover::new(&stranger, &new.public())).write();
    let forged = forged.replace(&stranger.public().text(), &old.public().text());
    assert_eq!(Chain::read(&forged).expect("it reads").follow(&pin), Err(Why::Altered));
    let led = file.replace(&new.public().text(), &stranger.public().text());
    assert_eq!(Chain::read(&led).expect("it reads").follow(&pin), Err(Why::Altered));
    // Neither passes as the other.
    assert_eq!(read(&file).expect_err("no site").code(), "passing-other-kind");
    assert_eq!(
        Chain::read(write(&demo()).expect("a site")).expect_err("a site").code(),
        "passing-other-kind"
    );
    for (from, to, code) in [
        ("\"to\"", "\"too\"", "passing-unknown-field"),
        (":2,", ":3,", "passing-later"),
        ("\"steps\"", "\"step\"", "passing-unknown-field"),
    ] {
        assert_eq!(Chain::read(file.replace(from, to)).expect_err(to).code(), code);
    }
    // What the first version wrote is followed for good.
    let step: serde_json::Value =
        serde_json::from_str::<serde_json::Value>(&file).expect("JSON")["steps"][0].clone();
    let mut first = FIRST_HANDOVER.to_owned();
    for (mark, field) in [("FROM", "from"), ("SIGNATURE", "signature"), ("TO", "to")] {
        first = first.replace(mark, step[field].as_str().expect("a text"));
    }
    assert_eq!(Chain::read(&first), Ok(chain));
    let mixed = first.replace("\"schema\":1", "\"schema\":2");
    assert_eq!(Chain::read(&mixed).expect_err("no steps").code(), "passing-unknown-field");
}

/// A chain of handovers between keys by their numbers.
fn chain(keys: &[u8]) -> Chain {
    let step = |pair: &[u8]| Handover::new(&Secret::new([pair[0]; 32]), &Secret::new([pair[1]; 32]).public());
    let mut steps = keys.windows(2).map(step);
    let first = Chain::of(steps.next().expect("a step"));
    steps.fold(first, Chain::then)
}

fn pinned(key: u8) -> Pin {
    Pin::to(Secret::new([key; 32]).public())
}

#[test]
fn a_device_that_missed_keys_takes_the_rest_of_the_way_at_once() {
    let way = chain(&[1, 2, 3, 4]);
    let read_back = Chain::read(way.write()).expect("it reads");
    for (key, steps) in [(1, 3), (2, 2), (3, 1), (4, 0)] {
        let followed = read_back.follow(&pinned(key)).expect("on its way");
        assert_eq!((followed.pin, followed.steps.len()), (pinned(4), steps));
        let ends: Vec<PublicKey> = followed.steps.iter().map(|step| step.from).collect();
        let expected: Vec<PublicKey> = (key..4).map(|key| pinned(key).key).collect();
        assert_eq!(ends, expected, "each step is told");
    }
    assert!(matches!(read_back.follow(&pinned(9)), Err(Why::OtherKey { .. })));
    // A statement of another key than the newest begins anew, and a chain that is full lets go of its oldest.
    let elsewhere = Handover::new(&Secret::new([7; 32]), &pinned(8).key);
    assert_eq!(way.then(elsewhere.clone()), Chain::of(elsewhere));
    let keys: Vec<u8> = (1..=u8::try_from(MOST_STEPS).expect("it fits") + 3).collect();
    let long = chain(&keys);
    assert_eq!(Chain::read(long.write()), Ok(long.clone()));
    assert_eq!(long.follow(&pinned(3)).expect("on its way").steps.len(), MOST_STEPS);
    assert!(matches!(long.follow(&pinned(2)), Err(Why::OtherKey { .. })));
}

/// One link taken out, two that changed places, one twice, one that leads round, one by a stranger, one changed by a
/// letter: none leads anybody anywhere, wherever in the chain the device stands.
#[test]
fn a_chain_that_is_broken_anywhere_leads_nowhere() {
    let whole: serde_json::Value = serde_json::from_str(&chain(&[1, 2, 3, 4, 5]).write()).expect("JSON");
    let refused = |what: &str, change: &dyn Fn(&mut Vec<serde_json::Value>), code: &str| {
        let mut file = whole.clone();
        change(file["steps"].as_array_mut().expect("steps"));
        let read = Chain::read(file.to_string()).expect(what);
        for key in 1..=5 {
            let why = read.follow(&pinned(key)).expect_err(what);
            assert_eq!(why.code(), code, "{what}, from key {key}");
        }
    };
    let step = |from: u8, to: u8| {
        let one = Chain::of(Handover::new(&Secret::new([from; 32]), &pinned(to).key)).write();
        serde_json::from_str::<serde_json::Value>(&one).expect("JSON")["steps"][0].clone()
    };
    let broken = "passing-not-admitted-broken";
    for at in 1..3 {
        refused("one is missing", &|steps| drop(steps.remove(at)), broken);
    }
    for (one, other) in [(0, 1), (1, 2), (2, 3), (0, 3), (1, 3), (0, 2)] {
        refused("two changed places", &|steps| steps.swap(one, other), broken);
    }
    for at in 0..4 {
        refused("one stands twice", &|steps| steps.insert(at, steps[at].clone()), broken);
        refused(
            "one is by a stranger",
            &|steps| steps[at]["signature"] = step(9, 8)["signature"].clone(),
            "passing-not-admitted-altered",
        );
        let other = (at + 1) % 4;
        refused(
            "one has the signature of another",
            &|steps| steps[at]["signature"] = steps[other]["signature"].clone(),
            "passing-not-admitted-altered",
        );
        refused(
            "one begins elsewhere",
            &|steps| steps[at]["from"] = pinned(9).key.text().into(),
            if at == 0 { "passing-not-admitted-altered" } else { broken },
        );
        refused(
            "one ends elsewhere",
            &|steps| steps[at]["to"] = pinned(9).key.text().into(),
            "passing-not-admitted-altered",
        );
    }
    refused("it leads back to the first", &|steps| steps.push(step(5, 1)), broken);
    refused("it leads back to itself", &|steps| steps.push(step(5, 5)), broken);
    refused("it is turned round", &|steps| steps.reverse(), broken);
    let mut empty = whole.clone();
    empty["steps"] = serde_json::json!([]);
    assert_eq!(Chain::read(empty.to_string()).expect_err("empty").code(), "passing-missing");
    let mut long = whole.clone();
    long["steps"] = vec![step(1, 2); MOST_STEPS + 1].into();
    assert_eq!(Chain::read(long.to_string()).expect_err("long").code(), "passing-long-list");
    for (steps, code) in [
        ("7", "passing-type"),
        ("[7]", "passing-type"),
        ("[{}]", "passing-missing"),
        (r#"[{"a":1}]"#, "passing-unknown-field"),
    ] {
        let file = format!(r#"{{"brimline":"handover","schema":2,"steps":{steps}}}"#);
        assert_eq!(Chain::read(file).expect_err(steps).code(), code);
    }
}

/// What is the same is not taken, and leads nobody back all the same; what others signed, or nobody, counts for nothing.
#[test]
fn an_edition_that_was_found_the_same_counts() {
    let (ours, other) = (Secret::new([7; 32]), Secret::new([8; 32]));
    let pin = Pin::to(ours.public()).took(3);
    let edition =
        |secret: &Secret, number| read(sign(&demo(), secret, number).expect("a file")).expect("a site");
    let seen = pin.saw(verify(&edition(&ours, 9)), true);
    assert_eq!(seen.edition, 9);
    assert_eq!(admit(edition(&ours, 8), Some(&seen)), Err(Why::Older { edition: 8, taken: 9 }));
    assert_eq!(seen.saw(verify(&edition(&ours, 5)), true), seen, "it only counts up");
    for standing in [verify(&edition(&other, 9)), Standing::Unsigned, Standing::Altered] {
        assert_eq!(pin.saw(standing, true), pin);
    }
    assert_eq!(pin.saw(verify(&edition(&ours, 9)), false), pin, "it was not taken yet");
}
