//! How the cases of a folder were checked.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How the cases of a folder were checked.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Conditions {
    /// Version of the program.
    pub program: String,
    /// What the limits call themselves.
    pub protocol: String,
    /// SHA-256 of name and limits, as in each `result.json`.
    pub protocol_sha256: String,
    /// Number of the shard, from 1; `null` where all cases are in.
    pub shard: Option<u64>,
    /// Number of shards that the cases were checked in.
    pub shards: u64,
}
