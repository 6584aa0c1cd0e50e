//! What went wrong at the desk, in plain words, with the command to run by hand.

use std::{fmt, io, path::Path};

/// Something failed, and the person at the terminal has to know.
#[derive(Debug)]
pub struct Fault {
    what: String,
    by_hand: Option<String>,
    misuse: bool,
}

impl Fault {
    /// A fault described by a full sentence.
    pub fn new(what: impl Into<String>) -> Self {
        Self { what: what.into(), by_hand: None, misuse: false }
    }

    /// A command line that this tool does not understand.
    pub fn misuse(what: impl Into<String>) -> Self {
        Self { misuse: true, ..Self::new(what) }
    }

    /// A file or folder that could not be read or written.
    pub fn file(path: &Path, error: &io::Error) -> Self {
        Self::new(format!("{} could not be used: {error}.", path.display()))
    }

    /// Adds the command with which the person can do by hand what failed here.
    #[must_use]
    pub fn by_hand(mut self, command: impl Into<String>) -> Self {
        self.by_hand = Some(command.into());
        self
    }

    /// Whether the command line itself was at fault.
    pub fn is_misuse(&self) -> bool {
        self.misuse
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.what)?;
        match &self.by_hand {
            Some(command) => write!(f, "\nTo do it by hand:\n    {command}"),
            None => Ok(()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Fault;

    #[test]
    fn names_the_command_to_run_by_hand() {
        let fault = Fault::new("Building the page failed.").by_hand("trunk build --release");
        assert_eq!(
            fault.to_string(),
            "Building the page failed.\nTo do it by hand:\n    trunk build --release"
        );
    }
}
