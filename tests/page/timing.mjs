// Measures the replanning of the page on a phone's viewport with a slowed processor, through a drag by touch: the page's
// own measures, and the frames that became long. Prints one line each; asserts nothing.
//   .ci/page-tests timing

import { PHONE, closeBrowser, rest, select, visit } from "./driver.mjs";

const STEPS = 240;

const at = (sorted, share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
/** A frame of a screen of 60 Hz lasts 16.7 ms. */
const FRAME_MS = 16;
const told = (values, over = FRAME_MS) => {
  const sorted = [...values].sort((a, b) => a - b);
  if (sorted.length === 0) return "none";
  return `median ${at(sorted, 0.5).toFixed(1)}, 95 % within ${at(sorted, 0.95).toFixed(1)}, most ${sorted.at(-1).toFixed(1)}, over ${over}: ${sorted.filter((value) => value > over).length} of ${sorted.length}`;
};

async function measure(page, rate, shot, profile) {
  await select(page, shot);
  await page.$eval(".stage[data-view=side]", (stage) => stage.scrollIntoView({ block: "center" }));
  await rest(page);
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
  const box = await page.locator("#handle-elevation").boundingBox();
  const camera = await page.locator("#handle-camera").boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const [cx, cy] = [camera.x + camera.width / 2, camera.y + camera.height / 2];
  const aim = { x: cx + (x - cx) / 0.45, y: cy + (y - cy) / 0.45 };
  await page.evaluate(() => {
    performance.clearMeasures();
    window.longFrames = [];
    new PerformanceObserver((list) => window.longFrames.push(...list.getEntries().map(({ duration }) => duration))).observe({ type: "long-animation-frame" });
    window.between = [];
    let last = 0;
    const tick = (now) => {
      if (last > 0) window.between.push(now - last);
      last = now;
      window.ticking = requestAnimationFrame(tick);
    };
    tick(0);
  });
  if (profile) {
    await session.send("Profiler.enable");
    await session.send("Profiler.setSamplingInterval", { interval: 200 });
    await session.send("Profiler.start");
  }
  const touch = (type, touchPoints) => session.send("Input.dispatchTouchEvent", { type, touchPoints });
  await touch("touchStart", [{ x, y }]);
  for (let step = 1; step <= STEPS; step += 1) {
    // Up by 25 degrees and down again, twice: each step another half degree or so.
    const turn = (25 * Math.abs((((step / STEPS) * 4 + 1) % 2) - 1) * Math.PI) / 180;
    const [across, up] = [aim.x - x, aim.y - y];
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    await touch("touchMove", [{ x: aim.x - (across * cos - up * sin), y: aim.y - (across * sin + up * cos) }]);
    await page.waitForTimeout(20);
  }
  await touch("touchEnd", []);
  const profiled = profile ? (await session.send("Profiler.stop")).profile : null;
  const got = await page.evaluate(() => {
    cancelAnimationFrame(window.ticking);
    const of = (name) => performance.getEntriesByName(name).filter(({ detail }) => detail.moving).map(({ duration }) => duration);
    return { replan: of("tablerig-replan"), drawn: of("tablerig-input-to-drawn"), longFrames: window.longFrames, between: window.between };
  });
  await session.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  console.log(`${shot}, ${rate} times slower: replanning, ms: ${told(got.replan)}`);
  console.log(`${shot}, ${rate} times slower: input to drawn, ms: ${told(got.drawn)}`);
  console.log(`${shot}, ${rate} times slower: between frames, ms: ${told(got.between, 20)}; long frames: ${got.longFrames.length}`);
  if (profiled !== null) where(profiled);
}

/** Where the time went, by function. */
function where({ nodes, samples, timeDeltas }) {
  const names = new Map(nodes.map(({ id, callFrame: { functionName, url } }) => [id, `${functionName || "(unnamed)"} ${url.split("/").at(-1)}`]));
  const spent = new Map();
  samples.forEach((id, index) => spent.set(names.get(id), (spent.get(names.get(id)) ?? 0) + timeDeltas[index] / 1000));
  const rows = [...spent].filter(([name]) => !/^\((idle|program|root)\)/.test(name)).sort((a, b) => b[1] - a[1]).slice(0, 16);
  for (const [name, ms] of rows) console.log(`  ${(ms / STEPS).toFixed(2)} ms a step  ${name}`);
}

const rates = process.argv[2] === undefined ? [1, 4, 6] : [Number(process.argv[2])];
for (const rate of rates) {
  for (const shot of ["layers", "soup"]) await visit({ ...PHONE }, (page) => measure(page, rate, shot, process.env.PROFILE === "1"));
}
await closeBrowser();
