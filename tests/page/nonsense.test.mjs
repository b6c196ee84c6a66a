// Nonsense into every field that the page has: the message stands beside the field with its name and its range, the
// last good plan stays and is marked so, and all is well once the field is put right.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { closeBrowser, demo, openFile, rest, rig, saved, select, visit } from "./driver.mjs";

after(closeBrowser);

const SHOT = "soup";
const GEAR = ["subject", "lens", "camera", "support", "table", "bay"];
const FRAMING = ["frame_width_mm", "fill_width", "fill_height"];
/** What all shots share. */
const WHOLE = ["shoot", "criteria", "kit", "weights", "order"];
const sections = rig.ask("fields").sections.map(({ heading, kind, keys }) => ({ kind, inner: heading.split(",")[0].replace(/[[\]]/g, "").split(".").slice(2), keys }));
const shoot = rig.ask("read", { shoot: demo }).shoot;
const uses = rig.ask("plan", { shoot: demo, shot: SHOT }).uses;

/** The invented shoot, with every table inside a table that there can be in what the shot uses. */
function complete() {
  const edits = [];
  const give = (path, value) => edits.push({ path, value });
  if (shoot.subject[uses.subject].vessel === undefined) give(["subject", uses.subject, "vessel"], { inside_diameter_mm: 50, contents_below_rim_mm: 5 });
  const boom = Object.entries(shoot.support).find(([, { boom }]) => boom?.stiffness !== undefined)[0];
  give(["shot", shoot.shot.findIndex(({ name }) => name === SHOT), "support"], boom);
  return rig.ask("edit", { shoot: demo, edits }).text;
}
const text = complete();

/** Every field that there must be: its identifier, with the key as the library lists it. */
function wanted() {
  const { shoot: read } = rig.ask("read", { shoot: text });
  const used = rig.ask("plan", { shoot: text, shot: SHOT }).uses;
  const shot = read.shot.find(({ name }) => name === SHOT);
  const fields = new Map();
  for (const { kind, heading, keys } of rig.ask("fields").sections) {
    if (!WHOLE.includes(kind)) continue;
    for (const one of heading.split(", ")) {
      const inside = one.replace(/[[\]]/g, "").split(".");
      const places = inside.length === 1 ? [[]] : read[kind][inside[1]].map((_, index) => [inside[1], index]);
      const plain = keys.filter(({ key, sort }) => sort !== "own" || inside.length > 1);
      for (const place of places) for (const listed of plain) fields.set(["field", kind, ...place, listed.key].join("-"), listed);
    }
  }
  for (const { kind, inner, keys } of sections) {
    if (kind !== "shot" && !GEAR.includes(kind)) continue;
    const table = kind === "shot" ? {} : inner.reduce((at, step) => at?.[step], read[kind][used[kind]]);
    assert.ok(table !== undefined, `${kind}.${inner} is in the shoot that is tried`);
    const places = Array.isArray(table) ? table.map((_, index) => [...inner, index]) : [inner];
    for (const place of places) {
      for (const listed of keys) {
        if (listed.sort === "table") continue;
        const frames = kind === "shot" && FRAMING.includes(listed.key);
        const id = ["field", kind, ...place, frames ? "frame" : listed.key].join("-");
        if (!frames || shot[listed.key] !== undefined) fields.set(id, listed);
      }
    }
  }
  return fields;
}

const WRONG_UNIT = { mm: "3 kg", deg: "3 kg", kg: "3 mm" };
const nonsense = ({ sort, unit }) => {
  if (["number", "whole"].includes(sort)) return ["soon", "", "-1e9", "1e400", "NaN", WRONG_UNIT[unit] ?? "3 kg", "--4", "12 14", "9".repeat(400)];
  if (sort === "aspect") return ["soon", "", "-1e9", "1e400:1", "NaN", "3 kg", "0:0", "4:"];
  return ["", "\u0000", "\"]\n[shot]", "x".repeat(5000)];
};

/** Types into a field, and tells how the page then stands. */
const type = (page, id, value) =>
  page.evaluate(async ([id, value]) => {
    const input = document.getElementById(id);
    input.focus();
    input.value = value;
    input.dispatchEvent(new Event("input", { bubbles: true }));
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(() => requestAnimationFrame(resolve), 0)));
    const error = document.getElementById(`${id}-error`);
    const shown = (element) => element !== null && element.checkVisibility();
    // Attributes that were taken away and came back stand in another order.
    const inOrder = (svg) => [...svg.querySelectorAll("*")].map((each) => `${each.localName} ${[...each.attributes].map(({ name, value }) => `${name}=${value}`).sort().join(" ")} ${each.childElementCount === 0 ? each.textContent : ""}`).join("\n");
    return {
      error: shown(error) ? error.textContent : null,
      invalid: input.getAttribute("aria-invalid"),
      described: input.getAttribute("aria-describedby")?.split(" ").includes(`${id}-error`),
      label: input.labels[0]?.textContent,
      held: shown(document.getElementById("last-good")) ? document.getElementById("last-good").textContent : null,
      holding: document.documentElement.classList.contains("holding"),
      plan: document.getElementById("to-set").textContent + inOrder(document.querySelector(".stage svg")),
    };
  }, [id, value]);

/** Opens every drawer of the form. */
async function openDrawers(page) {
  for (const drawer of await page.locator("#asked-form details").all()) {
    await drawer.evaluate((element) => {
      element.open = true;
    });
  }
  await rest(page);
}

async function begin(page) {
  await openFile(page, text);
  await select(page, SHOT);
  await rest(page);
  await openDrawers(page);
}

test("every key of the library that the shot and its gear can have is a field of the page, and no other", async () => {
  await visit({}, async (page) => {
    await begin(page);
    const there = await page.$$eval("#asked-form :is(input, select, textarea)", (all) => all.map(({ id }) => id).filter((id) => id.startsWith("field-") && !id.endsWith("-way") && !id.startsWith("field-kit-")));
    assert.deepEqual([...there].sort(), [...wanted().keys()].sort());
    assert.equal(new Set(there).size, there.length);
    const ways = await page.$$eval("#field-shot-frame-way option", (all) => all.map(({ value }) => value));
    assert.deepEqual(ways, FRAMING);
    console.log(`fields: ${there.length}`);
  });
});

/** What is wrong with how the page stands after nonsense. */
function faults(listed, value, now, before) {
  const said = [];
  const must = (is, told) => is || said.push(told);
  const numeric = ["number", "whole"].includes(listed.sort);
  const empty = value.trim() === "";
  if (now.error === null) {
    // Empty is left out, where that may be; a text may be any.
    must(empty ? listed.standing !== "required" : !(numeric || listed.sort === "aspect"), "no message");
    must(!now.holding && now.held === null, "marked as held without a message");
    return said;
  }
  must(now.invalid === "true" && now.described, "the message does not belong to the field");
  must(now.error.toLowerCase().includes(now.label.toLowerCase()), `the message does not name ${now.label}`);
  const bounds = numeric ? listed.allowed.match(/\d[\d.]*/g) : [];
  must(bounds.every((bound) => now.error.includes(bound)), `the message does not tell ${listed.allowed}`);
  must(now.holding && now.held?.includes(now.label), "the last good plan is not marked");
  must(now.plan === before.plan, "the last good plan did not stay");
  must(!/undefined|null|NaN|\[object/.test(now.error.replaceAll(value, "")), "the message speaks of nothing");
  must(now.error.length < 500, `the message has ${now.error.length} letters`);
  return said.map((each) => `${each}: ${now.error.slice(0, 200)}`);
}

for (const kind of ["shot", ...GEAR, ...WHOLE.filter((kind) => kind !== "kit")]) {
  test(`nonsense into every field of the ${kind}`, async () => {
    await visit({}, async (page) => {
      await begin(page);
      const found = [];
      let [tried, refused] = [0, 0];
      for (const [id, listed] of wanted()) {
        if (!id.startsWith(`field-${kind}-`) || (await page.$eval(`#${CSS(id)}`, ({ localName }) => localName)) === "select") continue;
        const good = await page.inputValue(`#${CSS(id)}`);
        const before = await type(page, id, good);
        assert.equal(before.error, null, `${id}: ${good} is refused: ${before.error}`);
        for (const value of nonsense(listed)) {
          const now = await type(page, id, value);
          tried += 1;
          if (now.error !== null) refused += 1;
          found.push(...faults(listed, value, now, before).map((fault) => `${id} ← ${JSON.stringify(value.slice(0, 20))}: ${fault}`));
          if (now.error === null && value !== good) await type(page, id, good);
        }
        const again = await type(page, id, good);
        if (again.error !== null || again.holding || again.invalid !== null) found.push(`${id}: does not recover: ${again.error}`);
        if (again.plan !== before.plan) found.push(`${id}: the plan is another one after it was put right`);
      }
      console.log(`${kind}: ${tried} entries, ${refused} refused, ${found.length} badly`);
      assert.deepEqual(found, []);
      await page.locator("#plan-heading").click();
      await rest(page);
      // A bare number that was typed again has its unit beside it: the same for every shot's plan.
      const after_ = (await saved(page)).text;
      assert.deepEqual(rig.ask("read", { shoot: after_ }).mistakes, []);
      const plans = (of) => rig.ask("plan_shoot", { shoot: of }).shots.map(({ name, plan }) => ({ name, plan }));
      assert.deepEqual(plans(after_), plans(text), "what is saved plans as before all the nonsense");
    });
  });
}

/** An identifier in a selector. */
const CSS = (id) => id.replace(/[^\w-]/g, (letter) => `\\${letter}`);
