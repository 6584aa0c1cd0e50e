//! Amounts side by side, each with a mark where it should end.

use yew::prelude::*;

const WIDTH: f64 = 272.0;
const ROW: f64 = 54.0;

/// One bar.
pub struct Bar {
    /// What it is of.
    pub name: String,
    /// Its amount, in words.
    pub text: String,
    /// Its length, 0 or above.
    pub length: f64,
    /// Where it should end; none for nowhere.
    pub mark: Option<f64>,
}

/// A bar a row, its name and its amount above it; the table beside it tells the same.
pub fn bars(title: &str, all: &[Bar]) -> Html {
    let ends = all.iter().flat_map(|bar| [bar.length, bar.mark.unwrap_or(0.0)]);
    let most = ends.fold(f64::MIN_POSITIVE, f64::max);
    let told = all.iter().map(|bar| format!("{} {}", bar.name, bar.text)).collect::<Vec<_>>().join(", ");
    let row = |(index, bar): (usize, &Bar)| {
        let y = ROW * index as f64;
        let at = |length: f64| 4.0 + WIDTH * length / most;
        // A long name is cut where the amount begins; the table has all of it.
        let room = 30_usize.saturating_sub(bar.text.chars().count());
        let name: String = if bar.name.chars().count() > room {
            bar.name.chars().take(room.saturating_sub(1)).chain(['…']).collect()
        } else {
            bar.name.clone()
        };
        html! {
            <>
                <text x="4" y={(y + 20.0).to_string()}>{ name }</text>
                <text x="276" y={(y + 20.0).to_string()} text-anchor="end">{ &bar.text }</text>
                <rect class="bar" x="4" y={(y + 28.0).to_string()} height="16"
                    width={format!("{:.1}", (WIDTH * bar.length / most).max(1.0))} />
                { for bar.mark.map(|mark| html! {
                    <path class="vessel" d={format!("M{:.1} {:.1}v24", at(mark), y + 24.0)} />
                }) }
            </>
        }
    };
    html! {
        <svg class="drawing" role="img" aria-label={format!("{title} {told}")} viewBox={format!("0 0 280 {}", ROW * all.len() as f64)}>
            { for all.iter().enumerate().map(row) }
        </svg>
    }
}
