//! The measures of the mouth, and of trays and material in it, that measuring
//! relies on, grouped by part of the mouth.
//!
//! Names end with the unit: `_MM`, `_MM2`, `_PART` for a share of 1, `_FACTOR`.
//! Every entry gives its source: the published one, with its code in the list of
//! facts; "common practice, no source"; or "own choice, no source" for a limit
//! that this program sets. "From memory" marks a number or a placing that was not
//! looked up. Numbers of the method, such as cells, steps and tolerances, are
//! where they are used.

use std::ops::RangeInclusive;

// The whole impression.

/// Longest side of an impression in its tray, handle included: shortest and longest
/// plausible (common practice, no source).
pub(crate) const PLAUSIBLE_LENGTH_MM: RangeInclusive<f64> = 35.0..=160.0;
/// The ridge lies no farther than this from the middle of the arch (own choice, no
/// source).
pub(crate) const RIDGE_FROM_ARCH_CENTRE_MM: f64 = 70.0;
/// Places nearer to the midline than this have no side (common practice, no
/// source).
pub(crate) const NO_SIDE_WITHIN_MM: f64 = 1.0;

// The residual ridge, and the trough that it leaves.

/// Half the widest trough of a ridge: the channel of a denture-bearing ridge is 8
/// to 14 mm wide (common practice, no source).
pub(crate) const TROUGH_HALF_WIDTH_MM: f64 = 7.0;
/// The same under a shallow palate, which rises 1.5 mm from the crest only this far in (own
/// choice, no source).
pub(crate) const WIDE_TROUGH_HALF_WIDTH_MM: f64 = 10.0;
/// Least depth of a ridge's trough (own choice, no source).
pub(crate) const TROUGH_LEAST_DEPTH_MM: f32 = 1.5;
/// Greatest depth of a ridge's trough: a deeper one is a step of the tray (own
/// choice, no source).
pub(crate) const TROUGH_GREATEST_DEPTH_MM: f32 = 8.0;
/// Half width of the ridge, from its crest to where a flange or the palate begins
/// (common practice, no source).
pub(crate) const RIDGE_HALF_WIDTH_MM: f64 = 4.0;
/// Width of the palatal slope of an upper ridge, from its crest to the vault (own
/// choice, no source).
pub(crate) const RIDGE_PALATAL_SLOPE_MM: f64 = 6.0;
/// Across the crest, upper and lower ridge are no farther apart than this where
/// they stand over each other (own choice, no source).
pub(crate) const RIDGES_OPPOSED_WITHIN_MM: f64 = 15.0;
/// At a distal end that the mucosa closes, the trough's floor rises by at least
/// this (own choice, no source).
pub(crate) const TROUGH_END_LEAST_RISE_MM: f64 = 1.2;

// Flanges and their borders.

/// The labial flange reaches to this part of a limb, counted from the midline
/// (common practice, no source).
pub(crate) const LABIAL_FLANGE_PART: f64 = 0.33;
/// From this part of a limb on lie tuberosity, retromolar pad and the distal parts
/// of the flanges (common practice, no source).
pub(crate) const DISTAL_PART: f64 = 0.85;
/// The labial, buccal or lingual border is the highest place within this of the
/// crest, for parting tissue from outer surface (common practice, no source).
pub(crate) const FLANGE_TOP_WITHIN_MM: f64 = 14.0;
/// The labial or buccal border lies within this of the crest, for following it all
/// the way round (common practice, no source).
pub(crate) const OUTER_BORDER_WITHIN_MM: f64 = 17.0;
/// The lingual border lies within this of the crest, for following it: beyond is
/// the tongue's space (own choice, no source).
pub(crate) const LINGUAL_BORDER_WITHIN_MM: f64 = 14.0;
/// In plan, a place on a flange lies no farther than this from its border: flanges
/// lean by less (own choice, no source).
pub(crate) const FLANGE_LEANS_WITHIN_MM: f64 = 12.0;
/// The retromylohyoid part of the lingual border begins at this part of its length
/// from front to back (common practice, no source; the glossary, LM-17, from
/// memory, names the parts).
pub(crate) const RETROMYLOHYOID_BORDER_PART: f64 = 0.6;

// Frena, and other dips of the border.

/// Shallower dips are a border's own waves (own choice, no source).
pub(crate) const DIP_LEAST_DEPTH_MM: f64 = 0.8;
/// Labial and lingual frena lie within this of the midline (common practice, no
/// source; the glossary, LM-09, from memory, puts the upper labial one at the
/// midline).
pub(crate) const MIDLINE_FRENA_WITHIN_MM: f64 = 8.0;
/// Buccal frena lie in this part of the outer border, from the midline to its
/// distal end (common practice, no source; the glossary, LM-10, from memory, puts
/// them near the premolars).
pub(crate) const BUCCAL_FRENA_PART: RangeInclusive<f64> = 0.2..=0.75;
/// The likeliest place of a buccal frenum in that part (own choice, no source).
pub(crate) const BUCCAL_FRENUM_USUAL_PART: f64 = 0.42;
/// A frenum's notch, at half its depth, is no wider than this (common practice, no
/// source; teaching notes, BORDER-07, say only that buccal ones are broader than
/// labial ones).
pub(crate) const FRENUM_NOTCH_USUAL_WIDTH_MM: f64 = 13.0;
/// A broad frenum in a low of the border's own waves is no wider than this (own
/// choice, no source).
pub(crate) const FRENUM_NOTCH_GREATEST_WIDTH_MM: f64 = 18.0;
/// A notch deeper than this is unusual (common practice, no source).
pub(crate) const FRENUM_NOTCH_GREATEST_DEPTH_MM: f64 = 6.0;
/// A notch this narrow, at half its depth, is as usual when blunt as when pointed
/// (own choice, no source).
pub(crate) const NOTCH_NARROW_WIDTH_MM: f64 = 5.0;
/// A pointed notch no wider than this, at half its depth, is usual (own choice, no
/// source).
pub(crate) const POINTED_NOTCH_USUAL_WIDTH_MM: f64 = 8.0;
/// Each of two bands of a frenum leaves a notch no wider than this (common practice,
/// no source).
pub(crate) const FRENUM_BAND_GREATEST_WIDTH_MM: f64 = 6.5;
/// A frenum's notch with its shoulders is shorter than this along the border (own
/// choice, no source).
pub(crate) const NOTCH_WITH_SHOULDERS_MM: f64 = 18.0;

/// A stretch of border that was not moulded ends at least this steeply, mm for each
/// mm along the border; the vestibule's own course is gentler (own choice, no
/// source: waves of 2 mm over 15 to 40 mm have 0.42 at most, a step of 3 mm over 3
/// mm has 1).
pub(crate) const SHORT_STRETCH_LEAST_SLOPE: f64 = 0.65;

// Palate and posterior border.

/// Between the limbs, surface farther than this from the crest is palate: a lingual
/// flange stays nearer (common practice, no source).
pub(crate) const PALATE_FROM_CREST_MM: f64 = 9.0;
/// The impression of a palate lies no deeper below that of the crest than this (own
/// choice, no source).
pub(crate) const PALATE_BELOW_CREST_MM: f64 = 1.0;
/// Across the back, the border is that of a limb up to this far from the limb's
/// middle toward the midline (own choice, no source).
pub(crate) const BACK_OF_LIMB_WITHIN_MM: f64 = 4.0;
/// Across the back, the border is the palate's posterior edge from this far on from
/// a limb's middle toward the midline (own choice, no source).
pub(crate) const BACK_OF_PALATE_FROM_MM: f64 = 13.0;
/// The palate's posterior edge lies no farther than this before the distal ends of
/// the limbs (own choice, no source).
pub(crate) const POSTERIOR_EDGE_BEFORE_ENDS_MM: f64 = 12.0;
/// A posterior edge lies no farther than this behind the distal ends of the limbs
/// (own choice, no source).
pub(crate) const POSTERIOR_EDGE_BEHIND_ENDS_MM: f64 = 14.0;
/// Length of the posterior palatal seal from front to back: 6.22 mm at the midline
/// (Thapa, Chandra and Karki, Orthod J Nepal 2016, LM-33, abstract read).
pub(crate) const POSTERIOR_SEAL_LENGTH_MM: f64 = 6.0;

// Incisive papilla.

/// The papilla's zone reaches this far to either side of the midline (common
/// practice, no source).
pub(crate) const PAPILLA_ZONE_ASIDE_MM: f64 = 3.5;
/// The papilla's zone ends this far behind the front of the crest (common practice,
/// no source).
pub(crate) const PAPILLA_ZONE_BEHIND_FRONT_MM: f64 = 11.0;
/// The papilla's middle lies between these distances palatal to the crest (common
/// practice, no source; LM-39 to LM-41 give distances to teeth only).
pub(crate) const PAPILLA_PALATAL_OF_CREST_MM: RangeInclusive<f64> = 1.5..=8.0;
/// The papilla's middle lies within this of the midline (own choice, no source).
pub(crate) const PAPILLA_ASIDE_MM: f64 = 3.0;
/// Standard widths of the papilla's bell, across and along the midline: it is 4 to
/// 6 mm long (common practice, no source).
pub(crate) const PAPILLA_BELL_WIDTHS_MM: [f64; 2] = [1.3, 1.8];
/// A shallower hollow may be the ridge's own shape (own choice, no source).
pub(crate) const PAPILLA_LEAST_DEPTH_MM: f64 = 0.25;

// Rugae.

/// The rugae lie between these distances behind the front of the crest (common
/// practice, no source; the glossary, LM-02, from memory, names the anterior third
/// of the palate).
pub(crate) const RUGAE_BEHIND_FRONT_MM: [f64; 2] = [8.0, 20.0];
/// The rugae lie between these distances from the midline (common practice, no
/// source).
pub(crate) const RUGAE_ASIDE_MM: [f64; 2] = [3.0, 8.0];
/// Rugae are waves of at least this root mean square (own choice, no source).
pub(crate) const RUGAE_LEAST_WAVE_MM: f64 = 0.06;

// Foveae.

/// The foveae lie between these distances before the posterior edge (own choice, no
/// source; the seal is 6 mm long at the midline, LM-33 as above, and foveae lie 3
/// to 4 mm from the vibrating line: Limbu, Basnet and others, J Oral Res Rev 2019,
/// LM-30; Elmanaseer and others, Sci Rep 2024, LM-31; abstracts read).
pub(crate) const FOVEAE_BEFORE_EDGE_MM: [f64; 2] = [2.0, 12.0];
/// Each fovea lies between these distances from the midline (own choice, no
/// source).
pub(crate) const FOVEAE_ASIDE_MM: [f64; 2] = [0.75, 3.5];
/// The two foveae lie at most this far apart from front to back (own choice, no
/// source).
pub(crate) const FOVEAE_LEVEL_WITHIN_MM: f64 = 2.0;
/// Least height of the foveae's pimples in an impression (own choice, no source).
pub(crate) const FOVEAE_LEAST_HEIGHT_MM: f64 = 0.12;

// Tuberosity and hamular notch.

/// The hamular notch begins this far behind the distal end of the crest (common
/// practice, no source).
pub(crate) const HAMULAR_NOTCH_BEHIND_END_MM: f64 = 2.0;
/// The ridge that a hamular notch leaves across the trough rises by at least this
/// (own choice, no source: a notch may be poorly defined, AREA-08, abstract read).
pub(crate) const HAMULAR_RIDGE_LEAST_RISE_MM: f64 = 0.5;
/// Impressions go on behind a hamular notch by no more than this (common practice, no
/// source).
pub(crate) const HAMULAR_NOTCH_WITHIN_END_MM: f64 = 12.0;
/// A hamular notch's ridge rises by at least this part of what the trough rises to
/// in all (own choice, no source).
pub(crate) const HAMULAR_RIDGE_FIRST_PART: f64 = 0.5;
/// From its top, a hamular notch's ridge turns down within this: notches are about 2
/// mm long (textbooks, LM-46, from memory).
pub(crate) const HAMULAR_RIDGE_HALF_LENGTH_MM: f64 = 2.0;
/// Where a landmark lies is known from its fellow on the other side to this: jaws
/// are naturally asymmetric (LM-49; the value is common practice, no source).
pub(crate) const FELLOW_WITHIN_MM: f64 = 3.0;
/// A gap in a scan that is narrower hides nothing that spoils a landmark: the least void
/// that fails is as wide (MAT-14: common practice, no source), and a short border is longer.
pub(crate) const GAP_HIDES_FROM_MM: f64 = 2.0;
/// The tuberosity's area begins and ends this far before the hamular notch (common
/// practice, no source).
pub(crate) const TUBEROSITY_BEFORE_NOTCH_MM: [f64; 2] = [3.0, 12.0];
/// The posterior palatal seal lies no farther than this before the line from notch
/// to notch (common practice, no source; LM-08, from memory, puts it between the
/// notches).
pub(crate) const SEAL_BEFORE_NOTCHES_MM: f64 = 3.0;

// Buccal shelf and retromolar pad.

/// The buccal shelf begins at this part of a limb, counted from the midline (common
/// practice, no source).
pub(crate) const BUCCAL_SHELF_FROM_PART: f64 = 0.5;
/// The buccal shelf reaches this far buccally from the crest: it is 4 to 6 mm wide
/// (textbooks, LM-44, from memory).
pub(crate) const BUCCAL_SHELF_REACH_MM: f64 = 6.0;
/// The buccal shelf's middle lies at this part of the crest, from the midline to
/// its distal end (own choice, no source).
pub(crate) const BUCCAL_SHELF_MIDDLE_PART: f64 = 0.65;
/// The buccal shelf's middle lies this far buccally from the crest: half of 4 to 6
/// mm (textbooks, LM-44, from memory).
pub(crate) const BUCCAL_SHELF_MIDDLE_MM: f64 = 3.0;
/// The retromolar pad lies within this of the trough's distal end: the longest
/// pads, 11.20 mm and twice 2.51 mm (Lopez, Suazo, Cantin and Sandoval, Int J
/// Odontostomat 2008, LM-36, abstract read), and an allowance for what lies beyond
/// them.
pub(crate) const PAD_WITHIN_MM: f64 = 20.0;
/// Usual length of a retromolar pad: the mean of 11.20 mm (LM-36, as above) and
/// 8.90 mm (Naeem and others, Isra Med J 2021, LM-37, abstract read).
pub(crate) const PAD_USUAL_LENGTH_MM: f64 = 10.0;
/// How far either of the two means (LM-36, LM-37, as above) lies from it, mm.
pub(crate) const PAD_USUAL_LENGTH_WITHIN_MM: f64 = 1.2;
/// From its anterior edge a pad reaches its greatest depth within this (half of
/// the longest pads, LM-36, as above).
pub(crate) const PAD_SLOPE_MM: f64 = 10.0;
/// A pad begins where this part of its depth is reached (own choice, no source).
pub(crate) const PAD_BEGINS_PART: f64 = 0.15;
/// A shallower hollow is one of the trough's own waves and no retromolar pad (own
/// choice, no source).
pub(crate) const PAD_LEAST_DEPTH_MM: f64 = 0.3;

// Teeth and sockets, which an edentulous arch does not have.

/// Worn cusps rise at least this far over the marginal ridges between two teeth
/// (common practice, no source).
pub(crate) const TOOTH_LEAST_RISE_MM: f32 = 1.0;
/// Area of a small incisor's edge, where it is parted from its neighbours: bubbles
/// and nodules are smaller (common practice, no source).
pub(crate) const TOOTH_LEAST_AREA_MM2: f64 = 10.0;
/// Neighbouring teeth have their tops no farther apart than this: a lower first
/// molar is 11 mm long (common practice, no source). Places where the tray shows,
/// which are hollows too, lie scattered.
pub(crate) const NEXT_TOOTH_WITHIN_MM: f64 = 12.0;
/// This many bumps in a row are teeth: an edentulous ridge has fewer, mucosal
/// folds, roots and implants included (common practice, no source).
pub(crate) const TEETH_IN_A_ROW: usize = 5;

// Tray and material.

/// Usual depth of material between a tray's floor and the crest: 2 to 4 mm in a
/// stock tray (textbooks, MAT-12, from memory).
pub(crate) const USUAL_MATERIAL_MM: f64 = 3.0;
/// Greatest depth of material over a tray: a greater distance is that of a stray
/// end of material (own choice, no source).
pub(crate) const GREATEST_MATERIAL_MM: f64 = 10.0;
/// Material laps over the tray's outer face no farther than this from the border
/// (common practice, no source).
pub(crate) const MATERIAL_LAP_MM: f64 = 10.0;
/// Every wash is thinner than this (own choice, no source; washes of 1 to 2 mm are
/// accurate and of 3 mm not, on crown preparations: Nissan and others, J Oral
/// Rehabil 2002, MAT-01, abstract read).
pub(crate) const WASH_BELOW_MM: f64 = 3.0;
/// Half of the thickest wall of a tray, of 2 to 3 mm (textbooks, BORDER-14, from
/// memory): a place deeper than this is not in the wall.
pub(crate) const TRAY_HALF_WALL_MM: f64 = 1.5;
/// Radius of a tray's rim: half of a border of 2 mm (a prosthodontics clinic's
/// manual, BORDER-04).
pub(crate) const TRAY_RIM_RADIUS_MM: f64 = 1.0;
/// Least width of a tray as a part of the impression's, which overlaps it by a few
/// millimetres on either side (common practice, no source).
pub(crate) const TRAY_LEAST_WIDTH_PART: f64 = 0.8;
/// A wall thinner than this may be that of a tray or of a denture base alone: trays have
/// 2 to 3 mm (textbooks, BORDER-14, from memory).
pub(crate) const SHELL_WALL_MM: f64 = 3.5;
/// Half of such a wall is as thick as within this: trays and bases are made even, and
/// the material in a tray is not (common practice, no source).
pub(crate) const SHELL_EVEN_WITHIN_MM: f64 = 0.3;
/// From the crest to the face of a wax rim it is farther than this: rims are 18 to
/// 22 mm high with their flange (common practice, no source).
pub(crate) const RIM_LEAST_DEPTH_MM: f64 = 9.0;
