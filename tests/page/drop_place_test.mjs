// Drop: each form, depth and tow; a slip; the words of the command line; and a picture that fits every screen.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, openBrowser, openPhone, pick, reload } from "./browser.mjs";
import { assertToldAlike, letters, program, record } from "./told_alike.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const forms = [
  { as: "Cup", label: "Cup holds", size: "150 ml", flag: "--cup" },
  { as: "Ball", label: "Ball is", size: "60 mm", flag: "--ball" },
  { as: "Feeder", label: "Feeder holds", size: "40 ml", flag: "--feeder" },
  { as: "Loose", label: "Handful of", size: "80 ml", flag: "--loose" },
];
const waters = [{ depth: "1.2 m", tow: "0 cm/s" }, { depth: "2.5 m", tow: "2 cm/s" }, { depth: "4 m", tow: "6 cm/s" }];

const drop = (page) => page.locator("#place-drop");
const wayIn = (page, as) => page.locator("#docks").getByRole("radio", { name: as, exact: true });
const folded = (page, nth) => drop(page).locator(".folded > summary").nth(nth);

/** Drop with its fields open, as all that is folded is tested elsewhere. */
async function openDrop(options) {
  const phone = await openPhone(browser, "carpet", options);
  await goTo(phone.page, "drop");
  await drawn(phone.page);
  await folded(phone.page, 0).click();
  return phone;
}

async function ask(page, { as, label, size }, { depth, tow }) {
  await wayIn(page, as).check();
  await fill(page, label, size);
  await fill(page, "Depth", depth);
  await fill(page, "Tow", tow);
}

/** The page's pieces are the program's. */
async function assertDropAlike(page, flags, where) {
  const pieces = await drop(page).locator(".answer .told > *, .more .told > *").evaluateAll((nodes) => nodes.map((node) => node.textContent));
  assertToldAlike(pieces, program("drop", ...flags, "--full"), where);
}

const answered = (page) => drop(page).locator(".answer .told").innerText();

test("each form in each water is told in the command line's words", async () => {
  const { page, context, problems } = await openDrop();
  await pick(page, "Feel").selectOption("firm");
  for (const form of forms) {
    for (const water of waters) {
      await ask(page, form, water);
      await assertDropAlike(page, ["silt bed", "--feel", "firm", form.flag, form.size, "--depth", water.depth, "--tow", water.tow], `${form.as}, ${water.depth}, ${water.tow}`);
    }
  }
  await wayIn(page, "Ball").check();
  await pick(page, "Squeezed").selectOption("hard");
  await pick(page, "Mix").selectOption("dark treacle");
  await drawn(page);
  const ball = ["dark treacle", "--ball", "60 mm", "--squeeze", "hard", "--depth", "4 m", "--tow", "6 cm/s"];
  await assertDropAlike(page, ball, "another mix");
  await pick(page, "Water is").selectOption("flowing");
  await drawn(page);
  await assertDropAlike(page, [...ball, "--water", "river"], "flowing water");
  assertQuiet(problems);
  await context.close();
});

test("it opens on the plan's mix, way in and size, in the strategy's water, and leads with what to expect, then how sure", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await goTo(page, "drop");
  await drawn(page);
  const [fed] = record("plan", "open carpet").feeds;
  assert.equal(await folded(page, 0).innerText(), `${fed.of}, soft, ${Math.round(fed.size_ml)} ml; 2.5 m deep, tow 2 cm/s`);
  assert.ok(await wayIn(page, "Cup").isChecked());
  assert.equal(await field(page, "Depth").isVisible(), false, "the fields are one line until it is opened");
  const labels = await drop(page).locator(".answer .told > *").allInnerTexts();
  assert.match(labels[1], /^Breaks [0-9.]+ m down, half is on the bed after [0-9]+ s, lies [0-9.]+ m long and [0-9.]+ m wide\.$/);
  assert.match(labels[2], /^How sure/);
  assert.match(labels.join("\n"), /Take care\s+Fine dust and allergens \(fish, gluten, soya\)/);
  assert.equal(await drop(page).locator(".more").getAttribute("open"), null);
  assertQuiet(problems);
  await context.close();
});

test("a strategy that feeds balls opens on its ball", async () => {
  const { page, context } = await openPhone(browser, "several");
  await page.getByRole("combobox", { name: "Strategy" }).selectOption("tight balls");
  await goTo(page, "drop");
  await drawn(page);
  const plan = record("plan", "tight balls");
  const ball = plan.feeds.find((feed) => feed.as === "ball");
  assert.ok(await wayIn(page, "Ball").isChecked());
  assert.ok((await folded(page, 0).innerText()).includes(`${ball.diameter_mm} mm`), await folded(page, 0).innerText());
  await context.close();
});

test("the other ways in stand side by side, in the sizes that were typed, with the program's own figures", async () => {
  const { page, context, problems } = await openDrop();
  await pick(page, "Feel").selectOption("firm");
  for (const form of forms) await ask(page, form, waters[1]);
  const beside = drop(page).locator(".beside");
  await page.waitForFunction(() => document.querySelectorAll(".beside tbody tr").length === 4);
  await page.waitForFunction((size) => document.querySelector(".beside tbody").innerText.includes(size), "80 ml");
  const question = ["drop", "silt bed", "--feel", "firm", "--compare", "forms", "--depth", "2.5 m", "--tow", "2 cm/s", ...forms.flatMap((form) => [form.flag, form.size])];
  const printed = program(...question);
  const { drops } = record(...question);
  const rows = await beside.locator("tbody tr").evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.innerText)));
  assert.deepEqual(rows.map((row) => row[0]), drops.map((one) => one.form));
  assert.deepEqual(await beside.locator("thead th").allInnerTexts(), ["", "breaks", "half down", "patch"]);
  for (const [, ...cells] of rows) for (const cell of cells) assert.ok(letters(printed).includes(letters(cell)), cell);
  const chosen = drops[rows.findIndex((row) => row[1] !== "surface" && row[1] !== "bottom")];
  assert.ok(rows.some((row) => Math.abs(Number.parseFloat(row[1]) - chosen.breaks_depth_m) < 0.01), JSON.stringify(rows));
  assertQuiet(problems);
  await context.close();
});

test("a ball that is too wet to hold is refused in the command line's words", async () => {
  const { page, context, problems } = await openDrop();
  await pick(page, "Feel").selectOption("soft");
  await wayIn(page, "Ball").check();
  await drawn(page);
  assert.match(await drop(page).locator(".fault:visible").first().innerText(), /at the feel 'soft' the mix is too wet to be a ball/);
  await pick(page, "Feel").selectOption("firm");
  await drawn(page);
  assert.equal(await drop(page).locator(".fault:visible").count(), 0);
  assertQuiet(problems);
  await context.close();
});

test("what a person saw takes the place of the estimates, and only what fits the way in is asked", async () => {
  const { page, context, problems } = await openDrop();
  await pick(page, "Feel").selectOption("soft");
  await ask(page, forms[0], waters[1]);
  await folded(page, 1).click();
  const looks = { "It broke at": ["0.8 m", "--breaks-at"], "It lay this wide": ["1.4 m", "--carpet-seen"], "A level cup weighs": ["160 g", "--cup-weighs"] };
  assert.equal(await field(page, "It held for").isVisible(), false);
  const before = await drop(page).locator(".picture svg desc").textContent();
  for (const [label, [text]] of Object.entries(looks)) await fill(page, label, text);
  const flags = Object.values(looks).flatMap(([text, flag]) => [flag, text]);
  await assertDropAlike(page, ["silt bed", "--feel", "soft", "--cup", "150 ml", "--depth", "2.5 m", "--tow", "2 cm/s", ...flags], "what was seen");
  assert.match(await folded(page, 1).innerText(), /You saw: it broke at 0.8 m/);
  assert.notEqual(await drop(page).locator(".picture svg desc").textContent(), before);
  assert.match(await drop(page).locator(".picture svg desc").textContent(), /breaks about 0\.80 m down/);
  await reload(page);
  await goTo(page, "drop");
  assert.match(await folded(page, 1).innerText(), /You saw: it broke at 0.8 m/, "and it stays");
  await folded(page, 1).click();
  await fill(page, "It broke at", "soon");
  assert.equal(await field(page, "It broke at").getAttribute("aria-invalid"), "true");
  await wayIn(page, "Loose").check();
  await drawn(page);
  assert.equal(await field(page, "It broke at").isVisible(), false, "a cup's look says nothing of a handful");
  assert.equal(await drop(page).locator(".answer.stale").count(), 0);
  assertQuiet(problems);
  await context.close();
});

test("a slip stands beside its field; the last good answer and its picture stay, greyed", async () => {
  const { page, context, problems } = await openDrop();
  const good = await answered(page);
  for (const [label, slip, mended] of [["Depth", "deep", "2.5 m"], ["Tow", "2 kg", "2 cm/s"], ["Cup holds", "-5", "250 ml"]]) {
    await fill(page, label, slip);
    assert.equal(await field(page, label).getAttribute("aria-invalid"), "true", label);
    assert.match(await page.locator(`#${await field(page, label).getAttribute("aria-describedby")}`).innerText(), /./, label);
    assert.equal(await answered(page), good, label);
    assert.ok(await drop(page).locator(".answer.stale").isVisible(), label);
    assert.ok(await page.locator(".picture.stale svg").isVisible(), label);
    await fill(page, label, mended);
    assert.equal(await field(page, label).getAttribute("aria-invalid"), null, label);
    assert.equal(await drop(page).locator(".stale").count(), 0, label);
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

/** Words of the drawing that stand on each other. */
const onEachOther = (page) => page.locator(".picture svg").evaluate((drawing) => {
  const words = [...drawing.querySelectorAll("text")].map((one) => ({ text: one.textContent, box: one.getBBox() }));
  const clash = (a, b) => a.x < b.x + b.width && b.x < a.x + a.width && a.y + 3 < b.y + b.height - 3 && b.y + 3 < a.y + a.height - 3;
  return words.flatMap((one, at) => words.slice(0, at).filter((other) => clash(one.box, other.box)).map((other) => `${one.text} on ${other.text}`));
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
        assert.deepEqual(await onEachOther(page), [], where);
        const texts = (await page.locator(".picture svg text").allTextContents()).join("; ");
        assert.match(texts, /goes in|breaks at the surface/, where);
        assert.match(texts, new RegExp(`${Number.parseFloat(water.depth)} m`), where);
        assert.match(await page.locator(".picture svg desc").textContent(), /^In .* m of water it /, where);
      }
    }
    assertQuiet(problems);
    await context.close();
  });
}

for (const [scheme, paper] of [["light", "rgb(246, 244, 236)"], ["dark", "rgb(18, 24, 26)"]]) {
  test(`the picture is drawn in the page's own paper and ink, ${scheme}`, async () => {
    const { page, context } = await openDrop({ scheme });
    const look = await page.locator(".picture svg").evaluate((drawing) => {
      const style = (selector) => getComputedStyle(drawing.querySelector(selector));
      return { ink: getComputedStyle(document.documentElement).color, paper: getComputedStyle(document.documentElement).backgroundColor, behind: style("rect").fill, words: style("text").fill, bed: style("line").stroke, cone: style("polygon").fill, filter: getComputedStyle(drawing).filter };
    });
    assert.equal(look.paper, paper);
    assert.deepEqual([look.behind, look.filter], ["none", "none"]);
    for (const drawn of [look.words, look.bed, look.cone]) assert.equal(drawn, look.ink);
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
