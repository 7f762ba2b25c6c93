//! The demo farm, compiled in, so that the program has something to show on any machine.

use tankard_core::farm::Farm;
use tankard_file::ReadError;

/// The demo farm's file.
pub const TEXT: &str = include_str!("../../../demo-farm/larkspur-bend.ron");

/// Reads the demo farm.
///
/// # Errors
/// Never, while the test that reads it passes.
pub fn farm() -> Result<Farm, ReadError> {
    tankard_file::read(TEXT.as_bytes())
}

#[cfg(test)]
mod tests {
    #[test]
    fn it_reads_and_writes_the_same_bytes() {
        let farm = super::farm().unwrap();
        assert_eq!(tankard_file::write(&farm).unwrap(), super::TEXT);
    }
}
