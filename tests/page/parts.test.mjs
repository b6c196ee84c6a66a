// Booms, vessels, weights and all that the whole shoot shares, put in and taken out by the form alone: the file then
// says so under headings of its own, and keeps its comments.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { PHONE, closeBrowser, demo, rest, rig, saved, select, visit } from "./driver.mjs";

after(closeBrowser);

const sections = rig.ask("fields").sections;
const optionalParts = sections
  .filter(({ heading }) => /^\[{1,2}(subject|support)\.NAME\./.test(heading))
  .map(({ heading }) => heading.replace(/[[\]]/g, "").split("."))
  .filter(([kind, , ...inner]) => sections.find(({ heading }) => heading === `[${[kind, "NAME", ...inner.slice(0, -1)].join(".")}]`).keys.find(({ key }) => key === inner.at(-1)).standing !== "required");

const drawer = (page, id) => page.$eval(`#drawer-${id}`, (each) => (each.open = true)).then(() => rest(page));
const read = async (page) => {
  const { text } = await saved(page);
  const { shoot, mistakes } = rig.ask("read", { shoot: text });
  assert.deepEqual(mistakes, []);
  return { text, shoot };
};
/** The lines of the invented shoot that a text no longer has. */
const lost = (text) => demo.split("\n").filter((line) => !text.split("\n").includes(line));

async function fill(page, values) {
  for (const [id, value] of Object.entries(values)) await page.fill(`#${id}`, value);
}

test("every part that there may be has a button that puts it in", async () => {
  assert.ok(optionalParts.length >= 4, JSON.stringify(optionalParts));
  await visit({}, async (page) => {
    await select(page, "steam");
    await drawer(page, "support");
    await drawer(page, "subject");
    for (const [kind, , ...inner] of optionalParts) {
      // What lies in a part comes with it.
      if (inner.length > 1) continue;
      const there = await page.locator(`#drawer-${kind} button:text-matches("^(Add|Add to|Remove) ${inner[0]}$")`).count();
      assert.equal(there, 1, `${kind}.${inner}`);
    }
  });
});

for (const [way, options] of [["desk", {}], ["phone", PHONE]]) {
  test(`a boom with its stiffness is put on a stand that has none: ${way}`, async () => {
    await visit(options, async (page) => {
      await select(page, "toast");
      await drawer(page, "support");
      await page.click("#drawer-support button:text('Add boom')");
      assert.equal(await page.evaluate(() => document.activeElement.id), "field-support-boom-longest_reach_mm");
      await page.click("button:text('Put it in')");
      assert.match(await page.textContent("#field-support-boom-longest_reach_mm-error"), /Longest reach: A value is needed\. Allowed: /);
      await fill(page, { "field-support-boom-longest_reach_mm": "1 kg", "field-support-boom-tail_mm": "40", "field-support-boom-mass_kg": "1.2 kg" });
      await page.click("button:text('Put it in')");
      assert.match(await page.textContent("#field-support-boom-longest_reach_mm-error"), /a length is wanted/);
      await page.fill("#field-support-boom-longest_reach_mm", "90");
      await page.click("button:text('Put it in')");
      await rest(page);
      assert.match(await page.textContent("#informs"), /Added boom/);
      let now = await read(page);
      assert.deepEqual(now.shoot.support.tripod.boom, { longest_reach_mm: "90 cm", tail_mm: "40 cm", mass_kg: "1.2 kg" });
      assert.match(now.text, /rated_load_kg = "8 kg"\n\n\[support\.tripod\.boom\]\n/);
      await page.fill("#field-support-boom-counterweight_kg", "1.5 kg");
      await page.locator("#field-support-boom-counterweight_kg").blur();
      await page.click("#drawer-support button:text('Add stiffness')");
      await fill(page, { "field-support-boom-stiffness-tube_outside_mm": "40 mm" });
      await page.click("button:text('Put it in')");
      assert.match(await page.textContent(".draft > .error"), /Tube inside/);
      await fill(page, { "field-support-boom-stiffness-tube_inside_mm": "35 mm", "field-support-boom-stiffness-tube_modulus_n_per_mm2": "69 GPa" });
      await page.click("button:text('Put it in')");
      await rest(page);
      now = await read(page);
      assert.equal(now.shoot.support.tripod.boom.stiffness.tube_modulus_n_per_mm2, "69 GPa");
      assert.equal(now.shoot.support.tripod.boom.counterweight_kg, "1.5 kg");
      assert.deepEqual(lost(now.text).filter((line) => line.includes("#")), [], "comments stay");
      await page.click("#drawer-support button:text('Remove boom')");
      await rest(page);
      now = await read(page);
      assert.equal(now.shoot.support.tripod.boom, undefined);
    });
  });
}

test("a vessel comes and goes; what is left out stays out", async () => {
  await visit({}, async (page) => {
    await select(page, "loaf");
    await drawer(page, "subject");
    await page.click("#drawer-subject button:text('Add vessel')");
    await page.click("button:text('Leave it out')");
    assert.equal(await page.evaluate(() => document.activeElement.textContent), "Add vessel");
    await page.keyboard.press("Enter");
    await fill(page, { "field-subject-vessel-inside_diameter_mm": "6", "field-subject-vessel-contents_below_rim_mm": "5 mm" });
    await page.click("button:text('Put it in')");
    await rest(page);
    const { shoot, text } = await read(page);
    assert.deepEqual(shoot.subject.loaf.vessel, { inside_diameter_mm: "6 cm", contents_below_rim_mm: "5 mm" });
    assert.deepEqual(lost(text), []);
    await page.click("#drawer-subject button:text('Remove vessel')");
    await rest(page);
    assert.equal((await read(page)).shoot.subject.loaf.vessel, undefined);
  });
});

test("kit, weights, order, criteria and title are changed, and where the file has none they begin", async () => {
  await visit({}, async (page) => {
    for (const id of ["shoot", "kit", "weights", "order", "criteria"]) await drawer(page, id);
    await page.fill("#field-shoot-title", "Another title");
    await page.uncheck("#field-kit-lenses-wide-35");
    await page.check("#field-kit-sides-left");
    await page.fill("#field-order-lens_minutes", "4");
    await page.fill("#field-order-height_threshold_mm", "12");
    await page.fill("#field-criteria-tilt_warn_deg", "12");
    await page.fill("#field-criteria-wanted_factor", "2.5");
    await page.locator("#field-criteria-wanted_factor").blur();
    await rest(page);
    await page.click("button:text('Add to counterweights')");
    await fill(page, { "field-weights-counterweights-2-mass_kg": "2 kg" });
    await page.click("button:text('Put it in')");
    await rest(page);
    const { shoot, text } = await read(page);
    assert.equal(shoot.shoot.title, "Another title");
    assert.deepEqual(shoot.kit.lenses, ["macro-100", "tilt-90"]);
    assert.deepEqual(shoot.kit.sides, ["left"]);
    assert.equal(shoot.order.lens_minutes, 4);
    assert.equal(shoot.order.height_threshold_mm, "12 cm");
    assert.deepEqual(shoot.criteria, { tilt_warn_deg: 12, wanted_factor: 2.5 });
    assert.equal(shoot.weights.counterweights.length, 3);
    assert.deepEqual(shoot.weights.counterweights[2], { mass_kg: "2 kg" });
    assert.deepEqual(lost(text).filter((line) => line.startsWith("#")), [], "comments stay");
    await page.click("button:text('Remove counterweights 1')");
    await rest(page);
    const { shoot: less, text: lessText } = await read(page);
    assert.equal(less.weights.counterweights.length, 2);
    assert.deepEqual(lost(lessText).filter((line) => line.startsWith("#")), [], "comments stay");
    await page.fill("#field-criteria-tilt_warn_deg", "-3");
    await rest(page);
    assert.match(await page.textContent("#field-criteria-tilt_warn_deg-error"), /Tilt warn/);
    await page.fill("#field-criteria-tilt_warn_deg", "");
    await page.uncheck("#field-kit-lenses-macro-100");
    await page.uncheck("#field-kit-lenses-tilt-90");
    await rest(page);
    const { shoot: none } = await read(page);
    assert.equal(none.kit.lenses, undefined, "none ticked is every lens");
    assert.deepEqual(none.criteria, { wanted_factor: 2.5 });
  });
});

test("a field that takes one value says so of a ±", async () => {
  await visit({}, async (page) => {
    await page.fill("#field-shot-elevation_deg", "9 ± 0.3");
    await rest(page);
    assert.match(await page.textContent("#field-shot-elevation_deg-error"), /Elevation: one value is wanted here, without ±\. For example: 9\. Allowed: -60 to 90/);
    await page.fill("#field-shot-elevation_deg", "12 14");
    await rest(page);
    assert.match(await page.textContent("#field-shot-elevation_deg-error"), /cannot be read as an angle: “14” follows a number without a unit.*given “12 14”\. Write it in degrees/);
  });
});

test("what was measured: bare numbers, what is missing, and log entries as a person writes them", async () => {
  await visit({}, async (page) => {
    const error = (key) => page.textContent(`#measured-${key}-error`);
    const type = (values) => fill(page, Object.fromEntries(Object.entries(values).map(([key, value]) => [`measured-${key}`, value])));
    await type({ sensor_distance_mm: "104 cm ± 5" });
    assert.match(await error("sensor_distance_mm"), /5 stands without a unit.*For example: 213\.5 cm ± 5 mm\./);
    assert.equal(await page.getAttribute("#measured-sensor_distance_mm", "aria-invalid"), "true");
    await type({ sensor_distance_mm: "104 cm ± 5 mm", elevation_deg: "9 ±" });
    assert.match(await error("elevation_deg"), /missing after the ±\. For example: 9° ± 0\.3°/);
    await type({ elevation_deg: "9 ± 0.3" });
    await rest(page);
    assert.equal(await page.isVisible("#measured-elevation_deg-error"), false);
    assert.match(await page.textContent("#measured-result"), /9\.00°.*± 0\.30°/);
    await page.click("#measured-log");
    await rest(page);
    await page.click("#measured-log");
    await rest(page);
    const { shoot, text } = await read(page);
    assert.equal(shoot.log.length, 2);
    assert.equal(shoot.log[0].elevation_deg, "9 deg ± 0.3 deg");
    assert.equal(text.match(/^\[\[log\]\]$/gm).length, 2, "each under its own heading");
    assert.deepEqual(lost(text), []);
  });
});
