//! Writing scans.
