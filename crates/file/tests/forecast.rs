//! Forecasts as invented files lay them out, each with what must come of it.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::fmt::Write as _;

use jiff::civil::{DateTime, datetime};
use jiff::tz::{TimeZone, TimeZoneDatabase};
use tankard_core::farm::{Farm, FileLayout, Holds, Hour};
use tankard_core::quantity::{AsTyped, Quantity};
use tankard_file::forecast_csv::{self, Reading, Table, TableError, guess, read, units};

fn zone(name: &str) -> TimeZone {
    TimeZoneDatabase::bundled().get(name).unwrap()
}

fn table(text: &str) -> Table {
    forecast_csv::table(text.as_bytes()).unwrap()
}

/// Reads with the layout that is suggested, on a farm in Chicago.
fn by_guess(text: &str) -> Reading {
    in_zone(text, "America/Chicago")
}

/// The same on a farm elsewhere.
fn in_zone(text: &str, name: &str) -> Reading {
    let table = table(text);
    read(&table, &guess(&table, &[]), Some(&zone(name)))
}

fn texts<Q: Quantity>(reading: &Reading, of: impl Fn(&Hour) -> &Option<AsTyped<Q>>) -> Vec<String> {
    reading.hours.iter().map(|hour| of(hour).as_ref().map(|own| own.text().to_owned()).unwrap_or_default()).collect()
}

fn times(reading: &Reading) -> Vec<String> {
    reading
        .hours
        .iter()
        .map(|hour| format!("{}{}", hour.at.strftime("%d %H:%M"), if hour.again { " again" } else { "" }))
        .collect()
}

fn refused(reading: &Reading) -> Vec<(u64, &str)> {
    reading.refused.iter().map(|refused| (refused.line, refused.why.as_str())).collect()
}

fn holds(layout: &FileLayout) -> Vec<(&str, Holds, &str)> {
    layout.takes.iter().map(|take| (take.column.as_str(), take.holds, take.unit.as_str())).collect()
}

fn june(day: i8, hour: i8) -> DateTime {
    datetime(2031, 6, day, hour, 0, 0, 0)
}

const PLAIN: &str = "time,temp (°C),rh (%),wind (km/h),gust (km/h),wdir (°),precip (mm),cloud (%)
2031-06-12 05:00,14.2,88,9,15,225,0,20
2031-06-12 06:00,14.9,84,11,17,230,0.2,35
";

#[test]
fn a_plain_file_is_read_with_its_texts() {
    let reading = by_guess(PLAIN);
    assert_eq!(reading.to_choose, [""; 0]);
    assert!(reading.refused.is_empty());
    let first = &reading.hours[0];
    assert_eq!((first.at, first.again), (june(12, 5), false));
    assert_eq!(texts(&reading, |hour| &hour.temperature), ["14.2 °C", "14.9 °C"]);
    assert_eq!(texts(&reading, |hour| &hour.humidity), ["88 %", "84 %"]);
    assert_eq!(texts(&reading, |hour| &hour.wind), ["9 km/h", "11 km/h"]);
    assert_eq!(texts(&reading, |hour| &hour.gust), ["15 km/h", "17 km/h"]);
    assert_eq!(texts(&reading, |hour| &hour.wind_from), ["225°", "230°"]);
    assert_eq!(texts(&reading, |hour| &hour.rain), ["0 mm", "0.2 mm"]);
    assert_eq!(texts(&reading, |hour| &hour.cloud), ["20 %", "35 %"]);
    // 225 degrees from north is southwest, by the definition of the compass.
    assert_eq!(first.wind_from.as_ref().unwrap().point(), "SW");
    assert!((first.wind.as_ref().unwrap().to_metres_per_second() - 2.5).abs() < 1e-9);
}

// Lines of metadata before the header, with as many columns as the body has and a header of their own.
#[test]
fn lines_before_the_header_are_passed_over() {
    let text = "latitude,longitude,elevation,offset_seconds,place\n41.2,-96.4,330,-18000,Invented Flats\n\n\n\
        time,temperature_2m (°C),relative_humidity_2m (%),wind_speed_10m (km/h),wind_speed_80m (km/h)\n\
        2031-06-12T05:00,14.2,88,9,21\n2031-06-12T06:00,14.9,abc,11,22\n";
    let table = table(text);
    assert_eq!(table.header[1], "temperature_2m (°C)");
    assert_eq!(table.rows[1].line, 7);
    // Of two winds the one nearer to the ground is taken.
    let layout = guess(&table, &[]);
    assert_eq!(
        holds(&layout),
        [
            ("time", Holds::DateAndTime, "year-month-day"),
            ("temperature_2m (°C)", Holds::Temperature, "°C"),
            ("relative_humidity_2m (%)", Holds::Humidity, "%"),
            ("wind_speed_10m (km/h)", Holds::Wind, "km/h"),
        ]
    );
    let reading = read(&table, &layout, None);
    assert_eq!(reading.hours.len(), 1);
    assert_eq!(refused(&reading), [(7, "humidity \"abc\": \"abc\" does not begin with a number")]);
}

#[test]
fn remarks_a_made_on_line_and_a_foot_do_not_disturb() {
    let text = "# A forecast for nobody\n# made on; 2031-06-11 18:00\nDatum;Temperatur [°C];Wind [m/s];Regen [mm]\n\
        12.06.2031 05:00;14,2;2,5;0\n12.06.2031 06:00;14,9;3;1,250\nEnd of the file\n";
    let reading = by_guess(text);
    assert_eq!(times(&reading), ["12 05:00", "12 06:00"]);
    assert_eq!(texts(&reading, |hour| &hour.temperature), ["14,2 °C", "14,9 °C"]);
    assert_eq!(texts(&reading, |hour| &hour.wind), ["2,5 m/s", "3 m/s"]);
    // In a file with a decimal comma "1,250" is not a thousand; the farm keeps it so that it cannot be misread.
    assert_eq!(texts(&reading, |hour| &hour.rain), ["0 mm", "1.250 mm"]);
    assert_eq!(refused(&reading), [(6, "it has 1 column and the header has 4")]);
}

#[test]
fn a_dot_among_decimal_commas_is_refused() {
    // Far enough down that it does not decide how the file is laid out.
    let many = (0..450).fold(String::from("date;temp (°C)\n"), |mut all, at| {
        let figure = if at == 449 { "14.250" } else { "14,2" };
        let _ = writeln!(all, "{:02}.06.2031 {:02}:00;{figure}", 1 + at / 24, at % 24);
        all
    });
    let reading = by_guess(&many);
    assert_eq!(reading.hours.len(), 449);
    assert_eq!(reading.refused[0].line, 451);
    assert!(reading.refused[0].why.contains("decimal comma"), "{}", reading.refused[0].why);
}

#[test]
fn a_line_of_units_below_the_header_gives_the_units() {
    let text = "Station Nowhere\n\nLocal time\tAir temp\tRH\tWind speed\tWind dir\tRain\n\
        -\tdeg F\t%\tmph\tdeg\tinches\n2031-06-12 05:00\t57.6\t88\t5.6\t225\t0\n";
    let table = table(text);
    assert_eq!(table.separator, '\t');
    assert_eq!(table.header[..2], ["Local time", "Air temp (deg F)"]);
    assert_eq!(table.rows[0].line, 5);
    let reading = read(&table, &guess(&table, &[]), None);
    assert_eq!(reading.to_choose, [""; 0]);
    assert_eq!(texts(&reading, |hour| &hour.temperature), ["57.6 °F"]);
    assert_eq!(texts(&reading, |hour| &hour.rain), ["0 in"]);
}

#[test]
fn a_unit_that_is_written_nowhere_waits_for_a_choice() {
    let table = table("time,temp,wind,precip\n2031-06-12 05:00,57.6,5.6,0\n2031-06-12 06:00,58,6,0\n");
    let mut layout = guess(&table, &[]);
    let reading = read(&table, &layout, None);
    assert!(reading.hours.is_empty());
    assert_eq!(
        reading.to_choose,
        [
            "choose the unit of \"temp\"; the file does not say it",
            "choose the unit of \"wind\"; the file does not say it",
            "choose the unit of \"precip\"; the file does not say it",
        ]
    );
    for take in &mut layout.takes {
        take.unit = match take.holds {
            Holds::Temperature => "°F".to_owned(),
            Holds::Wind => "kn".to_owned(),
            Holds::Rain => "in".to_owned(),
            _ => take.unit.clone(),
        };
    }
    let reading = read(&table, &layout, None);
    assert_eq!(texts(&reading, |hour| &hour.wind), ["5.6 kn", "6 kn"]);
    // The choice is remembered by the header, and another header does not get it.
    assert_eq!(guess(&table, &[layout.clone()]), layout);
    let other = forecast_csv::table(b"time,temp,wind\n2031-06-12 05:00,57.6,5.6\n").unwrap();
    assert_ne!(guess(&other, &[layout.clone()]), layout);
    layout.takes[1].unit = "furlongs".to_owned();
    assert!(read(&table, &layout, None).to_choose[0].contains("no unit known for air"));
}

#[test]
fn figures_with_units_of_their_own_and_points_of_the_compass_need_none() {
    let text = "Time,Temperature,Wind,Wind direction,Chance of rain\n2031-06-12 05:00,58 °F,6 mph,SW,10 %\n\
        2031-06-12 06:00,59 °F,7 mph,calm,15 %\n2031-06-12 07:00,61,8 mph,W,15 %\n";
    let reading = by_guess(text);
    assert_eq!(reading.to_choose, [""; 0]);
    assert_eq!(texts(&reading, |hour| &hour.temperature), ["58 °F", "59 °F"]);
    assert_eq!(texts(&reading, |hour| &hour.wind_from), ["SW", ""]);
    assert_eq!(texts(&reading, |hour| &hour.rain_chance), ["10 %", "15 %"]);
    assert_eq!(refused(&reading), [(4, "air \"61\": the unit is missing: °F or °C")]);
}

#[test]
fn day_and_time_may_stand_apart_with_strokes_and_noon() {
    let text = "Date,Hour,Temp (F),Humidity (%)\n06/12/2031,12 AM,60,80\n06/12/2031,5:00 AM,58,85\n\
        06/12/2031,12:00 PM,71,60\n06/12/2031,5 pm,75,50\n06/13/2031,13 PM,75,50\n";
    let table = table(text);
    let mut layout = guess(&table, &[]);
    // 06/12 is June or December; nobody but the user can say.
    assert_eq!(holds(&layout)[..2], [("Date", Holds::Date, ""), ("Hour", Holds::Time, "")]);
    assert_eq!(read(&table, &layout, None).to_choose, ["choose how the days of \"Date\" are written"]);
    layout.takes[0].unit = "month/day/year".to_owned();
    let reading = read(&table, &layout, None);
    assert_eq!(times(&reading), ["12 00:00", "12 05:00", "12 12:00", "12 17:00"]);
    assert_eq!(reading.hours[0].at, june(12, 0));
    assert_eq!(refused(&reading), [(6, "\"13 PM\" is no time of day")]);
    layout.takes[0].unit = "day/month/year".to_owned();
    let reading = read(&table, &layout, None);
    assert_eq!(reading.hours[0].at, datetime(2031, 12, 6, 0, 0, 0, 0));
}

#[test]
fn hours_counted_to_24_end_the_day() {
    let text = "date,hour,temp_c\n2031-06-12,23,14\n2031-06-12,24,13.5\n2031-06-13,1,13\n";
    assert_eq!(times(&by_guess(text)), ["12 23:00", "13 00:00", "13 01:00"]);
    // A day alone is no hour.
    let reading = by_guess("date,temp_c\n2031-06-12,14\n2031-06-13,14\n");
    assert_eq!(reading.to_choose, ["choose the column that holds the time of day"]);
}

#[test]
fn seconds_since_1970_are_put_on_the_farms_clock() {
    // 2031-06-12 10:00 UTC; checked with the date command of GNU coreutils 9.1 (derived).
    let text = "unixtime,temp_c,wind_kmh\n1939024800,14.2,9\n1939028400,14.9,11\n1939028400000,15,11\n";
    let table = table(text);
    let layout = guess(&table, &[]);
    assert_eq!(layout.takes[0].unit, "unix");
    let reading = read(&table, &layout, Some(&zone("America/Chicago")));
    assert_eq!(times(&reading), ["12 05:00", "12 06:00"]);
    assert_eq!(refused(&reading), [(4, "\"1939028400000\" is too large for seconds since 1970")]);
    let without = read(&table, &layout, None);
    assert!(without.hours.is_empty());
    assert!(without.to_choose[0].contains("time zone"), "{:?}", without.to_choose);
    // Under a heading that does not say so, a large number may be anything.
    let table = forecast_csv::table(b"time,temp_c\n1939024800,14.2\n1939028400,14.9\n").unwrap();
    assert_eq!(guess(&table, &[]).takes[0].unit, "");
}

#[test]
fn offsets_and_utc_are_put_on_the_farms_clock() {
    for time in ["2031-06-12T10:00Z", "2031-06-12 12:00+02:00", "2031-06-12T05:00:00-0500", "20310612T1000 UTC"] {
        let reading = by_guess(&format!("time,temp_c\n{time},14.2\n"));
        assert_eq!(times(&reading), ["12 05:00"], "{time}");
    }
    let reading = by_guess("time (UTC),temp_c\n2031-06-12 10:00,14.2\n");
    assert_eq!(times(&reading), ["12 05:00"]);
    // Where only the lines above speak of UTC it is asked.
    let reading = by_guess("Run of 00 UTC\ntime,temp_c\n2031-06-12 10:00,14.2\n");
    assert_eq!(reading.to_choose, ["choose how the days of \"time\" are written"]);
    let reading = by_guess("time,temp_c\n2031-06-12 05:00 CDT,14.2\n2031-06-12 06:00,14.2\n");
    assert_eq!(refused(&reading), [(2, "\"05:00 CDT\" is no time of day")]);
}

// In 2031 clocks in Chicago go forward on 9 March at 2:00 and back on 2 November at 2:00: United States Code, title 15,
// section 260a (second Sunday of March, first Sunday of November).
#[test]
fn the_night_in_which_the_clock_goes_forward() {
    let text = "time,temp_c\n2031-03-09 01:00,1\n2031-03-09 02:00,2\n2031-03-09 03:00,3\n";
    let reading = by_guess(text);
    assert_eq!(times(&reading), ["09 01:00", "09 03:00"]);
    assert_eq!(
        refused(&reading),
        [(3, "the clock is put forward over \"2031-03-09 02:00\", so there is no such time")]
    );
}

#[test]
fn the_night_in_which_the_clock_goes_back() {
    let ordered = "time,temp_c\n2031-11-02 00:00,1\n2031-11-02 01:00,2\n2031-11-02 01:00,3\n2031-11-02 02:00,4\n";
    let reading = by_guess(ordered);
    assert_eq!(times(&reading), ["02 00:00", "02 01:00", "02 01:00 again", "02 02:00"]);
    assert_eq!(texts(&reading, |hour| &hour.temperature), ["1 °C", "2 °C", "3 °C", "4 °C"]);
    // With an offset each hour says itself which it is, in any order.
    let offsets = "time,temp_c\n2031-11-02T01:00-06:00,3\n2031-11-02T01:00-05:00,2\n2031-11-02T08:00Z,4\n";
    let reading = by_guess(offsets);
    assert_eq!(times(&reading), ["02 01:00", "02 01:00 again", "02 02:00"]);
    assert_eq!(texts(&reading, |hour| &hour.temperature), ["2 °C", "3 °C", "4 °C"]);
    // Once only, three times, or out of order: nothing says which is which.
    for text in [
        "time,temp_c\n2031-11-02 00:00,1\n2031-11-02 01:00,2\n2031-11-02 02:00,4\n",
        "time,temp_c\n2031-11-02 01:00,2\n2031-11-02 01:00,2\n2031-11-02 01:00,2\n2031-11-02 02:00,4\n",
        "time,temp_c\n2031-11-02 02:00,4\n2031-11-02 01:00,3\n2031-11-02 01:00,2\n2031-11-02 00:00,1\n",
    ] {
        let reading = by_guess(text);
        assert!(reading.hours.iter().all(|hour| hour.at.hour() != 1), "{text}");
        assert!(!reading.refused.is_empty());
        assert!(reading.refused.iter().all(|refused| refused.why.contains("01:00 twice in this night")));
    }
}

#[test]
fn hours_are_not_stretched_and_halves_are_left_out() {
    let three = by_guess("time,temp_c\n2031-06-12 00:00,14\n2031-06-12 03:00,13\n2031-06-12 06:00,15\n");
    assert_eq!(times(&three), ["12 00:00", "12 03:00", "12 06:00"]);
    assert!(three.notes[0].contains("only every 3 hours"), "{:?}", three.notes);
    let halves = by_guess("time,temp_c\n2031-06-12 00:00,14\n2031-06-12 00:30,13\n2031-06-12 01:00,15\n");
    assert_eq!(times(&halves), ["12 00:00", "12 01:00"]);
    assert_eq!(halves.notes[0], "1 line between full hours by the farm's clock is left out");
}

/// India keeps 5 h 30 min and Nepal 5 h 45 min east of UTC, South Australia 9 h 30 min in June (IANA time zone database).
#[test]
fn hours_of_the_worlds_time_land_between_those_of_an_odd_clock() {
    let text = "time,temp (°C)\n2031-06-12T00:00Z,14\n2031-06-12T01:00Z,13\n2031-06-12T02:00Z,15\n";
    for (name, expected, minutes) in [
        ("Asia/Kolkata", ["12 05:30", "12 06:30", "12 07:30"], "30"),
        ("Asia/Kathmandu", ["12 05:45", "12 06:45", "12 07:45"], "45"),
        ("Australia/Adelaide", ["12 09:30", "12 10:30", "12 11:30"], "30"),
    ] {
        let reading = in_zone(text, name);
        assert_eq!(times(&reading), expected, "{name}");
        assert!(reading.refused.is_empty() && reading.to_choose.is_empty(), "{reading:?}");
        let note = format!("the hours begin {minutes} minutes past the hour by the farm's clock");
        assert!(reading.notes.contains(&note), "{:?}", reading.notes);
    }
    // The same hours by the farm's own clock.
    let own = in_zone("time,temp (°C)\n2031-06-12 05:30,14\n2031-06-12 06:30,13\n", "Asia/Kolkata");
    assert_eq!(times(&own), ["12 05:30", "12 06:30"]);
    // A line every half hour: those on the hour of the clock are enough.
    let halves = "time,temp (°C)\n2031-06-12T00:00Z,14\n2031-06-12T00:30Z,13\n2031-06-12T01:00Z,15\n";
    let reading = in_zone(halves, "Asia/Kolkata");
    assert_eq!(times(&reading), ["12 06:00"]);
    assert_eq!(reading.notes[0], "2 lines between full hours by the farm's clock are left out");
    // Half past where the clock has full hours is still between them.
    assert!(in_zone("time,temp (°C)\n2031-06-12T00:30Z,14\n", "America/Chicago").hours.is_empty());
}

#[test]
fn each_bad_line_is_named_with_its_number_and_left_out() {
    let text = "time,temp (°C),rh (%),wind (mph),rain (mm),cloud (oktas)

2031-06-12 05:00,14.2,88,6,0,2
2031-06-12 06:00,14.2,101,6,0,2
2031-06-12 07:00,14.2,88,6,-0.1,2
2031-06-12 08:00,142,88,6,0,2
2031-06-12 09:00,14.2,88,six,0,2
,14.2,88,6,0,2
2031-06-31 10:00,14.2,88,6,0,2
2031-06-12 05:00,15,88,6,0,2
2031-06-12 11:00,14.2,88
2031-06-12 12:00,,,,,
2031-06-12 13:00,14.2,88,6,0,9
2031-06-12 14:00,14.2,88,400,0,8
2031-06-12 15:00,-9999,88,n/a,0,8
\"2031-06-12
16:00\",1,1,1,1,1
2031-06-12 17:00,14.2 °F,88,6,0,2
";
    let reading = by_guess(text);
    assert_eq!(times(&reading), ["12 05:00", "12 15:00", "12 16:00"]);
    assert_eq!(texts(&reading, |hour| &hour.temperature), ["14.2 °C", "", "1 °C"]);
    assert_eq!(texts(&reading, |hour| &hour.cloud), ["25 %", "100 %", "12.5 %"]);
    let lines: Vec<u64> = reading.refused.iter().map(|refused| refused.line).collect();
    assert_eq!(lines, [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 18]);
    for (line, says) in [
        (4, "humidity \"101\": it is above 100 %"),
        (5, "rain \"-0.1\": -0.1 mm is below zero"),
        (6, "air \"142\": no field is that cold or that hot"),
        (7, "wind \"six\": \"six\" does not begin with a number"),
        (8, "no day and time stand in it"),
        (9, "\"2031-06-31 10:00\" is no day written year-month-day"),
        (10, "its hour stands on line 3 already"),
        (11, "it has 3 columns and the header has 6"),
        (12, "nothing but a time stands in it"),
        (13, "cloud \"9\": it lies between 0 and 8"),
        (14, "wind \"400\": no wind is that strong"),
        (18, "air \"14.2 °F\": it is no plain number of °C"),
    ] {
        let found = reading.refused.iter().find(|refused| refused.line == line).unwrap();
        assert_eq!(found.why, says, "{line}");
    }
    assert!(reading.notes.iter().any(|note| note.contains("-999")), "{:?}", reading.notes);
}

#[test]
fn letters_are_read_however_they_were_saved() {
    let expected = by_guess(PLAIN);
    let with_mark = [&[0xef, 0xbb, 0xbf], PLAIN.as_bytes()].concat();
    let little: Vec<u8> = [0xfeff].into_iter().chain(PLAIN.encode_utf16()).flat_map(u16::to_le_bytes).collect();
    let big: Vec<u8> = [0xfeff].into_iter().chain(PLAIN.encode_utf16()).flat_map(u16::to_be_bytes).collect();
    let without_mark: Vec<u8> = PLAIN.encode_utf16().flat_map(u16::to_le_bytes).collect();
    // The sign of a degree is one byte, 0xb0, in code page 1252.
    let western: Vec<u8> = PLAIN.chars().map(|letter| u8::try_from(u32::from(letter)).unwrap()).collect();
    let carriage = PLAIN.replace('\n', "\r\n").into_bytes();
    let old = PLAIN.replace('\n', "\r").into_bytes();
    for bytes in [with_mark, little, big, without_mark, western, carriage, old] {
        let table = forecast_csv::table(&bytes).unwrap();
        assert_eq!(table.header[1], "temp (°C)");
        assert_eq!(read(&table, &guess(&table, &[]), Some(&zone("America/Chicago"))), expected);
    }
}

#[test]
fn a_file_that_is_no_table_says_so() {
    for (bytes, error) in [
        (&b""[..], TableError::Empty),
        (b" \n\n", TableError::Empty),
        (b"PK\x03\x04rest of it", TableError::Workbook),
        (b"%PDF-1.7 and some words", TableError::NoTable),
        (b"only,a,header\n", TableError::NoTable),
        (&[0x89, 1, 2, 3, 4, 5, 6, 7, 8, 9][..], TableError::NotText),
    ] {
        assert_eq!(forecast_csv::table(bytes), Err(error), "{bytes:?}");
    }
    let long = "2031-06-12 05:00,1\n".repeat(20_002);
    let too_many = TableError::TooMany { rows: 20_000, columns: 100 };
    assert_eq!(forecast_csv::table(long.as_bytes()), Err(too_many.clone()));
    assert!(forecast_csv::table("2031-06-12 05:00,1\n".repeat(19_000).as_bytes()).is_ok());
    assert!(too_many.to_string().contains("more than 20000 lines"));
    let wide = format!("2031-06-12 05:00{}\n", ",1".repeat(150));
    assert_eq!(forecast_csv::table(wide.as_bytes()), Err(too_many.clone()));
    let too_large = forecast_csv::table(&vec![b','; (10 << 20) + 1]).unwrap_err();
    assert!(too_large.to_string().contains("larger than 10 MB, so it is no forecast for a farm"), "{too_large}");
}

#[test]
fn a_history_is_no_forecast() {
    let mut text = String::from("time,temp_c\n");
    let mut at = june(1, 0);
    for _ in 0..46 * 24 {
        let _ = writeln!(text, "{},14", at.strftime("%Y-%m-%d %H:%M"));
        at = at.saturating_add(jiff::Span::new().hours(1));
    }
    let reading = by_guess(&text);
    assert!(reading.hours.is_empty());
    assert!(reading.to_choose[0].contains("1104 hours"), "{:?}", reading.to_choose);
}

#[test]
fn a_file_without_a_header_gets_numbered_columns() {
    let table = table("2031-06-12 05:00;14,2;9\n2031-06-12 06:00;14,9;11\n");
    assert_eq!(table.header, ["column 1", "column 2", "column 3"]);
    assert_eq!((table.separator, table.decimal_comma), (';', true));
    assert_eq!(holds(&guess(&table, &[])), [("column 1", Holds::DateAndTime, "year-month-day")]);
    // Another file without a header need not hold the same, so what was chosen for one is not taken for the next.
    let mut chosen = guess(&table, &[]);
    chosen.takes.push(tankard_core::farm::Take {
        column: "column 2".to_owned(),
        holds: Holds::Temperature,
        unit: "°C".to_owned(),
    });
    assert_eq!(texts(&read(&table, &chosen, None), |hour| &hour.temperature), ["14,2 °C", "14,9 °C"]);
    assert_ne!(guess(&table, &[chosen.clone()]), chosen);
    // Two headings alike are told apart.
    assert_eq!(forecast_csv::table(b"time,v,v\n2031-06-12 05:00,1,2\n").unwrap().header, ["time", "v", "v #2"]);
}

#[test]
fn a_first_line_that_cannot_be_read_is_not_taken_for_the_header() {
    for line in ["n/a,14.2,9", ",14.2,9", "2031-06-12 99:00,14.2,9", "2031-06-12 05:00 CDT,14.2,9", "bad,bad,9"] {
        let text = format!("time,temp (°C),wind (m/s)\n{line}\n2031-06-12 06:00,14.2,9\n2031-06-12 07:00,14.2,9\n");
        let reading = by_guess(&text);
        let own = if line == "bad,bad,9" { Vec::new() } else { vec![2] };
        assert_eq!(reading.refused.iter().map(|refused| refused.line).collect::<Vec<_>>(), own, "{line}");
        // Two words of three are a header to anybody; then its columns are not known, and nothing is read by mistake.
        assert_eq!(reading.hours.len(), if own.is_empty() { 0 } else { 2 }, "{line}");
    }
}

#[test]
fn headings_are_known_by_their_words() {
    for (heading, expected) in [
        ("windSpeed_10m (m/s)", Some((Holds::Wind, "m/s"))),
        ("Wind gusts (mph)", Some((Holds::Gust, "mph"))),
        ("wgust_ms", Some((Holds::Gust, "m/s"))),
        ("wdir_deg", Some((Holds::WindFrom, "°"))),
        ("wind_direction_10m [°]", Some((Holds::WindFrom, "°"))),
        ("Windrichtung (°)", Some((Holds::WindFrom, "°"))),
        ("dew_point_2m (°C)", Some((Holds::DewPoint, "°C"))),
        ("RH, %", Some((Holds::Humidity, "%"))),
        ("Luftfeuchte (%)", Some((Holds::Humidity, "%"))),
        ("precipitation_probability (%)", Some((Holds::RainChance, "%"))),
        ("precip_in", Some((Holds::Rain, "in"))),
        ("Niederschlag [mm]", Some((Holds::Rain, "mm"))),
        ("cloud_cover (fraction)", Some((Holds::Cloud, "fraction"))),
        ("tempF", Some((Holds::Temperature, "°F"))),
        ("Température (°C)", Some((Holds::Temperature, "°C"))),
        ("wind", Some((Holds::Wind, ""))),
        // Near, but something else.
        ("apparent_temperature (°C)", None),
        ("soil_temperature_6cm (°C)", None),
        ("wind chill (°C)", None),
        ("air_pressure (hPa)", None),
        ("cloud_cover_low (%)", None),
        ("gust direction (°)", None),
        ("weather_code", None),
    ] {
        let table = table(&format!("time\t{heading}\n2031-06-12 05:00\t12\n"));
        let layout = guess(&table, &[]);
        let found = layout.takes.get(1).map(|take| (take.holds, take.unit.as_str()));
        assert_eq!(found, expected, "{heading}");
    }
    // Air at two heights: the lower is the air, a low mast's upper one the air higher up, and a tower's is not taken.
    let table = table("time,temp_10m (°C),temp_2.5m (°C),temp_80m (°C)\n2031-06-12 05:00,12,11,13\n");
    let found = guess(&table, &[]);
    assert_eq!(
        holds(&found)[1..],
        [("temp_10m (°C)", Holds::Higher, "°C"), ("temp_2.5m (°C)", Holds::Temperature, "°C")]
    );
}

#[test]
fn shares_are_read_as_fractions_where_that_is_said() {
    let reading = by_guess("time,rh (fraction),cloud (0-1)\n2031-06-12 05:00,0.885,0.3\n2031-06-12 06:00,88,0.3\n");
    assert_eq!(texts(&reading, |hour| &hour.humidity), ["88.5 %"]);
    assert_eq!(texts(&reading, |hour| &hour.cloud), ["30 %"]);
    assert_eq!(refused(&reading), [(3, "humidity \"88\": it lies between 0 and 1")]);
}

#[test]
fn a_newer_forecast_replaces_from_its_first_hour_on() {
    let mut farm = Farm::new("Test farm");
    let take = |farm: &mut Farm, text: &str, name: &str| {
        let table = table(text);
        let layout = guess(&table, &[]);
        let reading = read(&table, &layout, None);
        farm.forecast.take(reading.hours, name, june(11, 20), layout);
    };
    take(&mut farm, "time,temp_c\n2031-06-12 05:00,1\n2031-06-12 06:00,2\n2031-06-12 07:00,3\n", "one.csv");
    take(&mut farm, "time,temp_c\n2031-06-12 06:00,8\n", "two.csv");
    let own: Vec<(i8, &str)> =
        farm.forecast.hours.iter().map(|hour| (hour.at.hour(), hour.temperature.as_ref().unwrap().text())).collect();
    assert_eq!(own, [(5, "1 °C"), (6, "8 °C")]);
    assert_eq!((farm.forecast.source.as_str(), farm.forecast.layouts.len()), ("two.csv", 1));
    // Nothing read, nothing replaced.
    farm.forecast.take(Vec::new(), "three.csv", june(11, 21), FileLayout::default());
    assert_eq!((farm.forecast.source.as_str(), farm.forecast.hours.len()), ("two.csv", 2));
    // What is older than a month goes.
    take(&mut farm, "time,temp_c\n2031-07-13 06:00,8\n", "four.csv");
    assert_eq!(farm.forecast.hours.len(), 2);
    assert_eq!(farm.forecast.hours[0].at, june(12, 6));
}

#[test]
fn a_farm_with_a_forecast_keeps_its_bytes() {
    let mut farm = Farm::new("Test farm");
    let text = "time;temp (°C);rh (%);wind (m/s);wind from;rain (mm);cloud (oktas)\n\
        2031-11-02 01:00;14,2;88;2,5;NNW;0,25;3\n2031-11-02 01:00;14,2;88;2,5;NNW;0,25;3\n";
    let table = table(text);
    let layout = guess(&table, &[]);
    let reading = read(&table, &layout, Some(&zone("America/Chicago")));
    assert_eq!(reading.hours.len(), 2);
    farm.forecast.take(reading.hours, "invented.csv", june(11, 20), layout);
    let written = tankard_file::write(&farm).unwrap();
    assert!(written.contains("temperature: \"14,2 °C\"") && written.contains("again: true"), "{written}");
    let opened = tankard_file::read(written.as_bytes()).unwrap();
    assert_eq!(opened, farm);
    assert_eq!(tankard_file::write(&opened).unwrap(), written);
}

/// A small generator of numbers (xorshift, G. Marsaglia 2003), so that each run tries the same files.
struct Numbers(u64);

impl Numbers {
    fn next(&mut self, below: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        usize::try_from(self.0 % below as u64).unwrap()
    }
}

/// Reads bytes in every way there is; nothing may panic, and what comes of it is no larger than what went in.
fn all_ways(bytes: &[u8]) {
    let Ok(table) = forecast_csv::table(bytes) else { return };
    assert!(table.rows.len() <= bytes.len());
    let mut layout = guess(&table, &[]);
    let zone = zone("Australia/Lord_Howe");
    let most = Holds::ALL.map(|holds| units(holds).len()).into_iter().max().unwrap();
    for turn in 0..=most {
        let reading = read(&table, &layout, Some(&zone));
        assert!(reading.hours.len() + reading.refused.len() <= table.rows.len());
        assert!(reading.refused.iter().all(|refused| refused.why.len() < 400 && refused.line > 0));
        assert!(reading.hours.is_sorted_by_key(|hour| (hour.at, hour.again)));
        for take in &mut layout.takes {
            units(take.holds).get(turn).copied().unwrap_or("").clone_into(&mut take.unit);
        }
    }
    // Any column as anything.
    for (at, heading) in table.header.iter().enumerate() {
        let holds = Holds::ALL[at % Holds::ALL.len()];
        layout.takes.retain(|take| take.holds != holds);
        let unit = units(holds).first().copied().unwrap_or("").to_owned();
        layout.takes.push(tankard_core::farm::Take { column: heading.clone(), holds, unit });
        let _ = read(&table, &layout, Some(&zone));
    }
}

#[test]
fn no_bytes_make_it_panic() {
    let mut numbers = Numbers(0x9e37_79b9_7f4a_7c15);
    let started = std::time::Instant::now();
    for _ in 0..1500 {
        let bytes: Vec<u8> = (0..numbers.next(400)).map(|_| u8::try_from(numbers.next(256)).unwrap()).collect();
        all_ways(&bytes);
        // Good files with a few bytes changed, doubled or gone come further.
        let mut bytes = PLAIN.as_bytes().to_vec();
        for _ in 0..=numbers.next(6) {
            let at = numbers.next(bytes.len());
            match numbers.next(3) {
                0 => bytes[at] = u8::try_from(numbers.next(256)).unwrap(),
                1 => bytes.insert(at, b";,\t\"\n -+:TZ.0"[numbers.next(13)]),
                _ => drop(bytes.drain(at..(at + numbers.next(5)).min(bytes.len()))),
            }
        }
        all_ways(&bytes);
        // Texts of the pieces that the reader looks for.
        let pieces = [
            "2031-06-12",
            "12.06.2031",
            "99999999999",
            "-99999999999",
            "24:00",
            "05:00",
            "T",
            "Z",
            "+99:99",
            "-14:00",
            " am",
            "pm",
            "9999-12-31 24:00",
            "0001-01-01 00:00-14:00",
            ",",
            ";",
            "\t",
            "\n",
            "\"",
            "°C",
            "(",
            "1e308",
            "NaN",
            "1,5",
            "temp",
            "wind",
            "time",
            "½",
            "é",
            "İ",
            "2m",
            "\u{feff}",
            "#",
        ];
        let text: String = (0..numbers.next(60)).map(|_| pieces[numbers.next(pieces.len())]).collect();
        all_ways(text.as_bytes());
    }
    assert!(started.elapsed().as_secs() < 120, "{:?}", started.elapsed());
}

#[test]
fn large_files_are_read_in_time_or_refused() {
    let started = std::time::Instant::now();
    for bytes in [
        ",".repeat(19 << 20).into_bytes(),
        ",\n".repeat(9 << 20).into_bytes(),
        "\n".repeat(19 << 20).into_bytes(),
        "\"".repeat(19 << 20).into_bytes(),
        "2031-06-12 05:00,1\n".repeat(99_000).into_bytes(),
        format!("2031-06-12 05:00{}\n", ",1".repeat(99)).repeat(90_000).into_bytes(),
        vec![0xff; 19 << 20],
        vec![0; 19 << 20],
    ] {
        if let Ok(table) = forecast_csv::table(&bytes) {
            let reading = read(&table, &guess(&table, &[]), None);
            assert!(reading.hours.len() <= 1);
        }
    }
    // Without optimisation and beside other work; what must not happen is a time that grows with the square.
    assert!(started.elapsed().as_secs() < 240, "{:?}", started.elapsed());
}
