// Which pieces were opened, and when, in this browser; the start page shows the last opened first.
const most = 200;

const read = () => {
  try {
    return Object.entries(JSON.parse(localStorage.getItem("opened")) ?? {}).filter(([, at]) => Number.isFinite(at)).sort((a, b) => b[1] - a[1]);
  } catch {
    return [];
  }
};

let seen = "";
function look() {
  if (location.pathname === seen) return;
  seen = location.pathname;
  if (seen !== "/piece" && !seen.startsWith("/piece/")) return;
  try {
    const path = decodeURIComponent(seen.slice("/piece/".length));
    localStorage.setItem("opened", JSON.stringify(Object.fromEntries([[path, Date.now()], ...read().filter(([p]) => p !== path)].slice(0, most))));
  } catch {
    // An address that is no path, or a browser that keeps nothing: the order is that of saving then.
  }
}
new MutationObserver(look).observe(document.body, { childList: true, subtree: true });
look();

export const lastOpened = () => read().map(([path]) => path);
