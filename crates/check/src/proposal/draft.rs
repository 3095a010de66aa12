//! A proposal in the making: scans are placed, remarked upon and asked about.

use super::concluded::{Placed, Stated};
use super::evidence::Evidence;
use super::question::{Choice, Question};
use super::role::{Role, Surety};
use super::table::file_name;
use messages::{Message, message};

/// A proposal in the making.
pub(super) struct Draft<'a> {
    pub(super) evidence: &'a Evidence,
    pub(super) stated: &'a Stated,
    pub(super) placed: Vec<Placed>,
    pub(super) questions: Vec<Question>,
}

impl<'a> Draft<'a> {
    pub(super) fn new(evidence: &'a Evidence, stated: &'a Stated) -> Self {
        let open = Placed {
            role: None,
            surety: Surety::Open,
            why: Message::default(),
            remarks: Vec::new(),
        };
        Self {
            placed: vec![open; evidence.scans.len()],
            questions: Vec::new(),
            evidence,
            stated,
        }
    }

    /// The name of a scan's file.
    pub(super) fn name(&self, scan: usize) -> String {
        file_name(&self.evidence.scans[scan].file)
    }

    pub(super) fn place(&mut self, scan: usize, role: Role, surety: Surety, why: Message) {
        self.placed[scan] = Placed {
            role: Some(role),
            surety,
            why,
            remarks: Vec::new(),
        };
    }

    pub(super) fn remark(&mut self, scan: usize, remark: Message) {
        self.placed[scan].remarks.push(remark);
    }

    /// Leaves scans open and asks about them.
    pub(super) fn ask(&mut self, about: &[usize], text: Message, choices: Vec<Choice>) {
        for &scan in about {
            self.placed[scan].surety = Surety::Open;
            if self.placed[scan].why.sentences().is_empty() {
                self.placed[scan].why = message!("placed-see-question");
            }
        }
        self.questions.push(Question {
            about: about.to_vec(),
            text,
            choices,
        });
    }
}
