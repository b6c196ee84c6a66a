// What is changed and its picture are seen together, and every caution is told in words with its value and its limit.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { DESK, NARROW, PHONE, closeBrowser, demo, planned, rest, rig, select, visit } from "./driver.mjs";

after(closeBrowser);

const within = (page, selector) =>
  page.$eval(selector, (each) => {
    const { top, bottom, height } = each.getBoundingClientRect();
    return { seen: height > 0 && top >= 0 && bottom <= innerHeight, top, bottom, height };
  });

for (const [way, options] of [["phone", PHONE], ["desk", DESK]]) {
  test(`elevation and drawing stand in the first screen: ${way}`, async () => {
    await visit(options, async (page) => {
      for (const selector of ["#verdict", "#elevation-slide", "#elevation-now", ".stage-frame:not([hidden])"]) {
        const place = await within(page, selector);
        assert.ok(place.seen, `${selector} lies from ${place.top} to ${place.bottom}`);
      }
      assert.ok((await within(page, ".stage[data-view=side]")).height >= 250, "the drawing is no stamp");
    });
  });
}

test("the drawing follows to the form, shows what is typed there, and goes back", async () => {
  await visit(PHONE, async (page) => {
    const field = page.locator("#field-shot-elevation_deg");
    await page.locator("#asked").evaluate((section) => section.scrollIntoView());
    await rest(page);
    assert.ok((await within(page, ".follows .stage")).seen);
    const [strip, input] = [await page.locator(".follows").boundingBox(), await field.boundingBox()];
    assert.ok(input.y >= strip.y + strip.height, "it lies over no field that is gone to");
    const before = await page.$eval(".follows .stage svg", (svg) => svg.outerHTML);
    await field.fill("40");
    await rest(page);
    assert.notEqual(await page.$eval(".follows .stage svg", (svg) => svg.outerHTML), before);
    await page.locator("#plan").evaluate((section) => section.scrollIntoView());
    await rest(page);
    assert.equal(await page.locator(".follows").count(), 0);
    assert.equal(await page.$eval("#stages", (each) => each.style.minHeight), "");
  });
  await visit({ ...NARROW, viewport: { width: 640, height: 320 } }, async (page) => {
    await page.locator("#asked").evaluate((section) => section.scrollIntoView());
    await rest(page);
    assert.equal(await page.isVisible(".follows"), false, "a low window has no room for it");
  });
});

test("every caution says its level in a word, its value and its limit, the weightiest first", async () => {
  await visit({}, async (page) => {
    assert.match(await page.textContent("#levels"), /■ stop.*△ warning.*○ note/s);
    const RANK = ["stop", "warn", "note"];
    for (const { name } of rig.ask("read", { shoot: demo }).shoot.shot) {
      await select(page, name);
      const { cautions } = planned(demo, name).plan;
      const told = await page.$$eval("#worst .caution, #notes .caution", (all) => all.map(({ dataset, textContent }) => ({ level: dataset.level, code: dataset.code, text: textContent })));
      assert.equal(told.length, cautions.length, name);
      assert.deepEqual(told.map(({ level }) => RANK.indexOf(level)), told.map(({ level }) => RANK.indexOf(level)).sort(), name);
      for (const { level, text } of told) {
        assert.match(text, { stop: /^■ stop/, warn: /^△ warning/, note: /^○ note/ }[level]);
        assert.match(text, /Value [^.]/);
        assert.doesNotMatch(text, /undefined|NaN|limit —/);
      }
    }
  });
});
