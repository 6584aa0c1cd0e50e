//! A label that says its dilution more than once, in brackets or after a comma: every statement is
//! read, they must agree, and one that is clear settles one that is not.

use super::grammar::statement;
use super::lexer::Token::{self, Number};
use super::lexer::tokens;
use super::vocabulary::{Word, word};
use super::{Label, LabelMistake, Rule, settled};
use crate::units::System;

/// One statement and whether it stands in brackets.
struct Statement {
    text: String,
    inside: bool,
}

impl Statement {
    fn add(&mut self, part: &str) {
        self.text.push(' ');
        self.text.push_str(part);
    }
}

/// Reads all that a label says.
pub(super) fn read(text: &str, site: System) -> Result<Label, LabelMistake> {
    let (mut statements, named) = statements(text, site)?;
    if let Some(system) = named {
        for one in &mut statements {
            name_system(&mut one.text, system)?;
        }
    }
    let [first, rest @ ..] = statements.as_slice() else {
        return Err(if named.is_some() { LabelMistake::Shape } else { LabelMistake::Empty });
    };
    if rest.is_empty() {
        return statement(&first.text, site);
    }
    // Of "2 oz, 5 gal" neither half may be offered as the whole.
    let listed = rest.iter().any(|other| !other.inside);
    let (mut ours, mut clear) =
        readings(&first.text, site).map_err(|mistake| if listed { whole(mistake) } else { mistake })?;
    for other in rest {
        let (theirs, sure) = readings(&other.text, site).map_err(whole)?;
        let agreeing =
            |one: &Reading, with: &[Reading]| with.iter().any(|other| agree(&one.1.rule, &other.1.rule));
        let kept: Vec<Reading> = ours.iter().filter(|one| agreeing(one, &theirs)).cloned().collect();
        if kept.is_empty() {
            let readings = statements.iter().map(|one| one.text.clone()).collect();
            return Err(LabelMistake::TwoRules { readings });
        }
        let same: Vec<Reading> = theirs.iter().filter(|other| agreeing(other, &kept)).cloned().collect();
        if clear && same.len() > 1 {
            return Err(unsettled(same));
        }
        clear = clear || sure && kept.len() == 1;
        ours = kept;
    }
    if clear { Ok(ours.swap_remove(0).1) } else { Err(unsettled(ours)) }
}

/// A text and what it means.
type Reading = (String, Label);

/// What a statement can mean, and whether it is clear by itself; nothing where it says "undiluted",
/// which agrees with no dilution.
fn readings(text: &str, site: System) -> Result<(Vec<Reading>, bool), LabelMistake> {
    match statement(text, site) {
        Ok(label) => Ok((vec![(text.to_owned(), label)], true)),
        Err(LabelMistake::Neat) => Ok((Vec::new(), false)),
        Err(mistake @ LabelMistake::Ambiguous { .. }) => match settled(mistake, site, 3) {
            LabelMistake::Ambiguous { readings } => {
                let read = |text: String| statement(&text, site).map(|label| (text, label));
                Ok((readings.into_iter().map(read).collect::<Result<_, _>>()?, false))
            }
            other => Err(other),
        },
        Err(mistake) => Err(mistake),
    }
}

fn unsettled(readings: Vec<Reading>) -> LabelMistake {
    LabelMistake::Ambiguous { readings: readings.into_iter().map(|(text, _)| text).collect() }
}

/// Half a rule beside another statement: what would complete it alone would leave the other out.
fn whole(mistake: LabelMistake) -> LabelMistake {
    match mistake {
        LabelMistake::NoUnit | LabelMistake::NoPer { .. } => LabelMistake::Shape,
        other => other,
    }
}

/// Labels often print one dilution twice, rounded: within two in a hundred they agree.
fn agree(a: &Rule, b: &Rule) -> bool {
    let close = |a: f64, b: f64| (a - b).abs() <= 0.02 * a.max(b);
    match (a, b) {
        (Rule::Strength(a), Rule::Strength(b)) => close(a.low / b.low, 1.0) && close(a.high / b.high, 1.0),
        (Rule::PerTank(a), Rule::PerTank(b)) | (Rule::Packets(a), Rule::Packets(b)) => {
            close(a.low / b.low, 1.0) && close(a.high / b.high, 1.0)
        }
        (Rule::Powder(a), Rule::Powder(b)) | (Rule::Active(a), Rule::Active(b)) => {
            close(a.low / b.low, 1.0) && close(a.high / b.high, 1.0)
        }
        _ => false,
    }
}

/// The statements, and the system that a part of its own names for all of them.
fn statements(text: &str, site: System) -> Result<(Vec<Statement>, Option<System>), LabelMistake> {
    let text = text.replace("(s)", "s").replace("(S)", "S");
    let mut out: Vec<Statement> = Vec::new();
    let mut named = None;
    let mut ahead = String::new();
    for Statement { text, inside } in parts(&text) {
        match kind(&text, site) {
            Kind::System(system) if named.is_none_or(|other| other == system) => named = Some(system),
            Kind::System(_) => return Err(LabelMistake::Shape),
            Kind::Statement => {
                out.push(Statement { text: std::mem::take(&mut ahead) + &text, inside });
            }
            Kind::Rest if out.is_empty() => ahead += &(text + " "),
            Kind::Rest => {
                let last = out.len() - 1;
                let own = out.iter().rposition(|one| !one.inside).unwrap_or(last);
                out[own].add(&text);
                // "2 oz (60 mL) per gal": what follows the bracket completes both.
                if own != last && !inside && statement(&out[last].text, site).is_err() {
                    out[last].add(&text);
                }
            }
        }
    }
    if out.is_empty() && !ahead.is_empty() {
        out.push(Statement { text: ahead, inside: false });
    }
    Ok((out, named))
}

/// What a part of a label is.
enum Kind {
    System(System),
    /// It begins with a number, or says "undiluted", or cannot be read.
    Statement,
    /// It belongs to the statement beside it: "per gal", "with cold water".
    Rest,
}

fn kind(text: &str, site: System) -> Kind {
    let Ok(pieces) = tokens(text, site) else { return Kind::Statement };
    let mut after = pieces.iter().skip_while(|piece| matches!(piece, Token::Word(Word::System(_))));
    match (after.next(), pieces.as_slice()) {
        (None, [Token::Word(Word::System(system))]) => Kind::System(*system),
        (Some(Number(_)), _) => Kind::Statement,
        _ if pieces.contains(&Token::Word(Word::Neat)) => Kind::Statement,
        _ => Kind::Rest,
    }
}

/// Cuts at brackets, semicolons, and commas that no digit follows: one before a digit is a decimal
/// comma, or a mistyped one.
fn parts(text: &str) -> Vec<Statement> {
    let mut out = vec![Statement { text: String::new(), inside: false }];
    let mut depth = 0_usize;
    let mut characters = text.chars().peekable();
    while let Some(character) = characters.next() {
        let digit_next = characters.peek().is_some_and(char::is_ascii_digit);
        match character {
            '(' | '[' => depth += 1,
            ')' | ']' => depth = depth.saturating_sub(1),
            ';' => {}
            ',' if !digit_next => {}
            other => {
                if let Some(last) = out.last_mut() {
                    last.text.push(other);
                }
                continue;
            }
        }
        out.push(Statement { text: String::new(), inside: depth > 0 });
    }
    for part in &mut out {
        part.text = part.text.trim_end_matches(['.', ',', ' ']).trim().to_owned();
    }
    out.retain(|part| !part.text.is_empty());
    out
}

/// Writes the system into a statement that names none, so that what is offered for it keeps it.
fn name_system(text: &mut String, system: System) -> Result<(), LabelMistake> {
    let own: Vec<System> = text
        .split(|c: char| !(c.is_ascii_alphabetic() || c == '.'))
        .filter_map(|run| match word(&run.trim_matches('.').to_ascii_lowercase()) {
            Some(Word::System(system)) => Some(system),
            _ => None,
        })
        .collect();
    if own.iter().any(|own| *own != system) {
        return Err(LabelMistake::Shape);
    }
    if own.is_empty() {
        *text += if system == System::Us { " US" } else { " imp" };
    }
    Ok(())
}
