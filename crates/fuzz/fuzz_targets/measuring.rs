//! Any mesh, put to the measurement as an impression.
#![no_main]

libfuzzer_sys::fuzz_target!(|given: archproof_fuzz::AnyMesh| given.measure());
