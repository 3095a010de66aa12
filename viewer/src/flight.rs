//! Flights from one view to another, and where they lead.

use crate::app::App;
use crate::opened::Shown;
use crate::probe;
use crate::view::View;
use report::result::Finding;

/// How long a flight takes, s.
const FLIGHT_S: f64 = 0.45;

/// A view on its way.
pub(crate) struct Flight {
    from: View,
    to: View,
    part: f64,
}

impl App {
    /// Lets time pass; whether something moved.
    pub fn pass(&mut self, seconds: f64) -> bool {
        let Some(flight) = &mut self.flight else {
            return false;
        };
        flight.part = (flight.part + seconds / FLIGHT_S).min(1.0);
        self.view = View::between(&flight.from, &flight.to, flight.part);
        if flight.part >= 1.0 {
            self.view = flight.to;
            self.flight = None;
        }
        true
    }

    /// Whether the view is on its way somewhere.
    #[must_use]
    pub fn is_flying(&self) -> bool {
        self.flight.is_some()
    }

    /// The view onto a finding; the whole impression where it has no place.
    #[must_use]
    pub fn view_of(&self, finding: &Finding) -> View {
        let impression = finding.impression.and_then(|n| usize::try_from(n).ok());
        let place = impression
            .and_then(|n| self.shown(n))
            .zip(finding.at)
            .map(|(shown, at)| (shown, shown.placement.shown(at)));
        match place {
            Some((shown, place)) => {
                View::onto(place, probe::normal_at(shown, &place), |to_viewer| {
                    probe::in_sight(shown, &place, to_viewer)
                })
            }
            None => self.whole(),
        }
    }

    pub(crate) fn fly_to(&mut self, to: View) {
        self.flight = Some(Flight {
            from: self.view,
            to,
            part: 0.0,
        });
    }

    pub(crate) fn whole(&self) -> View {
        let (low, high) = self
            .shown(self.front)
            .map_or_else(Shown::nowhere, Shown::bounds);
        let canvas = self.slots().first().map_or(self.canvas, |slot| slot.1);
        View::whole(&low, &high, canvas.width / canvas.height.max(1.0))
    }
}
