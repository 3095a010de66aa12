//! Every check with what it needs and the function that judges it.
//!
//! A check lives in a file of its own beside its page. To add one: a name in
//! `check.rs`, `checks/<name>.rs` with its row below, `checks/<code>.md`, and a
//! row in `protocol/default.toml` where it has a limit. Its gist and its
//! instructions are in the catalogue of the crate `messages`.

mod arch_mismatch;
mod border_asymmetry;
mod border_change;
mod border_not_judged;
mod border_overlap;
mod border_radius;
mod changed_in_transit;
mod cover_not_judged;
mod cover_uncertainty;
mod disinfection_not_stated;
mod file_unclear;
mod flange_height;
mod flange_thickness;
mod fold;
mod hole;
mod impression_age;
mod interarch_space;
mod interocclusal_distance;
mod jaw_relation_not_judged;
mod landmark_cut_short;
mod landmark_not_found;
mod landmark_obscured;
mod lip_length;
mod needs;
mod nodule;
mod not_an_impression;
mod orientation_unclear;
mod other_colour;
mod outer_excess;
mod parcel_incomplete;
mod prescription_missing;
mod ridge_angle;
mod scan_ends;
mod scan_quality;
mod scan_resolution;
mod shared;
mod show_through;
mod show_through_extent;
mod thin_cover;
mod tissue_area;
mod tissue_stop;
mod tray_at_border;
mod tray_bent;
mod tray_joint;
mod tray_seating;
mod tray_size;
mod under_extension;
mod unit_unclear;
mod void;
mod void_unseen;
mod wash_missing;
mod wash_open;
mod wash_thickness;
mod wash_uneven;

pub(crate) use file_unclear::same_files;

use crate::check::Check;
use crate::finding::Finding;
use crate::not_judged::{NotJudged, Part, Unjudged};
use crate::subject::{CaseSubject, ScanSubject};
use measure::StationFigure;
use messages::Message;
use needs::{Absent, Needs, Outcome};

/// One row for each check, in the order in which what they need is measured.
/// Entries of what was not judged keep this order; findings are sorted by urgency.
#[rustfmt::skip] // one check, one line
const TABLE: [(Check, Needs); Check::ALL.len()] = {
    use Check::*;
    [
        (FileUnclear, Needs::Scan(file_unclear::judge)),
        (UnitUnclear, Needs::Scan(unit_unclear::judge)),
        (NotAnImpression, Needs::Scan(not_an_impression::judge)),
        (ImpressionAge, Needs::Scan(impression_age::judge)),
        (ArchMismatch, Needs::Frame(arch_mismatch::judge)),
        (LandmarkCutShort, Needs::Frame(landmark_cut_short::judge)),
        (LandmarkObscured, Needs::Frame(landmark_obscured::judge)),
        (LandmarkNotFound, Needs::Frame(landmark_not_found::judge)),
        (OrientationUnclear, Needs::Frame(orientation_unclear::judge)),
        (ScanResolution, Needs::Impression(scan_resolution::judge)),
        (CoverNotJudged, Needs::Impression(cover_not_judged::judge)),
        (ShowThrough, Needs::TrayShown(show_through::judge)),
        (ShowThroughExtent, Needs::TrayShown(show_through_extent::judge)),
        (OtherColour, Needs::Impression(other_colour::judge)),
        (TissueArea, Needs::ScannedArea(tissue_area::judge)),
        (ThinCover, Needs::Cover(thin_cover::judge)),
        (CoverUncertainty, Needs::Cover(cover_uncertainty::judge)),
        (TissueStop, Needs::Stops(tissue_stop::judge)),
        (TraySeating, Needs::Seating(tray_seating::judge)),
        (TrayBent, Needs::PlacedTray(tray_bent::judge)),
        (TrayJoint, Needs::Joints(tray_joint::judge)),
        (ChangedInTransit, Needs::Transit(changed_in_transit::judge)),
        (OuterExcess, Needs::PlacedTray(outer_excess::judge)),
        (TraySize, Needs::Seating(tray_size::judge)),
        (WashOpen, Needs::Wash(wash_open::judge)),
        (WashThickness, Needs::Wash(wash_thickness::judge)),
        (WashUneven, Needs::Wash(wash_uneven::judge)),
        (BorderChange, Needs::BothBorders(border_change::judge)),
        (Void, Needs::FineTissue(void::judge)),
        (VoidUnseen, Needs::Impression(void_unseen::judge)),
        (Nodule, Needs::FineTissue(nodule::judge)),
        (Fold, Needs::Tissue(fold::judge)),
        (Hole, Needs::Tissue(hole::judge)),
        (ScanQuality, Needs::Tissue(scan_quality::judge)),
        (BorderNotJudged, Needs::Impression(border_not_judged::judge)),
        (ScanEnds, Needs::Border(scan_ends::judge)),
        (FlangeHeight, Needs::Stations(StationFigure::Height, flange_height::judge)),
        (UnderExtension, Needs::Stations(StationFigure::Height, under_extension::judge)),
        (BorderAsymmetry, Needs::Stations(StationFigure::Height, border_asymmetry::judge)),
        (FlangeThickness, Needs::Stations(StationFigure::Thickness, flange_thickness::judge)),
        (BorderRadius, Needs::Stations(StationFigure::Radius, border_radius::judge)),
        (BorderOverlap, Needs::Stations(StationFigure::Overlap, border_overlap::judge)),
        (TrayAtBorder, Needs::Stations(StationFigure::Overlap, tray_at_border::judge)),
        (InterarchSpace, Needs::Relation(interarch_space::judge)),
        (RidgeAngle, Needs::Relation(ridge_angle::judge)),
        (JawRelationNotJudged, Needs::Case(jaw_relation_not_judged::judge)),
        (InterocclusalDistance, Needs::InterocclusalDistance(interocclusal_distance::judge)),
        (WashMissing, Needs::Case(wash_missing::judge)),
        (LipLength, Needs::Case(lip_length::judge)),
        (ParcelIncomplete, Needs::Consignment(parcel_incomplete::judge)),
        (PrescriptionMissing, Needs::Consignment(prescription_missing::judge)),
        (DisinfectionNotStated, Needs::Consignment(disinfection_not_stated::judge)),
    ]
};

/// Each check has exactly one row, or this does not compile.
const _: () = {
    let mut rows = [0; TABLE.len()];
    let mut row = 0;
    while row < TABLE.len() {
        rows[TABLE[row].0 as usize] += 1;
        row += 1;
    }
    let mut check = 0;
    while check < rows.len() {
        assert!(rows[check] == 1, "a check has no row, or two");
        check += 1;
    }
};

/// The figure of the border's stations that a check judges; `None` for a check
/// that judges something else.
#[must_use]
pub fn station_figure_of(check: Check) -> Option<StationFigure> {
    TABLE.iter().find_map(|(of, needs)| match needs {
        Needs::Stations(figure, _) if *of == check => Some(*figure),
        _ => None,
    })
}

/// What came of all checks.
#[derive(Default)]
pub(crate) struct Judged {
    /// What they found.
    pub(crate) findings: Vec<Finding>,
    /// The checks that were made.
    pub(crate) made: Vec<Check>,
    /// What could not be judged, and why.
    pub(crate) not_judged: Vec<NotJudged>,
}

/// Makes every check on one impression.
pub(crate) fn on_impression(subject: ScanSubject<'_>) -> Judged {
    gathered(|needs| needs.on_impression(subject))
}

/// Makes every check on the case as a whole.
pub(crate) fn on_case(subject: &CaseSubject<'_>) -> Judged {
    gathered(|needs| needs.on_case(subject))
}

/// Makes some checks on one impression.
pub(crate) fn some_on_impression(subject: ScanSubject<'_>, wanted: &[Check]) -> Judged {
    gathered_of(
        |check| wanted.contains(&check),
        |needs| needs.on_impression(subject),
    )
}

fn gathered(outcome: impl Fn(&Needs) -> Option<Outcome>) -> Judged {
    gathered_of(|_| true, outcome)
}

fn gathered_of(
    is_wanted: impl Fn(Check) -> bool,
    outcome: impl Fn(&Needs) -> Option<Outcome>,
) -> Judged {
    let mut judged = Judged::default();
    for (check, needs) in TABLE.iter().filter(|(check, _)| is_wanted(*check)) {
        if let Some(outcome) = outcome(needs) {
            judged.add(*check, outcome);
        }
    }
    judged
}

impl Judged {
    fn add(&mut self, check: Check, outcome: Outcome) {
        match outcome.findings {
            Ok(findings) => {
                self.findings.extend(findings);
                self.made.push(check);
            }
            Err(Absent::NothingToJudge) => {}
            Err(Absent::Missing(why)) => self.enter(check.into(), why),
            Err(Absent::WholePart(part, why)) => self.enter_part(part, why, true),
            Err(Absent::PartNotAsked(part, why)) => self.enter_part(part, why, false),
            Err(Absent::NotAsked(why)) => self.not_judged.push(NotJudged {
                what: check.into(),
                why,
                is_asked: false,
            }),
        }
        for why in outcome.gaps {
            self.enter(check.into(), why);
        }
    }

    fn enter(&mut self, what: Unjudged, why: Message) {
        self.not_judged.push(NotJudged {
            what,
            why,
            is_asked: true,
        });
    }

    /// One entry for all checks that need the part, where the last of them has its row.
    fn enter_part(&mut self, part: Part, why: Message, is_asked: bool) {
        self.not_judged.retain(|entry| entry.what != part.into());
        self.not_judged.push(NotJudged {
            what: part.into(),
            why,
            is_asked,
        });
    }
}
