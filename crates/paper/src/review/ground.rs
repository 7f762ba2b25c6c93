//! Ground over time, planned against applied, weather, water and hours.

use std::cmp::Ordering;

use tankard_core::language::days::short_date;
use tankard_core::progress::{Cancelled, Tell};
use tankard_core::quantity::number::show;
use tankard_core::season::review::figures::{error, whole};
use tankard_core::season::review::words::{bar, distinct, month, month_names, rig, water};
use tankard_core::season::review::{BARS, Errors, Month, Passes, Planned, remarks, weather as judged};
use tankard_core::t;

use super::content::Shown;
use super::parts::{Line, Part, Post, Row, Tick, figure, notes, part, say, step, table, words};

/// How many lines a chart has at most: more could not be told apart.
const LINES: usize = 12;

pub(super) fn overview(shown: &Shown<'_>) -> Vec<Part> {
    let (passes, figures) = (&shown.review.passes, shown.figures);
    let in_all = t!("paper-treated", count = passes.passes, figures = figures.show(passes.treated));
    let mut parts = vec![Part::Strong { words: in_all }, notes(remarks::passes(passes, figures))];
    let Some(newest) = passes.years.last().map(|year| year.year) else { return parts };
    let several = passes.years.len() > 1;
    if several {
        let name = |year: i16| year.to_string();
        let posts = passes
            .years
            .iter()
            .skip(passes.years.len().saturating_sub(LINES))
            .map(|year| (name(year.year), figures.area(year.treated), year.passes));
        let title = t!("paper-ground-treated-season-by-season", ground = figures.ground());
        parts.push(columns(&title, posts.collect()));
    }
    let months = passes.months.iter().filter(|month| month.year == newest);
    let months = months.map(|of| (month(of.month).to_owned(), figures.area(of.treated), of.passes)).collect();
    parts.push(Part::Beside {
        left: Box::new(columns(
            &t!("paper-ground-treated-by-month", newest = newest, ground = figures.ground()),
            months,
        )),
        right: Box::new(so_far(shown, passes)),
    });
    if passes.years.len() > LINES {
        parts.push(notes([t!("paper-the-charts-have-the-newest-seasons", lines = LINES)]));
    }
    let seasons = table(
        t!("paper-by-season"),
        vec![
            words(t!("paper-column-season"), 1.0),
            figure(t!("paper-column-passes")),
            figure(t!("paper-column-treated")),
            figure(t!("paper-at-least-once")),
        ],
        passes.years.iter().map(|year| {
            Row::of(vec![
                year.year.to_string(),
                whole(year.passes),
                figures.show(year.treated),
                distinct(year.distinct, figures.units),
            ])
        }),
    );
    let months = if several { months_of_seasons(shown, passes) } else { by_month(shown, passes) };
    parts.push(Part::Beside { left: Box::new(seasons), right: Box::new(months) });
    parts
}

/// Bars with their figure over them; none over those of nothing.
fn columns(title: &str, bars: Vec<(String, f64, usize)>) -> Part {
    let most = bars.iter().map(|(_, value, _)| *value).fold(0.0, f64::max);
    let post = |(name, value, n): (String, f64, usize)| Post {
        name,
        part: part(value, most),
        words: if n > 0 { show(value, 0) } else { String::new() },
    };
    Part::Columns { title: title.to_owned(), bars: bars.into_iter().map(post).collect() }
}

fn so_far(shown: &Shown<'_>, passes: &Passes) -> Part {
    let figures = shown.figures;
    let newest = passes.years.last().map(|year| year.year);
    let years = passes.years.iter().skip(passes.years.len().saturating_sub(LINES));
    let most = years.clone().map(|year| figures.area(year.treated)).fold(0.0, f64::max);
    let of_year = |of: i16| passes.months.iter().filter(move |month| month.year == of);
    // What is still to come of this season is not drawn.
    let known = |year: i16| {
        let worked = of_year(year).filter(|month| month.passes > 0).map(|month| month.month).max().unwrap_or(0);
        match year.cmp(&shown.printed.year()) {
            Ordering::Less => 12,
            Ordering::Equal => worked.max(shown.printed.month()),
            Ordering::Greater => worked,
        }
    };
    let lines = years.map(|year| Line {
        name: year.year.to_string(),
        values: of_year(year.year)
            .filter(|month| month.month <= known(year.year))
            .map(|month| part(figures.area(month.so_far), most))
            .collect(),
        first: Some(year.year) == newest,
    });
    let lines = lines.collect();
    let by = step(most);
    let ticks = (0..=5).map(|at| f64::from(at) * by).take_while(|value| *value <= most * 1.001);
    Part::Lines {
        title: t!("paper-ground-treated-since-january", ground = figures.ground()),
        steps: month_names().map(str::to_owned).to_vec(),
        ticks: ticks.map(|value| Tick { at: part(value, most), words: show(value, decimals(by)) }).collect(),
        lines,
    }
}

/// So many that a step can be read.
fn decimals(step: f64) -> usize {
    if step >= 1.0 {
        0
    } else if step >= 0.1 {
        1
    } else {
        2
    }
}

fn by_month(shown: &Shown<'_>, passes: &Passes) -> Part {
    let row = |of: &Month| {
        Row::of(vec![
            format!("{} {}", month(of.month), of.year),
            whole(of.passes),
            shown.figures.show(of.treated),
            shown.figures.show(of.so_far),
        ])
    };
    let columns = vec![
        words(t!("paper-column-month"), 1.0),
        figure(t!("paper-column-passes")),
        figure(t!("paper-column-treated")),
        figure(t!("paper-since-january")),
    ];
    table(t!("paper-by-month"), columns, passes.months.iter().filter(|month| month.passes > 0).map(row))
}

/// Of several seasons each in a row, so that the same months stand under one another.
fn months_of_seasons(shown: &Shown<'_>, passes: &Passes) -> Part {
    let figures = shown.figures;
    let worked = (1..=12).filter(|at| passes.months.iter().any(|month| month.month == *at && month.passes > 0));
    let worked: Vec<i8> = worked.collect();
    let columns = std::iter::once(words(t!("paper-column-season"), 1.0))
        .chain(worked.iter().map(|at| figure(month(*at))))
        .collect();
    let row = |year: i16| {
        let of = |at: &i8| passes.months.iter().find(|month| (month.year, month.month) == (year, *at));
        let treated = |at: &i8| {
            of(at)
                .filter(|month| month.passes > 0)
                .map_or_else(String::new, |month| show(figures.area(month.treated), 0))
        };
        Row::of(std::iter::once(year.to_string()).chain(worked.iter().map(treated)).collect())
    };
    let title = t!("paper-ground-treated-by-month-ground", ground = figures.ground());
    table(&title, columns, passes.years.iter().map(|year| row(year.year)))
}

pub(super) fn planned(shown: &Shown<'_>) -> Vec<Part> {
    let (planned, figures) = (&shown.review.planned, shown.figures);
    let all = [
        (t!("paper-amounts-over-ground"), &planned.rate),
        (t!("paper-ground"), &planned.area),
        (t!("paper-spray-volume"), &planned.volume),
    ];
    let left = remarks::left(planned, shown.review.passes.passes, figures);
    if all.iter().all(|(_, errors)| errors.is_none()) {
        return vec![say(format!("{}.", remarks::no_plan())), say(t!("paper-what-is-left-over", left = left))];
    }
    let mut parts = vec![notes(remarks::planned(planned))];
    let mut charts: Vec<Part> = Vec::new();
    if let Some(rate) = &planned.rate {
        let bars = rate.bars.iter().enumerate();
        let bars = bars.map(|(at, n)| (bar(at, "\n"), *n as f64, *n)).collect();
        charts.push(columns(t!("paper-amounts-over-ground-how-many-uses"), bars));
    }
    let figures_of_all = numbers(&all);
    match charts.pop() {
        Some(chart) => parts.push(Part::Beside { left: Box::new(chart), right: Box::new(figures_of_all) }),
        None => parts.push(figures_of_all),
    }
    if !planned.worst.is_empty() {
        parts.push(worst(planned));
    }
    parts.push(say(t!("paper-what-is-left-over", left = left)));
    parts
}

/// What the errors come to, and how often in each bar.
fn numbers(all: &[(&str, &Option<Errors>); 3]) -> Part {
    let of = |name: &str, take: &dyn Fn(&Errors) -> String| {
        let cells =
            all.iter().map(|(_, errors)| errors.as_ref().map_or_else(|| t!("paper-no-errors").to_owned(), take));
        Row::of(std::iter::once(name.to_owned()).chain(cells).collect())
    };
    let mut rows = vec![
        of(t!("paper-how-many"), &|errors| whole(errors.n)),
        of(t!("paper-mean"), &|errors| error(errors.mean)),
        of(t!("paper-median"), &|errors| error(errors.median)),
        of(t!("paper-most-too-little"), &|errors| error(errors.least)),
        of(t!("paper-most-too-much"), &|errors| error(errors.most)),
    ];
    for at in 0..=BARS.len() {
        let n = |errors: &Errors| errors.bars.get(at).copied().unwrap_or_default();
        if all.iter().filter_map(|(_, errors)| errors.as_ref()).any(|errors| n(errors) > 0) {
            rows.push(of(&format!("{} %", bar(at, " ")), &|errors| whole(n(errors))));
        }
    }
    let columns = vec![
        words(t!("paper-column-error"), 1.0),
        figure(t!("paper-column-amounts")),
        figure(t!("paper-column-ground")),
        figure(t!("paper-column-volume")),
    ];
    table(t!("paper-errors-in-figures"), columns, rows)
}

fn worst(planned: &Planned) -> Part {
    let rows = planned.worst.iter().map(|worst| {
        Row::of(vec![format!("{}, {}", short_date(worst.date), worst.name), worst.product.clone(), error(worst.error)])
    });
    let columns = vec![
        words(t!("paper-column-record"), 1.6),
        words(t!("paper-column-product"), 1.6),
        figure(t!("paper-column-error")),
    ];
    table(t!("paper-the-largest-errors-of-amounts-over"), columns, rows)
}

pub(super) fn weather(shown: &Shown<'_>, tell: &Tell<'_>) -> Result<Vec<Part>, Cancelled> {
    let held = shown.picked.ids().enumerate().map(|(at, id)| {
        tell(at, Some(shown.picked.records()))?;
        Ok(judged::of_record(shown.farm, id))
    });
    let found: Vec<_> = held.collect::<Result<_, _>>()?;
    let outside = judged::outside(found.iter().map(Vec::as_slice));
    let of = shown.review.passes.passes;
    let missing = shown.review.unmeasured;
    Ok(vec![
        Part::Strong { words: remarks::outside(of, outside) },
        say(t!(
            "paper-not-measured",
            wind = missing.wind,
            records = of,
            temperature = missing.temperature,
            humidity = missing.humidity
        )),
        notes([remarks::weather().to_owned(), t!("paper-which-ones-and-why-stands-on").to_owned()]),
    ])
}

pub(super) fn work(shown: &Shown<'_>) -> Vec<Part> {
    let (work, figures) = (&shown.review.work, shown.figures);
    let most = work.waters.iter().map(|row| figures.volume(row.spray)).fold(0.0, f64::max);
    let waters = work.waters.iter().map(|row| {
        Row::of(vec![
            water(&row.name).to_owned(),
            figures.show(row.spray),
            figures.show(row.water),
            whole(row.times),
            whole(row.without_volume),
        ])
        .bar(figures.volume(row.spray), most, row.without_volume > 0)
    });
    let hatched = work.waters.iter().any(|row| row.without_volume > 0).then(|| remarks::hatched_spray().to_owned());
    let mut parts = vec![
        table(
            t!("paper-spray-by-water"),
            vec![
                words(t!("paper-column-water"), 1.0),
                figure(t!("paper-column-spray")),
                figure(t!("paper-water-in-it")),
                figure(t!("paper-column-records")),
                figure(t!("paper-without-a-volume")),
            ],
            waters,
        ),
        notes([remarks::water().to_owned()].into_iter().chain(hatched)),
    ];
    let most = work.rigs.iter().map(|row| row.time.to_hours()).fold(0.0, f64::max);
    let rigs = work.rigs.iter().map(|row| {
        let an_hour = row
            .area_per_hour()
            .map_or_else(|| t!("paper-not-known").to_owned(), |area| format!("{}/h", figures.show(area)));
        Row::of(vec![
            rig(&row.name).to_owned(),
            format!("{} h", show(row.time.to_hours(), 1)),
            figures.show(row.timed),
            an_hour,
            figures.show(row.treated),
            whole(row.times),
            whole(row.without_times),
        ])
        .bar(row.time.to_hours(), most, row.without_times > 0)
    });
    let columns = vec![
        words(t!("paper-column-rig"), 1.0),
        figure(t!("paper-column-time")),
        figure(t!("paper-ground-in-it")),
        figure(t!("paper-in-an-hour")),
        figure(t!("paper-ground-in-all")),
        figure(t!("paper-column-records")),
        figure(t!("paper-without-times")),
    ];
    parts.push(table(t!("paper-hours-by-rig"), columns, rigs));
    let hatched = work.rigs.iter().any(|row| row.without_times > 0).then(|| remarks::hatched_hours().to_owned());
    parts.push(notes([remarks::hours().to_owned()].into_iter().chain(hatched)));
    parts
}
