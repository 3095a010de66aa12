/* Marks and letters over the picture, as SVG, as large as in the still pictures. */

const DASHES = { fail: "none", borderline: "9 4", note: "2 3" };
const WIDTHS = { fail: 4, borderline: 3, note: 2 };

function drawn(parent, name, attributes) {
  const element = document.createElementNS(parent.namespaceURI, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return parent.appendChild(element);
}

/* Lettering with a white rim. */
function lettering(parent, text, size) {
  const rim = { stroke: "#ffffff", "stroke-width": 5, "stroke-linejoin": "round", "paint-order": "stroke" };
  const element = drawn(parent, "text", { "font-size": size, "font-weight": "bold", ...rim });
  element.textContent = text;
  return element;
}

/* All marks of one surface. */
class Marks {
  constructor(svg, surface, words) {
    this.svg = svg;
    this.surface = surface;
    svg.replaceChildren();
    this.marks = surface.given.places.map((place) => this.mark(place));
    const { right, left, front } = words;
    this.letters = [right, left, front].map((word, k) => ({
      isFront: k === 2,
      at: surface.around[k],
      text: lettering(svg, word, k === 2 ? 17 : 26),
    }));
    for (const { text } of this.letters) text.setAttribute("text-anchor", "middle");
    this.bar = drawn(svg, "path", { stroke: "#1a1a1a", "stroke-width": 2.5, fill: "none" });
    this.barText = lettering(svg, "", 15);
  }

  mark(place) {
    const group = drawn(this.svg, "g", {});
    const at = place.at_mm.map((part, k) => part - this.surface.centre[k]);
    if (place.kind === "landmark") {
      const cross = "M-7 -7 L7 7 M-7 7 L7 -7";
      drawn(group, "path", { d: cross, stroke: "#ffffff", "stroke-width": 6 });
      drawn(group, "path", { d: cross, stroke: "#1a1a1a", "stroke-width": 2.5 });
    } else {
      const width = WIDTHS[place.kind];
      drawn(group, "circle", { fill: "none", stroke: "#ffffff", "stroke-width": width + 4 });
      drawn(group, "circle", {
        fill: "none", stroke: "#1a1a1a", "stroke-width": width, "stroke-dasharray": DASHES[place.kind],
      });
    }
    return { place, at, group, circles: group.querySelectorAll("circle"), text: lettering(group, place.id, 17) };
  }

  /* Puts everything where it shows now; only kinds that are wanted. */
  put(look, isWanted) {
    const axes = look.axes;
    const taken = this.putLetters(look, axes);
    for (const mark of this.marks) {
      const [x, y] = look.shown(mark.at, axes);
      const isWithin = x > 0 && y > 0 && x < look.size[0] && y < look.size[1];
      mark.is = isWithin && isWanted(mark.place) && isShown(this.surface, axes, mark.at);
      mark.group.setAttribute("visibility", mark.is ? "visible" : "hidden");
      if (!mark.is) continue;
      mark.x = x;
      mark.y = y;
      mark.radius = mark.place.kind === "landmark" ? 8 : Math.max(10, mark.place.radius_mm * look.scale);
      mark.group.setAttribute("transform", `translate(${x.toFixed(1)} ${y.toFixed(1)})`);
      for (const circle of mark.circles) circle.setAttribute("r", mark.radius.toFixed(1));
      taken.push([x - 7, y - 7, x + 7, y + 7]);
    }
    for (const mark of this.marks.filter(({ is }) => is)) this.name(mark, taken);
    this.putBar(look);
  }

  /* The name beside its mark, where no other name is. */
  name(mark, taken) {
    const [wide, high] = [11 * mark.place.id.length, 17];
    const off = Math.min(mark.radius, 150) + 5;
    const beside = [[off, 6], [-off - wide, 6], [-wide / 2, -off], [-wide / 2, off + 13], [off, -12], [off, 24]];
    const box = ([x, y]) => [mark.x + x, mark.y + y - high, mark.x + x + wide, mark.y + y];
    const isFree = (one) =>
      taken.every((other) => one[0] > other[2] || one[2] < other[0] || one[1] > other[3] || one[3] < other[1]);
    const place = beside.find((at) => isFree(box(at))) || beside[0];
    taken.push(box(place));
    mark.text.setAttribute("x", place[0]);
    mark.text.setAttribute("y", place[1]);
  }

  /* The letters of the sides stay within the picture; what lies behind the surface is left out. Gives the boxes
     that they take. */
  putLetters(look, axes) {
    const within = (value, size) => Math.min(size - 22, Math.max(22, value));
    const taken = [];
    for (const { at, text, isFront } of this.letters) {
      const [x, y] = look.shown(at, axes);
      const inside = [within(x, look.size[0]), within(y, look.size[1])];
      const isOut = isFront && (x !== inside[0] || y !== inside[1]);
      const isBehind = dot(at, axes[2]) < -0.8 * Math.hypot(...at);
      text.setAttribute("visibility", isBehind || isOut ? "hidden" : "visible");
      text.setAttribute("x", inside[0].toFixed(1));
      text.setAttribute("y", (inside[1] + 8).toFixed(1));
      if (!isBehind && !isOut) taken.push([inside[0] - 14, inside[1] - 14, inside[0] + 14, inside[1] + 10]);
    }
    return taken;
  }

  /* A bar of a round length. */
  putBar(look) {
    const mm = [20, 10, 5, 2, 1].find((length) => length * look.scale < 150) || 1;
    const y = look.size[1] - 14;
    this.bar.setAttribute("d", `M10 ${y - 5} v10 M10 ${y} h${(mm * look.scale).toFixed(1)} m0 -5 v10`);
    this.barText.textContent = `${mm} mm`;
    this.barText.setAttribute("x", 16 + mm * look.scale);
    this.barText.setAttribute("y", y + 5);
  }

  /* The mark at a point of the page; the nearest of several. */
  at(x, y) {
    const LEAST = 14;
    const off = (mark) => Math.hypot(mark.x - x, mark.y - y);
    const hit = this.marks.filter((mark) => mark.is && off(mark) <= Math.max(LEAST, Math.min(mark.radius, 24)));
    return hit.sort((a, b) => off(a) - off(b))[0];
  }
}
