//! What the window flies to, and how time moves it there.

use crate::app::App;
use crate::flight::Flight;
use crate::opened::Shown;
use crate::probe;
use crate::view::View;
use nalgebra::Point3;
use report::result::Finding;

impl App {
    /// Lets time pass; whether something moved.
    pub fn pass(&mut self, seconds: f64) -> bool {
        let Some(flight) = &mut self.flight else {
            return false;
        };
        let (view, has_arrived) = flight.after(seconds);
        self.view = view;
        if has_arrived {
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
            Some((shown, place)) => Self::view_onto(shown, place),
            None => self.whole(),
        }
    }

    /// The view onto a place of an impression.
    pub(crate) fn view_onto(shown: &Shown, place: Point3<f64>) -> View {
        View::onto(place, probe::normal_at(shown, &place), |to_viewer| {
            probe::in_sight(shown, &place, to_viewer)
        })
    }

    pub(crate) fn fly_to(&mut self, to: View) {
        self.flight = Some(Flight::new(self.view, to));
    }

    pub(crate) fn whole(&self) -> View {
        let (low, high) = self
            .shown(self.front)
            .map_or_else(Shown::nowhere, Shown::bounds);
        let canvas = self.slots().first().map_or(self.canvas, |slot| slot.1);
        View::whole(&low, &high, canvas.width / canvas.height.max(1.0))
    }
}
