// How fast the page is on a slow phone: the processor slowed four times. Prints; judges nothing. An empty page is timed too: that
// much is the browser's and the machine's.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { pageFile } from "./browser.mjs";
import { PlainBrowser } from "./plain_browser.mjs";

const openings = 11, movesEach = 60;
const at = (times, share) => [...times].sort((one, other) => one - other)[Math.min(times.length - 1, Math.floor(times.length * share))].toFixed(1);
const shown = (times) => `least ${at(times, 0)} ms, median ${at(times, 0.5)} ms, 95 % ${at(times, 0.95)} ms`;
const pause = (ms) => new Promise((done) => setTimeout(done, ms));

const emptyPage = `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Empty</title></head>
<body><p>Empty</p></body></html>
`;

/** Opens a page, leaves it alone until the last mark is reached, and gives when each was. */
async function marksOf(browser, file, marks) {
  const tab = await browser.openTab({ slowed: 4 });
  await pause(200);
  await tab.goto(pathToFileURL(file).href);
  const reached = () => tab.evaluate((name) => performance.getEntriesByName(name).length > 0, marks.at(-1));
  for (let waited = 0; waited < 200 && !(await reached()); waited += 1) await pause(100);
  await pause(1500);
  const times = await tab.evaluate((names) => names.map((name) => performance.getEntriesByName(name)[0].startTime), marks);
  return { tab, times };
}

/** From the move of the slider until the frame with the new weights is laid out and painted; and the work in between. */
async function moveTimes(tab) {
  const whole = await tab.evaluate(async (moves) => {
    const slider = document.querySelector('input[type="range"]');
    const frame = () => new Promise(requestAnimationFrame);
    const painted = () => new Promise((done) => {
      const channel = new MessageChannel();
      channel.port1.onmessage = done;
      channel.port2.postMessage(null);
    });
    const times = [];
    performance.clearMeasures();
    for (let move = 0; move < moves; move += 1) {
      await frame();
      const began = performance.now();
      slider.value = String(1 + (move % 30) / 4);
      slider.dispatchEvent(new Event("input", { bubbles: true }));
      await frame();
      await painted();
      times.push(performance.now() - began);
    }
    return times;
  }, movesEach);
  const work = await tab.evaluate(() => performance.getEntriesByName("bank-move").map((one) => one.duration));
  return { whole, work };
}

const empty = join(process.env.BANK_PAGES, "empty.html");
writeFileSync(empty, emptyPage);
const browser = new PlainBrowser();
const blank = [], drawn = [], ready = [], work = [], whole = [];
for (let run = 0; run < openings; run += 1) {
  const nothing = await marksOf(browser, empty, ["first-contentful-paint"]);
  blank.push(nothing.times[0]);
  await nothing.tab.close();
  const page = await marksOf(browser, pageFile("carpet"), ["first-contentful-paint", "bank-ready"]);
  drawn.push(page.times[0]);
  ready.push(page.times[1]);
  const moved = await moveTimes(page.tab);
  whole.push(...moved.whole);
  work.push(...moved.work);
  await page.tab.close();
}
await browser.close();
console.log(`processor slowed four times, ${ready.length} openings, ${work.length} moves`);
console.log(`an empty page drawn:                 ${shown(blank)}`);
console.log(`plain words drawn:                   ${shown(drawn)}`);
console.log(`ready, engine open:                  ${shown(ready)}`);
console.log(`a move: asked, answered, texts set:  ${shown(work)}`);
console.log(`a move: frame to frame, painted:     ${shown(whole)}`);
