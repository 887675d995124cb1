// What the page keeps: for each strategy by its name, lived without where the browser refuses, and mended piece by piece.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { amountIn, assertQuiet, drawn, field, fill, goTo, kept, mixLitres, openBrowser, openLines, openPhone, openTab, placeNames, ready, reload, tap, told } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const strategy = (page) => page.getByRole("combobox", { name: "Strategy" });
const notice = (page) => page.locator("#notice p");
const dataOf = (page) => page.evaluate(() => ({ key: keyOf(bank.strategy.name), state: JSON.parse(JSON.stringify(bank.kept)) }));
const putBy = async (page) => Object.entries(await kept(page)).filter(([key]) => key.includes(" put by ")).map(([, text]) => text);

/** Every place, so that each reads what is kept of it. */
async function walk(page) {
  for (const place of placeNames) {
    await goTo(page, place);
    await drawn(page);
    assert.ok((await page.locator(`#place-${place} .content`).innerText()).length > 40, place);
  }
}

test("strategies of one page keep their own, and the one looked at last is there again", async () => {
  const { page, context, problems } = await openPhone(browser, "several");
  await mixLitres(page, "1.5 l");
  await goTo(page, "feed");
  await tap(page, "Start now");
  await page.locator(".put-in").tap();
  await strategy(page).selectOption("tight balls");
  assert.match(await told(page, "mix").innerText(), /^silt bed and casters, firm: 1\.4 l/);
  await goTo(page, "feed");
  assert.ok(await page.getByRole("button", { name: "Start now" }).isVisible());
  await goTo(page, "notes");
  await field(page, "Notes").fill("of tight balls");
  await page.reload();
  await page.locator("#place-notes .since").waitFor();
  assert.equal(await strategy(page).inputValue(), "tight balls");
  assert.equal(await field(page, "Notes").inputValue(), "of tight balls");
  await strategy(page).selectOption("open carpet");
  await goTo(page, "notes");
  assert.equal(await field(page, "Notes").inputValue(), "");
  await goTo(page, "feed");
  assert.match(await page.locator(".put-in").innerText(), /1/);
  assertQuiet(problems);
  await context.close();
});

test("a page made anew, with other strategies and of another day, finds what was kept of a strategy by its name", async () => {
  const { page, context, problems } = await openPhone(browser, "several");
  await goTo(page, "notes");
  await field(page, "Notes").fill("kept by name");
  await page.evaluate(() => keepNow());
  const other = await openTab(context, "carpet", { problems });
  assert.notEqual(await page.evaluate(() => bank.data.id), await other.evaluate(() => bank.data.id));
  assert.equal(await other.locator("#strategy").innerText(), "open carpet");
  await goTo(other, "notes");
  assert.equal(await field(other, "Notes").inputValue(), "kept by name");
  assertQuiet(problems);
  await context.close();
});

/** What a page kept under the name that it had by its digest. */
function oldPage(page, digest, strategy, state) {
  return page.addInitScript(([key, text]) => {
    if (sessionStorage.getItem(key)) return;  // before the first opening only
    sessionStorage.setItem(key, "done");
    localStorage.setItem(key, text);
  }, [`bank page ${digest}, ${strategy}`, JSON.stringify(state)]);
}

test("what earlier pages kept by their digest is taken over once: the latest goes on, the others are sessions before it", async () => {
  const first = Date.UTC(2026, 10, 14, 9), second = Date.UTC(2026, 10, 21, 9);
  const { page, context, problems } = await openPhone(browser, "carpet", {
    before: async (one) => {
      await oldPage(one, "00112233445566aa", "open carpet", { feed: { start: first, puts: [{ at: first, of: "silt bed", feed: 0 }] }, notes: { note: "the first", catches: [{ at: first, fish: "bream", count: 2, mass: "1 kg" }] } });
      await oldPage(one, "00112233445566bb", "open carpet", { feed: { start: second, puts: [{ at: second, of: "", feed: null }, { at: second + 60000, of: "", feed: null }] }, notes: { note: "the second" } });
      await oldPage(one, "00112233445566bb", "tight balls", { notes: { note: "of another strategy" } });
    },
  });
  const state = () => page.evaluate(() => JSON.parse(JSON.stringify(bank.kept)));
  const check = (kept) => {
    assert.equal(kept.notes.note, "the second");
    assert.equal(kept.notes.session, "00112233445566bb", "the mark by which the log knows it");
    assert.deepEqual(kept.feed.puts.map((put) => put.at), [second, second + 60000]);
    assert.deepEqual(kept.past.map((one) => [one.note, one.session, one.start, one.catches.length, one.puts.length]), [["the first", "00112233445566aa", first, 1, 1]]);
  };
  check(await state());
  await reload(page);
  check(await state());
  assert.deepEqual(Object.keys(await kept(page)).filter((key) => key.startsWith("bank page")), ["bank page 00112233445566bb, tight balls"], "another strategy's is taken over when that is opened");
  assertQuiet(problems);
  await context.close();
});

test("a store that was full before the page was opened is read, and said to be full", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "notes");
  await field(page, "Notes").fill("there before");
  await page.evaluate(() => keepNow());
  const other = await openTab(context, "carpet", { problems, before: (one) => one.addInitScript(fullStore) });
  assert.match(await notice(other).innerText(), /^Nothing new can be kept: the browser's room for pages is full/);
  await goTo(other, "notes");
  assert.equal(await field(other, "Notes").inputValue(), "there before");
  assertQuiet(problems);
  await context.close();
});

const refusals = {
  "that refuses its store altogether": () => Object.defineProperty(window, "localStorage", { get() { throw new DOMException("refused", "SecurityError"); } }),
  "that has no store": () => Object.defineProperty(window, "localStorage", { value: null }),
  "that lets nothing be written": () => { Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); }; },
};

for (const [name, refuse] of Object.entries(refusals)) {
  test(`a browser ${name} is told of in a line, and all goes on for this visit`, async () => {
    const { page, context, problems } = await openPhone(browser, "carpet", { before: (one) => one.addInitScript(refuse) });
    assert.equal(await notice(page).innerText(), "This browser keeps nothing for this page: all is gone when it is closed. Save your notes before.");
    await mixLitres(page, "2 l");
    assert.match(await told(page, "mix").innerText(), /2\.0 l/);
    await goTo(page, "feed");
    await tap(page, "Start now");
    await page.locator(".put-in").tap();
    await walk(page);
    await field(page, "Notes").fill("kept for now");
    await tap(page, "Save notes");
    assert.match(await page.getByLabel("Your notes as they are saved").inputValue(), /put_in[^]*kept for now|kept for now[^]*put_in/);
    await tap(page, "Forget all of this page");
    await tap(page, "Tap again: everything goes");
    assert.equal(await field(page, "Notes").inputValue(), "");
    assertQuiet(problems);
    await context.close();
  });
}

const fullStore = () => { Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); }; };

test("a store that fills up on the way is told of once, and nothing stops", async () => {
  const { page, context, problems } = await openPhone(browser, "several");
  await goTo(page, "notes");
  await field(page, "Notes").fill("there before");
  await page.evaluate(() => keepNow());
  const before = await kept(page);
  await page.evaluate(fullStore);
  await page.evaluate(() => {
    window.told = 0;
    const say = notice;
    notice = (...words) => {
      window.told += words[0].includes("could not be kept");
      say(...words);
    };
  });
  await goTo(page, "feed");
  await tap(page, "Start now");
  await notice(page).waitFor();
  assert.match(await notice(page).innerText(), /could not be kept/);
  await page.locator(".put-in").tap();
  assert.match(await page.locator(".put-in").innerText(), /1/);
  await strategy(page).selectOption("tight balls");
  await strategy(page).selectOption("open carpet");
  await goTo(page, "feed");
  assert.match(await page.locator(".put-in").innerText(), /1/, "what could not be written counts for this visit");
  assert.equal(await page.evaluate(() => window.told), 1);
  assert.deepEqual(await kept(page), before, "what was there is there");
  assertQuiet(problems);
  await context.close();
});

/** Opens the page with this text kept of its strategy. */
async function openWith(makeRaw) {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const { key, state } = await dataOf(page);
  const raw = makeRaw(state);
  await page.evaluate(([name, text]) => {
    keepNow = () => {};  // nothing of this visit is written over it
    localStorage.setItem(name, text);
  }, [key, raw]);
  await page.reload();
  await ready(page);
  return { page, context, problems, raw, key };
}

const broken = {
  "cut short": (state) => JSON.stringify(state).slice(0, -20),
  "no JSON": () => "<html>",
  "empty": () => "",
  "another kind": () => "[1,2,3]",
  "a number": () => "1e999",
  "deep": () => `${"[".repeat(3000)}${"]".repeat(3000)}`,
  "huge": () => JSON.stringify({ notes: { note: "x".repeat(3000000) } }),
  "a list too long": () => JSON.stringify({ feed: { puts: Array.from({ length: 5000 }, () => ({ at: 1795000000000, of: "", feed: null })) } }),
};

for (const [name, makeRaw] of Object.entries(broken)) {
  test(`a kept text that is broken (${name}) is told of, and its text put by whole`, async () => {
    const { page, context, problems, raw } = await openWith(makeRaw);
    await notice(page).waitFor();  // on a busy machine a moment after the page is ready
    assert.match(await notice(page).innerText(), /could not be read and was left out/);
    assert.deepEqual(await putBy(page), [raw]);
    await mixLitres(page, "2 l");
    await page.evaluate(() => keepNow());
    await reload(page);
    assert.equal(await notice(page).isVisible(), false, "said once");
    assert.equal(await page.evaluate(() => bank.kept.mix.litres), "2 l");
    assert.deepEqual(await putBy(page), [raw]);
    assertQuiet(problems);
    await context.close();
  });
}

test("of a kept text edited by hand, what is right stays and what is wrong goes", async () => {
  const { page, context, problems, raw } = await openWith((state) => {
    Object.assign(state.mix, { litres: "4 l", people: { much: 1 }, target: "barrels", feel: null });
    Object.assign(state.feed, { start: Date.now() - 3600000, bites: 7, left: { "silt bed": "1 l", other: ["x"], __proto__: 1 } });
    state.feed.puts = [{ at: Date.now() - 60000, of: "silt bed", feed: 0 }, { at: "noon" }, null, 5, { at: -1e300 }, { at: Date.now() - 30000, of: "", feed: "x" }];
    state.notes.catches = [{ at: null, fish: "bream", count: 2, mass: "1 kg" }, { fish: "", count: 1 }, { fish: "roach", count: 1e9 }];
    state.notes.note = "stays";
    state.timers = [{ pellet: "p", step: "boil", seconds: 5, ends: 1 }];
    state.soak = "wet";
    state.drop.depth = 2.5;
    return JSON.stringify({ ...state, unheard: "of" });
  });
  assert.match(await notice(page).innerText(), /could not be read/);
  assert.deepEqual(await putBy(page), [raw]);
  await openLines(page);
  await page.getByRole("radio", { name: "Litres", exact: true }).check();
  assert.equal(await amountIn(page, "How much, wet"), "4 l");
  await walk(page);
  assert.equal(await field(page, "Notes").inputValue(), "stays");
  assert.deepEqual(await page.locator(".entries li .words").allInnerTexts(), ["2 bream, 1 kg"]);
  await goTo(page, "feed");
  assert.match(await page.locator(".put-in").innerText(), /2/);
  await goTo(page, "drop");
  await openLines(page);
  assert.equal(await amountIn(page, "Depth"), "2.5 m");
  assertQuiet(problems);
  await context.close();
});

test("names, amounts and units that mean nothing do not stop a place", async () => {
  const { page, context, problems } = await openWith((state) => {
    Object.assign(state.mix, { of: "no such mix", feel: "wooden", litres: "lots", cups: "x", dry_of: "gold" });
    state.soak.pellets = [{ name: "no such pellet", amount: "5 bags" }];
    Object.assign(state.drop, { of: "no such mix", depth: "deep", feel: "wooden" });
    state.feed.left = { "no such feed": "1 l" };
    Object.assign(state.feed, { start: Date.now() - 3600000, people: "crowd" });
    Object.assign(state.notes, { people: "none", length: "ages", used: [{ of: "no such feed", amount: "5 bags" }] });
    return JSON.stringify(state);
  });
  await walk(page);
  await tap(page, "Save notes");
  assert.match(await page.locator("#place-notes .fault:visible").last().innerText(), /./);
  await goTo(page, "soak");
  assert.ok((await page.locator("#place-soak .content").innerText()).length > 20);
  assertQuiet(problems);
  await context.close();
});
