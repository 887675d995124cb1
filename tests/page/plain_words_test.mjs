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

async function withoutScripts(name, { width = 360 } = {}) {
  const context = await browser.newContext({ viewport: { width, height: 612 }, javaScriptEnabled: false, offline: true });
  const page = await context.newPage();
  await page.goto(pathToFileURL(pageFile(name)).href);
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
  ].join("\n"));
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

test("once the places are open they stand instead of it", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  assert.equal(await page.locator("#plain").count(), 0);
  assert.ok(await page.locator("#place-mix").isVisible());
  assertQuiet(problems);
  await context.close();
});
