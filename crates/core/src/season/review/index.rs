//! All records laid out flat, once for a document: a page of the review goes over numbers, and looks up no name.

use std::hash::Hash;
use std::ops::Range;

use indexmap::IndexSet;
use jiff::civil::Date;

use super::lay;
use super::planned::Against;
use crate::farm::{AdjuvantClass, Effect, Farm, Id, ProductKind};
use crate::quantity::{ActiveBasis, Amount, Area, Duration, Mass, Money, Share, Volume};
use crate::season::Log;

/// A place in a list; a farm has far fewer than four billion of anything.
pub(super) fn number(at: usize) -> u32 {
    u32::try_from(at).unwrap_or(u32::MAX)
}

/// The place of a thing among others, each once; one that is new comes last.
pub(super) fn place<K: Eq + Hash>(all: &mut IndexSet<K>, thing: K) -> u32 {
    number(all.insert_full(thing).0)
}

/// A field as the records know it.
#[derive(Clone, Debug)]
pub(super) struct FieldInfo {
    pub(super) id: Id,
    /// Its name on the farm, else in the last record of it; empty where a record has no field.
    pub(super) name: String,
    /// The area that can be sprayed, where it is still on the farm.
    pub(super) area: Option<Area>,
    /// Its ground in the records, by day.
    pub(super) ground: Vec<u32>,
}

/// A product as the records know it.
#[derive(Clone, Debug)]
pub(super) struct ProductInfo {
    pub(super) id: Id,
    pub(super) name: String,
}

/// A record.
#[derive(Clone, Debug)]
pub(super) struct Entry {
    pub(super) id: Id,
    pub(super) name: String,
    pub(super) date: Date,
    pub(super) rig: u32,
    pub(super) water: u32,
    pub(super) volume: Option<Volume>,
    /// Of the liquid products in it.
    pub(super) liquid: Volume,
    /// From start to end.
    pub(super) lasted: Option<Duration>,
    /// Which of wind, temperature and humidity were not measured.
    pub(super) unmeasured: [bool; 3],
    /// The adjuvant classes that went out, one bit each in the order of [`AdjuvantClass::ALL`].
    pub(super) classes: u16,
    /// The resistance groups that went out.
    pub(super) groups: Range<u32>,
    /// Against its plan.
    pub(super) against: Against,
}

/// A field of a record.
#[derive(Clone, Debug)]
pub(super) struct Ground {
    pub(super) record: u32,
    pub(super) field: u32,
    pub(super) crop: u32,
    pub(super) area: Area,
    /// With the ground between bands.
    pub(super) driven: Area,
    /// Its part of the record.
    pub(super) share: f64,
    /// Which application of the field it belongs to.
    pub(super) application: u32,
    pub(super) uses: Range<u32>,
}

/// What of a product went on a piece of ground; nothing of it is left out.
#[derive(Clone, Debug)]
pub(super) struct Use {
    pub(super) product: u32,
    pub(super) amount: Amount,
    pub(super) cost: Option<Money>,
    pub(super) kind: Option<ProductKind>,
    pub(super) class: Option<AdjuvantClass>,
    /// Kind and class are those of the shed today.
    pub(super) from_shed: bool,
    /// The record does not say how much active went out, though the product holds one.
    pub(super) silent: bool,
    /// It is a pesticide of which no group is known.
    pub(super) groupless: bool,
    pub(super) actives: Range<u32>,
}

/// A look at a field.
#[derive(Clone, Debug)]
pub(super) struct Rating {
    pub(super) ground: u32,
    pub(super) effect: u32,
    pub(super) days: i32,
    pub(super) share: Share,
}

/// All records, laid out flat.
#[derive(Clone, Debug)]
pub struct Index {
    pub(super) entries: Vec<Entry>,
    pub(super) ground: Vec<Ground>,
    pub(super) uses: Vec<Use>,
    pub(super) masses: Vec<(u32, Mass)>,
    pub(super) in_groups: Vec<u32>,
    pub(super) ratings: Vec<Rating>,
    /// How many ratings are of a field that their record did not spray, or of a day before it.
    pub(super) stray: usize,
    pub(super) fields: Vec<FieldInfo>,
    pub(super) products: Vec<ProductInfo>,
    pub(super) actives: Vec<(String, ActiveBasis)>,
    pub(super) groups: IndexSet<(ProductKind, String)>,
    /// As each was typed first.
    pub(super) effects: Vec<Effect>,
    /// By plain words; `""` where it was not typed. With them the crop as it was first typed.
    pub(super) crops: Vec<(String, String)>,
    pub(super) rigs: IndexSet<String>,
    pub(super) waters: IndexSet<String>,
    /// The fields that are on the farm, with what of them can be sprayed.
    pub(super) farm_fields: Vec<(Id, Area)>,
}

impl Index {
    /// Lays the records out. It takes some hundred times as long as a page, so keep it as long as the farm does not change.
    pub fn of(farm: &Farm) -> Self {
        lay::out(farm)
    }

    /// Lays out the records of a field alone; what it says of other fields is not the whole.
    pub fn on_field(farm: &Farm, log: &Log, field: &str) -> Self {
        lay::of(farm, log.on_field(farm, field), log.places(field).len())
    }

    /// The resistance groups that went out with each record, in its order.
    pub(in crate::season) fn groups(&self) -> impl Iterator<Item = Vec<(ProductKind, &str)>> {
        self.entries.iter().map(|entry| {
            let groups = super::slice(&self.in_groups, &entry.groups).iter();
            let group = |at: &u32| self.groups.get_index(*at as usize).map(|(kind, group)| (*kind, group.as_str()));
            groups.filter_map(group).collect()
        })
    }

    /// Products by name with a count of each; those with none are left out.
    pub(super) fn counted(&self, counts: Vec<usize>) -> Vec<(String, usize)> {
        let counted = self.products.iter().zip(counts).filter(|(_, count)| *count > 0);
        counted.map(|(product, count)| (product.name.clone(), count)).collect()
    }

    /// The seasons of which there are records, the first one first. A season is a calendar year.
    pub fn seasons(&self) -> Vec<i16> {
        let mut years: Vec<i16> = self.entries.iter().map(|entry| entry.date.year()).collect();
        years.sort_unstable();
        years.dedup();
        years
    }

    /// The fields of the records: id and name.
    pub fn fields(&self) -> impl Iterator<Item = (&Id, &str)> {
        self.fields.iter().filter(|field| !field.id.is_empty()).map(|field| (&field.id, field.name.as_str()))
    }

    /// The crops of the records, as typed; empty for ground whose crop was not typed.
    pub fn crops(&self) -> impl Iterator<Item = &str> {
        self.crops.iter().map(|(_, crop)| crop.as_str())
    }
}

/// The bit of an adjuvant class.
pub(super) fn bit(class: AdjuvantClass) -> u16 {
    AdjuvantClass::ALL.iter().position(|other| *other == class).map_or(0, |at| 1 << at)
}

/// The classes of some bits.
pub(super) fn classes(bits: u16) -> Vec<AdjuvantClass> {
    AdjuvantClass::ALL.into_iter().filter(|class| bits & bit(*class) != 0).collect()
}
