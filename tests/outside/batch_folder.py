"""What `batch_*.py` share: a folder of invented cases, and runs over it."""

import shutil
import subprocess
from functools import cache
from pathlib import Path

import common
from common import example, work_folder


#: Few and coarse: what is looked at is how they are gone through.
CASES, EDGE_MM = 24, 0.9


#: The command, built once.
program = cache(common.program)


def cases(count: int, edge_mm: float) -> Path:
    """A folder of that many invented cases, made anew, with one more whose
    scan cannot be read."""
    folder = work_folder("batch") / f"cases-{count}-{edge_mm}"
    if not (folder / "made").exists():
        shutil.rmtree(folder, ignore_errors=True)
        maker = example("make_cases")
        subprocess.run([maker, folder, str(count), str(edge_mm)], check=True)
        cut = folder / "cut"
        cut.mkdir()
        (cut / "case.toml").write_text('case = "T-cut"\n[maxillary]\nfirst_pass = "cut.ply"\n')
        (cut / "cut.ply").write_bytes((folder / "00000" / "first.ply").read_bytes()[:5000])
        (folder / "made").touch()
    return folder


def fresh(name: str) -> Path:
    """A folder of that name that holds nothing yet."""
    folder = work_folder("batch") / name
    shutil.rmtree(folder, ignore_errors=True)
    return folder


def batch(folder: Path, out: Path, *arguments: str) -> list[str]:
    """The command over a folder of cases."""
    return [str(program()), "batch", str(folder), "--out", str(out), *arguments]
