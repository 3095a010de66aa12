//! What changed between the scan in which an impression was sent and that in which it arrived.

use crate::one_scan::codes;
use fixtures::impression::{damage, evidence, one, scanned, sound, unchanged};
use judge::{Check, Evidence, JudgedCase, Protocol, Severity, Stage, judge_case};
use measure::Arch;
use measure::pair::{DamageKind, NoTransit, Transit};
use rstest::rstest;

type Unlike = fn(&mut Transit);

#[rstest]
#[case::as_it_was(|_: &mut Transit| {}, &[])]
#[case::bent(
    |of: &mut Transit| of.bends[0].end_toward_tissue_mm.value = 0.3,
    &[(Severity::Borderline, Check::ChangedInTransit)]
)]
#[case::nearer_together(
    |of: &mut Transit| of.heels_apart_mm.value = -0.3,
    &[(Severity::Borderline, Check::ChangedInTransit)]
)]
#[case::shrunk(|of: &mut Transit| of.heels_apart_mm.value = -0.07, &[])]
#[case::dented(
    |of: &mut Transit| of.damage = vec![damage(DamageKind::PressedIn, -0.3)],
    &[(Severity::Borderline, Check::ChangedInTransit)]
)]
#[case::torn_and_soiled(
    |of: &mut Transit| {
        of.damage = vec![damage(DamageKind::Torn, -3.0), damage(DamageKind::StuckOn, 0.5)];
    },
    &[(Severity::Borderline, Check::ChangedInTransit), (Severity::Borderline, Check::ChangedInTransit)]
)]
#[case::perhaps_dented(
    |of: &mut Transit| of.damage = vec![damage(DamageKind::PressedIn, -0.15)],
    &[(Severity::Note, Check::ChangedInTransit)]
)]
#[case::perhaps_torn(
    |of: &mut Transit| of.damage = vec![damage(DamageKind::Torn, -0.15)],
    &[(Severity::Borderline, Check::ChangedInTransit)]
)]
#[case::within_the_limit(
    |of: &mut Transit| of.damage = vec![damage(DamageKind::Torn, -0.09)],
    &[]
)]
fn what_changed_on_the_way_is_asked_about_and_never_fails(
    #[case] unlike: Unlike,
    #[case] expected: &[(Severity, Check)],
) {
    let mut transit = unchanged();
    unlike(&mut transit);
    assert_eq!(codes(&judged_as_sent(&Ok(transit))), expected);
}

#[rstest]
#[case(NoTransit::SameFile, "same file")]
#[case(
    NoTransit::NotThisImpression { fitting_percent: 12.0 },
    "is not a scan of this impression: only 12 % of the tissue surface lies on it"
)]
#[case(
    NoTransit::OtherJaw { sent: Arch::Mandibular },
    "is not a scan of this impression: it shows the other jaw: a mandibular impression"
)]
fn another_scan_as_sent_is_asked_about(#[case] why: NoTransit, #[case] says: &str) {
    let judged = judged_as_sent(&Err(why));
    assert_eq!(
        codes(&judged),
        [(Severity::Borderline, Check::ChangedInTransit)]
    );
    let said = &judged.findings[0].instruction.to_string();
    assert!(said.contains(says), "{said}");
}

fn judged_as_sent(transit: &Result<Transit, NoTransit>) -> JudgedCase {
    let measured = scanned(&sound());
    let evidence = Evidence {
        transit: Some(transit),
        ..evidence(&measured, 0)
    };
    let case = one(Some(Arch::Maxillary), Stage::Single);
    judge_case(&case, &[evidence], None, &Protocol::default())
}
