//! A file of marked landmarks.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_fuzz::landmarks(bytes));
