//! What several checks share: none of these is a check.

pub(super) mod case;
pub(super) mod defects;
pub(super) mod dips;
pub(super) mod figures;
pub(super) mod landmarks;
pub(super) mod overlap;
pub(super) mod relief;
pub(super) mod spots;
pub(super) mod stations;
