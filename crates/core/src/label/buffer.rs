//! Strips that a label keeps between the spray and a neighbour of the field.
//!
//! A neighbour is matched by its words alone: a label that says "creek" speaks of "creek" and "mill creek", not of "stream".

use super::{Here, Spoken};
use crate::farm::Neighbour;
use crate::farm::label::Says;
use crate::finding::Finding;
use crate::quantity::{AsTyped, Length, Quantity};

/// The widest strip that a product keeps to each neighbour of a field, where it reaches it.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    for neighbour in &here.field.neighbours {
        let Some((width, spoken)) = reaching(here.spoken(), neighbour) else { continue };
        let distance = neighbour.distance.as_ref().map(AsTyped::value);
        let units = here.farm.units;
        let side = match neighbour.side.trim() {
            "" => "beside".to_owned(),
            side => format!("on the {side} of"),
        };
        let (asked, what, field) = (width.show(units), neighbour.what.trim(), &here.field.name);
        let (product, unsprayed) = (&here.product.name, here.field.unsprayed.is_some());
        let (text, hint) = match distance {
            Some(distance) => (
                format!("{product} keeps {asked} from {what}; that {side} {field} is {} away", distance.show(units)),
                format!(
                    "Leave a strip of {} unsprayed along that edge{}.",
                    (width - distance).show(units),
                    if unsprayed { ", unless what stays unsprayed takes it in" } else { "" }
                ),
            ),
            None => (
                format!("{product} keeps {asked} from {what}; how far that {side} {field} lies off is not typed"),
                "Type how far it lies from the edge on the field's page, or leave the strip.".to_owned(),
            ),
        };
        let text = if spoken.doubt.is_empty() { text } else { format!("{text}; the label says so {}", spoken.doubt) };
        findings.push(Finding::check(here.about_field(), text, spoken.basis()).hint(hint));
    }
}

/// The widest strip of a product that reaches a neighbour: one that lies nearer than the strip is wide, or nobody knows how far.
pub(crate) fn reaching<'a>(
    spoken: impl Iterator<Item = Spoken<'a>>,
    neighbour: &Neighbour,
) -> Option<(Length, Spoken<'a>)> {
    let (width, spoken) = spoken
        .filter_map(|spoken| match &spoken.statement.says {
            Says::Buffer { to, width } if means(to, &neighbour.what) => Some((width.value(), spoken)),
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
    to.split([',', ';']).flat_map(|part| part.split(" or ")).any(one)
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
