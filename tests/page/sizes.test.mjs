// Phone, narrow and desk, and text at twice its size: nothing runs over the side, nothing lies over another control, and
// whatever is pressed is large enough: 44 by 44 CSS pixels under a finger (WCAG 2.2, 2.5.5), 24 by 24 elsewhere (2.5.8).

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { DESK, NARROW, PHONE, closeBrowser, rest, visit } from "./driver.mjs";
import { STATES } from "./states.mjs";

after(closeBrowser);

/** What is wrong with how the page is laid out. */
const faults = (page) =>
  page.evaluate(() => {
    const told = [];
    const root = document.scrollingElement;
    const least = matchMedia("(pointer: coarse)").matches ? 43.99 : 24;
    const name = (element) => element.id || `${element.localName}.${element.className} "${(element.getAttribute("aria-label") ?? element.textContent ?? "").trim().slice(0, 30)}"`;
    if (root.scrollWidth > root.clientWidth) {
      const wide = [...document.body.querySelectorAll("*")].filter((each) => each.getBoundingClientRect().right > root.clientWidth + 1 && each.closest(".scroll, .stage-frame, #shot-list, .unseen, svg, .skip") === null);
      told.push(`${root.scrollWidth} px wide in ${root.clientWidth}: ${wide.slice(-3).map(name).join(", ")}`);
    }
    const controls = [...document.querySelectorAll("button, input, select, textarea, summary, a[href], [role=slider]")].filter((each) =>
      each.checkVisibility({ visibilityProperty: true }) && !each.matches(".skip, [type=hidden], [hidden]"));
    const boxes = controls.map((each) => {
      // A tick or a radio is pressed by its label as well.
      const label = each.matches("[type=checkbox], [type=radio]") ? each.closest("label") : null;
      return { each, box: (label ?? each).getBoundingClientRect() };
    }).filter(({ box }) => box.width > 0);
    for (const { each, box } of boxes) {
      const inText = each.localName === "a" && getComputedStyle(each).display === "inline" && each.closest("li, p") !== null;
      if (!inText && (box.width < least || box.height < least)) told.push(`${name(each)} is ${box.width.toFixed(1)} by ${box.height.toFixed(1)} px`);
    }
    const sticky = (each) => each.closest(".parts, #messages, .handle") !== null;
    for (let one = 0; one < boxes.length; one += 1) {
      for (let other = one + 1; other < boxes.length; other += 1) {
        const [a, b] = [boxes[one], boxes[other]];
        if (sticky(a.each) || sticky(b.each) || a.each.contains(b.each) || b.each.contains(a.each)) continue;
        const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        const inside = a.each.closest("#shot-list, .scroll") ?? b.each.closest("#shot-list, .scroll");
        if (across > 1 && down > 1 && inside === null) told.push(`${name(a.each)} lies over ${name(b.each)}`);
      }
    }
    const [grip, camera] = ["handle-elevation", "handle-camera"].map((id) => document.getElementById(id)?.getBoundingClientRect());
    if (grip?.width > 0 && Math.hypot(grip.x - camera.x, grip.y - camera.y) < 24) told.push("the two handles are less than 24 px apart");
    // Text that is cut off beside a control.
    for (const each of document.querySelectorAll("button, #to-set .value, dd, .state")) {
      if (each.checkVisibility() && each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).display !== "inline" && each.closest("#shot-list") === null) told.push(`${name(each)} is wider than its room`);
    }
    return told;
  });

/** The browser's own setting for text, twice what it usually is. */
const TWICE = ["--blink-settings=defaultFontSize=32"];

const WAYS = [
  ["desk", DESK], ["phone", PHONE], ["narrow", NARROW],
  ["phone, text twice as large", { ...PHONE, flags: TWICE }],
  ["desk, text twice as large", { ...DESK, flags: TWICE }],
];

for (const [way, options] of WAYS) {
  test(`nothing runs over, lies over another or is too small: ${way}`, async () => {
    const found = [];
    for (const [name, lead] of STATES) {
      await visit(options, async (page) => {
        await lead(page);
        await rest(page);
        if (way.includes("twice")) assert.equal(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize), "32px");
        found.push(...(await faults(page)).map((fault) => `${name}: ${fault}`));
      });
    }
    assert.deepEqual([...new Set(found)], []);
  });
}

test("what is planted is found", async () => {
  await visit(PHONE, async (page) => {
    await page.evaluate(() => {
      document.querySelector("#undo").style.marginLeft = "-60px";
      document.querySelector("#shoot-title").style.cssText = "display: block; width: 500px";
      document.querySelector("#redo").style.cssText = "min-height: 10px; height: 10px; padding: 0";
    });
    const told = (await faults(page)).join("\n");
    assert.match(told, /px wide in 390/);
    assert.match(told, /undo|lies over/);
    assert.match(told, /redo is .* by 1\d/);
  });
});
