//! Writes records, one after the other, each in a transaction of its own, and confirms each when it is on the disk.

use super::clock::{lapsed, now};
use super::database::{ABOUT, META, Mode, PACKED, RECORDS, Transaction, key};
use super::held::{Saved, Stage, Waiting, held};
use super::meta::{self, End, MARK};
use super::{Trouble, copy, fold, open, packing, tab, tabs};
use crate::page::keep::log_draft;
use crate::site::log::{
    Current, Draft, Fill, Flaw, Head, Id, Kind, Lesson, Log, Part, Record, Stamp, Task, When, Words, changed,
    line,
};
use serde_json::{Map, Value};
use std::cell::RefCell;
use std::collections::{BTreeMap, VecDeque};

/// What is to be written.
pub enum What {
    /// A fill.
    Fill(Box<Fill>),
    /// New values for one.
    Correct(Id, Map<String, Value>),
    /// One task at the end of a shift, by its code, and how it is now.
    Tick(Id, &'static str, Task),
    /// Texts to blank.
    Erase(Id, Vec<Part>),
    /// What somebody showed in practice.
    Lesson(Lesson),
}

/// A record on its way.
struct Act {
    key: u32,
    what: What,
    words: Words,
    station: String,
    when: String,
    random: Option<[u8; 32]>,
    began: f64,
}

/// Acts in the order of the taps, and those that the browser refused.
#[derive(Default)]
struct Acts {
    queue: VecDeque<Act>,
    refused: BTreeMap<u32, Act>,
    next: u32,
    running: bool,
}

thread_local! {
    static ACTS: RefCell<Acts> = RefCell::default();
}

/// Writes one; what comes of it lands in what the page holds.
pub fn write(what: What, words: Words) {
    let key = ACTS.with_borrow_mut(|acts| {
        acts.next += 1;
        // Made once: whoever tries again writes the same record.
        let (when, random, began) = (now(), open::random().ok(), lapsed());
        let station = log_draft::now().station.clone();
        acts.queue.push_back(Act { key: acts.next, what, words, station, when, random, began });
        acts.next
    });
    tab::tell(|held| held.waiting.push(Waiting { key, line: String::new(), trouble: None }));
    run();
}

/// Tries one again that was refused.
pub fn again(key: u32) {
    let found = ACTS.with_borrow_mut(|acts| {
        acts.refused.remove(&key).map(|act| acts.queue.push_back(Act { began: lapsed(), ..act }))
    });
    if found.is_some() {
        tab::tell(|held| {
            for one in held.waiting.iter_mut().filter(|one| one.key == key) {
                one.trouble = None;
            }
        });
        run();
    }
}

/// Lets go of one that was refused.
pub fn let_go(key: u32) {
    if ACTS.with_borrow_mut(|acts| acts.refused.remove(&key)).is_some() {
        tab::tell(|held| held.waiting.retain(|one| one.key != key));
    }
}

/// Goes through the acts that wait, once the log is open.
pub fn run() {
    if is_opening() || ACTS.with_borrow_mut(|acts| std::mem::replace(&mut acts.running, true)) {
        return;
    }
    yew::platform::spawn_local(async {
        // Whoever opens it calls this again.
        while let Some(act) =
            ACTS.with_borrow_mut(|acts| if is_opening() { None } else { acts.queue.pop_front() })
        {
            if held().stage != Stage::Open {
                open::open().await;
            }
            match put(&act).await {
                Ok(written) => confirm(&act, written).await,
                // A tick that is there already: a second tap came before the page had drawn the first.
                Err(Trouble::Refused(Flaw::NothingChanged)) if matches!(act.what, What::Tick(..)) => {
                    tab::tell(|held| held.waiting.retain(|one| one.key != act.key));
                }
                Err(trouble) => refuse(act, trouble).await,
            }
        }
        ACTS.with_borrow_mut(|acts| acts.running = false);
    });
}

fn is_opening() -> bool {
    matches!(held().stage, Stage::Opening { .. })
}

/// A record that is on the disk.
struct Written {
    record: Record,
    line: String,
    end: End,
    took: f64,
}

async fn put(act: &Act) -> Result<Written, Trouble> {
    if let Stage::Shut(trouble) = &held().stage {
        return Err(trouble.clone());
    }
    let random = act.random.ok_or(Trouble::NoRandom)?;
    let device = tab::device();
    let whole = tab::database().await?.begin(&[RECORDS, META, ABOUT, PACKED], Mode::Keep)?;
    let (records, meta) = (whole.store(RECORDS)?, whole.store(META)?);
    // What this tab saw on the disk counts where the browser lost it meanwhile.
    let known = tab::ends().get(&device).cloned().unwrap_or_default();
    let last = meta::end(&meta, &device).await?.filter(|end| end.number >= known.number).unwrap_or(known);
    let named = match act.what.of() {
        Some(of) => Log::of(whole.records(of).await?).records().to_vec(),
        None => Vec::new(),
    };
    let stamp = Stamp { device: &device, when: &act.when, random };
    let head = (last.number > 0).then(|| last.head(&device));
    let standing = act.what.standing(&whole).await?;
    let draft = act.what.draft(named.first(), standing.as_ref())?.at_station(&act.station);
    let record = draft.after(head.as_ref(), &stamp, act.words.clone())?;
    let line = line(&record);
    records.put(&key(&device, record.number, Some(&record.own)), &line.as_str().into())?;
    let end = end(&record, last);
    if let Some(of) = act.what.of() {
        whole.store(ABOUT)?.put_document(&fold::about_key(of, &record), &fold::about(&record, end.latest))?;
    }
    if !record.erased.is_empty() {
        for mut one in named {
            one.blank(&record.erased);
            let here = key(&one.device, one.number, Some(&one.own));
            records.put(&here, &crate::site::log::line(&one).as_str().into())?;
        }
        // The blocks have the texts, too.
        whole.store(PACKED)?.clear()?;
        meta.remove(&MARK.into())?;
    }
    meta::put_end(&meta, &device, &end)?;
    whole.done().await?;
    Ok(Written { record, line, end, took: lapsed() - act.began })
}

/// The end of a chain after a record.
fn end(record: &Record, last: End) -> End {
    let instant = When::read(&record.when).map_or(last.latest, When::instant);
    let is_back = fold::is_back(&record.when, &last);
    let latest = if last.number > 0 { instant.max(last.latest) } else { instant };
    let mut back = last.back;
    if is_back {
        back.push(record.number);
    }
    End { number: record.number, own: record.own.clone(), latest, back }
}

async fn confirm(act: &Act, written: Written) {
    let Written { record, line, end, took } = written;
    let (id, device) = (record.id(), record.device.clone());
    copy::keep(&record, &line);
    if !record.erased.is_empty() {
        copy::drop_lines(|name| name == record.of);
        packing::soon();
    }
    let unsettled = tab::Unsettled::begin();
    let known = tab::ends().get(&device).map_or(0, |end| end.number);
    // What cannot be folded in now is when the log is opened again: the record is on the disk.
    let folded = if end.number == known + 1 {
        let folded = fold::absorb(std::slice::from_ref(&record)).await;
        tab::know_end(&device, end);
        folded
    } else {
        // Other tabs write to the same chain, and what they wrote comes first.
        open::catch_up().await
    };
    drop(unsettled);
    copy::keep_ends(&device, &tab::ends());
    tabs::tell(false);
    packing::after(1);
    let first = held().last.is_none();
    tab::tell(|held| {
        held.waiting.retain(|one| one.key != act.key);
        held.last = Some(Saved { id, when: act.when.clone(), took });
    });
    if folded.is_err() {
        let _ = open::load().await;
    }
    if first {
        // Now there is something to keep. An answer may take a person's time, and nothing waits for it.
        yew::platform::spawn_local(open::usage(true));
    }
}

/// The record stays, as it would have been written: on screen, to save as a file, to try again.
async fn refuse(act: Act, trouble: Trouble) {
    let line = as_it_would_be(&act).await.unwrap_or_default();
    let key = act.key;
    ACTS.with_borrow_mut(|acts| acts.refused.insert(key, act));
    tab::tell(|held| {
        for one in held.waiting.iter_mut().filter(|one| one.key == key) {
            one.line.clone_from(&line);
            one.trouble = Some(trouble.clone());
        }
    });
    open::usage(false).await;
}

/// After the last record that is on the disk and those that wait before it.
async fn as_it_would_be(act: &Act) -> Option<String> {
    let held = held();
    let waiting = held.waiting.iter().take_while(|one| one.key != act.key);
    let waiting: Vec<Record> = waiting.filter_map(|one| serde_json::from_str(&one.line).ok()).collect();
    let before = waiting.last();
    let device = match (before, tab::device()) {
        (Some(before), _) => before.device.clone(),
        (None, device) if device.is_empty() => open::random_name().ok()?,
        (None, device) => device,
    };
    let last: Option<Head> =
        before.map(Record::head).or_else(|| tab::ends().get(&device).map(|end| end.head(&device)));
    let (named, mut standing) = match act.what.of() {
        Some(of) => {
            let whole = tab::database().await.ok()?.begin(&[RECORDS, ABOUT], Mode::Read).ok()?;
            let standing = act.what.standing(&whole).await.ok()?;
            (Log::of(whole.records(of).await.ok()?).records().first().cloned(), standing)
        }
        None => (None, None),
    };
    // Those that wait before it are saved before it, too.
    if let Some(fill) = &mut standing {
        let of = fill.id.to_string();
        for one in waiting.iter().filter(|one| one.kind == Kind::Correction && one.of == of) {
            fill.correct(one);
        }
    }
    let stamp = Stamp { device: &device, when: &act.when, random: act.random? };
    let draft = act.what.draft(named.as_ref(), standing.as_ref()).ok()?.at_station(&act.station);
    Some(line(&draft.after(last.as_ref(), &stamp, act.words.clone()).ok()?))
}

impl What {
    /// The record that it is about.
    fn of(&self) -> Option<&Id> {
        match self {
            Self::Fill(_) | Self::Lesson(_) => None,
            Self::Correct(of, _) | Self::Tick(of, ..) | Self::Erase(of, _) => Some(of),
        }
    }

    /// Of a tick the fill as the database has it now. A correction carries all tasks: worked out from what the page
    /// has drawn, one would take back another that was tapped a moment before.
    async fn standing(&self, whole: &Transaction) -> Result<Option<Current>, Trouble> {
        match self {
            Self::Tick(of, ..) => fold::standing(whole, of).await,
            _ => Ok(None),
        }
    }

    /// * `of`: the record that it is about.
    /// * `standing`: of a tick the fill as it stands.
    fn draft(&self, of: Option<&Record>, standing: Option<&Current>) -> Result<Draft, Flaw> {
        let named = |id: &Id| of.ok_or_else(|| Flaw::Unknown(id.clone()));
        match self {
            Self::Fill(fill) => Ok(Draft::fill((**fill).clone())),
            Self::Correct(id, changes) => Draft::correction(named(id)?, changes),
            Self::Tick(id, task, state) => {
                let was = &standing.ok_or_else(|| Flaw::Unknown(id.clone()))?.fill;
                let is = Fill { checklist: was.checklist.clone().with(task, *state), ..was.clone() };
                Draft::correction(named(id)?, &changed(was, &is))
            }
            Self::Lesson(lesson) => Ok(Draft::lesson(lesson.clone())),
            Self::Erase(id, parts) => Draft::erasure(named(id)?, parts),
        }
    }
}
