// Plain words: what the page says where no script runs at all, held against the program's own plan, mix and soak.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { after, before, test } from "node:test";
import { assertQuiet, openBrowser, openPhone, pageFile } from "./browser.mjs";

let browser, folder;
before(async () => {
  browser = await openBrowser();
  folder = mkdtempSync(join(tmpdir(), "plain-words-"));
});
after(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

function program(...words) {
  const { stdout, stderr, status } = spawnSync(process.env.BANK_PROGRAM, [...words, "--store", join(folder, "store.db")], { encoding: "utf8", env: { ...process.env, LC_ALL: "C.UTF-8" } });
  assert.ok(status === 0 || status === 1, `${words.join(" ")}: ${stderr}`);
  return stdout;
}

const squeezed = (text) => text.replace(/\s+/g, " ").trim();

async function withoutScripts(name, { width = 360, file = pageFile(name) } = {}) {
  const context = await browser.newContext({ viewport: { width, height: 612 }, javaScriptEnabled: false, offline: true });
  const page = await context.newPage();
  await page.goto(pathToFileURL(file).href);
  return { page, context };
}

/** What the commands say to whom asks them first of a strategy. */
function asked(strategy, ...flags) {
  const plan = JSON.parse(program("plan", strategy, ...flags, "--json"));
  const water = ["--water-temp", `${plan.water_temp_c}degC`];
  const mixes = JSON.parse(program("recipe", "list", "--json")).recipes.map((recipe) => recipe.name);
  const batch = plan.batches.find((one) => mixes.includes(one.name));
  const soaks = plan.soaks.map((soak) => `${soak.name}=${soak.dry_mass_g}g`);
  return squeezed([
    program("plan", strategy, ...flags), program("mix", batch.name, "--dry-mass", `${batch.dry_mass_g}g`, "--feel", batch.feel, ...water),
    soaks.length ? program("soak", ...soaks, ...water) : "",
  ].join("\n")).replace(" (baitwright ingredient measure)", "").replace("give the weights to baitwright ingredient measure.", "write the weights down for home.");
}

test("with scripts off, every line and every cell of it is what plan, mix and soak say in the terminal", async () => {
  const { page, context } = await withoutScripts("carpet");
  const lines = (await page.locator("#plain").innerText()).split(/[\n\t]/).map(squeezed).filter(Boolean);
  const terminal = asked("open carpet", "--start", "09:30");
  const own = ["open carpet", "Take care"];
  const isSaid = (text) => terminal.includes(text) || terminal.includes(text.replace(/^[A-Z a-z]+: /, "")) || text.replace(/^[a-z ]+: /, "").split("; ").every((part) => terminal.includes(part));
  assert.ok(lines.length > 60, `${lines.length} lines`);
  assert.deepEqual(lines.filter((line) => !own.includes(line) && !isSaid(line)), []);
  await context.close();
});

test("with scripts off, the first screen says which mix, what to pour and all that is weighed", async () => {
  const { page, context } = await withoutScripts("carpet");
  assert.match(await page.locator("noscript").innerText(), /JavaScript/);
  for (const words of ["open carpet", /silt bed, soft: /, /^Pour: /, "fishmeal, brown", "maize meal"]) {
    const box = await page.locator("#plain").getByText(words, { exact: typeof words === "string" }).first().boundingBox();
    assert.ok(box.y + box.height < 612 && box.width > 20, `${words}: ${JSON.stringify(box)}`);
  }
  await context.close();
});

test("with scripts off, nothing is wider than the screen, and it prints to two sheets at the most", async () => {
  for (const name of ["carpet", "names"]) {
    const { page, context } = await withoutScripts(name);
    for (const node of await page.locator("#plain > *").all()) {
      const box = await node.boundingBox();
      assert.ok(box.x >= 0 && box.x + box.width <= 360, `${name}: ${await node.innerText()}`);
    }
    if (name === "carpet") {
      const sheets = (await page.pdf({ format: "A4" })).toString("latin1").match(/\/Type\s*\/Page\b/g).length;
      assert.ok(sheets <= 2, `${sheets} sheets`);
    }
    await context.close();
  }
});

test("each strategy of a page stands in it by its name, and hostile names stay words", async () => {
  const several = await withoutScripts("several");
  assert.deepEqual(await several.page.locator("#plain h1").allInnerTexts(), ["open carpet", "tight balls", "little and often"]);
  await several.context.close();
  const names = await withoutScripts("names");
  const tags = await names.page.locator("#plain *").all();
  assert.ok(tags.length > 20);
  for (const tag of ["script", "img", "a", "b", "i", "style", "iframe"]) assert.equal(await names.page.locator(`#plain ${tag}`).count(), 0, tag);
  await names.context.close();
});

test("a page of the whole library says what a litre of each mix takes, as mix does, and opens on a strategy of it", async () => {
  const file = join(folder, "all.html");
  assert.match(squeezed(program("page", "-o", file)), /whole library, \d+ strategies and \d+ mixes, is in /);
  const { page, context } = await withoutScripts("all", { file });
  const rows = await page.locator("#plain tr").evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
  assert.equal(rows.length - 1, JSON.parse(program("recipe", "list", "--json")).recipes.length);
  for (const [mix, dry, water] of [rows[1], rows[12], rows.at(-1)]) {
    const told = squeezed(program("mix", mix.slice(0, mix.lastIndexOf(", ")), "--wet-volume", "1l"));
    assert.ok(told.includes(`in all, before water ${dry} `) && told.includes(`water ${water} `), `${mix}: ${dry}, ${water} in ${told}`);
  }
  await context.close();
  const open = await openPhone(browser, "all", { file });
  assert.ok(await open.page.locator("#place-mix .told").first().isVisible());
  const offered = await open.page.evaluate(() => bank.library.strategies.length);
  assert.equal(offered, JSON.parse(program("strategy", "list", "--json")).strategies.length);
  assertQuiet(open.problems);
  await open.context.close();
});

test("once the places are open they stand instead of it", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  assert.equal(await page.locator("#plain").count(), 0);
  assert.ok(await page.locator("#place-mix").isVisible());
  assertQuiet(problems);
  await context.close();
});
