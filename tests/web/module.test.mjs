// The built module as its users have it: in Node's main thread and in a worker.
//   .ci/web-module
// builds the folder that is tested here and names it, with the native library's replies, in the environment.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { test } from "node:test";
import { Worker } from "node:worker_threads";

const folder = process.env.TABLERIG_PACKAGE;
const replies = JSON.parse(readFileSync(process.env.TABLERIG_REPLIES, "utf8"));
const { load, loadWithoutDrawings, Tablerig, TablerigError } = await import(
  pathToFileURL(`${folder}/tablerig.mjs`).href
);
const rig = await load();
const shoot = rig.ask("demo").text;

/** Says where two texts differ, not all of both. */
function same(text, wanted, of) {
  const at = [...wanted].findIndex((letter, index) => text[index] !== letter);
  assert.ok(text === wanted, `${of}: ${text.slice(at - 30, at + 30)} instead of ${wanted.slice(at - 30, at + 30)}`);
}

test("every operation replies with the native library's text, bit for bit", async () => {
  const small = await loadWithoutDrawings();
  assert.equal(replies.length, rig.ask("operations").operations.length);
  for (const [request, reply] of replies) {
    const { operation } = JSON.parse(request);
    same(rig.askText(request), reply, operation);
    if (!/draw|^sheet$|^operations$/.test(operation)) same(small.askText(request), reply, operation);
  }
  assert.throws(() => small.ask("draw", { shoot, shot: "soup", view: "side" }), { code: "unknown_name" });
});

test("the demo is planned", () => {
  const planned = rig.ask("plan_shoot", { shoot });
  assert.equal(planned.shots.length, 11);
  const stopped = planned.shots.filter((shot) => !shot.can_be_rigged).map((shot) => shot.name);
  assert.deepEqual(stopped, ["breakfast-long"]);
  assert.equal(planned.shots[0].plan.bay_room.tail_mm, "infinite");
});

test("an answer without its usual request is the same for an object and a text", () => {
  const read = rig.ask("read", { shoot });
  assert.deepEqual(read.mistakes, []);
  assert.deepEqual(rig.ask("plan", { shoot: read.shoot, shot: "soup" }), rig.ask("plan", { shoot, shot: "soup" }));
});

test("what is wrong is thrown with code, field, value and range", () => {
  const broken = shoot.replace("focal_length_mm = 90", "focal_length_mm = 9000");
  assert.throws(
    () => rig.ask("plan", { shoot: broken, shot: "soup" }),
    (error) => {
      assert.ok(error instanceof TablerigError);
      const { operation, code, number, field, value, least, most, unit, path } = error;
      assert.deepEqual(
        { operation, code, number, field, value, least, most, unit, path },
        {
          operation: "plan",
          code: "too_large",
          number: 103,
          field: "lens.focal_length_mm",
          value: 9000,
          least: 1,
          most: 3000,
          unit: "mm",
          path: ["lens", "tilt-90", "focal_length_mm"],
        },
      );
      assert.match(error.message, /line \d+, column 19: .*too large \(9000; allowed: 1 to 3000 mm\)/);
      return true;
    },
  );
});

test("what JSON cannot say is refused by its key", () => {
  for (const value of [NaN, Infinity, -Infinity, null, undefined]) {
    assert.throws(
      () => rig.ask("third_stop", { f_number: value }),
      (error) => error instanceof TablerigError && (error.path[0] ?? error.mistakes[0].lacks[0]) === "f_number",
      String(value),
    );
  }
});

test("memory stays bounded over ten thousand calls", () => {
  const read = rig.ask("read", { shoot });
  const one = { ...read.shoot, shot: [read.shoot.shot.find((shot) => shot.name === "soup")] };
  const ask = (call) => {
    one.shot[0].elevation_deg = 30 + (call % 60);
    rig.ask("plan", { shoot: one });
    if (call % 100 === 0) rig.ask("draw", { shoot: one, view: "side" });
    if (call % 100 === 50) assert.throws(() => rig.ask("plan", { shoot: "[" }), TablerigError);
  };
  for (let call = 0; call < 500; call += 1) ask(call);
  const before = rig.memoryBytes;
  for (let call = 0; call < 10_000; call += 1) ask(call);
  assert.equal(rig.memoryBytes, before);
  assert.ok(before < 8 * 1024 * 1024, `${before} bytes`);
});

test("a request deeper than any stack does no harm", () => {
  assert.throws(() => rig.ask("read", { shoot: "a = " + "[".repeat(200_000) }), TablerigError);
  assert.ok(rig.askText("[".repeat(200_000)).startsWith('{"mistakes":'));
  assert.equal(rig.ask("version").version, "0.1.0");
});

test("a worker has its own", async () => {
  const source = `
    import { parentPort, workerData } from "node:worker_threads";
    const { Tablerig, load } = await import(workerData.module);
    const own = await load();
    const given = new Tablerig(workerData.compiled);
    const request = JSON.stringify({ operation: "plan", shoot: workerData.shoot, shot: "soup" });
    parentPort.postMessage([own.askText(request), given.askText(request)]);
  `;
  const compiled = await WebAssembly.compile(readFileSync(`${folder}/tablerig.wasm`));
  const worker = new Worker(new URL(`data:text/javascript,${encodeURIComponent(source)}`), {
    workerData: { module: pathToFileURL(`${folder}/tablerig.mjs`).href, compiled, shoot },
  });
  const answers = await new Promise((resolve, reject) => worker.on("message", resolve).on("error", reject));
  const here = new Tablerig(compiled).askText(JSON.stringify({ operation: "plan", shoot, shot: "soup" }));
  assert.deepEqual(answers, [here, here]);
});
