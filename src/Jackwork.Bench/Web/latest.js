// One go is under way at a time; of the asks that come meanwhile only the last is met, next.
export function latest(go) {
  let busy = false;
  let next = null;
  return async (...what) => {
    next = what;
    if (busy) return;
    busy = true;
    try {
      while (next) {
        const now = next;
        next = null;
        await go(...now);
      }
    } finally {
      busy = false;
    }
  };
}
