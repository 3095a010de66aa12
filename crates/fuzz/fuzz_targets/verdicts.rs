//! A table of verdicts by several raters.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_fuzz::verdicts(bytes));
