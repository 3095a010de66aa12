/* Turning, moving and zooming by keys, mouse, pen and fingers. */

/* What one press of an arrow turns, and what it moves, pixels. */
const STEP = Math.PI / 24;
const MOVE = 30;

/* Arrows turn, with Shift they move; + and - zoom, Home shows the whole. */
function byKeys(turning) {
  turning.canvas.addEventListener("keydown", (event) => {
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (!turning.look || event.ctrlKey || event.altKey || event.metaKey) return;
    turning.flight = null;
    if (way && event.shiftKey) turning.look.moveBy(way[0] * MOVE, way[1] * MOVE);
    else if (way) turning.look.turnBy(way[0] * STEP, way[1] * STEP);
    else if (event.key === "+" || event.key === "=") turning.look.zoomBy(1.2);
    else if (event.key === "-") turning.look.zoomBy(1 / 1.2);
    else if (event.key === "Home") Object.assign(turning.look, turning.look.seen(turning.shown.given.views[0].turn));
    else return;
    event.preventDefault();
    turning.ask();
  });
}

/* Mouse, pen and fingers. */
function byPointers(turning) {
  const canvas = turning.canvas;
  const down = new Map();
  let hasMoved = false;
  const place = (event) => {
    const box = canvas.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  canvas.addEventListener("pointerdown", (event) => {
    canvas.setPointerCapture(event.pointerId);
    if (down.size === 0) hasMoved = false;
    down.set(event.pointerId, place(event));
  });
  canvas.addEventListener("pointermove", (event) => {
    const from = down.get(event.pointerId);
    if (!turning.look) return;
    const to = place(event);
    if (!from) {
      turning.hover(to);
      return;
    }
    const [right, upward] = [to[0] - from[0], from[1] - to[1]];
    if (!hasMoved && Math.hypot(right, upward) < 4) return;
    hasMoved = true;
    turning.flight = null;
    const other = [...down].find(([id]) => id !== event.pointerId);
    down.set(event.pointerId, to);
    if (other) pinch(turning.look, from, to, other[1]);
    else if (event.shiftKey || event.buttons > 1) turning.look.moveBy(right, upward);
    else turning.look.turnBy(right / 150, upward / 150);
    turning.ask();
  });
  const lift = (event) => {
    const isClick = down.delete(event.pointerId) && !hasMoved && event.type === "pointerup";
    if (isClick && event.button === 0 && turning.look) turning.click(place(event));
  };
  canvas.addEventListener("pointerup", lift);
  canvas.addEventListener("pointercancel", lift);
  canvas.addEventListener("contextmenu", (event) => event.preventDefault());
  canvas.addEventListener("wheel", (event) => {
    /* The page scrolls past a picture that nobody has clicked. */
    if (!turning.look || (document.activeElement !== canvas && !event.ctrlKey)) return;
    event.preventDefault();
    turning.flight = null;
    turning.look.zoomBy(Math.exp(-event.deltaY / 500));
    turning.ask();
  }, { passive: false });
}

/* Two fingers: their distance zooms, what lies midway follows them. */
function pinch(look, from, to, other) {
  const apart = (finger) => Math.max(1, Math.hypot(finger[0] - other[0], finger[1] - other[1]));
  look.zoomBy(apart(to) / apart(from));
  look.moveBy((to[0] - from[0]) / 2, (from[1] - to[1]) / 2);
}
