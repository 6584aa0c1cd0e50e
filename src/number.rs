//! Numbers as people write them: read with a decimal point or comma, fractions and mixed numbers;
//! written with the digits that can be measured.

mod writing;

pub(crate) use writing::floor_log10;
pub use writing::{plain, write, write_full, write_money};

/// The decimal mark and the grouping mark of a language.
///
/// Where a space stands between thousands, a point or comma before three digits is neither of the two for sure:
/// readers of such a language come from places that write 1.200 or 1,200 for twelve hundred. It is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Marks {
    /// Between whole and tenths.
    pub decimal: char,
    /// Between thousands.
    pub group: char,
}

impl Marks {
    /// `1,234.5`
    pub const POINT: Self = Self { decimal: '.', group: ',' };
    /// `1.234,5`
    pub const COMMA: Self = Self { decimal: ',', group: '.' };

    /// Whether a mark before three digits is the one between thousands; `None` where only its writer knows.
    fn groups(self, mark: char) -> Option<bool> {
        matches!(self.group, '.' | ',').then_some(mark == self.group)
    }
}

/// Why a text is not one number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NumberMistake {
    /// Nothing is written.
    Empty,
    /// It is not a number.
    NotANumber,
    /// One mark before three digits: thousands or decimals, and nothing says which.
    TwoReadings {
        /// With the mark as the decimal mark.
        decimal: f64,
        /// With the mark between thousands.
        grouped: f64,
    },
}

/// Vulgar fractions that stand as one character (Unicode, Number Forms and Latin-1).
const VULGAR: [(char, f64, f64); 15] = [
    ('½', 1.0, 2.0),
    ('⅓', 1.0, 3.0),
    ('⅔', 2.0, 3.0),
    ('¼', 1.0, 4.0),
    ('¾', 3.0, 4.0),
    ('⅕', 1.0, 5.0),
    ('⅖', 2.0, 5.0),
    ('⅗', 3.0, 5.0),
    ('⅘', 4.0, 5.0),
    ('⅙', 1.0, 6.0),
    ('⅚', 5.0, 6.0),
    ('⅛', 1.0, 8.0),
    ('⅜', 3.0, 8.0),
    ('⅝', 5.0, 8.0),
    ('⅞', 7.0, 8.0),
];

/// The value of a vulgar fraction character.
pub fn vulgar(character: char) -> Option<f64> {
    VULGAR.iter().find(|(sign, ..)| *sign == character).map(|(_, above, below)| above / below)
}

/// Reads what stands in a number field: `12`, `1,5`, `1.5`, `12,500`, `½`, `1 1/2`, `1½`, `3/4`.
///
/// `marks` decides whether `12,500` is twelve and a half or twelve thousand five hundred, or that it has to be asked.
///
/// # Errors
/// [`NumberMistake::Empty`] for white space, [`NumberMistake::TwoReadings`] where the marks do not decide, otherwise
/// [`NumberMistake::NotANumber`].
///
/// ```
/// use brimline::number::{Marks, NumberMistake, read};
/// assert_eq!(read("1 1/2", Marks::POINT), Ok(1.5));
/// assert_eq!(read("12,500", Marks::POINT), Ok(12_500.0));
/// assert_eq!(read("1,5", Marks::POINT), Ok(1.5));
/// let french = Marks { decimal: ',', group: '\u{202f}' };
/// assert_eq!(read("1,200", french), Err(NumberMistake::TwoReadings { decimal: 1.2, grouped: 1_200.0 }));
/// ```
pub fn read(text: &str, marks: Marks) -> Result<f64, NumberMistake> {
    let text = text.trim();
    let (sign, text) = match text.strip_prefix(['-', '−']) {
        Some(rest) => (-1.0, rest.trim_start()),
        None => (1.0, text.strip_prefix('+').map_or(text, str::trim_start)),
    };
    // "5." on the way to "5.5".
    let text = text
        .strip_suffix(['.', ','])
        .filter(|rest| rest.ends_with(|c: char| c.is_ascii_digit()))
        .unwrap_or(text);
    if text.is_empty() {
        return Err(NumberMistake::Empty);
    }
    if let Some((last, character)) = text.char_indices().next_back()
        && let Some(fraction) = vulgar(character)
    {
        let whole = text[..last].trim_end();
        return Ok(sign * (fraction + if whole.is_empty() { 0.0 } else { digits(whole)? }));
    }
    if let Some((above, below)) = text.split_once(['/', '⁄']) {
        let (whole, above) = match above.trim_end().rsplit_once(char::is_whitespace) {
            Some((whole, above)) => (digits(whole.trim_end())?, above),
            None => (0.0, above.trim_end()),
        };
        let below = digits(below.trim_start())?;
        return if below > 0.0 {
            Ok(sign * (whole + digits(above)? / below))
        } else {
            Err(NumberMistake::NotANumber)
        };
    }
    decimal(&without_spaces(text)?, Some(marks)).map(|value| sign * value).map_err(|mistake| match mistake {
        NumberMistake::TwoReadings { decimal, grouped } => {
            NumberMistake::TwoReadings { decimal: sign * decimal, grouped: sign * grouped }
        }
        other => other,
    })
}

/// "12 500" without its space: one that does not stand between thousands parts two numbers.
fn without_spaces(text: &str) -> Result<String, NumberMistake> {
    let space = |character: char| matches!(character, ' ' | '\u{a0}' | '\u{202f}' | '\u{2009}');
    let (whole, tail) = text.split_at(text.find(['.', ',']).unwrap_or(text.len()));
    let mut groups = whole.split(space);
    let first = groups.next().unwrap_or_default();
    let mut spaced = groups.clone().peekable();
    if spaced.peek().is_some() && !(1..=3).contains(&first.len()) || groups.any(|group| group.len() != 3) {
        return Err(NumberMistake::NotANumber);
    }
    Ok(whole.replace(space, "") + tail)
}

fn digits(text: &str) -> Result<f64, NumberMistake> {
    let plain = (1..=9).contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit());
    if plain { Ok(value(text, "")) } else { Err(NumberMistake::NotANumber) }
}

/// The value of the digits before and behind a decimal mark: their whole number divided by a power
/// of ten. Up to 15 digits both are exact, and so the nearest `f64` results (Clinger, PLDI 1990);
/// the standard library also rounds longer ones right, with a table of 10 kB that no label needs.
fn value(whole: &str, tail: &str) -> f64 {
    let digits = whole.bytes().chain(tail.bytes()).filter(u8::is_ascii_digit);
    let number = digits.fold(0.0, |number, digit| number * 10.0 + f64::from(digit - b'0'));
    number / tail.bytes().fold(1.0, |power, _| power * 10.0)
}

/// Reads a run of digits and marks. Without `marks`, or with a space between thousands, nothing decides between
/// thousands and decimals, and a text with both readings is refused.
///
/// # Errors
/// [`NumberMistake::NotANumber`], or [`NumberMistake::TwoReadings`] where nothing decides.
///
/// ```
/// use brimline::number::{NumberMistake, decimal};
/// assert_eq!(decimal("0,5", None), Ok(0.5));
/// assert_eq!(decimal("1,000", None), Err(NumberMistake::TwoReadings { decimal: 1.0, grouped: 1_000.0 }));
/// ```
pub fn decimal(text: &str, marks: Option<Marks>) -> Result<f64, NumberMistake> {
    let wrong = NumberMistake::NotANumber;
    if !text.bytes().all(|byte| byte.is_ascii_digit() || matches!(byte, b'.' | b',')) || text.len() > 24 {
        return Err(wrong);
    }
    let Some(at) = text.rfind(['.', ',']) else {
        return if text.is_empty() { Err(wrong) } else { Ok(value(text, "")) };
    };
    let (whole, tail) = (&text[..at], &text[at + 1..]);
    let mark = char::from(text.as_bytes()[at]);
    let as_decimal = || Ok(value(whole, tail));
    let as_grouped = || Ok(value(text, ""));
    if tail.is_empty() {
        return Err(wrong);
    }
    let grouped_shape = |text: &str, by: char| {
        let mut groups = text.split(by);
        groups.next().is_some_and(|first| (1..=3).contains(&first.len()) && !first.starts_with('0'))
            && groups.all(|group| group.len() == 3)
    };
    match whole.chars().find(|character| matches!(character, '.' | ',')) {
        Some(other) if other == mark => {
            if grouped_shape(text, mark) {
                as_grouped()
            } else {
                Err(wrong)
            }
        }
        Some(other) => {
            if grouped_shape(whole, other) {
                as_decimal()
            } else {
                Err(wrong)
            }
        }
        None if grouped_shape(text, mark) => match marks.and_then(|marks| marks.groups(mark)) {
            Some(true) => as_grouped(),
            Some(false) => as_decimal(),
            None => Err(NumberMistake::TwoReadings { decimal: as_decimal()?, grouped: as_grouped()? }),
        },
        None => as_decimal(),
    }
}
