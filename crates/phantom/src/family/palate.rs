//! The fine relief of an upper member.

use super::ranges::{FOVEA, FOVEA_TO_SEAL, PAPILLA, RUGAE, SEAL_BEAD, TUBEROSITY};
use crate::design::{Mark, Scatter};
use crate::maxilla::fovea;
use crate::mouth::{Mouth, Relief};
use nalgebra::Point2;
use rand::{Rng, RngExt};

/// Papilla, rugae, raphe, torus, foveae, seal and tuberosities, and where papilla
/// and foveae are.
pub(crate) fn reliefs(
    rng: &mut impl Rng,
    mouth: &Mouth,
    slope_out: f64,
    torus: Option<f64>,
    seal: [f64; 2],
) -> (Vec<Relief>, Vec<Mark>) {
    let papilla = mouth.plan(
        Scatter::around(rng, 1.0),
        -slope_out - rng.random_range(0.8..2.0),
    );
    let mut reliefs = vec![
        Relief::Bell {
            at: papilla,
            widths: [rng.random_range(1.0..1.7), rng.random_range(1.5..2.6)],
            height: -PAPILLA.draw(rng),
        },
        Relief::Midline {
            span: [seal[0] + 2.0, papilla.y - 3.0],
            width: rng.random_range(0.7..1.1),
            height: -rng.random_range(0.05..0.3),
        },
    ];
    reliefs.extend(torus.map(|height| Relief::Pad {
        at: Point2::new(Scatter::around(rng, 0.8), rng.random_range(-2.0..5.0)),
        half_axes: [rng.random_range(4.0..6.5), rng.random_range(7.0..11.0)],
        height: -height,
    }));
    if rng.random_bool(0.5) {
        reliefs.push(Relief::Arc {
            middle: seal,
            aside: mouth.arch.half_width() - 4.0,
            width: rng.random_range(1.0..1.8),
            height: SEAL_BEAD.draw(rng),
        });
    }
    for side in [-1.0, 1.0] {
        reliefs.extend(rugae(rng, side, papilla.y));
        let notch = mouth.features.posterior[usize::from(side > 0.0)];
        reliefs.push(Relief::Pad {
            at: mouth.plan(notch - side * rng.random_range(8.0..11.0), 0.3),
            half_axes: [rng.random_range(4.0..5.5), rng.random_range(5.0..7.0)],
            height: -TUBEROSITY.draw(rng),
        });
    }
    let mut marks = vec![Mark {
        name: "incisive papilla",
        at: papilla,
        paired: false,
    }];
    // Foveae cannot be found in one mouth of five.
    if rng.random_range(0.0..1.0) > 0.2 {
        let y = seal[0] + FOVEA_TO_SEAL.draw(rng);
        let y = y.max(mouth.back(0.0) + 1.4);
        for side in [-1.0, 1.0] {
            let at = Point2::new(side * rng.random_range(1.4..2.2), y);
            let (mark, relief) = fovea(at, FOVEA.draw(rng));
            marks.push(mark);
            reliefs.push(relief);
        }
    }
    (reliefs, marks)
}

fn rugae(rng: &mut impl Rng, side: f64, papilla_y: f64) -> Vec<Relief> {
    let depth = RUGAE.draw(rng);
    let mut y = papilla_y - rng.random_range(2.5..4.0);
    let mut folds = Vec::new();
    for _ in 0..rng.random_range(2..6) {
        folds.push(Relief::Fold {
            side,
            from: [y, rng.random_range(-0.1..0.25)],
            span: [rng.random_range(1.5..2.5), rng.random_range(7.0..12.0)],
            width: rng.random_range(0.6..1.0),
            height: -depth * rng.random_range(0.7..1.0),
        });
        y -= rng.random_range(2.6..4.0);
    }
    folds
}
