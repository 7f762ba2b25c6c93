//! The amounts of a farm against what people plan with otherwise: a spreadsheet. Each pass is laid out as a careful adviser's sheet
//! with live formulas and reckoned by LibreOffice Calc; one input after another is changed on both sides, every amount is
//! compared, and both are timed.
//!
//! `cargo bench -p tankard-tests --bench spreadsheet` (Debian: libreoffice-calc, python3-uno). The program that starts is not in
//! the times: one office runs throughout, and is spoken to over a pipe.

mod farms;
mod office;
mod sheet;

use std::process::ExitCode;
use std::time::Instant;

use tankard_core::farm::Farm;
use tankard_core::finding::Level;
use tankard_core::plan::{Plan, plan};

use office::Office;
use sheet::{Change, Sheet, Values};

/// How far a figure may lie from the other, as a share of it: what is left is the order in which floats are multiplied.
const NEAR: f64 = 1e-9;
const DEMO: &[u8] = include_bytes!("../../../demo-farm/larkspur-bend.ron");

type Problem = Box<dyn std::error::Error>;

fn main() -> ExitCode {
    // Where tests are listed or run, this is none.
    if std::env::args().any(|argument| argument == "--list" || argument == "--test") {
        return ExitCode::SUCCESS;
    }
    match compare() {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(problem) => {
            println!("nothing was compared: {problem}");
            ExitCode::SUCCESS
        }
    }
}

fn compare() -> Result<bool, Problem> {
    let mut all_agree = true;
    for (name, farm) in [
        ("the demo farm", tankard_file::read(DEMO)?),
        ("30 passes", farms::made(30)?),
        ("120 passes", farms::made(120)?),
    ] {
        all_agree &= of_farm(name, farm)?;
    }
    Ok(all_agree)
}

/// Times of one kind of change.
#[derive(Default)]
struct Times {
    sheet: Vec<f64>,
    pipe: Vec<f64>,
    tankard: Vec<f64>,
}

fn of_farm(name: &str, mut farm: Farm) -> Result<bool, Problem> {
    let mut office = Office::start()?;
    let plans: Vec<Plan> = farm.passes.keys().filter_map(|id| plan(&farm, id)).collect();
    let mut sheets = Vec::new();
    let mut left_out: Vec<&str> = Vec::new();
    for plan in &plans {
        for stretch in plan.sizing.iter().flat_map(|sizing| &sizing.stretches) {
            match Sheet::of(&farm, plan, &stretch.fields, sheets.len()) {
                Some(sheet) => sheets.push(sheet),
                None => left_out.push(&plan.pass),
            }
        }
    }
    office.put(sheets.iter().flat_map(|sheet| sheet.cells.iter().cloned()).collect())?;
    if let Ok(path) = std::env::var("TANKARD_SHEETS") {
        office.save(&format!("{path}/{}.ods", name.replace(' ', "-")))?;
    }
    let (mut figures, mut changes, mut farthest) = (0_usize, 0_usize, 0.0_f64);
    let mut apart: Vec<String> = Vec::new();
    let mut times = Times::default();
    let mut whole = Vec::new();
    // With many passes, each gets a few of its changes.
    let every = if sheets.len() > 50 { 5 } else { 1 };
    for sheet in &sheets {
        for change in sheet.changes.iter().skip(sheet.number % every).step_by(every) {
            let before = change.apply(&mut farm)?;
            let started = Instant::now();
            let planned = plan(&farm, &sheet.pass).ok_or("the pass is gone")?;
            let ours = Values::of_plan(&planned, sheet);
            times.tankard.push(started.elapsed().as_secs_f64());
            let answer = office.change(sheet, change.cell, change.value, false)?;
            let theirs = Values::of_sheet(sheet, &answer.values);
            times.sheet.push(answer.seconds);
            times.pipe.push(answer.pipe);
            for (what, own, other) in ours.beside(&theirs) {
                figures += 1;
                let size = own.abs().max(other.abs());
                let off = if size == 0.0 { 0.0 } else { (own - other).abs() / size };
                farthest = farthest.max(off);
                // What is no number is near nothing.
                if off.is_nan() || off > NEAR {
                    apart.push(format!("{}, {change}: {what} is {own} here and {other} in the sheet", sheet.pass));
                }
            }
            changes += 1;
            if changes % 20 == 1 {
                whole.push(office.change(sheet, change.cell, change.value, true)?.seconds);
            }
            before.undo(&mut farm);
            office.change(sheet, change.cell, change.before, false)?;
        }
    }
    let count = |level| plans.iter().map(|plan| plan.count(level)).sum::<usize>();
    let (sheet, pipe, tankard) = (median(&mut times.sheet), median(&mut times.pipe), median(&mut times.tankard));
    println!("{name}: {} sheets, {changes} changes of one input", sheets.len());
    for pass in left_out {
        println!("  {pass} is left out: a sheet has no place for how it is planned");
    }
    println!("  {figures} figures compared, {} apart, the farthest by {farthest:.1e} of itself", apart.len());
    println!(
        "  a change: {:.2} ms in the sheet ({:.2} ms of it the pipe), {:.2} ms here with all findings: {:.1} times that of the sheet without the pipe",
        sheet * 1e3,
        pipe * 1e3,
        tankard * 1e3,
        tankard / (sheet - pipe)
    );
    println!("  all cells reckoned anew: {:.2} ms in the sheet", median(&mut whole) * 1e3);
    println!(
        "  said beside the amounts, of which a sheet of amounts knows nothing: {} Stops, {} Checks, {} Notes",
        count(Level::Stop),
        count(Level::Check),
        count(Level::Note)
    );
    for line in apart.iter().take(20) {
        println!("  {line}");
    }
    Ok(apart.is_empty() && figures > 0)
}

fn median(times: &mut [f64]) -> f64 {
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap_or(f64::NAN)
}

impl std::fmt::Display for Change {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "{} from {} to {}", self.what, self.before, self.value)
    }
}
