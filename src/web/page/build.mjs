// Lays out the page's folder: node build.mjs MODULE-FOLDER PAGE-FOLDER

import { createHash } from "node:crypto";
import { cpSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";

const [module, page] = process.argv.slice(2);
const source = fileURLToPath(new URL(".", import.meta.url));
const work = `${page}-work`;

const files = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath ?? entry.path, entry.name)))
    .sort();

// Everything that is named by its content.
rmSync(work, { recursive: true, force: true });
rmSync(page, { recursive: true, force: true });
for (const part of ["app", "style", "icons"]) cpSync(join(source, part), join(work, part), { recursive: true });
mkdirSync(join(work, "tablerig"));
// Not every static server knows the ending .mjs as a script's.
cpSync(join(module, "tablerig.mjs"), join(work, "tablerig", "tablerig.js"));
cpSync(join(module, "tablerig.wasm"), join(work, "tablerig", "tablerig.wasm"));
cpSync(join(module, "LICENSE"), join(work, "LICENSE"));

const top = ["index.html", "manifest.json", "service-worker.js"].map((name) => [name, readFileSync(join(source, name), "utf8")]);
const hash = createHash("sha256");
for (const name of files(work)) hash.update(name).update("\0").update(readFileSync(join(work, name))).update("\0");
for (const [name, text] of top) hash.update(name).update("\0").update(text).update("\0");
const version = hash.digest("hex").slice(0, 16);
const folder = `v-${version}`;

mkdirSync(page, { recursive: true });
cpSync(work, join(page, folder), { recursive: true });
rmSync(work, { recursive: true, force: true });

const built = files(join(page, folder)).map((name) => `${folder}/${name}`);
const styles = ["base", "layout", "plan", "choose", "print"].map((name) => `<link rel="stylesheet" href="${folder}/style/${name}.css">`);
const modules = built
  .filter((name) => name.endsWith(".js"))
  .map((name) => `<link rel="modulepreload" href="${name}">`);
const wasm = `<link rel="preload" href="${folder}/tablerig/tablerig.wasm" as="fetch" type="application/wasm" crossorigin>`;
const precached = ["./", "manifest.json", ...built.filter((name) => !name.endsWith("LICENSE"))];
for (const [name, text] of top) {
  const filled = text
    .replaceAll("BUILD", folder)
    .replace("<!-- STYLES -->", styles.join("\n"))
    .replace("<!-- MODULES -->", [...modules, wasm].join("\n"))
    .replaceAll('"VERSION"', JSON.stringify(version))
    .replace('["FILES"]', JSON.stringify(precached, null, 2));
  writeFileSync(join(page, name), filled);
}
console.log(`${page}: version ${version}, ${built.length} files`);
