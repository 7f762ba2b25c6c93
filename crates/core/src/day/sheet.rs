//! The sheet of a day: what is sprayed when, what goes on the truck, who may enter which field again, on one page.
//!
//! A pass with a Stop stands on it and says that it has no cards. What the rest of the sheet adds up and warns of, counts the
//! passes that have cards alone.

mod after;
mod truck;

use jiff::civil::Date;
use serde::Serialize;

use super::Slot;
use super::timeline::{Drawn, Timeline, timeline};
use crate::farm::card::{CardField, CardOutline};
use crate::farm::label::Says;
use crate::farm::{Day, Farm, Id, Paper, Pass, Product};
use crate::finding::Level;
use crate::label::{listed, once};
use crate::language::days::{clock, long_date, short_date};
use crate::language::{Say, t, yes_or_no};
use crate::loads::card::{re_entry_hours, said_in};
use crate::loads::{day_limits, drawn};
use crate::plan::Plan;
use crate::quantity::{Duration, Quantity, Units};
use crate::rig::before::{self as clean_first, CleanFirst};
use crate::season::Log;
use crate::weather::{Span, Verdict, covers};
use crate::words::capital;

/// What holds on every day of spraying: common practice, no source.
fn usual() -> [&'static str; 2] {
    [t!("day-the-label-and-the-law-win"), t!("day-measure-before-each-start")]
}

/// What stands on the sheet, as text.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SheetContent {
    /// The paper.
    pub paper: Paper,
    /// The farm.
    pub farm: String,
    /// The day, in words.
    pub date: String,
    /// Sun and working hours of the day, one thing a line.
    pub day: Vec<String>,
    /// Words for the crew.
    pub note: String,
    /// The day as a picture; none where no pass has its time.
    pub timeline: Option<Timeline>,
    /// The rigs with their passes.
    pub rigs: Vec<SheetRig>,
    /// Passes of the day that are not on the sheet, and why.
    pub left_out: Vec<String>,
    /// The products to take along.
    pub products: Vec<SheetLine>,
    /// The carriers to take along, by source, and what nurse tanks and rinsing tanks take.
    pub water: Vec<SheetLine>,
    /// Passes that are not counted in products, water, fields and what to wear, with the reason.
    pub not_counted: String,
    /// Protective equipment, each once.
    pub wear: Vec<String>,
    /// The fields after spraying.
    pub fields: Vec<SheetField>,
    /// The fields drawn small, with what of them stays unsprayed, pass by pass.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub outlines: Vec<CardOutline>,
    /// What labels do not say of re-entry and harvest.
    pub silent: Vec<String>,
    /// What holds on every day.
    pub cautions: Vec<String>,
    /// Telephone lines for an emergency.
    pub emergency: Vec<String>,
}

impl SheetContent {
    /// The pass that has a number on the sheet.
    pub fn pass_of(&self, number: u32) -> Option<&Id> {
        let mut passes = self.rigs.iter().flat_map(|rig| &rig.passes);
        passes.find(|pass| pass.number == number).map(|pass| &pass.pass)
    }

    /// The number of a pass on the sheet.
    pub fn number_of(&self, pass: &str) -> Option<u32> {
        let mut passes = self.rigs.iter().flat_map(|rig| &rig.passes);
        passes.find(|on_sheet| on_sheet.pass == pass).map(|pass| pass.number)
    }

    /// Whether the day has no pass that is still to be sprayed.
    pub fn is_empty(&self) -> bool {
        self.rigs.is_empty()
    }
}

/// A rig on the sheet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SheetRig {
    /// Its name.
    pub name: String,
    /// Its passes, in order.
    pub passes: Vec<SheetPass>,
}

/// A pass on the sheet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SheetPass {
    /// Its number on the sheet, from 1.
    pub number: u32,
    /// The pass.
    pub pass: Id,
    /// Its name.
    pub name: String,
    /// Start and finish, "05:40 to 08:50"; empty where they are not known.
    pub time: String,
    /// Where they are not known: what is, and why the rest is not.
    pub untimed: String,
    /// Where not all of its time is inside the limits: that, and why it is there all the same.
    pub doubt: String,
    /// What is done before it: cleaning, road.
    pub before: Vec<String>,
    /// Its fields with their areas.
    pub fields: Vec<CardField>,
    /// Spray in all.
    pub spray: String,
    /// "3 loads".
    pub loads: String,
    /// Spray over ground.
    pub rate: String,
    /// In which hours it may be sprayed.
    pub window: String,
    /// The limits of the weather.
    pub limits: String,
    /// Who sprays; empty where not typed.
    pub operator: String,
    /// "1 Stop, 2 Checks"; empty for none.
    pub open: String,
    /// Why it has no cards, each with what to do; empty where it has some.
    pub no_cards: Vec<String>,
    /// Words for the crew.
    pub note: String,
}

/// Something to take along.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SheetLine {
    /// What.
    pub what: String,
    /// How much.
    pub amount: String,
    /// In containers, from which lot, for what.
    pub detail: String,
}

/// A field after spraying.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SheetField {
    /// Its name, or the names of several of which the same holds.
    pub name: String,
    /// Until when nobody enters without protection.
    pub enter: String,
    /// From when it may be harvested.
    pub harvest: String,
    /// What lies beside it.
    pub beside: String,
}

/// A pass of the day with all that the sheet asks of it.
struct OfDay<'a> {
    number: u32,
    id: &'a Id,
    pass: &'a Pass,
    plan: &'a Plan,
    slot: Option<&'a Slot>,
    products: Vec<(&'a Id, &'a Product)>,
    /// The records of the farm, looked up.
    log: &'a Log,
}

impl OfDay<'_> {
    fn has_cards(&self) -> bool {
        self.plan.level() != Some(Level::Stop) && !self.plan.loads.is_empty()
    }

    /// A product's first word or two.
    fn short(&self, product: &Id) -> String {
        let name = self.plan.names.iter().find(|name| name.product == *product);
        name.map_or_else(|| product.clone(), |name| name.short.clone())
    }

    fn title(&self) -> String {
        format!("{} {}", self.number, self.pass.name)
    }
}

/// The sheet of a day: its passes that are not recorded, in the order of their slots; a pass without a slot comes last.
pub fn sheet(farm: &Farm, date: Date, plans: &[&Plan], slots: &[&Slot]) -> SheetContent {
    let log = Log::of(farm);
    let passes = passes_of((farm, &log), date, plans, slots);
    let counted: Vec<&OfDay> = passes.iter().filter(|pass| pass.has_cards()).collect();
    let decided = farm.days.get(&date.to_string());
    let mut rigs: Vec<SheetRig> = Vec::new();
    let mut drawn: Vec<(String, Vec<Drawn>)> = Vec::new();
    let mut before: Option<&OfDay> = None;
    for pass in &passes {
        let starts_rig = before.is_none_or(|other| other.pass.rig != pass.pass.rig);
        if starts_rig {
            let name = rig_name(farm, pass.pass);
            rigs.push(SheetRig { name: name.clone(), passes: Vec::new() });
            drawn.push((name, Vec::new()));
        }
        let on_paper = pass_on_paper(farm, pass, before.filter(|_| !starts_rig));
        if let (Some(rig), Some((_, blocks))) = (rigs.last_mut(), drawn.last_mut()) {
            rig.passes.push(on_paper);
            let drawn = |slot| Drawn { number: pass.number, name: &pass.pass.name, plan: pass.plan, slot };
            blocks.extend(pass.slot.map(drawn));
        }
        before = Some(pass);
    }
    let recorded = farm.passes.iter().filter(|(id, pass)| pass.date == date && log.is_recorded(farm, id));
    let stopped: Vec<String> = passes.iter().filter(|pass| !pass.has_cards()).map(OfDay::title).collect();
    let mixes: Vec<(&Pass, &[(&Id, &Product)])> =
        counted.iter().map(|pass| (pass.pass, pass.products.as_slice())).collect();
    let wear = |says: &Says| match says {
        Says::Wear { what } => Some(Say::from(what.as_str())),
        _ => None,
    };
    let says_wear = |product: &Product| product.label.iter().any(|statement| wear(&statement.says).is_some());
    SheetContent {
        paper: farm.paper,
        farm: farm.name.clone(),
        date: long_date(date),
        day: day_lines(farm, date, &passes),
        note: decided.map_or(String::new(), |day| day.note.clone()),
        timeline: timeline(date, &drawn),
        rigs,
        left_out: recorded.map(|(_, pass)| t!("day-is-recorded-as-sprayed", name = pass.name)).collect(),
        products: truck::products(farm, &log, &counted),
        water: truck::water(farm, &counted),
        not_counted: if stopped.is_empty() {
            String::new()
        } else {
            t!("day-not-counted-having-no-cards", stopped = listed(&stopped))
        },
        wear: said_in(farm, &mixes, wear)
            .into_iter()
            .map(|said| said.aloud())
            .chain(
                silent(&counted, |product| says_wear(product))
                    .map(|names| t!("day-no-protective-equipment-is-typed", names = names)),
            )
            .collect(),
        fields: after::fields((farm, &log), date, &counted),
        outlines: outlines(farm, &counted),
        silent: silent(&counted, |product| re_entry_hours(product).is_some())
            .map(|names| t!("day-no-re-entry-time-is-typed", names = names))
            .into_iter()
            .chain(after::without_harvest(farm, &counted))
            .collect(),
        cautions: usual().map(str::to_owned).into_iter().chain([forecast(farm, date)]).collect(),
        emergency: farm.emergency.clone(),
    }
}

/// The fields of the passes. One that has the same drawn for two passes stands once.
fn outlines(farm: &Farm, passes: &[&OfDay]) -> Vec<CardOutline> {
    once(
        passes
            .iter()
            .flat_map(|pass| drawn::fields(farm, pass.plan, pass.plan.fields.iter().map(|field| &field.field), &[])),
    )
}

fn passes_of<'a>(
    (farm, log): (&'a Farm, &'a Log),
    date: Date,
    plans: &[&'a Plan],
    slots: &[&'a Slot],
) -> Vec<OfDay<'a>> {
    let place = |id: &Id| slots.iter().position(|slot| slot.pass == *id);
    let mut passes: Vec<OfDay> = farm
        .passes
        .iter()
        .filter(|(id, pass)| pass.date == date && !log.is_recorded(farm, id))
        .filter_map(|(id, pass)| {
            Some(OfDay {
                number: 0,
                id,
                pass,
                plan: plans.iter().find(|plan| plan.pass == *id)?,
                slot: slots.iter().copied().find(|slot| slot.pass == *id),
                products: pass.mix.iter().filter_map(|line| farm.products.get_key_value(&line.product)).collect(),
                log,
            })
        })
        .collect();
    passes.sort_by_key(|pass| place(pass.id).unwrap_or(usize::MAX));
    let rigs: Vec<Id> = once(passes.iter().map(|pass| pass.pass.rig.clone()));
    passes.sort_by_key(|pass| rigs.iter().position(|rig| *rig == pass.pass.rig));
    for (number, pass) in (1..).zip(&mut passes) {
        pass.number = number;
    }
    passes
}

fn rig_name(farm: &Farm, pass: &Pass) -> String {
    match farm.rigs.get(&pass.rig) {
        Some(rig) => rig.name.clone(),
        None if pass.rig.is_empty() => t!("day-no-rig-chosen").to_owned(),
        None => pass.rig.clone(),
    }
}

fn pass_on_paper(farm: &Farm, here: &OfDay, before: Option<&OfDay>) -> SheetPass {
    let (pass, plan, units) = (here.pass, here.plan, farm.units);
    let span = here.slot.and_then(|slot| slot.span);
    let (to_settle, to_decide) = (plan.count(Level::Stop), plan.count(Level::Check));
    let mut open: Vec<String> = Vec::new();
    open.extend((to_settle > 0).then(|| t!("day-stops", count = to_settle)));
    open.extend((to_decide > 0).then(|| t!("day-checks", count = to_decide)));
    let stops = plan.findings.iter().filter(|finding| finding.level == Level::Stop);
    let mut no_cards: Vec<String> = stops.map(|stop| with_hint(&stop.text, &stop.hint)).collect();
    if no_cards.is_empty() && plan.loads.is_empty() {
        no_cards.push(t!("day-it-has-no-load").to_owned());
    }
    SheetPass {
        number: here.number,
        pass: here.id.clone(),
        name: pass.name.clone(),
        time: span.map(|span| span.to_whole_minute().words()).unwrap_or_default(),
        untimed: if span.is_some() {
            String::new()
        } else {
            let start = pass.start.map_or_else(
                || t!("day-start-not-typed").to_owned(),
                |start| t!("day-not-before", strftime = clock(start)),
            );
            let why = here.slot.map(|slot| slot.why.trim_end_matches('.')).filter(|why| !why.is_empty());
            why.map_or(start.clone(), |why| format!("{start}. {why}"))
        },
        doubt: here
            .slot
            .filter(|slot| slot.span.is_some_and(|span| !is_allowed(plan, slot, span)))
            .map_or(String::new(), |slot| with_hint(t!("day-not-all-of-this-time-is"), &slot.why)),
        before: done_before(farm, here, before),
        fields: plan
            .fields
            .iter()
            .filter_map(|planned| {
                let field = farm.fields.get(&planned.field)?;
                let mut area = planned.covered.show(units);
                if planned.covered.exceeds(planned.area) {
                    area = t!("day-in-bands-treated", area = area, area2 = planned.area.show(units));
                }
                Some(CardField { name: field.name.clone(), area })
            })
            .collect(),
        spray: plan.spray_volume.show(units),
        loads: loads(plan, units),
        rate: plan.carrier.map(|carrier| carrier.show(units)).unwrap_or_default(),
        window: window(plan, span),
        limits: day_limits::of_pass(farm, plan, pass),
        operator: pass.operator.trim().to_owned(),
        open: open.join(", "),
        no_cards,
        note: [partly_recorded(farm, here).unwrap_or_default(), pass.note.clone()].join(" ").trim().to_owned(),
    }
}

/// Says that a pass is recorded in part, of which the sheet has all.
fn partly_recorded(farm: &Farm, here: &OfDay) -> Option<String> {
    let words = here.log.unrecorded(farm, here.id)?.words(farm)?;
    Some(t!("day-loads-and-amounts-here-are-of", words = capital(&words)))
}

/// Whether all hours of a slot that are judged are allowed. The plan judges those of its day alone; the slot knows of the night
/// after it.
fn is_allowed(plan: &Plan, slot: &Slot, span: Span) -> bool {
    slot.verdict != Some(Verdict::Doubtful)
        && plan.hours.hours.iter().all(|hour| {
            let (from, to) = (span.from.max(hour.at), span.to.min(hour.span().to));
            let in_part = hour
                .part
                .is_some_and(|(part, verdict)| verdict == Verdict::Allowed && part.from <= from && to <= part.to);
            from >= to || hour.verdict == Verdict::Allowed || in_part
        })
}

/// "Text. Hint."
fn with_hint(text: &str, hint: &str) -> String {
    if hint.is_empty() { text.to_owned() } else { format!("{}. {hint}", text.trim_end_matches('.')) }
}

/// The hours that are inside all limits: those in which the pass has its place, else the best of the day.
fn window(plan: &Plan, place: Option<Span>) -> String {
    let best = match (plan.hours.best, plan.hours.longest) {
        (Some(best), _) => best.words(),
        (None, Some((longest, _))) => t!("day-too-short-for-it", longest = longest.words()),
        (None, None) if plan.hours.hours.is_empty() => return t!("day-not-judged").to_owned(),
        (None, None) => return t!("day-no-hours").to_owned(),
    };
    let Some(place) = place else { return best };
    let around = allowed(plan).into_iter().find(|run| run.from <= place.from && place.to <= run.to);
    around.map_or_else(|| t!("day-its-place-is-not-all-inside", best = best), Span::words)
}

/// Times without a break in which the pass may be sprayed.
fn allowed(plan: &Plan) -> Vec<Span> {
    let mut runs: Vec<Span> = Vec::new();
    for hour in &plan.hours.hours {
        let part = hour.part.filter(|(_, verdict)| *verdict == Verdict::Allowed).map(|(part, _)| part);
        let whole = (hour.verdict == Verdict::Allowed).then(|| hour.span());
        let Some(span) = whole.or(part) else { continue };
        match runs.last_mut() {
            Some(last) if last.to >= span.from => last.to = last.to.max(span.to),
            _ => runs.push(span),
        }
    }
    runs
}

/// Cleaning, word for word where a label says how, and road.
fn done_before(farm: &Farm, here: &OfDay, before: Option<&OfDay>) -> Vec<String> {
    let Some(slot) = here.slot else { return in_the_tank(farm, here, before).into_iter().collect() };
    let timed = |what: String, time: Duration| {
        if time.is_zero() { what } else { format!("{what}, {}", time.show(farm.units)) }
    };
    let mut done = Vec::new();
    let crops = once(here.pass.fields.iter().filter_map(|id| {
        farm.fields.get(id).map(|field| field.crop.trim().to_owned()).filter(|crop| !crop.is_empty())
    }));
    let next = if crops.is_empty() { here.pass.name.clone() } else { listed(&crops) };
    // From what to what, how much water, and word for word what a label says.
    let clean_out = |what: String, first: &CleanFirst| {
        let what = slot.clean_out.map_or(what.clone(), |time| timed(what, time));
        let (from, next) = (listed(&first.products), next.as_str());
        let name = first.after.first().map_or("", |(name, _)| name.as_str());
        let way = t!("day-clean-out-from-to", products = from, name = name, next = next);
        let rinses = first.rinsing.map(|rinsing| rinsing.said(farm.units).aloud());
        let way = std::iter::once(way).chain(rinses).collect::<Vec<_>>().join(", ");
        let all: Vec<String> = std::iter::once(way).chain(first.how.iter().cloned()).collect();
        format!("{what}: {}", all.join(". "))
    };
    let earlier = if before.is_none() { clean_first::from_earlier(farm, here.log, here.pass) } else { Vec::new() };
    if slot.clean_out.is_some() {
        let what = t!("day-clean-out-the-rig").to_owned();
        let first = match before {
            Some(before) => clean_first::between_passes(farm, before.id, here.pass),
            None => earlier.into_iter().next(),
        };
        done.push(match &first {
            Some(first) => clean_out(what, first),
            None => slot.clean_out.map_or(what.clone(), |time| timed(what, time)),
        });
    } else {
        // Whether the rig was cleaned on the evening of another day is not known.
        for first in earlier {
            let Some((name, day)) = first.after.first() else { continue };
            let what = t!("day-clean-out-the-rig-after", name = name, day = short_date(*day));
            done.push(clean_out(what, &first));
        }
    }
    done.extend(in_the_tank(farm, here, before));
    done.extend(slot.travel.map(|time| timed(t!("day-road").to_owned(), time)));
    done
}

/// "3 loads", with what is left over after them.
fn loads(plan: &Plan, units: Units) -> String {
    let loads = t!("day-loads", count = plan.loads.len());
    let left = plan.loads.last().filter(|load| load.left.exceeds(load.volume * 1e-9));
    left.map_or(loads.clone(), |load| t!("day-left-over", loads = loads, left = load.left.show(units)))
}

/// What a pass begins with in the tank, and whose it is; on one rig that pass must come right before.
fn in_the_tank(farm: &Farm, here: &OfDay, before: Option<&OfDay>) -> Option<String> {
    let in_tank = here.pass.begins_with()?;
    let volume = in_tank.volume.show(farm.units);
    let giver = farm.passes.get(&in_tank.from).filter(|_| in_tank.from != *here.id);
    // A pass of an earlier day cannot come right before one that is not the first.
    let not_there = match (before, giver) {
        (Some(before), _) => *before.id != in_tank.from,
        (None, Some(giver)) => giver.date >= here.pass.date && !here.log.is_recorded(farm, &in_tank.from),
        (None, None) => false,
    };
    Some(t!(
        "day-begin-with-the-in-the-tank",
        volume = volume,
        of_a_pass = yes_or_no(giver.is_some()),
        name = giver.map_or("", |giver| giver.name.as_str()),
        right_before = yes_or_no(!not_there)
    ))
}

/// Sun and working hours.
fn day_lines(farm: &Farm, date: Date, passes: &[OfDay]) -> Vec<String> {
    let sun = passes.iter().find_map(|pass| pass.plan.hours.sun);
    let decided = farm.days.get(&date.to_string());
    let (from, to) = (decided.and_then(|day| day.from), decided.and_then(|day| day.to));
    let mut lines: Vec<String> = sun.map(|sun| t!("day-sun-up", sun = sun.words())).into_iter().collect();
    lines.extend(from.map(|from| t!("day-no-rig-leaves-before", strftime = clock(from))));
    lines.extend(to.map(|to| {
        let to = clock(to);
        if decided.is_some_and(Day::home_on_the_next_day) {
            t!("day-rigs-home-by-on-the-next-day", to = to)
        } else {
            t!("day-rigs-home-by", to = to)
        }
    }));
    lines
}

/// The pesticides whose labels, as typed, do not say a thing.
fn silent(passes: &[&OfDay], says: impl Fn(&Product) -> bool) -> Option<String> {
    let names = passes
        .iter()
        .flat_map(|pass| &pass.products)
        .filter(|(_, product)| product.kind.is_pesticide() && !says(product))
        .map(|(_, product)| product.name.clone());
    let names = once(names);
    (!names.is_empty()).then(|| listed(&names))
}

/// On which forecast the hours rest.
fn forecast(farm: &Farm, date: Date) -> String {
    if !covers(farm, date) {
        return t!("day-there-is-no-forecast-of-this").to_owned();
    }
    let source = farm.forecast.source.trim();
    let source = if source.is_empty() { t!("day-source-not-named") } else { source };
    match farm.forecast.read {
        Some(read) => {
            let (date, time) = (short_date(read.date()), clock(read));
            t!("day-forecast-read", source = source, date = date, time = time)
        }
        None => t!("day-forecast-a-forecast-is-no-measurement", source = source),
    }
}
