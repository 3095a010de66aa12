//! What only a person can answer.

use super::role::Role;
use messages::Message;

/// What the surfaces leave open, with the answers that are possible.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Question {
    /// Numbers of the scans it is about.
    pub about: Vec<usize>,
    /// The question.
    pub text: Message,
    /// The answers, the one that weak evidence suggests first.
    pub choices: Vec<Choice>,
}

/// An answer to a question.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Choice {
    /// The answer in words.
    pub label: Message,
    /// What each scan then is.
    pub roles: Vec<(usize, Role)>,
}

impl Choice {
    /// The answer that one scan is this.
    pub(super) fn of(scan: usize, role: Role) -> Self {
        Self {
            label: role.message(),
            roles: vec![(scan, role)],
        }
    }
}
