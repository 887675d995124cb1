// A page that was made with what a person always uses: pump 80 ml, vessel 1 l, water of 8 degC, metric.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
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

test("the way to the water, the hands, the kit and the venue that are usual are in the plan on the phone, word for word as in the terminal", async () => {
  const folder = mkdtempSync(join(tmpdir(), "usual-plan-"));
  const run = (...words) => execFileSync(process.env.BANK_PROGRAM, [...words, "--store", join(folder, "store.db")], { encoding: "utf8", env: { ...process.env, LC_ALL: "C.UTF-8" } }).replace(/\s+/g, " ");
  const venue = JSON.parse(run("venue", "list", "--json")).venues[0].name;
  run("usual", "--travel", "40min", "--hands", "2", "--kit", "pot 25", "--kit", "cup 250", "--venue", venue);
  const file = join(folder, "page.html");
  run("page", "open carpet", "-o", file);
  const { page, context, problems } = await openPhone(browser, "", { file });
  const told = await page.evaluate(() => {
    const reply = askEngine({ ask: "plan", words: ["open carpet"], flags: flagsOf({ "--start": "09:30", ...usualOfPlan() }), give: ["told"] });
    return reply.told.flatMap((piece) => [piece.text || "", ...(piece.cells || [])]).map((text) => text.replace(/\s+/g, " ").trim()).filter(Boolean);
  });
  const terminal = run("plan", "open carpet", "--start", "09:30");
  assert.ok(told.some((text) => /the way to the water/.test(text)) && told.some((text) => text.includes(venue)), told.join(" | "));
  assert.deepEqual(told.filter((text) => !terminal.includes(text)), []);
  assertQuiet(problems);
  await context.close();
  rmSync(folder, { recursive: true, force: true });
});
