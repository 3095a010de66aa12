//! Frames, asked of many mouths.

promises::ask!(Many, frame: of_both_sides, of_the_tissue_side);
