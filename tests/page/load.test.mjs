// The page loads from a static server under any path, and tells of every shot what the library answers.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { PAGE, closeBrowser, demo, open, planned, rig, select, visit } from "./driver.mjs";
import { figuresOf, numberOf, tells } from "./reading.mjs";
import { serve } from "./server.mjs";

after(closeBrowser);

const names = rig.ask("read", { shoot: demo }).shoot.shot.map(({ name }) => name);

for (const prefix of ["/", "/some/folder/of/a/host/"]) {
  test(`it loads under ${prefix}`, async () => {
    await visit({ prefix }, async (page, { served }) => {
      assert.equal(await page.textContent("#plan-heading"), names[0]);
      assert.match(await page.title(), new RegExp(names[0]));
      assert.equal(await page.isVisible("#demo-note"), true, "it says that the shoot is invented");
      assert.equal(await page.locator("#stages svg[role=img]:visible").count() > 0, true);
      await open(page, `${served.url}index.html`);
      assert.equal(await page.textContent("#plan-heading"), names[0]);
    });
  });
}

test("a server that does not know the type of a .wasm file will do", async () => {
  const served = await serve(PAGE, "/x/");
  served.wasmType = "application/octet-stream";
  try {
    await visit({ served }, async (page) => assert.equal(await page.textContent("#plan-heading"), names[0]));
  } finally {
    await served.close();
  }
});

/** Holds what stands on the page of a shot against the library's plan. */
async function holdAgainst(page, { brief, plan, uses }) {
  const set = await figuresOf(page, "#to-set");
  const told = { ...set };
  for (const group of ["camera", "frame", "focus", "stand", "weights"]) Object.assign(told, await figuresOf(page, `#group-${group} dl`));
  const lengths = {
    "Sensor height": plan.pose.sensor.z_mm,
    "Sensor to aim point": plan.lens.sensor_distance_mm,
    "Pivot height": plan.pose.pivot.z_mm,
    "Sensor from aim point, level": plan.pose.sensor_from_aim_mm,
    "Pivot from aim point, level": plan.pose.pivot_from_aim_mm,
    "Top of the body": plan.pose.body_top_mm,
    "Stand-off, column to table edge": plan.placement.stand_off_mm,
    ...(plan.placement.boom_used
      ? { Reach: plan.placement.reach_mm, "Clamp height": plan.placement.clamp_height_mm, "Boom's length to the pivot": plan.placement.boom_length_mm }
      : {}),
    ...(typeof plan.bay_room.ceiling_mm === "number" ? { "Room under the ceiling": plan.bay_room.ceiling_mm } : {}),
  };
  for (const [name, mm] of Object.entries(lengths)) {
    assert.ok(told[name] !== undefined, `the page tells ${name}`);
    assert.ok(tells(told[name], mm), `${name}: ${told[name]}, the library ${mm} mm`);
  }
  const numbers = {
    Elevation: brief.shot.elevation_deg,
    Opening: plan.focus.engraved,
    "Focal length at this distance": plan.lens.focal_length_mm,
    "Exposure lost to extension": plan.focus.exposure_loss_stops,
    "Payload on the pivot": plan.payload.mass_kg,
    "Moment at the head": plan.payload.head_moment_n_m,
  };
  for (const [name, value] of Object.entries(numbers)) {
    const read = numberOf(told[name].replace(/^f\//, ""));
    // A hair more than half of the last digit, for what lies between two.
    assert.ok(Math.abs(read.value - value) <= read.within * 1.001, `${name}: ${told[name]}, the library ${value}`);
  }
  const standing = await page.$$eval("#group-weights tbody tr", (rows) => rows.map((row) => [...row.querySelectorAll("td")].map((cell) => cell.textContent)));
  ["as_shot", "camera_off", "counterweight_off"].forEach((state, row) => {
    const { tilt_to_tip_deg: tilt, margin_mm: margin, push_to_tip_n: push } = plan.stability[state];
    const [tilts, pushes, margins] = standing[row];
    assert.ok(Math.abs(numberOf(tilts).value - tilt) <= 0.05005, `${state}: ${tilts}, the library ${tilt}`);
    assert.ok(Math.abs(numberOf(pushes).value - push) <= 0.5005, `${state}: ${pushes}, the library ${push}`);
    assert.ok(tells(margins, margin), `${state}: ${margins}, the library ${margin}`);
  });
  const cautions = await page.$$eval("#groups .caution", (items) => items.map(({ dataset, textContent }) => ({ level: dataset.level, code: dataset.code, text: textContent })));
  const key = ({ level, code }) => `${level} ${code}`;
  assert.deepEqual(cautions.map(key).sort(), plan.cautions.map(key).sort(), "every caution stands beside its figures, once");
  for (const { code, sentence } of plan.cautions) {
    const { text } = cautions.find((caution) => caution.code === String(code));
    assert.ok(text.includes(sentence), `${text}: ${sentence}`);
  }
  const verdict = await page.textContent("#verdict");
  const stops = plan.cautions.filter(({ level }) => level === "stop").length;
  assert.equal(/cannot be rigged/.test(verdict), stops > 0, verdict);
  assert.ok((await page.textContent("#to-set")).includes(uses.support), "it names the stand");
}

test("of every shot of the invented shoot it tells what the library answers", async () => {
  await visit({}, async (page) => {
    const listed = await page.$$eval("#shot-list .shot-name", (all) => all.map(({ textContent }) => textContent));
    assert.deepEqual(listed, names);
    assert.ok(names.length >= 8);
    for (const name of names) {
      await select(page, name);
      await holdAgainst(page, planned(demo, name)).catch((error) => {
        error.message = `${name}: ${error.message}`;
        throw error;
      });
    }
  });
});

test("drawings that are changed in place, shot by shot, are as they would be drawn anew", async () => {
  await visit({ viewport: { width: 1500, height: 900 } }, async (page) => {
    await page.check("#view-switch input[value=all]", { force: true });
    const shapes = () => page.$$eval(".stage svg", (all) => all.map((svg) => ({ view: svg.closest(".stage").dataset.view, html: svg.outerHTML })));
    // Through all shots and back: whatever was changed in place must equal the drawing made anew by a reload.
    for (const name of [...names, names[0]]) await select(page, name);
    await page.waitForTimeout(400);
    const patched = await shapes();
    await page.reload();
    await page.waitForSelector("html[data-ready=true]", { state: "attached" });
    await page.waitForTimeout(400);
    const anew = await shapes();
    assert.deepEqual(patched.map(({ view }) => view).sort(), ["above", "picture", "side"]);
    const plain = (html) => html.replace(/\s+/g, " ").replaceAll("> <", "><");
    patched.forEach(({ view, html }, index) => {
      assert.equal(anew[index].view, view);
      const [was, is] = [plain(html), plain(anew[index].html)];
      const at = [...is].findIndex((letter, place) => was[place] !== letter);
      assert.ok(was === is, `${view}: ${was.slice(at - 60, at + 60)} instead of ${is.slice(at - 60, at + 60)}`);
    });
  });
});
