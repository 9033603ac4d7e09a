// How long a drag takes to be seen: from the pointer's move to the chart redrawn, the verdict on motion shown, and the stage drawn with its
// poses; and how long frames take. Read by window.benchTimes().
const asked = new Map();
const times = { chart: [], verdict: [], stage: [], frames: [], work: [] };
let lastFrame = 0;

const settle = (kind, version) => {
  for (const [v, at] of asked) {
    if (v <= version && !at[kind]) {
      at[kind] = true;
      times[kind].push(performance.now() - at.sent);
      if (at.chart && at.verdict && at.stage) asked.delete(v);
    }
  }
};

export const note = {
  asked: (version, sent) => asked.set(version, { sent }),
  drawn: (version) => settle("chart", version),
  judged: (version) => settle("verdict", version),
  posed: (version) => settle("stage", version),
  frame(began) {
    const now = performance.now();
    times.work.push(now - began);
    if (times.work.length > 2000) times.work.splice(0, 1000);
    if (now - lastFrame < 1000) times.frames.push(now - lastFrame);
    if (times.frames.length > 2000) times.frames.splice(0, 1000);
    lastFrame = now;
  },
};

const quantile = (all, q) => [...all].sort((a, b) => a - b)[Math.min(all.length - 1, Math.floor(q * all.length))];

window.benchTimes = () => Object.fromEntries(Object.entries(times).map(([k, v]) => [k, { n: v.length, median: quantile(v, 0.5), p95: quantile(v, 0.95) }]));
window.benchTimesReset = () => Object.values(times).forEach((v) => (v.length = 0));
