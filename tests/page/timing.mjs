// How fast the page is on a slow phone: the processor slowed four times. Prints; judges nothing.
import { drawn, openBrowser, pageFile } from "./browser.mjs";
import { pathToFileURL } from "node:url";

const middle = (times, share) => times.sort((one, other) => one - other)[Math.min(times.length - 1, Math.floor(times.length * share))];
const shown = (times) => `median ${middle(times, 0.5).toFixed(1)} ms, 95 % ${middle(times, 0.95).toFixed(1)} ms`;

async function slowPage(browser) {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, offline: true });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  await page.goto(pathToFileURL(pageFile("carpet")).href);
  await page.waitForFunction(() => document.documentElement.dataset.ready === "yes");
  return { context, page };
}

/** From the move of the slider until the frame with the new weights is laid out and painted. */
async function moveTimes(page) {
  const slider = page.getByRole("slider", { name: "Amount" });
  const times = [];
  for (let move = 0; move < 60; ++move) {
    times.push(await slider.evaluate((input, value) => new Promise((done) => {
      const frame = new MessageChannel();
      requestAnimationFrame(() => {
        const began = performance.now();
        input.value = value;
        input.dispatchEvent(new Event("input", { bubbles: true }));
        requestAnimationFrame(() => {
          frame.port1.onmessage = () => done(performance.now() - began);
          frame.port2.postMessage(null);
        });
      });
    }), String(1 + (move % 30) / 4)));
  }
  return times;
}

const browser = await openBrowser();
const drawnTimes = [], readyTimes = [], workTimes = [], wholeTimes = [];
for (let run = 0; run < 5; ++run) {
  const { context, page } = await slowPage(browser);
  drawnTimes.push(await page.evaluate(() => performance.getEntriesByName("bank-drawn")[0].startTime));
  readyTimes.push(await page.evaluate(() => performance.getEntriesByName("bank-ready")[0].startTime));
  await drawn(page);
  await page.waitForTimeout(2500);
  await page.evaluate(() => performance.clearMeasures());
  wholeTimes.push(...await moveTimes(page));
  workTimes.push(...await page.evaluate(() => performance.getEntriesByName("bank-move").map((one) => one.duration)));
  await context.close();
}
await browser.close();
console.log(`processor slowed four times, ${readyTimes.length} openings, ${workTimes.length} moves`);
console.log(`first answer drawn:                   ${shown(drawnTimes)}`);
console.log(`ready, engine open and library read:  ${shown(readyTimes)}`);
console.log(`a move: asked, answered, texts set:   ${shown(workTimes)}`);
console.log(`a move: frame to frame, painted:      ${shown(wholeTimes)}`);
