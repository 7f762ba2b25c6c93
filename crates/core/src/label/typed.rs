//! What the label of a product does not say as it is typed, so that silence is not taken for consent.

use super::{crop_doubt, directions, for_crop};
use crate::farm::label::Says;
use crate::farm::{Field, Id, Product, Statement};
use crate::finding::{Basis, Finding, Subject, TypedAt};
use crate::language::t;
use crate::words::all_of;

/// A kind of statement, and the word for it.
type Kind = (fn(&Says) -> bool, fn() -> &'static str);

/// A kind of statement that is needed, and the word for it.
type Needed = (directions::Kind, fn() -> &'static str);

/// Kinds of statement that protect people and crops, with the word for each.
const NEEDED: [Needed; 3] = [
    (directions::Kind::ReEntry, || t!("label-typed-a-re-entry-time")),
    (directions::Kind::Wear, || t!("label-typed-protective-equipment")),
    (directions::Kind::HarvestInterval, || t!("label-typed-a-harvest-interval")),
];

/// Kinds of statement that limit, with the word for each.
const LIMITS: [Kind; 7] = [
    (|says| matches!(says, Says::Rate { .. }), || t!("label-typed-rate")),
    (|says| matches!(says, Says::Carrier { .. }), || t!("label-typed-spray-volume")),
    (|says| matches!(says, Says::CropStage), || t!("label-typed-crop-stage")),
    (
        |says| matches!(says, Says::SeasonTotal { .. } | Says::ActiveSeasonTotal { .. }),
        || t!("label-typed-most-a-season"),
    ),
    (|says| matches!(says, Says::HarvestInterval { .. }), || t!("label-typed-harvest-interval")),
    (|says| matches!(says, Says::Applications { .. }), || t!("label-typed-applications")),
    (|says| matches!(says, Says::Dates { .. }), || t!("label-typed-dates")),
];

/// Says what is missing for a pesticide, what is typed for other crops only, and what hangs on a crop that is not typed.
pub(crate) fn judge(id: &Id, product: &Product, field: &Field, findings: &mut Vec<Finding>) {
    if !product.kind.is_pesticide() {
        return;
    }
    let about = || Subject::Product(id.clone());
    let is_missing = |(kind, _): &&Needed| !product.label.iter().any(|statement| kind.is_of(&statement.says));
    if let Some((first, _)) = NEEDED.iter().find(is_missing) {
        let missing: Vec<&str> = NEEDED.iter().filter(is_missing).map(|(_, word)| word()).collect();
        findings.push(
            Finding::check(
                about(),
                t!("label-from-the-label-of-is-not", name = product.name, missing = all_of(missing)),
                Basis::Label(product.name.clone()),
            )
            .hint(t!("label-type-it-in-the-shed-or"))
            .at(TypedAt::Statement(*first)),
        );
    }
    let of_kind = |is: fn(&Says) -> bool| -> Vec<&Statement> {
        product.label.iter().filter(|statement| is(&statement.says)).collect()
    };
    let crop = field.crop.trim();
    let mut words: Vec<&str> = Vec::new();
    let mut crops: Vec<&str> = Vec::new();
    for (is, word) in LIMITS {
        let typed = of_kind(is);
        let of_rates = typed.iter().any(|statement| matches!(statement.says, Says::Rate { .. }));
        let open: Vec<&&Statement> = typed.iter().filter(|statement| crop_doubt(statement, field).is_some()).collect();
        if !open.is_empty() {
            words.push(word());
            crops.extend(open.iter().map(|statement| statement.crop.trim()));
        } else if !of_rates && !typed.is_empty() && !typed.iter().any(|statement| for_crop(statement, field)) {
            // Without a rate for the crop there is a Stop.
            words.push(word());
            crops.extend(typed.iter().map(|statement| statement.crop.trim()));
        }
    }
    if words.is_empty() {
        return;
    }
    crops.sort_unstable();
    crops.dedup();
    let (name, words, crops) = (&product.name, words.join(", "), crops.join(", "));
    let (text, hint) = if crop.is_empty() {
        (
            t!(
                "label-said-for-crops-the-crop-of-name-is-not",
                name = name,
                words = words,
                crops = crops,
                field = field.name
            ),
            t!("label-type-the-crop-on-the-fields"),
        )
    } else {
        (
            t!("label-typed-for-and-not-judged-on", name = name, words = words, crops = crops, crop = crop),
            t!("label-write-the-crop-in-the-same"),
        )
    };
    findings.push(Finding::check(about(), text, Basis::Label(product.name.clone())).hint(hint));
}
