//! Directions of labels, read from their text: whatever stands there, nothing is read that does not stand there. No published source: it
//! follows from what reading means.

use proptest::prelude::*;
use tankard_core::farm::{Active, Formulation, Product, ProductKind, Says};
use tankard_core::label::directions::{Reading, read};
use tankard_core::quantity::unit::{self, Unit, normal};
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity, Units};
use tankard_tests::cases;

/// Pieces of directions, out of which sentences come that mean something, nearly mean something, or turn it.
const PIECES: [&str; 160] = [
    "Apply",
    "apply",
    "Use",
    "use",
    "Do not",
    "do not",
    "not",
    "never",
    "exceed",
    "more than",
    "less than",
    "at least",
    "a minimum of",
    "a maximum of",
    "Maximum",
    "up to",
    "16",
    "22",
    "1.5",
    "1 1/2",
    "½",
    "1/2",
    "0,25",
    "1,200",
    "2",
    "two",
    "12",
    "14",
    "35",
    "50",
    "to",
    "-",
    "–",
    "or",
    "and",
    "between",
    "fl oz",
    "fl. oz.",
    "oz",
    "pt",
    "pints",
    "quarts",
    "gal",
    "gallons",
    "lb",
    "lb ae",
    "l",
    "L",
    "ml",
    "kg",
    "per acre",
    "/A",
    "/ha",
    "per hectare",
    "% v/v",
    "per 100 gallons",
    "GPA",
    "of water",
    "water",
    "of spray solution",
    "in",
    "days",
    "hours",
    "h",
    "weeks",
    "mph",
    "km/h",
    "m/s",
    "of harvest",
    "before harvest",
    "PHI",
    "REI",
    "Pre-harvest interval",
    "restricted-entry interval",
    "enter",
    "treated areas",
    "for",
    "within",
    "rainfast",
    "rainfall is expected",
    "when wind exceeds",
    "wind speed",
    "applications",
    "between applications",
    "per year",
    "per season",
    "per application",
    "in any 12-month period",
    "coarse",
    "medium",
    "fine",
    "very coarse",
    "droplets",
    "or coarser",
    "corn",
    "soybean",
    "winter wheat",
    "unless",
    "if",
    "by air",
    "Allow",
    "\n",
    "\n\n",
    ". ",
    "Add",
    "Always add",
    "COC",
    "NIS",
    "AMS",
    "methylated seed oil",
    "crop oil concentrate",
    "at",
    "+",
    "V8",
    "after",
    "before corn exceeds",
    "up to and including",
    "BBCH",
    "30",
    "feet",
    "-foot buffer",
    "Maintain a",
    "surface water",
    "streams",
    "Wear",
    "gloves",
    "tank mix with",
    "insecticides",
    "grain",
    "harvest",
    "85°F",
    "when temperatures exceed",
    "temperature inversion",
    "must",
    "(",
    ")",
    "(24 fl oz)",
    "(1)",
    ";",
    ":",
    "minutes",
    "months",
    "inches",
    "or within",
    "boom height",
    "ground speed",
    "Rotational crops:",
    "Clean-up:",
    "do not plant",
    "rain-free period",
    "finer than",
    "one of the following",
    "per crop",
    "downwind",
    "No aplique",
    "más de",
    "por año",
    "días",
    "si",
    "gotas gruesas",
];

fn product(formulation: Formulation) -> Product {
    let mut product = Product::new("Invented", ProductKind::Herbicide, formulation);
    if let Ok(content) = AsTyped::parse("540 g ae/L") {
        let name = "inventedone".to_owned();
        product.actives.push(Active { name, group: String::new(), basis: ActiveBasis::AcidEquivalent, content });
    }
    product
}

/// Whether a number stands in a text: not as a part of another.
fn has_number(text: &str, number: &str) -> bool {
    let part = |sign: Option<char>| sign.is_some_and(|sign| sign.is_ascii_digit());
    text.match_indices(number)
        .any(|(at, _)| !part(text[..at].chars().next_back()) && !part(text[at + number.len()..].chars().next()))
}

fn has_count(text: &str, count: u32) -> bool {
    let words = [
        (1, "one"),
        (1, "once"),
        (2, "two"),
        (2, "twice"),
        (3, "three"),
        (4, "four"),
        (5, "five"),
        (6, "six"),
        (7, "seven"),
        (10, "ten"),
        (12, "twelve"),
        (14, "fourteen"),
        (24, "twenty-four"),
        (30, "thirty"),
        (2, "dos"),
    ];
    let is_word = |(number, word): &(u32, &str)| *number == count && text.to_lowercase().contains(word);
    has_number(text, &count.to_string()) || words.iter().any(is_word)
}

/// Whether a time of a statement stands in a text as it is, or in a unit that it is a whole number of.
fn has_time(text: &str, time: u32, each: u32) -> bool {
    has_count(text, time) || (time.is_multiple_of(each) && has_count(text, time / each))
}

/// Whether a unit stands in a text by any of its names.
fn has_unit(text: &str, unit: &str) -> bool {
    let text = normal(text);
    if unit == "gpa" || unit == "mph" || unit == "% v/v" {
        return text.contains(&normal(unit)) || (unit == "mph" && text.contains("miles/hour"));
    }
    let named = |table: &[Unit], name: &str| {
        unit::find(table, name).is_some_and(|unit| unit.names.iter().any(|name| text.contains(name)))
    };
    let bare = |name: &str| {
        name.trim_end_matches(" ae").trim_end_matches(" ai").trim_start_matches("100 ").trim().to_lowercase()
    };
    match unit.split_once('/') {
        Some((top, bottom)) => {
            let (top, bottom) = (bare(top), bare(bottom));
            let speed = unit::find(unit::SPEED, &normal(unit)).is_some() && text.contains(&normal(unit));
            speed
                || ((named(unit::VOLUME, &top) || named(unit::MASS, &top))
                    && (named(unit::AREA, &bottom)
                        || named(unit::VOLUME, &bottom)
                        || (bottom == "ac" && text.contains("/a"))))
        }
        None => text.contains(&normal(unit)),
    }
}

fn stands<Q: Quantity>(text: &str, value: &AsTyped<Q>) -> Result<(), TestCaseError> {
    let typed = value.text();
    let end = typed.find(|sign: char| sign.is_alphabetic() || sign == '%').unwrap_or(typed.len());
    let (number, unit) = typed.split_at(end);
    prop_assert!(has_number(text, number.trim()), "{number} of {typed} does not stand in {text:?}");
    prop_assert!(has_unit(text, unit.trim()), "{unit} of {typed} does not stand in {text:?}");
    Ok(())
}

/// Whether a statement is in the words of the label, whatever they are.
fn is_in_own_words(says: &Says) -> bool {
    matches!(says, Says::Wear { .. } | Says::Handling { .. } | Says::CleanOut { .. })
}

fn each_stands(text: &str, reading: &Reading) -> Result<(), TestCaseError> {
    for found in &reading.found {
        let own: String = found.sentences.iter().flat_map(|sentence| [sentence.text.as_str(), " "]).collect();
        match &found.statement.says {
            Says::Rate { least, most } => {
                for end in [least, most].into_iter().flatten() {
                    stands(&own, end)?;
                }
            }
            Says::Carrier { least, most } => {
                for end in [least, most].into_iter().flatten() {
                    stands(&own, end)?;
                }
            }
            Says::SeasonTotal { most, .. } | Says::ActiveSeasonTotal { most, .. } => stands(&own, most)?,
            Says::Wind { most, least, .. } => {
                stands(&own, most)?;
                if let Some(least) = least {
                    stands(&own, least)?;
                }
            }
            Says::Applications { most, days_apart, .. } => {
                prop_assert!(has_count(&own, *most), "{most} in {own:?}");
                prop_assert!(*days_apart == 0 || has_time(&own, *days_apart, 7), "{days_apart} in {own:?}");
            }
            Says::HarvestInterval { days } => prop_assert!(has_time(&own, *days, 7), "{days} in {own:?}"),
            Says::ReEntry { hours } => prop_assert!(has_time(&own, *hours, 24), "{hours} in {own:?}"),
            // Minutes become the next whole hour, never less.
            Says::RainFree { hours } => {
                let minutes = hours.saturating_sub(1) * 60 + 1..=hours * 60;
                let by_minutes = own.contains("minutes") && minutes.into_iter().any(|minutes| has_count(&own, minutes));
                prop_assert!(has_count(&own, *hours) || by_minutes, "{hours} in {own:?}");
            }
            // Days become the months that hold them, never fewer: none has more than 31.
            Says::PlantBack { months, .. } => {
                let days = months.saturating_sub(1) * 27..=months * 31;
                let by_days = days.into_iter().any(|days| has_count(&own, days) || has_time(&own, days, 7));
                prop_assert!(has_count(&own, *months) || by_days, "{months} in {own:?}");
            }
            Says::BoomHeight { most } => {
                let number = most.text().split(' ').next().unwrap_or_default();
                prop_assert!(has_number(&own, number), "{number} in {own:?}");
            }
            Says::GroundSpeed { most } => stands(&own, most)?,
            Says::Humidity { least, most } => {
                for end in [least, most].into_iter().flatten() {
                    prop_assert!(
                        has_number(&own, end.text().trim_end_matches(['%', ' '])),
                        "{} in {own:?}",
                        end.text()
                    );
                }
            }
            Says::Droplets { finest, coarsest } => {
                let own = own.to_lowercase();
                prop_assert!(own.contains(finest.name()), "{finest:?} in {own:?}");
                prop_assert!(coarsest.is_none_or(|class| own.contains(class.name())), "{coarsest:?} in {own:?}");
            }
            Says::Temperature { least, most } => {
                for end in [least, most].into_iter().flatten() {
                    let number = end.text().trim_end_matches(['°', 'F', 'C', ' ']).to_owned();
                    prop_assert!(has_number(&own, &number), "{number} in {own:?}");
                }
            }
            Says::NoInversion => prop_assert!(own.contains("inversion")),
            Says::CropStage => {
                for stage in [&found.statement.from_stage, &found.statement.to_stage] {
                    let stands = stage.split(' ').all(|part| own.to_uppercase().contains(&part.to_uppercase()));
                    prop_assert!(stands, "{stage} in {own:?}");
                }
            }
            Says::Buffer { to, width, .. } => {
                let number = width.text().split(' ').next().unwrap_or_default();
                prop_assert!(has_number(&own, number) && own.contains(to.as_str()), "{to}, {number} in {own:?}");
            }
            Says::Adjuvant { class, least, most, .. } => {
                let lower = own.to_lowercase();
                let is_named = lower.contains(class.word()) || own.contains(class.key());
                prop_assert!(is_named, "{class:?} in {own:?}");
                for end in [least, most].into_iter().flatten() {
                    stands(&own, end)?;
                }
            }
            Says::NotWith { what, .. }
            | Says::Wear { what }
            | Says::Handling { what }
            | Says::CleanOut { how: what, .. } => {
                prop_assert!(!what.is_empty() && own.contains(what.as_str()), "{what} in {own:?}");
            }
            other => prop_assert!(false, "{other:?} is not read from directions: {text:?}"),
        }
        // The crop stands in the text too, and what is marked as read lies in its sentence.
        for crop in found.statement.crop.split(", ").filter(|crop| !crop.is_empty()) {
            prop_assert!(text.to_lowercase().contains(crop), "{crop} in {text:?}");
        }
        for sentence in &found.sentences {
            prop_assert!(sentence.read.iter().all(|part| sentence.text.get(part.clone()).is_some()));
            prop_assert!(
                sentence.read.iter().zip(sentence.read.iter().skip(1)).all(|(one, next)| one.end <= next.start)
            );
        }
        // What turns a sentence is never passed over.
        if is_in_own_words(&found.statement.says) {
            continue;
        }
        let lower = own.to_lowercase();
        // "Do not apply unless the wind is between 3 and 10 mph" says what may be.
        let may_say_unless = matches!(found.statement.says, Says::Wind { .. } | Says::Droplets { .. });
        prop_assert!(may_say_unless || !lower.contains("unless"), "{own:?}");
        prop_assert!(!lower.contains("by air") && !lower.contains("never"), "{own:?}");
    }
    Ok(())
}

fn each_number_is_told(text: &str, reading: &Reading) -> Result<(), TestCaseError> {
    // No figure vanishes: it stands in a sentence that was read or in one that is said to be left.
    let told: String = reading
        .left
        .iter()
        .map(|left| left.sentence.as_str())
        .chain(reading.found.iter().flat_map(|found| found.sentences.iter().map(|sentence| sentence.text.as_str())))
        .collect();
    for sign in text.chars().filter(char::is_ascii_digit) {
        prop_assert!(told.contains(sign), "{sign} of {text:?}");
    }
    // Nor does a word, but of a heading that limits nothing and stands over something.
    let limits = ["not", "never", "unless", "before", "after", "must", "wear", "more", "less", "within", "maximum"];
    // A dash before a word may be a bullet.
    let words = || {
        text.split_whitespace()
            .map(|word| word.trim_matches(|sign: char| !sign.is_alphanumeric()))
            .filter(|word| !word.is_empty())
    };
    for word in words() {
        let is_limit = limits.contains(&word.to_lowercase().as_str());
        prop_assert!(told.contains(word) || !is_limit, "{word} of {text:?}");
    }
    if !text.contains(char::is_uppercase) {
        for word in words() {
            prop_assert!(told.contains(word), "{word} of {text:?}");
        }
    }
    // What limits comes first.
    prop_assert!(reading.left.is_sorted_by_key(|left| !left.has_limit));
    Ok(())
}

proptest! {
    #![proptest_config(cases(3000))]

    #[test]
    fn nothing_is_read_that_does_not_stand_there(
        pieces in prop::collection::vec(prop::sample::select(&PIECES[..]), 0..30),
        is_dry: bool,
        units in prop::sample::select(&[Units::UsCustomary, Units::Imperial, Units::Metric][..]),
    ) {
        let text = pieces.join(" ");
        let reading = read(&text, &product(if is_dry { Formulation::WG } else { Formulation::SL }), units);
        each_stands(&text, &reading)?;
        each_number_is_told(&text, &reading)?;
    }

    #[test]
    fn any_text_is_borne(text in "\\PC{0,200}") {
        let reading = read(&text, &product(Formulation::SL), Units::UsCustomary);
        each_stands(&text, &reading)?;
    }
}

/// Nothing is passed over in silence: each sentence stands in a line that was read or among those left, as cut at its full stops.
#[test]
fn each_sentence_of_a_text_is_told() {
    // Invented, in the style of labels and of publications for growers.
    let text = "Apply 3 fl oz per acre to field corn in a minimum of 10 gallons of water per acre. Always add COC at 1% v/v or NIS at \
                0.25% v/v. Do not use methylated seed oil in postemergence applications. Do not tank mix with organophosphate \
                insecticides in corn. Do not apply to corn after V8. Do not harvest corn grain within 45 days of application. Do not \
                apply within 30 feet of surface water. Wear long sleeves. Only certified people may mix it. Keep it cool.";
    let reading = read(text, &product(Formulation::SL), Units::UsCustomary);
    for sentence in text.split_inclusive(". ").map(str::trim) {
        let is_read = reading.found.iter().flat_map(|found| &found.sentences).any(|own| own.text == sentence);
        let is_left = reading.left.iter().any(|left| left.sentence == sentence);
        assert!(is_read != is_left, "{sentence}: {:?}", reading.left);
    }
    assert_eq!(reading.found.len(), 9, "{:?}", reading.left);
    assert_eq!(reading.left.len(), 3, "{:?}", reading.left);
}

/// Out of the pieces sentences do come that are read, else the property above would hold of nothing.
#[test]
fn the_pieces_make_sentences_that_are_read() {
    for text in [
        "Apply 16 to 22 fl oz per acre . ",
        "REI 12 h",
        "Maximum two applications per year",
        "Use coarse or coarser droplets",
        "Do not exceed 22 pt /A per season",
        "Always add COC at 2 % v/v",
        "Do not apply to corn after V8",
        "Do not apply within 30 feet of surface water",
        "Wear gloves",
        "Do not tank mix with insecticides in corn",
        "Do not apply when temperatures exceed 85°F",
    ] {
        assert_eq!(read(text, &product(Formulation::SL), Units::UsCustomary).found.len(), 1, "{text}");
    }
}
