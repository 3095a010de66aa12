//! Judging hand-built cases. One program: each one more would be linked anew.

mod all_checks;
mod border;
mod findings;
mod whole_case;
