// The page's main states at both sizes, as pictures in target/page-pictures, to be looked at by a person.
//   .ci/page-tests pictures

import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { DESK, PHONE, closeBrowser, rest, visit } from "./driver.mjs";
import { STATES } from "./states.mjs";

const folder = process.env.TABLERIG_PICTURES ?? fileURLToPath(new URL("../../target/page-pictures/", import.meta.url));
mkdirSync(folder, { recursive: true });

const SIZES = [["phone", { ...PHONE, colorScheme: "dark" }], ["desk", { ...DESK, colorScheme: "dark" }]];
const EXTRA = [["phone-light", { ...PHONE, colorScheme: "light" }], ["desk-light", { ...DESK, colorScheme: "light" }], ["desk-forced", { ...DESK, forcedColors: "active" }]];

for (const [size, options] of [...SIZES, ...EXTRA]) {
  for (const [state, lead] of EXTRA.some(([name]) => name === size) ? STATES.slice(0, 1) : STATES) {
    await visit(options, async (page) => {
      await lead(page);
      await rest(page);
      await page.screenshot({ path: `${folder}/${size}-${state}.png` });
      if (state === "begun") await page.screenshot({ path: `${folder}/${size}-whole.png`, fullPage: true });
    });
    console.log(`${folder}/${size}-${state}.png`);
  }
}
await closeBrowser();
