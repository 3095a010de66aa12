//! The window itself: draws what [`crate::app`] says, and hands it what keys
//! and mouse ask for. It draws only when something changed.

mod camera;
mod decide;
mod desk;
mod drawing;
mod focus;
mod frame;
mod input;
mod keys;
mod layout;
mod loading;
mod material;
mod opening;
mod overlay;
mod panels;
mod queue;
mod queueing;
#[cfg(test)]
mod reached;
mod scene;
mod showing;
mod strip;

pub use layout::Layout;
pub use opening::NoWindow;

use crate::app::App;
use crate::desk::Desk;
use crate::settings::Settings;
use arguments::Source;
use drawing::DrawingView;
use focus::Focus;
use kiss3d::event::MouseButton;
use kiss3d::window::Window;
use loading::Loading;
use messages::Language;
use nalgebra::Point2;
use opening::{first_window, set_background};
use queueing::{Dialog, From, Queue};
use scene::Scene;
use std::io::Write;
use std::path::PathBuf;
use std::time::{Duration, Instant};

/// How the window is to be opened.
#[derive(Debug, Clone)]
pub struct Options {
    /// What it shows; the desk where nothing is given.
    pub source: Option<Source>,
    /// The language of window and sheets; the system's if none is given.
    pub language: Option<Language>,
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
    /// The language of window and sheets that it was started with.
    language: Option<Language>,
    settings: Settings,
    options: Options,
    scene: kiss3d::scene::SceneNode3d,
    drawing: DrawingView,
    pointer: Point2<f64>,
    /// What keys go to.
    focus: Focus,
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
            language: options.language,
            settings,
            options,
            scene: kiss3d::scene::SceneNode3d::empty(),
            drawing: DrawingView::default(),
            pointer: Point2::origin(),
            focus: Focus::default(),
            held: None,
            due: 2,
            last: Instant::now(),
            frames: Vec::new(),
            first_shown: false,
            screenshot: false,
            closing: false,
        }
    }

    /// The language that was asked for, or the system's.
    fn language(&self) -> Language {
        self.language.unwrap_or_else(Language::of_system)
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
}

fn say(line: &str) {
    let _ = writeln!(std::io::stderr(), "{line}");
}
