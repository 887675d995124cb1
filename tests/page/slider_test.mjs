// The slider under a thumb: real touches by the browser's own protocol.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, openBrowser, openLines, openPhone } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const slider = (page) => page.getByRole("slider").first();

/** A finger from one point to another, in steps as a screen reports them. */
async function swipe(page, from, to, { cancel = false } = {}) {
  const finger = await page.context().newCDPSession(page);
  const touch = (type, points) => finger.send("Input.dispatchTouchEvent", { type, touchPoints: points });
  await touch("touchStart", [from]);
  for (let step = 1; step <= 12; step += 1) {
    await touch("touchMove", [{ x: from.x + (to.x - from.x) * step / 12, y: from.y + (to.y - from.y) * step / 12 }]);
    await page.waitForTimeout(16);
  }
  await touch(cancel ? "touchCancel" : "touchEnd", []);
  await drawn(page);
}

/** Where the thumb is, and the box of the slider. */
async function placesOf(page) {
  const box = await slider(page).boundingBox();
  const share = await slider(page).evaluate((one) => (one.value - one.min) / (one.max - one.min));
  const thumb = { x: box.x + 22 + share * (box.width - 44), y: box.y + box.height / 2 };
  return { box, thumb, beside: { x: box.x + box.width * 0.8, y: thumb.y } };
}

async function opened() {
  const phone = await openPhone(browser, "carpet", { context: { viewport: { width: 360, height: 740 } } });
  const { page } = phone;
  await page.evaluate(() => window.scrollTo(0, 0));
  return { ...phone, at: await slider(page).inputValue(), scrolled: () => page.evaluate(() => window.scrollY) };
}

test("a swipe that begins on the slider scrolls, and changes nothing", async () => {
  const { page, context, problems, at, scrolled } = await opened();
  const { beside } = await placesOf(page);
  await swipe(page, beside, { x: beside.x + 6, y: beside.y - 180 });
  assert.equal(await slider(page).inputValue(), at);
  assert.ok((await scrolled()) > 60, `scrolled by ${await scrolled()}`);
  assertQuiet(problems);
  await context.close();
});

test("a swipe upwards that begins on the thumb scrolls, and the thumb is back where it was", async () => {
  const { page, context, problems, at, scrolled } = await opened();
  const { thumb } = await placesOf(page);
  await swipe(page, thumb, { x: thumb.x + 14, y: thumb.y - 180 });
  assert.equal(await slider(page).inputValue(), at);
  assert.ok((await scrolled()) > 60, `scrolled by ${await scrolled()}`);
  assertQuiet(problems);
  await context.close();
});

test("a touch beside the thumb does not move it, and a drag of the thumb does", async () => {
  const { page, context, problems, at } = await opened();
  const { beside, thumb, box } = await placesOf(page);
  await swipe(page, beside, beside);
  assert.equal(await slider(page).inputValue(), at);
  await swipe(page, thumb, { x: box.x + box.width * 0.7, y: thumb.y });
  assert.ok(Number(await slider(page).inputValue()) > Number(at) * 1.2, await slider(page).inputValue());
  assertQuiet(problems);
  await context.close();
});

test("a drag that the phone breaks off leaves the slider as it was", async () => {
  const { page, context, at } = await opened();
  const { thumb, box } = await placesOf(page);
  await swipe(page, thumb, { x: box.x + box.width * 0.7, y: thumb.y }, { cancel: true });
  assert.equal(await slider(page).inputValue(), at);
  await context.close();
});

test("the keyboard moves it a step at a time, and it is 44 pixels high", async () => {
  const { page, context, at } = await opened();
  await slider(page).focus();
  await page.keyboard.press("ArrowRight");
  await drawn(page);
  const step = Number(await slider(page).getAttribute("step"));
  assert.ok(Math.abs(Number(await slider(page).inputValue()) - Number(at) - step) < step);
  assert.ok((await slider(page).boundingBox()).height >= 44);
  await context.close();
});

test("what a slip stretched comes back", async () => {
  const { page, context } = await opened();
  const most = await slider(page).getAttribute("max");
  await openLines(page);
  await page.getByRole("radio", { name: "Litres", exact: true }).check();
  const amount = page.locator("#place-mix .amount-field input").first();
  const good = await amount.inputValue();
  await amount.fill("300");
  await drawn(page);
  assert.equal(await slider(page).getAttribute("max"), "300");
  await amount.fill(good);
  await drawn(page);
  assert.equal(await slider(page).getAttribute("max"), most);
  await context.close();
});
