//! Load cards: preview, issue, print, reprint.
//!
//! Issuing stores what was printed. A reprint is laid out from that store and marked; where the plan has changed since, the
//! issued cards are superseded and the page says so.

use std::collections::HashMap;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use egui::{RichText, ScrollArea, Ui, Vec2};
use jiff::civil::Date;
use tankard_core::day::sheet::SheetContent;
use tankard_core::farm::card::{Card, CardContent};
use tankard_core::farm::{Farm, Id};
use tankard_core::finding::Level;
use tankard_core::language::days::{moment, moment_said};
use tankard_core::language::{Say, say};
use tankard_core::loads::card::cards;
use tankard_core::plan::Plan;
use tankard_core::progress::Tell;
use tankard_core::t;
use tankard_file::store::{self, Report};
use tankard_paper::{PaperError, Sheet};

use super::preview::Wanted;
use crate::app::{Desk, Failed, Task};
use crate::files::Purpose;
use crate::look;
use crate::parts::{boxes, lists, mark};

/// What the next file of cards is to hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Printing {
    /// New cards of this pass, issued as they are written.
    Issue(Id),
    /// These cards once more.
    Reprint(Vec<Id>),
    /// The evening sheet of this day.
    Sheet(Date),
    /// The evening sheet of this day with new cards of its passes, issued as they are written.
    Day(Date),
}

/// What stands on the cards of a pass now, made once for a revision of the document.
#[derive(Default)]
pub(crate) struct Contents {
    made_for: Option<(u64, Id)>,
    cards: Arc<Vec<CardContent>>,
}

impl Contents {
    fn fresh(&mut self, revision: u64, pass: &str, farm: &Farm, plan: &Plan) -> Arc<Vec<CardContent>> {
        if self.made_for.as_ref().is_none_or(|(known, of)| *known != revision || of != pass) {
            self.cards = Arc::new(cards(farm, plan));
            self.made_for = Some((revision, pass.to_owned()));
        }
        Arc::clone(&self.cards)
    }
}

/// Which passes have issued cards that no longer say what the plan says, found once for a revision of the document.
#[derive(Default)]
pub(crate) struct Standing {
    made_for: Option<u64>,
    superseded: HashMap<Id, bool>,
}

/// Whether the cards issued last for a pass are superseded; false where none were issued.
pub(super) fn is_superseded(desk: &mut Desk, id: &Id) -> bool {
    let revision = desk.document.revision();
    let known = &mut desk.tank_loads.standing;
    if known.made_for != Some(revision) {
        *known = Standing { made_for: Some(revision), ..Standing::default() };
    }
    if let Some(known) = known.superseded.get(id) {
        return *known;
    }
    let mut superseded = false;
    if desk.document.farm().cards.values().any(|card| card.pass == *id) {
        let plan = desk.document.plan(id);
        let farm = desk.document.farm();
        superseded = plan.is_none_or(|plan| !is_current(&issued(farm, id), &cards(farm, &plan)));
    }
    desk.tank_loads.standing.superseded.insert(id.clone(), superseded);
    superseded
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

fn moment_of(card: &Card) -> String {
    moment(card.issued)
}

/// Shows the page.
pub fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    let farm = desk.document.farm();
    let now = desk.tank_loads.contents.fresh(desk.document.revision(), id, farm, plan);
    let last = issued(farm, id);
    let current = is_current(&last, &now);
    let number = desk.tank_loads.load;
    let wanted = if current {
        last.iter().find(|(_, card)| card.content.load == number).map(|(card_number, card)| Wanted {
            number: (*card_number).clone(),
            issued: Some(moment_said(card.issued).in_languages(&card.content.languages)),
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
    let when = last.first().map(|(_, card)| moment_of(card));
    let stops = plan.count(Level::Stop);
    let height = ui.available_height();
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 16.0;
        let paper = Vec2::new((height * 0.78).min(ui.available_width() - 260.0), height - 4.0);
        ui.allocate_ui_with_layout(paper, egui::Layout::top_down(egui::Align::Min), |ui| {
            ui.set_min_size(paper);
            match &wanted {
                Some(wanted) => desk.tank_loads.preview.show(ui, wanted, paper),
                None => lists::empty(ui, t!("tank-loads-there-is-no-load-yet-so")),
            }
        });
        let down = egui::Layout::top_down(egui::Align::Min);
        ui.allocate_ui_with_layout(ui.available_size_before_wrap(), down, |ui| {
            ScrollArea::vertical().id_salt("what to do with cards").auto_shrink(false).show(ui, |ui| {
                ui.set_width((ui.available_width() - 12.0).max(200.0));
                loads(desk, ui, now.len());
                ui.add_space(look::GRID);
                state(ui, when.as_deref(), &numbers, current, stops);
                ui.add_space(look::GRID);
                if now.is_empty() {
                    return;
                }
                if stops == 0 && !current {
                    if ui.button(t!("tank-loads-issue-and-open-for-printing")).clicked() {
                        desk.tank_loads.printing = Some(Printing::Issue(id.to_owned()));
                        open(desk);
                    }
                    if boxes::button(ui, t!("tank-loads-issue-and-save-as-pdf")).clicked() {
                        desk.tank_loads.printing = Some(Printing::Issue(id.to_owned()));
                        let path = suggested(desk, id);
                        desk.ask_file(Purpose::SaveCards, path, ui.ctx());
                    }
                }
                if !numbers.is_empty() {
                    let words = if current {
                        [t!("tank-loads-open-a-reprint"), t!("tank-loads-save-a-reprint-as-pdf")]
                    } else {
                        [t!("tank-loads-open-a-reprint-of-the-old"), t!("tank-loads-save-a-reprint-of-the-old")]
                    };
                    if ui.button(words[0]).clicked() {
                        desk.tank_loads.printing = Some(Printing::Reprint(numbers.clone()));
                        open(desk);
                    }
                    if ui.button(words[1]).clicked() {
                        desk.tank_loads.printing = Some(Printing::Reprint(numbers.clone()));
                        let path = suggested(desk, id);
                        desk.ask_file(Purpose::SaveCards, path, ui.ctx());
                    }
                }
                ui.add_space(look::GRID);
                if super::toggle(
                    ui,
                    desk.tank_loads.editor == Some(super::Editor::Rest),
                    t!("tank-loads-it-came-out-differently-in-the"),
                ) {
                    super::rest::toggle(desk, id);
                }
                ui.add_space(look::GRID);
                before(desk, ui, id, &numbers);
            });
        });
    });
}

fn loads(desk: &mut Desk, ui: &mut Ui, count: usize) {
    ui.label(look::heading(t!("tank-loads-card-of-load")));
    ui.horizontal_wrapped(|ui| {
        for at in 1..=count {
            let number = u32::try_from(at).unwrap_or(u32::MAX);
            let response = ui
                .selectable_label(desk.tank_loads.load == number, format!("{at}"))
                .accessible_name(t!("tank-loads-card-of-load-at", at = at));
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
        [first, .., last] => t!("tank-loads-to", first = first, last = last),
    };
    match when {
        Some(when) if current => {
            ui.label(look::strong(t!("tank-loads-issued")));
            ui.label(t!("tank-loads-cards-the-plan-still-says-the", range = range, when = when));
        }
        Some(when) => {
            ui.horizontal(|ui| {
                mark::show(ui, Level::Check);
                ui.label(look::strong(t!("tank-loads-superseded")).color(look::colours(ui).check));
            });
            ui.label(t!("tank-loads-the-plan-has-changed-since-cards", range = range, when = when));
        }
        None => {
            ui.label(look::strong(t!("tank-loads-not-issued-yet")));
            ui.label(t!("tank-loads-the-picture-is-a-draft-of"));
        }
    }
    if stops > 0 {
        ui.horizontal_wrapped(|ui| {
            mark::show(ui, Level::Stop);
            let text = t!("tank-loads-stop-to-settle-before-cards-can", stops = stops);
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
        .map(|(number, card)| (number.clone(), card.content.load, moment_of(card)))
        .collect();
    if old.is_empty() {
        return;
    }
    ui.label(look::heading(t!("tank-loads-issued-before")));
    let mut again = None;
    ScrollArea::vertical().id_salt("old cards").max_height(180.0).show(ui, |ui| {
        for (number, load, when) in old {
            ui.horizontal(|ui| {
                ui.label(look::soft(ui, t!("tank-loads-load", number = number, load = load, when = when)));
                if boxes::act(ui, t!("tank-loads-reprint"))
                    .accessible_name(t!("tank-loads-reprint-card", number = number))
                    .clicked()
                {
                    again = Some(number.clone());
                }
            });
        }
    });
    if let Some(number) = again {
        desk.tank_loads.printing = Some(Printing::Reprint(vec![number]));
        open(desk);
    }
}

fn suggested(desk: &Desk, id: &str) -> PathBuf {
    desk.beside_pass(id, "-load-cards.pdf")
}

/// New cards of a pass with their numbers, after so many other new ones. They count as issued only once they are written.
fn numbered(desk: &mut Desk, id: &Id, after: usize) -> Result<Vec<(Id, Card)>, String> {
    if let Some(unread) = desk.unread.first() {
        return Err(t!("tank-loads-holds-a-text-that-is-not", name = unread.name));
    }
    let plan = desk.document.plan(id).ok_or(t!("tank-loads-the-pass-is-gone"))?;
    if plan.level() == Some(Level::Stop) {
        return Err(t!("tank-loads-a-stop-stands-settle-it-first").to_owned());
    }
    let now = desk.now();
    let farm = desk.document.farm();
    let year = farm.passes.get(id).map_or(now.year(), |pass| pass.date.year());
    let prefix = format!("{year}-");
    let last =
        farm.cards.keys().filter_map(|number| number.strip_prefix(&prefix)?.parse::<u32>().ok()).max().unwrap_or(0);
    Ok(cards(farm, &plan)
        .into_iter()
        .zip(last + 1 + u32::try_from(after).unwrap_or(u32::MAX)..)
        .map(|(content, number)| (format!("{prefix}{number:04}"), Card { pass: id.clone(), issued: now, content }))
        .collect())
}

/// The name under which new cards are laid out. One day's or pass's cards wait for those of another, since numbers are given once.
const ISSUING: &str = "issuing";

/// What is printed, as it was when it was asked for.
struct ToPrint {
    sheet: Option<SheetContent>,
    cards: Vec<(Id, Card)>,
    /// What a reprint says of itself.
    reprint: Option<Say>,
    /// Whether the cards are new, and so are issued once they are written.
    is_new: bool,
}

/// Where it goes.
enum To {
    File(PathBuf),
    /// A passing file, which is handed to the system's viewer.
    Viewer,
}

impl ToPrint {
    fn gather(desk: &mut Desk, what: Printing) -> Result<Self, String> {
        if matches!(what, Printing::Issue(_) | Printing::Day(_)) && desk.is_at_work(ISSUING) {
            return Err(t!("tank-loads-other-new-cards-are-being-laid").to_owned());
        }
        match what {
            Printing::Issue(id) => {
                Ok(Self { sheet: None, cards: numbered(desk, &id, 0)?, reprint: None, is_new: true })
            }
            Printing::Sheet(date) => {
                let sheet = Some(super::evening::content(desk, date)?);
                Ok(Self { sheet, cards: Vec::new(), reprint: None, is_new: false })
            }
            Printing::Day(date) => {
                let mut cards: Vec<(Id, Card)> = Vec::new();
                for id in super::evening::with_cards(desk, date)? {
                    cards.extend(numbered(desk, &id, cards.len())?);
                }
                Ok(Self { sheet: Some(super::evening::content(desk, date)?), cards, reprint: None, is_new: true })
            }
            Printing::Reprint(numbers) => Ok(Self::again(desk, &numbers)),
        }
    }

    /// Cards that were issued, once more.
    fn again(desk: &mut Desk, numbers: &[Id]) -> Self {
        let now = desk.now();
        let pass =
            numbers.first().and_then(|number| desk.document.farm().cards.get(number)).map(|card| card.pass.clone());
        let old = pass.is_some_and(|pass| {
            is_superseded(desk, &pass)
                || !issued(desk.document.farm(), &pass).iter().any(|(number, _)| numbers.contains(number))
        });
        let mark = say(if old { "card-reprinted-old" } else { "card-reprinted" }).with("when", moment_said(now));
        let all = &desk.document.farm().cards;
        let cards = numbers.iter().filter_map(|number| all.get_key_value(number));
        let cards = cards.map(|(number, card)| (number.clone(), card.clone())).collect();
        Self { sheet: None, cards, reprint: Some(mark), is_new: false }
    }

    fn pdf(&self, tell: &Tell<'_>) -> Result<Vec<u8>, PaperError> {
        let sheets: Vec<Sheet<'_>> = self
            .cards
            .iter()
            .map(|(number, card)| {
                let languages = &card.content.languages;
                Sheet {
                    number,
                    issued: Some(moment_said(card.issued).in_languages(languages)),
                    reprint: self.reprint.as_ref().map(|mark| mark.in_languages(languages)),
                    content: &card.content,
                }
            })
            .collect();
        match &self.sheet {
            Some(sheet) => tankard_paper::evening::pdf_told(sheet, &sheets, tell),
            None => tankard_paper::pdf_told(&sheets, tell),
        }
    }

    /// "3 cards", "The evening sheet with 3 cards".
    fn words(&self) -> String {
        match (&self.sheet, self.cards.len()) {
            (Some(_), 0) => t!("tank-loads-the-evening-sheet").to_owned(),
            (Some(_), cards) => t!("tank-loads-the-evening-sheet-with", cards = cards),
            (None, cards) => t!("tank-loads-count-cards", cards = cards),
        }
    }

    fn task(&self, failed: &str) -> Task {
        let words = if self.sheet.is_some() {
            t!("tank-loads-laying-out-the-evening-sheet")
        } else {
            t!("tank-loads-laying-out-cards")
        };
        let task = if self.is_new { Task::issues(words, failed).called(ISSUING) } else { Task::writes(words, failed) };
        task.counting(t!("tank-loads-card"), t!("tank-loads-cards"))
    }
}

/// Writes what is to be printed; new cards are issued only once they are on disk.
fn print(desk: &mut Desk, to: To) {
    let what = desk.tank_loads.printing.take();
    let failed = match what {
        Some(Printing::Sheet(_) | Printing::Day(_)) => t!("tank-loads-the-evening-sheet-was-not-written"),
        _ => t!("tank-loads-the-cards-were-not-written"),
    };
    let gathered = what
        .ok_or_else(|| t!("tank-loads-it-is-no-longer-known-which").to_owned())
        .and_then(|what| ToPrint::gather(desk, what));
    let print = match gathered {
        Ok(print) => print,
        Err(problem) => {
            desk.tell_problem(format!("{failed}: {problem}"));
            return;
        }
    };
    let asked = desk.moment();
    desk.start(
        print.task(failed),
        move |going| {
            let pdf = print.pdf(&|done, of| going.tell(done, of)).map_err(Failed::of)?;
            let place = match &to {
                To::File(path) => {
                    store::put_report_told(path, &pdf, Report::Pdf, &|_, _| going.goes_on()).map_err(Failed::of)?;
                    path.clone()
                }
                To::Viewer => passing_file(&pdf).map_err(Failed::Because)?,
            };
            Ok((print, to, place))
        },
        move |desk, (print, to, place)| {
            let since = desk.since(asked);
            let what = print.words();
            if print.is_new && !issue(desk, print.cards) {
                desk.tell_problem(t!("tank-loads-written-to-but", what = what, place = place.display()));
                return;
            }
            match to {
                To::File(_) => {
                    desk.tell(t!("tank-loads-written-to", what = what, place = place.display(), since = since));
                }
                To::Viewer if open::that_detached(&place).is_ok() => {
                    desk.tell(t!(
                        "tank-loads-handed-to-the-systems-viewer",
                        what = what,
                        place = place.display(),
                        since = since
                    ));
                }
                To::Viewer => {
                    desk.tell_problem(t!(
                        "tank-loads-written-but-no-program-to-show",
                        what = what,
                        place = place.display()
                    ));
                }
            }
        },
    );
}

/// Issues cards that are written, unless one of their numbers is given already, as where a backup was restored meanwhile.
fn issue(desk: &mut Desk, new: Vec<(Id, Card)>) -> bool {
    let known = &desk.document.farm().cards;
    if new.iter().any(|(number, _)| known.contains_key(number)) {
        return false;
    }
    desk.document.issue(new);
    // The paper is out, so the numbers must not be lost even where the machine stops now.
    desk.keep(std::time::Duration::ZERO);
    true
}

/// Saves the cards as PDF where the user said.
pub fn save(desk: &mut Desk, path: &Path) {
    print(desk, To::File(path.to_owned()));
}

/// Writes the cards to a passing file and hands it to the system's viewer, from where they are printed.
pub(super) fn open(desk: &mut Desk) {
    print(desk, To::Viewer);
}

/// Writes a PDF to a new file in the folder for passing files. Nobody can know its name before, so nobody on the same
/// machine can put something else in its place.
fn passing_file(bytes: &[u8]) -> Result<PathBuf, String> {
    let made = || {
        let mut file = tempfile::Builder::new().prefix("tankard-print-").suffix(".pdf").tempfile()?;
        file.write_all(bytes)?;
        // The viewer reads it after the desk may be closed, so it stays.
        file.keep().map(|(_, path)| path).map_err(|kept| kept.error)
    };
    made().map_err(|error: std::io::Error| t!("tank-loads-the-folder-for-passing-files", error = error))
}

#[cfg(test)]
// A test stops where its ground is missing.
#[allow(clippy::unwrap_used)]
mod tests {
    use std::sync::Arc;

    use super::{Contents, passing_file};
    use crate::demo;
    use tankard_core::plan::plan;

    #[test]
    fn card_contents_are_made_once_a_revision_and_pass() {
        let farm = demo::farm().unwrap();
        let [first, second] =
            ["2031-06-12-corn-second-post", "2031-06-14-soybean-post"].map(|id| (id, plan(&farm, id).unwrap()));
        let mut contents = Contents::default();
        let made = contents.fresh(7, first.0, &farm, &first.1);
        assert!(Arc::ptr_eq(&made, &contents.fresh(7, first.0, &farm, &first.1)));
        let other = contents.fresh(7, second.0, &farm, &second.1);
        assert_ne!(made, other);
        assert!(!Arc::ptr_eq(&other, &contents.fresh(8, second.0, &farm, &second.1)));
    }

    #[test]
    fn passing_files_have_names_of_their_own() {
        let [one, other] = [b"%PDF-1", b"%PDF-2"].map(|bytes| passing_file(bytes).unwrap());
        assert_ne!(one, other);
        assert_eq!(std::fs::read(&one).unwrap(), b"%PDF-1");
        for path in [one, other] {
            std::fs::remove_file(path).unwrap();
        }
    }
}
