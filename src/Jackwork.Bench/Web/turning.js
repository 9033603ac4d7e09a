// Drawings that turn with the crank: wheels and cams that turn evenly, followers that keep to a table, lines and readings at the present angle.
// Angles in the data are degrees, counter-clockwise in the drawing; rates are turns for a turn of the crank.
import { crank, onCrank, run, turnTo } from "./crank.js";

export function createTurning(place) {
  const alive = new AbortController();
  const known = new WeakMap();
  const numbers = (element, text) => {
    if (known.get(element)?.text !== text) known.set(element, { text, values: text.split(" ").map(Number) });
    return known.get(element).values;
  };
  // A table holds a value for every step of the crank over a span after which it begins anew.
  const read = (element, text, { step, span }) => {
    const values = numbers(element, text);
    const at = crank.deg % span;
    const i = Math.min(values.length - 1, Math.floor(at / step));
    const share = (at - i * step) / Math.min(step, span - i * step);
    return values[i] + share * (values[(i + 1) % values.length] - values[i]);
  };
  const shaft = (rate) => (crank.deg * Math.abs(rate)) % 360;

  const stand = () => {
    for (const g of place.querySelectorAll("[data-turns]")) {
      const { turns, at, x, y } = g.dataset;
      g.setAttribute("transform", `translate(${x ?? 0} ${y ?? 0}) rotate(${(+(at ?? 0) + turns * crank.deg) % 360})`);
    }
    for (const g of place.querySelectorAll("[data-follows]")) {
      const by = read(g, g.dataset.follows, g.dataset);
      const { x, y, dx, dy } = g.dataset;
      g.setAttribute("transform", dx === undefined ? `rotate(${by} ${x} ${y})` : `translate(${by * dx} ${by * dy})`);
    }
    for (const l of place.querySelectorAll("[data-now]")) {
      const { now, x0, x1 } = l.dataset;
      l.setAttribute("transform", `translate(${+x0 + (shaft(now) / 360) * (x1 - x0)} 0)`);
    }
    for (const o of place.querySelectorAll("[data-shaft]")) o.textContent = `${shaft(o.dataset.shaft).toFixed(0)}\u00b0`;
    for (const o of place.querySelectorAll("[data-reads]")) {
      const { reads, turn } = o.dataset;
      const words = reads.split(" ");
      o.textContent = words[Math.round((shaft(turn) / 360) * words.length) % words.length];
    }
  };
  const leave = onCrank(stand);

  // A press or a drag in a chart turns the crank to where its shaft stands there, by the shorter way.
  let held = null;
  const aim = (e) => {
    const { rate, x0, x1 } = held.dataset;
    const x = new DOMPoint(e.clientX, e.clientY).matrixTransform(held.getScreenCTM().inverse()).x;
    const share = Math.min(1, Math.max(0, (x - x0) / (x1 - x0)));
    const turn = 360 / Math.abs(rate);
    turnTo((Math.floor(crank.deg / turn) + Math.min(share, 0.9999)) * turn);
  };
  place.addEventListener("pointerdown", (e) => {
    held = e.button === 0 ? e.target.closest("svg[data-rate]") : null;
    if (!held) return;
    held.setPointerCapture(e.pointerId);
    run(false);
    aim(e);
  }, { signal: alive.signal });
  place.addEventListener("pointermove", (e) => held && aim(e), { signal: alive.signal });
  for (const kind of ["pointerup", "pointercancel"]) place.addEventListener(kind, () => (held = null), { signal: alive.signal });

  return {
    drawn: stand,
    stop() {
      alive.abort();
      leave();
    },
  };
}
