//! A sentence cut into words, numbers and the signs that mean something between them.

use std::ops::Range;

/// A piece of a sentence before figures are put together.
#[derive(Clone, Debug)]
pub(super) struct Token {
    pub(super) sort: Sort,
    pub(super) at: Range<usize>,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Sort {
    Word,
    Number,
    Dash,
    Stroke,
    Percent,
    Plus,
    Stop,
    Open,
    Close,
}

const FRACTIONS: [char; 9] = ['½', '¼', '¾', '⅓', '⅔', '⅛', '⅜', '⅝', '⅞'];

/// The pieces of a sentence; what is neither is left out, as commas and colons are.
pub(super) fn tokens(text: &str) -> Vec<Token> {
    let mut all = Vec::new();
    let mut at = 0;
    while let Some(sign) = text.get(at..).and_then(|rest| rest.chars().next()) {
        let (sort, length) = if sign.is_ascii_digit() || FRACTIONS.contains(&sign) {
            (Some(Sort::Number), number_at(text, at))
        } else if sign.is_alphabetic() {
            (Some(Sort::Word), word_at(text, at))
        } else {
            let sort = match sign {
                '-' | '–' | '—' | '\u{2212}' | '\u{2010}' | '\u{2011}' => Some(Sort::Dash),
                '/' => Some(Sort::Stroke),
                '%' => Some(Sort::Percent),
                '+' => Some(Sort::Plus),
                '.' | ';' | '!' | '?' => Some(Sort::Stop),
                '(' | '[' => Some(Sort::Open),
                ')' | ']' => Some(Sort::Close),
                _ => None,
            };
            (sort, sign.len_utf8())
        };
        let length = length.max(sign.len_utf8());
        if let Some(sort) = sort {
            all.push(Token { sort, at: at..at + length });
        }
        at += length;
    }
    all
}

/// The bytes of the number that begins here: "1.5", "1 1/2", "2½".
fn number_at(text: &str, at: usize) -> usize {
    let Some(rest) = text.get(at..) else { return 0 };
    let digits = |text: &str| text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
    let sign = |text: &str| text.chars().next().filter(|c| FRACTIONS.contains(c)).map_or(0, char::len_utf8);
    let fraction = |text: &str| -> usize {
        let top = digits(text);
        let below = text.get(top..).and_then(|rest| rest.strip_prefix('/')).map_or(0, digits);
        if top > 0 && below > 0 { top + 1 + below } else { 0 }
    };
    if sign(rest) > 0 {
        return sign(rest);
    }
    if fraction(rest) > 0 {
        return fraction(rest);
    }
    let mut end = rest.find(|c: char| !(c.is_ascii_digit() || c == '.' || c == ',')).unwrap_or(rest.len());
    while end > 0 && rest.as_bytes().get(end - 1).is_some_and(|b| !b.is_ascii_digit()) {
        end -= 1;
    }
    let behind = rest.get(end..).unwrap_or_default();
    if sign(behind) > 0 {
        return end + sign(behind);
    }
    match behind.strip_prefix(' ') {
        Some(next) if fraction(next) > 0 => end + 1 + fraction(next),
        Some(next) if sign(next) > 0 => end + 1 + sign(next),
        _ => end,
    }
}

/// The bytes of the word that begins here; "a.i." is one, and so is the number of a standard, "S572.1", "S-572".
fn word_at(text: &str, at: usize) -> usize {
    let rest = text.get(at..).unwrap_or_default();
    let signs: Vec<(usize, char)> = rest.char_indices().collect();
    for (place, (at, sign)) in signs.iter().enumerate() {
        let next = signs.get(place + 1).map(|(_, sign)| *sign);
        let inside = sign.is_alphanumeric()
            || (matches!(sign, '\'' | '’') && next.is_some_and(char::is_alphabetic))
            || (*sign == '.' && next.is_some_and(char::is_alphabetic))
            || (*sign == '-' && next.is_some_and(|next| next.is_ascii_digit()) && rest.get(..*at) == Some("S"))
            || (*sign == '.'
                && next.is_some_and(|next| next.is_ascii_digit())
                && rest.get(..*at).is_some_and(has_digits));
        if !inside {
            return *at;
        }
    }
    rest.len()
}

/// Two digits or more: a stage such as "V8" at the end of a sentence is none.
fn has_digits(word: &str) -> bool {
    word.chars().filter(char::is_ascii_digit).count() > 1
}

/// Numbers in words, in English and in Spanish.
const IN_WORDS: [(&str, &str); 36] = [
    ("one", "1"),
    ("two", "2"),
    ("three", "3"),
    ("four", "4"),
    ("five", "5"),
    ("six", "6"),
    ("seven", "7"),
    ("eight", "8"),
    ("nine", "9"),
    ("ten", "10"),
    ("eleven", "11"),
    ("twelve", "12"),
    ("fourteen", "14"),
    ("fifteen", "15"),
    ("eighteen", "18"),
    ("twenty", "20"),
    ("thirty", "30"),
    ("forty", "40"),
    ("fifty", "50"),
    ("sixty", "60"),
    ("ninety", "90"),
    ("una", "1"),
    ("dos", "2"),
    ("tres", "3"),
    ("cuatro", "4"),
    ("cinco", "5"),
    ("seis", "6"),
    ("siete", "7"),
    ("ocho", "8"),
    ("nueve", "9"),
    ("diez", "10"),
    ("doce", "12"),
    ("catorce", "14"),
    ("quince", "15"),
    ("veinte", "20"),
    ("treinta", "30"),
];

/// The digits of a number that is written as a word.
pub(super) fn in_digits(word: &str) -> Option<&'static str> {
    IN_WORDS.iter().find(|(name, _)| *name == word).map(|(_, digits)| *digits)
}
