// Poses as they are fetched, seven numbers each: a place in mm and a unit quaternion x, y, z, w.
export const identity = [0, 0, 0, 0, 0, 0, 1];

// Angle between two quaternions, rad, below which they are run straight: the arc's formula would divide nothing by nothing.
const straight = 1e-6;

// The poses over a performance, as StagePoses writes them; null where the bench has none.
export async function fetchPoses(url, signal) {
  const answer = await fetch(url, { signal });
  if (!answer.ok) return null;
  const buffer = await answer.arrayBuffer();
  const [version, frames, bodies] = new Int32Array(buffer, 0, 3);
  return { version, frames, bodies, values: new Float32Array(buffer, 12) };
}

// Where a body's points are seen: two rows of four, from a place and a quaternion.
export function seen([x, y, z, a, b, c, w], right, up) {
  const turn = [1 - 2 * (b * b + c * c), 2 * (a * b - c * w), 2 * (a * c + b * w), 2 * (a * b + c * w), 1 - 2 * (a * a + c * c), 2 * (b * c - a * w), 2 * (a * c - b * w), 2 * (b * c + a * w), 1 - 2 * (a * a + b * b)];
  const row = (d) => [0, 1, 2].map((k) => d[0] * turn[k] + d[1] * turn[3 + k] + d[2] * turn[6 + k]).concat(d[0] * x + d[1] * y + d[2] * z);
  return [row(right), row(up)];
}

// The pose a share of the way from one to the other: the place on the straight line, the turn the short way at a steady speed.
export function between(values, i, j, t) {
  const p = [];
  for (let k = 0; k < 3; k++) p.push(values[i + k] + t * (values[j + k] - values[i + k]));
  const a = values.slice(i + 3, i + 7);
  const b = values.slice(j + 3, j + 7);
  const dot = a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3];
  const sign = dot < 0 ? -1 : 1;
  const angle = Math.acos(Math.min(1, Math.abs(dot)));
  const [ka, kb] = angle < straight ? [1 - t, t] : [Math.sin((1 - t) * angle) / Math.sin(angle), Math.sin(t * angle) / Math.sin(angle)];
  return [...p, ...[0, 1, 2, 3].map((k) => ka * a[k] + sign * kb * b[k])];
}
