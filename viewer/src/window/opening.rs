//! The window as it opens, or why there is none.

use kiss3d::context::Context;
use kiss3d::post_processing::Tonemap;
use kiss3d::window::{CanvasSetup, NumSamples, Window};
use messages::{Message, message};
use std::panic::{AssertUnwindSafe, catch_unwind, set_hook, take_hook};
use thiserror::Error;

/// Why there is no window; one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum NoWindow {
    /// No screen to show it on.
    Screen,
    /// No graphics.
    Graphics(String),
}

impl NoWindow {
    /// Why, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Screen => message!("no-window-screen"),
            Self::Graphics(reason) => message!("no-window-graphics", reason = reason.as_str()),
        }
    }
}

/// Opens a window; whatever the libraries below do where they cannot, it
/// becomes one line.
pub(super) fn first_window(width: u32, height: u32) -> Result<Window, NoWindow> {
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
    window.rebind_close_key(None);
}

/// Colours what lies behind everything.
pub(super) fn set_background(window: &mut Window, is_dark: bool) {
    let background: [u8; 3] = match is_dark {
        true => [30, 33, 38],
        false => [214, 216, 218],
    };
    let [r, g, b] = background.map(|c| (f32::from(c) / 255.0).powf(2.2));
    window.set_background_color(kiss3d::color::Color::new(r, g, b, 1.0));
}
