//! From codes and figures to a person's language.
//!
//! Every word that a person reads stands in the resource files of a language, `words/en/` for
//! English, in the Fluent syntax that translators' tools know: `fill.ftl` is in the first load, the
//! others come with what they speak of. The page reads the part of that syntax that it needs with a
//! reader of our own: the reference reader costs 57 kB gzip of wasm, and a test holds ours against it,
//! message by message.

mod language;
mod limit;
mod message;
mod plural;
mod practice;
mod site;
mod speak;
mod symbol;

pub use language::{LANGUAGES, Language};
pub use message::{Argument, Flaw, Message};
pub use plural::Plural;
pub use practice::Told;
pub use site::{CHOICES, singular};

use crate::number::Marks;
use std::rc::Rc;

/// The words of one language.
#[derive(Clone, Debug)]
pub struct Words {
    /// In the order of their keys.
    messages: Vec<(String, Message)>,
    marks: Marks,
    language: &'static Language,
    /// Where what they lack is said.
    base: Option<Rc<Words>>,
    /// Writes a day as the language does.
    days: Option<Days>,
}

/// Writes a day, which comes as ISO 8601 has it, in the language of a tag. The core has no calendar of any language: the
/// page gives this.
pub type Days = fn(language: &str, iso: &str) -> String;

/// What Fill, and the frame around all views, say in English.
const FILL: &str = include_str!("words/en/fill.ftl");

impl Words {
    /// The English of Fill and of the frame around all views.
    ///
    /// # Panics
    /// Never: a test reads the file.
    pub fn of_fill() -> Self {
        Self::read(FILL).expect("the English words are part of the build")
    }

    /// English, all of it.
    ///
    /// # Panics
    /// Never: a test reads the files.
    pub fn english() -> Self {
        Self::read(&Self::resources().join("\n")).expect("the English words are part of the build")
    }

    /// The English resource files. Who names this has all of them in its part of the page.
    pub fn resources() -> [&'static str; 5] {
        [
            FILL,
            include_str!("words/en/rest.ftl"),
            include_str!("words/en/site.ftl"),
            include_str!("words/en/log.ftl"),
            include_str!("words/en/practice.ftl"),
        ]
    }

    /// Reads a resource file in English.
    ///
    /// # Errors
    /// The first line that is not understood.
    ///
    /// ```
    /// use brimline::words::{Argument, Words};
    /// let words = Words::read("fills = { $n ->\n    [one] { $n } fill\n   *[other] { $n } fills\n }").unwrap();
    /// assert_eq!(words.tell("fills", &[("n", Argument::number(1.0, "1"))]), "1 fill");
    /// ```
    pub fn read(resource: &str) -> Result<Self, Flaw> {
        Self::of(Language::english(), resource)
    }

    /// Reads a resource file in a language.
    ///
    /// # Errors
    /// The first line that is not understood.
    pub fn of(language: &'static Language, resource: &str) -> Result<Self, Flaw> {
        let messages = message::read(resource, language.plural)?;
        let mut words = Self { messages, marks: Marks::POINT, language, base: None, days: None };
        let mark = |key: &str, usual: char| {
            words.message(key).and_then(|message| message.format(&[]).chars().next()).unwrap_or(usual)
        };
        words.marks = Marks { decimal: mark("number-decimal", '.'), group: mark("number-group", ',') };
        Ok(words)
    }

    /// These words, and those of `base` where they have none: nothing is left unsaid.
    ///
    /// ```
    /// use brimline::words::{LANGUAGES, Words};
    /// let spanish = Words::of(&LANGUAGES[1], "yes = sí").unwrap();
    /// let words = spanish.or(Words::read("no = no\nyes = yes").unwrap());
    /// assert_eq!((words.say("yes"), words.say("no")), ("sí".into(), "no".into()));
    /// ```
    #[must_use]
    pub fn or(self, base: impl Into<Rc<Self>>) -> Self {
        Self { base: Some(base.into()), ..self }
    }

    /// These words, with days written by `days`; without it they stay as ISO 8601 has them.
    ///
    /// ```
    /// use brimline::words::Words;
    /// let words = Words::of_fill().with_days(|_, day| day.replace('-', "/"));
    /// assert_eq!(words.day("2026-11-27"), "2026/11/27");
    /// ```
    #[must_use]
    pub fn with_days(self, days: Days) -> Self {
        Self { days: Some(days), ..self }
    }

    /// A day, given as ISO 8601 has it, as the language writes it.
    pub fn day(&self, iso: &str) -> String {
        self.days.map_or_else(|| iso.to_owned(), |days| days(self.language.code, iso))
    }

    /// Their language.
    pub fn language(&self) -> &'static Language {
        self.language
    }

    /// The decimal and grouping marks of the language.
    pub fn marks(&self) -> Marks {
        self.marks
    }

    /// The keys of their own, in order.
    pub fn keys(&self) -> impl Iterator<Item = &str> {
        self.messages.iter().map(|(key, _)| key.as_str())
    }

    fn message(&self, key: &str) -> Option<&Message> {
        match self.messages.binary_search_by(|(one, _)| one.as_str().cmp(key)) {
            Ok(found) => Some(&self.messages[found].1),
            Err(_) => self.base.as_ref()?.message(key),
        }
    }

    /// The placeholders of a message.
    pub fn placeholders(&self, key: &str) -> Vec<&str> {
        self.message(key).map(Message::placeholders).unwrap_or_default()
    }

    /// The message of a key; the key itself where the language lacks it, so that nothing is hidden.
    pub fn say(&self, key: &str) -> String {
        self.tell(key, &[])
    }

    /// A name with the colon of the language behind it: what is said of it follows after a space.
    ///
    /// ```
    /// use brimline::words::Words;
    /// assert_eq!(Words::of_fill().headed("Strong acid"), "Strong acid:");
    /// ```
    pub fn headed(&self, name: &str) -> String {
        self.tell("headed", &[("name", Argument::text(name))])
    }

    /// A name, and what is said of it, with the colon of the language between them.
    ///
    /// ```
    /// use brimline::words::Words;
    /// assert_eq!(Words::of_fill().said_of("Machine", "Ridge rider"), "Machine: Ridge rider");
    /// ```
    pub fn said_of(&self, name: &str, said: &str) -> String {
        format!("{} {said}", self.headed(name))
    }

    /// The message of a key with its placeholders filled. A product that nobody has named yet is "this product".
    pub fn tell(&self, key: &str, arguments: &[(&str, Argument)]) -> String {
        let nameless = arguments.iter().position(|(name, given)| *name == "product" && given.is_blank());
        if let Some(at) = nameless {
            let mut named = arguments.to_vec();
            named[at].1 = Argument::text(self.say("product-nameless"));
            return self.tell(key, &named);
        }
        self.message(key).map_or_else(|| key.to_owned(), |message| message.format(arguments))
    }

    /// The message of a key, where the language has it.
    pub fn find(&self, key: &str) -> Option<String> {
        self.message(key).map(|message| message.format(&[]))
    }
}
