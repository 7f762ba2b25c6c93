//! A signature under a record, and what was changed after it.

use jiff::civil::DateTime;
use serde::{Deserialize, Serialize};

use super::Text;

/// A signature. From then on the record is amended, not edited.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Signature {
    /// Who signed.
    pub by: Text,
    /// When, by the farm's clock.
    pub at: DateTime,
    /// The seal over the record as it was signed: SHA-256 in hexadecimal digits.
    pub hash: String,
}

/// A change of a signed record.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Amendment {
    /// Who changed it.
    pub by: String,
    /// When, by the farm's clock.
    pub at: DateTime,
    /// Why.
    pub why: String,
    /// What, in the order in which it is done.
    pub changes: Vec<Change>,
    /// The seal over the seal before it, this amendment and the record as it then stood.
    pub hash: String,
}

/// One value changed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Change {
    /// Which: the way to it by names and numbers, "/fields/mill-field/area" (a JSON Pointer, RFC 6901).
    pub what: String,
    /// What stood there before; none where nothing did.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub was: Option<Said>,
    /// What stands there now; none where nothing does.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub is: Option<Said>,
}

/// A value of a record.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Said {
    /// A text or a quantity, as it was typed.
    Text(String),
    /// Anything else, such as a whole line, as JSON.
    Json(String),
}
