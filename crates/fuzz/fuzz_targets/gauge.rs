//! A table of a gauge study.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_fuzz::gauge(bytes));
