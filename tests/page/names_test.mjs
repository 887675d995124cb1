// Names that a careless page would take for markup are text in every place, and come back from the notes as they are.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, openBrowser, openLines, openPhone, pick, placeNames, reload, tap } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

// As in awkward-names.toml.
const mix = "<script>document.title = 1 & \"crème\" 'brûlée'";
const ingredient = "<img src=x onerror=alert(1)>";
const strategy = "żółw & <b>\"bold\" 'ñandú'";
const noon = (page) => page.clock.install({ time: new Date("2026-11-28T12:00:00Z") });

/** Nothing that a name could have brought with it. */
async function assertHarmless(page, place) {
  const strangers = await page.evaluate(() => [...document.querySelectorAll("#card img, #card script, #card iframe, #card a, main b b, header b")].map((one) => one.outerHTML));
  assert.deepEqual(strangers, [], place);
  assert.equal(await page.title(), `${strategy}, bank page`, place);
}

const seen = (page, place) => page.locator(`#place-${place} .content`).evaluate((node) => node.textContent);

test("awkward names stand in every place, letter for letter", async () => {
  const { page, context, problems } = await openPhone(browser, "names", { before: noon });
  page.on("dialog", (dialog) => problems.push(`a dialog: ${dialog.message()}`));
  assert.equal(await page.locator("#strategy").innerText(), strategy);
  const expected = { mix: [mix, ingredient], soak: [], feed: [strategy, mix, ingredient], drop: [mix, ingredient], notes: [mix, ingredient] };
  for (const place of placeNames) {
    await goTo(page, place);
    await drawn(page);
    if (place === "feed") {
      await tap(page, "Start now");
      await page.locator(".timeline input").first().check();
      await drawn(page);
      assert.ok((await page.locator(".next").innerText()).endsWith(`, ${ingredient}`), await page.locator(".next").innerText());
    }
    const text = await seen(page, place);
    for (const name of expected[place]) assert.ok(text.includes(name), `${place} lacks ${name}`);
    await assertHarmless(page, place);
  }
  assertQuiet(problems);
  await context.close();
});

test("they are asked about, told in faults, kept and noted as they are", async () => {
  const { page, context, problems } = await openPhone(browser, "names", { before: noon });
  await openLines(page);
  await pick(page, "Mix").selectOption(mix);
  await page.getByRole("radio", { name: "What I have", exact: true }).check();
  await pick(page, "of").selectOption(ingredient);
  await fill(page, "I have this much", "200 g");
  assert.ok((await seen(page, "mix")).includes(`The ${ingredient} runs out first`));
  await tap(page, "Mixed it");
  await goTo(page, "feed");
  await tap(page, "Start now");
  await openLines(page);
  await fill(page, mix, "1 l");
  await fill(page, ingredient, "half <b>a</b> tub");
  assert.ok((await page.locator("#place-feed .fault:visible").innerText()).includes("'half <b>a</b> tub'"));
  await fill(page, ingredient, "300 g");
  assert.ok((await seen(page, "feed")).includes("12:00: 3 h left"));
  await page.locator(".timeline input").first().check();
  await goTo(page, "notes");
  await fill(page, "Fish", `<svg onload=alert(1)> "brème" ''' żółw`);
  await tap(page, "Add");
  await tap(page, "Save notes");
  await reload(page);
  await goTo(page, "notes");
  await tap(page, "Save notes");
  const text = await page.getByLabel("Your notes as they are saved").inputValue();
  const ran = spawnSync("python3", ["-c", "import json, sys, tomllib; print(json.dumps(tomllib.loads(sys.stdin.buffer.read().decode()), default=str))"], { input: text, encoding: "utf8" });
  assert.equal(ran.status, 0, ran.stderr);
  const [session] = JSON.parse(ran.stdout).session;
  assert.equal(session.strategy, strategy);
  assert.equal(session.mixed[0].of, mix);
  assert.equal(session.put_in[0].of, mix);
  assert.equal(session.catch[0].fish, `<svg onload=alert(1)> "brème" ''' żółw`);
  await assertHarmless(page, "notes");
  const [file] = await Promise.all([page.waitForEvent("download"), tap(page, "Download")]);
  assert.match(file.suggestedFilename(), /^[a-z0-9.-]+[.]toml$/);
  assertQuiet(problems);
  await context.close();
});

test("the drawing of an awkward mix holds only shapes and words", async () => {
  const { page, context, problems } = await openPhone(browser, "names", { context: { viewport: { width: 900, height: 740 } } });
  await goTo(page, "drop");
  await page.locator(".picture svg").waitFor();
  const shapes = await page.locator(".picture svg").evaluate((drawing) => [...new Set([...drawing.querySelectorAll("*")].map((one) => one.localName))]);
  for (const one of shapes) assert.ok(["title", "desc", "rect", "line", "polyline", "text", "path", "circle", "ellipse", "polygon", "g"].includes(one), one);
  assert.ok((await page.locator(".picture svg").evaluate((node) => node.textContent)).includes(mix), "a wide drawing bears the mix's name");
  assertQuiet(problems);
  await context.close();
});
