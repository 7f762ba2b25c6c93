//! The page of one record: everything in it can be typed over, beside what was planned.

use egui::{Align, Layout, Margin, ScrollArea, Ui, Vec2};
use tankard_core::farm::record::RecordActive;
use tankard_core::farm::{Expected, Farm, Id, Product, Record, RecordLine};
use tankard_core::finding::{Finding, Level, Subject};
use tankard_core::plan::Plan;
use tankard_core::quantity::{Amount, AsTyped, Quantity, Units};
use tankard_core::rig::setting::Classes;
use tankard_core::season::outside;
use tankard_core::season::record::{from_plan, none_of, of_product, record_line, still_open, whole_field, with_amount};
use tankard_core::weather::Limit;
use tankard_core::weather::limits::Kind;
use tankard_core::words;

use super::seal;
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, findings, mark};

/// Width of a label before a box.
const LABEL: f32 = 86.0;
/// Width of a box beside a label.
const BOX: f32 = 150.0;
/// Width of a box for a short quantity.
const SHORT: f32 = 100.0;
/// Width of the boxes of a field.
const AREA: f32 = 84.0;
const CROP: f32 = 96.0;
const STAGE: f32 = 72.0;
/// Height of a line of soft words under a row.
const SOFT: f32 = 16.0;
/// Width of the act that takes a row away.
const TAKE: f32 = 56.0;

/// What the page remembers between frames.
#[derive(Debug, Default)]
pub(super) struct State {
    /// The record that is asked about before it goes.
    removing: Option<Id>,
    /// The amount that is being typed.
    typing: Option<Typing>,
    /// What labels and laws ask, and what lies outside a limit, found once for a state of the farm.
    outside: Option<((u64, Id), Judged)>,
}

impl State {
    fn outside(&mut self, revision: u64, farm: &Farm, id: &str) -> Judged {
        let wanted = (revision, id.to_owned());
        if self.outside.as_ref().is_none_or(|(known, _)| *known != wanted) {
            let found = farm.records.get_key_value(id).map(|(id, record)| Judged {
                asked: outside::asked(farm, record),
                outside: outside::judge(farm, id, record),
            });
            self.outside = Some((wanted, found.unwrap_or_default()));
        }
        self.outside.as_ref().map(|(_, found)| found.clone()).unwrap_or_default()
    }
}

/// A line whose amount is being typed. Each letter makes another amount ("4", "41"), so its actives are scaled from the
/// line as it was, and not from the half-typed one before.
#[derive(Debug)]
struct Typing {
    before: RecordLine,
    now: RecordLine,
}

/// A record against labels and laws.
#[derive(Clone, Debug, Default)]
struct Judged {
    asked: Vec<Limit>,
    outside: Vec<Finding>,
}

/// What was clicked on the page.
enum Act {
    Close,
    Remove,
    ShowPlan(Id),
}

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str) {
    let pass = desk.document.farm().records.get(id).and_then(|record| record.pass.clone());
    let plan = pass.and_then(|pass| desk.document.plan(&pass));
    let revision = desk.document.revision();
    let farm = desk.document.farm();
    let Some(original) = farm.records.get(id) else { return };
    let planned = plan.as_ref().and_then(|plan| from_plan(farm, plan));
    let mut record = desk.season_log.seal.shown(id, original);
    let is_open = desk.season_log.seal.is_open(id, original);
    let mut act = None;
    seal::banner(&mut desk.season_log.seal, ui, revision, id, original);
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 10, bottom: 16 }).show(ui, |ui| {
            ui.set_width(ui.available_width());
            ui.spacing_mut().item_spacing.y = 2.0;
            head(ui, &mut desk.season_log.page, farm, revision, id, &mut record, is_open, &mut act);
            let asked = desk.season_log.page.outside(revision, farm, id).asked;
            look::read_only(ui, !is_open, |ui| {
                day(ui, farm, &mut record, planned.as_ref(), plan.as_deref(), &asked);
                fields(ui, farm, &mut record, planned.as_ref());
                lines(ui, &mut desk.season_log.page, farm, &mut record, planned.as_ref());
                section(ui, "Note");
                let width = ui.available_width();
                boxes::lines(ui, "Note", &mut record.note, width, 2);
            });
            seal::section(&mut desk.season_log.seal, ui, farm, revision, id, original);
        });
    });
    seal::keep(desk, id, record);
    match act {
        Some(Act::Close) => desk.season_log.chosen = None,
        Some(Act::Remove) => {
            let name = desk.document.farm().records.get(id).map(|record| record.name.clone()).unwrap_or_default();
            desk.document.edit(|farm| {
                farm.records.shift_remove(id);
            });
            desk.season_log.chosen = None;
            desk.season_log.page = State::default();
            desk.tell(format!("The record of {name} is removed; undo brings it back"));
        }
        Some(Act::ShowPlan(pass)) => desk.lead_to(&Subject::Pass(pass)),
        None => {}
    }
}

#[allow(clippy::too_many_arguments)] // The page's parts.
fn head(
    ui: &mut Ui,
    state: &mut State,
    farm: &Farm,
    revision: u64,
    id: &str,
    record: &mut Record,
    is_open: bool,
    act: &mut Option<Act>,
) {
    ui.horizontal(|ui| {
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            if boxes::act(ui, "Close").accessible_name("Close the record").clicked() {
                *act = Some(Act::Close);
            }
            if boxes::act(ui, "Remove…").accessible_name("Remove the record…").clicked() {
                state.removing = Some(id.to_owned());
            }
            if let Some(pass) = record.pass.as_ref().filter(|pass| farm.passes.contains_key(*pass))
                && boxes::act(ui, "Show its plan").clicked()
            {
                *act = Some(Act::ShowPlan(pass.clone()));
            }
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                let width = ui.available_width();
                look::read_only(ui, !is_open, |ui| drop(boxes::text(ui, "Name of the pass", &mut record.name, width)));
            });
        });
    });
    if state.removing.as_deref() == Some(id) {
        ui.add_space(4.0);
        ui.horizontal(|ui| {
            ui.label(look::strong(seal::remove_words(record)));
            if ui.button("Remove it").clicked() {
                state.removing = None;
                *act = Some(Act::Remove);
            }
            if ui.button("Keep it").clicked() || ui.input(|input| input.key_pressed(egui::Key::Escape)) {
                state.removing = None;
            }
        });
    }
    let open = still_open(farm, record);
    if !open.is_empty() {
        ui.add_space(2.0);
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            mark::show(ui, Level::Check);
            ui.label(look::strong(Level::Check.word()).color(look::colours(ui).check));
            ui.label(format!("still open: {}", open.join(", ")));
        });
        ui.label(look::soft(ui, "Common practice. Tankard does not decide what the law requires."));
    }
    let outside = state.outside(revision, farm, id).outside;
    if !outside.is_empty() {
        ui.add_space(4.0);
        ui.label(look::heading("As it was sprayed"));
        // They speak of this record, which is open, so that a click leads nowhere else.
        findings::show(ui, &outside);
    }
    ui.add_space(look::GRID);
}

fn day(ui: &mut Ui, farm: &Farm, record: &mut Record, planned: Option<&Record>, plan: Option<&Plan>, asked: &[Limit]) {
    let units = farm.units;
    let width = |ui: &Ui| BOX.min(ui.available_width());
    pair(
        ui,
        ("Date", |ui| boxes::date(ui, "Date", &mut record.date, width(ui))),
        ("Operator", |ui| plain(ui, "Operator", &mut record.operator)),
    );
    pair(
        ui,
        ("Start", |ui| boxes::time_or_none(ui, "Start", &mut record.start, SHORT)),
        ("Certificate", |ui| plain(ui, "Certificate", &mut record.certificate)),
    );
    pair(
        ui,
        ("End", |ui| boxes::time_or_none(ui, "End", &mut record.end, SHORT)),
        ("Rig", |ui| plain(ui, "Rig", &mut record.rig)),
    );
    weather(ui, farm, record, plan, asked);
    pair(
        ui,
        ("Spray volume", |ui| {
            boxes::quantity_or_none(ui, "Spray volume", &mut record.volume, BOX.min(ui.available_width()));
        }),
        ("Water", |ui| plain(ui, "Water", &mut record.water)),
    );
    let mut words = Vec::new();
    if let Some(volume) = &record.volume {
        let area = record.area();
        if let Some(rate) = volume.over(area) {
            words.push(format!("= {}", rate.show(units)));
        }
    }
    if let Some(planned) = planned.and_then(|planned| planned.volume.as_ref()) {
        let ratio = record.volume.as_ref().and_then(|volume| volume.ratio(planned.value()));
        words.push(beside_plan(&planned.show(units), ratio));
    }
    if !words.is_empty() {
        soft_line(ui, LABEL, "", &words.join(" · "));
    }
}

/// What was measured, and beside it what the forecast had for the time and what labels and laws ask.
fn weather(ui: &mut Ui, farm: &Farm, record: &mut Record, plan: Option<&Plan>, asked: &[Limit]) {
    let units = farm.units;
    if let Some(expected) = &record.expected {
        ui.add_space(4.0);
        ui.horizontal(|ui| {
            ui.label(look::soft(ui, "measured at the boom, and beside it what was expected"));
        });
        let source = format!("Forecast: {}", expected.source);
        ui.add(egui::Label::new(look::soft(ui, source)).truncate());
    }
    if let Some(now) = plan.filter(|_| ui.is_enabled()).and_then(|plan| for_its_hours(farm, record, plan))
        && boxes::act(ui, "Take the forecast for these hours").clicked()
    {
        record.expected = Some(now);
    }
    let expected = record.expected.clone().unwrap_or_default();
    let wind = expected.wind.map(|range| ends(&range, units)).unwrap_or_default();
    let gust = expected.gust.map(|gust| format!("up to {}", gust.show(units))).unwrap_or_default();
    let air = expected.temperature.map(|range| ends(&range, units)).unwrap_or_default();
    let humidity = expected.humidity.map(|range| ends(&range, units)).unwrap_or_default();
    let limits = |wanted: fn(&Kind) -> bool| {
        // The row says of what.
        let short = |text| ["wind at", "air at", "humidity at"].iter().find_map(|own| str::strip_prefix(text, own));
        let texts = asked.iter().filter(|limit| wanted(&limit.kind)).map(|limit| {
            let text = limit.text.as_str();
            short(text).map_or_else(|| text.to_owned(), |rest| format!("at{rest}"))
        });
        let texts: Vec<String> = texts.collect();
        if texts.is_empty() { String::new() } else { format!("limit: {}", texts.join("; ")) }
    };
    let with = |expected: &str, limits: String| {
        let parts: Vec<&str> = [expected, &limits].into_iter().filter(|part| !part.is_empty()).collect();
        parts.join(" · ")
    };
    let wind = with(&wind, limits(|kind| matches!(kind, Kind::MostWind(_) | Kind::LeastWind(_))));
    let gust = with(&gust, limits(|kind| matches!(kind, Kind::MostGust(_))));
    let from = with(&expected.wind_from, limits(|kind| matches!(kind, Kind::NotToward { .. })));
    let air = with(&air, limits(|kind| matches!(kind, Kind::MostAir(_) | Kind::LeastAir(_))));
    let humidity = with(&humidity, limits(|kind| matches!(kind, Kind::MostHumidity(_) | Kind::LeastHumidity(_))));
    beside(ui, "Wind", &wind, |ui| {
        boxes::quantity_or_none(ui, "Wind", &mut record.wind, SHORT);
        boxes::understood(ui, record.wind.as_ref(), units);
    });
    beside(ui, "Gust", &gust, |ui| {
        boxes::quantity_or_none(ui, "Gust", &mut record.gust, SHORT);
        boxes::understood(ui, record.gust.as_ref(), units);
    });
    beside(ui, "Wind from", &from, |ui| {
        boxes::text_or_empty(ui, "Wind from", &mut record.wind_from, SHORT, "such as NW")
            .on_hover_text("From where it blows, such as NW");
    });
    beside(ui, "Temperature", &air, |ui| {
        boxes::quantity_or_none(ui, "Temperature", &mut record.temperature, SHORT);
        boxes::understood(ui, record.temperature.as_ref(), units);
    });
    beside(ui, "Humidity", &humidity, |ui| boxes::quantity_or_none(ui, "Humidity", &mut record.humidity, SHORT));
    let classes = plan.and_then(|plan| plan.setting.as_ref()?.classes).map(Classes::words).unwrap_or_default();
    beside(ui, "Droplets", &classes, |ui| {
        boxes::droplets_or_none(ui, "Droplets", &mut record.droplets, "not typed", 136.0);
    });
}

/// The forecast for the hours in which it really was sprayed, where it is not that which is kept.
fn for_its_hours(farm: &Farm, record: &Record, plan: &Plan) -> Option<Expected> {
    record.start.filter(|_| farm.passes.get(&plan.pass).is_some_and(|pass| pass.date == record.date))?;
    outside::expected(farm, plan, record.start, record.end).filter(|now| record.expected.as_ref() != Some(now))
}

/// "4 to 9 mph", or one figure where both ends are alike.
fn ends<Q: Quantity>(range: &(AsTyped<Q>, AsTyped<Q>), units: Units) -> String {
    let (least, most) = (range.0.show(units), range.1.show(units));
    if least == most { most } else { words::ends(&least, "to", &most) }
}

/// A labelled box, and beside it what was expected.
fn beside(ui: &mut Ui, label: &str, expected: &str, add: impl FnOnce(&mut Ui)) {
    ui.horizontal(|ui| {
        let width = (LABEL + SHORT + 60.0).min(ui.available_width());
        slot(ui, width, |ui| labelled(ui, label, add));
        if !expected.is_empty() {
            ui.add(egui::Label::new(look::soft(ui, expected)).truncate());
        }
    });
}

fn plain(ui: &mut Ui, name: &str, value: &mut String) {
    let width = BOX.min(ui.available_width());
    boxes::text(ui, name, value, width);
}

fn fields(ui: &mut Ui, farm: &Farm, record: &mut Record, planned: Option<&Record>) {
    let units = farm.units;
    section_with(ui, "Fields", |ui| {
        let mut words = Vec::new();
        if record.fields.len() > 1 {
            words.push(format!("{} in all", record.area().show(units)));
        }
        if let Some(planned) = planned {
            words.push(beside_plan(&planned.area().show(units), record.area().ratio(planned.area())));
        }
        ui.label(look::soft(ui, words.join(" · ")));
    });
    let name_width = (ui.available_width() - AREA - CROP - STAGE - TAKE - 4.0 * 8.0).max(80.0);
    if !record.fields.is_empty() {
        captions(ui, &[("field", name_width), ("area", AREA), ("crop", CROP), ("stage", STAGE)]);
    }
    let mut taken = None;
    for (id, field) in &mut record.fields {
        ui.push_id(("field", id), |ui| {
            ui.horizontal(|ui| {
                slot(ui, name_width, |ui| ui.add(egui::Label::new(&field.name).truncate()));
                boxes::quantity(ui, &format!("Area of {}", field.name), &mut field.area, AREA);
                boxes::text(ui, &format!("Crop on {}", field.name), &mut field.crop, CROP);
                boxes::text(ui, &format!("Stage on {}", field.name), &mut field.stage, STAGE);
                if take(ui, &field.name) {
                    taken = Some(id.clone());
                }
            });
            let mut words = Vec::new();
            // "CROP ac" needs no second reading; another unit does.
            let shown = field.area.show(units);
            if shown.split_once(' ').is_some_and(|(_, unit)| !field.area.text().to_lowercase().ends_with(unit)) {
                words.push(format!("= {shown}"));
            }
            if let Some(planned) = planned {
                match planned.fields.get(id) {
                    None => words.push("not in the plan".to_owned()),
                    Some(before) => {
                        let ratio = field.area.ratio(before.area.value());
                        if !ratio.is_some_and(as_planned) {
                            words.push(beside_plan(&before.area.show(units), ratio));
                        }
                    }
                }
            }
            if !words.is_empty() {
                soft_line(ui, name_width, "", &words.join(" · "));
            }
        });
    }
    if let Some(id) = taken {
        record.fields.shift_remove(&id);
    }
    let others: Vec<Id> = farm.fields.keys().filter(|id| !record.fields.contains_key(*id)).cloned().collect();
    let name = |id: &Id| farm.fields.get(id).map(|field| field.name.clone());
    if let Some(id) = add(ui, "Add a field…", &others, name)
        && let Some(field) = farm.fields.get(&id)
    {
        record.fields.insert(id, whole_field(field, units));
    }
}

fn lines(ui: &mut Ui, state: &mut State, farm: &Farm, record: &mut Record, planned: Option<&Record>) {
    let units = farm.units;
    let area = record.area();
    section(ui, "Products");
    let amount_width = 112.0;
    let rate_width = 96.0;
    let name_width = (ui.available_width() - amount_width - rate_width - TAKE - 3.0 * 8.0).max(100.0);
    if !record.lines.is_empty() {
        captions(ui, &[("product", name_width), ("amount in all", amount_width), ("over ground", rate_width)]);
    }
    let all: Vec<Id> = farm.products.keys().cloned().collect();
    let mut taken = None;
    for (at, line) in record.lines.iter_mut().enumerate() {
        ui.push_id(("line", at), |ui| {
            ui.horizontal(|ui| {
                let mut product = line.product.clone();
                let say =
                    |id: &Id| farm.products.get(id).map_or_else(|| line.name.clone(), |product| product.name.clone());
                // The box of a choice grows with its words unless the room ends.
                slot(ui, name_width, |ui| boxes::choice(ui, "Product", &mut product, &all, say, name_width));
                let mut amount = line.amount.clone();
                boxes::quantity(ui, &format!("Amount of {}", line.name), &mut amount, amount_width);
                if amount != line.amount {
                    retype(state, line, amount, farm);
                }
                slot(ui, rate_width, |ui| {
                    if let Some(rate) = line.amount.value().spread(area) {
                        ui.label(look::soft(ui, format!("= {}", rate.show(units))));
                    }
                });
                if take(ui, &line.name) {
                    taken = Some(at);
                }
                if product != line.product
                    && let Some(other) = farm.products.get(&product)
                {
                    replace(line, &product, other, units);
                }
            });
            let words: Vec<String> = line.actives.iter().map(|active| active_words(active, units)).collect();
            let beside = planned.map(|planned| {
                planned.lines.iter().find(|other| other.product == line.product).map_or_else(
                    || "not in the plan".to_owned(),
                    |before| {
                        let ratio = line.amount.value().ratio(before.amount.value());
                        beside_plan(&before.amount.show(units), ratio)
                    },
                )
            });
            if !words.is_empty() || beside.is_some() {
                soft_line(ui, name_width, &words.join(", "), &beside.unwrap_or_default());
                ui.add_space(4.0);
            }
        });
    }
    if let Some(at) = taken {
        record.lines.remove(at);
    }
    if let Some(planned) = planned {
        for missing in &planned.lines {
            if record.lines.iter().all(|line| line.product != missing.product) {
                ui.label(look::soft(
                    ui,
                    format!("planned and not recorded: {} of {}", missing.amount.show(units), missing.name),
                ));
            }
        }
    }
    let name = |id: &Id| farm.products.get(id).map(|product| product.name.clone());
    if let Some(id) = add(ui, "Add a product…", &all, name)
        && let Some(product) = farm.products.get(&id)
    {
        let nothing = none_of(product, units);
        let mut line = record_line(&id, product, nothing.value(), units);
        line.amount = nothing;
        line.actives.clear();
        record.lines.push(line);
    }
}

/// Gives a line the amount that is being typed, and its actives in proportion to what it was before the typing began.
fn retype(state: &mut State, line: &mut RecordLine, amount: AsTyped<Amount>, farm: &Farm) {
    let before = match state.typing.take() {
        Some(typing) if typing.now == *line => typing.before,
        _ => line.clone(),
    };
    *line = with_amount(&before, amount, farm.products.get(&before.product), farm.units);
    state.typing = Some(Typing { before, now: line.clone() });
}

/// Another product in the same line. The amount stays where it can be measured out of the other one, too.
fn replace(line: &mut RecordLine, id: &Id, product: &Product, units: Units) {
    let nothing = none_of(product, units);
    let amount = if nothing.value().plus(line.amount.value()).is_some() { line.amount.clone() } else { nothing };
    *line = of_product(id, product, amount, units);
}

fn active_words(active: &RecordActive, units: Units) -> String {
    format!("{} {} {}", active.name, active.mass.show(units), active.basis.short())
}

/// Closer than a twentieth of a per cent, which is how it would be shown.
fn as_planned(ratio: f64) -> bool {
    (ratio - 1.0).abs() < 0.000_5
}

/// What was planned, and how far from it the record is.
fn beside_plan(planned: &str, ratio: Option<f64>) -> String {
    match ratio {
        Some(ratio) if as_planned(ratio) => "as planned".to_owned(),
        Some(ratio) => {
            let sign = if ratio > 1.0 { "+" } else { "–" };
            format!("planned {planned}, {sign}{:.1} %", (ratio - 1.0).abs() * 100.0)
        }
        None => format!("planned {planned}"),
    }
}

fn section(ui: &mut Ui, title: &str) {
    section_with(ui, title, |_| {});
}

fn section_with(ui: &mut Ui, title: &str, add: impl FnOnce(&mut Ui)) {
    ui.add_space(look::GRID);
    let line = ui.available_rect_before_wrap();
    ui.painter().hline(line.x_range(), line.top(), egui::Stroke::new(1.0, look::colours(ui).hairline));
    ui.add_space(6.0);
    ui.horizontal(|ui| {
        ui.label(look::heading(title));
        add(ui);
    });
}

/// Two labelled boxes side by side.
fn pair<L, R>(ui: &mut Ui, left: (&str, impl FnOnce(&mut Ui) -> L), right: (&str, impl FnOnce(&mut Ui) -> R)) {
    let width = (ui.available_width() - 16.0) / 2.0;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 8.0;
        slot(ui, width, |ui| labelled(ui, left.0, left.1));
        slot(ui, width, |ui| labelled(ui, right.0, right.1));
    });
}

fn labelled<R>(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui) -> R) {
    slot(ui, LABEL, |ui| ui.label(look::soft(ui, label)));
    add(ui);
}

/// A line of less weight under a row: words under its first column, words under its second.
fn soft_line(ui: &mut Ui, first: f32, left: &str, right: &str) {
    ui.scope(|ui| {
        ui.spacing_mut().interact_size.y = SOFT;
        ui.horizontal(|ui| {
            slot_of(ui, Vec2::new(first, SOFT), |ui| ui.add(egui::Label::new(look::soft(ui, left)).truncate()));
            ui.label(look::soft(ui, right));
        });
    });
}

/// Room of a fixed width in a row.
fn slot<R>(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui) -> R) {
    slot_of(ui, Vec2::new(width, look::ROW), add);
}

fn slot_of<R>(ui: &mut Ui, size: Vec2, add: impl FnOnce(&mut Ui) -> R) {
    ui.allocate_ui_with_layout(size, Layout::left_to_right(Align::Center), |ui| {
        ui.set_min_width(size.x);
        ui.set_max_width(size.x);
        add(ui);
    });
}

fn captions(ui: &mut Ui, columns: &[(&str, f32)]) {
    ui.horizontal(|ui| {
        ui.spacing_mut().interact_size.y = SOFT;
        for (text, width) in columns {
            slot_of(ui, Vec2::new(*width, SOFT), |ui| ui.label(look::soft(ui, *text)));
        }
    });
}

/// The act that takes a row away.
fn take(ui: &mut Ui, what: &str) -> bool {
    ui.is_enabled() && boxes::act(ui, "Remove").accessible_name(format!("Remove {what}")).clicked()
}

/// A choice that adds what is chosen.
fn add(ui: &mut Ui, prompt: &str, all: &[Id], name: impl Fn(&Id) -> Option<String>) -> Option<Id> {
    if all.is_empty() || !ui.is_enabled() {
        return None;
    }
    ui.add_space(2.0);
    let mut picked = Id::new();
    let say = |id: &Id| name(id).unwrap_or_else(|| prompt.to_owned());
    boxes::choice(ui, prompt.trim_end_matches('…'), &mut picked, all, say, 180.0);
    (!picked.is_empty()).then_some(picked)
}
