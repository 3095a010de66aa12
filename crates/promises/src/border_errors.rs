//! The figures of a border beside the formula.

use fixtures::quantile;
use measure::{Border, MeasureSettings, Measured, Measuring, Reading};
use nalgebra::Point3;
use phantom::{BorderPoint, Phantom};
use serde::{Deserialize, Serialize};

pub(crate) fn border_of(phantom: &Phantom) -> Border {
    Measuring::new(
        &phantom.impression,
        Some(&phantom.tray),
        &MeasureSettings::default(),
    )
    .border()
    .expect("a phantom is an impression")
    .cloned()
    .unwrap_or_else(|why| panic!("{:?} {}: {why}", phantom.truth.arch, phantom.truth.seed))
}

/// Distance from a closed line, and the number of its nearest point.
pub(crate) fn off_line(points: &[Point3<f64>], place: &Point3<f64>) -> (f64, usize) {
    (0..points.len())
        .map(|i| {
            let next = (i + 1) % points.len();
            let step = points[next] - points[i];
            let share = (place - points[i]).dot(&step) / step.norm_squared().max(f64::MIN_POSITIVE);
            let share = share.clamp(0.0, 1.0);
            let distance = (place - (points[i] + step * share)).norm();
            (distance, if share < 0.5 { i } else { next })
        })
        .min_by(|a, b| a.0.total_cmp(&b.0))
        .expect("a line has points")
}

/// Errors of one figure at every station, and how many of them its stated
/// uncertainty holds.
#[derive(Default, Serialize, Deserialize)]
pub(crate) struct Errors {
    pub(crate) size: Vec<f64>,
    pub(crate) held: usize,
}

impl Errors {
    pub(crate) fn add(&mut self, measured: Measured, truth: f64) {
        let error = (measured.mm - truth).abs();
        self.size.push(error);
        self.held += usize::from(error <= measured.uncertainty_mm);
    }

    pub(crate) fn merged(mut self, other: Self) -> Self {
        self.size.extend(other.size);
        self.held += other.held;
        self
    }

    /// Median, 95th percentile and share held.
    pub(crate) fn summary(&mut self) -> [f64; 3] {
        let held = self.held as f64 / self.size.len() as f64;
        [0.5, 0.95]
            .map(|part| quantile(&mut self.size, part))
            .into_iter()
            .chain([held])
            .collect::<Vec<_>>()
            .try_into()
            .expect("three figures")
    }
}

/// Everything that is compared with the truth.
#[derive(Default, Serialize, Deserialize)]
pub(crate) struct Comparison {
    pub(crate) line_mm: Vec<f64>,
    pub(crate) height: Errors,
    pub(crate) thickness: Errors,
    pub(crate) radius: Errors,
    /// Errors of the radius as parts of it.
    pub(crate) radius_parts: Vec<f64>,
    pub(crate) overlap: Errors,
}

impl Comparison {
    pub(crate) fn of(border: &Border, truth: &[BorderPoint]) -> Self {
        let line: Vec<Point3<f64>> = truth.iter().map(|p| p.point).collect();
        let mut found = Self::default();
        for station in &border.stations {
            let (distance, nearest) = off_line(&line, &station.point);
            let truth = &truth[nearest];
            found.line_mm.push(distance);
            let rolled = truth.border_radius_mm.filter(|r| (0.8..=3.0).contains(r));
            let pairs: [(&Reading, Option<f64>, &mut Errors); 4] = [
                (
                    &station.flange_height,
                    truth.flange_height_mm,
                    &mut found.height,
                ),
                (
                    &station.flange_thickness,
                    truth.flange_thickness_mm,
                    &mut found.thickness,
                ),
                (&station.border_radius, rolled, &mut found.radius),
                (&station.overlap, Some(truth.overlap_mm), &mut found.overlap),
            ];
            for (reading, truth, errors) in pairs {
                if let (Ok(measured), Some(truth)) = (reading, truth) {
                    errors.add(*measured, truth);
                }
            }
            if let (Ok(measured), Some(truth)) = (station.border_radius, rolled) {
                found.radius_parts.push((measured.mm / truth - 1.0).abs());
            }
        }
        found
    }

    pub(crate) fn merged(mut self, other: Self) -> Self {
        self.line_mm.extend(other.line_mm);
        self.radius_parts.extend(other.radius_parts);
        Self {
            line_mm: self.line_mm,
            radius_parts: self.radius_parts,
            height: self.height.merged(other.height),
            thickness: self.thickness.merged(other.thickness),
            radius: self.radius.merged(other.radius),
            overlap: self.overlap.merged(other.overlap),
        }
    }
}

pub(crate) fn percentages(shares: &[f64]) -> String {
    let percent: Vec<String> =
        (shares.iter().map(|share| format!("{:.0}", 100.0 * share))).collect();
    percent.join(", ") + " %"
}

pub(crate) fn merged(parts: impl Iterator<Item = Comparison>) -> Comparison {
    parts.fold(Comparison::default(), Comparison::merged)
}
