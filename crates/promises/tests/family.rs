//! The broad family, asked of many mouths.

promises::ask!(Many, family: sound_members_are_judged);
promises::ask!(Many, family_faults: planted_faults_are_found);
promises::ask!(Many, family_figures: borders_and_cover_are_true);
