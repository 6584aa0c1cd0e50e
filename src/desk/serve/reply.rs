//! From a request to what is sent back: files of the page only, with strict headers.

use flate2::{Compression, write::GzEncoder};
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

/// The page's content policy. `index.html` carries the same for servers that send no headers;
/// `frame-ancestors` works in a header only.
pub const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
    img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; \
    base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/// A file's kind by the end of its name; whether it shrinks when compressed.
const KINDS: [(&str, &str, bool); 9] = [
    ("html", "text/html; charset=utf-8", true),
    ("js", "text/javascript; charset=utf-8", true),
    ("css", "text/css; charset=utf-8", true),
    ("wasm", "application/wasm", true),
    ("webmanifest", "application/manifest+json", true),
    ("json", "application/json", true),
    ("svg", "image/svg+xml", true),
    ("png", "image/png", false),
    ("txt", PLAIN, true),
];
const PLAIN: &str = "text/plain; charset=utf-8";

/// What is sent back.
#[derive(Debug)]
pub struct Reply {
    /// The HTTP status.
    pub status: u16,
    /// Names and values.
    pub headers: Vec<(&'static str, &'static str)>,
    /// The body, compressed if a header says so.
    pub body: Vec<u8>,
}

impl Reply {
    /// The reply to `method` and `url` (path and query, as it stands in the request).
    pub fn to(page: &Path, method: &str, url: &str, gzip: bool) -> Self {
        if !matches!(method, "GET" | "HEAD") {
            let mut reply = Self::text(405, "This server only gives out the page.\n");
            reply.headers.push(("Allow", "GET, HEAD"));
            return reply;
        }
        let file = file_of(page, url).and_then(|file| Some((kind_of(&file), fs::read(&file).ok()?)));
        let Some(((kind, shrinks), body)) = file else {
            return Self::text(404, "There is no such file in the page.\n");
        };
        let mut reply = Self { status: 200, headers: headers(kind), body };
        if shrinks {
            reply.headers.push(("Vary", "Accept-Encoding"));
            if gzip {
                reply.headers.push(("Content-Encoding", "gzip"));
                reply.body = compressed(&reply.body);
            }
        }
        reply
    }

    fn text(status: u16, text: &str) -> Self {
        Self { status, headers: headers(PLAIN), body: text.into() }
    }
}

/// Whether this `Accept-Encoding` takes gzip; `gzip;q=0` refuses it.
pub fn takes_gzip(accepted: &str) -> bool {
    accepted.split(',').any(|coding| {
        let mut parts = coding.split(';').map(str::trim);
        parts.next() == Some("gzip") && parts.all(|part| part.trim_start_matches("q=").parse() != Ok(0.0))
    })
}

fn headers(kind: &'static str) -> Vec<(&'static str, &'static str)> {
    vec![
        ("Content-Type", kind),
        ("Content-Security-Policy", POLICY),
        ("X-Content-Type-Options", "nosniff"),
        ("Referrer-Policy", "no-referrer"),
        // A new build must be seen at once; the service worker is the page's cache.
        ("Cache-Control", "no-cache"),
    ]
}

/// The file that `url` names. A name with anything but letters, digits, `-`, `_` and inner dots
/// in it is none of ours, so that no way of writing `..` gets out of the page.
fn file_of(page: &Path, url: &str) -> Option<PathBuf> {
    let path = url.split(['?', '#']).next()?.strip_prefix('/')?;
    let path = if path.is_empty() { "index.html" } else { path };
    let harmless = |c: char| c.is_ascii_alphanumeric() || "-_.".contains(c);
    let mut file = page.to_path_buf();
    for name in path.split('/') {
        if name.is_empty() || name.starts_with('.') || !name.chars().all(harmless) {
            return None;
        }
        file.push(name);
    }
    Some(file)
}

fn kind_of(file: &Path) -> (&'static str, bool) {
    let end = file.extension().and_then(|end| end.to_str());
    let known = KINDS.iter().find(|(known, ..)| Some(*known) == end);
    known.map_or(("application/octet-stream", false), |&(_, kind, shrinks)| (kind, shrinks))
}

fn compressed(bytes: &[u8]) -> Vec<u8> {
    let mut gzip = GzEncoder::new(Vec::new(), Compression::default());
    // Writing to memory cannot fail.
    let _ = gzip.write_all(bytes);
    gzip.finish().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::{POLICY, Reply, file_of, takes_gzip};
    use std::path::Path;

    const ROOT: &str = env!("CARGO_MANIFEST_DIR");

    fn get(url: &str, gzip: bool) -> Reply {
        Reply::to(&Path::new(ROOT).join("src/page/offline"), "GET", url, gzip)
    }

    fn header(reply: &Reply, wanted: &str) -> Option<&'static str> {
        reply.headers.iter().find(|(name, _)| *name == wanted).map(|(_, value)| *value)
    }

    #[test]
    fn nothing_outside_the_page_has_an_address() {
        let page = Path::new("page");
        for url in [
            "/..",
            "/../Cargo.toml",
            "/a/../../b",
            "/%2e%2e/b",
            "/..%2fb",
            "/a\\..\\b",
            "//etc/passwd",
            "/.git/config",
            "/a//b",
            "/a/",
            "/C:/x",
            "etc/passwd",
            "http://x/y",
            "",
        ] {
            assert_eq!(file_of(page, url), None, "{url}");
        }
        assert_eq!(file_of(page, "/"), Some(page.join("index.html")));
        assert_eq!(file_of(page, "/icons/jug.svg?x=../y"), Some(page.join("icons").join("jug.svg")));
    }

    #[test]
    fn a_file_comes_with_its_kind_and_the_policy() {
        let reply = get("/boot.js", false);
        assert_eq!(reply.status, 200);
        assert_eq!(header(&reply, "Content-Type"), Some("text/javascript; charset=utf-8"));
        assert_eq!(header(&reply, "Content-Security-Policy"), Some(POLICY));
        assert_eq!(header(&reply, "X-Content-Type-Options"), Some("nosniff"));
        assert_eq!(header(&reply, "Content-Encoding"), None);
        let manifest = get("/brimline.webmanifest", false);
        assert_eq!(header(&manifest, "Content-Type"), Some("application/manifest+json"));
    }

    #[test]
    fn compressed_only_if_that_is_taken_and_helps() {
        let plain = get("/boot.js", false);
        let gzip = get("/boot.js", true);
        assert_eq!(header(&gzip, "Content-Encoding"), Some("gzip"));
        assert!(gzip.body.len() < plain.body.len());
        assert_eq!(header(&get("/icons/jug-192.png", true), "Content-Encoding"), None);
    }

    #[test]
    fn other_methods_and_missing_files_are_refused() {
        assert_eq!(Reply::to(Path::new(ROOT), "POST", "/Cargo.toml", false).status, 405);
        assert_eq!(get("/missing.js", false).status, 404);
        assert_eq!(get("/icons", false).status, 404);
    }

    #[test]
    fn gzip_with_weight_zero_is_a_refusal() {
        assert!(takes_gzip("gzip, deflate, br"));
        assert!(takes_gzip("br;q=1.0, gzip;q=0.5"));
        assert!(!takes_gzip("br"));
        assert!(!takes_gzip("gzip;q=0, br"));
    }

    /// The two places of the policy agree, but for what only a header can say.
    #[test]
    fn index_html_carries_the_same_policy() {
        let html = std::fs::read_to_string(Path::new(ROOT).join("index.html")).expect("index.html is there");
        let policy =
            POLICY.strip_suffix("; frame-ancestors 'none'").expect("the header's own part comes last");
        assert!(html.contains(&format!("content=\"{policy}\"")));
    }
}
