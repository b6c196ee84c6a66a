// Without a network after the first visit, and with another version of the page on the server.

import assert from "node:assert/strict";
import { cpSync, mkdtempSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { PAGE, closeBrowser, ready, rest, rig, saved, visit } from "./driver.mjs";
import { serve } from "./server.mjs";

after(closeBrowser);

const active = (page) => page.evaluate(async () => (await navigator.serviceWorker.ready).active !== null);
const versionOf = (page) => page.$eval("script[type=module]", ({ src }) => /\/(v-[0-9a-f]+)\//.exec(src)[1]);

test("after one visit it works without a network", async () => {
  await visit({ prefix: "/studio/", wanted: /ERR_INTERNET_DISCONNECTED|ERR_CONNECTION/ }, async (page, { context, served }) => {
    assert.equal(await active(page), true);
    await page.click("#elevation-more");
    await rest(page);
    const figures = await page.textContent("#to-set");
    await context.setOffline(true);
    const asked = served.asked.length;
    for (const address of [served.url, `${served.url}index.html`]) {
      await page.goto(address);
      await ready(page);
      await rest(page);
      assert.equal(await page.textContent("#to-set"), figures);
    }
    await page.click("#elevation-more");
    await rest(page);
    assert.notEqual(await page.textContent("#to-set"), figures, "it plans");
    assert.deepEqual(rig.ask("read", { shoot: (await saved(page)).text }).mistakes, []);
    await page.evaluate(() => {
      window.print = () => {};
    });
    await page.click("#print-sheet");
    assert.ok((await page.evaluate(() => document.querySelector("#sheet").shadowRoot.textContent.length)) > 1000, "the sheet is made");
    assert.equal(served.asked.length, asked, "nothing reached the server");
  });
});

/** A copy of the built page as another version: every script says so, in another folder. */
function another(folder) {
  cpSync(PAGE, folder, { recursive: true });
  const old = readdirSync(folder).find((name) => name.startsWith("v-"));
  const fresh = "v-0123456789abcdef";
  renameSync(join(folder, old), join(folder, fresh));
  for (const name of ["index.html", "manifest.json", "service-worker.js"]) {
    const path = join(folder, name);
    writeFileSync(path, readFileSync(path, "utf8").replaceAll(old, fresh).replaceAll(old.slice(2), fresh.slice(2)));
  }
  return { old, fresh };
}

test("another version never mixes with this one: it waits, and is taken whole", async () => {
  const folder = mkdtempSync(join(tmpdir(), "another-page-"));
  const { old, fresh } = another(join(folder, "page"));
  const served = await serve(PAGE, "/studio/");
  try {
    await visit({ served }, async (page, { context, requests }) => {
      assert.equal(await active(page), true);
      await page.reload();
      await ready(page);
      served.folder = join(folder, "page");
      const from = requests.length;
      const asked = served.asked.length;
      // A second tab, opened while the new version is on the server: all of it is the old one.
      const second = await context.newPage();
      await second.goto(served.url);
      await ready(second);
      assert.equal(await versionOf(second), old);
      const loaded = await second.evaluate(() => performance.getEntriesByType("resource").map(({ name }) => name));
      assert.deepEqual(loaded.filter((name) => name.includes(fresh)), []);
      // The worker of the new version has fetched itself, and nothing of the old.
      await second.waitForSelector("#update button", { timeout: 20000 });
      assert.deepEqual(served.asked.slice(asked).filter(({ pathname }) => pathname.includes(old)), []);
      assert.match(await second.textContent("#update"), /Another version/);
      await Promise.all([second.waitForEvent("load"), second.click("#update button")]);
      await ready(second);
      assert.equal(await versionOf(second), fresh);
      const after_ = await second.evaluate(() => performance.getEntriesByType("resource").map(({ name }) => name));
      assert.deepEqual(after_.filter((name) => name.includes(old)), []);
      const names = await second.evaluate(() => caches.keys());
      assert.equal(names.length, 1, names.join(", "));
      assert.ok(names[0].endsWith(fresh.slice(2)));
      assert.ok(requests.length > from);
      // The first tab still works: what it has loaded is whole.
      await page.click("#elevation-more");
      await rest(page);
      await page.reload();
      await ready(page);
      assert.equal(await versionOf(page), fresh);
    });
  } finally {
    await served.close();
    rmSync(folder, { recursive: true, force: true });
  }
});
