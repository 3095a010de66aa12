//! Tests of the whole. [`house`] reads the sources of every crate and measures
//! their structure; the rules in `rules/` hold it against the plan. Checks
//! against other libraries, which need Python, are in `outside/`.

#![warn(unreachable_pub)]

pub mod house;
