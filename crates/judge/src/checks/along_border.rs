//! What the checks of the border share: one finding for each stretch of
//! consecutive stations that miss a limit.

use super::Check;
use crate::case::Stage;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Place, Severity};
use crate::judging::Subject;
use crate::protocol::{Level, LimitKey};
use crate::stretch::{Doubt, Stretch, doubtful, within};
use crate::words;
use measure::{Border, BorderPart, Dip, DipKind, Measured, Station};

/// One figure of every station against one limit.
pub(super) struct StationCheck<'a> {
    pub check: Check,
    pub key: LimitKey,
    /// Which way the limit bounds the figure.
    pub bound: fn(f64) -> Bound,
    /// The figure at a station; `None` where there is none or the check does
    /// not apply.
    pub reading: &'a dyn Fn(usize) -> Option<Measured>,
    /// What is to be done about a stretch.
    pub instruction: &'a dyn Fn(Severity, &Told) -> String,
}

impl StationCheck<'_> {
    pub(super) fn findings(&self, subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
        let limit = subject.limit(self.key);
        let bound_at = |station: &Station| {
            let bound = (self.bound)(limit.in_zone(station.zone));
            // 0 as the least is no limit, and no figure need be near it.
            (bound != Bound::AtLeast(0.0)).then_some(bound)
        };
        let doubt = |number: usize| {
            let bound = bound_at(&border.stations[number])?;
            let figure = (self.reading)(number)?;
            Some(Doubt {
                conformity: decide(figure.mm, figure.uncertainty_mm, bound),
                margin: match bound {
                    Bound::AtLeast(least) => figure.mm - least,
                    Bound::AtMost(most) => most - figure.mm,
                },
            })
        };
        doubtful(border, subject.limit(LimitKey::LeastStretch).value, doubt)
            .into_iter()
            // A note says what is sure: what is not changes no verdict.
            .filter(|found| {
                limit.level != Level::Note || found.conformity == Conformity::NotConforming
            })
            .filter_map(|found| {
                let severity = Severity::of(found.conformity, limit.level)?;
                let worst = found.stretch.worst;
                let told = Told::of(subject, border, found.stretch);
                let figure = (self.reading)(worst)?;
                Some(Finding {
                    place: Some(place(&border.stations[worst])),
                    figure: Some(Figure {
                        measured: figure.mm,
                        uncertainty: Some(figure.uncertainty_mm),
                        limit: bound_at(&border.stations[worst])?.value(),
                        unit: limit.unit.clone(),
                    }),
                    stretch: Some(found.stretch),
                    ..subject.finding(self.check, severity, (self.instruction)(severity, &told))
                })
            })
            .collect()
    }
}

/// What instructions say of a stretch.
pub(super) struct Told {
    /// `from 10 to 22 mm left of the labial midline`.
    pub range: String,
    /// The movement that moulds it.
    pub movement: &'static str,
    /// `then take a wash`, or what comes next.
    pub then: &'static str,
}

impl Told {
    pub(super) fn of(subject: &Subject<'_>, border: &Border, stretch: Stretch) -> Self {
        let zone = border.stations[stretch.worst].zone;
        Self {
            range: words::stretch(border, subject.arch(), stretch.from, stretch.to),
            movement: words::movement(zone),
            then: match subject.input.stage {
                Stage::Wash => "then take the wash again",
                Stage::FirstPass | Stage::Single => "then take a wash",
            },
        }
    }
}

pub(super) fn place(station: &Station) -> Place {
    Place {
        at: station.point,
        zone: station.zone,
        side: station.side,
    }
}

/// Whether a flange ends in the border at a station.
pub(super) fn on_flange(station: &Station) -> bool {
    station.part != BorderPart::Posterior
}

/// Whether the back is near: toward hamular notches and pads every flange runs
/// out.
pub(super) fn runs_out(border: &Border, number: usize) -> bool {
    const RUNS_OUT_MM: f64 = 10.0;
    let step_mm = border.length_mm / border.stations.len().max(1) as f64;
    let reach = (RUNS_OUT_MM / step_mm.max(1e-3)).ceil() as usize;
    let count = border.stations.len();
    let around = (number + count).saturating_sub(reach)..=number + count + reach;
    around
        .map(|n| &border.stations[n % count])
        .any(|station| !on_flange(station))
}

/// Whether a station lies in a notch that a frenum left.
pub(super) fn in_notch(border: &Border, number: usize) -> bool {
    in_dip(border, number, |dip| dip.kind != DipKind::Short)
}

/// Whether a station lies in a dip of some kind.
pub(super) fn in_dip(border: &Border, number: usize, kind: impl Fn(&Dip) -> bool) -> bool {
    border
        .dips
        .iter()
        .any(|dip| within(dip.from, dip.to, number) && kind(dip))
}
