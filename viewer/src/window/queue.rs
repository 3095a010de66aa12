//! The list of cases on the screen.

use super::decide::key_of_paper;
use super::panels::{pressing, settled};
use crate::queue::entry::{Entry, State};
use crate::queue::list::List;
use crate::queue::papers::Paper;
use kiss3d::egui::{
    Align2, Area, Button, Context, Event, FontId, Frame, Id, Key, Margin, Pos2, Rect, RichText,
    ScrollArea, Sense, TextEdit, TextStyle, TextWrapMode, Ui, Vec2, WidgetInfo, WidgetText,
    WidgetType,
};
use messages::{Language, text};

/// What the list asks for.
pub(super) enum Wish {
    /// Another case chosen, by its row.
    Choose(usize),
    /// The chosen case, opened.
    Open,
    /// Only cases with this text.
    Search(String),
    /// Only cases of this state.
    Only(Option<State>),
    /// The folder read again.
    ReadAgain,
    /// Another folder.
    ChooseFolder,
    /// The desk, for scans.
    Desk,
    /// The case so many rows further.
    Step(isize),
    /// A paper of the chosen case.
    Paper(Paper),
}

/// How far the list is scrolled, and what is typed.
#[derive(Default)]
pub(super) struct ListView {
    typed: String,
    offset: f32,
    height: f32,
    row: f32,
    /// Whether the chosen row is to be brought into sight.
    pub(super) bring: bool,
    /// Frames in which keys are passed over: the one that led here is among them.
    deaf: u8,
}

impl ListView {
    /// The list comes into sight.
    pub(super) fn enter(&mut self) {
        self.bring = true;
        self.deaf = 2;
    }

    /// How many rows are in sight.
    fn rows_in_sight(&self) -> isize {
        (self.height / self.row.max(1.0)).floor().max(1.0) as isize
    }

    /// The least scrolling that brings a row into sight.
    fn offset_of(&self, row: usize) -> f32 {
        let top = row as f32 * self.row;
        let lowest = top + self.row - self.height;
        self.offset.max(lowest).min(top)
    }
}

/// Draws the list; gives what was asked for, by mouse and, where it
/// `has_keyboard`, by keys. Letters go into the search.
pub(super) fn draw(
    ctx: &Context,
    list: &List,
    view: &mut ListView,
    (text_size, language): (f64, Language),
    has_keyboard: bool,
) -> Vec<Wish> {
    let mut wishes = Vec::new();
    let window = ctx.content_rect();
    Area::new(Id::new("cases"))
        .fade_in(false)
        .fixed_pos(Pos2::ZERO)
        .show(ctx, |ui| {
            Frame::NONE
                .fill(ui.visuals().panel_fill)
                .inner_margin(Margin::same(16))
                .show(ui, |ui| {
                    ui.set_width(window.width() - 32.0);
                    ui.set_height(window.height() - 32.0);
                    let size = text_size as f32;
                    let dress = (size, language);
                    let searches = head(ui, list, view, has_keyboard, dress, &mut wishes);
                    if view.deaf > 0 {
                        view.deaf -= 1;
                    } else if has_keyboard && searches {
                        // After the search has taken its letters: Enter opens
                        // what these have found.
                        keys(ui, view, &mut wishes);
                    }
                    ui.add_space(6.0);
                    rows(ui, list, view, (size, language), &mut wishes);
                    ui.add_space(6.0);
                    ui.label(
                        RichText::new(list.notice.text(language)).color(pressing(ui.visuals())),
                    );
                    ui.label(RichText::new(text!(language, "queue-keys")).small());
                    ui.label(RichText::new(text!(language, "queue-caution")).small());
                });
        });
    wishes
}

/// What is above the rows; whether the search has the keyboard.
fn head(
    ui: &mut Ui,
    list: &List,
    view: &mut ListView,
    has_keyboard: bool,
    (size, language): (f32, Language),
    wishes: &mut Vec<Wish>,
) -> bool {
    let mut searches = false;
    let folder = list.folder().file_name().unwrap_or_default();
    ui.horizontal_wrapped(|ui| {
        let folder = folder.to_string_lossy();
        let title = text!(language, "queue-heading", folder = &*folder);
        ui.label(RichText::new(title).heading());
        ui.add_space(14.0);
        let search = TextEdit::singleline(&mut view.typed)
            .hint_text(text!(language, "queue-search"))
            .desired_width(260.0 * size);
        let search = ui.add(search);
        if search.changed() {
            wishes.push(Wish::Search(view.typed.clone()));
        }
        // It has the keyboard from the start, and again once no control has it.
        if has_keyboard && ui.memory(|memory| memory.focused().is_none()) {
            search.request_focus();
        }
        searches = search.has_focus();
        let paper = |paper: Paper| {
            let (name, key) = (paper.words(language), key_of_paper(paper).to_owned());
            (name, key, Wish::Paper(paper))
        };
        for (name, key, wish) in [
            (
                text!(language, "queue-open"),
                text!(language, "key-enter"),
                Wish::Open,
            ),
            paper(Paper::Sheet),
            paper(Paper::ReturnNote),
            paper(Paper::Report),
            (
                text!(language, "queue-read-again"),
                "F5".to_owned(),
                Wish::ReadAgain,
            ),
            (
                text!(language, "queue-another-folder"),
                text!(language, "key-open-folder"),
                Wish::ChooseFolder,
            ),
            (
                text!(language, "queue-desk"),
                text!(language, "key-desk"),
                Wish::Desk,
            ),
        ] {
            if ui.button(name).on_hover_text(key).clicked() {
                wishes.push(wish);
            }
        }
    });
    ui.horizontal_wrapped(|ui| {
        let mut chip = |text: String, state: Option<State>| {
            let is_held = list.only() == state;
            let chip = Button::selectable(is_held, text).frame(true);
            if ui.add(chip).clicked() {
                wishes.push(Wish::Only(state));
            }
        };
        chip(text!(language, "queue-all", count = list.len()), None);
        for (state, count) in list.counts() {
            let words = state.words(language);
            let words = text!(language, "queue-chip", state = words, count = count);
            chip(words, Some(state));
        }
    });
    searches
}

/// What keys ask for, in the order in which they were pressed. Function keys are
/// the window's.
fn keys(ui: &Ui, view: &mut ListView, wishes: &mut Vec<Wish>) {
    let page = view.rows_in_sight();
    let events = ui.input(|input| input.events.clone());
    for event in events {
        let Event::Key {
            key,
            pressed: true,
            modifiers,
            ..
        } = event
        else {
            continue;
        };
        wishes.push(match key {
            Key::ArrowDown => Wish::Step(1),
            Key::ArrowUp => Wish::Step(-1),
            Key::PageDown => Wish::Step(page),
            Key::PageUp => Wish::Step(-page),
            Key::Enter => Wish::Open,
            Key::Escape => {
                view.typed.clear();
                Wish::Search(String::new())
            }
            Key::D if modifiers.ctrl => Wish::Desk,
            _ => continue,
        });
    }
}

/// Left edges of the columns and the right edge of the last, in `width`.
fn columns(width: f32, size: f32) -> [f32; 5] {
    let margin = 8.0 * size;
    let case = margin + 172.0 * size;
    let about = case + 190.0 * size;
    let decided = (width - 350.0 * size).max(about.midpoint(width));
    [margin, case, about, decided, width - margin]
}

fn rows(
    ui: &mut Ui,
    list: &List,
    view: &mut ListView,
    (size, language): (f32, Language),
    wishes: &mut Vec<Wish>,
) {
    // The notice, and two texts of two lines each where they are that long.
    let below = if ui.available_width() > 900.0 * size {
        80.0
    } else {
        112.0
    } * size;
    ui.spacing_mut().item_spacing.y = 0.0;
    let width = ui.available_width();
    let (head, _) = ui.allocate_exact_size(Vec2::new(width, 24.0 * size), Sense::hover());
    let heads = [
        text!(language, "queue-head-state"),
        text!(language, "queue-head-case"),
        text!(language, "queue-head-about"),
        text!(language, "queue-head-decision"),
    ];
    let texts = heads.map(|text| RichText::new(text).strong());
    cells(ui, head, texts, size);
    let height = (ui.available_height() - below).max(60.0);
    view.row = 26.0 * size;
    let mut area = ScrollArea::vertical()
        .id_salt("rows")
        .max_height(height)
        .auto_shrink([false, false]);
    if std::mem::take(&mut view.bring) {
        area = area.vertical_scroll_offset(view.offset_of(list.chosen_row()));
    }
    let chosen = list.chosen_row();
    let shown = area.show_rows(ui, view.row, list.rows(), |ui, range| {
        for row in range {
            if let Some(entry) = list.row(row) {
                let at = (row, row == chosen);
                one_row(ui, entry, at, (view.row, size, language), wishes);
            }
        }
    });
    if list.rows() == 0 {
        let text = match list.is_empty() {
            true => text!(language, "queue-empty"),
            false => text!(language, "queue-no-match"),
        };
        let font = FontId::proportional(14.0 * size);
        let middle = shown.inner_rect.center();
        ui.painter().text(
            middle,
            Align2::CENTER_CENTER,
            text,
            font,
            ui.visuals().text_color(),
        );
    }
    view.offset = shown.state.offset.y;
    view.height = shown.inner_rect.height();
    let items = Vec2::new(6.0, 5.0) * size;
    ui.spacing_mut().item_spacing = items;
}

fn one_row(
    ui: &mut Ui,
    entry: &Entry,
    (row, is_chosen): (usize, bool),
    (height, size, language): (f32, f32, Language),
    wishes: &mut Vec<Wish>,
) {
    let width = ui.available_width();
    let (rect, response) = ui.allocate_exact_size(Vec2::new(width, height), Sense::click());
    let ground = match (is_chosen, response.hovered()) {
        (true, _) => ui.visuals().selection.bg_fill,
        (false, true) => ui.visuals().widgets.inactive.bg_fill,
        (false, false) if row.is_multiple_of(2) => ui.visuals().faint_bg_color,
        (false, false) => ui.visuals().panel_fill,
    };
    ui.painter().rect_filled(rect, 2.0, ground);
    let name_of_state = entry.state.words(language);
    let state = RichText::new(&name_of_state);
    let state = match entry.state {
        State::ToLookAt | State::ToReturn => state.color(pressing(ui.visuals())),
        State::ToWorkFrom | State::Decided => state.color(settled(ui.visuals())),
        State::Waiting | State::OnHold | State::BeingRead => state,
    };
    let texts = [
        state,
        RichText::new(&entry.name).strong(),
        RichText::new(&entry.about),
        RichText::new(&entry.decided),
    ];
    cells(ui, rect, texts, size);
    response.widget_info(|| {
        let words = [
            name_of_state.as_str(),
            &entry.name,
            &entry.about,
            &entry.decided,
        ];
        WidgetInfo::selected(
            WidgetType::SelectableLabel,
            true,
            is_chosen,
            words.join("; "),
        )
    });
    if response.double_clicked() {
        wishes.push(Wish::Choose(row));
        wishes.push(Wish::Open);
    } else if response.clicked() {
        wishes.push(Wish::Choose(row));
        if response.has_focus() {
            // By Enter, not by mouse.
            wishes.push(Wish::Open);
        }
    }
    // All of a text that was cut short.
    if response.hovered() {
        let all = [&*entry.found.place, &entry.about, &entry.decided];
        let all: Vec<&str> = all.into_iter().filter(|text| !text.is_empty()).collect();
        response.on_hover_text(all.join("\n"));
    }
}

/// Writes the texts of a row, each cut short where its column ends.
fn cells(ui: &Ui, rect: Rect, texts: [RichText; 4], size: f32) {
    let edges = columns(rect.width(), size);
    for (column, text) in texts.into_iter().enumerate() {
        let room = edges[column + 1] - edges[column] - 8.0 * size;
        let galley = WidgetText::from(text).into_galley(
            ui,
            Some(TextWrapMode::Truncate),
            room.max(0.0),
            TextStyle::Body,
        );
        let left = rect.left() + edges[column];
        let at = Pos2::new(left, rect.center().y - galley.size().y / 2.0);
        ui.painter().galley(at, galley, ui.visuals().text_color());
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_chosen_row_is_brought_into_sight_by_the_least_scrolling() {
        let view = ListView {
            offset: 100.0,
            height: 60.0,
            row: 20.0,
            ..ListView::default()
        };
        assert_eq!(view.offset_of(6), 100.0);
        assert_eq!(view.offset_of(4), 80.0);
        assert_eq!(view.offset_of(9), 140.0);
        assert_eq!(view.rows_in_sight(), 3);
    }
}
