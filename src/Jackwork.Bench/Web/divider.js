// The divider between the stage and what is open beside it. Its place is kept in this browser; the style sheet keeps it within what the page has room for.
const step = 20;
const key = "side";

export function createDivider(place) {
  const alive = new AbortController();
  const on = (target, kind, f) => target.addEventListener(kind, f, { signal: alive.signal });
  const root = document.documentElement;
  const side = document.getElementById(place.getAttribute("aria-controls"));
  const bounds = () => {
    const style = getComputedStyle(place);
    return ["--side-least", "--side-most"].map((name) => parseFloat(style.getPropertyValue(name)));
  };
  const tell = () => {
    const [least] = bounds();
    place.setAttribute("aria-valuemin", least);
    place.setAttribute("aria-valuemax", most());
    place.setAttribute("aria-valuenow", Math.round(side.getBoundingClientRect().width));
  };
  const most = () => Math.min(bounds()[1], place.parentElement.clientWidth - parseFloat(getComputedStyle(place).getPropertyValue("--stage-least")));
  const set = (width) => {
    const to = Math.round(Math.min(most(), Math.max(bounds()[0], width)));
    root.style.setProperty("--side", `${to}px`);
    localStorage.setItem(key, to);
    tell();
  };
  const saved = parseFloat(localStorage.getItem(key));
  if (saved) root.style.setProperty("--side", `${saved}px`);

  let held = null;
  on(place, "pointerdown", (e) => {
    held = { x: e.clientX, width: side.getBoundingClientRect().width };
    place.setPointerCapture(e.pointerId);
    place.classList.add("held");
    e.preventDefault();
    place.focus({ preventScroll: true });
  });
  on(place, "pointermove", (e) => held && set(held.width + held.x - e.clientX));
  const letGo = () => {
    held = null;
    place.classList.remove("held");
  };
  on(place, "pointerup", letGo);
  on(place, "pointercancel", letGo);
  on(place, "dblclick", () => {
    root.style.removeProperty("--side");
    localStorage.removeItem(key);
    tell();
  });
  on(place, "keydown", (e) => {
    const now = side.getBoundingClientRect().width;
    const to = { ArrowLeft: now + step, ArrowRight: now - step, Home: 0, End: Infinity }[e.key];
    if (to === undefined) return;
    set(to);
    e.preventDefault();
  });
  const sizes = new ResizeObserver(tell);
  sizes.observe(side);

  return {
    stop() {
      alive.abort();
      sizes.disconnect();
    },
  };
}
