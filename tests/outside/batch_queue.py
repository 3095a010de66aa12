"""The job files of `archproof help queue`, read as their systems read them and run by local
workers: the shares that they check, joined, are one undisturbed batch."""

import os
import re
import subprocess
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import yaml

from batch_folder import CASES, EDGE_MM, batch, cases, fresh, program
from batch_shards import FILES
from common import Checks

WORKERS = 2


def blocks(language: str) -> list[str]:
    """The blocks of code in a language on the page."""
    page = subprocess.run([program(), "help", "queue"], capture_output=True, text=True, check=True)
    return re.findall(rf"^```{language}\n(.*?)^```$", page.stdout, re.DOTALL | re.MULTILINE)


def run(command: list[str], data: Path, environment: dict[str, str]) -> int:
    """Runs a command of a job file, with `/data` lying elsewhere."""
    here = [part.replace("/data/", f"{data}/") for part in command]
    path = f"{program().parent}:{os.environ['PATH']}"
    done = subprocess.run(
        here, env={**os.environ, "PATH": path, **environment}, capture_output=True, text=True
    )
    if done.returncode > 1:
        print(done.stderr.strip())
    return done.returncode


def all_of(shares: list[tuple[list[str], dict[str, str]]], data: Path) -> list[int]:
    """Runs all shares, some at a time; their exit statuses."""
    with ThreadPoolExecutor(WORKERS) as pool:
        return list(pool.map(lambda share: run(share[0], data, share[1]), shares))


def options(script: str) -> dict[str, str]:
    """What a batch script asks of Slurm."""
    return dict(re.findall(r"^#SBATCH --([\w-]+)=(\S+)$", script, re.MULTILINE))


def data_folder(name: str) -> Path:
    """A stand-in for `/data` that holds the cases and no result."""
    data = fresh(name)
    (data / "results").mkdir(parents=True)
    (data / "cases").symlink_to(cases(CASES, EDGE_MM))
    return data


def slurm(checks: Checks) -> Path:
    """Runs the array and the join; where the results lie."""
    array, join = blocks("bash")
    first, last = map(int, options(array)["array"].split("-"))
    checks.check("as many shares as jobs", f"/{last}" in array and first == 1, array)
    data = data_folder("slurm")
    shares = [
        (["bash", "-c", array], {"SLURM_ARRAY_TASK_ID": str(number)})
        for number in range(first, last + 1)
    ]
    statuses = all_of(shares, data)
    checks.check("every share of the array", max(statuses) <= 1, str(statuses))
    checks.check("one share holds the case that cannot be read", sum(statuses) == 1, str(statuses))
    status = run(["bash", "-c", join], data, {})
    checks.check("the join of the array", status == 1, str(status))
    return data / "results"


def kubernetes(checks: Checks) -> Path:
    """Runs the indexed job and a join; where the results lie."""
    (text,) = blocks("yaml")
    job = yaml.safe_load(text)
    spec = job["spec"]
    kind = (job["apiVersion"], job["kind"], spec["completionMode"])
    checks.check("an indexed job", kind == ("batch/v1", "Job", "Indexed"), str(kind))
    count = spec["completions"]
    container = spec["template"]["spec"]["containers"][0]
    command = [*container["command"], *container["args"]]
    checks.check("as many shares as completions", f"/{count}" in command[-1], command[-1])
    claims = {volume["name"] for volume in spec["template"]["spec"]["volumes"]}
    mounts = {mount["name"]: mount["mountPath"] for mount in container["volumeMounts"]}
    checks.check("its storage is mounted", mounts.keys() == claims and "/data" in mounts.values())
    data = data_folder("kubernetes")
    shares = [(command, {"JOB_COMPLETION_INDEX": str(index)}) for index in range(count)]
    statuses = all_of(shares, data)
    checks.check("every index of the job", statuses == [0] * count, str(statuses))
    results = [str(data / "results" / str(number)) for number in range(1, count + 1)]
    joined = data / "results" / "all"
    subprocess.run([program(), "collect", *results, "--out", str(joined)], capture_output=True)
    return data / "results"


def main() -> None:
    checks = Checks()
    whole = fresh("whole")
    subprocess.run(batch(cases(CASES, EDGE_MM), whole), capture_output=True)
    for results in (slurm(checks), kubernetes(checks)):
        for name in FILES:
            same = (results / "all" / name).read_bytes() == (whole / name).read_bytes()
            checks.check(f"{results.parent.name}: {name} as of one undisturbed run", same)
    checks.close()


if __name__ == "__main__":
    main()
