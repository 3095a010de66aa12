//! Washes and the places under them, asked of many mouths.

promises::ask!(Many, wash: a_planted_wash_is_recovered_and_its_places_are_told);
promises::ask!(Many, wash_places: are_told_with_its_tray_and_through_the_first_pass);
