//! Judging hand-built cases. One program: each one more would be linked anew.

mod border;
mod findings;
mod whole_case;
