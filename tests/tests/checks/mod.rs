//! The kinds of check, by the name that stands in the tables.

mod guided;
mod planned;
mod quantities;

use crate::Row;

/// What came out of a check.
pub(crate) struct Verdict {
    /// Whether it is what the row expects.
    pub(crate) agrees: bool,
    /// What was found, for the message.
    pub(crate) found: String,
}

/// Runs the check of a row.
pub(crate) fn run(row: &Row) -> Result<Verdict, String> {
    match row.check.as_str() {
        "convert" => quantities::convert(row),
        "equal" => quantities::equal(row),
        "differ" => quantities::differ(row),
        "content" => quantities::content(row),
        "share" => quantities::share(row),
        "rectangle" => quantities::rectangle(row),
        "spread" => quantities::spread(row),
        "time" => quantities::time(row),
        "course" => quantities::course(row),
        "sizes" => quantities::sizes(row),
        "loads" | "active" | "clamp" => planned::loads(row),
        "order" => planned::order(row),
        "fill" => planned::fill(row),
        "hardness" => planned::hardness(row),
        "conditioner" => planned::conditioner(row),
        "guidance" => guided::guided(row),
        "unguided" => guided::unguided(row),
        other => Err(format!("there is no check \"{other}\"")),
    }
}
