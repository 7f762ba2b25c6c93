//! What the laws of a day say of a product: some of it is held against plans as the labels are, the rest is said to be open.

use jiff::civil::Date;

use super::{Here, Speaker, Spoken, names, weather};
use crate::farm::label::Says;
use crate::farm::{Farm, Product, Statement};
use crate::finding::{Finding, Subject};
use crate::language::t;

/// Whether a plan is held against a law that says this.
pub const fn are_held(says: &Says) -> bool {
    weather::on_weather(says)
        || matches!(
            says,
            Says::Droplets { .. } | Says::BoomHeight { .. } | Says::GroundSpeed { .. } | Says::Buffer { .. }
        )
}

/// Whether a law that says this stands on the load cards, for people to keep to.
pub const fn are_printed(says: &Says) -> bool {
    matches!(says, Says::Wear { .. } | Says::Handling { .. } | Says::Caution { .. })
}

/// The statements of a kind that bind a product on a day: those of its label, then those of the laws.
pub(crate) fn binding<'a>(
    farm: &'a Farm,
    product: &'a Product,
    day: Date,
    wanted: impl Fn(&Says) -> bool + Copy,
) -> impl Iterator<Item = (Speaker<'a>, &'a Statement)> {
    let of_label = product.label.iter().map(move |statement| (Speaker::Label(product), statement));
    let of_laws = farm
        .laws
        .values()
        .filter(move |law| wanted(&law.says.says) && law.holds_on(day) && names::binds(law, product))
        .map(|law| (Speaker::Law(law), &law.says));
    of_label.filter(move |(_, statement)| wanted(&statement.says)).chain(of_laws)
}

/// Says which laws of the day bind a product of the pass and are not held against it.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    let open = |says: &Says| !are_held(says) && !are_printed(says);
    for (speaker, statement) in binding(here.farm, here.product, here.pass.date, open) {
        let Speaker::Law(law) = speaker else { continue };
        let Some(spoken) = Spoken::of(speaker, statement, here.field, here.situation) else { continue };
        findings.push(
            Finding::check(
                Subject::Pass(here.pass_id.clone()),
                t!("label-speaks-of-which-is-not-judged", source = law.source(), says = statement.says.name()),
                spoken.basis(),
            )
            .hint(t!("label-hold-this-pass-against-it-yourself")),
        );
    }
}
