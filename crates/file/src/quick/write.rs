//! The quick writer: the text that RON's own writer would make, to the byte.
//!
//! RON's own writer takes most of the time it takes to save a large farm to look at each letter of each text and of each name by itself. This one
//! writes plain letters as they come, and nothing that a farm does not hold: what it does not know makes it give up, and then RON's own
//! writer takes over.

use std::fmt::{self, Display, Write};

use serde::ser::{self, Serialize};

use super::text::GivesUp;

impl ser::Error for GivesUp {
    fn custom<T: Display>(_: T) -> Self {
        Self
    }
}

impl From<fmt::Error> for GivesUp {
    fn from(_: fmt::Error) -> Self {
        Self
    }
}

type Written = Result<(), GivesUp>;

/// A text in the making.
struct Writer {
    out: String,
    /// How deep what is being written stands.
    deep: usize,
    /// How deep each thing has a line of its own.
    lines: usize,
    /// Whether what comes next is told to be there, which is not written.
    is_some: bool,
}

/// Writes something with lines broken so deep; `None` where another writer must.
pub(crate) fn write(what: &impl Serialize, lines: usize) -> Option<String> {
    let mut writer = Writer { out: String::new(), deep: 0, lines, is_some: false };
    what.serialize(&mut writer).ok()?;
    Some(writer.out)
}

/// A blank for each that is not to be written one by one.
const BLANKS: &str = "                                        ";
/// How far a line is set in for each step in depth.
const STEP: usize = 4;

impl Writer {
    /// Words that are written as they are; others are marked, or are none.
    fn name(&mut self, name: &str) -> Written {
        let is_plain = name.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'_')
            && name.starts_with(|first: char| first.is_ascii_alphabetic() || first == '_')
            && !matches!(
                name,
                "true" | "false" | "Some" | "None" | "inf" | "inff32" | "inff64" | "NaN" | "NaNf32" | "NaNf64"
            );
        if is_plain {
            self.out.push_str(name);
            Ok(())
        } else {
            Err(GivesUp)
        }
    }

    fn text(&mut self, text: &str) {
        self.out.push('"');
        let mut rest = text;
        loop {
            let is_plain = |byte: &u8| matches!(byte, b' '..=b'~') && !matches!(byte, b'"' | b'\'' | b'\\');
            let plain = rest.bytes().position(|byte| !is_plain(&byte)).unwrap_or(rest.len());
            let (before, behind) = rest.split_at(plain);
            self.out.push_str(before);
            let mut letters = behind.chars();
            let Some(letter) = letters.next() else { break };
            self.out.extend(letter.escape_debug());
            rest = letters.as_str();
        }
        self.out.push('"');
    }

    fn breaks_lines(&self) -> bool {
        self.deep <= self.lines
    }

    fn set_in(&mut self, steps: usize) {
        let mut blanks = steps * STEP;
        while blanks > 0 {
            let some = blanks.min(BLANKS.len());
            self.out.push_str(BLANKS.get(..some).unwrap_or_default());
            blanks -= some;
        }
    }

    /// Begins something that holds others.
    fn begin(&mut self, sign: char, is_empty: bool, close: char) -> Things<'_> {
        self.is_some = false;
        self.out.push(sign);
        self.deep += 1;
        if self.breaks_lines() && !is_empty {
            self.out.push('\n');
        }
        Things { writer: self, is_empty, has_any: false, close }
    }

    /// Begins something that stands on one line.
    fn begin_in_line(&mut self) -> InLine<'_> {
        self.is_some = false;
        self.out.push('(');
        InLine { writer: self, has_any: false }
    }
}

/// Things that each may stand on a line.
struct Things<'a> {
    writer: &'a mut Writer,
    /// Whether it was said that there is none.
    is_empty: bool,
    has_any: bool,
    close: char,
}

impl Things<'_> {
    /// Goes to where the next one stands.
    fn next(&mut self) -> Written {
        // RON's own writer goes by what it was told.
        if self.is_empty {
            return Err(GivesUp);
        }
        if self.has_any {
            self.writer.out.push_str(if self.writer.breaks_lines() { ",\n" } else { ", " });
        }
        self.has_any = true;
        if self.writer.breaks_lines() {
            self.writer.set_in(self.writer.deep);
        }
        Ok(())
    }

    fn close(self) {
        if self.writer.breaks_lines() && !self.is_empty {
            if self.has_any {
                self.writer.out.push_str(",\n");
            }
            self.writer.set_in(self.writer.deep - 1);
        }
        self.writer.deep -= 1;
        self.writer.out.push(self.close);
    }
}

/// Things on one line.
struct InLine<'a> {
    writer: &'a mut Writer,
    has_any: bool,
}

impl InLine<'_> {
    fn put<T: Serialize + ?Sized>(&mut self, value: &T) -> Written {
        if self.has_any {
            self.writer.out.push_str(", ");
        }
        self.has_any = true;
        value.serialize(&mut *self.writer)
    }

    fn close(self) {
        self.writer.out.push(')');
    }
}

macro_rules! numbers {
    ($($method:ident $number:ty)*) => {$(
        fn $method(self, number: $number) -> Written {
            Ok(write!(self.out, "{number}")?)
        }
    )*};
}

impl<'a> ser::Serializer for &'a mut Writer {
    type Ok = ();
    type Error = GivesUp;
    type SerializeSeq = Things<'a>;
    type SerializeTuple = InLine<'a>;
    type SerializeTupleStruct = InLine<'a>;
    type SerializeTupleVariant = InLine<'a>;
    type SerializeMap = Things<'a>;
    type SerializeStruct = Things<'a>;
    type SerializeStructVariant = Things<'a>;

    numbers! {
        serialize_i8 i8
        serialize_i16 i16
        serialize_i32 i32
        serialize_i64 i64
        serialize_u8 u8
        serialize_u16 u16
        serialize_u32 u32
        serialize_u64 u64
    }

    fn serialize_bool(self, is_so: bool) -> Written {
        self.out.push_str(if is_so { "true" } else { "false" });
        Ok(())
    }

    fn serialize_f64(self, number: f64) -> Written {
        // What is no number has a sign of its own there.
        if number.is_nan() { Err(GivesUp) } else { Ok(write!(self.out, "{number:?}")?) }
    }

    fn serialize_f32(self, _: f32) -> Written {
        Err(GivesUp)
    }

    fn serialize_char(self, _: char) -> Written {
        Err(GivesUp)
    }

    fn serialize_str(self, text: &str) -> Written {
        self.text(text);
        Ok(())
    }

    fn serialize_bytes(self, _: &[u8]) -> Written {
        Err(GivesUp)
    }

    fn serialize_none(self) -> Written {
        // That nothing is there where something may be, of which it is told that it is there.
        if self.is_some {
            return Err(GivesUp);
        }
        self.out.push_str("None");
        Ok(())
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Written {
        self.is_some = true;
        value.serialize(&mut *self)?;
        self.is_some = false;
        Ok(())
    }

    fn serialize_unit(self) -> Written {
        self.out.push_str("()");
        Ok(())
    }

    fn serialize_unit_struct(self, name: &'static str) -> Written {
        self.name(name)
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, variant: &'static str) -> Written {
        self.name(variant)
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, name: &'static str, value: &T) -> Written {
        self.name(name)?;
        self.is_some = false;
        self.out.push('(');
        value.serialize(&mut *self)?;
        self.out.push(')');
        Ok(())
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        value: &T,
    ) -> Written {
        self.serialize_newtype_struct(variant, value)
    }

    fn serialize_seq(self, count: Option<usize>) -> Result<Things<'a>, GivesUp> {
        Ok(self.begin('[', count == Some(0), ']'))
    }

    fn serialize_map(self, count: Option<usize>) -> Result<Things<'a>, GivesUp> {
        Ok(self.begin('{', count == Some(0), '}'))
    }

    fn serialize_tuple(self, _: usize) -> Result<InLine<'a>, GivesUp> {
        Ok(self.begin_in_line())
    }

    fn serialize_tuple_struct(self, name: &'static str, _: usize) -> Result<InLine<'a>, GivesUp> {
        self.name(name)?;
        Ok(self.begin_in_line())
    }

    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        _: usize,
    ) -> Result<InLine<'a>, GivesUp> {
        self.name(variant)?;
        Ok(self.begin_in_line())
    }

    fn serialize_struct(self, name: &'static str, count: usize) -> Result<Things<'a>, GivesUp> {
        self.name(name)?;
        Ok(self.begin('(', count == 0, ')'))
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        count: usize,
    ) -> Result<Things<'a>, GivesUp> {
        self.serialize_struct(variant, count)
    }
}

impl ser::SerializeSeq for Things<'_> {
    type Ok = ();
    type Error = GivesUp;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Written {
        self.next()?;
        value.serialize(&mut *self.writer)
    }

    fn end(self) -> Written {
        self.close();
        Ok(())
    }
}

impl ser::SerializeMap for Things<'_> {
    type Ok = ();
    type Error = GivesUp;

    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Written {
        self.next()?;
        key.serialize(&mut *self.writer)
    }

    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Written {
        self.writer.out.push_str(": ");
        value.serialize(&mut *self.writer)
    }

    fn end(self) -> Written {
        self.close();
        Ok(())
    }
}

impl ser::SerializeStruct for Things<'_> {
    type Ok = ();
    type Error = GivesUp;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, field: &'static str, value: &T) -> Written {
        self.next()?;
        self.writer.name(field)?;
        self.writer.out.push_str(": ");
        value.serialize(&mut *self.writer)
    }

    fn end(self) -> Written {
        self.close();
        Ok(())
    }
}

impl ser::SerializeStructVariant for Things<'_> {
    type Ok = ();
    type Error = GivesUp;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, field: &'static str, value: &T) -> Written {
        ser::SerializeStruct::serialize_field(self, field, value)
    }

    fn end(self) -> Written {
        self.close();
        Ok(())
    }
}

macro_rules! in_line {
    ($($kind:ident $put:ident)*) => {$(
        impl ser::$kind for InLine<'_> {
            type Ok = ();
            type Error = GivesUp;

            fn $put<T: Serialize + ?Sized>(&mut self, value: &T) -> Written {
                self.put(value)
            }

            fn end(self) -> Written {
                self.close();
        Ok(())
            }
        }
    )*};
}
in_line! {
    SerializeTuple serialize_element
    SerializeTupleStruct serialize_field
    SerializeTupleVariant serialize_field
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use ron::ser::PrettyConfig;
    use serde::Serialize;

    use super::write;
    use crate::document::{layout, options};

    #[derive(Serialize)]
    struct Bare;
    #[derive(Serialize)]
    struct Empty {}
    #[derive(Serialize)]
    struct Wrapped(Option<i64>);
    #[derive(Serialize)]
    struct Pair(u8, Option<&'static str>);
    #[derive(Clone, Copy, Serialize)]
    enum Kind {
        Plain,
        Of(f64),
        Two(i8, u16),
        With { list: &'static [u32], maybe: Option<bool> },
    }
    #[derive(Serialize)]
    struct All {
        texts: Vec<String>,
        kinds: Vec<Kind>,
        maps: BTreeMap<String, BTreeMap<String, Vec<Option<Kind>>>>,
        bare: Bare,
        empty: Empty,
        nothing: Option<Empty>,
        something: Option<Vec<u64>>,
        wrapped: [Wrapped; 2],
        pair: (Pair, Pair, ()),
        not_there: Vec<u8>,
    }

    fn all() -> All {
        let mut texts: Vec<String> =
            (0_u32..0x3_0000).step_by(7).filter_map(char::from_u32).map(|letter| format!("a{letter}b")).collect();
        texts.extend((0_u8..=255).map(|byte| format!("{0}{0}", char::from(byte))));
        texts.extend(["", "plain", "l'été \"14\" \\ \u{301}\u{200b}", "// no comment"].map(str::to_owned));
        let kinds = [
            Kind::Plain,
            Kind::Of(0.1),
            Kind::Of(-1e300),
            Kind::Of(f64::INFINITY),
            Kind::Two(-8, 900),
            Kind::With { list: &[], maybe: None },
            Kind::With { list: &[1, 2], maybe: Some(true) },
        ];
        let inner = BTreeMap::from([
            ("a".to_owned(), Vec::new()),
            ("b \"c\"".to_owned(), kinds.into_iter().map(Some).chain([None]).collect()),
        ]);
        All {
            texts,
            kinds: kinds.to_vec(),
            maps: BTreeMap::from([("x".to_owned(), BTreeMap::new()), ("y".to_owned(), inner)]),
            bare: Bare,
            empty: Empty {},
            nothing: None,
            something: Some(vec![0, u64::MAX]),
            wrapped: [Wrapped(None), Wrapped(Some(i64::MIN))],
            pair: (Pair(1, None), Pair(2, Some("two")), ()),
            not_there: Vec::new(),
        }
    }

    // Checked against the writer of the crate `ron`.
    #[test]
    fn it_writes_what_rons_own_writer_writes() {
        for depth in [0, 1, 2, 3, 4, usize::MAX] {
            let plainly = options().to_string_pretty(&all(), layout().depth_limit(depth)).unwrap();
            assert!(write(&all(), depth).unwrap() == plainly, "{depth}");
        }
    }

    #[test]
    fn it_gives_up_where_it_is_not_sure() {
        let plainly = |what: &Option<Option<u8>>| options().to_string_pretty(what, PrettyConfig::new()).unwrap();
        assert_eq!((write(&Some(None::<u8>), 9), plainly(&Some(None)).as_str()), (None, "Some(None)"));
        assert_eq!(write(&Some(Some(3_u8)), 9), Some(plainly(&Some(Some(3)))));
        assert!([f64::NAN, -f64::NAN].iter().all(|number| write(number, 9).is_none()));
        assert!(write(&'a', 9).is_none() && write(&1.5_f32, 9).is_none());
    }
}
