//! What each scan is in the case, concluded from the evidence and from what a
//! person has stated.

use super::concluded::{JAWS, Placed, Proposal, Stated};
use super::draft::Draft;
use super::evidence::{Evidence, Shows, TrayTrial};
use super::impressions::{self, Member};
use super::names::{Hints, Kind};
use super::question::Choice;
use super::role::{Role, Surety};
use judge::Stage;
use measure::{Arch, NotAnImpression};
use messages::{Message, Value, message};
use std::collections::BTreeSet;

/// A jaw found so surely needs no other evidence.
const CLEAR_FROM: f64 = 0.8;
/// A jaw found less surely is asked about.
const OPEN_BELOW: f64 = 0.5;

/// Concludes what each scan is; what the surfaces leave open becomes a question.
#[must_use]
pub fn propose(evidence: &Evidence, stated: &Stated) -> Proposal {
    let mut draft = Draft::new(evidence, stated);
    let members = draft.scans_by_themselves();
    for arch in JAWS {
        let of_jaw = members.iter().filter(|member| member.arch == arch);
        impressions::place(&mut draft, arch, &of_jaw.cloned().collect::<Vec<_>>());
    }
    draft.trays();
    draft.places_taken_twice();
    draft.heed_names();
    Proposal {
        placed: draft.placed,
        questions: draft.questions,
    }
}

impl Draft<'_> {
    /// Places what needs no other scan; gives the impressions whose jaw is known.
    fn scans_by_themselves(&mut self) -> Vec<Member> {
        let mut members = Vec::new();
        for scan in 0..self.evidence.scans.len() {
            match self.stated.roles.get(&scan) {
                Some(&Role::Impression { arch, stage }) => {
                    let why = message!("placed-as-stated");
                    let surety = Surety::Stated;
                    members.push(Member {
                        scan,
                        arch,
                        stage,
                        surety,
                        why,
                    });
                }
                Some(&role) => {
                    self.place(scan, role, Surety::Stated, message!("placed-as-stated"));
                }
                None => members.extend(self.as_it_shows(scan)),
            }
        }
        members
    }

    fn as_it_shows(&mut self, scan: usize) -> Option<Member> {
        if self.evidence.is_record(scan) {
            let why = message!("placed-record");
            self.place(scan, Role::Record, Surety::Clear, why);
            return None;
        }
        let left_out = |draft: &mut Self, why: Message| {
            draft.place(scan, Role::LeftOut, Surety::Clear, why);
        };
        match &self.evidence.scans[scan].shows {
            Shows::Impression { arch, confidence } => {
                return self.jaw_of(scan, *arch, *confidence);
            }
            Shows::TrayOrBase { .. } => {}
            Shows::SameAs(other) => {
                let why = message!("placed-same", other = self.name(*other));
                left_out(self, why);
            }
            Shows::Unreadable(why) => {
                self.placed[scan].why = message!("placed-unreadable");
                let text = message!("ask-unreadable", refused = why.clone());
                self.ask(&[scan], text, vec![Choice::of(scan, Role::LeftOut)]);
            }
            Shows::Else(
                NotAnImpression::NoTrough
                | NotAnImpression::TwoScans { .. }
                | NotAnImpression::Half,
            ) => self.ask_what(scan),
            Shows::Else(_) if self.evidence.fits_of(scan).next().is_some() => {}
            Shows::Else(what) => left_out(self, what.message()),
        }
        None
    }

    /// Asks what a scan is that shows no impression.
    fn ask_what(&mut self, scan: usize) {
        let Shows::Else(what) = &self.evidence.scans[scan].shows else {
            return;
        };
        if self.evidence.fits_of(scan).next().is_some() {
            return;
        }
        let text = message!("ask-what", name = self.name(scan), what = what);
        let choices = [Role::LeftOut, Role::Record]
            .into_iter()
            .chain(JAWS.map(|arch| Role::Tray { arch }));
        let parts = JAWS.map(|arch| Choice {
            label: message!("choice-part", jaw = judge::words::arch(arch)),
            roles: vec![(scan, Role::Impression { arch, stage: None })],
        });
        let choices = choices.map(|role| Choice::of(scan, role)).chain(parts);
        self.ask(&[scan], text, choices.collect());
    }

    /// The impression, if its jaw is known; else it is asked about.
    fn jaw_of(&mut self, scan: usize, arch: Arch, confidence: f64) -> Option<Member> {
        let impression = |arch| Role::Impression { arch, stage: None };
        let name = self.name(scan);
        let jaw = judge::words::arch(arch);
        let hinted = Hints::of(&self.evidence.scans[scan].file).arch;
        let contradicted = hinted.is_some_and(|hinted| hinted != arch);
        let mut roles = vec![impression(arch)];
        let text = if let Some(other) = self.evidence.doubtful_record(scan) {
            let other = self.name(other);
            roles.insert(0, Role::Record);
            message!("ask-record", name = name, jaw = jaw, other = other)
        } else if confidence < OPEN_BELOW {
            message!("ask-jaw", name = name, jaw = jaw)
        } else if confidence < CLEAR_FROM && contradicted {
            message!("ask-jaw-named", name = name, jaw = jaw)
        } else {
            let clear = confidence >= CLEAR_FROM;
            return Some(Member {
                scan,
                arch,
                stage: None,
                surety: if clear { Surety::Clear } else { Surety::Likely },
                why: message!("placed-impression", jaw = jaw),
            });
        };
        roles.extend(
            JAWS.into_iter()
                .filter(|other| *other != arch)
                .map(impression),
        );
        roles.push(Role::LeftOut);
        self.placed[scan].why = message!("placed-jaw-open");
        let choices = roles.into_iter().map(|role| Choice::of(scan, role));
        self.ask(&[scan], text, choices.collect());
        None
    }

    /// The jaw of an impression, as far as it is known.
    fn known_jaw(&self, scan: usize) -> Option<Arch> {
        match self.placed[scan].role {
            Some(Role::Impression { arch, .. }) => Some(arch),
            _ => None,
        }
    }

    /// Places each tray with the impressions that it fits.
    fn trays(&mut self) {
        for tray in 0..self.evidence.scans.len() {
            let wall_mm = match self.evidence.scans[tray].shows {
                Shows::TrayOrBase { wall_mm } => Some(wall_mm),
                _ => None,
            };
            let fits: Vec<usize> = self.evidence.fits_of(tray).collect();
            let may_be = wall_mm.is_some() || !fits.is_empty();
            if !may_be || self.stated.roles.contains_key(&tray) {
                continue;
            }
            let jaws: Vec<Option<Arch>> = fits.iter().map(|&one| self.known_jaw(one)).collect();
            match jaws[..] {
                [Some(arch), ..] if jaws.iter().all(|jaw| *jaw == Some(arch)) => {
                    self.fitting_tray(tray, arch, &fits);
                }
                _ => self.ask_tray(tray, wall_mm, &fits),
            }
        }
    }

    fn fitting_tray(&mut self, tray: usize, arch: Arch, fits: &[usize]) {
        let share = |one: usize| {
            let tried = |trial: &&TrayTrial| trial.tray == tray && trial.impression == one;
            let trial = self.evidence.trays.iter().find(tried);
            let share = trial.and_then(|trial| trial.outcome.as_ref().ok());
            Value::number(share.map_or(0.0, |share| 100.0 * share), 0)
        };
        let shares = (fits.iter()).map(|&one| {
            message!(
                "tray-share",
                share = share(one),
                impression = self.name(one)
            )
        });
        let why = message!("placed-tray", shares = judge::words::both(shares));
        self.place(tray, Role::Tray { arch }, Surety::Clear, why);
        let others: Vec<usize> = (0..self.placed.len())
            .filter(|one| self.known_jaw(*one) == Some(arch) && !fits.contains(one))
            .collect();
        for other in others {
            let tried = |trial: &&TrayTrial| trial.tray == tray && trial.impression == other;
            let trial = self.evidence.trays.iter().find(tried);
            if let Some(Err(why)) = trial.map(|trial| &trial.outcome) {
                let impression = self.name(other);
                let remark = message!(
                    "remark-not-seen",
                    impression = impression,
                    why = why.clone()
                );
                self.remark(tray, remark);
                self.placed[tray].surety = Surety::Likely;
            }
        }
    }

    fn ask_tray(&mut self, tray: usize, wall_mm: Option<f64>, fits: &[usize]) {
        let name = self.name(tray);
        let text = match wall_mm {
            _ if !fits.is_empty() => {
                let impressions = judge::words::both(fits.iter().map(|&one| self.name(one)));
                message!("ask-tray-jaw", name = name, impressions = impressions)
            }
            Some(mm) => message!("ask-tray-wall", name = name, wall = Value::number(mm, 1)),
            None => message!("ask-tray", name = name),
        };
        let left_out = Choice::of(tray, Role::LeftOut);
        let choices = JAWS.map(|arch| Choice::of(tray, Role::Tray { arch }));
        let choices = std::iter::once(left_out).chain(choices).collect();
        self.placed[tray].why = message!("placed-tray-open");
        self.ask(&[tray], text, choices);
    }

    /// Asks which scan it is where several would take one place in the case.
    fn places_taken_twice(&mut self) {
        for role in Role::all() {
            let scans = self.settled_as(role);
            if role == Role::LeftOut || scans.len() < 2 || self.are_stated_parts(&scans) {
                continue;
            }
            let names = judge::words::either(scans.iter().map(|&one| self.name(one)));
            let text = message!("ask-which", role = role.message(), names = names);
            let more = self.trays_together(&scans);
            self.ask_which(&scans, text, more);
        }
        for arch in JAWS {
            self.one_step_beside_stages(arch);
        }
    }

    fn settled_as(&self, role: Role) -> Vec<usize> {
        let is_it = |placed: &Placed| placed.surety != Surety::Open && placed.role == Some(role);
        let all = self.placed.iter().enumerate();
        all.filter(|(_, placed)| is_it(placed))
            .map(|(scan, _)| scan)
            .collect()
    }

    /// Whether a person stated each of several scans to be one impression, or one tray.
    fn are_stated_parts(&self, scans: &[usize]) -> bool {
        let is_stated = |&scan: &usize| {
            let placed = &self.placed[scan];
            placed.surety == Surety::Stated && placed.role.is_some_and(Role::may_be_in_parts)
        };
        scans.iter().all(is_stated)
    }

    /// What several trays of one jaw may be together: pieces, or one before and after relief.
    fn trays_together(&self, scans: &[usize]) -> Vec<Choice> {
        let Some(Role::Tray { arch }) = self.placed[scans[0]].role else {
            return Vec::new();
        };
        let tray = Role::Tray { arch };
        let pieces = Choice {
            label: message!("choice-pieces"),
            roles: scans.iter().map(|&scan| (scan, tray)).collect(),
        };
        let relieved = |before: usize, after: usize| Choice {
            label: message!(
                "choice-relieved",
                before = self.name(before),
                after = self.name(after)
            ),
            roles: vec![(before, tray), (after, Role::RelievedTray { arch })],
        };
        match *scans {
            [a, b] => vec![pieces, relieved(a, b), relieved(b, a)],
            _ => vec![pieces],
        }
    }

    fn one_step_beside_stages(&mut self, arch: Arch) {
        let settled = |placed: &Placed, single: bool| {
            let is = |stage| (stage == Stage::Single) == single;
            placed.surety != Surety::Open
                && matches!(placed.role, Some(Role::Impression { arch: own, stage: Some(stage) }) if own == arch && is(stage))
        };
        let of = |single: bool| -> BTreeSet<usize> {
            let all = self.placed.iter().enumerate();
            all.filter(|(_, placed)| settled(placed, single))
                .map(|(scan, _)| scan)
                .collect()
        };
        let (single, stages) = (of(true), of(false));
        if single.is_empty() || stages.is_empty() {
            return;
        }
        let text = message!("ask-one-step", jaw = judge::words::arch(arch));
        let all: Vec<usize> = single.union(&stages).copied().collect();
        self.ask_which(&all, text, Vec::new());
    }

    /// Asks which one of several scans stays in the case, or what else they may be.
    fn ask_which(&mut self, scans: &[usize], text: Message, more: Vec<Choice>) {
        let choices = scans.iter().filter_map(|&kept| {
            let role = |scan: usize| {
                Some(if scan == kept {
                    self.placed[scan].role?
                } else {
                    Role::LeftOut
                })
            };
            let roles: Option<Vec<(usize, Role)>> = scans
                .iter()
                .map(|&scan| Some((scan, role(scan)?)))
                .collect();
            Some(Choice {
                label: Message::verbatim(self.name(kept)),
                roles: roles?,
            })
        });
        let choices = choices.chain(more).collect();
        self.ask(scans, text, choices);
    }

    /// Says where a file's name suggests something else than its surface shows.
    fn heed_names(&mut self) {
        for scan in 0..self.placed.len() {
            let placed = &self.placed[scan];
            let Some(role) = placed.role.filter(|_| placed.surety != Surety::Stated) else {
                continue;
            };
            let hints = Hints::of(&self.evidence.scans[scan].file);
            if contradicts(hints, role) {
                self.remark(scan, message!("remark-name"));
            }
        }
    }
}

/// Whether a name suggests something else.
fn contradicts(hints: Hints, role: Role) -> bool {
    let jaw = match role {
        Role::Impression { arch, .. } | Role::Tray { arch } | Role::RelievedTray { arch } => {
            Some(arch)
        }
        Role::Record | Role::LeftOut => None,
    };
    let other_jaw = matches!((hints.arch, jaw), (Some(hinted), Some(jaw)) if hinted != jaw);
    let other_kind = match (hints.kind, role) {
        (None, _) | (_, Role::LeftOut) => false,
        (Some(Kind::Impression(hinted)), Role::Impression { stage, .. }) => {
            matches!((hinted, stage), (Some(hinted), Some(stage)) if hinted != stage)
        }
        (Some(Kind::Tray), Role::Tray { .. } | Role::RelievedTray { .. })
        | (Some(Kind::Record), Role::Record) => false,
        _ => true,
    };
    other_jaw || other_kind
}
