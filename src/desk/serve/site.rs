//! What is sent back: files of the page only, with strict headers.

use crate::desk::headers;
use axum::Router;
use axum::extract::Request;
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE, HeaderName, HeaderValue};
use axum::http::{HeaderMap, StatusCode};
use axum::middleware::{Next, from_fn};
use axum::response::{IntoResponse, Response};
use std::path::Path;
use tower_http::compression::CompressionLayer;
use tower_http::services::ServeDir;

/// Gives out the files in the folder `page`, compressed for who takes that: as they stand there packed, or packed
/// on the way.
pub fn of(page: &Path) -> Router {
    let files = ServeDir::new(page).redirect_to_trailing_slash(false).precompressed_br().precompressed_gzip();
    Router::new().fallback_service(files).layer(CompressionLayer::new()).layer(from_fn(strict))
}

async fn strict(request: Request, next: Next) -> Response {
    let path = request.uri().path();
    let kept = headers::kept(path);
    let kind = headers::KINDS.iter().find(|(ending, _)| path.rsplit('.').next() == Some(ending));
    let answer = next.run(request).await;
    let (kept, answer) = match answer.status() {
        missing @ StatusCode::NOT_FOUND => {
            (headers::ASK, (missing, "There is no such file in the page.\n").into_response())
        }
        _ => (kept, answer),
    };
    let mut all: HeaderMap = headers::ALWAYS
        .map(|(name, text)| (HeaderName::from_static(name), HeaderValue::from_static(text)))
        .into_iter()
        .collect();
    // What has no digest must be seen at once when it is new; the service worker is the page's cache.
    all.insert(CACHE_CONTROL, HeaderValue::from_static(kept));
    let mut answer = (all, answer).into_response();
    // The list of kinds is for endings that this server does not know, either.
    let unknown = answer.headers().get(CONTENT_TYPE).is_some_and(|kind| kind == "application/octet-stream");
    if let Some((_, kind)) = kind.filter(|_| unknown) {
        answer.headers_mut().insert(CONTENT_TYPE, HeaderValue::from_static(kind));
    }
    answer
}

#[cfg(test)]
mod tests;
