//! The space between the jaws, asked of many mouths.

promises::ask!(Many, jaws: the_planted_space_is_found_at_every_station);
promises::ask!(Many, jaws: a_record_of_front_parts_gives_the_space_where_it_shows_the_jaws);
