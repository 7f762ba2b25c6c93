//! Load cards: preview, issue, print, reprint.
//!
//! Issuing stores what was printed. A reprint is laid out from that store and marked; where the plan has changed since, the
//! issued cards are superseded and the page says so.

use std::path::{Path, PathBuf};

use egui::{RichText, ScrollArea, Ui, Vec2};
use tankard_core::farm::card::{Card, CardContent};
use tankard_core::farm::{Farm, Id};
use tankard_core::finding::Level;
use tankard_core::loads::card::{cards, short_date};
use tankard_core::plan::Plan;
use tankard_file::store;
use tankard_paper::Sheet;

use super::preview::Wanted;
use crate::app::Desk;
use crate::files::Purpose;
use crate::look;
use crate::parts::{boxes, lists, mark};

/// What the next file of cards is to hold.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Printing {
    /// New cards, issued as they are written.
    #[default]
    Issue,
    /// These cards once more.
    Reprint(Vec<Id>),
}

/// The cards issued last for a pass, load by load.
fn issued<'a>(farm: &'a Farm, pass: &str) -> Vec<(&'a Id, &'a Card)> {
    let mut latest: Vec<(&Id, &Card)> = Vec::new();
    for (number, card) in farm.cards.iter().filter(|(_, card)| card.pass == pass) {
        match latest.iter_mut().find(|(_, known)| known.content.load == card.content.load) {
            Some(place) => *place = (number, card),
            None => latest.push((number, card)),
        }
    }
    // A pass that now has fewer loads leaves cards of the old ones behind; only those issued last together count.
    let last = latest.iter().map(|(_, card)| card.issued).max();
    latest.retain(|(_, card)| Some(card.issued) == last);
    latest.sort_by_key(|(_, card)| card.content.load);
    latest
}

fn is_current(issued: &[(&Id, &Card)], now: &[CardContent]) -> bool {
    issued.len() == now.len() && issued.iter().zip(now).all(|((_, card), content)| card.content == *content)
}

fn moment(card: &Card) -> String {
    format!("{}, {}", short_date(card.issued.date()), card.issued.strftime("%H:%M"))
}

/// Shows the page.
pub fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    let farm = desk.document.farm();
    let now = cards(farm, plan);
    let last = issued(farm, id);
    let current = is_current(&last, &now);
    let number = desk.tank_loads.load;
    let wanted = if current {
        last.iter().find(|(_, card)| card.content.load == number).map(|(card_number, card)| Wanted {
            number: (*card_number).clone(),
            issued: Some(moment(card)),
            content: card.content.clone(),
        })
    } else {
        now.iter().find(|content| content.load == number).map(|content| Wanted {
            number: tankard_paper::DRAFT.to_owned(),
            issued: None,
            content: content.clone(),
        })
    };
    let numbers: Vec<Id> = last.iter().map(|(number, _)| (*number).clone()).collect();
    let when = last.first().map(|(_, card)| moment(card));
    let stops = plan.count(Level::Stop);
    let height = ui.available_height();
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 16.0;
        let paper = Vec2::new((height * 0.78).min(ui.available_width() - 260.0), height - 4.0);
        ui.allocate_ui_with_layout(paper, egui::Layout::top_down(egui::Align::Min), |ui| {
            ui.set_min_size(paper);
            match &wanted {
                Some(wanted) => desk.tank_loads.preview.show(ui, wanted, paper),
                None => lists::empty(ui, "There is no load yet, so there is no card."),
            }
        });
        ui.vertical(|ui| {
            ui.set_width((ui.available_width() - 12.0).max(200.0));
            loads(desk, ui, now.len());
            ui.add_space(look::GRID);
            state(ui, when.as_deref(), &numbers, current, stops);
            ui.add_space(look::GRID);
            if now.is_empty() {
                return;
            }
            if stops == 0 && !current {
                if ui.button("Issue and open for printing").clicked() {
                    desk.tank_loads.printing = Printing::Issue;
                    open(desk);
                }
                if ui.button("Issue and save as PDF…").clicked() {
                    desk.tank_loads.printing = Printing::Issue;
                    let path = suggested(desk, id);
                    desk.ask_file(Purpose::SaveCards, path, ui.ctx());
                }
            }
            if !numbers.is_empty() {
                let words = if current {
                    ["Open a reprint", "Save a reprint as PDF…"]
                } else {
                    ["Open a reprint of the old cards", "Save a reprint of the old cards…"]
                };
                if ui.button(words[0]).clicked() {
                    desk.tank_loads.printing = Printing::Reprint(numbers.clone());
                    open(desk);
                }
                if ui.button(words[1]).clicked() {
                    desk.tank_loads.printing = Printing::Reprint(numbers.clone());
                    let path = suggested(desk, id);
                    desk.ask_file(Purpose::SaveCards, path, ui.ctx());
                }
            }
            ui.add_space(look::GRID);
            before(desk, ui, id, &numbers);
        });
    });
}

fn loads(desk: &mut Desk, ui: &mut Ui, count: usize) {
    ui.label(look::heading("Card of load"));
    ui.horizontal_wrapped(|ui| {
        for at in 1..=count {
            let number = u32::try_from(at).unwrap_or(u32::MAX);
            let response = ui
                .selectable_label(desk.tank_loads.load == number, format!("{at}"))
                .accessible_name(format!("Card of load {at}"));
            if response.clicked() {
                desk.tank_loads.load = number;
            }
        }
    });
}

fn state(ui: &mut Ui, when: Option<&str>, numbers: &[Id], current: bool, stops: usize) {
    let range = match numbers {
        [] => String::new(),
        [one] => one.clone(),
        [first, .., last] => format!("{first} to {last}"),
    };
    match when {
        Some(when) if current => {
            ui.label(look::strong("Issued"));
            ui.label(format!("Cards {range}, {when}. The plan still says the same."));
        }
        Some(when) => {
            ui.horizontal(|ui| {
                mark::show(ui, Level::Check);
                ui.label(look::strong("Superseded").color(look::colours(ui).check));
            });
            ui.label(format!("The plan has changed since cards {range} were issued ({when}). Take the old cards out of the truck and issue new ones."));
        }
        None => {
            ui.label(look::strong("Not issued yet"));
            ui.label("The picture is a draft of what the plan says now.");
        }
    }
    if stops > 0 {
        ui.horizontal_wrapped(|ui| {
            mark::show(ui, Level::Stop);
            let text = format!("{stops} Stop to settle before cards can be issued");
            ui.label(RichText::new(text).color(look::colours(ui).stop));
        });
    }
}

/// All cards of the pass that were issued before, so that any of them can be printed again.
fn before(desk: &mut Desk, ui: &mut Ui, pass: &str, latest: &[Id]) {
    let old: Vec<(Id, u32, String)> = desk
        .document
        .farm()
        .cards
        .iter()
        .rev()
        .filter(|(number, card)| card.pass == pass && !latest.contains(number))
        .map(|(number, card)| (number.clone(), card.content.load, moment(card)))
        .collect();
    if old.is_empty() {
        return;
    }
    ui.label(look::heading("Issued before"));
    let mut again = None;
    ScrollArea::vertical().id_salt("old cards").max_height(180.0).show(ui, |ui| {
        for (number, load, when) in old {
            ui.horizontal(|ui| {
                ui.label(look::soft(ui, format!("{number}, load {load}, {when}")));
                if boxes::act(ui, "Reprint").accessible_name(format!("Reprint card {number}")).clicked() {
                    again = Some(number.clone());
                }
            });
        }
    });
    if let Some(number) = again {
        desk.tank_loads.printing = Printing::Reprint(vec![number]);
        open(desk);
    }
}

fn suggested(desk: &Desk, id: &str) -> PathBuf {
    desk.beside("pdf").with_file_name(format!("{id}-load-cards.pdf"))
}

/// Issues cards for the chosen pass; gives their numbers.
fn issue(desk: &mut Desk) -> Result<Vec<Id>, String> {
    let id = desk.tank_loads.chosen.clone().ok_or("no pass is chosen")?;
    let plan = desk.document.plan(&id).ok_or("the pass is gone")?;
    if plan.level() == Some(Level::Stop) {
        return Err("a Stop stands; settle it first".to_owned());
    }
    let contents = cards(desk.document.farm(), &plan);
    let now = desk.now();
    let year = plan_year(desk.document.farm(), &id).unwrap_or(now.year());
    let prefix = format!("{year}-");
    let last = desk
        .document
        .farm()
        .cards
        .keys()
        .filter_map(|number| number.strip_prefix(&prefix)?.parse::<u32>().ok())
        .max()
        .unwrap_or(0);
    let numbered: Vec<(Id, Card)> = contents
        .into_iter()
        .zip(last + 1..)
        .map(|(content, number)| (format!("{prefix}{number:04}"), Card { pass: id.clone(), issued: now, content }))
        .collect();
    let numbers = numbered.iter().map(|(number, _)| number.clone()).collect();
    desk.document.edit(|farm| farm.cards.extend(numbered));
    Ok(numbers)
}

fn plan_year(farm: &Farm, pass: &str) -> Option<i16> {
    farm.passes.get(pass).map(|pass| pass.date.year())
}

/// The PDF of issued cards, as they were printed; marked if it is not the first time.
fn pdf(desk: &Desk, numbers: &[Id], again: bool) -> Result<Vec<u8>, String> {
    let now = desk.now();
    let mark = again.then(|| format!("reprinted {}, {}", short_date(now.date()), now.strftime("%H:%M")));
    let sheets: Vec<Sheet<'_>> = numbers
        .iter()
        .filter_map(|number| {
            let card = desk.document.farm().cards.get(number)?;
            Some(Sheet { number, issued: Some(moment(card)), reprint: mark.clone(), content: &card.content })
        })
        .collect();
    tankard_paper::pdf(&sheets).map_err(|error| error.to_string())
}

/// Writes what is to be printed, and issues it only once it is on disk.
fn write(desk: &mut Desk, path: &Path) -> Result<usize, String> {
    let printing = std::mem::take(&mut desk.tank_loads.printing);
    let (numbers, again) = match printing {
        Printing::Reprint(numbers) => (numbers, true),
        Printing::Issue => (issue(desk)?, false),
    };
    let written =
        pdf(desk, &numbers, again).and_then(|bytes| store::put(path, &bytes).map_err(|error| error.to_string()));
    if let Err(problem) = written {
        if !again {
            // What did not come onto paper was not issued.
            desk.document.edit(|farm| farm.cards.retain(|number, _| !numbers.contains(number)));
        }
        return Err(problem);
    }
    Ok(numbers.len())
}

/// Saves the cards as PDF where the user said.
pub fn save(desk: &mut Desk, path: &Path) {
    match write(desk, path) {
        Ok(count) => desk.tell(format!("{count} cards written to {}", path.display())),
        Err(problem) => desk.tell_problem(format!("The cards were not written: {problem}")),
    }
}

/// Writes the cards to a passing file and hands it to the system's viewer, from where they are printed.
fn open(desk: &mut Desk) {
    let name = desk.tank_loads.chosen.clone().unwrap_or_default();
    let path = std::env::temp_dir().join(format!("tankard-{name}-load-cards.pdf"));
    match write(desk, &path) {
        Ok(count) => match open::that_detached(&path) {
            Ok(()) => desk.tell(format!("{count} cards handed to the system's viewer: {}", path.display())),
            Err(error) => {
                desk.tell_problem(format!("No viewer answered ({error}); the cards are in {}", path.display()));
            }
        },
        Err(problem) => desk.tell_problem(format!("The cards were not written: {problem}")),
    }
}
