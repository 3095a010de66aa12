/* Draws a surface and lines on it by WebGL 2, in the colours and the light of the still pictures. */

const SURFACE_PLACES = `#version 300 es
  layout(location = 0) in vec4 place;
  layout(location = 1) in vec3 normal;
  uniform mat3 turn;
  uniform vec3 offset, stretch;
  uniform float step;
  out vec2 thickness;
  out float facing;
  void main() {
    gl_Position = vec4((turn * (place.xyz * step) + offset) * stretch, 1.0);
    thickness = vec2(place.w, min(place.w, 1.0));
    facing = (turn * normal).z;
  }`;

const SURFACE_COLOURS = `#version 300 es
  precision highp float;
  in vec2 thickness;
  in float facing;
  uniform vec2 scale;
  uniform sampler2D colours;
  out vec4 colour;
  void main() {
    /* As in the still pictures: grey where a corner's thickness is not known, and two fifths as
       bright where the surface turns wholly away. */
    float share = clamp((thickness.x - scale.x) / (scale.y - scale.x), 0.0, 1.0);
    vec3 shown = thickness.y < 0.999 ? vec3(176.0 / 255.0)
      : texture(colours, vec2(share * 63.0 / 64.0 + 0.5 / 64.0, 0.5)).rgb;
    colour = vec4(shown * (0.4 + 0.6 * min(abs(facing), 1.0)), 1.0);
  }`;

/* A line of a width in pixels: each of its segments is two triangles. */
const LINE_PLACES = `#version 300 es
  layout(location = 0) in vec3 here;
  layout(location = 1) in vec3 there;
  layout(location = 2) in vec2 side;
  layout(location = 3) in vec3 pen;
  uniform mat3 turn;
  uniform vec3 offset, stretch;
  uniform vec2 size;
  uniform vec3 rim;
  out vec3 along;
  void main() {
    vec3 from = (turn * here + offset) * stretch;
    vec3 to = (turn * there + offset) * stretch;
    vec2 way = (to.xy - from.xy) * size;
    vec2 across = vec2(-way.y, way.x) / max(length(way), 1e-6);
    float width = (pen.x + rim.x) * rim.y;
    gl_Position = vec4(from.xy + across * side.x * width / size, from.z + rim.z * stretch.z, 1.0);
    along = vec3(side.y, rim.x > 0.0 ? vec2(1.0) : pen.yz);
  }`;

const LINE_COLOURS = `#version 300 es
  precision highp float;
  in vec3 along;
  uniform vec3 ink;
  out vec4 colour;
  void main() {
    if (mod(along.x, along.y) > along.z) discard;
    colour = vec4(ink, 1.0);
  }`;

/* Programs and buffers for one canvas. Throws where it has no WebGL 2. */
class Drawing {
  constructor(canvas, colours) {
    /* Smoothed by drawing finely at rest instead: in software that is four times quicker. */
    const gl = canvas.getContext("webgl2", { antialias: false, alpha: false });
    if (!gl) throw new Error("no WebGL 2");
    this.gl = gl;
    this.canvas = canvas;
    this.surface = this.program(SURFACE_PLACES, SURFACE_COLOURS);
    this.line = this.program(LINE_PLACES, LINE_COLOURS);
    gl.bindTexture(gl.TEXTURE_2D, gl.createTexture());
    const texels = new Uint8Array(colours.flatMap((colour) => [...colour, 255]));
    gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA, colours.length, 1, 0, gl.RGBA, gl.UNSIGNED_BYTE, texels);
    for (const [name, value] of [
      [gl.TEXTURE_MIN_FILTER, gl.LINEAR], [gl.TEXTURE_MAG_FILTER, gl.LINEAR],
      [gl.TEXTURE_WRAP_S, gl.CLAMP_TO_EDGE], [gl.TEXTURE_WRAP_T, gl.CLAMP_TO_EDGE],
    ]) gl.texParameteri(gl.TEXTURE_2D, name, value);
    gl.enable(gl.DEPTH_TEST);
    gl.depthFunc(gl.LEQUAL);
    gl.clearColor(1, 1, 1, 1);
  }

  program(places, colours) {
    const gl = this.gl;
    const program = gl.createProgram();
    for (const [kind, source] of [[gl.VERTEX_SHADER, places], [gl.FRAGMENT_SHADER, colours]]) {
      const shader = gl.createShader(kind);
      gl.shaderSource(shader, source);
      gl.compileShader(shader);
      gl.attachShader(program, shader);
    }
    gl.linkProgram(program);
    return { program, at: {} };
  }

  /* Programs are made while a surface is read; this waits for them. Throws where they cannot be. */
  ready() {
    const gl = this.gl;
    for (const { program, at } of [this.surface, this.line]) {
      if (!gl.getProgramParameter(program, gl.LINK_STATUS)) throw new Error("no shaders");
      const count = gl.getProgramParameter(program, gl.ACTIVE_UNIFORMS);
      for (let k = 0; k < count; k += 1) {
        const { name } = gl.getActiveUniform(program, k);
        at[name] = gl.getUniformLocation(program, name);
      }
    }
  }

  /* Fills a buffer with the numbers of an attribute. */
  attribute(place, values, size, kind, normalised) {
    const gl = this.gl;
    gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer());
    gl.bufferData(gl.ARRAY_BUFFER, values, gl.STATIC_DRAW);
    gl.enableVertexAttribArray(place);
    gl.vertexAttribPointer(place, size, kind, normalised, values.BYTES_PER_ELEMENT * 4, 0);
  }

  /* What is kept of a surface by the graphics card. */
  kept(numbers, normals, corners) {
    const gl = this.gl;
    const drawn = new Uint16Array((numbers.length / NUMBERS) * 4);
    for (let from = 0, to = 0; from < numbers.length; from += NUMBERS, to += 4) {
      for (let k = 0; k < 4; k += 1) drawn[to + k] = numbers[from + k];
    }
    const array = gl.createVertexArray();
    gl.bindVertexArray(array);
    this.attribute(0, drawn, 4, gl.UNSIGNED_SHORT, false);
    this.attribute(1, normals, 3, gl.BYTE, true);
    const coarse = coarsened(numbers, corners);
    const all = new Uint32Array(corners.length + coarse.length);
    all.set(corners);
    all.set(coarse, corners.length);
    gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, gl.createBuffer());
    gl.bufferData(gl.ELEMENT_ARRAY_BUFFER, all, gl.STATIC_DRAW);
    return {
      array,
      fine: { from: 0, count: corners.length },
      coarse: { from: corners.length, count: coarse.length },
    };
  }

  /* What is kept of lines: each goes through places (mm), has a width (pixels) and dashes (mm,
     and how much of that is drawn). */
  keptLines(lines) {
    const gl = this.gl;
    const values = [];
    for (const { places, width, dash } of lines) {
      let length = 0;
      for (let k = 1; k < places.length; k += 1) {
        const [here, there] = [places[k - 1], places[k]];
        const start = length;
        length += Math.hypot(...here.map((part, axis) => there[axis] - part));
        /* The far end sees the segment the other way round, so its sides are exchanged. */
        const near = (side) => values.push(...here, ...there, side, start, width, ...dash);
        const far = (side) => values.push(...there, ...here, side, length, width, ...dash);
        near(1);
        near(-1);
        far(-1);
        far(-1);
        near(-1);
        far(1);
      }
    }
    const array = gl.createVertexArray();
    gl.bindVertexArray(array);
    gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer());
    gl.bufferData(gl.ARRAY_BUFFER, new Float32Array(values), gl.STATIC_DRAW);
    for (const [place, size, from] of [[0, 3, 0], [1, 3, 12], [2, 2, 24], [3, 3, 32]]) {
      gl.enableVertexAttribArray(place);
      gl.vertexAttribPointer(place, size, gl.FLOAT, false, 44, from);
    }
    return { array, count: values.length / 11 };
  }

  /* One picture, with so many pixels of the canvas to one of the page; coarse ones are quicker. */
  draw(look, surface, lines, fineness, isCoarse) {
    const gl = this.gl;
    const [width, height] = look.size.map((part) => Math.round(part * fineness));
    if (this.canvas.width !== width) this.canvas.width = width;
    if (this.canvas.height !== height) this.canvas.height = height;
    gl.viewport(0, 0, width, height);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    const axes = look.axes;
    const stretch = [(2 * look.scale) / look.size[0], (2 * look.scale) / look.size[1], -1 / surface.reach];
    const use = ({ program, at }, from) => {
      gl.useProgram(program);
      gl.uniformMatrix3fv(at.turn, true, axes.flat());
      gl.uniform3fv(at.offset, axes.map((axis) => dot(axis, from)));
      gl.uniform3fv(at.stretch, stretch);
      return at;
    };

    const at = use(this.surface, [0, 1, 2].map((k) => surface.low[k] - look.middle[k]));
    gl.uniform1f(at.step, surface.step);
    gl.uniform2fv(at.scale, surface.scale);
    const { array, fine, coarse } = surface.kept;
    const { from, count } = isCoarse ? coarse : fine;
    gl.bindVertexArray(array);
    gl.drawElements(gl.TRIANGLES, count, gl.UNSIGNED_INT, from * 4);

    const lineAt = use(this.line, look.middle.map((part) => -part));
    gl.uniform2fv(lineAt.size, [width, height]);
    /* Dark on a white rim, a little nearer than the surface, mm. */
    for (const [rim, nearer, ink] of [[3, 0.5, [1, 1, 1]], [0, 0.55, [0.1, 0.1, 0.1]]]) {
      gl.uniform3fv(lineAt.rim, [rim, fineness, nearer]);
      gl.uniform3fv(lineAt.ink, ink);
      for (const { array: line, count: corners } of lines) {
        gl.bindVertexArray(line);
        gl.drawArrays(gl.TRIANGLES, 0, corners);
      }
    }
  }
}
