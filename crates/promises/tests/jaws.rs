//! The space between the jaws, asked of many mouths.

promises::ask!(Many, jaws: the_planted_space_is_found_at_every_station);
