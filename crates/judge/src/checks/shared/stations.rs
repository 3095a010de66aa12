//! What the checks of the border share: one finding for each stretch of
//! consecutive stations that miss a limit.

use crate::case::Stage;
use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Place};
use crate::protocol::LimitKey;
use crate::severity::{Level, Severity};
use crate::stretch::{Doubt, Doubtful, Stretch, doubtful};
use crate::subject::Subject;
use crate::words;
use measure::{Arch, Border, BorderPart, Measured, Missing, Station, StationFigure, Zone};
use messages::{Message, Value, message};
use std::collections::BTreeMap;

/// One figure of every station against one limit.
pub(crate) struct StationCheck {
    pub(crate) check: Check,
    pub(crate) key: LimitKey,
    /// Which way the limit bounds the figure.
    pub(crate) bound: fn(f64) -> Bound,
    /// The figure at the station of this number; `None` where it is missing or
    /// the check does not apply.
    pub(crate) figure: fn(&Subject<'_>, &Border, usize) -> Option<Measured>,
    /// What is to be done about a stretch.
    pub(crate) instruction: fn(Severity, StretchWords) -> Message,
}

impl StationCheck {
    /// One finding for each stretch that does not clearly meet the limit.
    pub(crate) fn findings(&self, subject: &Subject<'_>, border: &Border) -> Vec<Finding> {
        let level = subject.limit(self.key).level;
        let doubt = |number: usize| {
            let bound = self.bound_at(subject, &border.stations[number])?;
            let figure = (self.figure)(subject, border, number)?;
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
            .filter(|found| level != Level::Note || found.conformity == Conformity::NotConforming)
            .filter_map(|found| self.finding(subject, border, found))
            .collect()
    }

    fn bound_at(&self, subject: &Subject<'_>, station: &Station) -> Option<Bound> {
        let bound = (self.bound)(subject.limit(self.key).in_zone(station.zone));
        // 0 as the least is no limit, and no figure need be near it.
        (bound != Bound::AtLeast(0.0)).then_some(bound)
    }

    fn finding(&self, subject: &Subject<'_>, border: &Border, found: Doubtful) -> Option<Finding> {
        let limit = subject.limit(self.key);
        let severity = Severity::of(found.conformity, limit.level)?;
        let worst = &border.stations[found.stretch.worst];
        let figure = (self.figure)(subject, border, found.stretch.worst)?;
        let words = StretchWords::of(subject, border, found.stretch);
        Some(Finding {
            place: Some(place(worst)),
            figure: Some(Figure {
                measured: figure.mm,
                uncertainty: Some(figure.uncertainty_mm),
                bound: self.bound_at(subject, worst)?,
                unit: limit.unit.clone(),
            }),
            stretch: Some(found.stretch),
            ..subject.finding(self.check, severity, (self.instruction)(severity, words))
        })
    }
}

/// What instructions say of a stretch.
pub(crate) struct StretchWords {
    /// `from 10 to 22 mm left of the labial midline`.
    pub(crate) range: Message,
    /// `mould it again (draw the lip outward and down)`.
    pub(crate) mould: Message,
    /// `then take a wash`, or what comes next.
    pub(crate) then: Message,
}

impl StretchWords {
    pub(crate) fn of(subject: &Subject<'_>, border: &Border, stretch: Stretch) -> Self {
        let zone = border.stations[stretch.worst].zone;
        Self {
            range: words::stretch(border, Some(subject.arch()), stretch.from, stretch.to),
            mould: mould_again(subject.arch(), zone),
            then: then_wash(subject.input().stage),
        }
    }
}

/// `mould it again (draw the lip outward and down)`.
pub(crate) fn mould_again(arch: Arch, zone: Zone) -> Message {
    match words::movement(arch, zone) {
        Some(movement) => message!("mould-again-by", movement = movement),
        None => message!("mould-again"),
    }
}

/// The wash that follows a correction.
pub(crate) fn then_wash(stage: Stage) -> Message {
    match stage {
        Stage::Wash => message!("then-repeat-wash"),
        Stage::FirstPass | Stage::Single => message!("then-take-wash"),
    }
}

pub(crate) fn place(station: &Station) -> Place {
    Place {
        at: station.point,
        zone: station.zone,
        side: station.side,
    }
}

/// Whether a flange ends in the border at a station.
pub(crate) fn on_flange(station: &Station) -> bool {
    station.part != BorderPart::Posterior
}

/// Length of border for each station, mm.
pub(crate) fn step_mm(border: &Border) -> f64 {
    border.length_mm / border.stations.len().max(1) as f64
}

/// Whether the back is near: toward hamular notches and pads every flange runs
/// out.
pub(crate) fn runs_out(border: &Border, number: usize) -> bool {
    const RUNS_OUT_MM: f64 = 10.0;
    let reach = (RUNS_OUT_MM / step_mm(border).max(1e-3)).ceil() as usize;
    let count = border.stations.len();
    let around = (number + count).saturating_sub(reach)..=number + count + reach;
    around
        .map(|n| &border.stations[n % count])
        .any(|station| !on_flange(station))
}

/// Whether no border that turns over was seen at a station.
pub(crate) fn was_not_seen(station: &Station) -> bool {
    let height_missing =
        [Missing::ScanEnds, Missing::NoSurface].map(|why| station.flange_height == Err(why));
    let one_face_alone = on_flange(station) && station.border_radius == Err(Missing::ScanEnds);
    station.scan_ends || height_missing.contains(&true) || one_face_alone
}

/// Why a figure is missing, where it is over more than `least_mm` of flange.
pub(crate) fn reasons_missing(
    border: &Border,
    figure: StationFigure,
    least_mm: f64,
) -> Vec<Message> {
    let flange: Vec<&Station> = border.stations.iter().filter(|s| on_flange(s)).collect();
    let step_mm = step_mm(border);
    let mut missing: BTreeMap<Missing, usize> = BTreeMap::new();
    for why in flange.iter().filter_map(|s| s.figure(figure).err()) {
        *missing.entry(why).or_default() += 1;
    }
    missing
        .into_iter()
        .filter(|(_, count)| *count as f64 * step_mm >= least_mm)
        .map(|(why, count)| {
            if count == flange.len() {
                return why.message();
            }
            let [part, whole] = [count, flange.len()].map(|n| n as f64 * step_mm);
            message!(
                "border-partly-judged",
                part = Value::figure(format!("{part:.0}")),
                whole = Value::figure(format!("{whole:.0} mm")),
                why = &why
            )
        })
        .collect()
}
