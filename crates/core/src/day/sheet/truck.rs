//! What goes on the truck: products over all loads, carriers by source, nurse tanks.

use super::{OfDay, SheetLine};
use crate::farm::{CarrierKind, Farm, Fills, Id, Product};
use crate::label::once;
use crate::language::t;
use crate::loads::measure;
use crate::quantity::number::show;
use crate::quantity::{Amount, AsTyped, Quantity, Volume};
use crate::season::Log;
use crate::stock::{Account, Accounts};

/// What is measured out of each product over all loads of the day.
pub(super) fn products(farm: &Farm, log: &Log, passes: &[&OfDay]) -> Vec<SheetLine> {
    let mut totals: Vec<(&Id, Amount)> = Vec::new();
    for item in passes.iter().flat_map(|pass| &pass.plan.loads).flat_map(|load| &load.items) {
        let amount = item.measured.amount;
        let known = totals
            .iter_mut()
            .find_map(|(id, sum)| (**id == item.product).then(|| sum.plus(amount)).flatten().map(|new| (sum, new)));
        match known {
            Some((sum, new)) => *sum = new,
            None => totals.push((&item.product, amount)),
        }
    }
    let accounts = Accounts::among(farm, log, totals.iter().map(|(id, _)| id.as_str()));
    totals
        .into_iter()
        .filter_map(|(id, amount)| {
            let product = farm.products.get(id)?;
            let containers = measure::containers(amount, &product.containers, farm.units);
            let lots = lots(product, accounts.get(id));
            let detail: Vec<String> = [containers, lots].into_iter().filter(|text| !text.is_empty()).collect();
            Some(SheetLine { what: product.name.clone(), amount: amount.show(farm.units), detail: detail.join("; ") })
        })
        .collect()
}

/// The lots on hand, or all that are typed where nothing is on hand.
fn lots(product: &Product, account: Option<&Account>) -> String {
    let held = account.map(|account| account.on_hand.held.as_slice()).unwrap_or_default();
    let mut lots: Vec<&str> = once(held.iter().map(|held| held.lot.as_str()).filter(|lot| !lot.is_empty()));
    if lots.is_empty() {
        lots = once(product.containers.iter().map(|container| container.lot.trim()).filter(|lot| !lot.is_empty()));
    }
    match lots.as_slice() {
        [] => String::new(),
        [lot] => t!("day-lot", lot = lot),
        lots => t!("day-lots", lots = lots.join(", ")),
    }
}

/// The carriers by source, and the tanks that are filled with them.
pub(super) fn water(farm: &Farm, passes: &[&OfDay]) -> Vec<SheetLine> {
    let units = farm.units;
    let source = |pass: &OfDay| match pass.pass.carrier_kind {
        CarrierKind::Water => farm
            .waters
            .get(&pass.pass.water)
            .map_or(t!("day-water-source-not-chosen").to_owned(), |water| water.name.clone()),
        fertilizer => fertilizer.on_card().aloud(),
    };
    let carried =
        |passes: &[&&OfDay]| -> Volume { passes.iter().flat_map(|pass| &pass.plan.loads).map(|load| load.water).sum() };
    let mut lines = Vec::new();
    for name in once(passes.iter().map(|pass| source(pass))) {
        let here: Vec<&&OfDay> = passes.iter().filter(|pass| source(pass) == name).collect();
        let loads: usize = here.iter().map(|pass| pass.plan.loads.len()).sum();
        let mut detail = vec![t!("day-for-loads", count = loads)];
        for rig in once(here.iter().map(|pass| &pass.pass.rig)) {
            let nursed: Vec<&&OfDay> = here
                .iter()
                .filter(|pass| pass.pass.rig == *rig && pass.pass.fills == Fills::AtField)
                .copied()
                .collect();
            let Some(rig) = farm.rigs.get(rig).filter(|_| !nursed.is_empty()) else { continue };
            let nurse = rig.nurse.as_ref().map(AsTyped::value);
            detail.push(match nurse.and_then(|nurse| Some((nurse, carried(&nursed).ratio(nurse)?))) {
                Some((nurse, fills)) => {
                    // What arithmetic leaves above a full tank is no further filling.
                    let fills = (fills - 1e-9).ceil().max(1.0);
                    if fills > 1.0 {
                        let (times, volume) = (show(fills, 0), nurse.show(units));
                        t!("day-the-nurse-tank-is-filled-times", name = rig.name, times = times, volume = volume)
                    } else {
                        let volume = carried(&nursed).show(units);
                        t!("day-the-nurse-tank-is-filled-once", name = rig.name, volume = volume)
                    }
                }
                None => t!("day-what-the-nurse-tank-of-holds", name = rig.name),
            });
        }
        lines.push(SheetLine { what: name.clone(), amount: carried(&here).show(units), detail: detail.join("; ") });
    }
    for rig in once(passes.iter().map(|pass| &pass.pass.rig)).into_iter().filter_map(|rig| farm.rigs.get(rig)) {
        lines.extend(rig.clean_water.as_ref().map(|tank| SheetLine {
            what: t!("day-clean-water-for-rinsing", name = rig.name),
            amount: tank.show(units),
            detail: t!("day-to-begin-with-filling-it-again").to_owned(),
        }));
    }
    lines
}
