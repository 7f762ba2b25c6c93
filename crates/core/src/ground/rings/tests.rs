use geo::{Coord, GeodesicArea};

use super::{Mended, NoGround, Ring, Turn, mend, nest};

fn ring(points: &[(f64, f64)]) -> Ring {
    points.iter().map(|&(x, y)| Coord { x, y }).collect()
}

/// A closed square from its lower left corner on, against the clock.
fn square(x: f64, y: f64, side: f64) -> Ring {
    ring(&[(x, y), (x + side, y), (x + side, y + side), (x, y + side), (x, y)])
}

fn mended(drawn: Vec<Vec<Ring>>) -> Result<Mended, NoGround> {
    mend(drawn, Turn::Counterclockwise)
}

fn why(drawn: Vec<Vec<Ring>>) -> String {
    mended(drawn).expect_err("there are two ways to mend it").to_string()
}

#[test]
fn a_good_ring_is_left_as_it_is() {
    let good = mended(vec![vec![square(10.0, 50.0, 0.01)]]).unwrap();
    assert_eq!(good.said, Vec::<String>::new());
    assert_eq!(good.polygons.0.first().unwrap().exterior().0, square(10.0, 50.0, 0.01));
}

#[test]
fn doubled_points_spikes_and_turns_are_mended_and_told() {
    let untidy = ring(&[
        (0.0, 0.0),
        (0.0, 0.0),
        (0.0, 0.01),
        (0.005, 0.01),
        (0.005, 0.02),
        (0.005, 0.01),
        (0.01, 0.01),
        (0.01, 0.0),
        (0.0, 0.0),
    ]);
    let done = mended(vec![vec![untidy]]).unwrap();
    assert_eq!(
        done.said,
        [
            "1 point that repeats the one before is taken out",
            "a spike without area is cut off at latitude 0.02, longitude 0.005",
            "1 outer ring runs the wrong way round and is turned",
        ]
    );
    let area = mended(vec![vec![square(0.0, 0.0, 0.01)]]).unwrap().polygons.geodesic_area_unsigned();
    assert!((done.polygons.geodesic_area_unsigned() / area - 1.0).abs() < 1e-7);
}

#[test]
fn a_spike_at_the_seam_is_cut_off() {
    for turn in 0..6 {
        let mut spiked = ring(&[(0.0, 0.0), (0.01, 0.0), (0.01, 0.01), (0.0, 0.01), (0.0, 0.02), (0.0, 0.01)]);
        spiked.rotate_left(turn);
        spiked.push(spiked[0]);
        let done = mended(vec![vec![spiked]]).unwrap();
        assert_eq!(done.polygons.0[0].exterior().0.len(), 5, "turned by {turn}: {:?}", done.said);
    }
}

#[test]
fn a_bow_tie_is_refused_with_its_place() {
    let bow = ring(&[(-100.0, 41.0), (-99.99, 41.01), (-99.99, 41.0), (-100.0, 41.01), (-100.0, 41.0)]);
    assert_eq!(why(vec![vec![bow]]), "a ring crosses itself at latitude 41.005, longitude -99.995");
    // The same with a corner at the crossing.
    let bow = ring(&[(0.0, 0.0), (1.0, 1.0), (2.0, 2.0), (2.0, 0.0), (1.0, 1.0), (0.0, 2.0)]);
    assert_eq!(why(vec![vec![bow]]), "a ring crosses itself at latitude 1, longitude 1");
}

#[test]
fn a_ring_that_touches_itself_is_split() {
    let beside =
        ring(&[(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (2.0, 1.0), (2.0, 2.0), (1.0, 2.0), (1.0, 1.0), (0.0, 1.0)]);
    let beside = mended(vec![vec![beside]]).unwrap();
    assert_eq!(beside.polygons.0.len(), 2);
    let inward =
        ring(&[(0.0, 0.0), (2.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0), (0.0, 0.0), (1.0, 2.0), (2.0, 1.0)]);
    let inward = mended(vec![vec![inward]]).unwrap();
    assert_eq!((inward.polygons.0.len(), inward.polygons.0[0].interiors().len()), (1, 1));
}

#[test]
fn a_double_line_to_a_hole_goes() {
    let keyhole = ring(&[
        (0.0, 0.0),
        (4.0, 0.0),
        (4.0, 4.0),
        (0.0, 4.0),
        (0.0, 0.0),
        (1.0, 1.0),
        (1.0, 3.0),
        (3.0, 3.0),
        (3.0, 1.0),
        (1.0, 1.0),
        (0.0, 0.0),
    ]);
    let done = mended(vec![vec![keyhole]]).unwrap();
    assert_eq!((done.polygons.0.len(), done.polygons.0[0].interiors().len()), (1, 1));
    assert!((geo::Area::unsigned_area(&done.polygons) - 12.0).abs() < 1e-12);
}

#[test]
fn holes_belong_to_the_part_that_they_lie_in() {
    let parts = vec![vec![square(0.0, 0.0, 4.0), square(11.0, 1.0, 1.0)], vec![square(10.0, 0.0, 4.0)]];
    let done = mended(parts).unwrap();
    assert_eq!((done.polygons.0[0].interiors().len(), done.polygons.0[1].interiors().len()), (0, 1));
    let hole = |hole: Ring| why(vec![vec![square(0.0, 0.0, 4.0), hole]]);
    assert_eq!(hole(square(5.0, 5.0, 1.0)), "a hole does not lie within its polygon at latitude 5, longitude 5");
    assert_eq!(hole(square(3.0, 1.0, 2.0)), "a hole crosses the edge or another hole at latitude 1, longitude 4");
    assert_eq!(hole(square(0.0, 1.0, 2.0)), "a hole runs along the edge or another hole at latitude 1, longitude 0");
    let nested = vec![vec![square(0.0, 0.0, 4.0), square(1.0, 1.0, 2.0), square(1.5, 1.5, 1.0)]];
    assert_eq!(why(nested), "a hole lies within another hole at latitude 1.5, longitude 1.5");
}

#[test]
fn a_hole_that_crosses_at_corners_is_refused() {
    let outer = ring(&[(0.0, 0.0), (4.0, 0.0), (4.0, 1.0), (4.0, 3.0), (4.0, 4.0), (0.0, 4.0)]);
    let hole = ring(&[(2.0, 2.0), (4.0, 1.0), (6.0, 2.0), (4.0, 3.0)]);
    assert_eq!(why(vec![vec![outer, hole]]), "a hole does not lie within its polygon at latitude 2, longitude 2");
}

#[test]
fn parts_overlap_by_a_sliver_or_not_at_all() {
    let parts = |x: f64| vec![vec![square(0.0, 0.0, 1.0)], vec![square(x, 0.0, 1.0)]];
    assert_eq!(mended(parts(2.0)).unwrap().polygons.0.len(), 2);
    assert_eq!(mended(parts(1.0)).unwrap().polygons.0.len(), 2);
    let joined = mended(parts(0.995)).unwrap();
    assert_eq!(joined.polygons.0.len(), 1);
    assert!((geo::Area::unsigned_area(&joined.polygons) - 1.995).abs() < 1e-6);
    assert!(why(parts(0.5)).starts_with("two parts overlap at latitude"));
    let within = vec![vec![square(0.0, 0.0, 4.0)], vec![square(1.0, 1.0, 1.0)]];
    assert_eq!(why(within), "a part lies within another part at latitude 1, longitude 1");
    let twice = mended(vec![vec![square(0.0, 0.0, 4.0)], vec![square(0.0, 0.0, 4.0)]]).unwrap();
    assert_eq!(twice.said, ["1 part stands twice and is taken once"]);
}

#[test]
fn the_180th_meridian_cuts_and_keeps_the_area() {
    let here = mended(vec![vec![square(10.0, 41.0, 0.01)]]).unwrap().polygons.geodesic_area_unsigned();
    for start in [179.995, -180.005, 179.9925] {
        let mut across = square(start, 41.0, 0.01);
        across.iter_mut().filter(|at| at.x > 180.0).for_each(|at| at.x -= 360.0);
        across.iter_mut().filter(|at| at.x < -180.0).for_each(|at| at.x += 360.0);
        let done = mended(vec![vec![across]]).unwrap();
        assert_eq!(done.said, ["it crosses the 180th meridian and is cut there in two"]);
        assert_eq!(done.polygons.0.len(), 2);
        let area: f64 = done.polygons.iter().map(GeodesicArea::geodesic_area_unsigned).sum();
        assert!((area / here - 1.0).abs() < 1e-9, "{area} {here}");
    }
    let with_hole = mended(vec![vec![square(179.995, 41.0, 0.01), square(-179.999, 41.002, 0.001)]]).unwrap();
    assert_eq!(with_hole.polygons.iter().map(|one| one.interiors().len()).sum::<usize>(), 1);
}

#[test]
fn what_is_no_ring_is_refused() {
    assert!(why(vec![vec![ring(&[(0.0, 0.0), (1.0, 1.0), (0.0, 0.0)])]]).starts_with("a ring has no area"));
    assert!(why(vec![vec![ring(&[(0.0, f64::NAN), (1.0, 1.0), (0.0, 0.0)])]]).contains("no number"));
    assert!(why(vec![]).contains("no rings"));
    assert!(why(vec![vec![square(0.0, 0.0, 4.0), ring(&[])]]).contains("no points"));
}

#[test]
fn nested_rings_are_sorted_by_what_lies_in_what() {
    let nested =
        nest(vec![square(2.0, 2.0, 1.0), square(0.0, 0.0, 9.0), square(1.0, 1.0, 4.0), square(20.0, 0.0, 1.0)]);
    let sizes: Vec<usize> = nested.unwrap().iter().map(Vec::len).collect();
    assert_eq!(sizes, [2, 1, 1]);
}
