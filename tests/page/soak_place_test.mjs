// Soak: what the plan soaks, what to do with it, and timers that go by the wall clock and ring wherever one is.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, pick, reload, tap, told } from "./browser.mjs";
import { beeps, locks, putAway, takeOut, withSounds, withWakeLock } from "./phone_parts.mjs";
import { programSays } from "./program.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const morning = new Date("2026-11-28T07:00:00Z");
const openAt = (name, ...parts) => openPhone(browser, name, {
  before: async (page) => {
    await page.clock.install({ time: morning });
    for (const part of parts) await part(page);
  },
});
const timer = (page, name) => page.getByRole("group", { name, exact: true });
const press = (group, name) => group.getByRole("button", { name, exact: true }).tap();
const message = (page) => page.locator("#notice");
const plain = async (locator) => (await locator.innerText()).replace(/\s+/g, " ").trim();

/** A count of so many minutes, less what the machine took. */
async function assertCount(row, minutes) {
  const parts = (await row.locator(".count").innerText()).split(":").map(Number);
  const seconds = parts.reduce((sum, part) => 60 * sum + part, 0);
  assert.ok(seconds <= minutes * 60 && seconds >= minutes * 60 - 40, parts.join(":"));
}

const openLine = (page) => page.locator("#place-soak summary").first().tap();
const micro = "fishmeal micro pellet 2 mm", four = "fishmeal pellet 4 mm";

async function soak4mm(page) {
  await goTo(page, "soak");
  await openLine(page);
  await pick(page, "Pellet").first().selectOption(four);
  await field(page, "Dry").first().fill("500 g");
  await tap(page, "Leave out", 1);
  await drawn(page);
}

test("Soak opens on what the plan soaks, as the plan itself has it, and leads with what to do", async () => {
  const plan = programSays("plan", "open carpet", "--json");
  const [soaked, pumped] = plan.soaks;
  const asked = programSays("soak", `${soaked.name}=${soaked.dry_mass_g}g`, `${pumped.name}=${pumped.dry_mass_g}g`, "--water-temp", `${plan.water_temp_c}degC`);
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "soak");
  await drawn(page);
  const shown = await plain(told(page, "soak"));
  const titles = asked.match(/(fishmeal micro pellet 2 mm|expander 4 mm): [^:]*? pellets/g);
  assert.equal(titles.length, 2);
  for (const title of titles) assert.ok(shown.includes(title), `${title}\n${shown}`);
  for (const label of ["Pour on", "Soak", "Drain", "Stand", "Pump"]) {
    const line = new RegExp(`${label} (.*?\\.)(?= |$)`).exec(asked)[1];
    assert.ok(shown.includes(line), `${line}\n${shown}`);
  }
  const places = ["Pour on", "Soak", "Drain", "Stand"].map((label) => shown.indexOf(label));
  assert.deepEqual(places, [...places].sort((one, other) => one - other));
  assert.equal(shown.includes("Keeping"), false, "what can wait is folded");
  assert.match(await plain(page.locator("#place-soak summary").first()), /260 g fishmeal micro pellet 2 mm, 4\.1 g expander 4 mm; water 14 °C/);
  assertQuiet(problems);
  await context.close();
});

test("for four anglers Soak opens on four times as much", async () => {
  const plan = programSays("plan", "open carpet", "--people", "4", "--json");
  const { page, context, problems } = await openPhone(browser, "four-anglers");
  await goTo(page, "soak");
  await drawn(page);
  const water = programSays("soak", `${micro}=${plan.soaks[0].dry_mass_g}g`, "--water-temp", "14degC").match(/Pour on ([0-9.]+ m?l) of water/)[1];
  assert.ok((await plain(told(page, "soak"))).includes(`Pour on ${water} of water`));
  assertQuiet(problems);
  await context.close();
});

test("a plan that soaks nothing says so, and invents no amount", async () => {
  assert.deepEqual(programSays("plan", "tight balls", "--json").soaks, []);
  const { page, context, problems } = await openPhone(browser, "several");
  await page.getByRole("combobox", { name: "Strategy" }).selectOption("tight balls");
  await goTo(page, "soak");
  await drawn(page);
  assert.match(await plain(page.locator("#place-soak")), /This plan soaks nothing/);
  assert.equal(await page.locator("#place-soak .told").first().innerText(), "");
  await openLine(page);
  await tap(page, "Another pellet");
  await fill(page, "Dry", "500 g");
  assert.match(await plain(told(page, "soak")), /: 500 g/);
  await tap(page, "As the plan has it");
  await drawn(page);
  assert.match(await plain(page.locator("#place-soak")), /This plan soaks nothing/);
  assertQuiet(problems);
  await context.close();
});

test("pellets and amounts of one's own are answered, several at once, and the plan's come back", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await soak4mm(page);
  assert.match(await plain(told(page, "soak")), /^fishmeal pellet 4 mm: 500 g/);
  await tap(page, "Another pellet");
  await field(page, "Dry").nth(1).fill("5");
  await drawn(page);
  assert.match(await plain(told(page, "soak")), /Ready together/);
  await field(page, "Dry").first().fill("some");
  await drawn(page);
  assert.equal(await field(page, "Dry").first().getAttribute("aria-invalid"), "true");
  await tap(page, "Leave out");
  await drawn(page);
  assert.equal(await pick(page, "Pellet").count(), 1);
  await tap(page, "As the plan has it");
  await drawn(page);
  assert.match(await plain(told(page, "soak")), /^fishmeal micro pellet 2 mm: 260 g/);
  assertQuiet(problems);
  await context.close();
});

test("a timer counts down, drains, stands, and tells how long ago it ended after a reload", async () => {
  const minutes = programSays("soak", `${four}=500g`, "--water-temp", "14degC", "--json").pellets[0].kitchen;
  const { page, context, problems } = await openAt("carpet");
  await soak4mm(page);
  const row = timer(page, four);
  await press(row, `Soak ${minutes.soak_minutes} min`);
  await assertCount(row, minutes.soak_minutes);
  await page.clock.fastForward("01:00");
  assert.match(await row.innerText(), /under water, drain at 07:0/);
  await reload(page);
  await assertCount(row, minutes.soak_minutes - 1);
  await page.clock.fastForward((minutes.soak_minutes + 3) * 60000);
  assert.match(await plain(row), /Drain now since 07:0[0-9], 4 min ago/);
  await reload(page);
  assert.match(await plain(row), /Drain now since 07:0[0-9], 4 min ago/);
  await press(row, "Start the stand");
  await assertCount(row, minutes.stand_ready_minutes);
  await page.clock.fastForward(minutes.stand_ready_minutes * 60000);
  assert.match(await plain(row), /Ready since/);
  await press(row, "Done");
  assert.equal(await row.getByRole("button", { name: `Soak ${minutes.soak_minutes} min` }).count(), 1);
  assertQuiet(problems);
  await context.close();
});

test("a timer is not lost by one tap", async () => {
  const { page, context } = await openAt("carpet");
  await goTo(page, "soak");
  await press(timer(page, micro), "Soak 1.5 min");
  await press(timer(page, micro), "Stop");
  assert.match(await timer(page, micro).innerText(), /drain at/);
  await page.clock.fastForward("00:06");
  await press(timer(page, micro), "Stop");
  await press(timer(page, micro), "Tap again to stop");
  assert.ok(!/drain at/.test(await timer(page, micro).innerText()));
  await context.close();
});

test("a timer rings once in another place, is told there, and its stand is begun from there in one tap", async () => {
  const { page, context, problems } = await openAt("carpet", withSounds);
  await goTo(page, "soak");
  await press(timer(page, micro), "Soak 1.5 min");
  await goTo(page, "feed");
  await page.clock.runFor(91000);
  assert.deepEqual(await beeps(page), [880, 880, 880, 880]);
  assert.match(await plain(message(page)), /Drain the fishmeal micro pellet 2 mm now\./);
  await page.clock.runFor(30000);
  assert.deepEqual(await beeps(page), []);
  await message(page).getByRole("button", { name: "Start the stand" }).tap();
  assert.equal(await message(page).isVisible(), false);
  await goTo(page, "soak");
  assert.match(await plain(timer(page, micro)), /covered, ready at 07:0/);
  assertQuiet(problems);
  await context.close();
});

test("a timer rings with another strategy open, and after a reload", async () => {
  const { page, context, problems } = await openAt("several", withSounds);
  const strategy = page.getByRole("combobox", { name: "Strategy" });
  await goTo(page, "soak");
  await press(timer(page, micro), "Soak 1.5 min");
  await strategy.selectOption("tight balls");
  await reload(page);
  assert.equal(await strategy.inputValue(), "tight balls");
  await goTo(page, "soak");
  assert.match(await plain(timer(page, micro)), /fishmeal micro pellet 2 mm \(open carpet\)/);
  await goTo(page, "mix");
  await page.clock.runFor(91000);
  assert.equal((await beeps(page)).length, 4);
  assert.match(await plain(message(page)), /Drain the fishmeal micro pellet 2 mm now\./);
  await strategy.selectOption("open carpet");
  await goTo(page, "soak");
  assert.match(await plain(timer(page, micro)), /Drain now/);
  assertQuiet(problems);
  await context.close();
});

test("what ended hours ago, while the phone slept, is told and does not ring", async () => {
  const { page, context, problems } = await openAt("carpet", withSounds);
  await goTo(page, "soak");
  await press(timer(page, micro), "Soak 1.5 min");
  await goTo(page, "mix");
  await page.clock.fastForward("03:00:00");
  assert.deepEqual(await beeps(page), []);
  assert.match(await plain(message(page)), /Drain the fishmeal micro pellet 2 mm now, since 07:01\./);
  assertQuiet(problems);
  await context.close();
});

test("a timer passes midnight, and a clock that was put back makes it no longer", async () => {
  const { page, context, problems } = await openAt("carpet");
  await page.clock.setSystemTime(new Date("2026-11-28T23:59:00Z"));
  await goTo(page, "soak");
  const row = timer(page, micro);
  await press(row, "Soak 1.5 min");
  assert.match(await plain(row), /drain at 00:00/);
  await page.clock.runFor(60000);
  await assertCount(row, 31 / 60);
  await page.clock.setSystemTime(new Date("2026-11-28T20:00:00Z"));
  await page.clock.runFor(2000);
  await assertCount(row, 1.5);
  assertQuiet(problems);
  await context.close();
});

test("the screen stays awake while a timer runs, also after the phone was away, and may sleep afterwards", async () => {
  const { page, context, problems } = await openAt("carpet", withWakeLock);
  await goTo(page, "soak");
  assert.deepEqual(await locks(page), { asked: 0, held: 0 });
  await press(timer(page, micro), "Soak 1.5 min");
  await page.clock.runFor(2000);
  assert.deepEqual(await locks(page), { asked: 1, held: 1 });
  await putAway(page);
  assert.deepEqual(await locks(page), { asked: 1, held: 0 });
  await takeOut(page);
  assert.deepEqual(await locks(page), { asked: 2, held: 1 });
  await page.clock.runFor(90000);
  assert.deepEqual(await locks(page), { asked: 2, held: 0 });
  assertQuiet(problems);
  await context.close();
});

test("a phone that cannot be kept awake counts down all the same", async () => {
  const { page, context, problems } = await openAt("carpet", (opened) => opened.addInitScript(() => { delete Navigator.prototype.wakeLock; }));
  await goTo(page, "soak");
  await press(timer(page, micro), "Soak 1.5 min");
  await page.clock.runFor(30000);
  await assertCount(timer(page, micro), 1 + 1 / 60);
  assertQuiet(problems);
  await context.close();
});

test("where nothing can be worked out, a timer of one's own minutes rings", async () => {
  const { page, context, problems } = await openAt("carpet", withSounds, (opened) => opened.addInitScript(() => {
    delete globalThis.Worker;
    WebAssembly.compile = () => Promise.reject(new Error("no room for it"));
  }));
  await goTo(page, "soak");
  assert.match(await plain(page.locator("#place-soak")), /Nothing can be worked out here: no room for it/);
  await field(page, "For how long").fill("");
  await page.locator("#place-soak").getByRole("button", { name: "Soak", exact: true }).tap();
  assert.match(await page.locator("#place-soak .fault:visible").innerText(), /Say how many minutes; such as 10 min/);
  await field(page, "What soaks or stands").fill("old pellets");
  await field(page, "For how long").fill("2,5");
  await page.locator("#place-soak").getByRole("button", { name: "Soak", exact: true }).tap();
  await assertCount(timer(page, "old pellets"), 2.5);
  await page.clock.runFor(151000);
  assert.equal((await beeps(page)).length, 4);
  assert.match(await plain(message(page)), /Drain the old pellets now\./);
  assertQuiet(problems);
  await context.close();
});

test("an expander is pumped: strokes, vessel and the pump's table, and no timer", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "soak");
  await openLine(page);
  await tap(page, "Leave out");
  await fill(page, "Dry", "50 g");
  await fill(page, "Strokes of the pump", "10");
  await fill(page, "The pump holds", "1 l");
  const asked = programSays("soak", "expander 4 mm=50g", "--strokes", "10", "--vessel", "1l", "--water-temp", "14degC");
  const strokes = asked.match(/[0-9]+ strokes sink the usual bag, [0-9]+ nearly every bag\./)[0];
  const shown = await plain(told(page, "soak"));
  assert.ok(shown.includes(strokes), shown);
  assert.match(shown, /a vessel of 1\.0 l/);
  const rows = await page.locator("#place-soak .told table").first().locator("tr").allInnerTexts();
  assert.deepEqual(rows[0].split(/\s{2,}|\t|\n/).map((word) => word.trim()), ["strokes", "pores full", "a pellet"]);
  assert.ok(rows.length >= 5);
  assert.equal(await page.locator(".timer").count(), 0);
  assertQuiet(problems);
  await context.close();
});
