//! A key as text: it comes back, and every slip is found.

use brimline::site::passing::{Secret, backup, backup::BackupMistake};
use proptest::prelude::*;

proptest! {
    #[test]
    fn a_key_comes_back(bytes in any::<[u8; 32]>()) {
        let secret = Secret::new(bytes);
        let kept = backup::write(&secret);
        let again = backup::read(&kept).expect("it comes back");
        prop_assert_eq!(again.signature(b"x"), secret.signature(b"x"));
        let typed = format!("My key:\r\n\r\n{}", kept.to_uppercase().replace('\n', "\r\n").replace("  ", " "));
        prop_assert!(backup::read(&typed).is_ok());
    }
}

/// Every digit replaced by every other one, and every two neighbours swapped.
#[test]
fn every_slip_is_found() {
    let kept = backup::write(&Secret::new([0x5a; 32]));
    println!("{kept}");
    let inside =
        kept.find("KEY-----\n").expect("the first line") + 9..kept.find("-----END").expect("the last");
    let mut slips = 0;
    for at in inside.clone().filter(|at| kept.as_bytes()[*at].is_ascii_hexdigit()) {
        for digit in "0123456789abcdef".bytes().filter(|digit| *digit != kept.as_bytes()[at]) {
            let mut typo = kept.clone().into_bytes();
            typo[at] = digit;
            let typo = String::from_utf8(typo).expect("text");
            assert_eq!(backup::read(&typo).map(|_| ()), Err(BackupMistake::Typo), "{at}");
            slips += 1;
        }
    }
    assert_eq!(slips, 84 * 15);
    let digits: Vec<usize> = inside.filter(|at| kept.as_bytes()[*at].is_ascii_hexdigit()).collect();
    for pair in digits.windows(2).filter(|pair| kept.as_bytes()[pair[0]] != kept.as_bytes()[pair[1]]) {
        let mut typo = kept.clone().into_bytes();
        typo.swap(pair[0], pair[1]);
        let typo = String::from_utf8(typo).expect("text");
        assert_eq!(backup::read(&typo).map(|_| ()), Err(BackupMistake::Typo));
    }
}

#[test]
fn what_is_no_backup_is_told() {
    let kept = backup::write(&Secret::new([0x5a; 32]));
    let mistake = |text: &str| backup::read(text).map(|_| ()).expect_err(text);
    assert_eq!(mistake(""), BackupMistake::NotABackup);
    assert_eq!(mistake(&kept[..kept.len() / 2]), BackupMistake::NotABackup);
    assert_eq!(mistake(&kept.replace("-----END", "----END")), BackupMistake::NotABackup);
    let letter_o = kept.replacen("5a5a 5a5a\n", "5a5a 5aOa\n", 1);
    assert_eq!(mistake(&letter_o), BackupMistake::Character { line: 2, character: 'O' });
    assert_eq!(mistake(&kept.replacen("5a5a ", "", 1)), BackupMistake::Length(80));
    assert_eq!(mistake(&kept.replacen("5a5a ", "5a5a 5a", 1)), BackupMistake::Length(86));
}
