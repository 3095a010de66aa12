//! What is judged: an impression, or a case as a whole, with what is known of
//! it and the protocol to judge it by.

use crate::case::{Case, ImpressionInput};
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::{Limit, LimitKey, Protocol};
use crate::scale::UnitReading;
use crate::severity::Severity;
use measure::pair::{NoPair, NoTransit, Transit};
use measure::record::{JawRelation, NoRelation};
use measure::{
    Arch, Measured, Measurement, NotAnImpression, NotRelieved, PassPair, PlaceRelieved, Scanned,
    TrayJoint,
};
use messages::Message;

/// What reading a scan showed that bears on judging it.
#[derive(Debug, Clone, PartialEq)]
pub struct ScanFacts {
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// How its unit was settled.
    pub unit: UnitReading,
    /// What in the file could mean two things and needs an answer.
    pub questions: Vec<Message>,
}

/// What is known of one impression of a case.
#[derive(Debug, Clone)]
pub struct Evidence<'a> {
    /// What measuring gave.
    pub scanned: &'a Scanned,
    /// What it shows together with its first pass, where it is a wash over one.
    pub pair: Option<&'a Result<PassPair, NoPair>>,
    /// The impression scan's file.
    pub scan: ScanFacts,
    /// The tray scan's file, where one was given.
    pub tray: Option<ScanFacts>,
    /// What was taken off the tray at each of its spots before the wash, where the relieved
    /// tray was scanned.
    pub relief: Option<&'a Result<Vec<Option<PlaceRelieved>>, NotRelieved>>,
    /// How it changed since it was sent, where a scan of it as sent was given.
    pub transit: Option<&'a Result<Transit, NoTransit>>,
    /// Where the pieces of its tray meet; none of a tray in one piece.
    pub joints: &'a [TrayJoint],
}

/// One scan as the checks see it, whatever it shows.
#[derive(Clone, Copy)]
pub(crate) struct ScanSubject<'a> {
    /// Number of its impression in the case, from 0.
    pub(crate) number: usize,
    pub(crate) input: &'a ImpressionInput,
    pub(crate) evidence: &'a Evidence<'a>,
    pub(crate) protocol: &'a Protocol,
}

impl<'a> ScanSubject<'a> {
    /// The jaw: as declared, else as found.
    pub(crate) fn arch(&self) -> Option<Arch> {
        let found = self.evidence.scanned.impression();
        self.input.declared.or(found.map(|found| found.frame.arch))
    }

    /// The impression that the scan shows; `None` where it shows something else.
    pub(crate) fn impression(self) -> Option<Subject<'a>> {
        let measurement = self.evidence.scanned.impression()?;
        Some(Subject {
            scan: self,
            measurement,
        })
    }

    /// What the scan shows, where that is no impression.
    pub(crate) fn something_else(&self) -> Option<&'a NotAnImpression> {
        match self.evidence.scanned {
            Scanned::Impression(_) => None,
            Scanned::Else(what, _) => Some(what),
        }
    }

    pub(crate) fn finding(
        &self,
        check: Check,
        severity: Severity,
        instruction: Message,
    ) -> Finding {
        Finding {
            impression: Some(self.number),
            arch: self.arch(),
            ..Finding::on_case(check, severity, instruction)
        }
    }
}

/// One impression as the checks see it.
#[derive(Clone, Copy)]
pub(crate) struct Subject<'a> {
    scan: ScanSubject<'a>,
    measurement: &'a Measurement,
}

impl<'a> Subject<'a> {
    pub(crate) fn measurement(&self) -> &'a Measurement {
        self.measurement
    }

    /// Where the pieces of the tray meet.
    pub(crate) fn joints(&self) -> &'a [TrayJoint] {
        self.scan.evidence.joints
    }

    /// How it changed since it was sent, where a scan of it as sent was given.
    pub(crate) fn transit(&self) -> Option<&'a Result<Transit, NoTransit>> {
        self.scan.evidence.transit
    }

    /// What was taken off the tray at each of its spots, where the relieved tray was scanned.
    pub(crate) fn relief(&self) -> Option<&'a Result<Vec<Option<PlaceRelieved>>, NotRelieved>> {
        self.scan.evidence.relief
    }

    /// What it shows together with its first pass, where it is a wash over one.
    pub(crate) fn pair(&self) -> Option<&'a Result<PassPair, NoPair>> {
        self.scan.evidence.pair
    }

    /// How far its border moved from the first pass's at a station, where that
    /// is known.
    pub(crate) fn border_change(&self, station: usize) -> Option<Measured> {
        let pair = self.pair()?.as_ref().ok()?;
        *pair.border_changes.as_ref().ok()?.get(station)?
    }

    pub(crate) fn input(&self) -> &'a ImpressionInput {
        self.scan.input
    }

    /// The jaw: as declared, else as found.
    pub(crate) fn arch(&self) -> Arch {
        self.input().declared.unwrap_or(self.measurement.frame.arch)
    }

    pub(crate) fn protocol(&self) -> &'a Protocol {
        self.scan.protocol
    }

    pub(crate) fn limit(&self, key: LimitKey) -> &'a Limit {
        self.protocol().limit(key)
    }

    pub(crate) fn finding(
        &self,
        check: Check,
        severity: Severity,
        instruction: Message,
    ) -> Finding {
        self.scan.finding(check, severity, instruction)
    }
}

/// A case as a whole as its checks see it.
pub(crate) struct CaseSubject<'a> {
    pub(crate) case: &'a Case,
    /// What the scan of the record gave; `None` without such a scan.
    pub(crate) relation: Option<&'a Result<JawRelation, NoRelation>>,
    pub(crate) protocol: &'a Protocol,
}
