//! The words of the script, which is the same in every language.

use messages::{Language, text};
use serde::Serialize;

/// What the script says by itself, in one language. It puts a place and a figure where `{place}` and
/// `{thickness}` are.
#[derive(Serialize)]
pub struct Words {
    right: String,
    left: String,
    front: String,
    a_place: String,
    closer: String,
    farther: String,
    show: String,
    no_surface: String,
    off_tissue: String,
    not_measured: String,
    not_known: String,
    thick: String,
    tray_at_surface: String,
}

impl Words {
    pub fn of(language: Language) -> Self {
        let (place, thickness) = ("{place}", "{thickness}");
        Self {
            right: text!(language, "side-letter", side = "right"),
            left: text!(language, "side-letter", side = "left"),
            front: text!(language, "view-front"),
            a_place: text!(language, "turning-a-place"),
            closer: text!(language, "turning-closer"),
            farther: text!(language, "turning-farther"),
            show: text!(language, "turning-show"),
            no_surface: text!(language, "turning-no-surface"),
            off_tissue: text!(language, "turning-off-tissue"),
            not_measured: text!(language, "turning-not-measured", place = place),
            not_known: text!(language, "turning-not-known", place = place),
            thick: text!(
                language,
                "turning-thick",
                place = place,
                thickness = thickness
            ),
            tray_at_surface: text!(
                language,
                "turning-tray-at-surface",
                place = place,
                thickness = thickness
            ),
        }
    }
}
