//! The desk on the screen.

use super::panels::{pressing, settled};
use crate::desk::Desk;
use check::proposal::{Role, Surety, file_name};
use kiss3d::egui::{
    Align2, Area, Button, ComboBox, Context, Frame, Grid, Id, Margin, Pos2, RichText, ScrollArea,
    TextEdit, Ui, Vec2,
};
use messages::{Language, text};

/// What the desk asks for.
pub enum Wish {
    /// A dialog that chooses scans.
    Choose,
    /// A dialog that chooses a folder of cases.
    ChooseFolder,
    /// Back to the list of cases.
    List,
    /// Nothing on the desk.
    Clear,
    /// What a scan is.
    State(usize, Role),
    /// The check.
    Check,
}

/// Draws the desk; gives what was asked for.
pub fn draw(ctx: &Context, desk: &mut Desk, has_list: bool, language: Language) -> Vec<Wish> {
    let mut wishes = Vec::new();
    let window = ctx.content_rect();
    Area::new(Id::new("desk"))
        .fade_in(false)
        .fixed_pos(Pos2::ZERO)
        .show(ctx, |ui| {
            Frame::NONE
                .fill(ui.visuals().panel_fill)
                .inner_margin(Margin::same(24))
                .show(ui, |ui| {
                    ui.set_width(window.width() - 48.0);
                    ui.set_height(window.height() - 48.0);
                    if has_list && ui.button(text!(language, "desk-list")).clicked() {
                        wishes.push(Wish::List);
                    }
                    if desk.is_empty() {
                        empty(ui, &desk.notice.text(language), language, &mut wishes);
                    } else {
                        filled(ui, desk, language, &mut wishes);
                    }
                });
        });
    wishes
}

/// Shows how a check goes on, with a way to stop it; whether that was asked for.
pub fn checking(ctx: &Context, step: &str, language: Language) -> bool {
    let mut stop = false;
    Area::new(Id::new("checking"))
        .fade_in(false)
        .anchor(Align2::CENTER_CENTER, Vec2::ZERO)
        .show(ctx, |ui| {
            ui.vertical_centered(|ui| {
                ui.label(RichText::new(text!(language, "opening-case")).heading());
                ui.add_space(6.0);
                ui.label(text!(language, "desk-step", step = step));
                ui.add_space(14.0);
                stop = ui.button(text!(language, "button-cancel")).clicked();
            });
        });
    stop
}

fn empty(ui: &mut Ui, notice: &str, language: Language, wishes: &mut Vec<Wish>) {
    let height = ui.available_height();
    ui.vertical_centered(|ui| {
        ui.add_space(height * 0.3);
        ui.label(RichText::new(text!(language, "desk-drop")).heading());
        ui.add_space(8.0);
        let (what, else_) = (
            text!(language, "desk-what"),
            text!(language, "desk-what-else"),
        );
        ui.label(format!("{what}\n{else_}"));
        ui.add_space(16.0);
        choose(ui, language, wishes);
        ui.add_space(16.0);
        ui.label(RichText::new(notice).color(pressing(ui.visuals())));
        ui.add_space(height * 0.2);
        ui.label(RichText::new(text!(language, "desk-caution")).small());
    });
}

fn choose(ui: &mut Ui, language: Language, wishes: &mut Vec<Wish>) {
    for (name, key, wish) in [
        (
            text!(language, "desk-choose-scans"),
            text!(language, "key-open-scans"),
            Wish::Choose,
        ),
        (
            text!(language, "desk-choose-folder"),
            text!(language, "key-open-folder"),
            Wish::ChooseFolder,
        ),
    ] {
        if ui.button(name).on_hover_text(key).clicked() {
            wishes.push(wish);
        }
    }
}

fn filled(ui: &mut Ui, desk: &mut Desk, language: Language, wishes: &mut Vec<Wish>) {
    ui.label(RichText::new(text!(language, "desk-scans")).heading());
    ui.label(text!(language, "desk-recognised"));
    ui.add_space(10.0);
    let below = 190.0;
    ScrollArea::both()
        .max_height((ui.available_height() - below).max(80.0))
        .show(ui, |ui| match desk.proposal() {
            None => {
                let step = desk
                    .step()
                    .map_or_else(String::new, |step| step.message().text(language));
                ui.label(text!(language, "desk-step", step = step));
            }
            Some(_) => rows(ui, desk, language, wishes),
        });
    ui.add_space(10.0);
    ui.horizontal(|ui| {
        ui.label(text!(language, "desk-pseudonym"));
        ui.add(
            TextEdit::singleline(&mut desk.id)
                .hint_text(text!(language, "desk-pseudonym-hint"))
                .desired_width(260.0),
        );
        ui.label(text!(language, "desk-never-a-name"));
    });
    ui.add_space(6.0);
    ui.horizontal(|ui| {
        let waits_for = desk.waits_for();
        if ui
            .add_enabled(
                waits_for.is_none(),
                Button::new(text!(language, "desk-check")),
            )
            .clicked()
        {
            wishes.push(Wish::Check);
        }
        choose(ui, language, wishes);
        if ui.button(text!(language, "desk-clear")).clicked() {
            wishes.push(Wish::Clear);
        }
        ui.label(
            RichText::new(waits_for.unwrap_or_default().text(language))
                .color(pressing(ui.visuals())),
        );
    });
    ui.add_space(8.0);
    // Below the buttons, which stay where they are when a question is answered.
    questions(ui, desk, language);
    ui.label(RichText::new(desk.notice.text(language)).color(pressing(ui.visuals())));
    ui.label(RichText::new(text!(language, "desk-caution")).small());
}

fn rows(ui: &mut Ui, desk: &Desk, language: Language, wishes: &mut Vec<Wish>) {
    let Some((evidence, proposal)) = desk.proposal() else {
        return;
    };
    Grid::new("scans")
        .num_columns(4)
        .spacing([18.0, 8.0])
        .striped(true)
        .show(ui, |ui| {
            for head in [
                text!(language, "desk-head-scan"),
                text!(language, "desk-head-is"),
                text!(language, "desk-head-surety"),
                text!(language, "desk-head-why"),
            ] {
                ui.label(RichText::new(head).strong());
            }
            ui.end_row();
            for (scan, placed) in proposal.placed.iter().enumerate() {
                ui.label(file_name(&evidence.scans[scan].file));
                let shown = placed
                    .role
                    .map_or_else(|| "?".to_owned(), |role| role.message().text(language));
                ComboBox::from_id_salt(scan)
                    .selected_text(shown)
                    .width(250.0)
                    .height(330.0)
                    .show_ui(ui, |ui| {
                        for role in Role::all() {
                            let is_chosen = placed.role == Some(role);
                            if ui
                                .selectable_label(is_chosen, role.message().text(language))
                                .clicked()
                            {
                                wishes.push(Wish::State(scan, role));
                            }
                        }
                    });
                let colour = if placed.surety == Surety::Open {
                    pressing(ui.visuals())
                } else {
                    settled(ui.visuals())
                };
                ui.label(RichText::new(placed.surety.message().text(language)).color(colour));
                ui.label(placed.reasons(language));
                ui.end_row();
            }
        });
}

fn questions(ui: &mut Ui, desk: &Desk, language: Language) {
    let Some((_, proposal)) = desk.proposal() else {
        return;
    };
    for question in proposal.questions.iter().take(3) {
        ui.label(RichText::new(question.text.text(language)).color(pressing(ui.visuals())));
    }
    if proposal.questions.len() > 3 {
        ui.label(text!(
            language,
            "desk-more-questions",
            more = proposal.questions.len() - 3
        ));
    }
    ui.add_space(8.0);
}
