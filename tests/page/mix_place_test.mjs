// Mix: targets, the slider and the typed field, slips, and the tub that is put right.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { amountIn, assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, pick, told } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const water = (page) => page.locator("#place-mix .amount.big").innerText();

test("the first answer is the strategy's own mix, as wet as the strategy feeds it", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  assert.equal(await pick(page, "Mix").inputValue(), "silt bed");
  assert.match(await told(page, "mix").innerText(), /^silt bed, soft: 3\.0 l/);
  assert.match(await told(page, "mix").innerText(), /Take care\s+Allergens/);
  assertQuiet(problems);
  await context.close();
});

test("the slider and the typed field agree, and the weights follow at once", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const slider = page.getByRole("slider", { name: "Amount" });
  const before = await water(page);
  await slider.fill("5");
  await drawn(page);
  assert.equal(await amountIn(page, "How much, wet"), "5 l");
  assert.notEqual(await water(page), before);
  await fill(page, "How much, wet", "2");
  assert.equal(await slider.inputValue(), "2");
  assert.equal(await slider.getAttribute("aria-valuetext"), "2 l");
  // 1 imperial pint is 568.26125 ml (UK Weights and Measures Act 1985, schedule 1, from memory).
  await fill(page, "How much, wet", "4 pt");
  assert.equal(await slider.inputValue(), "2.25");
  await page.getByRole("button", { name: "A step more" }).tap();
  assert.equal(await amountIn(page, "How much, wet"), "2.5 l");
  assertQuiet(problems);
  await context.close();
});

test("while the slider moves, texts change in the nodes that are there", async () => {
  const { page, context } = await openPhone(browser, "carpet");
  await page.evaluate(() => { window.firstCell = document.querySelector("#place-mix td.weight"); });
  for (const amount of ["3.25", "4", "6.5"]) {
    await page.getByRole("slider", { name: "Amount" }).fill(amount);
    await drawn(page);
  }
  assert.ok(await page.evaluate(() => window.firstCell.isConnected && window.firstCell === document.querySelector("#place-mix td.weight")));
  assert.ok((await page.evaluate(() => performance.getEntriesByName("bank-move").length)) >= 3);
  await context.close();
});

test("cups, balls and what one has are targets too", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const target = (name) => page.getByRole("radio", { name, exact: true }).check();
  await target("Cups");
  await fill(page, "How many cups", "6");
  await fill(page, "A cup holds", "500");
  assert.match(await told(page, "mix").innerText(), /6 cups of 500 ml/);
  await target("Balls");
  await pick(page, "Feel").selectOption("firm");
  await fill(page, "How many balls", "20");
  assert.match(await told(page, "mix").innerText(), /20 balls of 55 mm/);
  await target("What I have");
  await pick(page, "of").selectOption("brown crumb");
  await fill(page, "I have this much", "1 lb");
  assert.match(await told(page, "mix").innerText(), /The brown crumb runs out first/);
  // 1 lb is 453.59237 g (Weights and Measures Act 1985, schedule 1, from memory): the slider stands at the nearest 50 g.
  assert.equal(await page.getByRole("slider", { name: "Amount" }).inputValue(), "450");
  assertQuiet(problems);
  await context.close();
});

test("a slip is told beside its field, and the last good answer stays, greyed", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const good = await told(page, "mix").innerText();
  await fill(page, "How much, wet", "3 kg");
  const wrong = field(page, "How much, wet");
  assert.equal(await wrong.getAttribute("aria-invalid"), "true");
  const fault = page.locator(`#${await wrong.getAttribute("aria-describedby")}`);
  assert.equal(await fault.innerText(), "'3 kg' is a mass, but a volume is needed here; a volume is written in ml, l, pt or floz");
  assert.equal(await told(page, "mix").innerText(), good);
  assert.ok(await page.locator("#place-mix .answer.stale").first().isVisible());
  await fill(page, "How much, wet", "3 l");
  assert.equal(await wrong.getAttribute("aria-invalid"), null);
  assert.equal(await page.locator("#place-mix .answer.stale").count(), 0);
  assertQuiet(problems);
  await context.close();
});

test("a tub is put right, and told why it cannot be", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await pick(page, "Feel").selectOption("firm");
  await fill(page, "Dry mix in the tub", "1 kg");
  await fill(page, "Water poured in", "850 ml");
  const answer = page.locator("#place-mix .told").nth(1);
  assert.match(await answer.innerText(), /Too wet for firm\. Stir in about/);
  await page.getByRole("radio", { name: "Weight now" }).check();
  await fill(page, "Weighs now, without the tub", "1.55 kg");
  assert.match(await answer.innerText(), /For firm add about/);
  await fill(page, "Minutes since the water", "2");
  assert.match(await answer.innerText(), /still drinking/);
  assertQuiet(problems);
  await context.close();
});

test("what stands in the fields is there again when the page is opened anew", async () => {
  const { page, context } = await openPhone(browser, "carpet");
  await pick(page, "Mix").selectOption("dark treacle");
  await fill(page, "How much, wet", "1.5 l");
  await goTo(page, "drop");
  await page.reload();
  await page.locator("#place-drop .told").waitFor();
  await goTo(page, "mix");
  assert.equal(await amountIn(page, "How much, wet"), "1.5 l");
  assert.match(await told(page, "mix").innerText(), /^dark treacle/);
  await context.close();
});
