//! A part of a view that is drawn behind the frame: what a keystroke, or the first answer, does not have to wait for.

use crate::page::keep::behind_frame;
use std::rc::Rc;
use yew::prelude::*;

/// Draws `name` of `of` once the next frame is painted, and anew once typing rests; until then what was drawn of it last
/// stands, and nothing where it is new. Two parts that may take each other's place have different names: neither ever shows
/// what was the other's. Nobody types into one: what is typed would be drawn over with what was there before.
pub fn later<T: 'static>(name: &'static str, of: T, draw: impl Fn(&T) -> Html + 'static) -> Html {
    html! { <Later key={name} draw={Draw::new(move || draw(&of))} /> }
}

/// How it is drawn. Nobody can tell whether two ways draw the same.
#[derive(Clone)]
pub(super) struct Draw(Rc<dyn Fn() -> Html>);

impl Draw {
    pub fn new(draw: impl Fn() -> Html + 'static) -> Self {
        Self(Rc::new(draw))
    }
}

impl PartialEq for Draw {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

#[derive(Properties, PartialEq)]
pub(super) struct LaterProps {
    /// Whether it is drawn with the frame.
    #[prop_or_default]
    pub now: bool,
    pub draw: Draw,
}

/// Whether it was drawn, and whether it waits for its turn.
pub(super) struct Later {
    drawn: bool,
    waits: bool,
}

impl Later {
    /// Waits for its turn, once however often it changes.
    fn wait(&mut self, ctx: &Context<Self>) {
        if !self.waits {
            self.waits = true;
            let link = ctx.link().clone();
            behind_frame::then(move || link.send_message(()));
        }
    }
}

impl Component for Later {
    type Message = ();
    type Properties = LaterProps;

    fn create(ctx: &Context<Self>) -> Self {
        let mut later = Self { drawn: false, waits: false };
        later.wait(ctx);
        later
    }

    fn changed(&mut self, ctx: &Context<Self>, _before: &Self::Properties) -> bool {
        let now = ctx.props().now;
        if now {
            self.drawn = true;
        } else {
            self.wait(ctx);
        }
        now
    }

    fn update(&mut self, _ctx: &Context<Self>, (): ()) -> bool {
        (self.drawn, self.waits) = (true, false);
        true
    }

    fn view(&self, ctx: &Context<Self>) -> Html {
        if self.drawn { (ctx.props().draw.0)() } else { Html::default() }
    }
}
