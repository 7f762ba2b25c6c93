//! The farm itself: its name, units, paper, place, measuring marks, emergency lines, and the limits it keeps to.

use egui::{Label, Ui};
use jiff::civil::Date;
use tankard_core::farm::{Aim, Apart, Farm, Measuring, Paper, Place, Practice};
use tankard_core::language::Language;
use tankard_core::plausible::zones;
use tankard_core::quantity::{Area, AsTyped, Quantity, Units};
use tankard_core::t;
use tankard_core::weather::practice::{source, usual, why};
use tankard_core::weather::sun;
use tankard_core::words::uncapital;

use super::{Bench, line, quiet, section, title_box, word};
use crate::look;
use crate::parts::{boxes, lists, offers};

/// What of the farm is edited here; its collections stay where they are.
#[derive(Clone, PartialEq)]
struct House {
    name: String,
    units: Units,
    currency: String,
    place: Place,
    paper: Paper,
    card_languages: Vec<Language>,
    measuring: Measuring,
    emergency: String,
    practice: Practice,
    aims: Vec<Aim>,
    apart: Option<Vec<Apart>>,
    short_step: Option<AsTyped<Area>>,
}

impl House {
    fn of(farm: &Farm) -> Self {
        Self {
            name: farm.name.clone(),
            units: farm.units,
            currency: farm.currency.clone(),
            place: farm.place.clone().unwrap_or_default(),
            paper: farm.paper,
            card_languages: farm.card_languages.clone(),
            measuring: farm.measuring.clone(),
            emergency: farm.emergency.join("\n"),
            practice: farm.practice.clone(),
            aims: farm.aims.clone(),
            apart: farm.apart.clone(),
            short_step: farm.short_step.clone(),
        }
    }

    fn into(self, farm: &mut Farm) {
        farm.name = self.name;
        farm.units = self.units;
        farm.currency = self.currency;
        farm.place = (self.place != Place::default()).then_some(self.place);
        farm.paper = self.paper;
        farm.card_languages = self.card_languages;
        farm.measuring = self.measuring;
        farm.practice = self.practice;
        farm.aims = self.aims;
        farm.apart = self.apart;
        farm.short_step = self.short_step;
        farm.emergency = if self.emergency.is_empty() {
            Vec::new()
        } else {
            self.emergency.split('\n').map(str::to_owned).collect()
        };
    }
}

/// What stands at the left.
pub(super) fn list(ui: &mut Ui) {
    lists::empty(ui, t!("shed-what-holds-for-all-passes-the"));
}

/// The page.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    super::with_sheets(bench, ui, 284.0, form, |bench, ui| {
        // What is said where it is typed is not said beside it, too.
        let place = bench.farm().place.clone().unwrap_or_default();
        if misplaced(&place, bench.desk.now().date()).is_none() {
            super::sheets::doubts(bench, ui);
        }
        super::sheets::sheet(ui, t!("shed-units"), |ui| {
            boxes::say(ui, t!("shed-these-are-the-units-that-numbers"));
            boxes::say(ui, t!("shed-a-bare-gal-is-the-us"));
        });
        super::sheets::sheet(ui, t!("shed-where-the-usual-limits-come-from"), |ui| {
            let mut known: Vec<String> = Vec::new();
            for (name, key) in limits() {
                let source = source(key).to_string();
                match known.iter_mut().find(|text| text.ends_with(&source)) {
                    Some(text) => *text = text.replacen(": ", &format!(", {name}: "), 1),
                    None => known.push(format!("{name}: {source}")),
                }
            }
            for text in known {
                boxes::say(ui, &text);
            }
        });
    });
}

/// One language, or two with the first on top. English alone is what a farm has that names none.
fn card_languages() -> Vec<Vec<Language>> {
    use Language::{English, Spanish};
    vec![Vec::new(), vec![Spanish], vec![Spanish, English], vec![English, Spanish]]
}

fn in_words(languages: &[Language]) -> String {
    let names: Vec<&str> = languages.iter().map(|language| language.name()).collect();
    if names.is_empty() { Language::English.name().to_owned() } else { names.join(" / ") }
}

/// Zones that what is typed may mean, or those of the nearest cities, to be taken by a click, or in the box by a key.
fn proposed_zones(ui: &mut Ui, place: &Place, today: Date, in_box: bool) {
    let zones = zones(place, today);
    let Some(first) = zones.first() else { return };
    line(ui, "", |ui| {
        let by_place = place.zone.trim().is_empty();
        word(ui, if by_place { t!("shed-zones-of-the-nearest-cities") } else { t!("shed-zones-that-may-be-meant") });
        offers::acts(ui, &zones);
        if in_box {
            offers::by_key(ui, first);
        }
    });
}

fn form(bench: &mut Bench, ui: &mut Ui) {
    let before = House::of(bench.farm());
    let mut house = before.clone();
    quiet(ui);
    title_box(ui, t!("shed-name-of-the-farm"), &mut house.name);
    section(ui, t!("shed-reading"));
    line(ui, t!("shed-units-row"), |ui| {
        let all = [Units::UsCustomary, Units::Imperial, Units::Metric];
        let say = |units: &Units| {
            match units {
                Units::UsCustomary => t!("shed-us-gallons-pounds-acres"),
                Units::Imperial => t!("shed-imperial-imperial-gallons-pounds-acres"),
                Units::Metric => t!("shed-metric-litres-kilograms-hectares"),
            }
            .to_owned()
        };
        boxes::choice(ui, t!("shed-units-row"), &mut house.units, &all, say, 300.0);
    });
    line(ui, t!("shed-sign-of-the-currency"), |ui| {
        boxes::text(ui, t!("shed-sign-of-the-currency"), &mut house.currency, 60.0);
    });
    section(ui, t!("shed-place"));
    line(ui, t!("shed-latitude-longitude"), |ui| {
        boxes::text_or_empty(
            ui,
            t!("shed-latitude"),
            &mut house.place.latitude,
            100.0,
            &t!("parts-e-g", example = "41.2"),
        );
        boxes::text_or_empty(
            ui,
            t!("shed-longitude"),
            &mut house.place.longitude,
            100.0,
            &t!("parts-e-g", example = "-96.4"),
        );
    });
    let mut in_zone = false;
    line(ui, t!("shed-time-zone"), |ui| {
        let hint = t!("parts-e-g", example = "America/Chicago");
        let zone = boxes::text_or_empty(ui, t!("shed-time-zone"), &mut house.place.zone, 200.0, &hint);
        in_zone = zone.has_focus();
        if !house.place.zone.trim().is_empty() && sun::zone(&house.place).is_err() {
            ui.label(look::soft(ui, t!("shed-is-not-a-time-zone-known")).color(look::colours(ui).check));
        }
    });
    proposed_zones(ui, &house.place, bench.desk.now().date(), in_zone);
    if let Some(problem) = misplaced(&house.place, bench.desk.now().date()) {
        line(ui, "", |ui| {
            ui.add(Label::new(look::soft(ui, problem).color(look::colours(ui).check)).wrap());
        });
        for finding in bench.doubts {
            line(ui, "", |ui| offers::acts(ui, &finding.offers));
        }
    }
    line(ui, t!("shed-height-above-the-sea"), |ui| {
        boxes::quantity_or_none(ui, t!("shed-height-above-the-sea"), &mut house.place.altitude, 120.0);
        boxes::understood(ui, house.place.altitude.as_ref(), house.units);
        word(ui, t!("shed-for-the-pressure-of-the-air"));
    });
    section(ui, t!("shed-load-cards"));
    line(ui, t!("shed-paper"), |ui| {
        boxes::choice(
            ui,
            t!("shed-paper"),
            &mut house.paper,
            &[Paper::Letter, Paper::A4],
            |paper| match paper {
                Paper::Letter => t!("shed-letter").to_owned(),
                Paper::A4 => "A4".to_owned(),
            },
            120.0,
        );
    });
    line(ui, t!("shed-language"), |ui| {
        boxes::choice(
            ui,
            t!("shed-language-of-the-cards"),
            &mut house.card_languages,
            &card_languages(),
            |all| in_words(all),
            200.0,
        );
        word(ui, t!("shed-names-and-what-you-type-from"));
    });
    line(ui, t!("shed-in-an-emergency"), |ui| {
        boxes::lines(ui, t!("shed-telephone-lines-for-an-emergency"), &mut house.emergency, 400.0, 3);
    });
    section(ui, t!("shed-measuring"));
    line(ui, t!("shed-finest-mark-liquids"), |ui| {
        let usual = Measuring::default().liquid(house.units).show(house.units);
        boxes::quantity_hinted(ui, t!("shed-finest-mark-for-liquids"), &mut house.measuring.liquid, 120.0, &usual);
        word(ui, t!("shed-amounts-are-rounded-to-it-a"));
    });
    line(ui, t!("shed-finest-mark-dry"), |ui| {
        let usual = Measuring::default().dry(house.units).show(house.units);
        boxes::quantity_hinted(ui, t!("shed-finest-mark-for-dry-products"), &mut house.measuring.dry, 120.0, &usual);
    });
    loads(ui, &mut house);
    practice(ui, &mut house.practice, house.units);
    if house != before {
        bench.desk.document.edit(|farm| house.into(farm));
    }
}

/// What is wrong with where the farm lies, in sentences; nothing where it is typed in part or not at all.
fn misplaced(place: &Place, today: Date) -> Option<String> {
    if place.latitude.trim().is_empty() || place.longitude.trim().is_empty() {
        return None;
    }
    match place.position() {
        Err(problem) => Some(format!("{problem}.")),
        Ok(_) => sun::misfit(place, today).map(|misfit| format!("{}. {}", misfit.text, misfit.hint)),
    }
}

/// What sizes of loads aim at, what keeps fields from sharing one, and the rows for less ground on the cards.
fn loads(ui: &mut Ui, house: &mut House) {
    section(ui, t!("shed-sizes-of-loads"));
    word(ui, t!("shed-what-comes-first-weighs-more-than"));
    let mut order = tankard_core::loads::sizing::aims_in(&house.aims);
    let mut swap = None;
    for (at, aim) in order.iter().enumerate() {
        line(ui, &(at + 1).to_string(), |ui| {
            let (first, last) = (t!("parts-it-is-the-first-already"), t!("parts-it-is-the-last-already"));
            for (sign, spoken, other, why_not) in
                [("↑", t!("shed-move-up"), at.checked_sub(1), first), ("↓", t!("shed-move-down"), Some(at + 1), last)]
            {
                let there = other.filter(|other| *other < order.len());
                let button = egui::Button::new(sign).small();
                let response = ui.add_enabled(there.is_some(), button);
                let response = response.on_hover_text(spoken).on_disabled_hover_text(why_not);
                if response.accessible_name(format!("{spoken}: {}", aim.name())).clicked() {
                    swap = there.map(|other| (at, other));
                }
            }
            ui.label(aim.name());
        });
    }
    if let Some((one, other)) = swap {
        order.swap(one, other);
        // The usual order needs no words in the file.
        house.aims = if order == Aim::ALL { Vec::new() } else { order };
    }
    section(ui, t!("shed-fields-that-share-no-load"));
    word(ui, t!("shed-two-fields-one-after-the-other"));
    let mut apart = house.apart.clone().unwrap_or_else(|| Apart::ALL.to_vec());
    for rule in Apart::ALL {
        let mut holds = apart.contains(&rule);
        if boxes::tick(ui, &mut holds, rule.name()).changed() {
            apart =
                Apart::ALL.into_iter().filter(|one| if *one == rule { holds } else { apart.contains(one) }).collect();
        }
    }
    house.apart = (apart != Apart::ALL).then_some(apart);
    section(ui, t!("shed-less-ground-than-planned"));
    line(ui, t!("shed-rows-on-the-card-every"), |ui| {
        boxes::quantity_hinted(
            ui,
            t!("shed-rows-on-the-card-every"),
            &mut house.short_step,
            120.0,
            t!("shed-so-that-they-fit"),
        );
        word(ui, t!("shed-of-ground"));
    });
}

/// What a usual limit is called, and its name in the table.
fn limits() -> [(&'static str, &'static str); 10] {
    [
        (t!("shed-wind-at-least"), "least_wind"),
        (t!("shed-wind-at-most"), "most_wind"),
        (t!("shed-gusts-at-most"), "most_gust"),
        (t!("shed-delta-t-good-from"), "least_delta_t"),
        (t!("shed-delta-t-good-up-to"), "good_delta_t"),
        (t!("shed-delta-t-at-most"), "most_delta_t"),
        (t!("shed-air-at-least"), "least_air"),
        (t!("shed-air-at-most"), "most_air"),
        (t!("shed-wet-from-a-chance-of"), "wet_chance"),
        (t!("shed-calibration-limit"), "calibration_days"),
    ]
}

/// The limits that hold where no label and no law says more; a box left empty stands for the usual one.
fn practice(ui: &mut Ui, practice: &mut Practice, units: Units) {
    let usual = usual();
    section(ui, t!("shed-what-this-farm-keeps-to"));
    word(ui, t!("shed-where-no-label-and-no-law"));
    limit(ui, t!("shed-wind-at-least"), "least_wind", &mut practice.least_wind, usual.least_wind.as_ref(), units);
    limit(ui, t!("shed-wind-at-most"), "most_wind", &mut practice.most_wind, usual.most_wind.as_ref(), units);
    limit(ui, t!("shed-gusts-at-most"), "most_gust", &mut practice.most_gust, usual.most_gust.as_ref(), units);
    limit(
        ui,
        t!("shed-delta-t-good-from"),
        "least_delta_t",
        &mut practice.least_delta_t,
        usual.least_delta_t.as_ref(),
        units,
    );
    limit(
        ui,
        t!("shed-delta-t-good-up-to"),
        "good_delta_t",
        &mut practice.good_delta_t,
        usual.good_delta_t.as_ref(),
        units,
    );
    limit(
        ui,
        t!("shed-delta-t-at-most"),
        "most_delta_t",
        &mut practice.most_delta_t,
        usual.most_delta_t.as_ref(),
        units,
    );
    limit(ui, t!("shed-air-at-least"), "least_air", &mut practice.least_air, usual.least_air.as_ref(), units);
    limit(ui, t!("shed-air-at-most"), "most_air", &mut practice.most_air, usual.most_air.as_ref(), units);
    limit(
        ui,
        t!("shed-wet-from-a-chance-of"),
        "wet_chance",
        &mut practice.wet_chance,
        usual.wet_chance.as_ref(),
        units,
    );
    limit(ui, t!("shed-neighbours-nearer-than"), "near", &mut practice.near, usual.near.as_ref(), units);
    line(ui, t!("shed-calibration-is-old-after"), |ui| {
        let name = t!("shed-days-after-which-a-calibration-is");
        boxes::count_or_none(ui, name, &mut practice.calibration_days, 120.0, t!("shed-its-season"));
        word(ui, t!("shed-days-row"));
    });
}

/// A limit, with why there is such a one; the pointer brings where the usual value comes from.
fn limit<Q: Quantity>(
    ui: &mut Ui,
    name: &str,
    key: &str,
    value: &mut Option<AsTyped<Q>>,
    usual: Option<&AsTyped<Q>>,
    units: Units,
) {
    line(ui, name, |ui| {
        let hint = usual.map(|usual| usual.show(units)).unwrap_or_default();
        boxes::quantity_hinted(ui, name, value, 120.0, &hint);
        boxes::understood(ui, value.as_ref(), units);
        ui.label(look::soft(ui, uncapital(why(key)))).on_hover_text(t!("shed-the-usual-value", key = source(key)));
    });
}
