//! Strips that a label keeps between the spray and a neighbour of the field.
//!
//! A neighbour is matched by its words alone: a label that says "creek" speaks of "creek" and "mill creek", not of "stream". Words on
//! the wind that match none are said to be open. Strips to what is drawn are measured in [`crate::ground`].

use super::{Here, Spoken, listed, names};
use crate::farm::label::Says;
use crate::farm::{Neighbour, Surrounding};
use crate::finding::Finding;
use crate::ground::{named, side_on_card, strips};
use crate::language::{t, yes_or_no};
use crate::quantity::{AsTyped, Length, Quantity};

/// The widest strip that a product keeps to each neighbour of a field, where it reaches it.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    for spoken in here.asked(|says| matches!(says, Says::NotToward { .. })) {
        findings.extend(open(here, &spoken));
    }
    let strips: Vec<Spoken> = here.asked(|says| matches!(says, Says::Buffer { .. })).collect();
    // What is drawn as well has its strip left by the plan.
    let beside = here.field.neighbours.iter().filter(|typed| !strips::stands_for(here.farm, here.field, typed));
    for neighbour in beside {
        let Some((width, spoken)) = reaching(strips.iter().cloned(), neighbour) else { continue };
        let distance = neighbour.distance.as_ref().map(AsTyped::value);
        let units = here.farm.units;
        let side = neighbour.side.trim();
        let down = matches!(spoken.statement.says, Says::Buffer { downwind_only: true, .. });
        let (asked, what, field) = (width.show(units), neighbour.what.trim(), &here.field.name);
        let (who, unsprayed) = (spoken.speaker.name(), here.field.unsprayed.is_some());
        let (text, hint) = match distance {
            Some(distance) => (
                t!(
                    "label-keeps-from-that-is-away",
                    who = who,
                    downwind = yes_or_no(down),
                    width = asked,
                    what = what,
                    side_is_typed = yes_or_no(!side.is_empty()),
                    side = side_on_card(side).aloud(),
                    field = field,
                    distance = distance.show(units)
                ),
                t!(
                    "label-leave-a-strip-of-unsprayed-along",
                    width = (width - distance).show(units),
                    which = yes_or_no(down),
                    which2 = yes_or_no(unsprayed)
                ),
            ),
            None => (
                t!(
                    "label-keeps-from-how-far-that-lies",
                    who = who,
                    downwind = yes_or_no(down),
                    width = asked,
                    what = what,
                    side_is_typed = yes_or_no(!side.is_empty()),
                    side = side_on_card(side).aloud(),
                    field = field
                ),
                t!("label-type-how-far-it-lies-from").to_owned(),
            ),
        };
        findings.push(Finding::check(here.about_field(), spoken.with_doubt(text), spoken.basis()).hint(hint));
    }
}

/// What cannot be told of a statement on the wind: which of the neighbours of the field its words mean, where they match none.
fn open(here: &Here, spoken: &Spoken) -> Option<Finding> {
    let Says::NotToward { what } = &spoken.statement.says else { return None };
    let names = || here.field.neighbours.iter().map(|neighbour| neighbour.what.trim()).filter(|name| !name.is_empty());
    if what.trim().is_empty() || names().any(|name| means(what, name)) {
        return None;
    }
    let drawn: Vec<&Surrounding> = strips::drawn_beside(here.farm, here.field);
    if drawn.iter().any(|drawn| named::mean(what, drawn)) {
        return None;
    }
    let (who, what, field) = (spoken.speaker.name(), what.trim(), &here.field.name);
    let drawn = drawn.iter().map(|drawn| drawn.name.clone());
    let beside: Vec<String> = super::once(names().map(str::to_owned).chain(drawn));
    let (text, hint) = if beside.is_empty() {
        (
            t!("label-speaks-of-wind-toward-what-lies", who = who, what = what, field = field),
            t!("label-type-its-neighbours-with-their-sides"),
        )
    } else {
        (
            t!("label-speaks-of-wind-toward-which-of", who = who, what = what, field = field, beside = listed(&beside)),
            t!("label-name-the-neighbour-that-is-meant"),
        )
    };
    Some(Finding::check(here.about_field(), spoken.with_doubt(text), spoken.basis()).hint(hint))
}

/// The widest strip of a product that reaches a neighbour: one that lies nearer than the strip is wide, or nobody knows how far.
pub(crate) fn reaching<'a>(
    spoken: impl Iterator<Item = Spoken<'a>>,
    neighbour: &Neighbour,
) -> Option<(Length, Spoken<'a>)> {
    let (width, spoken) = spoken
        .filter_map(|spoken| match &spoken.statement.says {
            Says::Buffer { to, width, .. } if means(to, &neighbour.what) => Some((width.value(), spoken)),
            _ => None,
        })
        .max_by_key(|(width, _)| *width)?;
    let distance = neighbour.distance.as_ref().map(AsTyped::value);
    distance.is_none_or(|distance| width.exceeds(distance)).then_some((width, spoken))
}

/// Whether a label's words mean a neighbour. They may list several things, apart by commas or "or".
pub(crate) fn means(to: &str, what: &str) -> bool {
    let words = |text: &str| -> Vec<String> {
        text.to_lowercase()
            .split(|letter: char| !letter.is_alphanumeric())
            .filter(|word| !word.is_empty())
            .map(|word| word.strip_suffix('s').unwrap_or(word).to_owned())
            .collect()
    };
    let what = words(what);
    let one = |to: &str| {
        let to = words(to);
        let (short, long) = if to.len() < what.len() { (&to, &what) } else { (&what, &to) };
        !short.is_empty() && short.iter().all(|word| long.contains(word))
    };
    to.split([',', ';']).flat_map(names::split_or).any(one)
}

#[cfg(test)]
mod tests {
    use super::means;

    #[test]
    fn neighbours_by_their_words() {
        for (to, what) in [("creek", "Mill creek"), ("streams, wells or ponds", "pond"), ("vineyards", "vineyard")] {
            assert!(means(to, what), "{to}");
        }
        for (to, what) in [("creek", "farmyard"), ("", "creek"), ("creek", ""), ("or", "creek")] {
            assert!(!means(to, what), "{to}");
        }
    }
}
