"""A batch killed (`kill -9`) at a third and again at two thirds, then taken up
again: what was done is not done anew, and the results are those of a run that
nobody disturbed. `batch_killed.py [CASES] [EDGE_MM]`."""

import subprocess
import sys
import time
from hashlib import sha256
from pathlib import Path

from batch_folder import CASES, EDGE_MM, batch, cases, fresh
from common import Checks


def done(out: Path) -> dict[Path, int]:
    """Cases whose result is whole, each with the moment of its writing."""
    return {file: file.stat().st_mtime_ns for file in out.glob("cases/*/record.json")}


def digests(out: Path) -> dict[str, str]:
    """Of every file below a folder, by its path there."""
    files = (file for file in out.rglob("*") if file.is_file())
    return {str(file.relative_to(out)): sha256(file.read_bytes()).hexdigest() for file in files}


def main() -> None:
    checks = Checks()
    count = int(sys.argv[1]) if len(sys.argv) > 1 else CASES
    edge_mm = float(sys.argv[2]) if len(sys.argv) > 2 else EDGE_MM
    folder, whole, out = cases(count, edge_mm), fresh("whole"), fresh("killed")
    subprocess.run(batch(folder, whole), capture_output=True)
    command = batch(folder, out, "--resume")
    for part in (1, 2):
        before = done(out)
        child = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        while child.poll() is None and len(done(out)) < part * count // 3:
            time.sleep(0.01)
        child.kill()
        child.wait()
        print(f"killed with {len(done(out))} of {count + 1} cases done")
        checks.check("the kill hit a batch in hand", child.returncode < 0, str(child.returncode))
        checks.check("nothing was done anew", before.items() <= done(out).items())
    before = done(out)
    status = subprocess.run(command, capture_output=True).returncode
    checks.check("exit status with one unreadable case", status == 1, str(status))
    checks.check("nothing was done anew after it", before.items() <= done(out).items())
    left, wanted = digests(out), digests(whole)
    checks.check("the same files", left.keys() == wanted.keys(), str(left.keys() ^ wanted.keys()))
    unlike = [name for name in wanted if left.get(name) != wanted[name]]
    checks.check("the same bytes", not unlike, ", ".join(unlike))
    print(f"{len(wanted)} files compared")
    checks.close()


if __name__ == "__main__":
    main()
