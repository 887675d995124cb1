// The page in Firefox and in WebKit, from a file and with no signal: what Chromium shows, word for word.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { openBrowser, openPhone, pageFile } from "./browser.mjs";
import { openFirefox, openWebKit, ready } from "./other_browsers.mjs";

const engineOpen = "return performance.getEntriesByName('bank-ready').length > 0";
const placesThere = "return [...new Set([...document.querySelectorAll('[data-place]')].map((one) => one.dataset.place))].filter((name) => document.getElementById('place-' + name))";
const goThere = "document.querySelector('[data-place=' + arguments[0] + ']').click()";
const drawnThere = "const place = document.getElementById('place-' + arguments[0]); return !place.hidden && place.querySelector('.content').children.length > 0";
const toldThere = "return [...document.querySelectorAll('#place-' + arguments[0] + ' .told')].map((one) => one.textContent)";
const widerThanScreen = "return document.documentElement.scrollWidth - document.documentElement.clientWidth";

let browser;
const inChromium = {};

/** What each place tells, by place. */
async function toldByPlace(run) {
  const told = {};
  for (const place of await run(placesThere)) {
    await run(goThere, place);
    await ready({ run: (script) => run(script, place) }, drawnThere);
    await run("return new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))");
    told[place] = await run(toldThere, place);
    assert.ok(await run(widerThanScreen) <= 0, `${place} is wider than the screen`);
  }
  return told;
}

/** Runs scripts as a driver does, which no policy of the page forbids. */
async function runnerOf(context, page) {
  const remote = await context.newCDPSession(page);
  return async (script, ...given) => {
    const { result, exceptionDetails } = await remote.send("Runtime.evaluate", {
      expression: `(function () { ${script} }).apply(null, ${JSON.stringify(given)})`, awaitPromise: true, returnByValue: true,
    });
    if (exceptionDetails) throw new Error(exceptionDetails.exception.description);
    return result.value;
  };
}

before(async () => {
  browser = await openBrowser();
  for (const name of ["carpet", "names"]) {
    const { context, page, problems } = await openPhone(browser, name);
    inChromium[name] = await toldByPlace(await runnerOf(context, page));
    assert.deepEqual(problems, []);
    await context.close();
  }
});

after(() => browser.close());

for (const [called, open] of [["Firefox", openFirefox], ["WebKit", openWebKit]]) {
  test(`${called} opens the page from a file and tells in each place what Chromium tells`, { timeout: 240000 }, async () => {
    const other = await open();
    try {
      for (const [name, expected] of Object.entries(inChromium)) {
        await other.open(pathToFileURL(pageFile(name)).href);
        await ready(other, engineOpen);
        const told = await toldByPlace(other.run);
        assert.ok(Object.values(told).flat().join("").length > 500, "it tells something");
        assert.deepEqual(told, expected);
      }
    } finally {
      await other.close();
    }
  });
}
