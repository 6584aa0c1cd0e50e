//! What is sent back: files of the page only, with strict headers.

use axum::Router;
use axum::http::header::{
    CACHE_CONTROL, CONTENT_SECURITY_POLICY, HeaderName, HeaderValue, REFERRER_POLICY, X_CONTENT_TYPE_OPTIONS,
};
use axum::http::{HeaderMap, StatusCode};
use axum::middleware::map_response;
use axum::response::{IntoResponse, Response};
use std::path::Path;
use tower_http::compression::CompressionLayer;
use tower_http::services::ServeDir;

/// The page's content policy. `index.html` carries the same for servers that send no headers;
/// `frame-ancestors` works in a header only.
const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
    img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; \
    base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/// Sent with every answer.
const HEADERS: [(HeaderName, HeaderValue); 4] = [
    (CONTENT_SECURITY_POLICY, HeaderValue::from_static(POLICY)),
    (X_CONTENT_TYPE_OPTIONS, HeaderValue::from_static("nosniff")),
    (REFERRER_POLICY, HeaderValue::from_static("no-referrer")),
    // A new build must be seen at once; the service worker is the page's cache.
    (CACHE_CONTROL, HeaderValue::from_static("no-cache")),
];

/// Gives out the files in the folder `page`, compressed for who takes that.
pub fn of(page: &Path) -> Router {
    Router::new()
        .fallback_service(ServeDir::new(page).redirect_to_trailing_slash(false))
        .layer(CompressionLayer::new())
        .layer(map_response(strict))
}

async fn strict(answer: Response) -> Response {
    let answer = match answer.status() {
        missing @ StatusCode::NOT_FOUND => (missing, "There is no such file in the page.\n").into_response(),
        _ => answer,
    };
    (HeaderMap::from_iter(HEADERS), answer).into_response()
}

#[cfg(test)]
mod tests;
