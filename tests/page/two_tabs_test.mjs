// Two tabs of one phone write into the same: in turn, at once, and neither loses anything.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { assertQuiet, drawn, field, goTo, kept, openBrowser, openPhone, openTab, reload, tap } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

async function twoTabs(name = "carpet") {
  const { page, context, problems } = await openPhone(browser, name);
  const second = await openTab(context, name, { problems });
  return { first: page, second, context, problems, close: async () => { assertQuiet(problems); await context.close(); } };
}

const state = (page) => page.evaluate(() => JSON.parse(JSON.stringify({ own: { ...bank.kept, place: "" }, shared: bank.shared })));
const fishOf = (page) => page.evaluate(() => bank.kept.notes.catches.map((one) => one.fish).sort());
/** A fish as the notes write one, without a look at what the other tab wrote. */
const catchOne = (page, fish) => page.evaluate((name) => {
  bank.kept.notes.catches.push({ at: Date.now(), fish: name, count: 1, mass: "" });
  keepNow();
}, fish);

/** Both tabs show the same, and so does a third that reads what is kept. */
async function agree({ first, second, context, problems }) {
  await assert.doesNotReject(async () => {
    for (let tries = 0; JSON.stringify(await state(first)) !== JSON.stringify(await state(second)); tries += 1) {
      if (tries > 40) throw new Error("the tabs do not come to the same");
      await first.waitForTimeout(100);
    }
  });
  const third = await openTab(context, "carpet", { problems });
  assert.deepEqual(await state(third), await state(first));
  await third.close();
}

test("what one tab writes, the other shows, and the counter goes on from there", async () => {
  const tabs = await twoTabs();
  const { first, second } = tabs;
  await goTo(second, "feed");
  await tap(second, "Start now");
  await second.locator(".put-in").tap();
  await second.waitForTimeout(1700);  // a second tap at once counts once
  await second.locator(".put-in").tap();
  await first.bringToFront();
  await first.waitForFunction(() => bank.kept.feed.puts.length === 2);
  await goTo(first, "feed");
  await first.locator(".put-in").tap();
  await drawn(first);
  assert.match(await first.locator(".put-in").innerText(), /3/);
  await agree(tabs);
  await tabs.close();
});

test("two tabs that write in turn keep all that either wrote, and what one took out stays out", async () => {
  const tabs = await twoTabs();
  const { first, second } = tabs;
  for (let round = 0; round < 5; round += 1) {
    await catchOne(first, `a${round}`);
    await catchOne(second, `b${round}`);
  }
  await agree(tabs);
  assert.deepEqual(await fishOf(first), ["a0", "a1", "a2", "a3", "a4", "b0", "b1", "b2", "b3", "b4"]);
  await second.evaluate(() => {
    bank.kept.notes.catches = bank.kept.notes.catches.filter((one) => one.fish !== "a2");
    keepNow();
  });
  await catchOne(first, "a5");
  await agree(tabs);
  assert.deepEqual(await fishOf(second), ["a0", "a1", "a3", "a4", "a5", "b0", "b1", "b2", "b3", "b4"]);
  await reload(first);
  assert.equal((await fishOf(first)).length, 10);
  await tabs.close();
});

test("two tabs that write at once lose nothing", async () => {
  const tabs = await twoTabs();
  const { first, second } = tabs;
  const many = (page, word) => page.evaluate(async (name) => {
    for (let number = 0; number < 40; number += 1) {
      bank.kept.notes.catches.push({ at: Date.now(), fish: `${name}${number}`, count: 1, mass: "" });
      bank.kept.notes.note = `${name}${number}`;
      bank.shared.last = `${name}${number}`;
      keepNow();
      await new Promise((done) => setTimeout(done, Math.random() * 8));
    }
  }, word);
  await Promise.all([many(first, "a"), many(second, "b")]);
  await agree(tabs);
  const fish = await fishOf(first);
  assert.equal(fish.length, 80);
  assert.equal(new Set(fish).size, 80);
  assert.match((await state(first)).own.notes.note, /^[ab]39$/);
  await tabs.close();
});

test("of a field that both changed, the later change counts, in whichever tab it is read", async () => {
  const tabs = await twoTabs();
  const { first, second } = tabs;
  await first.evaluate(() => { bank.kept.notes.note = "first"; });  // waits to be written
  await second.evaluate(() => {
    bank.kept.notes.note = "second";
    keepNow();
  });
  await first.waitForTimeout(100);
  await first.evaluate(() => {
    bank.kept.notes.note = "first again";
    keepNow();
  });
  await agree(tabs);
  assert.equal((await state(second)).own.notes.note, "first again");
  await tabs.close();
});

test("what is being typed is not taken from under the fingers when the other tab writes", async () => {
  const tabs = await twoTabs();
  const { first, second } = tabs;
  await goTo(first, "notes");
  const note = field(first, "Notes");
  await note.focus();
  await note.pressSequentially("half a sen");
  await catchOne(second, "tench");
  await first.waitForFunction(() => bank.kept.notes.catches.length === 1);
  await note.pressSequentially("tence");
  assert.equal(await note.inputValue(), "half a sentence");
  await note.blur();
  await first.getByText("1 tench").first().waitFor();
  assert.equal(await field(first, "Notes").inputValue(), "half a sentence");
  await agree(tabs);
  await tabs.close();
});

test("tabs with different places open leave each other where they are, and do not write for ever", async () => {
  const tabs = await twoTabs();
  const { first, second } = tabs;
  await goTo(first, "notes");
  await goTo(second, "feed");
  await catchOne(first, "roach");
  await catchOne(second, "rudd");
  await agree(tabs);
  assert.ok(await second.locator("#place-feed").isVisible());
  assert.ok(await first.locator("#place-notes").isVisible());
  const counted = (page) => page.evaluate(async () => {
    let writes = 0;
    const write = Storage.prototype.setItem;
    Storage.prototype.setItem = function counting(...given) {
      writes += 1;
      return write.apply(this, given);
    };
    await new Promise((done) => setTimeout(done, 1200));
    Storage.prototype.setItem = write;
    return writes;
  });
  assert.deepEqual(await Promise.all([counted(first), counted(second)]), [0, 0]);
  await tabs.close();
});

test("a page that does not know a place leaves what another page keeps of it alone", async () => {
  const tabs = await twoTabs();
  const { first, second } = tabs;
  const key = await first.evaluate(() => keeping.own.key);
  await first.evaluate((name) => {
    keepNow();
    localStorage.setItem(name, JSON.stringify({ ...JSON.parse(localStorage.getItem(name)), of_another_page: { ticks: [1, 2] } }));
  }, key);
  await catchOne(second, "dace");
  await agree(tabs);
  assert.deepEqual(JSON.parse((await kept(first))[key]).of_another_page, { ticks: [1, 2] });
  await tabs.close();
});
