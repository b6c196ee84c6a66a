// Loads drawings in a real browser, holds every text's inked box against every other's and against the
// paper, in two faces, and renders pictures. Arguments: folder of the SVGs, folder for the PNGs, browser.
import { mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { chromium } from "playwright-core";

const [svgs, pngs, executablePath] = process.argv.slice(2);
mkdirSync(pngs, { recursive: true });
const files = readdirSync(svgs).filter((name) => name.endsWith(".svg")).sort();
if (files.length < 100) throw new Error(`only ${files.length} drawings: run the tests first`);

// Half a unit, an eighth of a millimetre on paper, between inks.
const APART = 0.5;

function inked(family) {
  const context = new OffscreenCanvas(1, 1).getContext("2d");
  const paper = document.documentElement.viewBox.baseVal;
  const boxes = [...document.querySelectorAll("text")].map((text) => {
    if (family) text.style.fontFamily = family;
    const box = text.getBBox();
    const style = getComputedStyle(text);
    // Ascent and descent of the ink itself; getBBox has the face's whole line.
    context.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const ink = context.measureText(text.textContent);
    const baseline = Number(text.getAttribute("y"));
    return {
      text: text.textContent,
      left: box.x,
      right: box.x + box.width,
      top: baseline - ink.actualBoundingBoxAscent,
      bottom: baseline + ink.actualBoundingBoxDescent,
    };
  });
  return { paper: [paper.width, paper.height], boxes };
}

const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
const page = await browser.newPage({ deviceScaleFactor: 2 });
const wrong = [];
let texts = 0;
let closest = Infinity;
for (const name of files) {
  await page.goto(`file://${resolve(svgs, name)}`);
  for (const family of ["", "Liberation Sans"]) {
    const { paper, boxes } = await page.evaluate(inked, family);
    texts += boxes.length;
    boxes.forEach((a, index) => {
      if (a.left < 0 || a.top < 0 || a.right > paper[0] || a.bottom > paper[1]) {
        wrong.push(`${name}: "${a.text}" leaves the paper`);
      }
      for (const b of boxes.slice(index + 1)) {
        const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
        const up = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
        const apart = Math.max(across, up);
        closest = Math.min(closest, apart);
        if (apart < APART) wrong.push(`${name}: "${a.text}" and "${b.text}" are ${apart.toFixed(2)} apart`);
      }
    });
  }
}

// Pictures of what people will look at, on light and on dark ground; the random ones only checked.
for (const name of files.filter((name) => !/^(studio|range)-/.test(name))) {
  for (const colorScheme of ["light", "dark"]) {
    await page.emulateMedia({ colorScheme });
    await page.goto("about:blank");
    await page.setContent(readFileSync(join(svgs, name), "utf8"));
    await page.locator("svg").first().screenshot({ path: join(pngs, name.replace(".svg", `-${colorScheme}.png`)) });
  }
}
await browser.close();
console.log(`${files.length} drawings, ${texts} texts in two faces, the closest ${closest.toFixed(2)} units apart`);
for (const line of wrong) console.error(line);
process.exit(wrong.length > 0 ? 1 : 0);
