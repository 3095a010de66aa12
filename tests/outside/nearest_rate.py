"""How many nearest places a second, thread for thread, beside Open3D's
ray-casting scene, on the same 100 k-triangle shell and the same 120 k points."""

import json
import statistics
import subprocess
import time

import numpy as np
import open3d as o3d
import trimesh

from common import Checks, optimised_example, work_folder

ROUNDS = 9
#: At least so many times Open3D's rate.
WANTED = 2.0
#: trimesh answers so few that a part of the points must do.
FEW = 2_000


def timed(work) -> tuple[float, object]:
    started = time.perf_counter()
    answer = work()
    return time.perf_counter() - started, answer


def main() -> None:
    checks, work = Checks(), work_folder("nearest_rate")
    program = optimised_example("archproof-mesh", "nearest_rate")
    subprocess.run([program, "write", work], check=True)
    vertices = np.fromfile(work / "vertices.f32", "<f4").reshape(-1, 3)
    triangles = np.fromfile(work / "triangles.u32", "<u4").reshape(-1, 3)
    points = np.fromfile(work / "points.f32", "<f4").reshape(-1, 3)
    queries = o3d.core.Tensor(points)
    print(f"{len(triangles)} triangles, {len(points)} points, medians of {ROUNDS} rounds")

    for threads in (1, 2):
        scene = o3d.t.geometry.RaycastingScene(nthreads=threads)
        scene.add_triangles(o3d.core.Tensor(vertices), o3d.core.Tensor(triangles))
        # The scene builds its tree at the first question.
        build, _ = timed(lambda: scene.compute_distance(queries[:1], nthreads=threads))
        own, own_build, places, distances = [], [], [], []
        for _ in range(ROUNDS):
            line = subprocess.run(
                [program, "time", work, str(threads)], capture_output=True, check=True
            )
            figures = json.loads(line.stdout)
            own.append(figures["query_s"])
            own_build.append(figures["build_s"])
            # All that archproof answers too: place, triangle, weights.
            places.append(timed(lambda: scene.compute_closest_points(queries, nthreads=threads))[0])
            seconds, theirs = timed(lambda: scene.compute_distance(queries, nthreads=threads))
            distances.append(seconds)

        def rate(seconds: list[float]) -> float:
            return len(points) / statistics.median(seconds) / 1e6

        quickest = max(rate(places), rate(distances))
        ratio = rate(own) / quickest
        print(
            f"{threads} thread(s): archproof {rate(own):.2f} M/s; Open3D places"
            f" {rate(places):.2f}, distances alone {rate(distances):.2f} M/s; ratio {ratio:.2f}"
            f" (wanted {WANTED}); tree built in {1e3 * statistics.median(own_build):.0f} ms"
            f" (Open3D {1e3 * build:.0f} ms)"
        )
        checks.check(f"rate on {threads} thread(s)", ratio >= WANTED, f"ratio {ratio:.2f}")
        ours = np.fromfile(work / "distances.f64", "<f8")
        worst = np.abs(ours - theirs.numpy()).max()
        print(f"largest difference of a distance {worst:.1e} mm")
        checks.check(f"distances on {threads} thread(s)", worst <= 1e-5, f"{worst} mm")

    mesh = trimesh.Trimesh(vertices, triangles, process=False)
    trimesh.proximity.closest_point(mesh, points[:1])
    seconds, (_, theirs, _) = timed(lambda: trimesh.proximity.closest_point(mesh, points[:FEW]))
    print(f"trimesh (one thread, {FEW} points): {FEW / seconds / 1e6:.4f} M/s")
    worst = np.abs(ours[:FEW] - theirs).max()
    checks.check("distances against trimesh", worst <= 1e-5, f"{worst} mm")
    checks.close()


if __name__ == "__main__":
    main()
