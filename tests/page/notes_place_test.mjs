// Notes: what it costs, what is written down, and the saved text, as another reader of TOML understands it.
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

async function openNotes(options = noon, name = "carpet") {
  const phone = await openPhone(browser, name, options);
  await goTo(phone.page, "notes");
  await drawn(phone.page);
  return phone;
}

/** What the program says when it takes the saved text into its log. */
function takenIn(text) {
  const store = join(mkdtempSync(join(tmpdir(), "bank-log-")), "store.db");
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

test("what it costs follows the anglers and the hours", async () => {
  const { page, context, problems } = await openNotes();
  const cost = part(page, "What it costs");
  const one = await cost.locator(".told").innerText();
  assert.match(one, /open carpet, 5 h/);
  assert.match(one, /£/);
  await cost.getByRole("textbox", { name: "Anglers" }).fill("3");
  await drawn(page);
  assert.notEqual(await cost.locator(".told").innerText(), one);
  await cost.getByRole("textbox", { name: "How long" }).fill("long");
  await drawn(page);
  assert.equal(await cost.getByRole("textbox", { name: "How long" }).getAttribute("aria-invalid"), "true");
  assertQuiet(problems);
  await context.close();
});

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
  const long = "a \"line\"\n".repeat(600);
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
  await goTo(page, "notes");
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
  assert.deepEqual(session.put_in, [{ at: "10 min", of: "silt bed" }, { at: "10 min" }]);
  assert.equal(session.mixed[0].of, "silt bed");
  assert.match(session.mixed[0].dry, /^[0-9]+ g$/);
  assert.match(session.mixed[0].water, /^[0-9]+ ml$/);
  assert.deepEqual(session.mixed[1], { of: "dark treacle", dry: "1 kg", water: "740 ml", feel: "firm" });
  assert.deepEqual(session.used, [{ of: "silt bed", amount: "1.5 l" }, { of: "fishmeal micro pellet 2 mm", amount: "200 g" }]);
  assert.deepEqual(session.catch, [{ at: "10 min", fish: 'brême "à l\'ail"', count: 2, mass: "1.2 kg" }]);
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
  await goTo(page, "notes");
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
  assert.match(await part(page, "Save").locator(".fault").innerText(), /^Caught: .*not added/);
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
  assert.equal(await page.locator("#notice").innerText(), "The notes are copied.");
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
  assert.match(await page.locator("#notice").innerText(), /copy it by hand/);
  assertQuiet(problems);
  await context.close();
});
