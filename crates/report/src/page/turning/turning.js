/* The picture that is turned: what is shown, what is pressed, what is said. */

const FLIGHT_MS = 450;
/* So long after the last movement the picture is drawn more finely. */
const REST_MS = 200;
/* A picture that takes longer is slow. */
const SLOW_MS = 40;
/* Width of what a flight to a place shows, mm. */
const CLOSE_MM = 26;

function element(name) {
  return document.getElementById(`turning-${name}`);
}

function button(parent, words, press) {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = words;
  made.addEventListener("click", press);
  return parent.appendChild(made);
}

/* A sentence with its parts in their places. */
function filled(sentence, parts) {
  return sentence.replace(/\{(\w+)\}/g, (_, name) => parts[name]);
}

/* Two decimals, with the decimal sign of the page's language. */
function figure(mm) {
  const digits = { minimumFractionDigits: 2, maximumFractionDigits: 2, useGrouping: false };
  return mm.toLocaleString(document.documentElement.lang, digits);
}

class Turning {
  constructor(scene) {
    this.scene = scene;
    this.canvas = element("canvas");
    this.drawing = new Drawing(this.canvas, scene.colours);
    this.surfaces = new Map();
    this.isAsked = false;
    this.flight = null;
    this.last = 0;
    this.slowness = 0;
    this.isMoving = false;
    this.isSlow = false;
    this.buttons();
    byPointers(this);
    byKeys(this);
    for (const name of ["places", "landmarks", "border"]) {
      element(name).addEventListener("change", () => this.ask());
    }
    element("section").addEventListener("change", () => this.cut(this.pointed));
    element("place").addEventListener("change", (event) => this.flyTo(event.target.value));
    new ResizeObserver(() => this.ask()).observe(this.canvas);
  }

  /* Reads a surface the first time that it is wanted. */
  async surface(given) {
    if (!this.surfaces.has(given.number)) {
      const text = document.getElementById(`surface-${given.number}`).textContent;
      const bytes = await inflated(bytesOf(text));
      this.surfaces.set(given.number, this.made(given, unpacked(bytes, given.vertices, given.triangles)));
    }
    return this.surfaces.get(given.number);
  }

  made(given, { numbers, corners }) {
    const high = [0, 0, 0];
    for (let k = 0; k < numbers.length; k += NUMBERS) {
      for (let axis = 0; axis < 3; axis += 1) high[axis] = Math.max(high[axis], numbers[k + axis]);
    }
    const extent = high.map((part) => part * given.step_mm);
    const centre = extent.map((part, k) => given.low_mm[k] + part / 2);
    const fromCentre = (place) => place.map((part, k) => part - centre[k]);
    const at = places(numbers, given, centre);
    const { from_mm, step_mm, scale_mm } = given.thickness;
    return {
      given, numbers, corners, centre, places: at,
      low: extent.map((part) => -part / 2),
      step: given.step_mm,
      /* Nothing lies further from what is looked at, however it is moved. */
      reach: 2 * Math.hypot(...extent) + 1,
      scale: scale_mm.map((mm) => (mm - from_mm) / step_mm + 1),
      around: given.around_mm.map(fromCentre),
      balls: ballsRound(at, corners),
      kept: this.drawing.kept(numbers, normals(at, corners), corners),
      lines: this.lines(given, fromCentre),
      border: given.border_mm.map(fromCentre),
    };
  }

  /* The border, and the stretches that findings are about. */
  lines(given, fromCentre) {
    const whole = [1, 1];
    const dashes = { fail: whole, borderline: [2, 1.3], note: [1, 0.5] };
    const border = given.border_mm.map(fromCentre);
    if (given.is_border_closed && border.length > 0) border.push(border[0]);
    const stretches = given.places.map(({ kind, stretch_mm }) => ({
      places: stretch_mm.map(fromCentre), width: (WIDTHS[kind] || 0) + 1, dash: dashes[kind] || whole,
    }));
    return {
      border: this.drawing.keptLines([{ places: border, width: 1.5, dash: whole }]),
      places: this.drawing.keptLines(stretches),
    };
  }

  /* Shows an impression as its still picture does at first. */
  async show(given) {
    this.shown = await this.surface(given);
    this.drawing.ready();
    const views = given.views;
    this.look = new Look(views[0].turn, this.whole(views[0].turn));
    this.flight = null;
    this.marks = new Marks(element("marks"), this.shown, this.scene.words);
    this.canvas.setAttribute("aria-label", given.title);
    this.cut(null);
    const select = element("place");
    const options = [new Option(this.scene.words.a_place, "")];
    for (const place of given.places) options.push(new Option(place.name, place.id));
    select.replaceChildren(...options);
    for (const [number, pressed] of this.choices) {
      pressed.setAttribute("aria-pressed", String(number === given.number));
    }
    this.ask();
  }

  /* The middle of the surface as it is seen from there, and its extent with room round it, mm. */
  whole(turn) {
    const ROOM_MM = 20;
    const axes = axesOf(turn);
    const low = [Infinity, Infinity, Infinity];
    const high = [-Infinity, -Infinity, -Infinity];
    const { places } = this.shown;
    for (let k = 0; k < places.length; k += 3) {
      for (let axis = 0; axis < 3; axis += 1) {
        const [x, y, z] = axes[axis];
        const along = x * places[k] + y * places[k + 1] + z * places[k + 2];
        low[axis] = Math.min(low[axis], along);
        high[axis] = Math.max(high[axis], along);
      }
    }
    const middle = [0, 1, 2].map((k) => axes.reduce((sum, axis, n) => sum + (axis[k] * (low[n] + high[n])) / 2, 0));
    return { middle, extent: [high[0] - low[0] + ROOM_MM, high[1] - low[1] + ROOM_MM] };
  }

  buttons() {
    const { surfaces, words } = this.scene;
    this.choices = new Map();
    if (surfaces.length > 1) {
      for (const given of surfaces) {
        this.choices.set(given.number, button(element("surfaces"), given.name, () => {
          this.show(given).then(() => this.say(given.shown));
        }));
      }
    }
    const row = element("buttons");
    for (const [k, view] of surfaces[0].views.entries()) {
      button(row, view.name, () => {
        this.fly(this.look.seen(this.shown.given.views[k].turn));
        this.say(view.shown);
      });
    }
    button(row, words.closer, () => this.fly({ ...this.look, zoom: this.look.zoom * 1.5 }));
    button(row, words.farther, () => this.fly({ ...this.look, zoom: Math.max(0.5, this.look.zoom / 1.5) }));
    /* Findings elsewhere on the page get a button that leads here. */
    const known = new Map(surfaces.flatMap((given) => given.places.map((place) => [place.id, place.show])));
    for (const heading of document.querySelectorAll("article.finding > h3, ul.refs > li")) {
      const article = heading.closest("article");
      const id = article ? article.id : heading.querySelector("a").hash.slice(1);
      if (!known.has(id)) continue;
      heading.append(" ");
      const made = button(heading, words.show, () => {
        this.canvas.scrollIntoView({ block: "nearest" });
        this.flyTo(id);
      });
      made.setAttribute("aria-label", known.get(id));
      made.className = "to-turning";
    }
  }

  /* Turns to a place and says what it is. */
  async flyTo(id) {
    const of = ({ places }) => places.find((place) => place.id === id);
    const given = [this.shown.given, ...this.scene.surfaces].find(of);
    if (!given) return;
    if (given !== this.shown.given) await this.show(given);
    const place = of(given);
    element("place").value = id;
    const box = element(place.kind === "landmark" ? "landmarks" : "places");
    box.checked = true;
    const middle = place.at_mm.map((part, k) => part - this.shown.centre[k]);
    const zoom = Math.min(...this.look.size) / (CLOSE_MM * this.look.fitting);
    this.fly({ turn: place.turn || given.views[0].turn, middle, zoom });
    this.say(place.words);
    this.cut(middle);
  }

  fly(to) {
    const isCalm = matchMedia("(prefers-reduced-motion: reduce)").matches;
    const { turn, middle, zoom } = this.look;
    this.flight = { from: { turn, middle, zoom }, to, start: performance.now(), ms: isCalm ? 0 : FLIGHT_MS };
    this.ask();
  }

  say(words) {
    element("said").textContent = words;
  }

  /* Asks for one picture; nothing is drawn until something changes again. */
  ask() {
    if (this.isAsked || !this.look) return;
    this.isAsked = true;
    requestAnimationFrame((now) => {
      this.isAsked = false;
      this.step(now);
    });
    clearTimeout(this.rest);
    this.rest = setTimeout(() => {
      this.isMoving = false;
      this.draw(2);
    }, REST_MS);
  }

  step(now) {
    /* Where pictures follow each other slowly, those of a movement are coarse from then on. */
    const pause = now - this.last;
    if (this.isMoving && pause < REST_MS) this.slowness += pause > SLOW_MS ? 1 : -1;
    this.slowness = Math.max(0, this.slowness);
    if (this.slowness > 3) this.isSlow = true;
    this.isMoving = true;
    this.last = now;
    const size = [this.canvas.clientWidth, this.canvas.clientHeight];
    if (size[0] === 0 || size[1] === 0) return;
    this.look.size = size;
    if (this.flight) {
      const { from, to, start, ms } = this.flight;
      const gone = ms > 0 ? Math.min(1, Math.max(0, (now - start) / ms)) : 1;
      Object.assign(this.look, Look.between(from, to, gone * gone * (3 - 2 * gone)));
      if (gone === 1) this.flight = null;
      else this.ask();
    }
    this.draw(1);
  }

  /* One picture, with so many times as many pixels in each direction as the page has. */
  draw(fineness) {
    const { size } = this.look;
    const isOn = (name) => element(name).checked;
    const lines = ["border", "places"].filter(isOn).map((name) => this.shown.lines[name]);
    const isCoarse = fineness === 1 && this.isSlow;
    this.drawing.draw(this.look, this.shown, lines, Math.min(2, devicePixelRatio) * fineness, isCoarse);
    element("marks").setAttribute("viewBox", `0 0 ${size[0]} ${size[1]}`);
    this.marks.put(this.look, ({ kind }) => isOn(kind === "landmark" ? "landmarks" : "places"));
    this.canvas.dataset.drawn = String(Number(this.canvas.dataset.drawn || 0) + 1);
  }

  /* Says what is there. */
  click([x, y]) {
    const mark = this.marks.at(x, y);
    if (mark) {
      element("place").value = mark.place.id;
      this.say(mark.place.words);
      return;
    }
    const seen = this.seen([x, y]);
    this.say(seen ? this.reading(readingAt(this.shown, seen)) : this.scene.words.no_surface);
    this.cut(seen && seen.place);
  }

  /* The surface under a point of the picture, with its place; null where there is none. */
  seen([x, y]) {
    const { look, shown } = this;
    const [across, up, toward] = look.axes;
    const [right, upward] = [(x - look.size[0] / 2) / look.scale, (look.size[1] / 2 - y) / look.scale];
    const place = [0, 1, 2].map((k) => look.middle[k] + across[k] * right + up[k] * upward);
    const seen = seenAt(shown, look.axes, place);
    if (!seen) return null;
    const nearer = seen.depth - dot(toward, place);
    return { ...seen, place: place.map((part, k) => part + toward[k] * nearer) };
  }

  /* The section follows the pointer where it is wanted. */
  hover(point) {
    if (!element("section").checked || this.isCutting) return;
    this.isCutting = true;
    requestAnimationFrame(() => {
      this.isCutting = false;
      const seen = this.seen(point);
      if (seen) this.cut(seen.place);
    });
  }

  /* Shows the section through a place where it is wanted. */
  cut(place) {
    this.pointed = place;
    const isWanted = Boolean(place) && element("section").checked;
    element("cut").hidden = !isWanted;
    if (isWanted) drawSection(element("cut").querySelector("svg"), sectionAt(this.shown, place));
  }

  reading({ mm, part }) {
    const { is_measured, uncertainty_mm } = this.shown.given.thickness;
    const { words } = this.scene;
    const place = part || words.off_tissue;
    if (!is_measured) return filled(words.not_measured, { place });
    if (mm === null) return filled(words.not_known, { place });
    const doubt = uncertainty_mm === null ? "" : ` ± ${figure(Math.ceil(uncertainty_mm * 100) / 100)}`;
    const thickness = `${figure(mm)}${doubt}`;
    return filled(mm <= 0 ? words.tray_at_surface : words.thick, { place, thickness });
  }
}

/* Without WebGL 2, or what else is needed, the still pictures stay. */
async function start() {
  const scene = JSON.parse(element("scene").textContent);
  const page = document.documentElement;
  if (!window.DecompressionStream) return;
  try {
    const turning = new Turning(scene);
    const first = scene.surfaces.find((given) => !given.is_superseded) || scene.surfaces[0];
    page.classList.add("turns");
    turning.canvas.addEventListener("webglcontextlost", () => page.classList.remove("turns"));
    await turning.show(first);
  } catch {
    page.classList.remove("turns");
  }
}

start();
