// Feed: the session by the wall clock, what goes in now and next, what has gone in, and what is left.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { amountIn, assertQuiet, drawn, field, fill, goTo, kept, openBrowser, openPhone, reload, tap } from "./browser.mjs";
import { beeps, locks, withSounds, withWakeLock } from "./phone_parts.mjs";
import { programSays } from "./program.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

/** A phone in the winter of the prime meridian, so that its clock shows UTC; or on another day. */
const phoneAt = (clock, name = "carpet", { parts = [], day = "2026-11-28" } = {}) => openPhone(browser, name, {
  before: async (page) => {
    await page.clock.install({ time: new Date(`${day}T${clock}Z`) });
    for (const part of parts) await part(page);
  },
});
const putIn = (page) => page.locator(".put-in");
const place = (page) => page.locator("#place-feed");
const message = (page) => page.locator("#notice");
const plain = async (locator) => (await locator.innerText()).replace(/\s+/g, " ").trim();
const words = async (page, selector) => (await place(page).locator(selector).allInnerTexts()).map((text) => text.replace(/\s+/g, " ").trim());
const feeds = (page) => words(page, ".timeline li");
const part = (page, name) => place(page).locator(".part").filter({ has: page.getByRole("heading", { name, exact: true }) });
const bites = (page) => part(page, "How do they bite?");
const openLine = (page, text) => place(page).locator("summary").filter({ hasText: text }).first().tap();
const strategy = (page) => page.getByRole("combobox", { name: "Strategy" });
const puts = async (page, name) => JSON.parse((await kept(page))[`baitwright bank, ${name}`]).feed.puts.map(({ of, feed }) => ({ of, feed }));

async function startAt(page, clock) {
  await goTo(page, "feed");
  await place(page).getByLabel("Or first put-in at").fill(clock);
  await tap(page, "Start at that time");
  await drawn(page);
}

async function pressAt(page, clock) {
  await page.clock.setSystemTime(new Date(`2026-11-28T${clock}Z`));
  await page.clock.runFor(1000);
  await putIn(page).tap();
}

async function startAnew(page) {
  await tap(page, "Another start");
  await tap(page, "Tap again: the put-ins so far go");
}

const bed = "3 cups of 250 ml, silt bed", ball = "1 ball of 45 mm, fishmeal micro pellet 2 mm";

test("before a session Feed shows when to start and the plan, as the program tells it", async () => {
  const { page, context, problems } = await phoneAt("08:00:00");
  await goTo(page, "feed");
  await drawn(page);
  assert.equal(await putIn(page).isVisible(), false);
  const told = programSays("plan", "open carpet", "--start", "09:30");
  const shown = await plain(place(page).locator(".told").last());
  for (const line of ["pour 315 ml on fishmeal micro pellet 2 mm", "open carpet, 5 h, from 09:30 to 14:30", told.match(/Carry .*? Goes in/)[0].slice(6, -8)]) assert.ok(shown.includes(line), `${line}\n${shown}`);
  assertQuiet(problems);
  await context.close();
});

test("a session starts now, to the minute, and its feeds are the program's by its clock", async () => {
  const { page, context, problems } = await phoneAt("11:20:40");
  await goTo(page, "feed");
  await tap(page, "Start now");
  await drawn(page);
  assert.match(await plain(place(page)), /Started at 11:20, just now; ends at 16:20\./);
  const planned = programSays("plan", "open carpet", "--start", "11:20", "--json").feeds;
  const shown = await feeds(page);
  assert.deepEqual(shown.map((line) => line.slice(0, 5)), planned.map((feed) => feed.clock));
  planned.forEach((feed, at) => assert.ok(shown[at].includes(`, ${feed.of}`) && shown[at].includes(` ${feed.count} `), shown[at]));
  assert.equal(shown[0], `11:20 ${bed} due`);
  assert.equal(shown[6], `15:40 ${ball}`);
  await openLine(page, "The whole plan");
  assert.match(await plain(place(page)), /open carpet, 5 h, from 11:20 to 16:20/);
  assertQuiet(problems);
  await context.close();
});

test("the first screen is what is due, what comes next and the big button, all above the bar", async () => {
  const { page, context, problems } = await phoneAt("09:31:00");
  await startAt(page, "09:30");
  const bar = (await page.locator("nav").boundingBox()).y;
  for (const one of [place(page).locator(".due"), place(page).locator(".next"), putIn(page)]) {
    const box = await one.boundingBox();
    assert.ok(box.y + box.height <= bar, JSON.stringify(box));
  }
  assert.ok((await place(page).locator(".coming").boundingBox()).y < (await putIn(page).boundingBox()).y);
  assertQuiet(problems);
  await context.close();
});

test("a session starts at a typed clock, before it or after it, and a clock that is none is told", async () => {
  const { page, context, problems } = await phoneAt("08:00:00");
  await startAt(page, "");
  assert.match(await place(page).locator(".fault:visible").innerText(), /such as 09:30/);
  await startAt(page, "09:30");
  assert.match(await plain(place(page)), /Starts at 09:30, in 1 h 30 min; ends at 14:30\./);
  assert.equal(await plain(place(page).locator(".next")), `Next in 1 h 30 min: ${bed}`);
  assert.equal(await bites(page).isVisible(), false, "nothing is asked of bites before the start");
  await startAnew(page);
  await startAt(page, "07:15");
  assert.match(await plain(place(page)), /Started at 07:15, 45 min ago; ends at 12:15\./);
  assertQuiet(problems);
  await context.close();
});

test("Put in takes the feed that is due, else the next one within two minutes, else once more what went in last", async () => {
  const { page, context, problems } = await phoneAt("09:35:00");
  await startAt(page, "09:30");
  assert.equal(await plain(putIn(page)), `Put in ${bed} 0 none yet`);
  await putIn(page).tap();
  assert.equal((await feeds(page))[0], `09:30 ${bed} in at 09:35`);
  assert.equal(await place(page).locator(".due").isVisible(), false);
  await pressAt(page, "10:00:00");
  await pressAt(page, "10:28:30");
  assert.equal((await feeds(page))[1], `10:30 ${ball} in at 10:28`);
  await pressAt(page, "11:20:00");
  await page.clock.runFor(2000);
  assert.deepEqual(await puts(page, "open carpet"), [
    { of: "silt bed", feed: 0 }, { of: "silt bed", feed: null }, { of: "fishmeal micro pellet 2 mm", feed: 1 }, { of: "fishmeal micro pellet 2 mm", feed: 2 },
  ]);
  assert.equal(await plain(place(page).locator(".next")), `Next in 30 min: ${ball}`);
  assertQuiet(problems);
  await context.close();
});

test("two quick taps count once, two slow ones twice", async () => {
  const { page, context, problems } = await phoneAt("10:00:00");
  await startAt(page, "09:30");
  await putIn(page).dblclick();
  assert.match(await plain(putIn(page)), / 1 last just now/);
  await page.clock.runFor(1600);
  await putIn(page).tap();
  assert.match(await plain(putIn(page)), / 2 last just now/);
  assertQuiet(problems);
  await context.close();
});

test("a put-in is taken back from its message, and from under the button after that", async () => {
  const { page, context, problems } = await phoneAt("09:35:00");
  await startAt(page, "09:30");
  await putIn(page).tap();
  assert.match(await plain(message(page)), /In at 09:35: 3 cups of 250 ml, silt bed\./);
  await message(page).getByRole("button", { name: "Take back" }).tap();
  assert.match(await plain(putIn(page)), /none yet/);
  assert.equal((await feeds(page))[0], `09:30 ${bed} due`);
  await page.clock.runFor(2000);
  await putIn(page).tap();
  await page.clock.runFor(9000);
  assert.equal(await message(page).isVisible(), false, "a message goes when it is old");
  await reload(page);
  await tap(page, "Take back the last");
  assert.match(await plain(putIn(page)), /none yet/);
  await reload(page);
  assert.match(await plain(putIn(page)), /none yet/);
  assertQuiet(problems);
  await context.close();
});

test("a press tells how long ago the last was, and stays so after a reload", async () => {
  const { page, context, problems } = await phoneAt("11:20:00");
  await goTo(page, "feed");
  await tap(page, "Start now");
  await putIn(page).tap();
  await page.clock.fastForward("03:00");
  await putIn(page).tap();
  await page.clock.fastForward("02:00");
  assert.equal(await plain(putIn(page)), "Put in once more, silt bed 2 last 2 min ago, at 11:23");
  await reload(page);
  assert.equal(await plain(putIn(page)), "Put in once more, silt bed 2 last 2 min ago, at 11:23");
  const box = await putIn(page).boundingBox();
  assert.ok(box.height >= 150 && box.width >= 300, JSON.stringify(box));
  assertQuiet(problems);
  await context.close();
});

test("a feed is ticked off, counts as a put-in, and stays so after a reload", async () => {
  const { page, context, problems } = await phoneAt("09:35:00");
  await startAt(page, "09:30");
  assert.equal(await plain(place(page).locator(".due")), `Now, due 5 min ago: ${bed}`);
  await place(page).locator(".timeline input").first().check();
  assert.equal(await place(page).locator(".due").isVisible(), false);
  await reload(page);
  assert.equal(await place(page).locator(".timeline input").first().isChecked(), true);
  assert.match(await plain(putIn(page)), / 1 last/);
  await place(page).locator(".timeline input").first().uncheck();
  assert.equal((await feeds(page))[0], `09:30 ${bed} due`);
  assert.match(await plain(putIn(page)), /none yet/);
  assertQuiet(problems);
  await context.close();
});

test("the next feed is counted down by the wall clock, while the page sleeps too", async () => {
  const { page, context, problems } = await phoneAt("10:18:00");
  await startAt(page, "09:30");
  await putIn(page).tap();
  const next = () => plain(place(page).locator(".next"));
  assert.equal(await next(), `Next in 12 min: ${ball}`);
  await page.clock.fastForward("11:10");
  assert.match(await next(), /^Next in [1-5]?[0-9] s: 1 ball of 45 mm, fishmeal micro pellet 2 mm$/);
  await page.clock.fastForward("00:51");
  assert.equal(await plain(place(page).locator(".due")), `Now: ${ball}`);
  assert.equal(await next(), `Then in 40 min: ${ball}`);
  assertQuiet(problems);
  await context.close();
});

test("what was not put in by its time is missed, in one quiet line, and a session that ended is over", async () => {
  const { page, context, problems } = await phoneAt("09:30:00");
  await startAt(page, "09:30");
  await page.clock.fastForward("01:15:00");
  assert.equal(await plain(place(page).locator(".due")), `Now, due 15 min ago: ${ball}`);
  assert.match(await plain(place(page).locator(".coming")), /Missed: 09:30\./);
  await page.clock.fastForward("01:20:00");
  assert.match(await plain(place(page).locator(".coming")), /Missed: 09:30, 10:30, 11:10\./);
  assert.equal((await place(page).innerText()).match(/due .* ago/g).length, 1);
  await putIn(page).tap();
  await page.clock.fastForward("03:00:00");
  assert.match(await plain(place(page)), /^Feed Over since 14:30: 1 put-in, 1 of the 7 planned\. Another session/);
  assert.equal(await place(page).locator(".coming").isVisible(), false);
  assert.equal(await bites(page).isVisible(), false);
  await page.clock.fastForward("42:00:00");
  await reload(page);
  assert.match(await plain(place(page)), /^Feed Over since 14:30 on 2026-11-28: 1 put-in/);
  assert.doesNotMatch(await plain(place(page)), /\bdue\b|\bmissed\b/i);
  assert.equal(await putIn(page).isVisible(), false);
  await tap(page, "Another session");
  await drawn(page);
  assert.ok(await place(page).getByRole("button", { name: "Start now" }).isVisible());
  const { feed, past } = JSON.parse((await kept(page))["baitwright bank, open carpet"]);
  assert.deepEqual([feed.puts, feed.start, past.map((one) => one.puts.map((put) => put.feed))], [[], null, [[3]]], "the session that is over is kept");
  assertQuiet(problems);
  await context.close();
});

test("what the plan keeps for slow bites goes in by one tap, and stands in the notes by its name", async () => {
  const mix = `<script>document.title = 1 & "crème" 'brûlée'`;
  const { page, context, problems } = await phoneAt("12:00:00", "names");
  await goTo(page, "feed");
  await tap(page, "Start now");
  const top = bites(page).getByRole("button", { name: `Put in 1 ball of 40 mm, ${mix}`, exact: true });
  await top.dblclick();
  assert.match(await plain(putIn(page)), / 1 last just now/);
  assert.deepEqual(await puts(page, `żółw & <b>"bold" 'ñandú'`), [{ of: mix, feed: null }]);
  assert.equal((await feeds(page))[0].endsWith(" due"), true);
  assertQuiet(problems);
  await context.close();
});

test("a feed that comes due rings once, in another place and with another strategy open, lower than a timer", async () => {
  const { page, context, problems } = await phoneAt("10:28:00", "several", { parts: [withSounds] });
  await startAt(page, "09:30");
  await putIn(page).tap();
  await page.clock.runFor(2000);
  assert.deepEqual(await beeps(page), [], "what was due before does not ring");
  await strategy(page).selectOption("tight balls");
  await goTo(page, "mix");
  await page.clock.runFor(125000);
  assert.deepEqual(await beeps(page), [587, 587]);
  assert.match(await plain(message(page)), /Put in now: 1 ball of 45 mm, fishmeal micro pellet 2 mm\./);
  await message(page).getByRole("button", { name: "Go to Feed" }).tap();
  assert.equal(await strategy(page).inputValue(), "open carpet");
  assert.match(await plain(place(page).locator(".due")), /1 ball of 45 mm/);
  await page.clock.runFor(5000);
  assert.deepEqual(await beeps(page), []);
  await reload(page);
  await page.clock.runFor(5000);
  assert.deepEqual(await beeps(page), []);
  assertQuiet(problems);
  await context.close();
});

test("feeds that are to be quiet do not ring, and one that went in early does not either", async () => {
  const { page, context, problems } = await phoneAt("10:29:00", "carpet", { parts: [withSounds] });
  await startAt(page, "09:30");
  await putIn(page).tap();
  await page.clock.runFor(2000);
  await putIn(page).tap();
  assert.match((await feeds(page))[1], /in at 10:29/);
  await page.clock.runFor(65000);
  assert.deepEqual(await beeps(page), []);
  await openLine(page, "feeds ring");
  await place(page).getByRole("radio", { name: "Quiet" }).check();
  await drawn(page);
  await page.clock.fastForward("39:00");
  await page.clock.runFor(30000);
  assert.match(await plain(place(page).locator(".due")), /^Now/);
  assert.deepEqual(await beeps(page), []);
  await place(page).getByRole("radio", { name: "Ring" }).check();
  await drawn(page);
  await page.clock.fastForward("39:30");
  await page.clock.runFor(60000);
  assert.deepEqual(await beeps(page), [587, 587]);
  assertQuiet(problems);
  await context.close();
});

test("the screen stays awake for as long as a session runs", async () => {
  const { page, context, problems } = await phoneAt("09:29:00", "carpet", { parts: [withWakeLock] });
  await startAt(page, "09:30");
  await page.clock.runFor(2000);
  assert.deepEqual(await locks(page), { asked: 0, held: 0 });
  await page.clock.runFor(60000);
  assert.deepEqual(await locks(page), { asked: 1, held: 1 });
  await page.clock.fastForward("05:00:00");
  await page.clock.runFor(2000);
  assert.deepEqual(await locks(page), { asked: 1, held: 0 });
  assertQuiet(problems);
  await context.close();
});

test("two feeds of the same minute are told together, and of a long plan those about now are in sight", async () => {
  const { page, context, problems } = await phoneAt("09:00:00", "several");
  await strategy(page).selectOption("little and often");
  await startAt(page, "10:00");
  assert.equal(await plain(place(page).locator(".next")), "Next in 1 h: 5 ml loose, maggots; and 1 ball of 30 mm, songbird");
  await page.clock.fastForward("02:00:00");
  await reload(page);
  const about = await feeds(page);
  assert.equal(about.length, 6);
  assert.ok(about[0].startsWith("10:5") && about[5].startsWith("11:0"), about.join("\n"));
  assert.match(await plain(place(page).locator(".coming")), /Missed: [0-9]+ feeds, from 10:00 to 10:5[0-9]\./);
  await tap(page, "All 186 feeds");
  assert.equal((await feeds(page)).length, programSays("plan", "little and often", "--json").feeds.length);
  assertQuiet(problems);
  await context.close();
});

test("a session passes midnight", async () => {
  const { page, context, problems } = await phoneAt("22:00:00");
  await startAt(page, "23:30");
  assert.equal((await feeds(page))[1].slice(0, 5), "00:30");
  await page.clock.fastForward("02:40:00");
  assert.match(await plain(place(page)), /Started at 23:30, 1 h 10 min ago; ends at 04:30\./);
  assert.equal(await plain(place(page).locator(".due")), `Now, due 10 min ago: ${ball}`);
  await putIn(page).tap();
  assert.match(await plain(putIn(page)), /last just now, at 00:40/);
  assert.match(await plain(bites(page)), /open carpet, 00:40: 3 h 50 min left/);
  await startAnew(page);
  await startAt(page, "23:50");
  assert.match(await plain(place(page)), /Started at 23:50, 50 min ago/);
  assertQuiet(problems);
  await context.close();
});

test("a night in which the clocks go back moves no feed", async () => {
  const { page, context, problems } = await phoneAt("23:20:00", "carpet", { day: "2026-10-24" });  // 00:20, summer time; at 02:00 it is 01:00 again
  await startAt(page, "00:30");
  await putIn(page).tap();
  await page.clock.fastForward("01:10:00");
  assert.equal(await plain(place(page).locator(".due")), `Now: ${ball}`);
  await putIn(page).tap();
  assert.match(await plain(putIn(page)), /last just now, at 01:30/);
  assert.equal(await plain(place(page).locator(".next")), `Next in 40 min: ${ball}`);
  assert.deepEqual((await feeds(page)).map((line) => line.slice(0, 5)), ["00:30", "01:30", "01:10", "01:50", "02:30", "03:10", "03:50"]);
  assertQuiet(problems);
  await context.close();
});

test("what is left is spread by the bites as the program spreads it, what to put in first, and the amounts are kept", async () => {
  const { page, context, problems } = await phoneAt("11:20:00");
  await startAt(page, "09:30");
  await openLine(page, "Say what is left");
  await fill(page, "silt bed", "1.5");
  for (const word of ["slow", "steady", "none"]) {
    await bites(page).getByRole("radio", { name: word, exact: true }).check();
    await drawn(page);
    const shown = await plain(bites(page).locator(".told"));
    const told = programSays("plan", "open carpet", "--start", "09:30", "--now", "11:20", "--left", "1.5 l silt bed", "--bites", word);
    const lines = told.match(/(Put in|Top up|Then|Spare|Left|Advice|How sure) .*?(?= (Put in|Top up|Then|Spare|Left|Advice|How sure) |$)/g);
    for (const line of lines) assert.ok(shown.includes(line), `${line}\n${shown}`);
    if (word === "slow") assert.match(shown, /^open carpet, 11:20: 3 h 10 min left Top up .* Spare .* Left /);
  }
  await reload(page);
  await openLine(page, "1.5 l silt bed left");
  assert.equal(await amountIn(page, "silt bed"), "1.5 l");
  assert.equal(await bites(page).getByRole("radio", { name: "none", exact: true }).isChecked(), true);
  assertQuiet(problems);
  await context.close();
});

test("what was reckoned a while ago says so by its clock, and is reckoned again in one tap", async () => {
  const { page, context, problems } = await phoneAt("11:20:00");
  await startAt(page, "09:30");
  assert.match(await plain(bites(page)), /open carpet, 11:20: 3 h 10 min left/);
  await page.clock.fastForward("10:00");
  await tap(page, "Reckon again, as of now");
  await drawn(page);
  assert.match(await plain(bites(page)), /open carpet, 11:30: 3 h left/);
  assertQuiet(problems);
  await context.close();
});

test("a slip in what is left stands beside its field, and the last answer stays", async () => {
  const { page, context, problems } = await phoneAt("11:20:00");
  await startAt(page, "09:30");
  await openLine(page, "Say what is left");
  await fill(page, "silt bed", "1 l");
  const good = await bites(page).locator(".told").innerText();
  assert.match(good, /1\.0 l left/);
  await fill(page, "silt bed", "half a tub");
  const wrong = field(page, "silt bed");
  assert.equal(await wrong.getAttribute("aria-invalid"), "true");
  assert.match(await page.locator(`#${await wrong.getAttribute("aria-describedby")}`).innerText(), /half a tub/);
  assert.equal(await bites(page).locator(".told").innerText(), good);
  await fill(page, "silt bed", "1200 g");
  assert.equal(await wrong.getAttribute("aria-invalid"), null);
  assert.match(await bites(page).locator(".told").innerText(), /1200 g/);
  assertQuiet(problems);
  await context.close();
});
