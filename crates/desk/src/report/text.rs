//! The plan in words.

use std::fmt::Write;

use tankard_core::farm::Farm;
use tankard_core::finding::Finding;
use tankard_core::language::days::long_date;
use tankard_core::loads::FillStep;
use tankard_core::mix::choice::per_ground;
use tankard_core::plan::{Plan, not_judged};
use tankard_core::plausible::{Offer, either};
use tankard_core::quantity::Quantity;
use tankard_core::t;
use tankard_core::weather::Verdict;

use super::words;

/// The plan of a pass, as a person reads it in a terminal.
pub fn plan(farm: &Farm, plan: &Plan) -> String {
    let mut out = String::new();
    // Writing to a string does not fail.
    let _ = write(farm, plan, &mut out);
    out
}

fn write(farm: &Farm, plan: &Plan, out: &mut String) -> std::fmt::Result {
    let units = farm.units;
    let Some(pass) = farm.passes.get(&plan.pass) else { return Ok(()) };
    writeln!(out, "{} · {}   [{}]", pass.name, long_date(pass.date), plan.pass)?;
    let fields: Vec<String> = plan
        .fields
        .iter()
        .map(|planned| {
            let name = farm.fields.get(&planned.field).map_or(planned.field.as_str(), |field| field.name.as_str());
            format!("{name} {}", planned.area.show(units))
        })
        .collect();
    writeln!(out, "{}", t!("report-fields", fields = fields.join(" + "), area = plan.area.show(units)))?;
    if let Some(carrier) = plan.carrier {
        write!(
            out,
            "{}",
            t!("report-spray", carrier = carrier.show(units), spray_volume = plan.spray_volume.show(units))
        )?;
        if let Some(time) = plan.spray_time {
            write!(out, "{}", t!("report-of-spraying", time = time.show(units)))?;
        }
        writeln!(out)?;
    }
    if let Some(hardness) = plan.water.hardness {
        write!(out, "{}", t!("report-water-hard", name = plan.water.name, hardness = hardness.show(units)))?;
        if let Some(need) = &plan.water.need {
            write!(out, "{}", t!("report-ties-up-of-ammonium-sulfate", most = need.most().show(units)))?;
        }
        writeln!(out)?;
    }
    for line in &plan.lines {
        let cost = line.cost.map(|cost| format!("  {}{}", farm.currency, cost.show())).unwrap_or_default();
        writeln!(
            out,
            "  {:>2}  {:<44} {:>16} {:>26}{cost}",
            line.number,
            line.name,
            line.per_area.show(units),
            line.demand.show(units)
        )?;
    }
    adjuvants(farm, plan, out)?;
    nozzles(farm, plan, out)?;
    for load in &plan.loads {
        writeln!(
            out,
            "{}",
            t!(
                "report-load-of-on",
                number = load.number,
                loads = plan.loads.len(),
                volume = load.volume.show(units),
                area = load.area.show(units)
            )
        )?;
        for step in &load.steps {
            match step {
                FillStep::InTank { to } => {
                    writeln!(out, "{}", t!("report-of-this-mix-are-in-the", to = to.show(units)))?;
                }
                FillStep::Water { to } => {
                    writeln!(out, "{}", t!("report-to", carrier_kind = pass.carrier_kind.name(), to = to.show(units)))?;
                }
                FillStep::Product { item, .. } => {
                    if let Some(item) = load.items.get(*item) {
                        let name = farm
                            .products
                            .get(&item.product)
                            .map_or(item.product.as_str(), |product| product.name.as_str());
                        let containers = if item.measured.containers.is_empty() {
                            String::new()
                        } else {
                            format!("   {}", item.measured.containers)
                        };
                        writeln!(out, "     {:>2} {:<44} {:>26}{containers}", item.number, name, item.measured.text)?;
                    }
                }
            }
        }
    }
    time(farm, plan, out)?;
    for finding in &plan.findings {
        writeln!(out, "  {}", self::finding(finding))?;
    }
    writeln!(out, "{}", t!("report-not-judged-302", not_judged = not_judged().join("; ")))?;
    Ok(())
}

/// A finding on one line.
pub fn finding(finding: &Finding) -> String {
    let hint = if finding.hint.is_empty() { String::new() } else { format!(" {}", finding.hint) };
    let offers: Vec<String> = finding.offers.iter().map(Offer::text).collect();
    let meant = if offers.is_empty() { String::new() } else { t!("report-perhaps-meant", offers = either(&offers)) };
    format!("{:<5} {}.{meant}{hint} ({})", finding.level.word(), finding.text.trim_end_matches('.'), finding.basis)
}

/// The sets of adjuvants on offer, each with what sets it behind the one before.
fn adjuvants(farm: &Farm, plan: &Plan, out: &mut String) -> std::fmt::Result {
    if plan.adjuvants.choices.is_empty() {
        return Ok(());
    }
    writeln!(out, "{}", t!("report-which-adjuvant-suits-every-partner"))?;
    for choice in &plan.adjuvants.choices {
        let members: Vec<String> = choice
            .members
            .iter()
            .map(|member| {
                let rate = member.rate.as_ref().map_or(t!("report-rate-not-known"), |rate| rate.text());
                let buy = if member.product.is_none() { t!("report-to-buy-a40") } else { "" };
                format!("{} {rate}{buy}", member.name)
            })
            .collect();
        let members = if members.is_empty() { t!("report-no-adjuvant").to_owned() } else { members.join(" + ") };
        let cost = choice.cost_per_hectare.map(|cost| per_ground(cost, farm.units, &farm.currency));
        let mark = if choice.current { t!("report-in-the-mix") } else { "" };
        writeln!(out, "  {:>2}  {members}  {}{mark}", choice.rank, cost.unwrap_or_default())?;
        if choice.behind.is_empty() {
            for verdict in &choice.verdicts {
                writeln!(out, "      {}", verdict.sentence())?;
            }
        } else {
            writeln!(out, "      {}", choice.behind)?;
        }
    }
    Ok(())
}

/// The setting of the pass, and the nozzle sets of the rig in order.
fn nozzles(farm: &Farm, plan: &Plan, out: &mut String) -> std::fmt::Result {
    let units = farm.units;
    if let Some(setting) = &plan.setting {
        writeln!(out, "{}", t!("report-setting-at", name = setting.name, figures = words::figures(setting, units)))?;
        writeln!(out, "           {}", words::sentence(setting, units))?;
    }
    if !plan.sets.is_empty() {
        writeln!(out, "{}", t!("report-which-nozzles-do-this-pass-best"))?;
    }
    for (at, ranked) in plan.sets.iter().enumerate() {
        let mark = if ranked.chosen { t!("report-in-this-pass") } else { "" };
        writeln!(out, "  {:>2}  {}  {}{mark}", at + 1, ranked.setting.name, words::fit_words(ranked, units))?;
        for (reason, basis) in &ranked.reasons {
            writeln!(out, "      {} ({basis})", reason.trim_end_matches('.'))?;
        }
    }
    Ok(())
}

/// The time it takes, what stays in the rig, and the hours of the day.
fn time(farm: &Farm, plan: &Plan, out: &mut String) -> std::fmt::Result {
    let units = farm.units;
    if let Some(work) = &plan.work {
        let figures: Vec<String> =
            words::work_figures(work, units).into_iter().map(|(label, value)| format!("{label} {value}")).collect();
        writeln!(out, "{}", t!("report-time", figures = figures.join(", ")))?;
        if !work.lacks.is_empty() {
            writeln!(out, "{}", t!("report-not-in-it-3ae", lacks = work.lacks.join("; ")))?;
        }
    }
    if let Some(rinse) = &plan.rinse {
        let ways: Vec<String> = words::rinse_ways(rinse, units)
            .into_iter()
            .map(|(way, sources)| words::rinse_way(way, &sources, units))
            .collect();
        writeln!(
            out,
            "{}",
            t!("report-rinse-stay-in-the-rig", residual = rinse.residual.show(units), ways = ways.join("; "))
        )?;
        if let Some(ground) = words::last_ground(farm, plan, rinse) {
            writeln!(out, "           {ground}")?;
        }
        for (at, step) in rinse.steps.iter().enumerate() {
            writeln!(out, "  {:>9}  {} ({})", at + 1, step.what.trim_end_matches('.'), step.basis)?;
        }
    }
    if !plan.hours.hours.is_empty() {
        writeln!(out, "{}", t!("report-hours", answer = words::answer(&plan.hours, units)))?;
        for verdict in [Verdict::Allowed, Verdict::Doubtful, Verdict::Forbidden] {
            let spans = words::spans_of(&plan.hours, verdict);
            if !spans.is_empty() {
                let binds = words::binding(&plan.hours, verdict);
                let why = if binds.is_empty() { String::new() } else { format!(": {}", binds.join("; ")) };
                writeln!(out, "           {} {}{why}", verdict.word(), spans.join(", "))?;
            }
        }
    }
    Ok(())
}
