// What the page's components call, and what lives as long as the page: the way back after a break, the crank's controls, light and dark.
import { crank, onCrank, run, turnTo } from "./crank.js";
export { createStage } from "./stage.js";
export { createChart } from "./chart.js";
export { createDivider } from "./divider.js";
export { createEditor } from "./editor.js";
export { createSideView } from "./side.js";
export { createTurning } from "./turning.js";
export { lastOpened } from "./recent.js";

// The bench keeps everything on its side, so a page that lost its way is taken up again, or loaded anew.
const lost = document.getElementById("lost");
async function find() {
  lost.hidden = false;
  for (;;) {
    try {
      if (await Blazor.reconnect()) break;
      location.reload();
      return;
    } catch {
      await new Promise((r) => setTimeout(r, 700));
    }
  }
  lost.hidden = true;
}

if (!window.benchStarted) {
  window.benchStarted = true;
  const saved = localStorage.getItem("theme");
  if (saved) document.documentElement.dataset.theme = saved;
  Blazor.start({
    circuit: { reconnectionHandler: { onConnectionDown: find, onConnectionUp: () => (lost.hidden = true) } },
  });

  document.addEventListener("click", (e) => {
    if (e.target.closest("[data-theme-switch]")) {
      const root = document.documentElement;
      const dark = root.dataset.theme ? root.dataset.theme === "dark" : matchMedia("(prefers-color-scheme: dark)").matches;
      root.dataset.theme = dark ? "light" : "dark";
      localStorage.setItem("theme", root.dataset.theme);
    }
    if (e.target.closest("[data-crank=run]")) run();
  });
  document.addEventListener("input", (e) => {
    if (e.target.matches?.("[data-crank=slider]")) {
      // Read first: to stop sets the slider back to where the crank stands.
      const to = +e.target.value;
      run(false);
      turnTo(to);
    }
  });
  document.addEventListener("keydown", (e) => {
    const typing = e.target.closest?.("input:not([type=range]):not([type=checkbox]), textarea, .cm-editor");
    if (!typing && (e.ctrlKey || e.metaKey) && e.key.toLowerCase() === "z") {
      document.querySelector(`[data-history=${e.shiftKey ? "redo" : "undo"}]`)?.click();
      e.preventDefault();
    }
  });

  // View state lives in the address: the crank angle, once it rests, and what is open beside the stage.
  const asked = new URLSearchParams(location.search).get("at");
  let first = true;
  let rest = 0;
  onCrank(({ deg, turns, running, known }) => {
    const slider = document.querySelector("[data-crank=slider]");
    if (slider) {
      slider.value = deg;
      document.querySelector("[data-crank=read]").textContent = `turn ${Math.floor(deg / 360) + 1} of ${turns}, ${(deg % 360).toFixed(0)}\u00b0`;
      const button = document.querySelector("[data-crank=run]");
      button.setAttribute("aria-label", running ? "Stop" : "Let it run");
      button.firstElementChild.textContent = running ? "\u2016" : "\u25b6";
    }
    if (first && known && asked) {
      first = false;
      turnTo(+asked || 0);
      return;
    }
    later();
  });

  function later() {
    clearTimeout(rest);
    rest = setTimeout(() => {
      const view = document.querySelector("[data-view]")?.dataset.view;
      if (!crank.running && view !== undefined) history.replaceState(history.state, "", `${location.pathname}?at=${crank.deg.toFixed(0)}${view}`);
    }, 400);
  }
  new MutationObserver(later).observe(document.body, { subtree: true, attributeFilter: ["data-view"] });
}
