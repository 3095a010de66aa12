//! Flights from one view to another.

use crate::view::View;

/// How long a flight takes, s.
const FLIGHT_S: f64 = 0.45;

/// A view on its way.
pub(crate) struct Flight {
    from: View,
    to: View,
    part: f64,
}

impl Flight {
    /// A flight that is about to begin.
    pub(crate) fn new(from: View, to: View) -> Self {
        Self {
            from,
            to,
            part: 0.0,
        }
    }

    /// The view after so much more time, and whether it is where it leads.
    pub(crate) fn after(&mut self, seconds: f64) -> (View, bool) {
        self.part = (self.part + seconds / FLIGHT_S).min(1.0);
        if self.part >= 1.0 {
            return (self.to, true);
        }
        (View::between(&self.from, &self.to, self.part), false)
    }
}
