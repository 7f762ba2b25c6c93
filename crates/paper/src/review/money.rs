//! Adjuvants, and what the products cost.

use tankard_core::season::review::figures::{length, whole};
use tankard_core::season::review::{ClassRow, CostRow, remarks, words as said};
use tankard_core::t;
use tankard_core::words::capital;

use super::content::Shown;
use super::parts::{Part, Row, figure, notes, say, table, words};

pub(super) fn adjuvants(shown: &Shown<'_>) -> Vec<Part> {
    let (adjuvants, figures) = (&shown.review.adjuvants, shown.figures);
    if adjuvants.rows.is_empty() {
        return vec![say(remarks::no_adjuvant(adjuvants, figures))];
    }
    // Without any price the bars are of ground.
    let is_priced = adjuvants.spent.priced > 0;
    let long = |row: &ClassRow| if is_priced { length(row.spent.money) } else { figures.area(row.treated) };
    let most = adjuvants.rows.iter().map(long).fold(0.0, f64::max);
    let is_hatched = |row: &ClassRow| is_priced && row.spent.without_price > 0;
    let rows = adjuvants.rows.iter().map(|row| {
        let cells = vec![
            capital(said::class(row.class)),
            row.products.join(", "),
            figures.spent(row.spent),
            figures.per_ground(row.spent, row.treated),
            figures.show(row.treated),
            figures.amounts(&row.amounts),
            whole(row.times),
        ];
        Row::of(cells).bar(long(row), most, is_hatched(row))
    });
    let columns = vec![
        words(t!("paper-column-class"), 1.3),
        words(t!("paper-column-products"), 2.0),
        figure(t!("paper-column-cost")),
        figure(t!("paper-over-ground")),
        figure(t!("paper-column-ground")),
        figure(t!("paper-went-out")),
        figure(t!("paper-column-records")),
    ];
    let hatched = adjuvants.rows.iter().any(is_hatched);
    let bars = if is_priced {
        t!("paper-bars-cost", several_classes = remarks::several_classes())
    } else {
        t!("paper-bars-ground", several_classes = remarks::several_classes())
    };
    let remarks = std::iter::once(bars)
        .chain(hatched.then(|| remarks::hatched_cost().to_owned()))
        .chain([t!("paper-treated-without-any", figures = figures.show(adjuvants.without))])
        .chain(remarks::adjuvants(adjuvants, figures));
    vec![table("", columns, rows), notes(remarks)]
}

pub(super) fn cost(shown: &Shown<'_>) -> Vec<Part> {
    let (cost, figures) = (&shown.review.cost, shown.figures);
    let mut parts = vec![Part::Strong { words: remarks::cost_in_all(cost, figures) }, notes(remarks::cost(cost))];
    // Tables of which every row says that there is no price tell nothing more.
    if cost.all.spent.priced == 0 {
        return parts;
    }
    parts.push(by(shown, t!("paper-cost-by-field"), t!("paper-column-field"), &cost.fields, |(id, name)| {
        said::field(id, name).to_owned()
    }));
    parts.push(by(shown, t!("paper-cost-by-crop"), t!("paper-column-crop"), &cost.crops, |crop| {
        said::crop(crop).to_owned()
    }));
    parts.push(by(shown, t!("paper-cost-by-kind"), t!("paper-kind-of-product"), &cost.kinds, |kind| {
        capital(said::kind(*kind))
    }));
    if !cost.classes.is_empty() {
        parts.push(by(shown, t!("paper-cost-by-class"), t!("paper-adjuvant-class"), &cost.classes, |class| {
            capital(class.name())
        }));
    }
    if cost.fields.iter().any(|row| row.spent.without_price > 0) {
        parts.push(notes([remarks::hatched_cost().to_owned()]));
    }
    parts
}

fn by<K>(shown: &Shown<'_>, title: &str, what: &str, rows: &[CostRow<K>], name: impl Fn(&K) -> String) -> Part {
    let figures = shown.figures;
    let most = rows.iter().map(|row| length(row.spent.money)).fold(0.0, f64::max);
    let rows = rows.iter().map(|row| {
        Row::of(vec![
            name(&row.of),
            figures.spent(row.spent),
            figures.per_ground(row.spent, row.treated),
            figures.show(row.treated),
            whole(row.spent.without_price),
        ])
        .bar(length(row.spent.money), most, row.spent.without_price > 0)
    });
    let columns = vec![
        words(what, 1.0),
        figure(t!("paper-column-cost")),
        figure(t!("paper-over-ground")),
        figure(t!("paper-column-ground")),
        figure(t!("paper-uses-without-a-price")),
    ];
    table(title, columns, rows)
}
