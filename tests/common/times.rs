//! How long the tests run that feed readers.

/// How many times as long the tests that feed readers run: `BRIMLINE_FUZZ`, else once.
pub fn times() -> u32 {
    std::env::var("BRIMLINE_FUZZ")
        .ok()
        .and_then(|text| text.parse().ok())
        .filter(|times| *times > 0)
        .unwrap_or(1)
}
