/* What of a surface shows at a point of the page. Triangles that follow each other lie together:
   a ball round each run of them tells which runs to look at. */

const RUN = 48;

/* Balls round the runs of triangles: middle and radius, mm. */
function ballsRound(places, corners) {
  const count = Math.ceil(corners.length / (3 * RUN));
  const balls = new Float32Array(count * 4);
  for (let run = 0; run < count; run += 1) {
    const vertices = corners.subarray(run * 3 * RUN, (run + 1) * 3 * RUN);
    const low = [Infinity, Infinity, Infinity];
    const high = [-Infinity, -Infinity, -Infinity];
    for (const vertex of vertices) {
      for (let k = 0; k < 3; k += 1) {
        low[k] = Math.min(low[k], places[vertex * 3 + k]);
        high[k] = Math.max(high[k], places[vertex * 3 + k]);
      }
    }
    for (let k = 0; k < 3; k += 1) balls[run * 4 + k] = (low[k] + high[k]) / 2;
    balls[run * 4 + 3] = Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]) / 2;
  }
  return balls;
}

/* The nearest triangle on the line of sight through a place: its first corner's index, the weight
   of each corner, and how far toward whoever looks it lies, mm. Null where there is none. */
function seenAt(surface, axes, place) {
  const { places, corners, balls } = surface;
  const [across, up, toward] = axes;
  const [x, y] = [dot(across, place), dot(up, place)];
  const along = (axis, vertex) =>
    axis[0] * places[vertex * 3] + axis[1] * places[vertex * 3 + 1] + axis[2] * places[vertex * 3 + 2];
  let nearest = null;

  function look(first) {
    const [a, b, c] = [corners[first], corners[first + 1], corners[first + 2]];
    const [ax, bx, cx] = [along(across, a) - x, along(across, b) - x, along(across, c) - x];
    const [ay, by, cy] = [along(up, a) - y, along(up, b) - y, along(up, c) - y];
    const parts = [bx * cy - by * cx, cx * ay - cy * ax, ax * by - ay * bx];
    const whole = parts[0] + parts[1] + parts[2];
    if (whole === 0 || parts.some((part) => part * whole < 0)) return;
    const weights = parts.map((part) => part / whole);
    const depth = weights[0] * along(toward, a) + weights[1] * along(toward, b) + weights[2] * along(toward, c);
    if (!nearest || depth > nearest.depth) nearest = { first, weights, depth };
  }

  for (let ball = 0; ball < balls.length; ball += 4) {
    const radius = balls[ball + 3];
    const [bx, by, bz] = [balls[ball], balls[ball + 1], balls[ball + 2]];
    const right = across[0] * bx + across[1] * by + across[2] * bz - x;
    const upward = up[0] * bx + up[1] * by + up[2] * bz - y;
    if (right * right + upward * upward > radius * radius) continue;
    const from = (ball / 4) * 3 * RUN;
    const to = Math.min(from + 3 * RUN, corners.length);
    for (let first = from; first < to; first += 3) look(first);
  }
  return nearest;
}

/* Whether a place of the surface shows, or lies behind other surface. */
function isShown(surface, axes, place) {
  const SLACK_MM = 0.6;
  const seen = seenAt(surface, axes, place);
  return !seen || seen.depth <= dot(axes[2], place) + SLACK_MM;
}

/* Thickness (mm, null where it is not known) and part of the arch where a line of sight meets. */
function readingAt(surface, seen) {
  const { numbers, corners, given } = surface;
  const vertices = [0, 1, 2].map((k) => corners[seen.first + k]);
  const steps = vertices.map((vertex) => numbers[vertex * NUMBERS + 3]);
  const mean = steps.reduce((sum, step, k) => sum + step * seen.weights[k], 0);
  const { from_mm, step_mm } = given.thickness;
  const nearest = seen.weights.indexOf(Math.max(...seen.weights));
  const part = numbers[vertices[nearest] * NUMBERS + 4];
  return {
    mm: steps.includes(0) ? null : from_mm + (mean - 1) * step_mm,
    part: part > 0 ? given.parts[part - 1] : null,
  };
}
