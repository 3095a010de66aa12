/* Which way one looks, without perspective, as the still pictures do. A turn is a unit
   quaternion [x, y, z, w] that takes a direction of the scan to the page: right, up, toward. */

/* First one turn, then another. */
function after(first, then) {
  const [ax, ay, az, aw] = then;
  const [bx, by, bz, bw] = first;
  return [
    aw * bx + ax * bw + ay * bz - az * by,
    aw * by - ax * bz + ay * bw + az * bx,
    aw * bz + ax * by - ay * bx + az * bw,
    aw * bw - ax * bx - ay * by - az * bz,
  ];
}

function unit(turn) {
  const length = Math.hypot(...turn);
  return turn.map((part) => part / length);
}

/* A turn about an axis of the page, in radians. */
function about(axis, angle) {
  const sine = Math.sin(angle / 2);
  return [axis[0] * sine, axis[1] * sine, axis[2] * sine, Math.cos(angle / 2)];
}

/* The directions of the scan that lie to the right, up and toward whoever looks. */
function axesOf([x, y, z, w]) {
  return [
    [1 - 2 * (y * y + z * z), 2 * (x * y - z * w), 2 * (x * z + y * w)],
    [2 * (x * y + z * w), 1 - 2 * (x * x + z * z), 2 * (y * z - x * w)],
    [2 * (x * z - y * w), 2 * (y * z + x * w), 1 - 2 * (x * x + y * y)],
  ];
}

/* The way from one turn to another, the shorter one; share 0 to 1. */
function between(from, to, share) {
  const along = from.reduce((sum, part, k) => sum + part * to[k], 0);
  const sign = along < 0 ? -1 : 1;
  return unit(from.map((part, k) => part * (1 - share) + sign * to[k] * share));
}

function dot(a, b) {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/* What one sees: the turn, the place in the middle of the picture (mm from the middle of the
   surface), and the scale. */
class Look {
  /* `whole` is what shows all of the surface: its middle, and the extent of the picture, mm. */
  constructor(turn, whole) {
    this.whole = whole;
    this.size = [1, 1];
    Object.assign(this, this.seen(turn));
  }

  /* The whole surface, looked at so. */
  seen(turn) {
    return { turn, middle: this.whole.middle, zoom: 1 };
  }

  /* Pixels to a millimetre where all of it shows. */
  get fitting() {
    const { extent } = this.whole;
    return Math.min(this.size[0] / extent[0], this.size[1] / extent[1]);
  }

  get scale() {
    return this.zoom * this.fitting;
  }

  get axes() {
    return axesOf(this.turn);
  }

  turnBy(right, up) {
    const turned = after(this.turn, about([0, 1, 0], right));
    this.turn = unit(after(turned, about([1, 0, 0], -up)));
  }

  /* By pixels of the page. */
  moveBy(right, up) {
    const [across, upward] = this.axes;
    const move = (k) => (across[k] * right + upward[k] * up) / this.scale;
    this.middle = this.middle.map((part, k) => part - move(k));
  }

  zoomBy(factor) {
    this.zoom = Math.min(40, Math.max(0.5, this.zoom * factor));
  }

  /* Where a place shows: pixels to the right and down; toward, mm. */
  shown(place, axes = this.axes) {
    const from = [0, 1, 2].map((k) => place[k] - this.middle[k]);
    return [
      this.size[0] / 2 + dot(from, axes[0]) * this.scale,
      this.size[1] / 2 - dot(from, axes[1]) * this.scale,
      dot(from, axes[2]),
    ];
  }

  /* A place by its share, 0 to 1, of the way from one look to another. */
  static between(from, to, share) {
    return {
      turn: between(from.turn, to.turn, share),
      middle: from.middle.map((part, k) => part * (1 - share) + to.middle[k] * share),
      zoom: from.zoom * (to.zoom / from.zoom) ** share,
    };
  }
}
