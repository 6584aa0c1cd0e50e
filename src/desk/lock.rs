//! The exact version of a package, from Cargo.lock.

use super::fault::Fault;
use std::fs;
use std::path::Path;

/// The version of `package` that the checkout at `root` is locked to.
///
/// # Errors
/// When Cargo.lock cannot be read or does not hold the package.
pub fn version_of(root: &Path, package: &str) -> Result<String, Fault> {
    let path = root.join("Cargo.lock");
    let text = fs::read_to_string(&path).map_err(|error| Fault::file(&path, &error))?;
    find(&text, package).map(str::to_owned).ok_or_else(|| {
        Fault::new(format!("Cargo.lock has no package {package}.")).by_hand("cargo generate-lockfile")
    })
}

fn find<'a>(lock: &'a str, package: &str) -> Option<&'a str> {
    let name = format!("name = \"{package}\"");
    let mut lines = lock.lines().skip_while(|line| *line != name);
    lines.nth(1)?.strip_prefix("version = \"")?.strip_suffix('"')
}

#[cfg(test)]
mod tests {
    use super::find;

    const LOCK: &str =
        "[[package]]\nname = \"ab\"\nversion = \"1.2.3\"\n\n[[package]]\nname = \"a\"\nversion = \"0.1.0\"\n";

    #[test]
    fn finds_the_whole_name_only() {
        assert_eq!(find(LOCK, "a"), Some("0.1.0"));
        assert_eq!(find(LOCK, "ab"), Some("1.2.3"));
        assert_eq!(find(LOCK, "b"), None);
    }
}
