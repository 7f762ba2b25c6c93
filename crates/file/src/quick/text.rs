//! Text as the program writes it, for serde.

use std::fmt;

use serde::de::{self, Deserialize, DeserializeSeed, IntoDeserializer, Visitor};

/// What stands here is not known, or does not fit: the other reader takes over.
#[derive(Clone, Copy, Debug)]
pub(super) struct GivesUp;

impl fmt::Display for GivesUp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("not read")
    }
}

impl std::error::Error for GivesUp {}

impl de::Error for GivesUp {
    // What it says is not kept: the other reader says it with its place.
    fn custom<T: fmt::Display>(_: T) -> Self {
        Self
    }
    fn invalid_type(_: de::Unexpected<'_>, _: &dyn de::Expected) -> Self {
        Self
    }
    fn invalid_value(_: de::Unexpected<'_>, _: &dyn de::Expected) -> Self {
        Self
    }
    fn invalid_length(_: usize, _: &dyn de::Expected) -> Self {
        Self
    }
    fn unknown_variant(_: &str, _: &'static [&'static str]) -> Self {
        Self
    }
    fn unknown_field(_: &str, _: &'static [&'static str]) -> Self {
        Self
    }
    fn missing_field(_: &'static str) -> Self {
        Self
    }
    fn duplicate_field(_: &'static str) -> Self {
        Self
    }
}

type Read<T> = Result<T, GivesUp>;

/// A text and how far it is read.
pub(super) struct Text<'de> {
    all: &'de str,
    at: usize,
    /// The struct and its field that is empty because the inside is left out, and where that would stand.
    left_out: Option<(&'static str, &'static str, usize)>,
    /// Whether the value that comes next is that field's.
    is_left_out_next: bool,
    has_left_out: bool,
}

impl<'de> Text<'de> {
    pub(super) fn new(text: &'de str) -> Self {
        Self { all: text, at: 0, left_out: None, is_left_out_next: false, has_left_out: false }
    }

    /// Lets the inside of a map be left out: of one that is a field of a struct, and begins right at that place.
    pub(super) fn leave_out(&mut self, of: &'static str, field: &'static str, inside: usize) {
        self.left_out = Some((of, field, inside));
    }

    pub(super) const fn has_left_out(&self) -> bool {
        self.has_left_out
    }

    /// Whether there is nothing more.
    pub(super) fn ends(&mut self) -> Read<()> {
        self.skip()?;
        if self.at == self.all.len() { Ok(()) } else { Err(GivesUp) }
    }

    /// Where the next thing begins.
    pub(super) fn next_begins(&mut self) -> Read<usize> {
        self.skip()?;
        Ok(self.at)
    }

    pub(super) fn is_at_end_of_map(&self) -> bool {
        self.peek() == Some(b'}')
    }

    /// An entry of a map with the comma behind it.
    pub(super) fn entry<T: Deserialize<'de>>(&mut self) -> Read<(String, T)> {
        let id = String::deserialize(&mut *self)?;
        self.take(b':')?;
        let value = T::deserialize(&mut *self)?;
        self.comma(b'}')?;
        Ok((id, value))
    }

    fn peek(&self) -> Option<u8> {
        self.all.as_bytes().get(self.at).copied()
    }

    fn rest(&self) -> &'de [u8] {
        self.all.as_bytes().get(self.at..).unwrap_or_default()
    }

    /// Goes over blanks and comments.
    fn skip(&mut self) -> Read<()> {
        loop {
            match self.peek() {
                Some(b' ' | b'\n' | b'\t' | b'\r') => self.at += 1,
                Some(b'/') => self.skip_comment()?,
                _ => return Ok(()),
            }
            // Lines begin far to the right.
            while self.rest().starts_with(b"        ") {
                self.at += 8;
            }
        }
    }

    fn skip_comment(&mut self) -> Read<()> {
        let rest = self.rest();
        if rest.starts_with(b"//") {
            self.at += rest.iter().position(|byte| *byte == b'\n').ok_or(GivesUp)?;
            return Ok(());
        }
        if !rest.starts_with(b"/*") {
            return Err(GivesUp);
        }
        // Comments may stand inside one another.
        let (mut depth, mut at) = (0_usize, 0);
        while let Some(two) = rest.get(at..at + 2) {
            match two {
                b"/*" => (depth, at) = (depth + 1, at + 2),
                b"*/" => (depth, at) = (depth - 1, at + 2),
                _ => at += 1,
            }
            if depth == 0 {
                self.at += at;
                return Ok(());
            }
        }
        Err(GivesUp)
    }

    /// A sign after blanks.
    fn take(&mut self, sign: u8) -> Read<()> {
        if self.takes(sign)? { Ok(()) } else { Err(GivesUp) }
    }

    /// The same, where it stands there.
    fn takes(&mut self, sign: u8) -> Read<bool> {
        self.skip()?;
        let is_there = self.peek() == Some(sign);
        self.at += usize::from(is_there);
        Ok(is_there)
    }

    /// A comma between two, which may be left out before the end.
    fn comma(&mut self, end: u8) -> Read<()> {
        if self.takes(b',')? || self.peek() == Some(end) { Ok(()) } else { Err(GivesUp) }
    }

    /// A plain word; empty where none stands there. One in other letters than these is not known.
    fn word(&mut self) -> Read<&'de str> {
        self.skip()?;
        let is_letter = |byte: &&u8| byte.is_ascii_alphanumeric() || **byte == b'_';
        let length = self.rest().iter().take_while(is_letter).count();
        let word = self.all.get(self.at..self.at + length).ok_or(GivesUp)?;
        if word.starts_with(|first: char| first.is_ascii_digit()) {
            return Ok("");
        }
        self.at += length;
        // A letter beyond ASCII would go on with it, and "r#" or "r\"" begins something else.
        if self.peek().is_some_and(|byte| !byte.is_ascii() || byte == b'#' || byte == b'"') {
            Err(GivesUp)
        } else {
            Ok(word)
        }
    }

    /// A whole number in digits, with nothing behind it that would make it another.
    fn number<T: std::str::FromStr>(&mut self, signs: &[u8]) -> Read<T> {
        self.skip()?;
        let length = self.rest().iter().take_while(|byte| byte.is_ascii_digit() || signs.contains(byte)).count();
        let digits = self.all.get(self.at..self.at + length).ok_or(GivesUp)?;
        self.at += length;
        let ends = matches!(self.peek(), None | Some(b',' | b')' | b']' | b'}' | b' ' | b'\n' | b'\t' | b'\r'));
        let is_plain = digits.ends_with(|last: char| last.is_ascii_digit())
            && digits.trim_start_matches('-').starts_with(|first: char| first.is_ascii_digit());
        if ends && is_plain { digits.parse().map_err(|_| GivesUp) } else { Err(GivesUp) }
    }

    /// A text between quotation marks.
    fn string<V: Visitor<'de>>(&mut self, visitor: V) -> Read<V::Value> {
        self.take(b'"')?;
        let rest = self.rest();
        let length = rest.iter().position(|byte| matches!(byte, b'"' | b'\\')).ok_or(GivesUp)?;
        let plain = self.all.get(self.at..self.at + length).ok_or(GivesUp)?;
        if rest.get(length) == Some(&b'"') {
            self.at += length + 1;
            return visitor.visit_borrowed_str(plain);
        }
        let mut text = plain.to_owned();
        self.at += length;
        loop {
            match self.peek() {
                Some(b'"') => {
                    self.at += 1;
                    return visitor.visit_string(text);
                }
                Some(b'\\') => {
                    let letter = match self.rest().get(1) {
                        Some(b'n') => '\n',
                        Some(b't') => '\t',
                        Some(b'r') => '\r',
                        Some(b'"') => '"',
                        Some(b'\'') => '\'',
                        Some(b'\\') => '\\',
                        _ => return Err(GivesUp),
                    };
                    text.push(letter);
                    self.at += 2;
                }
                _ => {
                    let rest = self.rest();
                    let length = rest.iter().position(|byte| matches!(byte, b'"' | b'\\')).ok_or(GivesUp)?;
                    text.push_str(self.all.get(self.at..self.at + length).ok_or(GivesUp)?);
                    self.at += length;
                }
            }
        }
    }
}

macro_rules! numbers {
    ($($method:ident $visit:ident $signs:literal)*) => {$(
        fn $method<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
            visitor.$visit(self.number($signs)?)
        }
    )*};
}

impl<'de> de::Deserializer<'de> for &mut Text<'de> {
    type Error = GivesUp;

    numbers! {
        deserialize_i8 visit_i8 b"-"
        deserialize_i16 visit_i16 b"-"
        deserialize_i32 visit_i32 b"-"
        deserialize_i64 visit_i64 b"-"
        deserialize_u8 visit_u8 b""
        deserialize_u16 visit_u16 b""
        deserialize_u32 visit_u32 b""
        deserialize_u64 visit_u64 b""
        deserialize_f64 visit_f64 b"-."
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        match self.word()? {
            "true" => visitor.visit_bool(true),
            "false" => visitor.visit_bool(false),
            _ => Err(GivesUp),
        }
    }

    fn deserialize_str<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.string(visitor)
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.string(visitor)
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.skip()?;
        let before = self.at;
        // A word may be a name of what is there; that it is there need not be said.
        if self.peek().is_some_and(|byte| byte.is_ascii_alphabetic()) {
            match self.word()? {
                "None" => return visitor.visit_none(),
                "Some" => return Err(GivesUp),
                _ => self.at = before,
            }
        }
        visitor.visit_some(self)
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.take(b'[')?;
        let value = visitor.visit_seq(List { text: self, end: b']' })?;
        self.take(b']')?;
        Ok(value)
    }

    fn deserialize_tuple<V: Visitor<'de>>(self, _: usize, visitor: V) -> Read<V::Value> {
        self.take(b'(')?;
        let value = visitor.visit_seq(List { text: self, end: b')' })?;
        self.take(b')')?;
        Ok(value)
    }

    fn deserialize_map<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        let is_left_out = std::mem::take(&mut self.is_left_out_next);
        self.take(b'{')?;
        if is_left_out {
            let (.., inside) = self.left_out.take().ok_or(GivesUp)?;
            if inside != self.at {
                return Err(GivesUp);
            }
            self.has_left_out = true;
        }
        let value = visitor.visit_map(Map { text: self })?;
        self.take(b'}')?;
        Ok(value)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        name: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Read<V::Value> {
        let word = self.word()?;
        if !word.is_empty() && word != name {
            return Err(GivesUp);
        }
        self.take(b'(')?;
        let value = visitor.visit_map(Struct { text: self, name })?;
        self.take(b')')?;
        Ok(value)
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Read<V::Value> {
        visitor.visit_enum(Variant { text: self })
    }

    fn deserialize_identifier<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        match self.word()? {
            "" => Err(GivesUp),
            word => visitor.visit_borrowed_str(word),
        }
    }

    /// What says nothing of what it wants to be is a text, or not known.
    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.string(visitor)
    }

    serde::forward_to_deserialize_any! {
        i128 u128 f32 char bytes byte_buf unit unit_struct newtype_struct tuple_struct ignored_any
    }
}

/// Things one after another.
struct List<'a, 'de> {
    text: &'a mut Text<'de>,
    end: u8,
}

impl<'de> de::SeqAccess<'de> for List<'_, 'de> {
    type Error = GivesUp;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Read<Option<T::Value>> {
        self.text.skip()?;
        if self.text.peek() == Some(self.end) {
            return Ok(None);
        }
        let value = seed.deserialize(&mut *self.text)?;
        self.text.comma(self.end)?;
        Ok(Some(value))
    }
}

/// Entries of a map.
struct Map<'a, 'de> {
    text: &'a mut Text<'de>,
}

impl<'de> de::MapAccess<'de> for Map<'_, 'de> {
    type Error = GivesUp;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Read<Option<K::Value>> {
        self.text.skip()?;
        if self.text.peek() == Some(b'}') { Ok(None) } else { seed.deserialize(&mut *self.text).map(Some) }
    }

    fn next_value_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Read<T::Value> {
        self.text.take(b':')?;
        let value = seed.deserialize(&mut *self.text)?;
        self.text.comma(b'}')?;
        Ok(value)
    }
}

/// Fields of a struct.
struct Struct<'a, 'de> {
    text: &'a mut Text<'de>,
    name: &'static str,
}

impl<'de> de::MapAccess<'de> for Struct<'_, 'de> {
    type Error = GivesUp;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Read<Option<K::Value>> {
        self.text.skip()?;
        if self.text.peek() == Some(b')') {
            return Ok(None);
        }
        let field = self.text.word()?;
        if field.is_empty() {
            return Err(GivesUp);
        }
        if let Some((of, left_out, _)) = self.text.left_out {
            self.text.is_left_out_next = of == self.name && left_out == field;
        }
        seed.deserialize(field.into_deserializer()).map(Some)
    }

    fn next_value_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Read<T::Value> {
        self.text.take(b':')?;
        let value = seed.deserialize(&mut *self.text)?;
        self.text.comma(b')')?;
        Ok(value)
    }
}

/// One of several kinds.
struct Variant<'a, 'de> {
    text: &'a mut Text<'de>,
}

impl<'de> de::EnumAccess<'de> for Variant<'_, 'de> {
    type Error = GivesUp;
    type Variant = Self;

    fn variant_seed<V: DeserializeSeed<'de>>(self, seed: V) -> Read<(V::Value, Self)> {
        let value = seed.deserialize(&mut *self.text)?;
        Ok((value, self))
    }
}

impl<'de> de::VariantAccess<'de> for Variant<'_, 'de> {
    type Error = GivesUp;

    fn unit_variant(self) -> Read<()> {
        Ok(())
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Read<T::Value> {
        self.text.take(b'(')?;
        let value = seed.deserialize(&mut *self.text)?;
        self.text.comma(b')')?;
        self.text.take(b')')?;
        Ok(value)
    }

    fn tuple_variant<V: Visitor<'de>>(self, length: usize, visitor: V) -> Read<V::Value> {
        de::Deserializer::deserialize_tuple(self.text, length, visitor)
    }

    fn struct_variant<V: Visitor<'de>>(self, _: &'static [&'static str], visitor: V) -> Read<V::Value> {
        self.text.take(b'(')?;
        let value = visitor.visit_map(Struct { text: &mut *self.text, name: "" })?;
        self.text.take(b')')?;
        Ok(value)
    }
}
