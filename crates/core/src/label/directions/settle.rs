//! What the sentences of a text come to together: the same said twice is one line, two ends are one range, and what contradicts is left.

use super::against::{is_for, speaks_of};
use super::build::{Becomes, Caught};
use super::items::{Figure, Item, What, items};
use super::units::Measure;
use super::{Found, Left, Reading, Sentence};
use crate::farm::label::Stance;
use crate::farm::{Product, Says, Statement};
use crate::language::t;
use crate::mix::choice::Role;
use crate::quantity::{AsTyped, Quantity, Units};

/// Puts together what belongs together, and leaves what contradicts.
pub(super) fn settle(caught: Vec<Caught>, product: &Product, reading: &mut Reading) {
    let mut apart: Vec<Caught> = Vec::new();
    let mut all: Vec<Found> = Vec::new();
    let mut against: Vec<Found> = Vec::new();
    for one in caught {
        let (says, from_stage, to_stage) = match one.becomes {
            Becomes::Says(says) => (says, String::new(), String::new()),
            Becomes::Stages { from, to } => (Says::CropStage, from, to),
            Becomes::Apart(_) => {
                apart.push(one);
                continue;
            }
        };
        let found = Found {
            statement: Statement { crop: one.crop, from_stage, to_stage, ..Statement::new(says, "") },
            sentences: vec![one.sentence],
            note: one.note,
        };
        if against.iter().any(|other| same_kind(other, &found)) {
            against.push(found);
        } else if let Some(at) = all.iter().position(|other| same_kind(other, &found)) {
            let one = all.remove(at);
            match together(one, found) {
                Ok(both) => all.insert(at, both),
                Err(two) => against.extend(two),
            }
        } else {
            all.push(found);
        }
    }
    for found in &against {
        let kind = found.statement.says.name();
        leave(reading, &found.sentences, &t!("label-the-text-says-several-things-on", kind = kind));
    }
    // Of adjuvants that a sentence lists, none stays without the others.
    let is_left = |sentence: &Sentence| reading.left.iter().any(|left| left.sentence == sentence.text);
    all.retain(|found| !matches!(found.statement.says, Says::Adjuvant { .. }) || !found.sentences.iter().any(is_left));
    spaced(&apart, product, &mut all, reading);
    reading.found.extend(all);
}

/// A rate that was read may be one of several, of which others were not understood: that is said beside it.
pub(super) fn other_rates(reading: &mut Reading, product: &Product, units: Units) {
    let is_rate = |item: &Item| matches!(&item.what, What::Figure(Figure { measure: Measure::Rate(unit), .. }) if unit.ends_with("/ac") || unit.ends_with("/ha"));
    let has_rate = |left: &Left| items(&left.sentence, product.is_liquid(), units).items.iter().any(is_rate);
    if !reading.left.iter().any(has_rate) {
        return;
    }
    for found in reading.found.iter_mut().filter(|found| matches!(found.statement.says, Says::Rate { .. })) {
        let note = t!("label-other-rates-are-not-understood");
        found.note = if found.note.is_empty() { note.to_owned() } else { format!("{} {note}", found.note) };
    }
}

/// Two of a kind as one.
///
/// # Errors
/// Both, where they contradict.
fn together(mut one: Found, other: Found) -> Result<Found, Vec<Found>> {
    let Some(says) = joined(&one.statement.says, &other.statement.says) else { return Err(vec![one, other]) };
    let ends = stage(&one.statement.from_stage, &other.statement.from_stage)
        .zip(stage(&one.statement.to_stage, &other.statement.to_stage));
    let Some((from_stage, to_stage)) = ends else { return Err(vec![one, other]) };
    one.statement.from_stage = from_stage;
    one.statement.to_stage = to_stage;
    if one.statement.says != says {
        // What the note says of one sentence is told by the other.
        one.note.clear();
    }
    one.statement.says = says;
    one.sentences.extend(other.sentences);
    one.sentences.dedup();
    Ok(one)
}

/// What two say of an end of the stages; none where they contradict.
fn stage(one: &str, other: &str) -> Option<String> {
    let both = if one.is_empty() { other } else { one };
    (other.is_empty() || other == both).then(|| both.to_owned())
}

fn leave(reading: &mut Reading, sentences: &[Sentence], why: &str) {
    for sentence in sentences {
        if !reading.left.iter().any(|left| left.sentence == sentence.text) {
            reading.left.push(Left::new(&sentence.text, why.to_owned()));
        }
    }
}

/// Whether two say the same kind of thing for the same crop, over the same period.
fn same_kind(one: &Found, other: &Found) -> bool {
    let period = |says: &Says| match says {
        Says::SeasonTotal { per, .. } | Says::ActiveSeasonTotal { per, .. } | Says::Applications { per, .. } => {
            Some(*per)
        }
        _ => None,
    };
    let (a, b) = (&one.statement, &other.statement);
    a.says.name() == b.says.name()
        && a.crop == b.crop
        && period(&a.says) == period(&b.says)
        && (speaks_of(&a.says) == speaks_of(&b.says) || rival(one, other))
}

/// Whether each of two sentences requires, or prefers, an adjuvant of one role: the form would take them as alternatives.
fn rival(one: &Found, other: &Found) -> bool {
    let asked = |found: &Found| match &found.statement.says {
        Says::Adjuvant { class, stance: stance @ (Stance::Required | Stance::Preferred), .. } => {
            Some((Role::of(*class), *stance))
        }
        _ => None,
    };
    let is_apart = !one.sentences.iter().any(|sentence| other.sentences.contains(sentence));
    is_apart && asked(one).is_some() && asked(one) == asked(other)
}

/// Two statements of a kind as one; none where they contradict.
fn joined(one: &Says, other: &Says) -> Option<Says> {
    match (one, other) {
        (Says::Rate { least: a, most: b }, Says::Rate { least: c, most: d }) => {
            Some(Says::Rate { least: end(a.as_ref(), c.as_ref()).ok()?, most: end(b.as_ref(), d.as_ref()).ok()? })
        }
        (Says::Carrier { least: a, most: b }, Says::Carrier { least: c, most: d }) => {
            Some(Says::Carrier { least: end(a.as_ref(), c.as_ref()).ok()?, most: end(b.as_ref(), d.as_ref()).ok()? })
        }
        (Says::Temperature { least: a, most: b }, Says::Temperature { least: c, most: d }) => Some(Says::Temperature {
            least: end(a.as_ref(), c.as_ref()).ok()?,
            most: end(b.as_ref(), d.as_ref()).ok()?,
        }),
        (Says::Wind { most, least: a, gust }, Says::Wind { most: other, least: b, .. })
            if most.value() == other.value() =>
        {
            let least = end(a.as_ref(), b.as_ref()).ok()?;
            Some(Says::Wind { most: most.clone(), least, gust: gust.clone() })
        }
        _ => (one == other).then(|| one.clone()),
    }
}

/// What two say of an end.
///
/// # Errors
/// Where they contradict.
fn end<Q: Quantity + PartialEq>(
    one: Option<&AsTyped<Q>>,
    other: Option<&AsTyped<Q>>,
) -> Result<Option<AsTyped<Q>>, ()> {
    match (one, other) {
        (Some(one), Some(other)) if one.value() != other.value() => Err(()),
        (one, other) => Ok(one.or(other).cloned()),
    }
}

/// Days between applications go with their number: that of the text, else that of the form.
fn spaced(apart: &[Caught], product: &Product, all: &mut Vec<Found>, reading: &mut Reading) {
    let days_of = |one: &Caught| if let Becomes::Apart(days) = one.becomes { days } else { 0 };
    for one in apart {
        let others = apart.iter().any(|other| other.crop == one.crop && days_of(other) != days_of(one));
        if others {
            leave(reading, std::slice::from_ref(&one.sentence), t!("label-the-text-has-several-times-between"));
            continue;
        }
        let counts = |says: &Says| matches!(says, Says::Applications { .. });
        let mut of_crop =
            all.iter_mut().filter(|found| counts(&found.statement.says) && found.statement.crop == one.crop);
        if let (Some(found), None) = (of_crop.next(), of_crop.next()) {
            if let Says::Applications { days_apart, .. } = &mut found.statement.says {
                *days_apart = days_of(one);
            }
            if !found.sentences.contains(&one.sentence) {
                found.sentences.push(one.sentence.clone());
            }
            continue;
        }
        let mut typed = product.label.iter().filter(|typed| counts(&typed.says) && is_for(typed, &one.crop));
        match (typed.next(), typed.next()) {
            (Some(Statement { says: Says::Applications { most, per, .. }, .. }), None) => all.push(Found {
                statement: Statement {
                    crop: one.crop.clone(),
                    ..Statement::new(Says::Applications { most: *most, days_apart: days_of(one), per: *per }, "")
                },
                sentences: vec![one.sentence.clone()],
                note: t!("label-with-the-number-of-applications-that").to_owned(),
            }),
            _ => leave(reading, std::slice::from_ref(&one.sentence), t!("label-the-form-takes-the-days-between")),
        }
    }
}
