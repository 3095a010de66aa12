//! Studies of phantoms whose truth is known by formula.

mod artefact;
mod repeats;
