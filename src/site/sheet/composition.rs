//! The ingredients of section 3, from a table whose cells may stand in one line, in lines of their own, or
//! in columns of their own.

use super::MOST_EACH;
use super::doubt::Doubt;
use super::found::{Finding, Part, What};
use super::lines::Line;
use super::rows::{Number, Row, Share, row};
use crate::chemistry::ghs::Hazard;

/// How many lines may stand between the cells of one row.
const APART: usize = 4;

/// A line and what stands in it.
struct Read<'a> {
    line: &'a Line,
    row: Row,
}

/// What a line has to give.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    Nothing,
    Head,
    Name,
    Number,
    Share,
    NameShare,
    Row,
}

impl Read<'_> {
    fn kind(&self) -> Kind {
        let row = &self.row;
        match (row.head, row.numbers.is_empty(), row.share.is_some(), row.name.is_empty()) {
            (true, ..) => Kind::Head,
            (_, false, false, true) => Kind::Number,
            (_, false, ..) => Kind::Row,
            (_, true, true, true) => Kind::Share,
            (_, true, true, false) => Kind::NameShare,
            (_, true, false, false) => Kind::Name,
            (_, true, false, true) => Kind::Nothing,
        }
    }
}

/// Whether a line is about the pH: that is no part.
fn names_ph(text: &str) -> bool {
    let text = text.trim_start();
    let opens = text.get(..2).is_some_and(|head| head.eq_ignore_ascii_case("ph"));
    opens && !text[2..].starts_with(char::is_alphabetic)
}

/// Every row that could be put together.
pub(super) fn find(lines: &[Line]) -> Vec<Finding> {
    let own: Vec<Read> = lines
        .iter()
        .filter(|line| line.belongs_to(3) && !line.heading && !names_ph(&line.text))
        .map(|line| Read { line, row: row(&line.text) })
        // Under no heading only a CAS number tells an ingredient.
        .filter(|read| read.line.section.is_some() || read.row.numbers.iter().any(|number| number.right))
        .collect();
    let mut table = Table::default();
    let mut at = 0;
    while at < own.len() && table.out.len() < MOST_EACH {
        if let Some(end) = table.columns(&own, at) {
            at = end;
            continue;
        }
        table.line(&own, at);
        at += 1;
    }
    table.close();
    table.out
}

/// A row that is being put together.
#[derive(Clone, Default)]
struct Open<'a> {
    lines: Vec<&'a Line>,
    name: String,
    number: Option<Number>,
    share: Option<Share>,
    hazards: Vec<&'static Hazard>,
}

#[derive(Default)]
struct Table<'a> {
    out: Vec<Finding>,
    open: Option<Open<'a>>,
    /// A name whose row has not come yet.
    name: Option<(&'a Line, String)>,
    /// Whether the head of the table says percent.
    percent: bool,
}

impl<'a> Table<'a> {
    /// Columns that were pasted one after the other: as many CAS numbers in a row as there are names before
    /// them and shares behind them. Returns the line behind them.
    fn columns(&mut self, own: &[Read<'a>], at: usize) -> Option<usize> {
        let run = |from: usize, kind: Kind| own[from..].iter().take_while(|read| read.kind() == kind).count();
        let names = run(at, Kind::Name);
        let first = at + names + run(at + names, Kind::Head);
        let numbers = run(first, Kind::Number);
        if numbers < 2 || (names != numbers && names != 0) {
            return None;
        }
        let behind = first + numbers;
        let head = run(behind, Kind::Head);
        let shares = run(behind + head, Kind::Share);
        if shares != numbers {
            return None;
        }
        self.close();
        self.percent |= own[behind..behind + head].iter().any(|read| read.row.head_percent);
        for place in 0..numbers {
            let mut open = Open::default();
            if names > 0 {
                open.lines.push(own[at + place].line);
                open.name.clone_from(&own[at + place].row.name);
            }
            let (number, share) = (&own[first + place], &own[behind + head + place]);
            open.lines.extend([number.line, share.line]);
            open.number = number.row.numbers.first().cloned();
            open.share = share.row.share;
            self.emit(open, &[Doubt::Columns]);
        }
        Some(behind + head + shares)
    }

    fn line(&mut self, own: &[Read<'a>], at: usize) {
        let read = &own[at];
        if self.open.as_ref().is_some_and(|open| is_far(open.lines.last().copied(), read.line)) {
            self.close();
        }
        if self.name.as_ref().is_some_and(|(line, _)| is_far(Some(line), read.line)) {
            self.name = None;
        }
        let next = own.get(at + 1).map_or(Kind::Nothing, Read::kind);
        match read.kind() {
            Kind::Head => {
                self.close();
                self.name = None;
                self.percent |= read.row.head_percent;
            }
            Kind::Nothing => self.add_hazards(read),
            Kind::Name => self.name_line(read, next),
            Kind::Number | Kind::Row => self.number_line(read),
            Kind::Share => self.share_line(read),
            Kind::NameShare => self.name_and_share(read),
        }
    }

    fn add_hazards(&mut self, read: &Read<'a>) {
        if let Some(open) = self.open.as_mut().filter(|_| !read.row.hazards.is_empty()) {
            open.take(read);
        }
    }

    /// A name belongs to the row above if that has none, or lacks its share and a share follows; otherwise to
    /// the row below.
    fn name_line(&mut self, read: &Read<'a>, next: Kind) {
        if let Some(open) = &mut self.open {
            let wants = open.name.is_empty() && next != Kind::Number;
            let goes_on = open.share.is_none() && next == Kind::Share;
            if wants || goes_on {
                if wants {
                    open.name.clone_from(&read.row.name);
                }
                open.take(read);
                return;
            }
        }
        self.name = match self.name.take() {
            Some((line, before)) if goes_on(&before, &read.row.name) => {
                Some((line, format!("{before} {}", read.row.name)))
            }
            _ => Some((read.line, read.row.name.clone())),
        };
    }

    fn number_line(&mut self, read: &Read<'a>) {
        let fits = |open: &Open| {
            open.number.is_none()
                && (open.name.is_empty() || read.row.name.is_empty())
                && (open.share.is_none() || read.row.share.is_none())
        };
        if !self.open.as_ref().is_some_and(fits) {
            self.close();
        }
        let mut open = self.open.take().unwrap_or_default();
        if let Some((line, name)) =
            self.name.take().filter(|_| open.name.is_empty() && read.row.name.is_empty())
        {
            open.lines.insert(0, line);
            open.name = name;
        }
        open.take(read);
        if open.name.is_empty() {
            open.name.clone_from(&read.row.name);
        }
        open.number = read.row.numbers.first().cloned();
        open.share = open.share.or(read.row.share);
        self.open = Some(open);
        // Another number in the same line is a row of its own, of which the line says nothing more.
        for number in read.row.numbers.iter().skip(1) {
            let other = Open { lines: vec![read.line], number: Some(number.clone()), ..Open::default() };
            self.emit(other, &[Doubt::SeveralNumbers]);
        }
    }

    fn share_line(&mut self, read: &Read<'a>) {
        if self.open.as_ref().is_some_and(|open| open.share.is_some()) {
            self.close();
        }
        let mut open = self.open.take().unwrap_or_default();
        if open.lines.is_empty() {
            // A share of nothing says nothing.
            let Some((line, name)) = self.name.take() else { return };
            open.lines.push(line);
            open.name = name;
        }
        open.take(read);
        open.share = read.row.share;
        self.open = Some(open);
    }

    fn name_and_share(&mut self, read: &Read<'a>) {
        let wants = |open: &Open| open.name.is_empty() && open.share.is_none();
        if !self.open.as_ref().is_some_and(wants) {
            self.close();
        }
        let mut open = self.open.take().unwrap_or_default();
        let before = self.name.take().filter(|(_, before)| goes_on(before, &read.row.name));
        open.name = match before {
            Some((line, before)) => {
                open.lines.insert(0, line);
                format!("{before} {}", read.row.name)
            }
            None => read.row.name.clone(),
        };
        open.take(read);
        open.share = read.row.share;
        self.open = Some(open);
    }

    fn close(&mut self) {
        if let Some(open) = self.open.take() {
            self.emit(open, &[]);
        }
    }

    fn emit(&mut self, open: Open<'a>, doubts: &[Doubt]) {
        let Some((first, rest)) = open.lines.split_first() else { return };
        let share = open.share;
        let part = Part {
            cas: open.number.as_ref().map_or(String::new(), |number| number.text.clone()),
            share: share.map(|share| share.span),
            hazards: open.hazards,
            name: open.name.trim_end_matches([' ', ',', '-']).to_owned(),
        };
        let mut finding =
            rest.iter().fold(Finding::new(first, What::Part(part)), |finding, line| finding.and(line));
        for doubt in doubts {
            finding = finding.doubt(*doubt);
        }
        let percent = self.percent || share.is_none_or(|share| share.percent);
        self.out.push(checked(finding, share, open.number.map(|number| number.right), percent));
    }
}

/// With whatever is doubtful about the values of a row: the share, whether the check digit of its number is
/// right, whether its share is one of percent.
pub(super) fn checked(finding: Finding, share: Option<Share>, right: Option<bool>, percent: bool) -> Finding {
    let nameless = matches!(&finding.what, What::Part(part) if part.name.is_empty());
    let end = |share: Share| if share.span.high.is_finite() { share.span.high } else { share.span.low };
    finding
        .doubt_if(right.is_none(), Doubt::NoCas)
        .doubt_if(right == Some(false), Doubt::CheckDigit)
        .doubt_if(nameless, Doubt::NoName)
        .doubt_if(share.is_none(), Doubt::NoShare)
        .doubt_if(!percent, Doubt::NoPercent)
        .doubt_if(share.is_some_and(|share| share.several), Doubt::SeveralNumbers)
        .doubt_if(share.is_some_and(|share| share.backwards), Doubt::Backwards)
        .doubt_if(share.map_or(0.0, end) > 100.0, Doubt::MoreThanWhole)
}

impl<'a> Open<'a> {
    fn take(&mut self, read: &Read<'a>) {
        self.lines.push(read.line);
        for hazard in &read.row.hazards {
            if !self.hazards.contains(hazard) {
                self.hazards.push(hazard);
            }
        }
    }
}

fn is_far(last: Option<&Line>, next: &Line) -> bool {
    last.is_some_and(|last| next.number > last.number + APART)
}

/// Whether a name goes on in the next line: it breaks off, or what follows does not begin like a name.
fn goes_on(before: &str, after: &str) -> bool {
    before.ends_with([',', '-', '(']) || after.starts_with(|one: char| one.is_lowercase() || one == '(')
}
