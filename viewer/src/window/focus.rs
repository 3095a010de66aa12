//! The keyboard's focus: Tab goes from control to control, and to the picture,
//! where arrow keys turn the impression.

use super::panels::pressing;
use crate::app::App;
use crate::view::Canvas;
use kiss3d::egui::{
    Area, Context, EventFilter, Id, Order, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, Vec2,
    WidgetInfo, WidgetType,
};
use kiss3d::event::{Key, Modifiers};
use messages::text;
use report::words;

/// What keys go to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Focus {
    /// Nothing has the focus: keys are the window's own.
    #[default]
    Nothing,
    /// The picture: arrow keys turn the impression.
    Picture,
    /// A button or a row: Enter, Space and arrow keys are its own.
    Control,
}

impl Focus {
    /// Whether a key is for what has the focus, and not for the window.
    pub(super) fn takes(self, key: Key, modifiers: Modifiers) -> bool {
        let is_plain = !modifiers.intersects(Modifiers::Control | Modifiers::Shift);
        let is_arrow = matches!(key, Key::Up | Key::Down | Key::Left | Key::Right);
        match self {
            Self::Nothing => false,
            Self::Picture => key == Key::Escape,
            Self::Control => {
                let is_click = matches!(key, Key::Return | Key::NumpadEnter | Key::Space);
                key == Key::Escape || is_click || (is_arrow && is_plain)
            }
        }
    }

    /// What has the focus now.
    pub(super) fn of(ctx: &Context) -> Self {
        match ctx.memory(|memory| memory.focused()) {
            None => Self::Nothing,
            Some(id) if id == picture_id() => Self::Picture,
            Some(_) => Self::Control,
        }
    }
}

fn picture_id() -> Id {
    Id::new("picture, focused")
}

/// What a screen reader says of the picture.
fn name(app: &App) -> String {
    let language = app.language;
    let mut words = vec![text!(language, "window-picture-name")];
    if let Some(of) = app.result_of(app.front) {
        words.push(words::impression_name(of, language));
    }
    words.push(match app.finding() {
        None => text!(language, "window-no-finding"),
        Some(finding) => {
            let place = words::finding_place(&app.opened.result, finding, language);
            let chosen = text!(
                language,
                "window-chosen-finding",
                id = finding.id.as_str(),
                cause = words::cause_word(finding, language),
                check = words::check_names(&[finding.check.as_str()], language)
            );
            match place.is_empty() {
                true => chosen,
                false => format!("{chosen}, {place}"),
            }
        }
    });
    words.push(text!(language, "window-arrows-turn"));
    words.join("; ")
}

/// Lets the picture have the focus, and draws a ring around it while it has.
pub(super) fn picture(ctx: &Context, app: &App, scale: f64) {
    let Canvas {
        left,
        top,
        width,
        height,
    } = app.canvas;
    let in_points = |px: f64| (px / scale) as f32;
    let rect = Rect::from_min_size(
        Pos2::new(in_points(left), in_points(top)),
        Vec2::new(in_points(width), in_points(height)),
    );
    Area::new(Id::new("picture"))
        .fade_in(false)
        .fixed_pos(rect.min)
        .order(Order::Background)
        // The mouse goes on to the impression.
        .interactable(false)
        .show(ctx, |ui| focusable(ui, app, rect));
}

fn focusable(ui: &mut Ui, app: &App, rect: Rect) {
    let response = ui.interact(rect, picture_id(), Sense::focusable_noninteractive());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Other, true, name(app)));
    if response.has_focus() {
        let arrows = EventFilter {
            horizontal_arrows: true,
            vertical_arrows: true,
            ..EventFilter::default()
        };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(picture_id(), arrows));
        let ring = Stroke::new(3.0, pressing(ui.visuals()));
        ui.painter()
            .rect_stroke(rect, 0.0, ring, StrokeKind::Inside);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_go_to_what_has_the_focus_and_letters_always_to_the_window() {
        let plain = Modifiers::empty();
        for key in [Key::Return, Key::Space, Key::Down, Key::Escape] {
            assert!(!Focus::Nothing.takes(key, plain));
            assert!(Focus::Control.takes(key, plain));
        }
        assert!(!Focus::Picture.takes(Key::Return, plain));
        assert!(Focus::Picture.takes(Key::Escape, plain));
        assert!(!Focus::Control.takes(Key::Down, Modifiers::Shift));
        for focus in [Focus::Nothing, Focus::Picture, Focus::Control] {
            assert!(!focus.takes(Key::M, plain));
        }
    }
}
