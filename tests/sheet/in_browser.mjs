// Loads the sheet in a real browser at phone and desktop width, light and dark, and as it prints to A4 and
// Letter: no two texts may lie over each other, nothing may be cut off or stick out, and every shot takes
// exactly one page. Arguments: the HTML, folder for PNGs and PDFs, browser.
import { mkdirSync, writeFileSync } from "node:fs";
import { execFileSync } from "node:child_process";
import { join, resolve } from "node:path";
import { chromium } from "playwright-core";

const [html, folder, executablePath] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const address = `file://${resolve(html)}`;
const wrong = [];
let texts = 0;

// Boxes of every line of text outside the drawings, and of the drawings themselves.
function boxes() {
  const found = [];
  const scales = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (!node.textContent.trim() || parent.closest("svg, style")) continue;
    if (getComputedStyle(parent).display === "none" || parent.getClientRects().length === 0) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const size = parseFloat(getComputedStyle(parent).fontSize);
    for (const box of range.getClientRects()) {
      // The ink of a line is about as high as its size, whatever the line's box is.
      const spare = Math.max(0, box.height - size) / 2;
      if (box.width > 0.5) {
        found.push({ what: node.textContent.trim().slice(0, 40), x: box.x, y: box.y + spare, w: box.width, h: box.height - 2 * spare });
      }
    }
  }
  for (const drawing of document.querySelectorAll("svg.tablerig-drawing")) {
    const box = drawing.getBoundingClientRect();
    const paper = drawing.viewBox.baseVal;
    scales.push(Math.min(box.width / paper.width, box.height / paper.height));
    found.push({ what: `drawing ${drawing.querySelector("title")?.textContent}`, x: box.x, y: box.y, w: box.width, h: box.height });
  }
  const clipped = [...document.querySelectorAll("body *:not(svg *)")]
    .filter((one) => getComputedStyle(one).overflowX !== "visible" || getComputedStyle(one).overflowY !== "visible")
    .filter((one) => one.tagName !== "svg")
    .filter((one) => one.scrollHeight > one.clientHeight + 1 || one.scrollWidth > one.clientWidth + 1)
    .map((one) => `${one.tagName.toLowerCase()}#${one.id}: ${one.scrollHeight} of ${one.clientHeight} px`);
  const pages = [...document.querySelectorAll(".page")].map((page) => {
    const box = page.getBoundingClientRect();
    return { name: page.id || "overview", top: box.top, bottom: box.bottom, left: box.left, right: box.right };
  });
  return { found, scales, clipped, pages, across: document.documentElement.scrollWidth, width: innerWidth };
}

function hold(what, { found, clipped, pages, across, width }) {
  texts += found.length;
  if (across > width) wrong.push(`${what}: ${across} px across a screen of ${width}`);
  for (const one of clipped) wrong.push(`${what}: cut off: ${one}`);
  found.forEach((a, index) => {
    const page = pages.find((page) => a.y >= page.top - 1 && a.y + a.h <= page.bottom + 1);
    if (!page) wrong.push(`${what}: "${a.what}" leaves its page`);
    else if (a.x < page.left - 1 || a.x + a.w > page.right + 1) wrong.push(`${what}: "${a.what}" sticks out of ${page.name}`);
    for (const b of found.slice(index + 1)) {
      const over = Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x);
      const under = Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y);
      if (over > 1 && under > 1) wrong.push(`${what}: "${a.what}" and "${b.what}" lie over each other by ${over.toFixed(1)} x ${under.toFixed(1)} px`);
    }
  });
}

const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
const requests = [];
for (const [name, width, height, scale] of [["phone", 375, 812, 2], ["desktop", 1280, 900, 1]]) {
  for (const colorScheme of ["light", "dark"]) {
    const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: scale });
    page.on("request", (request) => requests.push(request.url()));
    await page.emulateMedia({ media: "screen", colorScheme });
    await page.goto(address);
    hold(`${name} ${colorScheme}`, await page.evaluate(boxes));
    const shown = page.locator(".page");
    for (const index of [0, 1, 3]) {
      await shown.nth(index).screenshot({ path: join(folder, `${name}-${colorScheme}-${index}.png`) });
    }
    await page.close();
  }
}

// Of the size at which a drawing's smallest letters are 2.75 mm high: under this they cannot be read.
const LEAST_SCALE = 0.5;

// As printed: 96 pixels an inch, the page less its margins of 8 mm.
const mm = 96 / 25.4;
for (const [format, width] of [["A4", 194], ["Letter", 199.9]]) {
  const page = await browser.newPage({ viewport: { width: Math.round(width * mm), height: 1200 } });
  await page.emulateMedia({ media: "print" });
  await page.goto(address);
  const printed = await page.evaluate(boxes);
  hold(`printed to ${format}`, printed);
  const least = Math.min(...printed.scales) / (mm / 4);
  if (least < LEAST_SCALE) wrong.push(`${format}: a drawing is printed at only ${least.toFixed(2)} of its size`);
  const names = await page.evaluate(() => [...document.querySelectorAll(".shot h2")].map((name) => name.textContent));
  const path = join(folder, `sheet-${format.toLowerCase()}.pdf`);
  writeFileSync(path, await page.pdf({ format, printBackground: false, preferCSSPageSize: false, margin: { top: "8mm", bottom: "8mm", left: "8mm", right: "8mm" } }));
  const pages = execFileSync("pdftotext", ["-layout", path, "-"]).toString().split("\f").filter((text) => text.trim());
  if (pages.length !== names.length + 1) wrong.push(`${format}: ${pages.length} pages for ${names.length} shots and the overview`);
  names.forEach((name, index) => {
    const told = pages[index + 1] ?? "";
    if (!told.includes(name) || !told.includes("Changed, and why")) wrong.push(`${format}: page ${index + 2} is not the whole of ${name}`);
  });
  console.log(`${format}: ${pages.length} pages, the smallest drawing at ${least.toFixed(2)} of its size`);
  await page.close();
}
await browser.close();
const fetched = requests.filter((url) => url !== address);
if (fetched.length > 0) wrong.push(`it fetches ${fetched.join(", ")}`);
console.log(`${texts} boxes of text and drawings held against each other`);
for (const line of wrong) console.error(line);
process.exit(wrong.length > 0 ? 1 : 0);
