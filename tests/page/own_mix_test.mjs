// Make your own: parts by share or weight out of all ingredients, copied, kept for all strategies, sent, changed and taken out.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, openBrowser, openLines, openPhone, pick, reload, told } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const sheet = (page) => page.getByRole("dialog");
const box = (page, label) => sheet(page).getByRole("textbox", { name: label, exact: true });
const act = (page, name) => sheet(page).getByRole("button", { name, exact: true }).tap();

async function beginWithNothing(page) {
  await page.getByRole("button", { name: "Make your own" }).tap();
  await act(page, "Begin with nothing");
}

async function addPart(page, words, name, amount) {
  await act(page, "Add an ingredient");
  await box(page, "Find by words").fill(words);
  await sheet(page).locator(".way").filter({ hasText: name }).first().tap();
  if (amount) await box(page, name).fill(amount);
  await drawn(page);
}

async function keepMix(page) {
  await act(page, "Keep this mix");
  await sheet(page).waitFor({ state: "detached" });
  await drawn(page);
}

/** What the program answers to a mix in a file. */
function programsMix(toml, ...flags) {
  const folder = mkdtempSync(join(tmpdir(), "own-mix-"));
  writeFileSync(join(folder, "own.toml"), toml);
  const run = (...words) => spawnSync(process.env.BANK_PROGRAM, [...words, "--store", join(folder, "store.db")], { encoding: "utf8", env: { ...process.env, LC_ALL: "C.UTF-8" } });
  const added = run("recipe", "add", join(folder, "own.toml"));
  assert.equal(added.status, 0, added.stdout + added.stderr);
  const mixed = run("mix", "bank brew", ...flags, "--json");
  assert.equal(mixed.status, 0, mixed.stdout + mixed.stderr);
  return JSON.parse(mixed.stdout);
}

async function makeBankBrew(page) {
  await beginWithNothing(page);
  await box(page, "What it is called").fill("bank brew");
  await addPart(page, "brown crumb", "brown crumb", "3");
  await addPart(page, "maize meal", "maize meal", "1");
  await keepMix(page);
}

test("a mix made on the phone takes the water that the program gives it, by the very text that is sent", async () => {
  const { page, context, problems } = await openPhone(browser, "several");
  await makeBankBrew(page);
  assert.match(await told(page, "mix").innerText(), /^bank brew, firm:/);
  const ours = await page.evaluate(() => askEngine({ ask: "mix", words: ["bank brew"], flags: { "--dry-mass": ["1 kg"] }, give: ["json"] }).json);
  await page.getByRole("button", { name: "Change this mix" }).tap();
  await sheet(page).getByText("Send it as text").tap();
  assert.match(await box(page, "The mix").inputValue(), /^bank brew, firm: 3 parts brown crumb; 1 part maize meal\.$/);
  await sheet(page).getByRole("radio", { name: "For the program" }).check();
  const theirs = programsMix(await box(page, "The mix").inputValue(), "--dry-mass", "1kg");
  for (const key of ["water_to_add_g", "water_first_g", "wet_volume_ml", "absorption_g_g"]) assert.equal(ours[key], theirs[key], key);
  assertQuiet(problems);
  await context.close();
});

test("it is kept for all strategies, and is there when the page is opened anew", async () => {
  const { page, context, problems } = await openPhone(browser, "several");
  await makeBankBrew(page);
  await page.getByRole("combobox", { name: "Strategy", exact: true }).selectOption("tight balls");
  await openLines(page);
  await pick(page, "Mix").selectOption("bank brew");
  await drawn(page);
  assert.match(await told(page, "mix").innerText(), /^bank brew/);
  await page.evaluate(() => keepNow());
  await reload(page);
  assert.match(await told(page, "mix").innerText(), /^bank brew/);
  assertQuiet(problems);
  await context.close();
});

test("a shipped mix is copied with all that is in it, changed, renamed, and taken out on a second tap", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await page.getByRole("button", { name: "Make your own" }).tap();
  for (const name of ["fishmeal, brown", "brown crumb", "ground fishmeal pellet", "maize meal"]) assert.ok(await box(page, name).isVisible(), name);
  await act(page, "Leave out maize meal");
  await box(page, "What it is called").fill("silt bed");
  await drawn(page);
  assert.equal(await box(page, "What it is called").getAttribute("aria-invalid"), "true", "a shipped mix is not overwritten");
  await box(page, "What it is called").fill("silt bed without maize");
  await keepMix(page);
  assert.doesNotMatch(await told(page, "mix").innerText(), /maize meal/);
  await page.getByRole("button", { name: "Change this mix" }).tap();
  await box(page, "What it is called").fill("three part");
  await keepMix(page);
  assert.match(await told(page, "mix").innerText(), /^three part/);
  await page.getByRole("button", { name: "Change this mix" }).tap();
  await act(page, "Take this mix out");
  await act(page, "Tap again: the mix goes");
  await sheet(page).waitFor({ state: "detached" });
  await drawn(page);
  assert.match(await told(page, "mix").innerText(), /^silt bed/);
  assert.deepEqual(await page.evaluate(() => bank.shared.mixes), []);
  assertQuiet(problems);
  await context.close();
});

test("all ingredients are found by any words, each slip is told at its part, and raw pulses are told how to be cooked where they are chosen", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await beginWithNothing(page);
  assert.ok((await page.evaluate(() => bank.library.ingredients.length)) >= 154);
  await act(page, "Add an ingredient");
  await box(page, "Find by words").fill("meal maize");
  assert.match(await sheet(page).locator(".way").first().innerText(), /maize meal/);
  const height = await sheet(page).locator(".way").first().evaluate((one) => one.getBoundingClientRect().height);
  assert.ok(height >= 44, `a row is ${height} px high`);
  await sheet(page).locator(".way").first().tap();
  await box(page, "maize meal").fill("a handful");
  await drawn(page);
  assert.equal(await box(page, "maize meal").getAttribute("aria-invalid"), "true");
  await box(page, "maize meal").fill("2");
  await drawn(page);
  assert.equal(await box(page, "maize meal").getAttribute("aria-invalid"), null);
  const raw = "maple peas, dry";
  await addPart(page, raw, raw);
  assert.match(await sheet(page).locator(".fault:visible").allInnerTexts().then((all) => all.join(" ")), /never fed.*soak.*boil.*cooked maple peas/is);
  assertQuiet(problems);
  await context.close();
});

test("what was measured of one's own bag counts from then on, as it does in the program", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  const before = await page.evaluate(() => askEngine({ ask: "mix", words: ["silt bed"], flags: { "--dry-mass": ["1 kg"] }, give: ["json"] }).json.water_to_add_g);
  await page.getByRole("button", { name: "Make your own" }).tap();
  const entry = sheet(page).locator(".entry").filter({ hasText: "brown crumb" });
  await entry.locator("summary").tap();
  await entry.getByRole("textbox", { name: "Water it holds, measured" }).fill("0.9");
  await entry.getByRole("button", { name: "Keep this of my bag" }).tap();
  await act(page, "Back");
  await sheet(page).waitFor({ state: "detached" });
  const after = await page.evaluate(() => askEngine({ ask: "mix", words: ["silt bed"], flags: { "--dry-mass": ["1 kg"] }, give: ["json"] }).json.water_to_add_g);
  assert.ok(after > before + 50, `${before} and then ${after}`);
  const store = join(mkdtempSync(join(tmpdir(), "own-bag-")), "store.db");
  const run = (...words) => spawnSync(process.env.BANK_PROGRAM, [...words, "--json", "--store", store], { encoding: "utf8" }).stdout;
  run("ingredient", "measure", "brown crumb", "--absorption", "0.9 g/g");
  assert.equal(after, JSON.parse(run("mix", "silt bed", "--dry-mass", "1kg")).water_to_add_g);
  assertQuiet(problems);
  await context.close();
});
