//! Sentences as labels write them, invented; no label is copied. What each says follows from its words alone, no source.

use super::against::{Stands, enter, in_form, stands};
use super::{Reading, read};
use crate::farm::{Active, Formulation, Product, ProductKind, Says, Statement};
use crate::quantity::{ActiveBasis, AsTyped, Units};

fn product(formulation: Formulation) -> Product {
    let mut product = Product::new("Invented", ProductKind::Herbicide, formulation);
    product.actives.push(Active {
        name: "inventedone".to_owned(),
        group: String::new(),
        basis: ActiveBasis::AcidEquivalent,
        content: AsTyped::parse("540 g ae/L").unwrap(),
    });
    product
}

fn liquid(text: &str) -> Reading {
    read(text, &product(Formulation::SL), Units::UsCustomary)
}

/// "rate: 16 to 22 fl oz/ac", with the crop where there is one.
fn lines(reading: &Reading) -> Vec<String> {
    reading
        .found
        .iter()
        .map(|found| {
            let crop =
                if found.statement.crop.is_empty() { String::new() } else { format!(" in {}", found.statement.crop) };
            format!("{}{crop}: {}", found.statement.says.name(), in_form(&found.statement, None))
        })
        .collect()
}

#[test]
fn each_phrase_is_read() {
    for (text, expected) in [
        ("Apply 16 to 22 fl oz per acre.", "rate: 16 to 22 fl oz/ac"),
        ("Apply at a rate of 1 1/2 pints per acre to actively growing weeds.", "rate: 1 1/2 pt/ac"),
        ("Use 1/2 to 1 pt/A.", "rate: 1/2 to 1 pt/ac"),
        ("Application rate: 1.5–2.5 l/ha", "rate: 1.5 to 2.5 L/ha"),
        ("Use 1 quart per 100 gallons of spray solution.", "rate: 1 qt/100 gal"),
        ("Use at 0.5% v/v.", "rate: 0.5 % v/v"),
        ("Apply up to 32 fl. oz./A.", "rate: at most 32 fl oz/ac"),
        ("Do not apply less than 16 fl oz per acre.", "rate: at least 16 fl oz/ac"),
        ("Do not exceed 22 fl oz per acre per application.", "rate: at most 22 fl oz/ac"),
        ("Maximum individual dose: 2.5 l/ha", "rate: at most 2.5 L/ha"),
        ("Apply in a minimum of 10 gallons of water per acre.", "spray volume: at least 10 gal/ac"),
        ("Apply in 10 to 20 gallons of water per acre.", "spray volume: 10 to 20 gal/ac"),
        ("Apply in at least 10 GPA.", "spray volume: at least 10 gpa"),
        ("Water volume: 100-200 L/ha", "spray volume: 100 to 200 L/ha"),
        ("Do not apply less than 10 gallons of water per acre.", "spray volume: at least 10 gal/ac"),
        ("Do not exceed 44 fl oz/A per season.", "most a season: at most 44 fl oz/ac a year"),
        (
            "Do not apply more than 44 fl oz of this product per acre per calendar year.",
            "most a season: at most 44 fl oz/ac a year",
        ),
        (
            "Do not apply more than a total of 64 fl oz/A in any 12-month period.",
            "most a season: at most 64 fl oz/ac in 12 months",
        ),
        ("Maximum total dose: 5 l/ha per crop", "most a season: at most 5 L/ha a crop"),
        ("Do not exceed 2 lb a.e. per acre per year.", "most active a season: inventedone, at most 2 lb ae/ac a year"),
        ("Do not apply within 50 days of harvest.", "harvest, graze: 50 days before harvest or grazing"),
        ("Pre-harvest interval (PHI): 1 day", "harvest, graze: 1 day before harvest or grazing"),
        ("PHI 35 days", "harvest, graze: 35 days before harvest or grazing"),
        ("Do not enter treated areas for 12 hours.", "keep out: 12 hours, without protection"),
        (
            "Do not enter or allow worker entry into treated areas during the restricted-entry interval (REI) of 12 hours.",
            "keep out: 12 hours, without protection",
        ),
        ("REI 12 h", "keep out: 12 hours, without protection"),
        ("Rainfast in 4 hours.", "rain-free: 4 hours without rain"),
        ("Do not apply if rainfall is expected within 1 hour.", "rain-free: 1 hour without rain"),
        ("Do not spray when wind exceeds 10 mph.", "wind: at most 10 mph"),
        ("Maximum wind speed: 15 km/h", "wind: at most 15 km/h"),
        ("Apply only when wind speed is between 3 and 10 miles per hour.", "wind: 3 to 10 mph"),
        ("Use coarse droplets.", "droplets: coarse alone"),
        ("Apply medium to coarse droplets.", "droplets: medium to coarse"),
        ("Use very coarse or coarser spray droplets.", "droplets: very coarse or coarser"),
        ("Select nozzles that produce coarse or larger droplets.", "droplets: coarse or coarser"),
        ("Do not make more than 2 applications per year.", "applications: at most 2 a year"),
        ("Maximum 2 applications", "applications: at most 2 a year"),
        ("Maximum two applications per crop", "applications: at most 2 a crop"),
        ("A maximum of 3 applications per calendar year.", "applications: at most 3 a year"),
        ("Maximum number of applications: 1 per crop", "applications: at most 1 a crop"),
        ("A maximum of two applications may be made per growing season.", "applications: at most 2 a year"),
        ("Do not exceed 22 fl oz/A per application in corn.", "rate in corn: at most 22 fl oz/ac"),
        (
            "Do not apply to soybeans within 80 days of harvest.",
            "harvest, graze in soybeans: 80 days before harvest or grazing",
        ),
        ("Do not apply to tolerant corn within 80 days of harvest.", ""),
        ("Corn: apply 3 fl oz per acre.", "rate in corn: 3 fl oz/ac"),
        ("In wheat, barley and oats apply 3 fl oz/A.", "rate in wheat, barley, oats: 3 fl oz/ac"),
        // As publications for growers put it.
        ("Max seasonal rate: 7.7 fl oz/A", "most a season: at most 7.7 fl oz/ac a year"),
        ("Not to exceed 7.7 fl oz/A per year.", "most a season: at most 7.7 fl oz/ac a year"),
        ("Maximum rate per application 3 fl oz/A", "rate: at most 3 fl oz/ac"),
        ("Rate: 3 fl oz/A", "rate: 3 fl oz/ac"),
        ("Apply early at 3 fl oz per acre.", "rate: 3 fl oz/ac"),
        ("Apply broadcast to corn at a rate of 3 fl oz/A.", "rate in corn: 3 fl oz/ac"),
        ("10 GPA minimum", "spray volume: at least 10 gpa"),
        (
            "Do not harvest corn grain within 45 days of application.",
            "harvest, graze in corn: 45 days before harvest or grazing",
        ),
        (
            "Wait 45 days after application before harvesting corn.",
            "harvest, graze in corn: 45 days before harvest or grazing",
        ),
        ("45-day PHI", ""),
        ("Stay out of treated fields for 12 hours.", "keep out: 12 hours, without protection"),
        ("Reentry: 12 hours", "keep out: 12 hours, without protection"),
        ("Rainfast 1 hr", "rain-free: 1 hour without rain"),
        ("Needs 4 hours before rain.", "rain-free: 4 hours without rain"),
        ("Apply when winds are 3 to 10 mph.", "wind: 3 to 10 mph"),
        ("Do not apply more than twice per year.", "applications: at most 2 a year"),
        ("Limit to 2 applications per season.", "applications: at most 2 a year"),
        ("Do not apply when temperatures exceed 85°F.", "temperature: at most 85 °F"),
        ("Do not apply when air temperature is below 40 degrees F.", "temperature: at least 40 °F"),
        ("Do not spray during a temperature inversion.", "no inversion: no inversion"),
        ("Do not apply within 30 feet of surface water.", "buffer: 30 ft to surface water"),
        ("Do not apply within 50 feet of water.", "buffer: 50 ft to water"),
        ("Do not apply within 50 feet of surface water by ground.", "buffer: 50 ft to surface water"),
        ("Maintain a 110-foot downwind buffer to streams.", "buffer: 110 ft downwind to streams"),
        ("Do not plant corn within 10 months of application.", "next crop: corn, 10 months"),
        ("Plant-back interval: wheat, barley 30 days", "next crop: wheat, barley, 2 months"),
        ("Do not apply within 7 weeks of harvest.", "harvest, graze: 49 days before harvest or grazing"),
        ("REI 2 days", "keep out: 48 hours, without protection"),
        ("Rainfast in 30 minutes.", "rain-free: 1 hour without rain"),
        ("Maintain a 25-foot buffer from streams, lakes and ponds.", "buffer: 25 ft to streams, lakes and ponds"),
        ("Do not apply to corn after V8.", "crop stage in corn: up to V8"),
        ("Apply before corn exceeds the V8 growth stage.", "crop stage in corn: up to V8"),
        ("Do not apply after corn reaches R1.", "crop stage in corn: up to R1"),
        ("Apply from V2 to V8.", "crop stage: from V2 to V8"),
        ("Do not apply to soybeans before V2.", "crop stage in soybeans: from V2"),
        ("Apply to wheat through BBCH 39.", "crop stage in wheat: up to BBCH 39"),
        ("Add COC at 1% v/v.", "adjuvant: crop oil concentrate, required, 1 % v/v"),
        (
            "Add crop oil concentrate (COC) at 1% v/v to the spray solution.",
            "adjuvant: crop oil concentrate, required, 1 % v/v",
        ),
        ("Include 0.25% v/v nonionic surfactant.", "adjuvant: non-ionic surfactant, required, 0.25 % v/v"),
        ("Always include AMS at 8.5 lb per 100 gallons.", "adjuvant: ammonium sulfate, required, 8.5 lb/100 gal"),
        ("The addition of AMS is recommended.", "adjuvant: ammonium sulfate, preferred"),
        ("NIS may be used.", "adjuvant: non-ionic surfactant, allowed"),
        ("Do not use methylated seed oil.", "adjuvant: methylated seed oil, forbidden"),
        ("Do not use MSO in corn.", "adjuvant in corn: methylated seed oil, forbidden"),
        ("Avoid using crop oil concentrates.", "adjuvant: crop oil concentrate, discouraged"),
        (
            "Do not tank mix with organophosphate insecticides in corn.",
            "not together with in corn: organophosphate insecticides",
        ),
        (
            "Wear long-sleeved shirt, long pants, shoes plus socks.",
            "wear: long-sleeved shirt, long pants, shoes plus socks",
        ),
        ("Applicators and other handlers must wear: gloves and goggles", "wear: gloves and goggles"),
    ] {
        let reading = liquid(text);
        let expected: Vec<&str> = Some(expected).filter(|text| !text.is_empty()).into_iter().collect();
        assert_eq!(lines(&reading), expected, "{text}: {:?}", reading.left);
        assert_eq!(reading.left.len(), usize::from(expected.is_empty()), "{text}: {:?}", reading.left);
    }
}

/// Each may be read wrongly by a reader that looks for numbers and units alone.
#[test]
fn what_may_mean_something_else_is_left() {
    for text in [
        "Apply 22 fl oz per acre per season.",
        "Do not exceed 44 fl oz/A.",
        "Do not apply 22 fl oz per acre.",
        "Apply 16 or 22 fl oz per acre.",
        "Apply 16 fl oz per acre or 1 pint per acre.",
        "Apply 22 to 16 fl oz per acre.",
        "Apply 16 fl oz per acre when weeds are small.",
        "Apply 16 fl oz per acre to weeds of 4 inches.",
        "Apply 16 fl oz per acre unless rain is near.",
        "Apply 16 fl oz per acre with crop oil.",
        "Nonionic surfactant at 0.25% v/v.",
        "Apply 3 oz per acre.",
        "Apply 1,200 fl oz/A.",
        "Apply 10 gallons per acre in at least 10 gallons per acre.",
        "Apply in 10 gallons per acre.",
        "Apply in a minimum of 3 gallons of water per acre by air.",
        "Apply 1.5 lb per acre.",
        "Do not use fine droplets.",
        "Do not use medium or finer droplets.",
        "Use fine or medium droplets.",
        "Do not spray when wind is below 3 mph.",
        "Do not spray when gusts exceed 10 mph.",
        "Do not graze treated fields for 14 days.",
        "Do not apply within 50 feet of surface water intakes.",
        "PHI 30 to 45 days",
        "Rainfast in 1/2 hour.",
        "Allow 7 to 14 days between applications.",
        "Allow 14 days between applications.",
        "Do not make more than 2 applications per year or 1 per crop.",
        "Corn and soybean: PHI 30 and 45 days",
        "Apply 3 fl oz/A to glyphosate-tolerant corn.",
        "Apply 3 fl oz/A in corn grown after soybean.",
        "Apply 3 fl oz/A to wheat stubble.",
        "Do not apply more than 44 fl oz/A per season, of which no more than 22 fl oz/A after flowering.",
        "Do not exceed 2 applications per year at 22 fl oz/A.",
        "Do not enter for 12 hours or until sprays have dried.",
        "The REI is 12 hours and the PHI is not 30 days.",
        "Do not use methylated seed oil in postemergence applications.",
        "Add COC at 1% v/v for best results.",
        "Add COC at 1% v/v in hot weather.",
        "Add COC and MSO.",
        "Add NIS or AMS.",
        "Add COC/MSO at 1% v/v.",
        "Do not use COC and AMS.",
        "Do not use COC at 1% v/v.",
        "Do not add more than 1% v/v COC.",
        "Apply 3 fl oz/A with COC at 1% v/v.",
        "Apply 3 fl oz/A at V5.",
        "Apply to corn up to 30 inches or the 8-leaf stage.",
        "Apply before corn reaches V8.",
        "Do not apply between V8 and V10.",
        "Maintain a 25-foot vegetative buffer from streams.",
        "Do not tank mix with anything unless tested.",
        "Do not harvest corn forage within 45 days of application.",
        "Injury was seen at 3 fl oz per acre.",
        "Do not apply when soil temperature exceeds 85°F.",
    ] {
        let reading = liquid(text);
        assert!(reading.found.is_empty(), "{text}: {:?}", lines(&reading));
        assert_eq!(reading.left.len(), 1, "{text}");
        assert!(!reading.left[0].why.is_empty());
    }
}

/// A choice is two lines that the form takes as one demand.
#[test]
fn one_of_several_adjuvants_is_a_choice() {
    for text in [
        "Always add COC at 1% v/v or NIS at 0.25% v/v.",
        "Add a crop oil concentrate at 1% v/v or a non-ionic surfactant (NIS) at 0.25 % v/v to the spray tank.",
        "COC at 1% v/v or NIS at 0.25% v/v is required.",
    ] {
        let reading = liquid(text);
        assert_eq!(
            lines(&reading),
            [
                "adjuvant: crop oil concentrate, required, 1 % v/v",
                "adjuvant: non-ionic surfactant, required, 0.25 % v/v"
            ],
            "{text}: {:?}",
            reading.left
        );
        assert!(reading.found.iter().all(|found| found.note.contains("tick them all")));
    }
    // The rate behind the last is that of each, and this is said.
    let shared = liquid("Add COC, HSOC or MSO at 1% v/v.");
    assert_eq!(shared.found.len(), 3);
    assert!(lines(&shared).iter().all(|line| line.ends_with("required, 1 % v/v")), "{:?}", lines(&shared));
    assert!(shared.found[0].note.contains("rate behind the last"));
    // An oil and ammonium sulfate are two demands.
    let both = liquid("Add COC at 1% v/v and AMS at 8.5 to 17 lb/100 gal.");
    assert_eq!(
        lines(&both),
        [
            "adjuvant: crop oil concentrate, required, 1 % v/v",
            "adjuvant: ammonium sulfate, required, 8.5 to 17 lb/100 gal"
        ]
    );
    assert!(!both.found[0].note.contains("tick them all"));
    // Two sentences that each require one of a role would become a choice in the form.
    for text in ["Add COC at 1% v/v. Always add NIS at 0.25% v/v.", "Add NIS or COC. Add COC."] {
        let apart = liquid(text);
        assert!(apart.found.is_empty(), "{text}: {:?}", lines(&apart));
        assert_eq!(apart.left.len(), 2, "{text}");
    }
    // Each class has a row of its own in the form.
    let mut it = product(Formulation::SL);
    let reading = liquid("Add COC at 1% v/v or NIS at 0.25% v/v.");
    enter(&reading.found[0], "", None, &mut it);
    assert_eq!(stands(&reading.found[0], &it), Stands::Same(0));
    assert_eq!(stands(&reading.found[1], &it), Stands::New);
}

#[test]
fn stages_of_two_sentences_are_one_window() {
    let reading = liquid("Do not apply to corn before V2. Do not apply to corn after V8.");
    assert_eq!(lines(&reading), ["crop stage in corn: from V2 to V8"]);
    let mut it = product(Formulation::SL);
    enter(&reading.found[0], "page 4", None, &mut it);
    assert_eq!(stands(&reading.found[0], &it), Stands::Same(0));
    let other = liquid("Do not apply to corn after V6.");
    assert_eq!(stands(&other.found[0], &it), Stands::Otherwise(vec![0]));
    assert!(liquid("Apply from V2 to V4. Apply from V6 to V8.").found.is_empty());
    // What the form cannot hold is said.
    let early = liquid("Apply postemergence at 3 fl oz per acre to field corn up to the V8 stage.");
    assert_eq!(lines(&early), ["rate in field corn: 3 fl oz/ac", "crop stage in field corn: up to V8"]);
    assert!(early.found.iter().all(|found| found.note.contains("postemergence")));
    assert!(early.found[1].note.contains("Up to"));
}

/// What no line accounts for is told, each sentence of it, and what limits comes first.
#[test]
fn no_sentence_vanishes() {
    let reading = liquid(
        "Shake well. Do not contaminate water. Keep out of reach of children. Apply 3 fl oz/A. Store in a cool place. \
         Do not use methylated seed oil in postemergence applications. Avoid drift. Unless it rains, spray. Good luck.",
    );
    assert_eq!(lines(&reading), ["rate: 3 fl oz/ac"]);
    let told: Vec<(&str, bool)> = reading.left.iter().map(|left| (left.sentence.as_str(), left.has_limit)).collect();
    assert_eq!(
        told,
        [
            ("Do not contaminate water.", true),
            ("Keep out of reach of children.", true),
            ("Do not use methylated seed oil in postemergence applications.", true),
            ("Avoid drift.", true),
            ("Unless it rains, spray.", true),
            ("Shake well.", false),
            ("Store in a cool place.", false),
            ("Good luck.", false),
        ]
    );
    // A bullet without an end looks like a heading, and is none where it limits or stands over nothing.
    let bullets =
        liquid("Restrictions\n- Do not graze\n- Not for sweet corn\n\nGrass weeds\nApply 3 fl oz/A.\n\nThe end");
    let told: Vec<&str> = bullets.left.iter().map(|left| left.sentence.as_str()).collect();
    assert_eq!(told.len(), 3, "{told:?}");
    assert!(told.contains(&"Do not graze") && told.contains(&"Not for sweet corn") && told.contains(&"The end"));
}

#[test]
fn directions_as_a_whole() {
    let reading = liquid(
        "Apply 16 to 22 fl oz per acre to small weeds in a minimum of 10 gallons of water per acre. Do not apply within 50\n\
         days of harvest. Do not exceed 44 fl oz/A per season. Do not enter treated areas for 12 hours. Rainfast in 4 hours.\n\
         Use coarse droplets. Do not spray when wind exceeds 10 mph. Do not make more than 2 applications per season. Allow 14\n\
         days between applications. Weeds must be less than 4 inches tall.",
    );
    assert_eq!(
        lines(&reading),
        [
            "rate: 16 to 22 fl oz/ac",
            "spray volume: at least 10 gal/ac",
            "harvest, graze: 50 days before harvest or grazing",
            "most a season: at most 44 fl oz/ac a year",
            "keep out: 12 hours, without protection",
            "rain-free: 4 hours without rain",
            "droplets: coarse alone",
            "wind: at most 10 mph",
            "applications: at most 2 a year, 14 days apart",
        ]
    );
    assert_eq!(reading.left.len(), 1, "{:?}", reading.left);
    // What is settled for the reader is said, and what was read of each sentence is marked.
    assert!(reading.found[3].note.contains("season"), "{}", reading.found[3].note);
    let sentence = &reading.found[0].sentences[0];
    let read: Vec<&str> = sentence.read.iter().map(|part| &sentence.text[part.clone()]).collect();
    assert_eq!(read, ["Apply 16 to 22 fl oz per acre", "in a minimum of 10 gallons of water per acre"]);
    assert_eq!(reading.found[8].sentences.len(), 2);

    let metric = liquid("1.5-2.5 l/ha in 150-200 l water. PHI 35 days, REI 12 h, maximum 2 applications.");
    assert_eq!(
        lines(&metric),
        [
            "rate: 1.5 to 2.5 L/ha",
            "spray volume: 150 to 200 L/ha",
            "harvest, graze: 35 days before harvest or grazing",
            "keep out: 12 hours, without protection",
            "applications: at most 2 a year",
        ],
        "{:?}",
        metric.left
    );
}

#[test]
fn crops_under_headings_are_kept_apart() {
    let reading = liquid(
        "Corn\nApply 3 fl oz/A.\nPHI 45 days.\n\nSoybean\nApply 2 pt/A.\nPHI 80 days.\n\nRestrictions\nREI 12 h.",
    );
    assert_eq!(
        lines(&reading),
        [
            "rate in corn: 3 fl oz/ac",
            "harvest, graze in corn: 45 days before harvest or grazing",
            "rate in soybean: 2 pt/ac",
            "harvest, graze in soybean: 80 days before harvest or grazing",
            "keep out: 12 hours, without protection",
        ]
    );
    let unsure = liquid("Field corn for seed\nApply 3 fl oz/A.");
    assert!(unsure.found.is_empty(), "{:?}", lines(&unsure));
}

#[test]
fn what_a_text_says_twice_is_one_line_and_what_it_contradicts_is_left() {
    let twice = liquid(
        "REI 12 h. Do not enter treated areas for 12 hours. Apply 16 to 22 fl oz/A. Do not exceed 22 fl oz/A per application.",
    );
    assert_eq!(lines(&twice), ["keep out: 12 hours, without protection", "rate: 16 to 22 fl oz/ac"]);
    let against = liquid("REI 12 h. Do not enter treated areas for 24 hours. PHI 30 days. REI 12 h.");
    assert_eq!(lines(&against), ["harvest, graze: 30 days before harvest or grazing"]);
    assert_eq!(against.left.len(), 2, "{:?}", against.left);
    let rates = liquid("Apply 16 fl oz/A for small weeds. Apply 22 fl oz/A for large weeds.");
    assert!(rates.found.is_empty() && rates.left.len() == 2, "{rates:?}");
}

#[test]
fn a_dry_product_is_weighed() {
    let dry = product(Formulation::WG);
    let reading = read("Apply 3 oz per acre. Apply in 10 gallons of water per acre.", &dry, Units::UsCustomary);
    assert_eq!(lines(&reading), ["rate: 3 oz/ac", "spray volume: 10 gal/ac"]);
    assert!(read("Apply 3 fl oz per acre.", &dry, Units::UsCustomary).found.is_empty());
    // A bare gallon in a country of imperial gallons.
    assert!(read("Apply in at least 10 gallons of water per acre.", &dry, Units::Imperial).found.is_empty());
}

#[test]
fn it_is_held_against_the_form_and_enters_only_as_told() {
    let mut it = product(Formulation::SL);
    it.label = vec![
        Statement::new(Says::ReEntry { hours: 24 }, "page 2"),
        Statement::new(Says::Rate { least: None, most: AsTyped::parse("2 pt/a").ok() }, "page 3"),
    ];
    let reading = read(
        "REI 12 h. Apply up to 2 pints per acre. PHI 30 days. Allow 14 days between applications.",
        &it,
        Units::UsCustomary,
    );
    let how: Vec<Stands> = reading.found.iter().map(|found| stands(found, &it)).collect();
    assert_eq!(how, [Stands::Otherwise(vec![0]), Stands::Same(1), Stands::New]);
    assert_eq!(reading.left.len(), 1);
    let before = it.clone();
    enter(&reading.found[0], " page 9 ", Some(0), &mut it);
    assert_eq!(it.label[0], Statement::new(Says::ReEntry { hours: 12 }, "page 9"));
    enter(&reading.found[2], "page 9", None, &mut it);
    assert_eq!(it.label.len(), before.label.len() + 1);
    // A place that has become something else meanwhile is not written over.
    enter(&reading.found[2], "page 9", Some(1), &mut it);
    assert_eq!((it.label[1].clone(), it.label.len()), (before.label[1].clone(), before.label.len() + 2));
    // Days between two go with the number that is typed.
    it.label.push(Statement::new(Says::Applications { most: 3, days_apart: 0, per: crate::farm::Period::Crop }, ""));
    let reading = read("Allow 14 days between applications.", &it, Units::UsCustomary);
    assert_eq!(lines(&reading), ["applications: at most 3 a crop, 14 days apart"]);
}
