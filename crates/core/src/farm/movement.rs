//! What came into the shed and went out of it, beside what was sprayed.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use super::{ContainerKind, Id, is_default};
use crate::quantity::{Amount, AsTyped, Price};

/// A movement of a product. What a record sprayed is none: it is reckoned from the record.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Movement {
    /// The product.
    pub product: Id,
    /// The day.
    pub date: Date,
    /// What happened.
    pub what: Moved,
    /// Who wrote it down.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub by: String,
    /// Why, or anything else.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// What moved.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum Moved {
    /// Full containers were bought.
    Bought {
        /// What they are.
        kind: ContainerKind,
        /// What one holds.
        size: AsTyped<Amount>,
        /// How many.
        count: u32,
        /// The lot, as printed on them.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        lot: String,
        /// The price on the bill.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        price: Option<AsTyped<Price>>,
        /// From whom.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        from: String,
    },
    /// Some went out without being sprayed: spilt, lent, handed in.
    Out {
        /// How much.
        amount: AsTyped<Amount>,
        /// The lot it came from; empty where that is not known.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        lot: String,
    },
    /// Some came in without being bought: found, given back.
    In {
        /// How much.
        amount: AsTyped<Amount>,
        /// Its lot; empty where that is not known.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        lot: String,
    },
    /// It was counted, and from then on the count holds.
    Counted {
        /// What the accounts had come to, where that was known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        reckoned: Option<AsTyped<Amount>>,
        /// What was there.
        counted: AsTyped<Amount>,
        /// Whether it was counted after that day's spraying, and not before it.
        #[serde(default, skip_serializing_if = "is_default")]
        after: bool,
        /// The empty containers that stood there, to be given back.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        empties: Vec<Empties>,
    },
    /// Empty containers were given back or handed in for recycling.
    Returned {
        /// What they are.
        kind: ContainerKind,
        /// What one held.
        size: AsTyped<Amount>,
        /// How many.
        count: u32,
        /// To whom.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        to: String,
        /// Whether they were rinsed.
        #[serde(default, skip_serializing_if = "is_default")]
        rinsed: bool,
    },
}

/// Empty containers of one kind and size.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Empties {
    /// What they are.
    pub kind: ContainerKind,
    /// What one held.
    pub size: AsTyped<Amount>,
    /// How many.
    pub count: u32,
}
