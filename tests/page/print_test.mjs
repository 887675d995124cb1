// Print: all places one after the other, each with its answer, black on white, and none of what is for a thumb.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, mixLitres, openBrowser, openPhone, placeNames, tap } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const answers = { mix: /silt bed, soft: 2\.0 l/, soak: /Pour on/, feed: /open carpet, 5 h, from 11:20/, drop: /in 2\.5 m of water/, notes: /£/ };

async function onPaper(options = {}) {
  const phone = await openPhone(browser, "carpet", { before: (page) => page.clock.install({ time: new Date("2026-11-28T11:20:00Z") }), ...options });
  const { page } = phone;
  await mixLitres(page, "2 l");
  await goTo(page, "feed");
  await tap(page, "Start now");
  await page.locator(".put-in").tap();
  await goTo(page, "mix");
  await drawn(page);
  return phone;
}

/** As a browser prints: the event, then the dress of paper, with no frame drawn in between. */
async function print(page) {
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
  await page.emulateMedia({ media: "print" });
}

test("places never opened are printed with their answers, and all in their order", async () => {
  const { page, context, problems } = await onPaper();
  const told = await page.evaluate(() => {
    window.dispatchEvent(new Event("beforeprint"));
    return Object.fromEntries([...document.querySelectorAll("main section")].map((one) => [one.id.slice(6), [...one.querySelectorAll(".told")].map((node) => node.textContent).join(" ")]));
  });
  for (const place of placeNames) assert.match(told[place], answers[place], place);
  await print(page);
  let bottom = -Infinity;
  for (const place of placeNames) {
    const box = await page.locator(`#place-${place}`).boundingBox();
    assert.ok(box.y >= bottom && box.height > 200, `${place}: ${JSON.stringify(box)}`);
    bottom = box.y + box.height - 1;
    assert.ok((await page.locator(`#head-${place}`).boundingBox()).width > 30, `the head of ${place}`);
  }
  assert.ok(await page.locator("#place-drop .picture svg").isVisible());
  assertQuiet(problems);
  await context.close();
});

test("what is for a thumb is not printed; the count of put-ins is", async () => {
  const { page, context } = await onPaper();
  await print(page);
  assert.equal(await page.locator("nav").isVisible(), false);
  assert.equal(await page.locator("button:visible:not(.put-in)").count(), 0);
  assert.equal(await page.locator("input[type=range]:visible, input[type=file]:visible").count(), 0);
  assert.match((await page.locator(".put-in").innerText()).replace(/\s+/g, " "), /Put in .*1 last just now, at 11:20/);
  assert.ok((await page.locator(".line.loud:visible").count()) >= 3, "cautions are printed");
  await context.close();
});

test("paper is white and ink is black, from a dark screen too", async () => {
  for (const scheme of ["light", "dark"]) {
    const { page, context } = await onPaper({ scheme });
    await print(page);
    const colours = await page.evaluate(() => {
      const seen = [...document.querySelectorAll("main *, h1")].filter((one) => one.checkVisibility() && one.textContent.trim() && !one.closest("svg"));
      return { back: getComputedStyle(document.documentElement).backgroundColor, letters: [...new Set(seen.map((one) => getComputedStyle(one).color))] };
    });
    assert.equal(colours.back, "rgb(255, 255, 255)", scheme);
    assert.deepEqual(colours.letters, ["rgb(0, 0, 0)"], scheme);
    const picked = await page.locator(".strip input:checked + label").first().evaluate((one) => getComputedStyle(one).backgroundColor);
    assert.match(picked, /rgba\(0, 0, 0, 0\)|rgb\(255, 255, 255\)/, "a choice is not white on nothing");
    await context.close();
  }
});

test("it prints to a few whole pages, with the notes at full length", async () => {
  const { page, context, problems } = await onPaper();
  await goTo(page, "notes");
  await field(page, "Notes").fill(Array.from({ length: 30 }, (_, at) => `line ${at + 1}`).join("\n"));
  await print(page);
  assert.ok(await field(page, "Notes").evaluate((area) => area.scrollHeight <= area.clientHeight + 2), "no line of the notes is cut");
  const paper = await page.pdf({ format: "A4" });
  const pages = paper.toString("latin1").match(/\/Type\s*\/Page\b/g).length;
  assert.ok(pages >= 3 && pages <= 12, `${pages} pages`);
  assertQuiet(problems);
  await context.close();
});
