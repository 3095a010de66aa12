//! A share of the cases, for queues that run several programs at once.

use std::fmt;
use std::str::FromStr;
use thiserror::Error;

/// Share `number` (from 1) of `of`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Shard {
    /// Which share, from 1.
    pub number: u64,
    /// Of how many.
    pub of: u64,
}

/// What was said is no share.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("a shard is written I/N, as in 3/8, with I from 1 to N")]
pub struct ShardError;

impl Shard {
    /// All cases.
    pub const WHOLE: Self = Self { number: 1, of: 1 };

    /// Whether a case with this digest of its place belongs to the share.
    #[must_use]
    pub fn holds(self, digest: u64) -> bool {
        digest % self.of == self.number - 1
    }
}

impl FromStr for Shard {
    type Err = ShardError;

    fn from_str(text: &str) -> Result<Self, ShardError> {
        let (number, of) = text.split_once('/').ok_or(ShardError)?;
        let read = |part: &str| part.trim().parse::<u64>().map_err(|_| ShardError);
        let shard = Self {
            number: read(number)?,
            of: read(of)?,
        };
        let is_share = (1..=shard.of).contains(&shard.number);
        is_share.then_some(shard).ok_or(ShardError)
    }
}

impl fmt::Display for Shard {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}", self.number, self.of)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_case_is_in_one_shard() {
        for digest in 0..1000_u64 {
            let digest = digest.wrapping_mul(0x9e37_79b9_7f4a_7c15);
            let shards = (1..=7).filter(|&number| Shard { number, of: 7 }.holds(digest));
            assert_eq!(shards.count(), 1);
            assert!(Shard::WHOLE.holds(digest));
        }
    }

    #[test]
    fn shards_are_read_as_they_are_written() {
        let shard = Shard { number: 3, of: 8 };
        assert_eq!("3/8".parse(), Ok(shard));
        assert_eq!(shard.to_string(), "3/8");
        for wrong in ["0/8", "9/8", "3", "3/0", "-1/8", "a/b", ""] {
            assert_eq!(wrong.parse::<Shard>(), Err(ShardError), "{wrong}");
        }
    }
}
