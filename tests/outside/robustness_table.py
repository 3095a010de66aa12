"""The outcome of every file of the shared robustness data beside trimesh's
counts, as the committed table `crates/mesh/tests/robustness_outcomes.md`.
Fails where the table is out of date, or where counts differ and nothing
explains it. `robustness_table.py --write` writes the table anew."""

import json
import logging
import subprocess
import sys

import numpy as np
import trimesh

from common import DATA, ROOT, Checks, example

TABLE = ROOT / "crates" / "mesh" / "tests" / "robustness_outcomes.md"
HEAD = """\
# What becomes of every file of the shared robustness data

Made by `tests/outside/robustness_table.py --write`, which holds the counts against trimesh's
(loaded without its own processing; of its vertices, exactly equal ones count once and unused ones
not at all). Kept by `crates/mesh/tests/robustness.rs`.

| file | outcome | triangles | vertices | trimesh: triangles | vertices | why, or why they differ |
| --- | --- | --- | --- | --- | --- | --- |
"""


def by_trimesh(path) -> tuple[int, int, int] | str:
    """Triangles, different vertices in use, and triangles that are neither
    without area by their corners nor given before; or why it has none."""
    try:
        mesh = trimesh.load(path, process=False, force="mesh")
        if len(mesh.faces) == 0:
            return "finds no triangles"
        corners = np.asarray(mesh.vertices, dtype=np.float64)[mesh.faces].reshape(-1, 3) + 0.0
    except Exception as error:  # whatever a foreign reader throws
        return f"cannot read it ({type(error).__name__})"
    vertices, numbers = np.unique(corners, axis=0, return_inverse=True)
    faces = np.sort(numbers.reshape(-1, 3), axis=1)
    sound = faces[(faces[:, 0] != faces[:, 1]) & (faces[:, 1] != faces[:, 2])]
    kept = np.unique(sound, axis=0)
    return len(mesh.faces), len(vertices), len(kept), len(np.unique(kept))


def row(name: str, ours: dict, path) -> tuple[str, bool]:
    """A line of the table, and whether all of it is explained."""
    theirs = by_trimesh(path)
    shown = theirs if isinstance(theirs, tuple) else ("", "", 0, 0)
    reasons = [f"trimesh {theirs}"] if isinstance(theirs, str) else []
    explained = True
    if "reason" in ours:
        outcome, counts, reasons = "refused", ("", ""), [ours["reason"], *reasons]
    else:
        outcome = "read, with a warning" if ours["warnings"] else "read"
        counts = (ours["triangles"], ours["vertices"])
        reasons = [*ours["warnings"], *reasons]
        if isinstance(theirs, tuple) and counts != theirs[:2]:
            explained = counts == theirs[2:]
            reasons.append(
                "the same once trimesh's triangles without area or given twice are left out"
                if explained
                else "NOT EXPLAINED"
            )
    cells = [f"`{name}`", outcome, *counts, *shown[:2], "; ".join(reasons)]
    return "| " + " | ".join(str(cell).replace("|", "\\|") for cell in cells) + " |\n", explained


def main() -> None:
    logging.getLogger("trimesh").setLevel(logging.CRITICAL)
    checks = Checks()
    folder = DATA / "robustness"
    files = sorted(path for path in folder.rglob("*") if path.is_file())
    if not files:
        checks.skip("all", f"no shared data at {folder}")
        checks.close()
    figures = example("figures")
    lines = subprocess.run([figures, *files], capture_output=True, text=True, check=True)
    table = HEAD
    for path, line in zip(files, lines.stdout.splitlines(), strict=True):
        name = str(path.relative_to(folder))
        text, explained = row(name, json.loads(line), path)
        checks.check(f"{name}: counts differ, and nothing says why", explained, text)
        table += text
    if "--write" in sys.argv:
        TABLE.write_text(table)
    checks.check("the table is up to date", TABLE.read_text() == table, "write it with --write")
    checks.close()


if __name__ == "__main__":
    main()
