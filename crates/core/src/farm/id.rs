//! Ids: short, readable, unique within their collection.

use super::{Farm, Nouns};

/// The key of a thing in its collection, such as `mill-field`.
pub type Id = String;

/// Makes a readable id from a name that is not yet taken: "Mill field" becomes `mill-field`, then `mill-field-2`.
pub fn fresh<T>(taken: &Nouns<T>, name: &str) -> Id {
    fresh_where(name, |id| !taken.contains_key(id))
}

/// The same, for any notion of what is free.
pub fn fresh_where(name: &str, is_free: impl Fn(&str) -> bool) -> Id {
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
    if is_free(base) {
        return base.to_owned();
    }
    // A farm never holds that many of one name.
    (2..1_000_000).map(|n| format!("{base}-{n}")).find(|id| is_free(id)).unwrap_or_default()
}

impl Farm {
    /// An id for a new pass that no pass has, nor a record or a card of a pass that is gone.
    pub fn fresh_pass_id(&self, name: &str) -> Id {
        fresh_where(name, |id| {
            !self.passes.contains_key(id) && !self.has_record(id) && !self.cards.values().any(|card| card.pass == id)
        })
    }

    /// An id for a new product that no product has, nor a record or a movement of a product that is gone.
    pub fn fresh_product_id(&self, name: &str) -> Id {
        fresh_where(name, |id| {
            !self.products.contains_key(id)
                && !self.movements.iter().any(|movement| movement.product == id)
                && !self.records.values().any(|record| record.lines.iter().any(|line| line.product == id))
        })
    }
}
