//! A server on a free port, asked over the wire as a browser does.

use crate::desk::headers::POLICY;
use crate::desk::serve::{listen, open};
use std::fs;
use std::io::{Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::path::Path;
use std::thread;

const ROOT: &str = env!("CARGO_MANIFEST_DIR");

/// Serves the page's own hand-written files until the test program ends.
fn started() -> SocketAddr {
    let listener = open(Some(0)).expect("some port is free");
    let address = listener.local_addr().expect("it is open");
    thread::spawn(|| listen(&Path::new(ROOT).join("src/page/offline"), listener));
    address
}

/// The head, in lower case, and the body of the answer to a request.
fn asked(server: SocketAddr, method: &str, url: &str, gzip: bool) -> (String, Vec<u8>) {
    let accepted = if gzip { "gzip, br" } else { "identity" };
    let mut connection = TcpStream::connect(server).expect("the server listens");
    let request = format!(
        "{method} {url} HTTP/1.1\r\nHost: x\r\nAccept-Encoding: {accepted}\r\nConnection: close\r\n\r\n"
    );
    connection.write_all(request.as_bytes()).expect("the server reads");
    let mut answer = Vec::new();
    connection.read_to_end(&mut answer).expect("the server answers");
    let end = answer.windows(4).position(|four| four == b"\r\n\r\n").expect("the head ends");
    let body = answer.split_off(end + 4);
    (String::from_utf8(answer).expect("a head is text").to_lowercase(), body)
}

fn got(server: SocketAddr, url: &str) -> (String, Vec<u8>) {
    asked(server, "GET", url, false)
}

#[test]
fn nothing_outside_the_page_has_an_address() {
    let server = started();
    for url in [
        "/../mod.rs",
        "/icons/../../mod.rs",
        "/%2e%2e/mod.rs",
        "/..%2fmod.rs",
        "/icons\\..\\boot.js",
        "//etc/passwd",
        "/%2fetc/passwd",
        "/C:/x",
        "/icons",
        "/icons/",
        "/boot.js/",
        "/missing.js",
    ] {
        let (head, body) = got(server, url);
        assert!(head.starts_with("http/1.1 404 "), "{url}: {head}");
        assert_eq!(body, b"There is no such file in the page.\n", "{url}");
    }
    let (head, _) = got(server, "etc/passwd");
    assert!(head.starts_with("http/1.1 400 "), "{head}");
}

#[test]
fn a_file_comes_with_its_kind_and_the_headers() {
    let server = started();
    let (head, body) = got(server, "/boot.js?x=../y");
    assert!(head.starts_with("http/1.1 200 "), "{head}");
    let policy = format!("\r\ncontent-security-policy: {POLICY}\r\n");
    for line in [
        policy.as_str(),
        "\r\ncontent-type: text/javascript\r\n",
        "\r\nx-content-type-options: nosniff\r\n",
        "\r\nreferrer-policy: no-referrer\r\n",
        "\r\ncache-control: no-cache\r\n",
    ] {
        assert!(head.contains(line), "{line} is not in {head}");
    }
    assert_eq!(body, fs::read(Path::new(ROOT).join("src/page/offline/boot.js")).expect("it is there"));
    for (url, kind) in [
        ("/brimline.webmanifest", "application/manifest+json"),
        ("/icons/jug.svg", "image/svg+xml"),
        ("/icons/jug-192.png", "image/png"),
    ] {
        let (head, _) = got(server, url);
        assert!(head.contains(&format!("\r\ncontent-type: {kind}\r\n")), "{head}");
    }
}

#[test]
fn compressed_only_if_that_is_taken_and_helps() {
    let server = started();
    let (head, body) = asked(server, "GET", "/boot.js", true);
    assert!(head.contains("\r\ncontent-encoding: gzip\r\n"), "{head}");
    assert!(body.len() < got(server, "/boot.js").1.len());
    assert!(!asked(server, "GET", "/icons/jug-192.png", true).0.contains("content-encoding"));
    assert!(!got(server, "/boot.js").0.contains("content-encoding"));
}

#[test]
fn heads_are_given_and_other_methods_refused() {
    let server = started();
    let (head, body) = asked(server, "HEAD", "/boot.js", false);
    assert!(head.starts_with("http/1.1 200 ") && body.is_empty(), "{head}");
    for method in ["POST", "PUT", "DELETE", "OPTIONS"] {
        let (head, _) = asked(server, method, "/boot.js", false);
        assert!(head.starts_with("http/1.1 405 ") && head.contains("\r\nallow: get,head\r\n"), "{head}");
    }
}

/// Browsers open connections that they use later or never.
#[test]
fn silent_connections_keep_nobody_waiting() {
    let server = started();
    let silent: Vec<TcpStream> =
        (0..20).map(|_| TcpStream::connect(server).expect("the server listens")).collect();
    let asking: Vec<_> =
        (0..60).map(|_| thread::spawn(move || asked(server, "GET", "/boot.js", true))).collect();
    for answer in asking {
        assert!(answer.join().expect("it was answered").0.starts_with("http/1.1 200 "));
    }
    drop(silent);
}

/// The two places of the policy agree, but for what only a header can say.
#[test]
fn index_html_carries_the_same_policy() {
    let html = fs::read_to_string(Path::new(ROOT).join("index.html")).expect("index.html is there");
    let policy = POLICY.strip_suffix("; frame-ancestors 'none'").expect("the header's own part comes last");
    assert!(html.contains(&format!("content=\"{policy}\"")));
}
