// How the page opens: its first answer before its engine, the engine aside, and what it does in browsers that allow less.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { amountIn, assertQuiet, drawn, field, fill, openBrowser, openPhone, pageFile, pick, ready, reload, told } from "./browser.mjs";

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
  await fill(page, "How much, wet", "1.5 l");
  assert.match(await told(page, "mix").innerText(), /1\.5 l/);
}

test("the engine is opened in a worker, and the page itself has none to unpack", async () => {
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
  assert.equal(await page.evaluate(() => globalThis.unpacked), 0);
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

test("what is asked before the engine is open is answered when it is, though its worker never says a word", async () => {
  const { page, context, problems } = await openEarly(async (tab) => {
    await tab.clock.install();
    await silentWorker(tab);
  });
  const first = told(page, "mix");
  await first.waitFor();
  assert.match(await first.innerText(), /3\.0 l/);
  await page.clock.runFor(500);
  await fill(page, "How much, wet", "1.5 l");
  assert.match(await first.innerText(), /3\.0 l/);
  assert.equal(await page.evaluate(() => bank.engine), null);
  await page.clock.runFor(10000);
  await ready(page);
  assert.match(await told(page, "mix").innerText(), /1\.5 l/);
  assert.equal(await amountIn(page, "How much, wet"), "1.5 l");
  assertQuiet(problems);
  await context.close();
});

test("a browser that cannot unpack the engine is told so, and keeps the first answer", async () => {
  const { page, context } = await openEarly((tab) => tab.addInitScript(() => {
    delete globalThis.Worker;
    delete globalThis.DecompressionStream;
  }));
  await page.getByText("This browser cannot unpack the page.").waitFor();
  assert.match(await told(page, "mix").innerText(), /3\.0 l/);
  await context.close();
});

test("another mix than the strategy's own is still picked after a reload", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  await pick(page, "Mix").selectOption("dark treacle");
  await drawn(page);
  const before = await told(page, "mix").innerText();
  await page.evaluate(() => keepNow());
  await reload(page);
  assert.equal(await pick(page, "Mix").inputValue(), "dark treacle");
  assert.equal(await told(page, "mix").innerText(), before);
  assertQuiet(problems);
  await context.close();
});
