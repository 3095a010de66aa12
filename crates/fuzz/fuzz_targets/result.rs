//! A result that is read back, and judged again.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_fuzz::result(bytes));
