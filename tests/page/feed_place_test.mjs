// Feed: the session by the wall clock, what has gone in, what goes in next, and what is left.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { amountIn, assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, reload, tap } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

/** A phone in the winter of the prime meridian, so that its clock shows UTC. */
const phoneAt = (clock, name = "carpet") => openPhone(browser, name, { before: (page) => page.clock.install({ time: new Date(`2026-11-28T${clock}Z`) }) });
const putIn = (page) => page.locator(".put-in");
const place = (page) => page.locator("#place-feed");
const words = async (page, selector) => (await place(page).locator(selector).allInnerTexts()).map((text) => text.replace(/\s+/g, " ").trim());
const feeds = (page) => words(page, ".timeline li");
const left = (page) => place(page).locator(".part").filter({ has: page.getByRole("heading", { name: "What is left?", exact: true }) });

async function startAt(page, clock) {
  await goTo(page, "feed");
  await place(page).getByLabel("First put-in at").fill(clock);
  await tap(page, "Start at that time");
  await drawn(page);
}

// The plan of this strategy, from `baitwright plan "open carpet" --start 09:30`: silt bed at the start, then a ball of pellets
// 60 min after it and every 40 min from there, six times.
test("a session starts now, to the minute, and the plan is told by its clock", async () => {
  const { page, context, problems } = await phoneAt("11:20:40");
  await goTo(page, "feed");
  assert.match(await place(page).innerText(), /open carpet, 5 h, from 09:30 to 14:30/);
  assert.equal(await putIn(page).isVisible(), false);
  await tap(page, "Start now");
  await drawn(page);
  assert.match(await place(page).innerText(), /Started at 11:20, just now; ends at 16:20\./);
  assert.match(await place(page).innerText(), /open carpet, 5 h, from 11:20 to 16:20/);
  const shown = await feeds(page);
  assert.equal(shown.length, 7);
  assert.equal(shown[0], "11:20 3 cups of 250 ml, silt bed due");
  assert.equal(shown[1], "12:20 1 ball of 45 mm, fishmeal micro pellet 2 mm");
  assert.equal(shown[6], "15:40 1 ball of 45 mm, fishmeal micro pellet 2 mm");
  assertQuiet(problems);
  await context.close();
});

test("a session starts at a typed clock, before it or after it, and a clock that is none is told", async () => {
  const { page, context, problems } = await phoneAt("08:00:00");
  await startAt(page, "");
  assert.match(await place(page).locator(".fault:visible").innerText(), /such as 09:30/);
  await startAt(page, "09:30");
  assert.match(await place(page).innerText(), /Starts at 09:30, in 1 h 30 min; ends at 14:30\./);
  assert.match(await place(page).innerText(), /Next feed in 1 h 30 min: 3 cups of 250 ml, silt bed/);
  await tap(page, "How to spread it");
  assert.match(await left(page).innerText(), /the session has not begun/);
  await tap(page, "Another start");
  await tap(page, "Tap again: the put-ins so far go");
  await startAt(page, "07:15");
  assert.match(await place(page).innerText(), /Started at 07:15, 45 min ago; ends at 12:15\./);
  assertQuiet(problems);
  await context.close();
});

test("a press counts, tells how long ago the last was, and is undone", async () => {
  const { page, context, problems } = await phoneAt("11:20:00");
  await goTo(page, "feed");
  await tap(page, "Start now");
  assert.equal((await putIn(page).innerText()).replace(/\s+/g, " "), "Put in 0 none yet");
  assert.equal(await page.getByRole("button", { name: "Undo the last" }).isDisabled(), true);
  await putIn(page).tap();
  await page.clock.fastForward("03:00");
  await putIn(page).tap();
  await page.clock.fastForward("02:00");
  assert.equal((await putIn(page).innerText()).replace(/\s+/g, " "), "Put in 2 last 2 min ago, at 11:23");
  await tap(page, "Undo the last");
  assert.equal((await putIn(page).innerText()).replace(/\s+/g, " "), "Put in 1 last 5 min ago, at 11:20");
  await reload(page);
  assert.equal((await putIn(page).innerText()).replace(/\s+/g, " "), "Put in 1 last 5 min ago, at 11:20");
  const box = await putIn(page).boundingBox();
  assert.ok(box.height >= 150 && box.width >= 300, JSON.stringify(box));
  assertQuiet(problems);
  await context.close();
});

test("a feed is ticked off, counts as a put-in, and stays so after a reload", async () => {
  const { page, context, problems } = await phoneAt("09:35:00");
  await startAt(page, "09:30");
  assert.match(await place(page).innerText(), /Due 5 min ago: 3 cups of 250 ml, silt bed/);
  await place(page).locator(".timeline input").first().check();
  assert.equal(await place(page).locator(".due").isVisible(), false);
  assert.equal((await feeds(page))[0], "09:30 3 cups of 250 ml, silt bed in at 09:35");
  await reload(page);
  assert.equal(await place(page).locator(".timeline input").first().isChecked(), true);
  assert.match(await putIn(page).innerText(), /1/);
  await place(page).locator(".timeline input").first().uncheck();
  assert.equal((await feeds(page))[0], "09:30 3 cups of 250 ml, silt bed due");
  assert.match(await putIn(page).innerText(), /none yet/);
  assertQuiet(problems);
  await context.close();
});

test("the next feed is counted down by the wall clock, while the page sleeps too", async () => {
  const { page, context, problems } = await phoneAt("10:18:00");
  await startAt(page, "09:30");
  const next = () => place(page).locator(".next").innerText();
  assert.equal(await next(), "Next feed in 12 min: 1 ball of 45 mm, fishmeal micro pellet 2 mm");
  await page.clock.fastForward("11:10");
  assert.match(await next(), /^Next feed in [1-5]?[0-9] s: 1 ball of 45 mm, fishmeal micro pellet 2 mm$/);
  await page.clock.fastForward("00:50");
  assert.equal(await place(page).locator(".due").innerText(), "Due just now: 1 ball of 45 mm, fishmeal micro pellet 2 mm");
  assert.equal(await next(), "Next feed in 40 min: 1 ball of 45 mm, fishmeal micro pellet 2 mm");
  await page.clock.fastForward("04:30:00");
  assert.equal(await next(), "No more feeds in the plan.");
  assert.match(await place(page).innerText(), /over since 14:30/);
  await tap(page, "How to spread it");
  assert.match(await left(page).innerText(), /the session is over/);
  assertQuiet(problems);
  await context.close();
});

test("two feeds of the same minute are told together, and of a long plan those about now are in sight", async () => {
  const { page, context, problems } = await phoneAt("09:00:00", "several");
  await page.getByRole("combobox", { name: "Strategy" }).selectOption("little and often");
  await startAt(page, "10:00");
  assert.equal(await place(page).locator(".next").innerText(), "Next feed in 1 h: 5 ml loose, maggots; and 1 ball of 30 mm, songbird");
  await page.clock.fastForward("02:00:00");
  await reload(page);
  const about = await feeds(page);
  assert.equal(about.length, 6);
  assert.ok(about[0].startsWith("10:5") && about[5].startsWith("11:0"), about.join("\n"));
  await tap(page, "All 186 feeds");
  assert.equal((await feeds(page)).length, 186);
  assertQuiet(problems);
  await context.close();
});

test("a session passes midnight", async () => {
  const { page, context, problems } = await phoneAt("22:00:00");
  await startAt(page, "23:30");
  assert.equal((await feeds(page))[1].slice(0, 5), "00:30");
  await page.clock.fastForward("02:40:00");
  assert.match(await place(page).innerText(), /Started at 23:30, 1 h 10 min ago; ends at 04:30\./);
  assert.match(await place(page).innerText(), /Due 10 min ago: 1 ball/);
  await putIn(page).tap();
  assert.match(await putIn(page).innerText(), /last just now, at 00:40/);
  await fill(page, "silt bed", "1.5 l");
  await tap(page, "How to spread it");
  assert.match(await left(page).innerText(), /open carpet, 00:40: 3 h 50 min left/);
  await tap(page, "Another start");
  await tap(page, "Tap again: the put-ins so far go");
  await startAt(page, "23:50");
  assert.match(await place(page).innerText(), /Started at 23:50, 50 min ago/);
  assertQuiet(problems);
  await context.close();
});

test("what is left is spread by the bites, and the amounts are kept", async () => {
  const { page, context, problems } = await phoneAt("11:20:00");
  await startAt(page, "09:30");
  await fill(page, "silt bed", "1.5");
  const answers = {};
  for (const bites of ["slow", "steady", "none"]) {
    await left(page).getByRole("radio", { name: bites, exact: true }).check();
    await tap(page, "How to spread it");
    answers[bites] = await left(page).locator(".told").innerText();
    assert.match(answers[bites], /open carpet, 11:20: 3 h 10 min left/);
    assert.match(answers[bites], /Silt bed: about 1\.5 l left/);
  }
  assert.equal(new Set(Object.values(answers)).size, 3, "the answer hangs on the bites");
  await reload(page);
  assert.equal(await amountIn(page, "silt bed"), "1.5 l");
  assert.equal(await left(page).getByRole("radio", { name: "none", exact: true }).isChecked(), true);
  assertQuiet(problems);
  await context.close();
});

test("a slip in what is left stands beside its field, and the last answer stays", async () => {
  const { page, context, problems } = await phoneAt("11:20:00");
  await startAt(page, "09:30");
  await fill(page, "silt bed", "1 l");
  await tap(page, "How to spread it");
  const good = await left(page).locator(".told").innerText();
  await fill(page, "silt bed", "half a tub");
  await tap(page, "How to spread it");
  const wrong = field(page, "silt bed");
  assert.equal(await wrong.getAttribute("aria-invalid"), "true");
  assert.match(await page.locator(`#${await wrong.getAttribute("aria-describedby")}`).innerText(), /half a tub/);
  assert.equal(await left(page).locator(".told").innerText(), good);
  await fill(page, "silt bed", "1200 g");
  await tap(page, "How to spread it");
  assert.equal(await wrong.getAttribute("aria-invalid"), null);
  assert.match(await left(page).locator(".told").innerText(), /1200 g/);
  assertQuiet(problems);
  await context.close();
});
