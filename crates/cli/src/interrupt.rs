//! Ctrl-C (and a request to end) stops the program at once, but for the moment
//! in which files are put into place: what is written is written whole.

use std::sync::{Mutex, PoisonError};

/// Exit code after Ctrl-C, as shells have it: 128 and the number of the signal.
const EXIT_CODE: i32 = 130;

static WRITING: Mutex<()> = Mutex::new(());

/// From now on Ctrl-C ends the program as told above. Where that cannot be set
/// up, the system ends it in its own way.
pub fn watch() {
    let _ = ctrlc::set_handler(|| {
        let _written = WRITING.lock().unwrap_or_else(PoisonError::into_inner);
        std::process::exit(EXIT_CODE);
    });
}

/// Does something that must not be broken off in the middle.
pub fn uninterrupted<T>(write: impl FnOnce() -> T) -> T {
    let _writing = WRITING.lock().unwrap_or_else(PoisonError::into_inner);
    write()
}
