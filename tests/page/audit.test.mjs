// The automatic auditor on every state of the page, dark and light, at a desk, on a phone and narrow: no violation.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, test } from "node:test";
import { DESK, NARROW, PHONE, axe, closeBrowser, rest, visit } from "./driver.mjs";
import { STATES } from "./states.mjs";

after(closeBrowser);

const source = readFileSync(axe(), "utf8");
let [states, rules, violations] = [0, 0, 0];
after(() => console.log(`auditor: ${states} states, ${rules} rules passed at least once each, ${violations} violations`));

/** What the auditor finds: rules that are broken, and where. */
async function audit(page) {
  if (!(await page.evaluate(() => window.axe !== undefined))) await page.evaluate(source);
  return page.evaluate(async () => {
    const { violations, passes } = await window.axe.run(document, {
      runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
      resultTypes: ["violations"],
    });
    // What lies wholly under what is fixed to the window cannot be pressed there, and is scrolled to first.
    const isCovered = ({ target }) => {
      const each = document.querySelector(target[0]);
      const { left, right, top, bottom } = each.getBoundingClientRect();
      return [left + 1, (left + right) / 2, right - 1].every((x) => [top + 1, (top + bottom) / 2, bottom - 1].every((y) => {
        const over = document.elementFromPoint(x, y);
        return over === null || over.closest(".follows, .parts") !== null;
      }));
    };
    const broken = violations.map(({ id, help, nodes }) => ({ id, help, nodes: id === "target-size" ? nodes.filter((node) => !isCovered(node)) : nodes })).filter(({ nodes }) => nodes.length > 0);
    return { passed: passes.length, broken: broken.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.slice(0, 4).map(({ target, any }) => `${target} ${any[0]?.message ?? ""}`).join("; ")}`) };
  });
}

const WAYS = [
  ["desk, dark", { ...DESK, colorScheme: "dark" }], ["desk, light", { ...DESK, colorScheme: "light" }],
  ["phone, dark", { ...PHONE, colorScheme: "dark" }], ["narrow, light", { ...NARROW, colorScheme: "light" }],
];

for (const [way, options] of WAYS) {
  test(`no violation in any state: ${way}`, async () => {
    const found = [];
    for (const [name, lead] of STATES) {
      await visit({ ...options, reducedMotion: "reduce" }, async (page) => {
        await lead(page);
        await rest(page);
        const { passed, broken } = await audit(page);
        states += 1;
        rules = Math.max(rules, passed);
        violations += broken.length;
        found.push(...broken.map((each) => `${name}: ${each}`));
      });
    }
    assert.deepEqual(found, []);
  });
}

test("the auditor sees what is planted", async () => {
  await visit({}, async (page) => {
    await page.evaluate(() => {
      document.querySelector("label[for=field-shot-elevation_deg]").remove();
      document.querySelector("#save-file").textContent = "";
    });
    const { broken } = await audit(page);
    assert.ok(broken.some((each) => each.startsWith("label:")), broken.join("\n"));
    assert.ok(broken.some((each) => each.startsWith("button-name:")), broken.join("\n"));
  });
});
