//! Pairs of partners, charges, fertilizer as carrier, and the order of mixing: for each published pair an invented mix that
//! raises it and a near one that does not. The source and figures of each case are copied from the publication, not from
//! the table of the program.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use proptest::prelude::*;
use tankard_core::farm::label::OrderPlace;
use tankard_core::farm::{
    Active, AdjuvantClass, CarrierKind, Charge, Farm, Field, Formulation, Id, Line, Pass, Product, ProductKind, Record,
    RecordField, RecordLine, Rig, Says, Statement, Surfactant, Water,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::loads::card::cards;
use tankard_core::mix::charge::{Conflict, conflict};
use tankard_core::mix::jar::{Jar, JarStep, jar};
use tankard_core::mix::{order, pairs};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{ActiveBasis, Amount, AsTyped, Quantity};
use tankard_tests::cases;

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// "clethodim EC 6 fl oz/ac", "NIS", "OTHER anionic", "glyphosate SL loaded", "fluroxypyr EC cationic": an active with a
/// formulation or a class, then a rate, a charge or "loaded".
fn product(words: &str) -> (Product, String) {
    let mut parts = words.split_whitespace();
    let first = parts.next().unwrap();
    let mut product = if let Some(class) = AdjuvantClass::of_key(first) {
        let mut product = Product::new(&format!("{first} (demo)"), ProductKind::Adjuvant, Formulation::SL);
        if class == AdjuvantClass::AmmoniumSulfate {
            product.formulation = Formulation::SG;
        }
        product.class = Some(class);
        product
    } else {
        let code = parts.next().unwrap();
        let formulation = Formulation::ALL.into_iter().find(|known| known.code() == code).unwrap();
        let mut product = Product::new(&format!("{first} {code} (demo)"), ProductKind::Herbicide, formulation);
        product.actives = first
            .split('+')
            .map(|name| Active {
                name: name.replace('_', " "),
                group: String::new(),
                basis: ActiveBasis::ActiveIngredient,
                content: typed(if product.is_liquid() { "240 g/L" } else { "50 %" }),
            })
            .collect();
        product
    };
    let mut rate = String::from(if product.is_liquid() { "16 fl oz/ac" } else { "1 oz/ac" });
    let rest: Vec<&str> = parts.collect();
    match rest.as_slice() {
        [] => {}
        ["loaded"] => product.surfactant = Some(Surfactant { charge: Charge::NotStated, complete: true }),
        ["group", group] => (*group).clone_into(&mut product.actives[0].group),
        [charge] => {
            let charge = Charge::ALL.into_iter().find(|known| known.name() == *charge).unwrap();
            product.surfactant = Some(Surfactant { charge, complete: false });
        }
        words => rate = words.join(" "),
    }
    (product, rate)
}

/// A pass over 40 ac of a crop with a mix apart by commas; "in UAN" or "in fertilizer" at the end for the carrier.
fn farm(crop: &str, mix: &str) -> Farm {
    let mut farm = Farm::new("Pairs");
    let mut field = Field::new("Field", typed("40 ac"));
    let (crop, stage) = crop.split_once(" at ").unwrap_or((crop, ""));
    crop.clone_into(&mut field.crop);
    stage.clone_into(&mut field.stage);
    farm.fields.insert("f".to_owned(), field);
    farm.waters.insert("w".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    farm.rigs.insert("r".to_owned(), Rig::new("Boom", typed("800 gal")));
    let (pass, products) = pass(mix);
    farm.products.extend(products);
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn pass(mix: &str) -> (Pass, Vec<(Id, Product)>) {
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("15 gal/ac"));
    let (mix, carrier) = mix.split_once(" in ").unwrap_or((mix, "water"));
    pass.carrier_kind = match carrier {
        "UAN" => CarrierKind::UreaAmmoniumNitrate,
        "fertilizer" => CarrierKind::LiquidFertilizer,
        _ => CarrierKind::Water,
    };
    let mut products = Vec::new();
    for words in mix.split(", ") {
        let (product, rate) = product(words);
        pass.mix.push(Line::new(&product.name, typed(&rate)));
        products.push((product.name.clone(), product));
    }
    (pass, products)
}

fn planned(crop: &str, mix: &str) -> Plan {
    plan(&farm(crop, mix), "p").unwrap()
}

fn said<'a>(plan: &'a Plan, part: &str) -> Vec<&'a Finding> {
    plan.findings.iter().filter(|finding| finding.text.contains(part)).collect()
}

struct Case {
    /// The row.
    id: &'static str,
    /// Authors and place of the publication.
    source: &'static str,
    /// Figures or words that the publication prints.
    prints: &'static [&'static str],
    level: Level,
    /// Crop and mix that raise it.
    raises: (&'static str, &'static str),
    /// A near miss.
    misses: (&'static str, &'static str),
}

const CASES: [Case; 23] = [
    Case {
        id: "clethodim-tribenuron",
        source: "Zollinger and Howatt 2006, ASTM STP1470",
        prints: &["99 %", "50 and 80 %", "96 %"],
        level: Level::Check,
        raises: ("barley", "clethodim EC, tribenuron-methyl WG"),
        misses: ("barley", "clethodim EC, trifloxysulfuron WG"),
    },
    Case {
        id: "clethodim-glyphosate",
        source: "Zollinger and Howatt 2006, ASTM STP1470",
        prints: &["potassium"],
        level: Level::Note,
        raises: ("soybean", "clethodim EC, glyphosate SL"),
        misses: ("soybean", "sethoxydim EC, glyphosate SL"),
    },
    Case {
        // 2 fl oz/ac of 240 g/L are 35 g/ha, the low rate of the trials; 6 fl oz/ac are 105 g/ha, which restores control.
        id: "clethodim-glyphosate-auxin",
        source: "Harre et al. 2020",
        prints: &["62 to 75 %", "27 to 47 %", "105 g/ha", "74 to 98 %", "35 g/ha"],
        level: Level::Check,
        raises: ("soybean", "clethodim EC 2 fl oz/ac, glyphosate SL, dicamba SL"),
        misses: ("soybean", "clethodim EC 6 fl oz/ac, glyphosate SL, dicamba SL"),
    },
    Case {
        id: "clethodim-auxin",
        source: "Merritt et al. 2020, Agronomy 10:1131",
        prints: &["neither 2,4-D nor dicamba", "separate booms"],
        level: Level::Note,
        raises: ("soybean", "clethodim EC, 2,4-D_choline SL"),
        misses: ("soybean", "clethodim EC, 2,4-DB SL"),
    },
    Case {
        id: "sethoxydim-bentazon",
        source: "Merritt et al. 2020, Agronomy 10:1131",
        prints: &["separately"],
        level: Level::Check,
        raises: ("soybean", "sethoxydim EC, bentazon SL"),
        misses: ("soybean", "sethoxydim EC, fomesafen SL"),
    },
    Case {
        id: "glufosinate-glyphosate",
        source: "Meyer et al. 2021, Weed Technology 35",
        prints: &["barnyardgrass", "large crabgrass", "broadleaf signalgrass"],
        level: Level::Check,
        raises: ("soybean", "glufosinate-ammonium SL, glyphosate SL"),
        misses: ("soybean", "glufosinate-ammonium SL, fomesafen SL"),
    },
    Case {
        id: "glufosinate-clethodim",
        source: "Meyer et al. 2021, Weed Technology 35",
        prints: &["595 g/ha", "76 g/ha", "451", "johnsongrass"],
        level: Level::Check,
        raises: ("soybean", "glufosinate SL, clethodim EC"),
        misses: ("soybean", "glufosinate SL, sethoxydim EC"),
    },
    Case {
        id: "glyphosate-triazine-powder",
        source: "efebf96e",
        prints: &["10 to 20 %", "4.2 kg/ha"],
        level: Level::Check,
        raises: ("corn", "glyphosate SL, atrazine WP"),
        misses: ("corn", "glyphosate SL, atrazine SC"),
    },
    Case {
        id: "glyphosate-diphenylether",
        source: "Agronomy 2021, 11:754",
        prints: &["moving in the plant"],
        level: Level::Note,
        raises: ("soybean", "glyphosate SL, lactofen EC"),
        misses: ("soybean", "glyphosate SL, acifluorfen SL"),
    },
    Case {
        id: "imazethapyr-thifensulfuron",
        source: "Simpson and Stoller 1995",
        prints: &["40 %", "27 %", "24 %", "1 %"],
        level: Level::Check,
        raises: ("soybeans", "imazethapyr SL, thifensulfuron-methyl WG"),
        misses: ("corn", "imazethapyr SL, thifensulfuron-methyl WG"),
    },
    Case {
        id: "cloransulam-diphenylether",
        source: "North Carolina State University, trials of 1995 and 1996",
        prints: &["2 to 3 %", "11 and 46 %"],
        level: Level::Check,
        raises: ("soybean", "cloransulam-methyl WG, acifluorfen SL"),
        misses: ("soybean", "cloransulam-methyl WG, bentazon SL"),
    },
    Case {
        id: "fop-choline",
        source: "registrant's note for eastern Canada",
        prints: &["not commercially acceptable", "2,4-D choline"],
        level: Level::Check,
        raises: ("soybean", "quizalofop-P-ethyl EC, 2,4-D_choline SL"),
        misses: ("soybean", "quizalofop-P-ethyl EC, dicamba SL"),
    },
    Case {
        id: "dim-choline",
        source: "registrant's note for eastern Canada",
        prints: &["1.5 to 2 times"],
        level: Level::Note,
        raises: ("soybean", "clethodim EC, 2,4-D_choline SL"),
        misses: ("soybean", "clethodim EC, dicamba SL"),
    },
    Case {
        id: "paraquat-anionic",
        source: "Pacific Northwest Weed Management Handbook",
        prints: &["falls out of the water"],
        level: Level::Stop,
        raises: ("sugarbeet", "paraquat SL, OTHER anionic"),
        misses: ("sugarbeet", "paraquat SL, OTHER non-ionic"),
    },
    Case {
        // No publication: diquat is a cation as paraquat is.
        id: "diquat-anionic",
        source: "common practice, no source",
        prints: &["charged as paraquat"],
        level: Level::Check,
        raises: ("potato", "diquat SL, OTHER anionic"),
        misses: ("potato", "glufosinate SL, OTHER anionic"),
    },
    Case {
        id: "clethodim-halosulfuron",
        source: "Kammler, Walters and Young 2008, HortScience 43(6):1823-1825",
        prints: &["89 to 77 %"],
        level: Level::Check,
        raises: ("pumpkin", "clethodim EC, halosulfuron-methyl WG, NIS"),
        // With crop oil concentrate, alone or blended with the surfactant, nothing was lost.
        misses: ("pumpkin", "clethodim EC, halosulfuron-methyl WG, NIS, COC"),
    },
    Case {
        id: "fenoxaprop-auxin",
        source: "Pacific Northwest Weed Management Handbook, barley",
        prints: &["dicamba or 2,4-D"],
        level: Level::Check,
        raises: ("spring barley", "fenoxaprop-P-ethyl EC, dicamba SL"),
        misses: ("spring barley", "fenoxaprop-P-ethyl EC, bromoxynil EC"),
    },
    Case {
        id: "glyphosate-chlorimuron-surfactant",
        source: "Norsworthy and Grey",
        prints: &["31 %", "one of three", "morningglory"],
        level: Level::Check,
        raises: ("soybean", "glyphosate SL loaded, chlorimuron-ethyl WG, NIS"),
        misses: ("soybean", "glyphosate SL, chlorimuron-ethyl WG, NIS"),
    },
    Case {
        id: "mesosulfuron-nitrogen",
        source: "Sosnoskie, Culpepper, York, Beam and MacRae",
        prints: &["35 to 40 %", "280 L/ha"],
        level: Level::Check,
        raises: ("winter wheat", "mesosulfuron-methyl OD in UAN"),
        // As an additive it is another matter.
        misses: ("winter wheat", "mesosulfuron-methyl OD, UAN"),
    },
    Case {
        id: "pyroxsulam-nitrogen",
        source: "Jursik et al. 2016",
        prints: &["5 to 30 %"],
        level: Level::Check,
        raises: ("winter wheat", "pyroxsulam WG in UAN"),
        misses: ("winter wheat", "pyroxsulam WG"),
    },
    Case {
        id: "thifensulfuron-nitrogen",
        source: "Soltani, Shropshire and Sikkema 2012",
        prints: &["at most 5 %"],
        level: Level::Note,
        raises: ("winter wheat", "thifensulfuron-methyl+tribenuron-methyl SG in UAN"),
        misses: ("winter wheat", "thifensulfuron-methyl+tribenuron-methyl SG in fertilizer"),
    },
    Case {
        id: "triasulfuron-nitrogen",
        source: "Stahlman, Currie and El-Hamid 1997",
        prints: &["112 L/ha", "53 %"],
        level: Level::Check,
        raises: ("winter wheat", "triasulfuron WG in UAN"),
        misses: ("grain sorghum", "triasulfuron WG in UAN"),
    },
    Case {
        id: "surfactant-nitrogen",
        source: "Stahlman, Currie and El-Hamid 1997",
        prints: &["non-ionic surfactant"],
        level: Level::Check,
        raises: ("winter wheat", "triasulfuron WG, NIS in UAN"),
        misses: ("winter wheat", "pyroxsulam WG, NIS in UAN"),
    },
];

/// Rows that want days between, which have their own tests below.
const DAYS: [&str; 2] = ["mesosulfuron-nitrogen-days", "quizalofop-broadleaf-days"];

fn row(id: &str) -> &'static pairs::Pair {
    pairs::table().iter().find(|pair| pair.id == id).unwrap_or_else(|| panic!("there is no row {id}"))
}

#[test]
fn each_pair_is_raised_by_its_mix_and_not_by_a_near_one() {
    for case in &CASES {
        let pair = row(case.id);
        for word in case.prints {
            assert!(pair.says.contains(word), "{}: {word} is not in \"{}\"", case.id, pair.says);
        }
        let raised = planned(case.raises.0, case.raises.1);
        let found = said(&raised, &pair.says);
        let [finding] = found.as_slice() else { panic!("{} is said {} times", case.id, found.len()) };
        assert_eq!(finding.level, case.level, "{}", case.id);
        assert!(finding.basis.source().contains(case.source), "{}: {}", case.id, finding.basis);
        assert!(!finding.hint.is_empty(), "{}", case.id);
        // Each partner is named: the products of these mixes but for the adjuvants that only a condition asks for.
        let named = raised.lines.iter().filter(|line| finding.text.contains(&line.name)).count();
        assert!(named > usize::from(!case.raises.1.contains(" in ")), "{}: {}", case.id, finding.text);
        let missed = planned(case.misses.0, case.misses.1);
        assert!(said(&missed, &pair.says).is_empty(), "{} speaks of {}", case.id, case.misses.1);
    }
}

#[test]
fn every_row_of_the_table_has_its_case() {
    for pair in pairs::table() {
        let here = CASES.iter().any(|case| case.id == pair.id) || DAYS.contains(&pair.id.as_str());
        assert!(here, "{} has no case", pair.id);
    }
    assert_eq!(pairs::table().len(), CASES.len() + DAYS.len());
}

/// Harre et al. 2020: the threesome is what hurts; its finding shows the rate and takes the place of the two Notes.
#[test]
fn a_threesome_says_what_its_pairs_would_say() {
    let three = planned("soybean", "clethodim EC 2 fl oz/ac, glyphosate SL, dicamba SL");
    let finding = said(&three, &row("clethodim-glyphosate-auxin").says)[0];
    assert!(finding.text.contains("here it is 0.5 oz/ac"), "{}", finding.text);
    for pair in ["clethodim-glyphosate", "clethodim-auxin"] {
        assert!(said(&three, &row(pair).says).is_empty(), "{pair}");
    }
    // A product that holds both partners is enough.
    let two = planned("soybean", "clethodim EC 2 fl oz/ac, glyphosate+2,4-D_choline SL");
    assert_eq!(said(&two, &row("clethodim-glyphosate-auxin").says).len(), 1);
}

#[test]
fn a_rate_that_is_not_known_does_not_silence_a_row() {
    let mut farm = farm("soybean", "clethodim EC 6 fl oz/ac, glyphosate SL, dicamba SL");
    farm.products["clethodim EC (demo)"].actives[0].content = typed("25 %");
    let plan = plan(&farm, "p").unwrap();
    assert!(said(&plan, &row("clethodim-glyphosate-auxin").says)[0].text.contains("not known"));
}

/// North Dakota State University, Carrington, 18 May 2000: quizalofop at least 1 day before or 5 days after a broadleaf
/// herbicide, in canola.
#[test]
fn quizalofop_keeps_its_days_from_a_broadleaf_herbicide_in_canola() {
    let says = &row("quizalofop-broadleaf-days").says;
    let together = planned("canola", "quizalofop EC, clopyralid SL group 4");
    assert_eq!(said(&together, says).len(), 1);
    assert_eq!(said(&together, says)[0].level, Level::Note);
    assert!(said(&planned("flax", "quizalofop EC, clopyralid SL group 4"), says).is_empty());
    assert!(said(&planned("canola", "quizalofop EC, clethodim EC group 1"), says).is_empty());
    for (day, near) in [(8, true), (7, false), (12, true), (13, false)] {
        let mut farm = farm("canola", "quizalofop EC");
        let (mut other, products) = pass("clopyralid SL group 4");
        other.date = date(2031, 6, day);
        "Broadleaf".clone_into(&mut other.name);
        farm.products.extend(products);
        farm.passes.insert("q".to_owned(), other);
        for id in ["p", "q"] {
            let found = plan(&farm, id).unwrap();
            assert_eq!(!said(&found, says).is_empty(), near, "{id} with 12 and {day} June");
        }
        let mut elsewhere = farm.clone();
        elsewhere.fields.insert("g".to_owned(), Field::new("Other", typed("1 ac")));
        elsewhere.passes["q"].fields = vec!["g".to_owned()];
        assert!(said(&plan(&elsewhere, "p").unwrap(), says).is_empty());
        // The same from a record.
        let mut record = Record::new("Broadleaf", date(2031, 6, day));
        let field = RecordField::new("Field", typed("40 ac"));
        record.fields.insert("f".to_owned(), field);
        record.lines.push(RecordLine::new("clopyralid SL (demo)", "Clopyralid", typed("5 gal")));
        farm.passes.shift_remove("q");
        farm.records.insert("1".to_owned(), record);
        assert_eq!(!said(&plan(&farm, "p").unwrap(), says).is_empty(), near, "a record of {day} June");
        // A record of the pass itself is not beside it.
        farm.records["1"].pass = Some("p".into());
        assert!(said(&plan(&farm, "p").unwrap(), says).is_empty(), "its own record of {day} June");
    }
}

/// Sosnoskie et al.: nitrogen within 14 days of mesosulfuron is warned against.
#[test]
fn mesosulfuron_and_nitrogen_keep_14_days() {
    let says = &row("mesosulfuron-nitrogen-days").says;
    for (day, near) in [(13, true), (25, true), (26, false)] {
        let mut farm = farm("winter wheat", "mesosulfuron-methyl OD");
        let (mut other, products) = pass("fluroxypyr EC in UAN");
        other.date = date(2031, 6, day);
        farm.products.extend(products);
        farm.passes.insert("q".to_owned(), other);
        assert_eq!(!said(&plan(&farm, "p").unwrap(), says).is_empty(), near, "{day} June");
        assert_eq!(!said(&plan(&farm, "q").unwrap(), says).is_empty(), near, "{day} June, from the other side");
    }
}

// ---------------------------------------------------------------------------------------------------- charges

/// Common practice, no source: opposite charges of surfactants bind.
#[test]
fn opposite_charges_of_surfactants_are_a_check() {
    let bound = "may bind each other";
    let plan = planned("fallow", "glyphosate SL cationic, OTHER anionic");
    assert_eq!(said(&plan, bound).len(), 1);
    assert_eq!((said(&plan, bound)[0].level, &said(&plan, bound)[0].basis), (Level::Check, &Basis::Practice));
    for other in ["OTHER non-ionic", "OTHER cationic", "NIS"] {
        assert!(said(&planned("fallow", &format!("glyphosate SL cationic, {other}")), bound).is_empty(), "{other}");
    }
}

/// Pacific Northwest Weed Management Handbook: no anionic adjuvant with paraquat. A surfactant inside a partner is no adjuvant.
#[test]
fn the_chooser_is_told_what_paraquat_cannot_meet() {
    let [paraquat, anionic, partner, oil] =
        ["paraquat SL", "OTHER anionic", "fluroxypyr EC anionic", "COC"].map(|words| product(words).0);
    for (a, b) in [(&paraquat, &anionic), (&anionic, &paraquat)] {
        assert!(matches!(conflict(a, b), Some(Conflict::Precipitates(Basis::Published(_), _))));
    }
    assert!(matches!(conflict(&paraquat, &partner), Some(Conflict::MayBind(_))));
    assert_eq!(conflict(&paraquat, &oil), None);
    assert_eq!(conflict(&anionic, &partner), None);
    let asked = planned("fallow", "paraquat SL, OTHER");
    assert_eq!(said(&asked, "The charge of OTHER (demo) is not typed").len(), 1);
    assert!(said(&planned("fallow", "paraquat SL, NIS"), "is not typed, and").is_empty());
}

// ---------------------------------------------------------------------------------------------------- carrier

/// Iowa State University: at most 90 lb N/ac at V3 to V4, 60 at V7, none later; University of Nebraska-Lincoln: 28-0-0
/// weighs 10.65 lb/gal and 32-0-0 11.06, so 15 gal/ac bring 44.7 and 53.1 lb N/ac.
#[test]
fn nitrogen_over_emerged_corn_is_shown_for_both_grades() {
    let bring = "bring";
    for (crop, volume, level) in [
        ("corn at V4", "15 gal/ac", Level::Note),
        ("corn at V4", "30 gal/ac", Level::Check),
        ("corn at V7", "15 gal/ac", Level::Note),
        ("corn at V7", "20 gal/ac", Level::Check),
        ("corn at V8", "15 gal/ac", Level::Check),
        ("corn", "15 gal/ac", Level::Check),
    ] {
        let mut farm = farm(crop, "atrazine SC, COMPAT in UAN");
        farm.passes["p"].carrier = Some(typed(volume));
        let plan = plan(&farm, "p").unwrap();
        let found = said(&plan, bring);
        assert_eq!(found.iter().map(|finding| finding.level).collect::<Vec<_>>(), [level], "{crop}, {volume}");
        assert!(found[0].text.contains("90 lb/ac at V3 to V4, 60 lb/ac at V7"), "{}", found[0].text);
    }
    let plan = planned("corn at V4", "atrazine SC, COMPAT in UAN");
    assert!(said(&plan, "44.7")[0].text.contains("53.0"), "{}", said(&plan, bring)[0].text);
    assert!(said(&planned("winter wheat", "atrazine SC in UAN"), bring).is_empty());
    assert!(said(&planned("corn at V4", "atrazine SC"), bring).is_empty());
}

/// University of Illinois, 25 May 2001: the whole carrier is mostly prohibited after emergence; 1 to 4 qt/ac as an additive
/// are not.
#[test]
fn a_whole_carrier_of_nitrogen_over_emerged_corn_is_a_check() {
    let mostly = "mostly forbid";
    assert_eq!(said(&planned("corn at V4", "nicosulfuron WG in UAN"), mostly)[0].level, Level::Check);
    assert!(said(&planned("corn at V4", "nicosulfuron WG, UAN 2 qt/ac"), mostly).is_empty());
    assert!(said(&planned("corn at BBCH 05", "nicosulfuron WG in UAN"), mostly).is_empty());
}

/// University of Arizona (Kopec), May 1999: jar test with and without the agent. Manitoba: bags before fertilizer.
#[test]
fn fertilizer_wants_an_agent_and_plain_water_for_bags() {
    let agent = "no compatibility agent is in the mix";
    assert_eq!(said(&planned("fallow", "fluroxypyr EC in fertilizer"), agent)[0].level, Level::Check);
    assert!(said(&planned("fallow", "fluroxypyr EC, COMPAT in fertilizer"), agent).is_empty());
    assert!(said(&planned("fallow", "fluroxypyr EC"), agent).is_empty());
    let bags = planned("fallow", "flumioxazin WSP, COMPAT in UAN");
    assert_eq!(said(&bags, "which do not dissolve in")[0].level, Level::Check);
    assert!(bags.order.iter().any(|placed| placed.how.starts_with("dissolve in water first")));
    assert!(said(&planned("fallow", "flumioxazin WSP, AMS"), "which do not dissolve in").is_empty());
    // Common practice, no source.
    assert_eq!(said(&planned("fallow", "glyphosate SL, AMS in UAN"), "brings ammonium already")[0].level, Level::Note);
    assert!(said(&planned("fallow", "glyphosate SL, AMS in fertilizer"), "brings ammonium already").is_empty());
}

#[test]
fn the_card_names_what_is_run_in_and_how_dry_products_go_in() {
    let farm = farm("fallow", "flumioxazin WG, saflufenacil WP, COMPAT in UAN");
    let card = &cards(&farm, &plan(&farm, "p").unwrap())[0];
    assert_eq!(card.steps[0].what, "Urea ammonium nitrate");
    assert_eq!(card.water, "urea ammonium nitrate");
    assert!(card.gauge.layers[0].label.starts_with("UAN to "));
    // South Dakota State University: slurry 2:1; Oklahoma State University: agitate until dissolved, a few minutes.
    for name in ["flumioxazin WG (demo)", "saflufenacil WP (demo)"] {
        let step = card.steps.iter().find(|step| step.what == name).unwrap();
        assert_eq!(step.hint, "make a slurry first (2 parts water to 1); agitate a few minutes until dispersed");
    }
    // Oklahoma State University: rinse the inductor between products.
    assert!(card.cautions.iter().any(|caution| caution.contains("rinse the inductor before the next")));
}

// ---------------------------------------------------------------------------------------------------- order

/// A product by its place among the formulations and classes; with 0 no place on its label, with 1 the first, with 2 the last.
fn any_product(kind: usize, place: u8) -> Product {
    let mut product = if let Some(formulation) = Formulation::ALL.get(kind) {
        Product::new("p", ProductKind::Herbicide, *formulation)
    } else {
        product(AdjuvantClass::ALL[kind - Formulation::ALL.len()].key()).0
    };
    let place = match place {
        1 => OrderPlace::First,
        2 => OrderPlace::Last,
        _ => return product,
    };
    product.label.push(Statement::new(Says::MixingOrder { place, tank_full: None }, "page 1"));
    product
}

fn kinds() -> impl Strategy<Value = (usize, u8)> {
    (0..Formulation::ALL.len() + AdjuvantClass::ALL.len(), prop_oneof![8 => Just(0_u8), 1 => Just(1), 1 => Just(2)])
}

fn placed(mix: &[(Id, Product)], wanted: &str, carrier: CarrierKind) -> Vec<Id> {
    let mix: Vec<(&Id, &Product)> = mix.iter().map(|(id, product)| (id, product)).collect();
    order::place(&mix, wanted, carrier, &mut Vec::new()).into_iter().map(|placed| placed.product).collect()
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn a_product_added_leaves_the_order_of_the_others(
        mix in prop::collection::vec(kinds(), 0..8),
        added in kinds(),
        at in 0..8_usize,
        carrier in prop::sample::select(&CarrierKind::ALL[..]),
    ) {
        let before: Vec<(Id, Product)> =
            mix.iter().enumerate().map(|(n, (kind, place))| (format!("p{n}"), any_product(*kind, *place))).collect();
        let mut after = before.clone();
        after.insert(at.min(after.len()), ("added".to_owned(), any_product(added.0, added.1)));
        for (name, _) in order::orders() {
            let mut with = placed(&after, name, carrier);
            prop_assert_eq!(with.len(), after.len());
            with.retain(|id| id != "added");
            prop_assert_eq!(with, placed(&before, name, carrier), "{}", name);
        }
    }

    #[test]
    fn a_label_puts_its_product_first_or_last_in_every_order(
        mix in prop::collection::vec(0..Formulation::ALL.len() + AdjuvantClass::ALL.len(), 1..8),
        labelled in 0..Formulation::ALL.len(),
        carrier in prop::sample::select(&CarrierKind::ALL[..]),
    ) {
        for place in [1, 2] {
            let mut all: Vec<(Id, Product)> =
                mix.iter().enumerate().map(|(n, kind)| (format!("p{n}"), any_product(*kind, 0))).collect();
            all.push(("labelled".to_owned(), any_product(labelled, place)));
            for (name, _) in order::orders() {
                let order = placed(&all, name, carrier);
                let end = if place == 1 { order.first() } else { order.last() };
                prop_assert_eq!(end.map(String::as_str), Some("labelled"), "{}", name);
            }
        }
    }
}

/// What all the published orders agree on: dispersible dry products before emulsions, solutions and oils.
#[test]
fn every_order_puts_dry_products_before_liquids_and_gives_a_reason() {
    for (name, _) in order::orders() {
        let mix: Vec<(Id, Product)> =
            ["NIS", "COC", "2,4-D EC", "glyphosate SL", "atrazine SC", "flumioxazin WG", "simazine WP"]
                .iter()
                .map(|words| ((*words).to_owned(), product(words).0))
                .collect();
        let order = placed(&mix, name, CarrierKind::Water);
        let at = |words: &str| order.iter().position(|id| id == words).unwrap();
        for dry in ["flumioxazin WG", "simazine WP"] {
            for liquid in ["NIS", "COC", "2,4-D EC", "glyphosate SL"] {
                assert!(at(dry) < at(liquid), "{name}: {dry} after {liquid}");
            }
        }
        let mix: Vec<(&Id, &Product)> = mix.iter().map(|(id, product)| (id, product)).collect();
        for placed in order::place(&mix, name, CarrierKind::Water, &mut Vec::new()) {
            assert!(placed.why.contains("place") && placed.why.len() > 40, "{}", placed.why);
        }
    }
}

proptest! {
    #![proptest_config(cases(200))]

    /// Arithmetic: what has been poured and the carrier between make the jar, each line lies above the one before, and no line
    /// leaves too little room for what is still to come. A tank is never to be more than full before a product goes in.
    #[test]
    fn a_jar_is_filled_to_its_line(
        kinds in prop::collection::vec(kinds(), 1..7),
        carrier in prop::sample::select(&CarrierKind::ALL[..]),
        size in prop::sample::select(&Jar::ALL[..]),
    ) {
        let mut farm = farm("corn", "NIS");
        farm.products.clear();
        let pass = &mut farm.passes["p"];
        pass.mix.clear();
        pass.carrier_kind = carrier;
        for (n, (kind, place)) in kinds.into_iter().enumerate() {
            let product = any_product(kind, place);
            let rate = if product.is_liquid() { "1 qt/ac" } else { "4 oz wt/ac" };
            pass.mix.push(Line::new(&format!("p{n}"), typed(rate)));
            farm.products.insert(format!("p{n}"), product);
        }
        let plan = plan(&farm, "p").unwrap();
        for placed in &plan.order {
            prop_assert!((0.0..=1.0).contains(&placed.full_before), "{placed:?}");
        }
        let jar = jar(&plan, &farm, size).unwrap();
        let liquid = |item: usize| match jar.items[item].exact {
            Amount::Volume(volume) => volume.to_litres(),
            Amount::Mass(_) => 0.0,
        };
        let (mut level, mut to_come) = (0.0, (0..jar.items.len()).map(liquid).sum::<f64>());
        for step in &jar.steps {
            match step {
                JarStep::Carrier { add, to } => {
                    prop_assert!(add.to_litres() > 0.0 && (level + add.to_litres() - to.to_litres()).abs() < 1e-9);
                    level = to.to_litres();
                    prop_assert!(level + to_come <= size.volume().to_litres() + 1e-9);
                }
                JarStep::Product { item } => {
                    level += liquid(*item);
                    to_come -= liquid(*item);
                }
            }
        }
        prop_assert!((level - size.volume().to_litres()).abs() < 1e-9, "{level}");
    }
}
