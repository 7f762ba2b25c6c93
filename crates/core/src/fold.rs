//! Words as they are compared: small letters without their accents.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// A text in small letters without accents, so that "Mühlfeld" is found by "muhl" and "Łąka" by "laka".
///
/// # References
/// Compatibility decomposition, of which marks are left out: Unicode Standard Annex #15, "Unicode Normalization Forms". Letters that it does
/// not take apart (ø, ł, ß and the like) go by common practice, no source.
///
/// # Examples
/// ```
/// use tankard_core::fold::folded;
/// assert_eq!(folded("Höhe 3, ÉTÉ"), "hohe 3, ete");
/// ```
pub fn folded(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    fold_into(&mut folded, text);
    folded
}

/// A letter as it is compared; one that becomes several is compared by the first of them.
pub fn bare(letter: char) -> char {
    if letter.is_ascii() {
        return letter.to_ascii_lowercase();
    }
    let mut folded = String::new();
    fold_into(&mut folded, letter.encode_utf8(&mut [0; 4]));
    folded.chars().next().unwrap_or(letter)
}

/// A whole text, behind what is there already.
pub fn fold_into(folded: &mut String, text: &str) {
    if text.is_ascii() {
        folded.extend(text.chars().map(|letter| letter.to_ascii_lowercase()));
        return;
    }
    for letter in text.nfkd().filter(|letter| !is_combining_mark(*letter)).flat_map(char::to_lowercase) {
        match letter {
            'ß' => folded.push_str("ss"),
            'æ' => folded.push_str("ae"),
            'œ' => folded.push_str("oe"),
            'ø' => folded.push('o'),
            'đ' | 'ð' => folded.push('d'),
            'ł' => folded.push('l'),
            'ı' => folded.push('i'),
            'þ' => folded.push_str("th"),
            '’' | '‘' => folded.push('\''),
            letter => folded.push(letter),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::folded;

    /// What Python's `unicodedata.normalize("NFKD", …)` gives without marks, in lower case; the last row is our own practice.
    #[test]
    fn accents_and_capitals_go() {
        for (text, wanted) in [
            ("Mühlfeld", "muhlfeld"),
            ("CÔTE d'ÂNE", "cote d'ane"),
            ("Žitná niva", "zitna niva"),
            ("ΆΛΦΑ", "αλφα"),
            ("İzmir", "izmir"),
            ("½ ha, ﬁeld ２", "1⁄2 ha, field 2"),
            ("é as two signs: e\u{301}", "e as two signs: e"),
            ("Łąka, Ærø, Straße, Ðorð", "laka, aero, strasse, dord"),
        ] {
            assert_eq!(folded(text), wanted);
        }
    }
}
