//! Cells under one another, as text.

/// Lines of cells, two blanks apart, each column as wide as its widest cell: the columns `left`
/// begin at their left, the others end at their right. The last cell of a row with fewer cells
/// than the first runs on.
pub(crate) fn in_columns(rows: &[Vec<String>], left: &[usize]) -> String {
    let count = rows.first().map_or(0, Vec::len);
    let runs_on = |row: &[String], column: usize| row.len() < count && column + 1 == row.len();
    let width = |column: usize| {
        let rows = rows.iter().filter(|row| !runs_on(row, column));
        let lengths = rows.filter_map(|row| Some(row.get(column)?.chars().count()));
        lengths.max().unwrap_or(0)
    };
    let widths: Vec<usize> = (0..count).map(width).collect();
    let line = |row: &Vec<String>| {
        let cells = row.iter().zip(&widths).enumerate();
        let cells = cells.map(|(column, (cell, width))| {
            if runs_on(row, column) {
                cell.clone()
            } else if left.contains(&column) {
                format!("{cell:<width$}")
            } else {
                format!("{cell:>width$}")
            }
        });
        let line = cells.collect::<Vec<_>>().join("  ");
        format!("{}\n", line.trim_end())
    };
    rows.iter().map(line).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_are_as_wide_as_their_widest_cell_and_a_short_row_runs_on() {
        let row = |cells: &[&str]| cells.iter().map(|cell| (*cell).to_owned()).collect();
        let rows = [
            row(&["tray", "mm", "where"]),
            row(&["ä", "12.50", "nowhere"]),
            row(&["b", "of the other jaw"]),
        ];
        assert_eq!(
            in_columns(&rows, &[0, 2]),
            "tray     mm  where\nä     12.50  nowhere\nb     of the other jaw\n"
        );
        assert_eq!(in_columns(&[], &[]), "");
    }
}
