//! What is judged: an impression, or a case as a whole, with what is known of
//! it and the protocol to judge it by.

use crate::case::{Case, ImpressionInput};
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::{Limit, LimitKey, Protocol};
use crate::scale::UnitReading;
use crate::severity::Severity;
use measure::jaw_relation::JawRelation;
use measure::{Arch, ImpressionMeasurement, NotAnImpression, NotMeasured};

/// What reading a scan showed that bears on judging it.
#[derive(Debug, Clone, PartialEq)]
pub struct ScanFacts {
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// How its unit was settled.
    pub unit: UnitReading,
    /// What in the file could mean two things and needs an answer.
    pub questions: Vec<String>,
}

/// What is known of one impression of a case.
#[derive(Debug, Clone)]
pub struct Evidence<'a> {
    /// What measuring gave.
    pub measurement: &'a ImpressionMeasurement,
    /// The impression scan's file.
    pub scan: ScanFacts,
    /// The tray scan's file, where one was given.
    pub tray: Option<ScanFacts>,
}

/// One impression as the checks see it.
pub(crate) struct Subject<'a> {
    /// Its number in the case, from 0.
    pub(crate) number: usize,
    pub(crate) input: &'a ImpressionInput,
    pub(crate) evidence: &'a Evidence<'a>,
    /// What measuring gave for the first pass, where this is a wash over one.
    pub(crate) first_pass: Option<&'a ImpressionMeasurement>,
    pub(crate) protocol: &'a Protocol,
}

impl<'a> Subject<'a> {
    /// The jaw: as declared, else as found.
    pub(crate) fn arch(&self) -> Option<Arch> {
        let found = self.measurement().frame.as_ref().ok();
        self.input.declared.or(found.map(|frame| frame.arch))
    }

    pub(crate) fn measurement(&self) -> &'a ImpressionMeasurement {
        self.evidence.measurement
    }

    /// What the scan shows, where that is no impression.
    pub(crate) fn something_else(&self) -> Option<&'a NotAnImpression> {
        let measurement = self.measurement();
        [
            measurement.frame.as_ref().err(),
            measurement.cover.as_ref().err(),
        ]
        .into_iter()
        .flatten()
        .find_map(|why| match why {
            NotMeasured::NotAnImpression(what) => Some(what),
            _ => None,
        })
    }

    pub(crate) fn limit(&self, key: LimitKey) -> &'a Limit {
        self.protocol.limit(key)
    }

    pub(crate) fn finding(
        &self,
        check: Check,
        severity: Severity,
        instruction: impl Into<String>,
    ) -> Finding {
        Finding {
            impression: Some(self.number),
            arch: self.arch(),
            ..Finding::on_case(check, severity, instruction)
        }
    }
}

/// A case as a whole as its checks see it.
pub(crate) struct CaseSubject<'a> {
    pub(crate) case: &'a Case,
    /// What the scan of the record gave; `None` where there is none.
    pub(crate) relation: Option<&'a Result<JawRelation, NotMeasured>>,
    pub(crate) protocol: &'a Protocol,
}
