//! Statistics of measuring, as plain functions over plain numbers: no file, no
//! unit and no limit is known here.
//!
//! ```
//! use statistics::{mean, pooled_sd, quantile, sd};
//!
//! let readings = [10.1, 9.9, 10.0, 10.2, 9.8];
//! assert_eq!(mean(&readings), Some(10.0));
//! assert_eq!(quantile(&readings, 0.5), Some(10.0));
//! let spread = sd(&readings).unwrap_or(f64::NAN);
//! assert!((spread - 0.025_f64.sqrt()).abs() < 1e-12);
//!
//! // Two groups, each as standard deviation and degrees of freedom.
//! let (pooled, freedom) = pooled_sd(&[(3.0, 4.0), (4.0, 4.0)]).unwrap_or_default();
//! assert_eq!((pooled, freedom), (12.5_f64.sqrt(), 8.0));
//! ```

#![warn(unreachable_pub)]
#![cfg_attr(test, allow(clippy::unwrap_used))]

pub mod agreement;
pub mod control;
mod critical_range;
pub mod freedom;
pub mod gauge;
pub mod proportion;
pub mod ranges;
pub mod repeatability;
mod spread;
mod upper_bound;

pub use critical_range::critical_range_factor;
pub use spread::{mean, pooled_sd, quantile, sd};
