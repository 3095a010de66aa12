//! What must hold of any bytes whatever: no panic, memory in proportion to the
//! file, and a sound mesh or an error of one line. Hangs are the fuzzer's to
//! see (`-timeout`).

use peak_alloc::PeakAlloc;

#[global_allocator]
static HEAP: PeakAlloc = PeakAlloc;

/// Heap that reading may use at its peak, bytes for each byte of the file.
const HEAP_PER_BYTE: usize = 20;
/// What may come on top, bytes: tables and buffers that no file is too small for.
const HEAP_AT_LEAST: usize = 16 << 10;

/// Reads bytes and holds the outcome against the promises of the reader.
pub fn check(bytes: &[u8]) {
    let before = HEAP.current_usage();
    HEAP.reset_peak_usage();
    let outcome = mesh::read::parse(bytes);
    let used = HEAP.peak_usage().saturating_sub(before);
    let allowed = HEAP_PER_BYTE * bytes.len() + HEAP_AT_LEAST;
    assert!(
        used <= allowed,
        "{used} bytes of heap for a file of {}",
        bytes.len()
    );
    match outcome {
        Ok(parsed) => {
            let vertices = parsed.mesh.vertices();
            let corners = parsed.mesh.triangles().as_flattened();
            assert!(!corners.is_empty());
            assert!(corners.iter().all(|&v| (v as usize) < vertices.len()));
            assert!(vertices.iter().all(|p| p.iter().all(|c| c.is_finite())));
            for warning in parsed.warnings {
                assert!(!warning.to_string().contains('\n'));
            }
        }
        Err(error) => assert!(!error.to_string().contains('\n')),
    }
}

/// Reads bytes behind a beginning by which their format is known, unless they
/// have one.
pub fn check_behind(beginning: &[u8], bytes: &[u8]) {
    if bytes.starts_with(&beginning[..beginning.len().min(3)]) {
        check(bytes);
    } else {
        check(&[beginning, bytes].concat());
    }
}
