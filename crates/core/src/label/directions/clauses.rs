//! "Do not apply after R3 or within 45 days of harvest" forbids each of two things: a sentence that forbids several, with "or" between
//! them, is read as so many sentences that begin alike.

use super::items::{Item, What};
use super::lists::word;

/// Words with which what is forbidden begins.
const OPENS: [&str; 22] = [
    "within", "after", "before", "beyond", "past", "when", "if", "while", "during", "under", "in", "at", "less",
    "more", "later", "to", "cuando", "si", "durante", "después", "antes", "dentro",
];

/// Words with which a sentence begins that forbids.
const FORBIDS: [(&str, &str); 7] = [
    ("do", "not"),
    ("not", "to"),
    ("no", "aplique"),
    ("no", "aplicar"),
    ("no", "exceda"),
    ("avoid", ""),
    ("never", ""),
];

/// The places of the items of each clause; one with all of them where the sentence forbids one thing or none.
pub(super) fn of(items: &[Item]) -> Vec<Vec<usize>> {
    let whole = || vec![(0..items.len()).collect()];
    let forbids = FORBIDS.iter().any(|(first, next)| word(items, 0) == *first && [word(items, 1), ""].contains(next));
    if !forbids {
        return whole();
    }
    let cuts: Vec<usize> = (1..items.len()).filter(|at| is_cut(items, *at)).collect();
    let Some(first) = cuts.first().copied() else { return whole() };
    let Some(head) = (1..first).find(|at| opens_as(items, *at, first + 1)) else { return whole() };
    let mut all = vec![(0..first).collect::<Vec<usize>>()];
    for (at, cut) in cuts.iter().enumerate() {
        let end = cuts.get(at + 1).copied().unwrap_or(items.len());
        all.push((0..head).chain(cut + 1..end).collect());
    }
    all
}

fn is_cut(items: &[Item], at: usize) -> bool {
    ["or", "nor", "o", "ni"].contains(&word(items, at))
        && (is_number(items, at + 1) || OPENS.contains(&word(items, at + 1)))
}

fn is_number(items: &[Item], at: usize) -> bool {
    matches!(items.get(at).map(|item| &item.what), Some(What::Number(_) | What::Figure(_)))
}

/// Whether a clause may begin at a place as the next one does: a number as a number, a word of place or time as another one.
fn opens_as(items: &[Item], at: usize, next: usize) -> bool {
    if is_number(items, next) {
        is_number(items, at)
    } else {
        // "To soybeans" stands before both.
        OPENS.contains(&word(items, at)) && !["to", "in"].contains(&word(items, at))
            || word(items, at) == word(items, next)
    }
}

#[cfg(test)]
mod tests {
    use super::of;
    use crate::label::directions::items::{What, items};
    use crate::quantity::Units;

    fn clauses(text: &str) -> Vec<String> {
        let all = items(text, true, Units::UsCustomary).items;
        let own = |at: &usize| match all.get(*at).map(|item| &item.what) {
            Some(What::Word(word)) => word.clone(),
            Some(What::Figure(figure)) => figure.most.clone(),
            Some(What::Number(number)) => number.clone(),
            _ => ".".to_owned(),
        };
        of(&all).iter().map(|clause| clause.iter().map(own).collect::<Vec<_>>().join(" ")).collect()
    }

    #[test]
    fn what_is_forbidden_twice_is_two_clauses() {
        assert_eq!(
            clauses("Do not apply to soybeans after R3 or within 45 days of harvest."),
            ["do not apply to soybeans after r3", "do not apply to soybeans within 45 of harvest ."]
        );
        assert_eq!(
            clauses("Do not exceed 22 fl oz/A per application or 44 fl oz/A per year"),
            ["do not exceed 22 per application", "do not exceed 44 per year"]
        );
        for text in [
            "Do not enter or allow entry for 12 hours",
            "Use coarse or coarser droplets",
            "Apply before V8 or within 45 days of harvest",
            "Do not add COC or MSO",
        ] {
            assert_eq!(clauses(text).len(), 1, "{text}");
        }
    }
}
