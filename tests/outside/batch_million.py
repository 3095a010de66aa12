"""What a folder of a million cases would take: batches of 10 to 120 (with numbers as the
arguments: of so many, too) small invented cases and joins of 1 000 to 20 000, each beside the last.
Records of the joined cases are copies of a few, each under an id of its own."""

import json
import os
import shutil
import subprocess
import sys
import time
from pathlib import Path

from batch_folder import CASES, EDGE_MM, batch, cases, fresh, program
from common import Checks

#: Cases of the batches, and their edges, mm: what is looked at is how the cost grows.
BATCHES, COARSE_MM = [10, 40, 120], 2.0
#: Shards and cases of each that are joined.
JOINS = [(10, 100), (10, 1_000), (20, 1_000)]
#: Memory of a join must not grow by more than this for each further case: its row in the
#: list of inputs, and the figures that the charts need.
MOST_BYTES_A_CASE = 1_500
MILLION = 1_000_000


def run(command: list[str]) -> tuple[float, float]:
    """Seconds of all cores that a command takes, and MiB at its peak."""
    child = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
    errors = child.stderr.read().decode() if child.stderr else ""
    _, status, usage = os.wait4(child.pid, 0)
    if os.waitstatus_to_exitcode(status) not in (0, 1):
        raise RuntimeError(errors)
    return usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024


def size(folder: Path) -> int:
    return sum(file.stat().st_size for file in folder.rglob("*") if file.is_file())


def batches(counts: list[int]) -> None:
    """Batches of more and more cases."""
    print("cases  core s a case  MB a case  MiB at the peak")
    seen = []
    for count in counts:
        folder, out = cases(count, COARSE_MM), fresh("line")
        seconds, mib = run(batch(folder, out, "--threads", "2", "--memory", "256MiB"))
        each = seconds / (count + 1)
        seen.append(each)
        print(f"{count:>5}  {each:13.3f}  {size(out) / count / 1e6:9.2f}  {mib:15.0f}")
    # Printed alone: other work on the machine weighs on times.
    few, many = seen[1], seen[-1]
    print(f"a case of many beside one of few: {many / few:.2f} times as long")
    print(f"a million such cases: {many * MILLION / 86_400:.1f} days of one core")
    shutil.rmtree(fresh("line"), ignore_errors=True)


def templates() -> tuple[str, list[dict]]:
    """What a finished batch says of itself, and its records."""
    folder, out = cases(CASES, EDGE_MM), fresh("pattern")
    subprocess.run(batch(folder, out, "--no-report"), capture_output=True, check=False)
    records = [json.loads(path.read_text()) for path in sorted(out.glob("cases/*/record.json"))]
    return (out / "batch.toml").read_text(), records


def shard(folder: Path, about: str, records: list[dict], number: int, of: int, count: int) -> None:
    """The folder of a finished shard, as `batch --no-report` would leave it."""
    lines = ["folder,place"]
    for k in range(count):
        record = records[k % len(records)]
        name = f"M-{number:05}-{k:05}-0000000000000000"
        rows = record["impressions"] + record["findings"]
        for row in rows:
            row["folder"] = name
        case = folder / "cases" / name
        case.mkdir(parents=True)
        (case / "record.json").write_text(json.dumps(record))
        lines.append(f"{name},{number:05}/{k:05}/case.toml")
    (folder / "inputs.csv").write_text("\n".join(lines) + "\n")
    kept = [line for line in about.splitlines() if line.split(" = ")[0] not in ("shard", "shards")]
    (folder / "batch.toml").write_text("\n".join([*kept, f"shard = {number}", f"shards = {of}"]))


def joins(checks: Checks) -> None:
    """Joins of more and more cases."""
    about, records = templates()
    seen = []
    print("cases joined  core ms a case  MiB at the peak")
    for shards, each in JOINS:
        root, joined = fresh("many"), fresh("joined-many")
        folders = [root / str(number) for number in range(1, shards + 1)]
        for number, folder in enumerate(folders, start=1):
            shard(folder, about, records, number, shards, each)
        count = shards * each
        seconds, mib = run([str(program()), "collect", *map(str, folders), "--out", str(joined)])
        seen.append((count, seconds, mib))
        print(f"{count:>12}  {seconds / count * 1e3:14.2f}  {mib:15.0f}")
        rows = sum(1 for _ in open(joined / "inputs.csv")) - 1
        checks.check(f"every one of {count} cases", rows == count, str(rows))
        shutil.rmtree(root, ignore_errors=True)
        shutil.rmtree(joined, ignore_errors=True)
    (few, _, low), (many, seconds, high) = seen[-2], seen[-1]
    growth = (high - low) * 1024**2 / (many - few)
    checks.check("memory for each further case", growth <= MOST_BYTES_A_CASE, f"{growth:.0f} bytes")
    print(
        f"a million: {seconds / many * MILLION / 60:.0f} minutes of one core, "
        f"{(low + growth * (MILLION - few) / 1024**2) / 1024:.1f} GiB ({growth:.0f} bytes a case)"
    )


def main() -> None:
    checks = Checks()
    began = time.perf_counter()
    batches(BATCHES + [int(count) for count in sys.argv[1:]])
    joins(checks)
    print(f"{time.perf_counter() - began:.0f} s")
    checks.close()


if __name__ == "__main__":
    main()
