// Tub: goes on from what was mixed, counts the minutes, marks now and settled, and says what puts it right.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { amountIn, assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, pick, told } from "./browser.mjs";
import { askProgram } from "./program_answers.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const openFields = (page, nth = 0) => page.locator("#place-tub details.folded > summary").nth(nth).tap();
const marks = (page) => page.evaluate(() => Object.fromEntries([...document.querySelectorAll("#place-tub .feels .strip > span")].map((cell) => [cell.querySelector("label").innerText, cell.querySelector(".mark").innerText]).filter(([, mark]) => mark)));

test("Tub is one tap away and goes on from what was mixed last: the dry mix, the first pour, and when", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet", { before: (tab) => tab.clock.install({ time: new Date("2026-05-16T06:40:00Z") }) });
  await page.getByRole("button", { name: "Mixed it" }).tap();
  await goTo(page, "tub");
  const batch = askProgram("plan", "open carpet").batches.find((one) => one.name === "silt bed");
  assert.equal(Math.round(batch.water_first_g / 5) * 5, 285);
  assert.equal(await amountIn(page, "Water in"), "285 ml");
  await page.clock.runFor(6 * 60000);
  await page.locator("#place-tub").getByText("6 min ago").waitFor();
  const ours = await told(page, "tub").innerText();
  const theirs = askProgram("water", "silt bed", "--dry-mass", "489 g", "--added", "285 ml", "--minutes", "6", "--feel", "soft", "--water-temp", "14degC");
  assert.match(ours, new RegExp(`For soft add about ${Math.round(theirs.water_to_add_g / 5) * 5} ml of water`));
  assert.deepEqual(await marks(page), theirs.feel_now === theirs.feel_settled ? { [theirs.feel_now]: "now" } : { [theirs.feel_now]: "now", [theirs.feel_settled]: "settled" });
  assertQuiet(problems);
  await context.close();
});

test("Tub leads with what to do, for the feel that is wanted, and says when it is too wet", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "tub");
  await fill(page, "Dry mix in the tub", "1 kg");
  await fill(page, "Water in", "850");
  await page.getByRole("radio", { name: "firm", exact: true }).check();
  await drawn(page);
  const first = page.locator("#place-tub .told .first");
  assert.match(await first.innerText(), /^Do this\s+Too wet for firm\. Stir in about/);
  const theirs = askProgram("water", "silt bed", "--dry-mass", "1kg", "--added", "850ml", "--feel", "firm", "--water-temp", "14degC");
  assert.ok(theirs.dry_to_add_g > 0);
  assert.deepEqual(await marks(page), { [theirs.feel_settled]: "now" });
  await page.getByRole("radio", { name: "soft", exact: true }).check();
  await drawn(page);
  assert.match(await first.innerText(), /soft/);
  await page.getByRole("radio", { name: "Weight now" }).check();
  await fill(page, "Weighs now, without the tub", "1.45 kg");
  assert.match(await first.innerText(), /For soft add about/);
  await fill(page, "Minutes since the water", "2");
  assert.match(await told(page, "tub").innerText(), /still drinking/);
  assertQuiet(problems);
  await context.close();
});

test("Tub answers nothing while an amount is missing, and tells a slip beside its field", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "tub");
  assert.equal(await told(page, "tub").innerText(), "");
  await fill(page, "Dry mix in the tub", "1 kg");
  await fill(page, "Water in", "half a bucket");
  assert.equal(await field(page, "Water in").getAttribute("aria-invalid"), "true");
  await fill(page, "Water in", "400 ml");
  assert.equal(await field(page, "Water in").getAttribute("aria-invalid"), null);
  assert.match(await told(page, "tub").innerText(), /silt bed: 1 kg dry|silt bed: 1000 g dry/);
  assertQuiet(problems);
  await context.close();
});

test("Tub says what it loses where it stands, once its line is opened", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "tub");
  await fill(page, "Dry mix in the tub", "1 kg");
  await fill(page, "Water in", "850");
  await openFields(page, 1);
  await page.getByRole("radio", { name: "Sun", exact: true }).check();
  await drawn(page);
  const theirs = askProgram("dry", "silt bed", "--tub", "40x30cm", "--hours", "2h", "--air-temp", "18degC", "--dry-mass", "1kg", "--sun");
  const ours = await page.evaluate(() => askEngine({ ask: "dry", words: ["silt bed"], flags: { "--tub": ["40x30 cm"], "--hours": ["2 h"], "--air-temp": ["18 °C"], "--dry-mass": ["1 kg"], "--sun": [""] }, give: ["json"] }).json);
  assert.deepEqual(Object.keys(ours).filter((key) => JSON.stringify(ours[key]) !== JSON.stringify(theirs[key])), []);
  assert.ok((await page.locator("#place-tub .told").nth(1).innerText()).length > 40);
  assertQuiet(problems);
  await context.close();
});

test("what is known of the tub is there again when the page is opened anew, and its minutes have gone on", async () => {
  const { page, context } = await openPhone(browser, "carpet", { before: (tab) => tab.clock.install({ time: new Date("2026-05-16T06:40:00Z") }) });
  await page.getByRole("button", { name: "Mixed it" }).tap();
  await goTo(page, "tub");
  await page.clock.runFor(4 * 60000);
  await page.reload();
  await page.locator("#place-tub .told .first").waitFor();
  assert.match(await page.locator("#place-tub summary").first().innerText(), /489 g dry, 285 ml in, [45] min ago/);
  await context.close();
});
