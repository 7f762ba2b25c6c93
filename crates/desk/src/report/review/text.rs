//! The review in words.

use std::fmt::Write;

use tankard_core::farm::{AdjuvantClass, Farm};
use tankard_core::quantity::{Area, Quantity, Share, Units};
use tankard_core::season::review::{Amounts, Choice, Index, Picked, Review, Spent, words};
use tankard_core::t;
use tankard_core::words::capital;

use super::All;
use crate::report::needs::round;
use crate::report::words::both;

/// The review of a season, or of all of them, as a person reads it in a terminal.
pub fn text(farm: &Farm, season: Option<i16>) -> String {
    let index = Index::of(farm);
    let picked = index.pick(&season.map_or_else(Choice::all, Choice::season));
    let mut out = String::new();
    // Writing to a string does not fail.
    let _ = write(farm, &picked, season, &mut out);
    out
}

fn write(farm: &Farm, picked: &Picked<'_>, season: Option<i16>, out: &mut String) -> std::fmt::Result {
    let of = season.map_or_else(|| t!("report-all-seasons").to_owned(), |year| year.to_string());
    writeln!(out, "{}", t!("report-review-of", name = farm.name, of = of))?;
    if picked.records() == 0 {
        return writeln!(out, "{}", t!("report-nothing-is-recorded"));
    }
    let all = All::of(farm, picked);
    let (found, units) = (&all.review, farm.units);
    passes(found, units, out)?;
    products(farm, found, out)?;
    groups(found, out)?;
    planned(found, units, out)?;
    writeln!(out, "{}", t!("report-weather-at-application"))?;
    let outside = all.outside();
    row(out, t!("report-records-held-against-limits"), &outside.judged.to_string(), "")?;
    row(out, t!("report-outside-what-a-label-or-a"), &outside.of_label_or_law.to_string(), "")?;
    row(out, t!("report-outside-what-is-usual-alone"), &outside.of_practice.to_string(), "")?;
    let gaps = found.unmeasured;
    row(
        out,
        t!("report-no-wind-no-temperature-no-humidity"),
        &format!("{}, {}, {}", gaps.wind, gaps.temperature, gaps.humidity),
        "",
    )?;
    writeln!(out)?;
    cost(farm, found, out)?;
    work(found, units, out)?;
    ratings(farm, &all, out)?;
    writeln!(out, "{}", t!("report-the-label-and-local-law-govern"))
}

/// "  what ......  figure  more".
fn row(out: &mut String, what: &str, figure: &str, more: &str) -> std::fmt::Result {
    writeln!(out, "{}", format!("  {what:<46} {figure:>16}  {more}").trim_end())
}

fn passes(found: &Review, units: Units, out: &mut String) -> std::fmt::Result {
    let passes = &found.passes;
    writeln!(out, "{}", t!("report-passes-and-ground"))?;
    row(out, t!("report-records"), &passes.passes.to_string(), "")?;
    row(out, t!("report-ground-treated-twice-sprayed-counted-twice"), &passes.treated.show(units), "")?;
    row(out, t!("report-ground-sprayed-at-least-once"), &words::distinct(passes.distinct, units), "")?;
    for month in passes.months.iter().filter(|month| month.passes > 0) {
        let day = format!("{}-{:02}", month.year, month.month);
        let name = t!("report-records-of-month", month = day, count = month.passes);
        row(out, &name, &month.treated.show(units), &t!("report-so-far", so_far = month.so_far.show(units)))?;
    }
    if passes.without_area > 0 {
        row(out, t!("report-records-with-ground-without-an-area"), &passes.without_area.to_string(), "")?;
    }
    writeln!(out)
}

fn amounts(amounts: &Amounts, units: Units) -> String {
    let each: Vec<String> = amounts.each().map(|amount| round(amount, units)).collect();
    both(each)
}

fn products(farm: &Farm, found: &Review, out: &mut String) -> std::fmt::Result {
    let units = farm.units;
    writeln!(out, "{}", t!("report-products"))?;
    for product in &found.products.rows {
        let more = t!(
            "report-on",
            count = product.times,
            treated = product.treated.show(units),
            spent = words::spent(&product.spent, &farm.currency)
        );
        row(out, &product.name, &amounts(&product.amounts, units), &more)?;
    }
    writeln!(out, "{}", t!("report-actives"))?;
    for active in &found.actives.rows {
        let over = active
            .on_farm
            .map_or_else(String::new, |rate| t!("report-over-the-ground-of-the-farm", rate = rate.show(units)));
        row(out, &format!("{}, {}", active.name, active.basis.short()), &active.mass.show(units), &over)?;
        for field in &active.fields {
            let name = if field.field.is_empty() { t!("report-no-field") } else { &field.name };
            let over = field.over_ground.map_or_else(String::new, |rate| rate.show(units));
            row(out, &format!("  {name}"), &field.mass.show(units), &over)?;
        }
    }
    for (name, times) in &found.actives.silent {
        writeln!(out, "{}", t!("report-not-in-it-without-its-active", name = name, count = times))?;
    }
    writeln!(out, "{}", t!("report-adjuvants"))?;
    for class in &found.adjuvants.rows {
        let more = t!(
            "report-on",
            count = class.times,
            treated = class.treated.show(units),
            spent = words::spent(&class.spent, &farm.currency)
        );
        let name = class.class.map_or(t!("report-class-not-typed"), AdjuvantClass::name);
        row(out, name, &amounts(&class.amounts, units), &more)?;
    }
    row(out, t!("report-ground-treated-without-any"), &found.adjuvants.without.show(units), "")?;
    if found.products.rows.iter().any(|product| product.from_shed) {
        writeln!(out, "{}", t!("report-some-records-do-not-say-what"))?;
    }
    writeln!(out)
}

fn groups(found: &Review, out: &mut String) -> std::fmt::Result {
    writeln!(out, "{}", t!("report-resistance-groups"))?;
    for field in &found.resistance.fields {
        writeln!(out, "  {}", field.name)?;
        for group in &field.rows {
            let years: Vec<String> = group.years.iter().map(|(year, times)| format!("{year}: {times}")).collect();
            let name = format!("  {}", capital(&words::group(group.kind, &group.group)));
            let again: Vec<String> = group.repeats.iter().map(words::again).collect();
            row(out, &name, &years.join(", "), &again.join("; "))?;
        }
    }
    for (name, times) in &found.resistance.groupless {
        writeln!(out, "{}", t!("report-in-no-group", name = name, count = times))?;
    }
    writeln!(out)
}

fn per_cent(share: Share) -> String {
    format!("{:+.1} %", share.to_percent())
}

fn planned(found: &Review, units: Units, out: &mut String) -> std::fmt::Result {
    let planned = &found.planned;
    writeln!(out, "{}", t!("report-planned-against-applied"))?;
    for (name, errors) in [
        (t!("report-amounts-over-ground"), &planned.rate),
        (t!("report-ground"), &planned.area),
        (t!("report-spray-volume"), &planned.volume),
    ] {
        if let Some(errors) = errors {
            let ends =
                t!("report-to-in-all", least = per_cent(errors.least), most = per_cent(errors.most), n = errors.n);
            row(out, &t!("report-median-error", name = name), &per_cent(errors.median), &ends)?;
        }
    }
    for worst in &planned.worst {
        let what = t!("report-of", name = worst.name, date = worst.date);
        row(out, &what, &per_cent(worst.error), &worst.product)?;
    }
    if planned.left_told > 0 {
        row(
            out,
            t!("report-left-over"),
            &planned.left.show(units),
            &t!("report-so-many-records", count = planned.left_told),
        )?;
    }
    if planned.without_plan > 0 {
        row(out, t!("report-records-that-keep-no-plan"), &planned.without_plan.to_string(), "")?;
    }
    writeln!(out)
}

fn cost(farm: &Farm, found: &Review, out: &mut String) -> std::fmt::Result {
    let cost = &found.cost;
    writeln!(out, "{}", t!("report-cost-of-the-products"))?;
    let mut line = |name: &str, spent: &Spent, treated: Area| {
        row(out, name, &words::spent(spent, &farm.currency), &per_area(farm, spent, treated))
    };
    line(t!("report-in-all-ac1"), &cost.all.spent, cost.all.treated)?;
    for field in &cost.fields {
        line(if field.of.0.is_empty() { t!("report-no-field") } else { &field.of.1 }, &field.spent, field.treated)?;
    }
    for crop in &cost.crops {
        line(words::crop(&crop.of), &crop.spent, crop.treated)?;
    }
    for kind in &cost.kinds {
        line(words::kind(kind.of), &kind.spent, kind.treated)?;
    }
    for (name, times) in &cost.without_price {
        writeln!(out, "{}", t!("report-no-price-that-fits", name = name, count = times))?;
    }
    writeln!(out)
}

/// "$21.40 an acre treated"; empty without ground, and where nothing has a price.
fn per_area(farm: &Farm, spent: &Spent, treated: Area) -> String {
    let priced = !spent.money.amount().is_zero();
    let count = if farm.units == Units::Metric { treated.to_hectares() } else { treated.to_acres() };
    spent.money.per(count).filter(|_| priced).map_or_else(String::new, |per| {
        let (currency, per) = (&farm.currency, per.show());
        if farm.units == Units::Metric {
            t!("report-a-hectare-treated", currency = currency, per = per)
        } else {
            t!("report-an-acre-treated", currency = currency, per = per)
        }
    })
}

fn work(found: &Review, units: Units, out: &mut String) -> std::fmt::Result {
    writeln!(out, "{}", t!("report-water-and-hours"))?;
    for water in &found.work.waters {
        let of_it = water.water.show(units);
        let more = match water.without_volume {
            0 => t!("report-of-it-water", water = of_it),
            count => t!("report-of-it-water-without-volume", water = of_it, count = count),
        };
        row(out, words::water(&water.name), &water.spray.show(units), &more)?;
    }
    for rig in &found.work.rigs {
        let more = match (rig.area_per_hour().map(|area| area.show(units)), rig.without_times) {
            (None, 0) => String::new(),
            (Some(area), 0) => t!("report-an-hour-start-to-end", area = area),
            (None, count) => t!("report-without-start-and-end", count = count),
            (Some(area), count) => t!("report-an-hour-and-without-start-and-end", area = area, count = count),
        };
        row(out, words::rig(&rig.name), &rig.time.show(units), &more)?;
    }
    writeln!(out)
}

fn ratings(farm: &Farm, all: &All, out: &mut String) -> std::fmt::Result {
    let outcomes = &all.review.outcomes;
    if outcomes.rows.is_empty() && all.trials.is_empty() {
        return Ok(());
    }
    writeln!(out, "{}", t!("report-ratings-in-per-cent"))?;
    for rated in &outcomes.rows {
        let summary = &rated.ratings;
        let ends = summary.interval.map_or_else(String::new, |(low, high)| {
            t!("report-95-interval-to", low = format_args!("{:.1}", low), high = format_args!("{:.1}", high))
        });
        let more = t!("report-median", count = summary.n, median = format_args!("{:.1}", summary.median), ends = ends);
        let what = format!("{}, {}", capital(&words::effect(&rated.effect)), words::band(rated.days));
        writeln!(out, "  {what}")?;
        row(out, &t!("report-text", classes = words::classes(&rated.classes)), &format!("{:.1}", summary.mean), &more)?;
    }
    for (id, judged) in &all.trials {
        let Some(trial) = farm.trials.get(id) else { continue };
        writeln!(out, "{}", t!("report-trial", name = trial.name))?;
        for comparison in &judged.comparisons {
            writeln!(out, "    {}.", words::by_pairs(comparison, &trial.one, &trial.other).text)?;
        }
        for open in &judged.open {
            writeln!(out, "    {open}.")?;
        }
        if let Some(looks) = words::looks(judged.comparisons.len()) {
            writeln!(out, "    {looks}.")?;
        }
    }
    writeln!(out, "  {}\n", words::no_cause())
}
