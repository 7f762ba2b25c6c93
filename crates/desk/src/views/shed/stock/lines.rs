//! The account of a product, line by line, the latest first.

use std::fmt::Write;

use egui::{Label, Ui};
use tankard_core::farm::{Farm, Id};
use tankard_core::finding::Subject;
use tankard_core::quantity::{Amount, Quantity, Units};
use tankard_core::stock::{Entry, Kind, strike};
use tankard_core::t;
use tankard_file::cell::guarded;

use super::super::{Bench, cross, sheets, tight, word};
use super::rounded;
use super::table::right;
use crate::look;
use crate::parts::{boxes, dates};

/// Height of a line with its hairline.
const LINE: f32 = look::ROW + 1.0;

/// An amount with its sign.
fn signed(amount: Amount, units: Units) -> String {
    let text = rounded(amount, units);
    if text.starts_with('-') || amount.is_zero() { text } else { format!("+{text}") }
}

/// What happened, in words.
fn words(entry: &Entry, farm: &Farm) -> String {
    let mut text = match &entry.kind {
        Kind::Counted { after, reckoned, holds } => {
            let mut text = if *after {
                t!("shed-counted-after-that-days-spraying").to_owned()
            } else {
                t!("shed-counted-before-that-days-spraying").to_owned()
            };
            if !holds && entry.change.is_none() && entry.place.is_some() && entry.balance.is_none() {
                text.push_str(t!("shed-which-does-not-hold-any-more"));
            }
            if let Some(reckoned) = reckoned {
                let _ = write!(text, "{}", t!("shed-the-account-had-come-to", reckoned = reckoned));
            }
            text
        }
        Kind::Bought { kind, size, count, price, from } => {
            let (kind, sign) = (kind.name(*count), &farm.currency);
            match (price, from.trim()) {
                (None, "") => t!("shed-bought-of", count = count, kind = kind, size = size),
                (None, from) => t!("shed-bought-of-from", count = count, kind = kind, size = size, from = from),
                (Some(price), "") => {
                    t!("shed-bought-of-at", count = count, kind = kind, size = size, sign = sign, price = price)
                }
                (Some(price), from) => t!(
                    "shed-bought-of-at-from",
                    count = count,
                    kind = kind,
                    size = size,
                    sign = sign,
                    price = price,
                    from = from
                ),
            }
        }
        Kind::Record { name, .. } => t!("shed-sprayed", name = name),
        Kind::Out => t!("shed-went-out").to_owned(),
        Kind::In => t!("shed-came-in").to_owned(),
        Kind::Returned { kind, size, count, to, rinsed } => {
            let kind = kind.name(*count);
            let mut text = match to.trim() {
                "" => t!("shed-gave-back-empty-of", count = count, kind = kind, size = size),
                to => t!("shed-gave-back-empty-of-to", count = count, kind = kind, size = size, to = to),
            };
            if *rinsed {
                text.push_str(t!("shed-rinsed"));
            }
            text
        }
    };
    if !entry.lot.trim().is_empty() {
        let _ = write!(text, "{}", t!("shed-lot", lot = entry.lot.trim()));
    }
    if !entry.note.trim().is_empty() {
        let _ = write!(text, ": {}", entry.note.trim());
    }
    if !entry.by.trim().is_empty() {
        let _ = write!(text, " ({})", entry.by.trim());
    }
    text
}

/// An amount with the sign of a minus before it, as it is printed: a spreadsheet reckons with a hyphen.
fn below_nothing(amount: &str) -> String {
    amount.strip_prefix('-').map_or_else(|| amount.to_owned(), |amount| format!("−{amount}"))
}

/// The lines as a table to be pasted elsewhere: columns apart by tabs.
fn as_table(entries: &[Entry], farm: &Farm) -> String {
    let mut out = t!("shed-day-what-change-balance").to_owned();
    let shown =
        |amount: Option<Amount>| amount.map_or_else(String::new, |amount| below_nothing(&amount.show(farm.units)));
    for entry in entries {
        let what = guarded(&words(entry, farm).replace(['\t', '\r', '\n'], " "));
        let _ = writeln!(out, "{}\t{what}\t{}\t{}", entry.date, shown(entry.change), shown(entry.balance));
    }
    out
}

/// The lines; only those in sight are drawn.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, entries: &[Entry]) {
    let units = bench.farm().units;
    ui.horizontal(|ui| {
        ui.label(look::heading(t!("shed-account")).color(look::colours(ui).soft));
        if !entries.is_empty() {
            ui.spacing_mut().item_spacing.x = 14.0;
            word(ui, t!("shed-the-latest-first"));
            if boxes::act(ui, t!("shed-copy-as-a-table")).clicked() {
                ui.ctx().copy_text(as_table(entries, bench.farm()));
            }
        }
    });
    boxes::hairline(ui);
    if entries.is_empty() {
        boxes::say(ui, t!("shed-nothing-is-written-down-yet"));
        return;
    }
    tight(ui);
    // Lines are of one height, so that those out of sight need not be drawn.
    ui.spacing_mut().item_spacing = egui::Vec2::new(6.0, 0.0);
    let (day, amount, last) = (76.0, 84.0, 14.0);
    let what = (ui.available_width() - day - amount * 2.0 - last - 24.0).max(60.0);
    ui.horizontal(|ui| {
        boxes::slot(ui, day, |ui| word(ui, t!("shed-day")));
        boxes::slot(ui, what, |ui| word(ui, t!("shed-what")));
        right(ui, amount, |ui| word(ui, t!("shed-change")));
        right(ui, amount, |ui| word(ui, t!("shed-then-there")));
    });
    boxes::hairline(ui);
    let top = ui.cursor().top();
    let clip = ui.clip_rect();
    let count = entries.len();
    // Whole numbers from nothing to the number of lines.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let line_at = |y: f32| (((y - top) / LINE).floor().max(0.0) as usize).min(count);
    let (first, end) = (line_at(clip.top()), (line_at(clip.bottom()) + 1).min(count));
    #[allow(clippy::cast_precision_loss)] // A farm has fewer lines than would matter.
    let height = |lines: usize| lines as f32 * LINE;
    ui.add_space(height(first));
    let (mut gone, mut led): (Option<usize>, Option<Id>) = (None, None);
    for (at, entry) in entries.iter().rev().enumerate().take(end).skip(first) {
        ui.push_id(("line", at), |ui| {
            ui.horizontal(|ui| {
                boxes::slot(ui, day, |ui| ui.label(dates::short(entry.date)));
                let text = words(entry, bench.farm());
                boxes::slot(ui, what, |ui| {
                    if let Kind::Record { id, .. } = &entry.kind {
                        ui.spacing_mut().button_padding.x = 0.0;
                        let button = boxes::lead(ui, look::act(ui, &text));
                        if button.on_hover_text(t!("shed-open-the-record")).clicked() {
                            led = Some(id.clone());
                        }
                    } else {
                        ui.add(Label::new(&text).truncate()).on_hover_text(&text);
                    }
                });
                right(ui, amount, |ui| match entry.change {
                    Some(change) => {
                        ui.label(signed(change, units)).on_hover_text(change.show(units));
                    }
                    None => word(ui, "–"),
                });
                right(ui, amount, |ui| match entry.balance {
                    Some(balance) if balance.show(units).starts_with('-') => {
                        ui.label(look::strong(rounded(balance, units)).color(look::colours(ui).check));
                    }
                    Some(balance) => {
                        ui.label(rounded(balance, units)).on_hover_text(balance.show(units));
                    }
                    None => word(ui, t!("shed-not-known")),
                });
                let holds = matches!(entry.kind, Kind::Counted { holds: true, .. });
                if let Some(place) = entry.place.filter(|_| !holds)
                    && cross(ui, &format!("{text}, {}", sheets::day(entry.date)))
                {
                    gone = Some(place);
                }
            });
            boxes::hairline(ui);
        });
    }
    ui.add_space(height(count.saturating_sub(end)));
    if let Some(place) = gone {
        bench.desk.document.edit(|farm| strike(farm, place));
    }
    if let Some(id) = led {
        bench.desk.lead_to(&Subject::Record(id));
    }
}

#[cfg(test)]
mod tests {
    use super::below_nothing;

    /// OWASP, CSV Injection: a cell that begins with a hyphen is reckoned.
    #[test]
    fn no_amount_in_a_pasted_table_begins_like_a_formula() {
        assert_eq!(below_nothing("-3 gal 1 qt"), "−3 gal 1 qt");
        assert_eq!(below_nothing("41 gal"), "41 gal");
    }
}
