// Money: what a session costs, strategies side by side, and a shopping list whose ticks stay; each in the program's own words.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, pick, reload, tap } from "./browser.mjs";
import { assertToldAlike, program, programWith, record } from "./told_alike.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const money = (page) => page.locator("#place-money");
const pieces = (page) => money(page).locator(".told > *, .lists > .heading, .lists li").evaluateAll((nodes) => nodes.map((node) => node.textContent));

async function openMoney(name, view) {
  const phone = await openPhone(browser, name);
  await goTo(phone.page, "money");
  await look(phone.page, view);
  return phone;
}

async function look(page, view) {
  await page.locator("#docks").getByRole("radio", { name: view, exact: true }).check();
  await drawn(page);
}

/** A field with a list of names to pick from is a combobox to a screen reader. */
const anyField = (page, label) => money(page).getByLabel(label, { exact: true });

async function fillAny(page, label, text) {
  await anyField(page, label).fill(text);
  await drawn(page);
}

const openFields = (page) => money(page).locator(".folded > summary").click();
const tick = (page, name) => money(page).getByRole("checkbox", { name, exact: false });

test("a session's cost leads with what is used, and follows the anglers and the hours, as the program has it", async () => {
  const { page, context, problems } = await openMoney("carpet", "Cost");
  assertToldAlike(await pieces(page), program("cost", "open carpet"));
  assert.match(await money(page).locator(".told > *").nth(1).innerText(), /^Used .*9 times in 10/);
  await openFields(page);
  await fill(page, "Anglers", "3");
  await fill(page, "How long", "3 h");
  assertToldAlike(await pieces(page), program("cost", "open carpet", "--people", "3", "--length", "3h"));
  assert.equal(await money(page).locator(".folded > summary").innerText(), "3 anglers, 3 h");
  await fill(page, "How long", "long");
  assert.equal(await field(page, "How long").getAttribute("aria-invalid"), "true");
  assertQuiet(problems);
  await context.close();
});

/** Every cell and every line of the comparison is the program's; the table is laid in two. */
async function assertCompared(page, ...words) {
  const cells = await money(page).locator(".answer td, .answer th").allTextContents();
  const more = await money(page).locator(".more td:not(:first-child), .more th:not(:first-child)").allTextContents();
  const lines = await money(page).locator(".answer .told > p").allTextContents();
  assertToldAlike([...cells, ...more, ...lines], program("compare", ...words));
}

test("strategies that are ticked stand side by side, each as long as it says, with which is cheaper and how sure", async () => {
  const { page, context, problems } = await openMoney("several", "Compare");
  assert.match(await money(page).innerText(), /Tick two or more/);
  assert.deepEqual(await pieces(page), []);
  await openFields(page);
  assert.ok(await tick(page, "open carpet").isChecked());
  await tick(page, "tight balls").check();
  await drawn(page);
  await assertCompared(page, "open carpet", "tight balls");
  assert.match(await money(page).locator(".told > *").first().innerText(), /^Cheapest /);
  await tick(page, "little and often").check();
  await drawn(page);
  const three = await pieces(page);
  await assertCompared(page, "open carpet", "tight balls", "little and often");
  await fill(page, "How long, if not as each says", "3 h");
  await assertCompared(page, "open carpet", "tight balls", "little and often", "--length", "3h");
  await fill(page, "How long, if not as each says", "");
  assert.deepEqual(await pieces(page), three);
  await reload(page);
  await goTo(page, "money");
  await drawn(page);
  assert.deepEqual(await pieces(page), three, "the ticks stay");
  await openFields(page);
  await tick(page, "tight balls").uncheck();
  await tick(page, "little and often").uncheck();
  await drawn(page);
  assert.deepEqual(await pieces(page), [], "one alone is no comparison, and nothing old stands there");
  assertQuiet(problems);
  await context.close();
});

test("a page of one strategy holds it against any other of the library", async () => {
  const { page, context } = await openMoney("carpet", "Compare");
  await openFields(page);
  await tick(page, "pellet led").check();
  await drawn(page);
  await assertCompared(page, "open carpet", "pellet led");
  await context.close();
});

test("the shopping list is the program's, for the next session and for more of them", async () => {
  const { page, context, problems } = await openMoney("carpet", "Buy");
  assertToldAlike(await pieces(page), program("shop", "open carpet"));
  await openFields(page);
  await fill(page, "Sessions", "3");
  await fill(page, "One every", "5");
  assertToldAlike(await pieces(page), program("shop", "open carpet=3", "--every", "5d"));
  await pick(page, "Shops").selectOption("one for all");
  await drawn(page);
  assertToldAlike(await pieces(page), program("shop", "open carpet=3", "--every", "5d", "--one-shop"));
  const bought = record("shop", "open carpet=3", "--every", "5d", "--one-shop").packs;
  assert.equal(await money(page).getByRole("checkbox").count(), bought.length);
  const list = await pieces(page);
  for (const slip of ["0", "401", "two", "1.5", ""]) {
    await fill(page, "Sessions", slip);
    assert.equal(await field(page, "Sessions").getAttribute("aria-invalid"), "true", slip);
    assert.deepEqual(await pieces(page), list, slip);
  }
  assertQuiet(problems);
  await context.close();
});

test("what is ticked off stays so until the packs change, and all ticks come off at one tap", async () => {
  const { page, context, problems } = await openMoney("carpet", "Buy");
  await tick(page, "brown crumb").check();
  await tick(page, "maize meal").check();
  await reload(page);
  await goTo(page, "money");
  await drawn(page);
  assert.ok(await tick(page, "brown crumb").isChecked());
  assert.ok(await tick(page, "maize meal").isChecked());
  assert.equal(await money(page).locator("input:checked").count(), 2);
  await openFields(page);
  await fill(page, "Anglers", "9");
  const packs = (name, people) => record("shop", "open carpet", "--people", people).packs.filter((pack) => pack.name === name).map((pack) => [pack.count, pack.size_g]);
  assert.notDeepEqual(packs("brown crumb", "9"), packs("brown crumb", "1"));
  assert.equal(await tick(page, "brown crumb").first().isChecked(), false, "another number of packs is not got yet");
  await fill(page, "Anglers", "1");
  assert.ok(await tick(page, "brown crumb").isChecked());
  await tap(page, "Take all ticks off");
  assert.equal(await money(page).locator("input:checked").count(), 0);
  await reload(page);
  await goTo(page, "money");
  await drawn(page);
  assert.equal(await money(page).locator("input:checked").count(), 0);
  assertQuiet(problems);
  await context.close();
});

test("a price of one's own counts in all that is reckoned, stays, and can be taken out", async () => {
  const { page, context, problems } = await openMoney("carpet", "Prices");
  const entry = { Of: "brown crumb", "A pack of": "1 kg", Costs: "\u00a35.50", Where: "the mill" };
  for (const [label, text] of Object.entries({ ...entry, Costs: "dear" })) await fillAny(page, label, text);
  await tap(page, "Keep this price");
  assert.equal(await anyField(page, "Costs").getAttribute("aria-invalid"), "true");
  assert.equal(await money(page).locator("li").count(), 0);
  await fillAny(page, "Costs", entry.Costs);
  await tap(page, "Keep this price");
  await drawn(page);
  assert.equal(await money(page).locator("li .words").innerText(), "brown crumb, 1 kg \u00a35.50, the mill");
  programWith("dear", "price", "brown crumb", "--pack", "1kg", "--is", entry.Costs, "--shop", "the mill");
  const dearer = programWith("dear", "cost", "open carpet");
  assert.notEqual(dearer, program("cost", "open carpet"));
  await look(page, "Cost");
  assertToldAlike(await pieces(page), dearer);
  await reload(page);
  await goTo(page, "money");
  await drawn(page);
  assertToldAlike(await pieces(page), dearer, "after a reload");
  await look(page, "Prices");
  await tap(page, "Take out");
  await tap(page, "Tap again");
  await look(page, "Cost");
  assertToldAlike(await pieces(page), program("cost", "open carpet"));
  assertQuiet(problems);
  await context.close();
});

test("a price of what nobody knows is refused with what is near it", async () => {
  const { page, context } = await openMoney("carpet", "Prices");
  await fillAny(page, "Of", "brown crum");
  await fillAny(page, "Costs", "\u00a32");
  await tap(page, "Keep this price");
  assert.match(await money(page).locator(".fault:visible").first().innerText(), /brown crumb/);
  assert.equal(await money(page).locator("li").count(), 0);
  await context.close();
});
