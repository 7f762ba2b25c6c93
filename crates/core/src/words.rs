//! What words need wherever they are shown or compared.

use crate::language::t;

/// With a capital letter in front.
///
/// ```
/// assert_eq!(tankard_core::words::capital("crop oil"), "Crop oil");
/// ```
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// With a small letter in front.
///
/// ```
/// assert_eq!(tankard_core::words::uncapital("Crop oil"), "crop oil");
/// ```
pub fn uncapital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

/// All of some words: "a and b and c". Nothing where there is none.
pub fn all_of<T: AsRef<str>>(words: impl IntoIterator<Item = T>) -> String {
    folded(words, |first, last| t!("core-and", first = first, last = last))
}

/// One or another: "a or b or c". Nothing where there is none.
pub fn any_of<T: AsRef<str>>(words: impl IntoIterator<Item = T>) -> String {
    folded(words, |first, last| t!("core-or", first = first, last = last))
}

fn folded<T: AsRef<str>>(words: impl IntoIterator<Item = T>, joined: fn(&str, &str) -> String) -> String {
    let mut words = words.into_iter();
    let first = words.next().map(|first| first.as_ref().to_owned()).unwrap_or_default();
    words.fold(first, |first, last| joined(&first, last.as_ref()))
}

/// From one quantity in words to another, the unit once where both have the same.
///
/// ```
/// assert_eq!(tankard_core::words::to("3 mph", "10 mph"), "3 to 10 mph");
/// ```
pub fn to(least: &str, most: &str) -> String {
    t!("core-to", first = one_unit(least, most), last = most)
}

/// The same of a span "between" both.
///
/// ```
/// assert_eq!(tankard_core::words::and("3 mph", "10 mph"), "3 and 10 mph");
/// ```
pub fn and(least: &str, most: &str) -> String {
    t!("core-and", first = one_unit(least, most), last = most)
}

/// The first of two quantities in words, without its unit where the second has the same.
pub(crate) fn one_unit<'l>(least: &'l str, most: &str) -> &'l str {
    match (least.split_once(' '), most.split_once(' ')) {
        (Some((number, unit)), Some((_, other))) if unit == other => number,
        _ => least,
    }
}

/// Without the commas that set thousands apart: "1,200 gal" becomes "1200 gal". Other commas stay.
pub(crate) fn without_groups(text: &str) -> String {
    let signs: Vec<char> = text.chars().collect();
    let digit = |at: usize| signs.get(at).is_some_and(char::is_ascii_digit);
    let groups = |at: usize| at > 0 && digit(at - 1) && (1..=3).all(|next| digit(at + next)) && !digit(at + 4);
    signs.iter().enumerate().filter(|(at, sign)| **sign != ',' || !groups(*at)).map(|(_, sign)| *sign).collect()
}

/// What is compared of words: small letters, single spaces.
pub(crate) fn plain(text: &str) -> String {
    plain_apart_by(text, char::is_whitespace)
}

/// The same, with other signs for a space.
pub(crate) fn plain_apart_by(text: &str, is_space: fn(char) -> bool) -> String {
    // In one go, since names are compared in their thousands.
    let mut plain = String::with_capacity(text.len());
    let mut space = false;
    for letter in text.chars() {
        if is_space(letter) {
            space = !plain.is_empty();
        } else {
            if std::mem::take(&mut space) {
                plain.push(' ');
            }
            plain.extend(letter.to_lowercase());
        }
    }
    plain
}

/// Whether a name stands in words with neither a letter nor a figure right beside it: "2,4-D" in "2,4-D choline", not in "2,4-DB".
pub(crate) fn named_in(name: &str, words: &str) -> bool {
    let plain = |text: &str| plain_apart_by(text, |letter| letter == '-' || letter.is_whitespace());
    let (name, words) = (plain(name), plain(words));
    let apart = |letter: Option<char>| !letter.is_some_and(char::is_alphanumeric);
    !name.is_empty()
        && words.match_indices(&name).any(|(at, _)| {
            apart(words.get(..at).and_then(|before| before.chars().next_back()))
                && apart(words.get(at + name.len()..).and_then(|after| after.chars().next()))
        })
}

#[cfg(test)]
mod tests {
    use super::{and, plain, plain_apart_by, without_groups};

    #[test]
    fn the_unit_stands_once() {
        assert_eq!(and("10.2 mph", "13.4 mph"), "10.2 and 13.4 mph");
        assert_eq!(and("20 in", "4.2 ft"), "20 in and 4.2 ft");
    }

    #[test]
    fn thousands_lose_their_commas_and_sentences_keep_theirs() {
        for (text, without) in [
            ("1,200 gal", "1200 gal"),
            ("1,234,567 L, 3,5", "1234567 L, 3,5"),
            ("at 5, 600 gal", "at 5, 600 gal"),
            ("1,2345", "1,2345"),
        ] {
            assert_eq!(without_groups(text), without);
        }
    }

    #[test]
    fn words_are_brought_to_one_form() {
        assert_eq!(plain("  Crop   OIL\tConcentrate "), "crop oil concentrate");
        assert_eq!((plain(""), plain("   ")), (String::new(), String::new()));
        assert_eq!(plain_apart_by("Quizalofop-P - ethyl", |c| c == '-' || c.is_whitespace()), "quizalofop p ethyl");
    }
}
