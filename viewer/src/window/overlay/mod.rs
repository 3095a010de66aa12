//! What is drawn over the impression: ring, sides, scale, probe, distances.

mod pen;
mod scales;
mod sides;

use crate::app::{App, Mode};
use crate::command::Layer;
use crate::landmarks;
use crate::view::Canvas;
use kiss3d::egui::{
    Align2, Color32, Context, Id, LayerId, Order, Painter, Pos2, Rect, Stroke, StrokeKind, Vec2,
};
use messages::{Value, text};
use nalgebra::Point3;
use pen::Pen;
use report::words;

/// A label may cover this share of itself.
const SLIGHT: f32 = 0.005;
/// Radius of the ring around a finding, as a multiple of the size of text.
const RING: f32 = 34.0 / 14.0;

/// Draws on top of the scene; `scale` is pixels to a point, `taken` how many
/// pixels of the lower right corner are taken.
pub fn draw(ctx: &Context, app: &App, scale: f64, text_size: f64, taken: Option<f64>) {
    let painter = ctx.layer_painter(LayerId::new(Order::Background, Id::new("overlay")));
    let pen = Pen {
        painter,
        scale,
        text: 14.0 * text_size as f32,
    };
    let slots = app.slots();
    let mut covered: Vec<Rect> = Vec::new();
    for (impression, canvas) in &slots {
        covered.extend(pen.name(app, *impression, canvas));
    }
    covered.extend(pen.legend(app, &covered));
    for (impression, canvas) in &slots {
        pen.impression(app, *impression, canvas, slots.len() > 1, &mut covered);
    }
    if app.section.is_some() {
        pen.section(app);
    }
    pen.foot(app, taken);
}

impl Pen {
    /// The name of an impression, in the corner; gives what it covers.
    fn name(&self, app: &App, number: usize, canvas: &Canvas) -> Option<Rect> {
        let name = words::impression_name(app.result_of(number)?, app.language);
        let bounds = self.rect(canvas).shrink(4.0);
        let corner = bounds.min + Vec2::splat(4.0);
        Some(self.label(corner, Align2::LEFT_TOP, &name, bounds))
    }

    fn impression(
        &self,
        app: &App,
        number: usize,
        canvas: &Canvas,
        one_of_several: bool,
        covered: &mut Vec<Rect>,
    ) {
        let bounds = self.rect(canvas).shrink(4.0);
        let painter = self.painter.with_clip_rect(self.rect(canvas));
        let Some(shown) = app.shown(number) else {
            return;
        };
        let at = |place: &Point3<f64>| self.point(app.view.pixel(canvas, place));
        let black = Stroke::new(5.0, Color32::BLACK);
        let white = Stroke::new(2.5, Color32::WHITE);

        if one_of_several {
            painter.rect_stroke(
                self.rect(canvas),
                0.0,
                Stroke::new(if number == app.front { 2.0 } else { 0.5 }, Color32::WHITE),
                StrokeKind::Inside,
            );
        }
        if shown.surface.vertices().is_empty() {
            let text = text!(app.language, "no-surface-here");
            self.label(bounds.center(), Align2::CENTER_CENTER, &text, bounds);
        }
        let sides = self.sides((app, number), canvas, &painter, covered);
        covered.extend(sides);
        self.finding(app, number, canvas, covered);
        if app.shows(Layer::Landmarks) {
            self.landmarks(app, number, canvas, &painter, covered);
        }
        if number == app.front
            && let Some(place) = app.spot.and_then(|spot| app.border_point(&spot))
        {
            painter.circle_filled(at(&place), 3.0, Color32::WHITE);
            painter.circle_stroke(at(&place), 8.0, black);
            painter.circle_stroke(at(&place), 8.0, white);
        }
        self.distance(app, number, canvas);
        if !matches!(app.mode, Mode::Look) && number == app.front {
            let middle = self.point(canvas.middle());
            for off in [Vec2::new(10.0, 0.0), Vec2::new(0.0, 10.0)] {
                painter.line_segment([middle - off, middle + off], white);
            }
        }
    }

    /// A ring around the finding that was flown to, and its figure where there
    /// is room for it.
    fn finding(&self, app: &App, number: usize, canvas: &Canvas, covered: &mut Vec<Rect>) {
        let (Some(shown), bounds) = (app.shown(number), self.rect(canvas).shrink(4.0)) else {
            return;
        };
        let painter = self.painter.with_clip_rect(self.rect(canvas));
        let at = |place: &Point3<f64>| self.point(app.view.pixel(canvas, place));
        let (black, white) = (
            Stroke::new(5.0, Color32::BLACK),
            Stroke::new(2.5, Color32::WHITE),
        );
        let ringed = app.ringed.and_then(|n| app.opened.result.findings.get(n));
        if let Some(finding) = ringed.filter(|f| f.impression == Some(number as u64))
            && let Some(place) = finding.at
        {
            let middle = at(&shown.placement.shown(place));
            let radius = RING * self.text;
            painter.circle_stroke(middle, radius, black);
            painter.circle_stroke(middle, radius, white);
            if bounds.contains(middle) {
                let text = match words::finding_figure(finding, app.language) {
                    Some(figure) => format!("{}: {figure}", finding.id),
                    None => finding.id.clone(),
                };
                let ring = Rect::from_center_size(middle, Vec2::splat(2.0 * radius));
                covered.push(ring);
                let room = self.above_foot(bounds);
                let dot = (middle, radius + 6.0);
                let (at, anchor, share) = self.beside(dot, &text, room, covered);
                covered.push(if share < SLIGHT {
                    self.label(at, anchor, &text, room)
                } else {
                    // The list says the rest.
                    let (at, anchor, _) = self.beside(dot, &finding.id, room, covered);
                    self.label(at, anchor, &finding.id, room)
                });
            }
        }
    }

    /// Landmarks, and their names where there is room for them. One that is
    /// pointed at always shows its name.
    fn landmarks(
        &self,
        app: &App,
        number: usize,
        canvas: &Canvas,
        painter: &Painter,
        covered: &mut Vec<Rect>,
    ) {
        let bounds = self.rect(canvas).shrink(4.0);
        let at = |place: &Point3<f64>| self.point(app.view.pixel(canvas, place));
        let white = Stroke::new(2.5, Color32::WHITE);
        let labels = app.landmark_labels(number);
        let mut labels: Vec<(Pos2, String)> = labels
            .into_iter()
            .map(|(place, words)| (at(&place), words))
            .collect();
        let is_free = |dot: Pos2| !covered.iter().any(|other| other.contains(dot));
        labels.retain(|(dot, _)| bounds.contains(*dot) && is_free(*dot));
        let room = self.above_foot(bounds);
        let around = |dot: &Pos2| Rect::from_center_size(*dot, Vec2::splat(12.0));
        covered.extend(labels.iter().map(|(dot, _)| around(dot)));
        let hovered = app.hover.as_ref().filter(|(of, _)| *of == number);
        let pointed = hovered.map(|(_, probe)| at(&probe.place));
        for (dot, words) in labels {
            painter.circle_filled(dot, 5.0, Color32::BLACK);
            painter.circle_stroke(dot, 5.0, white);
            let is_pointed_at = pointed.is_some_and(|at| (at - dot).length() < self.text);
            let (place, anchor, share) = self.beside((dot, 9.0), &words, room, covered);
            if share < SLIGHT || is_pointed_at {
                covered.push(self.label(place, anchor, &words, room));
            }
        }
    }

    /// The distance that was clicked.
    fn distance(&self, app: &App, number: usize, canvas: &Canvas) {
        let bounds = self.rect(canvas).shrink(4.0);
        let painter = self.painter.with_clip_rect(self.rect(canvas));
        let at = |place: &Point3<f64>| self.point(app.view.pixel(canvas, place));
        let (black, white) = (
            Stroke::new(5.0, Color32::BLACK),
            Stroke::new(2.5, Color32::WHITE),
        );
        if let Some(distance) = app.distance.filter(|d| d.impression == number) {
            let from = at(&distance.from);
            painter.circle_stroke(from, 5.0, white);
            if let Some(to) = distance.to {
                let end = at(&to);
                painter.line_segment([from, end], black);
                painter.line_segment([from, end], white);
                painter.circle_stroke(end, 5.0, white);
                let mm = (to - distance.from).norm();
                let middle = from + (end - from) / 2.0 + Vec2::new(8.0, -8.0);
                let figure = Value::figure(format!("{mm:.2} mm")).text(app.language);
                self.label(middle, Align2::LEFT_BOTTOM, &figure, bounds);
            }
        }
    }

    /// What lies under the pointer, what a click does, and what was said.
    fn foot(&self, app: &App, taken: Option<f64>) {
        let canvas = self.rect(&app.canvas);
        let mut lines = Vec::new();
        match app.mode {
            Mode::Look => {}
            Mode::Measure => lines.push(text!(app.language, "click-distance")),
            Mode::Mark(number) => {
                let all = app.landmarks();
                let next = landmarks::in_words(all[number % all.len()], app.language);
                lines.push(text!(app.language, "click-landmark", landmark = next));
            }
        }
        if let Some((impression, probe)) = &app.hover {
            lines.push(app.words_of(*impression, probe));
        }
        lines.extend(app.spot.and_then(|spot| app.words_of_spot(&spot)));
        if !app.notice.is_empty() {
            lines.push(app.notice.clone());
        }
        if !lines.is_empty() {
            let at = canvas.left_bottom() + Vec2::new(self.text * 7.2, -self.text * 0.6);
            let in_corner = match (&app.section, taken) {
                (Some(_), _) => self.text * 18.5,
                (None, Some(px)) => (px / self.scale) as f32 + 12.0,
                (None, None) => 4.0,
            };
            let room = Rect::from_min_max(
                Pos2::new(at.x, canvas.top()),
                canvas.max - Vec2::new(in_corner, 0.0),
            );
            self.label(at, Align2::LEFT_BOTTOM, &lines.join("\n"), room);
        }
    }
}
