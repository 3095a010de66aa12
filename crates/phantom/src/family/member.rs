//! Members of the broad family: one seed is one mouth, its tray and its scan.

use super::drawn::Drawn;
use super::ranges::{NOISE, STITCH};
use super::truth::FamilyTruth;
use crate::chance::stream;
use crate::designed::designed;
use crate::jaw::Arch;
use crate::options::{
    Across, Blemish, Cut, CutPlace, FlangeSide, Options, Place, PlantedSpot, RimFaults, Scanning,
    Sides, SpotKind, Variety,
};
use nalgebra::Isometry3;
use rand::{Rng, RngExt};

/// A fault to plant in a member, one alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Fault {
    /// The border is 3 mm short over 8 mm, away from every frenum.
    ShortBorder,
    /// The border is 3 mm short over 8 mm, beside a frenum.
    ShortBesideFrenum,
    /// The impression ends before a hamular notch or before two thirds of a
    /// retromolar pad, on one side.
    CutLandmark,
    /// The impression ends before the posterior palatal seal on one side; a
    /// lower one as with [`Fault::CutLandmark`].
    LostSeal,
    /// A void of 2 mm on the crest.
    Void,
    /// Show-through of 3 mm² on the crest.
    ShowThrough,
}

impl Fault {
    /// All of them.
    pub const ALL: [Self; 6] = [
        Self::ShortBorder,
        Self::ShortBesideFrenum,
        Self::CutLandmark,
        Self::LostSeal,
        Self::Void,
        Self::ShowThrough,
    ];
}

/// A member of the broad family: upper of even seeds, lower of odd ones.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Member {
    /// Chooses everything.
    pub seed: u64,
    /// What is planted; a sound member has none.
    pub fault: Option<Fault>,
}

/// How short a planted short border is, and over what length, mm.
const SHORT_MM: [f64; 2] = [3.0, 8.0];
/// Between the shoulders of a frenum's notch and of a short border beside it, mm.
const BESIDE_MM: f64 = 2.0;

impl Member {
    /// A member without a fault.
    #[must_use]
    pub fn sound(seed: u64) -> Self {
        Self { seed, fault: None }
    }

    /// A member with one fault, each kind in turn.
    #[must_use]
    pub fn with_a_fault(seed: u64) -> Self {
        let fault = Fault::ALL[(seed / 2 % Fault::ALL.len() as u64) as usize];
        Self {
            seed,
            fault: Some(fault),
        }
    }

    /// Which jaw.
    #[must_use]
    pub fn arch(&self) -> Arch {
        match self.seed % 2 {
            0 => Arch::Maxillary,
            _ => Arch::Mandibular,
        }
    }

    /// What makes this member, with scans of about this edge.
    #[must_use]
    pub fn options(&self, edge_mm: f64) -> Options {
        let rng = &mut stream(self.seed, 20);
        let mut options = Options {
            arch: self.arch(),
            seed: self.seed,
            edge_mm,
            tray_edge_mm: edge_mm,
            sides: match rng.random_bool(0.25) {
                true => Sides::Tissue,
                false => Sides::Both,
            },
            noise_sd_mm: if rng.random_bool(0.3) {
                0.0
            } else {
                NOISE.draw(rng)
            },
            scanning: scanning(rng),
            rim: RimFaults {
                holes: usize::from(rng.random_bool(0.2)),
                ..RimFaults::default()
            },
            variety: Variety::Broad { cut: None },
            ..Options::default()
        };
        if let Some(fault) = self.fault {
            plant(rng, &mut options, fault);
        }
        options
    }
}

impl Member {
    /// What is true of this member, as made, without meshing it.
    #[must_use]
    pub fn truth(&self) -> Option<FamilyTruth> {
        let options = self.options(1.0);
        let design = designed(&options, &mut stream(self.seed, 0));
        let impression = design.impression();
        let drawn = design.drawn.as_ref();
        drawn.map(|drawn| FamilyTruth::of(&impression, drawn, &Isometry3::identity()))
    }
}

/// What a scanner makes of a member's surface.
fn scanning(rng: &mut impl Rng) -> Scanning {
    Scanning {
        smoothing: if rng.random_bool(0.4) {
            rng.random_range(1..6)
        } else {
            0
        },
        longest_edge_mm: rng.random_bool(0.4).then_some(1.5),
        stitch_mm: match rng.random_bool(0.25) {
            true => STITCH.draw(rng),
            false => 0.0,
        },
        spikes: match rng.random_bool(0.2) {
            true => rng.random_range(1..6),
            false => 0,
        },
    }
}

fn plant(rng: &mut impl Rng, options: &mut Options, fault: Fault) {
    let left = rng.random_bool(0.5);
    let side = if left { 1.0 } else { -1.0 };
    let on_crest = Place::Arch {
        station: side * rng.random_range(0.15..0.6),
        across: Across::Crest,
    };
    match fault {
        Fault::CutLandmark | Fault::LostSeal => {
            let place = match (fault, options.arch) {
                (Fault::LostSeal, Arch::Maxillary) => CutPlace::Seal,
                _ => CutPlace::PosteriorLandmark,
            };
            let by_mm = rng.random_range(2.0..4.0);
            options.variety = Variety::Broad {
                cut: Some(Cut { place, left, by_mm }),
            };
        }
        Fault::Void => options.blemishes.push(Blemish::Void {
            place: on_crest,
            diameter_mm: 2.0,
            depth_mm: 1.0,
        }),
        Fault::ShowThrough => options.spots.push(PlantedSpot {
            place: on_crest,
            kind: SpotKind::ShowThrough { area_mm2: 3.0 },
        }),
        Fault::ShortBorder | Fault::ShortBesideFrenum => {
            let station = short_place(options, fault, left);
            let [by_mm, length_mm] = SHORT_MM;
            options.blemishes.push(Blemish::ShortBorder {
                flange: FlangeSide::Outer,
                station,
                length_mm,
                by_mm,
            });
        }
    }
}

/// What an upper or lower member was drawn as.
fn drawn(options: &Options) -> Option<Drawn> {
    designed(options, &mut stream(options.seed, 0)).drawn
}

/// A station of the outer border: beside a frenum of one side, or furthest from
/// every frenum.
fn short_place(options: &Options, fault: Fault, left: bool) -> f64 {
    let Some(drawn) = drawn(options) else {
        return 0.0;
    };
    let toward_left = -options.arch.right_sign();
    let sense = if left { toward_left } else { -toward_left };
    let outer = (drawn.frena.iter()).filter(|f| f.flange == FlangeSide::Outer);
    // Clear of a shoulder, mm; the shoulder of a notch lies its width away.
    let clear = |along: f64| {
        let gaps = outer.clone().map(|f| (along - f.along).abs() - f.width_mm);
        gaps.fold(f64::INFINITY, f64::min)
    };
    let beside = outer
        .clone()
        .filter(|f| f.along * sense > 8.0)
        .map(|f| f.along + sense * (f.width_mm + BESIDE_MM + SHORT_MM[1] / 2.0))
        .find(|along| along.abs() < drawn.tray_end_mm - 12.0);
    let away = (20..=90)
        .map(|i| sense * f64::from(i) * 0.5)
        .filter(|along| along.abs() < drawn.tray_end_mm - 12.0)
        .max_by(|a, b| clear(*a).total_cmp(&clear(*b)));
    let along = match fault {
        Fault::ShortBesideFrenum => beside.or(away),
        _ => away,
    };
    toward_left * along.unwrap_or(sense * 20.0) / drawn.tray_end_mm
}
