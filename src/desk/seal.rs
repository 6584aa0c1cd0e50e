//! `seal`: the finished page as a folder that any server can give out, with all that its host should know.
//!
//! What never changes under its address stands in a folder that is named after its digest, so that browsers may keep
//! it for good, and so that no page is ever half old and half new.

mod folder;
mod notes;
mod packed;
#[cfg(test)]
mod tests;

use super::digest::Pieces;
use super::fault::Fault;
use super::places::Places;
use super::precache::{self, TEMPLATE, WORKER};
use super::{bom, build, headers, languages};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// Files by their names, in the order of the names.
type Files = BTreeMap<String, Vec<u8>>;

/// The page's frame, which names the other files.
const FRAME: &str = "index.html";
/// Where the folder has what is given out.
const PAGE: &str = "page/";

/// Builds the page if need be and writes the folder.
///
/// # Errors
/// When the build fails, or the folder holds what this tool did not write.
pub fn run(out: &Path) -> Result<(), Fault> {
    // Asked first: nobody wants to wait for a build to hear it.
    folder::ours(out)?;
    let places = Places::find()?;
    build::page(&places)?;
    let read = |path: &Path| fs::read(path).map_err(|error| Fault::file(path, &error));
    let template = String::from_utf8_lossy(&read(&places.root().join(TEMPLATE))?).into_owned();
    let (page, version) = page(precache::read(&places.page())?, &template)?;
    let mut files = with_packed(page)?;
    files.insert("_headers".to_owned(), notes::headers(&version).into_bytes());
    let mut files: Files = files.into_iter().map(|(name, bytes)| (format!("{PAGE}{name}"), bytes)).collect();
    files.insert("brimline.html".to_owned(), read(&places.one_file())?);
    files.insert("brimline.cdx.json".to_owned(), bom::written(places.root())?.into_bytes());
    files.insert("READ-ME.txt".to_owned(), notes::read_me(&version).into_bytes());
    folder::write(out, &files)?;
    println!("{} files are in {}. READ-ME.txt there says how to go on.", files.len() + 1, out.display());
    Ok(())
}

/// The page with what never changes in a folder of its own, its frame and its worker leading there; and the name of
/// this folder.
fn page(built: Files, template: &str) -> Result<(Files, String), Fault> {
    // A browser asks for these by name again and again; the manifest names the icons.
    // Words of other languages have a digest in their own names.
    let stays = |name: &str| {
        name == FRAME
            || name.ends_with(".webmanifest")
            || name.starts_with("icons/")
            || languages::others().any(|one| name.starts_with(&languages::start(one)))
    };
    let (mut files, moved): (Files, Files) =
        built.into_iter().filter(|(name, _)| name != WORKER).partition(|(name, _)| stays(name));
    let mut digest = Pieces::default();
    for (name, bytes) in &moved {
        digest.add(name, bytes);
    }
    let version = headers::folder(&digest.hex());
    let frame = files.get(FRAME).and_then(|bytes| String::from_utf8(bytes.clone()).ok());
    let mut frame = frame.ok_or_else(|| Fault::new(format!("The page has no {FRAME} that can be read.")))?;
    let mut led = 0;
    for (name, bytes) in moved {
        for end in ['"', ' ', '>'] {
            let old = format!("./{name}{end}");
            led += frame.matches(&old).count();
            frame = frame.replace(&old, &format!("./{version}/{name}{end}"));
        }
        files.insert(format!("{version}/{name}"), bytes);
    }
    if led == 0 {
        return Err(Fault::new(format!(
            "{FRAME} leads to none of the page's files: it is written otherwise now."
        )));
    }
    files.insert(FRAME.to_owned(), frame.into_bytes());
    let worker = precache::seal(template, &files)?;
    files.insert(WORKER.to_owned(), worker.into_bytes());
    Ok((files, version))
}

/// The files, and beside each that becomes smaller its packed forms.
fn with_packed(files: Files) -> Result<Files, Fault> {
    let mut all = Files::new();
    for (name, bytes) in files {
        for (ending, pack) in packed::WAYS.into_iter().filter(|_| packed::is_worth_it(&name)) {
            let packed =
                pack(&bytes).map_err(|error| Fault::new(format!("{name} could not be packed: {error}.")))?;
            if packed.len() < bytes.len() {
                all.insert(format!("{name}.{ending}"), packed);
            }
        }
        all.insert(name, bytes);
    }
    Ok(all)
}
