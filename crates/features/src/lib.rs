//! Nothing but a list, in `Cargo.toml`, of what is asked of libraries that the command, the
//! window and the tests share.
//!
//! Cargo compiles a library anew for each set of features that is asked of it, and
//! everything above it too. The window asks more of some libraries than the command does.
//! As both the tests of the whole and those of the window depend on this crate, they are
//! built from one set of libraries. `one_set_of_libraries`, a house rule, says what is
//! missing here.
