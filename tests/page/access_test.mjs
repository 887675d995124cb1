// For everyone: axe-core's rules of WCAG 2.0, 2.1 and 2.2, levels A and AA, in every place and dress; nothing wider than the
// screen; nothing too small for a thumb.
import assert from "node:assert/strict";
import { mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { after, before, describe, test } from "node:test";
import { assertQuiet, drawn, field, goTo, openBrowser, openLines, openPhone } from "./browser.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const dresses = [
  { name: "light" },
  { name: "narrow", width: 320 },
  { name: "doubled", doubled: true },
  { name: "landscape", width: 740, height: 360 },
  { name: "landscape-doubled", width: 740, height: 360, doubled: true, onlyWidth: true },
  { name: "wide", width: 1280, height: 800, onlyWidth: true },
];
// The same page in other colours, of which only the rules of colour can say anything new.
const colours = [
  { name: "dark", media: { colorScheme: "dark" } },
  { name: "sun", look: "sun" },
  { name: "night", look: "night" },
  { name: "forced", media: { forcedColors: "active" } },
  { name: "more-contrast", media: { contrast: "more" } },
];
const plain = { colorScheme: "light", forcedColors: "none", contrast: "no-preference" };
const everyRule = { type: "tag", values: rules };
const colourRules = { type: "rule", values: ["color-contrast", "link-in-text-block"] };
let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

/** The whole place in sight, so that nothing counts as hidden that scrolling would show. */
async function faultsOf(page, runOnly = everyRule) {
  const { width, height } = page.viewportSize();
  await page.setViewportSize({ width, height: await page.evaluate(() => document.documentElement.scrollHeight) });
  await drawn(page);
  await page.evaluate(() => Promise.all(document.getAnimations().map((moving) => moving.finished)));  // a colour on its way is none to judge
  const found = await page.evaluate((only) => window.axe.run(document, { runOnly: only }), runOnly);
  await page.setViewportSize({ width, height });
  return found.violations.map((one) => `${one.id}: ${one.nodes.slice(0, 3).map((node) => node.html.slice(0, 160)).join(" | ")}`);
}

const placesOf = (page) => page.evaluate(() => Object.keys(places));

/** Something in every place: a timer, a session with a put-in, a catch; and all that is folded, open. */
async function use(page, place) {
  const taps = { soak: [/^Soak [0-9]/], feed: ["Start now", /^Put in/] };
  for (const name of taps[place] ?? []) await page.getByRole("button", { name, exact: true }).first().tap();
  await page.evaluate((name) => { for (const fold of document.querySelectorAll(`#place-${name} details`)) fold.open = true; }, place);
  await drawn(page);
}

async function dressed(dress) {
  const { height = 740, width = 360 } = dress;
  const phone = await openPhone(browser, "several", { ...dress, context: { viewport: { width, height }, reducedMotion: "reduce", ...dress.context } });
  await phone.page.evaluate(axe);
  if (dress.doubled) await phone.page.evaluate(() => { document.documentElement.style.fontSize = "200%"; });
  return phone;
}

async function colour(page, { media, look }) {
  await page.emulateMedia({ ...plain, ...media });
  await page.evaluate((name) => {
    if (name) document.documentElement.dataset.look = name;
    else delete document.documentElement.dataset.look;
  }, look);
}

async function keepPicture(page, name) {
  if (!process.env.BANK_SHOTS) return;
  mkdirSync(process.env.BANK_SHOTS, { recursive: true });
  await page.screenshot({ path: join(process.env.BANK_SHOTS, `${name}.png`), fullPage: true });
}

async function keepsRules(dress) {
  const { page, context, problems } = await dressed(dress);
  for (const place of await placesOf(page)) {
    await goTo(page, place);
    await keepPicture(page, `${place}-${dress.name}-at-first`);
    await use(page, place);
    await keepPicture(page, `${place}-${dress.name}`);
    if (!dress.onlyWidth) assert.deepEqual(await faultsOf(page), [], `${place}, ${dress.name}`);
    assert.ok((await page.evaluate(() => document.documentElement.scrollWidth)) <= (dress.width ?? 360), `${place}, ${dress.name} is wider than the screen`);
  }
  assertQuiet(problems);
  await context.close();
}

async function keepsColours() {
  const { page, context, problems } = await dressed({});
  for (const place of await placesOf(page)) {
    await goTo(page, place);
    await use(page, place);
    for (const dress of colours) {
      await colour(page, dress);
      await drawn(page);
      await keepPicture(page, `${place}-${dress.name}`);
      assert.deepEqual(await faultsOf(page, colourRules), [], `${place}, ${dress.name}`);
    }
    await colour(page, {});
  }
  assertQuiet(problems);
  await context.close();
}

// Two at once: this file takes longest of all.
describe("every place", { concurrency: 2 }, () => {
  for (const dress of dresses) test(`${dress.name}: keeps the rules and the width of the screen`, () => keepsRules(dress));
  test("it can be read in each colour", keepsColours);
});

test("with a slip in sight the rules are kept too", async () => {
  for (const scheme of ["light", "dark"]) {
    const { page, context } = await dressed({ scheme });
    const slips = { mix: "How much, wet", soak: "Dry", drop: "Depth" };
    for (const [place, label] of Object.entries(slips)) {
      await goTo(page, place);
      await openLines(page);
      if (place === "mix") await page.getByRole("radio", { name: "Litres", exact: true }).check();
      await field(page, label).first().fill("5 bags");
      await drawn(page);
      assert.ok(await page.locator(`#place-${place} .fault:not([hidden])`).first().isVisible(), place);
      await keepPicture(page, `${place}-slip-${scheme}`);
      assert.deepEqual(await faultsOf(page), [], `${place}, ${scheme}`);
    }
    await context.close();
  }
});

test("what is tapped is at least 44 pixels high and wide", async () => {
  const { page, context } = await openPhone(browser, "several", { width: 320 });
  for (const place of await placesOf(page)) {
    await goTo(page, place);
    await use(page, place);
    const small = await page.evaluate(() => [...document.querySelectorAll("button, select, summary, .strip label, input:not([type=checkbox]):not([type=radio]), .timeline label, .ticks label")]
      .filter((one) => one.checkVisibility()).map((one) => ({ box: one.getBoundingClientRect(), words: one.outerHTML.slice(0, 90) }))
      .filter(({ box }) => box.height < 44 || box.width < 44).map(({ box, words }) => `${Math.round(box.width)} x ${Math.round(box.height)} ${words}`));
    assert.deepEqual(small, [], place);
  }
  await context.close();
});

test("the places are buttons, the one in sight is marked, and the keyboard gets everywhere", async () => {
  const { page, context } = await openPhone(browser, "carpet");
  const soak = page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: "Soak" });
  await soak.focus();
  await page.keyboard.press("Enter");
  assert.equal(await soak.getAttribute("aria-current"), "page");
  assert.equal(await page.locator("nav [aria-current]").count(), 1);
  assert.ok(await page.evaluate(() => document.activeElement.matches("nav button")));
  const outlined = await soak.evaluate((one) => getComputedStyle(one).outlineStyle);
  assert.notEqual(outlined, "none");
  await context.close();
});
