//! One frame: what is drawn, and what was asked for by mouse while it was.

use super::focus::{self, Focus};
use super::layout::{self, Layout};
use super::queueing::{Dialog, Queue};
use super::{Asked, Content, Running, camera, decide, desk, overlay, panels, queue, say, strip};
use messages::text;
use std::path::PathBuf;
use std::time::Instant;

impl Running {
    pub(super) fn text_size(&self) -> f64 {
        // Text grows with the window, so that it can be read on a large screen
        // that says nothing of its density.
        let points = f64::from(self.window.height()) / self.window.scale_factor();
        let growth = (points / 900.0).clamp(1.0, 2.0);
        self.settings.text_size.min(self.most_text_size() / growth) * growth
    }

    /// The greatest size of text for which the window has room.
    pub(super) fn most_text_size(&self) -> f64 {
        let scale = self.window.scale_factor();
        let [width, height] = [self.window.width(), self.window.height()];
        layout::most_text_size(f64::from(width) / scale, f64::from(height) / scale)
    }

    pub(super) fn layout(&self) -> Layout {
        let size = self.window.size();
        Layout::of(
            f64::from(size.x),
            f64::from(size.y),
            self.text_size() * self.window.scale_factor(),
            self.settings.strip,
        )
    }

    pub(super) async fn draw(&mut self) -> bool {
        let begun = Instant::now();
        let size = self.window.size();
        let (asked, mut camera) = self.draw_content();
        let going_on = self.window.render_3d(&mut self.scene, &mut camera).await;
        let scale = self.window.scale_factor();
        self.settings.width = (f64::from(size.x) / scale) as u32;
        self.settings.height = (f64::from(size.y) / scale) as u32;
        self.serve(asked);
        self.frames.push(begun.elapsed());
        if !self.first_shown && matches!(self.content, Content::Case(..) | Content::List) {
            self.first_shown = true;
            self.frames.clear();
            let what = match self.content {
                Content::List => "first frame of the list",
                _ => "first frame of the case",
            };
            self.options.say(what);
        }
        if self.screenshot && self.due == 0 {
            self.screenshot = false;
            self.save_screenshot();
        } else if self.screenshot {
            self.due = self.due.max(1);
        }
        going_on
    }

    /// Draws what is in the window; gives what was asked for by mouse.
    pub(super) fn draw_content(&mut self) -> (Asked, camera::FlatCamera) {
        let text_size = self.text_size();
        let layout = self.layout();
        let scale = self.window.scale_factor();
        let size = self.window.size();
        let mut half_mm = [1.0, 1.0];
        let mut asked = Asked::default();
        let mut has_focus = Focus::Nothing;
        let is_dark = self.settings.dark;
        let language = self.language();
        self.window
            .draw_ui(|ctx| panels::set_style(ctx, text_size, is_dark));
        let turn = self.is_on_walk().then(|| self.queue.as_ref()?.list.turn());
        match &mut self.content {
            Content::Desk => {
                let desk = &mut self.desk;
                let has_list = self.queue.is_some();
                self.window
                    .draw_ui(|ctx| asked.desk = desk::draw(ctx, desk, has_list, language));
            }
            Content::List => {
                if let Some(Queue { list, view, .. }) = &mut self.queue {
                    let has_keyboard = self.dialog.is_none();
                    self.window.draw_ui(|ctx| {
                        asked.list =
                            queue::draw(ctx, list, view, (text_size, language), has_keyboard);
                    });
                }
            }
            Content::Loading(loading) => {
                let step = &loading.last;
                self.window
                    .draw_ui(|ctx| asked.cancel = desk::checking(ctx, step, language));
            }
            Content::Failed(text) => {
                let keys = text!(language, "window-failed-keys");
                let text = format!("{text}\n\n{keys}");
                self.window.draw_ui(|ctx| panels::message(ctx, &text));
            }
            Content::Case(app, scene) => {
                app.canvas = layout.picture;
                app.strip_area = layout.strip;
                match self.held {
                    None => app.point_at(&self.pointer),
                    Some(_) => app.point_nowhere(),
                }
                let mm = app.view.mm_per_pixel(&app.canvas);
                half_mm = [size.x, size.y].map(|px| (f64::from(px) * mm / 2.0) as f32);
                if let Some(refused) = self.drawing.choose(app) {
                    app.notice = refused;
                }
                scene.update(&mut self.window, app);
                let drawing = &mut self.drawing;
                let taken = drawing.size(app).filter(|_| !app.enlarged);
                self.window.draw_ui(|ctx| {
                    overlay::draw(ctx, app, scale, text_size, taken.map(|size| size[0]));
                    focus::picture(ctx, app, scale);
                    if let Some(area) = &layout.strip {
                        strip::draw(ctx, app, area, scale, text_size);
                    }
                    asked.panels = panels::draw(ctx, app, &layout, (scale, text_size));
                    asked.panels.extend(drawing.draw(ctx, app, scale));
                    asked.bar = decide::bar(ctx, app, turn.flatten(), scale);
                    has_focus = Focus::of(ctx);
                });
            }
        }
        if let Some(Dialog { deciding, focus }) = &mut self.dialog {
            let focus = focus.take();
            self.window.draw_ui(|ctx| {
                asked.reply = decide::dialog(ctx, deciding, focus, (text_size, language));
            });
        }
        self.focus = has_focus;
        (asked, camera::FlatCamera { half_mm })
    }

    /// Does what was asked for by mouse.
    pub(super) fn serve(&mut self, asked: Asked) {
        if asked.cancel {
            self.cancel();
        }
        for wish in asked.desk {
            self.due = 3;
            self.serve_desk(wish);
        }
        for wish in asked.list {
            self.due = self.due.max(3);
            self.serve_list(wish);
        }
        for wish in asked.panels {
            self.due = 2;
            match wish {
                panels::Wish::Do(command) => self.ask(command),
                panels::Wish::Screenshot => self.screenshot = true,
                panels::Wish::CheckAgain => self.check_again(),
            }
        }
        for wish in asked.bar {
            self.due = 2;
            self.serve_bar(wish);
        }
        if let Some(reply) = asked.reply {
            self.answer_dialog(reply);
        }
    }

    pub(super) fn save_screenshot(&mut self) {
        let Content::Case(app, _) = &mut self.content else {
            return;
        };
        let image = self.window.snap_image();
        let path = free_name(&app.opened.folder);
        let mut bytes = std::io::Cursor::new(Vec::new());
        let saved = image
            .write_to(&mut bytes, image::ImageFormat::Png)
            .map_err(|error| error.to_string())
            .and_then(|()| {
                mesh::write::write_atomically(&path, |out| out.write_all(bytes.get_ref()))
                    .map_err(|error| error.to_string())
            });
        app.notice = match saved {
            Ok(()) => text!(
                app.language,
                "said-saved",
                path = mesh::read::shown_path(&path)
            ),
            Err(refused) => refused,
        };
        self.due = 2;
    }

    pub(super) fn say_times(&mut self) {
        self.frames.sort_unstable();
        if let Some(median) = self.frames.get(self.frames.len() / 2) {
            let all = self.frames.len();
            let ms = median.as_secs_f64() * 1e3;
            say(&format!("{all} frames, median {ms:.0} ms"));
        }
    }
}

/// The first `screenshot-N.png` of a folder that is not there yet.
fn free_name(folder: &std::path::Path) -> PathBuf {
    (1_u32..)
        .map(|number| folder.join(format!("screenshot-{number}.png")))
        .find(|path| !path.exists())
        .unwrap_or_else(|| folder.join("screenshot.png"))
}
