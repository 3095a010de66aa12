//! Pure geometry of an impression: no file is read here, nothing printed, and
//! no acceptance limit known.
//!
//! [`measure`] takes an impression scan (and the scan of the empty tray) and
//! gives an [`ImpressionMeasurement`]: plain data, lengths in mm. Points are in
//! the impression's own scan coordinates (mm) unless a name says otherwise.

mod figures;

pub use figures::*;
