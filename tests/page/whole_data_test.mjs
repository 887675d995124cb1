// All data of a page: out as a file, back from one, refused where it is not whole or another's, and forgotten.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, kept, openBrowser, openPhone, tap } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const notice = (page) => page.locator("#notice").innerText();

async function exported(page) {
  const [file] = await Promise.all([page.waitForEvent("download"), tap(page, "Export all data")]);
  assert.match(file.suggestedFilename(), /^bank-page-[0-9a-f]+\.json$/);
  return readFileSync(await file.path(), "utf8");
}

async function bringBack(page, text) {
  await page.getByLabel("Bring data back from a file").setInputFiles({ name: "data.json", mimeType: "application/json", buffer: Buffer.from(text) });
  await page.locator("#notice").waitFor();
}

/** A page with something kept of two strategies. */
async function usedPage() {
  const phone = await openPhone(browser, "several");
  const { page } = phone;
  await goTo(page, "notes");
  await field(page, "Notes").fill("first, \"quoted\"");
  await page.getByRole("combobox", { name: "Strategy" }).selectOption("tight balls");
  await goTo(page, "notes");
  await field(page, "Notes").fill("second 🐟");
  await goTo(page, "feed");
  await tap(page, "Start now");
  await page.locator(".put-in").tap();
  await goTo(page, "notes");
  return phone;
}

async function noteOf(page, strategy) {
  await page.getByRole("combobox", { name: "Strategy" }).selectOption(strategy);
  await goTo(page, "notes");
  return field(page, "Notes").inputValue();
}

test("what is exported of all strategies is brought back on another phone of the same page", async () => {
  const { page, context, problems } = await usedPage();
  const text = await exported(page);
  assert.deepEqual(Object.keys(JSON.parse(text).strategies).sort(), ["open carpet", "tight balls"]);
  await context.close();
  const other = await openPhone(browser, "several");
  await goTo(other.page, "notes");
  await bringBack(other.page, text);
  assert.equal(await notice(other.page), "The data of the file is back.");
  assert.equal(await field(other.page, "Notes").inputValue(), "first, \"quoted\"");
  assert.equal(await noteOf(other.page, "tight balls"), "second 🐟");
  await goTo(other.page, "feed");
  assert.match(await other.page.locator(".put-in").innerText(), /1/);
  assertQuiet([...problems, ...other.problems]);
  await other.context.close();
});

test("what stood there before is put by when a file takes its place", async () => {
  const { page, context } = await usedPage();
  const text = await exported(page);
  await field(page, "Notes").fill("written after the export");
  await bringBack(page, text);
  assert.equal(await field(page, "Notes").inputValue(), "second 🐟");
  const putBy = Object.entries(await kept(page)).filter(([key]) => key.includes("put by"));
  assert.equal(putBy.length, 1);
  assert.equal(JSON.parse(putBy[0][1]).notes.note, "written after the export");
  assert.ok((await exported(page)).includes("written after the export"), "what is put by goes out with the rest");
  await context.close();
});

test("a file that is not whole, or not of this page, is refused and nothing is lost", async () => {
  const { page, context, problems } = await usedPage();
  const text = await exported(page);
  const before = await kept(page);
  const given = JSON.parse(text);
  const strange = [
    text.slice(0, text.length / 2), "", "null", "5", "[]", "{}", "no JSON", "\u0000\ufffd", JSON.stringify({ ...given, page: "0" }), JSON.stringify({ ...given, baitwright_bank: 2 }),
    JSON.stringify({ ...given, strategies: null }), JSON.stringify({ ...given, strategies: [] }), JSON.stringify({ ...given, strategies: { "cold water": {} } }),
  ];
  for (const file of strange) {
    await bringBack(page, file);
    assert.match(await notice(page), /^That file (is|holds) /, file.slice(0, 60));
    assert.deepEqual(await kept(page), before, file.slice(0, 60));
    assert.equal(await field(page, "Notes").inputValue(), "second 🐟");
    await page.evaluate(() => { document.getElementById("notice").hidden = true; });
  }
  assertQuiet(problems);
  await context.close();
});

test("pieces of a file that are wrong are left out, the others come back", async () => {
  const { page, context, problems } = await usedPage();
  const given = JSON.parse(await exported(page));
  given.strategies["tight balls"].feed.puts = "many";
  given.strategies["tight balls"].notes.note = "from the file";
  await bringBack(page, JSON.stringify(given));
  assert.equal(await field(page, "Notes").inputValue(), "from the file");
  await goTo(page, "feed");
  assert.match(await page.locator(".put-in").innerText(), /none yet/);
  const putBy = Object.values(Object.fromEntries(Object.entries(await kept(page)).filter(([key]) => key.includes("put by"))));
  assert.ok(putBy.some((one) => JSON.parse(one).feed.puts === "many"), "the text that was read in part is put by");
  assertQuiet(problems);
  await context.close();
});

test("all of this page is forgotten on a second tap, and of no other", async () => {
  const { page, context, problems } = await usedPage();
  await page.evaluate(() => localStorage.setItem("of another page", "stays"));
  const before = await kept(page);
  await tap(page, "Forget all of this page");
  assert.deepEqual(await kept(page), before);
  await tap(page, "Tap again: everything goes");
  await drawn(page);
  assert.equal(await notice(page), "All that this page had kept is gone.");
  assert.equal(await field(page, "Notes").inputValue(), "");
  assert.equal(await noteOf(page, "open carpet"), "");
  const left = Object.values(await kept(page)).join("\n");
  assert.ok(left.includes("stays") && !left.includes("second") && !left.includes("first,"), left);
  assertQuiet(problems);
  await context.close();
});

test("one tap alone forgets nothing, and the button calms down", async () => {
  const { page, context } = await openPhone(browser, "carpet", { before: (one) => one.clock.install({ time: new Date("2026-11-28T12:00:00Z") }) });
  await goTo(page, "notes");
  await fill(page, "Notes", "stays");
  await tap(page, "Forget all of this page");
  await page.clock.fastForward("00:06");
  await tap(page, "Forget all of this page");
  assert.equal(await field(page, "Notes").inputValue(), "stays");
  await context.close();
});
