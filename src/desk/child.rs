//! Running other programs: quietly with a sign of life, or with all they say.

use super::fault::Fault;
use std::collections::VecDeque;
use std::ffi::OsStr;
use std::io::{self, BufRead, BufReader, Read};
use std::process::{Child, Command, Stdio};
use std::sync::mpsc::{self, RecvTimeoutError, Sender};
use std::time::{Duration, Instant};
use std::{env, iter, thread};

/// A long silence looks like a hang: this often a line says what goes on.
const BEAT: Duration = Duration::from_secs(10);
/// How many of a failed program's last lines are shown.
const SHOWN: usize = 80;
/// How much of a program's latest line fits behind the elapsed time.
const WIDTH: usize = 80;

/// Runs `command` as one step called `title`: a line when it starts, a sign of life while it runs,
/// the time it took, and its last lines only if it fails.
///
/// # Errors
/// When the program cannot be started or fails; the fault carries the command.
pub fn step(title: &str, command: &mut Command) -> Result<(), Fault> {
    println!("{title} ...");
    let began = Instant::now();
    let mut last = VecDeque::new();
    let well = watch(command, |event| match event {
        Event::Line(line) => {
            if last.len() == SHOWN {
                last.pop_front();
            }
            last.push_back(line);
            Seen::Nothing
        }
        Event::Silence => {
            let latest = last.iter().rev().find(|line| !line.trim().is_empty());
            let latest: String = latest.map_or("", |line| line.trim()).chars().take(WIDTH).collect();
            println!("    {} s  {latest}", began.elapsed().as_secs());
            Seen::Something
        }
    })?;
    if well {
        println!("    done in {:.1} s", began.elapsed().as_secs_f64());
        return Ok(());
    }
    for line in last {
        eprintln!("    {line}");
    }
    Err(Fault::new(format!("{title}: this failed.")).by_hand(by_hand(command)))
}

/// Runs `command`, passes on all it says, shows each line to `each`, and gives whether it went well.
///
/// # Errors
/// When the program cannot be started.
pub fn stream(command: &mut Command, mut each: impl FnMut(&str)) -> Result<bool, Fault> {
    println!("> {}", by_hand(command));
    let began = Instant::now();
    watch(command, |event| match event {
        Event::Line(line) => {
            println!("{line}");
            each(&line);
            Seen::Something
        }
        Event::Silence => {
            println!("    {} s", began.elapsed().as_secs());
            Seen::Something
        }
    })
}

/// What `command` prints, if it can be started and goes well.
pub fn answer(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).output().ok().filter(|output| output.status.success())?;
    Some(String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// A program that runs unheard beside others, and is ended when this is dropped.
pub struct Background(Child);

impl Background {
    /// Starts `command`.
    ///
    /// # Errors
    /// When the program cannot be started.
    pub fn start(command: &mut Command) -> Result<Self, Fault> {
        let started = command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null()).spawn();
        started.map(Self).map_err(|error| cannot(command, &error))
    }
}

impl Drop for Background {
    fn drop(&mut self) {
        // Either fails only if it has ended already.
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

/// What a watched program does.
enum Event {
    Line(String),
    /// The person at the terminal has seen nothing for a while.
    Silence,
}

/// What the person saw of an event.
#[derive(PartialEq)]
enum Seen {
    Something,
    Nothing,
}

/// Runs `command`, tells of each line and each long silence, and gives whether it went well.
fn watch(command: &mut Command, mut tell: impl FnMut(Event) -> Seen) -> Result<bool, Fault> {
    let started = command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn();
    let mut child = started.map_err(|error| cannot(command, &error))?;
    let (sender, lines) = mpsc::channel();
    if let Some(out) = child.stdout.take() {
        read_lines(out, sender.clone());
    }
    if let Some(err) = child.stderr.take() {
        read_lines(err, sender);
    }
    let mut beat = Instant::now() + BEAT;
    loop {
        let event = match lines.recv_timeout(beat.saturating_duration_since(Instant::now())) {
            Ok(line) => Event::Line(line),
            Err(RecvTimeoutError::Timeout) => Event::Silence,
            Err(RecvTimeoutError::Disconnected) => break,
        };
        if tell(event) == Seen::Something {
            beat = Instant::now() + BEAT;
        }
    }
    let status = child.wait().map_err(|error| cannot(command, &error))?;
    Ok(status.success())
}

fn cannot(command: &Command, error: &io::Error) -> Fault {
    let program = command.get_program().display();
    Fault::new(format!("{program} could not be run: {error}.")).by_hand(by_hand(command))
}

/// Sends each line as it comes; bytes that are no text are shown as such, never an error.
fn read_lines(from: impl Read + Send + 'static, to: Sender<String>) {
    thread::spawn(move || {
        let mut from = BufReader::new(from);
        let mut line = Vec::new();
        while matches!(from.read_until(b'\n', &mut line), Ok(read) if read > 0) {
            let text = String::from_utf8_lossy(&line);
            if to.send(text.trim_end_matches(['\n', '\r']).to_owned()).is_err() {
                return;
            }
            line.clear();
        }
    });
}

/// The command as a person would type it, with the variables it needs.
pub fn by_hand(command: &Command) -> String {
    let elsewhere =
        command.get_current_dir().filter(|folder| env::current_dir().is_ok_and(|here| here != *folder));
    let folder = elsewhere.map(|folder| format!("cd {} &&", quoted(&folder.to_string_lossy())));
    let variables = command.get_envs().filter_map(|(name, value)| Some(assignment(name, value?)));
    let words = iter::once(command.get_program()).chain(command.get_args());
    let words = words.map(|word| quoted(&word.to_string_lossy()));
    folder.into_iter().chain(variables).chain(words).collect::<Vec<_>>().join(" ")
}

fn assignment(name: &OsStr, value: &OsStr) -> String {
    let (name, value) = (name.to_string_lossy(), value.to_string_lossy());
    // The whole of a PATH hides what matters: the folders put in front of the usual ones.
    let usual = env::var(&*name).unwrap_or_default();
    match value.strip_suffix(&usual) {
        Some(added) if name == "PATH" => format!("{name}={}\"$PATH\"", quoted(added)),
        _ => format!("{name}={}", quoted(&value)),
    }
}

fn quoted(word: &str) -> String {
    let plain = |c: char| c.is_ascii_alphanumeric() || "-_./:=,@+%".contains(c);
    if !word.is_empty() && word.chars().all(plain) {
        return word.to_owned();
    }
    format!("'{}'", word.replace('\'', r"'\''"))
}

#[cfg(test)]
mod tests {
    use super::{by_hand, stream};
    use std::process::Command;

    #[test]
    fn the_command_to_run_by_hand_can_be_pasted() {
        let mut command = Command::new("cargo");
        command.args(["doc", "it's"]).env("RUSTDOCFLAGS", "-D warnings");
        assert_eq!(by_hand(&command), r"RUSTDOCFLAGS='-D warnings' cargo doc 'it'\''s'");
    }

    #[test]
    fn a_stream_shows_both_outputs_and_how_it_ended() {
        let mut seen = Vec::new();
        let well =
            stream(Command::new("cargo").arg("no-such-command-at-all"), |line| seen.push(line.to_owned()));
        assert!(!well.expect("cargo can be started"));
        assert!(seen.iter().any(|line| line.contains("no-such-command-at-all")), "{seen:?}");
    }
}
