//! What words need wherever they are shown or compared.

/// With a capital letter in front.
///
/// ```
/// assert_eq!(tankard_core::words::capital("crop oil"), "Crop oil");
/// ```
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// What is compared of words: small letters, single spaces.
pub(crate) fn plain(text: &str) -> String {
    text.to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ")
}
