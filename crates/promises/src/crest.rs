//! The crest line beside the formula.

use crate::Population;
use fixtures::quantile;
use measure::{MeasureSettings, Measuring};
use nalgebra::Point3;
use phantom::{Options, Phantom};

/// Distance from a line, and whether its nearest place is none of its ends.
fn off_line(line: &[Point3<f64>], place: &Point3<f64>) -> (f64, bool) {
    let last = line.len().saturating_sub(2);
    line.windows(2)
        .enumerate()
        .map(|(i, pair)| {
            let step = pair[1] - pair[0];
            let share = (place - pair[0]).dot(&step) / step.norm_squared().max(f64::MIN_POSITIVE);
            let beside = !(i == 0 && share < 0.0 || i == last && share > 1.0);
            let nearest = pair[0] + step * share.clamp(0.0, 1.0);
            ((place - nearest).norm(), beside)
        })
        .min_by(|a, b| a.0.total_cmp(&b.0))
        .expect("a line has points")
}

/// Greatest turn between steps of 2 mm, degrees, away from the ends.
fn sharpest_turn_deg(line: &[Point3<f64>]) -> f64 {
    const STEP: usize = 4;
    const ENDS: usize = 16;
    (ENDS..line.len().saturating_sub(ENDS))
        .map(|i| {
            let (before, after) = (line[i] - line[i - STEP], line[i + STEP] - line[i]);
            before.angle(&after).to_degrees()
        })
        .fold(0.0, f64::max)
}

/// Crest lines of sound impressions, edges 0.5 mm, noise 0.02 mm.
pub fn is_smooth_true_and_reaches_its_ends(population: Population) {
    for (arch, promise) in population.asked_of_each_jaw("crest-line") {
        let outcomes: Vec<(Vec<f64>, f64, f64)> = promise.rows(population.seeds(0, 4), |&seed| {
            let phantom = Phantom::new(&Options {
                arch,
                seed,
                edge_mm: 0.5,
                tray_edge_mm: 2.5,
                noise_sd_mm: 0.02,
                handle: seed % 3 != 0,
                ..Options::default()
            });
            let settings = MeasureSettings::default();
            let measuring = Measuring::new(&phantom.impression, None, &settings);
            let border = measuring.border().expect("an impression");
            let line = &border.expect("a border").crest_line;
            let truth = &phantom.truth.crest_line;
            let off: Vec<f64> = (line.iter().map(|p| off_line(truth, p)))
                .filter(|(_, beside)| *beside)
                .map(|(off, _)| off)
                .collect();
            // How far the truth's ends lie from the line.
            let ends = [truth[0], truth[truth.len() - 1]];
            let short = ends.iter().map(|end| off_line(line, end).0);
            (off, short.fold(0.0, f64::max), sharpest_turn_deg(line))
        });
        let mut off: Vec<f64> = outcomes.iter().flat_map(|o| o.0.clone()).collect();
        let short = outcomes.iter().map(|o| o.1).fold(0.0, f64::max);
        let turn = outcomes.iter().map(|o| o.2).fold(0.0, f64::max);
        let (middle, most) = (quantile(&mut off, 0.5), quantile(&mut off, 0.95));
        promise.figure(
            "edges 0.5 mm: off, median and 95th percentile; ends of the truth off; sharpest turn in 2 mm",
            "95 %: 0.4 mm; 3 mm; 25°",
            format!("{middle:.2}, {most:.2} mm; {short:.1} mm; {turn:.0}°"),
        );
        assert!(most <= 0.4, "{arch:?}");
        assert!(short <= 3.0, "{arch:?}");
        assert!(turn <= 25.0, "{arch:?}");
    }
}
