// Firefox by Marionette, which is its own remote control, and WebKit by W3C WebDriver, both as Debian packages them. Each opens an
// address, runs a script in the page, and is closed. A phone's size, no signal.
import { spawn } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { connect, createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as later } from "node:timers/promises";

async function freePort() {
  const server = createServer().listen(0, "127.0.0.1");
  await new Promise((done) => server.once("listening", done));
  const { port } = server.address();
  await new Promise((done) => server.close(done));
  return port;
}

async function until(what, attempt, patience = 60000) {
  const end = Date.now() + patience;
  for (let mishap = null; ; mishap = null) {
    try {
      const got = await attempt();
      if (got) return got;
    } catch (error) {
      mishap = error;
    }
    if (Date.now() > end) throw new Error(`waited in vain for ${what}${mishap ? `: ${mishap.message}` : ""}`);
    await later(200);
  }
}

function connected(port) {
  return new Promise((done, fail) => {
    const socket = connect(port, "127.0.0.1", () => done(socket));
    socket.once("error", fail);
  });
}

/** Marionette: "LENGTH:[0, id, command, parameters]" there, "LENGTH:[1, id, error, result]" back (Firefox's source docs, remote/marionette). */
function marionette(socket) {
  const waiting = new Map();
  let read = Buffer.alloc(0);
  let last = 0;
  socket.on("data", (bytes) => {
    read = Buffer.concat([read, bytes]);
    for (let colon = read.indexOf(58); colon > 0; colon = read.indexOf(58)) {
      const end = colon + 1 + Number(read.subarray(0, colon));
      if (read.length < end) return;
      const message = JSON.parse(read.subarray(colon + 1, end));
      read = read.subarray(end);
      if (!Array.isArray(message)) continue;  // its greeting
      const [, id, error, result] = message;
      const { done, fail } = waiting.get(id);
      waiting.delete(id);
      if (error) fail(new Error(error.message));
      else done(result);
    }
  });
  return (command, parameters = {}) => new Promise((done, fail) => {
    last += 1;
    waiting.set(last, { done, fail });
    const text = JSON.stringify([0, last, command, parameters]);
    socket.write(`${Buffer.byteLength(text)}:${text}`);
  });
}

export async function openFirefox() {
  const profile = await mkdtemp(join(tmpdir(), "firefox-"));
  const port = await freePort();
  await writeFile(join(profile, "user.js"), [
    ["marionette.port", port], ["network.proxy.type", 1], ["network.proxy.http", "127.0.0.1"], ["network.proxy.http_port", 9], ["network.proxy.ssl", "127.0.0.1"], ["network.proxy.ssl_port", 9],
    ["browser.shell.checkDefaultBrowser", false], ["datareporting.policy.dataSubmissionEnabled", false], ["browser.aboutwelcome.enabled", false], ["app.update.disabledForTesting", true],
  ].map(([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`).join("\n"));
  const child = spawn(process.env.FIREFOX ?? "firefox-esr", ["--headless", "--marionette", "--profile", profile, "--width", "360", "--height", "740"],
    { stdio: "ignore", env: { ...process.env, HOME: profile, MOZ_HEADLESS_WIDTH: "360", MOZ_HEADLESS_HEIGHT: "740", LANG: "en_GB.UTF-8", TZ: "Europe/London" } });
  const socket = await until("Firefox", () => connected(port));
  const send = marionette(socket);
  await send("WebDriver:NewSession", {});
  await send("WebDriver:SetTimeouts", { script: 60000, pageLoad: 60000 });
  return {
    open: (address) => send("WebDriver:Navigate", { url: address }),
    run: async (script, ...given) => (await send("WebDriver:ExecuteScript", { script, args: given })).value,
    close: async () => {
      await send("Marionette:Quit", { flags: ["eForceQuit"] }).catch(() => {});
      child.kill();
      socket.destroy();
      await rm(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

export async function openWebKit() {
  const home = await mkdtemp(join(tmpdir(), "webkit-"));
  const port = await freePort();
  const display = `:${90 + port % 900}`;
  const screen = spawn("Xvfb", [display, "-screen", "0", "800x900x24", "-nolisten", "tcp"], { stdio: "ignore" });
  const child = spawn(process.env.WEBKIT_DRIVER ?? "WebKitWebDriver", [`--port=${port}`],
    { stdio: "ignore", env: { ...process.env, HOME: home, DISPLAY: display, XDG_RUNTIME_DIR: home, LIBGL_ALWAYS_SOFTWARE: "1", WEBKIT_DISABLE_COMPOSITING_MODE: "1", NO_AT_BRIDGE: "1", GSETTINGS_BACKEND: "memory", TZ: "Europe/London" } });
  async function send(method, path, body) {
    const reply = await fetch(`http://127.0.0.1:${port}${path}`, { method, body: body && JSON.stringify(body) });
    const { value } = await reply.json();
    if (value && value.error) throw new Error(`${value.error}: ${value.message}`);
    return value;
  }
  await until("WebKit's driver", () => send("GET", "/status"));
  const mini = process.env.WEBKIT_BROWSER ?? "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser";
  const { sessionId } = await until("WebKit", () => send("POST", "/session", {
    capabilities: { alwaysMatch: { "webkitgtk:browserOptions": { binary: mini, args: ["--automation"] } } },
  }));
  const at = `/session/${sessionId}`;
  await send("POST", `${at}/timeouts`, { script: 60000, pageLoad: 60000 });
  await send("POST", `${at}/window/rect`, { width: 420, height: 800 }).catch(() => {});
  return {
    open: (address) => send("POST", `${at}/url`, { url: address }),
    run: (script, ...given) => send("POST", `${at}/execute/sync`, { script, args: given }),
    close: async () => {
      await send("DELETE", at).catch(() => {});
      child.kill();
      screen.kill();
      await rm(home, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** Asks the page again and again until it says yes. */
export function ready(browser, script) {
  return until("the page", () => browser.run(script));
}
