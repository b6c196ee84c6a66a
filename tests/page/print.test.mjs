// The sheet as it is printed from the page: A4, every shot, the standing cautions, and none of the page's controls.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { after, test } from "node:test";
import { PHONE, closeBrowser, demo, rest, rig, visit } from "./driver.mjs";

after(closeBrowser);

const folder = fileURLToPath(new URL("../../target/page-pictures/", import.meta.url));
mkdirSync(folder, { recursive: true });
const names = rig.ask("read", { shoot: demo }).shoot.shot.map(({ name }) => name);
const usual = rig.ask("codes").usual_cautions;
const plain = (text) => text.replace(/\s+/g, " ");

for (const [unit, options] of [["metric", {}], ["feet", PHONE]]) {
  test(`the sheet on A4, ${unit}`, async () => {
    await visit(options, async (page) => {
      await page.check(`#unit-switch input[value=${unit}]`, { force: true });
      await page.evaluate(() => {
        window.printed = 0;
        window.print = () => (window.printed += 1);
      });
      await page.click("#print-sheet");
      assert.equal(await page.evaluate(() => window.printed), 1);
      const path = `${folder}sheet-${unit}.pdf`;
      await page.pdf({ path, format: "A4", preferCSSPageSize: true, printBackground: true });
      const info = execFileSync("pdfinfo", [path], { encoding: "utf8" });
      const pages = Number(/Pages: +(\d+)/.exec(info)[1]);
      assert.match(info, /Page size: +59[45]\.\d* x 84[12]\.?\d* pts/);
      const text = plain(execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" }));
      for (const name of names) assert.ok(text.includes(name), `${name} is on the sheet`);
      // Columns break sentences: each word of a caution is there, and its beginning in one piece.
      for (const caution of usual) assert.ok(text.includes(plain(caution).split(" ").slice(0, 4).join(" ")), caution);
      assert.doesNotMatch(text, /Print sheet|Undo|Take it now|Read this device/);
      assert.equal(/\d cm\b/.test(text), unit === "metric");
      assert.equal(/\d (ft|in)\b/.test(text), unit === "feet");
      assert.ok(pages >= 2 && pages <= 2 * names.length, `${pages} pages`);
      console.log(`sheet, ${unit}: ${pages} pages of A4`);
      // The last page is not an empty one.
      const last = execFileSync("pdftotext", ["-f", String(pages), "-l", String(pages), path, "-"], { encoding: "utf8" });
      assert.ok(last.trim().length > 100, "the last page has something on it");
      execFileSync("pdftoppm", ["-png", "-r", "60", path, `${folder}sheet-${unit}`]);
      await page.evaluate(() => dispatchEvent(new Event("afterprint")));
      await rest(page);
      assert.equal(await page.evaluate(() => document.documentElement.classList.contains("printing-sheet")), false);
      assert.equal(await page.isVisible("#plan-heading"), true);
    });
  });
}
