// A browser spoken to in the DevTools protocol and no more: for timings, which Playwright's watch over the network would spoil (it has each
// file copied as it is read).
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const asRoot = process.getuid?.() === 0;
const quiet = ["--headless=new", "--remote-debugging-pipe", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--hide-scrollbars", "--mute-audio"];

export class PlainBrowser {
  #asked = new Map();
  #questions = 0;
  #text = "";

  constructor() {
    this.profile = mkdtempSync(join(tmpdir(), "plain-browser-"));
    const args = [...quiet, `--user-data-dir=${this.profile}`, ...(asRoot ? ["--no-sandbox"] : []), "about:blank"];
    this.process = spawn(process.env.CHROMIUM ?? "/usr/bin/chromium", args, { stdio: ["ignore", "ignore", "ignore", "pipe", "pipe"] });
    this.process.stdio[4].setEncoding("utf8").on("data", (text) => this.#hear(text));
  }

  /** Messages are JSON, each ended by a zero. */
  #hear(text) {
    const parts = (this.#text + text).split("\0");
    this.#text = parts.pop();
    for (const part of parts) {
      const message = JSON.parse(part);
      const { done, failed } = this.#asked.get(message.id) ?? {};
      this.#asked.delete(message.id);
      if (message.error) failed(new Error(JSON.stringify(message.error)));
      else if (done) done(message.result);
    }
  }

  send(method, params = {}, sessionId = undefined) {
    this.#questions += 1;
    const id = this.#questions;
    this.process.stdio[3].write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
    return new Promise((done, failed) => this.#asked.set(id, { done, failed }));
  }

  /** A phone's empty tab, in a context of its own. */
  async openTab({ slowed = 1 } = {}) {
    const { browserContextId } = await this.send("Target.createBrowserContext");
    const { targetId } = await this.send("Target.createTarget", { url: "about:blank", browserContextId });
    const { sessionId } = await this.send("Target.attachToTarget", { targetId, flatten: true });
    const tab = new PlainTab(this, { browserContextId, targetId, sessionId });
    await tab.send("Emulation.setDeviceMetricsOverride", { width: 360, height: 740, deviceScaleFactor: 2, mobile: true });
    await tab.send("Emulation.setCPUThrottlingRate", { rate: slowed });
    return tab;
  }

  async close() {
    const ended = new Promise((done) => this.process.on("exit", done));
    this.send("Browser.close").catch(() => {});
    await ended;
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

class PlainTab {
  constructor(browser, ids) {
    Object.assign(this, { browser, ids });
  }

  send(method, params) {
    return this.browser.send(method, params, this.ids.sessionId);
  }

  goto(url) {
    return this.send("Page.navigate", { url });
  }

  /** What a function gives on the page; the arguments and the value go as JSON. */
  async evaluate(work, ...given) {
    const expression = `(${work})(${given.map((one) => JSON.stringify(one)).join(", ")})`;
    const { result, exceptionDetails } = await this.send("Runtime.evaluate", { expression, awaitPromise: true, returnByValue: true });
    if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
    return result.value;
  }

  async close() {
    await this.browser.send("Target.closeTarget", { targetId: this.ids.targetId });
    await this.browser.send("Target.disposeBrowserContext", { browserContextId: this.ids.browserContextId });
  }
}
