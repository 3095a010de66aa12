//! The broad family, asked of many mouths.

promises::ask!(Many, family: sound_members_are_judged);
