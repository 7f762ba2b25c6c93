//! Reading a collection whose ids must not repeat. Taken as it comes, the second entry of an id would silently replace the
//! first, and what was typed there would be gone at the next save.

use std::fmt;
use std::marker::PhantomData;

use indexmap::IndexMap;
use serde::de::{Deserialize, Deserializer, Error, MapAccess, Visitor};

use super::Id;

/// Reads the collection.
///
/// # Errors
/// Where an id stands twice, or an entry does not read.
pub(super) fn map<'de, D, T>(deserializer: D) -> Result<IndexMap<Id, T>, D::Error>
where
    D: Deserializer<'de>,
    T: Deserialize<'de>,
{
    deserializer.deserialize_map(Unique(PhantomData))
}

struct Unique<T>(PhantomData<T>);

impl<'de, T: Deserialize<'de>> Visitor<'de> for Unique<T> {
    type Value = IndexMap<Id, T>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a map from id to thing, each id once")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Self::Value, A::Error> {
        let mut map = IndexMap::new();
        while let Some(id) = entries.next_key::<Id>()? {
            if map.contains_key(&id) {
                return Err(A::Error::custom(format_args!("the id \"{id}\" stands twice")));
            }
            map.insert(id, entries.next_value()?);
        }
        Ok(map)
    }
}
