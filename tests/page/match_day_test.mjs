// A match day on the phone alone, some eighty taps: a mix of one's own, tub, soak, feed, shed, money, fish; then the one file goes home,
// where `log add` takes it, and the program's sums are the page's.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, goTo, openBrowser, openPhone } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const secondTap = 1600;  // ms, after which a second tap counts
const inSight = "main section:not([hidden]), .dock:not([hidden]), dialog, [role=dialog], #notice:not([hidden]), nav";

/** A thumb that counts. A field that is filled is a tap, too. */
function thumb(page) {
  const parts = () => page.locator(inSight);
  const counted = async (work) => {
    taps.count += 1;
    await work;
    await drawn(page);
  };
  const taps = {
    count: 0,
    press: (name, nth = 0) => counted(parts().getByRole("button", { name, exact: true }).nth(nth).tap()),
    put: (label, text) => counted(parts().getByLabel(label, { exact: true }).last().fill(text)),
    choose: (name) => counted(parts().getByRole("radio", { name, exact: true }).last().check()),
    select: (label, value) => counted(parts().getByRole("combobox", { name: label, exact: true }).last().selectOption(value)),
    open: (words) => counted(parts().locator("summary").filter({ hasText: words }).first().tap()),
    row: (words) => counted(page.getByRole("dialog").locator(".way").filter({ hasText: words }).first().tap()),
    go: async (place) => {
      taps.count += ["mix", "tub", "soak", "feed"].includes(place) ? 1 : 2;
      await goTo(page, place);
      await drawn(page);
    },
  };
  return taps;
}

async function makeWindMix({ press, put, row, select }) {
  await press("Make your own");
  await press("Begin with nothing");
  await put("What it is called", "wind mix");
  for (const [words, share] of [["brown crumb", "3"], ["maize meal", "1"], ["ground hemp, toasted", "1"]]) {
    await press("Add an ingredient");
    await put("Find by words", words);
    await row(words);
    await put(words, share);
  }
  await select("Feel", "soft");
  await press("Keep this mix");
}

/** A store of its own that the file goes home to. */
function home(toml) {
  const folder = mkdtempSync(join(tmpdir(), "match-day-"));
  const run = (...words) => {
    const { stdout, stderr, status } = spawnSync(process.env.BANK_PROGRAM, [...words, "--store", join(folder, "store.db")], { encoding: "utf8", env: { ...process.env, LC_ALL: "C.UTF-8" } });
    assert.equal(status, 0, `${words.join(" ")}: ${stdout}${stderr}`);
    return words.includes("--json") ? JSON.parse(stdout) : stdout;
  };
  writeFileSync(join(folder, "home.toml"), toml);
  return { run, file: join(folder, "home.toml") };
}

const textIn = (page, place) => page.locator(`#place-${place}`).innerText();

test("a day on the page alone goes home in one file, and the program's sums are the page's", { timeout: 300000 }, async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const taps = thumb(page);

  // What is in the shed, and what it cost.
  await taps.go("shed");
  for (const [of, amount, price] of [["brown crumb", "2x1 kg", "\u00a32.10"], ["maize meal", "1 kg", "\u00a31.90"], ["ground hemp, toasted", "500 g", "\u00a32.50"]]) {
    if (!(await page.getByLabel("What is it", { exact: true }).isVisible())) await taps.open(/Something else|What you have/);
    await taps.put("What is it", of);
    await page.getByLabel("How much", { exact: true }).last().fill(amount);
    await taps.put("What a pack cost, if bought", price);
    await page.locator("#place-shed details.folded").filter({ hasText: /Something else|What you have/ }).getByRole("button", { name: "Bought", exact: true }).tap();
    taps.count += 2;
    await drawn(page);
  }

  // A mix of one's own, two litres of it, and its tub.
  await taps.go("mix");
  await makeWindMix(taps);
  await taps.open("wind mix");
  await taps.choose("Litres");
  await taps.put("How much, wet", "2");
  const mixed = await textIn(page, "mix");
  await taps.press("Mixed it");
  await taps.press("To the tub");
  const tub = await textIn(page, "tub");
  await taps.press("More: Water in");

  await taps.go("soak");
  await taps.press(/^Soak [0-9.]+ (s|min)$/);

  // The session: seven put-ins, one of them taken back.
  await taps.go("feed");
  await taps.press("Start now");
  for (let put = 0; put < 7; put += 1) {
    await page.locator(".put-in").tap();
    taps.count += 1;
    await page.waitForTimeout(secondTap);
  }
  await taps.press("Take back the last");

  await taps.go("drop");
  for (const form of ["Ball", "Feeder", "Cup"]) await taps.choose(form);
  await taps.go("money");
  const money = await textIn(page, "money");
  await taps.choose("Compare");
  await taps.choose("Cost");
  await taps.go("day");

  await taps.go("notes");
  await taps.put("Fish", "bream");
  await taps.put("Weight together", "1.5");
  await taps.press("Add");
  for (let fish = 0; fish < 3; fish += 1) {
    await page.waitForTimeout(secondTap);
    await taps.press("Another bream");
  }
  if (!(await page.getByLabel("Fish", { exact: true }).isVisible())) await taps.open("Add a fish");
  await taps.put("Fish", "roach");
  await taps.put("How many", "12");
  await taps.put("Weight together", "0.9");
  await taps.press("Add");
  await taps.put("Notes", "wind from the west, \"gusty\"");
  await taps.go("shed");
  await taps.press("Take off what was fed today");
  const shed = await textIn(page, "shed");
  await taps.go("notes");
  await taps.press("Save notes");
  const toml = await page.locator("#place-notes textarea[readonly]").last().inputValue();
  assertQuiet(problems);
  console.log(`${taps.count} taps`);
  assert.ok(taps.count >= 70 && taps.count <= 110, `${taps.count} taps`);

  // At home.
  const { run, file } = home(toml);
  const taken = run("log", "add", "--from", file, "--json");
  const [session] = taken.entered.filter((entry) => entry.what === "session");
  assert.equal(session.strategy, "open carpet");
  assert.equal(session.note, "wind from the west, \"gusty\"");
  assert.equal(taken.entered.filter((entry) => entry.what === "put-in").length, 6);
  const caught = taken.entered.filter((entry) => entry.what === "catch");
  assert.equal(caught.filter((entry) => entry.fish === "bream").reduce((sum, entry) => sum + entry.count, 0), 4);
  assert.equal(caught.filter((entry) => entry.fish === "roach").reduce((sum, entry) => sum + entry.count, 0), 12);
  assert.deepEqual(taken.mixes, [{ name: "wind mix", became: "added" }]);

  // The mix: as the page poured and weighed it.
  const answer = run("mix", "wind mix", "--wet-volume", "2l", "--water-temp", "14degC", "--json");
  for (const part of answer.kitchen.parts) assert.match(mixed, new RegExp(`${part.mass_g} g`), `${part.mass_g} g in\n${mixed}`);
  assert.match(mixed, new RegExp(`${answer.kitchen.water_g} ml`));
  const [logged] = taken.entered.filter((entry) => entry.what === "mix");
  assert.equal(logged.of, "wind mix");
  assert.equal(Math.round(logged.water_g), answer.kitchen.water_g);
  assert.ok(tub.includes("wind mix"));

  // The shed: what is left, name by name.
  for (const item of run("stock", "--json").items) {
    const grams = item.left_g;
    assert.ok([`${grams} g`, `${grams / 1000} kg`].some((words) => shed.includes(words)), `${item.name}: ${grams} g in\n${shed}`);
  }
  // The cost, with what the shed gave at home as it stood on the phone.
  const cost = run("cost", "open carpet", "--empty-shed", "--json");
  const pounds = (minor) => `\u00a3${(minor / 100).toFixed(2)}`;
  assert.ok(money.includes(pounds(cost.strategies[0].used_minor)), `${pounds(cost.strategies[0].used_minor)} in\n${money}`);

  // Taken in once more, nothing is doubled.
  const again = run("log", "add", "--from", file, "--json");
  assert.deepEqual([again.entered, again.stock], [[], []]);
  await context.close();
});
