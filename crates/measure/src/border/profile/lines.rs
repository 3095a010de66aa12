//! Lines of a section: their steps and lengths, and curves fitted to them.

use geometry::section::SectionPoint;

/// Even steps along a profile for fits, mm.
pub(super) const EVEN_MM: f64 = 0.1;

/// Points at even steps along a line from its start, for at most `reach_mm`.
pub(super) fn evenly(line: &[SectionPoint], reach_mm: f64) -> Vec<SectionPoint> {
    let Some(&first) = line.first() else {
        return Vec::new();
    };
    let mut out = vec![first];
    let mut left = EVEN_MM;
    let most = (reach_mm / EVEN_MM).round() as usize;
    for pair in line.windows(2) {
        let length = distance(pair[0], pair[1]);
        let mut at = left;
        while at <= length {
            if out.len() > most {
                return out;
            }
            let share = at / length;
            out.push([
                pair[0][0] + share * (pair[1][0] - pair[0][0]),
                pair[0][1] + share * (pair[1][1] - pair[0][1]),
            ]);
            at += EVEN_MM;
        }
        left = at - length;
    }
    out
}

pub(super) fn length(points: &[SectionPoint]) -> f64 {
    points.windows(2).map(|p| distance(p[0], p[1])).sum()
}

pub(super) fn distance(a: SectionPoint, b: SectionPoint) -> f64 {
    (a[0] - b[0]).hypot(a[1] - b[1])
}

/// Coefficients of a + bx + cx² by least squares.
pub(super) fn parabola(points: &[[f64; 2]]) -> Option<[f64; 3]> {
    if points.len() < 4 {
        return None;
    }
    let (mut normal, mut right) = (nalgebra::Matrix3::zeros(), nalgebra::Vector3::zeros());
    for [x, y] in points {
        let row = nalgebra::Vector3::new(1.0, *x, x * x);
        normal += row * row.transpose();
        right += row * *y;
    }
    let solved = normal.cholesky()?.solve(&right);
    Some([solved.x, solved.y, solved.z])
}

/// Coefficients of a + bx by least squares.
pub(super) fn straight(points: &[[f64; 2]]) -> Option<[f64; 2]> {
    if points.len() < 2 {
        return None;
    }
    let (mut normal, mut right) = (nalgebra::Matrix2::zeros(), nalgebra::Vector2::zeros());
    for [x, y] in points {
        let row = nalgebra::Vector2::new(1.0, *x);
        normal += row * row.transpose();
        right += row * *y;
    }
    let solved = normal.cholesky()?.solve(&right);
    Some([solved.x, solved.y])
}
