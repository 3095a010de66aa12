//! The border of the impression in front: its strip, the place on it under the
//! pointer, and flights to it.

use crate::app::App;
use crate::landmarks;
use crate::strip::Strip;
use crate::unrolled::{Midline, Spot, tracks};
use messages::{Value, text};
use nalgebra::{Point2, Point3};
use report::figures::{StationFigure, figure_name};
use report::result::Border;

/// The figures of the strip.
pub const STRIP_FIGURES: [StationFigure; 2] = [StationFigure::Height, StationFigure::Thickness];

/// Room left and right of the tracks, as shares of the strip's height.
const ASIDE: [f64; 2] = [0.28, 0.12];
/// Room between two tracks, as such a share.
const BETWEEN: f64 = 0.3;
/// A place of the surface this near to the border is marked on the strip, mm.
const NEAR_MM: f64 = 3.0;

impl App {
    /// The border of the impression in front, where it has one.
    #[must_use]
    pub fn front_border(&self) -> Option<&Border> {
        let border = self.result_of(self.front)?.border.as_ref()?;
        (border.stations.len() > 2).then_some(border)
    }

    /// Why the impression in front has no border.
    #[must_use]
    pub fn missing_border(&self) -> String {
        let of = self.result_of(self.front);
        let not_judged = of.map_or(&[][..], |of| &of.not_judged);
        let why = not_judged
            .iter()
            .find(|entry| entry.check == "flange-height");
        let why = why.map(|entry| entry.why_in(self.language));
        let why = why.unwrap_or_else(|| text!(self.language, "strip-holds-none"));
        text!(self.language, "strip-none", why = why)
    }

    /// The strip of the impression in front; `None` where it is hidden or there
    /// is no border.
    #[must_use]
    pub fn strip(&self) -> Option<Strip> {
        let (area, border) = (self.strip_area?, self.front_border()?);
        let right = self.shown(self.front)?.placement.right;
        let tracks = tracks(border, right.is_none_or(|right| right.x > 0.0));
        let [before, after] = ASIDE.map(|share| share * area.height);
        Some(Strip::new(
            tracks,
            area.left + before,
            area.width - before - after,
            BETWEEN * area.height,
        ))
    }

    /// Where a place of the border of the impression in front is shown.
    #[must_use]
    pub fn border_point(&self, spot: &Spot) -> Option<Point3<f64>> {
        spot.point(&self.border_points())
    }

    fn border_points(&self) -> Vec<Point3<f64>> {
        let (Some(shown), Some(border)) = (self.shown(self.front), self.front_border()) else {
            return Vec::new();
        };
        let points = border.stations.iter().map(|station| station.point);
        points.map(|point| shown.placement.shown(point)).collect()
    }

    /// Notes what lies under the pointer: a place of an impression, and a place
    /// of the border where it is on the strip or near the border.
    pub fn point_at(&mut self, pixel: &Point2<f64>) {
        self.hover = self.at(pixel);
        self.spot = self.spot_at(pixel).or_else(|| {
            let (impression, probe) = self.hover.as_ref()?;
            let points = self.border_points();
            let (spot, off) = Spot::nearest(&points, &probe.place)?;
            (*impression == self.front && off <= NEAR_MM).then_some(spot)
        });
    }

    /// Forgets what lay under the pointer.
    pub fn point_nowhere(&mut self) {
        (self.hover, self.spot) = (None, None);
    }

    /// The place of the border under a pixel of the strip.
    pub(crate) fn spot_at(&self, pixel: &Point2<f64>) -> Option<Spot> {
        let is_on_it = self.strip_area?.holds(pixel);
        Some(self.strip().filter(|_| is_on_it)?.spot(pixel.x)?.1)
    }

    /// Flies to a place of the border.
    pub(crate) fn fly_to_spot(&mut self, spot: &Spot) {
        let shown = self.shown(self.front).zip(self.border_point(spot));
        if let Some(to) = shown.map(|(shown, place)| Self::view_onto(shown, place)) {
            self.ringed = None;
            self.notice.clear();
            self.fly_to(to);
        }
    }

    /// What is said of a place of the border: where it is, and the figures of
    /// the nearest station.
    #[must_use]
    pub fn words_of_spot(&self, spot: &Spot) -> Option<String> {
        let station = self.front_border()?.stations.get(spot.station())?;
        let (track, along) = self.strip()?.along(spot)?;
        let midline = self.strip()?.tracks[track].midline;
        let language = self.language;
        let zone = landmarks::zone_in_words(&station.zone, station.side, language);
        let midline = match midline {
            Midline::Labial => text!(language, "midline-labial"),
            Midline::Lingual => text!(language, "midline-lingual"),
        };
        let mut words = vec![text!(
            language,
            "probe-border",
            zone = zone,
            along = Value::number(along.abs(), 0),
            midline = midline
        )];
        for figure in STRIP_FIGURES {
            let (name, reading) = (figure_name(figure, language), station.figure(figure));
            let figure = match (reading.mm, reading.uncertainty_mm) {
                (Some(mm), Some(off)) => Some(format!("{mm:.2} ± {off:.2} mm")),
                (Some(mm), None) => Some(format!("{mm:.2} mm")),
                (None, _) => None,
            };
            words.push(match figure.map(Value::figure) {
                Some(figure) => text!(language, "probe-figure", name = name, figure = figure),
                None => text!(language, "probe-not-known", name = name),
            });
        }
        Some(words.join("; "))
    }
}
