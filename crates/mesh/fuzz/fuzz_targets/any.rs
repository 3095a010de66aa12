//! Any bytes: telling formats apart, and the refusals.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| archproof_mesh_fuzz::check(bytes));
