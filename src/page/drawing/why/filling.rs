//! At the fill station: how much, what is left, what went wrong, how strong.

use super::{arrow, dot, tank, word};
use crate::page::shared::Shared;
use yew::prelude::*;

/// Too little, right, too much, and the floor that each leaves.
pub fn doses(shared: &Shared) -> Html {
    let dirt = [(16, 107), (28, 110), (37, 105), (49, 109), (60, 106), (72, 110)];
    html! {
        <>
            { for [(10, 76), (105, 67), (200, 46)].map(|(left, layer)| html! {
                <>
                    { tank(left, 70, [8, 22, layer, 80]) }
                    <path class="vessel" d={format!("M{left} 116h70")} />
                </>
            }) }
            { for dirt.map(|(x, y)| dot(x, y, 3, "dot")) }
            <path class="concentrate" d="M200 105h70v9h-70Z" />
            { for [(45, "why-fill-little"), (140, "why-fill-right"), (235, "why-fill-much")].map(|(x, key)| word(shared, [x, 142, 90], key)) }
        </>
    }
}

/// Old mix with its product, and the room above it.
pub fn rest(shared: &Shared) -> Html {
    html! {
        <>
            { tank(40, 110, [8, 66, 106, 118]) }
            <path class="pointer" d="M40 24H150" />
            { arrow("M95 2V52", "M87 42 95 54 103 42") }
            { word(shared, [212, 50, 124], "why-top-up-new") }
            { word(shared, [212, 96, 124], "why-top-up-old") }
        </>
    }
}

/// Water in above, mix out below.
pub fn too_strong(shared: &Shared) -> Html {
    html! {
        <>
            { tank(60, 110, [20, 40, 74, 124]) }
            { arrow("M115 2V56", "M107 46 115 58 123 46") }
            { arrow("M172 112H222", "M212 104 224 112 212 120") }
            { word(shared, [226, 22, 104], "why-rescue-water") }
            { word(shared, [222, 144, 112], "why-rescue-drain") }
        </>
    }
}

/// A strip in a glass, and the scale that its color is held to.
pub fn strip(shared: &Shared) -> Html {
    html! {
        <>
            <path class="solution" d="M30 56H94V116H30Z" />
            <path class="vessel" d="M30 30V116H94V30" />
            <path class="framed" d="M54 8H70V100H54Z" />
            <path class="concentrate" d="M54 80H70V100H54Z" />
            <path class="framed" d="M130 56h30v30h-30Z" />
            <path class="framed level" d="M164 56h30v30h-30Z" />
            <path class="concentrate" d="M198 56h30v30h-30Z" />
            <path class="bar chosen" d="M232 56h30v30h-30Z" />
            { arrow("M213 18V46", "M205 38 213 50 221 38") }
            { word(shared, [62, 142, 120], "why-reading-strip") }
            { word(shared, [196, 112, 150], "why-reading-scale") }
        </>
    }
}
