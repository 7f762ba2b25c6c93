//! What the headings over a sentence say of it: for which crop it is, at which time, and whether it is for another use altogether.

use super::build::take;
use super::crops;
use super::items::{Item, What, items};
use super::sentences::Piece;
use super::table::{Says as Phrase, of_kind, turns};
use crate::language::t;
use crate::quantity::Units;

fn words(heading: &str) -> Vec<Item> {
    // Headings have no figures.
    items(heading, true, Units::Metric).items
}

/// The crop of a sentence: that of its own words, else that of the innermost heading which names one.
///
/// # Errors
/// Where a heading may mean another use or something else than the product's rate, or its crop is not told for sure.
pub(super) fn crop(piece: &Piece, own: &str, is_rate: bool) -> Result<String, String> {
    let mut crop = own.to_owned();
    let over = piece.headings.len() - usize::from(piece.is_own_in_text).min(piece.headings.len());
    for heading in piece.headings.iter().take(over).rev() {
        let items = words(heading);
        let mut taken = vec![false; items.len()];
        let named =
            crops::of(&items, &taken).map_err(|_| t!("label-it-stands-under-the-heading-whose", heading = heading))?;
        for at in &named.at {
            if let Some(slot) = taken.get_mut(*at) {
                *slot = true;
            }
        }
        for says in [Phrase::Heading, Phrase::Rotation, Phrase::Timing, Phrase::Aside] {
            take(says, &items, &mut taken);
        }
        if !is_rate {
            take(Phrase::HeadingOfOthers, &items, &mut taken);
        }
        if taken.contains(&false) {
            return Err(t!("label-it-stands-under-the-heading-which", heading = heading));
        }
        if crop.is_empty() {
            crop = named.names;
        }
    }
    Ok(crop)
}

/// The time of the crop that a heading names.
pub(super) fn timing(piece: &Piece) -> Option<String> {
    piece.headings.iter().rev().find_map(|heading| {
        let items = words(heading);
        let free = vec![false; items.len()];
        let says_when = of_kind(Phrase::Timing).any(|phrase| phrase.find(&items, &free).is_some());
        says_when.then(|| heading.to_lowercase())
    })
}

/// Whether a heading says that crops stand below it which may follow.
pub(super) fn are_of_rotation(piece: &Piece) -> bool {
    piece.headings.iter().any(|heading| {
        let items = words(heading);
        let free = vec![false; items.len()];
        of_kind(Phrase::Rotation).any(|phrase| phrase.find(&items, &free).is_some())
    })
}

/// Takes the words of a heading that stand in the sentence itself, before its colon.
pub(super) fn take_own(piece: &Piece, items: &[Item], taken: &mut [bool]) {
    let Some(heading) = piece.headings.last().filter(|_| piece.is_own_in_text) else { return };
    let length = items.iter().take_while(|item| item.at.end <= heading.len()).count();
    let Some(head) = items.get(..length) else { return };
    let Some(taken) = taken.get_mut(..length) else { return };
    take(Phrase::Rotation, head, taken);
    // What may turn a sentence does so in its heading, too.
    let turned = |(item, taken): (&Item, &bool)| !taken && matches!(&item.what, What::Word(word) if turns(word));
    if !head.iter().zip(taken.iter()).any(turned) {
        take(Phrase::Heading, head, taken);
    }
}
