"""The tables of a batch by DuckDB: Parquet, CSV and JSON hold the same rows, of
the kinds that `archproof schema` names. The workbook by openpyxl: numbers are
numbers, times are times, and each link leads to a report."""

import datetime
import json
import subprocess

import duckdb
import openpyxl

from batch_folder import CASES, EDGE_MM, batch, cases, fresh, program
from common import Checks

#: Each table: its name in `archproof schema`, and its three files.
TABLES = {
    "summary": ("results.jsonl", "summary.csv", "summary.parquet"),
    "findings": ("findings.jsonl", "findings.csv", "findings.parquet"),
}
KINDS = {
    "VARCHAR": "string",
    "DOUBLE": "number",
    "UBIGINT": "integer",
    "BIGINT": "integer",
    "BOOLEAN": "boolean",
}


def kind_of(column: dict) -> str:
    kind = column["type"]
    return next(k for k in kind if k != "null") if isinstance(kind, list) else kind


def workbook(checks: Checks, out) -> None:
    sheet = openpyxl.load_workbook(out / "summary.xlsx").active
    rows = list(sheet.iter_rows(min_row=2))
    cases = duckdb.sql(f"SELECT count(DISTINCT folder) FROM read_parquet('{out / 'summary.parquet'}')")
    checks.check("workbook: a row a case", len(rows) == cases.fetchall()[0][0], str(len(rows)))
    read = [row for row in rows if row[2].value != "could not be read"]
    links = [row[4].hyperlink.target for row in read]
    checks.check("workbook: links", all((out / link).is_file() for link in links), str(links[:2]))
    checks.check("workbook: times", all(isinstance(row[5].value, datetime.datetime) for row in read))
    numbers = [row[k].value for row in read for k in (6, 7) if row[k].value is not None]
    checks.check("workbook: numbers", bool(numbers) and all(isinstance(n, (int, float)) for n in numbers))
    print(f"workbook: {len(rows)} rows")


def main() -> None:
    checks = Checks()
    out = fresh("tables")
    status = subprocess.run(batch(cases(CASES, EDGE_MM), out), capture_output=True).returncode
    checks.check("exit status with one unreadable case", status == 1, str(status))
    for table, (lines, text, parquet) in TABLES.items():
        schema = json.loads(subprocess.check_output([program(), "schema", table]))
        columns = {name: kind_of(about) for name, about in schema["properties"].items()}
        described = duckdb.sql(f"DESCRIBE SELECT * FROM read_parquet('{out / parquet}')").fetchall()
        kinds = {name: KINDS.get(kind, kind) for name, kind, *_ in described}
        checks.check(f"{table}: columns of Parquet", kinds == columns, f"{kinds} {columns}")
        checks.check(f"{table}: order of columns", list(kinds) == [d[0] for d in described])
        wanted = {name: kind for name, kind, *_ in described}
        from_parquet = duckdb.sql(f"SELECT * FROM read_parquet('{out / parquet}')").fetchall()
        from_csv = duckdb.read_csv(str(out / text), header=True, dtype=wanted).fetchall()
        from_json = [
            tuple(json.loads(line)[name] for name in wanted)
            for line in (out / lines).read_text().splitlines()
        ]
        checks.check(f"{table}: rows", len(from_parquet) > CASES, str(len(from_parquet)))
        checks.check(f"{table}: CSV as Parquet", from_csv == from_parquet)
        checks.check(f"{table}: JSON as Parquet", from_json == from_parquet)
        print(f"{table}: {len(from_parquet)} rows, {len(wanted)} columns")
    workbook(checks, out)
    checks.close()


if __name__ == "__main__":
    main()
