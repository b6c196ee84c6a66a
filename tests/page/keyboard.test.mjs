// The page without a pointer: Tab reaches every control in the order of the page, with a focus that is seen, and out
// again; everything is done by keys; results and errors are announced.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { closeBrowser, demo, rest, rig, saved, visit } from "./driver.mjs";

after(closeBrowser);

test("Tab walks through everything, seen and in order, and leaves the page at its end", async () => {
  await visit({ viewport: { width: 1500, height: 900 } }, async (page) => {
    await page.$$eval("details", (all) => all.forEach((each) => (each.open = true)));
    await rest(page);
    const wanted = await page.evaluate(() => {
      const all = [...document.querySelectorAll("a[href], button, input, select, textarea, summary, [tabindex='0']")];
      const there = all.filter((each) => !each.disabled && (each.checkVisibility({ visibilityProperty: true }) || each.matches(".skip")) && !each.hidden);
      // Of radios of one name only the chosen one is a stop.
      const stops = there.filter((each) => each.type !== "radio" || each.checked);
      stops.forEach((each, index) => (each.dataset.stop = String(index)));
      return stops.map((each) => each.id || `${each.localName} ${each.textContent.trim().slice(0, 20)}`);
    });
    assert.ok(wanted.length > 100, `${wanted.length} stops`);
    await page.evaluate(() => {
      document.activeElement?.blur();
      scrollTo(0, 0);
    });
    const reached = [];
    const unseen = [];
    for (let press = 0; press < wanted.length + 5; press += 1) {
      await page.keyboard.press("Tab");
      const now = await page.evaluate(() => {
        const each = document.activeElement;
        if (each === null || each === document.body) return null;
        // A switch shows the focus of its radio on its label.
        const shown = each.matches(".switch input") ? each.nextElementSibling : each;
        const { outlineStyle, outlineWidth } = getComputedStyle(shown);
        const box = shown.getBoundingClientRect();
        const seen = outlineStyle !== "none" && parseFloat(outlineWidth) >= 2 && box.bottom > 0 && box.top < innerHeight;
        // What sticks to the top must not hide the whole of it.
        const over = document.elementFromPoint(Math.min(Math.max(box.left + box.width / 2, 1), innerWidth - 1), Math.min(Math.max(box.top + box.height / 2, 1), innerHeight - 1));
        const hidden = over?.closest(".parts, #messages") !== null && over?.closest(".parts, #messages") !== undefined && !shown.closest(".parts, #messages");
        return { stop: each.dataset.stop, seen: seen && !hidden, name: each.id || each.outerHTML.slice(0, 60) };
      });
      if (now === null) break;
      if (now.stop === undefined && reached.length > 0) break;
      if (!now.seen) unseen.push(now.name);
      reached.push(Number(now.stop));
    }
    assert.deepEqual(unseen, [], "every focus is seen");
    assert.deepEqual(reached, wanted.map((_, index) => index), "each once, in the order of the page");
    console.log(`keyboard: ${reached.length} stops`);
  });
});

test("a shot is added and changed, a drawer opened, a file saved, the sheet printed, all by keys", async () => {
  await visit({}, async (page) => {
    const press = async (id, key) => {
      await page.focus(id);
      await page.keyboard.press(key);
      await rest(page);
    };
    await press("#add-shot", "Enter");
    assert.match(await page.textContent("#informs"), /added/);
    await page.focus("#field-shot-elevation_deg");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("37.5");
    await page.keyboard.press("Tab");
    await press("#drawer-lens summary", "Enter");
    await page.focus("#field-lens-note");
    await page.keyboard.type("typed");
    await press("#field-shot-hold", "ArrowDown");
    await page.focus("#view-switch input:checked");
    await page.keyboard.press("ArrowRight");
    await rest(page);
    const view = await page.$eval("#view-switch input:checked", ({ value }) => value);
    assert.equal(await page.isVisible(".stage[data-view=above]"), ["above", "all"].includes(view), view);
    await page.focus("#unit-switch input:checked");
    await page.keyboard.press("ArrowRight");
    assert.equal(await page.getAttribute("html", "data-unit"), "feet");
    await rest(page);
    const { text } = await saved(page, () => press("#save-file", "Enter"));
    const read = rig.ask("read", { shoot: text });
    assert.deepEqual(read.mistakes, []);
    const added = read.shoot.shot.at(-1);
    assert.match(String(added.elevation_deg), /^37\.5/);
    assert.equal(Object.values(read.shoot.lens).some(({ note }) => /typed/.test(note ?? "")), true);
    await page.evaluate(() => (window.print = () => (window.printed = true)));
    await press("#print-sheet", "Space");
    assert.equal(await page.evaluate(() => window.printed), true);
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    await press("#shot-list li:first-child button", "Enter");
    assert.equal(await page.textContent("#plan-heading"), read.shoot.shot[0].name);
    await press(".skip", "Enter");
    assert.equal(await page.evaluate(() => document.activeElement.id), "plan");
    await press("#start-anew", "Enter");
    await rest(page);
    assert.equal((await saved(page)).text, demo);
  });
});

test("results are announced once they rest, errors beside their fields, and no state by colour alone", async () => {
  await visit({}, async (page) => {
    await page.click("#elevation-more");
    await page.waitForFunction(() => /elevation .*°, sensor height .*cm/.test(document.querySelector("#polite").textContent));
    assert.equal(await page.getAttribute("#polite", "role"), "status");
    await page.fill("#field-shot-elevation_deg", "soon");
    await rest(page);
    const described = await page.getAttribute("#field-shot-elevation_deg", "aria-describedby");
    assert.ok(described.split(" ").includes("field-shot-elevation_deg-error"));
    assert.match(await page.textContent("#field-shot-elevation_deg-error"), /^■ /);
    assert.match(await page.textContent("#last-good"), /^△ Last good plan/);
    const live = await page.$eval("#last-good", (box) => box.closest("[role=status], [role=alert], [aria-live]") !== null);
    assert.ok(live, "that the last good plan stays is announced");
    const SAID = { none: /^– no cautions/, note: /○ .*note/, warn: /△ .*warning/, stop: /■ .*stop/, fault: /\? .*not planned/ };
    const states = await page.$$eval("#shot-list .state", (all) => all.map(({ dataset, textContent }) => [dataset.level, textContent]));
    for (const [level, text] of states) assert.match(text, SAID[level], level);
    assert.ok(new Set(states.map(([level]) => level)).size >= 2, "the invented shoot has shots of several states");
    const cautions = await page.$$eval("#groups .caution", (all) => all.map(({ dataset, textContent }) => [dataset.level, textContent]));
    for (const [level, text] of cautions) assert.match(text, { note: /^○ note/, warn: /^△ warning/, stop: /^■ stop/ }[level]);
    const chosen = await page.$$eval(".switch input:checked + span", (all) => all.map((each) => getComputedStyle(each, "::before").content));
    assert.ok(chosen.length > 0 && chosen.every((content) => content.includes("✓")), "what is chosen has a tick");
  });
});

test("forced colours and reduced motion are followed", async () => {
  await visit({ forcedColors: "active", reducedMotion: "reduce" }, async (page) => {
    const moving = await page.$$eval("body *", (all) => all.filter((each) => parseFloat(getComputedStyle(each).transitionDuration) > 0).length);
    assert.equal(moving, 0);
    await page.focus("#save-file");
    await page.keyboard.press("Tab");
    assert.notEqual(await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle), "none");
    const strokes = await page.$$eval(".tablerig-thing", (all) => [...new Set(all.map((each) => getComputedStyle(each).color))]);
    const text = await page.evaluate(() => getComputedStyle(document.body).color);
    assert.deepEqual(strokes, [text], "the drawing has the system's text colour");
  });
});
