// Notes: what is written down, the last fish again, the saved text as another reader of TOML and the program understand it.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, fill, goTo, mixLitres, openBrowser, openPhone, pick, reload, tap } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

const noon = { before: (page) => page.clock.install({ time: new Date("2026-11-28T12:00:00Z") }) };
const notes = (page) => page.locator("#place-notes");
const part = (page, title) => notes(page).locator(".part").filter({ has: page.getByRole("heading", { name: title, exact: true }) });
const saved = (page) => page.getByLabel("Your notes as they are saved").inputValue();
const add = (page, title) => part(page, title).getByRole("button", { name: "Add", exact: true }).tap();

/** Notes, with all that is folded open. */
async function goToNotes(page) {
  await goTo(page, "notes");
  await drawn(page);
  await page.evaluate(() => { for (const fold of document.querySelectorAll("#place-notes details")) fold.open = true; });
}

async function openNotes(options = noon, name = "carpet") {
  const phone = await openPhone(browser, name, options);
  await goToNotes(phone.page);
  return phone;
}

/** What the program says when it takes the saved text into its log. */
function takenIn(text, store = join(mkdtempSync(join(tmpdir(), "bank-log-")), "store.db")) {
  const ran = spawnSync(process.env.BANK_PROGRAM, ["log", "add", "--from", "-", "--json", "--store", store], { input: text, encoding: "utf8", env: { ...process.env, BAITWRIGHT_TODAY: "2026-11-28" } });
  assert.equal(ran.status, 0, `${ran.stderr}\n${text}`);
  return JSON.parse(ran.stdout);
}

/** The saved text as Python's tomllib reads it; its dates as text. */
function asToml(text) {
  const ran = spawnSync("python3", ["-c", "import json, sys, tomllib; print(json.dumps(tomllib.loads(sys.stdin.buffer.read().decode()), default=str))"], { input: text, encoding: "utf8" });
  assert.equal(ran.status, 0, `${ran.stderr}\n${text}`);
  return JSON.parse(ran.stdout);
}

async function savedSession(page) {
  await tap(page, "Save notes");
  const { session } = asToml(await saved(page));
  assert.equal(session.length, 1);
  return session[0];
}

const typed = 'He said "it\'s \\n on" C:\\bait \\u0041\nbrême, żółw, ñandú, 鯉, 🎣🐟\n\ttabbed ]] """ and \'\'\' # no comment\n[[session]]\nstrategy = "x" </script><b>';

test("free notes come back from the saved text letter for letter", async () => {
  const { page, context, problems } = await openNotes();
  await field(page, "Notes").fill(typed);
  const session = await savedSession(page);
  assert.deepEqual(session, { strategy: "open carpet", on: "2026-11-28", length: "5 h", anglers: 1, page: session.page, note: typed });
  assert.match(session.page, /^[0-9a-f]+$/);
  await reload(page);
  assert.equal(await field(page, "Notes").inputValue(), typed);
  assertQuiet(problems);
  await context.close();
});

test("control characters, half a pair and a long text are escaped too", async () => {
  const { page, context } = await openNotes();
  const wild = await page.evaluate(() => tomlText("\u0000\u0001\b\f\r\u001f\u007f\u0085\u2028 \ud83d end \udc1f \"\"\"\"\" \\"));
  assert.equal(asToml(`a = ${wild}`).a, '\u0000\u0001\b\f\r\u001f\u007f\u0085\u2028 \ufffd end \ufffd """"" \\');
  const long = `${"a \"word\" ".repeat(60)}\n`.repeat(10);
  await field(page, "Notes").fill(long);
  const { note } = await savedSession(page);
  await reload(page);
  assert.equal(await field(page, "Notes").inputValue(), note, "what was saved is kept as well");
  assert.ok(note.length >= 4000 && long.startsWith(note));
  await context.close();
});

test("put-ins, mixes, feeds and fish are saved with their times and amounts", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet", noon);
  await goTo(page, "feed");
  await page.getByLabel("First put-in at").fill("11:50");
  await tap(page, "Start at that time");
  await page.locator(".timeline input").first().check();
  await page.locator(".put-in").tap();
  await goTo(page, "mix");
  await mixLitres(page, "2 l");
  await tap(page, "Mixed it");
  await goToNotes(page);
  await part(page, "Mixed").getByRole("combobox", { name: "Mix" }).selectOption("dark treacle");
  await pick(page, "Feel").selectOption("firm");
  await fill(page, "Dry", "1 kg");
  await fill(page, "Water", "740");
  await add(page, "Mixed");
  await pick(page, "Of").selectOption("silt bed");
  await fill(page, "How much", "1.5");
  await add(page, "Used");
  await pick(page, "Of").selectOption("fishmeal micro pellet 2 mm");
  await fill(page, "How much", "200 g");
  await add(page, "Used");
  await fill(page, "Fish", 'brême "à l\'ail"');
  await fill(page, "How many", "2");
  await fill(page, "Weight together", "1.2");
  await add(page, "Caught");
  const session = await savedSession(page);
  assert.equal(session.start, "11:50");
  const minutes = (entries) => entries.map(({ at, ...more }) => more);
  for (const { at } of [...session.put_in, ...session.catch]) assert.match(at, /^1[0-4] min$/);
  assert.deepEqual(minutes(session.put_in), [{ of: "silt bed" }, { of: "silt bed" }]);
  assert.equal(session.mixed[0].of, "silt bed");
  assert.match(session.mixed[0].dry, /^[0-9]+ g$/);
  assert.match(session.mixed[0].water, /^[0-9]+ ml$/);
  assert.deepEqual(session.mixed[1], { of: "dark treacle", dry: "1 kg", water: "740 ml", feel: "firm" });
  assert.deepEqual(session.used, [{ of: "silt bed", amount: "1.5 l" }, { of: "fishmeal micro pellet 2 mm", amount: "200 g" }]);
  assert.deepEqual(minutes(session.catch), [{ fish: 'brême "à l\'ail"', count: 2, mass: "1.2 kg" }]);
  const logged = takenIn(await saved(page));
  assert.deepEqual(logged.entered.map((entry) => entry.what), ["session", "put-in", "put-in", "mix", "mix", "used", "used", "catch"]);
  assert.equal(logged.entered[7].fish, 'brême "à l\'ail"');
  await reload(page);
  assert.deepEqual(await savedSession(page), session);
  assertQuiet(problems);
  await context.close();
});

test("the saved text follows what is added or taken out after it was shown", async () => {
  const { page, context } = await openNotes();
  await tap(page, "Save notes");
  await fill(page, "Fish", "bream");
  await add(page, "Caught");
  assert.equal(asToml(await saved(page)).session[0].catch[0].fish, "bream");
  await goTo(page, "feed");
  await tap(page, "Start now");
  await page.locator(".put-in").tap();
  await goToNotes(page);
  assert.equal(asToml(await saved(page)).session[0].put_in.length, 1);
  await tap(page, "Take out");
  assert.equal(asToml(await saved(page)).session[0].catch.length, 1, "one tap takes nothing out");
  await tap(page, "Tap again");
  assert.equal(asToml(await saved(page)).session[0].catch, undefined);
  await context.close();
});

test("an amount that cannot be read is marked, and not added", async () => {
  const { page, context, problems } = await openNotes();
  const slips = [["Used", "How much", "a bucket"], ["Mixed", "Dry", "1 l"], ["Mixed", "Water", "wet"], ["Caught", "Weight together", "heavy"], ["Caught", "How many", "0"], ["Used", "How much", ""]];
  await fill(page, "Fish", "bream");
  for (const [title, label, slip] of slips) {
    const wrong = part(page, title).getByRole("textbox", { name: label, exact: true });
    await wrong.fill(slip);
    await add(page, title);
    assert.equal(await wrong.getAttribute("aria-invalid"), "true", `${label}: ${slip}`);
    const fault = await page.locator(`#${await wrong.getAttribute("aria-describedby")}`).innerText();
    assert.ok(fault.length > 5 && !fault.includes("--"), fault);
    assert.equal(await part(page, title).locator("li").count(), 0, `${label}: ${slip}`);
    await wrong.fill(label === "How many" ? "1" : "");
  }
  await fill(page, "Fish", "");
  await add(page, "Caught");
  assert.equal(await field(page, "Fish").getAttribute("aria-invalid"), "true");
  assertQuiet(problems);
  await context.close();
});

test("what was typed and not added is not passed over", async () => {
  const { page, context } = await openNotes();
  await fill(page, "Fish", "bream");
  await tap(page, "Save notes");
  assert.match(await part(page, "Take it home").locator(".fault").innerText(), /^Caught: .*not added/);
  assert.equal(await page.getByLabel("Your notes as they are saved").isVisible(), false);
  await add(page, "Caught");
  assert.equal((await savedSession(page)).catch[0].fish, "bream");
  await context.close();
});

test("the notes are copied, shared where the phone can, and downloaded", async () => {
  const shares = (page) => page.evaluate(() => window.shared);
  const stub = async (page) => {
    await noon.before(page);
    await page.addInitScript(() => {
      window.shared = [];
      window.copied = [];
      navigator.share = async (what) => { window.shared.push(what); };
      Object.defineProperty(navigator, "clipboard", { value: { writeText: async (text) => { window.copied.push(text); } } });
    });
  };
  const { page, context, problems } = await openNotes({ before: stub });
  await field(page, "Notes").fill(typed);
  await tap(page, "Save notes");
  const text = await saved(page);
  await tap(page, "Share");
  assert.deepEqual(await shares(page), [{ title: "Notes, open carpet", text }]);
  await tap(page, "Copy");
  assert.deepEqual(await page.evaluate(() => window.copied), [text]);
  assert.equal(await page.locator("#notice p").innerText(), "It is copied.");
  const [file] = await Promise.all([page.waitForEvent("download"), tap(page, "Download")]);
  assert.equal(file.suggestedFilename(), "notes-open-carpet-2026-11-28.toml");
  assert.equal(readFileSync(await file.path(), "utf8"), text);
  assertQuiet(problems);
  await context.close();
});

test("a phone that cannot share or copy has no such button, or says so", async () => {
  const stub = (page) => page.addInitScript(() => {
    delete Navigator.prototype.share;
    Object.defineProperty(navigator, "clipboard", { value: { writeText: async () => { throw new Error("refused"); } } });
    document.execCommand = () => false;
  });
  const { page, context, problems } = await openNotes({ before: stub });
  await tap(page, "Save notes");
  assert.equal(await page.getByRole("button", { name: "Share", exact: true }).isVisible(), false);
  await tap(page, "Copy");
  assert.match(await page.locator("#notice p").innerText(), /copy it by hand/);
  assertQuiet(problems);
  await context.close();
});

test("the last kind of fish is one tap, in reach of the thumb; its weight can be said after, or left", async () => {
  const { page, context, problems } = await openNotes();
  const again = page.getByRole("button", { name: /^Another / });
  assert.equal(await again.isVisible(), false, "before there is any");
  await fill(page, "Fish", "bream");
  await fill(page, "Weight together", "1.5 kg");
  await add(page, "Caught");
  await page.clock.fastForward(60000);
  await again.tap();
  await again.tap();  // a wet thumb
  assert.equal(await page.locator("#notice p").innerText(), "1 bream, 12:01");
  const weight = page.getByRole("textbox", { name: "Its weight, if you weighed it" });
  await weight.fill("heavy");
  await drawn(page);
  assert.equal(await weight.getAttribute("aria-invalid"), "true");
  await weight.fill("2,1");
  await page.clock.fastForward(60000);
  await again.tap();
  await page.clock.fastForward(60000);
  await again.tap();
  await page.locator("#notice").getByRole("button", { name: "Take back" }).tap();
  const lines = () => part(page, "Caught").locator(".entries .words").allInnerTexts();
  assert.deepEqual(await lines(), ["1 bream, 1.5 kg, 12:00", "1 bream, 2.1 kg, 12:01", "1 bream, 12:02"]);
  const box = await again.boundingBox();
  assert.ok(box.y > 370 && box.height >= 44, JSON.stringify(box));
  assert.deepEqual((await savedSession(page)).catch.map((one) => one.mass), ["1.5 kg", "2.1 kg", undefined]);
  assertQuiet(problems);
  await context.close();
});

/** Something of a session, as the places write it. */
const fishedOn = (page, note) => page.evaluate((words) => {
  bank.kept.feed.start = Date.now() - 7200000;
  for (const [minutes, of] of [[110, "silt bed"], [100, "silt bed"], [90, ""]]) bank.kept.feed.puts.push({ at: Date.now() - minutes * 60000, of, feed: null });
  bank.kept.notes.mixed.push({ of: "silt bed", dry: "1 kg", water: "740 ml", feel: "firm", at: Date.now() });
  bank.kept.notes.used.push({ of: "silt bed", amount: "1.5 l", at: Date.now() });
  for (const [fish, count, mass] of [["bream", 2, "1.2 kg"], ["roach", 1, ""], ["bream", 1, "0.8 kg"], ["roach", 1, "90 g"], ["tench", 1, "3 lb"], ["tench", 1, "1 kg"]]) bank.kept.notes.catches.push({ at: Date.now(), fish, count, mass });
  bank.kept.notes.note = words;
  keepNow();
  openStrategy(bank.strategy.name, "notes");
}, note);

test("a session is said in plain words that anyone can read", async () => {
  const { page, context } = await openNotes();
  await fishedOn(page, "wind got up at noon");
  await goToNotes(page);
  await fill(page, "Which water", "long pit");
  await pick(page, "How clear it was").selectOption("tinged");
  await fill(page, "How warm it was", "9");
  await tap(page, "Say it in words");
  assert.deepEqual((await page.getByLabel("The session in words").inputValue()).split("\n"), [
    "open carpet, 28 Nov 2026, long pit",
    "1 angler, 5 h from 10:00; water tinged, 9 \u00b0C",
    "Mixed: silt bed, 1 kg dry, 740 ml water, firm",
    "Put in: silt bed 2 times, not said what once",
    "Used: 1.5 l silt bed",
    "Caught: 3 bream, 2 kg; 2 roach, those weighed 90 g; 2 tench, 3 lb and 1 kg",
    "wind got up at noon",
  ]);
  await context.close();
});

test("the water, how clear and how warm it was are asked, and come to the log", async () => {
  const { page, context, problems } = await openNotes();
  await fill(page, "Which water", 'the "long" pit');
  await pick(page, "How clear it was").selectOption("coloured");
  for (const [label, slip] of [["How warm it was", "tepid"], ["Anglers", "0"], ["How long", "ages"]]) {
    const wrong = field(page, label);
    const before = await wrong.inputValue();
    await wrong.fill(slip);
    await drawn(page);
    assert.equal(await wrong.getAttribute("aria-invalid"), "true", label);
    await tap(page, "Save notes");
    assert.equal(await page.getByLabel("Your notes as they are saved").isVisible(), false, label);
    await wrong.fill(label === "How warm it was" ? "11" : before);
    await drawn(page);
    assert.equal(await wrong.getAttribute("aria-invalid"), null, label);
  }
  await fill(page, "Anglers", "2");
  const session = await savedSession(page);
  assert.equal(session.venue, 'the "long" pit');
  assert.equal(session.clarity, "coloured");
  assert.equal(session.water_temperature, "11 \u00b0C");
  assert.equal(session.anglers, 2);
  const [logged] = takenIn(await saved(page)).entered;
  assert.equal(logged.venue, 'the "long" pit');
  assert.equal(logged.clarity, "coloured");
  assertQuiet(problems);
  await context.close();
});

test("a new session keeps the one before, all of them go home in one file, and the log knows what it had", async () => {
  const { page, context, problems } = await openNotes(noon, "several");
  await fishedOn(page, "the first");
  await goToNotes(page);
  const store = join(mkdtempSync(join(tmpdir(), "bank-log-")), "store.db");
  await tap(page, "Save notes");
  assert.deepEqual(takenIn(await saved(page), store).entered.map((entry) => entry.what), ["session", "put-in", "put-in", "put-in", "mix", "used", ...Array(6).fill("catch")]);
  await tap(page, "A new session");
  await tap(page, "Tap again: this one is kept below");
  await goToNotes(page);
  assert.equal(await field(page, "Notes").inputValue(), "");
  assert.match(await page.locator("#place-notes .since").innerText(), /^Nothing is noted/);
  assert.match(await notes(page).innerText(), /1 session before[^]*28 Nov 2026, 3 bream, 2 kg/);
  assert.ok(await page.getByRole("button", { name: "Another tench" }).isVisible(), "of the session before");
  await field(page, "Notes").fill("the second");
  await page.evaluate(() => {
    keepNow();
    openStrategy("tight balls", "notes");
  });
  await goToNotes(page);
  await field(page, "Notes").fill("of another strategy");
  await tap(page, "Save notes");
  const { session } = asToml(await saved(page));
  assert.deepEqual(session.map((one) => [one.strategy, one.note]), [["tight balls", "of another strategy"], ["open carpet", "the second"], ["open carpet", "the first"]]);
  assert.equal(new Set(session.map((one) => one.page)).size, 3);
  const grown = takenIn(await saved(page), store);
  assert.deepEqual(grown.entered.map((entry) => entry.what), ["session", "session"]);
  assert.equal(takenIn(await saved(page), store).entered.length, 0, "the same file twice");
  assertQuiet(problems);
  await context.close();
});
