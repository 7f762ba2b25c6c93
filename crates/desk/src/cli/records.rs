//! Records to a file, and from one into a copy of the farm.

use std::path::{Path, PathBuf};

use clap::Args;
use jiff::civil::Date;
use tankard_core::farm::{Farm, Record};
use tankard_core::progress::untold;
use tankard_core::t;
use tankard_file::store::{self, Report};
use tankard_file::{records_csv, records_import, records_json};

use super::{NOTHING, STOP, farm_of, must_be_new, problem_with, say_written, tell, today};

/// What is asked of the records.
#[derive(Debug, Args)]
#[command(group = clap::ArgGroup::new("way").required(true).multiple(true).args(["csv", "json", "import"]))]
pub(super) struct Ask {
    /// The farm
    file: PathBuf,
    /// Where to write them as CSV
    #[arg(long)]
    csv: Option<PathBuf>,
    /// Where to write them as JSON
    #[arg(long)]
    json: Option<PathBuf>,
    /// Only those of this year
    #[arg(long, conflicts_with = "import", value_parser = super::year)]
    season: Option<i16>,
    /// A CSV with records: an export, or a spreadsheet whose headings say what its columns hold
    #[arg(long, requires = "out", conflicts_with_all = ["csv", "json"])]
    import: Option<PathBuf>,
    /// Where to write the farm with the records in it; a file that is there already is left alone
    #[arg(long, requires = "import")]
    out: Option<PathBuf>,
}

/// Does it.
pub(super) fn ask(ask: &Ask) -> Result<u8, String> {
    let farm = farm_of(&ask.file)?;
    if let (Some(from), Some(out)) = (&ask.import, &ask.out) {
        return import(farm, from, out);
    }
    export(&farm, ask)
}

fn export(farm: &Farm, ask: &Ask) -> Result<u8, String> {
    let of_season = |record: &Record| ask.season.is_none_or(|season| record.date.year() == season);
    let chosen = |id: &str| farm.records.get(id).is_some_and(of_season);
    let count = farm.records.values().filter(|record| of_season(record)).count();
    if count == 0 {
        let nothing = || t!("cli-nothing-recorded").to_owned();
        tell(ask.season.map_or_else(nothing, |season| t!("cli-nothing-recorded-in", season = season)));
        return Ok(NOTHING);
    }
    let year = |season: i16| Date::new(season, 1, 1).ok().zip(Date::new(season, 12, 31).ok());
    if let Some(path) = &ask.csv {
        let text = records_csv::write(farm, chosen).map_err(|error| error.to_string())?;
        store::put_report(path, text.as_bytes(), Report::Csv).map_err(|error| error.to_string())?;
        say_written(&t!("cli-records-written", count = count, path = path.display()))?;
    }
    if let Some(path) = &ask.json {
        let text = records_json::write(farm, chosen, ask.season.and_then(year), today(farm))
            .map_err(|error| error.to_string())?;
        store::put_report(path, text.as_bytes(), Report::Json).map_err(|error| error.to_string())?;
        say_written(&t!("cli-records-written", count = count, path = path.display()))?;
    }
    Ok(0)
}

fn import(mut farm: Farm, from: &Path, out: &Path) -> Result<u8, String> {
    must_be_new(out)?;
    let (entered, refused, notes, left) = if records_csv::is_own_file(from) {
        let reading = records_csv::open(from, &untold).map_err(|error| problem_with(from, &error))?;
        let done = records_csv::enter(&mut farm, &reading.records, false);
        for id in &done.others {
            tell(t!("cli-left-out-since-another", id = id));
        }
        if done.same > 0 {
            tell(t!("cli-records-there-already", count = done.same));
        }
        (done.entered.len(), reading.refused, reading.notes, done.others.len())
    } else {
        let table = records_import::open(from).map_err(|error| problem_with(from, &error))?;
        let preview = records_import::preview(&table, &records_import::guess(&table), &farm);
        for problem in &preview.to_choose {
            tell(problem);
        }
        (
            records_import::enter(&mut farm, &preview.records).len(),
            preview.refused,
            preview.notes,
            preview.to_choose.len(),
        )
    };
    for refused in &refused {
        tell(t!("cli-line-left-out", line = refused.line, why = refused.why));
    }
    for note in &notes {
        tell(note);
    }
    if entered == 0 {
        tell(t!("cli-no-record-taken"));
        return Ok(STOP);
    }
    store::save(out, &farm, None).map_err(|error| error.to_string())?;
    say_written(&t!("cli-records-taken", count = entered, path = out.display()))?;
    Ok(if refused.is_empty() && left == 0 { 0 } else { NOTHING })
}
