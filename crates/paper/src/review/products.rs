//! Products, actives and resistance groups.

use tankard_core::farm::ProductKind;
use tankard_core::quantity::rate::show_active;
use tankard_core::season::review::figures::{mass, whole};
use tankard_core::season::review::words::{again, by_number, field, gone, group};
use tankard_core::season::review::{ActiveRow, Again, FieldGroups, GroupRow, Repeat, remarks};
use tankard_core::t;
use tankard_core::words::capital;

use super::content::Shown;
use super::parts::{Cell, Part, Row, figure, notes, say, table, words};

/// How many seasons stand beside one another in a table of groups.
const SEASONS: usize = 10;

pub(super) fn products(shown: &Shown<'_>) -> Vec<Part> {
    let (products, figures) = (&shown.review.products, shown.figures);
    if products.rows.is_empty() {
        return vec![say(t!("paper-no-product-in-the-records"))];
    }
    let most = products.rows.iter().map(|row| figures.area(row.treated)).fold(0.0, f64::max);
    let rows = products.rows.iter().map(|row| {
        Row::of(vec![
            row.name.clone(),
            row.role().to_owned(),
            figures.show(row.treated),
            figures.amounts(&row.amounts),
            whole(row.times),
            figures.spent(row.spent),
        ])
        .bar(figures.area(row.treated), most, false)
    });
    let columns = vec![
        words(t!("paper-column-product"), 2.0),
        words(t!("paper-column-kind"), 1.2),
        figure(t!("paper-column-ground")),
        figure(t!("paper-went-out")),
        figure(t!("paper-column-records")),
        figure(t!("paper-column-cost")),
    ];
    vec![
        table("", columns, rows),
        notes([t!("paper-bars-ground-treated").to_owned()].into_iter().chain(remarks::products(products))),
    ]
}

pub(super) fn actives(shown: &Shown<'_>) -> Vec<Part> {
    let (actives, figures) = (&shown.review.actives, shown.figures);
    if actives.rows.is_empty() {
        return std::iter::once(say(t!("paper-no-active-in-the-records")))
            .chain((!actives.silent.is_empty()).then(|| notes(remarks::actives(actives))))
            .collect();
    }
    let over = |row: &ActiveRow| row.on_farm.map_or(0.0, |rate| figures.active_over(rate));
    let most = actives.rows.iter().map(over).fold(0.0, f64::max);
    let rows = actives.rows.iter().map(|row| {
        let rate = row
            .on_farm
            .map_or_else(|| t!("paper-not-known").to_owned(), |rate| show_active(rate, row.basis, figures.units));
        let cells = vec![row.name.clone(), rate, mass(figures, row.mass, row.basis), whole(row.times)];
        Row { under: on_fields(shown, row), ..Row::of(cells).bar(over(row), most, false) }
    });
    let columns = vec![
        words(t!("paper-column-active"), 2.0),
        figure(t!("paper-over-the-farms-ground")),
        figure(t!("paper-went-out")),
        figure(t!("paper-column-records")),
    ];
    let ground = t!("paper-bars-over-of-ground-that-can", figures = figures.show(actives.ground));
    vec![table("", columns, rows), notes([ground].into_iter().chain(remarks::actives(actives)))]
}

fn on_fields(shown: &Shown<'_>, row: &ActiveRow) -> String {
    let units = shown.figures.units;
    let fields = row.fields.iter().map(|on| {
        let name = field(&on.field, &on.name);
        let over = on.over_ground.map_or_else(|| gone().to_owned(), |rate| show_active(rate, row.basis, units));
        format!("{name} {}, {over}", mass(shown.figures, on.mass, row.basis))
    });
    fields.collect::<Vec<_>>().join("; ")
}

pub(super) fn groups(shown: &Shown<'_>) -> Vec<Part> {
    let resistance = &shown.review.resistance;
    let mut fields: Vec<&FieldGroups> = resistance.fields.iter().collect();
    fields.sort_by_cached_key(|field| by_number(&field.name));
    let has = |kind: &ProductKind| fields.iter().flat_map(|field| &field.rows).any(|row| row.kind == *kind);
    let kinds: Vec<ProductKind> = ProductKind::ALL.into_iter().filter(has).collect();
    let groupless = remarks::resistance(resistance);
    if kinds.is_empty() {
        let none = say(remarks::no_group());
        return std::iter::once(none).chain(groupless.map(|words| notes([words]))).collect();
    }
    let mut parts = vec![notes([remarks::groups(t!("paper-triangle"))].into_iter().chain(groupless))];
    let years: Vec<i16> = shown.review.passes.years.iter().map(|year| year.year).collect();
    for kind in kinds {
        let of_kind: Vec<&FieldGroups> =
            fields.iter().copied().filter(|field| rows(field, kind).next().is_some()).collect();
        for years in years.chunks(SEASONS) {
            let cells = |field: &FieldGroups| years.iter().map(|year| cell(field, kind, *year)).collect();
            parts.push(Part::Matrix {
                title: t!("paper-groups-by-field-and-season", kind = capital(kind.name())),
                years: years.iter().map(i16::to_string).collect(),
                rows: of_kind.iter().map(|field| (field.name.clone(), cells(field))).collect(),
            });
        }
        parts.extend(repeats(&of_kind, kind, shown.seasons));
    }
    parts.push(notes([remarks::again().to_owned()]));
    parts
}

/// The rows of a field that are of a kind.
fn rows(field: &FieldGroups, kind: ProductKind) -> impl Iterator<Item = &GroupRow> {
    field.rows.iter().filter(move |row| row.kind == kind)
}

/// What a field had in a season.
fn cell(field: &FieldGroups, kind: ProductKind, year: i16) -> Vec<Cell> {
    let of_year = |row: &GroupRow| {
        let (_, times) = row.years.iter().find(|(of, _)| *of == year)?;
        let words = if *times > 1 { format!("{} ×{times}", row.group) } else { row.group.clone() };
        Some(Cell { words, again: row.came_again(year) })
    };
    rows(field, kind).filter_map(of_year).collect()
}

/// Where a group came again, field by field, and whose rules say that it was too soon, each rule once.
fn repeats(fields: &[&FieldGroups], kind: ProductKind, seasons: &str) -> Vec<Part> {
    let mut rules: Vec<String> = Vec::new();
    let mut rows_of_kind = Vec::new();
    for (field, row) in fields.iter().flat_map(|field| rows(field, kind).map(move |row| (field, row))) {
        let mut came = Vec::new();
        for repeat in &row.repeats {
            let rule = rule(repeat);
            let at = rules.iter().position(|known| *known == rule).unwrap_or_else(|| {
                rules.push(rule);
                rules.len() - 1
            });
            came.push(format!("{} [{}]", again(repeat), at + 1));
        }
        if !came.is_empty() {
            rows_of_kind.push(Row::of(vec![field.name.clone(), group(row.kind, &row.group), came.join("; ")]));
        }
    }
    if rows_of_kind.is_empty() {
        return vec![say(t!("paper-no-group-came-again", kind = kind.name(), seasons = seasons))];
    }
    let columns = vec![
        words(t!("paper-column-field"), 1.2),
        words(t!("paper-column-group"), 0.8),
        words(t!("paper-it-came-and-by-which-rule"), 4.0),
    ];
    let key = rules.into_iter().enumerate().map(|(at, rule)| format!("[{}] {rule}", at + 1));
    vec![table(&t!("paper-where-a-group-came-again", kind = kind.name()), columns, rows_of_kind), notes(key)]
}

/// "asked for at most 1 in a season: who says so".
fn rule(repeat: &Repeat) -> String {
    let (most, basis) = (repeat.most, &repeat.basis);
    match repeat.again {
        Again::InSeason { .. } => t!("paper-at-most-times-in-a-season", most = most, basis = basis),
        Again::InYears { .. } => t!("paper-at-most-seasons-in-a-row", most = most, basis = basis),
        Again::InARow { .. } => t!("paper-at-most-applications-in-a-row", most = most, basis = basis),
    }
}
