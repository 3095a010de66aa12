//! Registration of trays, asked of many mouths.

promises::ask!(Many, registration: without_noise, with_noise);
