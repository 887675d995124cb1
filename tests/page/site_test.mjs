// A site: the page as a folder on a web host, put on the home screen, opened without a signal, made anew. Chromium against a local HTTPS host.
import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { assertQuiet, goTo, openBrowser, openPhone, ready } from "./browser.mjs";

const kinds = { html: "text/html; charset=utf-8", js: "text/javascript", png: "image/png", webmanifest: "application/manifest+json" };
const names = ["icon-180.png", "icon-192.png", "icon-512.png", "icon-maskable-512.png", "index.html", "manifest.webmanifest", "service-worker.js"];
let folder, browser, host;

/** Serves a folder below /bank/; `down` is where there is no signal. */
class Host {
  down = false;
  asked = [];

  constructor(site) {
    const [key, cert] = ["key.pem", "cert.pem"].map((name) => join(folder, name));
    execFileSync("openssl", ["req", "-x509", "-newkey", "rsa:2048", "-nodes", "-keyout", key, "-out", cert, "-days", "2", "-subj", "/CN=localhost"], { stdio: "ignore" });
    this.server = createServer({ key: readFileSync(key), cert: readFileSync(cert) }, (request, reply) => this.#reply(site, request, reply));
  }

  #reply(site, request, reply) {
    if (this.down) {
      request.socket.destroy();
      return;
    }
    const { pathname } = new URL(request.url, "https://localhost");
    this.asked.push(pathname);
    const name = pathname === "/bank/" ? "index.html" : pathname.slice("/bank/".length);
    if (!names.includes(name)) {
      reply.writeHead(404).end();
      return;
    }
    reply.writeHead(200, { "Content-Type": kinds[name.split(".").pop()], "Cache-Control": "max-age=3600" }).end(readFileSync(join(site, name)));
  }

  async open() {
    await new Promise((done) => this.server.listen(0, "localhost", done));
    this.address = `https://localhost:${this.server.address().port}/bank/`;
  }

  close() {
    this.server.closeAllConnections();
    return new Promise((done) => this.server.close(done));
  }
}

function program(...words) {
  const { stdout, stderr, status } = spawnSync(process.env.BANK_PROGRAM, [...words, "--store", join(folder, "store", "bait.db")], { encoding: "utf8", cwd: folder });
  return { stdout, stderr, status };
}

function makeSite(...words) {
  const made = program("page", ...words, "--site", "site");
  assert.ok(made.status === 0 || made.status === 1, made.stderr);
  return made.stdout;
}

before(async () => {
  folder = mkdtempSync(join(tmpdir(), "site-"));
  mkdirSync(join(folder, "store"));
  makeSite("open carpet");
  host = new Host(join(folder, "site"));
  await host.open();
  browser = await openBrowser(["--ignore-certificate-errors"]);
});

after(async () => {
  await browser?.close();
  await host?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function visit() {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, ignoreHTTPSErrors: true, locale: "en-GB", timezoneId: "Europe/London" });
  const problems = [];
  const page = await context.newPage();
  page.setDefaultTimeout(15000);
  page.on("console", (message) => problems.push(`${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => problems.push(error.stack ?? String(error)));
  await page.goto(host.address);
  await ready(page);
  await page.waitForFunction(() => navigator.serviceWorker.controller);
  return { context, page, problems };
}

const title = (page) => page.locator("#strategy").innerText();
const shelves = (page) => page.evaluate(() => caches.keys());

test("after the first visit the page opens without a signal, whole, by its folder or its name", async () => {
  const { page, context, problems } = await visit();
  host.down = true;
  for (const address of [host.address, `${host.address}index.html`, `${host.address}?from=home`]) {
    await page.goto(address);
    await ready(page);
    assert.equal(await title(page), "open carpet");
    assert.match(await page.locator("#place-mix .told").first().innerText(), /silt bed/);
  }
  host.down = false;
  assertQuiet(problems);
  await context.close();
});

test("a page made anew is shown when the person says so, and takes the old one's place", async () => {
  makeSite("open carpet");
  const { page, context, problems } = await visit();
  const old = await shelves(page);
  assert.equal(old.length, 1);
  makeSite("tight balls");
  await page.goto(host.address);
  await ready(page);
  assert.equal(await title(page), "open carpet", "the old one opens at once, for the signal may be weak");
  await page.getByText("This page was made anew.").waitFor();
  await page.getByRole("button", { name: "Show the new one" }).tap();
  await page.waitForFunction(() => document.title.includes("tight balls"));
  await ready(page);
  const now = await shelves(page);
  assert.equal(now.length, 1, "what was kept of the old one is gone");
  assert.notDeepEqual(now, old);
  host.down = true;
  await page.goto(host.address);
  await ready(page);
  assert.equal(await title(page), "tight balls");
  host.down = false;
  assertQuiet(problems);
  await context.close();
});

test("a site of which half is put on its host yet leaves the old page whole", async () => {
  makeSite("open carpet");
  const { page, context } = await visit();
  const kept = await shelves(page);
  const old = readFileSync(join(folder, "site", "index.html"));
  makeSite("tight balls");
  const made = readFileSync(join(folder, "site", "index.html"));
  writeFileSync(join(folder, "site", "index.html"), old);
  host.asked = [];
  await page.evaluate(async () => {
    const registered = await navigator.serviceWorker.getRegistration();
    await registered.update().catch(() => {});
    while (registered.installing) await new Promise((done) => setTimeout(done, 20));
  });
  assert.ok(host.asked.includes("/bank/service-worker.js"));
  assert.deepEqual(await shelves(page), kept);
  await page.reload();
  await ready(page);
  assert.equal(await title(page), "open carpet");
  writeFileSync(join(folder, "site", "index.html"), made);
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
  await page.getByText("This page was made anew.").waitFor();
  await context.close();
});

test("More says how it goes on the home screen, in the words that the command prints, and not where it stands there", async () => {
  const printed = makeSite("open carpet").replace(/\s+/g, " ");
  const { page, context, problems } = await visit();
  await goTo(page, "more");
  const steps = await page.locator(".home-screen .line").allInnerTexts();
  assert.equal(steps.length, 2);
  for (const step of steps) assert.ok(printed.includes(step.replace(/\s+/g, " ")), `${step} is not in ${printed}`);
  await page.addInitScript(() => Object.defineProperty(navigator, "standalone", { value: true }));  // as an iPhone says that it stands there
  await page.reload();
  await ready(page);
  await goTo(page, "more");
  assert.equal(await page.locator(".home-screen").count(), 0);
  assertQuiet(problems);
  await context.close();
});

test("a page that is one file has none of it", async () => {
  const { page, context, problems } = await openPhone(browser, "carpet");
  assert.equal(await page.locator("link[rel=manifest]").count(), 0);
  await goTo(page, "more");
  assert.equal(await page.locator(".home-screen").count(), 0);
  assertQuiet(problems);
  await context.close();
});

test("a browser reads the manifest without a fault, and each icon is of the size it says, in paper, ink and red", async () => {
  const { page, context } = await visit();
  const devtools = await context.newCDPSession(page);
  const { errors, data } = await devtools.send("Page.getAppManifest");
  assert.deepEqual(errors, []);
  const icons = [...JSON.parse(data).icons, { src: "icon-180.png", sizes: "180x180" }];
  for (const icon of icons) {
    const seen = await page.evaluate(async (source) => {
      const image = new Image();
      image.src = source;
      await image.decode();
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight];
      const drawn = canvas.getContext("2d");
      drawn.drawImage(image, 0, 0);
      const at = (x, y) => [...drawn.getImageData(x * canvas.width, y * canvas.height, 1, 1).data];
      return { size: `${canvas.width}x${canvas.height}`, corner: at(0.01, 0.01), ball: at(0.5, 0.28), tub: at(0.5, 0.7) };
    }, icon.src);
    assert.deepEqual(seen, { size: icon.sizes, corner: [246, 244, 236, 255], ball: [156, 31, 18, 255], tub: [23, 32, 29, 255] }, icon.src);
  }
  await context.close();
});

test("the policy of a site's page lets in its own folder's host for worker, manifest and icons, and nothing else", () => {
  const policyOf = (file) => /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(readFileSync(file, "utf8"))[1].split(/; */).map((rule) => rule.trim());
  assert.equal(program("page", "open carpet", "-o", "one.html", "--replace").status & ~1, 0);
  const alone = policyOf(join(folder, "one.html")), site = policyOf(join(folder, "site", "index.html"));
  const more = site.filter((rule) => !alone.includes(rule));
  assert.deepEqual(more.map((rule) => rule.split(" ")[0]).sort(), ["img-src", "manifest-src", "worker-src"]);
  for (const rule of more) assert.match(rule, /'self'$/);
  assert.ok(!site.some((rule) => /https?:|\*|unsafe-inline/.test(rule)), site.join("; "));
});

test("a folder of other things is left alone, with --replace too but for the site's own files; and nothing is written by halves", () => {
  mkdirSync(join(folder, "used"));
  writeFileSync(join(folder, "used", "index.html"), "mine");
  const refused = program("page", "open carpet", "--site", "used");
  assert.equal(refused.status, 73);
  assert.match(refused.stderr, /'used' holds other things: 'index.html'/);
  assert.equal(readFileSync(join(folder, "used", "index.html"), "utf8"), "mine");
  writeFileSync(join(folder, "used", "notes.txt"), "mine");
  assert.equal(program("page", "open carpet", "--site", "used", "--replace").status & ~1, 0);
  assert.deepEqual(readdirSync(join(folder, "used")).sort(), [...names, "notes.txt"].sort());
  assert.equal(program("page", "tight balls", "--site", "used").status, 73);
  mkdirSync(join(folder, "halves", "index.html"), { recursive: true });
  assert.equal(program("page", "open carpet", "--site", "halves", "--replace").status, 73);
  assert.deepEqual(readdirSync(join(folder, "halves")), ["index.html"]);
  assert.equal(program("page", "open carpet", "--site", join("no", "where")).status, 73);
  assert.ok(!existsSync(join(folder, "no")));
});
