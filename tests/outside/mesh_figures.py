"""Counts, area, volume, connected parts and boundary loops of mesh files
against trimesh (loading, area, volume) and scipy (connected parts)."""

import json
import logging
import subprocess

import numpy as np
import trimesh
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components

from common import DATA, Checks, example

FOLDERS = ["robustness", "scans"]
#: Relative: trimesh keeps coordinates written as text in single precision.
TOLERANCE = 1e-7


def parts(pairs: np.ndarray) -> np.ndarray:
    """A label of the connected part of each number that occurs in the pairs."""
    numbers, compact = np.unique(pairs, return_inverse=True)
    a, b = compact.reshape(-1, 2).T
    size = len(numbers)
    return connected_components(coo_array((np.ones(len(a)), (a, b)), (size, size)))[1]


def reference(path) -> dict:
    """The figures by trimesh, of what an honest reader keeps: exactly equal
    vertices are one, triangles with a corner twice and triangles given twice go."""
    loaded = trimesh.load(path, process=False, force="mesh")
    corners = np.asarray(loaded.vertices)[loaded.faces].reshape(-1, 3) + 0.0
    vertices, numbers = np.unique(corners, axis=0, return_inverse=True)
    faces = numbers.reshape(-1, 3)
    faces = faces[(faces != np.roll(faces, 1, axis=1)).all(axis=1)]
    firsts = np.unique(np.sort(faces, axis=1), axis=0, return_index=True)[1]
    mesh = trimesh.Trimesh(vertices, faces[np.sort(firsts)], process=False)
    mesh.remove_unreferenced_vertices()
    edges = np.sort(mesh.edges, axis=1)
    unique, count = np.unique(edges, axis=0, return_counts=True)
    boundary = unique[count == 1]
    once_each = len(boundary) == 0 or (np.unique(boundary, return_counts=True)[1] == 2).all()
    loops = np.bincount(parts(boundary)) if len(boundary) else np.array([], int)
    return {
        "vertices": len(mesh.vertices),
        "triangles": len(mesh.faces),
        "area": float(mesh.area),
        # Wound both ways, a mesh has a volume of any size.
        "signed_volume": float(mesh.volume)
        if (count == 2).all() and mesh.is_winding_consistent
        else None,
        "non_manifold_edges": int((count > 2).sum()),
        # Loops that touch at a vertex may be counted as one or as two.
        "boundary_loops": sorted(loops.tolist(), reverse=True) if once_each else None,
    }


def main() -> None:
    logging.getLogger("trimesh").setLevel(logging.CRITICAL)
    checks = Checks()
    files = sorted(
        path
        for folder in FOLDERS
        for path in (DATA / folder).rglob("*")
        if path.suffix.lower() in (".stl", ".ply", ".obj")
    )
    if not files:
        checks.skip("all", f"no shared data at {DATA}")
        checks.close()
    figures = example("figures")
    lines = subprocess.run([figures, *files], capture_output=True, text=True, check=True)
    for path, line in zip(files, lines.stdout.splitlines(), strict=True):
        ours, name = json.loads(line), str(path.relative_to(DATA))
        if "error" in ours:
            checks.skip(name, "refused: " + ours["error"].replace(str(DATA), ""))
            continue
        try:
            theirs = reference(path)
        except Exception as error:  # whatever a foreign reader throws
            checks.skip(name, f"trimesh cannot read it: {type(error).__name__}: {error}")
            continue
        if theirs["triangles"] == 0:
            checks.skip(name, "trimesh finds no triangles in it")
            continue
        for what in ("vertices", "triangles", "non_manifold_edges", "boundary_loops"):
            if theirs[what] is not None:
                same = ours[what] == theirs[what]
                checks.check(f"{name} {what}", same, f"{ours[what]}, trimesh {theirs[what]}")
        for what in ("area", "signed_volume"):
            a, b = ours[what], theirs[what]
            if b is not None:
                close = a is not None and abs(a - b) <= TOLERANCE * abs(b)
                checks.check(f"{name} {what}", close, f"{a}, trimesh {b}")
    checks.close()


if __name__ == "__main__":
    main()
