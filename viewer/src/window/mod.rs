//! The window itself: draws what [`crate::app`] says, and hands it what keys
//! and mouse ask for. It draws only when something changed.

mod camera;
mod decide;
mod desk;
mod drawing;
mod keys;
mod layout;
mod loading;
mod material;
mod opening;
mod overlay;
mod panels;
mod queue;
mod queueing;
mod scene;
mod strip;

pub use layout::Layout;
pub use opening::NoWindow;

use crate::app::App;
use crate::command::{Command, Layer};
use crate::desk::{Desk, Dropped};
use crate::opened::Opened;
use crate::queue::found::holds_cases;
use crate::settings::Settings;
use arguments::Source;
use drawing::DrawingView;
use kiss3d::event::{Action, Key, Modifiers, MouseButton, WindowEvent};
use kiss3d::window::Window;
use loading::Loading;
use nalgebra::Point2;
use opening::{first_window, set_background};
use queueing::{Dialog, From, Queue};
use report::Language;
use scene::Scene;
use std::io::Write;
use std::path::PathBuf;
use std::time::{Duration, Instant};

/// How the window is to be opened.
#[derive(Debug, Clone)]
pub struct Options {
    /// What it shows; the desk where nothing is given.
    pub source: Option<Source>,
    /// Its size, pixels; as it was left if none is given.
    pub size: Option<(u32, u32)>,
    /// Whether times of frames are printed.
    pub times: bool,
    /// When the program began.
    pub started: Instant,
}

impl Options {
    /// Prints the time since the program began, where times are wanted.
    fn say(&self, what: &str) {
        if self.times {
            let ms = self.started.elapsed().as_millis();
            say(&format!("{what} after {ms} ms"));
        }
    }
}

/// Opens the window and runs until it is closed.
///
/// # Errors
/// When there is no screen or no graphics to draw with.
pub fn run(options: Options) -> Result<(), NoWindow> {
    let settings = Settings::load();
    let (width, height) = options.size.unwrap_or((settings.width, settings.height));
    let on_desk = (options.source.as_ref()).filter(|source| Desk::takes(&source.input));
    let on_desk = on_desk.map(|source| source.input.clone());
    // It is read while the window opens.
    let content = match &options.source {
        Some(source) if on_desk.is_none() => Content::Loading(Loading::start(source.clone())),
        _ => Content::Desk,
    };
    let window = first_window(width, height)?;
    options.say("window open");
    let mut running = Running::new(window, content, settings, options);
    if let Some(folder) = on_desk {
        running.put_on_desk(&[folder]);
    }
    pollster::block_on(running.until_closed());
    Ok(())
}

/// What the window shows.
enum Content {
    Desk,
    List,
    Loading(Loading),
    Failed(String),
    Case(Box<App>, Box<Scene>),
}

/// What was asked for by mouse.
#[derive(Default)]
struct Asked {
    desk: Vec<desk::Wish>,
    list: Vec<queue::Wish>,
    panels: Vec<panels::Wish>,
    bar: Vec<decide::Wish>,
    reply: Option<decide::Reply>,
    cancel: bool,
}

struct Running {
    window: Window,
    content: Content,
    /// Scans that were dropped on the window.
    desk: Desk,
    /// The cases of a folder, where one was opened.
    queue: Option<Queue>,
    /// Where what is shown was opened from.
    from: From,
    /// The decision that is being written.
    dialog: Option<Dialog>,
    /// Initials of the last decision.
    initials: String,
    /// The acceptance limits that the window was started with.
    protocol: Option<PathBuf>,
    /// The unit of scans that it was started with.
    unit: Option<mesh::Unit>,
    /// The language of sheets that it was started with.
    language: Option<Language>,
    settings: Settings,
    options: Options,
    scene: kiss3d::scene::SceneNode3d,
    drawing: DrawingView,
    pointer: Point2<f64>,
    /// The button that is held and where it was pressed.
    held: Option<(MouseButton, Point2<f64>)>,
    /// Frames that are still to be drawn after the last change: the panels
    /// answer to an event in the frame after it.
    due: u8,
    last: Instant,
    frames: Vec<Duration>,
    first_shown: bool,
    screenshot: bool,
    closing: bool,
}

impl Running {
    fn new(mut window: Window, content: Content, settings: Settings, options: Options) -> Self {
        set_background(&mut window, settings.dark);
        Self {
            window,
            content,
            desk: Desk::default(),
            queue: None,
            from: From::CommandLine,
            dialog: None,
            initials: String::new(),
            protocol: options.source.as_ref().and_then(|s| s.protocol.clone()),
            unit: options.source.as_ref().and_then(|s| s.unit),
            language: options.source.as_ref().and_then(|source| source.language),
            settings,
            options,
            scene: kiss3d::scene::SceneNode3d::empty(),
            drawing: DrawingView::default(),
            pointer: Point2::origin(),
            held: None,
            due: 2,
            last: Instant::now(),
            frames: Vec::new(),
            first_shown: false,
            screenshot: false,
            closing: false,
        }
    }

    async fn until_closed(mut self) {
        const REST: Duration = Duration::from_millis(8);
        while !self.closing {
            self.window.canvas_mut().poll_events();
            self.take_events();
            self.take_steps();
            self.take_news();
            self.take_dropped();
            let since = self.last.elapsed();
            self.last = Instant::now();
            let moved = match &mut self.content {
                Content::Case(app, _) => app.pass(since.as_secs_f64().min(0.1)),
                Content::Desk => self.desk.pass(),
                _ => false,
            };
            if moved {
                self.due = 2;
            }
            if self.due == 0 || self.may_soon_be_read() {
                std::thread::sleep(REST);
                continue;
            }
            self.due -= 1;
            if !self.draw().await {
                break;
            }
        }
        self.settings.save();
        if self.options.times {
            self.say_times();
        }
    }

    /// Whether a result may be read before a frame that says so is drawn: the
    /// first frame then shows the case.
    fn may_soon_be_read(&self) -> bool {
        const SOON: Duration = Duration::from_millis(900);
        matches!(self.content, Content::Loading(_)) && self.options.started.elapsed() < SOON
    }

    fn take_events(&mut self) {
        let events: Vec<WindowEvent> = self.window.events().iter().map(|e| e.value).collect();
        // Lists unfold, and texts are written, over several frames.
        let unfolds = matches!(self.content, Content::Desk | Content::List);
        let due = if unfolds || self.dialog.is_some() {
            24
        } else {
            2
        };
        for event in events {
            self.due = due;
            self.take(event);
        }
    }

    fn take(&mut self, event: WindowEvent) {
        let over_panel = self.window.is_egui_capturing_mouse();
        match event {
            WindowEvent::Close => self.closing = true,
            WindowEvent::Key(key, Action::Press, modifiers) => self.press(key, modifiers),
            WindowEvent::CursorPos(x, y, _) => {
                let to = Point2::new(x, y);
                let by = to - self.pointer;
                self.pointer = to;
                self.point(by.x, by.y);
            }
            WindowEvent::Scroll(_, y, _) if !over_panel => {
                self.ask(Command::Magnify((y * 0.015).exp()));
            }
            WindowEvent::MouseButton(button, Action::Press, _) if !over_panel => {
                self.held = Some((button, self.pointer));
            }
            WindowEvent::MouseButton(button, Action::Release, _) => {
                const STILL_PX: f64 = 4.0;
                let held = self.held.take();
                let clicked = held.is_some_and(|(down, at)| {
                    down == button && (at - self.pointer).norm() < STILL_PX
                });
                if let Content::Case(app, _) = &mut self.content
                    && clicked
                    && button == MouseButton::Button1
                {
                    app.click(&self.pointer);
                }
            }
            _ => {}
        }
    }

    fn point(&mut self, right: f64, down: f64) {
        let Content::Case(app, _) = &mut self.content else {
            return;
        };
        let Some((button, pressed_at)) = self.held else {
            return;
        };
        match button {
            _ if !app.canvas.holds(&pressed_at) => {}
            MouseButton::Button1 => app.act(Command::Turn(right, down)),
            MouseButton::Button2 | MouseButton::Button3 => app.act(Command::Shift(right, down)),
            _ => {}
        }
    }

    fn press(&mut self, key: Key, modifiers: Modifiers) {
        let control = modifiers.contains(Modifiers::Control);
        let shift = modifiers.contains(Modifiers::Shift);
        match key {
            Key::Q if control => self.closing = true,
            // Its keys and letters are taken in their order as it is drawn.
            _ if self.dialog.is_some() => {}
            Key::F9 => {
                self.settings.dark = !self.settings.dark;
                set_background(&mut self.window, self.settings.dark);
            }
            Key::O if control && shift => self.choose_folder(),
            Key::O if control => self.choose_scans(),
            _ => match self.content {
                Content::Desk if key == Key::Escape && self.queue.is_some() => self.show_list(),
                Content::Loading(_) if key == Key::Escape => self.cancel(),
                Content::Desk | Content::Loading(_) => {}
                Content::List if key == Key::F5 => self.serve_list(queue::Wish::ReadAgain),
                // Its other keys are taken in their order as it is drawn.
                Content::List => {
                    self.press_for_result(key);
                }
                Content::Failed(_) | Content::Case(..) => self.press_on_case(key, modifiers),
            },
        }
    }

    /// What a key asks for over an impression, or where there is none to see.
    fn press_on_case(&mut self, key: Key, modifiers: Modifiers) {
        if self.press_for_result(key) || self.press_on_walk(key) {
            return;
        }
        match key {
            Key::S if !modifiers.contains(Modifiers::Control) => self.screenshot = true,
            Key::R | Key::F5 => self.check_again(),
            _ => {
                if let Some(command) = keys::command(key, modifiers) {
                    self.ask(command);
                }
            }
        }
    }

    fn ask(&mut self, command: Command) {
        let most = self.most_text_size();
        if let Content::Case(app, _) = &mut self.content {
            app.act(command);
            if matches!(command, Command::TextSize(_)) && app.text_size > most {
                app.text_size = most;
                app.notice = "The window has no room for larger text.".to_owned();
            }
            self.settings.text_size = app.text_size;
            self.settings.strip = app.shows(Layer::Strip);
        }
    }

    fn check_again(&mut self) {
        if let Content::Case(app, _) = &mut self.content
            && (self.options.source.as_ref()).is_none_or(|source| source.input.is_dir())
        {
            app.notice =
                "to check again, open the case file or the scan instead of its result".to_owned();
            return;
        }
        if let Content::Case(app, _) = &mut self.content
            && self.protocol.is_none()
            && !app.opened.result.protocol.changed.is_empty()
        {
            app.notice = "this result was judged by limits of your own; to check it again by \
                          them, start the window with --protocol FILE"
                .to_owned();
            return;
        }
        let Some(source) = &mut self.options.source else {
            return;
        };
        if let Content::Case(app, _) = &self.content {
            // What was marked and ticked lies there.
            source.out = Some(app.opened.folder.clone());
        }
        self.content = Content::Loading(Loading::start(source.clone()));
    }

    /// Takes scans onto the desk, and opens cases and results.
    fn take_dropped(&mut self) {
        let dropped = self.window.dropped_files();
        if !dropped.is_empty() {
            self.due = 2;
            self.put_on_desk(&dropped);
        }
    }

    fn put_on_desk(&mut self, paths: &[PathBuf]) {
        if let [folder] = paths
            && holds_cases(folder)
        {
            self.open_list(folder);
            return;
        }
        match self.desk.take(paths) {
            Dropped::Scans => {
                self.due = 24;
                self.content = Content::Desk;
            }
            Dropped::Open(path) => self.load(self.source_of(&path), From::Desk),
        }
    }

    /// Leaves what is being checked, which ends by itself.
    fn cancel(&mut self) {
        match self.from {
            From::List => self.show_list(),
            From::Desk | From::CommandLine => self.content = Content::Desk,
        }
        self.due = 24;
    }

    fn serve_desk(&mut self, wish: desk::Wish) {
        match wish {
            desk::Wish::Clear => self.desk.clear(),
            desk::Wish::State(scan, role) => self.desk.state(scan, role),
            desk::Wish::Choose => self.choose_scans(),
            desk::Wish::ChooseFolder => self.choose_folder(),
            desk::Wish::List => self.show_list(),
            desk::Wish::Check => match self.desk.case_file() {
                Ok([file, out]) => {
                    let source = Source {
                        out: Some(out),
                        ..self.source_of(&file)
                    };
                    self.load(source, From::Desk);
                }
                Err(why) => self.desk.notice = why,
            },
        }
    }

    /// Takes what the loading thread has reported.
    fn take_steps(&mut self) {
        let Content::Loading(loading) = &mut self.content else {
            return;
        };
        let (is_news, done) = loading.take();
        if is_news {
            self.due = 2;
        }
        match done {
            None => {}
            Some(Err(refused)) => {
                let text = refused.to_string();
                self.window.set_title(&format!("archproof: {text}"));
                self.content = Content::Failed(text);
            }
            Some(Ok(opened)) => self.show_case(opened),
        }
    }

    fn show_case(&mut self, opened: Opened) {
        self.options.say("case read");
        self.note_result(opened.folder.clone());
        let mut app = App::new(opened, self.layout().picture);
        app.text_size = self.settings.text_size;
        app.show(Layer::Strip, self.settings.strip);
        app.act(Command::Whole);
        app.pass(f64::INFINITY);
        self.window.set_title(&app.title());
        self.scene = kiss3d::scene::SceneNode3d::empty();
        self.drawing = DrawingView::default();
        let scene = Scene::new(&mut self.scene, &app);
        self.content = Content::Case(Box::new(app), Box::new(scene));
        self.options.say("scene made");
    }

    fn text_size(&self) -> f64 {
        // Text grows with the window, so that it can be read on a large screen
        // that says nothing of its density.
        let points = f64::from(self.window.height()) / self.window.scale_factor();
        let growth = (points / 900.0).clamp(1.0, 2.0);
        self.settings.text_size.min(self.most_text_size() / growth) * growth
    }

    /// The greatest size of text for which the window has room.
    fn most_text_size(&self) -> f64 {
        let scale = self.window.scale_factor();
        let [width, height] = [self.window.width(), self.window.height()];
        layout::most_text_size(f64::from(width) / scale, f64::from(height) / scale)
    }

    fn layout(&self) -> Layout {
        let size = self.window.size();
        Layout::of(
            f64::from(size.x),
            f64::from(size.y),
            self.text_size() * self.window.scale_factor(),
            self.settings.strip,
        )
    }

    async fn draw(&mut self) -> bool {
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

    /// Draws what stands in the window; gives what was asked for by mouse.
    fn draw_content(&mut self) -> (Asked, camera::FlatCamera) {
        let text_size = self.text_size();
        let layout = self.layout();
        let scale = self.window.scale_factor();
        let size = self.window.size();
        let mut half_mm = [1.0, 1.0];
        let mut asked = Asked::default();
        let is_dark = self.settings.dark;
        self.window
            .draw_ui(|ctx| panels::set_style(ctx, text_size, is_dark));
        let turn = self.is_on_walk().then(|| self.queue.as_ref()?.list.turn());
        match &mut self.content {
            Content::Desk => {
                let desk = &mut self.desk;
                let has_list = self.queue.is_some();
                self.window
                    .draw_ui(|ctx| asked.desk = desk::draw(ctx, desk, has_list));
            }
            Content::List => {
                if let Some(Queue { list, view, .. }) = &mut self.queue {
                    let has_keyboard = self.dialog.is_none();
                    self.window.draw_ui(|ctx| {
                        asked.list = queue::draw(ctx, list, view, text_size, has_keyboard);
                    });
                }
            }
            Content::Loading(loading) => {
                let step = &loading.last;
                self.window
                    .draw_ui(|ctx| asked.cancel = desk::checking(ctx, step));
            }
            Content::Failed(text) => {
                let text =
                    format!("{text}\n\nR tries again, Esc goes back, Ctrl Q closes the window.");
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
                let takes_keys = self.dialog.is_none();
                self.window.draw_ui(|ctx| {
                    overlay::draw(ctx, app, scale, text_size, taken.map(|size| size[0]));
                    if let Some(area) = &layout.strip {
                        strip::draw(ctx, app, area, scale, text_size);
                    }
                    asked.panels = panels::draw(ctx, app, &layout, (scale, text_size));
                    asked.panels.extend(drawing.draw(ctx, app, scale));
                    asked.bar = decide::bar(ctx, app, turn.flatten(), scale);
                    if takes_keys {
                        panels::take_keys(ctx);
                    }
                });
            }
        }
        if let Some(Dialog { deciding, focus }) = &mut self.dialog {
            let focus = focus.take();
            self.window.draw_ui(|ctx| {
                asked.reply = decide::dialog(ctx, deciding, focus, text_size);
            });
        }
        (asked, camera::FlatCamera { half_mm })
    }

    /// Does what was asked for by mouse.
    fn serve(&mut self, asked: Asked) {
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

    fn save_screenshot(&mut self) {
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
            Ok(()) => format!("saved {}", mesh::read::shown_path(&path)),
            Err(refused) => refused,
        };
        self.due = 2;
    }

    fn say_times(&mut self) {
        self.frames.sort_unstable();
        if let Some(median) = self.frames.get(self.frames.len() / 2) {
            let all = self.frames.len();
            let ms = median.as_secs_f64() * 1e3;
            say(&format!("{all} frames, median {ms:.0} ms"));
        }
    }
}

fn say(line: &str) {
    let _ = writeln!(std::io::stderr(), "{line}");
}

/// The first `screenshot-N.png` of a folder that is not there yet.
fn free_name(folder: &std::path::Path) -> PathBuf {
    (1_u32..)
        .map(|number| folder.join(format!("screenshot-{number}.png")))
        .find(|path| !path.exists())
        .unwrap_or_else(|| folder.join("screenshot.png"))
}
