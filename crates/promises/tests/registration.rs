//! Registration of trays and of real surfaces, asked of many mouths.

promises::ask!(Many, registration: without_noise, with_noise, another_mouths_tray_is_refused);
promises::ask!(Many, real_surfaces: a_part_in_any_pose_is_laid_back_on_the_whole);
promises::ask!(Many, shelf: the_tray_is_found_on_the_shelf);
promises::ask!(Many, shelf_fit: the_size_that_fits_is_taken);
