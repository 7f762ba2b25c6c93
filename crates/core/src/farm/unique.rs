//! Reading a collection whose ids must not repeat. Taken as it comes, the second entry of an id would silently replace the
//! first, and what was typed there would be gone at the next save.

use std::fmt;
use std::marker::PhantomData;

use crate::language::t;

use indexmap::IndexMap;
use serde::de::{Deserialize, Deserializer, Error, MapAccess, Visitor};

use super::Id;

/// What holds things by id.
pub(super) trait ById<T>: Default {
    /// Whether something has the id.
    fn holds(&self, id: &Id) -> bool;
    /// Puts something behind the rest, under an id that nothing has.
    fn put(&mut self, id: Id, thing: T);
}

impl<T> ById<T> for IndexMap<Id, T> {
    fn holds(&self, id: &Id) -> bool {
        self.contains_key(id)
    }

    fn put(&mut self, id: Id, thing: T) {
        self.insert(id, thing);
    }
}

/// Reads the collection.
///
/// # Errors
/// Where an id stands twice, or an entry does not read.
pub(super) fn map<'de, D, T, C>(deserializer: D) -> Result<C, D::Error>
where
    D: Deserializer<'de>,
    T: Deserialize<'de>,
    C: ById<T>,
{
    deserializer.deserialize_map(Unique(PhantomData))
}

struct Unique<T, C>(PhantomData<(T, C)>);

impl<'de, T: Deserialize<'de>, C: ById<T>> Visitor<'de> for Unique<T, C> {
    type Value = C;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(t!("farm-a-map-from-id-to-thing"))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<C, A::Error> {
        let mut all = C::default();
        while let Some(id) = entries.next_key::<Id>()? {
            if all.holds(&id) {
                return Err(A::Error::custom(format_args!("the id \"{id}\" stands twice")));
            }
            all.put(id, entries.next_value()?);
        }
        Ok(all)
    }
}
