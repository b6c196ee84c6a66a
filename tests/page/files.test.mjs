// Files opened and saved: broken ones are refused with line and column while the shoot before stays; good ones of
// either form are edited and saved as the file that the command reads, with comments and order.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { closeBrowser, demo, open, openFile, rest, rig, saved, visit } from "./driver.mjs";

after(closeBrowser);

const asJson = rig.ask("write", { shoot: demo, form: "json" }).text;
const first = rig.ask("read", { shoot: demo }).shoot.shot[0].name;

const lineOf = (text, part) => text.slice(0, text.indexOf(part)).split("\n").length;
const cutAt = (text, part) => text.slice(0, text.indexOf(part) + part.length);
const misspelt = demo.replace("elevation_deg", "elevatoin_deg");

const BROKEN = {
  "cut.toml": { text: cutAt(demo, 'title = "Autumn'), line: lineOf(demo, 'title = "Autumn') },
  "cut.json": { text: asJson.slice(0, Math.floor(asJson.length / 2)), line: "any" },
  "misspelt.toml": { text: misspelt, line: lineOf(misspelt, "elevatoin_deg"), says: /elevatoin_deg/ },
  "value.toml": { text: demo.replace(/elevation_deg = .*/, "elevation_deg = 900"), line: lineOf(demo, "elevation_deg = "), says: /-60 to 90/ },
  "binary.toml": { text: Buffer.from(Array.from({ length: 4000 }, (_, at) => (at * 89 + 7) % 256)), line: null },
  "empty.toml": { text: "", line: null },
  "huge.toml": { text: Buffer.alloc(5_000_001, "# "), line: null, says: /too large/ },
  "picture.json": { text: "[1, 2]", line: null },
  "nothing.json": { text: "null", line: null },
  "no-shots.toml": { text: "[shoot]\ntitle = \"empty\"\n", line: null },
};

for (const [name, { text, line, says }] of Object.entries(BROKEN)) {
  test(`${name} is refused, and the shoot before stays`, async () => {
    await visit({}, async (page) => {
      await page.click("#elevation-more");
      await rest(page);
      const before = (await saved(page)).text;
      const figures = await page.textContent("#to-set");
      await openFile(page, text, name);
      await page.waitForFunction((file) => document.querySelector("#alerts").textContent.includes(file), name);
      const told = await page.textContent("#alerts");
      if (line === "any") assert.match(told, /Line \d+, column \d+/);
      else if (line !== null) assert.match(told, new RegExp(`Line ${line}, column \\d+`), told);
      if (says !== undefined) assert.match(told, says);
      assert.match(told, /stays open/);
      assert.doesNotMatch(told, /undefined|\[object/);
      assert.ok(told.length < 3000, `${told.length} letters`);
      assert.equal(await page.getAttribute("#alerts", "role"), "alert");
      assert.equal(await page.textContent("#to-set"), figures);
      assert.equal((await saved(page)).text, before);
    });
  });
}

for (const [name, text] of [["autumn.toml", demo], ["autumn.json", asJson]]) {
  test(`${name} goes round unchanged, and only what was edited changes`, async () => {
    await visit({}, async (page) => {
      await openFile(page, text, name);
      await rest(page);
      const unchanged = await saved(page);
      assert.equal(unchanged.text, text, "nothing was edited");
      assert.equal(unchanged.name, name);
      await page.fill("#field-shot-elevation_deg", "31.5");
      await page.locator("#field-shot-elevation_deg").blur();
      await rest(page);
      assert.equal(await page.isVisible("#unsaved"), true);
      const edited = (await saved(page)).text;
      assert.equal(await page.isVisible("#unsaved"), false);
      const read = rig.ask("read", { shoot: edited });
      assert.deepEqual(read.mistakes, []);
      assert.equal(rig.ask("plan", { shoot: edited, shot: first }).brief.shot.elevation_deg, 31.5);
      const [was, is] = [text.split("\n"), edited.split("\n")];
      assert.equal(is.length, was.length, "every line is still there");
      const changed = is.filter((line, at) => line !== was[at]);
      assert.equal(changed.length, 1, changed.join("\n"));
      assert.match(changed[0], /elevation_deg/);
      await openFile(page, edited, name);
      await rest(page);
      assert.equal((await saved(page)).text, edited, "what was saved opens again");
    });
  });
}

test("a shot is added, named, gone back from, and the file stays readable", async () => {
  await visit({}, async (page) => {
    const count = () => page.locator("#shot-list li").count();
    const before = await count();
    await page.click("#add-shot");
    await rest(page);
    assert.equal(await count(), before + 1);
    await page.fill("#field-shot-name", "second-loaf");
    await page.locator("#field-shot-name").blur();
    await rest(page);
    const { text } = await saved(page);
    assert.deepEqual(rig.ask("read", { shoot: text }).mistakes, []);
    assert.ok(rig.ask("plan", { shoot: text, shot: "second-loaf" }).plan);
    assert.ok(text.includes("# A shoot file"), "comments stay");
    await page.click("#remove-shot");
    await rest(page);
    assert.equal(await count(), before);
    for (let step = 0; step < 3; step += 1) await page.click("#undo");
    await rest(page);
    assert.equal((await saved(page)).text, demo);
  });
});

test("a shot that others name can be renamed, or is refused: never a file that cannot be read", async () => {
  await visit({}, async (page) => {
    const { shot } = rig.ask("read", { shoot: demo }).shoot;
    const named = shot.flatMap(({ after, right_after }) => [after ?? [], right_after ?? []].flat());
    assert.ok(named.length > 0, "the invented shoot has shots that follow others");
    await page.locator("#shot-list button", { has: page.locator(`.shot-name:text-is("${named[0]}")`) }).click();
    await page.fill("#field-shot-name", "other-name");
    await page.locator("#field-shot-name").blur();
    await rest(page);
    assert.deepEqual(rig.ask("read", { shoot: (await saved(page)).text }).mistakes, []);
    const other = shot.find(({ name }) => name !== named[0]).name;
    await page.fill("#field-shot-name", other);
    await page.locator("#field-shot-name").blur();
    await rest(page);
    assert.equal(await page.isVisible("#field-shot-name-error"), true, "a name that another shot has is refused");
    assert.deepEqual(rig.ask("read", { shoot: (await saved(page)).text }).mistakes, []);
  });
});

test("what was done is there after a reload; the invented shoot comes back when asked for", async () => {
  await visit({}, async (page, { served }) => {
    await openFile(page, demo, "kept.toml");
    await rest(page);
    await page.locator("#shot-list button").nth(2).click();
    await page.fill("#field-shot-elevation_deg", "22");
    await page.locator("#field-shot-elevation_deg").blur();
    await page.check("#unit-switch input[value=feet]", { force: true });
    await rest(page);
    const [figures, { text }] = [await page.textContent("#to-set"), await saved(page)];
    await page.click("#elevation-more");
    await page.click("#elevation-less");
    await rest(page);
    await open(page, served.url);
    await rest(page);
    assert.equal(await page.textContent("#to-set"), figures);
    assert.equal(await page.getAttribute("html", "data-unit"), "feet");
    assert.equal(await page.isVisible("#demo-note"), false);
    assert.equal(await page.isVisible("#unsaved"), true, "it still says that changes are not saved");
    assert.deepEqual(await saved(page), { name: "kept.toml", text });
    await page.click("#start-anew");
    await rest(page);
    assert.equal(await page.textContent("#plan-heading"), first);
    assert.equal((await saved(page)).text, demo);
  });
});
