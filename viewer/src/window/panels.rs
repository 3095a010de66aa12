//! The list of findings, what is said of the chosen one, help and cautions.

use super::keys::HELP;
use super::layout::Layout;
use crate::app::{App, Mode};
use crate::command::{Command, Layer};
use crate::maps::Map;
use kiss3d::egui::{
    Align2, Area, Button, Color32, Context, FontFamily, FontId, Frame, Grid, Id, Margin, Order,
    Pos2, RichText, ScrollArea, Stroke, TextStyle, Ui, Vec2, Visuals,
};
use report::Language;
use report::result::Finding;
use report::words;
use std::collections::BTreeMap;

/// Behind text over the impression.
pub const GROUND: Color32 = Color32::from_rgba_premultiplied(12, 13, 15, 215);
/// Behind drawings over the impression.
pub const PANEL: Color32 = Color32::from_rgb(38, 41, 47);

const CAUTION: &str = "An aid to inspection, not a medical device; the licensed clinician decides. \
    Local regulations and infection control come first; makers' instructions take precedence. \
    Relieve a tray only out of the mouth, with eye and dust protection.";

/// What panels ask for.
pub enum Wish {
    /// Something of the case.
    Do(Command),
    /// A picture of the window.
    Screenshot,
    /// The check once more.
    CheckAgain,
}

/// What waits for a person.
pub fn pressing(visuals: &Visuals) -> Color32 {
    match visuals.dark_mode {
        true => Color32::from_rgb(253, 231, 37),
        false => Color32::from_rgb(158, 52, 0),
    }
}

/// What is settled.
pub fn settled(visuals: &Visuals) -> Color32 {
    match visuals.dark_mode {
        true => Color32::from_rgb(122, 209, 181),
        false => Color32::from_rgb(0, 96, 80),
    }
}

/// The dress of the window, light as paper or dark.
fn visuals(is_dark: bool) -> Visuals {
    if is_dark {
        return Visuals {
            override_text_color: Some(Color32::from_gray(235)),
            panel_fill: Color32::from_rgb(38, 41, 47),
            window_fill: Color32::from_rgb(20, 22, 26),
            faint_bg_color: Color32::from_rgb(44, 47, 54),
            ..Visuals::dark()
        };
    }
    Visuals {
        override_text_color: Some(Color32::from_gray(20)),
        panel_fill: Color32::from_rgb(246, 245, 241),
        window_fill: Color32::from_rgb(255, 255, 252),
        faint_bg_color: Color32::from_rgb(236, 235, 230),
        // Of text fields.
        extreme_bg_color: Color32::from_rgb(226, 225, 219),
        ..Visuals::light()
    }
}

/// Colours, and sizes of text and spaces.
pub fn set_style(ctx: &Context, text_size: f64, is_dark: bool) {
    let size = text_size as f32;
    ctx.all_styles_mut(|style| {
        style.visuals = visuals(is_dark);
        // What has the keyboard shows it plainly.
        let ring = Stroke::new(2.0, pressing(&style.visuals));
        style.visuals.widgets.active.bg_stroke = ring;
        for (kind, points) in [
            (TextStyle::Small, 12.0),
            (TextStyle::Body, 14.0),
            (TextStyle::Button, 14.0),
            (TextStyle::Heading, 19.0),
        ] {
            let font = FontId::new(points * size, FontFamily::Proportional);
            style.text_styles.insert(kind, font);
        }
        style.spacing.item_spacing = Vec2::new(6.0, 5.0) * size;
        style.spacing.button_padding = Vec2::new(6.0, 2.0) * size;
        style.spacing.icon_width = 15.0 * size;
        style.spacing.interact_size.y = 19.0 * size;
        // The chosen row is as plain at the edge of a list as in its middle.
        style.spacing.scroll.fade.strength = 0.0;
    });
}

/// A line or two in the middle of an otherwise empty window.
pub fn message(ctx: &Context, text: &str) {
    let width = ctx.content_rect().width() * 0.7;
    Area::new(Id::new("message"))
        .fade_in(false)
        .anchor(Align2::CENTER_CENTER, Vec2::ZERO)
        .show(ctx, |ui| {
            ui.set_max_width(width);
            ui.label(RichText::new(text).heading());
        });
}

/// Draws the panels; gives what was asked for by mouse. `scale` is pixels to a
/// point.
pub fn draw(
    ctx: &Context,
    app: &App,
    layout: &Layout,
    (scale, text_size): (f64, f64),
) -> Vec<Wish> {
    let mut wishes = Vec::new();
    let left = (layout.list.width / scale) as f32;
    let window = ctx.content_rect();
    let foot = (layout.foot.height / scale) as f32;
    Area::new(Id::new("list"))
        .fade_in(false)
        .fixed_pos(Pos2::ZERO)
        .order(Order::Middle)
        .show(ctx, |ui| {
            Frame::NONE
                .fill(ui.visuals().panel_fill)
                .inner_margin(Margin::same(8))
                .show(ui, |ui| {
                    ui.set_width(left - 16.0);
                    ui.set_min_height(window.height() - 16.0);
                    ui.set_max_height(window.height() - 16.0);
                    list(ui, app, text_size as f32, &mut wishes);
                });
        });
    Area::new(Id::new("foot"))
        .fade_in(false)
        .fixed_pos(Pos2::new(left, window.height() - foot))
        .order(Order::Middle)
        .show(ctx, |ui| {
            Frame::NONE
                .fill(ui.visuals().faint_bg_color)
                .inner_margin(Margin::symmetric(8, 2))
                .show(ui, |ui| {
                    ui.set_width(window.width() - left - 16.0);
                    ui.set_min_height(foot - 4.0);
                    ui.label(RichText::new(CAUTION).small());
                });
        });
    if app.help {
        help(ctx, left, text_size as f32);
    }
    wishes
}

fn list(ui: &mut Ui, app: &App, size: f32, wishes: &mut Vec<Wish>) {
    let result = &app.opened.result;
    let verdict = words::verdict_word(result.verdict, Language::English).to_uppercase();
    ui.label(RichText::new(format!("{verdict}: case {}", result.case)).heading());
    ui.label(words::what_to_do(result, Language::English));
    buttons(ui, app, wishes);
    ui.separator();
    let below = details_height(app, size);
    let room = (ui.available_height() - below).max(80.0);
    ScrollArea::vertical()
        .id_salt("findings")
        .max_height(room)
        .min_scrolled_height(room)
        .auto_shrink([false, false])
        .show(ui, |ui| {
            for (number, finding) in result.findings.iter().enumerate() {
                row(ui, app, number, finding, wishes);
            }
            if result.findings.is_empty() {
                ui.label("No failures and no open questions in the checks that were made.");
            }
            not_judged(ui, app);
        });
    ui.separator();
    if let Some(finding) = app.finding() {
        ScrollArea::vertical()
            .id_salt("details")
            .auto_shrink([false, false])
            .show(ui, |ui| details(ui, app, finding));
    }
}

fn details_height(app: &App, size: f32) -> f32 {
    if app.finding().is_some() {
        225.0 * size
    } else {
        0.0
    }
}

fn row(ui: &mut Ui, app: &App, number: usize, finding: &Finding, wishes: &mut Vec<Wish>) {
    let chosen = number == app.chosen;
    let done = app.ticks.is_done(finding);
    ui.horizontal(|ui| {
        let mut ticked = done;
        if ui.checkbox(&mut ticked, "").changed() {
            wishes.push(Wish::Do(Command::Choose(number)));
            wishes.push(Wish::Do(Command::ToggleDone));
        }
        let mark = if chosen { "▶ " } else { "" };
        let mut text = format!(
            "{mark}{} {} {}",
            finding.id,
            words::cause_word(finding, Language::English),
            finding.check
        );
        let place = words::finding_place(&app.opened.result, finding, Language::English);
        if !place.is_empty() {
            text = format!("{text}\n{place}");
        }
        if done {
            text += " (done)";
        }
        let button = Button::selectable(chosen, text).wrap();
        let response = ui.add(button);
        if response.clicked() {
            wishes.push(Wish::Do(Command::Choose(number)));
            wishes.push(Wish::Do(Command::Fly));
        }
        if response.gained_focus() || (chosen && app.is_flying()) {
            response.scroll_to_me(None);
        }
    });
}

fn details(ui: &mut Ui, app: &App, finding: &Finding) {
    ui.label(
        RichText::new(format!(
            "{}: {} ({})",
            finding.id,
            finding.check,
            words::cause_word(finding, Language::English)
        ))
        .strong(),
    );
    let place = words::finding_place(&app.opened.result, finding, Language::English);
    if !place.is_empty() {
        ui.label(place);
    }
    match words::finding_figure(finding, Language::English) {
        Some(figure) => ui.label(figure),
        None => ui.label("no figure"),
    };
    ui.label(RichText::new(&finding.instruction).strong());
    if finding.drawing.is_some() {
        ui.label(RichText::new("Section drawing with dimensions: G shows it large.").small());
    }
}

/// What was not judged, and why: silence would look like a pass.
fn not_judged(ui: &mut Ui, app: &App) {
    let result = &app.opened.result;
    let on_impressions = result.impressions.iter().flat_map(|i| &i.not_judged);
    let mut by_reason: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    let borders = result.impressions.iter().flat_map(|i| &i.border);
    let on_borders = borders.flat_map(|border| &border.not_judged);
    let all = on_impressions.chain(on_borders).chain(&result.not_judged);
    for entry in all.filter(|entry| entry.asked) {
        let checks = by_reason.entry(&entry.why).or_default();
        if !checks.contains(&entry.check.as_str()) {
            checks.push(&entry.check);
        }
    }
    if by_reason.is_empty() {
        return;
    }
    ui.add_space(6.0);
    ui.label(RichText::new("Not judged").strong());
    for (why, checks) in by_reason {
        ui.label(RichText::new(format!("{}: {why}", checks.join(", "))).small());
    }
}

/// Each button with its key and what it does.
fn buttons(ui: &mut Ui, app: &App, wishes: &mut Vec<Wish>) {
    let on = |command| Wish::Do(command);
    ui.horizontal_wrapped(|ui| {
        let mut button = |name: &str, held: bool, hover: &str, wish: Wish| {
            let button = Button::selectable(held, name).frame(true);
            if ui.add(button).on_hover_text(hover).clicked() {
                wishes.push(wish);
            }
        };
        let whole = "Home: shows the whole impression.";
        button("Whole", false, whole, on(Command::Whole));
        let map = app
            .map
            .as_ref()
            .map_or_else(|| "none".to_owned(), Map::title);
        let next = "M: colours the surface by the next figure, or by none.";
        button(
            &format!("Map: {map}"),
            app.map.is_some(),
            next,
            on(Command::NextMap),
        );
        let figure = "F: colours the border line by the next figure, or by none.";
        let is_coloured = app.border_figure.is_some();
        button(
            "Border figure",
            is_coloured,
            figure,
            on(Command::NextBorderFigure),
        );
        let colours = "P: uses the other colours.";
        button("Colours", false, colours, on(Command::NextPalette));
        for (name, layer, hover) in LAYERS {
            button(name, app.shows(layer), hover, on(Command::Toggle(layer)));
        }
        let distance = "D: measures between two clicks.";
        let measures = app.mode == Mode::Measure;
        button("Distance", measures, distance, on(Command::Measure));
        let mark = "L: marks landmarks by clicks.";
        let marks = matches!(app.mode, Mode::Mark(_));
        button("Mark", marks, mark, on(Command::Mark));
        let section = "X: cuts the impression through the middle of the picture.";
        button(
            "Section",
            app.section.is_some(),
            section,
            on(Command::Section),
        );
        if app.drawing().is_some() {
            let drawing = "G: shows the section drawing of the finding large, or small.";
            button("Drawing", app.enlarged, drawing, on(Command::Drawing));
        }
        if app.opened.impressions.len() > 1 {
            let next = "I: brings the next impression to the front.";
            button("Next impression", false, next, on(Command::NextImpression));
            let beside = "B: shows two impressions side by side.";
            button("Side by side", app.beside, beside, on(Command::Beside));
        }
        let picture = "S: saves a picture of the window beside the results.";
        button("Screenshot", false, picture, Wish::Screenshot);
        let again = "R or F5: checks the case again.";
        button("Check again", false, again, Wish::CheckAgain);
        let help = "H or F1: shows all keys.";
        button("Help (H)", app.help, help, on(Command::Help));
    });
}

/// What can be shown and hidden.
const LAYERS: [(&str, Layer, &str); 6] = [
    (
        "Border",
        Layer::Border,
        "1: shows or hides the border line.",
    ),
    ("Crest", Layer::Crest, "2: shows or hides the crest line."),
    (
        "Outlines",
        Layer::Outlines,
        "3: shows or hides lines at limits and around defects.",
    ),
    (
        "Landmarks",
        Layer::Landmarks,
        "4: shows or hides the landmarks.",
    ),
    ("Tray", Layer::Tray, "5: shows or hides the tray."),
    (
        "Border strip",
        Layer::Strip,
        "6: shows or hides the border, unrolled along the foot of the window.",
    ),
];

/// The keys, in smaller letters where the window is low, and to be scrolled
/// through where that is not enough.
fn help(ctx: &Context, left: f32, size: f32) {
    let room = ctx.content_rect().size() - Vec2::splat(56.0);
    let is_low = HELP.len() as f32 * 24.0 * size > room.y;
    let aside = if is_low { 0.0 } else { left / 2.0 };
    Area::new(Id::new("help"))
        .fade_in(false)
        .anchor(Align2::CENTER_CENTER, Vec2::new(aside, 0.0))
        .order(Order::Foreground)
        .show(ctx, |ui| {
            Frame::NONE
                .fill(ui.visuals().window_fill)
                .inner_margin(Margin::same(16))
                .show(ui, |ui| {
                    let letters = |text: &str| match is_low {
                        true => RichText::new(text).small(),
                        false => RichText::new(text),
                    };
                    let spacing = ui.spacing_mut();
                    if is_low {
                        (spacing.item_spacing.y, spacing.interact_size.y) = (1.0, 0.0);
                    }
                    ui.set_max_size(room);
                    let keys = ScrollArea::vertical()
                        .max_height(room.y)
                        .min_scrolled_height(room.y);
                    keys.show(ui, |ui| {
                        Grid::new("keys").num_columns(2).show(ui, |ui| {
                            for (key, what) in HELP {
                                ui.label(letters(key).strong());
                                ui.label(letters(what));
                                ui.end_row();
                            }
                        });
                    });
                });
        });
}
