//! What is remembered of the window from one time to the next.

use mesh::write::write_atomically;
use serde::{Deserialize, Serialize};
use std::path::PathBuf;

/// Size of the window and of its text, and its dress.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    /// Width, pixels of an ordinary screen.
    pub width: u32,
    /// Height, pixels of an ordinary screen.
    pub height: u32,
    /// Size of text, as a multiple.
    pub text_size: f64,
    /// Whether the window is dark.
    pub dark: bool,
    /// Whether the border is shown unrolled.
    pub strip: bool,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            width: 1280,
            height: 800,
            text_size: 1.0,
            dark: false,
            strip: true,
        }
    }
}

impl Settings {
    /// Those of the last time, if they can be read and make sense.
    #[must_use]
    pub fn load() -> Self {
        file()
            .and_then(|file| std::fs::read_to_string(file).ok())
            .and_then(|text| toml::from_str::<Self>(&text).ok())
            .map(Self::sensible)
            .unwrap_or_default()
    }

    /// Saves them; where that is not possible, the next time begins as the first.
    pub fn save(&self) {
        let Some((file, text)) = file().zip(toml::to_string(self).ok()) else {
            return;
        };
        if let Some(folder) = file.parent()
            && std::fs::create_dir_all(folder).is_ok()
        {
            let _ = write_atomically(&file, |out| out.write_all(text.as_bytes()));
        }
    }

    /// Within what a screen can be.
    #[must_use]
    pub fn sensible(self) -> Self {
        let size = if self.text_size.is_finite() {
            self.text_size
        } else {
            1.0
        };
        Self {
            width: self.width.clamp(800, 16_000),
            height: self.height.clamp(500, 16_000),
            text_size: size.clamp(0.6, 3.0),
            ..self
        }
    }
}

/// Where the system keeps the settings of programs.
fn file() -> Option<PathBuf> {
    let folder = |name: &str| std::env::var_os(name).filter(|f| !f.is_empty());
    let base = folder("XDG_CONFIG_HOME")
        .or_else(|| folder("APPDATA"))
        .map(PathBuf::from)
        .or_else(|| Some(PathBuf::from(folder("HOME")?).join(".config")))?;
    Some(base.join("archproof").join("window.toml"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_written_by_hand_is_brought_within_reason() {
        let odd: Settings = toml::from_str("width = 3\ntext_size = nan").unwrap();
        let expected = Settings {
            width: 800,
            height: 800,
            text_size: 1.0,
            dark: false,
            strip: true,
        };
        assert_eq!(odd.sensible(), expected);
    }
}
