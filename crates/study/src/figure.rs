//! A figure that can be compared between results.

/// A figure of a result.
#[derive(Debug, Clone, PartialEq)]
pub struct NamedFigure {
    /// What it is: the same in every result that has it.
    pub name: String,
    /// Its unit.
    pub unit: &'static str,
    /// The figure itself.
    pub value: f64,
    /// The limits that it was judged by.
    pub limits: FigureLimits,
}

/// The limits of a figure, in its unit.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct FigureLimits {
    /// The least that is let pass; `None` where there is no such limit.
    pub least: Option<f64>,
    /// The most that is let pass.
    pub most: Option<f64>,
}
