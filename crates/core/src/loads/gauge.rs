//! The sight gauge of a load: the tank upright, to scale.

use super::{FillStep, Load};
use crate::farm::CarrierKind;
use crate::farm::card::{Gauge, Layer, Mark};
use crate::language::{Language, say};
use crate::plan::PlannedName;
use crate::quantity::{Quantity, Units, Volume};

/// Draws a load into a tank, with heights as shares of the full tank.
pub fn gauge(
    load: &Load,
    names: &[PlannedName],
    carrier: CarrierKind,
    tank: Volume,
    units: Units,
    languages: &[Language],
) -> Gauge {
    let mut gauge = Gauge::default();
    let height = |volume: Volume| volume.ratio(tank).unwrap_or(0.0).clamp(0.0, 1.0);
    let mut level = 0.0;
    for step in &load.steps {
        match step {
            FillStep::InTank { to } => {
                let (top, label) = (height(*to), to.show(units));
                gauge.layers.push(Layer {
                    number: None,
                    label: say("card-in-tank-gauge").with("amount", label.as_str()).in_languages(languages),
                    amount: String::new(),
                    from: level,
                    to: top,
                });
                gauge.marks.push(Mark { at: top, label });
                level = top;
            }
            FillStep::Water { to } => {
                let top = height(*to);
                gauge.layers.push(Layer {
                    number: None,
                    label: say("card-water-to")
                        .with("water", carrier.short_on_card())
                        .with("mark", to.show(units))
                        .in_languages(languages),
                    amount: String::new(),
                    from: level,
                    to: top,
                });
                gauge.marks.push(Mark { at: top, label: to.show(units) });
                level = top;
            }
            FillStep::Product { item, from, to } => {
                let Some(item) = load.items.get(*item) else { continue };
                let name =
                    names.iter().find(|name| name.product == item.product).map_or("", |name| name.short.as_str());
                gauge.layers.push(Layer {
                    number: Some(item.number),
                    label: name.to_owned(),
                    amount: item.measured.text.clone(),
                    from: height(*from),
                    to: height(*to),
                });
                level = height(*to);
            }
        }
    }
    gauge
}
