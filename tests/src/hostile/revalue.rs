//! Changes that a person or a program makes to a text with quoted values. Nearly all changes of single bytes make a file that
//! is refused; these make files that are read.

/// Numbers that look like chance (xorshift, Marsaglia 2003).
struct Draw(u64);

impl Draw {
    fn below(&mut self, end: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        usize::try_from(self.0 >> 11).unwrap_or(0) % end.max(1)
    }
}

/// Values at the edge of what can be meant.
const VALUES: [&str; 40] = [
    "",
    "0",
    "0 ac",
    "1",
    "1e9",
    "999999999",
    "1000000000 gal",
    "0.0001 fl oz",
    "1/999999999 ha",
    "0 gal/ac",
    "1000 gal/ac",
    "0.001 L/ha",
    "999999999 L/ha",
    "32 fl oz/ac",
    "100 % v/v",
    "999999999 %",
    "0 %",
    "17 lb/100 gal",
    "1 lb ai/ac",
    "0.75 lb ae/ac",
    "100 % w/w",
    "0 g/L",
    "480 g/L",
    "0 mph",
    "999999999 mph",
    "0 ft",
    "1000000000 mi",
    "0 psi",
    "14 pH",
    "-40 °C",
    "1000000000 °F",
    "0 / gal",
    "9999-12-31",
    "-9999-01-01",
    "2031-06-12",
    "9999-12-31T23:59:59",
    "00:00",
    "23:59",
    "POINT (180 90)",
    "POLYGON ((-180 -90, 180 -90, 180 90, -180 90, -180 -90))",
];

/// Whole numbers for those that stand without quotes.
const NUMBERS: [&str; 8] = ["0", "1", "2", "7", "255", "65536", "4294967295", "-1"];

/// Changes a text in one to four places, never beyond so many bytes: a quoted value for an odd one or for another of the same
/// text, a whole number for an odd one, a line left out, doubled or put elsewhere. Nothing where it is no text.
#[must_use]
pub fn revalue(bytes: &[u8], most: usize, seed: u32) -> Option<Vec<u8>> {
    let mut text = std::str::from_utf8(bytes).ok()?.to_owned();
    let mut draw = Draw(u64::from(seed).wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1);
    for _ in 0..=draw.below(4) {
        text = match draw.below(6) {
            0..=2 => other_value(&text, &mut draw),
            3 => other_number(&text, &mut draw),
            _ => other_lines(&text, &mut draw),
        };
    }
    (text.len() <= most).then(|| text.into_bytes())
}

fn other_value(text: &str, draw: &mut Draw) -> String {
    let mut parts: Vec<&str> = text.split('"').collect();
    let count = parts.len() / 2;
    let from = draw.below(count) * 2 + 1;
    let to = draw.below(count) * 2 + 1;
    let own = parts.get(from).copied().unwrap_or_default();
    let value =
        if draw.below(2) == 0 { own } else { VALUES.get(draw.below(VALUES.len())).copied().unwrap_or_default() };
    if let Some(part) = parts.get_mut(to) {
        *part = value;
    }
    parts.join("\"")
}

fn other_number(text: &str, draw: &mut Draw) -> String {
    // A number without quotes stands behind a colon.
    let starts: Vec<usize> = text
        .match_indices(": ")
        .map(|(at, mark)| at + mark.len())
        .filter(|at| text.get(*at..).is_some_and(|rest| rest.starts_with(|letter: char| letter.is_ascii_digit())))
        .collect();
    let Some(at) = starts.get(draw.below(starts.len())).copied() else { return text.to_owned() };
    let (before, rest) = text.split_at_checked(at).unwrap_or((text, ""));
    let number = NUMBERS.get(draw.below(NUMBERS.len())).copied().unwrap_or_default();
    format!("{before}{number}{}", rest.trim_start_matches(|letter: char| letter.is_ascii_digit()))
}

/// A line alone, or one that opens something with all up to where it closes.
fn other_lines(text: &str, draw: &mut Draw) -> String {
    let mut lines: Vec<&str> = text.split('\n').collect();
    let indent = |line: &str| line.len() - line.trim_start().len();
    let from = draw.below(lines.len());
    let Some(first) = lines.get(from).copied() else { return text.to_owned() };
    let mut to = from + 1;
    if first.ends_with(['(', '[', '{']) {
        let rest = lines.get(to..).unwrap_or_default();
        to += rest.iter().position(|line| indent(line) <= indent(first)).map_or(rest.len(), |at| at + 1);
    }
    let block: Vec<&str> = lines.get(from..to).unwrap_or_default().to_vec();
    match draw.below(3) {
        0 => {
            lines.drain(from..to);
        }
        1 => {
            lines.splice(to..to, block);
        }
        _ => {
            // To where something of the same depth stands.
            let depth = indent(first);
            let places: Vec<usize> =
                lines.iter().enumerate().filter(|(_, line)| indent(line) == depth).map(|(at, _)| at).collect();
            let at = places.get(draw.below(places.len())).copied().unwrap_or(to);
            lines.splice(at..at, block);
        }
    }
    lines.join("\n")
}
