/* The section through a place: where a plane along the seating axis, square to the border nearest
   by, cuts the surface. */

/* What is shown on either side of the place, mm. */
const ASIDE_MM = 16;
/* The border's direction is that between its points so far before and after. */
const BORDER_SPAN = 4;

/* Directions of the plane through a place: away from the middle of the arch, toward the tissue,
   and square to both. */
function planeAt(surface, place) {
  const toward = axesOf(surface.given.views[0].turn)[2];
  const flat = (way) => {
    const along = dot(way, toward);
    return way.map((part, k) => part - along * toward[k]);
  };
  const between = (from, to) => to.map((part, k) => part - from[k]);
  const { border } = surface;
  const gone = border.map((point) => Math.hypot(...flat(between(place, point))));
  const nearest = gone.indexOf(Math.min(...gone));
  const point = (k) => border[Math.min(border.length - 1, Math.max(0, k))];
  const along = nearest < 0 ? [0, 0, 0] : flat(between(point(nearest - BORDER_SPAN), point(nearest + BORDER_SPAN)));
  const square = Math.hypot(...along) > 0 ? unit(along) : axesOf(surface.given.views[0].turn)[0];
  const outward = cross(square, toward);
  const sign = dot(outward, place) < 0 ? -1 : 1;
  return [outward.map((part) => sign * part), toward, square];
}

function cross(a, b) {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/* Pieces of the section near a place: outward and toward the tissue at either end, mm from it. */
function sectionAt(surface, place) {
  const { places, corners, balls } = surface;
  const [outward, toward, square] = planeAt(surface, place);
  const pieces = [];
  const along = (axis, vertex) =>
    axis[0] * (places[vertex * 3] - place[0]) +
    axis[1] * (places[vertex * 3 + 1] - place[1]) +
    axis[2] * (places[vertex * 3 + 2] - place[2]);

  function cut(first) {
    const three = [corners[first], corners[first + 1], corners[first + 2]];
    const off = three.map((vertex) => along(square, vertex));
    const ends = [];
    for (let k = 0; k < 3; k += 1) {
      const next = (k + 1) % 3;
      if (off[k] < 0 === off[next] < 0) continue;
      const share = off[k] / (off[k] - off[next]);
      const at = (axis) => along(axis, three[k]) * (1 - share) + along(axis, three[next]) * share;
      ends.push(at(outward), at(toward));
    }
    if (ends.length === 4 && Math.abs(ends[0]) < ASIDE_MM && Math.abs(ends[2]) < ASIDE_MM) pieces.push(ends);
  }

  for (let ball = 0; ball < balls.length; ball += 4) {
    const from = [0, 1, 2].map((k) => balls[ball + k] - place[k]);
    const radius = balls[ball + 3];
    if (Math.abs(dot(square, from)) > radius || Math.abs(dot(outward, from)) > radius + ASIDE_MM) continue;
    const start = (ball / 4) * 3 * RUN;
    const end = Math.min(start + 3 * RUN, corners.length);
    for (let first = start; first < end; first += 3) cut(first);
  }
  return pieces;
}

/* Draws it, the place in the middle, what lies toward the tissue above. */
function drawSection(svg, pieces) {
  const at = (mm) => mm.toFixed(2);
  const line = ([u, v, x, y]) => `M${at(u)} ${at(-v)}L${at(x)} ${at(-y)}`;
  const heights = pieces.flatMap(([, v, , y]) => [-v, -y]);
  const low = Math.min(-4, ...heights) - 1.5;
  const high = Math.max(4, ...heights) + 3;
  svg.setAttribute("viewBox", `${-ASIDE_MM} ${at(low)} ${2 * ASIDE_MM} ${at(high - low)}`);
  svg.querySelector("path").setAttribute("d", pieces.map(line).join(""));
  svg.querySelector("line").setAttribute("transform", `translate(0 ${at(high - 1)})`);
}
