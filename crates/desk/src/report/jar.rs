//! A jar test in words.

use std::fmt::Write;

use tankard_core::farm::Farm;
use tankard_core::mix::jar::sheet::{JarSheet, sheet};
use tankard_core::mix::jar::{Jar, jar};
use tankard_core::plan::Plan;
use tankard_core::t;

use super::text::finding;

/// The jar test of a plan, as a person reads it in a terminal.
pub fn test(farm: &Farm, plan: &Plan, size: Jar) -> String {
    let mut out = String::new();
    let Some(test) = jar(plan, farm, size) else {
        return t!("report-no-jar-test-the-spray-volume", pass = plan.pass);
    };
    let Some(page) = sheet(farm, &test) else { return out };
    // Writing to a string does not fail.
    let _ = write(&page, &plan.pass, &mut out);
    for found in &test.findings {
        let _ = writeln!(out, "  {}", finding(found));
    }
    let _ = writeln!(out, "  {}", page.limits);
    out
}

fn write(page: &JarSheet, id: &str, out: &mut String) -> std::fmt::Result {
    writeln!(out, "{}", t!("report-jar-test", pass = page.pass, date = page.date, id = id))?;
    for (title, words) in &page.facts {
        writeln!(out, "  {:<20} {words}", title.to_lowercase())?;
    }
    for line in &page.before {
        writeln!(out, "  {line}")?;
    }
    for step in &page.steps {
        let number = step.number.map(|number| number.to_string()).unwrap_or_default();
        writeln!(out, "  {number:>2}  {:<44} {:>22}   {}", step.what, step.amount, step.detail)?;
        if !step.hint.is_empty() {
            writeln!(out, "        {}", step.hint)?;
        }
    }
    for line in &page.after {
        writeln!(out, "  {line}")?;
    }
    writeln!(out, "{}", t!("report-look-after", looks = page.looks.join(", ")))?;
    for (sign, means) in &page.signs {
        writeln!(out, "      {sign:<30} {means}")?;
    }
    for line in page.results.iter().chain(&page.wear).chain(&page.cautions) {
        writeln!(out, "  {line}")?;
    }
    Ok(())
}
