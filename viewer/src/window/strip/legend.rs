//! What lines, bars and brackets of the strip mean.

use super::{Drawing, ROW};
use crate::along_border::STRIP_FIGURES;
use kiss3d::egui::{Align2, Pos2};
use messages::text;
use report::figures::{StationFigure, figure_name};
use report::result::Severity;
use report::words;

/// What is drawn before the words of an entry.
#[derive(Clone, Copy)]
enum Sample {
    Nothing,
    Figure(StationFigure),
    Limit,
    NoHeight,
    Finding(Severity),
}

/// The entries with their places, and how many rows they take.
pub(super) struct Legend {
    entries: Vec<(Pos2, Sample, String)>,
    pub(super) rows: usize,
}

impl Drawing<'_> {
    fn entries(&self) -> Vec<(Sample, String)> {
        let language = self.app.language;
        let mut entries = Vec::new();
        let of = self.app.result_of(self.app.front);
        if let Some(of) = of.filter(|_| self.app.opened.impressions.len() > 1) {
            let name = words::impression_name(of, language);
            entries.push((Sample::Nothing, format!("{name}:")));
        }
        for figure in STRIP_FIGURES {
            let name = format!("{}, mm", figure_name(figure, language));
            entries.push((Sample::Figure(figure), name));
        }
        if self.limits.iter().any(|limits| !limits.is_empty()) {
            entries.push((Sample::Limit, text!(language, "strip-limit")));
        }
        entries.push((Sample::NoHeight, text!(language, "strip-no-height")));
        for (severity, name) in [
            (Severity::Fail, text!(language, "strip-fails")),
            (Severity::Borderline, text!(language, "strip-undecided")),
            (Severity::Note, text!(language, "strip-note")),
        ] {
            entries.push((Sample::Finding(severity), name));
        }
        entries
    }

    fn sample_width(&self, sample: Sample) -> f32 {
        match sample {
            Sample::Nothing => 0.0,
            _ => self.text * 2.35,
        }
    }

    /// The entries in rows from the upper left.
    pub(super) fn legend(&self) -> Legend {
        let text = self.text;
        let [left, right] = [self.area.left() + text * 0.6, self.area.right()];
        let mut at = Pos2::new(left, self.area.top() + text * 0.9);
        let mut legend = Legend {
            entries: Vec::new(),
            rows: 1,
        };
        for (sample, words) in self.entries() {
            let galley = (self.painter).layout_no_wrap(words.clone(), self.small(), self.ink());
            let width = self.sample_width(sample) + galley.size().x;
            if at.x > left && at.x + width > right {
                at = Pos2::new(left, at.y + text * ROW);
                legend.rows += 1;
            }
            legend.entries.push((at, sample, words));
            at.x += width + text;
        }
        legend
    }

    pub(super) fn draw_legend(&self, legend: &Legend) {
        for (at, sample, words) in &legend.entries {
            let words_at = Pos2::new(at.x + self.sample_width(*sample), at.y);
            let end = Pos2::new(words_at.x - self.text * 0.35, at.y);
            match *sample {
                Sample::Nothing => {}
                Sample::Figure(figure) => self.line(figure, &[*at, end]),
                Sample::Limit => self.limit_line(STRIP_FIGURES[0], &[*at, end]),
                Sample::NoHeight => self.no_figure(*at, end),
                Sample::Finding(severity) => self.bracket(*at, end, severity, self.ink()),
            }
            self.write(words_at, Align2::LEFT_CENTER, words);
        }
    }
}
