//! Gathers the evidence: every scan by itself, then the scans with one another.

use super::evidence::{
    Couple, Evidence, Layers, NoRecord, RecordTrial, SeenScan, Shows, TrayTrial,
};
use crate::load::{LoadedScan, load};
use crate::reader::refused;
use measure::frame;
use measure::intake::first_look;
use measure::pair::compare;
use measure::record::{self, Jaw};
use measure::{
    Arch, Border, EMPTY_TRAY_MM, Frame, MeasureSettings, Measuring, NotAnImpression, ScanFigures,
    Scanned,
};
use mesh::{Mesh, ReadError, Unit};
use messages::{Message, message};
use rayon::prelude::*;
use std::borrow::Cow;
use std::fmt;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

/// Jaws found less surely than this are compared with either.
const UNSURE_BELOW: f64 = 0.5;

/// A step of looking at the scans of a folder, for showing progress.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Looking {
    /// At each scan by itself.
    Scans,
    /// For a record, in which impressions of both jaws lie.
    Records,
    /// For the tray of each impression.
    Trays,
    /// At impressions of one jaw, to see which lies over which.
    Couples,
}

impl Looking {
    /// What is being done, as a message of the catalogue.
    #[must_use]
    pub fn message(self) -> Message {
        match self {
            Self::Scans => message!("look-scans"),
            Self::Records => message!("look-record"),
            Self::Trays => message!("look-trays"),
            Self::Couples => message!("look-couples"),
        }
    }
}

/// In English.
impl fmt::Display for Looking {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(f)
    }
}

/// Looks at scans that lie together; what cannot be read is kept with the reason.
#[must_use]
pub fn look(
    files: &[PathBuf],
    unit: Option<Unit>,
    progress: &(dyn Fn(Looking) + Sync),
) -> Evidence {
    progress(Looking::Scans);
    let looks: Vec<Look> = files.par_iter().map(|file| Look::at(file, unit)).collect();
    let scans = seen(&looks);
    let all = Scans {
        looks: &looks,
        scans: &scans,
    };
    progress(Looking::Records);
    let records = all.records();
    let is_record = |scan: usize| {
        let found = |trial: &RecordTrial| trial.scan == scan && trial.outcome.is_ok();
        records.iter().any(found)
    };
    let impressions: Vec<usize> = all.impressions().filter(|&i| !is_record(i)).collect();
    progress(Looking::Trays);
    let trays = all.trays(&impressions);
    progress(Looking::Couples);
    let couples = all.couples(&impressions, &trays);
    Evidence {
        trays,
        couples,
        records,
        scans,
    }
}

/// A scan file with what a first look showed.
struct Look {
    file: PathBuf,
    modified: Option<SystemTime>,
    read: Result<Read, ReadError>,
}

struct Read {
    scan: LoadedScan,
    frame: Result<Frame, NotAnImpression>,
    figures: ScanFigures,
}

impl Look {
    fn at(file: &Path, unit: Option<Unit>) -> Self {
        let read = load(file, unit).map(|scan| {
            let look = first_look(&scan.mesh);
            Read {
                frame: look.frame,
                figures: ScanFigures {
                    integrity: look.integrity,
                    turned: look.turned,
                    scanner_uncertainty_mm: 0.0,
                    cut_width_mm: None,
                },
                scan,
            }
        });
        let modified = std::fs::metadata(file).and_then(|about| about.modified());
        Self {
            file: file.to_owned(),
            modified: modified.ok(),
            read,
        }
    }
}

fn seen(looks: &[Look]) -> Vec<SeenScan> {
    let mut scans: Vec<SeenScan> = Vec::new();
    for look in looks {
        let (sha256, shows) = match &look.read {
            Err(why) => (String::new(), Shows::Unreadable(refused(why))),
            Ok(read) => {
                let sum = &read.scan.sha256;
                let earlier = scans.iter().position(|scan| scan.sha256 == *sum);
                (
                    sum.clone(),
                    earlier.map_or_else(|| read.shows(), Shows::SameAs),
                )
            }
        };
        scans.push(SeenScan {
            file: look.file.clone(),
            sha256,
            shows,
            modified: look.modified,
        });
    }
    scans
}

impl Read {
    fn shows(&self) -> Shows {
        match &self.frame {
            Ok(frame) => Shows::Impression {
                arch: frame.arch,
                confidence: frame.arch_confidence,
            },
            Err(NotAnImpression::Shell { wall_mm }) => Shows::TrayOrBase { wall_mm: *wall_mm },
            Err(what) => Shows::Else(what.clone()),
        }
    }

    fn outward(&self) -> Cow<'_, Mesh> {
        self.figures.outward(&self.scan.mesh)
    }
}

/// All scans with what each shows.
struct Scans<'a> {
    looks: &'a [Look],
    scans: &'a [SeenScan],
}

impl<'a> Scans<'a> {
    fn read(&self, scan: usize) -> Option<&'a Read> {
        self.looks[scan].read.as_ref().ok()
    }

    fn impressions(&self) -> impl Iterator<Item = usize> + '_ {
        let shows = |i: &usize| matches!(self.scans[*i].shows, Shows::Impression { .. });
        (0..self.scans.len()).filter(shows)
    }

    fn of_jaw(&self, arch: Arch) -> impl Iterator<Item = usize> + '_ {
        let is_of = move |i: &usize| matches!(self.scans[*i].shows, Shows::Impression { arch: own, .. } if own == arch);
        (0..self.scans.len()).filter(is_of)
    }

    /// Each scan that may be a record, which looks like an impression of one jaw or
    /// like two scans, with the impressions that lie in it.
    fn records(&self) -> Vec<RecordTrial> {
        let may_be = |scan: &usize| {
            use NotAnImpression::{NoTrough, TwoScans};
            matches!(
                self.scans[*scan].shows,
                Shows::Impression { .. } | Shows::Else(NoTrough | TwoScans { .. })
            )
        };
        let candidates: Vec<usize> = (0..self.scans.len()).filter(may_be).collect();
        let tried = candidates.par_iter().map(|&scan| RecordTrial {
            scan,
            outcome: self.both_jaws_in(scan),
        });
        tried.collect()
    }

    /// The upper and the lower impression that lie in a scan, opposite each other.
    fn both_jaws_in(&self, scan: usize) -> Result<[usize; 2], NoRecord> {
        let read = self.read(scan).ok_or(NoRecord::OneJaw)?;
        let record = read.outward();
        let Ok(seen) = &read.frame else {
            let uppers = self.of_jaw(Arch::Maxillary);
            let mut both = uppers
                .flat_map(|upper| (self.of_jaw(Arch::Mandibular)).map(move |lower| [upper, lower]));
            let stand = |pair: &[usize; 2]| self.stand_opposed(pair[0], pair[1], &record);
            return both.find(stand).ok_or(NoRecord::OneJaw);
        };
        let lying = |arch: Arch| {
            let lies = |i: &usize| {
                *i != scan
                    && self.read(*i).is_some_and(|read| {
                        let frame = read.frame.as_ref().ok();
                        frame
                            .is_some_and(|f| record::lies_in((&read.outward(), f), (&record, seen)))
                    })
            };
            self.of_jaw(arch).find(lies)
        };
        // An impression of the other jaw lies in no impression.
        let other = match seen.arch {
            Arch::Maxillary => Arch::Mandibular,
            Arch::Mandibular => Arch::Maxillary,
        };
        let of_other = lying(other).ok_or(NoRecord::OneJaw)?;
        let in_doubt = NoRecord::InDoubt(of_other);
        let of_own = lying(seen.arch).ok_or(in_doubt.clone())?;
        let [upper, lower] = match seen.arch {
            Arch::Maxillary => [of_own, of_other],
            Arch::Mandibular => [of_other, of_own],
        };
        if self.stand_opposed(upper, lower, &record) {
            Ok([upper, lower])
        } else {
            Err(in_doubt)
        }
    }

    fn stand_opposed(&self, upper: usize, lower: usize, record: &Mesh) -> bool {
        let settings = MeasureSettings::default();
        let parts = [upper, lower].map(|i| {
            let read = self.read(i)?;
            let measuring = Measuring::new(&read.scan.mesh, None, &settings);
            let border: Border = measuring.border()?.ok()?.clone();
            let frame = measuring.frame().ok()?.frame.clone();
            Some((read.outward(), frame, border))
        });
        let [Some(above), Some(below)] = &parts else {
            return false;
        };
        record::measure(jaw(above), jaw(below), record, &|| {}).is_ok()
    }

    /// Every impression with the scans that may be its tray, those of its jaw first,
    /// until one fits well.
    fn trays(&self, impressions: &[usize]) -> Vec<TrayTrial> {
        let may_be = |scan: &usize| {
            use NotAnImpression::{Half, NoTrough};
            matches!(
                self.scans[*scan].shows,
                Shows::TrayOrBase { .. } | Shows::Else(NoTrough | Half)
            )
        };
        let trays: Vec<usize> = (0..self.scans.len()).filter(may_be).collect();
        let jaws: Vec<Option<Arch>> = (trays.par_iter())
            .map(|&tray| Some(frame::find(&self.read(tray)?.scan.mesh).ok()?.frame.arch))
            .collect();
        let tried = impressions.par_iter().flat_map_iter(|&impression| {
            let own = self
                .read(impression)
                .and_then(|read| Some(read.frame.as_ref().ok()?.arch));
            let mut order: Vec<(bool, usize)> = jaws
                .iter()
                .zip(&trays)
                .map(|(jaw, &tray)| (*jaw != own, tray))
                .collect();
            order.sort_unstable();
            let mut trials: Vec<TrayTrial> = Vec::new();
            for (_, tray) in order {
                if trials.last().is_some_and(TrayTrial::fits_well) {
                    break;
                }
                let Some(meshes) = self.read(impression).zip(self.read(tray)) else {
                    continue;
                };
                trials.push(TrayTrial {
                    impression,
                    tray,
                    outcome: on_tray([&meshes.0.scan.mesh, &meshes.1.scan.mesh]),
                });
            }
            trials
        });
        tried.collect()
    }

    /// Impressions that may be of one jaw, compared two by two.
    fn couples(&self, impressions: &[usize], trays: &[TrayTrial]) -> Vec<Couple> {
        let pairs: Vec<[usize; 2]> = impressions
            .iter()
            .flat_map(|&a| impressions.iter().map(move |&b| [a, b]))
            .filter(|[a, b]| a < b && self.may_be_of_one_jaw(*a, *b))
            .collect();
        let mut measured: Vec<Option<Scanned>> = vec![None; self.scans.len()];
        for &one in pairs.iter().flatten() {
            if measured[one].is_none() {
                let fits = |trial: &&TrayTrial| trial.impression == one && trial.fits_well();
                let tray = trays
                    .iter()
                    .find(fits)
                    .and_then(|trial| self.read(trial.tray));
                measured[one] = self.read(one).map(|read| {
                    let tray = tray.map(|tray| &tray.scan.mesh);
                    measure::measure(&read.scan.mesh, tray, &MeasureSettings::default(), &|_| {})
                });
            }
        }
        let compared = pairs.par_iter().filter_map(|&pair| {
            let [first, second] = pair.map(|one| Some((self.read(one)?, measured[one].as_ref()?)));
            let ((first, first_found), (second, second_found)) = (first?, second?);
            Some(Couple {
                pair,
                outcome: layers(
                    (&first.scan.mesh, first_found),
                    (&second.scan.mesh, second_found),
                ),
            })
        });
        compared.collect()
    }

    fn may_be_of_one_jaw(&self, a: usize, b: usize) -> bool {
        match (&self.scans[a].shows, &self.scans[b].shows) {
            (
                Shows::Impression {
                    arch: one,
                    confidence: sure,
                },
                Shows::Impression {
                    arch: other,
                    confidence: also_sure,
                },
            ) => one == other || sure.min(*also_sure) < UNSURE_BELOW,
            _ => false,
        }
    }
}

fn jaw<'a>((mesh, frame, border): &'a (Cow<'_, Mesh>, Frame, Border)) -> Jaw<'a> {
    Jaw {
        mesh,
        frame,
        crest_line: &border.crest_line,
        scanner_uncertainty_mm: 0.0,
    }
}

/// Share of an impression's outer surface that lies on a tray, or why the tray does
/// not fit on it.
fn on_tray([impression, tray]: [&Mesh; 2]) -> Result<f64, Message> {
    let settings = MeasureSettings::default();
    let measuring = Measuring::new(impression, Some(tray), &settings);
    match measuring.cover() {
        Some(Ok(cover)) if cover.p95_mm <= EMPTY_TRAY_MM => Err(message!("trial-same-tray")),
        Some(Ok(cover)) => Ok(cover
            .registration
            .as_ref()
            .map_or(0.0, |laid| laid.fitting_share)),
        Some(Err(why)) => Err(why.message()),
        None => Err(message!("trial-no-impression")),
    }
}

/// How the second impression differs from the first.
fn layers(first: (&Mesh, &Scanned), second: (&Mesh, &Scanned)) -> Result<Layers, Message> {
    let pair = compare(first, second, &|| {}).map_err(|why| why.message())?;
    let wash = pair.wash.map_err(|why| why.message())?;
    Ok(Layers {
        median_mm: wash.median_mm,
        uncertainty_mm: wash.uncertainty_mm,
        added_share: wash.added_share,
        lowered_share: wash.lowered_share,
    })
}
