//! Numbers as people write them: read with a decimal point or comma, fractions and mixed numbers;
//! written with the digits that can be measured.

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

/// Writes a value with `significant` digits, never rounding whole units away, with twelve decimals
/// at most and without trailing zeros. Where three decimals would have two readings a fourth one, 0, stands behind
/// them: what is written reads back the same.
///
/// ```
/// use brimline::number::{Marks, write};
/// assert_eq!(write(39.384_615, 3, Marks::POINT), "39.4");
/// assert_eq!(write(27_456.2, 3, Marks::POINT), "27,456");
/// assert_eq!(write(0.5, 3, Marks::COMMA), "0,5");
/// assert_eq!(write(1.125, 4, Marks { decimal: ',', group: '\u{202f}' }), "1,1250");
/// ```
pub fn write(value: f64, significant: i32, marks: Marks) -> String {
    written(value, significant, marks, false)
}

/// Writes a value as [`write()`] does, with all of its digits: zeros at the end say how exact it is.
///
/// ```
/// use brimline::number::{Marks, write_full};
/// assert_eq!(write_full(1.099_9, 3, Marks::POINT), "1.10");
/// assert_eq!(write_full(9.999, 3, Marks::COMMA), "10,0");
/// assert_eq!(write_full(27_456.2, 3, Marks::POINT), "27,456");
/// ```
pub fn write_full(value: f64, significant: i32, marks: Marks) -> String {
    written(value, significant, marks, true)
}

fn written(value: f64, significant: i32, marks: Marks, full: bool) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let magnitude = if value == 0.0 { 0 } else { floor_log10(value.abs()) };
    let places = usize::try_from((significant - 1 - magnitude).clamp(0, 12)).unwrap_or(0);
    let plain = format!("{:.places$}", value.abs());
    let (whole, tail) = plain.split_once('.').unwrap_or((&plain, ""));
    let short = tail.trim_end_matches('0');
    // 9.999 rounds up to 10.00, which has a digit more than was asked for.
    let digits = plain.trim_start_matches(['0', '.']).bytes().filter(u8::is_ascii_digit).count();
    let excess = digits.saturating_sub(usize::try_from(significant).unwrap_or(0));
    let tail = if full { &tail[..short.len().max(tail.len().saturating_sub(excess))] } else { short };
    let below = value < 0.0 && plain.bytes().any(|byte| (b'1'..=b'9').contains(&byte));
    let mut out = if below { "−".to_owned() } else { String::new() };
    out += &grouped(whole, marks);
    if !tail.is_empty() {
        out.push(marks.decimal);
        out.push_str(tail);
        // More than three digits before the mark, or a leading zero, leave one reading.
        if tail.len() == 3
            && (1..=3).contains(&whole.len())
            && whole != "0"
            && marks.groups(marks.decimal).is_none()
        {
            out.push('0');
        }
    }
    out
}

/// Writes an amount of money: with two decimals, whole units never rounded away.
///
/// ```
/// use brimline::number::{Marks, write_money};
/// assert_eq!(write_money(1234.5, Marks::POINT), "1,234.50");
/// assert_eq!(write_money(0.004, Marks::COMMA), "0,00");
/// ```
pub fn write_money(value: f64, marks: Marks) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let plain = format!("{:.2}", value.abs());
    let (whole, cents) = plain.split_once('.').unwrap_or((&plain, "00"));
    let sign = if value < 0.0 && plain != "0.00" { "−" } else { "" };
    format!("{sign}{}{}{cents}", grouped(whole, marks), marks.decimal)
}

/// Digits in groups of three.
fn grouped(digits: &str, marks: Marks) -> String {
    let mut out = String::with_capacity(digits.len() + 6);
    for (index, digit) in digits.chars().enumerate() {
        if index > 0 && (digits.len() - index).is_multiple_of(3) {
            out.push(marks.group);
        }
        out.push(digit);
    }
    out
}

/// Writes a value for another program: at most `significant` digits, whole units never rounded away, nothing
/// between thousands. Where three decimals could be taken for thousands a fourth one, 0, stands behind them.
///
/// ```
/// use brimline::number::plain;
/// assert_eq!(plain(557.418_24, 12, ','), "557,41824");
/// assert_eq!(plain(27_456.0, 12, '.'), "27456");
/// assert_eq!(plain(1.125, 12, '.'), "1.1250");
/// ```
pub fn plain(value: f64, significant: i32, decimal: char) -> String {
    let magnitude = if value == 0.0 { 0 } else { floor_log10(value.abs()) };
    let places = usize::try_from((significant - 1 - magnitude).clamp(0, 20)).unwrap_or(0);
    let mut out = format!("{value:.places$}");
    if out.contains('.') {
        out.truncate(out.trim_end_matches('0').trim_end_matches('.').len());
    }
    if matches!(self::decimal(&out, None), Err(NumberMistake::TwoReadings { .. })) {
        out.push('0');
    }
    out.replace('.', decimal.encode_utf8(&mut [0; 4]))
}

/// The place of the first digit of a number above 0: 0 for ones, 1 for tens, −1 for tenths.
#[allow(clippy::cast_possible_truncation, reason = "the logarithm of a finite f64 lies within ±324")]
pub(crate) fn floor_log10(value: f64) -> i32 {
    value.log10().floor() as i32
}
