//! Finding records by words: each word stands somewhere in the name, the operator, the fields, the crops, the products or the
//! actives, whatever its capitals.

use crate::farm::Record;

/// What of a record is looked through, in small letters: made once for many questions.
pub fn text(record: &Record) -> String {
    let mut text = String::with_capacity(256);
    let mut add = |part: &str| {
        text.push_str(part);
        // No word looked for holds a line break, so none is found across two parts.
        text.push('\n');
    };
    add(&record.name);
    add(&record.operator);
    for field in record.fields.values() {
        add(&field.name);
        add(&field.crop);
    }
    for line in &record.lines {
        add(&line.name);
        line.actives.iter().for_each(|active| add(&active.name));
    }
    text.to_lowercase()
}

/// The words that are looked for.
pub fn words(typed: &str) -> Vec<String> {
    typed.to_lowercase().split_whitespace().map(str::to_owned).collect()
}

/// Whether a [`text`] holds every word, in whatever place.
///
/// # Examples
/// ```
/// use jiff::civil::date;
/// use tankard_core::farm::Record;
/// use tankard_core::season::find::{holds, text, words};
/// let text = text(&Record::new("Corn, second post", date(2031, 6, 12)));
/// assert!(holds(&text, &words("POST corn")) && !holds(&text, &words("corn wheat")));
/// ```
pub fn holds(text: &str, words: &[String]) -> bool {
    words.iter().all(|word| text.contains(word.as_str()))
}
