//! Which fields of a pass may share a load: stretches of consecutive fields, and what stands on each border between two.
//!
//! A border is one where a reason that the user lets hold ([`crate::farm::Farm::apart`]) speaks of the two fields beside it.
//! Fields without ground are no neighbours of anything: the fields before and after them are.

use crate::farm::{Apart, Farm, Field, Id, Pass, crop};
use crate::finding::{Basis, Finding, Subject};
use crate::ground::{Applies, strips};
use crate::label::{names, once};
use crate::language::t;
use crate::mix::actives;
use crate::plan::PlannedField;
use crate::quantity::{Area, Quantity};
use crate::words::plain;

/// Consecutive fields that may share a load, each with the ground that is sprayed, in order.
pub(crate) type Stretch = Vec<(Id, Area)>;

/// Why two fields do not share a load.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Reason {
    /// The rule.
    pub(crate) rule: Apart,
    /// In words: "their crops differ (corn, soybean)".
    pub(crate) text: String,
    pub(crate) basis: Basis,
}

/// The stretches of a pass, with a Note for each reason on each border.
pub(crate) fn stretches(
    farm: &Farm,
    pass: &Pass,
    fields: &[PlannedField],
    findings: &mut Vec<Finding>,
) -> Vec<Stretch> {
    let mut all: Vec<Stretch> = Vec::new();
    let mut before: Option<(&Id, &Field)> = None;
    for planned in fields.iter().filter(|planned| planned.area.exceeds(Area::ZERO)) {
        let Some((id, field)) = farm.fields.get_key_value(&planned.field) else { continue };
        let reasons = before.map_or_else(Vec::new, |before| between(farm, pass, before, (id, field)));
        let share = (id.clone(), planned.area);
        match all.last_mut() {
            Some(stretch) if reasons.is_empty() => stretch.push(share),
            _ => all.push(vec![share]),
        }
        if let Some((_, last)) = before {
            findings.extend(reasons.into_iter().map(|reason| {
                Finding::note(
                    Subject::Field(id.clone()),
                    t!("loads-and-do-not-share-a-load", name = last.name, name2 = field.name, text = reason.text),
                    reason.basis,
                )
                .hint(t!("loads-what-keeps-fields-apart-can-be"))
            }));
        }
        before = Some((id, field));
    }
    all
}

/// Why two fields do not share a load of a pass; empty where they may.
pub(crate) fn between(farm: &Farm, pass: &Pass, one: (&Id, &Field), other: (&Id, &Field)) -> Vec<Reason> {
    let rules = farm.apart.as_deref().unwrap_or(&Apart::ALL);
    Apart::ALL
        .into_iter()
        .filter(|rule| rules.contains(rule))
        .filter_map(|rule| {
            let own = if farm.apart.is_some() { Basis::Own } else { Basis::Practice };
            let (text, basis) = match rule {
                Apart::Crop => (crops(one.1, other.1)?, own),
                Apart::Trait => (traits(farm, pass, one.1, other.1)?, own),
                Apart::Owner => (owners(one.1, other.1)?, own),
                Apart::Buffer => strip(farm, pass, one.1).or_else(|| strip(farm, pass, other.1))?,
            };
            Some(Reason { rule, text, basis })
        })
        .collect()
}

fn crops(one: &Field, other: &Field) -> Option<String> {
    (!crop::same(&one.crop, &other.crop)).then(|| t!("loads-their-crops-differ", both = both(&one.crop, &other.crop)))
}

fn owners(one: &Field, other: &Field) -> Option<String> {
    (plain(&one.owner) != plain(&other.owner))
        .then(|| t!("loads-their-owners-differ", both = both(&one.owner, &other.owner)))
}

/// Two words, one of which may not be typed.
fn both(one: &str, other: &str) -> String {
    let word = |text: &str| match text.trim() {
        "" => t!("loads-not-typed").to_owned(),
        text => text.to_owned(),
    };
    format!("{}; {}", word(one), word(other))
}

/// The actives and families of the mix that one variety names and the other does not, or takes back.
fn traits(farm: &Farm, pass: &Pass, one: &Field, other: &Field) -> Option<String> {
    let (first, second) = (trait_words(farm, pass, one), trait_words(farm, pass, other));
    let only = |here: &[String], there: &[String]| here.iter().find(|name| !there.contains(name)).cloned();
    let (name, yes, no) = match (only(&first, &second), only(&second, &first)) {
        (Some(name), _) => (name, one, other),
        (None, Some(name)) => (name, other, one),
        (None, None) => return None,
    };
    Some(if named(farm, pass, &no.variety).contains(&name) {
        t!("loads-one-variety-takes-it-back", name = yes.name, active = name, other = no.name)
    } else {
        t!("loads-one-variety-names-it", name = yes.name, active = name, other = no.name)
    })
}

/// What of the mix a variety names in any part of its words that takes nothing back.
fn trait_words(farm: &Farm, pass: &Pass, field: &Field) -> Vec<String> {
    let pieces = names::pieces(&field.variety);
    let parts = pieces.iter().flat_map(|piece| names::split_but(piece)).filter(|part| !names::denies(part));
    let all = parts.flat_map(|part| named(farm, pass, part)).collect::<Vec<_>>();
    once(all)
}

/// What of the mix some words name: actives by any of their names, and chemical families.
fn named(farm: &Farm, pass: &Pass, words: &str) -> Vec<String> {
    let signs = |letter: char| !letter.is_alphanumeric();
    let variety = format!(" {} ", crate::words::plain_apart_by(words, signs));
    let names = |name: &str| {
        let name = crate::words::plain_apart_by(name, signs);
        !name.is_empty() && variety.contains(&format!(" {name} "))
    };
    let mut found: Vec<String> = Vec::new();
    let products = pass.mix.iter().filter_map(|line| farm.products.get(&line.product));
    for active in products.filter(|product| product.kind.holds_actives()).flat_map(|product| &product.actives) {
        let facts = actives::facts(&active.name);
        let by_name = names(&active.name) || facts.is_some_and(|facts| facts.names().any(names));
        let family = facts.map(|facts| facts.family.as_str()).filter(|family| names(family));
        let of_it = by_name.then(|| facts.map_or(active.name.clone(), |facts| facts.name.clone()));
        for name in of_it.into_iter().chain(family.map(str::to_owned)) {
            if !found.contains(&name) {
                found.push(name);
            }
        }
    }
    found
}

/// The first strip of a label or a law that reaches a neighbour of a field, or something drawn beside it.
fn strip(farm: &Farm, pass: &Pass, field: &Field) -> Option<(String, Basis)> {
    let asked = strips::asked(farm, pass, field);
    if asked.is_empty() {
        return None;
    }
    let typed = field.neighbours.iter().filter(|typed| !strips::stands_for(farm, field, typed)).find_map(|neighbour| {
        let (width, asking) = strips::to_neighbour(&asked, neighbour)?;
        Some((width, neighbour.what.trim().to_owned(), asking.clone()))
    });
    let drawn = || {
        let left = strips::kept(farm, pass, field, &asked).into_iter();
        let mut left = left.filter(|kept| kept.applies != Applies::NotDownwind);
        left.next().map(|kept| (kept.asking.width, kept.drawn.name.clone(), kept.asking))
    };
    let (width, what, asking) = typed.or_else(drawn)?;
    let text = t!(
        "loads-keeps-from-the-of-which-waits",
        speaker = asking.spoken.speaker.name(),
        width = width.show(farm.units),
        what = what,
        name = field.name
    );
    Some((text, asking.spoken.basis()))
}

#[cfg(test)]
mod tests {
    use super::stretches;
    use crate::farm::{
        Active, Apart, Farm, Field, Formulation, Line, Neighbour, Pass, Product, ProductKind, Says, Statement,
    };
    use crate::finding::{Basis, Finding};
    use crate::plan::PlannedField;
    use crate::quantity::{ActiveBasis, AsTyped};

    fn farm() -> Farm {
        let mut farm = Farm::new("Apart");
        let mut product = Product::new("Glyphosate 540 SL (demo)", ProductKind::Herbicide, Formulation::SL);
        product.actives.push(Active {
            name: "glyphosate".to_owned(),
            group: String::new(),
            basis: ActiveBasis::AcidEquivalent,
            content: AsTyped::parse("540 g/L").unwrap(),
        });
        farm.products.insert("g".to_owned(), product);
        for id in ["a", "b", "c"] {
            let mut field = Field::new(id, AsTyped::parse("10 ac").unwrap());
            "corn".clone_into(&mut field.crop);
            farm.fields.insert(id.to_owned(), field);
        }
        let mut pass = Pass::new("p", "2031-06-12".parse().unwrap());
        pass.fields = ["a", "b", "c"].map(str::to_owned).to_vec();
        pass.mix.push(Line::new("g", AsTyped::parse("22 fl oz/ac").unwrap()));
        farm.passes.insert("p".to_owned(), pass);
        farm
    }

    /// How many fields each stretch has, and the notes.
    fn laid(farm: &Farm) -> (Vec<usize>, Vec<Finding>) {
        let fields: Vec<PlannedField> = ["a", "b", "c"]
            .iter()
            .map(|id| {
                let area = farm.fields[*id].area.value();
                PlannedField { field: (*id).to_owned(), area, covered: area }
            })
            .collect();
        let mut findings = Vec::new();
        let all = stretches(farm, &farm.passes["p"], &fields, &mut findings);
        (all.iter().map(Vec::len).collect(), findings)
    }

    #[test]
    fn each_rule_keeps_apart_what_it_speaks_of_and_nothing_else() {
        assert_eq!(laid(&farm()), (vec![3], Vec::new()));
        let mut crops = farm();
        "Corns".clone_into(&mut crops.fields["b"].crop);
        "soybean".clone_into(&mut crops.fields["c"].crop);
        let (sizes, notes) = laid(&crops);
        assert_eq!(sizes, [2, 1]);
        assert_eq!(notes[0].text, "b and c do not share a load: their crops differ (Corns; soybean)");
        assert_eq!((&notes[0].basis, notes[0].hint.contains("page Farm")), (&Basis::Practice, true));

        "maíz".clone_into(&mut crops.fields["b"].crop);
        assert_eq!(laid(&crops).0, [2, 1], "the same crop in Spanish");

        let mut owners = farm();
        "Neighbour's".clone_into(&mut owners.fields["a"].owner);
        assert_eq!(laid(&owners).0, [1, 2]);
        assert!(laid(&owners).1[0].text.contains("Neighbour's; not typed"));

        let mut traits = farm();
        "bean C, Glyphosate and glufosinate tolerant".clone_into(&mut traits.fields["a"].variety);
        "bean D, glyphosate-tolerant".clone_into(&mut traits.fields["b"].variety);
        "bean E, no trait".clone_into(&mut traits.fields["c"].variety);
        let (sizes, notes) = laid(&traits);
        assert_eq!(sizes, [2, 1], "glufosinate is not in this mix");
        assert!(notes[0].text.ends_with("the variety of b names glyphosate, that of c does not"));
        // A variety that says it does not stand the active is not of the same kind as one that does.
        for denied in ["bean E, not glyphosate tolerant", "bean E, glyphosate-sensitive"] {
            denied.clone_into(&mut traits.fields["c"].variety);
            let (sizes, notes) = laid(&traits);
            assert_eq!(sizes, [2, 1], "{denied}");
            assert!(notes[0].text.ends_with("the variety of b names glyphosate, that of c takes it back"));
        }
        "bean E, glyphosate tolerant but not dicamba tolerant".clone_into(&mut traits.fields["c"].variety);
        assert_eq!(laid(&traits).0, [3]);
    }

    #[test]
    fn a_field_with_a_strip_stands_alone() {
        let mut farm = farm();
        let buffer =
            Says::Buffer { to: "creek".to_owned(), width: AsTyped::parse("66 ft").unwrap(), downwind_only: false };
        farm.products["g"].label.push(Statement::new(buffer, "page 2"));
        let mut creek = Neighbour { what: "mill creek".to_owned(), ..Neighbour::default() };
        farm.fields["b"].neighbours = vec![creek.clone()];
        let (sizes, notes) = laid(&farm);
        assert_eq!((sizes, notes.len()), (vec![1, 1, 1], 2));
        assert_eq!(notes[0].basis, Basis::Label("Glyphosate 540 SL (demo), page 2".to_owned()));
        creek.distance = Some(AsTyped::parse("66 ft").unwrap());
        farm.fields["b"].neighbours = vec![creek.clone()];
        assert_eq!(laid(&farm).0, [3], "the strip ends where the creek begins");
        creek.distance = Some(AsTyped::parse("65 ft").unwrap());
        farm.fields["b"].neighbours = vec![creek];
        assert_eq!(laid(&farm).0, [1, 1, 1]);
        farm.apart = Some(vec![Apart::Crop]);
        assert_eq!(laid(&farm).0, [3], "a rule that the farm does not keep to is silent");
    }

    #[test]
    fn a_field_without_ground_is_no_border() {
        let mut farm = farm();
        farm.fields["b"].area = AsTyped::parse("0 ac").unwrap();
        "soybean".clone_into(&mut farm.fields["b"].crop);
        assert_eq!(laid(&farm).0, [2]);
    }
}
