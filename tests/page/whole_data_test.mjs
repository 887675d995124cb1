// All data of a page: out as a file, in from one and put together with what is here, refused where it cannot be taken, and forgotten.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, kept, openBrowser, openPhone, reload, tap } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const notice = (page) => page.locator("#notice p").innerText();
const fault = (page) => page.locator(".whole .fault");

async function exported(page) {
  const [file] = await Promise.all([page.waitForEvent("download"), tap(page, "Export all data")]);
  assert.match(file.suggestedFilename(), /^bank-page-\d{4}-\d\d-\d\d\.json$/);
  return readFileSync(await file.path(), "utf8");
}

async function give(page, text) {
  await page.getByLabel("Bring data in from a file").evaluate((input, words) => {
    const given = new DataTransfer();
    given.items.add(new File([words], "data.json", { type: "application/json" }));
    input.files = given.files;
    input.dispatchEvent(new Event("change"));
  }, text);
}

/** Brings the file in, and gives what the page says came of it. */
async function bringIn(page, text) {
  await page.evaluate(() => [...messages].forEach(takeMessage));
  await give(page, text);
  await page.locator("#notice p").waitFor();
  assert.equal(await fault(page).isVisible(), false);
  return notice(page);
}

/** A page with something kept of two strategies. */
async function usedPage() {
  const phone = await openPhone(browser, "several");
  const { page } = phone;
  await page.evaluate(() => {
    const fish = (name) => bank.kept.notes.catches.push({ at: Date.now(), fish: name, count: 1, mass: "" });
    bank.kept.notes.note = "first, \"quoted\"";
    fish("bream");
    fish("roach");
    keepNow();
    openStrategy("tight balls", "notes");
    bank.kept.notes.note = "second \u{1f41f}";
    bank.kept.feed.start = Date.now() - 600000;
    for (let minute = 9; minute > 6; minute -= 1) bank.kept.feed.puts.push({ at: Date.now() - minute * 60000, of: "silt bed", feed: null });
    bank.shared.mixes.push({ name: "my silt", feel: "firm", parts: [{ of: "brown crumb", share: "1", mass: "" }] });
    bank.shared.prices.push({ of: "brown crumb", pack: "1 kg", price: "\u00a32.20", shop: "" });
    keepNow();
  });
  return phone;
}

const stateOf = (page, strategy) => page.evaluate((name) => {
  openStrategy(name, "notes");
  return JSON.parse(JSON.stringify({ own: bank.kept, shared: bank.shared }));
}, strategy);

test("what is exported comes in on another phone, whatever strategies its page has, and is known the second time", async () => {
  const { page, context, problems } = await usedPage();
  const text = await exported(page);
  assert.deepEqual(Object.keys(JSON.parse(text).strategies), ["open carpet", "tight balls"]);
  const first = await stateOf(page, "open carpet");
  await context.close();
  const other = await openPhone(browser, "carpet");
  await goTo(other.page, "notes");
  assert.equal(await bringIn(other.page, text), "3 put-ins, 2 fish, 2 notes, 1 mix and 1 price came in.");
  assert.deepEqual(await stateOf(other.page, "open carpet"), first);
  assert.equal(await bringIn(other.page, text), "No entry was new; 7 were known.");
  assert.match((await kept(other.page))["baitwright bank, tight balls"], /second .*puts|puts.*second /, "kept for a page that has this strategy");
  assertQuiet([...problems, ...other.problems]);
  await other.context.close();
});

test("a file that grew, here and there, is put together: the sum says so, and neither loses anything", async () => {
  const { page, context, problems } = await usedPage();
  const text = await exported(page);
  const other = await openPhone(browser, "several");
  await goTo(other.page, "notes");
  await bringIn(other.page, text);
  await other.page.evaluate(() => {
    openStrategy("tight balls", "notes");
    bank.kept.feed.puts.push({ at: Date.now(), of: "silt bed", feed: null });
    bank.kept.notes.catches.push({ at: Date.now(), fish: "tench", count: 1, mass: "" });
    keepNow();
  });
  const grown = await exported(other.page);
  await page.evaluate(() => {
    bank.kept.notes.catches.push({ at: Date.now(), fish: "rudd", count: 1, mass: "" });
    bank.kept.feed.puts = bank.kept.feed.puts.slice(1);  // taken back here
    keepNow();
  });
  assert.equal(await bringIn(page, grown), "1 put-in and 1 fish came in; 6 were known; 1 was taken out before and stays out.");
  const { own } = await stateOf(page, "tight balls");
  assert.deepEqual(own.notes.catches.map((one) => one.fish).sort(), ["rudd", "tench"]);
  assert.equal(own.feed.puts.length, 3);
  assert.equal(own.notes.note, "second \u{1f41f}");
  assertQuiet([...problems, ...other.problems]);
  await other.context.close();
  await context.close();
});

test("another session of the same strategy goes to those before, and is not mixed with the one here", async () => {
  const { page, context } = await usedPage();
  const text = await exported(page);
  const other = await openPhone(browser, "several");
  await other.page.evaluate(() => {
    openStrategy("tight balls", "notes");
    bank.kept.notes.note = "of this phone";
    bank.kept.feed.start = Date.now();
    keepNow();
  });
  await goTo(other.page, "notes");
  assert.match(await bringIn(other.page, text), /^2 fish, 1 note, 1 session before, 1 mix and 1 price came in\.$/);
  assert.match(await bringIn(other.page, text), /^No entry was new; 4 were known\.$/);
  const { own } = await stateOf(other.page, "tight balls");
  assert.equal(own.notes.note, "of this phone");
  assert.equal(own.feed.puts.length, 0);
  assert.deepEqual(own.past.map((one) => [one.note, one.puts.length]), [["second \u{1f41f}", 3]]);
  await other.context.close();
  await context.close();
});

test("a file that cannot be taken is an error with why, each its own, and changes nothing", async () => {
  const { page, context, problems } = await usedPage();
  await goTo(page, "notes");
  const text = await exported(page);
  const given = JSON.parse(text);
  const before = await kept(page);
  const strange = [
    [text.slice(0, text.length / 2), /cut short/], ["", /is empty/], [" \n", /is empty/],
    ...["null", "5", "[]", "{}", "no JSON", "\u0000\ufffd", "<html>", JSON.stringify({ ...given, baitwright_bank: "x" })].map((one) => [one, /is not the data of a bank page/]),
    ["# Notes\n[[session]]\non = 2026-11-22\n", /notes for the program/],
    [JSON.stringify({ ...given, baitwright_bank: 3 }), /of a newer page.*Make this page anew/],
    ...[null, [], "all"].map((one) => [JSON.stringify({ ...given, strategies: one }), /damaged/]),
    [JSON.stringify({ ...given, shared: [] }), /damaged/],
    [JSON.stringify({ baitwright_bank: 2, strategies: {} }), /holds nothing/],
    [`{"baitwright_bank": 2, "strategies": {}, "x": "${"x".repeat(5000000)}"}`, /larger than 5 MB/],
  ];
  for (const [file, why] of strange) {
    await give(page, file);
    await page.waitForFunction((words) => new RegExp(words).test(document.querySelector(".whole .fault").textContent), why.source);
    assert.match(await fault(page).innerText(), /^(That file|Those) /);
    assert.deepEqual(await kept(page), before, file.slice(0, 60));
    assert.ok(!(await page.locator("#notice").innerText()).includes("came in"), "it never says that anything came in");
    await page.evaluate(() => { document.querySelector(".whole .fault").textContent = ""; });
  }
  assertQuiet(problems);
  await context.close();
});

test("pieces of a file that are wrong are left out, said to be, and the others come in", async () => {
  const { page, context, problems } = await usedPage();
  const given = JSON.parse(await exported(page));
  const file = given.strategies["tight balls"];
  file.feed.puts = "many";
  file.feed.start = "noon";
  file.notes.catches.push({ at: null, fish: "carp", count: 1, mass: "", id: "zz9" }, { at: null, fish: "", count: 1e9, id: "zz8" });
  assert.equal(await bringIn(page, JSON.stringify(given)), "1 fish came in; 4 were known. Part of the file could not be read and was left out.");
  assert.equal((await stateOf(page, "tight balls")).own.feed.puts.length, 3, "what is here stays");
  assertQuiet(problems);
  await context.close();
});

test("names that mean something to a browser, and a hundred thousand entries, do no harm and take no time", async () => {
  const { page, context, problems } = await usedPage();
  const puts = Array.from({ length: 100000 }, (_, at) => ({ at: 1795000000000 + at, of: "silt bed", feed: null }));
  const whole = `{"baitwright_bank": 2, "shared": {"__proto__": {"last": "x"}, "constructor": 1, "mixes": [{"__proto__": {"name": "y"}, "name": "mine", "feel": "", "parts": []}]}, "strategies": {
    "__proto__": {"feed": {"puts": [{"at": 1795000000000}]}, "changes": {"when": {"__proto__": 1795000000000, "feed.start": 1e999}, "gone": ["__proto__", "x"]}},
    "constructor": {"notes": {"note": "n"}}, "tight balls": {"feed": {"puts": ${JSON.stringify(puts)}, "left": {"__proto__": "1 l", "toString": "2 l"}}}}}`;
  assert.ok(whole.length > 4000000 && whole.length < 5000000);
  const began = Date.now();
  assert.match(await bringIn(page, whole), /Part of the file could not be read and was left out/);
  assert.ok(Date.now() - began < 10000, `${Date.now() - began} ms`);
  assert.equal(await page.evaluate(() => ({}).last === undefined && ({}).name === undefined && Object.keys(Object.prototype).length), 0);
  await reload(page);
  await goTo(page, "feed");
  await drawn(page);
  assertQuiet(problems);
  await context.close();
});

test("the data of an earlier page's form come in too", async () => {
  const { page, context, problems } = await openPhone(browser, "several");
  await goTo(page, "notes");
  const old = JSON.stringify({
    baitwright_bank: 1, page: "0123456789abcdef", put_by: {},
    strategies: { "open carpet": { place: "feed", feed: { start: 1795000000000, puts: [{ at: 1795000000000, of: "", feed: 0 }, { at: 1795000060000, of: "", feed: null }] }, notes: { note: "from before", catches: [{ at: null, fish: "perch", count: 3, mass: "" }] } } },
  });
  assert.equal(await bringIn(page, old), "2 put-ins, 1 fish and 1 note came in.");
  assert.equal(await field(page, "Notes").inputValue(), "from before");
  assert.equal(await bringIn(page, old), "No entry was new; 3 were known.");
  assertQuiet(problems);
  await context.close();
});

test("a file for which there is no room is told of, and counts for this visit", async () => {
  const { page, context } = await usedPage();
  const text = await exported(page);
  const other = await openPhone(browser, "several");
  await goTo(other.page, "notes");
  await other.page.evaluate(() => { Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); }; });
  assert.match(await bringIn(other.page, text), /came in\. It counts for this visit only: the browser's room for pages is full\.$/);
  await other.context.close();
  await context.close();
});

test("all of these pages is forgotten on a second tap, and nothing else", async () => {
  const { page, context, problems } = await usedPage();
  await page.evaluate(() => localStorage.setItem("of another page", "stays"));
  const before = await kept(page);
  await tap(page, "Forget all of this page");
  assert.deepEqual(await kept(page), before);
  await tap(page, "Tap again: everything goes");
  await drawn(page);
  assert.equal(await notice(page), "All that this page had kept is gone.");
  assert.equal(await field(page, "Notes").inputValue(), "");
  assert.equal((await stateOf(page, "open carpet")).own.notes.note, "");
  const left = Object.values(await kept(page)).join("\n");
  assert.ok(left.includes("stays") && !left.includes("second") && !left.includes("first,") && !left.includes("my silt"), left);
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
