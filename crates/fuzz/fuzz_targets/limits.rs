//! A file of acceptance limits.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_fuzz::limits(bytes));
