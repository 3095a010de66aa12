//! judge
