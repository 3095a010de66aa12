//! Labels over the picture, and where there is room for them.

use crate::view::Canvas;
use crate::window::panels;
use kiss3d::egui::{Align2, Color32, FontId, Galley, Painter, Pos2, Rect, Vec2};
use nalgebra::Point2;
use std::sync::Arc;

/// Draws over the picture.
pub(super) struct Pen {
    pub(super) painter: Painter,
    pub(super) scale: f64,
    pub(super) text: f32,
}

impl Pen {
    pub(super) fn point(&self, pixel: Point2<f64>) -> Pos2 {
        Pos2::new((pixel.x / self.scale) as f32, (pixel.y / self.scale) as f32)
    }

    pub(super) fn rect(&self, canvas: &Canvas) -> Rect {
        let corner = self.point(Point2::new(canvas.left, canvas.top));
        let size = Vec2::new(
            (canvas.width / self.scale) as f32,
            (canvas.height / self.scale) as f32,
        );
        Rect::from_min_size(corner, size)
    }

    /// Text on a dark ground, kept within `bounds`.
    pub(super) fn label(&self, at: Pos2, anchor: Align2, text: &str, bounds: Rect) -> Rect {
        let ground = self.ground(at, anchor, text, bounds);
        self.painter.rect_filled(ground, 3.0, panels::GROUND);
        let corner = ground.min + self.margin();
        self.painter
            .galley(corner, self.laid_out(text, bounds), Color32::WHITE);
        ground
    }

    /// What a label covers.
    pub(super) fn ground(&self, at: Pos2, anchor: Align2, text: &str, bounds: Rect) -> Rect {
        let size = self.laid_out(text, bounds).size();
        let ground = anchor.anchor_size(at, size + 2.0 * self.margin());
        let low = (bounds.max - ground.max).min(Vec2::ZERO);
        let ground = ground.translate(low);
        ground.translate((bounds.min - ground.min).max(Vec2::ZERO))
    }

    pub(super) fn laid_out(&self, text: &str, bounds: Rect) -> Arc<Galley> {
        let font = FontId::proportional(self.text);
        let width = bounds.width() - 16.0;
        self.painter
            .layout(text.to_owned(), font, Color32::WHITE, width)
    }

    pub(super) fn margin(&self) -> Vec2 {
        Vec2::splat(self.text * 0.3)
    }

    /// Where text covers the least of what is taken, so far beside a dot, and
    /// which share of it covers that.
    pub(super) fn beside(
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

    /// Above what is said of the place under the pointer.
    pub(super) fn above_foot(&self, bounds: Rect) -> Rect {
        let mut room = bounds;
        room.max.y = (room.max.y - self.text * 4.5).max(room.center().y);
        room
    }
}
