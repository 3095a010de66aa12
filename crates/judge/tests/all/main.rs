//! Judging hand-built cases. One program: each one more would be linked anew.

mod all_checks;
mod border;
mod defects;
mod findings;
mod in_transit;
mod landmarks;
mod mouth;
mod one_scan;
mod pages;
mod sentences;
mod tray_shown;
mod which_scan;
mod whole_case;
