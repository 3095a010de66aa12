//! Progress on standard error, seen only where that is a terminal.

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use report::Step;
use std::time::Duration;

/// Shows the step at hand until it is dropped.
pub struct Progress(ProgressBar);

impl Progress {
    /// Starts showing; hidden where standard error is no terminal.
    pub fn start() -> Self {
        let bar = ProgressBar::with_draw_target(None, ProgressDrawTarget::stderr())
            .with_style(ProgressStyle::default_spinner());
        if !bar.is_hidden() {
            bar.enable_steady_tick(Duration::from_millis(100));
        }
        Self(bar)
    }

    /// Names the step at hand.
    pub fn show(&self, step: Step) {
        self.0.set_message(step.to_string());
    }
}

impl Drop for Progress {
    fn drop(&mut self) {
        self.0.finish_and_clear();
    }
}
