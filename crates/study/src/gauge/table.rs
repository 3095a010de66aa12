//! Readings from a CSV table.

use super::error::GaugeError;
use super::figure_study::{FigureStudy, GaugeStudy};
use csv::StringRecord;
use messages::{Message, message};
use statistics::gauge::Reading;
use std::collections::BTreeMap;
use std::path::Path;

/// Works out the crossed gauge study in a CSV file with the columns `operator`,
/// `part`, `value` and, if wanted, `repeat`, in any order, a row for each
/// reading.
///
/// # Errors
/// When the file is no such table, by its line, or not every operator read
/// every part equally often.
pub fn study_of_table(path: &Path) -> Result<GaugeStudy, GaugeError> {
    let bytes = mesh::read::bounded(path, mesh::read::MAX_TABLE_BYTES).map_err(|source| {
        GaugeError::Unreadable {
            path: path.to_owned(),
            source,
        }
    })?;
    let readings = readings(&bytes).map_err(|(line, fault)| GaugeError::Table {
        path: path.to_owned(),
        line,
        fault,
    })?;
    let study = FigureStudy::of("value", None, &readings).map_err(|source| GaugeError::Study {
        path: path.to_owned(),
        source,
    })?;
    Ok(GaugeStudy {
        studies: vec![study],
        not_studied: Vec::new(),
    })
}

/// A fault and the line that it stands in.
type Fault = (u64, Message);

/// Numbers of the columns.
struct Columns {
    operator: usize,
    part: usize,
    value: usize,
    repeat: Option<usize>,
}

impl Columns {
    fn of(head: &StringRecord) -> Result<Self, Fault> {
        let place = |name: &str| head.iter().position(|n| n.eq_ignore_ascii_case(name));
        let wanted =
            |name: &str| place(name).ok_or_else(|| (1, message!("gauge-no-column", name = name)));
        Ok(Self {
            operator: wanted("operator")?,
            part: wanted("part")?,
            value: wanted("value")?,
            repeat: place("repeat"),
        })
    }
}

fn readings(bytes: &[u8]) -> Result<Vec<Reading>, Fault> {
    let mut reader = csv::ReaderBuilder::new()
        .trim(csv::Trim::All)
        .from_reader(bytes);
    let columns = Columns::of(reader.headers().map_err(|e| located(&e))?)?;
    let mut found = Vec::new();
    let mut seen: BTreeMap<[String; 3], u64> = BTreeMap::new();
    for record in reader.records() {
        let record = record.map_err(|e| located(&e))?;
        let line = record.position().map_or(1, csv::Position::line);
        let cell = |column: usize, name: &str| {
            let text = record.get(column).unwrap_or_default();
            if text.is_empty() {
                return Err((line, message!("gauge-no-cell", name = name)));
            }
            Ok(text)
        };
        let (operator, part) = (
            cell(columns.operator, "operator")?,
            cell(columns.part, "part")?,
        );
        let text = cell(columns.value, "value")?;
        let value = text.parse::<f64>().ok().filter(|v| v.is_finite());
        let value = value.ok_or_else(|| {
            let shown = text.escape_default().to_string();
            (line, message!("gauge-no-number", value = shown))
        })?;
        if let Some(column) = columns.repeat {
            let key = [operator, part, cell(column, "repeat")?].map(str::to_owned);
            if let Some(before) = seen.insert(key, line) {
                return Err((line, message!("gauge-twice", line = before)));
            }
        }
        found.push(Reading {
            operator: operator.to_owned(),
            part: part.to_owned(),
            value,
        });
    }
    Ok(found)
}

/// What the reader found wrong, in one line.
fn located(error: &csv::Error) -> Fault {
    let line = error.position().map_or(1, csv::Position::line);
    let fault = match error.kind() {
        csv::ErrorKind::UnequalLengths {
            expected_len, len, ..
        } => message!("gauge-unequal", columns = *len, first = *expected_len),
        csv::ErrorKind::Utf8 { .. } => message!("gauge-no-text"),
        _ => message!("gauge-no-row"),
    };
    (line, fault)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn study(text: &[u8]) -> Result<GaugeStudy, GaugeError> {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("study.csv");
        std::fs::write(&path, text).unwrap();
        study_of_table(&path)
    }

    #[test]
    fn columns_may_stand_in_any_order_with_spaces_and_a_byte_order_mark() {
        let table = "\u{feff}part, Operator, value\n1,A,1.0\n1,A,1.1\n1,B,1.2\n1,B,1.3\n2,A,2.0\n2,A,2.1\n2,B,2.3\n2,B,2.2\n";
        let found = &study(table.as_bytes()).unwrap().studies[0];
        assert_eq!(found.by_variance.size, [2, 2, 2]);
    }

    #[test]
    fn what_is_no_table_is_said_in_one_line_with_its_place() {
        for (table, says) in [
            ("", "line 1: there is no column 'operator'"),
            ("operator,part\nA,1\n", "line 1: there is no column 'value'"),
            ("operator;part;value\nA;1;2\n", "with commas between"),
            ("operator,part,value\nA,1,x\n", "line 2: the value 'x'"),
            (
                "operator,part,value\nA,1,1\nA,1,inf\n",
                "line 3: the value 'inf'",
            ),
            ("operator,part,value\nA,1,1,5\n", "line 2: it has 4 columns"),
            ("operator,part,value\nA,,1\n", "line 2: the part is missing"),
            (
                "operator,part,repeat,value\nA,1,1,1\nB,1,1,1\nA,1,1,2\n",
                "line 4: operator, part and repeat are those of line 2",
            ),
            ("operator,part,value\nA,1,1\n", "two operators"),
            (
                "operator,part,value\nA,1,1\nA,1,1\nA,2,1\nA,2,1\nB,1,1\nB,1,1\nB,2,1\n",
                "operator \"B\" read part \"2\" 1 times",
            ),
            ("operator,part,value\nA,1,\u{1b}[2J\n", "line 2"),
        ] {
            let refusal = study(table.as_bytes()).unwrap_err().to_string();
            assert!(refusal.contains(says), "{refusal}");
            assert!(refusal.contains("study.csv"), "{refusal}");
            assert!(!refusal.contains(char::is_control), "{refusal}");
        }
        let refusal = study(b"operator,part,value\nA,\xff,1\n")
            .unwrap_err()
            .to_string();
        assert!(
            refusal.contains("line 2: it is no text in UTF-8"),
            "{refusal}"
        );
    }
}
