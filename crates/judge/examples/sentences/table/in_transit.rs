//! Impressions that changed on their way.

use fixtures::impression::{damage, evidence, one, scanned, sound, unchanged};
use judge::{Evidence, Finding, Protocol, Stage, judge_case};
use measure::pair::{DamageKind, NoTransit, Transit};
use measure::{Arch, Zone};

/// What is said of each change, and of another scan given as the one that was sent.
pub fn in_transit(protocol: &Protocol) -> Vec<Vec<Finding>> {
    changes()
        .map(|transit| {
            let measured = scanned(&sound());
            let evidence = Evidence {
                transit: Some(&transit),
                ..evidence(&measured, 0)
            };
            let case = one(Some(Arch::Maxillary), Stage::Single);
            judge_case(&case, &[evidence], None, protocol).findings
        })
        .collect()
}

fn changes() -> impl Iterator<Item = Result<Transit, NoTransit>> {
    let mut bent = unchanged();
    bent.bends[0].end_toward_tissue_mm.value = 0.4;
    let mut apart = unchanged();
    apart.heels_apart_mm.value = -0.4;
    apart.larger_percent.value = -0.8;
    let mut damaged = unchanged();
    damaged.damage = vec![
        damage(DamageKind::Torn, -3.0),
        damage(DamageKind::PressedIn, -0.4),
        damage(DamageKind::PressedIn, -0.15),
        damage(DamageKind::StuckOn, 0.5),
    ];
    damaged.damage[2].zone = Zone::PosteriorPalatalSeal;
    let others = [
        NoTransit::SameFile,
        NoTransit::OtherJaw {
            sent: Arch::Mandibular,
        },
        NoTransit::NotThisImpression {
            fitting_percent: 38.0,
        },
    ];
    let changes = [bent, apart, damaged].into_iter().map(Ok);
    changes.chain(others.into_iter().map(Err))
}
