//! What is drawn over the impression: ring, sides, scale, probe, distances.

use super::panels;
use crate::app::{App, Mode};
use crate::colours::{LimitMark, Scale};
use crate::command::Layer;
use crate::landmarks;
use crate::view::Canvas;
use kiss3d::egui::{
    Align2, Color32, Context, FontId, Galley, Id, LayerId, Order, Painter, Pos2, Rect, Stroke,
    StrokeKind, Vec2,
};
use nalgebra::{Point2, Point3, Vector3};
use report::Language;
use report::figures::station_figure;
use report::words;
use std::sync::Arc;

/// A label may cover this share of itself.
const SLIGHT: f32 = 0.04;
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

struct Pen {
    painter: Painter,
    scale: f64,
    text: f32,
}

impl Pen {
    fn point(&self, pixel: Point2<f64>) -> Pos2 {
        Pos2::new((pixel.x / self.scale) as f32, (pixel.y / self.scale) as f32)
    }

    fn rect(&self, canvas: &Canvas) -> Rect {
        let corner = self.point(Point2::new(canvas.left, canvas.top));
        let size = Vec2::new(
            (canvas.width / self.scale) as f32,
            (canvas.height / self.scale) as f32,
        );
        Rect::from_min_size(corner, size)
    }

    /// Text on a dark ground, kept within `bounds`.
    fn label(&self, at: Pos2, anchor: Align2, text: &str, bounds: Rect) -> Rect {
        let ground = self.ground(at, anchor, text, bounds);
        self.painter.rect_filled(ground, 3.0, panels::GROUND);
        let corner = ground.min + self.margin();
        self.painter
            .galley(corner, self.laid_out(text, bounds), Color32::WHITE);
        ground
    }

    /// What a label covers.
    fn ground(&self, at: Pos2, anchor: Align2, text: &str, bounds: Rect) -> Rect {
        let size = self.laid_out(text, bounds).size();
        let ground = anchor.anchor_size(at, size + 2.0 * self.margin());
        let low = (bounds.max - ground.max).min(Vec2::ZERO);
        let ground = ground.translate(low);
        ground.translate((bounds.min - ground.min).max(Vec2::ZERO))
    }

    fn laid_out(&self, text: &str, bounds: Rect) -> Arc<Galley> {
        let font = FontId::proportional(self.text);
        let width = bounds.width() - 16.0;
        self.painter
            .layout(text.to_owned(), font, Color32::WHITE, width)
    }

    fn margin(&self) -> Vec2 {
        Vec2::splat(self.text * 0.3)
    }

    /// Where text covers the least of what is taken, so far beside a dot, and
    /// which share of it covers that.
    fn beside(
        &self,
        (dot, near): (Pos2, f32),
        text: &str,
        bounds: Rect,
        taken: &[Rect],
    ) -> (Pos2, Align2, f32) {
        let step = self.text * 1.7;
        let places = [
            (Vec2::new(near, 0.0), Align2::LEFT_CENTER),
            (Vec2::new(-near, 0.0), Align2::RIGHT_CENTER),
            (Vec2::new(near, step), Align2::LEFT_CENTER),
            (Vec2::new(near, -step), Align2::LEFT_CENTER),
            (Vec2::new(-near, step), Align2::RIGHT_CENTER),
            (Vec2::new(-near, -step), Align2::RIGHT_CENTER),
            (Vec2::new(near, -2.0 * step), Align2::LEFT_CENTER),
            (Vec2::new(near, 2.0 * step), Align2::LEFT_CENTER),
            (Vec2::new(-near, 2.0 * step), Align2::RIGHT_CENTER),
            (Vec2::new(-near, -2.0 * step), Align2::RIGHT_CENTER),
            (Vec2::new(near, -3.0 * step), Align2::LEFT_CENTER),
            (Vec2::new(-near, -3.0 * step), Align2::RIGHT_CENTER),
            (Vec2::new(near, -4.0 * step), Align2::LEFT_CENTER),
            (Vec2::new(-near, -4.0 * step), Align2::RIGHT_CENTER),
        ];
        let covers = |&(off, anchor): &(Vec2, Align2)| {
            let ground = self.ground(dot + off, anchor, text, bounds);
            let overlap = |other: &Rect| {
                let shared = ground.intersect(*other).size().max(Vec2::ZERO);
                shared.x * shared.y
            };
            taken.iter().map(overlap).sum::<f32>() / ground.area().max(1.0)
        };
        let best = places.iter().min_by(|a, b| covers(a).total_cmp(&covers(b)));
        let best = best.unwrap_or(&places[0]);
        (dot + best.0, best.1, covers(best))
    }

    /// The name of an impression, in the corner; gives what it covers.
    fn name(&self, app: &App, number: usize, canvas: &Canvas) -> Option<Rect> {
        let name = words::impression_name(app.result_of(number)?, Language::English);
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
            let text = "the surface is not in this folder; open the case file to see it";
            self.label(bounds.center(), Align2::CENTER_CENTER, text, bounds);
        }
        covered.extend(self.sides(app, number, canvas, &painter));
        let ringed = app.ringed.and_then(|n| app.opened.result.findings.get(n));
        if let Some(finding) = ringed.filter(|f| f.impression == Some(number as u64))
            && let Some(place) = finding.at
        {
            let middle = at(&shown.placement.shown(place));
            let radius = RING * self.text;
            painter.circle_stroke(middle, radius, black);
            painter.circle_stroke(middle, radius, white);
            if bounds.contains(middle) {
                let text = match words::finding_figure(finding, Language::English) {
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
                self.label(middle, Align2::LEFT_BOTTOM, &format!("{mm:.2} mm"), bounds);
            }
        }
        if !matches!(app.mode, Mode::Look) && number == app.front {
            let middle = self.point(canvas.middle());
            for off in [Vec2::new(10.0, 0.0), Vec2::new(0.0, 10.0)] {
                painter.line_segment([middle - off, middle + off], white);
            }
        }
    }

    /// Above what is said of the place under the pointer.
    fn above_foot(&self, bounds: Rect) -> Rect {
        let mut room = bounds;
        room.max.y = (room.max.y - self.text * 4.5).max(room.center().y);
        room
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
        labels.retain(|(dot, _)| bounds.contains(*dot));
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

    /// R and L beside the impression, and in the corner where that is out of
    /// sight; gives what they cover.
    fn sides(&self, app: &App, number: usize, canvas: &Canvas, painter: &Painter) -> Vec<Rect> {
        let mut covered = Vec::new();
        let Some(shown) = app.shown(number) else {
            return covered;
        };
        let Some(right) = shown.placement.right else {
            return covered;
        };
        let (low, high) = shown.bounds();
        let middle = nalgebra::center(&low, &high);
        let reach = (high.x - low.x) / 2.0 + 5.0;
        let bounds = self.rect(canvas);
        let big = FontId::proportional(self.text * 1.6);
        for (name, way) in [("R", right), ("L", -right)] {
            let at = self.point(app.view.pixel(canvas, &(middle + way * reach)));
            if bounds.shrink(self.text).contains(at) {
                painter.circle_filled(at, self.text, panels::GROUND);
                covered.push(Rect::from_center_size(at, Vec2::splat(2.0 * self.text)));
                painter.text(at, Align2::CENTER_CENTER, name, big.clone(), Color32::WHITE);
            }
        }
        // A small cross of the directions, which is always in sight.
        let arm = self.text * 1.9;
        let hub = bounds.left_bottom() + Vec2::new(arm * 1.7, -arm * 1.7);
        let small = FontId::proportional(self.text);
        painter.circle_filled(hub, arm * 1.45, panels::GROUND);
        covered.push(Rect::from_center_size(hub, Vec2::splat(arm * 2.9)));
        for (name, way) in [("R", right), ("L", -right), ("front", Vector3::y())] {
            let seen = app.view.turn * way;
            let off = Vec2::new(seen.x as f32, -seen.y as f32) * arm;
            painter.line_segment([hub, hub + off * 0.7], Stroke::new(2.0, Color32::WHITE));
            painter.text(
                hub + off,
                Align2::CENTER_CENTER,
                name,
                small.clone(),
                Color32::WHITE,
            );
        }
        covered
    }

    /// The scales of what is coloured, on the right and below the names that
    /// reach as far; gives what they cover.
    fn legend(&self, app: &App, names: &[Rect]) -> Option<Rect> {
        let canvas = self.rect(&app.canvas);
        let left = canvas.right() - self.scale_width(canvas) - self.text * 2.4;
        let reaches = names.iter().filter(|name| name.right() > left);
        let below = reaches.map(|name| name.bottom()).reduce(f32::max);
        let first = below.map_or(canvas.top() + self.text, |y| y + self.text * 0.6);
        let mut top = first;
        let note = |top: f32, said: &str| {
            let at = Pos2::new(canvas.right() - self.text * 0.2, top);
            let mut room = canvas;
            room.min.x = left - self.text * 0.6;
            self.label(at, Align2::RIGHT_TOP, said, room).bottom() + self.text
        };
        if let Some(missing) = app.missing_map() {
            top = note(top, missing);
        } else if let Some((map, scale)) = app.map.as_ref().zip(app.scale()) {
            let name = format!("{} ({})", map.name(), app.palette.name());
            top = self.scale(app, top, &name, &scale, &app.map_limits());
            top = note(top, "grey: not known; white lines: at a limit");
        }
        let of_front = app.result_of(app.front);
        if of_front.is_some_and(|of| !of.defects.is_empty()) && app.shows(Layer::Outlines) {
            top = note(top, "edged white lines: defects of the surface");
        }
        if let Some((figure, scale)) = app.border_figure.zip(app.border_scale()) {
            let name = format!("line: {}, mm", station_figure(figure).name);
            top = self.scale(app, top, &name, &scale, &app.border_limits());
        }
        let corners = [Pos2::new(left, first), Pos2::new(canvas.right(), top)];
        (top > first).then(|| Rect::from_points(&corners))
    }

    /// Length of a scale: where the picture is narrow, it leaves room for it.
    fn scale_width(&self, canvas: Rect) -> f32 {
        (canvas.width() * 0.3).clamp(self.text * 9.0, self.text * 17.0)
    }

    /// A scale with its labels and limits; gives where it ends.
    fn scale(&self, app: &App, top: f32, name: &str, scale: &Scale, limits: &[LimitMark]) -> f32 {
        const PIECES: u32 = 64;
        let canvas = self.rect(&app.canvas);
        let text = self.text;
        let size = Vec2::new(self.scale_width(canvas), text);
        let right_top = Pos2::new(canvas.right() - text * 1.2, top + text * 3.1);
        let bar = Rect::from_min_size(right_top - Vec2::new(size.x, 0.0), size);
        let ground = Rect::from_min_max(
            Pos2::new(bar.left() - text, top - text * 0.4),
            Pos2::new(canvas.right() - text * 0.2, bar.bottom() + text * 1.9),
        );
        let painter = &self.painter;
        painter.rect_filled(ground, 3.0, panels::GROUND);
        let font = FontId::proportional(text);
        let small = FontId::proportional(text * 0.85);
        painter.text(
            Pos2::new(bar.left(), top),
            Align2::LEFT_TOP,
            name,
            font,
            Color32::WHITE,
        );
        let width = bar.width() / PIECES as f32;
        for piece in 0..PIECES {
            let left = bar.left() + width * piece as f32;
            let share = (f64::from(piece) + 0.5) / f64::from(PIECES);
            let [r, g, b] = app.palette.at(share);
            let part = Rect::from_min_size(
                Pos2::new(left, bar.top()),
                Vec2::new(width + 0.5, bar.height()),
            );
            painter.rect_filled(part, 0.0, Color32::from_rgb(r, g, b));
        }
        painter.rect_stroke(
            bar,
            0.0,
            Stroke::new(1.0, Color32::WHITE),
            StrokeKind::Outside,
        );
        let x = |value: f64| bar.left() + bar.width() * scale.share(value) as f32;
        for value in scale.labels() {
            let at = Pos2::new(x(value), bar.bottom());
            painter.line_segment(
                [at, at + Vec2::new(0.0, 4.0)],
                Stroke::new(1.0, Color32::WHITE),
            );
            let words = format!("{value}");
            painter.text(
                at + Vec2::new(0.0, 5.0),
                Align2::CENTER_TOP,
                words,
                small.clone(),
                Color32::WHITE,
            );
        }
        // Limits stand above the bar; neighbours that would touch share a line.
        let mut taken = f32::NEG_INFINITY;
        for mark in limits
            .iter()
            .filter(|m| (0.0..=1.0).contains(&scale.share(m.value)))
        {
            let at = x(mark.value);
            let foot = Pos2::new(at, bar.bottom());
            let head = Pos2::new(at, bar.top() - text * 0.35);
            painter.line_segment([foot, head], Stroke::new(3.0, Color32::BLACK));
            painter.line_segment([foot, head], Stroke::new(1.5, Color32::WHITE));
            let words = format!("{} {}", mark.name, mark.value);
            let galley = painter.layout_no_wrap(words, small.clone(), Color32::WHITE);
            let left = at.max(taken + text * 0.7);
            let place = Pos2::new(left, head.y - galley.size().y);
            taken = left + galley.size().x;
            painter.galley(place, galley, Color32::WHITE);
        }
        ground.bottom() + text * 0.4
    }

    /// The section as a drawing of its own.
    fn section(&self, app: &App) {
        let Some(section) = &app.section else {
            return;
        };
        const ACROSS_MM: f32 = 40.0;
        let canvas = self.rect(&app.canvas);
        let side = self.text * 17.0;
        let right_bottom = canvas.right_bottom() - Vec2::splat(self.text * 0.6);
        let area = Rect::from_min_max(right_bottom - Vec2::new(side, side * 0.75), right_bottom);
        self.painter.rect_filled(area, 3.0, panels::PANEL);
        let painter = self.painter.with_clip_rect(area);
        let per_mm = area.width() / ACROSS_MM;
        let middle = area.center();
        let white = Stroke::new(2.0, Color32::WHITE);
        for line in &section.cut {
            let points: Vec<Pos2> = line
                .iter()
                .map(|p| middle + Vec2::new(p.x as f32, -p.y as f32) * per_mm)
                .collect();
            painter.line(points, white);
        }
        let bar = area.left_bottom() + Vec2::new(self.text, -self.text * 0.8);
        painter.line_segment([bar, bar + Vec2::new(per_mm * 5.0, 0.0)], white);
        let small = FontId::proportional(self.text * 0.85);
        painter.text(
            bar + Vec2::new(per_mm * 5.0 + 6.0, 0.0),
            Align2::LEFT_CENTER,
            "5 mm",
            small.clone(),
            Color32::WHITE,
        );
        painter.text(
            area.left_top() + Vec2::splat(self.text * 0.4),
            Align2::LEFT_TOP,
            "section, tissue side up",
            small,
            Color32::WHITE,
        );
    }

    /// What lies under the pointer, what a click does, and what was said.
    fn foot(&self, app: &App, taken: Option<f64>) {
        let canvas = self.rect(&app.canvas);
        let mut lines = Vec::new();
        match app.mode {
            Mode::Look => {}
            Mode::Measure => lines.push("distance: click two places (K: the middle)".to_owned()),
            Mode::Mark(number) => {
                let all = app.landmarks();
                let next = landmarks::in_words(all[number % all.len()]);
                lines.push(format!("click: {next} (N: next, U: take back, L: stop)"));
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
