//! Reading a farm with word of how far it is. The nouns carry serde themselves, so the reader of the text is stood in front of: the
//! farm's own fields are passed through it, and of each map in them every entry is told before it is read.

use std::cell::Cell;
use std::fmt;
use std::marker::PhantomData;

use serde::Deserialize;
use serde::de::{DeserializeSeed, Deserializer, Error, MapAccess, Visitor};
use tankard_core::progress::Tell;

/// What is told, and how many entries were.
#[derive(Clone, Copy)]
struct Word<'t> {
    tell: &'t Tell<'t>,
    entries: &'t Cell<usize>,
}

impl Word<'_> {
    fn next<E: Error>(self) -> Result<(), E> {
        self.entries.set(self.entries.get() + 1);
        (self.tell)(self.entries.get(), None).map_err(E::custom)
    }
}

/// Reads a value whose maps are told entry by entry.
pub(crate) struct Told<'t, T> {
    tell: &'t Tell<'t>,
    value: PhantomData<T>,
}

impl<'t, T> Told<'t, T> {
    pub(crate) fn new(tell: &'t Tell<'t>) -> Self {
        Self { tell, value: PhantomData }
    }
}

impl<'de, T: Deserialize<'de>> DeserializeSeed<'de> for Told<'_, T> {
    type Value = T;

    fn deserialize<D: Deserializer<'de>>(self, reader: D) -> Result<T, D::Error> {
        let entries = Cell::new(0);
        T::deserialize(Reader {
            inner: reader,
            word: Word { tell: self.tell, entries: &entries },
            at: PhantomData::<Fields>,
        })
    }
}

/// How deep in the farm something is read, and what follows from it.
trait Level {
    /// What is done where an entry comes.
    fn comes<E: Error>(word: Word<'_>) -> Result<(), E>;
    /// How its value is read.
    fn value<'de, M: MapAccess<'de>, S: DeserializeSeed<'de>>(
        map: &mut M,
        seed: S,
        word: Word<'_>,
    ) -> Result<S::Value, M::Error>;
}

/// The farm, each field of which is a reader of entries.
struct Fields;

impl Level for Fields {
    fn comes<E: Error>(_: Word<'_>) -> Result<(), E> {
        Ok(())
    }

    fn value<'de, M: MapAccess<'de>, S: DeserializeSeed<'de>>(
        map: &mut M,
        seed: S,
        word: Word<'_>,
    ) -> Result<S::Value, M::Error> {
        map.next_value_seed(Seed { inner: seed, word })
    }
}

/// A field of the farm, of whose map each entry is told.
struct Entries;

impl Level for Entries {
    fn comes<E: Error>(word: Word<'_>) -> Result<(), E> {
        word.next()
    }

    fn value<'de, M: MapAccess<'de>, S: DeserializeSeed<'de>>(
        map: &mut M,
        seed: S,
        _: Word<'_>,
    ) -> Result<S::Value, M::Error> {
        map.next_value_seed(seed)
    }
}

/// A reader, with who hears of it.
struct Reader<'t, D, At> {
    inner: D,
    word: Word<'t>,
    at: PhantomData<At>,
}

/// What takes a map, with who hears of it.
struct Taker<'t, V, At> {
    inner: V,
    word: Word<'t>,
    at: PhantomData<At>,
}

/// The entries of a map, with who hears of them.
struct Map<'t, M, At> {
    inner: M,
    word: Word<'t>,
    at: PhantomData<At>,
}

/// What a value goes into, with who hears of it.
struct Seed<'t, S> {
    inner: S,
    word: Word<'t>,
}

impl<'de, S: DeserializeSeed<'de>> DeserializeSeed<'de> for Seed<'_, S> {
    type Value = S::Value;

    fn deserialize<D: Deserializer<'de>>(self, reader: D) -> Result<S::Value, D::Error> {
        self.inner.deserialize(Reader { inner: reader, word: self.word, at: PhantomData::<Entries> })
    }
}

/// Passes on what is not told.
macro_rules! pass_on {
    ($($what:ident)*) => {
        $(fn $what<V: Visitor<'de>>(self, taker: V) -> Result<V::Value, D::Error> {
            self.inner.$what(taker)
        })*
    };
}

macro_rules! pass_on_all {
    () => {
        type Error = D::Error;

        pass_on! {
            deserialize_any deserialize_bool deserialize_i8 deserialize_i16 deserialize_i32 deserialize_i64 deserialize_i128
            deserialize_u8 deserialize_u16 deserialize_u32 deserialize_u64 deserialize_u128 deserialize_f32 deserialize_f64
            deserialize_char deserialize_str deserialize_string deserialize_bytes deserialize_byte_buf deserialize_option
            deserialize_unit deserialize_seq deserialize_identifier deserialize_ignored_any
        }

        fn deserialize_unit_struct<V: Visitor<'de>>(self, name: &'static str, taker: V) -> Result<V::Value, D::Error> {
            self.inner.deserialize_unit_struct(name, taker)
        }

        fn deserialize_newtype_struct<V: Visitor<'de>>(self, name: &'static str, taker: V) -> Result<V::Value, D::Error> {
            self.inner.deserialize_newtype_struct(name, taker)
        }

        fn deserialize_tuple<V: Visitor<'de>>(self, len: usize, taker: V) -> Result<V::Value, D::Error> {
            self.inner.deserialize_tuple(len, taker)
        }

        fn deserialize_tuple_struct<V: Visitor<'de>>(
            self,
            name: &'static str,
            len: usize,
            taker: V,
        ) -> Result<V::Value, D::Error> {
            self.inner.deserialize_tuple_struct(name, len, taker)
        }

        fn deserialize_enum<V: Visitor<'de>>(
            self,
            name: &'static str,
            variants: &'static [&'static str],
            taker: V,
        ) -> Result<V::Value, D::Error> {
            self.inner.deserialize_enum(name, variants, taker)
        }

        fn is_human_readable(&self) -> bool {
            self.inner.is_human_readable()
        }
    };
}

impl<'de, D: Deserializer<'de>> Deserializer<'de> for Reader<'_, D, Fields> {
    pass_on_all! {}

    pass_on! { deserialize_map }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        name: &'static str,
        fields: &'static [&'static str],
        taker: V,
    ) -> Result<V::Value, D::Error> {
        self.inner.deserialize_struct(name, fields, Taker { inner: taker, word: self.word, at: self.at })
    }
}

impl<'de, D: Deserializer<'de>> Deserializer<'de> for Reader<'_, D, Entries> {
    pass_on_all! {}

    fn deserialize_map<V: Visitor<'de>>(self, taker: V) -> Result<V::Value, D::Error> {
        self.inner.deserialize_map(Taker { inner: taker, word: self.word, at: self.at })
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        name: &'static str,
        fields: &'static [&'static str],
        taker: V,
    ) -> Result<V::Value, D::Error> {
        self.inner.deserialize_struct(name, fields, taker)
    }
}

impl<'de, V: Visitor<'de>, At: Level> Visitor<'de> for Taker<'_, V, At> {
    type Value = V::Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.inner.expecting(f)
    }

    fn visit_map<M: MapAccess<'de>>(self, map: M) -> Result<V::Value, M::Error> {
        self.inner.visit_map(Map { inner: map, word: self.word, at: self.at })
    }
}

impl<'de, M: MapAccess<'de>, At: Level> MapAccess<'de> for Map<'_, M, At> {
    type Error = M::Error;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, M::Error> {
        let key = self.inner.next_key_seed(seed)?;
        if key.is_some() {
            At::comes(self.word)?;
        }
        Ok(key)
    }

    fn next_value_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<S::Value, M::Error> {
        At::value(&mut self.inner, seed, self.word)
    }

    fn size_hint(&self) -> Option<usize> {
        self.inner.size_hint()
    }
}
