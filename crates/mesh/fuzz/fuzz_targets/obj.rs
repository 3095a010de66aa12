//! OBJ.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    archproof_mesh_fuzz::check_behind(b"v 0 0 0\n", bytes);
});
