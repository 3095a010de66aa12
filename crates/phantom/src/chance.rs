//! Streams of chance.

use rand::SeedableRng;
use rand_pcg::Pcg64;

/// Each use of chance has its own stream, so that one option does not change
/// what another leaves to chance.
pub(crate) fn stream(seed: u64, number: u64) -> Pcg64 {
    Pcg64::seed_from_u64(seed.wrapping_mul(64).wrapping_add(number))
}
