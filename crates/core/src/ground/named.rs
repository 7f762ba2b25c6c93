//! Whether a label's words mean something that is drawn: by its name, or by the words that the table `assets/surroundings.csv` has for
//! what it is. A label that says "streams" means all that is drawn as water: what is drawn says no more of itself.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::{Surrounding, SurroundingKind};
use crate::label::buffer::means;
use crate::table;

#[derive(Clone, Debug, Deserialize)]
struct Row {
    kind: SurroundingKind,
    /// Apart by commas.
    words: String,
    /// Common practice: a label may mean more or less by a word.
    #[cfg_attr(not(test), allow(dead_code))] // The words rest on it, not a number.
    source: String,
}

fn rows() -> &'static [Row] {
    static ROWS: LazyLock<Vec<Row>> =
        LazyLock::new(|| table::read(include_str!("../../../../assets/surroundings.csv")).unwrap_or_default());
    &ROWS
}

/// Whether words mean things drawn as a kind.
fn mean_kind(words: &str, kind: SurroundingKind) -> bool {
    rows().iter().filter(|row| row.kind == kind).any(|row| row.words.split(',').any(|word| says(words, word.trim())))
}

/// Whether a list of words holds one: every word of the table's stands in one of the label's things. The other way round "plants"
/// would be "sensitive plants".
fn says(list: &str, word: &str) -> bool {
    list.split([',', ';']).flat_map(|part| part.split(" or ")).flat_map(|part| part.split(" and ")).any(|part| {
        // As many words or more: "shallow wells" are wells.
        let count = |text: &str| text.split(|letter: char| !letter.is_alphanumeric()).filter(|w| !w.is_empty()).count();
        count(part) >= count(word) && means(part, word)
    })
}

/// The words by which labels name what lies beside a field.
pub(crate) fn words_of_neighbours() -> Vec<String> {
    let mut all: Vec<String> =
        rows().iter().flat_map(|row| row.words.split(',')).map(|word| word.trim().to_owned()).collect();
    all.sort();
    all.dedup();
    all
}

/// Whether a label's words mean something that is drawn.
pub(crate) fn mean(words: &str, drawn: &Surrounding) -> bool {
    mean_name(words, drawn) || mean_kind(words, drawn.kind)
}

/// Whether they mean it by its name.
pub(crate) fn mean_name(words: &str, drawn: &Surrounding) -> bool {
    words.split(" and ").any(|part| means(part, &drawn.name))
}

/// Whether a label's words may mean it for all that is known: they mean no kind at all, or it is drawn as none.
pub(crate) fn may_mean(words: &str, drawn: &Surrounding) -> bool {
    drawn.kind == SurroundingKind::Other || !SurroundingKind::ALL.into_iter().any(|kind| mean_kind(words, kind))
}

#[cfg(test)]
mod tests {
    use super::{may_mean, mean, rows};
    use crate::farm::{Shape, Surrounding, SurroundingKind};

    fn drawn(name: &str, kind: SurroundingKind) -> Surrounding {
        let shape = Shape::parse("POINT (0 0)").unwrap();
        Surrounding { name: name.to_owned(), kind, shape, note: String::new() }
    }

    /// Common practice, no source.
    #[test]
    fn words_of_labels_mean_what_is_drawn() {
        use SurroundingKind::{Hives, Home, Other, SensitiveCrop, Water, Well};
        for (words, name, kind) in [
            ("creeks and wells, ponds", "Mill creek", Water),
            ("creeks and wells, ponds", "Old well", Well),
            ("streams", "North fork", Water),
            ("surface water bodies", "Pond", Water),
            ("vineyards", "Miller's vineyard", SensitiveCrop),
            ("vineyards", "Hill vineyard", Other),
            ("sensitive areas", "The Vogels", Home),
            ("beehives", "Hives at the church", Hives),
            ("apiaries", "by the oak", Hives),
            ("sensitive crops", "Tomatoes", SensitiveCrop),
        ] {
            assert!(mean(words, &drawn(name, kind)), "{words}: {name}");
        }
        for (words, name, kind) in [
            ("wells", "Mill creek", Water),
            ("vineyards", "Tomatoes", SensitiveCrop),
            ("hives", "Home place", Home),
            ("plants", "Oak", SurroundingKind::Habitat),
            ("", "Mill creek", Water),
        ] {
            assert!(!mean(words, &drawn(name, kind)), "{words}: {name}");
        }
        assert!(may_mean("vineyards", &drawn("Tomatoes", SensitiveCrop)));
        assert!(may_mean("wells", &drawn("Something", Other)));
        assert!(!may_mean("wells", &drawn("Mill creek", Water)));
        for row in rows() {
            assert_eq!(row.source, "common practice, no source");
        }
        assert!(SurroundingKind::ALL.iter().all(|kind| *kind == Other || rows().iter().any(|row| row.kind == *kind)));
    }
}
