// Shed: what is there after what was bought, used and counted on the phone, against the program's own shed; and the way home.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, ready, reload, tap } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const newStore = () => join(mkdtempSync(join(tmpdir(), "bank-shed-")), "store.db");

/** What the program answers; its store is the only thing that is kept. */
function program(store, words, { input = "", good = [0] } = {}) {
  const ran = spawnSync(process.env.BANK_PROGRAM, [...words, "--store", store], { input, encoding: "utf8" });
  assert.ok(good.includes(ran.status), `${words.join(" ")}: ${ran.stderr}${ran.stdout}`);
  return ran.stdout;
}

/** What is left of each thing in the program's shed, in its words. */
function shedOfProgram(store) {
  const rows = program(store, ["stock"]).split("\n").slice(1).filter((row) => row.trim() && !/^ *- lot/.test(row));
  return Object.fromEntries(rows.map((row) => /^ {2}(.*?)(?:, in all)? {2,}([0-9.]+ (?:g|kg|ml))/.exec(row).slice(1, 3)));
}

async function openShed(name = "carpet") {
  const phone = await openPhone(browser, name);
  await goTo(phone.page, "shed");
  await drawn(phone.page);
  return phone;
}

const lines = (page) => page.locator("#place-shed .thing");
const line = (page, name) => lines(page).filter({ has: page.locator("b", { hasText: new RegExp(`^${name}$`) }) });
const inLine = (page, name) => line(page, name).locator(".question");
const shedOfPage = (page) => lines(page).evaluateAll((all) => Object.fromEntries(all.map((one) => [one.querySelector("b").textContent, one.querySelector(".left").textContent])));
const entries = (page) => page.evaluate(() => bank.shared.shed.map(({ id, by, shop, ...entry }) => entry));
const notice = (page) => page.locator("#notice p").innerText();

async function putIn(page, name, amount, price = "", how = "Bought") {
  await page.evaluate(() => { [...document.querySelectorAll("#place-shed .folded")].find((one) => !one.closest(".thing")).open = true; });
  await page.getByRole("combobox", { name: "What is it" }).fill(name);
  const fields = page.locator("#place-shed > .content > .folded").first();
  await fields.getByRole("textbox", { name: "How much", exact: true }).fill(amount);
  await fields.getByRole("textbox", { name: "What a pack cost, if bought" }).fill(price);
  await fields.getByRole("button", { name: how, exact: true }).tap();
  await drawn(page);
}

async function openLine(page, name) {
  if (!(await inLine(page, name).count())) await line(page, name).locator("summary").tap();
  await inLine(page, name).waitFor();
}

test("an empty shed says so in words for a phone, and asks what there is", async () => {
  const { page, context, problems } = await openShed();
  const words = await page.locator("#place-shed").innerText();
  assert.match(words, /Nothing is in the shed yet/);
  assert.ok(!/--[a-z]|baitwright /.test(words), words);
  assert.ok(await page.getByRole("combobox", { name: "What is it" }).isVisible());
  assertQuiet(problems);
  await context.close();
});

test("what was bought, used and counted, two taps each, comes to what the program's shed comes to", async () => {
  const { page, context, problems } = await openShed();
  await putIn(page, "brown crumb", "2x1 kg", "\u00a32.10");
  await putIn(page, "maize meal", "400 g", "", "Counted");
  await putIn(page, "fishmeal, brown", "1.5 kg");
  await openLine(page, "brown crumb");
  const fields = inLine(page, "brown crumb");
  await fields.getByRole("textbox", { name: "How much", exact: true }).fill("600 g");
  await fields.getByRole("button", { name: "Used", exact: true }).tap();
  await drawn(page);
  assert.equal(await notice(page), "Used 600 g brown crumb");
  // A tap to open the line, and one to use as much again as the last time.
  await page.evaluate(() => openStrategy(bank.strategy.name, "shed"));
  await line(page, "brown crumb").locator("summary").tap();
  await inLine(page, "brown crumb").getByRole("button", { name: "Used", exact: true }).tap();
  await drawn(page);
  await openLine(page, "fishmeal, brown");
  await inLine(page, "fishmeal, brown").getByRole("button", { name: "None left" }).tap();
  await drawn(page);
  const store = newStore();
  for (const words of [["buy", "brown crumb", "2x1kg", "--price", "\u00a32.10"], ["count", "maize meal", "400g"], ["buy", "fishmeal, brown", "1.5kg"], ["use", "brown crumb", "600g"], ["use", "brown crumb", "600g"], ["count", "fishmeal, brown", "none"]]) {
    program(store, ["stock", ...words]);
  }
  const there = shedOfProgram(store);
  assert.deepEqual(Object.keys(there).sort(), ["brown crumb", "maize meal"]);
  assert.deepEqual(await shedOfPage(page), there);
  assert.match(await line(page, "brown crumb").locator(".lots").innerText(), /^dry, best before \d{4}-\d\d-\d\d$/);
  await reload(page);
  await goTo(page, "shed");
  assert.deepEqual(await shedOfPage(page), there);
  assertQuiet(problems);
  await context.close();
});

test("what cannot be is one fault beside its field, without a flag or a command, and nothing is kept of it", async () => {
  const { page, context, problems } = await openShed();
  await putIn(page, "brown crumb", "1 kg");
  const before = await entries(page);
  const slips = [
    [() => putIn(page, "brwn crumb", "1 kg"), /brown crumb/], [() => putIn(page, "", "1 kg"), /What is it/], [() => putIn(page, "maize meal", "a bucket"), /./], [() => putIn(page, "maize meal", ""), /How much/],
    [() => putIn(page, "maize meal", "1 kg", "cheap"), /./], [() => putIn(page, "maize meal", "-1 kg"), /./],
    [async () => {
      await openLine(page, "brown crumb");
      await inLine(page, "brown crumb").getByRole("textbox", { name: "How much", exact: true }).fill("5 kg");
      await inLine(page, "brown crumb").getByRole("button", { name: "Used", exact: true }).tap();
      await drawn(page);
    }, /1000 g|1 kg/],
  ];
  for (const [slip, why] of slips) {
    await page.evaluate(() => openStrategy(bank.strategy.name, "shed"));
    await slip();
    const faults = await page.locator("#place-shed .fault:visible").allInnerTexts();
    assert.equal(faults.length, 1, faults.join(" | "));
    assert.match(faults[0], why);
    assert.ok(!/--[a-z]|baitwright /.test(faults[0]), faults[0]);
    assert.deepEqual(await entries(page), before);
  }
  assertQuiet(problems);
  await context.close();
});

test("what was fed today is taken off in one tap, by the program's own weights, once, and can be put back", async () => {
  const { page, context, problems } = await openShed();
  const store = newStore();
  const { kitchen } = JSON.parse(program(store, ["mix", "silt bed", "--dry-mass", "1kg", "--json"]));
  await page.evaluate(() => addMixed({ of: "silt bed", dry: "1 kg", water: "740 ml", feel: "firm" }));
  await page.evaluate((names) => {
    enterInShed(names.map((name) => freshEntry("count", name, "2 kg")));
    openStrategy(bank.strategy.name, "shed");
  }, kitchen.parts.slice(1).map((part) => part.name));
  await page.getByRole("button", { name: "Take off what was fed today" }).tap();
  await drawn(page);
  const words = await notice(page);
  assert.match(words, /^Taken off: /);
  assert.ok(words.includes(`Not enough in the shed: ${kitchen.parts[0].name}.`), words);
  for (const part of kitchen.parts.slice(1)) {
    program(store, ["stock", "count", part.name, "2kg"]);
    program(store, ["stock", "use", part.name, `${part.mass_g}g`]);
  }
  assert.deepEqual(await shedOfPage(page), shedOfProgram(store));
  await page.locator("#notice").getByRole("button", { name: "Put it back" }).tap();
  await drawn(page);
  assert.ok(Object.values(await shedOfPage(page)).every((left) => left === "2000 g"));
  await page.getByRole("button", { name: "Take off what was fed today" }).tap();
  await drawn(page);
  await page.evaluate((name) => {
    enterInShed([freshEntry("count", name, "2 kg")]);
    openStrategy(bank.strategy.name, "shed");
  }, kitchen.parts[0].name);
  await page.getByRole("button", { name: "Take off what was fed today" }).tap();
  await drawn(page);
  assert.ok((await notice(page)).startsWith(`Taken off: ${kitchen.parts[0].mass_g} g ${kitchen.parts[0].name}.`), "what was short before, and no more");
  const there = await shedOfPage(page);
  await page.getByRole("button", { name: "Take off what was fed today" }).tap();
  assert.equal(await notice(page), "All of it has been taken off before.");
  assert.deepEqual(await shedOfPage(page), there);
  assertQuiet(problems);
  await context.close();
});

test("an entry can be taken out again, and other questions go by what is then there", async () => {
  const { page, context, problems } = await openShed("several");
  await putIn(page, "brown crumb", "1 kg");
  await putIn(page, "brown crumb", "2 kg", "", "Counted");
  const have = () => page.evaluate(() => askEngine({ ask: "shop", words: ["open carpet"], flags: {}, give: ["json"] }).json);
  const stocked = JSON.stringify(await have());
  await page.locator("#place-shed summary").filter({ hasText: "entries" }).tap();
  const newest = page.locator("#place-shed .entries li").first();
  assert.match(await newest.innerText(), /counted 2 kg brown crumb/);
  await newest.getByRole("button", { name: "Take out" }).tap();
  assert.equal((await entries(page)).length, 2, "one tap takes nothing out");
  await newest.getByRole("button", { name: "Tap again" }).tap();
  await drawn(page);
  assert.deepEqual(await shedOfPage(page), { "brown crumb": "1000 g" });
  await page.evaluate(() => {
    takeOutOfShed(bank.shared.shed);
    openStrategy("tight balls", "shed");
  });
  assert.deepEqual(await shedOfPage(page), {});
  assert.notEqual(JSON.stringify(await have()), stocked);
  assertQuiet(problems);
  await context.close();
});

test("what was said of the shed goes home with the notes, and a page made from there counts it once", async () => {
  const { page, context, problems } = await openShed();
  await putIn(page, "brown crumb", "2x1 kg", "\u00a32.10");
  await putIn(page, "maize meal", "400 g", "", "Counted");
  await openLine(page, "brown crumb");
  await inLine(page, "brown crumb").getByRole("textbox", { name: "How much", exact: true }).fill("600 g");
  await inLine(page, "brown crumb").getByRole("button", { name: "Used", exact: true }).tap();
  await page.evaluate(() => {
    bank.shared.mixes.push({ name: "my silt", feel: "firm", parts: [{ of: "brown crumb", share: "3" }, { of: "maize meal", share: "1" }].map((part) => ({ mass: "", ...part })) });
    keepNow();
  });
  await goTo(page, "notes");
  await page.locator("#place-notes textarea").first().fill("a day");
  await tap(page, "Save notes");
  const text = await page.getByLabel("Your notes as they are saved").inputValue();
  const store = newStore();
  const home = JSON.parse(program(store, ["log", "add", "--from", "-", "--json"], { input: text }));
  assert.deepEqual(home.entered.map((entry) => entry.what), ["session"]);
  const there = shedOfProgram(store);
  assert.deepEqual(there, { "brown crumb": "1400 g", "maize meal": "400 g" });
  assert.match(program(store, ["recipe", "show", "my silt"]), /brown crumb/);
  program(store, ["log", "add", "--from", "-"], { input: text });
  assert.deepEqual(shedOfProgram(store), there, "the same file twice");
  const made = join(mkdtempSync(join(tmpdir(), "bank-made-")), "anew.html");
  program(store, ["page", "open carpet", "-o", made], { good: [0, 1] });
  await page.goto(pathToFileURL(made).href);
  await ready(page);
  await goTo(page, "shed");
  await drawn(page);
  assert.deepEqual(await shedOfPage(page), there);
  await putIn(page, "fishmeal, brown", "1 kg");
  assert.deepEqual(await shedOfPage(page), { ...there, "fishmeal, brown": "1000 g" });
  await page.locator("#place-shed summary").filter({ hasText: "entries" }).tap();
  assert.match(await page.locator("#place-shed .entries").innerText(), /used 600 g brown crumb, taken home/);
  assertQuiet(problems);
  await context.close();
});
