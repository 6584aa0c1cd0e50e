//! A link as a QR code (ISO/IEC 18004), to scan from a wall or a label.

use crate::page::shared::Shared;
use qrcode::{Color, EcLevel, QrCode};
use std::fmt::Write;
use yew::prelude::*;

/// Light modules around it (ISO/IEC 18004, 9.1: four).
const QUIET: usize = 4;

/// The most printed width with the light modules, in millimetres: what leaves the cautions beside it room.
const WIDTH: f64 = 68.0;

/// The least printed width of a module, in millimetres: less is hard to scan from a worn sheet. Common practice,
/// no source.
const MODULE: f64 = 0.5;

/// A little more than that is printed, since a printer may shrink a page to its own margins.
const PRINTED: f64 = 0.52;

/// The code of a link; none for one that is too long. `label` is the key of what it is for.
///
/// 68 mm hold 136 modules of half a millimetre, and so a code of version 27 (125 modules and the quiet zone): a link
/// of 1,125 bytes at level M, of 1,465 at level L (ISO/IEC 18004, table 7).
pub fn qr(shared: &Shared, label: &str, link: &str) -> Option<Html> {
    let code = drawn(link)?;
    let side = code.width() + 2 * QUIET;
    let width = (side as f64 * PRINTED).min(WIDTH);
    Some(html! {
        <svg class="qr" role="img" aria-label={shared.say(label)} viewBox={format!("0 0 {side} {side}")} width={format!("{width}mm")}
            shape-rendering="crispEdges">
            <rect width={side.to_string()} height={side.to_string()} fill="#fff" />
            <path fill="#000" d={path(&code)} />
        </svg>
    })
}

/// At level M, or L where that is too large.
fn drawn(link: &str) -> Option<QrCode> {
    let fits = |code: &QrCode| WIDTH / (code.width() + 2 * QUIET) as f64 >= MODULE;
    [EcLevel::M, EcLevel::L]
        .into_iter()
        .filter_map(|level| QrCode::with_error_correction_level(link, level).ok())
        .find(fits)
}

/// One path for all dark modules, a run of a line each: no seam shows between neighbours of one path.
fn path(code: &QrCode) -> String {
    let mut out = String::new();
    for (y, line) in code.to_colors().chunks(code.width()).enumerate() {
        let mut x = 0;
        for run in line.chunk_by(|a, b| a == b) {
            if run.first() == Some(&Color::Dark) {
                // Writing into a text cannot fail.
                let _ = write!(out, "M{} {}h{}v1h-{2}z", x + QUIET, y + QUIET, run.len());
            }
            x += run.len();
        }
    }
    out
}
