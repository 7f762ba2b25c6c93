//! The kinds of check, by the name that stands in the tables.

mod calibrations;
mod guided;
mod jar;
mod nozzles;
mod planned;
mod quantities;
mod shopping;
mod waters;
mod weathers;

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
        "jar" => jar::jar(row),
        "spoons" => jar::spoons(row),
        "order" => planned::order(row),
        "fill" => planned::fill(row),
        "guidance" => guided::guided(row),
        "unguided" => guided::unguided(row),
        "acre_course" => calibrations::acre(row),
        "calibrated" => calibrations::calibrated(row),
        "timed" => calibrations::timed(row),
        "hourly" => calibrations::hourly(row),
        "rinse" => calibrations::rinse(row),
        "rinses" => calibrations::rinses(row),
        "rinse_way" => calibrations::rinse_way(row),
        "banded" => calibrations::banded(row),
        "hardness" => waters::hardness(row),
        "conditioner" => waters::conditioner(row),
        "class" => waters::class_of(row),
        "range" => waters::range(row),
        "solution" => waters::solution(row),
        "load" => waters::load(row),
        "ions" => waters::ions(row),
        "limit" => waters::limit(row),
        "nozzle-flow" => nozzles::needed(row),
        "nozzle-volume" => nozzles::volume(row),
        "nozzle-speed" => nozzles::speed(row),
        "nozzle-law" => nozzles::at_pressure(row),
        "nozzle-pressure" => nozzles::pressure(row),
        "nozzle-size" => nozzles::size_flow(row),
        "nozzle-colour" => nozzles::colour(row),
        "nozzle-apart" => nozzles::apart(row),
        "nozzle-density" => nozzles::carrier_factor(row),
        "nozzle-band" => nozzles::band(row),
        "wet_bulb" => weathers::wet_bulb(row),
        "stull" => weathers::stull(row),
        "delta_t" => weathers::delta_t(row),
        "delta_t_side" => weathers::side(row),
        "bulbs" => weathers::bulbs(row),
        "dew_point" => weathers::dew_point(row),
        "height" => weathers::height(row),
        "sun" => weathers::sun(row),
        "shopping" => shopping::shopping(row),
        other => Err(format!("there is no check \"{other}\"")),
    }
}
