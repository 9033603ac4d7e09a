// The dividers between stage, side panel and charts. Their places are kept in this browser; the style sheet keeps them within what the page has room for.
const step = 20;

export function createDivider(place) {
  const alive = new AbortController();
  const on = (target, kind, f) => target.addEventListener(kind, f, { signal: alive.signal });
  const root = document.documentElement;
  const panel = document.getElementById(place.getAttribute("aria-controls"));
  const isLevel = place.getAttribute("aria-orientation") === "horizontal";
  const [key, rest] = isLevel ? ["low", "top"] : ["side", "stage"];
  const [along, size] = isLevel ? ["clientY", "height"] : ["clientX", "width"];
  const bound = (name) => parseFloat(getComputedStyle(place).getPropertyValue(name));
  const least = () => bound(`--${key}-least`);
  const most = () => Math.min(bound(`--${key}-most`), (isLevel ? window.innerHeight : place.parentElement.clientWidth) - bound(`--${rest}-least`));
  const now = () => panel.getBoundingClientRect()[size];
  const tell = () => {
    place.setAttribute("aria-valuemin", least());
    place.setAttribute("aria-valuemax", most());
    place.setAttribute("aria-valuenow", Math.round(now()));
  };
  const set = (to) => {
    const px = Math.round(Math.min(most(), Math.max(least(), to)));
    root.style.setProperty(`--${key}`, `${px}px`);
    localStorage.setItem(key, px);
    tell();
  };
  const saved = parseFloat(localStorage.getItem(key));
  if (saved) root.style.setProperty(`--${key}`, `${saved}px`);

  let held = null;
  on(place, "pointerdown", (e) => {
    held = { at: e[along], size: now() };
    place.setPointerCapture(e.pointerId);
    place.classList.add("held");
    e.preventDefault();
    place.focus({ preventScroll: true });
  });
  on(place, "pointermove", (e) => held && set(held.size + held.at - e[along]));
  const letGo = () => {
    held = null;
    place.classList.remove("held");
  };
  on(place, "pointerup", letGo);
  on(place, "pointercancel", letGo);
  on(place, "dblclick", () => {
    root.style.removeProperty(`--${key}`);
    localStorage.removeItem(key);
    tell();
  });
  on(place, "keydown", (e) => {
    const to = { [isLevel ? "ArrowUp" : "ArrowLeft"]: now() + step, [isLevel ? "ArrowDown" : "ArrowRight"]: now() - step, Home: 0, End: Infinity }[e.key];
    if (to === undefined) return;
    set(to);
    e.preventDefault();
  });
  const sizes = new ResizeObserver(tell);
  sizes.observe(panel);

  return {
    stop() {
      alive.abort();
      sizes.disconnect();
    },
  };
}
