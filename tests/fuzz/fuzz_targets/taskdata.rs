#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    tankard_tests::hostile::taskdata(bytes);
});
