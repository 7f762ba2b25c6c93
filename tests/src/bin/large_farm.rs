//! Writes a large farm to a file: `cargo run -p tankard-tests --bin large_farm -- --fields 5000 --records 100000 large.ron`.

use std::error::Error;
use std::fs;
use std::path::PathBuf;

use clap::Parser;
use tankard_tests::large::{self, Size};

/// Writes an invented farm of any size.
#[derive(Parser)]
struct Asked {
    /// Fields.
    #[arg(long, default_value_t = 5_000)]
    fields: u32,
    /// Points of each boundary.
    #[arg(long, default_value_t = 20)]
    points: u32,
    /// Products.
    #[arg(long, default_value_t = 500)]
    products: u32,
    /// Seasons.
    #[arg(long, default_value_t = 20)]
    seasons: i16,
    /// Records in all.
    #[arg(long, default_value_t = 100_000)]
    records: u32,
    /// Passes that are recorded.
    #[arg(long, default_value_t = 200)]
    passes: u32,
    /// Cards that were handed out.
    #[arg(long, default_value_t = 200)]
    cards: u32,
    /// From which the figures follow.
    #[arg(long, default_value_t = 2031)]
    seed: u64,
    /// Where to.
    out: PathBuf,
}

fn main() -> Result<(), Box<dyn Error>> {
    let Asked { fields, points, products, seasons, records, passes, cards, seed, out } = Asked::parse();
    let size = Size { fields, points, products, seasons, records, passes, cards, seed };
    let farm = large::farm(&tankard_tests::demo()?, size).map_err(|wrong| format!("{wrong:?}"))?;
    fs::write(&out, tankard_file::write(&farm)?)?;
    println!(
        "{} fields, {} products, {} records: {}",
        farm.fields.len(),
        farm.products.len(),
        farm.records.len(),
        out.display()
    );
    Ok(())
}
