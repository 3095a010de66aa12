//! A figure with its uncertainty.

/// A figure with its expanded uncertainty (k = 2), in the unit that the name of
/// its field says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amount {
    /// The figure.
    pub value: f64,
    /// Its expanded uncertainty (k = 2).
    pub uncertainty: f64,
}
