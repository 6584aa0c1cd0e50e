//! Our reader against the reference implementation of the Fluent syntax (crate `fluent-bundle`).

use brimline::words::{Argument, Words};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};

fn bundle() -> FluentBundle<FluentResource> {
    let resource =
        FluentResource::try_new(Words::resources().join("\n")).expect("the reference reader takes the file");
    let mut bundle = FluentBundle::new(vec!["en-US".parse().expect("a language tag")]);
    // It would wrap each placeholder in invisible marks of direction.
    bundle.set_use_isolating(false);
    bundle.add_resource(resource).expect("no key stands twice");
    bundle
}

#[test]
fn every_message_reads_as_the_reference_reads_it() {
    let (words, bundle) = (Words::english(), bundle());
    let mut compared = 0;
    for key in words.keys() {
        let pattern = bundle.get_message(key).and_then(|message| message.value()).expect(key);
        for number in [0.0, 1.0, 2.0, 21.0] {
            let placeholders = words.placeholders(key);
            let mut theirs = FluentArgs::new();
            let mut ours = Vec::new();
            for name in &placeholders {
                theirs.set(*name, FluentValue::from(number));
                ours.push((*name, Argument::number(number, number.to_string())));
            }
            let mut errors = Vec::new();
            let expected = bundle.format_pattern(pattern, Some(&theirs), &mut errors);
            assert!(errors.is_empty(), "{key}: {errors:?}");
            assert_eq!(words.tell(key, &ours), expected, "{key} with {number}");
            compared += 1;
        }
    }
    println!("{compared} messages read alike");
}

#[test]
fn a_flaw_is_named_by_its_line() {
    for (resource, line) in [
        ("good = x\nbad", 2),
        ("= no key", 1),
        ("empty =", 1),
        ("twice = a\ntwice = b", 2),
        ("open = { $n ->\n    [one] x\n", 1),
        ("brace = { $n", 1),
        ("1key = x", 1),
    ] {
        assert_eq!(Words::read(resource).expect_err(resource).line, line, "{resource}");
    }
}
