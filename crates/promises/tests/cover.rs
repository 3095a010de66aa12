//! Cover, show-through and the seating of trays, asked of many mouths.

promises::ask!(Many, bare_edges:
    bare_edges_are_found_and_called_so,
    no_edge_is_invented_in_trays_with_holes_and_rims,
);
promises::ask!(Many, strips_beside:
    strips_at_the_foot_of_a_stop_are_found,
    strips_along_a_joint_are_found,
);
promises::ask!(Many, bent_tray: cover_is_that_of_the_tray_as_it_lay);
promises::ask!(Many, on_tray: places_of_relief_are_found_on_the_tray);
promises::ask!(Many, transit:
    damage_in_transit_is_found_and_told_from_a_change_of_the_arch,
    a_scan_of_another_impression_is_refused,
);
promises::ask!(Many, outer_excess: material_on_the_outer_faces_is_measured);
promises::ask!(Many, relief: relief_is_measured_on_the_tray);
promises::ask!(Many, part_of_a_tray: no_cover_where_no_tray_was_scanned);
promises::ask!(Many, cover: by_the_trays_scan);
promises::ask!(Many, scanner_error: cover_with_the_scanners_own_term);
promises::ask!(Many, spots: planted_are_found_and_none_is_invented);
promises::ask!(Many, tray:
    a_tray_that_stood_askew_is_found_out,
    cover_by_a_stated_thickness_agrees_with_the_formula,
);
promises::ask!(Many, parts: an_impression_in_parts_measures_as_the_whole);
promises::ask!(Many, pieces: the_joint_of_a_tray_in_pieces_is_measured);
