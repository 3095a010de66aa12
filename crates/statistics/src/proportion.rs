//! How well a share is known that was counted on a sample.

/// Quantile of the normal distribution that leaves 2.5 % above it.
const Z_95: f64 = 1.959_963_984_540_054;

/// The 95 % interval of a share of which `part` were seen in `of`: the score interval
/// (Wilson 1927), without continuity correction. `None` where nothing was counted, or more
/// than all.
#[must_use]
pub fn wilson(part: u64, of: u64) -> Option<[f64; 2]> {
    if of == 0 || part > of {
        return None;
    }
    let (n, share) = (of as f64, part as f64 / of as f64);
    let z2 = Z_95 * Z_95;
    let centre = (share + z2 / (2.0 * n)) / (1.0 + z2 / n);
    let reach = Z_95 / (1.0 + z2 / n) * (share * (1.0 - share) / n + z2 / (4.0 * n * n)).sqrt();
    // None of all leaves 0 in the interval, and all of them 1, whatever is lost in rounding.
    let low = if part == 0 { 0.0 } else { centre - reach };
    let high = if part == of { 1.0 } else { centre + reach };
    Some([low.max(0.0), high.min(1.0)])
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Newcombe, Statistics in Medicine 17 (1998) 857-872, table I, method 3 (the score
    /// interval): four examples, printed to four places.
    #[test]
    fn intervals_equal_those_printed() {
        for (part, of, printed) in [
            (81, 263, [0.2553, 0.3662]),
            (15, 148, [0.0624, 0.1605]),
            (0, 20, [0.0, 0.1611]),
            (1, 29, [0.0061, 0.1718]),
        ] {
            let found = wilson(part, of).unwrap();
            for (found, printed) in found.into_iter().zip(printed) {
                assert!((found - printed).abs() < 5.1e-5, "{found} {printed}");
            }
        }
    }

    #[test]
    fn what_is_exact_stays_in_the_interval() {
        assert_eq!(wilson(0, 7).unwrap()[0], 0.0);
        assert_eq!(wilson(7, 7).unwrap()[1], 1.0);
        assert_eq!(wilson(0, 0), None);
        assert_eq!(wilson(3, 2), None);
    }
}
