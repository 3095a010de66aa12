//! The chosen finding's section drawing over the scene: small in the corner,
//! or as large as the picture.

use super::panels::{PANEL, Wish};
use crate::app::App;
use crate::command::Command;
use crate::drawing::Drawing;
use kiss3d::egui::{
    Area, Color32, ColorImage, Context, Id, Order, Pos2, Rect, Sense, TextureHandle,
    TextureOptions, Vec2,
};
use std::path::PathBuf;

/// Width of the small one, as a share of the picture's.
const SMALL: f64 = 0.42;

/// What was drawn last.
#[derive(Default)]
pub struct DrawingView {
    file: Option<PathBuf>,
    drawing: Option<Drawing>,
    texture: Option<(u32, TextureHandle)>,
}

impl DrawingView {
    /// The size of what is drawn, pixels; `None` where nothing is.
    pub fn size(&self, app: &App) -> Option<[f64; 2]> {
        let drawing = self.drawing.as_ref()?;
        let flown_to = app.ringed == Some(app.chosen);
        if !app.enlarged && (app.section.is_some() || !flown_to) {
            return None;
        }
        let share = if app.enlarged { 0.98 } else { SMALL };
        let most = [app.canvas.width * share, app.canvas.height * 0.98];
        let width = most[0].min(most[1] / drawing.ratio());
        Some([width, width * drawing.ratio()])
    }

    /// Reads the drawing of the chosen finding, if it is another than before;
    /// gives why it cannot be shown.
    pub fn choose(&mut self, app: &App) -> Option<String> {
        let file = app.drawing();
        if file == self.file {
            return None;
        }
        self.file.clone_from(&file);
        (self.drawing, self.texture) = (None, None);
        match Drawing::read(&file?) {
            Ok(drawing) => {
                self.drawing = Some(drawing);
                None
            }
            Err(refused) => Some(refused.message().text(app.language)),
        }
    }

    /// Draws it; `scale` is pixels to a point.
    pub fn draw(&mut self, ctx: &Context, app: &App, scale: f64) -> Option<Wish> {
        let [width, height] = self.size(app)?;
        let pixels = width as u32;
        if self
            .texture
            .as_ref()
            .is_none_or(|(drawn, _)| *drawn != pixels)
        {
            let picture = self.drawing.as_ref()?.picture(pixels).ok()?;
            let image = ColorImage::from_rgba_premultiplied(picture.size, &picture.rgba);
            let texture = ctx.load_texture("section", image, TextureOptions::LINEAR);
            self.texture = Some((pixels, texture));
        }
        let (_, texture) = self.texture.as_ref()?;
        let size = Vec2::new((width / scale) as f32, (height / scale) as f32);
        let canvas = Vec2::new(app.canvas.width as f32, app.canvas.height as f32) / scale as f32;
        let corner = Pos2::new(app.canvas.left as f32, app.canvas.top as f32) / scale as f32;
        let whole = Rect::from_min_size(corner, canvas);
        let (ground, order) = if app.enlarged {
            (whole, Order::Foreground)
        } else {
            let low = whole.max - size - Vec2::splat(6.0);
            (Rect::from_min_size(low, size), Order::Middle)
        };
        let area = Area::new(Id::new("drawing"))
            // At rest no frame follows that would finish a fade.
            .fade_in(false)
            .fixed_pos(ground.min)
            .order(order);
        let clicked = area.show(ctx, |ui| {
            let response = ui.allocate_response(ground.size(), Sense::click());
            let paper = Rect::from_min_max(Pos2::ZERO, Pos2::new(1.0, 1.0));
            let place = Rect::from_center_size(response.rect.center(), size);
            ui.painter().rect_filled(response.rect, 0.0, PANEL);
            ui.painter()
                .image(texture.id(), place, paper, Color32::WHITE);
            response.clicked()
        });
        clicked.inner.then_some(Wish::Do(Command::Drawing))
    }
}
