//! Voids, nodules and folds, asked of many mouths.

promises::ask!(Many, tissue:
    voids_and_nodules_are_found_and_none_is_invented,
    folds_are_found_and_told_from_rugae,
);
promises::ask!(Many, coarse_voids: voids_that_a_coarse_scan_claims_to_show_are_found);
