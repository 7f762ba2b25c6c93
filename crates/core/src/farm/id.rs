//! Ids: short, readable, unique within their collection.

use indexmap::IndexMap;

/// The key of a thing in its collection, such as `mill-field`.
pub type Id = String;

/// Makes a readable id from a name that is not yet taken: "Mill field" becomes `mill-field`, then `mill-field-2`.
pub fn fresh<T>(taken: &IndexMap<Id, T>, name: &str) -> Id {
    let mut base = String::new();
    for letter in name.to_lowercase().chars() {
        if letter.is_alphanumeric() {
            base.push(letter);
        } else if !base.is_empty() && !base.ends_with('-') {
            base.push('-');
        }
    }
    let base = match base.trim_end_matches('-') {
        "" => "unnamed",
        trimmed => trimmed,
    };
    if !taken.contains_key(base) {
        return base.to_owned();
    }
    // With one number more than there are ids, one is free.
    (2..=taken.len() + 2).map(|n| format!("{base}-{n}")).find(|id| !taken.contains_key(id)).unwrap_or_default()
}
