//! What the user can ask for.

/// What the user can ask for; every one has a key.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Command {
    /// Choose the next finding.
    Next,
    /// Choose the one before.
    Previous,
    /// Choose a finding by its number in the list.
    Choose(usize),
    /// Fly to the chosen finding.
    Fly,
    /// Mark the chosen finding as done, or not done.
    ToggleDone,
    /// Show the whole impression.
    Whole,
    /// Bring the next impression to the front.
    NextImpression,
    /// Show two impressions side by side, or one.
    Beside,
    /// The next map, or the plain surface after the last.
    NextMap,
    /// The map before.
    PreviousMap,
    /// The next figure along the border.
    NextBorderFigure,
    /// The other palette.
    NextPalette,
    /// Make the scale of the map so many times as long.
    Stretch(f64),
    /// Move the scale of the map by a share of its length.
    Slide(f64),
    /// Show or hide something.
    Toggle(Layer),
    /// Measure between two clicks, or stop.
    Measure,
    /// Mark landmarks, or stop.
    Mark,
    /// Mark the next landmark, or the one so many further.
    NextLandmark(isize),
    /// Take the last mark or tick back.
    Undo,
    /// Make the mark or tick that was taken back again.
    Redo,
    /// Show the section plane through the middle of the picture, or hide it.
    Section,
    /// Move the section plane, mm.
    MoveSection(f64),
    /// Turn the section plane, radians.
    TurnSection(f64),
    /// Turn the impression as a drag over so many pixels does.
    Turn(f64, f64),
    /// Turn it about the line of sight, radians.
    Roll(f64),
    /// Move it as a drag over so many pixels does.
    Shift(f64, f64),
    /// Magnify so many times.
    Magnify(f64),
    /// Click the middle of the picture.
    PickMiddle,
    /// Larger or smaller text.
    TextSize(f64),
    /// Show the chosen finding's section drawing large, or small.
    Drawing,
    /// Show or hide help.
    Help,
    /// Leave whatever is going on.
    Leave,
}

/// Things that can be shown and hidden.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Layer {
    /// The border line.
    Border,
    /// The crest line.
    Crest,
    /// Outlines of what misses a limit, and of defects.
    Outlines,
    /// Marked landmarks.
    Landmarks,
    /// The tray, translucent.
    Tray,
    /// The border unrolled along the foot of the window.
    Strip,
}
