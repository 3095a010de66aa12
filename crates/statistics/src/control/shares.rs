//! The p chart: shares counted in groups of unequal size.

/// Limits of a counted share.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShareLimits {
    /// Lower control limit, 0 to 1.
    pub lower: f64,
    /// Upper control limit, 0 to 1.
    pub upper: f64,
}

/// The limits of a share counted on `of` things, three standard deviations from the share
/// of the process (0 to 1), by the normal distribution (p chart; ISO 7870-2). They hold
/// where about five or more of each kind are expected. `None` of no things.
#[must_use]
pub fn share_limits(process: f64, of: u64) -> Option<ShareLimits> {
    if of == 0 {
        return None;
    }
    let reach = 3.0 * (process * (1.0 - process) / of as f64).sqrt();
    Some(ShareLimits {
        lower: (process - reach).max(0.0),
        upper: (process + reach).min(1.0),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The Handbook for Quality Management, table 9.6: bruised peaches in shipments of 250
    /// and 500, 1544 of 8000 in all (read). The limits printed for them, 0.118 to 0.268 and
    /// 0.140 to 0.246, are from memory.
    #[test]
    fn limits_of_unequal_shipments_equal_those_printed() {
        let process = 1544.0 / 8000.0;
        assert!((process - 0.193_f64).abs() < 1e-12);
        for (of, printed) in [(250, [0.118, 0.268]), (500, [0.140, 0.246])] {
            let found = share_limits(process, of).unwrap();
            for (found, printed) in [found.lower, found.upper].into_iter().zip(printed) {
                assert!((found - printed).abs() < 6e-4, "{found} {printed}");
            }
        }
    }

    /// Montgomery, Introduction to Statistical Quality Control, purchase orders in weekly
    /// groups of 80 to 120, from memory: 234 of 2450; of 25 groups, 20 of 110 alone lies
    /// outside. The sums are known to be right, since they give the printed share 0.096.
    #[test]
    fn the_week_that_lies_outside_is_found() {
        let of = [
            100, 80, 80, 100, 110, 110, 100, 100, 90, 90, 110, 120, 120, 120, 110, 80, 80, 80, 90,
            100, 100, 100, 100, 90, 90,
        ];
        let part = [
            12, 8, 6, 9, 10, 12, 11, 16, 10, 6, 20, 15, 9, 8, 6, 8, 10, 7, 5, 8, 5, 8, 10, 6, 9,
        ];
        let all: u64 = of.iter().sum();
        let process = f64::from(part.iter().sum::<u32>()) / all as f64;
        assert_eq!((all, (process * 1e3).round()), (2450, 96.0));
        let is_out = |(of, part): (u64, u32)| {
            let limits = share_limits(process, of).unwrap();
            let share = f64::from(part) / of as f64;
            share < limits.lower || share > limits.upper
        };
        let out: Vec<bool> = of.into_iter().zip(part).map(is_out).collect();
        assert!(
            out.iter()
                .enumerate()
                .all(|(week, &out)| out == (week == 10))
        );
    }

    #[test]
    fn limits_stay_shares() {
        let found = share_limits(0.01, 5).unwrap();
        assert_eq!(found.lower, 0.0);
        assert_eq!(share_limits(0.99, 5).unwrap().upper, 1.0);
        assert_eq!(share_limits(0.5, 0), None);
    }
}
