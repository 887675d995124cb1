// Print: the plan, the mix and the soak with their answers and lines for notes, black on white, on two sheets at most, and none of
// what is for a thumb.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, goTo, openBrowser, openPhone } from "./browser.mjs";

let browser, folder;
before(async () => {
  browser = await openBrowser();
  folder = mkdtempSync(join(tmpdir(), "paper-"));
});
after(() => {
  rmSync(folder, { recursive: true, force: true });
  return browser.close();
});

const onPaper = ["feed", "mix", "soak"];

/** As a browser prints: the event, then the dress of paper, with no frame drawn in between. */
async function print(page) {
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
  await page.emulateMedia({ media: "print" });
}

/** The letters that stand on the paper. */
const printed = (page) => page.evaluate(() => document.querySelector("#card").innerText);

async function sheetsOf(page) {
  const paper = await page.pdf({ format: "A4", preferCSSPageSize: true });
  return paper.toString("latin1").match(/\/Type\s*\/Page\b/g).length;
}

test("places never opened are printed with their answers, the plan first", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await print(page);
  let bottom = -Infinity;
  for (const place of onPaper) {
    const told = await page.locator(`#place-${place}`).innerText();
    assert.ok(told.length > 200, `${place}: ${told}`);
    assert.ok((await page.locator(`#place-${place} .told:visible`).count()) > 0, place);
    const first = await page.locator(`#place-${place}`).evaluate((one) => one.compareDocumentPosition(document.querySelector("#paper-notes")));
    assert.ok(first & 4, `${place} before the notes`);
    const order = await page.locator(`#place-${place}`).evaluate((one) => [...document.querySelectorAll("main > *")].indexOf(one));
    assert.ok(order > bottom, place);
    bottom = order;
  }
  assert.match(await page.locator("#place-mix").innerText(), /silt bed/);
  assert.match(await page.locator("#place-feed").innerText(), /open carpet/);
  assert.ok((await page.locator("#paper-notes hr:visible").count()) >= 6, "lines to write on");
  assert.ok((await page.locator(".line.loud:visible").count()) >= 2, "cautions are printed");
  assertQuiet(problems);
  await context.close();
});

test("the plan on paper has the program's own put-ins", async () => {
  const { page, context } = await openPhone(browser, "carpet");
  await print(page);
  const run = spawnSync(process.env.BANK_PROGRAM, ["plan", "open carpet", "--start", "09:30", "--json", "--store", join(folder, "store.db")], { encoding: "utf8" });
  const { feeds } = JSON.parse(run.stdout);
  const words = await page.locator("#place-feed").innerText();
  const clocks = new Set(feeds.map((feed) => `${String(Math.floor((570 + feed.minute) / 60)).padStart(2, "0")}:${String((570 + feed.minute) % 60).padStart(2, "0")}`));
  assert.ok(clocks.size > 1);
  for (const clock of clocks) assert.ok(words.includes(clock), `${clock} in ${words}`);
  await context.close();
});

test("what is for a thumb is not printed", async () => {
  const { page, context } = await openPhone(browser, "several");
  for (const place of ["soak", "feed", "more", "notes", "mix"]) await goTo(page, place);
  await page.evaluate(() => notice("Stays.", { stays: true }));
  await print(page);
  assert.equal(await page.locator("button:visible, input:visible, select:visible, textarea:visible, summary:visible, nav:visible, #notice:visible, .dock:visible").count(), 0);
  assert.match(await printed(page), /open carpet/);
  await context.close();
});

test("paper is white and ink is black, from every dress of the screen", async () => {
  for (const dress of [{}, { scheme: "dark" }, { look: "night" }, { look: "sun" }]) {
    const { page, context } = await openPhone(browser, "carpet", dress);
    if (dress.look) await page.evaluate((look) => { document.documentElement.dataset.look = look; }, dress.look);
    await print(page);
    const colours = await page.evaluate(() => {
      const seen = [...document.querySelectorAll("main *, h1")].filter((one) => one.checkVisibility() && one.textContent.trim() && !one.closest("svg"));
      return { back: getComputedStyle(document.documentElement).backgroundColor, letters: [...new Set(seen.map((one) => getComputedStyle(one).color))] };
    });
    assert.deepEqual(colours, { back: "rgb(255, 255, 255)", letters: ["rgb(0, 0, 0)"] }, JSON.stringify(dress));
    await context.close();
  }
});

test("it prints to two sheets of A4 at most, with notes of ten lines at full length", async () => {
  for (const name of ["carpet", "several", "four-anglers"]) {
    const { page, context, problems } = await openPhone(browser, name);
    await goTo(page, "notes");
    await field(page, "Notes").fill(Array.from({ length: 10 }, (_, at) => `line ${at + 1} of the notes`).join("\n"));
    await goTo(page, "mix");
    await drawn(page);
    await print(page);
    for (let line = 1; line <= 10; line += 1) assert.match(await page.locator("#paper-notes").innerText(), new RegExp(`line ${line} of the notes`));
    const sheets = await sheetsOf(page);
    assert.ok(sheets <= 2, `${name}: ${sheets} sheets`);
    assertQuiet(problems);
    await context.close();
  }
});

test("after printing the page is as it was", async () => {
  const { page, context } = await openPhone(browser, "carpet");
  await goTo(page, "feed");
  const folds = () => page.evaluate(() => [...document.querySelectorAll("#place-feed details")].map((one) => one.open));
  const before = await folds();
  await print(page);
  await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
  await page.emulateMedia({ media: "screen" });
  assert.deepEqual(await folds(), before);
  assert.equal(await page.locator("#paper-notes").isVisible(), false);
  assert.ok(await page.locator("#place-feed").isVisible());
  assert.equal(await page.locator("#place-mix").isVisible(), false);
  await context.close();
});
