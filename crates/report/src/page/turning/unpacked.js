"use strict";
/* Reads a surface as crates/report/src/picture/solid/packed.rs wrote it. */

/* Numbers of a vertex: x, y, z, thickness, part of the arch. */
const NUMBERS = 5;

/* The bytes of a text in base64. */
function bytesOf(text) {
  const letters = atob(text);
  const bytes = new Uint8Array(letters.length);
  for (let k = 0; k < bytes.length; k += 1) bytes[k] = letters.charCodeAt(k);
  return bytes;
}

/* Bytes that zlib compressed, as they were. */
async function inflated(bytes) {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/* The numbers of all vertices, and three corners for each triangle. */
function unpacked(bytes, vertexCount, triangleCount) {
  const numbers = new Uint16Array(vertexCount * NUMBERS);
  const corners = new Uint32Array(triangleCount * 3);
  const planes = triangleCount;
  let at = planes + 2 * NUMBERS * vertexCount;
  let next = 0;
  let named = 0;

  /* The next corner. A new vertex is foretold as p + q - r, each the number of a vertex. */
  function corner(p, q, r) {
    let folded = 0;
    let shift = 0;
    let byte;
    do {
      byte = bytes[at];
      at += 1;
      folded |= (byte & 127) << shift;
      shift += 7;
    } while (byte > 127);
    if (folded > 0) {
      folded -= 1;
      named += (folded >>> 1) ^ -(folded & 1);
      return named;
    }
    for (let k = 0; k < NUMBERS; k += 1) {
      const plane = planes + 2 * k * vertexCount + next;
      const difference = bytes[plane] | (bytes[plane + vertexCount] << 8);
      const foretold =
        numbers[p * NUMBERS + k] + numbers[q * NUMBERS + k] - numbers[r * NUMBERS + k];
      /* The array wraps at 16 bits. */
      numbers[next * NUMBERS + k] = foretold + ((difference >>> 1) ^ -(difference & 1));
    }
    next += 1;
    return next - 1;
  }

  let a = 0;
  let b = 0;
  let c = 0;
  for (let triangle = 0; triangle < triangleCount; triangle += 1) {
    const turn = bytes[triangle];
    if (turn === 0) {
      const dropped = a;
      a = c;
      c = corner(a, b, dropped);
    } else if (turn === 1) {
      const dropped = b;
      b = c;
      c = corner(a, b, dropped);
    } else {
      a = corner(c, c, c);
      b = corner(a, a, a);
      c = corner(b, b, b);
    }
    corners[triangle * 3] = a;
    corners[triangle * 3 + 1] = b;
    corners[triangle * 3 + 2] = c;
  }
  return { numbers, corners };
}

/* Coordinates of all vertices, mm from the middle of the surface. */
function places(numbers, surface, middle) {
  const count = numbers.length / NUMBERS;
  const places = new Float32Array(count * 3);
  for (let vertex = 0; vertex < count; vertex += 1) {
    for (let k = 0; k < 3; k += 1) {
      places[vertex * 3 + k] =
        surface.low_mm[k] + numbers[vertex * NUMBERS + k] * surface.step_mm - middle[k];
    }
  }
  return places;
}

/* A unit normal for each vertex, weighted by the area of its triangles; in 127ths. */
function normals(places, corners) {
  const sums = new Float32Array(places.length);
  for (let t = 0; t < corners.length; t += 3) {
    const a = corners[t] * 3;
    const b = corners[t + 1] * 3;
    const c = corners[t + 2] * 3;
    const ux = places[b] - places[a];
    const uy = places[b + 1] - places[a + 1];
    const uz = places[b + 2] - places[a + 2];
    const vx = places[c] - places[a];
    const vy = places[c + 1] - places[a + 1];
    const vz = places[c + 2] - places[a + 2];
    for (let k = 0, corner = a; k < 3; k += 1, corner = k === 1 ? b : c) {
      sums[corner] += uy * vz - uz * vy;
      sums[corner + 1] += uz * vx - ux * vz;
      sums[corner + 2] += ux * vy - uy * vx;
    }
  }
  const normals = new Int8Array((places.length / 3) * 4);
  for (let from = 0, to = 0; from < sums.length; from += 3, to += 4) {
    const length = Math.sqrt(sums[from] ** 2 + sums[from + 1] ** 2 + sums[from + 2] ** 2) || 1;
    for (let k = 0; k < 3; k += 1) normals[to + k] = Math.round((sums[from + k] / length) * 127);
  }
  return normals;
}

/* Corners of fewer triangles: vertices of one cell, a 128th of the surface wide, become one. */
function coarsened(numbers, corners) {
  const CELL_BITS = 9;
  const ACROSS_BITS = 16 - CELL_BITS;
  const first = new Int32Array(1 << (3 * ACROSS_BITS)).fill(-1);
  const count = numbers.length / NUMBERS;
  const kept = new Uint32Array(count);
  for (let vertex = 0; vertex < count; vertex += 1) {
    const at = vertex * NUMBERS;
    const cell =
      (numbers[at] >> CELL_BITS) |
      ((numbers[at + 1] >> CELL_BITS) << ACROSS_BITS) |
      ((numbers[at + 2] >> CELL_BITS) << (2 * ACROSS_BITS));
    if (first[cell] < 0) first[cell] = vertex;
    kept[vertex] = first[cell];
  }
  const coarse = new Uint32Array(corners.length);
  let length = 0;
  for (let t = 0; t < corners.length; t += 3) {
    const a = kept[corners[t]];
    const b = kept[corners[t + 1]];
    const c = kept[corners[t + 2]];
    if (a === b || b === c || c === a) continue;
    coarse[length] = a;
    coarse[length + 1] = b;
    coarse[length + 2] = c;
    length += 3;
  }
  return coarse.subarray(0, length);
}
