//! Which way round the impression is seen, and a section through it.

use super::pen::Pen;
use crate::app::App;
use crate::view::Canvas;
use crate::window::panels;
use kiss3d::egui::{Align2, Color32, FontId, Painter, Pos2, Rect, Stroke, Vec2};
use messages::text;
use nalgebra::Vector3;

impl Pen {
    /// R and L beside the impression where there is room for them, and always in
    /// the corner; gives what they cover.
    pub(super) fn sides(
        &self,
        (app, number): (&App, usize),
        canvas: &Canvas,
        painter: &Painter,
        others: &[Rect],
    ) -> Vec<Rect> {
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
        let language = app.language;
        let (r, l) = (
            text!(language, "side-letter", side = "right"),
            text!(language, "side-letter", side = "left"),
        );
        for (name, way) in [(&r, right), (&l, -right)] {
            let at = self.point(app.view.pixel(canvas, &(middle + way * reach)));
            let ground = Rect::from_center_size(at, Vec2::splat(2.0 * self.text));
            let is_free = !others.iter().any(|other| other.intersects(ground));
            if bounds.contains_rect(ground) && is_free {
                painter.circle_filled(at, self.text, panels::GROUND);
                covered.push(ground);
                painter.text(at, Align2::CENTER_CENTER, name, big.clone(), Color32::WHITE);
            }
        }
        // A small cross of the directions, which is always in sight.
        let arm = self.text * 1.9;
        let hub = bounds.left_bottom() + Vec2::new(arm * 1.7, -arm * 1.7);
        let small = FontId::proportional(self.text);
        painter.circle_filled(hub, arm * 1.45, panels::GROUND);
        covered.push(Rect::from_center_size(hub, Vec2::splat(arm * 2.9)));
        let front = text!(language, "side-front");
        for (name, way) in [(&r, right), (&l, -right), (&front, Vector3::y())] {
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

    /// The section as a drawing of its own.
    pub(super) fn section(&self, app: &App) {
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
            text!(app.language, "section-side"),
            small,
            Color32::WHITE,
        );
    }
}
