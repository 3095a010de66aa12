//! Progress on standard error, seen only where that is a terminal.

use check::Step;
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use messages::{Language, Message, text};
use std::time::Duration;

/// Shows the step at hand until it is dropped.
pub struct Progress(ProgressBar, Language);

impl Progress {
    /// Starts showing; hidden where standard error is no terminal.
    pub fn start(language: Language) -> Self {
        let bar = ProgressBar::with_draw_target(None, ProgressDrawTarget::stderr())
            .with_style(ProgressStyle::default_spinner());
        if !bar.is_hidden() {
            bar.enable_steady_tick(Duration::from_millis(100));
        }
        Self(bar, language)
    }

    /// Names the step at hand.
    pub fn show(&self, step: Step) {
        self.name(&step.message());
    }

    /// Names whatever is being done.
    pub fn name(&self, step: &Message) {
        self.0.set_message(step.text(self.1));
    }
}

impl Drop for Progress {
    fn drop(&mut self) {
        self.0.finish_and_clear();
    }
}

/// Shows how far many cases have come, at which rate and for how long still.
pub struct CasesProgress(ProgressBar, Language);

impl CasesProgress {
    /// Starts showing; hidden where standard error is no terminal.
    pub fn start(language: Language) -> Self {
        let bar = ProgressBar::with_draw_target(Some(0), ProgressDrawTarget::stderr());
        let line = text!(
            language,
            "progress-cases",
            done = "{pos}",
            all = "{len}",
            rate = "{per_sec}",
            left = "{eta}"
        );
        let line = format!("{{wide_bar}} {line}{{msg}}");
        if let Ok(style) = ProgressStyle::with_template(&line) {
            bar.set_style(style);
        }
        Self(bar, language)
    }

    /// Shows one more step.
    pub fn show(&self, step: batch::Progress) {
        match step {
            batch::Progress::Begins(cases) => self.0.set_length(cases),
            // What is skipped says nothing of the rate.
            batch::Progress::Skipped => {
                self.0
                    .set_length(self.0.length().unwrap_or(0).saturating_sub(1));
            }
            batch::Progress::Checked => self.0.inc(1),
            batch::Progress::Unreadable => {
                self.0.inc(1);
                self.0.set_message(text!(self.1, "progress-unreadable"));
            }
        }
    }
}

impl Drop for CasesProgress {
    fn drop(&mut self) {
        self.0.finish_and_clear();
    }
}
