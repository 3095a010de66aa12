//! An earlier study of repeatability, and the history of a check standard.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_fuzz::repeat(bytes));
