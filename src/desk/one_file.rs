//! Seals the finished page into one file that a browser opens from a memory stick, with no server.
//!
//! A browser loads no module and no WebAssembly beside a file, so that everything stands in it: the style and the
//! scripts as they are, each allowed by its digest, and the chunks packed (zlib, RFC 1950; base64, RFC 4648).

use super::digest::integrity;
use super::fault::Fault;
use super::languages;
use super::places::Places;
use base64ct::{Base64, Encoding};
use std::fmt::Write;
use std::fs;
use std::path::Path;

/// The page's frame and what starts it there, relative to the checkout.
const FRAME: &str = "index.html";
const STARTER: &str = "src/page/offline/one_file.js";
const ICON: &str = "src/page/offline/icons/jug.svg";

/// The chunks, by what the scripts call them.
const CHUNKS: [&str; 2] = ["brimline_bg.wasm", "split_rest.wasm"];

/// The scripts that bind them, and how each names the other. In one module neither has to.
const BINDINGS: &str = "brimline.js";
const LOADER: &str = "__wasm_split.js";
const NAMES_LOADER: &str = "import * as import1 from \"./__wasm_split.js\"";
const GIVES_OUT: &str = "export { initSync, __wbg_init as default };";
const NAMES_BINDINGS: &str = "import { initSync } from \"./brimline.js\";";
const LOADS: &str = "export const __wasm_split_load_rest";
const FETCHES: &str = "fetch(new URL(\"./split_rest.wasm\", import.meta.url))";

/// Packs as small as it can.
const HARDEST: u8 = 10;

/// Writes the file out of the build that Trunk is about to finish.
///
/// # Errors
/// When a file cannot be read or written, or the build is not what this was written for.
pub fn run(places: &Places, build: &Path) -> Result<(), Fault> {
    let text = sealed(places.root(), build)?;
    let file = places.one_file();
    println!("{}: {:.2} MB, with all languages", file.display(), text.len() as f64 / 1e6);
    fs::write(&file, text).map_err(|error| Fault::file(&file, &error))
}

fn sealed(root: &Path, build: &Path) -> Result<String, Fault> {
    let text = |path: &Path| fs::read_to_string(path).map_err(|error| Fault::file(path, &error));
    let frame = text(&root.join(FRAME))?;
    let scripts = Scripts {
        bindings: text(&build.join(BINDINGS))?,
        loader: text(&build.join(LOADER))?,
        asker: languages::asker(root)?,
        starter: text(&root.join(STARTER))?,
    };
    let mut chunks = String::new();
    let mut add = |name: &str, bytes: &[u8]| {
        let packed = Base64::encode_string(&miniz_oxide::deflate::compress_to_vec_zlib(bytes, HARDEST));
        let _ = writeln!(chunks, "<script type=\"text/plain\" id=\"{name}\">{packed}</script>");
    };
    for name in CHUNKS {
        let path = build.join(name);
        add(name, &fs::read(&path).map_err(|error| Fault::file(&path, &error))?);
    }
    for language in languages::others() {
        add(&format!("words-{}", language.code), languages::words(root, language)?.as_bytes());
    }
    assemble(&frame, &text(&build.join("main.css"))?, &text(&root.join(ICON))?, &scripts.joined()?, &chunks)
}

/// The scripts of a build.
struct Scripts {
    bindings: String,
    loader: String,
    asker: String,
    starter: String,
}

impl Scripts {
    /// One module of all.
    fn joined(&self) -> Result<String, Fault> {
        let loader = replaced(&self.loader, LOADER, NAMES_BINDINGS, "")?;
        let loader = replaced(&loader, LOADER, LOADS, "const __wasm_split_load_rest")?;
        let loader = replaced(&loader, LOADER, FETCHES, "unpacked(\"split_rest.wasm\")")?;
        let bindings = replaced(&self.bindings, BINDINGS, NAMES_LOADER, "")?;
        let bindings = replaced(&bindings, BINDINGS, GIVES_OUT, "")?;
        let import = "const import1 = { __wasm_split_load_rest };";
        Ok([&bindings, &loader, import, &self.asker, self.starter.as_str()].join("\n"))
    }
}

/// A text with its one `mark` replaced.
fn replaced(text: &str, of: &str, mark: &str, by: &str) -> Result<String, Fault> {
    match text.matches(mark).count() {
        1 => Ok(text.replace(mark, by)),
        count => Err(Fault::new(format!(
            "{of} has {count} times \"{mark}\", which the single file needs once: wasm-bindgen or the cutter \
             writes it otherwise now."
        ))),
    }
}

/// The frame with everything in it.
fn assemble(frame: &str, style: &str, icon: &str, script: &str, chunks: &str) -> Result<String, Fault> {
    // Only a script can end one, and none of ours has a reason to name its end.
    if script.contains("</script") || style.contains("</style") {
        return Err(Fault::new("A script or a style names its own end: it cannot stand in a page."));
    }
    let (style, script) = (format!("\n{style}\n"), format!("\n{script}\n"));
    let policy = format!(
        "default-src 'none'; script-src '{}' 'wasm-unsafe-eval'; style-src '{}'; img-src data: blob:; \
         connect-src data:; base-uri 'none'; form-action 'none'; \
         require-trusted-types-for 'script'; trusted-types 'none'",
        integrity(script.as_bytes()),
        integrity(style.as_bytes()),
    );
    let mut page = String::new();
    for line in frame.lines() {
        if line.contains("http-equiv=\"Content-Security-Policy\"") {
            let _ = writeln!(page, "<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
        } else if line.contains("rel=\"icon\"") {
            let icon = Base64::encode_string(icon.as_bytes());
            let _ = writeln!(page, "<link rel=\"icon\" href=\"data:image/svg+xml;base64,{icon}\">");
        } else if line.contains("data-trunk") && line.contains("rel=\"css\"") {
            let _ = writeln!(page, "<style>{style}</style>");
        } else if line == "</body>" {
            let _ = writeln!(page, "{chunks}<script type=\"module\">{script}</script>\n{line}");
        } else if !line.contains("data-trunk") && !line.contains("<link ") {
            let _ = writeln!(page, "{line}");
        }
    }
    for part in ["<style>", &policy, "type=\"module\""] {
        if page.matches(part).count() != 1 {
            return Err(Fault::new(format!("{FRAME} has no place for the single file's {part}, or two.")));
        }
    }
    Ok(page)
}
