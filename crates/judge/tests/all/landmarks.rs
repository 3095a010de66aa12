//! Landmarks by how far the impression goes on there: its margin, or how much of
//! the landmark it covers.

use crate::one_scan::{codes, judged};
use fixtures::impression::sound;
use judge::{Check, LandmarkStatus, Severity, Verdict};
use measure::landmarks::{Covered, Extent, Landmark, LandmarkName, LandmarkSource, Seen, Unseen};
use measure::{Measured, Zone};
use nalgebra::Point3;
use rstest::rstest;

fn landmark(name: LandmarkName, seen: Result<Seen, Unseen>, extent: Extent) -> Landmark {
    Landmark {
        name,
        side: None,
        source: LandmarkSource::Detected,
        seen,
        expected: Some(Point3::origin()),
        zone: Some(Zone::ResidualRidge),
        extent,
        nearby: Vec::new(),
    }
}

fn seen(relief_mm: Option<f64>) -> Result<Seen, Unseen> {
    Ok(Seen {
        point: Point3::origin(),
        uncertainty_mm: 0.5,
        confidence: 0.9,
        relief_mm,
    })
}

fn margin(mm: f64) -> Extent {
    margin_within(mm, 0.5)
}

fn margin_within(mm: f64, uncertainty_mm: f64) -> Extent {
    Extent {
        margin: Some(Measured { mm, uncertainty_mm }),
        covered: None,
    }
}

fn covered(percent: f64) -> Extent {
    Extent {
        margin: None,
        covered: Some(Covered {
            percent,
            uncertainty_percent: 12.0,
        }),
    }
}

// An impression that ends before a notch, beyond doubt, fails; whether it reaches one
// is a question where the uncertainty does not tell. That 1 mm lies beyond is a wish.
#[rstest]
#[case::well_inside(margin(3.0), LandmarkStatus::Recorded, None, Verdict::Accept)]
#[case::at_the_wish(margin(1.2), LandmarkStatus::Reached, None, Verdict::Accept)]
#[case::reached_but_short_of_the_wish(
    margin_within(0.5, 0.3),
    LandmarkStatus::Reached,
    Some(Severity::Note),
    Verdict::Accept
)]
#[case::hardly_inside(
    margin(0.3),
    LandmarkStatus::Reached,
    Some(Severity::Borderline),
    Verdict::Undecided
)]
#[case::hardly_beyond(
    margin(-0.3),
    LandmarkStatus::Reached,
    Some(Severity::Borderline),
    Verdict::Undecided
)]
#[case::beyond_the_border(margin(-2.0), LandmarkStatus::CutShort, Some(Severity::Fail), Verdict::Rework)]
fn a_notch_is_judged_by_its_margin(
    #[case] extent: Extent,
    #[case] status: LandmarkStatus,
    #[case] severity: Option<Severity>,
    #[case] verdict: Verdict,
) {
    let notch = landmark(LandmarkName::HamularNotch, seen(Some(3.0)), extent);
    comes_out(notch, status, severity, verdict);
}

#[rstest]
#[case::whole(covered(100.0), LandmarkStatus::Recorded, None)]
#[case::about_two_thirds(covered(70.0), LandmarkStatus::Reached, Some(Severity::Borderline))]
#[case::half(covered(50.0), LandmarkStatus::CutShort, Some(Severity::Borderline))]
fn a_pad_is_judged_by_how_much_of_it_is_covered(
    #[case] extent: Extent,
    #[case] status: LandmarkStatus,
    #[case] severity: Option<Severity>,
) {
    let verdict = severity.map_or(Verdict::Accept, |_| Verdict::Undecided);
    let pad = landmark(LandmarkName::RetromolarPad, seen(Some(2.0)), extent);
    comes_out(pad, status, severity, verdict);
}

#[test]
fn a_place_without_relief_is_reached_and_never_recorded() {
    let whole = Extent {
        margin: None,
        covered: Some(Covered {
            percent: 100.0,
            uncertainty_percent: 0.0,
        }),
    };
    let seal = landmark(LandmarkName::PosteriorPalatalSeal, seen(None), whole);
    comes_out(seal, LandmarkStatus::Reached, None, Verdict::Accept);
    let marked = Landmark {
        source: LandmarkSource::Marked,
        ..landmark(LandmarkName::HamularNotch, seen(None), margin(3.0))
    };
    comes_out(marked, LandmarkStatus::Recorded, None, Verdict::Accept);
}

// Where its fellow on the other side puts it.
#[rstest]
#[case::open_far_before(Unseen::TroughOpen { open_mm: 0.0 }, margin(-6.0), LandmarkStatus::CutShort, Severity::Fail, Verdict::Rework)]
#[case::no_surface_far_before(Unseen::NoSurface, margin(-6.0), LandmarkStatus::CutShort, Severity::Fail, Verdict::Rework)]
#[case::open_in_doubt(Unseen::TroughOpen { open_mm: 0.0 }, margin(0.2), LandmarkStatus::CutShort, Severity::Borderline, Verdict::Undecided)]
#[case::surface_goes_on(Unseen::TroughOpen { open_mm: 0.0 }, margin(4.0), LandmarkStatus::NotFound, Severity::Note, Verdict::Accept)]
fn one_that_is_not_seen_is_judged_by_its_fellow(
    #[case] why: Unseen,
    #[case] extent: Extent,
    #[case] status: LandmarkStatus,
    #[case] severity: Severity,
    #[case] verdict: Verdict,
) {
    let notch = landmark(LandmarkName::HamularNotch, Err(why), extent);
    comes_out(notch, status, Some(severity), verdict);
}

fn comes_out(
    landmark: Landmark,
    status: LandmarkStatus,
    severity: Option<Severity>,
    verdict: Verdict,
) {
    let mut measurement = sound();
    measurement.landmarks = vec![landmark];
    let judged = judged(&measurement);
    let check = match status {
        LandmarkStatus::NotFound => Check::LandmarkNotFound,
        _ => Check::LandmarkCutShort,
    };
    let expected: Vec<_> = severity
        .map(|severity| (severity, check))
        .into_iter()
        .collect();
    assert_eq!(codes(&judged), expected);
    assert_eq!(judged.impressions[0].landmarks[0].status, status);
    assert_eq!(judged.verdict, verdict);
}
