//! The desk on the screen.

use super::panels::{pressing, settled};
use crate::desk::Desk;
use check::proposal::{Role, Surety, file_name};
use kiss3d::egui::{
    Align2, Area, Button, ComboBox, Context, Frame, Grid, Id, Margin, Pos2, RichText, ScrollArea,
    TextEdit, Ui, Vec2,
};

const CAUTION: &str = "An aid to inspection, not a medical device; the licensed clinician decides. \
    Nothing leaves this computer. Give each case a pseudonym, never a name.";

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
pub fn draw(ctx: &Context, desk: &mut Desk, has_list: bool) -> Vec<Wish> {
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
                    if has_list && ui.button("List of cases (Esc)").clicked() {
                        wishes.push(Wish::List);
                    }
                    if desk.is_empty() {
                        empty(ui, &desk.notice, &mut wishes);
                    } else {
                        filled(ui, desk, &mut wishes);
                    }
                });
        });
    wishes
}

/// Shows how a check goes on, with a way to stop it; whether that was asked for.
pub fn checking(ctx: &Context, step: &str) -> bool {
    let mut stop = false;
    Area::new(Id::new("checking"))
        .fade_in(false)
        .anchor(Align2::CENTER_CENTER, Vec2::ZERO)
        .show(ctx, |ui| {
            ui.vertical_centered(|ui| {
                ui.label(RichText::new("Opening the case").heading());
                ui.add_space(6.0);
                ui.label(format!("{step} …"));
                ui.add_space(14.0);
                stop = ui.button("Cancel (Esc)").clicked();
            });
        });
    stop
}

fn empty(ui: &mut Ui, notice: &str, wishes: &mut Vec<Wish>) {
    let height = ui.available_height();
    ui.vertical_centered(|ui| {
        ui.add_space(height * 0.3);
        ui.label(RichText::new("Drop scans here, or choose them").heading());
        ui.add_space(8.0);
        ui.label(
            "STL, PLY or OBJ: the impressions of one case, the scans of their empty trays, the \
             jaw-relation record.\nA case file or a result folder can be dropped, too, and a \
             folder of cases, which becomes a list.",
        );
        ui.add_space(16.0);
        choose(ui, wishes);
        ui.add_space(16.0);
        ui.label(RichText::new(notice).color(pressing(ui.visuals())));
        ui.add_space(height * 0.2);
        ui.label(RichText::new(CAUTION).small());
    });
}

fn choose(ui: &mut Ui, wishes: &mut Vec<Wish>) {
    for (name, key, wish) in [
        ("Choose scans …", "Ctrl O", Wish::Choose),
        (
            "Choose a folder of cases …",
            "Ctrl Shift O",
            Wish::ChooseFolder,
        ),
    ] {
        if ui.button(name).on_hover_text(key).clicked() {
            wishes.push(wish);
        }
    }
}

fn filled(ui: &mut Ui, desk: &mut Desk, wishes: &mut Vec<Wish>) {
    ui.label(RichText::new("Scans of one case").heading());
    ui.label("What each scan was recognised as, by its surface. Correct what is wrong.");
    ui.add_space(10.0);
    let below = 190.0;
    ScrollArea::both()
        .max_height((ui.available_height() - below).max(80.0))
        .show(ui, |ui| match desk.proposal() {
            None => {
                let step = desk
                    .step()
                    .map_or_else(String::new, |step| step.to_string());
                ui.label(format!("{step} …"));
            }
            Some(_) => rows(ui, desk, wishes),
        });
    ui.add_space(10.0);
    ui.horizontal(|ui| {
        ui.label("Pseudonym of the case");
        ui.add(
            TextEdit::singleline(&mut desk.id)
                .hint_text("left empty, a neutral one")
                .desired_width(260.0),
        );
        ui.label("never a name");
    });
    ui.add_space(6.0);
    ui.horizontal(|ui| {
        let waits_for = desk.waits_for();
        if ui
            .add_enabled(waits_for.is_none(), Button::new("Check"))
            .clicked()
        {
            wishes.push(Wish::Check);
        }
        choose(ui, wishes);
        if ui.button("Clear the desk").clicked() {
            wishes.push(Wish::Clear);
        }
        ui.label(RichText::new(waits_for.unwrap_or_default()).color(pressing(ui.visuals())));
    });
    ui.add_space(8.0);
    // Below the buttons, which stay where they are when a question is answered.
    questions(ui, desk);
    ui.label(RichText::new(&desk.notice).color(pressing(ui.visuals())));
    ui.label(RichText::new(CAUTION).small());
}

fn rows(ui: &mut Ui, desk: &Desk, wishes: &mut Vec<Wish>) {
    let Some((evidence, proposal)) = desk.proposal() else {
        return;
    };
    Grid::new("scans")
        .num_columns(4)
        .spacing([18.0, 8.0])
        .striped(true)
        .show(ui, |ui| {
            for head in ["Scan", "What it is", "How sure", "Why"] {
                ui.label(RichText::new(head).strong());
            }
            ui.end_row();
            for (scan, placed) in proposal.placed.iter().enumerate() {
                ui.label(file_name(&evidence.scans[scan].file));
                let shown = placed
                    .role
                    .map_or_else(|| "?".to_owned(), |role| role.to_string());
                ComboBox::from_id_salt(scan)
                    .selected_text(shown)
                    .width(250.0)
                    .height(330.0)
                    .show_ui(ui, |ui| {
                        for role in Role::all() {
                            let is_chosen = placed.role == Some(role);
                            if ui.selectable_label(is_chosen, role.to_string()).clicked() {
                                wishes.push(Wish::State(scan, role));
                            }
                        }
                    });
                let colour = if placed.surety == Surety::Open {
                    pressing(ui.visuals())
                } else {
                    settled(ui.visuals())
                };
                ui.label(RichText::new(placed.surety.to_string()).color(colour));
                let remarks = placed.remarks.iter().map(String::as_str);
                let why: Vec<&str> = std::iter::once(placed.why.as_str())
                    .chain(remarks)
                    .collect();
                ui.label(why.join("; "));
                ui.end_row();
            }
        });
}

fn questions(ui: &mut Ui, desk: &Desk) {
    let Some((_, proposal)) = desk.proposal() else {
        return;
    };
    for question in proposal.questions.iter().take(3) {
        ui.label(RichText::new(&question.text).color(pressing(ui.visuals())));
    }
    if proposal.questions.len() > 3 {
        ui.label(format!("and {} more", proposal.questions.len() - 3));
    }
    ui.add_space(8.0);
}
