// Soak: the told answer, and timers that go by the wall clock.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, pick, reload, tap, told } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const morning = new Date("2026-11-28T07:00:00Z");
const withClock = { before: (page) => page.clock.install({ time: morning }) };
const timer = (page, name) => page.getByRole("group", { name, exact: true });

async function soak4mm(page) {
  await goTo(page, "soak");
  await pick(page, "Pellet").first().selectOption("fishmeal pellet 4 mm");
  await fill(page, "Dry", "500 g");
}

test("pellets and amounts are answered, several at once", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await soak4mm(page);
  assert.match(await told(page, "soak").innerText(), /^fishmeal pellet 4 mm: 500 g/);
  await tap(page, "Another pellet");
  await drawn(page);
  assert.match(await told(page, "soak").innerText(), /Ready together/);
  await field(page, "Dry").nth(1).fill("5");
  await field(page, "Dry").first().fill("some");
  await drawn(page);
  assert.equal(await field(page, "Dry").first().getAttribute("aria-invalid"), "true");
  await tap(page, "Leave out");
  await drawn(page);
  assert.equal(await pick(page, "Pellet").count(), 1);
  assertQuiet(problems);
  await context.close();
});

test("a timer counts down, ends, and tells how long ago it ended after a reload", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet", withClock);
  await soak4mm(page);
  const soak = timer(page, "fishmeal pellet 4 mm, Soak");
  const length = await soak.locator(".count").innerText();
  assert.match(length, /^[0-9]+:[0-9]{2}$/);
  await soak.getByRole("button", { name: "Start" }).tap();
  await page.clock.fastForward("01:00");
  assert.notEqual(await soak.locator(".count").innerText(), length);
  await timer(page, "fishmeal pellet 4 mm, Stand, covered").getByRole("button", { name: "Start" }).tap();
  await reload(page);
  assert.match(await soak.innerText(), /ends 07:0/);
  const [minutes, seconds] = (await soak.locator(".count").innerText()).split(":").map(Number);
  await page.clock.fastForward((minutes * 60 + seconds + 4 * 60) * 1000);
  assert.match(await soak.innerText(), /ended\s+4 min ago/);
  assert.match(await timer(page, "fishmeal pellet 4 mm, Stand, covered").innerText(), /ends/);
  await reload(page);
  assert.match(await soak.innerText(), /ended\s+4 min ago/);
  await soak.getByRole("button", { name: "Done" }).tap();
  assert.equal(await soak.locator(".count").innerText(), length);
  assertQuiet(problems);
  await context.close();
});

test("a timer is not lost by one tap", async () => {
  const { page, context } = await openPhone(browser, "carpet", withClock);
  await soak4mm(page);
  const soak = timer(page, "fishmeal pellet 4 mm, Soak");
  await soak.getByRole("button", { name: "Start" }).tap();
  await soak.getByRole("button", { name: "Stop" }).tap();
  assert.match(await soak.innerText(), /ends/);
  await page.clock.fastForward("00:06");
  await soak.getByRole("button", { name: "Stop" }).tap();
  await soak.getByRole("button", { name: "Tap again to stop" }).tap();
  assert.ok(!/ends/.test(await soak.innerText()));
  await context.close();
});

test("an end in another place of the page is told there", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet", withClock);
  await soak4mm(page);
  await timer(page, "fishmeal pellet 4 mm, Soak").getByRole("button", { name: "Start" }).tap();
  await goTo(page, "feed");
  await page.clock.fastForward("20:00");
  assert.match(await page.locator("#notice").innerText(), /fishmeal pellet 4 mm: soak ended/);
  assertQuiet(problems);
  await context.close();
});

test("an expander is pumped, and has strokes in place of a timer", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "soak");
  await pick(page, "Pellet").selectOption("expander 4 mm");
  await fill(page, "Strokes of the pump", "10");
  assert.match(await told(page, "soak").innerText(), /10 strokes/);
  assert.equal(await page.locator(".timer").count(), 0);
  assertQuiet(problems);
  await context.close();
});
