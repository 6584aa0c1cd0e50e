//! What is sent along with the files of the page: the one list for this tool's own server and for every other one.

/// The page's content policy. `index.html` carries the same for servers that send no headers;
/// `frame-ancestors` works in a header only.
pub const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
    img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; \
    base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types brimline; \
    frame-ancestors 'none'";

/// Sent with every answer.
pub const ALWAYS: [(&str, &str); 7] = [
    ("content-security-policy", POLICY),
    // Nobody else’s window or page has a hand in this one.
    ("cross-origin-opener-policy", "same-origin"),
    ("cross-origin-embedder-policy", "require-corp"),
    ("cross-origin-resource-policy", "same-origin"),
    ("permissions-policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()"),
    ("referrer-policy", "no-referrer"),
    ("x-content-type-options", "nosniff"),
];

/// What a file of this ending is (IANA media types), where servers are known to have another opinion, or none.
pub const KINDS: [(&str, &str); 8] = [
    ("ftl", "text/plain; charset=utf-8"),
    ("html", "text/html; charset=utf-8"),
    ("css", "text/css; charset=utf-8"),
    ("js", "text/javascript; charset=utf-8"),
    ("png", "image/png"),
    ("svg", "image/svg+xml"),
    ("wasm", "application/wasm"),
    ("webmanifest", "application/manifest+json"),
];

/// For a file that may be another one tomorrow: asked about each time, sent again only where it changed.
pub const ASK: &str = "no-cache";
/// For a file that never changes under its address.
pub const KEEP: &str = "public, max-age=31536000, immutable";

/// How the folder begins in which a sealed page keeps what never changes under its address.
const FOLDER: &str = "v-";
/// Digits of the digest behind it.
const DIGITS: usize = 16;

/// The folder of the files with this digest.
pub fn folder(digest: &str) -> String {
    format!("{FOLDER}{}", digest.get(..DIGITS).unwrap_or(digest))
}

/// How long the file at this address may be kept: for good if its folder says what is in it.
pub fn kept(address: &str) -> &'static str {
    let first = address.trim_start_matches('/').split_once('/').map(|(first, _)| first);
    let digest = first.and_then(|first| first.strip_prefix(FOLDER));
    let whole = digest.is_some_and(|text| {
        text.len() == DIGITS && text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
    });
    if whole { KEEP } else { ASK }
}

#[cfg(test)]
mod tests {
    use super::{ASK, KEEP, folder, kept};

    #[test]
    fn only_what_stands_in_a_folder_with_a_digest_is_kept() {
        let folder = folder("0123456789abcdef0123");
        assert_eq!(folder, "v-0123456789abcdef");
        assert_eq!(kept(&format!("/{folder}/main.css")), KEEP);
        for address in
            ["/", "/index.html", "/v-0123/main.css", "/v-0123456789ABCDEF/x", "/v-0123456789abcdef"]
        {
            assert_eq!(kept(address), ASK, "{address}");
        }
    }
}
