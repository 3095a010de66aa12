//! A case on its way: checked or read in the background.

use crate::opened::{OpenError, Opened, open_unless};
use arguments::Source;
use messages::text;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, channel};
use std::sync::{Arc, Mutex};
use std::thread;

/// A case on its way. Dropped, it is cancelled.
pub(super) struct Loading {
    steps: Receiver<Step>,
    /// The last step that was reported.
    pub(super) last: String,
    /// Set when nobody waits for it any more.
    cancelled: Arc<AtomicBool>,
}

enum Step {
    At(String),
    Done(Box<Result<Opened, OpenError>>),
}

impl Loading {
    pub(super) fn start(source: Source) -> Self {
        let language = source.language();
        let (tell, steps) = channel();
        let cancelled = Arc::new(AtomicBool::new(false));
        let is_cancelled = Arc::clone(&cancelled);
        thread::spawn(move || {
            let progress = Mutex::new(tell.clone());
            let told = |step| {
                if let Ok(tell) = progress.lock() {
                    let _ = tell.send(Step::At(step));
                }
            };
            let opened = open_unless(&source, &told, &|| is_cancelled.load(Ordering::Relaxed));
            let _ = tell.send(Step::Done(Box::new(opened)));
        });
        Self {
            steps,
            last: text!(language, "opening"),
            cancelled,
        }
    }

    /// Takes what was reported: whether that was anything, and what came of it.
    pub(super) fn take(&mut self) -> (bool, Option<Result<Opened, OpenError>>) {
        let mut is_news = false;
        while let Ok(step) = self.steps.try_recv() {
            is_news = true;
            match step {
                Step::At(step) => self.last = step,
                Step::Done(opened) => return (true, Some(*opened)),
            }
        }
        (is_news, None)
    }
}

impl Drop for Loading {
    fn drop(&mut self) {
        self.cancelled.store(true, Ordering::Relaxed);
    }
}
