//! A tray scanned once more after it was relieved: how deep, and what room that makes.

use super::placing::PreparedTray;
use crate::amount::Amount;
use crate::cover::{Cover, PlaceOnTray};
use crate::measurement::Measurement;
use geometry::noise::noise_mm;
use geometry::registration::{NotRegistered, Registered};
use geometry::sampling::spread_over;
use geometry::{Laying, NotLaid};
use messages::{Message, Value, message, said_by_the_catalogue};
use nalgebra::{Isometry3, Point3};
use std::f64::consts::SQRT_2;

/// Points that stand for the tray's surface.
const POINTS: usize = 12_000;
/// So much of the tray must be as it was: relief takes little of it.
const LEAST_UNALTERED: f64 = 0.6;

/// Why the scan of a relieved tray tells nothing.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NotRelieved {
    OtherTray { fitting_percent: f64 },
    Ambiguous { spread_mm: f64 },
}

impl NotRelieved {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::OtherTray { fitting_percent } => message!(
                "relieved-other-tray",
                share = Value::number(*fitting_percent, 0)
            ),
            Self::Ambiguous { spread_mm } => {
                message!("relieved-ambiguous", spread = Value::number(*spread_mm, 2))
            }
        }
    }
}

said_by_the_catalogue!(NotRelieved);

/// Where the scan of a relieved tray lies on the tray's first scan.
#[derive(Debug, Clone, PartialEq)]
pub struct Relaid {
    /// Takes coordinates of the tray's first scan to those of the relieved tray's, mm.
    pub relieved_from_tray: Isometry3<f64>,
    /// Expanded uncertainty (k = 2) of a depth that was taken off, mm.
    pub uncertainty_mm: f64,
}

/// What was taken off the tray at a place of little cover.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlaceRelieved {
    /// Greatest depth taken off, mm.
    pub deepest_mm: Amount,
    /// Least room between the tray and the surface that was recorded before relief, mm.
    pub least_room_mm: Amount,
}

/// Lays the scan of a relieved tray (mm, any pose) on the tray's first scan. What the scanner
/// adds to a length is an expanded uncertainty (k = 2), mm.
///
/// # Errors
/// When the two scans are not of one tray.
pub fn relaid(
    tray: &PreparedTray,
    relieved: &PreparedTray,
    scanner_uncertainty_mm: f64,
) -> Result<Relaid, NotRelieved> {
    let laid = laid(tray, relieved)?;
    let noise = [tray, relieved].map(|tray| noise_mm(tray.mesh()).unwrap_or(0.0));
    let every = (tray.mesh().vertices().len() / 500).max(1);
    let spread: Vec<Point3<f64>> = (tray.mesh().vertices().iter())
        .step_by(every)
        .copied()
        .collect();
    Ok(Relaid {
        uncertainty_mm: (laid.uncertainty_mm(&spread))
            .hypot(2.0 * noise[0])
            .hypot(2.0 * noise[1])
            .hypot(SQRT_2 * scanner_uncertainty_mm),
        relieved_from_tray: laid.target_from_source,
    })
}

impl Relaid {
    /// What was taken off under each place of little cover of an impression in the tray
    /// before relief, in the order of its spots; `None` where the place is not on the tray or
    /// the relieved tray was not scanned there.
    #[must_use]
    pub fn places(
        &self,
        relieved: &PreparedTray,
        measured: &Measurement,
    ) -> Vec<Option<PlaceRelieved>> {
        let cover = measured.cover.as_ref().ok();
        let place = |on_tray: &Option<PlaceOnTray>| {
            let pose = &self.relieved_from_tray;
            ground(
                relieved,
                pose,
                on_tray.as_ref()?,
                cover?,
                self.uncertainty_mm,
            )
        };
        measured.on_tray.iter().map(place).collect()
    }
}

fn laid(tray: &PreparedTray, relieved: &PreparedTray) -> Result<Registered, NotRelieved> {
    let source = spread_over(tray.mesh(), POINTS, |_| true);
    let starts: Vec<Isometry3<f64>> = (relieved.local_from_scan())
        .zip(tray.local_from_scan())
        .map(|(relieved, tray)| relieved.inverse() * tray)
        .into_iter()
        .collect();
    let found = Laying::by_share(LEAST_UNALTERED).lay(&source, relieved.target(), &starts, &|| {});
    found.map_err(|why| match why {
        NotLaid::NotRegistered(NotRegistered::Ambiguous { spread_mm }) => {
            NotRelieved::Ambiguous { spread_mm }
        }
        why => NotRelieved::OtherTray {
            fitting_percent: 100.0 * why.fitting_share(),
        },
    })
}

/// What was taken off under one place.
fn ground(
    relieved: &PreparedTray,
    relieved_from_tray: &Isometry3<f64>,
    place: &PlaceOnTray,
    cover: &Cover,
    uncertainty_mm: f64,
) -> Option<PlaceRelieved> {
    let now: Vec<Point3<f64>> = (place.vertices.iter())
        .map(|(_, on_tray)| relieved_from_tray * on_tray)
        .collect();
    let depths = relieved.solid().distances(&now);
    let known: Vec<(f64, Amount)> = (place.vertices.iter().zip(depths))
        .filter_map(|((v, _), depth)| {
            let depth = depth?;
            let v = *v as usize;
            let room = Amount {
                value: depth + cover.at_vertex_mm[v]?,
                uncertainty: uncertainty_mm.hypot(cover.uncertainty_at_vertex_mm[v]),
            };
            Some((depth, room))
        })
        .collect();
    let deepest = known
        .iter()
        .map(|(depth, _)| *depth)
        .max_by(f64::total_cmp)?;
    let least_room = known
        .iter()
        .map(|(_, room)| *room)
        .min_by(|a, b| a.value.total_cmp(&b.value))?;
    Some(PlaceRelieved {
        deepest_mm: Amount {
            value: deepest,
            uncertainty: uncertainty_mm,
        },
        least_room_mm: least_room,
    })
}
