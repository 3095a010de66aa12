//! What one section shows: border point, crest point, thickness, roll.

mod crest;
mod faces;
mod find;
mod lines;
mod roll;
mod thickness;
mod top;

pub(super) use find::Profile;
pub(super) use top::Search;
