//! What a folder of many results says of itself.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_fuzz::folder(bytes));
