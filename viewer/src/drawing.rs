//! A section drawing of the result folder as pixels.

use judge::system_says;
use mesh::read::shown_path;
use messages::{Message, message};
use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use thiserror::Error;

/// Why a drawing cannot be shown; one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum DrawingError {
    /// The system refused.
    Io {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// Another program wrote or changed it.
    NotOurs(PathBuf),
}

impl DrawingError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Io { path, source } => message!(
                "drawing-unreadable",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::NotOurs(path) => message!("drawing-of-another", path = shown_path(path)),
        }
    }
}

/// A drawing in memory.
pub struct Drawing {
    tree: Tree,
    path: PathBuf,
}

/// A drawing as pixels.
pub struct Picture {
    /// Width and height, pixels.
    pub size: [usize; 2],
    /// Red, green, blue and opacity (already multiplied in) of each pixel.
    pub rgba: Vec<u8>,
}

impl Drawing {
    /// Reads a drawing.
    ///
    /// # Errors
    /// When it cannot be read or is none.
    pub fn read(path: &Path) -> Result<Self, DrawingError> {
        let bytes = std::fs::read(path).map_err(|source| DrawingError::Io {
            path: path.to_owned(),
            source,
        })?;
        let mut options = Options::default();
        // The fonts of the window itself: a system may have none.
        let fonts = Arc::make_mut(&mut options.fontdb);
        for font in [
            epaint_default_fonts::UBUNTU_LIGHT,
            // Has the arrows.
            epaint_default_fonts::HACK_REGULAR,
        ] {
            fonts.load_font_data(font.to_vec());
        }
        let family = fonts.faces().next().map(|face| face.families[0].0.clone());
        fonts.set_sans_serif_family(family.unwrap_or_default());
        match Tree::from_data(&bytes, &options) {
            Ok(tree) => Ok(Self {
                tree,
                path: path.to_owned(),
            }),
            Err(_) => Err(DrawingError::NotOurs(path.to_owned())),
        }
    }

    /// Height over width.
    #[must_use]
    pub fn ratio(&self) -> f64 {
        let size = self.tree.size();
        f64::from(size.height()) / f64::from(size.width())
    }

    /// Draws it so many pixels wide.
    ///
    /// # Errors
    /// When it has no extent.
    pub fn picture(&self, width: u32) -> Result<Picture, DrawingError> {
        let height = (f64::from(width) * self.ratio()).round() as u32;
        let mut pixels =
            Pixmap::new(width, height).ok_or_else(|| DrawingError::NotOurs(self.path.clone()))?;
        let times = width as f32 / self.tree.size().width();
        resvg::render(
            &self.tree,
            Transform::from_scale(times, times),
            &mut pixels.as_mut(),
        );
        Ok(Picture {
            size: [width as usize, height as usize],
            rgba: pixels.take(),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_and_letters_are_drawn() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("section.svg");
        let text = |inside: &str| {
            let name = "http://www.w3.org/2000/svg";
            let body = format!("width='100' height='50' viewBox='0 0 100 50'>{inside}");
            std::fs::write(
                &path,
                ["<", "svg xmlns='", name, "' ", &body, "</", "svg>"].concat(),
            )
            .unwrap();
            Drawing::read(&path).unwrap().picture(200).unwrap()
        };
        let dark = |picture: &Picture| {
            let pixels = picture.rgba.chunks_exact(4);
            pixels.filter(|p| p[0] < 100 && p[3] > 200).count()
        };
        let ground = "<rect width='100' height='50' fill='#fff'/>";
        let plain = text(ground);
        assert_eq!((plain.size, dark(&plain)), ([200, 100], 0));
        let bar = text(&format!(
            "{ground}<rect x='10' y='10' width='20' height='10'/>"
        ));
        assert_eq!(dark(&bar), 40 * 20);
        let letters = text(&format!(
            "{ground}<text x='5' y='30' font-family='Verdana, sans-serif' font-size='20'>3.2 mm</text>"
        ));
        assert!(dark(&letters) > 100, "{}", dark(&letters));
    }

    #[test]
    fn what_is_no_drawing_is_refused_in_one_line() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("section.svg");
        let refused = |path: &Path| match Drawing::read(path) {
            Ok(_) => panic!("read"),
            Err(error) => error.to_string(),
        };
        assert!(refused(&path).contains("cannot be read"));
        std::fs::write(&path, "nothing").unwrap();
        assert!(refused(&path).contains("is no drawing"));
    }
}
