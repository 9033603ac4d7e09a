// The side view: lines and points of the piece in a plane, standing as the crank stands; points are dragged where they are drawn. Millimetres become pixels here and nowhere else.
import { crank, onCrank } from "./crank.js";
import { latest } from "./latest.js";
import { note } from "./measure.js";
import { between, fetchPoses, identity, seen } from "./pose.js";

const make = (name, attributes, parent) => {
  const e = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [k, v] of Object.entries(attributes)) e.setAttribute(k, v);
  parent?.append(e);
  return e;
};
const px = (v) => v.toFixed(1);

// Shortest length, pixels, that has room for its dimension; the list below the drawing has them all.
const least = 30;

export function createSideView(place, page) {
  const alive = new AbortController();
  const on = (target, kind, f, more) => target.addEventListener(kind, f, { signal: alive.signal, ...more });
  const svg = make("svg", { class: "side-drawing", role: "group", tabindex: 0, "aria-label": "The piece as a skeleton. Plus and minus keys bring it nearer or farther, arrow keys move it, 0 shows all of it. The tab key goes to its points." }, place);
  const [soft, hits, strong, ghosts, lengths, names, points] = ["soft", "hits", "strong", "ghosts", "lengths", "names", "points"].map((c) => make("g", { class: c }, svg));
  for (const g of [soft, strong, ghosts, lengths, names]) g.setAttribute("aria-hidden", "true");
  const tools = document.createElement("div");
  tools.className = "side-zoom group";
  tools.setAttribute("role", "group");
  tools.setAttribute("aria-label", "How near");
  for (const [sign, label, f] of [["\u2212", "Farther", () => zoom(1 / 1.3)], ["+", "Nearer", () => zoom(1.3)], ["all", "Show all of it", () => fit(false)], ["chain", "Show the chain", () => fit(true)]]) {
    const button = Object.assign(document.createElement("button"), { type: "button", textContent: sign, title: label });
    button.setAttribute("aria-label", label);
    button.addEventListener("click", f);
    tools.append(button);
  }
  const said = Object.assign(document.createElement("p"), { className: "side-said", hidden: true });
  place.append(tools, said);

  let scene = null;
  let poses = null;
  let size = { w: 0, h: 0 };
  let look = { scale: 1, u: 0, v: 0, fitted: "all" };
  let held = null;
  let trouble = null;
  let dirty = true;

  // Where things stand: the bodies at the crank's angle, or as drawn.
  let bodies = [];
  let drawn = [];
  const stand = () => {
    drawn = seen(identity, scene.right, scene.up);
    const count = 1 + Math.max(0, ...scene.strokes.flatMap((s) => s.bodies), ...scene.handles.map((h) => h.body));
    const usable = poses && poses.bodies >= count;
    const at = usable ? (crank.deg / (360 * crank.turns)) * poses.frames : 0;
    const i = Math.floor(at) % (poses?.frames ?? 1);
    const j = (i + 1) % (poses?.frames ?? 1);
    bodies = Array.from({ length: count }, (_, b) => (usable ? seen(between(poses.values, 7 * (i * poses.bodies + b), 7 * (j * poses.bodies + b), at - Math.floor(at)), scene.right, scene.up) : drawn));
  };
  const project = ([u, v], p, k) => [u[0] * p[k] + u[1] * p[k + 1] + u[2] * p[k + 2] + u[3], v[0] * p[k] + v[1] * p[k + 1] + v[2] * p[k + 2] + v[3]];
  const screen = ([u, v]) => [size.w / 2 + (u - look.u) * look.scale, size.h / 2 - (v - look.v) * look.scale];
  const pointsOf = (thing, of) => thing.bodies.map((b, i) => screen(project(of ?? bodies[b], thing.at, 3 * i)));
  const line = (all, closed) => `M${all.map(([x, y]) => `${px(x)} ${px(y)}`).join("L")}${closed ? "Z" : ""}`;
  const cross = ([x, y], r) => `M${px(x - r)} ${px(y)}H${px(x + r)}M${px(x)} ${px(y - r)}V${px(y + r)}`;
  const shape = (s, of) => (s.kind === "centre" ? cross(screen(project(of ?? bodies[s.bodies[0]], s.at, 0)), s.strong ? 11 : 8) : line(pointsOf(s, of), s.closed));
  const strays = (s) => pointsOf(s).some(([x, y], i) => {
    const [a, b] = pointsOf(s, drawn)[i];
    return Math.hypot(x - a, y - b) > 1;
  });

  // Elements are kept as long as what they stand for stays, so that focus stays too.
  const kept = new Map();
  const keep = (key, parent, build) => {
    let e = kept.get(key);
    if (!e) {
      e = build();
      kept.set(key, e);
    }
    if (e.parentNode !== parent) parent.append(e);
    e.used = true;
    return e;
  };

  function build() {
    for (const e of kept.values()) e.used = false;
    scene.strokes.forEach((s, i) => {
      const key = `${i} ${s.kind} ${s.member}`;
      s.element = keep(`line ${key}`, s.strong ? strong : soft, () => make("path", { class: `k-${s.kind}` }));
      if (s.member) {
        s.hit = keep(`hit ${key}`, hits, () => make("path", { "data-member": s.member }));
        if (!s.hit.firstChild) make("title", {}, s.hit).textContent = s.member;
      }
      if (s.strong && (s.kind === "lever" || s.kind === "rod")) s.ghost = keep(`ghost ${key}`, ghosts, () => make("path", {}));
    });
    for (const h of scene.handles) {
      const tab = h.strong || !scene.chosen ? 0 : -1;
      h.element = keep(`point ${h.path}`, points, () => {
        const g = make("g", { role: "slider", "data-path": h.path });
        make("circle", { class: "hit", r: 11 }, g);
        make("circle", { class: "knob", r: h.joint ? 4.2 : 3.6 }, g);
        make("title", {}, g);
        return g;
      });
      h.element.setAttribute("class", `point${h.strong ? " strong" : ""}${h.joint ? " joint" : ""}`);
      h.element.setAttribute("tabindex", tab);
      h.element.setAttribute("aria-label", h.label);
      h.element.setAttribute("aria-valuenow", h.at[0]);
      h.element.setAttribute("aria-valuemin", -100000);
      h.element.setAttribute("aria-valuemax", 100000);
      h.element.setAttribute("aria-valuetext", h.value);
      h.element.querySelector("title").textContent = `${h.label}: ${h.value}`;
      if (h.name) h.text = keep(`name ${h.path}`, names, () => make("text", {}));
      if (h.text) h.text.textContent = h.name;
    }
    scene.lengths.forEach((l, i) => {
      l.element = keep(`length ${i}`, lengths, () => {
        const g = make("g", {});
        for (const c of ["ext", "dim", "arrows"]) make("path", { class: c }, g);
        make("text", {}, g);
        return g;
      });
      l.element.lastChild.textContent = l.text;
    });
    for (const [key, e] of kept) {
      if (!e.used) {
        e.remove();
        kept.delete(key);
      }
    }
    // Strong points lie on top, in the order that they are sent; only where the order is wrong, so that focus stays.
    const order = scene.handles.map((h) => h.element);
    const focused = document.activeElement?.closest?.("[data-path]");
    if (order.some((e, i) => points.children[i] !== e)) for (const e of order) if (e !== focused) points.append(e);
  }

  function paint() {
    if (!scene || !size.w) return;
    stand();
    let astray = false;
    for (const s of scene.strokes) {
      const d = shape(s);
      s.element.setAttribute("d", d);
      s.hit?.setAttribute("d", d);
      if (s.ghost) {
        const off = strays(s);
        astray ||= off;
        s.ghost.setAttribute("d", off ? shape(s, drawn) : "");
      }
    }
    const free = scene.chosen || !scene.strokes.some((s) => s.kind === "lever" && strays(s));
    for (const h of scene.handles) {
      const [x, y] = held?.path === h.path && held.at ? screen(held.at) : screen(project(drawn, h.at, 0));
      h.element.setAttribute("transform", `translate(${px(x)} ${px(y)})`);
      h.element.classList.toggle("away", !free || (astray && !h.strong && !h.joint));
      h.element.classList.toggle("bad", !!trouble && held?.path === h.path);
      if (held?.path === h.path) {
        said.hidden = !trouble;
        const left = Math.min(Math.max(6, x - 95), Math.max(6, size.w - 196));
        said.style.transform = `translate(${left}px, ${y < size.h / 2 ? y + 18 : y - 18 - said.offsetHeight}px)`;
      }
    }
    if (!held) said.hidden = true;
    measure();
  }

  // ISO 129-1: dimension line beside the length with an arrow at each end, extension lines a little beyond it, figures above the line and read from below or from the right.
  // Names and dimensions stand away from the chain's middle. Of arms that lie along each other from one axis, the shorter one's line is the nearer.
  function measure() {
    const all = scene.lengths.map((l) => pointsOf(l));
    const middle = all.flat().reduce((m, [x, y], _, { length }) => [m[0] + x / length, m[1] + y / length], [0, 0]);
    for (const h of scene.handles) {
      if (!h.text) continue;
      const [x, y] = screen(project(drawn, h.at, 0));
      const left = x < middle[0];
      h.text.setAttribute("x", px(x + (left ? -9 : 9)));
      h.text.setAttribute("y", px(y + (y > middle[1] + 4 ? 17 : -8)));
      h.text.setAttribute("text-anchor", left ? "end" : "start");
    }
    const laid = scene.lengths.map((l, i) => {
      const [[ax, ay], [bx, by]] = all[i];
      const long = Math.hypot(bx - ax, by - ay);
      const [ux, uy] = [(bx - ax) / long, (by - ay) / long];
      const away = ((ax + bx) / 2 - middle[0]) * -uy + ((ay + by) / 2 - middle[1]) * ux < 0 ? -1 : 1;
      return { ...l, ax, ay, bx, by, long, ux, uy, nx: -uy * away, ny: ux * away, level: 0 };
    });
    const arms = laid.filter((l) => !l.rod && l.long >= least).sort((a, b) => a.long - b.long);
    arms.forEach((l, i) => {
      const beside = arms.slice(0, i).findLast((o) => Math.hypot(o.ax - l.ax, o.ay - l.ay) < 3 && o.ux * l.ux + o.uy * l.uy > 0.9);
      if (!beside) return;
      const side = beside.nx * l.nx + beside.ny * l.ny < 0 ? -1 : 1;
      Object.assign(l, { level: beside.level + 1, nx: side * l.nx, ny: side * l.ny });
    });
    for (const l of laid) {
      l.element.classList.toggle("rod", l.rod);
      l.element.toggleAttribute("hidden", l.long < least);
      if (l.long < least) continue;
      const far = l.rod ? 24 : 15 + 14 * l.level;
      const to = (x, y, n, u = 0) => `${px(x + l.nx * n + l.ux * u)} ${px(y + l.ny * n + l.uy * u)}`;
      const { ax, ay, bx, by } = l;
      const [ext, dim, arrows, text] = l.element.children;
      ext.setAttribute("d", `M${to(ax, ay, 5)}L${to(ax, ay, far + 3)}M${to(bx, by, 5)}L${to(bx, by, far + 3)}`);
      dim.setAttribute("d", `M${to(ax, ay, far)}L${to(bx, by, far)}`);
      arrows.setAttribute("d", `M${to(ax, ay, far)}L${to(ax, ay, far - 1.8, 7)}L${to(ax, ay, far + 1.8, 7)}ZM${to(bx, by, far)}L${to(bx, by, far - 1.8, -7)}L${to(bx, by, far + 1.8, -7)}Z`);
      let turn = (Math.atan2(l.uy, l.ux) * 180) / Math.PI;
      if (turn > 75 || turn <= -105) turn += turn > 0 ? -180 : 180;
      text.setAttribute("transform", `translate(${to((ax + bx) / 2, (ay + by) / 2, far)}) rotate(${px(turn)}) translate(0 -3)`);
    }
  }

  const fit = (chainOnly = look.fitted === "chain") => {
    if (!scene || !size.w) return;
    const some = scene.strokes.filter((s) => s.strong && s.kind !== "axis");
    const box = [Infinity, -Infinity, Infinity, -Infinity];
    for (const s of chainOnly && some.length ? some : scene.strokes) {
      s.bodies.forEach((_, i) => {
        const [u, v] = project(seen(identity, scene.right, scene.up), s.at, 3 * i);
        box[0] = Math.min(box[0], u);
        box[1] = Math.max(box[1], u);
        box[2] = Math.min(box[2], v);
        box[3] = Math.max(box[3], v);
      });
    }
    const [w, h] = [Math.max(20, box[1] - box[0]), Math.max(20, box[3] - box[2])];
    const room = chainOnly ? 96 : 60;
    const scale = Math.max(0.2, Math.min((size.w - room) / w, (size.h - room) / h));
    look = { scale, u: (box[0] + box[1]) / 2, v: (box[2] + box[3]) / 2, fitted: chainOnly ? "chain" : "all" };
    dirty = true;
  };
  const zoom = (by, x = size.w / 2, y = size.h / 2) => {
    const scale = Math.min(60, Math.max(0.2, look.scale * by));
    const [u, v] = [look.u + (x - size.w / 2) / look.scale, look.v - (y - size.h / 2) / look.scale];
    look = { scale, u: u - (x - size.w / 2) / scale, v: v + (y - size.h / 2) / scale, fitted: null };
    dirty = true;
  };
  const pan = (dx, dy) => {
    look = { ...look, u: look.u - dx / look.scale, v: look.v + dy / look.scale, fitted: null };
    dirty = true;
  };

  const send = latest(async (...args) => {
    const sent = performance.now();
    const [version, u, v] = await page.invokeMethodAsync("Drag", ...args);
    if (version) note.asked(version, sent);
    if (held?.path === args[0] && u !== undefined) held.at = [u, v];
    dirty = true;
  });

  let press = null;
  on(svg, "pointerdown", (e) => {
    if (e.button !== 0) return;
    const point = e.target.closest("[data-path]");
    press = { x: e.clientX, y: e.clientY, moved: false, member: e.target.closest("[data-member]")?.dataset.member ?? null };
    if (point) {
      held = { path: point.dataset.path, gesture: `side ${Date.now()}`, at: null };
      page.invokeMethodAsync("Hold", held.path);
      point.focus({ preventScroll: true });
    } else svg.focus({ preventScroll: true });
    svg.setPointerCapture(e.pointerId);
    e.preventDefault();
  });
  on(svg, "pointermove", (e) => {
    if (!press) return;
    const [dx, dy] = [e.clientX - press.x, e.clientY - press.y];
    if (!press.moved && Math.hypot(dx, dy) < 3) return;
    press.moved = true;
    if (held) send(held.path, dx / look.scale, -dy / look.scale, e.shiftKey ? 5 : 0.5, held.gesture);
    else {
      pan(dx, dy);
      Object.assign(press, { x: e.clientX, y: e.clientY });
    }
  });
  const letGo = () => {
    press = null;
    if (held && !trouble) held = null;
    dirty = true;
  };
  on(svg, "pointerup", () => {
    if (press && !press.moved && !held) page.invokeMethodAsync("Pick", press.member);
    letGo();
  });
  on(svg, "pointercancel", letGo);
  on(svg, "wheel", (e) => {
    const box = svg.getBoundingClientRect();
    zoom(Math.exp(-e.deltaY * (e.deltaMode ? 0.03 : 0.0012)), e.clientX - box.left, e.clientY - box.top);
    e.preventDefault();
  }, { passive: false });

  // Presses of an arrow key that follow each other are one gesture.
  let keyed = null;
  const pause = 1500;
  on(svg, "focusin", (e) => {
    const path = e.target.closest("[data-path]")?.dataset.path;
    if (path && !press) page.invokeMethodAsync("Hold", path);
  });
  on(svg, "keydown", (e) => {
    const way = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[e.key];
    const path = e.target.closest("[data-path]")?.dataset.path;
    if (way && path) {
      const now = performance.now();
      if (keyed?.path !== path || now - keyed.last > pause) keyed = { path, right: 0, up: 0, gesture: `side keys ${Date.now()}` };
      const by = e.shiftKey ? 5 : 0.5;
      Object.assign(keyed, { right: keyed.right + way[0] * by, up: keyed.up + way[1] * by, last: now });
      send(path, keyed.right, keyed.up, 0, keyed.gesture);
    } else if (way) pan(-30 * way[0], 30 * way[1]);
    else if (e.key === "+" || e.key === "=") zoom(1.3);
    else if (e.key === "-") zoom(1 / 1.3);
    else if (e.key === "0") fit(false);
    else if (e.key === "Escape" && held && press?.moved) {
      send(held.path, 0, 0, 0, held.gesture);
      letGo();
    } else return;
    e.preventDefault();
    e.stopPropagation();
  });

  const newPoses = latest(async (url) => {
    try {
      poses = (await fetchPoses(url, alive.signal)) ?? poses;
      dirty = true;
    } catch {
      // The page is going, or will be taken up again.
    }
  });

  const sizes = new ResizeObserver(() => {
    const box = place.getBoundingClientRect();
    size = { w: Math.floor(box.width), h: Math.floor(box.height) };
    svg.setAttribute("width", size.w);
    svg.setAttribute("height", size.h);
    if (look.fitted) fit();
    dirty = true;
  });
  sizes.observe(place);
  const leave = onCrank(() => (dirty = true));
  let frame = requestAnimationFrame(function step() {
    frame = requestAnimationFrame(step);
    if (!dirty) return;
    dirty = false;
    paint();
  });

  return {
    draw(next, problem) {
      const turned = scene?.view !== next.view;
      const another = scene?.chosen !== next.chosen;
      scene = next;
      trouble = problem;
      said.textContent = problem ?? "";
      if (!trouble && !press) held = null;
      build();
      if (turned || (another && look.fitted && !press)) fit(!!scene.chosen);
      newPoses(scene.poses);
      dirty = true;
    },
    stop() {
      alive.abort();
      leave();
      sizes.disconnect();
      cancelAnimationFrame(frame);
    },
  };
}
