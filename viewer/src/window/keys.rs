//! Which key asks for what.

use crate::command::{Command, Layer};
use kiss3d::event::{Key, Modifiers};

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
pub const HELP: [(&str, &str); 29] = [
    ("Up, Down", "choose a finding"),
    ("Enter", "fly to it"),
    ("Space", "mark it as done, or not done"),
    ("Home", "the whole impression"),
    ("drag, Shift + arrows", "turn"),
    (
        "Tab, Shift + Tab",
        "the picture, where arrows turn; next control, the one before",
    ),
    ("right drag, Ctrl + arrows", "move"),
    ("wheel, + and -", "nearer, farther"),
    ("Q, E", "turn about the line of sight"),
    ("I; B", "next impression; two side by side"),
    ("M, Shift + M", "next map, the one before; plain surface"),
    ("F", "colour the border line by a figure"),
    ("P", "other colours"),
    (
        "comma, period",
        "shorter, longer scale; with Ctrl: lower, higher",
    ),
    ("G", "section drawing of the finding, large or small"),
    (
        "1, 2, 3, 4, 5, 6",
        "border, crest line, outlines, landmarks, tray, border strip",
    ),
    ("D", "distance between two clicks"),
    ("L", "mark landmarks by clicks"),
    ("N or Page Down, Page Up", "next, previous landmark"),
    (
        "Ctrl Z or U; Ctrl Y",
        "take a mark or tick back; make it again",
    ),
    ("K", "click the middle of the picture"),
    ("X; Left, Right; [ and ]", "section plane; move; turn"),
    ("S; R or F5", "save a screenshot; check the case again"),
    ("F2, F3, F4", "open the sheet, the return note, the report"),
    ("F6, F7, F8", "decide: returned, worked from, waiting for"),
    ("Page Up, Page Down", "previous, next case of the list"),
    (
        "Ctrl O; Ctrl Shift O",
        "choose scans; choose a folder of cases",
    ),
    ("Ctrl + and -; F9", "larger, smaller text; light or dark"),
    (
        "H or F1; Esc; Ctrl Q",
        "this help; leave, back to the list; close",
    ),
];
