//! Files of boundaries: those that other libraries wrote (`reference/boundaries/`, made by `scripts/boundaries.py`, which names
//! them), published areas, round trips, and files that nobody meant to write.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::io::{Cursor, Write};
use std::path::PathBuf;

use geo::{Area as _, Coord, GeodesicArea, LineString, Polygon, Validation};
use proptest::prelude::*;
use tankard::demo;
use tankard_core::farm::SurroundingKind::{Other, Water, Well};
use tankard_core::farm::{Farm, Latitude, Longitude, Position, Shape};
use tankard_core::ground::rings::{Turn, mend};
use tankard_core::progress::untold;
use tankard_core::quantity::{Area, AsTyped};
use tankard_file::ground::{
    Becomes, Companion, Found, GroundError, Is, open, read, suggest, take, write_geojson, write_taskdata,
};
use tankard_tests::{cases, ground};

fn path(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("reference/boundaries").join(name)
}

fn bytes(name: &str) -> Vec<u8> {
    std::fs::read(path(name)).unwrap()
}

fn found(name: &str) -> Found {
    open(&path(name), near(), &untold).unwrap_or_else(|error| panic!("{name}: {error}"))
}

/// Where the invented ground lies.
fn near() -> Option<Position> {
    let (latitude, longitude) = (Latitude::from_degrees(41.2)?, Longitude::from_degrees(-96.4)?);
    Some(Position { latitude, longitude })
}

/// Name, crop and square metres of each field, by GeographicLib.
fn areas() -> Vec<(String, String, f64)> {
    let mut table = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path("areas.csv")).unwrap();
    table.deserialize().map(Result::unwrap).collect()
}

fn geojson(coordinates: &str) -> Result<Found, GroundError> {
    let text = format!("{{\"type\":\"Polygon\",\"coordinates\":{coordinates}}}");
    read("one.geojson", text.as_bytes(), &[], near())
}

fn is_near(is: f64, should: f64, relative: f64) -> bool {
    (is / should - 1.0).abs() <= relative
}

#[track_caller]
fn holds_the_fields(name: &str, found: &Found) {
    let fields: Vec<_> = found.pieces.iter().filter(|piece| piece.is == Is::Field).collect();
    assert_eq!(found.refused, [], "{name}");
    assert_eq!(fields.len(), 3, "{name}: {:?}", fields.iter().map(|field| &field.name).collect::<Vec<_>>());
    for (field, (wanted, crop, area)) in fields.into_iter().zip(areas()) {
        assert_eq!(field.name, wanted, "{name}");
        let own = field.facts.iter().find(|(known, _)| known.eq_ignore_ascii_case("crop")).map(|(_, crop)| crop);
        assert_eq!(own, Some(&crop), "{name}");
        let is = field.shape.area().to_square_metres();
        assert!(is_near(is, area, 1e-9), "{name}: {wanted} has {is} m² where GeographicLib has {area}");
        assert_eq!(field.mended, Vec::<String>::new(), "{name}");
    }
}

#[test]
fn every_kind_of_file_is_read_as_other_libraries_wrote_it() {
    let all = [
        "fields.geojson",
        "wgs84.shp",
        "wgs84.zip",
        "cp1252.zip",
        "no_prj.zip",
        "nad83.zip",
        "etrs89.zip",
        "utm.zip",
        "missouri.zip",
        "web.zip",
        "simple.kml",
        "simple.kmz",
        "fast.kml",
        "TASKDATA.XML",
        "taskdata.zip",
    ];
    for name in all {
        holds_the_fields(name, &found(name));
    }
}

#[test]
fn points_and_lines_lie_among_the_fields() {
    let kinds = |name: &str| -> Vec<(String, Is)> {
        let found = found(name);
        let others = found.pieces.into_iter().filter(|piece| piece.is != Is::Field);
        others.map(|piece| (piece.name, piece.is)).collect()
    };
    let of = |name: &str, kind| (name.to_owned(), Is::Surrounding(kind));
    assert_eq!(kinds("fields.geojson"), [of("Mill creek", Water), of("Yard well", Well)]);
    assert_eq!(kinds("simple.kml"), [of("Mill creek", Other), of("Yard well", Other)]);
    assert_eq!(kinds("TASKDATA.XML"), [of("Pond", Water), ("West gate".to_owned(), Is::Gateway)]);
}

#[test]
fn what_a_shapefile_is_measured_on_is_said() {
    let notes = |name: &str| found(name).notes.join("; ");
    assert_eq!(notes("wgs84.zip"), "");
    assert_eq!(notes("utm.zip"), "");
    for (name, datum) in [("nad83.zip", "NAD83"), ("missouri.zip", "NAD83"), ("etrs89.zip", "ETRS89")] {
        assert!(notes(name).contains(datum) && notes(name).contains("1 to 2 m"), "{name}: {}", notes(name));
    }
    assert!(notes("no_prj.zip").starts_with("there is no .prj"), "{}", notes("no_prj.zip"));
    let refused = found("utm_no_prj.zip");
    assert_eq!((refused.pieces.len(), refused.refused.len()), (0, 3));
    assert!(refused.refused[0].why.contains("is no longitude and latitude, and there is no .prj"), "{refused:?}");
    let conic = open(&path("conic.zip"), None, &untold).unwrap_err().to_string();
    assert!(conic.contains("NAD_1983_StatePlane_Iowa_North_FIPS_1401_Feet") && conic.contains("WGS 84"), "{conic}");
}

/// The texts are those of ESRI's `.prj` files for the systems named, shortened.
#[test]
fn a_wrong_prj_is_refused_by_name() {
    let with = |prj: &str| {
        let companion = |name: &str, bytes: Vec<u8>| Companion { name: name.to_owned(), bytes };
        let beside = [companion("wgs84.dbf", bytes("wgs84.dbf")), companion("wgs84.PRJ", prj.as_bytes().to_vec())];
        read("wgs84.shp", &bytes("wgs84.shp"), &beside, None).map_err(|error| error.to_string())
    };
    let degree = "PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]";
    let old = format!(
        "GEOGCS[\"GCS_North_American_1927\",DATUM[\"D_North_American_1927\",SPHEROID[\"Clarke_1866\",6378206.4,294.9786982]],{degree}]"
    );
    assert!(with(&old).unwrap_err().contains("\"GCS_North_American_1927\""));
    let grads = "GEOGCS[\"WGS 84 in grads\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",6378137.0,298.257223563]],PRIMEM[\"Greenwich\",0.0],UNIT[\"Grad\",0.01570796326794897]]";
    assert!(with(grads).unwrap_err().contains("not in degrees"));
    let paris = "GEOGCS[\"From Paris\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",6378137.0,298.257223563]],PRIMEM[\"Paris\",2.337229166666667],UNIT[\"Degree\",0.0174532925199433]]";
    assert!(with(paris).unwrap_err().contains("Greenwich"));
    for garbage in ["", "no text", "GEOGCS[", "GEOGCS[\"", "PROJCS[\"a\",GEOGCS[\"b\"]]", &"A[".repeat(30_000)] {
        assert!(with(garbage).is_err(), "{garbage}");
    }
    let good = format!(
        "GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",6378137.0,298.257223563]],{degree}]"
    );
    holds_the_fields("a .prj in capitals", &with(&good).unwrap());
    // Degrees under a .prj of metres lie at the corner of the zone, and not on the farm: that is said.
    let utm = format!(
        "PROJCS[\"WGS_1984_UTM_Zone_14N\",{},PROJECTION[\"Transverse_Mercator\"],PARAMETER[\"False_Easting\",500000.0],PARAMETER[\"False_Northing\",0.0],PARAMETER[\"Central_Meridian\",-99.0],PARAMETER[\"Scale_Factor\",0.9996],PARAMETER[\"Latitude_Of_Origin\",0.0],UNIT[\"Meter\",1.0]]",
        &good
    );
    let beside = [Companion { name: "wgs84.prj".to_owned(), bytes: utm.into_bytes() }];
    let far = read("wgs84.shp", &bytes("wgs84.shp"), &beside, near()).unwrap();
    assert!(far.notes.iter().any(|note| note.contains("km from the farm")), "{:?}", far.notes);
}

#[test]
fn a_table_that_does_not_fit_is_left() {
    let with = |dbf: &[u8]| {
        let beside = [Companion { name: "wgs84.dbf".to_owned(), bytes: dbf.to_vec() }];
        read("wgs84.shp", &bytes("wgs84.shp"), &beside, near()).unwrap()
    };
    let dbf = bytes("wgs84.dbf");
    let mut short = dbf.clone();
    short[4] = 2;
    let mut long = dbf.clone();
    long[7] = 0x7f;
    let mut odd = dbf.clone();
    odd[10] = 1;
    for (wrong, why) in [(short, "2 rows for 3 shapes"), (long, "it ends after"), (odd, "lengths of its columns")] {
        let found = with(&wrong);
        assert_eq!(found.pieces[0].name, "Record 1");
        assert!(found.notes.iter().any(|note| note.contains(why)), "{why}: {:?}", found.notes);
    }
}

/// USDA NASS, Crop Sequence Boundaries 2017-2024 (revision 23), New Mexico, field 351724000000042: CSBACRES 3.00894704502425. The
/// ring is rounded to eight digits, which makes it 3.008940 acres by GeographicLib 2.1.
#[test]
fn an_official_field_has_its_official_acres() {
    let found = geojson(
        "[[[-103.41997338,35.82399971],[-103.42033271,35.82399971],[-103.4206022,35.82462854],[-103.4206022,35.82552685],\
         [-103.41970389,35.82552685],[-103.41970389,35.82426921],[-103.41997338,35.82426921],[-103.41997338,35.82399971]]]",
    );
    let found = found.unwrap();
    let acres = found.pieces[0].shape.area().to_acres();
    assert!((acres - 3.008_947_045).abs() < 1e-5, "{acres}");
    assert!((acres - 3.008_940).abs() < 1e-6, "{acres}");
    assert_eq!(found.pieces[0].mended, ["1 outer ring runs the wrong way round and is turned"]);
}

/// Square metres by GeographicLib 2.1 for cells of 0.01 degrees.
#[test]
fn cells_have_their_published_areas() {
    let cell = |south: f64| {
        let north = south + 0.01;
        geojson(&format!("[[[-100,{south}],[-99.99,{south}],[-99.99,{north}],[-100,{north}],[-100,{south}]]]")).unwrap()
    };
    for (south, area) in [(30.0, 1_069_521.174_0), (41.0, 934_284.308_6), (52.0, 764_077.618_2), (60.0, 621_587.241_5)]
    {
        let is = cell(south).pieces[0].shape.area().to_square_metres();
        assert!((is - area).abs() < 1e-3, "{south}: {is}");
    }
    let holed = "[[[-100,41],[-99.99,41],[-99.99,41.01],[-100,41.01],[-100,41]],\
                  [[-99.996,41.004],[-99.996,41.006],[-99.994,41.006],[-99.994,41.004],[-99.996,41.004]]]";
    let is = geojson(holed).unwrap().pieces[0].shape.area().to_square_metres();
    assert!((is - 896_912.936_2).abs() < 1e-3, "{is}");
}

#[test]
fn a_bow_tie_is_refused_with_its_place() {
    let bow = geojson("[[[-100,41],[-99.99,41.01],[-99.99,41],[-100,41.01],[-100,41]]]").unwrap();
    assert_eq!(bow.pieces, []);
    assert_eq!(bow.refused[0].why, "a ring crosses itself at latitude 41.005, longitude -99.995");
    assert_eq!(bow.refused[0].name, "Feature 1");
}

/// The same cell as at 100 W by GeographicLib; RFC 7946, section 3.1.9 asks for the cut.
#[test]
fn ground_on_the_180th_meridian_keeps_its_area() {
    let whole = "[[[179.995,41],[-179.995,41],[-179.995,41.01],[179.995,41.01],[179.995,41]]]";
    let far = "{\"type\":\"Polygon\",\"coordinates\":[[[179.995,41],[180.005,41],[180.005,41.01],[179.995,41.01],[179.995,41]]]}";
    let cut = "{\"type\":\"MultiPolygon\",\"coordinates\":[[[[179.995,41],[180,41],[180,41.01],[179.995,41.01],[179.995,41]]],\
               [[[-180,41],[-179.995,41],[-179.995,41.01],[-180,41.01],[-180,41]]]]}";
    let read = |text: &str| read("one.geojson", text.as_bytes(), &[], None);
    for found in [geojson(whole), read(far), read(cut)] {
        let piece = &found.unwrap().pieces[0];
        let (area, bounds) = (piece.shape.area().to_square_metres(), piece.shape.bounds());
        // Where a file cuts straight along a parallel, a geodesic bulges over it by a hair.
        assert!((area - 934_284.308_6).abs() < 0.05, "{area}");
        assert!(bounds.min().x >= -180.0 && bounds.max().x <= 180.0);
        assert_eq!(piece.shape.polygons().unwrap().0.len(), 2);
    }
}

#[test]
fn swapped_latitude_and_longitude_are_known_by_the_farm_or_not_at_all() {
    let swapped = "[[[41,-96.41],[41,-96.4],[41.01,-96.4],[41.01,-96.41],[41,-96.41]]]";
    let text = format!("{{\"type\":\"Polygon\",\"coordinates\":{swapped}}}");
    // -96 is no latitude.
    let found = read("a.json", text.as_bytes(), &[], None).unwrap();
    assert!(found.notes[0].starts_with("latitude and longitude stand in each other's place and are swapped"));
    assert!((found.pieces[0].shape.bounds().min().x + 96.41).abs() < 1e-9);
    // 10 and 50 may both be either.
    let text = "{\"type\":\"Polygon\",\"coordinates\":[[[50,10],[50.01,10],[50.01,10.01],[50,10.01],[50,10]]]}";
    let place = |latitude: f64, longitude: f64| {
        let (latitude, longitude) = (Latitude::from_degrees(latitude)?, Longitude::from_degrees(longitude)?);
        Some(Position { latitude, longitude })
    };
    let at = |near| read("a.json", text.as_bytes(), &[], near).unwrap();
    assert!((at(place(50.1, 10.2)).pieces[0].shape.bounds().min().x - 10.0).abs() < 1e-9);
    assert!((at(place(10.1, 50.2)).pieces[0].shape.bounds().min().x - 50.0).abs() < 1e-9);
    assert_eq!(at(place(10.1, 50.2)).notes, Vec::<String>::new());
    for near in [None, place(-30.0, 150.0)] {
        let left = at(near);
        assert!((left.pieces[0].shape.bounds().min().x - 50.0).abs() < 1e-9);
        assert!(left.notes[0].contains("latitude 10.005, longitude 50.005"), "{:?}", left.notes);
    }
}

#[test]
fn a_named_reference_system_is_wgs_84_or_refused() {
    let of = |name: &str| {
        let text = format!(
            "{{\"type\":\"FeatureCollection\",\"crs\":{{\"type\":\"name\",\"properties\":{{\"name\":\"{name}\"}}}},\"features\":[]}}"
        );
        read("a.json", text.as_bytes(), &[], None).map(|found| found.pieces.len()).map_err(|error| error.to_string())
    };
    for known in
        ["urn:ogc:def:crs:OGC:1.3:CRS84", "urn:ogc:def:crs:OGC::CRS84", "EPSG:4326", "urn:ogc:def:crs:EPSG::4326"]
    {
        assert_eq!(of(known), Ok(0));
    }
    for other in ["EPSG:26915", "urn:ogc:def:crs:EPSG::3857", "EPSG:14326", "EPSG:43260"] {
        assert!(of(other).unwrap_err().contains(other), "{other}");
    }
}

#[test]
fn pieces_are_matched_by_name_and_by_ground_and_taken_in_one_step() {
    let found = found("fields.geojson");
    let farm = Farm::new("Two fields (demo)");
    let becomes = suggest(&farm, &found);
    assert_eq!(becomes[..3], [Becomes::NewField, Becomes::NewField, Becomes::NewField]);
    let (mut farm, taken) = take(&farm, &found, &becomes);
    assert_eq!(taken.fields, ["mill-field", "ridge-north", "två-ängar"]);
    assert_eq!(taken.surroundings, ["mill-creek", "yard-well"]);
    let mill = &farm.fields["mill-field"];
    assert_eq!((mill.area.text(), mill.crop.as_str()), ("78.5075 ac", "soybean"));
    assert!(is_near(mill.area.to_acres(), 78.507_537, 1e-6));
    // By name, capitals and white space apart; by ground under another name.
    farm.fields["mill-field"].name = "MILL  field".to_owned();
    farm.fields["ridge-north"].name = "The long one".to_owned();
    let text = write_geojson(&farm, &["mill-field".to_owned(), "ridge-north".to_owned()]);
    let again = read("a.geojson", text.replace("The long one", "Ridge").as_bytes(), &[], near()).unwrap();
    let becomes = suggest(&farm, &again);
    assert_eq!(becomes, [Becomes::Boundary("mill-field".to_owned()), Becomes::Boundary("ridge-north".to_owned())]);
    let before = farm.fields["mill-field"].area.clone();
    let (after, taken) = take(&farm, &again, &becomes);
    assert_eq!(taken.boundaries, ["mill-field", "ridge-north"]);
    assert_eq!(after.fields["mill-field"].area, before);
    assert_eq!(after, farm);
}

#[test]
fn a_way_in_belongs_to_the_field_it_is_said_to_lead_into_or_the_nearest() {
    let farm = take(&Farm::new("One"), &found("fields.geojson"), &[Becomes::NewField]).0;
    let task = found("TASKDATA.XML");
    let becomes = suggest(&farm, &task);
    assert_eq!(becomes.last(), Some(&Becomes::NewField));
    let gate = task.pieces.iter().position(|piece| piece.is == Is::Gateway).unwrap();
    assert_eq!(becomes[gate], Becomes::Gateway("mill-field".to_owned()));
    let (entered, taken) = take(&farm, &task, &becomes);
    assert_eq!((taken.gateways, entered.fields["mill-field"].gateways[0].name.as_str()), (1, "West gate"));
    // Under another name it is the one whose edge it lies on, and none where it lies in the middle of nowhere.
    let mut other = farm.clone();
    other.fields["mill-field"].name = "Other".to_owned();
    assert_eq!(suggest(&other, &task)[gate], Becomes::Gateway("mill-field".to_owned()));
    let mut far = task.clone();
    far.pieces[gate].shape = Shape::parse("POINT (-96.4065 41.2025)").unwrap();
    assert_eq!(suggest(&other, &far)[gate], Becomes::Nothing);
}

#[test]
fn several_pieces_make_one_boundary_unless_they_overlap() {
    let square = |x: f64| {
        format!(
            "{{\"type\":\"Feature\",\"properties\":{{\"name\":\"Home\"}},\"geometry\":{{\"type\":\"Polygon\",\"coordinates\":\
             [[[{x},41],[{0},41],[{0},41.01],[{x},41.01],[{x},41]]]}}}}",
            x + 0.01
        )
    };
    let pieces = |second: f64| {
        let text = format!("{{\"type\":\"FeatureCollection\",\"features\":[{},{}]}}", square(-96.4), square(second));
        read("a.geojson", text.as_bytes(), &[], None).unwrap()
    };
    let (apart, over) = (pieces(-96.38), pieces(-96.395));
    let (farm, _) = take(&Farm::new("One"), &apart, &[Becomes::NewField, Becomes::Nothing]);
    let both = suggest(&farm, &apart);
    assert_eq!(both, [Becomes::Boundary("home".to_owned()), Becomes::Boundary("home".to_owned())]);
    let (joined, _) = take(&farm, &apart, &both);
    let area = |farm: &Farm| farm.fields["home"].boundary.as_ref().unwrap().area().to_square_metres();
    assert!(is_near(area(&joined), 2.0 * area(&farm), 1e-9));
    let (left, taken) = take(&farm, &over, &both);
    assert_eq!(left, farm);
    assert!(taken.notes[0].contains("two parts overlap"), "{:?}", taken.notes);
}

fn fields_and_areas(found: &Found) -> Vec<(String, Area)> {
    let fields = found.pieces.iter().filter(|piece| piece.shape.polygons().is_some());
    fields.map(|piece| (piece.name.clone(), piece.shape.area())).collect()
}

#[test]
fn every_boundary_is_written_and_read_back_with_its_area() {
    let names = ["fields.geojson", "wgs84.zip", "utm.zip", "web.zip", "simple.kml", "TASKDATA.XML"];
    for name in names {
        let first = found(name);
        let becomes: Vec<Becomes> = first.pieces.iter().map(|_| Becomes::NewField).collect();
        let (farm, _) = take(&Farm::new("Copy"), &first, &becomes);
        let ids: Vec<_> = farm.fields.keys().cloned().collect();
        let second = read("a.geojson", write_geojson(&farm, &ids).as_bytes(), &[], None).unwrap();
        let (first, second) = (fields_and_areas(&first), fields_and_areas(&second));
        assert_eq!(first.len(), second.len());
        for ((name, area), (again, same)) in first.into_iter().zip(second) {
            assert_eq!(name, again);
            assert!(is_near(same.to_square_metres(), area.to_square_metres(), 1e-9));
        }
    }
}

/// The demo farm with the invented ground under the fields of a pass without a Stop.
fn farm_with_ground() -> (Farm, String) {
    let mut farm = demo::farm().unwrap();
    let level = |id: &String| tankard_core::plan::plan(&farm, id).and_then(|plan| plan.level());
    let stop = Some(tankard_core::finding::Level::Stop);
    let pass = farm.passes.keys().find(|id| level(id) != stop).unwrap().clone();
    let ground = found("fields.geojson");
    for (id, piece) in farm.passes[&pass].fields.clone().iter().zip(&ground.pieces) {
        farm.fields[id.as_str()].boundary = Some(piece.shape.clone());
    }
    (farm, pass)
}

#[test]
fn task_data_carries_the_ground_the_mixture_and_its_rate() {
    let (mut farm, pass) = farm_with_ground();
    // The rate: 15 US gallons on an acre are 140.309 litres on a hectare (NIST SP 811, table B.8: 3.785412 L, 4046.873 m²), and
    // entity 1 of the data dictionary counts hundredths of mm³/m².
    farm.passes[&pass].carrier = AsTyped::parse("15 gal/ac").ok();
    let task = write_taskdata(&farm, &pass).unwrap();
    let attribute = |element: &str, name: &str| -> Vec<String> {
        let lines = task.xml.lines().filter(|line| line.trim_start().starts_with(&format!("<{element} ")));
        let value = |line: &str| Some(line.split_once(&format!(" {name}=\""))?.1.split_once('"')?.0.to_owned());
        lines.filter_map(value).collect()
    };
    let fields = farm.passes[&pass].fields.len();
    assert_eq!(attribute("PFD", "C").len(), fields);
    assert_eq!(attribute("TSK", "E").len(), fields);
    assert_eq!(attribute("PDV", "A"), vec!["0001"; fields]);
    let rate: f64 = attribute("PDV", "B")[0].parse().unwrap();
    assert!((rate - 1_403_090.0).abs() < 10.0, "{rate}");
    let scale: f64 = attribute("VPN", "C")[0].parse().unwrap();
    assert!((rate * scale - 15.0).abs() < 0.005);
    assert_eq!(attribute("VPN", "E"), ["gal/ac"]);
    let plan = tankard_core::plan::plan(&farm, &pass).unwrap();
    assert_eq!(attribute("PDT", "A").len(), plan.lines.len() + 1);
    assert_eq!(attribute("PRN", "B").len(), plan.lines.len());
    let back = read("TASKDATA.XML", task.xml.as_bytes(), &[], near()).unwrap();
    // The ways into a field come after it.
    let grounds: Vec<_> = back.pieces.iter().filter(|piece| piece.shape.polygons().is_some()).collect();
    assert_eq!(grounds.len(), fields);
    for (id, piece) in farm.passes[&pass].fields.iter().zip(grounds) {
        let boundary = farm.fields[id.as_str()].boundary.as_ref().unwrap();
        assert_eq!(piece.name, farm.fields[id.as_str()].name);
        assert!(is_near(piece.shape.area().to_square_metres(), boundary.area().to_square_metres(), 1e-9));
    }
    let packed = task.packed().unwrap();
    assert_eq!(read("task.zip", &packed, &[], near()).unwrap(), back);
}

#[test]
fn names_that_are_markup_or_formulas_stay_names() {
    let (mut farm, pass) = farm_with_ground();
    let id = farm.passes[&pass].fields[0].clone();
    let name = "=1+1 <&\"'> \u{1}ö";
    farm.fields[id.as_str()].name = name.to_owned();
    let task = write_taskdata(&farm, &pass).unwrap();
    assert_eq!(read("t.xml", task.xml.as_bytes(), &[], None).unwrap().pieces[0].name, "=1+1 <&\"'> ö");
    let text = write_geojson(&farm, &[id]);
    assert_eq!(read("t.json", text.as_bytes(), &[], None).unwrap().pieces[0].name, "=1+1 <&\"'> ö");
}

#[test]
fn a_pass_with_a_stop_or_without_a_rate_is_not_sent() {
    let (mut farm, pass) = farm_with_ground();
    farm.passes[&pass].carrier = None;
    assert!(write_taskdata(&farm, &pass).unwrap_err().contains("spray volume"));
    assert!(write_taskdata(&farm, "none").unwrap_err().contains("no pass"));
}

fn problem(name: &str, bytes: &[u8]) -> String {
    match read(name, bytes, &[], None) {
        Err(error) => error.to_string(),
        Ok(found) => panic!("{name} was read: {found:?}"),
    }
}

#[test]
fn files_that_swell_or_nest_are_refused() {
    // Depth.
    assert!(problem("deep.json", "[".repeat(5_000_000).as_bytes()).contains("cannot be read"));
    let collection = "{\"type\":\"GeometryCollection\",\"geometries\":[".repeat(100_000);
    assert!(problem("deep.json", collection.as_bytes()).contains("cannot be read"));
    let folders = format!("<kml>{}", "<Folder>".repeat(1_000_000));
    assert!(problem("deep.kml", folders.as_bytes()).contains("within one another"));
    let nested = format!("<kml><Placemark>{}", "<MultiGeometry>".repeat(1_000_000));
    assert!(problem("deep.kml", nested.as_bytes()).contains("within one another"));
    // Entities.
    let bomb = "<?xml version=\"1.0\"?><!DOCTYPE kml [<!ENTITY a \"aaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>\
                <kml><Placemark><name>&b;</name></Placemark></kml>";
    assert!(problem("bomb.kml", bomb.as_bytes()).contains("entities of its own"));
    let unknown = "<kml><Placemark><name>&lol;</name></Placemark></kml>";
    assert!(problem("lol.kml", unknown.as_bytes()).contains("\"&lol;\" is not known"));
    // Points.
    let many = format!("{{\"type\":\"MultiPoint\",\"coordinates\":[[0,0]{}]}}", ",[1,1]".repeat(4_000_000));
    assert!(problem("many.json", many.as_bytes()).contains("more than 1000000 points"));
    let many = format!("<kml><Placemark><LineString><coordinates>{}", "1,1 ".repeat(1_100_000));
    assert!(
        problem("many.kml", (many + "</coordinates></LineString></Placemark></kml>").as_bytes()).contains("points")
    );
    // What is packed.
    let mut packed = zip::ZipWriter::new(Cursor::new(Vec::new()));
    packed.start_file("doc.kml", zip::write::SimpleFileOptions::default()).unwrap();
    for _ in 0..70 {
        packed.write_all(&vec![b' '; 1 << 20]).unwrap();
    }
    let packed = packed.finish().unwrap().into_inner();
    assert!(packed.len() < 1 << 20);
    assert!(problem("bomb.kmz", &packed).contains("larger than 64 MB"));
    // Size.
    assert!(problem("large.json", &vec![b' '; (64 << 20) + 1]).contains("larger than 64 MB"));
}

/// Each of these took the square of its length: hours for a file of a few megabytes.
#[test]
fn floods_of_one_thing_take_no_square_of_time() {
    use std::fmt::Write as _;
    let mut flood = String::from("<kml><Placemark");
    for number in 0..1_000_000 {
        write!(flood, " a{number}=\"\"").unwrap();
    }
    flood.push_str("/></kml>");
    assert!(problem("attributes.kml", flood.as_bytes()).contains("\"Placemark\" has more than 256 attributes"));
    // The same further file named again and again.
    let named = format!("<ISO11783_TaskData>{}</ISO11783_TaskData>", "<XFR A=\"PFD00000\"/>".repeat(500_000));
    let further = format!("<XFC><!--{}--></XFC>", "-".repeat(1 << 20));
    let beside = Companion { name: "PFD00000.XML".to_owned(), bytes: further.into_bytes() };
    let found = read("TASKDATA.XML", named.as_bytes(), &[beside], None).unwrap();
    assert_eq!((found.pieces.len(), found.refused.len()), (0, 0));
    // As many pieces of one name as are read.
    let point = "{\"type\":\"Feature\",\"properties\":{\"name\":\"Tree\"},\"geometry\":{\"type\":\"Point\",\"coordinates\":[-96.4,41.2]}},";
    let all =
        format!("{{\"type\":\"FeatureCollection\",\"features\":[{}]}}", point.repeat(20_000).trim_end_matches(','));
    let found = read("trees.geojson", all.as_bytes(), &[], near()).unwrap();
    let farm = Farm::new("Trees");
    let (farm, taken) = take(&farm, &found, &suggest(&farm, &found));
    assert_eq!((farm.surroundings.len(), taken.surroundings.len()), (20_000, 20_000));
    assert!(farm.surroundings.contains_key("tree-20000"));
}

#[test]
fn files_that_are_something_else_are_refused_with_what_to_do() {
    for (name, bytes) in
        [("a.txt", &b"hello"[..]), ("a.gpx", b"<gpx/>"), ("a.json", b"3"), ("a", b""), ("a.zip", b"PK\x05\x06")]
    {
        assert!(problem(name, bytes).contains("no GeoJSON, shapefile, KML or task data"), "{name}");
    }
    assert!(problem("a.dbf", &bytes("wgs84.dbf")).contains("open the .shp"));
    assert!(problem("a.json", b"{\"type\":\"Topology\"}").contains("GeoJSON cannot be read"));
    assert!(problem("a.json", b"{\"type\":\"Point\",\"coordinates\":[NaN,1]}").contains("line 1"));
}

#[test]
fn heads_of_shapefiles_are_not_believed() {
    let shp = bytes("wgs84.shp");
    let with = |at: usize, number: i32, is_big: bool| {
        let mut shp = shp.clone();
        shp[at..at + 4].copy_from_slice(&if is_big { number.to_be_bytes() } else { number.to_le_bytes() });
        read("a.shp", &shp, &[], None)
    };
    // The first record begins at 100; its parts are counted at 144 and its points at 148.
    for number in [i32::MAX, -1, i32::MIN, 1_000_000, 0x1000_0000] {
        for at in [144, 148] {
            let refused =
                with(at, number, false).map_or_else(|error| error.to_string(), |found| found.refused[0].why.clone());
            assert!(refused.contains("shorter than it says") || refused.contains("points"), "{refused}");
        }
        let _ = with(104, number, true);
        let _ = with(152, number, false);
    }
    // A point that is no number.
    let mut odd = shp.clone();
    odd[156..164].copy_from_slice(&f64::NAN.to_le_bytes());
    assert!(read("a.shp", &odd, &[], None).unwrap().refused[0].why.contains("no number"));
    // The first record ends at 236.
    for end in 0..shp.len() {
        match read("a.shp", &shp[..end], &[], None) {
            Ok(found) => assert!(found.pieces.len() < 3 && found.refused.len() <= 1, "cut at {end}"),
            Err(error) => assert!(end < 236 && !error.to_string().is_empty(), "cut at {end}: {error}"),
        }
    }
}

#[test]
fn a_ring_made_to_be_looked_through_for_ever_is_not() {
    // A comb whose teeth all overlap in x and in y, and whose every edge crosses half of the others.
    let points: Vec<String> = (0..60_000)
        .map(|n| format!("[{},{}]", f64::from(n % 2) + f64::from(n) * 1e-9, f64::from(n * 7 % 60_000) * 1e-5))
        .collect();
    let found = geojson(&format!("[[{}]]", points.join(","))).unwrap();
    assert!(
        found.refused[0].why.contains("crosses itself") || found.refused[0].why.contains("cannot be looked through")
    );
}

/// The survey that lies beside the demo farm: what it is meant to show is told in the folder's own page.
#[test]
fn the_demo_survey_shows_what_it_is_meant_to() {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-farm/boundaries.geojson");
    let (found, mut farm) = (open(&path, near(), &untold).unwrap(), demo::farm().unwrap());
    assert_eq!((found.pieces.len(), found.refused.len()), (8, 1));
    // With the demo's own boundaries, the piece whose name no field has is known by its ground.
    assert_eq!(suggest(&farm, &found)[3], Becomes::Boundary("church-corner".to_owned()));
    farm.fields.values_mut().for_each(|field| field.boundary = None);
    assert!(found.refused[0].why.starts_with("a ring crosses itself"));
    let becomes = suggest(&farm, &found);
    let named = |id: &str| Becomes::Boundary(id.to_owned());
    assert_eq!(becomes[..3], [named("mill-field"), named("long-bottom"), named("hill-sixty")]);
    assert_eq!(becomes[4..6], [Becomes::NewField, Becomes::NewField]);
    assert_eq!(becomes[6..], [Becomes::Surrounding(Water), Becomes::Surrounding(Well)]);
    // Once the farm has boundaries, the piece with another name is known by its ground.
    let (mut known, _) = take(&farm, &found, &becomes);
    let id = known.fields.keys().find(|id| id.starts_with("church-corner-")).unwrap().clone();
    known.fields[id.as_str()].name = "Vicar's piece".to_owned();
    assert_eq!(suggest(&known, &found)[3], Becomes::Boundary(id));
}

#[test]
fn a_county_is_read_whole() {
    let found = read("county.geojson", ground::geojson(200, 100).as_bytes(), &[], near()).unwrap();
    assert_eq!((found.pieces.len(), found.refused.len()), (200, 0));
    let farm = ground::farm(200, 100).unwrap();
    for (piece, field) in found.pieces.iter().zip(farm.fields.values()) {
        assert_eq!(Some(piece.shape.area()), field.boundary.as_ref().map(Shape::area));
    }
}

/// Files to break.
const BREAKABLE: [&str; 10] = [
    "fields.geojson",
    "wgs84.shp",
    "wgs84.dbf",
    "wgs84.prj",
    "utm.zip",
    "simple.kml",
    "simple.kmz",
    "fast.kml",
    "TASKDATA.XML",
    "taskdata.zip",
];

/// What gets written over them.
const PIECES: [&[u8]; 12] =
    [b"", b"<", b">", b"\"", b"[", b"]", b"-1e308", b"180", b"-180", b"NaN", b"&", b"\x7f\xff\xff\xff"];

/// Files with bytes cut out, doubled and overwritten.
fn mutated() -> impl Strategy<Value = (&'static str, Vec<u8>)> {
    let piece = prop_oneof![
        prop::collection::vec(any::<u8>(), 0..9),
        prop::sample::select(&PIECES[..]).prop_map(<[u8]>::to_vec),
    ];
    let cut = (any::<prop::sample::Index>(), 0..12_usize, piece);
    let cuts = prop::collection::vec(cut, 1..5);
    (prop::sample::select(&BREAKABLE[..]), cuts).prop_map(|(name, cuts)| {
        let mut bytes = bytes(name);
        for (at, length, piece) in cuts {
            let start = at.index(bytes.len() + 1);
            let end = (start + length).min(bytes.len());
            bytes.splice(start..end, piece);
        }
        (name, bytes)
    })
}

proptest! {
    #![proptest_config(cases(400))]

    #[test]
    fn broken_files_are_refused_or_read_and_never_stop_the_program((name, broken) in mutated()) {
        let companion = |name: &str, bytes: Vec<u8>| Companion { name: name.to_owned(), bytes };
        let found = match name {
            "wgs84.dbf" | "wgs84.prj" => read("wgs84.shp", &bytes("wgs84.shp"), &[companion(name, broken)], near()),
            _ => read(name, &broken, &[companion("wgs84.dbf", bytes("wgs84.dbf"))], near()),
        };
        match found {
            Ok(found) => {
                let farm = ground::farm(3, 8).unwrap();
                let becomes = suggest(&farm, &found);
                let (after, _) = take(&farm, &found, &becomes);
                let ids: Vec<_> = after.fields.keys().chain(after.surroundings.keys()).cloned().collect();
                // What was taken is good enough to be read again.
                let again = read("again.geojson", write_geojson(&after, &ids).as_bytes(), &[], None).unwrap();
                prop_assert_eq!(again.refused, []);
                let text = tankard_file::write(&after).unwrap();
                let read = tankard_file::read(text.as_bytes());
                prop_assert!(read.is_ok(), "{:?}", read.err());
                prop_assert_eq!(read.ok(), Some(after));
            }
            Err(error) => prop_assert!(!error.to_string().is_empty()),
        }
    }

    /// `geo`'s own validation, which holds each edge against each other one.
    #[test]
    fn mended_rings_hold_before_another_validation(corners in prop::collection::vec((0..6_i32, 0..6_i32), 3..9)) {
        let ring: Vec<Coord<f64>> = corners.iter().map(|&(x, y)| Coord { x: f64::from(x), y: f64::from(y) }).collect();
        let raw = Polygon::new(LineString(ring.clone()), Vec::new());
        let mut apart = corners.clone();
        apart.sort_unstable();
        apart.dedup();
        match mend(vec![vec![ring]], Turn::Either) {
            Ok(done) => {
                prop_assert!(done.polygons.is_valid(), "{:?}", done);
                prop_assert!(done.polygons.iter().all(|part| part.geodesic_area_signed() > 0.0));
            }
            Err(why) => prop_assert!(apart.len() < corners.len() || raw.unsigned_area() == 0.0 || !raw.is_valid(), "{}: {:?}", why, raw),
        }
    }
}
