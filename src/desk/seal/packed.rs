//! Files packed beside themselves, for servers that send what lies there.

use flate2::{Compression, GzBuilder};
use std::io::{self, Write};

/// What packs well: the rest (pictures) is packed already.
const TEXTS: [&str; 7] = ["html", "css", "js", "ftl", "svg", "wasm", "webmanifest"];

/// The hardest that Brotli packs, and how far it looks back (RFC 7932: at most 2²⁴ bytes).
const QUALITY: i32 = 11;
const WINDOW: i32 = 22;

/// A way to pack a file: the ending of its name, and what it makes of the bytes.
pub type Way = (&'static str, fn(&[u8]) -> io::Result<Vec<u8>>);

/// All of them.
pub const WAYS: [Way; 2] = [("gz", gzip), ("br", brotli)];

/// Whether a file of this name is worth packing.
pub fn is_worth_it(name: &str) -> bool {
    name.rsplit_once('.').is_some_and(|(_, ending)| TEXTS.contains(&ending))
}

/// RFC 1952, with neither a name nor a time in it: the same bytes each time.
fn gzip(bytes: &[u8]) -> io::Result<Vec<u8>> {
    let mut packer = GzBuilder::new().mtime(0).write(Vec::new(), Compression::best());
    packer.write_all(bytes)?;
    packer.finish()
}

/// RFC 7932.
fn brotli(mut bytes: &[u8]) -> io::Result<Vec<u8>> {
    let how = brotli::enc::BrotliEncoderParams { quality: QUALITY, lgwin: WINDOW, ..Default::default() };
    let mut out = Vec::new();
    brotli::BrotliCompress(&mut bytes, &mut out, &how)?;
    Ok(out)
}
