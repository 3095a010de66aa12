//! Landmarks, whole and lost, asked of many mouths.

promises::ask!(Many, landmarks: are_found_on_their_sides);
promises::ask!(Many, landmarks_lost:
    all_of_sound_impressions_are_recorded,
    those_that_are_gone_are_never_recorded,
);
