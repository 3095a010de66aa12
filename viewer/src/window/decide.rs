//! Over an impression: the way through the list, the papers, and the decision.

use super::panels::pressing;
use crate::app::App;
use crate::queue::decision::NOTE;
use crate::queue::draft::{Answer, Deciding};
use crate::queue::papers::Paper;
use kiss3d::egui::{
    Align2, Area, Button, Color32, Context, Event, Frame, Grid, Id, Key, Label, Margin, Order,
    Pos2, RichText, Stroke, TextEdit, Ui, Vec2,
};
use messages::{Language, text};

/// What the bar asks for.
pub(super) enum Wish {
    /// The next case of the list, or one before.
    Walk(isize),
    /// Back to the list.
    List,
    /// A paper.
    Paper(Paper),
    /// A decision.
    Decide(Answer),
}

/// How the decision that is being written goes on.
pub(super) enum Reply {
    /// It is to be saved.
    Save,
    /// It is not.
    Leave,
}

/// A field of the decision that is being written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Field {
    /// The first one.
    First,
    /// The initials.
    Initials,
}

/// The key of a paper.
pub(super) fn key_of_paper(paper: Paper) -> &'static str {
    match paper {
        Paper::Sheet => "F2",
        Paper::ReturnNote => "F3",
        Paper::Report => "F4",
    }
}

/// The key of an answer.
pub(super) fn key_of_answer(answer: Answer) -> &'static str {
    match answer {
        Answer::Returned => "F6",
        Answer::WorkedFrom => "F7",
        Answer::WaitingFor => "F8",
    }
}

/// Draws the bar; `turn` is the number of the case on the walk and of how many,
/// `None` where there is no list. Gives what was asked for by mouse.
pub(super) fn bar(ctx: &Context, app: &App, turn: Option<(usize, usize)>, scale: f64) -> Vec<Wish> {
    let mut wishes = Vec::new();
    let left = (app.canvas.left / scale) as f32;
    let height = (app.canvas.top / scale) as f32;
    let window = ctx.content_rect();
    Area::new(Id::new("bar"))
        .fade_in(false)
        .fixed_pos(Pos2::new(left, 0.0))
        .order(Order::Middle)
        .show(ctx, |ui| {
            Frame::NONE
                .fill(ui.visuals().panel_fill)
                .inner_margin(Margin::symmetric(8, 4))
                .show(ui, |ui| {
                    ui.set_width(window.width() - left - 16.0);
                    ui.set_height(height - 8.0);
                    buttons(ui, turn, app.language, &mut wishes);
                    ui.add(Label::new(RichText::new(decided(app)).small()).truncate());
                });
        });
    wishes
}

fn buttons(ui: &mut Ui, turn: Option<(usize, usize)>, language: Language, wishes: &mut Vec<Wish>) {
    ui.horizontal_wrapped(|ui| {
        let mut button = |ui: &mut Ui, name: &str, key: &str, wish: Wish| {
            let button = Button::new(name);
            if ui.add(button).on_hover_text(key).clicked() {
                wishes.push(wish);
            }
        };
        if let Some((number, of)) = turn {
            for (name, key, wish) in [
                (
                    text!(language, "decide-previous"),
                    text!(language, "key-page-up"),
                    Wish::Walk(-1),
                ),
                (
                    text!(language, "decide-next"),
                    text!(language, "key-page-down"),
                    Wish::Walk(1),
                ),
                (text!(language, "decide-list"), "Esc".to_owned(), Wish::List),
            ] {
                button(ui, &name, &key, wish);
            }
            ui.label(text!(language, "decide-turn", number = number, of = of));
            ui.separator();
        }
        for paper in Paper::ALL {
            let name = paper.words(language);
            button(ui, &name, key_of_paper(paper), Wish::Paper(paper));
        }
        ui.separator();
        for answer in Answer::ALL {
            let name = text!(language, "answer-button", answer = answer.words(language));
            button(ui, &name, key_of_answer(answer), Wish::Decide(answer));
        }
    });
}

/// What was decided, or how to decide.
fn decided(app: &App) -> String {
    match &app.decision {
        Some(decision) => text!(app.language, "decision-is", decision = decision.with_note()),
        None => text!(app.language, "decision-none"),
    }
}

/// Draws the decision that is being written; gives how it goes on.
pub(super) fn dialog(
    ctx: &Context,
    deciding: &mut Deciding,
    focus: Option<Field>,
    (text_size, language): (f64, Language),
) -> Option<Reply> {
    let mut reply = None;
    let size = text_size as f32;
    Area::new(Id::new("decision"))
        .fade_in(false)
        .anchor(Align2::CENTER_CENTER, Vec2::ZERO)
        .order(Order::Foreground)
        .show(ctx, |ui| {
            Frame::NONE
                .fill(ui.visuals().window_fill)
                .stroke(Stroke::new(1.0, Color32::from_gray(150)))
                .inner_margin(Margin::same(16))
                .show(ui, |ui| {
                    ui.set_width(520.0 * size);
                    let case = deciding.case.as_str();
                    let title = text!(language, "decide-title", case = case);
                    ui.label(RichText::new(title).heading());
                    ui.add_space(6.0);
                    fields(ui, deciding, focus, (size, language));
                    ui.add_space(6.0);
                    ui.label(
                        RichText::new(deciding.draft.refused.text(language))
                            .color(pressing(ui.visuals())),
                    );
                    ui.horizontal(|ui| {
                        if ui.button(text!(language, "decide-save")).clicked() {
                            reply = Some(Reply::Save);
                        }
                        if ui.button(text!(language, "button-cancel")).clicked() {
                            reply = Some(Reply::Leave);
                        }
                    });
                    ui.label(RichText::new(text!(language, "decide-saved-as")).small());
                });
            // After the fields have taken their letters.
            for event in ui.input(|input| input.events.clone()) {
                match event {
                    Event::Key {
                        key: Key::Enter,
                        pressed: true,
                        ..
                    } => reply = Some(Reply::Save),
                    Event::Key {
                        key: Key::Escape,
                        pressed: true,
                        ..
                    } => reply = Some(Reply::Leave),
                    _ => {}
                }
            }
        });
    // The key that began it does not end it.
    reply.filter(|_| focus.is_none())
}

fn fields(
    ui: &mut Ui,
    deciding: &mut Deciding,
    focus: Option<Field>,
    (size, language): (f32, Language),
) {
    let draft = &mut deciding.draft;
    ui.horizontal(|ui| {
        for answer in Answer::ALL {
            ui.radio_value(&mut draft.answer, answer, answer.words(language));
        }
    });
    ui.add_space(4.0);
    let width = 370.0 * size;
    let (mut first, mut of_initials) = (None, None);
    Grid::new("decision").num_columns(2).show(ui, |ui| {
        if draft.answer == Answer::WaitingFor {
            ui.label(text!(language, "answer-waiting-for"));
            let what = TextEdit::singleline(&mut draft.what)
                .char_limit(120)
                .hint_text(text!(language, "decide-such-as"))
                .desired_width(width);
            first = Some(ui.add(what));
            ui.end_row();
        }
        ui.label(text!(language, "decide-note"));
        let note = TextEdit::singleline(&mut draft.note)
            .char_limit(NOTE)
            .hint_text(text!(language, "decide-note-hint"))
            .desired_width(width);
        let note = ui.add(note);
        first.get_or_insert(note);
        ui.end_row();
        ui.label(text!(language, "decide-initials"));
        let initials = TextEdit::singleline(&mut draft.initials)
            .hint_text(text!(language, "decide-initials-hint"))
            .desired_width(width);
        of_initials = Some(ui.add(initials));
        ui.end_row();
    });
    let focused = match focus {
        Some(Field::First) => first,
        Some(Field::Initials) => of_initials,
        None => None,
    };
    if let Some(field) = focused {
        field.request_focus();
    }
}
