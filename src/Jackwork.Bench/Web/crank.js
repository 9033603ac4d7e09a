// The crank angle that everything on the page follows: one number, degrees from 0 to the performance's end.
const listeners = new Set();
export const crank = { deg: 0, turns: 1, rpm: 30, running: false, known: false };
let last = 0;

export function onCrank(f) {
  listeners.add(f);
  f(crank);
  return () => listeners.delete(f);
}

export function turnTo(deg) {
  const whole = 360 * crank.turns;
  crank.deg = ((deg % whole) + whole) % whole;
  for (const f of listeners) f(crank);
}

export function setPerformance(turns, rpm) {
  Object.assign(crank, { turns, rpm, known: true });
  turnTo(crank.deg);
}

export function run(on = !crank.running) {
  crank.running = on;
  last = performance.now();
  if (on) requestAnimationFrame(step);
  turnTo(crank.deg);
}

// A machine that slept goes on from where it stood.
const longest = 100;

function step(now) {
  if (!crank.running) return;
  turnTo(crank.deg + Math.min(now - last, longest) * crank.rpm * 0.006);
  last = now;
  requestAnimationFrame(step);
}
