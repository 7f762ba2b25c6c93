#![no_main]

use libfuzzer_sys::{fuzz_mutator, fuzz_target, fuzzer_mutate};
use tankard_tests::hostile;

fuzz_target!(|bytes: &[u8]| {
    hostile::farm(bytes);
});

// Half of all changes are such as leave a file that reads.
fuzz_mutator!(|data: &mut [u8], size: usize, max_size: usize, seed: u32| {
    if seed % 2 == 0 {
        if let Some(changed) = hostile::revalue(&data[..size], max_size, seed) {
            data[..changed.len()].copy_from_slice(&changed);
            return changed.len();
        }
    }
    fuzzer_mutate(data, size, max_size)
});
