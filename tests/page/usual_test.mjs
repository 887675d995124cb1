// A page that was made with what a person always uses: pump 80 ml, vessel 1 l, water of 8 degC, metric.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { amountIn, assertQuiet, drawn, fill, goTo, openBrowser, openLines, openPhone, tap, told } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const strokesIn = (text) => Number(/(\d+)\s+strokes/.exec(text)?.[1]);

test("the page begins with the water, the pump and the units that are usual", async () => {
  const { page, context, problems } = await openPhone(browser, "usual");
  const mix = await told(page, "mix").innerText();
  assert.match(mix, /water at 8 \u00b0C/);
  assert.doesNotMatch(mix, / oz| pt/);
  await goTo(page, "soak");
  await openLines(page);
  await tap(page, "Leave out");
  await fill(page, "Dry", "200 g");
  assert.equal(await amountIn(page, "The pump holds"), "1000 ml");
  assert.match(await told(page, "soak").innerText(), /80 ml\s+a\s+stroke/);
  assertQuiet(problems);
  await context.close();
});

test("the plan on the phone pumps with that pump, as the command line does", async () => {
  const { page, context, problems } = await openPhone(browser, "usual");
  await goTo(page, "feed");
  await drawn(page);
  const ours = strokesIn(execFileSync(process.env.BANK_PROGRAM, ["plan", "open carpet", "--store", join(process.env.BANK_PAGES, "mine.db")], { encoding: "utf8" }));
  assert.ok(ours > 0);
  assert.equal(strokesIn(await page.locator("#place-feed").innerText()), ours);
  assertQuiet(problems);
  await context.close();
});
