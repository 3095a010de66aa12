//! A shelf of empty stock trays: in which of them an impression was taken.
//!
//! The right tray lies on what shows of it to within the noise, with nothing behind its
//! wall. A tray of the next size lies on less of it, more roughly, or partly behind it.

use super::figures::TrayNotPlaced;
use super::placing::{self, PreparedTray};
use crate::impression::Impression;
use geometry::registration::{self, Registered};
use geometry::sampling::{SurfacePoint, spread_over};
use rayon::prelude::*;

/// Points that stand for the impression's outer surface.
const POINTS: usize = 3000;
/// A tray fits that lies this close, mm (root mean square), on this share of the outer
/// surface at least, with no more than this part of it behind the tray. Own choice, no
/// source: on 100 invented impressions the right tray lay within 0.021 mm with nothing behind
/// it; of wrong ones that lay within 0.06 mm, 4 % and more of what fits lay behind.
const CLOSE_MM: f64 = 0.06;
const LEAST_FITTING: f64 = 0.15;
const MOST_BEHIND: f64 = 0.02;
/// A tray that fits nearly as closely as the best may be the one as well.
const RIVAL: f64 = 0.85;

/// How a tray of a shelf lies on the outer surface of an impression, placed rigidly.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrayTrial {
    /// Number of the tray on the shelf, from 0.
    pub tray: usize,
    /// Share of the outer surface that lies on the tray, 0 to 1.
    pub fitting_share: f64,
    /// Root mean square distance of what lies on it, mm.
    pub rms_mm: f64,
    /// Share of the outer surface that would lie inside the tray's wall, 0 to 1.
    pub behind_share: f64,
    closeness: f64,
}

impl TrayTrial {
    fn of(tray: usize, found: &Registered) -> Self {
        Self {
            tray,
            fitting_share: found.fitting_share,
            rms_mm: found.rms_mm,
            behind_share: found.behind_share,
            closeness: found.closeness(),
        }
    }

    fn fits(&self) -> bool {
        self.rms_mm <= CLOSE_MM
            && self.fitting_share >= LEAST_FITTING
            && self.behind_share <= MOST_BEHIND * self.fitting_share
    }
}

/// The tray of a shelf in which an impression was taken.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChosenTray {
    /// The tray.
    pub best: TrayTrial,
    /// The one that comes next; `None` where no other lies anywhere on the impression.
    pub next: Option<TrayTrial>,
}

/// A tray of a shelf.
pub struct ShelfTray {
    /// What it is called.
    pub name: String,
    /// Its scan.
    pub scan: PreparedTray,
}

/// Finds the tray of a shelf in which an impression was taken: one that lies on what shows
/// of it, and by far more closely than every other.
///
/// # Errors
/// When the scan shows nothing of its tray, no tray fits, or two fit alike.
pub(crate) fn choose(
    impression: &Impression,
    shelf: &[ShelfTray],
    look: &(dyn Fn() + Sync),
) -> Result<ChosenTray, TrayNotPlaced> {
    let regions = &impression.regions;
    if !regions.has_outer_surface() {
        return Err(TrayNotPlaced::NoOuterSurface);
    }
    let outer = spread_over(&impression.local, POINTS, |t| !regions.is_tissue[t]);
    let at_first = by_closeness(screened(&outer, shelf, look));
    if at_first.first().is_some_and(TrayTrial::fits) {
        return chosen(&at_first, shelf);
    }
    // The right tray's frame may be off, or the tray may have bent.
    let laid = from_many_starts(&outer, shelf, look);
    let mut trials: Vec<TrayTrial> = laid.iter().map(|(trial, _)| *trial).collect();
    trials = by_closeness(trials);
    if trials.first().is_some_and(TrayTrial::fits) {
        return chosen(&trials, shelf);
    }
    bent(impression, (&outer, &laid), shelf)
}

/// The closest of the trials, if it is closer than every other.
fn chosen(trials: &[TrayTrial], shelf: &[ShelfTray]) -> Result<ChosenTray, TrayNotPlaced> {
    let (best, next) = (trials[0], trials.get(1).copied());
    match next.filter(|next| next.fits() && next.closeness > RIVAL * best.closeness) {
        Some(rival) => {
            let [one, other] = [best, rival].map(|trial| shelf[trial.tray].name.clone());
            Err(TrayNotPlaced::AlikeOnShelf { one, other })
        }
        None => Ok(ChosenTray { best, next }),
    }
}

fn by_closeness(mut trials: Vec<TrayTrial>) -> Vec<TrayTrial> {
    trials.sort_by(|a, b| b.closeness.total_cmp(&a.closeness));
    trials
}

/// Trials of the trays that come nearest, from where the frames of impression and tray agree.
fn screened(
    outer: &[SurfacePoint],
    shelf: &[ShelfTray],
    look: &(dyn Fn() + Sync),
) -> Vec<TrayTrial> {
    /// Points and distance by which trays are sifted.
    const SIFTED_BY: usize = 6;
    const NEAR_MM: f64 = 0.3;
    /// So many go on.
    const KEPT: usize = 3;
    let few: Vec<SurfacePoint> = outer.iter().step_by(SIFTED_BY).copied().collect();
    let mut near: Vec<(usize, usize, _)> = (shelf.par_iter().enumerate())
        .filter_map(|(number, tray)| {
            look();
            let start = placing::starts(&tray.scan).into_iter().next()?;
            let pose = registration::brought_closer(outer, tray.scan.target(), &start)?;
            let matches = tray.scan.target().matches(&few, &pose, NEAR_MM);
            Some((matches.iter().flatten().count(), number, pose))
        })
        .collect();
    near.sort_by_key(|&(count, number, _)| (std::cmp::Reverse(count), number));
    near.truncate(KEPT);
    let finished = near.into_par_iter().filter_map(|(_, number, pose)| {
        look();
        let found = registration::finest(outer, shelf[number].scan.target(), &pose)?;
        Some(TrayTrial::of(number, &found))
    });
    finished.collect()
}

/// Trials of all trays, each from many starts.
fn from_many_starts(
    outer: &[SurfacePoint],
    shelf: &[ShelfTray],
    look: &(dyn Fn() + Sync),
) -> Vec<(TrayTrial, Registered)> {
    let laid = shelf.par_iter().enumerate().filter_map(|(number, tray)| {
        let (starts, target) = (placing::starts(&tray.scan), tray.scan.target());
        let found = if starts.is_empty() {
            registration::register_anywhere(outer, target, look)
        } else {
            registration::register(outer, target, &starts, look)
        };
        let found = found.ok()?;
        Some((TrayTrial::of(number, &found), found))
    });
    laid.collect()
}

/// The one of the trays on which most of the impression lies that fits once its bend is
/// allowed for.
fn bent(
    impression: &Impression,
    (outer, laid): (&[SurfacePoint], &[(TrayTrial, Registered)]),
    shelf: &[ShelfTray],
) -> Result<ChosenTray, TrayNotPlaced> {
    const NEAREST: usize = 3;
    /// Where a bend is allowed for, so much must fit: a wrong tray can be bent to lie on some
    /// 40 % of the outer surface. Own choice, no source.
    const LEAST_FITTING_BENT: f64 = 0.5;
    let mut by_share: Vec<&(TrayTrial, Registered)> = laid.iter().collect();
    by_share.sort_by(|a, b| b.0.fitting_share.total_cmp(&a.0.fitting_share));
    let fitted: Vec<TrayTrial> = (by_share.par_iter().take(NEAREST))
        .filter_map(|(trial, found)| {
            let tray = &shelf[trial.tray].scan;
            let pose = placing::bent_from(impression, outer, tray, found)?.pose.1;
            let bent = TrayTrial {
                fitting_share: pose.fitting_share,
                rms_mm: pose.rms_mm,
                behind_share: pose.behind.len() as f64 / outer.len().max(1) as f64,
                closeness: pose.fitting_share,
                ..*trial
            };
            (bent.fits() && bent.fitting_share >= LEAST_FITTING_BENT).then_some(bent)
        })
        .collect();
    let fitted = by_closeness(fitted);
    let Some(best) = fitted.first() else {
        return Err(TrayNotPlaced::NoneOfShelf {
            trays: shelf.len(),
            nearest: by_share
                .first()
                .map(|(trial, _)| shelf[trial.tray].name.clone()),
        });
    };
    let others = by_share.iter().map(|(trial, _)| *trial);
    let next = others.clone().find(|other| other.tray != best.tray);
    let chosen = chosen(&fitted, shelf)?;
    Ok(ChosenTray {
        next: chosen.next.or(next),
        ..chosen
    })
}
