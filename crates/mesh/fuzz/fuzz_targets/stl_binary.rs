//! Binary STL. Every second time the count is made to fit the size, or nearly
//! all that chance makes would be refused at the door.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    let mut bytes = bytes.to_vec();
    if bytes.first().is_some_and(|first| first % 2 == 0) && bytes.len() > 84 {
        let whole = (bytes.len() - 84) / 50;
        bytes.truncate(84 + 50 * whole);
        bytes[80..84].copy_from_slice(&(whole as u32).to_le_bytes());
    }
    archproof_mesh_fuzz::check(&bytes);
});
