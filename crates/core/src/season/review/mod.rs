//! The season review: what the records of a season, or of several, come to. Pure functions from the records to plain data that a
//! screen or a sheet of paper draws.
//!
//! The farm's records are laid out once ([`Index::of`]); a choice of days, fields and crops picks ground of them
//! ([`Index::pick`]); each page is a function of what is picked. What cannot be counted is told beside the sums: a price that
//! was not typed is no price of zero. Nothing here says why something came about.

pub mod actives;
pub mod adjuvants;
pub mod compare;
pub mod cost;
pub(crate) mod effects;
pub mod figures;
mod index;
mod lay;
pub mod outcomes;
pub mod passes;
pub mod planned;
pub mod products;
pub mod remarks;
pub mod resistance;
pub mod weather;
pub mod words;
pub mod work;

pub use actives::{ActiveRow, Actives, OnField};
pub use adjuvants::{Adjuvants, ClassRow};
pub use cost::{Cost, CostRow};
pub use figures::Figures;
pub use index::Index;
pub use outcomes::{Outcomes, RatedRow, effects};
pub use passes::{Distinct, Month, Passes, Year};
pub use planned::{BARS, Errors, Planned, Worst};
pub use products::{ProductRow, Products};
pub use resistance::{Again, FieldGroups, GroupRow, Repeat, Resistance};
pub use work::{RigRow, WaterRow, Work};

use jiff::civil::Date;

use crate::farm::crop::key;
use crate::farm::{Farm, Id};
use crate::quantity::{Amount, Mass, Money, Volume};
use index::{Entry, Ground, Use, number};

/// Which records a review looks at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// From which day on.
    pub from: Date,
    /// Up to and including which day.
    pub to: Date,
    /// Which fields; empty for all, also for ground without a field.
    pub fields: Vec<Id>,
    /// Which crops, as typed; `""` for ground whose crop was not typed; none for all.
    pub crops: Vec<String>,
}

impl Choice {
    /// Everything.
    pub const fn all() -> Self {
        Self { from: Date::MIN, to: Date::MAX, fields: Vec::new(), crops: Vec::new() }
    }

    /// One season: a calendar year.
    pub fn season(year: i16) -> Self {
        Self::seasons(year, year)
    }

    /// Several seasons, both ends included.
    pub fn seasons(first: i16, last: i16) -> Self {
        Self {
            from: Date::new(first, 1, 1).unwrap_or(Date::MIN),
            to: Date::new(last, 12, 31).unwrap_or(Date::MAX),
            ..Self::all()
        }
    }
}

/// The ground that a choice picks.
#[derive(Clone, Debug)]
pub struct Picked<'a> {
    index: &'a Index,
    choice: Choice,
    ground: Vec<u32>,
    /// Records of which any ground is picked, in the farm's order.
    records: Vec<u32>,
}

impl Index {
    /// Picks ground.
    pub fn pick(&self, choice: &Choice) -> Picked<'_> {
        let fields: Vec<bool> =
            self.fields.iter().map(|field| choice.fields.is_empty() || choice.fields.contains(&field.id)).collect();
        let wanted: Vec<String> = choice.crops.iter().map(|crop| key(crop)).collect();
        let crops: Vec<bool> = self.crops.iter().map(|(crop, _)| wanted.is_empty() || wanted.contains(crop)).collect();
        let is = |all: &[bool], at: u32| all.get(at as usize).copied().unwrap_or(false);
        let mut ground = Vec::new();
        let mut records = Vec::new();
        for (at, piece) in self.ground.iter().enumerate() {
            let in_time = self
                .entries
                .get(piece.record as usize)
                .is_some_and(|entry| (choice.from..=choice.to).contains(&entry.date));
            if in_time && is(&fields, piece.field) && is(&crops, piece.crop) {
                ground.push(number(at));
                if records.last() != Some(&piece.record) {
                    records.push(piece.record);
                }
            }
        }
        Picked { index: self, choice: choice.clone(), ground, records }
    }
}

impl<'a> Picked<'a> {
    /// How many records there are of it.
    pub fn records(&self) -> usize {
        self.records.len()
    }

    /// The records of it, in the farm's order.
    pub fn ids(&self) -> impl Iterator<Item = &'a Id> {
        self.entries().map(|(_, entry)| &entry.id)
    }

    fn entries(&self) -> impl Iterator<Item = (u32, &'a Entry)> {
        let index = self.index;
        self.records.iter().filter_map(|at| Some((*at, index.entries.get(*at as usize)?)))
    }

    fn ground(&self) -> impl Iterator<Item = (u32, &'a Ground, &'a Entry)> {
        let index = self.index;
        self.ground.iter().filter_map(|at| {
            let ground = index.ground.get(*at as usize)?;
            Some((*at, ground, index.entries.get(ground.record as usize)?))
        })
    }

    /// Of all fields, on which some ground is picked.
    fn on_fields(&self) -> Vec<bool> {
        let mut on = vec![false; self.index.fields.len()];
        for (_, ground, _) in self.ground() {
            if let Some(here) = on.get_mut(ground.field as usize) {
                *here = true;
            }
        }
        on
    }

    /// Of all ground, which is picked.
    fn taken(&self) -> Vec<bool> {
        let mut taken = vec![false; self.index.ground.len()];
        for at in &self.ground {
            if let Some(here) = taken.get_mut(*at as usize) {
                *here = true;
            }
        }
        taken
    }

    /// What went on it, with the ground and its record.
    fn uses(&self) -> impl Iterator<Item = (&'a Use, &'a Ground, &'a Entry)> {
        let index = self.index;
        self.ground().flat_map(|(_, ground, entry)| index.uses_of(ground).iter().map(move |used| (used, ground, entry)))
    }
}

impl Index {
    fn uses_of(&self, ground: &Ground) -> &[Use] {
        slice(&self.uses, &ground.uses)
    }
}

fn slice<'a, T>(all: &'a [T], range: &std::ops::Range<u32>) -> &'a [T] {
    all.get(range.start as usize..range.end as usize).unwrap_or_default()
}

/// Liquid and dry amounts, apart.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Amounts {
    /// What was recorded by volume.
    pub liquid: Option<Volume>,
    /// What was recorded by mass.
    pub dry: Option<Mass>,
}

impl Amounts {
    fn add(&mut self, amount: Amount) {
        match amount {
            Amount::Volume(volume) => self.liquid = Some(self.liquid.unwrap_or(Volume::ZERO) + volume),
            Amount::Mass(mass) => self.dry = Some(self.dry.unwrap_or(Mass::ZERO) + mass),
        }
    }

    /// Each that there is.
    pub fn each(&self) -> impl Iterator<Item = Amount> {
        self.liquid.map(Amount::Volume).into_iter().chain(self.dry.map(Amount::Mass))
    }
}

/// Money that was spent, and how often it is not known.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Spent {
    /// The sum of what has a price.
    pub money: Money,
    /// How many uses are in it: products of records, counted for each field.
    pub priced: usize,
    /// How many uses have no price that fits their amount, and are not in the sum.
    pub without_price: usize,
}

impl Spent {
    fn add(&mut self, cost: Option<Money>) {
        match cost {
            Some(cost) => (self.money, self.priced) = (self.money.plus(cost), self.priced + 1),
            None => self.without_price += 1,
        }
    }

    fn plus(self, other: Self) -> Self {
        Self {
            money: self.money.plus(other.money),
            priced: self.priced + other.priced,
            without_price: self.without_price + other.without_price,
        }
    }
}

/// All pages that need no further choice.
#[derive(Clone, Debug, PartialEq)]
pub struct Review {
    /// Passes and ground over time.
    pub passes: Passes,
    /// Products.
    pub products: Products,
    /// Actives.
    pub actives: Actives,
    /// Resistance groups by field.
    pub resistance: Resistance,
    /// Adjuvants by class.
    pub adjuvants: Adjuvants,
    /// Planned against applied.
    pub planned: Planned,
    /// What of the weather was not measured.
    pub unmeasured: weather::Unmeasured,
    /// What it cost.
    pub cost: Cost,
    /// Water and hours.
    pub work: Work,
    /// Ratings by adjuvants.
    pub outcomes: Outcomes,
}

/// All pages that need no further choice, of what is picked. A screen that shows one of them asks for that one.
pub fn review(picked: &Picked<'_>) -> Review {
    Review {
        passes: passes::page(picked),
        products: products::page(picked),
        actives: actives::page(picked),
        resistance: resistance::page(picked),
        adjuvants: adjuvants::page(picked),
        planned: planned::page(picked),
        unmeasured: weather::unmeasured(picked),
        cost: cost::page(picked),
        work: work::page(picked),
        outcomes: outcomes::page(picked),
    }
}

/// The same from a farm, where it is asked once.
///
/// # Examples
/// ```
/// use tankard_core::farm::Farm;
/// use tankard_core::season::review::{Choice, of_farm};
/// assert_eq!(of_farm(&Farm::new("Test"), &Choice::season(2031)).passes.passes, 0);
/// ```
pub fn of_farm(farm: &Farm, choice: &Choice) -> Review {
    review(&Index::of(farm).pick(choice))
}
