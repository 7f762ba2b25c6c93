//! A quantity together with the text it was typed as.
//!
//! The text is what is saved, digit for digit; the value is what is computed with. Both come into being together, so
//! they can never disagree.

use std::fmt;
use std::marker::PhantomData;
use std::ops::Deref;

use crate::language::t;

use ecow::EcoString;
use serde::de::{Error, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::{Quantity, QuantityError, Units};

/// A quantity as a person typed it.
///
/// ```
/// use tankard_core::quantity::{Area, AsTyped};
/// let area: AsTyped<Area> = AsTyped::parse("74,6 ac")?;
/// assert_eq!(area.text(), "74,6 ac");
/// assert!((area.to_acres() - 74.6).abs() < 1e-9);
/// # Ok::<(), tankard_core::quantity::QuantityError>(())
/// ```
#[derive(Clone)]
pub struct AsTyped<Q> {
    /// What people type is short and lies in here; a farm of many seasons has millions of them.
    text: EcoString,
    value: Q,
}

impl<Q: Quantity> AsTyped<Q> {
    /// Reads a text.
    ///
    /// # Errors
    /// As [`Quantity::parse`].
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        let value = Q::parse(text)?;
        Ok(Self { text: text.into(), value })
    }

    /// A text with the value it stands for, where the program itself writes both.
    pub(crate) fn of(text: &str, value: Q) -> Self {
        Self { text: text.into(), value }
    }

    /// The text as it was typed.
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The value it was read as.
    pub fn value(&self) -> Q {
        self.value.clone()
    }

    /// The value in a farm's usual units.
    pub fn show(&self, units: Units) -> String {
        self.value.show(units)
    }
}

impl<Q> Deref for AsTyped<Q> {
    type Target = Q;
    fn deref(&self) -> &Q {
        &self.value
    }
}

impl<Q> PartialEq for AsTyped<Q> {
    fn eq(&self, other: &Self) -> bool {
        self.text == other.text
    }
}
impl<Q> Eq for AsTyped<Q> {}

impl<Q> fmt::Debug for AsTyped<Q> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:?}", self.text)
    }
}
impl<Q> fmt::Display for AsTyped<Q> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.text)
    }
}

impl<Q> Serialize for AsTyped<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.text)
    }
}
impl<'de, Q: Quantity> Deserialize<'de> for AsTyped<Q> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Text<Q>(PhantomData<Q>);

        impl<Q: Quantity> Visitor<'_> for Text<Q> {
            type Value = AsTyped<Q>;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(t!("quantity-a-string"))
            }

            fn visit_str<E: Error>(self, text: &str) -> Result<AsTyped<Q>, E> {
                AsTyped::parse(text).map_err(E::custom)
            }
        }

        deserializer.deserialize_string(Text(PhantomData))
    }
}
