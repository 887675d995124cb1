// What holds the places together: the way back, messages, the look, and fields of amounts.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { amountIn, assertQuiet, drawn, goTo, openBrowser, openPhone, reload } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const inSight = (page) => page.evaluate(() => [...document.querySelectorAll("main section")].filter((one) => !one.hidden).map((one) => one.id.slice("place-".length)).join());
const scrolled = (page) => page.evaluate(() => Math.round(window.scrollY));
const bar = (page) => page.locator("#notice");

async function goBack(page) {
  await page.evaluate(() => history.back());
  await page.waitForTimeout(150);
  await drawn(page);
}

test("back goes back to the place before, scrolled as it was, and forward goes forward", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "feed");
  await page.evaluate(() => { document.querySelector("#place-feed .content").style.minHeight = "3000px"; window.scrollTo(0, 210); });
  await page.evaluate(() => document.querySelector("nav [data-place=soak]").click());
  await goTo(page, "notes");
  await goBack(page);
  assert.equal(await inSight(page), "more");
  await goBack(page);
  assert.equal(await inSight(page), "soak");
  await goBack(page);
  assert.equal(await inSight(page), "feed");
  assert.equal(await scrolled(page), 210);
  await page.evaluate(() => history.forward());
  await page.waitForTimeout(150);
  assert.equal(await inSight(page), "soak");
  assert.equal(await page.locator("nav [aria-current]").getAttribute("data-place"), "soak");
  assertQuiet(problems);
  await context.close();
});

test("a reload returns to the place, as far down as one was", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "more");
  await goTo(page, "notes");
  await drawn(page);
  await page.evaluate(() => window.scrollTo(0, 180));
  await page.waitForTimeout(300);
  await page.evaluate(() => keepNow());
  await reload(page);
  await drawn(page);
  await page.waitForTimeout(200);
  assert.equal(await inSight(page), "notes");
  assert.equal(await scrolled(page), 180);
  await goBack(page);
  assert.equal(await inSight(page), "more", "the way back is there after a reload too");
  assertQuiet(problems);
  await context.close();
});

test("a sheet is over its place, and back closes it and goes no further", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "soak");
  await page.evaluate(() => {
    window.trial = sheetOver({ title: "Which one", closed: () => { window.wasClosed = (window.wasClosed || 0) + 1; } });
    window.trial.body.append(make("p", {}, "one of many"));
    window.trial.open();
  });
  const sheet = page.getByRole("dialog", { name: "Which one" });
  assert.ok(await sheet.isVisible());
  await goBack(page);
  assert.equal(await sheet.count(), 0);
  assert.equal(await inSight(page), "soak");
  await page.evaluate(() => window.trial.open());
  await sheet.getByRole("button", { name: "Back" }).tap();
  await page.waitForTimeout(150);
  assert.equal(await sheet.count(), 0);
  await page.evaluate(() => window.trial.open());
  await page.keyboard.press("Escape");
  await page.waitForTimeout(150);
  assert.equal(await sheet.count(), 0);
  assert.equal(await page.evaluate(() => window.wasClosed), 3);
  assert.equal(await inSight(page), "soak");
  assertQuiet(problems);
  await context.close();
});

test("a message stands in a bar above the places, is announced, and goes when it is old; one that stays, stays", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet", { before: (one) => one.clock.install({ time: new Date("2026-11-28T09:00:00Z") }) });
  await page.evaluate(() => {
    notice("The soak is over.", { stays: true, action: { text: "Start the stand", act: () => { window.stood = true; } } });
    notice("It is in the notes.");
  });
  assert.equal(await bar(page).getAttribute("role"), "status");
  assert.match(await bar(page).innerText(), /It is in the notes/);
  const above = await bar(page).boundingBox();
  const below = await page.locator("nav").boundingBox();
  assert.ok(above.y + above.height <= below.y + 1 && below.y + below.height <= 741, "above the places, and in sight");
  await goTo(page, "soak");
  assert.match(await bar(page).innerText(), /It is in the notes/);
  await page.clock.fastForward(8100);
  assert.match(await bar(page).innerText(), /The soak is over/);
  await page.clock.fastForward(60000);
  await bar(page).getByRole("button", { name: "Start the stand" }).tap();
  assert.equal(await page.evaluate(() => window.stood), true);
  assert.equal(await bar(page).isVisible(), false);
  await page.evaluate(() => { window.take = notice("Stays.", { stays: true }); });
  await bar(page).getByRole("button", { name: "Close this message" }).tap();
  assert.equal(await bar(page).isVisible(), false);
  assertQuiet(problems);
  await context.close();
});

test("the look is by the phone, for the sun or for the night, and is kept", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const usual = await paper();
  await goTo(page, "more");
  await page.getByRole("radio", { name: "Bright sun" }).check({ force: true });
  assert.equal(await paper(), "rgb(255, 255, 255)");
  assert.equal(await page.evaluate(() => getComputedStyle(document.documentElement).color), "rgb(0, 0, 0)");
  await page.getByRole("radio", { name: "Night" }).check({ force: true });
  const night = await paper();
  assert.ok(night.match(/[0-9]+/g).every((part) => Number(part) < 32), night);
  await reload(page);
  assert.equal(await paper(), night);
  await goTo(page, "more");
  await page.getByRole("radio", { name: "By the phone" }).check({ force: true });
  assert.equal(await paper(), usual);
  assertQuiet(problems);
  await context.close();
});

/** A field as the places make them, by itself. */
async function trialField(page, options) {
  await page.evaluate((given) => {
    window.asked = [];
    window.trial = amountField({ label: "Trial", ...given, changed: () => window.asked.push(window.trial.text()) });
    document.querySelector("main section:not([hidden]) .content").prepend(window.trial.node);
  }, options);
  return page.getByRole("textbox", { name: "Trial" });
}

test("an amount takes a comma, keeps the unit one typed or tapped, and steps in that unit", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const input = await trialField(page, { unit: "l", text: "3 l", step: 0.25 });
  const text = () => page.evaluate(() => window.trial.text());
  const unit = (name) => page.getByRole("radiogroup", { name: "Unit: Trial" }).getByRole("radio", { name, exact: true });
  assert.equal(await input.getAttribute("inputmode"), "decimal");
  assert.equal(await amountIn(page, "Trial"), "3 l");
  await input.fill("1,5");
  assert.equal(await text(), "1.5 l");
  await unit("pt").check({ force: true });
  assert.equal(await text(), "1.5 pt", "the number is what one typed");
  await page.getByRole("button", { name: "More: Trial" }).tap();
  assert.equal(await text(), "2 pt");
  await page.getByRole("button", { name: "More: Trial" }).tap();
  assert.equal(await text(), "2.5 pt");
  await input.fill("600 ml");
  await input.blur();
  assert.equal(await text(), "600 ml");
  assert.equal(await input.inputValue(), "600");
  assert.ok(await unit("ml").isChecked());
  await page.getByRole("button", { name: "Less: Trial" }).tap();
  assert.equal(await text(), "550 ml");
  for (const odd of ["5 bags", "3 kg", "4 lb 6 oz", "1,000 ml", "-2 l"]) {
    await input.fill(odd);
    await input.blur();
    assert.equal(await text(), odd, "for the engine to judge");
  }
  await input.fill("");
  assert.equal(await text(), "");
  assertQuiet(problems);
  await context.close();
});

test("where imperial units are usual, a field begins with them, and so do the page's own amounts", async () => {
  const { page, context } = await openPhone(browser, "carpet");
  await page.evaluate(() => { bank.data.units = "imperial"; });
  const input = await trialField(page, { unit: "g", fresh: "500 g" });
  await input.fill("2");
  assert.equal(await page.evaluate(() => window.trial.text()), "2 oz");
  // 16 oz to the pound; 500 g / 453.59237 g = 1.1 lb; 250 ml / 28.4130625 ml = 8.8 fl oz.
  assert.deepEqual(await page.evaluate(() => ["500 g", "250 ml", "1 l", "15 \u00b0C", "3"].map(usualAmount)), ["1.1 lb", "8.8 fl oz", "1.8 pt", "15 \u00b0C", "3"]);
  await input.fill("");
  await page.getByRole("button", { name: "More: Trial" }).tap();
  assert.equal(await page.evaluate(() => window.trial.text()), "1.1 lb");
  await context.close();
});

test("an empty field answers nothing, and a slip greys what stood before and says so", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await page.evaluate(() => {
    const amount = amountField({ label: "Trial", unit: "g", text: "500 g", changed: () => ask() });
    const fold = foldedLine("Trial");
    fold.body.append(amount.node);
    const box = answerBox({ fields: { "--dry-mass": amount } });
    const ask = () => box.ask({ ask: "mix", words: [bank.library.mixes[0].name], flags: { "--dry-mass": [amount.text()] }, give: ["told"] }, [amount]);
    window.trial = { box, fold };
    document.querySelector("main section:not([hidden]) .content").replaceChildren(fold.node, box.node);
    ask();
  });
  const answer = page.locator("main section:not([hidden]) .answer");
  const input = page.getByRole("textbox", { name: "Trial" });
  const words = await answer.locator(".told").innerText();
  assert.match(words, /water/);
  assert.equal(await input.isVisible(), false, "folded until it is opened");
  await page.locator("summary").first().tap();
  await input.fill("5 bags");
  assert.match(await answer.innerText(), /^What stood before:/);
  assert.ok((await answer.getAttribute("class")).includes("stale"));
  await input.fill("");
  assert.equal((await answer.innerText()).trim(), "");
  assert.equal(await page.locator(".fault:visible").count(), 0);
  await input.fill("500");
  assert.equal(await answer.locator(".told").innerText(), words);
  await page.locator("summary").first().tap();
  await page.evaluate(() => window.trial.box.show({ errors: [{ code: "x", field: "--dry-mass", message: "no such mass", hint: "give one" }] }));
  assert.ok(await page.getByText("no such mass; give one").isVisible(), "a fault opens the line that its field is folded into");
  assertQuiet(problems);
  await context.close();
});
