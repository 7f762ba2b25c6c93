//! Growth stages, and limits by stage.

use std::cmp::Ordering;
use std::sync::LazyLock;

use rustc_hash::FxHashMap;
use serde::Deserialize;

use super::{Here, by_crop, crop_doubt, for_crop, forbid, place, when};
use crate::farm::label::Says;
use crate::farm::{Field, Statement, crop};
use crate::finding::{Basis, Finding};
use crate::fold::folded;
use crate::language::t;
use crate::words::{all_of, any_of, plain};

/// A growth stage on one of the usual scales.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stage {
    /// Corn and soybean: VE is −1, VC is −0.5, V1 is 1; VT is 99; R1 is 101.
    Leaf(f64),
    /// BBCH, 0 to 99; for small grains the decimal code of Zadoks is the same.
    Bbch(f64),
}

impl Stage {
    /// Reads "V6", "VT", "R1", "VE", "BBCH 14", "R5.5".
    ///
    /// # References
    /// Vegetative and reproductive stages of corn and soybean: Iowa State University Extension, PMR 1009 and PM 1945, from
    /// memory. BBCH: Meier (ed.), Growth stages of mono- and dicotyledonous plants, 2nd ed. 2001.
    pub fn read(text: &str) -> Option<Self> {
        let text = text.trim().to_uppercase();
        if let Some(number) = SCALES.iter().find_map(|scale| text.strip_prefix(scale)) {
            return number.trim().parse::<f64>().ok().filter(|n| (0.0..=99.0).contains(n)).map(Self::Bbch);
        }
        match text.as_str() {
            "VE" => return Some(Self::Leaf(-1.0)),
            "VC" => return Some(Self::Leaf(-0.5)),
            "VT" => return Some(Self::Leaf(99.0)),
            _ => {}
        }
        let leaf = |number: &str| number.parse::<f64>().ok().filter(|n| (0.0..=40.0).contains(n));
        if let Some(number) = text.strip_prefix('V') {
            return leaf(number).map(Self::Leaf);
        }
        text.strip_prefix('R').and_then(leaf).map(|n| Self::Leaf(100.0 + n))
    }

    /// Whether another stage is this one, or at most one step before it.
    fn is_near(self, before: Self) -> bool {
        match (self, before) {
            (Self::Leaf(a), Self::Leaf(b)) | (Self::Bbch(a), Self::Bbch(b)) => (0.0..=1.0).contains(&(a - b)),
            _ => false,
        }
    }

    fn compare(self, other: Self) -> Option<Ordering> {
        match (self, other) {
            (Self::Leaf(a), Self::Leaf(b)) | (Self::Bbch(a), Self::Bbch(b)) => a.partial_cmp(&b),
            _ => None,
        }
    }
}

/// How the decimal code is called.
const SCALES: [&str; 4] = ["BBCH", "ZADOKS", "ZGS", "GS"];

/// A row of `assets/growth-stages.csv`: a stage of a crop by its name, and the span of BBCH that it takes in.
#[derive(Debug, Deserialize)]
struct Row {
    /// Words, apart by strokes, one of which the crop holds.
    crop: String,
    /// Names of the stage, apart by strokes, in English or in Spanish.
    name: String,
    from: f64,
    to: f64,
    /// Where the correspondence is printed.
    #[cfg_attr(not(test), expect(dead_code, reason = "read by the test that asks each row for one"))]
    source: String,
}

fn table() -> &'static [Row] {
    static TABLE: LazyLock<Vec<Row>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../assets/growth-stages.csv")).unwrap_or_default());
    &TABLE
}

/// A stage of some crops.
struct Span {
    /// Words of the crops, as they are compared.
    crops: Vec<String>,
    from: f64,
    to: f64,
}

/// By the name of a stage, as it is compared.
static NAMES: LazyLock<FxHashMap<String, Vec<Span>>> = LazyLock::new(|| {
    let mut names: FxHashMap<String, Vec<Span>> = FxHashMap::default();
    for row in table() {
        for name in row.name.split('|') {
            let crops = row.crop.split('|').map(crop::plain).collect();
            names.entry(comparable(name)).or_default().push(Span { crops, from: row.from, to: row.to });
        }
    }
    names
});

/// Whether a stage of some crop has this name.
pub(crate) fn is_named(text: &str) -> bool {
    NAMES.contains_key(&comparable(text))
}

/// What is compared of a stage: small letters without accents, single spaces.
fn comparable(stage: &str) -> String {
    plain(&folded(stage))
}

/// The span of BBCH that a stage of a crop takes in.
fn span(crop: &str, text: &str) -> Option<(f64, f64)> {
    if let Some(Stage::Bbch(code)) = Stage::read(text) {
        return Some((code, code));
    }
    let named = NAMES.get(&comparable(text))?;
    let crop = crop::words(crop);
    let of_crop = |named: &&Span| named.crops.iter().any(|name| crop.contains(name));
    named.iter().find(of_crop).map(|span| (span.from, span.to))
}

/// Whether a stage comes before, at or after another on a crop; `None` where that cannot be told. Stages on one scale compare
/// as they stand, others by the published correspondence for the crop, where their spans do not overlap.
fn compare(crop: &str, stage: &str, other: &str) -> Option<Ordering> {
    let same = Stage::read(stage).zip(Stage::read(other)).and_then(|(stage, other)| stage.compare(other));
    if same.is_some() {
        return same;
    }
    let (stage_span, other_span) = (span(crop, stage)?, span(crop, other)?);
    if comparable(stage) == comparable(other) {
        Some(Ordering::Equal)
    } else if stage_span.1 < other_span.0 {
        Some(Ordering::Less)
    } else if stage_span.0 > other_span.1 {
        Some(Ordering::Greater)
    } else if stage_span.0 >= other_span.0 && stage_span.1 <= other_span.1 {
        // Wholly inside a stage that has a name: "BBCH 38" is at "flag leaf".
        Some(Ordering::Equal)
    } else {
        None
    }
}

/// Whether a stage of a crop lies within two others, both included; an empty end is open. `None` where they cannot be
/// compared.
pub fn within(crop: &str, stage: &str, from: &str, to: &str) -> Option<bool> {
    let (from, to) = (from.trim(), to.trim());
    // A stage that takes in several codes lies within where all of them do: "heading" is from BBCH 51 on.
    let all_codes = |end: &str, lies: fn((f64, f64), (f64, f64)) -> bool| {
        let (stage, end) = (span(crop, stage)?, span(crop, end)?);
        lies(stage, end).then_some(true)
    };
    let after_from = if from.is_empty() {
        Some(true)
    } else {
        let told = compare(crop, stage, from).map(Ordering::is_ge);
        told.or_else(|| all_codes(from, |stage, from| stage.0 >= from.0))
    };
    let before_to = if to.is_empty() {
        Some(true)
    } else {
        let told = compare(crop, stage, to).map(Ordering::is_le);
        told.or_else(|| all_codes(to, |stage, to| stage.1 <= to.1))
    };
    match (after_from, before_to) {
        (Some(false), _) | (_, Some(false)) => Some(false),
        (Some(true), Some(true)) => Some(true),
        _ => None,
    }
}

/// Whether the stage of a field cannot be compared with the stages of a statement.
pub(crate) fn is_unclear(statement: &Statement, field: &Field) -> bool {
    within(&field.crop, &field.stage, &statement.from_stage, &statement.to_stage).is_none()
}

/// The stages of a statement in words: "from V2 to V8".
pub(crate) fn range(statement: &Statement) -> String {
    match (statement.from_stage.trim(), statement.to_stage.trim()) {
        ("", to) => t!("label-stage-up-to", to = to),
        (from, "") => t!("label-stage-from", from = from),
        (from, to) => t!("label-stage-from-to", from = from, to = to),
    }
}

/// The stage limits of a product on a field. Several windows for a crop are alternatives.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    let field = here.field;
    let windows: Vec<&Statement> = here
        .product
        .label
        .iter()
        .filter(|statement| statement.says == Says::CropStage)
        .filter(|statement| for_crop(statement, field) || crop_doubt(statement, field).is_some())
        .filter(|statement| when::holds(&statement.when, here.situation) != Some(false))
        .collect();
    for of_crop in by_crop(&windows, |statement| *statement, field) {
        of_windows(here, &of_crop, findings);
    }
}

fn of_windows(here: &Here, windows: &[&&Statement], findings: &mut Vec<Finding>) {
    let (product, field) = (here.product, here.field);
    let Some(first) = windows.first() else { return };
    // A window whose crop or condition cannot be told weakens what all of them forbid.
    let doubt = windows
        .iter()
        .map(|statement| {
            let doubts = crop_doubt(statement, field).into_iter().chain(when::doubts(&statement.when, here.situation));
            all_of(doubts)
        })
        .find(|doubt| !doubt.is_empty())
        .unwrap_or_default();
    let ranges = any_of(windows.iter().map(|statement| range(statement)));
    let basis = |statement: &Statement| Basis::Label(place(product, statement));
    let about = || here.about_field();
    let fits = |statement: &Statement| within(&field.crop, &field.stage, &statement.from_stage, &statement.to_stage);
    if let Some(open) = windows.iter().find(|statement| fits(statement) == Some(true)) {
        // Within a leaf of the last stage allowed, a few days' growth end it.
        if Stage::read(&field.stage).zip(Stage::read(&open.to_stage)).is_some_and(|(now, last)| last.is_near(now)) {
            findings.push(
                Finding::check(
                    about(),
                    t!(
                        "label-is-at-stops-at",
                        name = field.name,
                        stage = field.stage,
                        name2 = product.name,
                        to_stage = open.to_stage
                    ),
                    basis(open),
                )
                .hint(t!("label-look-at-the-crop-again-before")),
            );
        }
    } else if windows.iter().any(|statement| fits(statement).is_none()) {
        let (name, field) = (&product.name, &field.name);
        let text = match here.field.stage.as_str() {
            "" => t!("label-may-be-used-at-stages-none-typed", name = name, ranges = ranges, field = field),
            stage => {
                t!("label-may-be-used-is-which-cannot", name = name, ranges = ranges, field = field, stage = stage)
            }
        };
        findings.push(Finding::check(about(), text, basis(first)).hint(t!("label-write-stages-like-v6-r1-or")));
    } else {
        findings.push(
            forbid(
                &doubt,
                about(),
                t!(
                    "label-is-at-may-be-used",
                    name = field.name,
                    stage = field.stage,
                    name2 = product.name,
                    ranges = ranges
                ),
                basis(first),
            )
            .hint(t!("label-leave-the-field-out-or-choose")),
        );
    }
}

#[cfg(test)]
mod tests {
    use super::{NAMES, Stage, table, within};

    #[test]
    fn stages_compare_on_their_own_scale() {
        let on = |stage, from, to| within("", stage, from, to);
        assert_eq!(on("V6", "V2", "V8"), Some(true));
        assert_eq!(on("V8", "", "V8"), Some(true));
        assert_eq!(on("V9", "", "V8"), Some(false));
        assert_eq!(on("R1", "", "V8"), Some(false));
        assert_eq!(on("VT", "V10", "R1"), Some(true));
        assert_eq!(on("BBCH 14", "BBCH 12", "BBCH 16"), Some(true));
        assert_eq!(on("BBCH 14", "V2", "V8"), None, "no crop, no correspondence");
        assert_eq!(on("", "V2", "V8"), None);
        assert_eq!(on("about knee high", "", ""), Some(true));
    }

    // Meier (ed.), Growth stages of mono- and dicotyledonous plants, BBCH monograph, 2nd ed. 2001, and Iowa State University
    // Extension, PMR 1009 and PM 1945, from memory; Feekes beside Zadoks: Large 1954 and Zadoks et al. 1974, from memory.
    #[test]
    fn stages_compare_across_scales_for_the_crop() {
        assert_eq!(within("corn", "BBCH 14", "V2", "V8"), Some(true));
        assert_eq!(within("Field corn", "BBCH 32", "", "V8"), Some(false));
        assert_eq!(within("corn", "V6", "BBCH 12", "BBCH 15"), Some(false));
        assert_eq!(within("corn", "VT", "", "BBCH 39"), Some(false));
        assert_eq!(within("corn", "V10", "", "BBCH 32"), None, "nine leaves or more");
        assert_eq!(within("soybean", "R1", "", "BBCH 59"), Some(false));
        assert_eq!(within("soybeans", "V3", "BBCH 12", "BBCH 60"), Some(true));
        assert_eq!(within("winter wheat", "BBCH 31", "tillering", "joint"), Some(true));
        assert_eq!(within("winter wheat", "BBCH 32", "tillering", "joint"), Some(false));
        assert_eq!(within("spring barley", "Feekes 5", "", "Zadoks 31"), Some(true));
        assert_eq!(within("winter wheat", "Feekes 8", "", "first node"), Some(false));
        assert_eq!(within("winter wheat", "flag leaf", "", "BBCH 38"), None, "37 to 39");
        assert_eq!(within("winter wheat", "boot", "flag leaf", "heading"), Some(true));
        assert_eq!(within("corn", "boot", "flag leaf", "heading"), None, "not of this crop");
    }

    // The spans as above; which Spanish word is which stage: common practice, no source.
    #[test]
    fn stages_and_crops_compare_across_languages() {
        assert_eq!(within("trigo", "macollamiento", "tillering", "joint"), Some(true));
        assert_eq!(within("trigo de invierno", "Espigamiento", "", "flag leaf"), Some(false));
        assert_eq!(within("winter wheat", "heading", "hoja bandera", "floración"), Some(true));
        assert_eq!(within("Cebada", "FLORACION", "", "BBCH 59"), Some(false));
        assert_eq!(within("avena", "embuche", "Feekes 10", "heading"), Some(true));
        assert_eq!(within("maíz", "BBCH 14", "V2", "V8"), Some(true));
        assert_eq!(within("maiz", "espigamiento", "", "V8"), Some(false));
        assert_eq!(within("maíz", "V6", "", "panojamiento"), Some(true));
        assert_eq!(within("soya", "floración", "", "V8"), Some(false));
        assert_eq!(within("Soja", "R1", "", "floracion"), Some(true));
        assert_eq!(within("sorgo", "floración", "", "BBCH 49"), Some(false));
        assert_eq!(within("algodón", "floración", "", "flowering"), Some(true));
        assert_eq!(within("trigo de invierno", "espigamiento", "BBCH 51", "BBCH 69"), Some(true));
        assert_eq!(within("winter wheat", "heading", "BBCH 51", "BBCH 59"), Some(true));
        assert_eq!(within("winter wheat", "heading", "BBCH 55", "BBCH 69"), None, "51 to 59");
        assert_eq!(within("winter wheat", "heading", "BBCH 41", "BBCH 55"), None, "51 to 59");
        assert_eq!(within("maíz", "macollamiento", "", "V8"), None, "not of this crop");
        assert_eq!(within("trigo", "encañe", "", "first node"), None, "30 to 39");
    }

    #[test]
    fn every_row_has_a_source_and_a_span() {
        assert!(table().len() > 50);
        for row in table() {
            assert!(!row.source.is_empty() && row.from <= row.to && row.to <= 99.0 && !row.crop.is_empty(), "{row:?}");
            assert!(row.name.split('|').all(|name| !matches!(Stage::read(name), Some(Stage::Bbch(_)))), "{row:?}");
        }
        // Of two rows that speak of one crop and one name the second would never be read.
        for spans in NAMES.values() {
            let mut crops: Vec<&String> = spans.iter().flat_map(|span| &span.crops).collect();
            crops.sort();
            let count = crops.len();
            crops.dedup();
            assert_eq!(count, crops.len(), "{crops:?}");
        }
    }
}
