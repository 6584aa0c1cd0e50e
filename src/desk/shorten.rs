//! Short names where the page and its script meet: what wasm-bindgen names an import after, with sixteen digits of
//! a hash, stands in both files, and none of it can be compressed.

use wasm_encoder::{EntityType, ImportSection, Module, RawSection};
use wasmparser::{Parser, Payload};

/// The same page and the same script, with short names of what the one imports from the other. What people
/// read in the script, its comments and its indentation, is left out.
///
/// # Errors
/// Where the page is no wasm that this can read.
pub fn shorten(page: &[u8], script: &str) -> Result<(Vec<u8>, String), String> {
    let mut script = bare(script);
    let mut module = Module::new();
    for payload in Parser::new(0).parse_all(page) {
        let payload = payload.map_err(|error| error.to_string())?;
        let section = payload.as_section();
        if let Payload::ImportSection(reader) = payload {
            let mut imports = ImportSection::new();
            for (place, import) in reader.into_imports().enumerate() {
                let import = import.map_err(|error| error.to_string())?;
                let kind = EntityType::try_from(import.ty).map_err(|error| format!("{error:?}"))?;
                // In the script each stands once, as the key of a function.
                let (long, short) = (format!("\n{}: function", import.name), format!("i{place}"));
                if script.contains(&long) {
                    script = script.replacen(&long, &format!("\n{short}: function"), 1);
                    imports.import(import.module, &short, kind);
                } else {
                    imports.import(import.module, import.name, kind);
                }
            }
            module.section(&imports);
        } else if let Some((id, range)) = section {
            let place = |at: u64| usize::try_from(at).map_err(|error| error.to_string());
            module.section(&RawSection { id, data: &page[place(range.start)?..place(range.end)?] });
        }
    }
    Ok((module.finish(), script))
}

/// The lines of a script without indentation, and without those that are comments.
pub fn bare(script: &str) -> String {
    let mut out = String::with_capacity(script.len());
    for line in script.lines().map(str::trim) {
        if !(line.is_empty() || ["/**", "*", "//"].iter().any(|comment| line.starts_with(comment))) {
            out.push_str(line);
            out.push('\n');
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::shorten;
    use wasm_encoder::{EntityType, ImportSection, MemoryType, Module, TypeSection};
    use wasmparser::{Parser, Payload, Validator};

    const SCRIPT: &str = "const import0 = {\n    /**\n     * Nothing.\n     */\n    __wbg_now_0123456789abcdef: function() {\n        return Date.now();\n    },\n};\n";

    fn page() -> Vec<u8> {
        let mut types = TypeSection::new();
        types.ty().function([], []);
        let memory =
            MemoryType { minimum: 1, maximum: None, memory64: false, shared: false, page_size_log2: None };
        let mut imports = ImportSection::new();
        imports.import("./page.js", "memory", EntityType::Memory(memory)).import(
            "./page.js",
            "__wbg_now_0123456789abcdef",
            EntityType::Function(0),
        );
        let mut module = Module::new();
        module.section(&types).section(&imports);
        module.finish()
    }

    #[test]
    fn both_files_have_the_same_short_name() {
        let (page, script) = shorten(&page(), SCRIPT).expect("it is wasm");
        Validator::new().validate_all(&page).expect("it is still wasm");
        let mut names = Vec::new();
        for payload in Parser::new(0).parse_all(&page) {
            if let Payload::ImportSection(reader) = payload.expect("it is still wasm") {
                names.extend(reader.into_imports().map(|one| one.expect("an import").name.to_owned()));
            }
        }
        // What the script does not bring keeps its name.
        assert_eq!(names, ["memory", "i1"]);
        assert_eq!(script, "const import0 = {\ni1: function() {\nreturn Date.now();\n},\n};\n");
    }

    #[test]
    fn what_is_no_wasm_is_refused() {
        assert!(shorten(b"page", SCRIPT).is_err());
    }
}
