// How the page opens: the plain words first, the engine aside, and what it does in browsers that allow less.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { assertQuiet, drawn, goTo, mixLitres, openBrowser, openLines, openPhone, pageFile, pick, ready, reload, told, tap } from "./browser.mjs";

let browser;
before(async () => { browser = await openBrowser(); });
after(() => browser.close());

/** A page as it stands before its engine is open. */
async function openEarly(prepare) {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, offline: true });
  const page = await context.newPage();
  const problems = [];
  page.on("console", (message) => problems.push(message.text()));
  page.on("pageerror", (error) => problems.push(String(error)));
  await prepare(page);
  await page.goto(pathToFileURL(pageFile("carpet")).href);
  return { page, context, problems };
}

const silentWorker = (page) => page.addInitScript(() => {
  globalThis.Worker = class {
    postMessage() {}
    terminate() {}
  };
});

async function worksAsUsual(page) {
  await mixLitres(page, "1.5 l");
  assert.match(await told(page, "mix").innerText(), /1\.5 l/);
}

test("the engine is opened in a worker, and the page itself unpacks its scripts alone", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet", {
    before: (tab) => tab.addInitScript(() => {
      const Unpack = globalThis.DecompressionStream;
      globalThis.unpacked = 0;
      globalThis.DecompressionStream = class extends Unpack {
        constructor(format) {
          super(format);
          globalThis.unpacked += 1;
        }
      };
    }),
  });
  assert.equal(await page.evaluate(() => globalThis.unpacked), 1);
  await worksAsUsual(page);
  assertQuiet(problems);
  await context.close();
});

const hinderedWorkers = {
  "there are no workers": () => { delete globalThis.Worker; },
  "a worker is refused": () => { globalThis.Worker = class { constructor() { throw new Error("not from a file"); } }; },
  "a worker does not start": () => {
    const Real = globalThis.Worker;
    globalThis.Worker = class { constructor() { return new Real(URL.createObjectURL(new Blob(["this is no script"]))); } };
  },
  "what a worker sends cannot be read": () => {
    globalThis.Worker = class {
      postMessage() { setTimeout(() => this.onmessageerror()); }
      terminate() {}
    };
  },
  "a worker cannot unpack": () => {
    const Real = globalThis.Worker;
    globalThis.Worker = class { constructor() { return new Real(URL.createObjectURL(new Blob(["onmessage = () => postMessage(null);"]))); } };
  },
};

for (const [hindrance, hinder] of Object.entries(hinderedWorkers)) {
  test(`where ${hindrance}, the page opens the engine by itself`, async () => {
    const { page, context, problems } = await openPhone(browser, "carpet", { before: (tab) => tab.addInitScript(hinder) });
    await worksAsUsual(page);
    assertQuiet(problems);
    await context.close();
  });
}

const plainWords = (page) => page.locator("#plain");
const openingLine = (page) => page.locator("#opening");
const wide = async (page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

test("while the engine opens, the plain words stand and say whose amounts they are; a worker that never says a word holds nothing up", async () => {
  const { page, context, problems } = await openEarly(async (tab) => {
    await tab.clock.install();
    await silentWorker(tab);
  });
  await openingLine(page).getByText("Opening. Below are the amounts of the plan").waitFor();
  assert.ok(await plainWords(page).isVisible());
  assert.ok(await page.locator("#card").isHidden());
  await page.waitForFunction(() => typeof bank !== "undefined");
  await page.clock.runFor(10000);
  await ready(page);
  assert.equal(await plainWords(page).count(), 0);
  assert.equal(await openingLine(page).count(), 0);
  await worksAsUsual(page);
  assertQuiet(problems);
  await context.close();
});

const lackingBrowsers = {
  "WebAssembly": () => { delete globalThis.WebAssembly; },
  "exceptions in WebAssembly": () => { WebAssembly.validate = () => false; },
  "the means to unpack": () => { delete globalThis.DecompressionStream; },
  "Object.hasOwn": () => { delete Object.hasOwn; },
  "findLast": () => { delete Array.prototype.findLast; },
};

for (const [lack, remove] of Object.entries(lackingBrowsers)) {
  test(`a browser without ${lack} is told so within a second, above the plain words`, async () => {
    const { page, context, problems } = await openEarly((tab) => tab.addInitScript(remove));
    await openingLine(page).getByText("nothing more can be worked out: this browser lacks").waitFor({ timeout: 1000 });
    assert.ok(await plainWords(page).isVisible());
    assert.equal(await page.evaluate(() => document.getElementById("opening").compareDocumentPosition(document.getElementById("plain"))), 4);  // it follows
    assert.ok(await page.locator("#card").isHidden());
    assert.ok(await wide(page) <= 0);
    assertQuiet(problems);
    await context.close();
  });
}

test("a script that fails is told above the plain words", async () => {
  const { page, context } = await openEarly((tab) => tab.addInitScript(() => {
    const parse = JSON.parse;
    JSON.parse = (text) => { if (text.includes("made_on")) throw new Error("not to be read"); return parse(text); };
  }));
  await openingLine(page).getByText("nothing more can be worked out: not to be read").waitFor();
  assert.ok(await plainWords(page).isVisible());
  await context.close();
});

const brokenEngine = (tab) => tab.addInitScript(() => {
  delete globalThis.Worker;
  WebAssembly.compile = () => Promise.reject(new Error("no room for it"));
});

test("where the engine cannot be opened, Mix keeps the plain words with why, and what needs no engine works", async () => {
  const { page, context, problems } = await openEarly(brokenEngine);
  await ready(page);
  const mix = page.locator("#place-mix");
  await mix.getByText("Nothing can be worked out here: no room for it.").waitFor();
  assert.ok(await mix.locator("#plain").isVisible());
  for (const place of ["feed", "soak", "notes"]) {
    await goTo(page, place);
    assert.ok((await page.locator(`#place-${place} .content`).innerText()).length > 20, place);
  }
  for (const place of ["drop", "money"]) {
    await goTo(page, place);
    await page.locator(`#place-${place}`).getByText("no room for it").waitFor();
  }
  await goTo(page, "mix");
  assert.ok(await mix.locator("#plain").isVisible());
  assertQuiet(problems);
  await context.close();
});

test("where the engine cannot be opened, a session is started and a put-in counted, and both are there after a reload", async () => {
  const { page, context, problems } = await openEarly(brokenEngine);
  await ready(page);
  await goTo(page, "feed");
  await page.locator("#place-feed").getByRole("button", { name: "Start now" }).tap();
  await page.locator(".put-in").tap();
  await reload(page);
  await goTo(page, "feed");
  assert.match(await page.locator(".put-in").innerText(), /\b1\b/);
  assertQuiet(problems);
  await context.close();
});

test("a browser that keeps nothing for pages says so at once, and works", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet", {
    before: (tab) => tab.addInitScript(() => Object.defineProperty(globalThis, "localStorage", { get() { throw new Error("private"); } })),
  });
  await page.getByText("This browser keeps nothing for this page").waitFor();
  await worksAsUsual(page);
  assertQuiet(problems);
  await context.close();
});

test("another mix than the strategy's own is still picked after a reload", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await openLines(page);
  await pick(page, "Mix").selectOption("dark treacle");
  await drawn(page);
  const before = await told(page, "mix").innerText();
  await page.evaluate(() => keepNow());
  await reload(page);
  await openLines(page);
  assert.equal(await pick(page, "Mix").inputValue(), "dark treacle");
  assert.equal(await told(page, "mix").innerText(), before);
  assertQuiet(problems);
  await context.close();
});
