// The page's engine and the command line give the same answers: the same records to 1e-9, the same words, the same refusals.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { runInThisContext } from "node:vm";
import { assertSameRefusals, lettersOnAPhone } from "./phone_words.mjs";
import { ownThings, randomJobs } from "./random_jobs.mjs";

const program = process.env.BANK_PROGRAM;
const today = "2026-05-16";
const strategies = ["open carpet", "tight balls", "shallow cloud", "particle led", "cold water"];
let folder, store, ask, state, contents;

function run(args, from = store) {
  const ran = spawnSync(program, [...args, "--store", from], {
    encoding: "utf8",
    env: { ...process.env, BAITWRIGHT_TODAY: today, LC_ALL: "C.UTF-8" },
  });
  return { status: ran.status, output: ran.stdout, errors: ran.stderr };
}

const between = (html, start, end) => html.slice(html.indexOf(start) + start.length, html.indexOf(end, html.indexOf(start)));

/** The page's own bridge to its engine. */
const source = (name) => readFileSync(new URL(`../../src/page/${name}`, import.meta.url), "utf8");
const bridge = runInThisContext(`${source("letters.js")}${source("engine_bridge.js")}\n({ engineModule, openingText, startEngine, unpackedOf })`);
const inert = (html, id) => between(html, `<script type="text/plain" id="${id}">`, "</script>");

async function openPage(file) {
  const html = readFileSync(file, "utf8");
  const data = JSON.parse(between(html, '<script type="application/json" id="bank-data">', "</script>"));
  const carried = inert(html, "packed-library");
  const module = await bridge.engineModule(inert(html, "packed-engine"));
  const opened = await bridge.startEngine(module);
  const contents = opened.ask(await bridge.openingText({ ask: "open", today: data.made_on, made_on: data.made_on, have: data.have }, carried));
  const engine = await bridge.startEngine(module, opened.state());  // as the page does, which opens one aside and takes over what it knows
  return { ...engine, data, contents, carried: JSON.parse(await bridge.unpackedOf(carried, "deflate").text()) };
}

before(async () => {
  folder = mkdtempSync(join(tmpdir(), "bank-"));
  store = join(folder, "store.db");
  const made = run(["page", ...strategies, "-o", join(folder, "bank.html")]);
  assert.equal(made.status, 0, made.errors);
  ({ ask, state, contents } = await openPage(join(folder, "bank.html")));
});

after(() => rmSync(folder, { recursive: true, force: true }));

function sameValue(page, line, where) {
  if (typeof line === "number" && typeof page === "number") {
    const off = Math.abs(page - line);  // a difference of two equal numbers is 0 here and 2e-16 there
    // A drift is what is left of metres there and back: to a nanometre.
    const least = /\.(drift|feed_up_tow)_/.test(where) ? 1e-9 : 1e-15;
    assert.ok(off <= 1e-9 * Math.abs(line) || off < least, `${where}: ${page} on the page, ${line} on the command line`);
  } else if (line !== null && typeof line === "object") {
    assert.ok(page !== null && typeof page === "object", `${where} is missing on the page`);
    assert.deepEqual(Object.keys(page), Object.keys(line), where);
    for (const key of Object.keys(line)) sameValue(page[key], line[key], `${where}.${key}`);
  } else {
    assert.equal(page, line, where);
  }
}

/** All that is told, in reading order, without what only sets it: blanks, rules and the point behind a step's number. */
function lettersOfPieces(told) {
  const words = [];
  for (const piece of told) {
    if (piece.label !== undefined) words.push(piece.kind === "step" ? piece.label + "." : piece.label);
    for (const cell of piece.cells ?? []) words.push(cell);
    for (const row of piece.rows ?? []) words.push(...row);
    if (piece.text !== undefined) words.push(piece.text);
  }
  return words.join("").replace(/\[ \] /g, "").replace(/\s+/g, "");
}

/** The command is named as the question, unless the job says another. A switch has no value. */
const asArguments = (job) => [...(job.command || [job.ask]), ...job.words, ...Object.entries(job.flags).flatMap(([flag, values]) => values.flatMap((value) => (value === "" ? [flag] : [flag, value])))];

/** Holds so many random jobs of an engine against the program, and tells how many were answered. */
function sameJobs(engine, count, seed, from = store) {
  const tally = { answered: 0, refused: 0 };
  for (const job of randomJobs(engine.contents, count, seed)) {
    const typed = asArguments(job);
    const json = run([...typed, "--json"], from);
    const reply = engine.ask({ ...job, give: ["told", "json"] });
    const where = typed.join(" ");
    if (reply.errors) {
      assertSameRefusals(reply.errors, JSON.parse(json.errors).errors, where);
      ++tally.refused;
      continue;
    }
    assert.equal(reply.status, json.status, `${where}: ${json.errors}`);
    sameValue(reply.json, JSON.parse(json.output), where);
    assert.equal(lettersOfPieces(reply.told), lettersOnAPhone(run(typed, from).output), where);
    ++tally.answered;
  }
  return tally.answered;
}

test("500 random jobs: every number, every word and every refusal is the command line's", () => {
  const answered = sameJobs({ ask, contents }, 500, 20260516);
  assert.ok(answered >= 450, `only ${answered} of 500 jobs were answered`);
});

test("after a mix, a measured bag, prices and a shed of one's own, 120 random jobs are the command line's", async () => {
  const own = join(folder, "own.db"), file = join(folder, "own.toml");
  const engine = await openPage(join(folder, "bank.html"));
  const things = ownThings(engine.contents, 20260518);
  for (const { tell, typed } of things) {
    const reply = tell ? engine.ask(tell) : {};
    assert.ok(!reply.errors, JSON.stringify([tell, reply.errors]));
    if (tell?.ask === "put") writeFileSync(file, engine.ask({ ask: "text", recipe: tell.recipe.name }).text);
    for (const args of typed(file)) {
      const ran = run(args, own);
      assert.equal(ran.status, 0, `${args.join(" ")}: ${ran.errors}`);
    }
  }
  const shed = engine.ask({ ask: "shed", entries: things.shed });
  assert.deepEqual(shed.refused, []);
  sameValue(shed.json, JSON.parse(run(["stock", "--json"], own).output), "stock");
  assert.equal(lettersOfPieces(shed.told), lettersOnAPhone(run(["stock"], own).output));
  const mixes = [...engine.contents.mixes, ...things.mixes];
  assert.ok(sameJobs({ ask: engine.ask, contents: { ...engine.contents, mixes } }, 120, 20260519, own) >= 100);
});

test("on a page of a person who has learnt, 100 random jobs are the command line's", async () => {
  const learnt = join(folder, "learnt.db"), page = join(folder, "learnt.html");
  const mixes = [["silt bed", "690ml", "2"], ["silt bed", "715ml", "5"], ["brown crumb", "820ml", "9"]];
  for (const [name, water, day] of mixes) {
    const logged = run(["log", "mix", name, "--dry", "1kg", "--water", water, "--feel", "firm", "--on", "2026-05-0" + day], learnt);
    assert.equal(logged.status, 0, logged.errors);
  }
  const applied = run(["learn", "--apply"], learnt);
  assert.equal(applied.status, 0, applied.errors);
  assert.equal(run(["page", ...strategies, "-o", page], learnt).status, 0);
  const engine = await openPage(page);
  assert.ok(engine.carried.learnt.bags.length > 0);
  assert.ok(sameJobs(engine, 100, 20260517, learnt) >= 85);
});

test("each kind of slip is refused as on the command line, without anything to type", () => {
  const slips = [
    { ask: "mix", words: ["silt bad"], flags: {} },
    { ask: "mix", words: ["silt bed"], flags: { "--cups": ["4"] } },
    { ask: "mix", words: ["silt bed"], flags: { "--wet-volume": ["3 kg"] } },
    { ask: "mix", words: ["silt bed"], flags: { "--wet-volume": ["3l"], "--cups": ["4x250ml"] } },
    { ask: "mix", words: ["silt bed"], flags: { "--dry-mass": ["-1kg"] } },
    { ask: "water", words: ["silt bed"], flags: { "--dry-mass": ["1kg"] } },
    { ask: "soak", words: ["brown crumb=1kg"], flags: {} },
    { ask: "drop", words: ["silt bed"], flags: {} },
    { ask: "drop", words: ["silt bed"], flags: { "--depth": ["2"] } },
    { ask: "plan", words: ["open carpet"], flags: { "--start": ["25:00"] } },
    { ask: "plan", words: ["open carpet"], flags: { "--now": ["20"], "--left": ["some silt bed"] } },
  ];
  for (const slip of slips) {
    const reply = ask(slip);
    assert.ok(reply.errors, JSON.stringify(slip));
    assertSameRefusals(reply.errors, JSON.parse(run([...asArguments(slip), "--json"]).errors).errors, JSON.stringify(slip));
  }
});

test("a request that makes no sense is answered, and the engine goes on", () => {
  for (const request of [{}, { ask: "sing", words: ["x"] }, { ask: "mix" }, { ask: "mix", words: "silt bed" }, { ask: "mix", words: ["silt bed"], flags: { "--cups": 4 } }, []]) {
    const reply = ask(request);
    assert.ok(reply.errors?.[0]?.message, JSON.stringify(request));
  }
  assert.equal(ask({ ask: "mix", words: ["silt bed"], flags: {} }).status, 0);
});

test("after all this, half of the engine's stack has never been used", () => {
  const halfOfStack = 128 * 1024;  // src/page/CMakeLists.txt
  const dataAndStack = 512 * 1024;  // above lies what was allocated, whose gaps prove nothing
  const memory = new Uint8Array(state().used).subarray(0, dataAndStack);
  let zeros = 0, longest = 0;
  for (const byte of memory) {
    zeros = byte === 0 ? zeros + 1 : 0;
    longest = Math.max(longest, zeros);
  }
  assert.ok(longest >= halfOfStack, `the longest stretch of memory never written is ${longest} bytes`);
});
