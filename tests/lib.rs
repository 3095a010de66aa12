//! Tests of the whole command live in the files beside this one.
