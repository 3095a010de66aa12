//! A baseline of many impressions.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_fuzz::baseline(bytes));
