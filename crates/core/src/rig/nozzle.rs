//! Nozzles: the sizes of ISO 10625, and the droplet classes of a set by its nozzle maker's table.

use std::sync::LazyLock;

use serde::Deserialize;

use super::flow::Law;
use super::setting::{Between, Classes};
use crate::farm::{ClassAt, NozzleSet, Rated};
use crate::quantity::{AsTyped, Flow, Pressure};

/// A size after ISO 10625. There are two definitions, and they are not the same: scaled to one pressure, the US one is 1.3 %
/// lower on every size. Which of them a nozzle maker means stands in its table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Size {
    /// The number, such as "06".
    pub size: String,
    /// Its colour.
    pub colour: String,
    /// US gallons a minute at 40 psi.
    pub us: Rated,
    /// Litres a minute at 3 bar.
    pub metric: Rated,
    /// Where each of these is printed, or that it is from memory.
    pub source: String,
}

#[derive(Deserialize)]
struct Row {
    size: String,
    colour: String,
    us_flow: AsTyped<Flow>,
    us_at: AsTyped<Pressure>,
    metric_flow: AsTyped<Flow>,
    metric_at: AsTyped<Pressure>,
    source: String,
}

/// The sizes, from small to large.
pub fn sizes() -> &'static [Size] {
    static TABLE: LazyLock<Vec<Size>> = LazyLock::new(|| {
        crate::table::read::<Row>(include_str!("../../../../assets/nozzle-sizes.csv"))
            .unwrap_or_default()
            .into_iter()
            .map(|row| Size {
                size: row.size,
                colour: row.colour,
                us: Rated { flow: row.us_flow, at: row.us_at },
                metric: Rated { flow: row.metric_flow, at: row.metric_at },
                source: row.source,
            })
            .collect()
    });
    &TABLE
}

/// A size by its number; `None` where the table does not have it.
pub fn size(number: &str) -> Option<&'static Size> {
    sizes().iter().find(|size| size.size == number.trim())
}

/// Droplet classes of a set at a pressure: at a listed pressure the class of that line, between two lines the classes of both,
/// outside the listed pressures none. The table holds for water.
pub fn classes(set: &NozzleSet, pressure: Pressure) -> Option<Classes> {
    let at = |line: &ClassAt| line.at.value();
    let is_at = |line: &&ClassAt| !at(line).exceeds(pressure) && !pressure.exceeds(at(line));
    if set.droplets.iter().any(|line| is_at(&line)) {
        return spanning(set.droplets.iter().filter(is_at));
    }
    let below = set.droplets.iter().map(at).filter(|line| *line < pressure).max()?;
    let above = set.droplets.iter().map(at).filter(|line| *line > pressure).min()?;
    spanning(set.droplets.iter().filter(|line| at(line) == below || at(line) == above))
}

/// The first two lines of a droplet table, by pressure, of which the one at more pressure is coarser: of one nozzle more pressure makes
/// finer droplets, so one of them is wrong. `None` where no two lines are. Lines still to type do not count.
pub fn coarser_with_pressure(set: &NozzleSet) -> Option<(&ClassAt, &ClassAt)> {
    let mut lines: Vec<&ClassAt> = set.droplets.iter().filter(|line| !line.at.is_zero()).collect();
    lines.sort_by_key(|line| line.at.value());
    lines.windows(2).find_map(|pair| match pair {
        [low, high] if high.at.exceeds(low.at.value()) && high.class > low.class => Some((*low, *high)),
        _ => None,
    })
}

fn spanning<'a>(lines: impl Iterator<Item = &'a ClassAt>) -> Option<Classes> {
    lines
        .map(|line| Classes::of(line.class))
        .reduce(|a, b| Classes { finest: a.finest.min(b.finest), coarsest: a.coarsest.max(b.coarsest) })
}

/// Pressures of the nozzle maker's table: as typed; an end that is not typed is taken from the droplet table. `None` where an
/// end is known from neither, or the lower lies above the upper.
pub fn range(set: &NozzleSet) -> Option<Between<Pressure>> {
    let listed = || set.droplets.iter().map(|line| line.at.value());
    let least = set.least.as_ref().map(AsTyped::value).or_else(|| listed().min())?;
    let most = set.most.as_ref().map(AsTyped::value).or_else(|| listed().max())?;
    (!least.exceeds(most) && !most.is_zero()).then_some(Between { least, most })
}

/// How far the rating of a set is from the nearer definition of the size typed, as a share of that; `None` where one of the two
/// is not typed or the size is not in the table.
pub(crate) fn off_its_size(set: &NozzleSet) -> Option<(f64, &'static Size)> {
    let (rated, size) = (set.rated.as_ref()?, size(&set.size)?);
    let off = |defined: &Rated| Some((rated.flow.ratio(Law::of(defined)?.flow(rated.at.value()))? - 1.0).abs());
    Some((off(&size.us)?.min(off(&size.metric)?), size))
}

#[cfg(test)]
mod tests {
    use super::{Law, Size, classes, range, sizes};
    use crate::farm::{ClassAt, Droplets, NozzleSet, Rated};
    use crate::quantity::{AsTyped, Pressure};

    fn law(rated: &Rated) -> Law {
        Law::of(rated).unwrap()
    }

    /// Both definitions, by arithmetic on the size number: a tenth of it in gallons, four tenths in litres.
    #[test]
    fn the_table_reads_and_keeps_both_definitions() {
        assert_eq!(sizes().len(), 10);
        for Size { size, us, metric, .. } in sizes() {
            let number: f64 = format!("0.{}", size.strip_prefix('0').unwrap_or(size)).parse().unwrap();
            let number = if size == "10" { 1.0 } else { number };
            assert!((us.flow.to_us_gallons_per_minute() - number).abs() < 1e-9, "{size}");
            assert!((us.at.to_psi() - 40.0).abs() < 1e-9);
            assert!((metric.flow.to_litres_per_minute() - 4.0 * number).abs() < 1e-9, "{size}");
            let apart = law(us).flow(Pressure::from_bar(3.0)).ratio(metric.flow.value()).unwrap() - 1.0;
            assert!((apart + 0.013).abs() < 0.000_1, "{size}: {apart}");
        }
    }

    #[test]
    fn classes_are_read_and_never_stretched() {
        let line = |psi: &str, class| ClassAt { at: AsTyped::parse(psi).unwrap(), class };
        // Out of order, as one may type them.
        let droplets = vec![
            line("60 psi", Droplets::Medium),
            line("30 psi", Droplets::VeryCoarse),
            line("40 psi", Droplets::Coarse),
        ];
        let set = NozzleSet { droplets, ..NozzleSet::default() };
        let at = |psi: f64| classes(&set, Pressure::from_psi(psi)).map(|classes| (classes.finest, classes.coarsest));
        assert_eq!(at(40.0), Some((Droplets::Coarse, Droplets::Coarse)));
        assert_eq!(at(40.0 + 1e-12), Some((Droplets::Coarse, Droplets::Coarse)));
        assert_eq!(at(45.0), Some((Droplets::Medium, Droplets::Coarse)));
        assert_eq!(at(31.0), Some((Droplets::Coarse, Droplets::VeryCoarse)));
        assert_eq!(at(29.9), None);
        assert_eq!(at(60.1), None);
        let range = range(&set).unwrap();
        assert_eq!((range.least, range.most), (Pressure::from_psi(30.0), Pressure::from_psi(60.0)));
    }
}
