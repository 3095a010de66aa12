//! The list of findings, what is said of the chosen one, help and cautions.

use super::keys;
use super::layout::Layout;
use crate::app::{App, Mode};
use crate::command::{Command, Layer};
use kiss3d::egui::{
    Align2, Area, Button, Color32, Context, FontFamily, FontId, Frame, Grid, Id, Margin, Order,
    Pos2, RichText, ScrollArea, Stroke, TextStyle, Ui, Vec2, Visuals,
};
use messages::{Language, text};
use report::result::Finding;
use report::words;
use std::collections::BTreeMap;

/// Behind text over the impression.
pub const GROUND: Color32 = Color32::from_rgba_premultiplied(12, 13, 15, 215);
/// Behind drawings over the impression.
pub const PANEL: Color32 = Color32::from_rgb(38, 41, 47);

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
                    ui.label(RichText::new(text!(app.language, "window-caution")).small());
                });
        });
    if app.help {
        help(ctx, app.language, left, text_size as f32);
    }
    wishes
}

fn list(ui: &mut Ui, app: &App, size: f32, wishes: &mut Vec<Wish>) {
    let (result, language) = (&app.opened.result, app.language);
    let heading = text!(
        language,
        "window-verdict",
        verdict = words::verdict_word(result.verdict, language).to_uppercase(),
        case = result.case.as_str()
    );
    ui.label(RichText::new(heading).heading());
    ui.label(words::what_to_do(result, language));
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
                ui.label(text!(language, "page-no-steps"));
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
            words::cause_word(finding, app.language),
            words::check_names(&[finding.check.as_str()], app.language)
        );
        let place = words::finding_place(&app.opened.result, finding, app.language);
        if !place.is_empty() {
            text = format!("{text}\n{place}");
        }
        if done {
            text += " ";
            text += &text!(app.language, "window-done");
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
    let language = app.language;
    ui.label(
        RichText::new(format!(
            "{}: {} ({})",
            finding.id,
            words::check_names(&[finding.check.as_str()], language),
            words::cause_word(finding, language)
        ))
        .strong(),
    );
    let place = words::finding_place(&app.opened.result, finding, language);
    if !place.is_empty() {
        ui.label(place);
    }
    match words::finding_figure(finding, language) {
        Some(figure) => ui.label(figure),
        None => ui.label(text!(language, "window-no-figure")),
    };
    ui.label(RichText::new(finding.instruction_in(language)).strong());
    if finding.drawing.is_some() {
        ui.label(RichText::new(text!(language, "window-has-drawing")).small());
    }
}

/// What was not judged, and why: silence would look like a pass.
fn not_judged(ui: &mut Ui, app: &App) {
    let result = &app.opened.result;
    let on_impressions = result.impressions.iter().flat_map(|i| &i.not_judged);
    let mut by_reason: BTreeMap<String, Vec<&str>> = BTreeMap::new();
    let borders = result.impressions.iter().flat_map(|i| &i.border);
    let on_borders = borders.flat_map(|border| &border.not_judged);
    let all = on_impressions.chain(on_borders).chain(&result.not_judged);
    for entry in all.filter(|entry| entry.asked) {
        let checks = by_reason.entry(entry.why_in(app.language)).or_default();
        if !checks.contains(&entry.check.as_str()) {
            checks.push(&entry.check);
        }
    }
    if by_reason.is_empty() {
        return;
    }
    ui.add_space(6.0);
    ui.label(RichText::new(text!(app.language, "page-not-judged")).strong());
    for (why, checks) in by_reason {
        let checks = words::check_names(&checks, app.language);
        ui.label(RichText::new(format!("{checks}: {why}")).small());
    }
}

/// A button: its name, whether it is held, what it does, and what it asks for.
type ButtonOf = (String, bool, String, Wish);

/// Each button with its key and what it does.
fn buttons(ui: &mut Ui, app: &App, wishes: &mut Vec<Wish>) {
    ui.horizontal_wrapped(|ui| {
        let all = views(app).into_iter().chain(tools(app)).chain(rest(app));
        for (name, held, hover, wish) in all {
            let button = Button::selectable(held, name).frame(true);
            if ui.add(button).on_hover_text(hover).clicked() {
                wishes.push(wish);
            }
        }
    });
}

/// What is shown of the impression.
fn views(app: &App) -> Vec<ButtonOf> {
    let (language, on) = (app.language, Wish::Do);
    let map = app.map.as_ref().map_or_else(
        || text!(language, "button-map-none"),
        |map| map.title(language),
    );
    let mut all = vec![
        (
            text!(language, "button-whole"),
            false,
            text!(language, "button-whole-how"),
            on(Command::Whole),
        ),
        (
            text!(language, "button-map", map = map),
            app.map.is_some(),
            text!(language, "button-map-how"),
            on(Command::NextMap),
        ),
        (
            text!(language, "button-border-figure"),
            app.border_figure.is_some(),
            text!(language, "button-border-figure-how"),
            on(Command::NextBorderFigure),
        ),
        (
            text!(language, "button-colours"),
            false,
            text!(language, "button-colours-how"),
            on(Command::NextPalette),
        ),
    ];
    all.extend(layers(language).map(|(name, layer, hover)| {
        let wish = on(Command::Toggle(layer));
        (name, app.shows(layer), hover, wish)
    }));
    all
}

/// What is done with it.
fn tools(app: &App) -> Vec<ButtonOf> {
    let (language, on) = (app.language, Wish::Do);
    let mut all = vec![
        (
            text!(language, "button-distance"),
            app.mode == Mode::Measure,
            text!(language, "button-distance-how"),
            on(Command::Measure),
        ),
        (
            text!(language, "button-mark"),
            matches!(app.mode, Mode::Mark(_)),
            text!(language, "button-mark-how"),
            on(Command::Mark),
        ),
        (
            text!(language, "button-section"),
            app.section.is_some(),
            text!(language, "button-section-how"),
            on(Command::Section),
        ),
    ];
    if app.drawing().is_some() {
        all.push((
            text!(language, "button-drawing"),
            app.enlarged,
            text!(language, "button-drawing-how"),
            on(Command::Drawing),
        ));
    }
    if app.opened.impressions.len() > 1 {
        all.push((
            text!(language, "button-next-impression"),
            false,
            text!(language, "button-next-impression-how"),
            on(Command::NextImpression),
        ));
        all.push((
            text!(language, "button-beside"),
            app.beside,
            text!(language, "button-beside-how"),
            on(Command::Beside),
        ));
    }
    all
}

/// What concerns the window and the case.
fn rest(app: &App) -> [ButtonOf; 3] {
    let language = app.language;
    [
        (
            text!(language, "button-screenshot"),
            false,
            text!(language, "button-screenshot-how"),
            Wish::Screenshot,
        ),
        (
            text!(language, "button-check-again"),
            false,
            text!(language, "button-check-again-how"),
            Wish::CheckAgain,
        ),
        (
            text!(language, "button-help"),
            app.help,
            text!(language, "button-help-how"),
            Wish::Do(Command::Help),
        ),
    ]
}

/// What can be shown and hidden.
fn layers(language: Language) -> [(String, Layer, String); 6] {
    [
        (
            text!(language, "layer-border"),
            Layer::Border,
            text!(language, "layer-border-how"),
        ),
        (
            text!(language, "layer-crest"),
            Layer::Crest,
            text!(language, "layer-crest-how"),
        ),
        (
            text!(language, "layer-outlines"),
            Layer::Outlines,
            text!(language, "layer-outlines-how"),
        ),
        (
            text!(language, "layer-landmarks"),
            Layer::Landmarks,
            text!(language, "layer-landmarks-how"),
        ),
        (
            text!(language, "layer-tray"),
            Layer::Tray,
            text!(language, "layer-tray-how"),
        ),
        (
            text!(language, "layer-strip"),
            Layer::Strip,
            text!(language, "layer-strip-how"),
        ),
    ]
}

/// The keys, in smaller letters where the window is low, and to be scrolled
/// through where that is not enough.
fn help(ctx: &Context, language: Language, left: f32, size: f32) {
    let help = keys::help(language);
    let room = ctx.content_rect().size() - Vec2::splat(56.0);
    let is_low = help.len() as f32 * 24.0 * size > room.y;
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
                            for (key, what) in &help {
                                ui.label(letters(key).strong());
                                ui.label(letters(what));
                                ui.end_row();
                            }
                        });
                    });
                });
        });
}
