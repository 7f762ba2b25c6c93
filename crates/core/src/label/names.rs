//! Whether words on a label speak of a product: "organophosphate insecticide", "group 14", "crop oil concentrate".

use crate::farm::{AdjuvantClass, Advice, Farm, Field, Law, Product, ProductKind, crop};
use crate::fold::folded;
use crate::language::{self, Language, speaking, t};
use crate::mix::actives;
use crate::words::{named_in, plain};

/// Whether the words name a product: by its own name, an active or its family, a resistance group, its adjuvant class or key, or what
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
    if is(&product.name) || in_any_language(|| is(product.kind.name())) {
        return true;
    }
    if let Some(class) = product.adjuvant_class()
        && (is(class.key())
            || in_any_language(|| {
                is(class.name())
                    || (class.is_oil() && oil().contains(&singular))
                    || (class.holds_ammonium() && ammonium().contains(&singular))
            }))
    {
        return true;
    }
    if !product.kind.holds_actives() {
        return false;
    }
    product.actives.iter().any(|active| {
        let group = actives::group(active);
        let known = actives::facts(&active.name).map(|facts| facts.family.as_str());
        let families = known.into_iter().chain(actives::insecticide_families(product.kind, group));
        let is_family = |family: &str| {
            in_any_language(|| {
                let family = language::names::family(family);
                is(family) || is(&t!("label-family-kind", family = family, kind = product.kind.name()))
            })
        };
        is(&active.name)
            || actives::same(words, &active.name)
            || families.filter(|family| !family.is_empty()).any(is_family)
            || (!group.is_empty()
                && in_any_language(|| {
                    is(&t!("label-group-group", group = group))
                        || is(&t!("label-group-group-kind", group = group, kind = product.kind.name()))
                        || is(&t!("label-group-product", group = group))
                }))
    })
}

/// The things that words list, apart by commas, semicolons, "or" or "and". The comma in "2,4-D" is none of these.
pub(crate) fn parts(what: &str) -> Vec<String> {
    pieces(what)
        .iter()
        .flat_map(|piece| split_or(piece))
        .flat_map(|piece| piece.split(" and "))
        .flat_map(|piece| piece.split(" y "))
        .map(|piece| piece.trim().to_owned())
        .filter(|piece| !piece.is_empty())
        .collect()
}

/// Words apart by commas and semicolons. The comma in "2,4-D" is none of these.
pub(crate) fn pieces(what: &str) -> Vec<String> {
    let mut pieces = vec![String::new()];
    let mut letters = what.chars().peekable();
    let mut before = ' ';
    while let Some(letter) = letters.next() {
        let in_number = before.is_ascii_digit() && letters.peek().is_some_and(char::is_ascii_digit);
        match pieces.last_mut() {
            Some(piece) if letter != ';' && (letter != ',' || in_number) => piece.push(letter),
            _ => pieces.push(String::new()),
        }
        before = letter;
    }
    pieces
}

/// Whether words that may list several things name a product, as a whole or by one of them.
pub fn list(words: &str, product: &Product) -> bool {
    speak_of(words, product) || parts(words).iter().any(|part| speak_of(part, product))
}

/// Whether a law binds a product; a law about nothing in particular binds every pesticide.
pub fn binds(law: &Law, product: &Product) -> bool {
    let about = law.about.trim();
    if about.is_empty() { product.kind.is_pesticide() } else { list(about, product) }
}

/// Whether local advice is about a product; advice about nothing in particular is about every pesticide.
pub fn advises(advice: &Advice, product: &Product) -> bool {
    if advice.about.trim().is_empty() { product.kind.is_pesticide() } else { speak_of(&advice.about, product) }
}

/// Whether the words name anything that [`speak_of`] would know if it were in a mix: a product of the shed, an active or a
/// family of the table of actives, a resistance group, an adjuvant class, a kind of product.
pub fn understood(words: &str, farm: &Farm) -> bool {
    if farm.products.values().any(|product| speak_of(words, product)) {
        return true;
    }
    let words = plain(words);
    let words = words.trim_end_matches('.');
    let singular = words.strip_suffix('s').unwrap_or(words);
    let is = |name: &str| {
        let name = plain(name);
        name == words || name == singular
    };
    let group = words.split(' ').find(|word| word.starts_with(|first: char| first.is_ascii_digit()));
    let is_group = |group: &str| {
        is(&t!("label-group-group", group = group))
            || is(&t!("label-group-product", group = group))
            || ProductKind::ALL.iter().any(|kind| is(&t!("label-group-group-kind", group = group, kind = kind.name())))
    };
    let families = || {
        let known = actives::table().iter().map(|facts| facts.family.as_str());
        known.chain(actives::all_insecticide_families())
    };
    AdjuvantClass::ALL.iter().any(|class| is(class.key()))
        || actives::table().iter().any(|facts| is(&facts.name))
        || in_any_language(|| {
            ProductKind::ALL.iter().any(|kind| is(kind.name()))
                || AdjuvantClass::ALL.iter().any(|class| is(class.name()))
                || oil().contains(&singular)
                || ammonium().contains(&singular)
                || group.is_some_and(is_group)
                || families().filter(|family| !family.is_empty()).any(|family| {
                    let family = language::names::family(family);
                    is(family)
                        || ProductKind::ALL
                            .iter()
                            .any(|kind| is(&t!("label-family-kind", family = family, kind = kind.name())))
                })
        })
}

/// Whether words mean something in one of the languages: a label is typed as it is printed, whatever the program speaks.
pub(super) fn in_any_language(means: impl Fn() -> bool) -> bool {
    Language::ALL.into_iter().any(|language| speaking(language, &means))
}

/// What every oil is called.
fn oil() -> [&'static str; 4] {
    [t!("label-oil"), t!("label-crop-oil"), t!("label-oil-adjuvant"), t!("label-oil-concentrate")]
}

/// What all that holds ammonium is called.
fn ammonium() -> [&'static str; 3] {
    [t!("label-ammonium"), t!("label-ammonium-salt"), t!("label-ammonium-product")]
}

/// The one and the other that words name with an "or" between, in either language.
pub(crate) fn split_or(words: &str) -> impl Iterator<Item = &str> {
    words.split(" or ").flat_map(|words| words.split(" o "))
}

/// The one and the other that words set against each other with a "but" between, in either language.
pub(crate) fn split_but(words: &str) -> impl Iterator<Item = &str> {
    words.split(" but ").flat_map(|words| words.split(" pero "))
}

/// Whether words take back what they name: "not glyphosate tolerant", "dicamba-sensitive", "sin tolerancia a dicamba".
pub(crate) fn denies(words: &str) -> bool {
    const DENIES: [&str; 16] = [
        "no", "not", "non", "never", "nor", "neither", "without", "cannot", "lacks", "lacking", "unknown", "unsure",
        "sin", "nunca", "ni", "tampoco",
    ];
    const BEGIN: [&str; 7] = ["intoleran", "nontoleran", "sensitiv", "sensib", "susceptib", "carec", "desconoc"];
    let words = folded(words);
    words.contains("n't")
        || words
            .split(|letter: char| !letter.is_alphanumeric())
            .any(|word| DENIES.contains(&word) || BEGIN.iter().any(|begin| word.starts_with(begin)))
}

/// Whether the crop of a field is among some, apart by commas, in whatever words: "field soybeans" and "soya convencional" are soybean.
pub(crate) fn grows(crops: &str, field: &Field) -> bool {
    let english = crop::in_english(&field.crop);
    crops.split(',').any(|crop| {
        let names = |end: &&str| {
            let crop = format!("{crop}{end}");
            named_in(&crop, &field.crop) || english.iter().any(|name| named_in(&crop, name))
        };
        ["", "s", "es"].iter().any(names)
    })
}

/// Whether crop and variety, as typed, say that they stand an active by one of its names: both stand in one part of the words, and nothing
/// in them takes it back.
pub(crate) fn stands(active: &[&str], field: &Field) -> bool {
    let typed = format!("{}; {}", field.crop, field.variety).to_lowercase();
    let words = |text: &str, is: fn(&str) -> bool| text.split(|letter: char| !letter.is_alphanumeric()).any(is);
    !denies(&typed)
        && pieces(&typed).iter().flat_map(|piece| split_but(piece)).any(|part| {
            active.iter().any(|name| named_in(name, part))
                && words(part, |word| ["toleran", "resistan", "resisten"].iter().any(|begin| word.starts_with(begin)))
        })
}

#[cfg(test)]
mod tests {
    use super::{denies, list, parts, understood};
    use crate::farm::Farm;

    #[test]
    fn words_that_take_back_are_known_in_both_languages() {
        for words in [
            "not glyphosate tolerant",
            "isn’t dicamba tolerant",
            "dicamba-sensitive",
            "sin tolerancia a dicamba",
            "No tolerante a glifosato",
            "sensible a dicamba",
            "tolerancia desconocida",
            "intolerante",
        ] {
            assert!(denies(words), "{words}");
        }
        for words in ["glyphosate tolerant", "tolerante a dicamba", "resistente a 2,4-D", "notable"] {
            assert!(!denies(words), "{words}");
        }
    }

    #[test]
    fn a_list_names_each_of_its_parts() {
        assert_eq!(parts("2,4-D or dicamba; COC,MSO"), ["2,4-D", "dicamba", "COC", "MSO"]);
        let mut oil =
            crate::farm::Product::new("Oil", crate::farm::ProductKind::Adjuvant, crate::farm::Formulation::EC);
        oil.class = Some(crate::farm::AdjuvantClass::MethylatedSeedOil);
        assert!(list("crop oil concentrate or methylated seed oil", &oil));
        assert!(!list("non-ionic surfactant, ammonium", &oil));
    }

    #[test]
    fn words_that_name_something_are_told_from_words_that_do_not() {
        let farm = Farm::new("Test");
        for words in ["group 14", "Group 1 herbicides", "crop oil concentrates", "UAN", "insecticides", "glyphosate"] {
            assert!(understood(words, &farm), "{words}");
        }
        for words in ["leave a day between", "anything alkaline", "group", "group of farmers"] {
            assert!(!understood(words, &farm), "{words}");
        }
    }
}
