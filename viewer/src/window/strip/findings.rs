//! Findings on the border, as brackets over their stretch of it.

use super::{Drawing, LANE};
use crate::app::App;
use crate::strip::lanes;
use crate::window::panels::pressing;
use kiss3d::egui::{Align2, Color32, Pos2, Shape, Stroke};
use report::result::{Finding, Severity};

/// Most lanes of brackets.
const LANES: usize = 2;

/// A finding with what it covers.
pub(super) struct Bracket<'a> {
    number: usize,
    finding: &'a Finding,
    /// From left to right, points.
    span: [f32; 2],
}

impl<'a> Drawing<'a> {
    /// Findings on the border of this impression, with the runs of stations.
    pub(super) fn brackets(&self) -> Vec<Bracket<'a>> {
        let app: &'a App = self.app;
        let findings = app.opened.result.findings.iter().enumerate();
        let of_front = |finding: &Finding| finding.impression == Some(app.front as u64);
        findings
            .filter(|(_, finding)| of_front(finding))
            .filter_map(|(number, finding)| {
                let station = |n: Option<u64>| n.and_then(|n| usize::try_from(n).ok());
                let ends = station(finding.from_station).zip(station(finding.to_station))?;
                Some((number, finding, self.strip.spans(ends.0, ends.1)))
            })
            .flat_map(|(number, finding, spans)| {
                let in_points = |px: f64| (px / self.scale) as f32;
                spans.into_iter().map(move |span| Bracket {
                    number,
                    finding,
                    span: span.map(in_points),
                })
            })
            .collect()
    }

    /// The lane of each bracket, so that no two touch.
    pub(super) fn lanes_of(&self, brackets: &[Bracket<'_>]) -> Vec<usize> {
        let half = |name: &str| {
            let galley = (self.painter).layout_no_wrap(name.to_owned(), self.small(), self.ink());
            galley.size().x / 2.0
        };
        let taken: Vec<[f64; 2]> = brackets
            .iter()
            .map(|bracket| {
                let [from, to] = bracket.span;
                let (middle, half) = (f32::midpoint(from, to), half(&bracket.finding.id));
                [from.min(middle - half), to.max(middle + half)].map(f64::from)
            })
            .collect();
        lanes(&taken, f64::from(self.text) * 0.4, LANES)
    }

    pub(super) fn findings(&self, brackets: &[Bracket<'_>], lanes: &[usize]) {
        for (bracket, lane) in brackets.iter().zip(lanes) {
            let (finding, [from, to]) = (bracket.finding, bracket.span);
            let y = self.plot()[0] - self.text * (0.2 + LANE * *lane as f32);
            let is_chosen = bracket.number == self.app.chosen;
            let colour = if is_chosen {
                pressing(&self.visuals)
            } else {
                self.ink()
            };
            self.bracket(
                Pos2::new(from - 1.0, y),
                Pos2::new(to + 1.0, y),
                finding.severity,
                colour,
            );
            let at = Pos2::new(f32::midpoint(from, to), y - self.text * 0.1);
            self.painter
                .text(at, Align2::CENTER_BOTTOM, &finding.id, self.small(), colour);
        }
    }

    /// As in the report's chart: whole where it fails, dashes where it is
    /// undecided, dots for a note.
    pub(super) fn bracket(&self, from: Pos2, to: Pos2, severity: Severity, colour: Color32) {
        let ends = [from, to];
        match severity {
            Severity::Fail => {
                self.painter.line_segment(ends, Stroke::new(3.0, colour));
            }
            Severity::Borderline => {
                let stroke = Stroke::new(2.2, colour);
                self.painter
                    .extend(Shape::dashed_line(&ends, stroke, 7.0, 3.0));
            }
            Severity::Note => {
                let stroke = Stroke::new(1.6, colour);
                self.painter
                    .extend(Shape::dashed_line(&ends, stroke, 2.0, 3.0));
            }
        }
    }
}
