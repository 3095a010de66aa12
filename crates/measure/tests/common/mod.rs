//! What several of the tests here share.

#![allow(dead_code, reason = "not every test file uses all of it")]

use measure::MeasureSettings;
use phantom::Arch;

/// Both jaws.
pub const ARCHES: [Arch; 2] = [Arch::Maxillary, Arch::Mandibular];

/// Levels as the default protocol has them, no stops declared.
pub fn settings() -> MeasureSettings {
    MeasureSettings {
        show_through_mm: 0.2,
        thin_cover_mm: 1.0,
        least_area_mm2: 1.0,
        stops: Vec::new(),
        stop_radius_mm: 2.0,
        flange_depth_mm: 3.0,
        tray_thickness: None,
        tray_colour: None,
        marks: Vec::new(),
    }
}

/// The value below which a part of the values lie.
pub fn quantile(values: &mut [f64], part: f64) -> f64 {
    values.sort_by(f64::total_cmp);
    values[((values.len() - 1) as f64 * part) as usize]
}

/// How many impressions an arch are looked at: as `ARCHPROOF_SEEDS` says, which
/// takes long, or else as few as told.
pub fn seeds(usual: u64) -> u64 {
    std::env::var("ARCHPROOF_SEEDS")
        .ok()
        .and_then(|count| count.parse().ok())
        .unwrap_or(usual)
}
