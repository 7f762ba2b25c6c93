//! English with every word two fifths longer, to see whether the screen has room for the words of other languages.
//!
//! Only words grow: the values in a message, what it chooses by and the blanks in quotes stay, and lines break where they would.

use fluent_syntax::ast::{Entry, Expression, Pattern, PatternElement};
use fluent_syntax::parser::parse;
use fluent_syntax::serializer::serialize;

/// A file of messages, longer; as it is where it cannot be read, which a test holds of no file.
pub(super) fn file(text: &str) -> String {
    let Ok(mut resource) = parse(text.to_owned()) else { return text.to_owned() };
    for entry in &mut resource.body {
        if let Entry::Message(message) = entry
            && let Some(pattern) = &mut message.value
        {
            lengthen(pattern);
        }
    }
    serialize(&resource)
}

fn lengthen(pattern: &mut Pattern<String>) {
    for element in &mut pattern.elements {
        match element {
            PatternElement::TextElement { value } => *value = longer(value),
            PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
                for variant in variants {
                    lengthen(&mut variant.value);
                }
            }
            PatternElement::Placeable { .. } => {}
        }
    }
}

/// A text of which letters are said twice, so that each word is about two fifths longer and a line of words as well; the second one with
/// an accent where it may have one, so that nobody takes it for a mistake.
fn longer(text: &str) -> String {
    let mut said = String::with_capacity(text.len() * 2);
    // Fifths of a letter that are still to be said; blanks and signs are to be made up for, too.
    let mut owed = 0;
    for letter in text.chars() {
        said.push(letter);
        owed += 2;
        if owed >= 5 && letter.is_alphabetic() {
            owed -= 5;
            said.extend(letter.to_lowercase().map(|letter| match letter {
                'a' => 'á',
                'e' => 'é',
                'i' => 'í',
                'o' => 'ó',
                'u' => 'ú',
                'n' => 'ñ',
                other => other,
            }));
        }
    }
    said
}

#[cfg(test)]
mod tests {
    use super::{file, longer};
    use crate::language::{as_here, lengthen, row};
    use crate::t;

    #[test]
    fn words_grow_by_two_fifths_and_keep_their_blanks() {
        for text in ["Tank loads", "Which nozzles do this pass best?", "The label and local law always win."] {
            let long = longer(text);
            let (long_letters, letters) = (long.chars().count(), text.chars().count());
            assert!((letters * 7 / 5).abs_diff(long_letters) <= 1, "{long}");
            assert_eq!(long.split(' ').count(), text.split(' ').count(), "{long}");
        }
        assert_eq!(longer("Tank loads"), "Tanñk lloaádss");
    }

    #[test]
    fn values_choices_and_quoted_blanks_stay() {
        let text = "some = { \" \" }after { $what }\n\nmany =\n    { $count ->\n        [one] { $count } field\n       *[other] { $count } fields\n    }\n";
        let long = file(text);
        for kept in ["{ \" \" }", "{ $what }", "{ $count ->", "[one] { $count }", "*[other] { $count }"] {
            assert!(long.contains(kept), "{long}");
        }
        assert!(!long.contains("field") && !long.contains("after"), "{long}");
    }

    /// Nothing is lost on the way, and whoever does not ask for it is spoken to as ever.
    #[test]
    fn it_is_said_where_it_is_asked_for() {
        let sentence = "More wind carries more spray off the field";
        assert_eq!((t!("card-load", load = 2, of = 5), row(sentence)), ("Load 2 of 5".to_owned(), sentence));
        lengthen(true);
        let long = t!("card-load", load = 2, of = 5);
        assert!(long.contains('2') && long.contains('5') && long.len() > "Load 2 of 5".len(), "{long}");
        assert_ne!(row(sentence), sentence);
        assert_eq!(std::thread::spawn(as_here(|| t!("card-month-1"))).join().unwrap(), "Janñuaáry");
        lengthen(false);
        assert_eq!(t!("card-month-1"), "January");
    }
}
