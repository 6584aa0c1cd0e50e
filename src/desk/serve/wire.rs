//! Just enough HTTP/1.1 (RFC 9112) to give files to a browser on the same machine: one request a
//! connection, no request bodies.

use super::reply::{Reply, takes_gzip};
use std::io::{self, BufRead, BufReader, Read, Write};

/// The longest request head that is read; browsers send about 1 kB.
const LONGEST: u64 = 16 * 1024;

/// What a request asks for.
#[derive(Debug, PartialEq, Eq)]
pub struct Request {
    /// `GET` or another method.
    pub method: String,
    /// The path and the query, as sent.
    pub url: String,
    /// Whether the answer may be compressed.
    pub gzip: bool,
}

impl Request {
    /// Reads a request's head.
    ///
    /// # Errors
    /// When the connection ends or falls silent before the head is whole, or what comes is not
    /// HTTP or is too long: there is nobody to answer then.
    pub fn read(from: impl Read) -> io::Result<Self> {
        let mut lines = BufReader::new(from.take(LONGEST)).lines();
        let mut next = || lines.next().unwrap_or_else(|| Err(io::ErrorKind::UnexpectedEof.into()));
        let first = next()?;
        let mut words = first.split(' ');
        let (Some(method), Some(url), Some("HTTP/1.1" | "HTTP/1.0"), None) =
            (words.next(), words.next(), words.next(), words.next())
        else {
            return Err(io::ErrorKind::InvalidData.into());
        };
        let mut gzip = false;
        loop {
            let line = next()?;
            if line.is_empty() {
                return Ok(Self { method: method.to_owned(), url: url.to_owned(), gzip });
            }
            if let Some((name, value)) = line.split_once(':')
                && name.eq_ignore_ascii_case("Accept-Encoding")
            {
                gzip = takes_gzip(value);
            }
        }
    }
}

/// Sends `reply`; to a `HEAD` request without its body.
///
/// # Errors
/// When the browser is gone.
pub fn write(mut to: impl Write, reply: &Reply, method: &str) -> io::Result<()> {
    let reason = match reply.status {
        200 => "OK",
        404 => "Not Found",
        405 => "Method Not Allowed",
        _ => "",
    };
    let mut head = format!("HTTP/1.1 {} {reason}\r\n", reply.status);
    for (name, value) in &reply.headers {
        head += name;
        head += ": ";
        head += value;
        head += "\r\n";
    }
    let length = reply.body.len();
    write!(to, "{head}Content-Length: {length}\r\nConnection: close\r\n\r\n")?;
    if method != "HEAD" {
        to.write_all(&reply.body)?;
    }
    to.flush()
}

#[cfg(test)]
mod tests {
    use super::{LONGEST, Request, write};
    use crate::desk::serve::reply::Reply;

    #[test]
    fn reads_what_a_browser_sends() {
        let sent = "GET /a.js?b HTTP/1.1\r\nHost: x\r\naccept-encoding: gzip, br\r\n\r\n";
        let request = Request::read(sent.as_bytes()).expect("this is a whole request");
        let wanted = Request { method: "GET".to_owned(), url: "/a.js?b".to_owned(), gzip: true };
        assert_eq!(request, wanted);
    }

    #[test]
    fn half_a_request_and_noise_are_not_answered() {
        let endless =
            format!("GET / HTTP/1.1\r\nX: {}\r\n\r\n", "x".repeat(usize::try_from(LONGEST).expect("small")));
        for sent in
            ["", "GET / HTTP/1.1\r\nHost: x\r\n", "GET /\r\n\r\n", "GET / a HTTP/1.1\r\n\r\n", &endless]
        {
            assert!(Request::read(sent.as_bytes()).is_err(), "{sent}");
        }
    }

    #[test]
    fn a_head_request_gets_the_length_but_no_body() {
        let reply =
            Reply { status: 200, headers: vec![("Content-Type", "text/plain")], body: b"four".to_vec() };
        let sent = |method| {
            let mut sent = Vec::new();
            write(&mut sent, &reply, method).expect("memory takes all");
            String::from_utf8(sent).expect("this reply is text")
        };
        let head =
            "HTTP/1.1 200 OK\r\nContent-Type: text/plain\r\nContent-Length: 4\r\nConnection: close\r\n\r\n";
        assert_eq!(sent("HEAD"), head);
        assert_eq!(sent("GET"), format!("{head}four"));
    }
}
