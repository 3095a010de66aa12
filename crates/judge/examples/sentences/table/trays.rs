//! Trays that bent, came apart, or were relieved.

use fixtures::impression::{evidence, one, scanned, sound, spot};
use judge::{Evidence, Finding, Protocol, Stage, judge_case};
use measure::tray_fit::Amount;
use measure::{
    Arch, CoverGap, LimbBend, Measurement, NoCover, NoCoverHere, NotRelieved, PiecesNotPlaced,
    PlaceOnTray, PlaceRelieved, Side, TrayJoint, TrayNotPlaced, Zone,
};
use nalgebra::Point3;

type Relieved = Result<Vec<Option<PlaceRelieved>>, NotRelieved>;

/// What is found on impressions in such trays.
pub fn trays(arch: Arch, stage: Stage, protocol: &Protocol) -> Vec<Vec<Finding>> {
    let case = one(Some(arch), stage);
    let judge = |mut measurement: Measurement, relief: Option<&Relieved>, joints: &[TrayJoint]| {
        measurement.frame.arch = arch;
        let scanned = scanned(&measurement);
        let evidence = Evidence {
            relief,
            joints,
            ..evidence(&scanned, 0)
        };
        judge_case(&case, &[evidence], None, protocol).findings
    };
    let bare = || Measurement {
        spots: vec![spot(0.0)],
        ..sound()
    };
    let joined = JOINTS.map(|joint| judge(sound(), None, &[joint]));
    let relieved = reliefs().map(|relief| judge(bare(), Some(&relief), &[]));
    let others = with_walls().into_iter().chain(bent()).chain(with_gaps());
    joined
        .into_iter()
        .chain(relieved)
        .chain(others.map(|measurement| judge(measurement, None, &[])))
        .collect()
}

const JOINTS: [TrayJoint; 2] = [
    TrayJoint {
        pieces: [1, 2],
        gap_mm: 0.8,
        step_mm: 0.1,
        uncertainty_mm: 0.05,
    },
    TrayJoint {
        pieces: [2, 3],
        gap_mm: 0.1,
        step_mm: 0.8,
        uncertainty_mm: 0.05,
    },
];

fn reliefs() -> [Relieved; 3] {
    let to = |room_mm| {
        Ok(vec![Some(PlaceRelieved {
            deepest_mm: certain(0.9),
            least_room_mm: certain(room_mm),
        })])
    };
    let other_tray = NotRelieved::OtherTray {
        fitting_percent: 40.0,
    };
    [to(0.4), to(2.4), Err(other_tray)]
}

fn certain(value: f64) -> Amount {
    Amount {
        value,
        uncertainty: 0.1,
    }
}

/// A bare place over a wall that relief leaves thin, or goes through.
fn with_walls() -> Vec<Measurement> {
    let over = |wall_mm| Measurement {
        spots: vec![spot(0.0)],
        on_tray: vec![Some(PlaceOnTray {
            at: Point3::origin(),
            vertices: Vec::new(),
            wall_mm: Some(certain(wall_mm)),
            to_outer_rim_mm: None,
            to_front_mm: None,
        })],
        ..sound()
    };
    [1.6, 1.0].map(over).into()
}

/// Trays whose right limb bent: a little, much to one side, much aslant.
fn bent() -> Vec<Measurement> {
    let by = |[toward_tissue_mm, outward_mm]: [f64; 2]| {
        let mut measurement = sound();
        let cover = measurement.cover.as_mut().ok();
        if let Some(registration) = cover.and_then(|cover| cover.registration.as_mut()) {
            let limb = &mut registration.limbs[0];
            *limb = LimbBend {
                end_toward_tissue_mm: certain(toward_tissue_mm),
                end_outward_mm: certain(outward_mm),
                ..limb.clone()
            };
        }
        measurement
    };
    [[0.25, 0.0], [1.5, 0.1], [-1.5, -1.2], [0.1, 1.5]]
        .map(by)
        .into()
}

/// Parts of the arch over which the tray's place is not known.
fn with_gaps() -> Vec<Measurement> {
    let gap = |(why, side)| {
        let mut measurement = sound();
        if let Ok(cover) = &mut measurement.cover {
            cover.gaps = vec![CoverGap {
                why,
                zone: Zone::LabialFlange,
                side,
                area_mm2: 230.0,
            }];
        }
        measurement
    };
    let gaps = [
        (NoCoverHere::NoTray, None),
        (NoCoverHere::OuterSurfaceDiffers, Some(Side::Left)),
    ];
    let not_covered = [
        NoCover::TooLittleTraySeen,
        NoCover::TrayInsideMissing {
            missing_percent: 30.0,
        },
        TrayNotPlaced::OtherSize {
            tray_mm: 70.0,
            impression_mm: 82.0,
        }
        .into(),
        TrayNotPlaced::Pieces(PiecesNotPlaced::NotFound { piece: 2 }).into(),
    ];
    let not_measured = not_covered.map(|why| Measurement {
        cover: Err(why),
        ..sound()
    });
    gaps.map(gap).into_iter().chain(not_measured).collect()
}
