//! The window itself: draws what [`crate::app`] says, and hands it what keys
//! and mouse ask for. It draws only when something changed.

mod camera;
mod desk;
mod drawing;
mod keys;
mod material;
mod overlay;
mod panels;
mod scene;

pub use panels::canvas;

use crate::app::App;
use crate::command::Command;
use crate::desk::{Desk, Dropped};
use crate::opened::{OpenError, Opened, open_unless};
use crate::settings::Settings;
use crate::view::Canvas;
use arguments::Source;
use drawing::DrawingView;
use kiss3d::context::Context;
use kiss3d::event::{Action, Key, Modifiers, MouseButton, WindowEvent};
use kiss3d::post_processing::Tonemap;
use kiss3d::window::{CanvasSetup, NumSamples, Window};
use nalgebra::Point2;
use scene::Scene;
use std::io::Write;
use std::panic::{AssertUnwindSafe, catch_unwind, set_hook, take_hook};
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, channel};
use std::time::{Duration, Instant};
use thiserror::Error;

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

/// Why there is no window; one line for people.
#[derive(Debug, Error)]
pub enum NoWindow {
    /// No screen to show it on.
    #[error(
        "no window: there is no screen (neither DISPLAY nor WAYLAND_DISPLAY is set); start it on \
         a desktop, or look at report.html in the result folder instead"
    )]
    Screen,
    /// No graphics.
    #[error(
        "no window: the screen or its graphics cannot be used ({0}); on Debian install \
         libvulkan1, mesa-vulkan-drivers, libx11-6, libx11-xcb1, libxcursor1, libxi6 and \
         libxkbcommon-x11-0, or look at report.html in the result folder instead"
    )]
    Graphics(String),
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

/// Opens a window; whatever the libraries below do where they cannot, it
/// becomes one line.
fn first_window(width: u32, height: u32) -> Result<Window, NoWindow> {
    let is_set = |name| std::env::var_os(name).is_some_and(|value| !value.is_empty());
    let has_screen = !cfg!(all(unix, not(target_os = "macos")))
        || is_set("DISPLAY")
        || is_set("WAYLAND_DISPLAY");
    if !has_screen {
        return Err(NoWindow::Screen);
    }
    let setup = CanvasSetup {
        vsync: true,
        // More only where it is known to work; see `smooth`.
        samples: NumSamples::One,
        ..CanvasSetup::default()
    };
    let earlier = take_hook();
    set_hook(Box::new(|_| {}));
    let opened = catch_unwind(AssertUnwindSafe(|| {
        pollster::block_on(Window::new_with_setup("archproof", width, height, setup))
    }));
    set_hook(earlier);
    let mut window = opened.map_err(|panic| {
        let text = panic
            .downcast_ref::<String>()
            .map(String::as_str)
            .or_else(|| panic.downcast_ref::<&str>().copied())
            .unwrap_or("no reason given");
        NoWindow::Graphics(text.split_whitespace().collect::<Vec<_>>().join(" "))
    })?;
    smooth(&mut window);
    Ok(window)
}

/// Smooth edges, where graphics hardware draws and its interface is known to
/// do them right (over OpenGL the picture stays black).
fn smooth(window: &mut Window) {
    let adapter = Context::get().adapter.get_info();
    let in_software = adapter.device_type == wgpu::DeviceType::Cpu;
    if !in_software && adapter.backend != wgpu::Backend::Gl {
        window.set_samples(NumSamples::Four);
    }
    window.set_tonemap(Tonemap::None);
    window.set_shadows_enabled(false);
    let background = BACKGROUND.map(|c| (f32::from(c) / 255.0).powf(2.2));
    window.set_background_color(kiss3d::color::Color::new(
        background[0],
        background[1],
        background[2],
        1.0,
    ));
    window.rebind_close_key(None);
}

/// Behind everything.
const BACKGROUND: [u8; 3] = [30, 33, 38];

/// A case on its way.
struct Loading {
    steps: Receiver<Step>,
    /// The last step that was told.
    last: String,
    /// Set when nobody waits for it any more.
    cancelled: Arc<AtomicBool>,
    /// Whether it was started from the desk, to which it can go back.
    from_desk: bool,
}

enum Step {
    At(String),
    Done(Box<Result<Opened, OpenError>>),
}

impl Loading {
    fn start(source: Source) -> Self {
        let (tell, steps) = channel();
        let cancelled = Arc::new(AtomicBool::new(false));
        let is_over = Arc::clone(&cancelled);
        std::thread::spawn(move || {
            let progress = tell.clone();
            let progress = std::sync::Mutex::new(progress);
            let told = |step| {
                if let Ok(tell) = progress.lock() {
                    let _ = tell.send(Step::At(step));
                }
            };
            let opened = open_unless(&source, &told, &|| is_over.load(Ordering::Relaxed));
            let _ = tell.send(Step::Done(Box::new(opened)));
        });
        Self {
            steps,
            last: "opening".to_owned(),
            cancelled,
            from_desk: false,
        }
    }
}

/// What stands in the window.
enum Content {
    Desk,
    Loading(Loading),
    Failed(String),
    Case(Box<App>, Box<Scene>),
}

struct Running {
    window: Window,
    content: Content,
    /// Scans that were dropped on the window.
    desk: Desk,
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
    fn new(window: Window, content: Content, settings: Settings, options: Options) -> Self {
        Self {
            window,
            content,
            desk: Desk::default(),
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
        // Lists on the desk unfold over several frames.
        let due = if matches!(self.content, Content::Desk) {
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
        match self.held {
            Some((MouseButton::Button1, _)) => app.act(Command::Turn(right, down)),
            Some((MouseButton::Button2 | MouseButton::Button3, _)) => {
                app.act(Command::Shift(right, down));
            }
            _ => {}
        }
    }

    fn press(&mut self, key: Key, modifiers: Modifiers) {
        match key {
            Key::Q if modifiers.contains(Modifiers::Control) => self.closing = true,
            _ if matches!(self.content, Content::Desk) => {}
            Key::S => self.screenshot = true,
            Key::R => self.check_again(),
            _ => {
                if let Some(command) = keys::command(key, modifiers) {
                    self.ask(command);
                }
            }
        }
    }

    fn ask(&mut self, command: Command) {
        if let Content::Case(app, _) = &mut self.content {
            app.act(command);
            self.settings.text_size = app.text_size;
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
        self.stop();
        match self.desk.take(paths) {
            Dropped::Scans => self.content = Content::Desk,
            Dropped::Open(path) => self.load(Source::of(&path)),
        }
    }

    /// Opens something in the background, with a way back to the desk.
    fn load(&mut self, source: Source) {
        self.options.source = Some(source.clone());
        self.content = Content::Loading(Loading {
            from_desk: true,
            ..Loading::start(source)
        });
    }

    /// Leaves what is being checked.
    fn stop(&mut self) {
        if let Content::Loading(loading) = &self.content {
            loading.cancelled.store(true, Ordering::Relaxed);
        }
    }

    fn serve_desk(&mut self, wish: desk::Wish) {
        match wish {
            desk::Wish::Clear => self.desk.clear(),
            desk::Wish::State(scan, role) => self.desk.state(scan, role),
            desk::Wish::Choose => {
                let dialog = rfd::FileDialog::new().add_filter("Scans", &["stl", "ply", "obj"]);
                if let Some(paths) = dialog.pick_files() {
                    self.put_on_desk(&paths);
                }
            }
            desk::Wish::Check => match self.desk.case_file() {
                Ok([file, out]) => self.load(Source {
                    out: Some(out),
                    ..Source::of(&file)
                }),
                Err(why) => self.desk.notice = why,
            },
        }
    }

    /// Takes what the loading thread has told.
    fn take_steps(&mut self) {
        let Content::Loading(loading) = &mut self.content else {
            return;
        };
        let mut done = None;
        while let Ok(step) = loading.steps.try_recv() {
            self.due = 2;
            match step {
                Step::At(step) => loading.last = step,
                Step::Done(opened) => done = Some(opened),
            }
        }
        match done.map(|opened| *opened) {
            None => {}
            Some(Err(refused)) => {
                let text = refused.to_string();
                self.window.set_title(&format!("archproof: {text}"));
                self.content = Content::Failed(text);
            }
            Some(Ok(opened)) => {
                self.options.say("case read");
                let mut app = App::new(opened, self.canvas());
                app.text_size = self.settings.text_size;
                app.canvas = self.canvas();
                app.act(Command::Whole);
                app.pass(f64::INFINITY);
                self.window.set_title(&app.title());
                self.scene = kiss3d::scene::SceneNode3d::empty();
                self.drawing = DrawingView::default();
                let scene = Scene::new(&mut self.scene, &app);
                self.content = Content::Case(Box::new(app), Box::new(scene));
                self.options.say("scene made");
            }
        }
    }

    fn text_size(&self) -> f64 {
        // Text grows with the window, so that it can be read on a large screen
        // that says nothing of its density.
        let points = f64::from(self.window.height()) / self.window.scale_factor();
        self.settings.text_size * (points / 900.0).clamp(1.0, 2.0)
    }

    fn canvas(&self) -> Canvas {
        let size = self.window.size();
        canvas(
            f64::from(size.x),
            f64::from(size.y),
            self.text_size() * self.window.scale_factor(),
        )
    }

    async fn draw(&mut self) -> bool {
        let begun = Instant::now();
        let text_size = self.text_size();
        let canvas = self.canvas();
        let scale = self.window.scale_factor();
        let size = self.window.size();
        let mut camera = camera::FlatCamera {
            half_mm: [1.0, 1.0],
        };
        let mut asked = Vec::new();
        let mut of_desk = Vec::new();
        let mut cancel = false;
        match &mut self.content {
            Content::Desk => {
                let desk = &mut self.desk;
                self.window
                    .draw_ui(|ctx| of_desk = desk::draw(ctx, desk, text_size));
            }
            Content::Loading(loading) if loading.from_desk => {
                let step = &loading.last;
                self.window
                    .draw_ui(|ctx| cancel = desk::checking(ctx, text_size, step));
            }
            Content::Loading(loading) => {
                let text = format!("{} …", loading.last);
                self.window
                    .draw_ui(|ctx| panels::message(ctx, text_size, &text));
            }
            Content::Failed(text) => {
                let text = format!("{text}\n\nR tries again, Ctrl Q closes the window.");
                self.window
                    .draw_ui(|ctx| panels::message(ctx, text_size, &text));
            }
            Content::Case(app, scene) => {
                app.canvas = canvas;
                app.hover = app.at(&self.pointer).filter(|_| self.held.is_none());
                let mm = app.view.mm_per_pixel(&canvas);
                camera.half_mm = [size.x, size.y].map(|px| (f64::from(px) * mm / 2.0) as f32);
                if let Some(refused) = self.drawing.choose(app) {
                    app.notice = refused;
                }
                scene.update(&mut self.window, app);
                let drawing = &mut self.drawing;
                let taken = drawing.size(app).filter(|_| !app.enlarged);
                self.window.draw_ui(|ctx| {
                    panels::set_style(ctx, text_size);
                    overlay::draw(ctx, app, scale, text_size, taken.map(|size| size[0]));
                    asked = panels::draw(ctx, app, scale, text_size);
                    asked.extend(drawing.draw(ctx, app, scale));
                });
            }
        }
        let going_on = self.window.render_3d(&mut self.scene, &mut camera).await;
        self.settings.width = (f64::from(size.x) / scale) as u32;
        self.settings.height = (f64::from(size.y) / scale) as u32;
        self.serve(asked, of_desk, cancel);
        self.frames.push(begun.elapsed());
        if !self.first_shown && matches!(self.content, Content::Case(..)) {
            self.first_shown = true;
            self.frames.clear();
            self.options.say("first frame of the case");
        }
        if self.screenshot && self.due == 0 {
            self.screenshot = false;
            self.save_screenshot();
        } else if self.screenshot {
            self.due = self.due.max(1);
        }
        going_on
    }

    /// Does what was asked for by mouse.
    fn serve(&mut self, asked: Vec<panels::Wish>, of_desk: Vec<desk::Wish>, cancel: bool) {
        if cancel {
            self.due = 2;
            self.stop();
            self.content = Content::Desk;
        }
        for wish in of_desk {
            self.due = 3;
            self.serve_desk(wish);
        }
        for wish in asked {
            self.due = 2;
            match wish {
                panels::Wish::Do(command) => self.ask(command),
                panels::Wish::Screenshot => self.screenshot = true,
                panels::Wish::CheckAgain => self.check_again(),
            }
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
