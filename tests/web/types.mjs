// Writes a TypeScript program of answers as the module gives them, for the compiler to hold against the types:
//   node tests/web/types.mjs FOLDER > FOLDER/answers.ts

import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

const folder = process.argv[2];
const replies = JSON.parse(readFileSync(process.env.TABLERIG_REPLIES, "utf8"));
const { load } = await import(pathToFileURL(`${folder}/tablerig.mjs`).href);
const rig = await load();
const shoot = rig.ask("demo").text;
// What was asked and answered must be what the types say: no key too many, none too few.
const lines = ['import { load, TablerigError, type Operations, type Shoot } from "tablerig";'];
for (const [index, [request, reply]] of replies.entries()) {
  const { operation, ...keys } = JSON.parse(request);
  lines.push(`export const request${index}: Operations["${operation}"]["request"] = ${JSON.stringify(keys)};`);
  lines.push(`export const answer${index}: Operations["${operation}"]["answer"] = ${JSON.stringify(JSON.parse(reply).ok)};`);
}
const read = rig.ask("read", { shoot });
lines.push(`export const shoot: Shoot = ${JSON.stringify(read.shoot)};`);
lines.push(`
const rig = await load(new URL("tablerig.wasm", "https://example.test/"));
const planned = rig.ask("plan", { shoot, shot: "soup" });
export const f: number = planned.plan.focus.f_number;
export const room: number | "infinite" | "-infinite" = planned.plan.bay_room.ceiling_mm;
rig.ask("version");
// @ts-expect-error: there is no such operation
rig.ask("plam");
// @ts-expect-error: the shoot is needed
rig.ask("plan");
// @ts-expect-error: there is no such view
rig.ask("draw", { shoot, view: "below" });
// @ts-expect-error: there is no such key
rig.ask("plan", { shoot, shots: "soup" });
// @ts-expect-error: may be infinite
export const wrong: number = planned.plan.bay_room.ceiling_mm;
try {
  rig.ask("plan", { shoot: { shot: [{ name: "a", elevation_deg: "3°", frame_width_mm: 200 }] } });
} catch (error) {
  if (error instanceof TablerigError) console.log(error.code === "lacking", error.least, error.mistakes[0].path);
}`);
console.log(lines.join("\n"));
