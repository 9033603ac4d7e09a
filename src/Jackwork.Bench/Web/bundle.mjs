// Bundles the page's scripts and styles and gathers its fonts into one flat folder: node bundle.mjs FOLDER
import { build } from "esbuild";
import { copyFile, mkdir, readdir, rm } from "node:fs/promises";
import { join } from "node:path";

const out = process.argv[2];
await rm(out, { recursive: true, force: true });
await mkdir(out, { recursive: true });
await build({
  entryPoints: ["bench.js", "bench.css"],
  outdir: out,
  bundle: true,
  format: "esm",
  target: "es2022",
  minify: true,
  legalComments: "eof",
  external: ["*.woff2"],
  logLevel: "warning",
});
const fonts = {
  "vollkorn.woff2": "@fontsource-variable/vollkorn/files/vollkorn-latin-wght-normal.woff2",
  "source-sans.woff2": "@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2",
  "plex-mono.woff2": "@fontsource/ibm-plex-mono/files/ibm-plex-mono-latin-400-normal.woff2",
};
for (const [name, from] of Object.entries(fonts)) await copyFile(join("node_modules", from), join(out, name));
for (const name of await readdir(".")) if (name.endsWith(".svg")) await copyFile(name, join(out, name));
