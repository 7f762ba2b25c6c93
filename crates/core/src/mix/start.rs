//! A product begun from an active: "glyphosate, SL, 540 g ae/L" says enough to reckon with until the label is typed.
//!
//! Nothing of a label is invented: what publications say of the active stands beside the product, not in it.

use crate::farm::{Active, Farm, Formulation, Product, ProductKind};
use crate::language::t;
use crate::mix::actives::{self, ActiveFacts};
use crate::quantity::{ActiveBasis, AsTyped, Concentration, Quantity, number};

/// What to type, for a message.
pub const EXAMPLE: &str = "glyphosate, SL, 540 g ae/L";

/// Below this a bare number of a liquid may as well be pounds in a gallon or per cent, common practice, no source.
const LEAST_BARE_GRAMS: f64 = 30.0;

/// The parts of a line as far as they are there.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Parts {
    /// The active, as typed.
    pub active: String,
    /// The formulation.
    pub formulation: Option<Formulation>,
    /// The content, as typed; perhaps a bare number.
    pub content: String,
    /// "ae" or "ai", where it stands apart from the content.
    pub basis: Option<ActiveBasis>,
}

impl Parts {
    /// The line that they make.
    pub fn line(&self) -> String {
        let basis = self.basis.map_or("", ActiveBasis::short);
        let content = format!("{} {basis}", self.content);
        let formulation = self.formulation.map_or("", Formulation::code);
        let all = [self.active.as_str(), formulation, content.trim()];
        all.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(", ")
    }
}

/// What a line was understood as.
#[derive(Clone, Debug)]
pub struct Started {
    /// ISO common name, or what was typed where that is not known here.
    pub active: String,
    /// The formulation.
    pub formulation: Formulation,
    /// How much of the active the product holds.
    pub content: AsTyped<Concentration>,
    /// How it is counted: as typed, else as labels usually do.
    pub basis: ActiveBasis,
    /// What is worth a look before the product is taken.
    pub notes: Vec<String>,
    /// What is known of the active.
    known: Option<&'static ActiveFacts>,
}

impl Started {
    /// Resistance group; empty where the active is not known here.
    pub fn group(&self) -> &str {
        self.known.map_or("", |facts| facts.group.as_str())
    }

    /// Its name as products are called: "Glyphosate 540 SL".
    pub fn name(&self) -> String {
        let active = crate::words::capital(&self.active);
        format!("{active} {} {}", number_of(self.content.text()), self.formulation.code())
    }

    /// The product: a herbicide with this active and no label statement. A name that the farm has already is numbered.
    pub fn product(&self, farm: &Farm) -> Product {
        let name = self.name();
        let taken = |name: &str| farm.products.values().any(|product| product.name.eq_ignore_ascii_case(name));
        let name = if taken(&name) {
            (2..1000).map(|n| format!("{name} ({n})")).find(|name| !taken(name)).unwrap_or(name)
        } else {
            name
        };
        let mut product = Product::new(&name, ProductKind::Herbicide, self.formulation);
        product.actives.push(Active {
            name: self.active.clone(),
            group: self.group().to_owned(),
            basis: self.basis,
            content: self.content.clone(),
        });
        product
    }
}

/// Takes a line apart: the parts in any order, apart by commas, semicolons or spaces.
///
/// # Errors
/// Says which part stands twice, or what looks like a content and cannot be read.
pub fn parts(text: &str) -> Result<Parts, String> {
    let mut parts = Parts::default();
    let all = words_of(text);
    if let [only] = all.as_slice() {
        // "me" on the way to "mesotrione" is no micro-emulsion.
        let lower = only.to_lowercase();
        if actives::table().iter().any(|facts| facts.name.to_lowercase().starts_with(&lower)) {
            return Ok(Parts { active: only.clone(), ..Parts::default() });
        }
    }
    let mut words = Vec::new();
    for word in all {
        match Formulation::ALL.into_iter().find(|formulation| formulation.code().eq_ignore_ascii_case(&word)) {
            Some(second) if parts.formulation.is_some_and(|first| first != second) => {
                let first = parts.formulation.map_or("", Formulation::code);
                return Err(t!("mix-there-are-two-formulations-and-keep", first = first, code = second.code()));
            }
            Some(formulation) => parts.formulation = Some(formulation),
            None => words.push(word),
        }
    }
    if let Some(content) = take_content(&mut words) {
        parts.content = content;
    } else if let Some(content) = take_bare(&mut words)? {
        parts.content = content;
    }
    if let Some(second) = take_content(&mut words).or_else(|| take_bare(&mut words).ok().flatten()) {
        return Err(t!("mix-there-are-two-contents-and-keep", content = parts.content, second = second));
    }
    words.retain(|word| match basis_of(word) {
        Some(basis) => {
            parts.basis = Some(basis);
            false
        }
        None => true,
    });
    parts.active = words.join(" ");
    Ok(parts)
}

/// Reads a line such as "glyphosate, SL, 540 g ae/L", "mesotrione 480 SC" or "540 g/L SL glyphosate".
///
/// # Errors
/// Says what is missing or cannot be read, and how to write it.
///
/// # Examples
/// ```
/// use tankard_core::mix::start::read;
/// let started = read("mesotrione 480 SC")?;
/// assert_eq!(started.name(), "Mesotrione 480 SC");
/// assert_eq!(started.content.text(), "480 g/L");
/// # Ok::<(), String>(())
/// ```
pub fn read(text: &str) -> Result<Started, String> {
    let parts = parts(text)?;
    let mut missing = Vec::new();
    if parts.active.is_empty() {
        missing.push(t!("mix-the-active-such-as-glyphosate"));
    }
    if parts.formulation.is_none() {
        missing.push(t!("mix-the-formulation-such-as-sl-or"));
    }
    if parts.content.is_empty() {
        missing.push(t!("mix-the-content-such-as-540-g"));
    }
    if missing.len() == 3 {
        return Err(t!("mix-write-an-active-a-formulation-and", example = EXAMPLE));
    }
    let Some(formulation) = parts.formulation.filter(|_| missing.is_empty()) else {
        return Err(t!("mix-still-missing", missing = missing.join("; ")));
    };
    let mut notes = Vec::new();
    let content = content(&parts.content, formulation, &mut notes)?;
    let (active, known) = active(&parts.active, &mut notes)?;
    let typed = match (content.basis(), parts.basis) {
        (Some(one), Some(other)) if one != other => {
            return Err(t!("mix-the-content-is-counted-both-as").to_owned());
        }
        (one, other) => one.or(other),
    };
    let usual = known.map(ActiveFacts::basis);
    if let (Some(typed), Some(usual)) = (typed, usual)
        && typed != usual
    {
        notes.push(t!(
            "mix-labels-usually-count-as-it-was",
            active = active,
            short = usual.short(),
            short2 = typed.short()
        ));
    }
    let basis = typed.or(usual).unwrap_or(ActiveBasis::ActiveIngredient);
    Ok(Started { active, formulation, content, basis, notes, known })
}

/// The words of a line. A comma between two digits belongs to a number or a name such as 2,4-D; "480SC" is two words.
fn words_of(text: &str) -> Vec<String> {
    let letters: Vec<char> = text.chars().collect();
    let digit = |at: Option<usize>| at.and_then(|at| letters.get(at)).is_some_and(char::is_ascii_digit);
    let spaced: String = letters
        .iter()
        .enumerate()
        .map(|(at, letter)| match letter {
            ',' if digit(at.checked_sub(1)) && digit(Some(at + 1)) => ',',
            ',' | ';' => ' ',
            other => *other,
        })
        .collect();
    let mut words = Vec::new();
    for word in spaced.split_whitespace() {
        let number = number_of(word);
        let rest = word.strip_prefix(number.as_str()).unwrap_or_default();
        let joined = Formulation::ALL.iter().any(|formulation| formulation.code().eq_ignore_ascii_case(rest));
        if !number.is_empty() && joined {
            words.push(number);
            words.push(rest.to_owned());
        } else {
            words.push(word.to_owned());
        }
    }
    words
}

/// The number at the head of a text.
fn number_of(text: &str) -> String {
    text.trim().chars().take_while(|letter| letter.is_ascii_digit() || matches!(letter, '.' | ',')).collect()
}

fn basis_of(word: &str) -> Option<ActiveBasis> {
    match word.to_lowercase().as_str() {
        "ae" | "a.e." => Some(ActiveBasis::AcidEquivalent),
        "ai" | "a.i." => Some(ActiveBasis::ActiveIngredient),
        _ => None,
    }
}

/// Takes the longest run of words that reads as a content. A basis that stands apart is left, to be compared.
fn take_content(words: &mut Vec<String>) -> Option<String> {
    for from in 0..words.len() {
        for to in (from + 1..=words.len()).rev() {
            let text = words.get(from..to)?.join(" ");
            if words.get(to - 1).is_some_and(|last| basis_of(last).is_some()) {
                continue;
            }
            if text.starts_with(|letter: char| letter.is_ascii_digit() || letter == '.')
                && Concentration::parse(&text).is_ok()
            {
                words.drain(from..to);
                return Some(text);
            }
        }
    }
    None
}

/// Takes a number without a unit. What follows it must not look like a unit that could not be read.
fn take_bare(words: &mut Vec<String>) -> Result<Option<String>, String> {
    let Some(at) = words.iter().position(|word| !word.is_empty() && number_of(word) == *word) else {
        // "540g/K" is a content that cannot be read, and no name.
        return match words.iter().find(|word| !number_of(word).is_empty() && word.contains(['/', '%'])) {
            Some(word) => Err(unread(word)),
            None => Ok(None),
        };
    };
    if let Some(next) = words.get(at + 1)
        && basis_of(next).is_none()
        && (next.contains(['/', '%']) || next.chars().count() <= 3)
    {
        return Err(unread(&words.get(at..).unwrap_or_default().join(" ")));
    }
    Ok(Some(words.remove(at)))
}

fn unread(text: &str) -> String {
    let problem = Concentration::parse(text).map_or_else(|problem| problem.to_string(), |_| String::new());
    t!("mix-the-content-cannot-be-read", problem = problem)
}

/// The content with its unit.
fn content(text: &str, formulation: Formulation, notes: &mut Vec<String>) -> Result<AsTyped<Concentration>, String> {
    let code = formulation.code();
    let mut text = text.to_owned();
    if number_of(&text) == text {
        let (value, _) = number::take(&text).map_err(|problem| format!("\"{text}\": {problem}."))?;
        let unit = match (formulation.is_liquid(), value) {
            (true, value) if value >= LEAST_BARE_GRAMS => "g/L",
            (true, _) => {
                return Err(t!("mix-of-what-write-lb-gal-g", text = text));
            }
            (false, value) if value <= 100.0 => "% w/w",
            (false, _) => "g/kg",
        };
        notes.push(t!("mix-was-read-as", text = text, unit = unit));
        text = format!("{text} {unit}");
    }
    let content = AsTyped::<Concentration>::parse(&text).map_err(|problem| format!("{problem}."))?;
    let nothing = match content.value() {
        Concentration::MassPerVolume(content, _) => content.is_zero(),
        Concentration::MassFraction(share, _) => share.is_zero(),
    };
    match content.value() {
        _ if nothing => Err(t!("mix-the-content-is-nothing-write-how").to_owned()),
        Concentration::MassPerVolume(..) if !formulation.is_liquid() => {
            Err(t!("mix-is-weighed-so-its-content-goes", code = code))
        }
        Concentration::MassFraction(..) if formulation.is_liquid() => {
            notes.push(t!("mix-a-content-by-weight-of-a").to_owned());
            Ok(content)
        }
        _ => Ok(content),
    }
}

/// The active by its ISO common name, with what is known of it.
fn active(typed: &str, notes: &mut Vec<String>) -> Result<(String, Option<&'static ActiveFacts>), String> {
    let lower = typed.to_lowercase();
    let named = |facts: &&ActiveFacts| lower.split([' ', '+']).any(|word| word.eq_ignore_ascii_case(&facts.name));
    if typed.contains('+') || actives::table().iter().filter(named).count() > 1 {
        return Err(t!("mix-begin-with-one-active-add-the").to_owned());
    }
    if let Some(facts) = actives::facts(typed) {
        if !facts.name.eq_ignore_ascii_case(typed) {
            notes.push(t!("mix-is-counted-as", typed = typed, name = facts.name));
        }
        return Ok((facts.name.clone(), Some(facts)));
    }
    let near = actives::table()
        .iter()
        .map(|facts| (distance(&lower, &facts.name.to_lowercase()), facts))
        .filter(|(distance, facts)| named(facts) || (*distance <= 2 && *distance * 3 < facts.name.chars().count()))
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, facts)| &facts.name);
    notes.push(match near {
        Some(name) => t!("mix-is-not-known-here-is-meant", typed = typed, name = name),
        None => t!("mix-is-not-known-here-type-its", typed = typed),
    });
    Ok((typed.to_owned(), None))
}

/// How many letters must be put in, taken out or changed to make one text of another.
///
/// # References
/// V. I. Levenshtein, Binary codes capable of correcting deletions, insertions, and reversals, Soviet Physics Doklady 10,
/// 1966.
fn distance(one: &str, other: &str) -> usize {
    let other: Vec<char> = other.chars().collect();
    let mut row: Vec<usize> = (0..=other.len()).collect();
    for (at, letter) in one.chars().enumerate() {
        let mut next = vec![at + 1];
        for ((place, pair), wanted) in row.windows(2).enumerate().zip(&other) {
            let [across, above] = pair else { continue };
            let left = next.get(place).copied().unwrap_or_default();
            next.push((across + usize::from(letter != *wanted)).min(above + 1).min(left + 1));
        }
        row = next;
    }
    row.last().copied().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::{Started, distance, parts, read};
    use crate::farm::{Farm, Formulation, ProductKind};
    use crate::quantity::ActiveBasis::{AcidEquivalent, ActiveIngredient};
    use crate::quantity::AsTyped;

    fn understood(text: &str) -> Started {
        read(text).unwrap_or_else(|problem| panic!("{text}: {problem}"))
    }

    #[test]
    fn the_parts_stand_in_any_order_with_commas_or_spaces() {
        for text in [
            "glyphosate, SL, 540 g ae/L",
            "glyphosate SL 540 g ae/L",
            "SL,glyphosate,540 g ae/L",
            "540 g ae/L; glyphosate; sl",
            "  Glyphosate 540 g ae/L SL ",
            "glyphosate, 540 g/L ae, SL",
        ] {
            let started = understood(text);
            assert_eq!((started.active.as_str(), started.formulation), ("glyphosate", Formulation::SL), "{text}");
            // HRAC group 9 and the acid equivalent: the row of `assets/actives.csv`.
            assert_eq!((started.basis, started.group()), (AcidEquivalent, "9"), "{text}");
            assert_eq!(started.name(), "Glyphosate 540 SL", "{text}");
            assert!(started.notes.is_empty(), "{text}: {:?}", started.notes);
        }
    }

    #[test]
    fn a_bare_number_is_read_as_names_of_products_have_it_and_that_is_said() {
        // Common practice, no source: the number in the name of a liquid is g/L, of a dry product per cent or g/kg.
        for (text, content) in [
            ("glyphosate 480 SL", "480 g/L"),
            ("glyphosate 480SL", "480 g/L"),
            ("glyphosate 480, SL", "480 g/L"),
            ("SL 480 glyphosate", "480 g/L"),
            ("glyphosate 75 SG", "75 % w/w"),
            ("glyphosate 757 SG", "757 g/kg"),
        ] {
            let started = understood(text);
            assert_eq!(started.content.text(), content, "{text}");
            assert!(started.notes.iter().any(|note| note.contains(content)), "{text}: {:?}", started.notes);
        }
        let problem = read("glyphosate 4 SL").unwrap_err();
        assert!(problem.contains("4 lb/gal"), "{problem}");
    }

    #[test]
    fn a_name_may_hold_figures_and_commas() {
        for text in ["2,4-D, SL, 480 g ae/L", "2,4-D 480 SL ae", "SL,2,4-D,480 g ae/L", "480SL 2,4-D ae"] {
            let started = understood(text);
            assert_eq!((started.active.as_str(), started.basis), ("2,4-D", AcidEquivalent), "{text}");
            assert_eq!(started.name(), "2,4-D 480 SL", "{text}");
        }
    }

    #[test]
    fn the_typed_basis_wins_and_the_usual_one_is_named() {
        let started = understood("glyphosate, SL, 540 g ai/L");
        assert_eq!(started.basis, ActiveIngredient);
        assert!(
            started.notes.iter().any(|note| note.contains("usually count glyphosate as ae")),
            "{:?}",
            started.notes
        );
        assert!(read("glyphosate, SL, 540 g ai/L ae").is_err());
    }

    #[test]
    fn an_active_that_is_not_known_is_taken_with_a_warning() {
        let started = understood("inventedone 100 EC");
        assert_eq!((started.active.as_str(), started.group(), started.basis), ("inventedone", "", ActiveIngredient));
        assert!(started.notes.iter().any(|note| note.contains("type its group and basis")), "{:?}", started.notes);
        let started = understood("glyfosate 540 SL");
        assert_eq!(started.group(), "", "a likeness is asked about and never taken");
        assert!(started.notes.iter().any(|note| note.contains("Is glyphosate meant?")), "{:?}", started.notes);
        let started = understood("glyphosate potassium salt, SL, 540 g ae/L");
        assert_eq!((started.active.as_str(), started.group()), ("glyphosate", "9"));
        assert!(started.notes.iter().any(|note| note.contains("counted as glyphosate")), "{:?}", started.notes);
    }

    #[test]
    fn what_is_missing_or_wrong_is_said() {
        for (text, says) in [
            ("", "Write an active"),
            ("glyphosate", "Still missing: the formulation, such as SL or WG; the content"),
            ("glyphosate SL", "Still missing: the content"),
            ("glyphosate 540 g/L", "Still missing: the formulation"),
            ("SL 540 g/L", "Still missing: the active"),
            ("glyphosate SL EC 540 g/L", "two formulations, SL and EC"),
            ("glyphosate SL 540 g/L 4 lb/gal", "two contents, 540 g/L and 4 lb/gal"),
            ("glyphosate SL 540 g/K", "cannot be read"),
            ("glyphosate SL 540g/K", "cannot be read"),
            ("glyphosate SL 540 g", "cannot be read"),
            ("glyphosate SL 0 g/L", "nothing"),
            ("glyphosate WG 540 g/L", "WG is weighed"),
            ("glyphosate WG 2000", "more than the whole"),
            ("glyphosate + dicamba 540 SL", "Begin with one active"),
        ] {
            let problem = read(text).err().unwrap_or_else(|| panic!("{text} is read"));
            assert!(problem.contains(says), "{text}: {problem}");
        }
        // A liquid may be stated by weight, but then its density is wanted.
        assert!(understood("glyphosate SL 41 % w/w").notes.iter().any(|note| note.contains("density")));
    }

    #[test]
    fn the_product_holds_no_statement_of_a_label() {
        let mut farm = Farm::new("Test");
        let product = understood("glyphosate, SL, 540 g ae/L").product(&farm);
        assert_eq!((product.name.as_str(), product.kind), ("Glyphosate 540 SL", ProductKind::Herbicide));
        assert!(product.label.is_empty() && product.typed_from.is_empty() && product.registration.is_empty());
        assert!(crate::mix::guidance::on(&product).next().is_some(), "guidance stands beside it");
        farm.products.insert("one".to_owned(), product);
        assert_eq!(understood("540 SL glyphosate").product(&farm).name, "Glyphosate 540 SL (2)");
    }

    #[test]
    fn the_plan_still_says_that_the_label_is_not_typed() {
        let mut farm = Farm::new("Test");
        farm.products.insert("g".to_owned(), understood("glyphosate, SL, 540 g ae/L").product(&farm));
        let mut field = crate::farm::Field::new("Home", AsTyped::parse("80 ac").unwrap());
        field.crop = "corn".to_owned();
        farm.fields.insert("home".to_owned(), field);
        let mut pass = crate::farm::Pass::new("First", "2031-06-12".parse().unwrap());
        farm.rigs.insert("boom".to_owned(), crate::farm::Rig::new("Boom", AsTyped::parse("500 gal").unwrap()));
        pass.rig = "boom".to_owned();
        pass.carrier = AsTyped::parse("10 gal/ac").ok();
        pass.fields = vec!["home".to_owned()];
        pass.mix = vec![crate::farm::Line::new("g", AsTyped::parse("22 fl oz/ac").unwrap())];
        farm.passes.insert("first".to_owned(), pass);
        let plan = crate::plan::plan(&farm, "first").unwrap();
        let said = |words: &str| plan.findings.iter().any(|finding| finding.text.contains(words));
        assert!(said("No rate is typed from the label of Glyphosate 540 SL"), "{:?}", plan.findings);
        assert!(said("From the label of Glyphosate 540 SL, "), "{:?}", plan.findings);
    }

    #[test]
    fn parts_make_the_line_again() {
        let line = parts("480 ae SL 2,4-D").map(|parts| parts.line());
        assert_eq!(line.as_deref(), Ok("2,4-D, SL, 480 ae"));
        assert_eq!(parts("mesotr").map(|parts| parts.line()).as_deref(), Ok("mesotr"));
    }

    #[test]
    fn nothing_that_is_typed_on_the_way_panics() {
        let whole = "2,4-D½ é, SL;; 540.,5 g ae/L % WG +";
        for end in whole.char_indices().map(|(at, _)| at) {
            let _ = read(&whole[..end]);
            let _ = read(&whole[end..]);
        }
    }

    #[test]
    fn distances() {
        // The example that textbooks give.
        assert_eq!(distance("kitten", "sitting"), 3);
        assert_eq!(distance("", "abc"), 3);
        assert_eq!(distance("abc", ""), 3);
    }
}
