//! What differs between two states of a farm, by name: what a person must see before one takes the place of the other.

use std::fmt;

use super::{Farm, Id, Movement, Nouns};
use crate::language::days::short_date;
use crate::language::t;

/// The nouns of one kind that differ.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Differing {
    /// What they are, by the word that messages choose by.
    kind: &'static str,
    /// Names of those that the first state has not.
    pub added: Vec<String>,
    /// Names of those that the second state has not.
    pub gone: Vec<String>,
    /// Names of those that both have and that are not alike.
    pub changed: Vec<String>,
    /// Whether those that both have stand in another order.
    pub is_moved: bool,
}

impl Differing {
    fn is_empty(&self) -> bool {
        self.added.is_empty() && self.gone.is_empty() && self.changed.is_empty() && !self.is_moved
    }

    fn count(&self, count: usize) -> String {
        t!("farm-so-many", count = count, kind = self.kind)
    }
}

/// How far a list of names goes before the rest is counted.
const NAMED: usize = 6;

impl fmt::Display for Differing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let named = |names: &[String]| {
            let said: Vec<&str> = names.iter().take(NAMED).map(String::as_str).collect();
            let said = said.join(", ");
            if names.len() > NAMED { t!("farm-and-more", names = said, more = names.len() - NAMED) } else { said }
        };
        let mut said = Vec::new();
        if !self.added.is_empty() {
            said.push(t!("farm-added", what = self.count(self.added.len()), names = named(&self.added)));
        }
        if !self.gone.is_empty() {
            said.push(t!("farm-gone", what = self.count(self.gone.len()), names = named(&self.gone)));
        }
        if !self.changed.is_empty() {
            said.push(t!("farm-changed", what = self.count(self.changed.len()), names = named(&self.changed)));
        }
        if self.is_moved {
            said.push(t!("farm-in-another-order", kind = self.kind));
        }
        f.write_str(&said.join("; "))
    }
}

/// What differs between two states of a farm.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Differs {
    /// Fields, passes, products and the like, in the order of the file.
    pub nouns: Vec<Differing>,
    /// What of the farm itself differs, in words such as "the paper".
    pub farm: Vec<&'static str>,
}

impl Differs {
    /// Whether nothing differs.
    pub fn is_empty(&self) -> bool {
        self.nouns.is_empty() && self.farm.is_empty()
    }

    /// A line for each kind of noun, and one for the farm itself.
    ///
    /// # Examples
    /// ```
    /// use tankard_core::farm::{Farm, Field, differs};
    /// use tankard_core::quantity::AsTyped;
    /// let was = Farm::new("Home farm");
    /// let mut is = was.clone();
    /// is.fields.insert("mill".to_owned(), Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap()));
    /// is.currency = "€".to_owned();
    /// let lines = differs::between(&was, &is).lines();
    /// assert_eq!(lines, ["1 field added: Mill field", "of the farm itself: the currency"]);
    /// ```
    pub fn lines(&self) -> Vec<String> {
        let nouns = self.nouns.iter().map(ToString::to_string);
        nouns
            .chain((!self.farm.is_empty()).then(|| t!("farm-of-the-farm-itself", farm = self.farm.join(", "))))
            .collect()
    }
}

/// What differs, seen from the first state: what the second has more is added, what it lacks is gone.
pub fn between(was: &Farm, is: &Farm) -> Differs {
    // Every field by name, so that none that is new is overlooked.
    let Farm {
        format: _,
        name,
        units,
        currency,
        place,
        paper,
        card_languages,
        measuring,
        emergency,
        fields,
        surroundings,
        background,
        waters,
        rigs,
        products,
        advice,
        laws,
        practice,
        forecast,
        aims,
        apart,
        short_step,
        roads,
        days,
        passes,
        records,
        keeping,
        movements,
        trials,
        closed,
        cards,
    } = is;
    let nouns = [
        maps("field", &was.fields, fields, |_, field| field.name.clone()),
        maps("surrounding", &was.surroundings, surroundings, |_, thing| thing.name.clone()),
        maps("water", &was.waters, waters, |_, water| water.name.clone()),
        maps("rig", &was.rigs, rigs, |_, rig| rig.name.clone()),
        maps("product", &was.products, products, |_, product| product.name.clone()),
        maps("advice", &was.advice, advice, |_, advice| advice.source()),
        maps("law", &was.laws, laws, |_, law| law.name.clone()),
        maps("day", &was.days, days, |id, _| id.clone()),
        maps("pass", &was.passes, passes, |_, pass| format!("{} ({})", pass.name, short_date(pass.date))),
        maps("record", &was.records, records, |_, record| format!("{} ({})", record.name, short_date(record.date))),
        list_of_movements(&was.movements, movements, is),
        maps("trial", &was.trials, trials, |_, trial| trial.name.clone()),
        maps("closed", &was.closed, closed, |id, _| id.clone()),
        maps("card", &was.cards, cards, |id, _| id.clone()),
    ];
    let farm = [
        (was.name != *name, t!("farm-the-name")),
        (was.units != *units, t!("farm-the-units")),
        (was.currency != *currency, t!("farm-the-currency")),
        (was.place != *place, t!("farm-the-place")),
        (was.paper != *paper, t!("farm-the-paper")),
        (was.card_languages != *card_languages, t!("farm-the-languages-of-its-cards")),
        (was.measuring != *measuring, t!("farm-the-finest-marks-measured-with")),
        (was.emergency != *emergency, t!("farm-the-emergency-lines")),
        (was.background != *background, t!("farm-the-picture-under-the-map")),
        (was.practice != *practice, t!("farm-what-the-farm-keeps-to")),
        (was.forecast != *forecast, t!("farm-the-forecast")),
        (was.aims != *aims, t!("farm-the-aims-of-load-sizes")),
        (was.apart != *apart, t!("farm-what-keeps-fields-from-sharing-a")),
        (was.short_step != *short_step, t!("farm-the-ground-of-shorter-loads-on")),
        (was.roads != *roads, t!("farm-the-roads")),
        (was.keeping != *keeping, t!("farm-how-records-are-kept")),
    ];
    Differs {
        nouns: nouns.into_iter().filter(|kind| !kind.is_empty()).collect(),
        farm: farm.into_iter().filter_map(|(differs, words)| differs.then_some(words)).collect(),
    }
}

fn maps<T: PartialEq>(
    kind: &'static str,
    was: &Nouns<T>,
    is: &Nouns<T>,
    name: impl Fn(&Id, &T) -> String,
) -> Differing {
    let called = |id: &Id, noun: &T| {
        let name = name(id, noun);
        // Two of one name are told apart by their ids; one without a name has nothing else.
        if name.trim().is_empty() { format!("\"{id}\"") } else { name }
    };
    if was.is_same(is) {
        return Differing { kind, added: Vec::new(), gone: Vec::new(), changed: Vec::new(), is_moved: false };
    }
    let missing = |of: &Nouns<T>, from: &Nouns<T>| -> Vec<String> {
        from.iter().filter(|(id, _)| !of.contains_key(id)).map(|(id, noun)| called(id, noun)).collect()
    };
    let changed = is.iter().filter_map(|(id, noun)| {
        let before = was.get(id).filter(|before| *before != noun)?;
        let (old, new) = (called(id, before), called(id, noun));
        Some(if old == new { new } else { t!("farm-before", new = new, old = old) })
    });
    let both = |of: &Nouns<T>, other: &Nouns<T>| -> Vec<Id> {
        of.keys().filter(|id| other.contains_key(id)).cloned().collect()
    };
    Differing {
        kind,
        added: missing(was, is),
        gone: missing(is, was),
        changed: changed.collect(),
        is_moved: both(was, is) != both(is, was),
    }
}

/// Movements have no id: what is alike at both ends stays, and of what lies between each is looked for among the others.
fn list_of_movements(was: &[Movement], is: &[Movement], farm: &Farm) -> Differing {
    let head = was.iter().zip(is).take_while(|(was, is)| was == is).count();
    let most = was.len().min(is.len()) - head;
    let tail = was.iter().rev().zip(is.iter().rev()).take(most).take_while(|(was, is)| was == is).count();
    let inner = |list: &[Movement]| list.get(head..list.len() - tail).unwrap_or_default().to_vec();
    let (mut gone, between) = (inner(was), inner(is));
    let is_moved_alone = gone.len() == between.len();
    let mut added = Vec::new();
    for movement in between {
        match gone.iter().position(|other| *other == movement) {
            Some(at) => drop(gone.remove(at)),
            None => added.push(movement),
        }
    }
    let names = |list: Vec<Movement>| -> Vec<String> {
        let name = |movement: &Movement| {
            let product = farm.products.get(&movement.product).map_or(&movement.product, |product| &product.name);
            format!("{product} ({})", short_date(movement.date))
        };
        list.iter().map(name).collect()
    };
    Differing {
        kind: "movement",
        is_moved: is_moved_alone && added.is_empty() && gone.is_empty() && was != is,
        added: names(added),
        gone: names(gone),
        changed: Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::between;
    use crate::farm::{Farm, Field, Moved, Movement, Pass, Product, ProductKind, Record};
    use crate::quantity::AsTyped;
    use jiff::civil::date;

    fn farm() -> Farm {
        let mut farm = Farm::new("Home farm");
        for (id, name) in [("mill", "Mill field"), ("brook", "Brook field")] {
            farm.fields.insert(id.to_owned(), Field::new(name, AsTyped::parse("74.6 ac").unwrap()));
        }
        farm.passes.insert("p".to_owned(), Pass::new("Corn, first post", date(2031, 6, 12)));
        for day in 1..10 {
            farm.records.insert(format!("r{day}"), Record::new("Corn", date(2031, 5, day)));
        }
        farm
    }

    #[test]
    fn each_noun_is_named_as_added_gone_or_changed() {
        let was = farm();
        let mut is = was.clone();
        is.fields["mill"].name = "Mill field, south".to_owned();
        is.fields.shift_remove("brook");
        is.passes["p"].date = date(2031, 6, 13);
        let kind = (ProductKind::Herbicide, crate::farm::Formulation::SL);
        is.products.insert("g".to_owned(), Product::new("Glyphosate 540 SL (demo)", kind.0, kind.1));
        is.records.clear();
        assert_eq!(
            between(&was, &is).lines(),
            [
                "1 field gone: Brook field; 1 field changed: Mill field, south, before Mill field",
                "1 product added: Glyphosate 540 SL (demo)",
                "1 pass changed: Corn, first post (13 June 2031), before Corn, first post (12 June 2031)",
                "9 records gone: Corn (1 May 2031), Corn (2 May 2031), Corn (3 May 2031), Corn (4 May 2031), \
                 Corn (5 May 2031), Corn (6 May 2031) and 3 more",
            ]
        );
        // Seen from the other side what was added is gone.
        let back = between(&is, &was);
        assert_eq!((back.nouns[0].added.as_slice(), back.nouns[1].gone.len()), (&["Brook field".to_owned()][..], 1));
        assert!(between(&is, &is).is_empty());
    }

    #[test]
    fn an_order_of_its_own_is_a_difference() {
        let was = farm();
        let mut is = was.clone();
        is.fields.swap_indices(0, 1);
        // Two maps with the same entries are equal to `==`, but people put fields in an order that means something.
        assert_eq!(was, is);
        assert_eq!(between(&was, &is).lines(), ["fields in another order"]);
    }

    #[test]
    fn movements_are_told_apart_without_ids() {
        let moved = |day: i8| Movement {
            product: "g".to_owned(),
            date: date(2031, 5, day),
            what: Moved::In { amount: AsTyped::parse("1 gal").unwrap(), lot: String::new() },
            by: String::new(),
            note: String::new(),
        };
        let mut was = farm();
        was.movements = vec![moved(1), moved(2), moved(3)];
        let mut is = was.clone();
        is.movements = vec![moved(1), moved(3), moved(3), moved(4)];
        let lines = between(&was, &is).lines();
        assert_eq!(
            lines,
            ["2 movements of stock added: g (3 May 2031), g (4 May 2031); 1 movement of stock gone: g (2 May 2031)"]
        );
        is.movements = vec![moved(2), moved(1), moved(3)];
        assert_eq!(between(&was, &is).lines(), ["movements of stock in another order"]);
    }

    #[test]
    fn what_holds_for_the_whole_farm_is_named_too() {
        let was = farm();
        let mut is = was.clone();
        is.name = "Other farm".to_owned();
        is.emergency.push("112".to_owned());
        assert_eq!(between(&was, &is).lines(), ["of the farm itself: the name, the emergency lines"]);
    }
}
