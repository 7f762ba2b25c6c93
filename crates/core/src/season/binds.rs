//! What the records of a field still bind: harvest intervals and plant-back times that run on.

use jiff::civil::Date;

use crate::farm::crop::Named;
use crate::farm::{Farm, Field, Id, Product, Record, Says, Statement};
use crate::label::harvest::{after_days, days_after, months_after};
use crate::label::names::split_or;
use crate::label::{names_crop as speaks_of, place};
use crate::language::t;
use crate::season::Log;

/// What a record keeps from being done on its field.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Binds {
    /// Harvest and grazing.
    Harvest {
        /// The label's days.
        days: u32,
    },
    /// Planting a crop.
    Planting {
        /// The crop, as the label names it.
        crop: String,
        /// The label's months.
        months: u32,
    },
}

/// A limit that runs from a record.
#[derive(Clone, Debug, PartialEq)]
pub struct Bind<'a> {
    /// The id of the record.
    pub record_id: &'a Id,
    /// The record.
    pub record: &'a Record,
    /// The product.
    pub product: &'a Product,
    /// The crop of which it speaks: that of the record, else the field's; may be empty.
    pub crop: &'a str,
    /// What it binds.
    pub binds: Binds,
    /// The first day that is free of it; the end of the calendar where it lies beyond.
    pub until: Date,
    /// Where the label says so.
    pub at: String,
}

impl Bind<'_> {
    /// Whether it keeps a crop from being planted. What a label says of any other crop is not said of one that it names.
    pub fn keeps_from(&self, planting: &str) -> bool {
        let Binds::Planting { crop, .. } = &self.binds else { return false };
        match names_crop(crop, planting) {
            Some(by_name) => by_name || !names_it(self.product, self.crop, planting),
            None => false,
        }
    }
}

/// Whether a label names a following crop by its name, for the crop that stood.
fn names_it(product: &Product, stood: &str, planting: &str) -> bool {
    product.label.iter().any(|statement| {
        let named = matches!(&statement.says,
            Says::PlantBack { next_crop, .. } if names_crop(next_crop, planting) == Some(true));
        named && (stood.is_empty() || speaks_of(statement, stood))
    })
}

/// All limits that run from the records of a field beyond a day, in the order of the records. A record speaks of the crop
/// that it names, else of the field's, and of any where neither is typed. A condition of a statement is taken to hold, since a
/// record does not keep it.
pub fn binds<'a>(farm: &'a Farm, log: &'a Log, field_id: &str, field: &'a Field, after: Date) -> Vec<Bind<'a>> {
    let mut binding = Vec::new();
    let (days, months) = longest(farm);
    let may_reach = |day: Date| {
        days.is_some_and(|days| days_after(day, days).is_none_or(|until| until > after))
            || months.is_some_and(|months| months_after(day, months).is_none_or(|until| until > after))
    };
    for (record_id, record) in log.on_field(farm, field_id) {
        if !may_reach(record.date) {
            continue;
        }
        let Some(then) = record.fields.get(field_id) else { continue };
        let crop = if then.crop.trim().is_empty() { field.crop.as_str() } else { &then.crop };
        for line in record.lines.iter().filter(|line| !line.amount.is_zero()) {
            let Some(product) = farm.products.get(&line.product) else { continue };
            for statement in &product.label {
                // Most have run out long ago, so the day is asked before the crop.
                let Some(until) = until(statement, record.date).filter(|until| *until > after) else { continue };
                let untold = crop.trim().is_empty() && !statement.crop.trim().is_empty();
                if let (true, Some(binds)) = (untold || speaks_of(statement, crop), limit(statement)) {
                    let mut at = place(product, statement);
                    if untold {
                        at = t!("season-for-where-the-crop-was-not", at = at, crop = statement.crop.trim());
                    }
                    binding.push(Bind { record_id, record, product, crop: crop.trim(), binds, until, at });
                }
            }
        }
    }
    binding
}

/// The most days and months that any label names.
fn longest(farm: &Farm) -> (Option<u32>, Option<u32>) {
    let statements = || farm.products.values().flat_map(|product| &product.label);
    let days = statements().filter_map(|statement| match statement.says {
        Says::HarvestInterval { days } => Some(days),
        _ => None,
    });
    let months = statements().filter_map(|statement| match statement.says {
        Says::PlantBack { months, .. } => Some(months),
        _ => None,
    });
    (days.max(), months.max())
}

fn until(statement: &Statement, sprayed: Date) -> Option<Date> {
    match &statement.says {
        Says::HarvestInterval { days } => Some(after_days(sprayed, *days)),
        Says::PlantBack { months, .. } => Some(months_after(sprayed, *months).unwrap_or(Date::MAX)),
        _ => None,
    }
}

fn limit(statement: &Statement) -> Option<Binds> {
    match &statement.says {
        Says::HarvestInterval { days } => Some(Binds::Harvest { days: *days }),
        Says::PlantBack { next_crop, months } => Some(Binds::Planting { crop: next_crop.clone(), months: *months }),
        _ => None,
    }
}

/// Whether a label's words for a following crop mean a crop. They may list several, apart by commas; a plural is its
/// singular. `Some(false)` where only "any other crop" takes it in.
pub fn names_crop(words: &str, crop: &str) -> Option<bool> {
    let parts = || words.split(',').flat_map(split_or);
    if !crop.trim().is_empty() && parts().any(|part| part.trim().eq_ignore_ascii_case(crop.trim())) {
        return Some(true);
    }
    let crop = Named::of(crop);
    if crop.plain.is_empty() {
        return None;
    }
    let all: Vec<Named> = parts().map(Named::of).collect();
    // As labels are typed; not what the program says.
    let others = ["any crop", "all crop", "other crop", "any other crop", "all other crop", "all other", "any other"];
    let is_other = |name: &str| others.contains(&name);
    if all.iter().any(|name| name.is(&crop)) {
        Some(true)
    } else {
        let others = |name: &Named| is_other(&name.plain) || name.english.iter().any(|name| is_other(name));
        all.iter().any(others).then_some(false)
    }
}

#[cfg(test)]
mod tests {
    use super::names_crop;

    #[test]
    fn crops_by_their_words() {
        assert_eq!(names_crop("soybeans, corn", "Soybean"), Some(true));
        assert_eq!(names_crop("corn or grain sorghum", "grain  sorghum"), Some(true));
        assert_eq!(names_crop("all other crops", "sugar beet"), Some(false));
        assert_eq!(names_crop("maíz o sorgo", "corn"), Some(true));
        assert_eq!(names_crop("corn, sorghum", "Maíz"), Some(true));
        assert_eq!(names_crop("cualquier otro cultivo", "frijol"), Some(false));
        assert_eq!(names_crop("los demás cultivos", "sugar beet"), Some(false));
        assert_eq!(names_crop("corn", "sweet corn"), None);
        assert_eq!(names_crop("", ""), None);
    }
}
