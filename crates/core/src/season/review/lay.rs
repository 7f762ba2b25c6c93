//! How records are laid out flat.
//!
//! What a record put out is shared among its fields ([`shares()`]). A record without a field stands as one piece of ground without
//! a name.

use std::collections::HashMap;

use indexmap::IndexSet;

use super::super::application::Applications;
use super::super::shares::{FieldShare, shares};
use super::super::trials::days_after;
use super::index::{Entry, FieldInfo, Ground, Index, ProductInfo, Rating, Use, bit, number, place};
use super::{effects, planned};
use crate::farm::crop::key;
use crate::farm::{AdjuvantClass, Effect, Farm, Id, ProductKind, Record, RecordField, RecordLine};
use crate::label::groups;
use crate::mix::actives;
use crate::quantity::{ActiveBasis, Amount, Area, AsTyped, Duration, Volume};

/// Lays out all records of a farm.
pub(super) fn out(farm: &Farm) -> Index {
    of(farm, farm.records.iter(), farm.records.len())
}

/// Lays out some records of a farm, about so many, in its order.
pub(super) fn of<'a>(farm: &'a Farm, records: impl Iterator<Item = (&'a Id, &'a Record)>, many: usize) -> Index {
    let mut build = Build::new(farm, many);
    for (id, record) in records {
        build.record(id, record);
    }
    build.finish()
}

/// The index while it grows.
struct Build<'a> {
    farm: &'a Farm,
    index: Index,
    fields: IndexSet<&'a str>,
    products: IndexSet<&'a str>,
    crops: HashMap<&'a str, u32>,
    plain_crops: IndexSet<String>,
    actives: IndexSet<(String, ActiveBasis)>,
    names: HashMap<(&'a str, ActiveBasis), u32>,
    effects: HashMap<&'a Effect, u32>,
    /// What groups a name, a typed group and a kind mean.
    meant: HashMap<(&'a str, &'a str, ProductKind), Vec<u32>>,
    /// The applications so far, by field.
    open: HashMap<u32, Applications<'a>>,
    applications: u32,
}

impl<'a> Build<'a> {
    fn new(farm: &'a Farm, many: usize) -> Self {
        let index = Index {
            entries: Vec::with_capacity(many),
            ground: Vec::with_capacity(many),
            uses: Vec::with_capacity(many * 4),
            masses: Vec::with_capacity(many * 4),
            in_groups: Vec::new(),
            ratings: Vec::new(),
            stray: 0,
            fields: Vec::new(),
            products: Vec::new(),
            actives: Vec::new(),
            groups: IndexSet::new(),
            effects: Vec::new(),
            crops: Vec::new(),
            rigs: IndexSet::new(),
            waters: IndexSet::new(),
            farm_fields: farm.fields.iter().map(|(id, field)| (id.clone(), field.sprayable())).collect(),
        };
        Self {
            farm,
            index,
            fields: IndexSet::new(),
            products: IndexSet::new(),
            crops: HashMap::new(),
            plain_crops: IndexSet::new(),
            actives: IndexSet::new(),
            names: HashMap::new(),
            effects: HashMap::new(),
            meant: HashMap::new(),
            open: HashMap::new(),
            applications: 0,
        }
    }

    fn record(&mut self, id: &'a Id, record: &'a Record) {
        let at = number(self.index.entries.len());
        let shares = shares(record);
        let first_ground = self.index.ground.len();
        for ((field_id, field), share) in record.fields.iter().zip(shares) {
            let number = self.field(field_id, &field.name);
            let driven = super::super::driven_over(self.farm, record, field_id).unwrap_or(Area::ZERO);
            let application = self.application(number, field_id, record, driven);
            let crop = self.crop(self.crop_of(record, field_id, field));
            self.ground(
                record,
                share,
                Ground {
                    record: at,
                    field: number,
                    crop,
                    area: field.area.value(),
                    driven,
                    share: share.fraction(),
                    application,
                    uses: 0..0,
                },
            );
        }
        if record.fields.is_empty() {
            let (field, crop, application) = (self.field("", ""), self.crop(""), self.next_application());
            let none = (Area::ZERO, Area::ZERO);
            let uses = 0..0;
            self.ground(
                record,
                FieldShare::WHOLE,
                Ground { record: at, field, crop, area: none.0, driven: none.1, share: 1.0, application, uses },
            );
        }
        for outcome in &record.outcomes {
            let (Some(effect), Some(rating)) = (&outcome.effect, &outcome.rating) else { continue };
            let ground =
                (first_ground..self.index.ground.len()).zip(record.fields.keys()).find(|(_, id)| **id == outcome.field);
            let days = days_after(record, outcome.date);
            match ground.filter(|_| days >= 0) {
                Some((ground, _)) => {
                    let effect = self.effect(effect);
                    self.index.ratings.push(Rating { ground: number(ground), effect, days, share: rating.value() });
                }
                None => self.index.stray += 1,
            }
        }
        let first_group = self.index.in_groups.len();
        self.groups(record, first_group);
        let lasted = record.start.zip(record.ended()).and_then(|(start, end)| {
            let seconds = record.date.to_datetime(start).until(end).ok()?.total(jiff::Unit::Second).ok()?;
            (seconds > 0.0).then(|| Duration::from_seconds(seconds))
        });
        let entry = Entry {
            id: id.clone(),
            name: record.name.to_string(),
            date: record.date,
            rig: place(&mut self.index.rigs, record.rig.trim().to_owned()),
            water: place(&mut self.index.waters, record.water.trim().to_owned()),
            volume: record.volume.as_ref().map(AsTyped::value),
            liquid: record
                .lines
                .iter()
                .map(|line| if let Amount::Volume(v) = line.amount.value() { v } else { Volume::ZERO })
                .sum(),
            lasted,
            unmeasured: [record.wind.is_none(), record.temperature.is_none(), record.humidity.is_none()],
            classes: self.classes(record),
            groups: number(first_group)..number(self.index.in_groups.len()),
            against: planned::against(record, |line| place(&mut self.products, line.product.as_str())),
        };
        self.index.entries.push(entry);
        self.names_of_products(record);
    }

    fn ground(&mut self, record: &'a Record, share: FieldShare, mut ground: Ground) {
        let first = self.index.uses.len();
        for line in record.lines.iter().filter(|line| !line.amount.is_zero()) {
            let (kind, class, from_shed) = self.kind(line);
            let product = self.farm.products.get(&line.product);
            let first_active = self.index.masses.len();
            for active in &line.actives {
                let number = self.active(&active.name, active.basis);
                self.index.masses.push((number, active.mass.value() * ground.share));
            }
            let holds = || product.is_some_and(|product| product.kind.holds_actives() && !product.actives.is_empty());
            let cost = line
                .price
                .as_ref()
                .and_then(|price| price.of(line.amount.value()))
                .and_then(|cost| share.of_money(cost));
            let grouped =
                matches!(kind, Some(ProductKind::Herbicide | ProductKind::Fungicide | ProductKind::Insecticide));
            let used = Use {
                product: place(&mut self.products, &line.product),
                amount: line.amount.value().times(ground.share),
                cost,
                kind,
                class,
                from_shed,
                silent: line.actives.is_empty() && holds(),
                groupless: grouped && self.groups_of(line).is_empty(),
                actives: number(first_active)..number(self.index.masses.len()),
            };
            self.index.uses.push(used);
        }
        ground.uses = number(first)..number(self.index.uses.len());
        self.index.ground.push(ground);
    }

    /// Kind and class as recorded, else those of the shed today.
    fn kind(&self, line: &RecordLine) -> (Option<ProductKind>, Option<AdjuvantClass>, bool) {
        if let Some(kind) = line.kind {
            return (Some(kind), line.class.filter(|_| !kind.is_pesticide()), false);
        }
        let product = self.farm.products.get(&line.product);
        let class = line.class.or_else(|| product?.adjuvant_class());
        (product.map(|product| product.kind), class, product.is_some())
    }

    fn classes(&self, record: &Record) -> u16 {
        let classes = record.lines.iter().filter(|line| !line.amount.is_zero()).filter_map(|line| self.kind(line).1);
        classes.fold(0, |bits, class| bits | bit(class))
    }

    fn groups(&mut self, record: &'a Record, first: usize) {
        for line in record.lines.iter().filter(|line| !line.amount.is_zero()) {
            for group in self.groups_of(line) {
                // A mix of two products of one group is one of it.
                if !self.index.in_groups.iter().skip(first).any(|other| *other == group) {
                    self.index.in_groups.push(group);
                }
            }
        }
    }

    /// The groups of a line: of its actives as recorded, else of the product as it is now. Group 0, unknown, is none.
    fn groups_of(&mut self, line: &'a RecordLine) -> Vec<u32> {
        let kind = self.kind(line).0;
        let product = self.farm.products.get(&line.product);
        let recorded = line.actives.iter().map(|active| (active.name.as_str(), active.group.as_str()));
        let now =
            product.filter(|_| line.actives.is_empty()).map(|product| product.actives.as_slice()).unwrap_or_default();
        let now = now.iter().map(|active| (active.name.as_str(), active.group.as_str()));
        let mut all = Vec::new();
        for (name, typed) in recorded.chain(now) {
            // Of a product that is gone from the shed, the table of actives tells the herbicides.
            let known = || actives::facts(name).map(|_| ProductKind::Herbicide);
            let Some(kind) = kind.or_else(known).filter(|kind| kind.is_pesticide()) else { continue };
            let index = &mut self.index;
            let meant = self.meant.entry((name, typed, kind)).or_insert_with(|| {
                let groups = groups::groups(name, typed).into_iter().map(|group| groups::of_today(kind, group));
                groups.filter(|group| group != "0").map(|group| place(&mut index.groups, (kind, group))).collect()
            });
            for group in meant {
                if !all.contains(group) {
                    all.push(*group);
                }
            }
        }
        all
    }

    fn effect(&mut self, effect: &'a Effect) -> u32 {
        if let Some(at) = self.effects.get(effect) {
            return *at;
        }
        let known = self.index.effects.iter().position(|other| effects::same(other, effect));
        let at = number(known.unwrap_or(self.index.effects.len()));
        if known.is_none() {
            self.index.effects.push(effect.clone());
        }
        self.effects.insert(effect, at);
        at
    }

    fn active(&mut self, name: &'a str, basis: ActiveBasis) -> u32 {
        if let Some(at) = self.names.get(&(name, basis)) {
            return *at;
        }
        let at = place(&mut self.actives, (actives::key(name).into_owned(), basis));
        if self.index.actives.len() <= at as usize {
            let shown = actives::facts(name).map_or_else(|| name.trim().to_owned(), |facts| facts.name.clone());
            self.index.actives.push((shown, basis));
        }
        self.names.insert((name, basis), at);
        at
    }

    fn names_of_products(&mut self, record: &Record) {
        for line in &record.lines {
            let Some(at) = self.products.get_index_of(line.product.as_str()) else { continue };
            // Numbers are given in order, so at most some of this record's are new.
            while self.index.products.len() <= at {
                let id = self.products.get_index(self.index.products.len()).copied().unwrap_or_default().to_owned();
                let name = self.farm.products.get(&id).map(|product| product.name.clone()).unwrap_or_default();
                self.index.products.push(ProductInfo { id, name });
            }
            if let Some(info) =
                self.index.products.get_mut(at).filter(|info| !self.farm.products.contains_key(&info.id))
            {
                info.name = line.name.to_string();
            }
        }
    }

    fn field(&mut self, id: &'a str, name: &str) -> u32 {
        let at = place(&mut self.fields, id);
        let now = self.farm.fields.get(id);
        if self.index.fields.len() <= at as usize {
            let info = FieldInfo {
                id: id.to_owned(),
                name: now.map_or(name, |field| &field.name).to_owned(),
                area: now.map(crate::farm::Field::sprayable),
                ground: Vec::new(),
            };
            self.index.fields.push(info);
        } else if let (None, Some(info)) = (now, self.index.fields.get_mut(at as usize)) {
            name.clone_into(&mut info.name);
        }
        at
    }

    /// The crop as recorded, else as the closed season has it. The crop that grows now says nothing of another year.
    fn crop_of(&self, record: &Record, id: &Id, field: &'a RecordField) -> &'a str {
        if !field.crop.trim().is_empty() || self.farm.closed.is_empty() {
            return field.crop.trim();
        }
        let closed = self.farm.closed.get(&record.date.year().to_string());
        closed.and_then(|season| season.crops.get(id)).map_or("", |crop| crop.trim())
    }

    fn crop(&mut self, crop: &'a str) -> u32 {
        if let Some(at) = self.crops.get(crop) {
            return *at;
        }
        let at = place(&mut self.plain_crops, key(crop));
        if self.index.crops.len() <= at as usize {
            self.index.crops.push((key(crop), crop.to_owned()));
        }
        self.crops.insert(crop, at);
        at
    }

    /// The application of a record on a field: the same that [`super::super::by_application`] joins.
    fn application(&mut self, field: u32, id: &str, record: &'a Record, ground: Area) -> u32 {
        let new = self.next_application();
        let of_field = self.open.entry(field).or_default();
        number(of_field.number(self.farm, id, record, ground, new as usize))
    }

    fn next_application(&mut self) -> u32 {
        self.applications += 1;
        self.applications - 1
    }

    fn finish(mut self) -> Index {
        for (at, ground) in self.index.ground.iter().enumerate() {
            if let Some(field) = self.index.fields.get_mut(ground.field as usize) {
                field.ground.push(number(at));
            }
        }
        let (entries, ground) = (&self.index.entries, &self.index.ground);
        let day = |at: &u32| {
            let record = ground.get(*at as usize).map_or(0, |ground| ground.record);
            entries.get(record as usize).map(|entry| entry.date)
        };
        for field in &mut self.index.fields {
            field.ground.sort_by_key(day);
        }
        self.index
    }
}
