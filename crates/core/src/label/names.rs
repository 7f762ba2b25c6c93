//! Whether words on a label speak of a product: "organophosphate insecticide", "group 14", "crop oil concentrate".

use crate::farm::Product;
use crate::mix::actives;

/// What is compared: small letters, single spaces.
fn plain(text: &str) -> String {
    text.to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Whether the words name a product: by its own name, an active, a resistance group, its adjuvant class or key, or what
/// kind of product it is. Plurals count as singulars.
///
/// # Examples
/// ```
/// use tankard_core::farm::{AdjuvantClass, Formulation, Product, ProductKind};
/// use tankard_core::label::names::speak_of;
/// let mut oil = Product::new("Oil 83 (demo)", ProductKind::Adjuvant, Formulation::EC);
/// oil.class = Some(AdjuvantClass::CropOilConcentrate);
/// assert!(speak_of("crop oil concentrates", &oil));
/// assert!(speak_of("COC", &oil));
/// assert!(!speak_of("non-ionic surfactant", &oil));
/// ```
pub fn speak_of(words: &str, product: &Product) -> bool {
    let words = plain(words);
    let words = words.trim_end_matches('.');
    if words.is_empty() {
        return false;
    }
    let singular = words.strip_suffix('s').unwrap_or(words);
    let is = |name: &str| {
        let name = plain(name);
        !name.is_empty() && (name == words || name == singular || name.strip_suffix('s') == Some(singular))
    };
    if is(&product.name) || is(product.kind.name()) {
        return true;
    }
    if let Some(class) = product.adjuvant_class()
        && (is(class.name())
            || is(class.key())
            || (class.is_oil() && ["oil", "crop oil", "oil adjuvant", "oil concentrate"].contains(&singular))
            || (class.holds_ammonium() && ["ammonium", "ammonium salt", "ammonium product"].contains(&singular)))
    {
        return true;
    }
    if !product.kind.holds_actives() {
        return false;
    }
    product.actives.iter().any(|active| {
        let group = actives::group(active);
        is(&active.name)
            || actives::same(words, &active.name)
            || (!group.is_empty()
                && (is(&format!("group {group}"))
                    || is(&format!("group {group} {}", product.kind.name()))
                    || is(&format!("group {group} product"))))
    })
}
