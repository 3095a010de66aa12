//! ASCII STL.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    archproof_mesh_fuzz::check_behind(b"solid\n", bytes);
});
