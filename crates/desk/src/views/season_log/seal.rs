//! Signing and amending on the page of a record, and what there is to say where a seal does not hold.
//!
//! What is typed into a signed record stays here until the amendment is kept; it is the one thing that a page holds beside ids.

use std::collections::HashMap;
use std::rc::Rc;

use egui::{Align, Layout, Margin, Ui};
use jiff::Unit;
use jiff::civil::Date;
use tankard_core::farm::{Farm, Id, Record};
use tankard_core::finding::Level;
use tankard_core::progress::{Cancelled, Tell};
use tankard_core::season::amend::{amend, differences, history, take_as_it_is};
use tankard_core::season::profile::{self, Open};
use tankard_core::season::seal::{self, Link, Verdict, is_signed, respecting, sign, verify};
use tankard_core::t;
use tankard_core::words::{capital, uncapital};

use crate::app::Desk;
use crate::look;
use crate::parts::dates::short_moment as moment;
use crate::parts::{boxes, findings, mark};

/// Width of the box for who signs or amends.
const WHO: f32 = 150.0;
/// Width of the label before a box here.
const LABEL: f32 = 40.0;
/// How many changes are listed while they are typed.
const LISTED: usize = 4;
/// How many digits of a seal are shown.
const DIGITS: usize = 12;

/// What each amendment changed, in words.
type Told = Rc<Vec<Vec<String>>>;

/// What is begun on records, and what was found of their seals.
#[derive(Debug, Default)]
pub(super) struct State {
    forms: HashMap<Id, Form>,
    asked: Option<Asked>,
    /// Verdicts of the records that were looked at, for a state of the farm.
    verdicts: (u64, HashMap<Id, Verdict>),
    /// What the amendments of the open record changed, in words, for a state of the farm.
    told: Option<((u64, Id), Told)>,
}

/// What is being typed.
#[derive(Debug)]
enum Form {
    Sign {
        by: String,
        /// Whether it was shown before.
        is_shown: bool,
    },
    Amend {
        /// The record as it stood when the amendment was begun. Where it stands otherwise, such as after undo, the amendment rests.
        from: Box<Record>,
        to: Box<Record>,
        by: String,
        why: String,
    },
    Take {
        by: String,
        why: String,
    },
}

/// What was clicked.
#[derive(Clone, Copy, Debug)]
enum Asked {
    Sign,
    Amend,
    Take,
    Nothing,
}

impl State {
    /// Whether the seals of a record hold.
    pub(super) fn verdict(&mut self, revision: u64, id: &str, record: &Record) -> Verdict {
        if !is_signed(record) {
            return Verdict::Unsigned;
        }
        if self.verdicts.0 != revision {
            self.verdicts = (revision, HashMap::new());
        }
        self.verdicts.1.entry(id.to_owned()).or_insert_with(|| verify(record)).clone()
    }

    /// What is still open of a record for the list, a broken seal first.
    pub(super) fn with_seal(&mut self, revision: u64, id: &str, record: &Record, open: Rc<Open>) -> Rc<Open> {
        if matches!(self.verdict(revision, id, record), Verdict::Broken { .. }) {
            let mut open = Open::clone(&open);
            open.names.insert(0, t!("season-log-broken-seal").to_owned());
            open.level = Some(Level::Check);
            return Rc::new(open);
        }
        open
    }

    fn told(&mut self, revision: u64, id: &str, record: &Record) -> Told {
        let wanted = (revision, id.to_owned());
        match &self.told {
            Some((known, told)) if *known == wanted => Rc::clone(told),
            _ => {
                let told = Rc::new(history(record));
                self.told = Some((wanted, Rc::clone(&told)));
                told
            }
        }
    }

    /// The amendment that is being typed for a record, where the record still stands as it did.
    fn amending(&self, id: &str, record: &Record) -> Option<&Record> {
        match self.forms.get(id)? {
            Form::Amend { from, to, .. } if is_same(from, record) => Some(to),
            _ => None,
        }
    }

    /// The record of an amendment that is begun and neither kept nor left.
    pub(super) fn begun(&self, farm: &Farm) -> Option<Id> {
        let is_begun = |(id, form): &(&Id, &Form)| match form {
            Form::Amend { from, to, .. } => {
                !is_same(from, to) && farm.records.get(id).is_some_and(|record| self.amending(id, record).is_some())
            }
            Form::Sign { .. } | Form::Take { .. } => false,
        };
        self.forms.iter().find(is_begun).map(|(id, _)| id.clone())
    }

    /// What the page shows of a record: how it stands, or what it is being amended to.
    pub(super) fn shown(&self, id: &str, record: &Record) -> Record {
        match self.amending(id, record) {
            Some(to) => Record { outcomes: record.outcomes.clone(), ..to.clone() },
            None => record.clone(),
        }
    }

    /// Whether the page of a record may be typed in.
    pub(super) fn is_open(&self, id: &str, record: &Record) -> bool {
        !is_signed(record) || self.amending(id, record).is_some()
    }
}

/// Whether two records are alike but for their outcomes, which are not signed.
fn is_same(one: &Record, other: &Record) -> bool {
    if one.outcomes == other.outcomes {
        one == other
    } else {
        *one == Record { outcomes: one.outcomes.clone(), ..other.clone() }
    }
}

/// Whether there are any seals.
pub(crate) fn has_seals(farm: &Farm) -> bool {
    farm.records.values().any(is_signed)
}

/// What there is to say of the seals of a farm that is opened.
pub(crate) fn on_opening(farm: &Farm, tell: &Tell<'_>) -> Result<Option<String>, Cancelled> {
    let mut broken: Vec<&Record> = Vec::new();
    for (at, record) in farm.records.values().enumerate() {
        tell(at, Some(farm.records.len()))?;
        if matches!(verify(record), Verdict::Broken { .. }) {
            broken.push(record);
        }
    }
    let Some(first) =
        broken.first().map(|record| t!("season-log-name-of-date", name = record.name, date = record.date))
    else {
        return Ok(None);
    };
    Ok(Some(match broken.len() {
        1 => t!("season-log-the-signed-record-was-changed-outside", first = first),
        count => t!("season-log-signed-records-were-changed-outside-of", count = count, first = first),
    }))
}

/// What stands over the page of a signed record: who signed it, what is wrong with its seal, and the amendment being typed.
pub(super) fn banner(state: &mut State, ui: &mut Ui, revision: u64, id: &str, record: &Record) {
    if !is_signed(record) {
        return;
    }
    let verdict = state.verdict(revision, id, record);
    let amending = state.amending(id, record).is_some();
    egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 10, bottom: 6 }).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.spacing_mut().item_spacing.y = 4.0;
        let said = seal::finding(id, record, &verdict);
        if let Some(said) = &said {
            // It speaks of this record, which is open.
            findings::show(ui, std::slice::from_ref(said));
        }
        match state.forms.get_mut(id) {
            Some(Form::Amend { from, to, by, why }) if amending => {
                ui.label(look::strong(t!("season-log-amendment")));
                who_and_why(ui, by, why, t!("season-log-why-it-is-changed"));
                told(ui, &differences(from, to));
                if let Some(asked) = answers(
                    ui,
                    (t!("season-log-keep-the-amendment"), Asked::Amend),
                    t!("season-log-leave-it-as-it-was"),
                ) {
                    state.asked = Some(asked);
                }
            }
            Some(Form::Take { by, why }) if matches!(verdict, Verdict::Broken { .. }) => {
                ui.label(look::strong(t!("season-log-take-the-record-as-it-is")));
                let words = t!("season-log-an-amendment-will-say-that-the");
                ui.label(look::soft(ui, words));
                who_and_why(ui, by, why, t!("season-log-what-is-known-of-it"));
                if let Some(asked) =
                    answers(ui, (t!("season-log-take-it-as-it-is"), Asked::Take), t!("season-log-leave-it"))
                {
                    state.asked = Some(asked);
                }
            }
            _ => begin(state, ui, id, record, &verdict),
        }
    });
    let line = ui.available_rect_before_wrap();
    ui.painter().hline(line.x_range(), line.top(), egui::Stroke::new(1.0, look::colours(ui).hairline));
}

/// Who signed, and the act that begins an amendment.
fn begin(state: &mut State, ui: &mut Ui, id: &str, record: &Record, verdict: &Verdict) {
    ui.horizontal(|ui| {
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let by = record.operator.trim().to_owned();
            if matches!(verdict, Verdict::Broken { .. }) {
                if boxes::act(ui, t!("season-log-take-it-as-it-is-a9a")).clicked() {
                    state.forms.insert(id.to_owned(), Form::Take { by, why: String::new() });
                }
            } else if boxes::act(ui, t!("season-log-amend"))
                .accessible_name(t!("season-log-amend-the-record"))
                .clicked()
            {
                let (from, to) = (Box::new(record.clone()), Box::new(record.clone()));
                state.forms.insert(id.to_owned(), Form::Amend { from, to, by, why: String::new() });
            }
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                ui.add(egui::Label::new(signed_words(record)).truncate());
            });
        });
    });
}

/// "Signed by A. Demo, 12 Jun 2031, 20:14, amended twice".
fn signed_words(record: &Record) -> String {
    let amended = record.amendments.len();
    match &record.signed {
        Some(signature) => t!("season-log-signed-by", by = signature.by, at = moment(signature.at), amended = amended),
        None => t!("season-log-signed-but-by-whom-is-gone", amended = amended),
    }
}

fn labelled(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui)) {
    ui.horizontal(|ui| {
        boxes::named(ui, LABEL, &uncapital(label));
        add(ui);
    });
}

fn who_and_why(ui: &mut Ui, by: &mut String, why: &mut String, hint: &str) {
    labelled(ui, t!("season-log-who"), |ui| drop(boxes::text(ui, t!("season-log-who-amends"), by, WHO)));
    labelled(ui, t!("season-log-why"), |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, t!("season-log-why-it-is-amended"), why, width, hint);
    });
}

fn answers(ui: &mut Ui, yes: (&str, Asked), no: &str) -> Option<Asked> {
    let mut asked = None;
    ui.horizontal(|ui| {
        if ui.button(yes.0).clicked() {
            asked = Some(yes.1);
        }
        if ui.button(no).clicked() {
            asked = Some(Asked::Nothing);
        }
    });
    asked
}

/// Changes in words, the first few of many.
fn told(ui: &mut Ui, changes: &[String]) {
    if changes.is_empty() {
        ui.label(look::soft(ui, t!("season-log-type-over-what-is-wrong-on")));
    }
    for change in changes.iter().take(LISTED) {
        ui.add(egui::Label::new(change).truncate());
    }
    if let Some(more) = changes.len().checked_sub(LISTED).filter(|more| *more > 0) {
        ui.label(look::soft(ui, t!("season-log-and-more-more", more = more)));
    }
}

/// The signature, which stands at the foot of the page, and the amendments below it.
pub(super) fn section(
    state: &mut State,
    ui: &mut Ui,
    farm: &Farm,
    (revision, today): (u64, Date),
    id: &str,
    record: &Record,
) {
    if is_signed(record) {
        past(state, ui, revision, id, record);
        return;
    }
    if record.date > today {
        boxes::say(ui, &t!("season-log-its-day-is-still-to-come", date = record.date));
    } else if let Some(Form::Sign { by, is_shown }) = state.forms.get_mut(id) {
        ui.label(t!("season-log-from-then-on-the-record-is"));
        let open = profile::open(farm, record, today).names;
        if !open.is_empty() {
            ui.label(look::soft(ui, t!("season-log-still-open-what-comes-later-is", open = open.join(", "))));
        }
        labelled(ui, t!("season-log-who"), |ui| {
            let response = boxes::text(ui, t!("season-log-who-signs"), by, WHO);
            if !*is_shown {
                response.request_focus();
            }
        });
        let answer = answers(ui, (t!("season-log-sign-it"), Asked::Sign), t!("season-log-not-yet-27c"));
        if !std::mem::replace(is_shown, true) {
            ui.scroll_to_cursor(None);
        }
        if let Some(asked) = answer {
            state.asked = Some(asked);
        }
    } else {
        ui.horizontal(|ui| {
            if boxes::act(ui, t!("season-log-sign")).accessible_name(t!("season-log-sign-the-record")).clicked() {
                state
                    .forms
                    .insert(id.to_owned(), Form::Sign { by: record.operator.trim().to_owned(), is_shown: false });
            }
            ui.label(look::soft(ui, t!("season-log-not-signed-it-may-be-edited")));
        });
    }
}

/// What was signed and amended, in the order in which it was.
fn past(state: &mut State, ui: &mut Ui, revision: u64, id: &str, record: &Record) {
    let verdict = state.verdict(revision, id, record);
    let all = state.told(revision, id, record);
    let broken = |link: Link| matches!(&verdict, Verdict::Broken { link: first, .. } if *first == link);
    if let Some(signature) = &record.signed {
        let words = t!("season-log-signed-by-by-at", by = signature.by, at = moment(signature.at));
        entry(ui, &words, &signature.hash, broken(Link::Signature));
    } else {
        entry(ui, t!("season-log-the-signature-is-gone"), "", true);
    }
    for (at, amendment) in record.amendments.iter().enumerate() {
        ui.add_space(4.0);
        let words = format!("{}. {}, {}", at + 1, moment(amendment.at), amendment.by);
        entry(ui, &words, &amendment.hash, broken(Link::Amendment(at)));
        ui.indent(("amendment", at), |ui| {
            ui.label(capital(&amendment.why));
            for change in all.get(at).into_iter().flatten() {
                ui.label(look::soft(ui, change).color(look::colours(ui).ink));
            }
        });
    }
}

/// Who and when, with the first digits of the seal, and whether it does not hold.
fn entry(ui: &mut Ui, words: &str, hash: &str, is_broken: bool) {
    ui.horizontal(|ui| {
        if is_broken {
            mark::show(ui, Level::Check);
        }
        ui.label(look::strong(words));
        if is_broken {
            ui.label(look::soft(ui, t!("season-log-this-seal-does-not-hold")).color(look::colours(ui).check));
        } else if !hash.is_empty() {
            let first: String = hash.chars().take(DIGITS).collect();
            ui.label(look::soft(ui, t!("season-log-seal", first = first))).on_hover_text(hash);
        }
    });
}

/// What is asked before a record goes.
pub(super) fn remove_words(record: &Record) -> &'static str {
    if is_signed(record) {
        t!("season-log-remove-this-signed-record-the-law")
    } else {
        t!("season-log-remove-this-record")
    }
}

/// Puts what was typed on a page where it belongs: into the farm, or into the amendment of a signed record, whose outcomes go
/// into the farm all the same. Then does what was clicked.
pub(super) fn keep(desk: &mut Desk, id: &str, typed: Record) {
    let Some(stands) = desk.document.farm().records.get(id) else { return };
    let state = &mut desk.season_log.seal;
    let is_amending = state.amending(id, stands).is_some();
    if let (true, Some(Form::Amend { to, .. })) = (is_amending, state.forms.get_mut(id)) {
        (**to).clone_from(&typed);
    }
    let next = respecting(stands, typed);
    let differs = next != *stands;
    let asked = state.asked.take();
    if differs {
        put(desk, id, next);
    }
    if let Some(asked) = asked {
        answer(desk, id, asked);
    }
}

fn put(desk: &mut Desk, id: &str, record: Record) {
    desk.document.edit(|farm| {
        if let Some(place) = farm.records.get_mut(id) {
            *place = record;
        }
    });
}

fn answer(desk: &mut Desk, id: &str, asked: Asked) {
    // No one signs to the millionth of a second.
    let now = desk.now();
    let now = now.round(Unit::Second).unwrap_or(now);
    let Some(record) = desk.document.farm().records.get(id) else { return };
    let outcome = match (asked, desk.season_log.seal.forms.get(id)) {
        (Asked::Nothing, _) => {
            desk.season_log.seal.forms.remove(id);
            return;
        }
        (Asked::Sign, Some(Form::Sign { by, .. })) => sign(record, by, now),
        (Asked::Amend, Some(Form::Amend { to, by, why, .. })) => amend(record, to, by, now, why),
        (Asked::Take, Some(Form::Take { by, why })) => take_as_it_is(record, by, now, why),
        _ => return,
    };
    let name = record.name.clone();
    match outcome {
        Ok(next) => {
            put(desk, id, next);
            desk.season_log.seal.forms.remove(id);
            desk.tell(match asked {
                Asked::Sign => t!("season-log-is-signed-from-now-on-it", name = name),
                Asked::Amend => {
                    t!("season-log-the-amendment-of-is-kept-what", name = name)
                }
                Asked::Take | Asked::Nothing => {
                    t!("season-log-is-taken-as-it-is-what", name = name)
                }
            });
        }
        Err(refusal) => desk.tell_problem(capital(&refusal.to_string())),
    }
}
