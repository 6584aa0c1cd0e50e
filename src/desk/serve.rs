//! Serves the page on this machine.

mod site;

use super::build;
use super::fault::Fault;
use super::places::Places;
use axum::serve::ListenerExt;
use std::io::{self, ErrorKind};
use std::net::{Ipv4Addr, TcpListener};
use std::path::{Path, PathBuf};

/// The port if none is asked for.
const PORT: u16 = 8087;
/// How many ports after it are tried when it is taken.
const OTHERS: u16 = 50;

/// What the command line asks for.
#[derive(Debug, Default, PartialEq)]
struct Wish<'a> {
    port: Option<u16>,
    no_build: bool,
    page: Option<&'a Path>,
}

/// Builds the page if need be and serves it until the program is stopped.
///
/// # Errors
/// When the words are unknown, the build fails, or no port is free.
pub fn run(words: &[&str]) -> Result<(), Fault> {
    let wish = understand(words)?;
    let page = match wish.page {
        Some(folder) => folder.to_path_buf(),
        None => built(wish.no_build)?,
    };
    listen(&page, open(wish.port)?)
        .map_err(|error| Fault::new(format!("The page cannot be served: {error}.")))
}

fn understand<'a>(words: &[&'a str]) -> Result<Wish<'a>, Fault> {
    let mut wish = Wish::default();
    let mut words = words.iter();
    while let Some(word) = words.next() {
        match *word {
            "--no-build" => wish.no_build = true,
            "--page" => {
                let folder = words.next().ok_or_else(|| Fault::misuse("--page needs a folder."))?;
                wish.page = Some(Path::new(*folder));
            }
            port => {
                let port = port.parse().map_err(|_| Fault::misuse(format!("\"{port}\" is not a port.")))?;
                wish.port = Some(port);
            }
        }
    }
    Ok(wish)
}

fn built(as_it_is: bool) -> Result<PathBuf, Fault> {
    let places = Places::find()?;
    if !as_it_is {
        build::page(&places)?;
    }
    let page = places.page();
    if page.join("index.html").is_file() {
        return Ok(page);
    }
    Err(Fault::new(format!("There is no page in {}.", page.display())).by_hand("cargo run"))
}

/// Opens the port that is asked for, or the first free one from 8087 on.
fn open(asked: Option<u16>) -> Result<TcpListener, Fault> {
    let (first, last) = asked.map_or((PORT, PORT + OTHERS), |port| (port, port));
    for port in first..=last {
        match TcpListener::bind((Ipv4Addr::LOCALHOST, port)) {
            Ok(listener) => return Ok(listener),
            Err(error) if error.kind() == ErrorKind::AddrInUse => {}
            Err(error) => return Err(Fault::new(format!("Port {port} cannot be opened: {error}."))),
        }
    }
    let taken = if first == last {
        format!("Port {first} is taken.")
    } else {
        format!("All ports from {first} to {last} are taken.")
    };
    Err(Fault::new(taken).by_hand("cargo run -- serve 9000"))
}

fn listen(page: &Path, listener: TcpListener) -> io::Result<()> {
    let address = listener.local_addr()?;
    listener.set_nonblocking(true)?;
    tokio::runtime::Builder::new_current_thread().enable_all().build()?.block_on(async {
        let listener = tokio::net::TcpListener::from_std(listener)?.tap_io(|connection| {
            // Otherwise the end of each answer waits for the browser to confirm the rest.
            let _ = connection.set_nodelay(true);
        });
        println!("\nBrimline is at http://{address}/  (Ctrl+C stops it)");
        axum::serve(listener, site::of(page)).await
    })
}

#[cfg(test)]
mod tests {
    use super::{Wish, understand};
    use std::path::Path;

    #[test]
    fn the_command_line_may_name_a_port_and_a_folder() {
        assert_eq!(understand(&[]).expect("nothing to misread"), Wish::default());
        let wish = understand(&["9000", "--no-build", "--page", "x"]).expect("all words are known");
        assert_eq!(wish, Wish { port: Some(9000), no_build: true, page: Some(Path::new("x")) });
    }

    #[test]
    fn unknown_words_are_refused() {
        assert!(understand(&["--fast"]).is_err_and(|fault| fault.is_misuse()));
        assert!(understand(&["--page"]).is_err_and(|fault| fault.is_misuse()));
        assert!(understand(&["70000"]).is_err_and(|fault| fault.is_misuse()));
    }
}
