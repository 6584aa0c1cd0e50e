//! A secret as a text file, to be kept, printed, and typed again.

use super::Secret;
use super::key::grouped;

/// The first line.
const BEGIN: &str = "-----BEGIN BRIMLINE SECRET KEY-----";

/// The last line.
const END: &str = "-----END BRIMLINE SECRET KEY-----";

/// Why a backup gives no secret.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BackupMistake {
    /// The line at which it begins, or the one at which it ends, is missing.
    NotABackup,
    /// A character that is no hexadecimal digit.
    Character {
        /// The line of the text, from 1.
        line: usize,
        /// The character.
        character: char,
    },
    /// More digits or fewer than the 84 that it has.
    Length(usize),
    /// The digits of the fingerprint are not those of the key: one of them is wrong.
    Typo,
}

impl BackupMistake {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::NotABackup => "backup-not-a-backup",
            Self::Character { .. } => "backup-character",
            Self::Length(_) => "backup-length",
            Self::Typo => "backup-typo",
        }
    }
}

/// The secret as a text file: four lines of its digits, and one with the fingerprint of its public half. That is
/// the checksum too: no other key that a slip could make has the same one, and it tells which key a file is
/// the backup of.
///
/// ```
/// use brimline::site::passing::{Secret, backup};
/// let secret = Secret::new([7; 32]);
/// let kept = backup::write(&secret);
/// assert!(kept.contains(&secret.public().fingerprint()));
/// assert_eq!(backup::read(&kept).unwrap().public(), secret.public());
/// ```
pub fn write(secret: &Secret) -> String {
    let lines: Vec<String> = secret.bytes().chunks(8).map(grouped).collect();
    format!("{BEGIN}\n{}\n\n{}\n{END}\n", lines.join("\n"), secret.public().fingerprint())
}

/// The secret that a text file holds, whatever stands before and after it. Capitals, spaces and lines are as
/// they happen to be.
///
/// # Errors
/// [`BackupMistake`].
pub fn read(text: &str) -> Result<Secret, BackupMistake> {
    let (before, rest) = text.split_once(BEGIN).ok_or(BackupMistake::NotABackup)?;
    let (inside, _) = rest.split_once(END).ok_or(BackupMistake::NotABackup)?;
    let first = before.matches('\n').count() + 1;
    let mut digits = Vec::new();
    for (line, text) in inside.split('\n').enumerate() {
        for character in text.chars().filter(|one| !one.is_whitespace()) {
            let digit = character.to_digit(16);
            digits.push(digit.ok_or(BackupMistake::Character { line: first + line, character })?);
        }
    }
    let bytes: Vec<u8> = digits
        .chunks(2)
        .filter_map(|pair| u8::try_from(pair.iter().fold(0, |sum, one| sum * 16 + one)).ok())
        .collect();
    let (key, print) = bytes.split_first_chunk::<32>().ok_or(BackupMistake::Length(digits.len()))?;
    if digits.len() != 84 {
        return Err(BackupMistake::Length(digits.len()));
    }
    let secret = Secret::new(*key);
    let is_right = secret.public().fingerprint() == grouped(print);
    if is_right { Ok(secret) } else { Err(BackupMistake::Typo) }
}
