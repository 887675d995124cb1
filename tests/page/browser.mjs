// A phone with no signal that opens a bank page, and what a person does on it.
import assert from "node:assert/strict";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

export const placeNames = ["mix", "soak", "feed", "drop", "notes"];
export const pageFile = (name) => join(process.env.BANK_PAGES, `${name}.html`);
const asRoot = process.getuid?.() === 0;

/**
 * A browser for the tests of one file; close it after the last. Chromium without its windows: each page opens in half the time. The
 * engine is compiled once, quickly: compiling anew what runs often took a fifth of an opening, and pays in long visits only.
 */
export function openBrowser(args = []) {
  const given = ["--js-flags=--liftoff-only", ...(asRoot ? ["--no-sandbox"] : []), ...args];
  return chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium-headless-shell", args: given });
}

/** Opens a page on a phone of its own. `before(page)` prepares it, such as its clock. `problems` must stay empty. */
export async function openPhone(browser, name, { width = 360, scheme = "light", before, context: options = {}, file = pageFile(name) } = {}) {
  const context = await browser.newContext({
    viewport: { width, height: 740 }, hasTouch: true, isMobile: true, colorScheme: scheme, offline: true, locale: "en-GB", timezoneId: "Europe/London",
    acceptDownloads: true, ...options,
  });
  const problems = [];
  const page = await openTab(context, name, { before, problems, file });
  return { context, page, problems };
}

export async function openTab(context, name, { before, problems = [], file = pageFile(name) } = {}) {
  const page = await context.newPage();
  page.setDefaultTimeout(8000);
  page.on("console", (message) => problems.push(`${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => problems.push(error.stack ?? String(error)));
  if (before) await before(page);
  await page.goto(pathToFileURL(file).href);
  await ready(page);
  return page;
}

/** The engine is open, and the places are there. */
export async function ready(page) {
  await page.waitForFunction(() => typeof bank !== "undefined" && bank.drawn);
}

export async function reload(page) {
  await page.reload();
  await ready(page);
}

export async function goTo(page, place) {
  const bar = page.locator("nav");
  if (await bar.locator(`[data-place=${place}]`).count()) {
    await bar.locator(`[data-place=${place}]`).tap();
  } else {
    await bar.locator("[data-place=more]").tap();
    await page.locator(`#place-more [data-place=${place}]`).tap();
  }
  await page.locator(`#place-${place}`).waitFor();
}

/** The field with this label in the place that is in sight, or in its dock. */
export const field = (page, label) => page.locator("main section:not([hidden]), .dock:not([hidden])").getByRole("textbox", { name: label, exact: true });
export const pick = (page, label) => page.locator("main section:not([hidden])").getByRole("combobox", { name: label, exact: true });
export const tap = (page, name, nth = 0) => page.locator("main section:not([hidden])").getByRole("button", { name, exact: true }).nth(nth).tap();
export const told = (page, place) => page.locator(`#place-${place} .told`).first();

/** What stands in a field of an amount, with its unit: "3 l". */
export async function amountIn(page, label) {
  const one = page.locator("main section:not([hidden]) .amount-field, .dock:not([hidden]) .amount-field").filter({ has: page.getByRole("textbox", { name: label, exact: true }) });
  const number = await field(page, label).inputValue();
  const units = one.locator(".units");
  const unit = (await units.locator("input").count()) ? await units.locator("input:checked").inputValue() : await units.innerText();
  return `${number} ${unit}`.trim();
}

/** Opens the lines that fields fold into, in the place that is in sight. */
export async function openLines(page) {
  const closed = page.locator("main section:not([hidden]) details.folded:not([open]) > summary");
  while (await closed.count()) await closed.first().tap();
}

/** Two frames: what was typed has been asked, answered and drawn. */
export function drawn(page) {
  return page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

export async function fill(page, label, text) {
  await field(page, label).fill(text);
  await drawn(page);
}

export const kept = (page) => page.evaluate(() => Object.fromEntries(Object.entries(localStorage)));

export function assertQuiet(problems) {
  assert.deepEqual(problems, [], "the page must say nothing in the console");
}

/** Mix, which opens on the plan's amount, for so many litres. */
export async function mixLitres(page, text) {
  await openLines(page);
  await page.getByRole("radio", { name: "Litres", exact: true }).check();
  await fill(page, "How much, wet", text);
}
