//! Borders, their change under a wash, and crest lines, asked of many mouths.

promises::ask!(Many, border:
    heights_thicknesses_and_radii_are_true,
    the_border_of_a_ragged_tissue_side_is_followed,
    short_borders_are_found_and_told_from_cut_scans,
    sound_borders_of_coarse_scans_are_neither_short_nor_cut,
    knife_edges_are_found,
);
promises::ask!(Many, border_change: a_lowered_stretch_is_seen_and_nothing_else_moves);
promises::ask!(Many, crest: is_smooth_true_and_reaches_its_ends);
