//! What is asked about a scan, asked of many mouths.

promises::ask!(Many, intake:
    no_sound_impression_is_questioned_and_every_cast_is_named,
    no_impression_with_many_faults_is_taken_for_something_else,
    a_mirrored_second_pass_is_told_and_a_true_one_is_not,
    nothing_else_is_judged_as_an_impression,
);
