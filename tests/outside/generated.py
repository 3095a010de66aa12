"""Impressions that a generator beside the project made, by another method and of another
anatomy than `crates/phantom`, with their truth."""

import json
import subprocess
import sys
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

import numpy as np
import trimesh

from common import ROOT, work_folder

GENERATOR = ROOT.parent / "shared" / "tools" / "second-phantom" / "make.py"
# The generator's own.
GRID_MM = 0.35


def make(folder: Path, *arguments: str) -> None:
    command = [sys.executable, GENERATOR, "--out", folder, *arguments]
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL)


def case(name: str, of: str = "quick", grid_mm: float = GRID_MM) -> Path:
    """The folder of a case, made where it is not there yet."""
    if grid_mm == GRID_MM:
        folder = work_folder("second_phantom") / "full"
    else:
        folder = work_folder("second_phantom_again") / f"{grid_mm}"
    if not (folder / name / "truth.json").exists():
        make(folder, "--set", of, "--only", name, "--grid", str(grid_mm))
    return folder / name


@dataclass
class Scan:
    """A scan in the frame of its truth: x, y to the front, z from tray to tissue, mm."""

    places: np.ndarray
    triangles: np.ndarray

    @cached_property
    def normals(self) -> np.ndarray:
        return trimesh.Trimesh(self.places, self.triangles, process=False).vertex_normals

    def moved(self, by: np.ndarray) -> "Scan":
        return Scan(self.places + by, self.triangles)

    def write(self, file: Path, seed: int | None = None) -> None:
        """As it lies, or in any pose that a seed chooses."""
        mesh = trimesh.Trimesh(self.places, self.triangles, process=False)
        if seed is not None:
            rng = np.random.default_rng(seed)
            pose = trimesh.transformations.random_rotation_matrix(rng.uniform(size=3))
            pose[:3, 3] = rng.uniform(-50, 50, 3)
            mesh.apply_transform(pose)
        mesh.export(file)


class Made:
    """A case as made, in the frame of its truth."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.truth = json.loads((folder / "truth.json").read_text())
        self.pose = np.array(self.truth["pose_truth_to_file_mm"])
        self.arch = self.truth["arch"]
        self.tray = folder / self.truth["tray"]

    @cached_property
    def impression(self) -> Scan:
        mesh = trimesh.load(self.folder / self.truth["impression"], process=True)
        return Scan(self.made(mesh.vertices), np.asarray(mesh.faces))

    def made(self, places: np.ndarray) -> np.ndarray:
        """From file coordinates, mm."""
        return (np.asarray(places) - self.pose[:3, 3]) @ self.pose[:3, :3]

    @cached_property
    def crest(self) -> np.ndarray:
        """Places of the crest line, from one end to the other."""
        outer = [s for s in self.truth["border"]["stations"] if s["wall"] == "outer"]
        outer.sort(key=lambda station: station["t_mm"])
        return self.made([station["crest"] for station in outer])

    @cached_property
    def border(self) -> np.ndarray:
        """Places of the outer border, in the order of the crest line."""
        outer = [s for s in self.truth["border"]["stations"] if s["wall"] == "outer"]
        outer.sort(key=lambda station: station["t_mm"])
        return self.made([station["point"] for station in outer])

    @property
    def right(self) -> float:
        """Which way along x the patient's right is."""
        return 1.0 if self.arch == "maxillary" else -1.0


def checked(command: Path, case_file: Path, out: Path) -> dict:
    """The result of a case."""
    run = [command, "check", case_file, "--out", out, "--no-report"]
    done = subprocess.run(run, capture_output=True, text=True)
    if done.returncode == 2:
        sys.exit(f"{case_file}: {done.stderr}")
    return json.loads((out / "result.json").read_text())
