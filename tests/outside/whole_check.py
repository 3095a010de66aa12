"""The whole check, files read and all outputs written, beside
`reference_check.py`, which does the same over trimesh, Open3D and scipy: wall
time, peak memory, ratio. `whole_check.py [IMPRESSION TRAY]`; without files, a
phantom of 250 k triangles with a tray of 100 k is made."""

import json
import os
import statistics
import subprocess
import sys
import time
from pathlib import Path

from common import Checks, optimised_example, program, work_folder

ROUNDS = 5
MOST_SECONDS, MOST_MB, TIMES_QUICKER = 1.0, 500.0, 10.0
#: Run apart: a process counts the memory of the one that it was started from.
CONVERT = "import sys, trimesh; trimesh.load(sys.argv[1]).export(sys.argv[2])"
#: Edges, mm, that give the wanted number of triangles.
IMPRESSION_EDGE, TRAY_EDGE = "0.325", "0.472"
SEED = "3"


def phantom_scans(folder: Path) -> tuple[Path, Path]:
    """One phantom, sampled twice."""
    impression, tray = folder / "impression.ply", folder / "tray.stl"
    make = optimised_example("archproof-phantom", "make")
    for kept, scan, edge in ((impression, "impression", IMPRESSION_EDGE), (tray, "tray", TRAY_EDGE)):
        subprocess.run([make, folder / "made", "maxillary", SEED, edge], check=True)
        made = folder / "made" / f"{scan}.stl"
        subprocess.run([sys.executable, "-c", CONVERT, made, kept], check=True)
    return impression, tray


def run(command: list) -> tuple[float, float, str, int]:
    """Wall seconds, peak memory in MB, standard output, exit status."""
    started = time.perf_counter()
    process = subprocess.Popen(
        [str(part) for part in command], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    )
    output = process.stdout.read()
    _, status, usage = os.wait4(process.pid, 0)
    seconds = time.perf_counter() - started
    return seconds, usage.ru_maxrss / 1024, output, os.waitstatus_to_exitcode(status)


def main() -> None:
    checks, work = Checks(), work_folder("whole_check")
    scans = [Path(a) for a in sys.argv[1:3]] if len(sys.argv) > 2 else phantom_scans(work)
    impression, tray = scans
    archproof = program()
    reference = Path(__file__).with_name("reference_check.py")
    own_command = [archproof, "check", impression, "--arch", "maxillary", "--tray", tray]
    own_command += ["--out", work / "archproof"]

    own, theirs, steps = [], [], []
    own_mb = their_mb = 0.0
    for _ in range(ROUNDS):
        seconds, mb, _, status = run(own_command)
        if status not in (0, 1):
            sys.exit(f"archproof check ended with status {status}")
        own.append(seconds)
        own_mb = max(own_mb, mb)
        seconds, mb, output, status = run(
            [sys.executable, reference, impression, tray, work / "reference"]
        )
        if status != 0:
            sys.exit(f"{reference.name} ended with status {status}")
        theirs.append(seconds)
        steps.append(json.loads(output.splitlines()[-1]))
        their_mb = max(their_mb, mb)

    ours_s, theirs_s = statistics.median(own), statistics.median(theirs)
    imports = statistics.median(step["imports"] for step in steps)
    counts = steps[0].pop("triangles")
    print(f"impression {counts[0]}, tray {counts[1]} triangles; medians of {ROUNDS} rounds")
    for step in steps[0]:
        print(f"  reference, {step}: {statistics.median(s[step] for s in steps):.2f} s")
    print(
        f"archproof {ours_s:.2f} s, {own_mb:.0f} MB; reference {theirs_s:.2f} s, {their_mb:.0f} MB:"
        f" {theirs_s / ours_s:.1f} times ({(theirs_s - imports) / ours_s:.1f} without its imports)"
    )
    checks.check(f"at most {MOST_SECONDS} s", ours_s <= MOST_SECONDS, f"{ours_s:.2f} s")
    checks.check(f"under {MOST_MB} MB", own_mb < MOST_MB, f"{own_mb:.0f} MB")
    checks.check(
        f"{TIMES_QUICKER} times quicker", theirs_s >= TIMES_QUICKER * ours_s, f"{theirs_s / ours_s:.1f}"
    )

    # Both must have done the job: they agree on what they measured.
    cover = json.loads((work / "archproof" / "result.json").read_text())["impressions"][0]["cover"]
    other = json.loads((work / "reference" / "result.json").read_text())["cover"]
    for figure in ("min_mm", "median_mm"):
        print(f"cover {figure}: archproof {cover[figure]:.3f}, reference {other[figure]:.3f}")
    checks.close()


if __name__ == "__main__":
    main()
