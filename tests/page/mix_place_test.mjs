// Mix: the plan's amount first; targets, the slider and the typed field, slips.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { amountIn, assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, pick, told } from "./browser.mjs";
import { askProgram } from "./program_answers.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const water = (page) => page.locator("#place-mix .told .first").innerText();
const openFields = (page) => page.locator("#place-mix details.folded > summary").first().tap();
const inPlan = (plan, name) => plan.batches.find((batch) => batch.name === name);
/** The masses of the weigh list, by name. */
const weighed = (page) => page.evaluate(() => Object.fromEntries([...document.querySelectorAll("#place-mix tr")].map((row) => [row.firstChild.innerText, row.querySelector("td.weight")?.innerText]).filter(([, mass]) => mass)));

/** The page's own question of the mix in sight, put to the program: the same words, the same flags. */
async function programsAnswer(page) {
  const { of, flags } = await page.evaluate(() => ({ of: bank.kept.mix.of, flags: mixFlags(bank.kept.mix) }));
  return askProgram("mix", of, ...Object.entries(flags).flatMap(([flag, values]) => values.flatMap((value) => [flag, value])));
}

test("Mix opens on the plan's amount: as much, as wet and as weighed as the program's plan has it", async () => {
  for (const [file, strategy, people] of [["carpet", "open carpet", []], ["four-anglers", "open carpet", ["--people", "4"]], ["several", "open carpet", []]]) {
    const { page, context, problems } = await openPhone(browser, file);
    const plan = askProgram("plan", strategy, ...people);
    const batch = inPlan(plan, "silt bed");
    const found = await page.evaluate(() => askEngine({ ask: "mix", words: [bank.kept.mix.of], flags: mixFlags(bank.kept.mix), give: ["json"] }).json);
    assert.equal(found.recipe, "silt bed");
    assert.equal(found.feel, batch.feel);
    for (const key of ["dry_mass_g", "wet_volume_ml", "wet_mass_g"]) assert.ok(Math.abs(found[key] / batch[key] - 1) < 1e-9, `${file} ${key}: ${found[key]} and not ${batch[key]}`);
    assert.ok(Math.abs(found.water_to_add_g / batch.water_g - 1) < 1e-9);
    assert.ok(Math.abs(found.water_first_g / batch.water_first_g - 1) < 1e-9);
    const kitchen = (await programsAnswer(page)).kitchen.parts;
    const shown = await weighed(page);
    for (const part of kitchen) assert.equal(shown[part.name], part.mass_g < 1000 ? `${part.mass_g} g` : shown[part.name]);
    assert.equal(await page.locator("#place-mix details.folded").first().getAttribute("open"), null, "what is asked is one line");
    assertQuiet(problems);
    await context.close();
  }
});

test("what the strategy makes of several things is one mix, and what it never feeds alone is not shown as its mix", async () => {
  const { page, context, problems } = await openPhone(browser, "several");
  for (const [strategy, mix] of [["tight balls", "silt bed and casters"], ["little and often", "songbird"]]) {
    await page.getByRole("combobox", { name: "Strategy", exact: true }).selectOption(strategy);
    await drawn(page);
    const batch = inPlan(askProgram("plan", strategy), mix);
    const found = await page.evaluate(() => askEngine({ ask: "mix", words: [bank.kept.mix.of], flags: mixFlags(bank.kept.mix), give: ["json"] }).json);
    assert.equal(found.recipe, mix);
    assert.equal(found.feel, batch.feel);
    assert.ok(Math.abs(found.wet_volume_ml / batch.wet_volume_ml - 1) < 1e-9, `${found.wet_volume_ml} and not ${batch.wet_volume_ml}`);
    assert.ok(Math.abs(found.water_to_add_g / batch.water_g - 1) < 1e-9);
    await openFields(page);
    const groups = await page.evaluate(() => [...document.querySelector("#place-mix select").querySelectorAll("optgroup")].map((group) => [group.label, [...group.children].map((one) => one.value)]));
    assert.deepEqual(groups[0], [strategy, [mix]]);
    assert.ok(groups[groups.length - 1][1].includes("silt bed"));
  }
  assertQuiet(problems);
  await context.close();
});

test("Mix leads with what to pour, then weighs, then says what it makes, and how sure it is", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const batch = inPlan(askProgram("plan", "open carpet"), "silt bed");
  const words = await told(page, "mix").innerText();
  assert.match(words, /^silt bed, soft: 830 ml cupped\s+Pour 285 ml, rest 20 min, then creep to about 400 ml \(9 times in 10: 310 to 530 ml\)\./);
  assert.equal(Math.round(batch.water_first_g / 5) * 5, 285);
  const order = ["Pour", "weigh", "Makes", "Do this", "How sure", "Take care"].map((word) => words.indexOf(word));
  assert.deepEqual([...order].sort((one, other) => one - other), order);
  const sizes = await page.evaluate(() => [".first", ".line.soft"].map((one) => parseFloat(getComputedStyle(document.querySelector(`#place-mix ${one}`)).fontSize)));
  assert.ok(sizes[0] > 1.2 * sizes[1], `what to do is large: ${sizes}`);
  // On a screen of 360 x 612: title, pour and the whole weigh list above the dock.
  await page.setViewportSize({ width: 360, height: 612 });
  const [lastRow, bottom] = await page.evaluate(() => [[...document.querySelectorAll("#place-mix tr")].pop().getBoundingClientRect().bottom, document.querySelector("#bottom").getBoundingClientRect().top]);
  assert.ok(lastRow <= bottom, `the weigh list ends at ${lastRow}, the dock begins at ${bottom}`);
  assertQuiet(problems);
  await context.close();
});

test("the slider and the typed field agree, and the weights follow at once", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const slider = page.getByRole("slider", { name: "Amount" });
  const before = await water(page);
  await slider.fill("5");
  await drawn(page);
  assert.notEqual(await water(page), before);
  await openFields(page);
  assert.equal(await amountIn(page, "How much, wet"), "5 l");
  await fill(page, "How much, wet", "2");
  assert.equal(await slider.inputValue(), "2");
  assert.equal(await slider.getAttribute("aria-valuetext"), "2 l");
  // 1 imperial pint is 568.26125 ml (UK Weights and Measures Act 1985, schedule 1, from memory).
  await fill(page, "How much, wet", "4 pt");
  assert.equal(await slider.inputValue(), "2.3");
  await page.getByRole("button", { name: "A step more" }).tap();
  assert.equal(await amountIn(page, "How much, wet"), "2.4 l");
  await page.getByRole("radio", { name: "The plan's" }).check();
  assert.equal(await water(page), before);
  assertQuiet(problems);
  await context.close();
});

test("while the slider moves, texts change in the nodes that are there", async () => {
  const { page, context } = await openPhone(browser, "carpet");
  await page.evaluate(() => { window.firstCell = document.querySelector("#place-mix td.weight"); });
  for (const amount of ["3.3", "4", "5.5"]) {
    await page.getByRole("slider", { name: "Amount" }).fill(amount);
    await drawn(page);
  }
  assert.ok(await page.evaluate(() => window.firstCell.isConnected && window.firstCell === document.querySelector("#place-mix td.weight")));
  assert.ok((await page.evaluate(() => performance.getEntriesByName("bank-move").length)) >= 3);
  await context.close();
});

test("cups, balls and what one has are targets too", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await openFields(page);
  const target = (name) => page.getByRole("radio", { name, exact: true }).check();
  await target("Cups");
  await fill(page, "How many cups", "6");
  await fill(page, "A cup holds", "500");
  assert.match(await told(page, "mix").innerText(), /6 cups of 500 ml/);
  await target("Balls");
  await pick(page, "Feel").selectOption("firm");
  await fill(page, "How many balls", "20");
  assert.match(await told(page, "mix").innerText(), /20 balls of 55 mm/);
  await target("What I have");
  await pick(page, "of").selectOption("brown crumb");
  await fill(page, "I have this much", "1 lb");
  assert.match(await told(page, "mix").innerText(), /The brown crumb runs out first/);
  // 1 lb is 453.59237 g (Weights and Measures Act 1985, schedule 1, from memory): the slider stands at the nearest 50 g.
  assert.equal(await page.getByRole("slider", { name: "Amount" }).inputValue(), "450");
  assertQuiet(problems);
  await context.close();
});

test("a slip is told beside its field, and the last good answer stays, greyed", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await openFields(page);
  await page.getByRole("radio", { name: "Litres", exact: true }).check();
  const good = await told(page, "mix").innerText();
  await fill(page, "How much, wet", "3 kg");
  const wrong = field(page, "How much, wet");
  assert.equal(await wrong.getAttribute("aria-invalid"), "true");
  const fault = page.locator(`#${await wrong.getAttribute("aria-describedby")}`);
  assert.equal(await fault.innerText(), "'3 kg' is a mass, but a volume is needed here; a volume is written in ml, l, pt or floz");
  assert.equal(await told(page, "mix").innerText(), good);
  assert.ok(await page.locator("#place-mix .answer.stale").first().isVisible());
  await fill(page, "How much, wet", "3 l");
  assert.equal(await wrong.getAttribute("aria-invalid"), null);
  assert.equal(await page.locator("#place-mix .answer.stale").count(), 0);
  assertQuiet(problems);
  await context.close();
});

test("what stands in the fields is there again when the page is opened anew", async () => {
  const { page, context } = await openPhone(browser, "carpet");
  await openFields(page);
  await pick(page, "Mix").selectOption("dark treacle");
  await fill(page, "How much, wet", "1.5 l");
  await goTo(page, "drop");
  await page.reload();
  await page.locator("#place-drop .told").first().waitFor();
  await goTo(page, "mix");
  await openFields(page);
  assert.equal(await amountIn(page, "How much, wet"), "1.5 l");
  assert.match(await told(page, "mix").innerText(), /^dark treacle/);
  await context.close();
});
