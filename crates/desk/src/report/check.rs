//! All findings of a farm: those of its plans, and what is open in its records.

use jiff::civil::Date;
use serde_json::{Value, json};
use tankard_core::farm::Farm;
use tankard_core::finding::Finding;
use tankard_core::plan::{Plan, not_judged};
use tankard_core::plausible;
use tankard_core::season::profile::{judge_farm, missing, not_the_law};
use tankard_core::season::seal;
use tankard_core::t;

/// What is open in the records on a day, the newest record first, each with the record or "records"; before it what is the matter
/// with the profiles themselves.
pub fn of_records(farm: &Farm, today: Date) -> Vec<(String, Finding)> {
    let mut records: Vec<_> = farm.records.iter().collect();
    records.sort_by_key(|(_, record)| std::cmp::Reverse(record.date));
    let of_farm = judge_farm(farm).into_iter().map(|finding| ("records".to_owned(), finding));
    let seals = seal::findings(farm).into_iter().map(|finding| (finding.about.to_string(), finding));
    let open = records.into_iter().flat_map(|(id, record)| {
        missing(farm, id, record, today).into_iter().map(move |finding| (id.clone(), finding))
    });
    of_farm.chain(seals).chain(open).collect()
}

/// What may be typed wrongly in the shed, in Fields, in the records and of the place, and is not said of a plan, each with what it speaks of.
pub fn of_typed(farm: &Farm, today: Date, plans: &[Plan]) -> Vec<(String, Finding)> {
    let mut found = plausible::of_farm(farm, today);
    for (id, record) in &farm.records {
        plausible::of_record(farm, id, record, today, &mut found);
    }
    let is_said = |finding: &Finding| {
        plans.iter().flat_map(|plan| &plan.findings).any(|said| said == finding || said.offers == finding.offers)
    };
    found.into_iter().filter(|finding| !is_said(finding)).map(|finding| (finding.about.to_string(), finding)).collect()
}

/// In words, one finding a line.
pub fn text(plans: &[Plan], of_records: &[(String, Finding)], of_typed: &[(String, Finding)]) -> String {
    let of_plans = plans.iter().flat_map(|plan| plan.findings.iter().map(|finding| (&plan.pass, finding)));
    let of_records = of_typed.iter().chain(of_records).map(|(of, finding)| (of, finding));
    let mut lines: Vec<String> =
        of_plans.chain(of_records).map(|(of, finding)| format!("{of}: {}", super::text::finding(finding))).collect();
    lines.push(t!("report-not-judged", not_judged = not_judged().join("; ")));
    lines.push(not_the_law().to_owned());
    lines.join("\n") + "\n"
}

/// As JSON. Keys are only added, never renamed.
pub fn json(
    farm: &Farm,
    today: Date,
    plans: &[Plan],
    of_records: &[(String, Finding)],
    of_typed: &[(String, Finding)],
) -> Value {
    let of_plan = |plan: &Plan| {
        json!({
            "id": plan.pass,
            "findings": plan.findings.iter().map(super::json::finding).collect::<Vec<_>>(),
        })
    };
    json!({
        "format": 1,
        "farm": farm.name,
        "date": today.to_string(),
        "passes": plans.iter().map(of_plan).collect::<Vec<_>>(),
        "typed": of_typed.iter().map(|(_, finding)| super::json::finding(finding)).collect::<Vec<_>>(),
        "records": of_records.iter().map(|(_, finding)| super::json::finding(finding)).collect::<Vec<_>>(),
        "not_judged": not_judged(),
        "not_the_law": not_the_law(),
    })
}
