// Day: advice in the program's own words, and one tap from it to a strategy.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, pick, reload } from "./browser.mjs";
import { letters, program, record } from "./told_alike.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const day = (page) => page.locator("#place-day");
const onAutumnDay = { before: (page) => page.clock.install({ time: new Date("2026-11-28T12:00:00Z") }) };

async function openDay(name) {
  const phone = await openPhone(browser, name, onAutumnDay);
  await goTo(phone.page, "day");
  await drawn(phone.page);
  return phone;
}

test("it opens on the season of the day and the strategy's own water", async () => {
  const { page, context, problems } = await openDay("several");
  assert.equal(await day(page).locator(".folded > summary").innerText(), "autumn, 2.5 m deep, tow 2 cm/s, 5 h");
  assert.match(await day(page).locator(".told").first().innerText(), /^Advice for autumn, 2\.5 m deep, tow 2 cm\/s, 5 h/);
  assertQuiet(problems);
  await context.close();
});

test("what is said of the day changes the order of the strategies, and each says why", async () => {
  const { page, context, problems } = await openDay("several");
  await day(page).locator(".folded > summary").click();
  await pick(page, "Season").selectOption("winter");
  await pick(page, "Water is").selectOption("clear");
  await fill(page, "Water's warmth", "6");
  await fill(page, "After which fish", "roach, bream");
  const question = ["advise", "--season", "winter", "--clarity", "clear", "--water-temp", "6degC", "--depth", "2.5m", "--tow", "2cm/s", "--hours", "5h", "--fish", "roach", "--fish", "bream"];
  const printed = letters(program(...question));
  const words = await day(page).locator(".answer .told > *, .answer ~ .told > *").allTextContents();
  assert.ok(words.length >= 8);
  for (const word of words) assert.ok(printed.includes(letters(word)), word);
  const blocks = await day(page).locator(".block").allTextContents();
  record(...question).strategies.slice(0, 3).forEach((strategy, at) => {
    assert.ok(blocks[at].startsWith(`${at + 1} ${strategy.name}, ${strategy.score} point`), blocks[at]);
    for (const { points, reason } of strategy.points) if (points !== 0) assert.ok(blocks[at].toLowerCase().includes(reason.replace("degC", "\u00b0C").toLowerCase()), `${strategy.name}: ${reason}`);
  });
  assert.equal(blocks.length, 3);
  assert.match(await day(page).innerText(), /The venue's rules come first/);
  await reload(page);
  await goTo(page, "day");
  await drawn(page);
  assert.match(await day(page).locator(".folded > summary").innerText(), /^roach, bream, winter, clear water, 6 \u00b0C/);
  assertQuiet(problems);
  await context.close();
});

test("one tap opens a strategy that is advised, and it stays among those of the page", async () => {
  const { page, context, problems } = await openDay("carpet");
  const best = record("advise", "--season", "autumn", "--depth", "2.5m", "--tow", "2cm/s", "--hours", "5h").strategies.slice(0, 3).map((one) => one.name);
  const other = best.find((name) => name !== "open carpet");
  await day(page).getByRole("button", { name: `Open ${other}` }).tap();
  assert.equal(await page.evaluate(() => bank.strategy.name), other);
  assert.ok(await page.locator("#place-mix").isVisible());
  await reload(page);
  assert.equal(await page.evaluate(() => bank.strategy.name), other);
  assert.equal(await page.getByRole("combobox", { name: "Strategy" }).inputValue(), other);
  await page.getByRole("combobox", { name: "Strategy" }).selectOption("open carpet");
  assert.equal(await page.evaluate(() => bank.strategy.name), "open carpet");
  await goTo(page, "day");
  await drawn(page);
  assert.equal(await day(page).getByRole("button", { name: "Open open carpet" }).count(), 0);
  assertQuiet(problems);
  await context.close();
});

test("a slip stands beside its field, and the last advice stays, greyed", async () => {
  const { page, context, problems } = await openDay("carpet");
  await day(page).locator(".folded > summary").click();
  const before = await day(page).locator(".block").allInnerTexts();
  for (const [label, slip, mended] of [["Depth", "deep", "2 m"], ["Tow", "90 m/s", "2 cm/s"], ["How long", "40 h", "5 h"], ["Water's warmth", "hot", "12"]]) {
    await fill(page, label, slip);
    assert.equal(await field(page, label).getAttribute("aria-invalid"), "true", label);
    assert.deepEqual(await day(page).locator(".block").allInnerTexts(), before, label);
    assert.ok(await day(page).locator(".advised.stale").isVisible(), label);
    await fill(page, label, mended);
    assert.equal(await day(page).locator(".stale").count(), 0, label);
  }
  assertQuiet(problems);
  await context.close();
});
