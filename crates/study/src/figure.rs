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
}
