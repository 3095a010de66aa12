//! The scales of what is coloured.

use super::pen::Pen;
use crate::app::App;
use crate::colours::{LimitMark, Scale};
use crate::command::Layer;
use crate::window::panels;
use kiss3d::egui::{Align2, Color32, FontId, Pos2, Rect, Stroke, StrokeKind, Vec2};
use messages::{Value, text};
use report::figures::figure_name;

impl Pen {
    /// The scales of what is coloured, on the right and below the names that
    /// reach as far; gives what they cover.
    pub(super) fn legend(&self, app: &App, names: &[Rect]) -> Option<Rect> {
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
            let name = format!("{} ({})", map.name(app.language), app.palette.name());
            top = self.scale(app, top, &name, &scale, &app.map_limits());
            top = note(top, &text!(app.language, "map-key"));
        }
        let of_front = app.result_of(app.front);
        if of_front.is_some_and(|of| !of.defects.is_empty()) && app.shows(Layer::Outlines) {
            top = note(top, &text!(app.language, "map-defects"));
        }
        if let Some((figure, scale)) = app.border_figure.zip(app.border_scale()) {
            let name = text!(
                app.language,
                "map-line",
                figure = figure_name(figure, app.language)
            );
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
        let most = ground.right() - bar.left() - text * 0.4;
        self.name_of_scale(Pos2::new(bar.left(), top), name, most);
        self.colours_of_scale(app, bar);
        let small = FontId::proportional(text * 0.85);
        let x = |value: f64| bar.left() + bar.width() * scale.share(value) as f32;
        for value in scale.labels() {
            let at = Pos2::new(x(value), bar.bottom());
            painter.line_segment(
                [at, at + Vec2::new(0.0, 4.0)],
                Stroke::new(1.0, Color32::WHITE),
            );
            let words = Value::figure(value.to_string()).text(app.language);
            painter.text(
                at + Vec2::new(0.0, 5.0),
                Align2::CENTER_TOP,
                words,
                small.clone(),
                Color32::WHITE,
            );
        }
        // Limits are named above the bar; neighbours that would touch share a line.
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
            let words = format!(
                "{} {}",
                mark.name,
                Value::figure(mark.value.to_string()).text(app.language)
            );
            let galley = painter.layout_no_wrap(words, small.clone(), Color32::WHITE);
            let last = ground.right() - galley.size().x - text * 0.2;
            let left = at.min(last).max(taken + text * 0.7);
            let place = Pos2::new(left, head.y - galley.size().y);
            taken = left + galley.size().x;
            painter.galley(place, galley, Color32::WHITE);
        }
        ground.bottom() + text * 0.4
    }

    /// A scale's name: a long one is written smaller, so that all of it is read.
    fn name_of_scale(&self, place: Pos2, name: &str, most: f32) {
        let laid = |size: f32| {
            let font = FontId::proportional(size);
            (self.painter).layout_no_wrap(name.to_owned(), font, Color32::WHITE)
        };
        let mut galley = laid(self.text);
        if galley.size().x > most {
            galley = laid(self.text * most / galley.size().x);
        }
        self.painter.galley(place, galley, Color32::WHITE);
    }

    /// The colours of a scale in a frame.
    fn colours_of_scale(&self, app: &App, bar: Rect) {
        const PIECES: u32 = 64;
        let width = bar.width() / PIECES as f32;
        for piece in 0..PIECES {
            let left = bar.left() + width * piece as f32;
            let share = (f64::from(piece) + 0.5) / f64::from(PIECES);
            let [r, g, b] = app.palette.at(share);
            let part = Rect::from_min_size(
                Pos2::new(left, bar.top()),
                Vec2::new(width + 0.5, bar.height()),
            );
            (self.painter).rect_filled(part, 0.0, Color32::from_rgb(r, g, b));
        }
        let frame = Stroke::new(1.0, Color32::WHITE);
        (self.painter).rect_stroke(bar, 0.0, frame, StrokeKind::Outside);
    }
}
