// Elevation and camera dragged in the drawing, by mouse, by touch and by keyboard: pictures and numbers follow, undo
// leads back.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { PHONE, closeBrowser, demo, frame, planned, rest, rig, saved, visit } from "./driver.mjs";
import { figuresOf, numberOf, tells } from "./reading.mjs";

after(closeBrowser);

const first = rig.ask("read", { shoot: demo }).shoot.shot[0].name;

const centre = async (page, id) => {
  const box = await page.locator(id).boundingBox();
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

/** Where the two handles are, and the aim point on their line: the elevation's handle stands 55 % of the way. */
async function places(page) {
  const [grip, camera] = [await centre(page, "#handle-elevation"), await centre(page, "#handle-camera")];
  const aim = { x: camera.x + (grip.x - camera.x) / 0.45, y: camera.y + (grip.y - camera.y) / 0.45 };
  return { grip, camera, aim, angle: (Math.atan2(aim.y - camera.y, aim.x - camera.x) * 180) / Math.PI };
}

/** A place turned about another, up over it, and moved away from it. */
function turned(place, about, deg, times = 1) {
  const [across, up] = [(about.x - place.x) * times, (about.y - place.y) * times];
  const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return { x: about.x - (across * cos - up * sin), y: about.y - (across * sin + up * cos) };
}

const drawing = (page) => page.$eval(".stage[data-view=side] svg", (svg) => svg.outerHTML);
const shownElevation = async (page) => numberOf((await figuresOf(page, "#to-set")).Elevation).value;
const withElevation = (text, angle) => rig.ask("edit", { shoot: text, edits: [{ path: ["shot", 0, "elevation_deg"], value: angle }] }).text;

/** The large figures are those of the text's first shot. */
async function holdFigures(page, text) {
  const told = await figuresOf(page, "#to-set");
  const { plan } = planned(text, first);
  const wanted = { "Sensor height": plan.pose.sensor.z_mm, "Sensor to aim point": plan.lens.sensor_distance_mm, "Pivot height": plan.pose.pivot.z_mm };
  for (const [name, mm] of Object.entries(wanted)) assert.ok(tells(told[name], mm), `${name}: ${told[name]}, the library ${mm} mm`);
}

/** Mouse and touch as one: press, move in steps, release. */
const mouse = {
  options: {},
  press: (page, { x, y }) => page.mouse.move(x, y).then(() => page.mouse.down()),
  move: (page, { x, y }) => page.mouse.move(x, y),
  release: (page) => page.mouse.up(),
};
const touchOf = (sessions) => {
  const send = async (page, type, touchPoints) => {
    if (!sessions.has(page)) sessions.set(page, await page.context().newCDPSession(page));
    await sessions.get(page).send("Input.dispatchTouchEvent", { type, touchPoints });
  };
  return {
    options: PHONE,
    press: (page, place) => send(page, "touchStart", [place]),
    move: (page, place) => send(page, "touchMove", [place]),
    release: (page) => send(page, "touchEnd", []),
  };
};

for (const [name, pointer] of [["mouse", mouse], ["touch", touchOf(new WeakMap())]]) {
  test(`elevation is dragged by ${name}`, async () => {
    await visit(pointer.options, async (page) => {
      await page.locator("#handle-elevation").scrollIntoViewIfNeeded();
      await page.evaluate(() => document.querySelector(".stage[data-view=side]").scrollIntoView({ block: "center" }));
      await rest(page);
      const began = await shownElevation(page);
      const { grip, aim, angle } = await places(page);
      // Pixels of a handle's place, over its distance from the aim point: under a degree.
      assert.ok(Math.abs(angle - began) < 1, `the handles lie at ${angle}°, the shot at ${began}°`);
      const before = await drawing(page);
      const top = () => page.$eval(".stage[data-view=side]", (stage) => stage.getBoundingClientRect().top);
      const stood = await top();
      await pointer.press(page, grip);
      for (const turn of [4, 8, 12]) {
        await pointer.move(page, turned(grip, aim, turn));
        await frame(page);
        await page.waitForTimeout(50);
        const now = await shownElevation(page);
        assert.equal(await top(), stood, "the drawing stays under the hand");
        // It follows in steps of half a degree.
        assert.ok(Math.abs(now - (began + turn)) <= 0.75, `turned by ${turn}° from ${began}°: ${now}°`);
        await holdFigures(page, withElevation(demo, now));
      }
      assert.notEqual(await drawing(page), before, "the drawing followed while it was held");
      await pointer.release(page);
      await rest(page);
      const now = await shownElevation(page);
      const after = await places(page);
      assert.ok(Math.abs(after.angle - now) < 1, `the handles lie at ${after.angle}°, the shot at ${now}°`);
      for (const id of ["#elevation-slide", "#field-shot-elevation_deg"]) assert.equal(numberOf(await page.inputValue(id)).value, now, id);
      assert.equal(Number(await page.getAttribute("#handle-elevation", "aria-valuenow")), now);
      const { text } = await saved(page);
      await holdFigures(page, text);
      assert.equal(rig.ask("plan", { shoot: text, shot: first }).brief.shot.elevation_deg, now);
      await page.click("#undo");
      await rest(page);
      assert.equal(await shownElevation(page), began);
      assert.equal((await saved(page)).text, demo, "one step back, the text is as it was");
      await page.click("#redo");
      await rest(page);
      assert.equal((await saved(page)).text, text, "and forth again");
    });
  });

  test(`the camera is dragged by ${name}`, async () => {
    await visit(pointer.options, async (page) => {
      await page.evaluate(() => document.querySelector(".stage[data-view=side]").scrollIntoView({ block: "center" }));
      await rest(page);
      const began = planned(demo, first);
      const { camera, aim } = await places(page);
      await pointer.press(page, camera);
      for (const times of [0.97, 0.93, 0.9]) {
        await pointer.move(page, turned(camera, aim, -3, times));
        await page.waitForTimeout(50);
      }
      await pointer.release(page);
      await rest(page);
      const { text } = await saved(page);
      await holdFigures(page, text);
      const { brief, plan } = planned(text, first);
      assert.ok(Math.abs(brief.shot.elevation_deg - (began.brief.shot.elevation_deg - 3)) <= 0.75, `${brief.shot.elevation_deg}`);
      // The frame is written to a millimetre, and a finger moves by whole pixels: a hundredth of the distance.
      const times = plan.lens.sensor_distance_mm / began.plan.lens.sensor_distance_mm;
      assert.ok(Math.abs(times - 0.9) < 0.01, `the distance became ${times} of what it was`);
      assert.ok(plan.frame_width_mm < began.plan.frame_width_mm);
      await page.click("#undo");
      await rest(page);
      assert.equal((await saved(page)).text, demo);
    });
  });
}

test("elevation and camera are moved by keyboard, each key by its step", async () => {
  await visit({}, async (page) => {
    const handle = page.locator("#handle-elevation");
    let angle = await shownElevation(page);
    const step = async (key, to) => {
      await handle.press(key);
      await page.waitForTimeout(60);
      angle = to;
      assert.equal(Number(await handle.getAttribute("aria-valuenow")), to, key);
      assert.match(await handle.getAttribute("aria-valuetext"), new RegExp(`^${to < 0 ? "−" : ""}${String(Math.abs(to)).replace(".", "\\.")}(\\.0)?°$`));
      await holdFigures(page, withElevation(demo, to));
    };
    await step("ArrowUp", angle + 1);
    await step("ArrowRight", angle + 1);
    await step("ArrowDown", angle - 1);
    await step("Shift+ArrowUp", Math.round((angle + 0.1) * 10) / 10);
    await step("PageDown", Math.round((angle - 10) * 10) / 10);
    await step("End", 90);
    await step("ArrowUp", 90);
    await step("Home", 0);
    // Back to the invented shoot, one key at a time.
    for (let press = 0; press < 9; press += 1) await page.keyboard.press("Control+z");
    await rest(page);
    assert.equal((await saved(page)).text, demo);

    const camera = page.locator("#handle-camera");
    const frameOf = async () => planned((await saved(page)).text, first).plan.frame_width_mm;
    const began = planned(demo, first).plan.frame_width_mm;
    await camera.press("ArrowUp");
    await rest(page);
    // The file has it to a millimetre.
    assert.ok(Math.abs((await frameOf()) - (began + 10)) <= 0.5001, "1 cm wider");
    await camera.press("PageUp");
    await rest(page);
    assert.ok(Math.abs((await frameOf()) - (began + 110)) <= 1.0001, "10 cm wider");
    assert.match(await camera.getAttribute("aria-valuetext"), /frame width [\d.]+ cm, sensor to aim point [\d.]+ cm/);
    await page.check("#unit-switch input[value=feet]", { force: true });
    const before = await frameOf();
    await camera.press("ArrowDown");
    await rest(page);
    assert.ok(Math.abs((await frameOf()) - (before - 25.4)) <= 0.5001, "1 in narrower");
    assert.match(await camera.getAttribute("aria-valuetext"), /frame width .* in, sensor to aim point .* ft/);
  });
});

test("the slider and its buttons set the elevation as well", async () => {
  await visit(PHONE, async (page) => {
    const began = await shownElevation(page);
    await page.click("#elevation-more");
    await rest(page);
    assert.equal(await shownElevation(page), began + 1);
    await page.click("#elevation-less");
    await page.click("#elevation-less");
    await rest(page);
    assert.equal(await shownElevation(page), began - 1);
    await page.focus("#elevation-slide");
    await page.keyboard.press("ArrowRight");
    await rest(page);
    assert.equal(await shownElevation(page), began - 0.5);
    await holdFigures(page, withElevation(demo, began - 0.5));
    await page.keyboard.press("Control+z");
    await rest(page);
    assert.equal(await shownElevation(page), began - 1);
  });
});
