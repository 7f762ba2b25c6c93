//! Texts of which a farm holds the same many times over: names, crops, people, products. A log of many seasons says "Yard well" a hundred
//! thousand times; read from a file, all of these are one.

use std::borrow::Borrow;
use std::cell::RefCell;
use std::fmt;
use std::hash::{Hash, Hasher};
use std::ops::Deref;
use std::sync::Arc;

use ecow::EcoString;
use rustc_hash::FxHashSet;
use serde::de::{Deserialize, Deserializer, Error, Visitor};
use serde::ser::{Serialize, Serializer};

use crate::language::t;

/// A text that copies share. It takes a word where it is held; it is not changed, another one is put in its place.
///
/// # Examples
/// ```
/// use tankard_core::farm::Text;
/// let well = Text::from("Yard well");
/// let copy = well.clone();
/// assert!(copy == "Yard well" && copy.len() == 9);
/// assert!(Text::default().is_empty());
/// ```
#[derive(Clone, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Text(Option<Arc<EcoString>>);

impl Text {
    /// An empty text.
    pub const fn new() -> Self {
        Self(None)
    }

    /// Whether there is nothing in it.
    pub const fn is_empty(&self) -> bool {
        self.0.is_none()
    }

    /// The letters.
    pub fn as_str(&self) -> &str {
        self.0.as_ref().map_or("", |text| text.as_str())
    }
}

thread_local! {
    /// The texts that were read so far, while they are being shared. It says where a text lies and never what it is.
    static READ: RefCell<Option<FxHashSet<Text>>> = const { RefCell::new(None) };
}

/// A longer text hardly comes twice, nor does one that comes after so many others.
const LONGEST: usize = 64;
const MOST: usize = 1 << 16;

/// Has equal texts that are read on this thread meanwhile be one and the same.
pub fn sharing<T>(read: impl FnOnce() -> T) -> T {
    let before = READ.replace(Some(FxHashSet::default()));
    let done = read();
    READ.set(before);
    done
}

/// A text as it was read before on this thread, or as it is.
fn shared(text: &str) -> Text {
    if text.len() > LONGEST {
        return text.into();
    }
    READ.with_borrow_mut(|read| {
        let Some(read) = read else { return text.into() };
        if let Some(known) = read.get(text) {
            return known.clone();
        }
        let own = Text::from(text);
        if read.len() < MOST {
            read.insert(own.clone());
        }
        own
    })
}

impl Deref for Text {
    type Target = str;
    fn deref(&self) -> &str {
        self.as_str()
    }
}

impl AsRef<str> for Text {
    fn as_ref(&self) -> &str {
        self
    }
}

impl Borrow<str> for Text {
    fn borrow(&self) -> &str {
        self
    }
}

// As a `str`, for which it may be asked by.
impl Hash for Text {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.as_str().hash(state);
    }
}

impl From<&str> for Text {
    fn from(text: &str) -> Self {
        Self((!text.is_empty()).then(|| Arc::new(text.into())))
    }
}

impl From<String> for Text {
    fn from(text: String) -> Self {
        text.as_str().into()
    }
}

impl From<&String> for Text {
    fn from(text: &String) -> Self {
        text.as_str().into()
    }
}

impl From<&Text> for Text {
    fn from(text: &Text) -> Self {
        text.clone()
    }
}

impl From<Text> for String {
    fn from(text: Text) -> Self {
        text.as_str().to_owned()
    }
}

impl From<&Text> for String {
    fn from(text: &Text) -> Self {
        text.as_str().to_owned()
    }
}

macro_rules! compared {
    ($($other:ty),*) => {$(
        impl PartialEq<$other> for Text {
            fn eq(&self, other: &$other) -> bool {
                self.as_str() == AsRef::<str>::as_ref(other)
            }
        }
        impl PartialEq<Text> for $other {
            fn eq(&self, other: &Text) -> bool {
                AsRef::<str>::as_ref(self) == other.as_str()
            }
        }
    )*};
}
compared!(str, &str, String);

impl fmt::Debug for Text {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Debug::fmt(self.as_str(), f)
    }
}

impl fmt::Display for Text {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self.as_str(), f)
    }
}

impl Serialize for Text {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self)
    }
}

impl<'de> Deserialize<'de> for Text {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Read;

        impl Visitor<'_> for Read {
            type Value = Text;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(t!("quantity-a-string"))
            }

            fn visit_str<E: Error>(self, text: &str) -> Result<Text, E> {
                Ok(shared(text))
            }
        }

        deserializer.deserialize_string(Read)
    }
}

#[cfg(test)]
mod tests {
    use std::collections::HashSet;
    use std::sync::Arc;

    use super::{Text, sharing};

    fn is_one(one: &Text, other: &Text) -> bool {
        matches!((&one.0, &other.0), (Some(one), Some(other)) if Arc::ptr_eq(one, other))
    }

    #[test]
    fn equal_texts_read_together_are_one() {
        let json = r#"["Yard well", "Creek", "Yard well", ""]"#;
        let read = || serde_json::from_str::<Vec<Text>>(json).unwrap();
        let together = sharing(read);
        assert!(is_one(&together[0], &together[2]) && !is_one(&together[0], &together[1]));
        let alone = read();
        assert!(!is_one(&alone[0], &alone[2]));
        assert_eq!(together, alone);
        assert_eq!(serde_json::to_string(&together).unwrap(), json.replace(", ", ","));
        assert!(together[3].is_empty() && size_of::<Text>() == 8);
        // Within one another, too.
        let (one, other) = sharing(|| (sharing(read), read()));
        assert!(!is_one(&one[0], &other[0]) && is_one(&other[0], &other[2]));
    }

    #[test]
    fn it_is_found_and_ordered_as_its_letters_are() {
        let words = ["b", "", "a", "ab", "é"];
        let all: HashSet<Text> = words.into_iter().map(Text::from).collect();
        assert!(words.iter().all(|word| all.contains(*word)));
        let (mut texts, mut plain) = (words.map(Text::from), words);
        texts.sort();
        plain.sort_unstable();
        assert_eq!(texts.map(String::from), plain);
    }
}
