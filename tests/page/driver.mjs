// A real browser on the built page, and the library in Node to hold it against. Whatever a test does, nothing may be
// asked of another place, the content policy may not be violated, and the console stays empty.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { fileURLToPath, pathToFileURL } from "node:url";
import { serve } from "./server.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
/** The built page, the library's module, and the folder with the driver's packages. */
export const PAGE = process.env.TABLERIG_PAGE ?? `${root}target/page`;
const MODULE = process.env.TABLERIG_MODULE ?? `${root}target/web-module`;
const PACKAGES = process.env.TABLERIG_PAGE_PACKAGES ?? `${root}target/page-tests`;
const require = createRequire(pathToFileURL(`${PACKAGES}/`));
export const axe = () => require.resolve("axe-core/axe.min.js");
const { chromium } = require("playwright-core");

const { load } = await import(pathToFileURL(`${MODULE}/tablerig.mjs`).href);
/** The library, in Node. */
export const rig = await load();
export const demo = rig.ask("demo").text;

export const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };
export const NARROW = { ...PHONE, viewport: { width: 320, height: 700 } };
export const DESK = { viewport: { width: 1280, height: 800 } };

const FLAGS = [
  "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
  "--disable-component-update", "--disable-sync",
  // Whatever would be asked of another host finds none.
  "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
];

export const launch = (flags = []) =>
  chromium.launch({ executablePath: process.env.TABLERIG_CHROMIUM ?? "/usr/bin/chromium", args: [...FLAGS, ...flags] });

/** The browsers of this process, by their further flags. */
const browsers = new Map();
async function theBrowser(flags = []) {
  const key = flags.join(" ");
  if (!browsers.has(key)) browsers.set(key, await launch(flags));
  return browsers.get(key);
}
export async function closeBrowser() {
  for (const browser of browsers.values()) await browser.close();
  browsers.clear();
}

/**
 * Opens the page and hands it to `body`; afterwards nothing bad may have happened that `body` did not await.
 * Options: those of a browser context; `prefix`, `served`; `before(context, page)` before the page is opened;
 * `wanted` (an expression for console lines that belong to the test); `flags` of the browser.
 */
export async function visit(options, body) {
  const { prefix = "/", served: given, before, wanted, flags, ...context_ } = options;
  const served = given ?? (await serve(PAGE, prefix));
  const context = await (await theBrowser(flags)).newContext({ ...DESK, acceptDownloads: true, ...context_ });
  const heard = [];
  const requests = [];
  context.on("request", (request) => requests.push({ url: request.url(), method: request.method(), sent: request.postData() }));
  context.on("console", (line) => {
    if (["error", "warning", "assert"].includes(line.type())) heard.push(`${line.type()}: ${line.text()}`);
  });
  context.on("weberror", (error) => heard.push(`exception: ${error.error().stack ?? error.error()}`));
  await context.addInitScript(() => {
    addEventListener("securitypolicyviolation", (event) => console.error(`policy violated: ${event.violatedDirective} ${event.blockedURI}`));
  });
  try {
    const page = await context.newPage();
    if (before !== undefined) await before(context, page);
    await open(page, served.url);
    await body(page, { context, served, heard, requests });
    const bad = heard.filter((line) => !(wanted?.test(line) ?? false));
    assert.deepEqual(bad, [], "the console stays empty");
    onlyOwnFiles(requests, served);
  } finally {
    await context.close();
    if (given === undefined) await served.close();
  }
}

/** Opens an address and waits until the first shot is shown. */
export async function open(page, url) {
  await page.goto(url);
  await ready(page);
}

export const ready = (page) => page.waitForSelector("html[data-ready=true]", { state: "attached" });

/** Everything that was asked for is a file of the page, fetched plainly. */
export function onlyOwnFiles(requests, served) {
  for (const { url, method, sent } of requests) {
    // What the page made itself, such as a download, never leaves it.
    if (url.startsWith(`blob:${served.origin}/`)) continue;
    assert.ok(url.startsWith(served.url) || url === `${served.origin}/favicon.ico`, `asked elsewhere: ${url}`);
    assert.equal(method, "GET", url);
    assert.equal(sent, null, url);
    assert.equal(new URL(url).search, "", `a query could carry something: ${url}`);
  }
  for (const { method, search, found, body, pathname } of served.asked) {
    assert.deepEqual({ method, search, found, body }, { method: "GET", search: "", found: true, body: 0 }, pathname);
  }
}

/** Lets what was proposed be planned and drawn, and what follows at rest follow. */
export async function rest(page) {
  await page.evaluate(
    () => new Promise((resolve) => setTimeout(() => requestAnimationFrame(() => requestAnimationFrame(resolve)), 250)),
  );
}

/** Lets the next frames be drawn. */
export const frame = (page) => page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));

/** The plan of a shot, as the library in Node answers. */
export const planned = (shoot, shot) => rig.ask("plan", { shoot, shot });

/** Opens a text as a file. */
export async function openFile(page, text, name = "shoot.toml") {
  await page.setInputFiles("#file-input", { name, mimeType: "text/plain", buffer: Buffer.isBuffer(text) ? text : Buffer.from(text) });
}

/** Shows a shot of the list by its name. */
export async function select(page, name) {
  await page.locator("#shot-list button", { has: page.locator(`.shot-name:text-is("${name}")`) }).click();
  await page.waitForFunction((wanted) => document.querySelector("#plan-heading").textContent === wanted, name);
}

/** The text that Save hands over, by way of a download. */
export async function saved(page, press = () => page.click("#save-file")) {
  await page.evaluate(() => {
    window.showSaveFilePicker = undefined;
  });
  const [download] = await Promise.all([page.waitForEvent("download"), press()]);
  const chunks = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk);
  return { name: download.suggestedFilename(), text: Buffer.concat(chunks).toString("utf8") };
}
