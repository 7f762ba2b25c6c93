//! Whether latitude and longitude stand in each other's place.

use geo::algorithm::line_measures::{Distance, Geodesic};
use geo::{Coord, Point, Rect};

use crate::farm::Position;
use crate::language::t;
use crate::quantity::Length;

/// Ground that lies further than this from the farm is not its own.
const FAR: Length = Length::from_metres(1_000_000.0);

/// How the two numbers of a point are to be read.
#[derive(Clone, Debug, PartialEq)]
pub enum Order {
    /// The longitude first, as they stand.
    AsTheyStand,
    /// The latitude first: the reason in words.
    Swapped(String),
    /// As they stand, but it cannot be known, or lies far from the farm: the reason in words.
    Doubtful(String),
}

/// Looks at the box around all points of a file, and at where the farm lies.
pub fn order(around: Rect<f64>, near: Option<Position>) -> Order {
    let (least, most) = (around.min(), around.max());
    let fits = |low: f64, high: f64, most: f64| low >= -most && high <= most;
    if !fits(least.y, most.y, 90.0) {
        let is_swapped = fits(least.x, most.x, 90.0) && fits(least.y, most.y, 180.0);
        return if is_swapped {
            Order::Swapped(t!("ground-the-second-numbers-are-no-latitudes").to_owned())
        } else {
            Order::AsTheyStand
        };
    }
    let middle = around.center();
    let swapped = Coord { x: middle.y, y: middle.x };
    let may_be_swapped = fits(least.x, most.x, 90.0);
    let Some(near) = near else {
        return if may_be_swapped {
            Order::Doubtful(t!("ground-it-lies-about-whether-latitude-and", middle = super::place(middle)))
        } else {
            Order::AsTheyStand
        };
    };
    let farm = Point::new(near.longitude.to_degrees(), near.latitude.to_degrees());
    let from_farm = |at: Coord<f64>| Length::from_metres(Geodesic.distance(farm, Point(at)));
    let distance = from_farm(middle);
    if !distance.exceeds(FAR) {
        Order::AsTheyStand
    } else if may_be_swapped && !from_farm(swapped).exceeds(FAR) {
        Order::Swapped(t!("ground-as-they-stand-it-would-lie").to_owned())
    } else {
        Order::Doubtful(t!(
            "ground-it-lies-about-km-from-the",
            middle = super::place(middle),
            to_metres = format_args!("{:.0}", distance.to_metres() / 1000.0)
        ))
    }
}
