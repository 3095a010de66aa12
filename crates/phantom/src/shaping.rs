//! Small functions from which solids are joined. A solid is a function that is
//! negative inside, positive outside, and about as large as the distance to
//! its surface.

/// Union of two solids whose inner corner is filled over a width of about `k` mm.
pub(crate) fn joined(a: f64, b: f64, k: f64) -> f64 {
    let overlap = (k - (a - b).abs()).max(0.0);
    a.min(b) - overlap * overlap / (4.0 * k)
}

/// Intersection of two solids whose outer corner is rounded over about `k` mm.
pub(crate) fn common(a: f64, b: f64, k: f64) -> f64 {
    -joined(-a, -b, k)
}

/// Rises from 0 at `from` to 1 at `to` with zero slope at both.
pub(crate) fn rise(x: f64, from: f64, to: f64) -> f64 {
    let u = ((x - from) / (to - from)).clamp(0.0, 1.0);
    u * u * (3.0 - 2.0 * u)
}

/// A bell of height 1 around 0, `x` in standard widths.
pub(crate) fn bell(x: f64) -> f64 {
    (-0.5 * x * x).exp()
}

/// Length of a vector in a plane. `f64::hypot` guards against overflow, which
/// lengths of a mouth never reach, and takes several times as long.
pub(crate) fn norm(x: f64, y: f64) -> f64 {
    (x * x + y * y).sqrt()
}

/// Two circles with their outer tangents: a section through a flange that
/// tapers toward its border. Given by the upper and the lower centre (r, z)
/// and radius, gives the distance to a point, negative inside.
pub(crate) fn tapered_capsule(p: [f64; 2], upper: [f64; 3], lower: [f64; 3]) -> f64 {
    let axis = [upper[0] - lower[0], upper[1] - lower[1]];
    let length = norm(axis[0], axis[1]).max(1e-9);
    let unit = [axis[0] / length, axis[1] / length];
    let offset = [p[0] - lower[0], p[1] - lower[1]];
    let along = offset[0] * unit[0] + offset[1] * unit[1];
    let aside = (offset[0] * unit[1] - offset[1] * unit[0]).abs();
    let sin = ((lower[2] - upper[2]) / length).clamp(-0.99, 0.99);
    let cos = (1.0 - sin * sin).sqrt();
    // Along the tangent, measured from the lower circle's contact point.
    let reach = along * cos - aside * sin;
    if reach < 0.0 {
        norm(along, aside) - lower[2]
    } else if reach > length * cos {
        norm(along - length, aside) - upper[2]
    } else {
        aside * cos + along * sin - lower[2]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_capsule_of_even_width_is_a_segment_grown_by_its_radius() {
        let capsule = |p| tapered_capsule(p, [0.0, 8.0, 1.5], [0.0, 0.0, 1.5]);
        assert!((capsule([4.0, 3.0]) - 2.5).abs() < 1e-12);
        assert!((capsule([0.0, 10.0]) - 0.5).abs() < 1e-12);
        assert!((capsule([3.0, -4.0]) - 3.5).abs() < 1e-12);
    }

    #[test]
    fn a_tapered_capsule_touches_both_circles_along_one_tangent() {
        let (upper, lower) = ([0.0, 10.0, 1.0], [0.0, 0.0, 3.0]);
        let (sin, cos) = (0.2f64, 0.96f64.sqrt());
        for share in [0.0, 0.3, 0.7, 1.0] {
            let radius = 3.0 - 2.0 * share;
            let on = [radius * cos, 10.0 * share + radius * sin];
            assert!(tapered_capsule(on, upper, lower).abs() < 1e-12, "{share}");
            let off = [on[0] + 0.5 * cos, on[1] + 0.5 * sin];
            assert!(
                (tapered_capsule(off, upper, lower) - 0.5).abs() < 1e-12,
                "{share}"
            );
        }
    }
}
