//! A surface with figures, as the window opens it.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_fuzz::surface(bytes));
