//! How far people agree with each other, and with the program, on the same cases.

use judge::system_says;
use mesh::read::shown_path;
use messages::{Message, message};
use statistics::agreement::{Kappa, cohen, fleiss};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// The word for a case that can be worked from.
const ACCEPTED: &str = "accept";

/// Why verdicts could not be compared; its text is one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum AgreementError {
    /// The system refused.
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// The table makes no sense.
    Table {
        /// The file.
        path: PathBuf,
        /// Line, counted from 1.
        line: u64,
        /// What is wrong, and what to do.
        fault: Message,
    },
    /// The rater to compare with is none of the table's.
    UnknownReference {
        /// Who was asked for.
        reference: String,
        /// Who is there.
        raters: String,
    },
}

impl AgreementError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Unreadable { path, source } => message!(
                "agreement-unreadable",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::Table { path, line, fault } => message!(
                "study-line",
                path = shown_path(path),
                line = *line,
                fault = fault.clone()
            ),
            Self::UnknownReference { reference, raters } => message!(
                "agreement-unknown",
                reference = reference.as_str(),
                raters = raters.as_str()
            ),
        }
    }
}

/// What a table of verdicts came to.
#[derive(Debug, Clone, PartialEq)]
pub struct AgreementStudy {
    /// Number of cases.
    pub cases: usize,
    /// The raters, in the order of their columns.
    pub raters: Vec<String>,
    /// The verdicts, in alphabetical order.
    pub verdicts: Vec<String>,
    /// Each pair of raters, on the cases that both judged; `None` where nothing can be
    /// said beyond chance.
    pub pairs: Vec<([usize; 2], Option<Kappa>)>,
    /// All raters together, on the cases that all judged; `None` of fewer than three.
    pub all: Option<Kappa>,
    /// The others beside the rater that they are compared with.
    pub beside: Vec<Beside>,
}

/// A rater beside the one that all are compared with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Beside {
    /// Number of the rater.
    pub rater: usize,
    /// Cases that the other did not accept, and how many of them the rater accepted.
    pub missed: [u64; 2],
    /// Cases that the other accepted, and how many of them the rater did not.
    pub false_alarms: [u64; 2],
}

/// The verdicts of a table: by case, then by rater.
struct Table {
    raters: Vec<String>,
    verdicts: Vec<String>,
    cells: Vec<Vec<Option<usize>>>,
}

/// Compares the verdicts in a CSV file: a column `case`, and a column for each rater
/// under a code for them; a cell may be empty.
///
/// # Errors
/// When the file is no such table, by its line, or `reference` is none of its raters.
pub fn agreement_of(
    path: &Path,
    reference: Option<&str>,
) -> Result<AgreementStudy, AgreementError> {
    let bytes = mesh::read::bounded(path, mesh::read::MAX_TABLE_BYTES).map_err(|source| {
        AgreementError::Unreadable {
            path: path.to_owned(),
            source,
        }
    })?;
    let table = Table::of(&bytes).map_err(|(line, fault)| AgreementError::Table {
        path: path.to_owned(),
        line,
        fault,
    })?;
    let reference = reference
        .map(|wanted| {
            let found = table.raters.iter().position(|rater| rater == wanted);
            found.ok_or_else(|| AgreementError::UnknownReference {
                reference: wanted.to_owned(),
                raters: table.raters.join(", "),
            })
        })
        .transpose()?;
    Ok(table.compared(reference))
}

impl Table {
    fn of(bytes: &[u8]) -> Result<Self, (u64, Message)> {
        let mut reader = csv::ReaderBuilder::new()
            .trim(csv::Trim::All)
            .from_reader(bytes);
        let at = |error: &csv::Error| {
            let line = error.position().map_or(1, csv::Position::line);
            let reason = error.to_string().replace('\n', " ");
            (line, message!("agreement-no-table", reason = reason))
        };
        let head = reader.headers().map_err(|e| at(&e))?.clone();
        let is_case = |name: &str| name.eq_ignore_ascii_case("case");
        let raters: Vec<String> = head
            .iter()
            .filter(|n| !is_case(n))
            .map(Into::into)
            .collect();
        let different: BTreeSet<&String> = raters.iter().collect();
        if raters.len() + 1 != head.len() || raters.len() < 2 || different.len() != raters.len() {
            return Err((1, message!("agreement-columns")));
        }
        let mut rows = Vec::new();
        for record in reader.records() {
            let record = record.map_err(|e| at(&e))?;
            let cells = head.iter().zip(&record).filter(|(name, _)| !is_case(name));
            let cells: Vec<String> = cells.map(|(_, cell)| cell.to_lowercase()).collect();
            rows.push(cells);
        }
        let verdicts: BTreeSet<&String> = rows.iter().flatten().filter(|v| !v.is_empty()).collect();
        let verdicts: Vec<String> = verdicts.into_iter().cloned().collect();
        let number = |cell: &String| verdicts.iter().position(|verdict| verdict == cell);
        Ok(Self {
            cells: (rows.iter())
                .map(|row| row.iter().map(number).collect())
                .collect(),
            raters,
            verdicts,
        })
    }

    /// Verdicts of two raters on the cases that both judged.
    fn both(&self, [one, other]: [usize; 2]) -> Vec<[usize; 2]> {
        let cells = self.cells.iter();
        cells
            .filter_map(|case| Some([case[one]?, case[other]?]))
            .collect()
    }

    fn compared(self, reference: Option<usize>) -> AgreementStudy {
        let count = self.raters.len();
        let pairs = (0..count).flat_map(|one| (one + 1..count).map(move |other| [one, other]));
        let pairs = pairs.map(|pair| (pair, cohen(&self.both(pair)))).collect();
        let by_all: Vec<Vec<u32>> = (self.cells.iter())
            .filter_map(|case| {
                let mut chosen = vec![0; self.verdicts.len()];
                for verdict in case {
                    chosen[(*verdict)?] += 1;
                }
                Some(chosen)
            })
            .collect();
        let others = |reference| (0..count).filter(move |rater| *rater != reference);
        let beside = reference.map_or_else(Vec::new, |reference| {
            others(reference)
                .map(|rater| self.beside(rater, reference))
                .collect()
        });
        AgreementStudy {
            cases: self.cells.len(),
            pairs,
            all: (count > 2).then(|| fleiss(&by_all)).flatten(),
            beside,
            raters: self.raters,
            verdicts: self.verdicts,
        }
    }

    fn beside(&self, rater: usize, reference: usize) -> Beside {
        let both = self.both([rater, reference]);
        let accepts = |verdict: usize| self.verdicts[verdict] == ACCEPTED;
        let counted = |by_reference: bool| {
            let of = both
                .iter()
                .filter(|[_, other]| accepts(*other) == by_reference);
            let otherwise = of.clone().filter(|[own, _]| accepts(*own) != by_reference);
            [otherwise.count() as u64, of.count() as u64]
        };
        Beside {
            rater,
            missed: counted(false),
            false_alarms: counted(true),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn study(text: &str, reference: Option<&str>) -> Result<AgreementStudy, AgreementError> {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("verdicts.csv");
        std::fs::write(&file, text).unwrap();
        agreement_of(&file, reference)
    }

    /// Counted by hand.
    #[test]
    fn missed_and_false_alarms_are_those_of_the_table() {
        let text = "case,p1,p2,archproof\n1,accept,accept,accept\n2,rework,accept,rework\n\
                    3,retake,retake,retake\n4,accept,rework,accept\n5,rework,,rework\n";
        let found = study(text, Some("p1")).unwrap();
        assert_eq!((found.cases, found.pairs.len()), (5, 3));
        assert_eq!(found.verdicts, ["accept", "retake", "rework"]);
        let [other, program] = found.beside[..] else {
            panic!("{found:?}");
        };
        assert_eq!((other.missed, other.false_alarms), ([1, 2], [1, 2]));
        assert_eq!((program.missed, program.false_alarms), ([0, 3], [0, 2]));
        assert_eq!(found.all.unwrap().things, 4);
        let [(_, beside_other), (_, beside_program), _] = found.pairs[..] else {
            panic!("{found:?}");
        };
        assert_eq!(beside_other.unwrap().things, 4);
        assert!((beside_program.unwrap().kappa - 1.0).abs() < 1e-12);
    }

    #[test]
    fn what_is_no_such_table_is_refused_by_its_line() {
        for (text, says) in [
            ("case,a1\n1,accept\n", "line 1: the first line names"),
            ("a1,b2\n1,2\n", "line 1: the first line names"),
            ("case,a1,a1\n1,x,y\n", "line 1: the first line names"),
            ("case,a1,b2\n1,x\n", "line 2: is no table"),
        ] {
            let why = study(text, None).unwrap_err().to_string();
            assert!(why.contains(says) && !why.contains('\n'), "{why}");
        }
        let why = study("case,a1,b2\n1,x,y\n", Some("c3")).unwrap_err();
        assert_eq!(why.to_string(), "'c3' is no rater; the table holds a1, b2");
    }
}
