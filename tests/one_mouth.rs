//! One mouth of each jaw is asked for every promise, at its full tolerance, and
//! for what single phantoms show. Populations are asked in `crates/promises`.

mod frame {
    promises::ask!(OneMouth, frame: of_both_sides, of_the_tissue_side);
}

mod registration {
    promises::ask!(OneMouth, registration:
        without_noise,
        with_noise,
        another_mouths_tray_is_refused,
    );
}

mod shelf {
    promises::ask!(OneMouth, shelf: the_tray_is_found_on_the_shelf);
    promises::ask!(OneMouth, shelf_fit: the_size_that_fits_is_taken);
}

mod real_surfaces {
    promises::ask!(OneMouth, real_surfaces: a_part_in_any_pose_is_laid_back_on_the_whole);
    promises::ask!(real_surfaces:
        a_copy_moved_out_by_1_5_mm_reads_1_5_mm,
        none_of_them_is_taken_for_an_impression,
    );
}

mod cover {
    promises::ask!(OneMouth, cover: by_the_trays_scan);
    promises::ask!(OneMouth, bent_tray: cover_is_that_of_the_tray_as_it_lay);
    promises::ask!(OneMouth, on_tray: places_of_relief_are_found_on_the_tray);
    promises::ask!(OneMouth, outer_excess: material_on_the_outer_faces_is_measured);
    promises::ask!(OneMouth, relief: relief_is_measured_on_the_tray);
    promises::ask!(OneMouth, transit:
        damage_in_transit_is_found_and_told_from_a_change_of_the_arch,
        a_scan_of_another_impression_is_refused,
    );
    promises::ask!(OneMouth, part_of_a_tray: no_cover_where_no_tray_was_scanned);
    promises::ask!(OneMouth, parts: an_impression_in_parts_measures_as_the_whole);
    promises::ask!(parts: parts_that_do_not_belong_together_are_refused);
    promises::ask!(OneMouth, pieces: the_joint_of_a_tray_in_pieces_is_measured);
    promises::ask!(OneMouth, scanner_error: cover_with_the_scanners_own_term);
}

mod spots {
    promises::ask!(OneMouth, bare_edges:
        bare_edges_are_found_and_called_so,
        no_edge_is_invented_in_trays_with_holes_and_rims,
    );
    promises::ask!(OneMouth, strips_beside:
        strips_at_the_foot_of_a_stop_are_found,
        strips_along_a_joint_are_found,
    );
    promises::ask!(OneMouth, spots: planted_are_found_and_none_is_invented);
}

mod tray {
    promises::ask!(OneMouth, tray:
        a_tray_that_stood_askew_is_found_out,
        cover_by_a_stated_thickness_agrees_with_the_formula,
    );
    promises::ask!(tray: without_a_stated_thickness_nothing_is_taken_for_cover);
}

mod border {
    promises::ask!(OneMouth, border:
        heights_thicknesses_and_radii_are_true,
        the_border_of_a_ragged_tissue_side_is_followed,
        short_borders_are_found_and_told_from_cut_scans,
        sound_borders_of_coarse_scans_are_neither_short_nor_cut,
        knife_edges_are_found,
    );
}

mod border_change {
    promises::ask!(OneMouth, border_change: a_lowered_stretch_is_seen_and_nothing_else_moves);
    promises::ask!(border_change: another_mouth_does_not_fit);
}

mod crest {
    promises::ask!(OneMouth, crest: is_smooth_true_and_reaches_its_ends);
}

mod family {
    promises::ask!(OneMouth, family: sound_members_are_judged);
    promises::ask!(OneMouth, family_faults: planted_faults_are_found);
    promises::ask!(OneMouth, family_figures: borders_and_cover_are_true);
}

mod tissue {
    promises::ask!(OneMouth, tissue:
        voids_and_nodules_are_found_and_none_is_invented,
        folds_are_found_and_told_from_rugae,
    );
    promises::ask!(tissue: holes_are_found_with_their_area);
    promises::ask!(OneMouth, coarse_voids: voids_that_a_coarse_scan_claims_to_show_are_found);
}

mod landmarks {
    promises::ask!(OneMouth, landmarks: are_found_on_their_sides);
    promises::ask!(landmarks:
        a_trough_that_does_not_close_is_told_from_one_that_does,
        marks_take_precedence_and_are_looked_at_only_for_surface,
    );
}

mod landmarks_lost {
    promises::ask!(OneMouth, landmarks_lost:
        all_of_sound_impressions_are_recorded,
        those_that_are_gone_are_never_recorded,
    );
}

mod wash {
    promises::ask!(OneMouth, wash: a_planted_wash_is_recovered_and_its_places_are_told);
}

mod wash_places {
    promises::ask!(OneMouth, wash_places: are_told_with_its_tray_and_through_the_first_pass);
}

mod jaws {
    promises::ask!(OneMouth, jaws:
        the_planted_space_is_found_at_every_station,
        a_record_of_front_parts_gives_the_space_where_it_shows_the_jaws,
    );
    promises::ask!(jaws: another_mouths_record_is_refused);
    promises::ask!(jaws: front_parts_of_another_mouth_are_refused);
}

mod intake {
    promises::ask!(OneMouth, intake:
        no_sound_impression_is_questioned_and_every_cast_is_named,
        no_impression_with_many_faults_is_taken_for_something_else,
        a_mirrored_second_pass_is_told_and_a_true_one_is_not,
        nothing_else_is_judged_as_an_impression,
    );
}

mod colour {
    promises::ask!(OneMouth, colour:
        bare_tray_is_found_by_its_colour_and_none_is_invented,
        bare_tray_is_found_by_its_colour_beside_a_stated_thickness_too,
    );
    promises::ask!(colour:
        colour_that_contradicts_the_cover_map_is_a_place_of_its_own,
        a_tray_of_the_materials_colour_is_not_guessed,
        a_scan_without_colours_tells_nothing_of_them,
    );
}
