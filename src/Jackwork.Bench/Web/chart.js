// The charts: the line where the crank stands, and moves dragged by their ends and heights. What a drag means is told by the element's data.
import { crank, onCrank, run, turnTo } from "./crank.js";
import { latest } from "./latest.js";
import { note } from "./measure.js";

export function createChart(place, page) {
  const alive = new AbortController();
  const on = (kind, f) => place.addEventListener(kind, f, { signal: alive.signal });
  const across = (line, share) => {
    const { x0, x1 } = line.dataset;
    line.style.transform = `translateX(${+x0 + share * (x1 - x0)}px)`;
  };
  const heads = () => {
    const share = crank.deg / (360 * crank.turns);
    for (const l of place.querySelectorAll("[data-crankline]")) across(l, share);
    for (const l of place.querySelectorAll("[data-crankline-ring]")) {
      const { radius, x, y } = l.dataset;
      l.style.height = `${radius}px`;
      l.style.transform = `translate(${x}px, ${y - radius}px) rotate(${360 * share}deg)`;
    }
    for (const l of place.querySelectorAll("[data-crankline-shaft]")) across(l, ((crank.deg * l.dataset.cranklineShaft) / 360) % 1);
  };
  const leave = onCrank(heads);

  const measured = () => {
    const of = (name) => place.querySelector(`[data-measure=${name}]`)?.getBoundingClientRect() ?? { width: 0, height: 0 };
    const [a, b] = [of("overview"), of("detail")];
    if (a.width) page.invokeMethodAsync("Measured", Math.floor(a.width), Math.floor(a.height), Math.floor(b.width), Math.floor(b.height));
  };
  let soon = 0;
  const sizes = new ResizeObserver(() => {
    clearTimeout(soon);
    soon = setTimeout(measured, 60);
  });
  sizes.observe(place);
  // The drawing's room appears with the first chart.
  const born = new MutationObserver(() => {
    if (place.querySelector("[data-measure]")) {
      born.disconnect();
      measured();
    }
  });
  born.observe(place, { childList: true, subtree: true });
  measured();

  const send = latest(async (...args) => {
    const sent = performance.now();
    const version = await page.invokeMethodAsync("Drag", ...args);
    if (version) note.asked(version, sent);
  });

  // The share of a turn, clockwise from the top, at which the pointer stands round a ring's middle.
  const bearing = (e, ring) => {
    const box = ring.getBoundingClientRect();
    const turn = Math.atan2(e.clientX - box.left - box.width / 2, box.top + box.height / 2 - e.clientY) / (2 * Math.PI);
    return turn < 0 ? turn + 1 : turn;
  };

  let held = null;
  const snap = (v, e) => (e.shiftKey ? 5 * Math.round(v / 5) : Math.round(v));
  on("pointerdown", (e) => {
    const grip = e.target.closest("[data-hold]");
    if (grip && e.button === 0) {
      const { hold, member, index, value, perX, perY, perTurn } = grip.dataset;
      held = { hold, member, index: +index, value: +value, perX: +(perX ?? 0), perY: +(perY ?? 0), perTurn: +(perTurn ?? 0), x: e.clientX, y: e.clientY, last: null, gesture: `drag ${Date.now()}` };
      if (perTurn) Object.assign(held, { ring: grip.closest("svg"), at: bearing(e, grip.closest("svg")), round: 0 });
      place.setPointerCapture(e.pointerId);
      page.invokeMethodAsync("Hold", member, +index);
      e.preventDefault();
      grip.focus?.({ preventScroll: true });
    }
  });
  on("pointermove", (e) => {
    if (!held) return;
    if (held.ring) {
      // Counted step by step, so that a drag past the top goes on.
      const at = bearing(e, held.ring);
      held.round += at - held.at - Math.round(at - held.at);
      held.at = at;
    }
    const to = snap(held.value + (e.clientX - held.x) * held.perX + (e.clientY - held.y) * held.perY + (held.round ?? 0) * held.perTurn, e);
    if (to === held.last || (held.last === null && Math.hypot(e.clientX - held.x, e.clientY - held.y) < 2)) return;
    held.last = to;
    held.moved = true;
    send(held.member, held.index, held.hold, to, held.gesture);
  });
  const jump = (e) => {
    const flat = e.target.closest("svg")?.querySelector("[data-jump]");
    const round = e.target.closest("svg")?.querySelector("[data-jump-ring]");
    const box = e.target.closest("svg")?.getBoundingClientRect();
    if (flat) {
      const share = (e.clientX - box.left - flat.dataset.x0) / (flat.dataset.x1 - flat.dataset.x0);
      if (share >= 0 && share <= 1) turnTo(share * 360 * crank.turns);
    } else if (round) {
      turnTo(bearing(e, round.closest("svg")) * 360 * crank.turns);
    }
  };
  on("pointerup", (e) => {
    const clicked = held && !held.moved;
    const free = !held && !e.target.closest("button, .name, select, input");
    held = null;
    if (clicked || free) {
      run(false);
      jump(e);
    }
  });
  on("pointercancel", () => (held = null));
  on("keydown", (e) => {
    const grip = e.target.closest("[data-hold]");
    const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[e.key];
    if (!grip || !by) return;
    const { hold, member, index, value } = grip.dataset;
    send(member, +index, hold, +value + by * (e.shiftKey ? 5 : 1), `key ${hold} ${member} ${index}`);
    e.preventDefault();
  });

  // The page has put a new drawing in place.
  const drawn = new MutationObserver(() => {
    heads();
    note.drawn(+place.dataset.drawn);
    note.judged(+(place.dataset.found ?? 0));
  });
  drawn.observe(place, { attributeFilter: ["data-drawn", "data-found", "width", "d"], subtree: true });

  return {
    stop() {
      drawn.disconnect();
      alive.abort();
      leave();
      sizes.disconnect();
      born.disconnect();
    },
  };
}
