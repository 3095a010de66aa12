//! Memory for the cases in hand: a case begins only when there is room for what
//! it will need at most, judged by the size of its files.

use std::path::Path;
use std::sync::{Condvar, Mutex, MutexGuard, PoisonError};

/// What the program needs beside its cases, and each case beside its meshes.
const BASE_BYTES: u64 = 32 << 20;

/// Bytes of memory that a file of so many bytes may need while it is checked.
/// Binary STL spends 50 bytes on a triangle, binary PLY and OBJ as few as 19;
/// a triangle takes up to 300 bytes while it is measured (`tests/memory.rs`).
fn of_file(path: &Path, bytes: u64) -> u64 {
    let is_stl = path
        .extension()
        .is_some_and(|ending| ending.eq_ignore_ascii_case("stl"));
    bytes.saturating_mul(if is_stl { 8 } else { 18 })
}

/// Bytes of memory that a case with these files (and their sizes) may need.
pub fn need<'a>(files: impl IntoIterator<Item = (&'a Path, u64)>) -> u64 {
    let each = files.into_iter().map(|(path, bytes)| of_file(path, bytes));
    each.fold(BASE_BYTES, u64::saturating_add)
}

/// Room that is shared out and given back.
pub struct Budget {
    free: Mutex<u64>,
    given_back: Condvar,
}

impl Budget {
    pub fn new(bytes: u64) -> Self {
        Self {
            free: Mutex::new(bytes),
            given_back: Condvar::new(),
        }
    }

    fn free(&self) -> MutexGuard<'_, u64> {
        self.free.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Waits until there is room for so many bytes, which must not be more than
    /// the whole, and takes it until the share is dropped.
    pub fn take(&self, bytes: u64) -> Share<'_> {
        let mut free = self.free();
        while *free < bytes {
            free = (self.given_back.wait(free)).unwrap_or_else(PoisonError::into_inner);
        }
        *free -= bytes;
        Share {
            budget: self,
            bytes,
        }
    }
}

/// A share of a budget, given back when it is dropped.
pub struct Share<'a> {
    budget: &'a Budget,
    bytes: u64,
}

impl Drop for Share<'_> {
    fn drop(&mut self) {
        *self.budget.free() += self.bytes;
        self.budget.given_back.notify_all();
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::sync::atomic::{AtomicU64, Ordering::SeqCst};

    #[test]
    fn what_is_in_hand_never_exceeds_the_budget() {
        let budget = Budget::new(100);
        let (in_hand, most) = (AtomicU64::new(0), AtomicU64::new(0));
        std::thread::scope(|scope| {
            for worker in 0..4_u64 {
                let (budget, in_hand, most) = (&budget, &in_hand, &most);
                scope.spawn(move || {
                    for round in 0..200_u64 {
                        let bytes = 1 + (worker * 31 + round * 17) % 100;
                        let share = budget.take(bytes);
                        let now = in_hand.fetch_add(bytes, SeqCst) + bytes;
                        most.fetch_max(now, SeqCst);
                        in_hand.fetch_sub(bytes, SeqCst);
                        drop(share);
                    }
                });
            }
        });
        assert!(most.into_inner() <= 100);
        assert_eq!(*budget.free(), 100);
    }
}
