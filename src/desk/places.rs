//! Where things are: the checkout, the finished page, the user's cache.

use super::fault::Fault;
use std::env;
use std::path::{Path, PathBuf};

/// The folders that the desk tool works in.
#[derive(Debug, Clone)]
pub struct Places {
    root: PathBuf,
    cache: PathBuf,
}

impl Places {
    /// Finds the checkout and the cache.
    ///
    /// # Errors
    /// When this was started outside a checkout, or the user has no home folder.
    pub fn find() -> Result<Self, Fault> {
        Ok(Self { root: checkout()?, cache: cache()? })
    }

    /// The checkout: the folder with `Trunk.toml`.
    pub fn root(&self) -> &Path {
        &self.root
    }

    /// The finished page; the same folder that `Trunk.toml` names.
    pub fn page(&self) -> PathBuf {
        self.root.join("target/page")
    }

    /// The page in one file, for a memory stick.
    pub fn one_file(&self) -> PathBuf {
        self.root.join("target/brimline.html")
    }

    /// What the finished page was made from; outside the page, so that it is not served.
    pub fn stamp(&self) -> PathBuf {
        self.root.join("target/page.stamp")
    }

    /// Where the browser tests run: a copy of `tests/browser` beside its Node packages, so that
    /// the visible checkout stays clean.
    pub fn browser(&self) -> PathBuf {
        self.root.join("target/browser")
    }

    /// Where Cargo puts what it compiles.
    pub fn compiled(&self) -> PathBuf {
        env::var_os("CARGO_TARGET_DIR").map_or_else(|| self.root.join("target"), PathBuf::from)
    }

    /// The bound and optimized benchmark.
    pub fn bench(&self) -> PathBuf {
        self.root.join("target/bench")
    }

    /// Where the page is built a second time, to be compared.
    pub fn twice(&self) -> PathBuf {
        self.root.join("target/twice")
    }

    /// Build tools installed by this tool; shared by all checkouts of this user.
    pub fn tools(&self) -> PathBuf {
        self.cache.join("tools")
    }

    /// The Python environment of the tests that compare with Python libraries.
    pub fn python(&self) -> PathBuf {
        self.cache.join("python")
    }
}

/// The folder of the build that Trunk is about to finish.
///
/// # Errors
/// When this was not started by Trunk.
pub fn staging() -> Result<PathBuf, Fault> {
    env::var_os("TRUNK_STAGING_DIR").map(PathBuf::from).ok_or_else(|| {
        Fault::new("TRUNK_STAGING_DIR names no folder with a build in it.").by_hand("trunk build --release")
    })
}

/// Cargo names the package folder to what it runs; otherwise the nearest one above counts.
fn checkout() -> Result<PathBuf, Fault> {
    let named = env::var_os("CARGO_MANIFEST_DIR").map(PathBuf::from);
    let here = env::current_dir().unwrap_or_default();
    named
        .iter()
        .map(PathBuf::as_path)
        .chain(here.ancestors())
        .find(|folder| folder.join("Trunk.toml").is_file())
        .map(Path::to_path_buf)
        .ok_or_else(|| Fault::new("This is not a checkout of Brimline: no Trunk.toml here or above."))
}

fn cache() -> Result<PathBuf, Fault> {
    env::var_os("XDG_CACHE_HOME")
        .map(PathBuf::from)
        .filter(|folder| folder.is_absolute())
        .or_else(|| env::home_dir().map(|home| home.join(".cache")))
        .map(|caches| caches.join("brimline"))
        .ok_or_else(|| {
            Fault::new("No home folder is set: set XDG_CACHE_HOME to a folder for the build tools.")
        })
}

#[cfg(test)]
mod tests {
    use super::Places;

    #[test]
    fn the_page_is_where_trunk_puts_it() {
        let places = Places::find().expect("tests run in a checkout");
        let trunk = std::fs::read_to_string(places.root().join("Trunk.toml")).expect("Trunk.toml is there");
        let page = places.page();
        let page = page.strip_prefix(places.root()).expect("the page is in the checkout");
        assert!(trunk.lines().any(|line| line == format!("dist = \"{}\"", page.display())));
    }
}
