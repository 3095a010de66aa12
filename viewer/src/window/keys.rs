//! Which key asks for what.

use crate::command::{Command, Layer};
use kiss3d::event::{Key, Modifiers};
use messages::{Language, text};

/// A drag as long as this, pixels, is what an arrow key is worth.
const STEP_PX: f64 = 20.0;

/// How an arrow key turns the impression.
pub fn turn(key: Key) -> Option<Command> {
    Some(match key {
        Key::Left => Command::Turn(-STEP_PX, 0.0),
        Key::Right => Command::Turn(STEP_PX, 0.0),
        Key::Up => Command::Turn(0.0, -STEP_PX),
        Key::Down => Command::Turn(0.0, STEP_PX),
        _ => return None,
    })
}

/// What a key asks of the case that is shown.
pub fn command(key: Key, modifiers: Modifiers) -> Option<Command> {
    let shift = modifiers.contains(Modifiers::Shift);
    let control = modifiers.contains(Modifiers::Control);
    Some(match key {
        Key::Left | Key::Right | Key::Up | Key::Down if shift => turn(key)?,
        Key::Left if control => Command::Shift(STEP_PX, 0.0),
        Key::Right if control => Command::Shift(-STEP_PX, 0.0),
        Key::Up if control => Command::Shift(0.0, STEP_PX),
        Key::Down if control => Command::Shift(0.0, -STEP_PX),
        Key::Equals | Key::Add if control => Command::TextSize(1.1),
        Key::Minus | Key::Subtract if control => Command::TextSize(1.0 / 1.1),
        Key::Down => Command::Next,
        Key::Up => Command::Previous,
        Key::Return | Key::NumpadEnter => Command::Fly,
        Key::Space => Command::ToggleDone,
        Key::Home => Command::Whole,
        Key::I => Command::NextImpression,
        Key::B => Command::Beside,
        Key::M if shift => Command::PreviousMap,
        Key::M => Command::NextMap,
        Key::F => Command::NextBorderFigure,
        Key::P => Command::NextPalette,
        Key::Period if control => Command::Slide(0.1),
        Key::Comma if control => Command::Slide(-0.1),
        Key::Period => Command::Stretch(1.25),
        Key::Comma => Command::Stretch(0.8),
        Key::Key1 => Command::Toggle(Layer::Border),
        Key::Key2 => Command::Toggle(Layer::Crest),
        Key::Key3 => Command::Toggle(Layer::Outlines),
        Key::Key4 => Command::Toggle(Layer::Landmarks),
        Key::Key5 => Command::Toggle(Layer::Tray),
        Key::Key6 => Command::Toggle(Layer::Strip),
        Key::D => Command::Measure,
        Key::L => Command::Mark,
        Key::PageDown | Key::N => Command::NextLandmark(1),
        Key::PageUp => Command::NextLandmark(-1),
        Key::Z if control && shift => Command::Redo,
        Key::Y if control => Command::Redo,
        Key::U => Command::Undo,
        Key::Z if control => Command::Undo,
        Key::K => Command::PickMiddle,
        Key::X => Command::Section,
        Key::Left => Command::MoveSection(-0.5),
        Key::Right => Command::MoveSection(0.5),
        Key::LBracket => Command::TurnSection(0.05),
        Key::RBracket => Command::TurnSection(-0.05),
        Key::Q => Command::Roll(0.1),
        Key::E => Command::Roll(-0.1),
        Key::Equals | Key::Add => Command::Magnify(1.15),
        Key::Minus | Key::Subtract => Command::Magnify(1.0 / 1.15),
        Key::G => Command::Drawing,
        Key::H | Key::F1 => Command::Help,
        Key::Escape => Command::Leave,
        _ => return None,
    })
}

/// What the help says: keys, and what they do.
#[rustfmt::skip]
pub fn help(language: Language) -> [(String, String); 29] {
    [
        (text!(language, "keys-choose"), text!(language, "help-choose")),
        (text!(language, "keys-fly"), text!(language, "help-fly")),
        (text!(language, "keys-done"), text!(language, "help-done")),
        (text!(language, "keys-whole"), text!(language, "help-whole")),
        (text!(language, "keys-turn"), text!(language, "help-turn")),
        (text!(language, "keys-focus"), text!(language, "help-focus")),
        (text!(language, "keys-move"), text!(language, "help-move")),
        (text!(language, "keys-zoom"), text!(language, "help-zoom")),
        (text!(language, "keys-roll"), text!(language, "help-roll")),
        (text!(language, "keys-impressions"), text!(language, "help-impressions")),
        (text!(language, "keys-maps"), text!(language, "help-maps")),
        (text!(language, "keys-border-figure"), text!(language, "help-border-figure")),
        (text!(language, "keys-colours"), text!(language, "help-colours")),
        (text!(language, "keys-scale"), text!(language, "help-scale")),
        (text!(language, "keys-drawing"), text!(language, "help-drawing")),
        (text!(language, "keys-layers"), text!(language, "help-layers")),
        (text!(language, "keys-distance"), text!(language, "help-distance")),
        (text!(language, "keys-mark"), text!(language, "help-mark")),
        (text!(language, "keys-landmark"), text!(language, "help-landmark")),
        (text!(language, "keys-undo"), text!(language, "help-undo")),
        (text!(language, "keys-middle"), text!(language, "help-middle")),
        (text!(language, "keys-section"), text!(language, "help-section")),
        (text!(language, "keys-save"), text!(language, "help-save")),
        (text!(language, "keys-papers"), text!(language, "help-papers")),
        (text!(language, "keys-decide"), text!(language, "help-decide")),
        (text!(language, "keys-walk"), text!(language, "help-walk")),
        (text!(language, "keys-open"), text!(language, "help-open")),
        (text!(language, "keys-text"), text!(language, "help-text")),
        (text!(language, "keys-leave"), text!(language, "help-leave")),
    ]
}
