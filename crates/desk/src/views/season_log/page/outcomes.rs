//! What came of it: how weeds and crop were rated, photos, notes. A look is a line, and is opened to be typed over.

use egui::Ui;
use tankard_core::farm::{Effect, Outcome, Record, Text};
use tankard_core::finding::Level;
use tankard_core::season::trials::days_after;
use tankard_core::t;
use tankard_file::names;

use super::Page;
use super::rows::{
    FOLD, LABEL, SHORT, TAKE, box_width, captions, fold, pair, row, section_with, take, triangle, with_before,
    with_offers,
};
use crate::look;
use crate::parts::{boxes, dates, mark};

/// Width of the columns.
const FIELD: f32 = 118.0;
const DAY: f32 = 82.0;
const AFTER: f32 = 40.0;
const RATING: f32 = 48.0;
/// What is rated, without its words.
#[derive(Clone, Copy, PartialEq, Eq)]
enum What {
    Control,
    Injury,
    Neither,
}

impl What {
    const ALL: [Self; 3] = [Self::Control, Self::Injury, Self::Neither];

    fn of(effect: Option<&Effect>) -> Self {
        match effect {
            Some(Effect::Control(_)) => Self::Control,
            Some(Effect::Injury(_)) => Self::Injury,
            None => Self::Neither,
        }
    }

    fn words(self) -> &'static str {
        match self {
            Self::Control => t!("season-log-control-of-a-weed"),
            Self::Injury => t!("season-log-injury-of-the-crop"),
            Self::Neither => t!("season-log-photo-or-note-alone"),
        }
    }

    fn effect(self, words: Text) -> Option<Effect> {
        match self {
            Self::Control => Some(Effect::Control(words)),
            Self::Injury => Some(Effect::Injury(words)),
            Self::Neither => None,
        }
    }
}

/// Shows the section; gives what went wrong with a photo.
pub(super) fn outcomes(ui: &mut Ui, page: &Page<'_>, record: &mut Record) -> Option<String> {
    section_with(ui, t!("season-log-outcomes"), |ui| {
        if record.outcomes.is_empty() {
            ui.label(look::soft(ui, t!("season-log-how-the-weeds-died-and-how")));
        }
    });
    let words_width = (ui.available_width() - FOLD - FIELD - DAY - AFTER - RATING - TAKE - 6.0 * 8.0).max(60.0);
    if !record.outcomes.is_empty() {
        let columns = [
            ("", FOLD),
            (t!("season-log-head-field"), FIELD),
            (t!("season-log-head-day"), DAY),
            (t!("season-log-head-after"), AFTER),
            (t!("season-log-head-what"), words_width),
            (t!("season-log-head-rating"), RATING),
        ];
        captions(ui, &columns);
    }
    let mut said = None;
    let mut taken = None;
    // The looks are typed over beside the record that they are of.
    let mut looks = std::mem::take(&mut record.outcomes);
    let of = &*record;
    for (at, outcome) in looks.iter_mut().enumerate() {
        ui.push_id(("outcome", at), |ui| {
            let key = page.fold(&format!("outcome {at}"));
            let open = ui.horizontal(|ui| {
                let number = at + 1;
                let open = triangle(ui, key, &t!("season-log-look-words", number = number, words = words_of(outcome)));
                let field =
                    of.fields.get(outcome.field.as_str()).map_or(outcome.field.as_str(), |field| field.name.as_str());
                let cell = |ui: &mut Ui, width: f32, text: String| {
                    boxes::slot(ui, width, |ui| ui.add(egui::Label::new(text).truncate()));
                };
                cell(ui, FIELD, field.to_owned());
                cell(ui, DAY, dates::short(outcome.date));
                cell(ui, AFTER, format!("{} d", days_after(of, outcome.date)));
                cell(ui, words_width, words_of(outcome));
                let (name, ends) = (t!("season-log-rating-number", number = number), t!("season-log-ends-of-a-rating"));
                boxes::per_cent(ui, &name, &mut outcome.rating, RATING, "%", ends);
                if take(ui, &t!("season-log-look-number", number = number)) {
                    taken = Some(at);
                }
                open
            });
            if open.inner {
                said = form(ui, page, of, outcome).or(said.take());
            }
        });
    }
    if let Some(at) = taken {
        looks.remove(at);
    }
    record.outcomes = looks;
    ui.horizontal(|ui| {
        if boxes::act(ui, t!("season-log-add-a-rating")).clicked() {
            let next = next(page, record);
            record.outcomes.push(next);
            open_last(ui, page, record);
        }
        if boxes::act(ui, t!("season-log-add-a-photo-or-note")).clicked() {
            let next = Outcome { effect: None, ..next(page, record) };
            record.outcomes.push(next);
            open_last(ui, page, record);
        }
    });
    said
}

fn open_last(ui: &Ui, page: &Page<'_>, record: &Record) {
    for at in 0..record.outcomes.len() {
        fold(ui, page.fold(&format!("outcome {at}")), at + 1 == record.outcomes.len());
    }
}

/// What a look is about, in a few words.
fn words_of(outcome: &Outcome) -> String {
    let what = match &outcome.effect {
        Some(Effect::Control(weed) | Effect::Injury(weed)) if weed.trim().is_empty() => {
            What::of(outcome.effect.as_ref()).words().to_owned()
        }
        Some(Effect::Control(weed)) => weed.to_string(),
        Some(Effect::Injury(words)) => t!("season-log-injury", words = words),
        None if outcome.note.trim().is_empty() => t!("season-log-photo").to_owned(),
        None => outcome.note.trim().to_owned(),
    };
    match outcome.photos.len() {
        0 => what,
        count => t!("season-log-photos", what = what, count = count),
    }
}

/// The next look: on the field of the last one, today, at the first weed that was not rated there that day.
fn next(page: &Page<'_>, record: &Record) -> Outcome {
    let last = record.outcomes.last();
    let today = page.now.date();
    let field: Text =
        last.map(|last| last.field.clone()).or_else(|| record.fields.keys().next().map(Text::from)).unwrap_or_default();
    let done = |weed: &str| {
        let mut here = record.outcomes.iter().filter(|outcome| outcome.field == field && outcome.date == today);
        here.any(|outcome| outcome.effect == Some(Effect::Control(weed.into())))
    };
    let weed = record.weeds.iter().find(|weed| !done(weed.trim())).map(|weed| Text::from(weed.trim()));
    Outcome {
        field: field.clone(),
        date: today,
        effect: Some(Effect::Control(weed.unwrap_or_default())),
        rating: None,
        by: last.map_or_else(|| record.operator.clone(), |last| last.by.clone()),
        photos: Vec::new(),
        note: Text::new(),
    }
}

/// A look, to be typed over; gives what went wrong with a photo.
fn form(ui: &mut Ui, page: &Page<'_>, of: &Record, outcome: &mut Outcome) -> Option<String> {
    let fields: Vec<Text> = of.fields.keys().map(Text::from).collect();
    let name = |id: &Text| {
        let field = of.fields.get(id.as_str());
        field.map_or_else(|| t!("season-log-choose-a-field").to_owned(), |field| field.name.to_string())
    };
    pair(
        ui,
        (t!("season-log-field-d07"), |ui| {
            boxes::choice(ui, t!("season-log-field-looked-at"), &mut outcome.field, &fields, name, box_width(ui));
        }),
        (t!("season-log-day"), |ui| {
            boxes::date(ui, t!("season-log-day-of-the-look"), &mut outcome.date, box_width(ui));
        }),
    );
    let mut what = What::of(outcome.effect.as_ref());
    let before = what;
    let mut words = match &outcome.effect {
        Some(Effect::Control(words) | Effect::Injury(words)) => words.clone(),
        None => Text::new(),
    };
    let offered = offered(page, of, outcome, what);
    let second = match before {
        What::Control => t!("season-log-weed"),
        What::Injury => t!("season-log-injury-d86"),
        What::Neither => "",
    };
    pair(
        ui,
        (t!("season-log-rated"), |ui| {
            boxes::choice(
                ui,
                t!("season-log-what-is-rated"),
                &mut what,
                &What::ALL,
                |what| what.words().to_owned(),
                box_width(ui),
            );
        }),
        (second, |ui| {
            if before != What::Neither {
                let (name, hint) = if before == What::Injury {
                    (t!("season-log-injury-d86"), t!("season-log-burn-stunting"))
                } else {
                    (t!("season-log-weed"), t!("season-log-waterhemp"))
                };
                with_offers(ui, name, &mut words, box_width(ui), hint, (&offered, t!("season-log-usual-answers")));
            }
        }),
    );
    outcome.effect = what.effect(if what == before { words } else { Text::new() });
    pair(
        ui,
        (t!("season-log-looked"), |ui| {
            with_before(ui, t!("season-log-who-looked"), &mut outcome.by, box_width(ui), "", &page.used.operators);
        }),
        ("", |_: &mut Ui| {}),
    );
    row(ui, t!("season-log-note"), |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, t!("season-log-note-on-the-look"), &mut outcome.note, width, "");
    });
    let said = photos(ui, page, &mut outcome.photos);
    ui.add_space(6.0);
    said
}

/// Weeds of the record, then those of the field's earlier records; or the usual injuries.
fn offered(page: &Page<'_>, of: &Record, outcome: &Outcome, what: What) -> Vec<String> {
    if what == What::Injury {
        return [
            t!("season-log-leaf-burn"),
            t!("season-log-stunting"),
            t!("season-log-bleaching"),
            t!("season-log-leaf-cupping"),
            t!("season-log-stand-loss"),
        ]
        .map(str::to_owned)
        .to_vec();
    }
    let mut all: Vec<String> = of.weeds.iter().map(|weed| weed.trim().to_owned()).collect();
    all.extend(page.used.weeds_on(page.farm, &outcome.field));
    let mut seen = std::collections::HashSet::new();
    all.retain(|weed| !weed.is_empty() && seen.insert(weed.clone()));
    all
}

/// Photos by path: from the farm's folder, where they are not whole.
fn photos(ui: &mut Ui, page: &Page<'_>, photos: &mut Vec<String>) -> Option<String> {
    let mut said = None;
    let mut taken = None;
    for (at, photo) in photos.iter_mut().enumerate() {
        ui.push_id(("photo", at), |ui| {
            row(ui, if at == 0 { t!("season-log-photos-label") } else { "" }, |ui| {
                let number = at + 1;
                let found = names::picture_there(page.folder, photo);
                let width = ui.available_width() - TAKE - SHORT - 16.0;
                boxes::text_or_empty(
                    ui,
                    &t!("season-log-photo-number", number = number),
                    photo,
                    width,
                    t!("season-log-path-of-a-photo"),
                );
                match found {
                    _ if photo.trim().is_empty() => {}
                    Err(why) => {
                        mark::show(ui, Level::Check);
                        ui.add(egui::Label::new(why.to_string()).truncate()).on_hover_text(why.to_string());
                    }
                    Ok(path) => {
                        if boxes::act(ui, t!("season-log-open"))
                            .accessible_name(t!("season-log-open-photo", number = number))
                            .clicked()
                            && open::that_detached(&path).is_err()
                        {
                            said = Some(t!("season-log-no-program-shows-pictures", path = path.display()));
                        }
                    }
                }
                if take(ui, &t!("season-log-photo-of-a-look", number = number)) {
                    taken = Some(at);
                }
            });
        });
    }
    if let Some(at) = taken {
        photos.remove(at);
    }
    ui.horizontal(|ui| {
        boxes::slot(ui, LABEL, |_| ());
        if boxes::act(ui, t!("season-log-add-a-photo")).clicked() {
            photos.push(String::new());
        }
    });
    said
}
