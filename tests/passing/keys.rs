//! Signatures against the published vectors, and whom a device believes.

use brimline::site::demo;
use brimline::site::passing::{
    Handover, Pin, PublicKey, Secret, Standing, Why, admit, canonical, read, sign, verify, write,
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
    assert_eq!(verify(&opened), Standing::Signed { by });
}

#[test]
fn a_pinned_device_takes_one_key_only() {
    let (ours, others) = (Secret::new([1; 32]), Secret::new([2; 32]));
    let pin = Pin(ours.public());
    let open = |file: &str| read(file).expect("it opens");
    let signed = sign(&demo(), &ours).expect("it goes out");
    let foreign = sign(&demo(), &others).expect("it goes out");
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
    let file = sign(&demo(), &Secret::new([1; 32])).expect("it goes out");
    let value: serde_json::Value = serde_json::from_str(&file).expect("JSON");
    let pretty = serde_json::to_string_pretty(&value).expect("JSON");
    let opened = read(&pretty).expect("it opens");
    assert!(matches!(verify(&opened), Standing::Signed { .. }));
    assert_eq!(opened.site, demo());
}

#[test]
fn a_key_hands_over_to_the_next() {
    let [old, new, stranger] = [1, 2, 3].map(|n| Secret::new([n; 32]));
    let pin = Pin(old.public());
    let statement = Handover::new(&old, &new.public());
    let file = statement.write();
    assert_eq!(Handover::read(&file), Ok(statement.clone()));
    let next = statement.follow(&pin).expect("the old key says so");
    assert_eq!(next, Pin(new.public()));
    assert_eq!(admit(read(sign(&demo(), &new).expect("signed")).expect("opens"), Some(&next)), Ok(demo()));
    // It does not lead back, and not away from another key.
    let other = Why::OtherKey { by: old.public(), pinned: new.public() };
    assert_eq!(statement.follow(&next), Err(other));
    // A stranger cannot say it in the old key's name.
    let forged = Handover::new(&stranger, &new.public()).write();
    let forged = forged.replace(&stranger.public().text(), &old.public().text());
    assert_eq!(Handover::read(&forged).expect("it reads").follow(&pin), Err(Why::Altered));
    let led = file.replace(&new.public().text(), &stranger.public().text());
    assert_eq!(Handover::read(&led).expect("it reads").follow(&pin), Err(Why::Altered));
    // Neither passes as the other.
    assert_eq!(read(&file).expect_err("no site").code(), "passing-other-kind");
    assert_eq!(
        Handover::read(write(&demo()).expect("a site")).expect_err("a site").code(),
        "passing-other-kind"
    );
    for (from, to, code) in [("\"to\"", "\"too\"", "passing-unknown-field"), (":1,", ":2,", "passing-later")]
    {
        assert_eq!(Handover::read(file.replace(from, to)).expect_err(to).code(), code);
    }
}
