"""Shards of a batch on a local Dask cluster of four workers, one of which is
killed in the middle: nothing is lost and nothing doubled."""

import os
import signal
import subprocess
import time
from pathlib import Path

from distributed import Client, LocalCluster

from batch_folder import CASES, EDGE_MM, batch, cases, fresh, program
from common import Checks

WORKERS, SHARDS = 4, 8
#: Of util-linux: the program is killed when its parent is gone.
DIE_WITH_WORKER = ["setpriv", "--pdeathsig", "KILL", "--"]
FILES = ["results.jsonl", "summary.csv", "summary.parquet", "findings.csv", "findings.parquet"]


def check_shard(command: list[str], tried: str) -> None:
    """Checks a share; goes on where a killed worker left it. The program dies
    with its worker, as it does with the container or job of any queue."""
    Path(f"{tried}-by-{os.getpid()}").touch()
    done = subprocess.run([*DIE_WITH_WORKER, *command], capture_output=True, text=True)
    if done.returncode not in (0, 1):
        raise RuntimeError(done.stderr)


def records(out: Path) -> int:
    return len(list(out.glob("*/cases/*/record.json")))


def main() -> None:
    checks = Checks()
    folder, out, whole = cases(CASES, EDGE_MM), fresh("shards"), fresh("whole")
    out.mkdir()
    subprocess.run(batch(folder, whole), capture_output=True)
    with (
        LocalCluster(n_workers=WORKERS, threads_per_worker=1, dashboard_address=None) as cluster,
        Client(cluster) as client,
    ):
        numbers = range(1, SHARDS + 1)
        shard = ["--threads", "1", "--resume", "--shard"]
        commands = [batch(folder, out / str(n), *shard, f"{n}/{SHARDS}") for n in numbers]
        tried = [str(out / f"try-{n}") for n in numbers]
        runs = client.map(check_shard, commands, tried, retries=5, pure=False)
        while records(out) < CASES // 4:
            time.sleep(0.02)
        victim = next(iter(client.run(os.getpid).values()))
        os.kill(victim, signal.SIGKILL)
        print(f"worker killed with {records(out)} of {CASES + 1} cases done")
        client.gather(runs)
    tries = len(list(out.glob("try-*")))
    print(f"{SHARDS} shards in {tries} tries")
    checks.check("the kill hit a shard in hand", tries > SHARDS, str(tries))
    joined = fresh("joined")
    shards = [str(out / str(number)) for number in range(1, SHARDS + 1)]
    collected = subprocess.run(
        [program(), "collect", *shards, "--out", str(joined)], capture_output=True, text=True
    )
    print(collected.stdout.strip() or collected.stderr.strip())
    checks.check("exit status", collected.returncode == 1, str(collected.returncode))
    for name in FILES:
        same = (joined / name).read_bytes() == (whole / name).read_bytes()
        checks.check(f"{name} as of one undisturbed run", same)
    checks.close()


if __name__ == "__main__":
    main()
