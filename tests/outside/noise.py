"""Noise of real scans against moving least squares by scipy and numpy: each
vertex's height over a quadric through its neighbours, with what the fit itself
takes of the noise given back."""

import json
import subprocess

import numpy as np
import trimesh
from scipy.spatial import cKDTree

from common import DATA, Checks, example

FILES = [
    "robustness/ampscan/stl_file.stl",
    "robustness/ampscan/stl_file_2.stl",
    "scans/tooth-bearing-half-arch-170k.ply",
]
#: As many as two rings of triangles hold around a vertex.
NEIGHBOURS = 18
TOLERANCE = 0.25
#: Turns the median of a Gaussian's absolute values into its standard deviation.
MEDIAN_TO_SD = 1.4826


def moving_least_squares(points: np.ndarray) -> float:
    """Standard deviation of the heights over local quadrics, mm (robust)."""
    distances, near = cKDTree(points).query(points, NEIGHBOURS + 1)
    reach = distances[:, -1]
    usable = reach > 0
    distances, near, reach = distances[usable], near[usable], reach[usable]
    local = points[near] - points[near].mean(axis=1, keepdims=True)
    # Least principal axis: the height; numpy sorts eigenvalues upward.
    axes = np.linalg.eigh(np.einsum("nki,nkj->nij", local, local))[1]
    w, u, v = np.moveaxis(np.einsum("nki,nij->nkj", local, axes) / reach[:, None, None], 2, 0)
    terms = np.stack([np.ones_like(u), u, v, u * u, u * v, v * v], axis=2)
    weights = np.exp(-2 * (distances / reach[:, None]) ** 2)
    normal = np.einsum("nki,nk,nkj->nij", terms, weights, terms)
    usable = np.linalg.cond(normal) < 1e12
    normal, terms, weights = normal[usable], terms[usable], weights[usable]
    w, reach = w[usable], reach[usable]
    # Height of the vertex itself (the first neighbour) less its fitted height,
    # as a sum over all heights.
    row = np.einsum("ni,nki,nk->nk", np.linalg.solve(normal, terms[:, 0, :, None])[..., 0], terms, weights)
    row = -row
    row[:, 0] += 1
    heights = (row * w).sum(axis=1) * reach / np.sqrt((row**2).sum(axis=1))
    return MEDIAN_TO_SD * float(np.median(np.abs(heights)))


def known_noise() -> tuple[float, float]:
    """Planted and found: the reference must itself be right."""
    planted, random = 0.02, np.random.default_rng(1)
    sphere = trimesh.creation.icosphere(subdivisions=6, radius=20.0)
    out = 1 + random.normal(0, planted, len(sphere.vertices)) / 20.0
    return planted, moving_least_squares(sphere.vertices * out[:, None])


def main() -> None:
    checks = Checks()
    planted, found = known_noise()
    print(f"reference on a sphere: {found:.4f} mm where {planted} mm was planted")
    checks.check("reference", abs(found / planted - 1) < 0.05, f"{found} of {planted}")
    program = example("noise")
    for name in FILES:
        path = DATA / name
        if not path.exists():
            checks.skip(name, "the shared data are absent")
            continue
        line = subprocess.run([program, path], capture_output=True, text=True, check=True).stdout
        ours = json.loads(line)["noise_mm"]
        mesh = trimesh.load(path, process=False, force="mesh")
        points = np.unique(np.asarray(mesh.triangles).reshape(-1, 3), axis=0)
        theirs = moving_least_squares(points)
        print(f"{name}: {ours:.5f} mm, moving least squares {theirs:.5f} mm ({ours / theirs - 1:+.1%})")
        checks.check(name, abs(ours / theirs - 1) <= TOLERANCE, f"{ours}, reference {theirs}")
    checks.close()


if __name__ == "__main__":
    main()
