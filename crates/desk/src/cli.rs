//! The command line: the desk, and the plan, the cards and the findings for scripts and for machines without a display.

mod ground;
mod records;
mod words;

use std::io::{ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::{FromArgMatches, Parser, Subcommand, ValueEnum};
use jiff::civil::Date;
use jiff::tz::TimeZoneDatabase;
use tankard_core::day::sheet::sheet;
use tankard_core::day::{DayPlan, plan_day};
use tankard_core::farm::{CardContent, Farm, Id};
use tankard_core::finding::Level;
use tankard_core::language::{Language, speak};
use tankard_core::loads::card::cards;
use tankard_core::mix::jar::Jar;
use tankard_core::plan::{Plan, plan, plan_of};
use tankard_core::season::Log;
use tankard_core::season::review::Choice;
use tankard_core::stock::needs::next_day;
use tankard_core::t;
use tankard_file::forecast_csv::{self, guess, read};
use tankard_file::store::{self, Report};
use tankard_paper::{NOT_ISSUED, Sheet, book};

use crate::command::View;
use crate::{demo, report, views};

/// Plans sprayer work: what goes in the tank, how much, in what order, for which fields. The label and local law govern.
#[derive(Debug, Parser)]
#[command(name = "tankard", version, about, args_conflicts_with_subcommands = true)]
pub struct Args {
    #[command(subcommand)]
    command: Option<Ask>,
    /// The farm to open; without it the desk asks where to begin
    file: Option<PathBuf>,
    #[command(flatten)]
    start: Start,
}

/// How the desk starts.
#[derive(Clone, Debug, Default, clap::Args)]
pub struct Start {
    /// The view to show first
    #[arg(long, value_enum)]
    pub view: Option<View>,
    /// Light or dark
    #[arg(long, value_enum)]
    pub theme: Option<ThemeName>,
    /// The language: en or es
    #[arg(long, value_parser = language)]
    pub language: Option<Language>,
    /// Scale in per cent, 80 to 200
    #[arg(long, value_parser = scale)]
    pub scale: Option<u16>,
    /// Size of the window, such as 1366x768
    #[arg(long, value_parser = window_size)]
    pub size: Option<(u16, u16)>,
    /// Which renderer to try first
    #[arg(long, value_enum)]
    pub renderer: Option<RendererName>,
}

fn language(text: &str) -> Result<Language, String> {
    Language::of_locale(text).ok_or_else(|| {
        let known: Vec<&str> = Language::ALL.iter().map(|language| language.code()).collect();
        t!("cli-not-a-language", known = known.join(", "))
    })
}

/// Themes by name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum ThemeName {
    /// Paper and ink.
    Light,
    /// Lamp light.
    Dark,
}

/// Renderers by name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum RendererName {
    /// OpenGL.
    Glow,
    /// Vulkan, Metal or DirectX, where it is built in.
    Wgpu,
}

/// Jars by name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum JarName {
    /// A US pint, 473 mL.
    Pint,
    /// A US quart, 946 mL.
    Quart,
    /// Half a litre.
    #[value(name = "500ml")]
    HalfLitre,
    /// A litre.
    #[value(name = "1l")]
    Litre,
}

impl From<JarName> for Jar {
    fn from(name: JarName) -> Self {
        match name {
            JarName::Pint => Self::Pint,
            JarName::Quart => Self::Quart,
            JarName::HalfLitre => Self::HalfLitre,
            JarName::Litre => Self::Litre,
        }
    }
}

/// Orders of the record book by name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum BookOrder {
    /// Under the name of the field.
    Field,
    /// As they were sprayed.
    Date,
}

fn day(text: &str) -> Result<Date, String> {
    text.parse().map_err(|_| t!("cli-not-a-day", text = text))
}

fn year(text: &str) -> Result<i16, String> {
    text.parse().map_err(|_| t!("cli-not-a-year", text = text))
}

fn scale(text: &str) -> Result<u16, String> {
    let scale = text.parse::<u16>().ok().filter(|scale| (80..=200).contains(scale));
    scale.ok_or_else(|| t!("cli-not-a-scale", text = text))
}

fn window_size(text: &str) -> Result<(u16, u16), String> {
    let read = |part: &str| part.parse::<u16>().ok().filter(|size| (320..=8000).contains(size));
    text.split_once('x')
        .and_then(|(width, height)| Some((read(width)?, read(height)?)))
        .ok_or_else(|| t!("cli-not-a-size", text = text))
}

#[derive(Debug, Subcommand)]
enum Ask {
    /// Prints the plan with its findings
    Plan {
        /// The farm
        file: PathBuf,
        /// Only this pass
        #[arg(long)]
        pass: Option<String>,
        /// As JSON, in SI units
        #[arg(long)]
        json: bool,
    },
    /// Prints the passes of each day in the order that costs least, rig by rig
    Day {
        /// The farm
        file: PathBuf,
        /// Only this day, such as 2031-06-12
        #[arg(long, value_parser = day)]
        date: Option<Date>,
        /// As JSON
        #[arg(long)]
        json: bool,
    },
    /// Writes load cards as PDF
    Cards {
        /// The farm
        file: PathBuf,
        /// Only this pass
        #[arg(long)]
        pass: Option<String>,
        /// Where to write them
        #[arg(long)]
        out: PathBuf,
    },
    /// Writes the sheet of a day as PDF: what is sprayed when, what goes on the truck, who may enter which field again
    Evening {
        /// The farm
        file: PathBuf,
        /// The day, such as 2031-06-12; the next one with a pass that is not recorded without it
        #[arg(long, value_parser = day)]
        date: Option<Date>,
        /// Where to write it
        #[arg(long)]
        out: PathBuf,
        /// With the load cards of the day behind it
        #[arg(long)]
        with_cards: bool,
    },
    /// Prints the jar test of the planned mix, or writes its sheet as PDF
    Jar {
        /// The farm
        file: PathBuf,
        /// Only this pass
        #[arg(long)]
        pass: Option<String>,
        /// How much finished spray the jar holds; the farm's usual one without it
        #[arg(long, value_enum)]
        jar: Option<JarName>,
        /// Where to write the sheet; needs --pass where the farm has several
        #[arg(long)]
        out: Option<PathBuf>,
    },
    /// Reads an hourly forecast from a CSV into a copy of the farm; exit status 0 written, 2 something must be chosen on the
    /// desk first, 3 unreadable
    Forecast {
        /// The farm
        file: PathBuf,
        /// The CSV, read by the layout that the farm remembers for its header, or by what its headings say
        #[arg(long)]
        from: PathBuf,
        /// Where to write the farm with the forecast in it; a file that is there already is left alone
        #[arg(long)]
        out: PathBuf,
    },
    /// Prints what the passes of a day and all from then on take from the shed, what is short, and what to buy
    Needs {
        /// The farm
        file: PathBuf,
        /// The day, such as 2031-06-12; the next one with passes without it
        #[arg(long, value_parser = day)]
        date: Option<Date>,
        /// As JSON, in SI units
        #[arg(long)]
        json: bool,
    },
    /// Prints what the records of a season come to: ground, products, actives, groups, plan and practice, cost, hours, ratings
    Review {
        /// The farm
        file: PathBuf,
        /// Only this season, a calendar year such as 2031; all of them without it
        #[arg(long, value_parser = year)]
        season: Option<i16>,
        /// As JSON, in SI units and hectares
        #[arg(long)]
        json: bool,
        /// Where to write it as PDF, with charts
        #[arg(long, conflicts_with = "json")]
        out: Option<PathBuf>,
    },
    /// Writes the records as CSV or JSON, or reads records from a CSV into a copy of the farm; exit status 0 done, 1 nothing
    /// recorded or some lines left out, 2 no record taken, 3 unreadable
    Records(records::Ask),
    /// Lists the boundaries that a file holds, with their areas and what was mended; exit status 0 all can be taken, 1 some are
    /// refused, 2 all are, 3 unreadable
    Ground(ground::Look),
    /// Writes the boundaries of the fields as GeoJSON, or a pass with its fields as task data for a terminal; exit status 1 where
    /// there is something to know or nothing to write, 2 where a Stop stands
    Boundaries(ground::Give),
    /// Writes the record book as PDF: every record with all that it holds
    Book {
        /// The farm
        file: PathBuf,
        /// Where to write it
        #[arg(long)]
        out: PathBuf,
        /// In which order records stand
        #[arg(long, value_enum, default_value = "date")]
        by: BookOrder,
        /// Only the records of this year
        #[arg(long, value_parser = year)]
        season: Option<i16>,
        /// Each record on a page of its own
        #[arg(long)]
        one_a_page: bool,
    },
    /// Writes the sheets on applications to be displayed for workers (40 CFR 170.311) as PDF and prints what is missing on them;
    /// exit status 1 where something is
    Workers {
        /// The farm
        file: PathBuf,
        /// Only this record
        #[arg(long, required_unless_present = "season", conflicts_with = "season")]
        record: Option<String>,
        /// The records of this year
        #[arg(long, value_parser = year)]
        season: Option<i16>,
        /// Where to write them
        #[arg(long)]
        out: PathBuf,
    },
    /// Prints all findings, those of the plans and what is open in the records; exit status 0 for none above Note, 1 for Check,
    /// 2 for Stop, 3 for an unreadable file
    Check {
        /// The farm
        file: PathBuf,
        /// The day on which records are looked at, such as 2031-06-12; today without it
        #[arg(long, value_parser = day)]
        date: Option<Date>,
        /// As JSON
        #[arg(long)]
        json: bool,
    },
}

/// Exit status where a file cannot be read or written.
const UNREADABLE: u8 = 3;
/// Exit status where a Stop stands.
const STOP: u8 = 2;
/// Exit status where a Check stands.
const CHECK: u8 = 1;
/// Exit status where there is nothing to write cards of.
const NOTHING: u8 = 1;

/// Exit status where the command line itself is wrong; 2 would read as a Stop. It is `EX_USAGE` of BSD's sysexits.
const USAGE: u8 = 64;

/// Does what the command line asks.
pub fn run() -> ExitCode {
    let (language, asked) = words::take_language(std::env::args_os());
    speak(language.unwrap_or_else(crate::app::system_language));
    let args = match words::command().try_get_matches_from(asked).and_then(|found| Args::from_arg_matches(&found)) {
        Ok(args) => args,
        Err(error) => {
            // Help and the version come this way too.
            words::complain(&error);
            return ExitCode::from(if error.use_stderr() { USAGE } else { 0 });
        }
    };
    let start = Start { language: language.or(args.start.language), ..args.start };
    let status = match args.command {
        None => return open_desk(args.file.as_deref(), &start),
        Some(Ask::Plan { file, pass, json }) => ask_plan(&file, pass.as_deref(), json),
        Some(Ask::Day { file, date, json }) => ask_day(&file, date, json),
        Some(Ask::Cards { file, pass, out }) => ask_cards(&file, pass.as_deref(), &out),
        Some(Ask::Evening { file, date, out, with_cards }) => ask_evening(&file, date, &out, with_cards),
        Some(Ask::Jar { file, pass, jar, out }) => ask_jar(&file, pass.as_deref(), jar, out.as_deref()),
        Some(Ask::Forecast { file, from, out }) => ask_forecast(&file, &from, &out),
        Some(Ask::Needs { file, date, json }) => ask_needs(&file, date, json),
        Some(Ask::Review { file, season, json, out: None }) => ask_review(&file, season, json),
        Some(Ask::Review { file, season, out: Some(out), .. }) => write_review(&file, season, &out),
        Some(Ask::Records(ask)) => records::ask(&ask),
        Some(Ask::Ground(ask)) => ground::look(&ask),
        Some(Ask::Boundaries(ask)) => ground::give(&ask),
        Some(Ask::Book { file, out, by, season, one_a_page }) => {
            let by = if by == BookOrder::Field { book::By::Field } else { book::By::Date };
            ask_book(&file, &out, book::Options { by, one_a_page }, season)
        }
        Some(Ask::Workers { file, record, season, out }) => ask_workers(&file, record, season, &out),
        Some(Ask::Check { file, date, json }) => ask_check(&file, date, json),
    };
    match status {
        Ok(status) => ExitCode::from(status),
        Err(message) => {
            tell(message);
            ExitCode::from(UNREADABLE)
        }
    }
}

/// Prints to the terminal; a reader that closed its end is no fault, a full disk is.
fn say(text: &str) -> Result<(), String> {
    let mut out = std::io::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() != ErrorKind::BrokenPipe => {
            Err(t!("cli-the-answer-could-not-be-written", error = error))
        }
        _ => Ok(()),
    }
}

/// Says what was written where.
fn say_written(what: &str) -> Result<(), String> {
    say(&format!("{what}\n"))
}

/// Tells whoever sits there, beside the answer.
fn tell(what: impl std::fmt::Display) {
    eprintln!("tankard: {what}");
}

/// What is there is not written over.
fn must_be_new(out: &Path) -> Result<(), String> {
    if out.exists() { Err(t!("cli-file-is-there", path = out.display())) } else { Ok(()) }
}

/// What is wrong with a file, and which one.
fn problem_with(file: &Path, problem: &dyn std::fmt::Display) -> String {
    t!("cli-problem-with-file", problem = problem, path = file.display())
}

fn farm_of(file: &Path) -> Result<Farm, String> {
    store::open(file).map(|(farm, _)| farm).map_err(|error| error.to_string())
}

fn plans_of_day(farm: &Farm, day: Date) -> Vec<Plan> {
    let log = Log::of(farm);
    let of_day = farm.passes.iter().filter(|(_, pass)| pass.date == day);
    of_day.filter_map(|(id, _)| plan_of(farm, &log, id)).collect()
}

/// The day by the machine's clock, in the zone of the farm.
fn today(farm: &Farm) -> Date {
    crate::app::machine_clock(farm.place.as_ref().map_or("", |place| place.zone.trim())).date()
}

fn plans_of(farm: &Farm, pass: Option<&str>) -> Result<Vec<Plan>, String> {
    let Some(id) = pass else {
        let log = Log::of(farm);
        return Ok(farm.passes.keys().filter_map(|id| plan_of(farm, &log, id)).collect());
    };
    plan(farm, id).map(|plan| vec![plan]).ok_or_else(|| {
        let known: Vec<&str> = farm.passes.keys().map(String::as_str).collect();
        if known.is_empty() {
            t!("cli-no-such-pass-nor-another", id = id)
        } else {
            t!("cli-no-such-pass", id = id, known = known.join(", "))
        }
    })
}

fn ask_plan(file: &Path, pass: Option<&str>, json: bool) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let plans = plans_of(&farm, pass)?;
    if json {
        say(&format!("{:#}\n", report::json::plans(&farm, &plans)))?;
    } else {
        say(&plans_in_words(&farm, &plans))?;
    }
    Ok(0)
}

fn ask_day(file: &Path, date: Option<Date>, json: bool) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let mut dates: Vec<Date> = farm.passes.values().map(|pass| pass.date).collect();
    dates.sort_unstable();
    dates.dedup();
    dates.retain(|day| date.is_none_or(|date| *day == date));
    let days: Vec<DayPlan> = dates
        .into_iter()
        .map(|date| {
            let plans = plans_of_day(&farm, date);
            plan_day(&farm, date, &plans.iter().collect::<Vec<_>>())
        })
        .collect();
    if json {
        say(&format!("{:#}\n", report::day::json(&farm, &days)))?;
    } else if days.is_empty() {
        let none = || t!("cli-no-pass-is-planned").to_owned();
        say(&format!("{}\n", date.map_or_else(none, |date| t!("cli-no-pass-is-planned-on", date = date))))?;
    } else {
        let days: Vec<String> = days.iter().map(|day| report::day::day(&farm, day)).collect();
        say(&days.join("\n"))?;
    }
    Ok(0)
}

fn plans_in_words(farm: &Farm, plans: &[Plan]) -> String {
    let mut text = format!("{}\n\n", farm.name);
    if plans.is_empty() {
        text.push_str(t!("cli-no-pass-is-planned"));
        text.push('\n');
    }
    for plan in plans {
        text.push_str(&report::text::plan(farm, plan));
        text.push('\n');
    }
    text.push_str(t!("cli-the-label-and-local-law-govern"));
    text.push('\n');
    text
}

fn ask_cards(file: &Path, pass: Option<&str>, out: &Path) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let plans = plans_of(&farm, pass)?;
    write_cards(&farm, &plans, out)
}

/// Writes the cards of all plans without a Stop; names those with one.
fn write_cards(farm: &Farm, plans: &[Plan], out: &Path) -> Result<u8, String> {
    if plans.is_empty() {
        tell(t!("cli-no-card-without-a-pass"));
        return Ok(NOTHING);
    }
    let contents = cards_of(farm, plans);
    if contents.is_empty() {
        tell(t!("cli-no-card"));
        return Ok(STOP);
    }
    let pdf = tankard_paper::pdf(&sheets_of(&contents)).map_err(|error| error.to_string())?;
    store::put_report(out, &pdf, Report::Pdf).map_err(|error| error.to_string())?;
    say_written(&t!("cli-cards-written", count = contents.len(), path = out.display()))?;
    Ok(0)
}

/// What stands on the cards of all plans without a Stop; names those with one.
fn cards_of<'a>(farm: &Farm, plans: impl IntoIterator<Item = &'a Plan>) -> Vec<CardContent> {
    let mut contents = Vec::new();
    for plan in plans {
        if plan.level() == Some(Level::Stop) {
            tell(t!("cli-no-cards-for", pass = plan.pass, count = plan.count(Level::Stop)));
            for finding in plan.findings.iter().filter(|finding| finding.level == Level::Stop) {
                eprintln!("  {}", report::text::finding(finding));
            }
        } else {
            contents.extend(cards(farm, plan));
        }
    }
    contents
}

/// Cards as they are printed from the command line, which issues none.
fn sheets_of(contents: &[CardContent]) -> Vec<Sheet<'_>> {
    contents.iter().map(|content| Sheet { number: NOT_ISSUED, issued: None, reprint: None, content }).collect()
}

fn ask_evening(file: &Path, date: Option<Date>, out: &Path, with_cards: bool) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let Some(day) = date.or_else(|| next_day(&farm, today(&farm))) else {
        tell(t!("cli-no-pass-from", today = today(&farm)));
        return Ok(NOTHING);
    };
    let plans = plans_of_day(&farm, day);
    let plans: Vec<&Plan> = plans.iter().collect();
    let sheet = sheet(&farm, day, &plans, &plan_day(&farm, day, &plans).slots().collect::<Vec<_>>());
    if sheet.is_empty() {
        tell(t!("cli-no-sheet", day = day));
        return Ok(NOTHING);
    }
    let to_spray = plans.into_iter().filter(|plan| !farm.is_recorded(&plan.pass));
    let cards = if with_cards { cards_of(&farm, to_spray) } else { Vec::new() };
    let pdf = tankard_paper::evening::pdf(&sheet, &sheets_of(&cards)).map_err(|error| error.to_string())?;
    store::put_report(out, &pdf, Report::Pdf).map_err(|error| error.to_string())?;
    say_written(&if with_cards {
        t!("cli-sheet-with-cards-written", day = day, count = cards.len(), path = out.display())
    } else {
        t!("cli-sheet-written", day = day, path = out.display())
    })?;
    Ok(if with_cards && cards.is_empty() { STOP } else { 0 })
}

/// The records of a year, or all.
fn records_of(farm: &Farm, season: Option<i16>) -> Vec<Id> {
    let of_year = farm.records.iter().filter(|(_, record)| season.is_none_or(|year| record.date.year() == year));
    of_year.map(|(id, _)| id.clone()).collect()
}

fn ask_book(file: &Path, out: &Path, options: book::Options, season: Option<i16>) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let records = records_of(&farm, season);
    if records.is_empty() {
        tell(t!("cli-no-record-to-print"));
        return Ok(NOTHING);
    }
    let pdf = book::pdf(&farm, &records, options, today(&farm)).map_err(|error| error.to_string())?;
    store::put_report(out, &pdf, Report::Pdf).map_err(|error| error.to_string())?;
    say_written(&t!("cli-records-written", count = records.len(), path = out.display()))?;
    Ok(0)
}

fn ask_workers(file: &Path, record: Option<String>, season: Option<i16>, out: &Path) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let records = record.map_or_else(|| records_of(&farm, season), |id| vec![id]);
    if records.is_empty() {
        tell(t!("cli-no-record-to-print"));
        return Ok(NOTHING);
    }
    let (pdf, findings) =
        tankard_paper::worker_protection::pdf(&farm, &records, today(&farm)).map_err(|error| error.to_string())?;
    store::put_report(out, &pdf, Report::Pdf).map_err(|error| error.to_string())?;
    say_written(&t!("cli-sheets-written", count = records.len(), path = out.display()))?;
    for finding in &findings {
        say(&format!("{}\n", report::text::finding(finding)))?;
    }
    Ok(if findings.iter().any(|finding| finding.level > Level::Note) { CHECK } else { 0 })
}

fn ask_jar(file: &Path, pass: Option<&str>, jar: Option<JarName>, out: Option<&Path>) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let plans = plans_of(&farm, pass)?;
    let size = jar.map_or_else(|| Jar::usual(farm.units), Jar::from);
    if plans.is_empty() {
        tell(t!("cli-nothing-to-test"));
        return Ok(NOTHING);
    }
    let Some(out) = out else {
        let tests: Vec<String> = plans.iter().map(|plan| report::jar::test(&farm, plan, size)).collect();
        say(&tests.join("\n"))?;
        return Ok(0);
    };
    let [plan] = plans.as_slice() else {
        let known: Vec<&str> = plans.iter().map(|plan| plan.pass.as_str()).collect();
        tell(t!("cli-a-sheet-is-of-one-pass", known = known.join(", ")));
        return Ok(USAGE);
    };
    match views::tank_loads::jar::pdf(&farm, plan, size) {
        Ok(pdf) => {
            store::put_report(out, &pdf, Report::Pdf).map_err(|error| error.to_string())?;
            say_written(&t!("cli-jar-test-written", path = out.display()))?;
            Ok(0)
        }
        Err(problem) => {
            tell(t!("cli-no-jar-test", pass = plan.pass, problem = problem));
            Ok(STOP)
        }
    }
}

fn ask_forecast(file: &Path, from: &Path, out: &Path) -> Result<u8, String> {
    let mut farm = farm_of(file)?;
    must_be_new(out)?;
    let table = forecast_csv::open(from).map_err(|error| problem_with(from, &error))?;
    let layout = guess(&table, &farm.forecast.layouts);
    let zone = farm.place.as_ref().map_or("", |place| place.zone.trim()).to_owned();
    let reading = read(&table, &layout, TimeZoneDatabase::bundled().get(&zone).ok().as_ref());
    for refused in &reading.refused {
        tell(t!("cli-line-left-out", line = refused.line, why = refused.why));
    }
    for problem in reading.to_choose.iter().chain(&reading.notes) {
        tell(problem);
    }
    if reading.hours.is_empty() {
        tell(t!("cli-no-hour-taken"));
        return Ok(STOP);
    }
    let (count, now) = (reading.hours.len(), crate::app::machine_clock(&zone));
    let source = from.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    farm.forecast.take(reading.hours, &source, now, layout);
    store::save(out, &farm, None).map_err(|error| error.to_string())?;
    say_written(&t!("cli-hours-taken", count = count, path = out.display()))?;
    Ok(0)
}

fn ask_needs(file: &Path, date: Option<Date>, json: bool) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let day = date.unwrap_or_else(|| {
        let today = today(&farm);
        next_day(&farm, today).unwrap_or(today)
    });
    let answer =
        if json { format!("{:#}\n", report::needs::json(&farm, day)) } else { report::needs::text(&farm, day) };
    say(&answer)?;
    Ok(0)
}

fn ask_review(file: &Path, season: Option<i16>, json: bool) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let answer =
        if json { format!("{:#}\n", report::review::json(&farm, season)) } else { report::review::text(&farm, season) };
    say(&answer)?;
    Ok(0)
}

fn write_review(file: &Path, season: Option<i16>, out: &Path) -> Result<u8, String> {
    let farm = farm_of(file)?;
    if !farm.records.values().any(|record| season.is_none_or(|year| record.date.year() == year)) {
        let none = || t!("cli-no-review-at-all").to_owned();
        tell(season.map_or_else(none, |year| t!("cli-no-review", year = year)));
        return Ok(NOTHING);
    }
    let choice = season.map_or_else(Choice::all, Choice::season);
    let pdf = tankard_paper::review::pdf(&farm, &choice, today(&farm)).map_err(|error| error.to_string())?;
    store::put_report(out, &pdf, Report::Pdf).map_err(|error| error.to_string())?;
    let path = out.display();
    let of_all = || t!("cli-review-of-all-written", path = path);
    say_written(&season.map_or_else(of_all, |year| t!("cli-review-written", year = year, path = path)))?;
    Ok(0)
}

fn ask_check(file: &Path, date: Option<Date>, json: bool) -> Result<u8, String> {
    let farm = farm_of(file)?;
    let plans = plans_of(&farm, None)?;
    let today = date.unwrap_or_else(|| today(&farm));
    let of_records = report::check::of_records(&farm, today);
    let of_typed = report::check::of_typed(&farm, today, &plans);
    let beside = of_typed.iter().chain(&of_records).map(|(_, finding)| finding.level);
    let worst = plans.iter().filter_map(Plan::level).chain(beside).max();
    say(&if json {
        format!("{:#}\n", report::check::json(&farm, today, &plans, &of_records, &of_typed))
    } else {
        report::check::text(&plans, &of_records, &of_typed)
    })?;
    Ok(match worst {
        Some(Level::Stop) => STOP,
        Some(Level::Check) => CHECK,
        Some(Level::Note) | None => 0,
    })
}

/// Whether a window can be opened at all.
fn has_display() -> bool {
    if cfg!(target_os = "linux") {
        ["DISPLAY", "WAYLAND_DISPLAY"].iter().any(|name| std::env::var_os(name).is_some_and(|value| !value.is_empty()))
    } else {
        true
    }
}

fn open_desk(file: Option<&Path>, start: &Start) -> ExitCode {
    if has_display() {
        match crate::app::open(file, start) {
            Ok(()) => return ExitCode::SUCCESS,
            Err(problem) => tell(t!("cli-window-could-not-be-opened", problem = problem)),
        }
    } else {
        tell(t!("cli-no-display"));
    }
    match without_display(file) {
        Ok(status) => ExitCode::from(status),
        Err(message) => {
            tell(message);
            ExitCode::from(UNREADABLE)
        }
    }
}

/// The main job without a window: the plan in words, and its cards beside the farm or in the working folder.
fn without_display(file: Option<&Path>) -> Result<u8, String> {
    let (farm, out) = match file {
        Some(file) => (farm_of(file)?, file.with_extension("cards.pdf")),
        None => (demo::farm().map_err(|error| error.to_string())?, PathBuf::from("demo-farm-cards.pdf")),
    };
    let plans = plans_of(&farm, None)?;
    say(&plans_in_words(&farm, &plans))?;
    write_cards(&farm, &plans, &out)
}
