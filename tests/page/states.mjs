// The page's views and states that are looked at by the auditor, by the sizes' test and in pictures.

import { demo, openFile, rest, select } from "./driver.mjs";

const open = (page, selector) => page.$$eval(selector, (all) => all.forEach((each) => Object.assign(each, { open: true })));
const view = (name) => async (page) => {
  await page.check(`#view-switch input[value=${name}]`, { force: true });
};

/** Name, and what leads there from the page as it opens. */
export const STATES = [
  ["begun", async () => {}],
  ["above", view("above")],
  ["picture", view("picture")],
  ["all-views", view("all")],
  ["drawers", async (page) => {
    await select(page, "soup");
    await page.check("#explain");
    await open(page, "details");
  }],
  ["field-error", async (page) => {
    await page.fill("#field-shot-elevation_deg", "soon");
    await rest(page);
    await page.locator("#field-shot-elevation_deg").scrollIntoViewIfNeeded();
  }],
  ["boom-to-add", async (page) => {
    await select(page, "toast");
    await open(page, "#drawer-support");
    await rest(page);
    await page.click("#drawer-support button:text('Add boom')");
    await page.click("button:text('Put it in')");
    await rest(page);
    await page.locator(".draft").evaluate((draft) => draft.scrollIntoView());
    await rest(page);
    await page.locator(".draft").evaluate((draft) => draft.scrollIntoView());
  }],
  ["whole-shoot", async (page) => {
    for (const id of ["shoot", "criteria", "kit", "weights", "order"]) await open(page, `#drawer-${id}`);
    await rest(page);
    await page.locator("#drawer-kit").evaluate((drawer) => drawer.scrollIntoView());
    await rest(page);
    await page.locator("#drawer-kit").evaluate((drawer) => drawer.scrollIntoView());
  }],
  ["cautions", async (page) => {
    await select(page, "toast");
    await page.locator("#worst-heading").evaluate((heading) => heading.scrollIntoView());
  }],
  ["broken-file", async (page) => {
    await openFile(page, demo.replace("elevation_deg", "elevatoin_deg"), "broken.toml");
    await page.waitForSelector("#alerts .alert");
  }],
  ["stop", async (page) => {
    await select(page, "breakfast-long");
  }],
  ["feet", async (page) => {
    await page.check("#unit-switch input[value=feet]", { force: true });
  }],
  ["lenses", async (page) => {
    await page.fill("#focal-lengths", "60, 85, none");
    await rest(page);
    await page.locator("#choose").evaluate((section) => section.scrollIntoView());
  }],
  ["measured", async (page) => {
    await page.fill("#measured-sensor_distance_mm", "104 cm ± 5 mm");
    await page.fill("#measured-elevation_deg", "9 ± 0.3");
    await page.fill("#measured-horizontal_distance_mm", "102 cm ± 5");
    await page.fill("#measured-roll_deg", "sideways");
    await rest(page);
    await page.locator("#measured").evaluate((section) => section.scrollIntoView());
  }],
  ["tilt", async (page) => {
    await page.click("#tilt-start");
    await page.evaluate(() => dispatchEvent(new DeviceOrientationEvent("deviceorientation", { alpha: 0, beta: 80, gamma: 2 })));
    await rest(page);
    await page.locator("#tilt").evaluate((section) => section.scrollIntoView());
  }],
  ["text-error", async (page) => {
    await open(page, "#as-text");
    await rest(page);
    await page.fill("#file-text", demo.replace("elevation_deg", "elevatoin_deg"));
    await page.click("#apply-text");
  }],
];
