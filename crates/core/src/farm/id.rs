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
    // In ever larger steps to one that is free, and back to where they begin to be: a file may bring thousands of one name.
    let numbered = |number: u64| format!("{base}-{number}");
    let (mut taken, mut free) = (1, 2);
    while !is_free(&numbered(free)) {
        (taken, free) = (free, free * 2);
    }
    while free - taken > 1 {
        let middle = taken.midpoint(free);
        if is_free(&numbered(middle)) {
            free = middle;
        } else {
            taken = middle;
        }
    }
    numbered(free)
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

#[cfg(test)]
mod tests {
    use super::{fresh, fresh_where};
    use crate::farm::Nouns;

    #[test]
    fn ids_of_one_name_are_numbered_without_a_gap() {
        let mut taken = Nouns::new();
        for number in 1..=300 {
            let id = fresh(&taken, "Mill field");
            assert_eq!(id, if number == 1 { "mill-field".to_owned() } else { format!("mill-field-{number}") });
            taken.insert(id, ());
        }
        assert_eq!(fresh(&taken, "!?"), "unnamed");
        // With gaps it is one that is free.
        let id = fresh_where("a", |id| !["a", "a-2", "a-4", "a-8"].contains(&id));
        assert!(!["a", "a-2", "a-4", "a-8"].contains(&id.as_str()), "{id}");
    }
}
