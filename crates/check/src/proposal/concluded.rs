//! What is concluded of the scans, and what a person has stated of them: plain data.

use super::question::Question;
use super::role::{Role, Surety};
use judge::Stage;
use measure::Arch;
use messages::{Language, Message};
use std::collections::BTreeMap;

/// Both jaws.
pub(super) const JAWS: [Arch; 2] = [Arch::Maxillary, Arch::Mandibular];

/// What a person has stated.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Stated {
    /// What scans are, by their numbers.
    pub roles: BTreeMap<usize, Role>,
    /// The stage of every impression that is the only one of its jaw.
    pub stage: Option<Stage>,
}

/// What a scan is taken for.
#[derive(Debug, Clone, PartialEq)]
pub struct Placed {
    /// What it is, as far as that is known.
    pub role: Option<Role>,
    /// How surely.
    pub surety: Surety,
    /// Why.
    pub why: Message,
    /// What speaks against it, weakly.
    pub remarks: Vec<Message>,
}

impl Placed {
    /// Why, and what speaks against it, on one line.
    #[must_use]
    pub fn reasons(&self, language: Language) -> String {
        let all = std::iter::once(&self.why).chain(&self.remarks);
        let texts: Vec<String> = all.map(|reason| reason.text(language)).collect();
        texts.join("; ")
    }
}

/// A case as it is proposed.
#[derive(Debug, Clone, PartialEq)]
pub struct Proposal {
    /// What each scan is taken for, in the order of the evidence.
    pub placed: Vec<Placed>,
    /// What is left open.
    pub questions: Vec<Question>,
}

impl Proposal {
    /// What a scan is, where that is settled.
    #[must_use]
    pub fn settled(&self, scan: usize) -> Option<Role> {
        let placed = self.placed.get(scan)?;
        placed.role.filter(|_| placed.surety != Surety::Open)
    }

    /// The scans that are settled to be this: several are parts of one impression, or pieces
    /// of one tray.
    #[must_use]
    pub fn scans_of(&self, role: Role) -> Vec<usize> {
        let scans = 0..self.placed.len();
        scans
            .filter(|&scan| self.settled(scan) == Some(role))
            .collect()
    }

    /// Whether the case has an impression that can be checked.
    #[must_use]
    pub fn has_impression(&self) -> bool {
        let is_impression = |scan| {
            let role = self.settled(scan);
            matches!(role, Some(Role::Impression { stage: Some(_), .. }))
        };
        (0..self.placed.len()).any(is_impression)
    }
}
