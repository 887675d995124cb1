// Drop: each form, depth and tow; a slip; the words of the command line; and a picture that fits every screen.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, pick, told } from "./browser.mjs";

let browser, folder;
before(async () => {
  browser = await openBrowser();
  folder = mkdtempSync(join(tmpdir(), "drop-"));
});
after(async () => {
  rmSync(folder, { recursive: true, force: true });
  await browser.close();
});

const forms = [
  { as: "A cup", label: "Cup holds", size: "150 ml", flag: "--cup" },
  { as: "A ball", label: "Ball is", size: "60 mm", flag: "--ball" },
  { as: "A feeder", label: "Feeder holds", size: "40 ml", flag: "--feeder" },
  { as: "Loose", label: "Handful of", size: "80 ml", flag: "--loose" },
];
const waters = [{ depth: "1.2 m", tow: "0 cm/s" }, { depth: "2.5 m", tow: "2 cm/s" }, { depth: "4 m", tow: "6 cm/s" }];

async function openDrop(options) {
  const phone = await openPhone(browser, "carpet", options);
  await goTo(phone.page, "drop");
  await drawn(phone.page);
  return phone;
}

async function ask(page, { as, label, size }, { depth, tow }) {
  await page.locator("#place-drop").getByRole("radio", { name: as, exact: true }).check();
  await fill(page, label, size);
  await fill(page, "Depth", depth);
  await fill(page, "Tow", tow);
}

/** All the letters, without what only sets them. */
const letters = (text) => text.replace(/^ *-{5,}$/gm, "").replace(/\s+/g, "");

function printed(...flags) {
  const ran = spawnSync(process.env.BANK_PROGRAM, ["drop", ...flags, "--full", "--store", join(folder, "store.db")], { encoding: "utf8", env: { ...process.env, LC_ALL: "C.UTF-8" } });
  assert.equal(ran.status, 0, ran.stderr);
  return letters(ran.stdout);
}

test("each form in each water is told in the command line's words", async () => {
  const { page, context, problems } = await openDrop();
  await pick(page, "Feel").selectOption("firm");
  for (const form of forms) {
    for (const water of waters) {
      await ask(page, form, water);
      assert.equal(letters(await told(page, "drop").evaluate((node) => node.textContent)),
        printed("silt bed", "--feel", "firm", form.flag, form.size, "--depth", water.depth, "--tow", water.tow), `${form.as}, ${water.depth}, ${water.tow}`);
    }
  }
  await page.locator("#place-drop").getByRole("radio", { name: "A ball", exact: true }).check();
  await pick(page, "Squeezed").selectOption("hard");
  await pick(page, "Mix").selectOption("dark treacle");
  await drawn(page);
  assert.equal(letters(await told(page, "drop").evaluate((node) => node.textContent)),
    printed("dark treacle", "--ball", "60 mm", "--squeeze", "hard", "--depth", "4 m", "--tow", "6 cm/s"));
  await pick(page, "Water is").selectOption("flowing");
  await drawn(page);
  assert.match(await told(page, "drop").innerText(), /Tow\s+Taken for flowing water/);
  assert.equal(letters(await told(page, "drop").evaluate((node) => node.textContent)),
    printed("dark treacle", "--ball", "60 mm", "--squeeze", "hard", "--depth", "4 m", "--tow", "6 cm/s", "--water", "river"));
  assertQuiet(problems);
  await context.close();
});

test("it opens on the strategy's own water, and cautions stand in sight", async () => {
  const { page, context, problems } = await openDrop();
  assert.equal(await field(page, "Depth").inputValue(), "2.5 m");
  assert.equal(await pick(page, "Mix").inputValue(), "silt bed");
  assert.match(await told(page, "drop").innerText(), /Take care\s+Fine dust and allergens \(fish, gluten, soya\), as 'mix' says in full/);
  assert.equal(await pick(page, "Squeezed").isVisible(), false);
  assertQuiet(problems);
  await context.close();
});

test("a ball that is too wet to hold is refused in the command line's words", async () => {
  const { page, context, problems } = await openDrop();
  await pick(page, "Feel").selectOption("soft");
  await page.locator("#place-drop").getByRole("radio", { name: "A ball", exact: true }).check();
  await drawn(page);
  assert.match(await page.locator("#place-drop").innerText(), /at the feel 'soft' the mix is too wet to be a ball/);
  await pick(page, "Feel").selectOption("firm");
  await drawn(page);
  assert.doesNotMatch(await page.locator("#place-drop").innerText(), /too wet/);
  assertQuiet(problems);
  await context.close();
});

test("what a person saw takes the place of the estimates, in the command line's words", async () => {
  const { page, context, problems } = await openDrop();
  await pick(page, "Feel").selectOption("soft");
  await ask(page, forms[0], waters[1]);
  await page.locator("#place-drop summary").click();
  const looks = { "It broke at": ["0.8 m", "--breaks-at"], "It lay this wide": ["1.4 m", "--carpet-seen"], "A level cup weighs": ["160 g", "--cup-weighs"] };
  assert.equal(await field(page, "It held for").isVisible(), false);
  for (const [label, [text]] of Object.entries(looks)) await fill(page, label, text);
  const flags = Object.values(looks).flatMap(([text, flag]) => [flag, text]);
  assert.equal(letters(await told(page, "drop").evaluate((node) => node.textContent)),
    printed("silt bed", "--feel", "soft", "--cup", "150 ml", "--depth", "2.5 m", "--tow", "2 cm/s", ...flags));
  assert.match(await page.locator("#place-drop summary").innerText(), /You saw: it broke at 0.8 m/);
  await fill(page, "It broke at", "soon");
  assert.equal(await field(page, "It broke at").getAttribute("aria-invalid"), "true");
  assertQuiet(problems);
  await context.close();
});

test("a slip stands beside its field; the last good answer and its picture stay, greyed", async () => {
  const { page, context, problems } = await openDrop();
  const good = await told(page, "drop").innerText();
  for (const [label, slip, mended] of [["Depth", "deep", "2.5 m"], ["Tow", "2 kg", "2 cm/s"], ["Cup holds", "-5", "250 ml"]]) {
    await fill(page, label, slip);
    assert.equal(await field(page, label).getAttribute("aria-invalid"), "true", label);
    assert.match(await page.locator(`#${await field(page, label).getAttribute("aria-describedby")}`).innerText(), /./, label);
    assert.equal(await told(page, "drop").innerText(), good, label);
    assert.ok(await page.locator("#place-drop .answer.stale").isVisible(), label);
    assert.ok(await page.locator(".picture.stale svg").isVisible(), label);
    await fill(page, label, mended);
    assert.equal(await field(page, label).getAttribute("aria-invalid"), null, label);
    assert.equal(await page.locator("#place-drop .stale").count(), 0, label);
  }
  assertQuiet(problems);
  await context.close();
});

/** What of the drawing reaches over its edge, to half a pixel for the stroke. */
const overTheEdge = (page) => page.locator(".picture svg").evaluate((drawing) => {
  const edge = drawing.viewBox.baseVal;
  return [...drawing.querySelectorAll("text, line, polyline, polygon, path, circle, ellipse")].map((one) => ({ one, box: one.getBBox() }))
    .filter(({ box }) => box.x < -0.5 || box.y < -0.5 || box.x + box.width > edge.width + 0.5 || box.y + box.height > edge.height + 0.5)
    .map(({ one, box }) => `${one.localName} "${one.textContent}" from ${box.x} to ${box.x + box.width} of ${edge.width}`);
});

for (const width of [360, 320]) {
  test(`the picture is whole, its words are text, and it fits ${width} pixels`, async () => {
    const { page, context, problems } = await openDrop({ width });
    await pick(page, "Feel").selectOption("firm");
    for (const form of forms) {
      for (const water of waters) {
        await ask(page, form, water);
        const where = `${form.as}, ${water.depth}, ${water.tow}`;
        const box = await page.locator(".picture svg").boundingBox();
        assert.ok(box.x >= 0 && box.x + box.width <= width && box.width > width / 2 && box.height > 100, `${where}: ${JSON.stringify(box)}`);
        assert.ok((await page.evaluate(() => document.documentElement.scrollWidth)) <= width, where);
        assert.deepEqual(await overTheEdge(page), [], where);
        const texts = (await page.locator(".picture svg text").allTextContents()).join("; ");
        assert.match(texts, /surface/, where);
        assert.match(texts, new RegExp(`${Number.parseFloat(water.depth)} m`), where);
        assert.match(await page.locator(".picture svg desc").textContent(), /^In .* m of water it /, where);
      }
    }
    assertQuiet(problems);
    await context.close();
  });
}

test("the picture brings nothing with it that could act or reach outside", async () => {
  const { page, context } = await openDrop();
  const wild = await page.evaluate(() => {
    const made = safePicture('<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 9 9" onload="a()"><script>a()</script>'
      + '<foreignObject><b/></foreignObject><a href="x:"><text>in a link</text></a><image href="x.png"/><text onclick="a()" style="fill:red" x="1">kept</text></svg>');
    return { tags: [...made.querySelectorAll("*")].map((one) => one.localName), attributes: [made, ...made.querySelectorAll("*")].flatMap((one) => one.getAttributeNames()) };
  });
  assert.deepEqual(wild.tags, ["text"]);
  assert.ok(!wild.attributes.some((name) => /^on|href|style/.test(name)), wild.attributes.join());
  assert.equal(await page.evaluate(() => safePicture("<p>no drawing</p>")), null);
  await context.close();
});
