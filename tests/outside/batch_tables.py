"""The tables of a batch by DuckDB: Parquet, CSV and JSON hold the same rows, of
the kinds that `archproof schema` names."""

import json
import subprocess

import duckdb

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
    checks.close()


if __name__ == "__main__":
    main()
