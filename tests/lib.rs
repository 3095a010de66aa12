//! Tests of the whole live in the files beside this one; checks against other
//! libraries, which need Python, in `outside/`.
