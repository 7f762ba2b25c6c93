//! How the farm keeps its records: for which rules, and what it asks for on top.

use indexmap::IndexMap;
use serde::{Deserialize, Serialize};

use super::{Id, is_default};

/// How records are kept.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Keeping {
    /// The record profiles kept to, by their keys in `assets/record-profiles.csv`; empty for the plain one.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub profiles: Vec<Id>,
    /// What the farm asks for on top, by key.
    #[serde(default, skip_serializing_if = "IndexMap::is_empty", deserialize_with = "super::unique::map")]
    pub own: IndexMap<Id, OwnElement>,
    /// Who keeps the records: name of the business.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub holder: String,
    /// Its address.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub address: String,
    /// Its number with the authority.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub number: String,
}

/// An element of a record that the farm asks for.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OwnElement {
    /// What it is called.
    pub name: String,
    /// Who asks for it: a law, a buyer, a scheme.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub asked_by: String,
    /// Days after the application by which it is due.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub due_days: Option<u32>,
    /// Only where a restricted-use product went out.
    #[serde(default, skip_serializing_if = "is_default")]
    pub restricted_only: bool,
}
