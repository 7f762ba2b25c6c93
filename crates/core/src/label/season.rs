//! Season totals: what a field has had in a period, with this pass on top, against the label's most.
//!
//! A season is what the statement counts over: the calendar year of the pass, the crop since its planting, or the twelve
//! months up to the pass. Totals of an active bind from the label of what the field had, too. Records count; the record of this
//! very pass on its own day does not, since it is the pass. Other passes within a year that are planned up to the same day and not
//! yet recorded do not count either, but raise a Check, with the sum where that would pass the most, and so does any record that
//! belongs in the sum and cannot be added to it.

use super::when::Situation;
use super::{Bound, End, Here, Spoken, listed};
use crate::farm::label::{Period, Says};
use crate::farm::{Farm, Field, Id, Line, Product, Record, RecordLine, crop};
use crate::finding::{Basis, Finding, Subject, TypedAt};
use crate::language::days::short_date;
use crate::language::t;
use crate::mix::actives::Wanted;
use crate::mix::line::{PlannedLine, active_per_area, over_ground, per_area};
use crate::quantity::rate::show_active;
use crate::quantity::{ActiveBasis, AmountPerArea, AsTyped, CarrierRate, MassPerArea, Rate, apart};
use crate::season::period::Window;
use crate::season::{Log, Reach, SoFar, active_so_far, product_so_far};
use crate::working::Working;
use jiff::Span;
use jiff::civil::Date;

/// What is sprayed so many days before planting may be for the crop that follows. Common practice, no source.
const BEFORE_PLANTING: i32 = 60;

/// What the season rules look at.
pub(crate) struct Season<'a> {
    pub(crate) farm: &'a Farm,
    pub(crate) log: &'a Log,
    pub(crate) pass: &'a Id,
    pub(crate) date: Date,
    pub(crate) lines: &'a [PlannedLine],
}

/// The records of a period on the field, without the pass itself.
pub(crate) fn reach<'a>(here: &Here<'a>, window: &Window) -> Reach<'a> {
    Reach { from: window.from, to: window.to, field: here.field_id, pass: here.pass_id, date: here.pass.date }
}

/// The most of a product that a total allows over ground, and what the field has had of it in the period.
///
/// # Errors
/// Where the total cannot be compared with the product, why.
pub(crate) fn product_total(
    here: &Here,
    window: &Window,
    most: Rate,
) -> Result<(AmountPerArea, SoFar<Option<AmountPerArea>>), String> {
    let limit = per_area(most, here.product, here.carrier)?;
    Ok((limit, product_so_far(here.farm, here.log, reach(here, window), here.id)))
}

/// The most of an active over ground, with its basis where that is typed; none for what is no mass over ground.
pub(crate) fn active_limit(most: Rate) -> Option<(MassPerArea, Option<ActiveBasis>)> {
    match most {
        Rate::ActivePerArea(limit, basis) => Some((limit, Some(basis))),
        Rate::MassPerArea(limit) | Rate::OuncesPerArea(limit) => Some((limit, None)),
        _ => None,
    }
}

impl Season<'_> {
    /// The season totals that a product's label names, on a field.
    pub(crate) fn judge(
        &self,
        line: &PlannedLine,
        here: &Here,
        findings: &mut Vec<Finding>,
        workings: &mut Vec<Working>,
        bounds: &mut Vec<Bound>,
    ) {
        for spoken in here.spoken() {
            match &spoken.statement.says {
                Says::SeasonTotal { most, per } => {
                    let is_it = |line: &RecordLine| line.product == *here.id;
                    findings.extend(self.before_planting(here, &spoken, *per, &here.product.name, &is_it));
                    self.judge_product(line, here, &spoken, (most, *per), findings, workings, bounds);
                }
                Says::ActiveSeasonTotal { active, most, per } => {
                    if !Wanted::new(active).is_in(here.product) {
                        findings.push(
                            Finding::check(
                                here.about_product(),
                                t!("label-the-label-of-limits-a-season", name = here.product.name, active = active),
                                spoken.basis(),
                            )
                            .hint(t!("label-write-the-active-in-the-same")),
                        );
                    }
                    let wanted = Wanted::new(active);
                    let holds = |line: &RecordLine| line.actives.iter().any(|held| wanted.is(&held.name));
                    findings.extend(self.before_planting(here, &spoken, *per, active, &holds));
                    self.judge_active(active, here, &spoken, (most, *per), findings, workings, bounds);
                }
                _ => {}
            }
        }
    }

    #[allow(clippy::too_many_arguments)] // One statement's parts, and the places for what it says.
    fn judge_product(
        &self,
        line: &PlannedLine,
        here: &Here,
        spoken: &Spoken,
        (most, per): (&AsTyped<Rate>, Period),
        findings: &mut Vec<Finding>,
        workings: &mut Vec<Working>,
        bounds: &mut Vec<Bound>,
    ) {
        let (units, product, at) = (self.farm.units, here.product, spoken.at());
        let (field_id, field) = (here.field_id, here.field);
        let window = Window::of(per, field, self.date);
        findings.extend(window.stand_in(field_id, field, product));
        let (limit, so_far) = match product_total(here, &window, most.value()) {
            Ok(total) => total,
            Err(problem) => {
                findings.push(Finding::check(
                    Subject::Product(line.product.clone()),
                    t!("label-the-season-total-on-the-label", problem = problem),
                    Basis::Label(at),
                ));
                return;
            }
        };
        left_out(&product.name, field_id, field, &so_far.left_out, findings);
        let after = so_far.sum.map_or(Some(line.per_area), |used| used.plus(line.per_area));
        let Some(after) = after else { return };
        let used = so_far.sum.map(|used| used.show(units));
        workings.push(working(
            &product.name,
            field,
            &window,
            used,
            &line.per_area.show(units),
            &after.show(units),
            most.text(),
        ));
        if after.exceeds(limit) == Some(true) {
            let (after, limit) = apart::amounts(after, limit, units);
            findings.push(passed(spoken, here, &product.name, &window, &after, &limit));
            return;
        }
        let (others, named) = self.planned_before(here, &window, &|line, product, carrier| {
            if line.product == *here.id { over_ground(line, product, carrier).ok() } else { None }
        });
        let with_others = others.into_iter().try_fold(after, AmountPerArea::plus);
        if let Some(sum) = with_others.filter(|sum| sum.exceeds(limit) == Some(true)) {
            let (sum, limit) = apart::amounts(sum, limit, units);
            findings.push(would_pass(spoken, here, &product.name, &window, (&sum, &limit), &named));
        }
        let rest = match so_far.sum {
            None => Some(limit),
            Some(used) => limit.minus(used),
        };
        bounds.extend(rest.map(|amount| Bound {
            product: line.product.clone(),
            field: field_id.clone(),
            end: End::Most,
            amount,
        }));
    }

    #[allow(clippy::too_many_arguments)] // One statement's parts, and the places for what it says.
    fn judge_active(
        &self,
        active: &str,
        here: &Here,
        spoken: &Spoken,
        (most, per): (&AsTyped<Rate>, Period),
        findings: &mut Vec<Finding>,
        workings: &mut Vec<Working>,
        bounds: &mut Vec<Bound>,
    ) {
        let (field_id, field, at) = (here.field_id, here.field, spoken.at());
        let window = Window::of(per, field, self.date);
        findings.extend(window.stand_in(field_id, field, here.product));
        let Some((limit, typed_basis)) = active_limit(most.value()) else {
            findings.push(
                Finding::check(
                    here.about_product(),
                    t!("label-the-season-total-of-is-typed", active = active, most = most.text()),
                    Basis::Label(at),
                )
                .hint(t!("label-type-it-like-4-lb-ae")),
            );
            return;
        };
        let mut planned = MassPerArea::ZERO;
        let mut basis = typed_basis;
        let mut holders = Vec::new();
        let wanted = Wanted::new(active);
        for line in self.lines {
            let Some(product) = self.farm.products.get(&line.product) else { continue };
            for held in wanted.in_product(product) {
                if basis.is_some_and(|basis| basis != held.basis) {
                    findings.push(
                        Finding::check(
                            Subject::Product(line.product.clone()),
                            t!(
                                "label-counts-as-the-season-total-as",
                                name = product.name,
                                active = active,
                                short = held.basis.short(),
                                basis = basis.map_or("", ActiveBasis::short)
                            ),
                            Basis::Label(at.clone()),
                        )
                        .hint(t!("label-type-both-on-one-basis")),
                    );
                }
                basis = basis.or(Some(held.basis));
                match active_per_area(line.per_area, held, product) {
                    Some(mass) => {
                        planned = planned + mass;
                        holders.push(line);
                    }
                    None => findings.push(
                        Finding::check(
                            Subject::Product(line.product.clone()),
                            t!("label-the-in-cannot-be-reckoned-without", active = active, name = product.name),
                            Basis::Arithmetic,
                        )
                        .hint(t!("label-type-the-density-in-the-shed"))
                        .at(TypedAt::Density),
                    ),
                }
            }
        }
        let basis = basis.unwrap_or(ActiveBasis::ActiveIngredient);
        let so_far = active_so_far(self.farm, self.log, reach(here, &window), active, basis);
        left_out(active, field_id, field, &so_far.left_out, findings);
        let after = so_far.sum + planned;
        let shown = |mass: MassPerArea| show_active(mass, basis, self.farm.units);
        let used = (!so_far.sum.is_zero()).then(|| shown(so_far.sum));
        workings.push(working(active, field, &window, used, &shown(planned), &shown(after), &shown(limit)));
        if after.exceeds(limit) {
            let (after, limit) = apart::actives(after, limit, shown);
            findings.push(passed(spoken, here, active, &window, &after, &limit));
            return;
        }
        let (others, named) = self.planned_before(here, &window, &|line, product, carrier| {
            let per_area = over_ground(line, product, carrier).ok()?;
            let held = wanted.in_product(product).filter(|held| held.basis == basis);
            let masses: Option<Vec<MassPerArea>> = held.map(|held| active_per_area(per_area, held, product)).collect();
            Some(masses?.into_iter().fold(MassPerArea::ZERO, |sum, mass| sum + mass)).filter(|mass| !mass.is_zero())
        });
        let with_others = others.into_iter().fold(after, |sum, mass| sum + mass);
        if with_others.exceeds(limit) {
            let (sum, limit) = apart::actives(with_others, limit, shown);
            findings.push(would_pass(spoken, here, active, &window, (&sum, &limit), &named));
        }
        // What is left is shared among the products that hold the active, as they share what is planned.
        if let Some(share) = (limit - so_far.sum).ratio(planned) {
            bounds.extend(holders.into_iter().map(|line| Bound {
                product: line.product.clone(),
                field: field_id.clone(),
                end: End::Most,
                amount: line.per_area.times(share),
            }));
        }
    }

    /// Totals of an active that stand on the labels of what the field has had in their period: they bind what comes after with the same
    /// active, also where the labels of this mix name none. Takes the rows of one field.
    pub(crate) fn of_what_was_sprayed(
        &self,
        rows: &[Here],
        findings: &mut Vec<Finding>,
        workings: &mut Vec<Working>,
        bounds: &mut Vec<Bound>,
    ) {
        let Some(first) = rows.first() else { return };
        let mix: Vec<&Product> = rows.iter().map(|row| row.product).collect();
        let ids = super::once(
            Reach::always(first.field_id, first.pass_id, self.date)
                .records(self.farm, self.log)
                .flat_map(|record| record.lines.iter().filter(|line| !line.amount.is_zero()))
                .map(|line| line.product.as_str()),
        );
        let sprayed = ids.into_iter().filter_map(|id| self.farm.products.get_key_value(id));
        for (id, product) in sprayed.filter(|(id, _)| rows.iter().all(|row| row.id != *id)) {
            let situation = Situation {
                farm: self.farm,
                pass: first.pass,
                product,
                partners: mix.clone(),
                carrier: Some(first.carrier),
            };
            let here = Here { id, product, situation: &situation, ..*first };
            for spoken in here.spoken() {
                let Says::ActiveSeasonTotal { active, most, per } = &spoken.statement.says else { continue };
                let wanted = Wanted::new(active);
                let window = Window::of(*per, here.field, self.date);
                let was_sprayed = reach(&here, &window)
                    .records(self.farm, self.log)
                    .any(|record| record.lines.iter().any(|line| line.product == *id && !line.amount.is_zero()));
                if was_sprayed && mix.iter().any(|product| wanted.is_in(product)) {
                    self.judge_active(active, &here, &spoken, (most, *per), findings, workings, bounds);
                }
            }
        }
    }

    /// A total of a crop counts from its planting on. What was sprayed shortly before, on no other crop, may have been for it, and many labels
    /// count that too: a Check, since only the label tells.
    fn before_planting(
        &self,
        here: &Here,
        spoken: &Spoken,
        per: Period,
        what: &str,
        counts: &dyn Fn(&RecordLine) -> bool,
    ) -> Option<Finding> {
        let planted = here.field.planted.filter(|planted| per == Period::Crop && *planted <= self.date)?;
        let from = planted.checked_sub(Span::new().days(BEFORE_PLANTING)).ok()?;
        let to = planted.yesterday().ok()?;
        let before = Reach { from, to, field: here.field_id, pass: here.pass_id, date: self.date };
        let is_for_it = |record: &&Record| {
            let crop = record.fields.get(here.field_id).map_or("", |field| field.crop.trim());
            crop.is_empty() || crop::same(crop, &here.field.crop)
        };
        let days: Vec<String> = before
            .records(self.farm, self.log)
            .filter(is_for_it)
            .filter(|record| record.lines.iter().any(|line| !line.amount.is_zero() && counts(line)))
            .map(|record| short_date(record.date))
            .collect();
        (!days.is_empty()).then(|| {
            let text = t!(
                "label-sprayed-before-planting-is-not-counted",
                name = here.field.name,
                what = what,
                days = listed(&days),
                planted = planted
            );
            Finding::check(here.about_field(), text, spoken.basis())
                .hint(t!("label-hold-the-total-of-the-crop-against"))
        })
    }

    /// What other passes up to the day of this one put on the field in a period and no record covers yet, by what of a line counts; with
    /// their names. The rest of a pass that is recorded in part lies on other ground and does not count.
    fn planned_before<T>(
        &self,
        here: &Here,
        window: &Window,
        counts: &dyn Fn(&Line, &Product, CarrierRate) -> Option<T>,
    ) -> (Vec<T>, String) {
        let (mut all, mut names) = (Vec::new(), Vec::new());
        for (id, other) in &self.farm.passes {
            let is_before = id != self.pass && (window.from..=self.date.min(window.to)).contains(&other.date);
            if !is_before || !other.fields.contains(here.field_id) || self.farm.is_one_application(id, self.pass) {
                continue;
            }
            let (Some(left), Some(carrier)) = (self.log.unrecorded(self.farm, id), other.carrier_rate()) else {
                continue;
            };
            // Passes that together cover no more than the field may lie beside each other on it.
            let of_other = other.parts.get(here.field_id).map_or_else(|| here.field.sprayable(), AsTyped::value);
            if !(of_other + here.area).exceeds(here.field.ground()) {
                continue;
            }
            let of_line = |line: &Line| counts(line, self.farm.products.get(&line.product)?, carrier);
            let of_pass: Vec<T> = if left.partly { Vec::new() } else { other.mix.iter().filter_map(of_line).collect() };
            if !of_pass.is_empty() {
                names.push(t!("label-pass-of-a-day", name = other.name, date = other.date));
                all.extend(of_pass);
            }
        }
        (all, listed(&names))
    }

    /// Says where this pass is recorded on another day, and which other passes of the year put the same product or active on
    /// the same field and are not recorded yet.
    pub(crate) fn note_passes(&self, findings: &mut Vec<Finding>) {
        let Some(this) = self.farm.passes.get(self.pass) else { return };
        for record in self.log.of_pass(self.farm, self.pass) {
            if record.date != this.date {
                findings.push(
                    Finding::check(
                        Subject::Pass(self.pass.clone()),
                        t!("label-this-pass-was-recorded-on-and", date = record.date, date2 = this.date),
                        Basis::Arithmetic,
                    )
                    .hint(t!("label-if-it-is-a-second-application")),
                );
            }
        }
        for (id, other) in &self.farm.passes {
            let recent = other.date.year() == this.date.year()
                || super::harvest::months_after(other.date, 12).is_some_and(|day| day > this.date);
            let earlier = id != self.pass && other.date <= this.date && recent;
            if !earlier || self.farm.is_one_application(id, self.pass) {
                continue;
            }
            let Some(left) = self.log.unrecorded(self.farm, id) else { continue };
            let shared = self.shared(other);
            let fields: Vec<&str> = other
                .fields
                .iter()
                .filter(|field| this.fields.contains(field) && (!left.partly || left.is_on(field)))
                .filter_map(|field| self.farm.fields.get(field))
                .map(|field| field.name.as_str())
                .collect();
            if !shared.is_empty() && !fields.is_empty() {
                let (name, date, shared, fields) = (&other.name, other.date, shared.join(", "), fields.join(", "));
                let text = match left.words(self.farm) {
                    Some(partly) => t!(
                        "label-rest-of-a-pass-is-not-counted",
                        name = name,
                        date = date,
                        shared = shared,
                        fields = fields,
                        partly = partly
                    ),
                    None => t!(
                        "label-unrecorded-pass-is-not-counted",
                        name = name,
                        date = date,
                        shared = shared,
                        fields = fields
                    ),
                };
                findings.push(
                    Finding::check(Subject::Pass(id.clone()), text, Basis::Arithmetic)
                        .hint(t!("label-record-it-or-take-it-out")),
                );
            }
        }
    }

    /// The products and actives that another pass has in common with this one.
    fn shared(&self, other: &crate::farm::Pass) -> Vec<String> {
        let mine: Vec<&Product> = self.lines.iter().filter_map(|line| self.farm.products.get(&line.product)).collect();
        let mut shared = Vec::new();
        for theirs in other.mix.iter().filter_map(|line| self.farm.products.get(&line.product)) {
            if !theirs.kind.holds_actives() {
                continue;
            }
            if mine.iter().any(|product| product.name == theirs.name) {
                shared.push(theirs.name.clone());
            } else {
                shared.extend(
                    theirs
                        .actives
                        .iter()
                        .map(|active| active.name.clone())
                        .filter(|name| mine.iter().any(|product| Wanted::new(name).is_in(product))),
                );
            }
        }
        shared.dedup();
        shared
    }
}

fn working(
    what: &str,
    field: &Field,
    window: &Window,
    used: Option<String>,
    planned: &str,
    after: &str,
    limit: &str,
) -> Working {
    Working::new(t!("label-on", what = what, name = field.name, words = window.words))
        .step(t!("label-records-so-far"), used.unwrap_or_else(|| t!("label-none").to_owned()))
        .step(t!("label-this-pass"), planned)
        .step(t!("label-in-all"), after)
        .step(t!("label-labels-most"), limit)
}

fn passed(spoken: &Spoken, here: &Here, what: &str, window: &Window, after: &str, limit: &str) -> Finding {
    let is_in_mix = here.pass.mix.iter().any(|line| line.product == *here.id);
    let (name, words) = (&here.field.name, &window.words);
    let text = if is_in_mix {
        t!(
            "label-this-pass-brings-to-the-labels",
            name = name,
            what = what,
            after = after,
            words = words,
            limit = limit
        )
    } else {
        t!(
            "label-this-pass-brings-beyond-what-was-sprayed",
            name = name,
            what = what,
            after = after,
            words = words,
            product = here.product.name,
            limit = limit
        )
    };
    spoken.forbid(here.about_field(), text).hint(t!("label-lower-the-rate-leave-the-field"))
}

/// The same with what is planned and not sprayed yet: a Check, since it may not come about.
fn would_pass(
    spoken: &Spoken,
    here: &Here,
    what: &str,
    window: &Window,
    (sum, limit): (&str, &str),
    named: &str,
) -> Finding {
    let text = t!(
        "label-with-what-is-planned-before",
        name = here.field.name,
        named = named,
        what = what,
        sum = sum,
        words = window.words,
        limit = limit
    );
    Finding::check(here.about_field(), spoken.with_doubt(text), spoken.basis())
        .hint(t!("label-lower-a-rate-or-take-out-what"))
}

/// Says which records a season total could not take in.
fn left_out(what: &str, field_id: &Id, field: &Field, left_out: &[String], findings: &mut Vec<Finding>) {
    if !left_out.is_empty() {
        findings.push(
            Finding::check(
                Subject::Field(field_id.clone()),
                t!(
                    "label-the-season-total-of-on-leaves",
                    what = what,
                    name = field.name,
                    left_out = left_out.join("; ")
                ),
                Basis::Arithmetic,
            )
            .hint(t!("label-mend-these-records-in-the-season")),
        );
    }
}
