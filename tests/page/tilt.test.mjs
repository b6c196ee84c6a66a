// The tilt reader against postures of a phone that are computed here by rotation matrices, as the orientation
// specification (W3C DeviceOrientation Event: intrinsic Z, X', Y'') has them; and without sensor or permission.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { PHONE, closeBrowser, demo, planned, rest, rig, visit } from "./driver.mjs";
import { numberOf } from "./reading.mjs";

after(closeBrowser);

const first = rig.ask("read", { shoot: demo }).shoot.shot[0].name;
const shot = planned(demo, first).brief.shot;
const rad = (deg) => (deg * Math.PI) / 180;

const times = (a, b) => a.map((row) => b[0].map((_, column) => row.reduce((sum, value, at) => sum + value * b[at][column], 0)));
const aboutX = (deg) => [[1, 0, 0], [0, Math.cos(rad(deg)), -Math.sin(rad(deg))], [0, Math.sin(rad(deg)), Math.cos(rad(deg))]];
const aboutY = (deg) => [[Math.cos(rad(deg)), 0, Math.sin(rad(deg))], [0, 1, 0], [-Math.sin(rad(deg)), 0, Math.cos(rad(deg))]];
const aboutZ = (deg) => [[Math.cos(rad(deg)), -Math.sin(rad(deg)), 0], [Math.sin(rad(deg)), Math.cos(rad(deg)), 0], [0, 0, 1]];
const apply = (matrix, vector) => matrix.map((row) => row.reduce((sum, value, at) => sum + value * vector[at], 0));

/** Where an axis of the phone points in the room, up last, for the angles that the event gives. */
const inRoom = ({ alpha, beta, gamma }, axis) => apply(times(times(aboutZ(alpha), aboutX(beta)), aboutY(gamma)), axis);

/** The lens axis in the phone's axes: into the screen, or along the top edge. */
const LENS = { back: [0, 0, -1], top: [0, 1, 0] };

/** How far the lens axis points below the level. */
const looksDown = (angles, way) => (-Math.asin(Math.max(-1, Math.min(1, inRoom(angles, LENS[way])[2]))) * 180) / Math.PI;

const POSTURES = [
  { alpha: 0, beta: 0, gamma: 0 }, { alpha: 77, beta: 90, gamma: 0 }, { alpha: 10, beta: 45, gamma: 0 },
  { alpha: 200, beta: 60, gamma: 5 }, { alpha: 300, beta: -20, gamma: 12 }, { alpha: 45, beta: 100, gamma: -8 },
  { alpha: 120, beta: 30, gamma: -80 }, { alpha: 5, beta: -35, gamma: 3 },
];

/** Tells the page a posture, long enough for it to steady. */
const hold = (page, angles) =>
  page.evaluate(async (angles) => {
    for (let reading = 0; reading < 2; reading += 1) {
      dispatchEvent(new DeviceOrientationEvent("deviceorientation", angles));
      await new Promise((resolve) => setTimeout(resolve, 30));
    }
  }, angles);

const turn = (page, way) => page.check(`#tilt input[value=${way}]`);

test("what it reads is how far the lens looks down, in every posture and either way it lies", async () => {
  await visit(PHONE, async (page) => {
    await page.click("#tilt-start");
    for (const angles of POSTURES) {
      // Another way begins anew to steady, so that no reading of before is in it.
      for (const way of ["top", "back"]) {
        await turn(page, way);
        await hold(page, angles);
        const wanted = looksDown(angles, way);
        const told = await page.textContent("#tilt-value");
        // It is told to a tenth of a degree.
        assert.ok(Math.abs(numberOf(told).value - wanted) <= 0.0501, `${JSON.stringify(angles)} ${way}: ${told}, computed ${wanted}°`);
      }
    }
  });
});

test("it is held against the planned elevation with its tolerance, in words", async () => {
  await visit(PHONE, async (page) => {
    await page.click("#tilt-start");
    const { elevation_deg: elevation, elevation_tolerance_deg: tolerance } = shot;
    // The top edge towards the subject: the lens looks down by −beta.
    const cases = [[0, /Within/], [0.8 * tolerance, /Within/], [1.3 * tolerance, /too steeply/], [-1.3 * tolerance, /not look down enough/]];
    for (const [off, said] of cases) {
      await turn(page, "back");
      await turn(page, "top");
      const angles = { alpha: 30, beta: -(elevation + off), gamma: 0 };
      assert.ok(Math.abs(looksDown(angles, "top") - elevation - off) < 1e-9);
      await hold(page, angles);
      assert.match(await page.textContent("#tilt-verdict"), said, `${off}° off`);
    }
    assert.match(await page.textContent("#tilt-figures"), new RegExp(`± ${tolerance.toFixed(1)}°`));
    assert.equal(await page.getAttribute("#tilt-verdict", "role"), "status");
    await page.click("#tilt-start");
    assert.match(await page.textContent("#tilt-state"), /Not reading/);
  });
});

test("without a sensor it says so plainly", async () => {
  await visit(PHONE, async (page) => {
    await page.click("#tilt-start");
    await page.waitForFunction(() => /no tilt sensor/.test(document.querySelector("#tilt-state").textContent));
    assert.equal(await page.isVisible("#tilt-figures"), false);
  });
  const before = (context) => context.addInitScript(() => {
    delete window.DeviceOrientationEvent;
  });
  await visit({ ...PHONE, before }, async (page) => {
    await page.click("#tilt-start");
    assert.match(await page.textContent("#tilt-state"), /no access to a tilt sensor/);
  });
});

for (const [answer, said] of [["denied", /Permission .* was not given/], ["granted", /Waiting for the sensor/], ["thrown", /Permission .* was not given/]]) {
  test(`permission ${answer}`, async () => {
    const before = (context) => context.addInitScript((given) => {
      DeviceOrientationEvent.requestPermission = async () => {
        if (given === "thrown") throw new DOMException("no", "NotAllowedError");
        return given;
      };
    }, answer);
    await visit({ ...PHONE, before }, async (page) => {
      await page.click("#tilt-start");
      assert.match(await page.textContent("#tilt-state"), said);
      await rest(page);
    });
  });
}
