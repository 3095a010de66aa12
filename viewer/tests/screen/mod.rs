//! A screen in memory (Xvfb with Mesa's software driver) and the window on it,
//! driven by synthetic keys and clicks (xdotool). Where those are missing, tests
//! are skipped, saying so; see README.md for the packages.

#![allow(dead_code, reason = "each test uses some of it")]

use image::RgbImage;
use nalgebra::Point2;
use std::fs;
use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::{Mutex, PoisonError};
use std::thread::sleep;
use std::time::{Duration, Instant};

pub const WIDTH: u32 = 1280;
pub const HEIGHT: u32 = 800;
/// Longer than anything takes on a busy machine with software drawing.
const PATIENCE: Duration = Duration::from_secs(120);

/// Waits until something is there.
pub fn awaited<T>(what: &str, mut look: impl FnMut() -> Option<T>) -> T {
    let begun = Instant::now();
    loop {
        if let Some(found) = look() {
            return found;
        }
        assert!(begun.elapsed() < PATIENCE, "no {what} within {PATIENCE:?}");
        sleep(Duration::from_millis(50));
    }
}

/// A screen in memory.
pub struct Screen {
    server: Child,
    pub name: String,
}

impl Screen {
    /// `None`, with the reason printed, where it cannot be had.
    pub fn open() -> Option<Self> {
        Self::of_size([WIDTH, HEIGHT])
    }

    /// One of so many pixels.
    pub fn of_size([width, height]: [u32; 2]) -> Option<Self> {
        let has = |program: &str, argument: &str| {
            let run = Command::new(program)
                .arg(argument)
                .stdout(Stdio::null())
                .stderr(Stdio::null())
                .status();
            if run.is_err() {
                eprintln!("SKIPPED: {program} is not installed (see README.md, 'The window')");
            }
            run.is_ok()
        };
        if !has("xdotool", "version") || !has("Xvfb", "-help") {
            return None;
        }
        // Servers that start together may take one number.
        static STARTING: Mutex<()> = Mutex::new(());
        let _alone = STARTING.lock().unwrap_or_else(PoisonError::into_inner);
        let mut server = Command::new("Xvfb")
            // Otherwise it starts anew when its last client leaves, and refuses
            // whoever connects meanwhile.
            .args([
                "-noreset",
                "-displayfd",
                "1",
                "-nolisten",
                "tcp",
                "-screen",
                "0",
            ])
            .arg(format!("{width}x{height}x24"))
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        let mut number = String::new();
        BufReader::new(server.stdout.take().unwrap())
            .read_line(&mut number)
            .unwrap();
        Some(Self {
            server,
            name: format!(":{}", number.trim()),
        })
    }

    pub fn xdotool(&self, arguments: &[&str]) -> Option<String> {
        let run = Command::new("xdotool")
            .args(arguments)
            .env("DISPLAY", &self.name)
            .output()
            .unwrap();
        run.status
            .success()
            .then(|| String::from_utf8(run.stdout).unwrap().trim().to_owned())
    }

    pub fn keys(&self, keys: &[&str]) {
        for key in keys {
            self.xdotool(&["key", key]).unwrap();
            sleep(Duration::from_millis(80));
        }
    }

    /// Types letters.
    pub fn write(&self, text: &str) {
        self.xdotool(&["type", "--delay", "60", text]).unwrap();
        sleep(Duration::from_millis(150));
    }

    /// Takes a picture of the whole screen, where ImageMagick is there and
    /// `ARCHPROOF_PICTURES` names a folder.
    pub fn picture(&self, name: &str) {
        let Some(folder) = std::env::var_os("ARCHPROOF_PICTURES") else {
            return;
        };
        sleep(Duration::from_millis(700));
        let _ = Command::new("import")
            .args(["-window", "root"])
            .arg(Path::new(&folder).join(format!("{name}.png")))
            .env("DISPLAY", &self.name)
            .status();
    }

    /// Moves the pointer.
    pub fn point(&self, at: &Point2<f64>) {
        let [x, y] = [at.x, at.y].map(|c| format!("{c:.0}"));
        self.xdotool(&["mousemove", &x, &y]).unwrap();
        sleep(Duration::from_millis(150));
    }

    pub fn click(&self, at: &Point2<f64>) {
        self.point(at);
        self.xdotool(&["click", "1"]).unwrap();
    }
}

impl Drop for Screen {
    fn drop(&mut self) {
        let _ = self.server.kill();
        let _ = self.server.wait();
    }
}

/// The running window.
pub struct Viewer {
    pub process: Child,
    pub out: PathBuf,
    said: PathBuf,
}

impl Viewer {
    pub fn start(screen: &Screen, path: &Path, folder: &Path) -> Self {
        Self::of_size(screen, Some(path), folder, [WIDTH, HEIGHT])
    }

    /// A window of so many pixels, on the desk where there is no path.
    pub fn of_size(
        screen: &Screen,
        path: Option<&Path>,
        folder: &Path,
        [width, height]: [u32; 2],
    ) -> Self {
        let said = folder.join("said.txt");
        let out = folder.join("results");
        let mut command = Command::new(env!("CARGO_BIN_EXE_archproof-viewer"));
        if let Some(path) = path {
            command.arg(path).arg("--out").arg(&out);
        }
        let process = command
            .args(["--times", "--size", &format!("{width}x{height}")])
            .env("DISPLAY", &screen.name)
            .env_remove("WAYLAND_DISPLAY")
            .env("XDG_CONFIG_HOME", folder)
            .env("XDG_RUNTIME_DIR", folder)
            .stderr(fs::File::create(&said).unwrap())
            .spawn()
            .unwrap();
        Self { process, out, said }
    }

    pub fn said(&self) -> String {
        fs::read_to_string(&self.said).unwrap()
    }

    /// Time that its program worked, hundredths of a second; on Linux alone.
    pub fn busy(&self) -> Option<u64> {
        let stat = fs::read_to_string(format!("/proc/{}/stat", self.process.id())).ok()?;
        let fields = stat.rsplit(')').next()?.split_whitespace();
        let ticks: Vec<u64> = fields.skip(11).take(2).flat_map(str::parse).collect();
        Some(ticks.iter().sum())
    }

    /// Saves a screenshot by key, and reads it.
    pub fn screenshot(&self, screen: &Screen, number: u32) -> RgbImage {
        screen.keys(&["s"]);
        let path = self.out.join(format!("screenshot-{number}.png"));
        awaited("screenshot", || path.exists().then_some(()));
        image::open(path).unwrap().into_rgb8()
    }

    pub fn close(mut self, screen: &Screen) {
        screen.keys(&["ctrl+q"]);
        let status = awaited("end", || self.process.try_wait().unwrap());
        eprintln!("{}", self.said().trim_end());
        assert!(status.success(), "{}", self.said());
    }
}

impl Drop for Viewer {
    fn drop(&mut self) {
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}

/// Gives the viewer's window, once it is named so, the keyboard.
pub fn focused(screen: &Screen, viewer: &mut Viewer, name: &str) {
    let window = awaited("window", || {
        let ended = viewer.process.try_wait().unwrap();
        assert!(ended.is_none(), "{ended:?}: {}", viewer.said());
        screen
            .xdotool(&["search", "--name", name])
            .filter(|id| !id.is_empty())
    });
    screen.xdotool(&["windowfocus", &window]).unwrap();
    sleep(Duration::from_millis(200));
}
