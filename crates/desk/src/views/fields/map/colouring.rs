//! What the fields on the map are coloured by: each field in a class with its words, each class with a colour and a pattern.

use std::collections::HashMap;

use jiff::civil::{Date, DateTime};
use tankard_core::farm::{Farm, Field, Id};
use tankard_core::language::days::{clock, moment as day_and_time, short_date};
use tankard_core::season::Log;
use tankard_core::season::keep_out::{KeepOut, keep_out};
use tankard_core::t;

use super::pattern::Pattern;

/// What the fields are coloured by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Colouring {
    /// The crop.
    #[default]
    Crop,
    /// The growth stage.
    Stage,
    /// How long ago it was sprayed last, by the records.
    LastSpray,
    /// Whether a re-entry time still runs.
    ReEntry,
    /// Whether it is planned to be sprayed on a day.
    Planned,
}

impl Colouring {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Crop, Self::Stage, Self::LastSpray, Self::ReEntry, Self::Planned];

    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Crop => t!("fields-head-crop"),
            Self::Stage => t!("fields-growth-stage"),
            Self::LastSpray => t!("fields-last-spray"),
            Self::ReEntry => t!("fields-re-entry"),
            Self::Planned => t!("fields-planned-on-a-day"),
        }
    }
}

/// A class of fields.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Class {
    /// Its words in the legend.
    pub(super) name: String,
    /// Which of the colours of classes; none is the plain ground.
    pub(super) colour: Option<usize>,
    pub(super) pattern: Pattern,
    /// How many fields are in it.
    pub(super) count: usize,
}

/// The class of each field, and what is to be said of it.
#[derive(Default)]
pub(super) struct Coloured {
    asked: Option<(u64, Colouring, Date, DateTime)>,
    pub(super) classes: Vec<Class>,
    /// The class and the words of each field.
    pub(super) fields: HashMap<Id, (usize, String)>,
}

/// How many classes of a free text have a colour and a pattern of their own; the others share one.
const MOST: usize = Pattern::ALL.len();

impl Coloured {
    /// Looks at each field once for a revision, a choice, a day and a minute.
    pub(super) fn take_up(
        &mut self,
        (farm, log): (&Farm, &Log),
        revision: u64,
        by: Colouring,
        day: Date,
        now: DateTime,
    ) {
        let minute = now.date().at(now.hour(), now.minute(), 0, 0);
        let asked = Some((revision, by, day, minute));
        if self.asked == asked {
            return;
        }
        self.asked = asked;
        self.fields.clear();
        self.classes = match by {
            Colouring::Crop => self.by_text(farm, |field| field.crop.trim(), t!("fields-no-crop-typed")),
            Colouring::Stage => self.by_text(farm, |field| field.stage.trim(), t!("fields-no-stage-typed")),
            Colouring::LastSpray => self.by_last_spray((farm, log), now.date()),
            Colouring::ReEntry => self.by_re_entry((farm, log), now),
            Colouring::Planned => self.by_plan((farm, log), day),
        };
        for (class, _) in self.fields.values() {
            if let Some(class) = self.classes.get_mut(*class) {
                class.count += 1;
            }
        }
    }

    /// What is said of a field.
    pub(super) fn words(&self, id: &str) -> &str {
        self.fields.get(id).map_or("", |(_, words)| words)
    }

    /// The classes that have fields, and of a free text the most common first.
    fn by_text(&mut self, farm: &Farm, text: impl Fn(&Field) -> &str, none: &str) -> Vec<Class> {
        let mut counts: Vec<(&str, usize)> = Vec::new();
        let mut places: HashMap<&str, usize> = HashMap::new();
        for field in farm.fields.values().filter(|field| !text(field).is_empty()) {
            let at = *places.entry(text(field)).or_insert_with(|| {
                counts.push((text(field), 0));
                counts.len() - 1
            });
            if let Some((_, count)) = counts.get_mut(at) {
                *count += 1;
            }
        }
        // One that stands first in the farm comes first of those alike, so that colours do not change by chance.
        counts.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
        let mut classes: Vec<Class> = counts
            .iter()
            .take(MOST)
            .enumerate()
            .map(|(at, (name, _))| class(name, Some(at), Pattern::nth(at)))
            .collect();
        let others = classes.len();
        if counts.len() > MOST {
            classes.push(class(&t!("fields-others", count = counts.len() - MOST), None, Pattern::Grid));
        }
        let empty = classes.len();
        classes.push(class(none, None, Pattern::Plain));
        let of: HashMap<&str, usize> =
            counts.iter().enumerate().map(|(at, (name, _))| (*name, at.min(others))).collect();
        for (id, field) in &farm.fields {
            let own = text(field);
            let at = of.get(own).copied().unwrap_or(empty);
            self.fields.insert(id.clone(), (at, if own.is_empty() { none.to_owned() } else { own.to_owned() }));
        }
        classes
    }

    fn by_last_spray(&mut self, (farm, log): (&Farm, &Log), today: Date) -> Vec<Class> {
        for id in farm.fields.keys() {
            let days = log.last_on(id).map(|last| last.until(today).map_or(i32::MAX, |span| span.get_days()));
            let said = match days {
                None => (4, t!("fields-no-spray-recorded").to_owned()),
                Some(..=0) => (0, t!("fields-sprayed-today").to_owned()),
                Some(days) => {
                    let class = match days {
                        ..=7 => 0,
                        8..=21 => 1,
                        22..=60 => 2,
                        _ => 3,
                    };
                    (class, t!("fields-ago", count = days))
                }
            };
            self.fields.insert(id.clone(), said);
        }
        vec![
            class(t!("fields-within-a-week"), Some(0), Pattern::Cross),
            class(t!("fields-8-to-21-days-ago"), Some(3), Pattern::Slant),
            class(t!("fields-22-to-60-days-ago"), Some(2), Pattern::Level),
            class(t!("fields-longer-ago"), Some(1), Pattern::Upright),
            class(t!("fields-no-spray-recorded"), None, Pattern::Plain),
        ]
    }

    fn by_re_entry(&mut self, (farm, log): (&Farm, &Log), now: DateTime) -> Vec<Class> {
        for id in farm.fields.keys() {
            let said = match keep_out(farm, log, id, now) {
                KeepOut::Until { until, product, .. } => {
                    (0, t!("fields-keep-out-until", moment = moment(until, now), product = product))
                }
                KeepOut::NotKnown { product, date } => {
                    (1, t!("fields-no-re-entry-time-typed", product = product, date = short_date(date)))
                }
                KeepOut::Over => (2, t!("fields-re-entry-time-is-over").to_owned()),
                KeepOut::NothingLately => (3, t!("fields-no-spray-in-30-days").to_owned()),
            };
            self.fields.insert(id.clone(), said);
        }
        vec![
            class(t!("fields-keep-out"), Some(1), Pattern::Cross),
            class(t!("fields-not-known-see-the-label"), Some(0), Pattern::Slant),
            class(t!("fields-time-is-over-as-typed"), Some(2), Pattern::Plain),
            class(t!("fields-no-spray-in-30-days"), None, Pattern::Plain),
        ]
    }

    fn by_plan(&mut self, (farm, log): (&Farm, &Log), day: Date) -> Vec<Class> {
        let mut planned: HashMap<&Id, (Vec<&str>, bool)> = HashMap::new();
        for (pass_id, pass) in farm.passes.iter().filter(|(_, pass)| pass.date == day) {
            for field in &pass.fields {
                let known = planned.entry(field).or_insert((Vec::new(), true));
                known.0.push(&pass.name);
                known.1 &= log.is_recorded(farm, pass_id);
            }
        }
        for id in farm.fields.keys() {
            let said = match planned.get(id) {
                Some((names, false)) => (0, names.join(", ")),
                Some((names, true)) => (1, t!("fields-recorded", names = names.join(", "))),
                None => (2, t!("fields-not-planned").to_owned()),
            };
            self.fields.insert(id.clone(), said);
        }
        vec![
            class(&t!("fields-planned-on", day = short_date(day)), Some(0), Pattern::Slant),
            class(t!("fields-planned-and-recorded"), Some(2), Pattern::Level),
            class(t!("fields-not-planned"), None, Pattern::Plain),
        ]
    }
}

fn class(name: &str, colour: Option<usize>, pattern: Pattern) -> Class {
    Class { name: name.to_owned(), colour, pattern, count: 0 }
}

/// "21:00", or with its day where that is not today.
fn moment(at: DateTime, now: DateTime) -> String {
    if at.date() == now.date() { clock(at) } else { day_and_time(at) }
}

#[cfg(test)]
mod tests {
    use jiff::civil::{Date, DateTime, date};
    use tankard_core::farm::{Farm, Field};
    use tankard_core::quantity::AsTyped;
    use tankard_core::season::Log;

    use super::{Coloured, Colouring};
    use crate::look::colour_vision::{PLAINLY, Sight, apart};
    use crate::look::{DARK, LIGHT, of_class};

    /// Of any two classes that a colouring shows, either the patterns differ or every sight tells the colours apart.
    #[test]
    fn classes_are_told_apart_by_every_sight() {
        let mut farm = Farm::new("Many crops");
        for number in 0..20 {
            let Ok(area) = AsTyped::parse("1 ha") else { continue };
            let mut field = Field::new("A field", area);
            field.crop = format!("crop {number}");
            field.stage = format!("stage {number}");
            farm.fields.insert(format!("f{number}"), field);
        }
        let (day, now): (Date, DateTime) = (date(2031, 6, 12), date(2031, 6, 11).at(20, 0, 0, 0));
        let mut compared = 0;
        for by in Colouring::ALL {
            let mut coloured = Coloured::default();
            coloured.take_up((&farm, &Log::default()), 1, by, day, now);
            for (at, one) in coloured.classes.iter().enumerate() {
                for other in coloured.classes.iter().skip(at + 1) {
                    compared += 1;
                    if one.pattern == other.pattern {
                        for (colours, sight) in
                            [&LIGHT, &DARK].into_iter().flat_map(|colours| Sight::ALL.map(|sight| (colours, sight)))
                        {
                            let colour =
                                |class: &super::Class| class.colour.map_or(colours.sheet, |at| of_class(colours, at));
                            let apart = apart(colour(one), colour(other), sight);
                            assert!(apart >= PLAINLY, "{sight:?} {one:?} {other:?}: {apart:.1}");
                        }
                    }
                }
            }
        }
        assert!(compared > 150, "{compared}");
    }
}
