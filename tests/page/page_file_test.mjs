// The file itself: one, small, closed to the outside, and the same in any order of its pieces.
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { test } from "node:test";
import { runInThisContext } from "node:vm";
import { gunzipSync } from "node:zlib";
import { pageFile } from "./browser.mjs";

const html = () => readFileSync(pageFile("carpet"), "utf8");
const policyOf = (text) => /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(text)[1];

test("a page with the whole library is at most 900 kB, with several strategies too", () => {
  for (const name of ["carpet", "several"]) assert.ok(statSync(pageFile(name)).size <= 9e5, `${name}: ${statSync(pageFile(name)).size} bytes`);
});

test("its policy lets nothing in from outside", () => {
  const policy = policyOf(html());
  for (const rule of ["default-src 'none'", "connect-src 'none'", "base-uri 'none'", "form-action 'none'"]) assert.ok(policy.includes(rule), `${rule} is missing in ${policy}`);
  assert.ok(!/unsafe-inline|'unsafe-eval'|https?:/.test(policy), policy);
});

test("the policy's sums are those of the opener, of the bridge, of the scripts that are unpacked, and of the style (W3C, Content Security Policy Level 3, section 8.3)", async () => {
  const text = html();
  const sum = (piece) => `'sha256-${createHash("sha256").update(piece).digest("base64")}'`;
  const running = [...text.matchAll(/<script>([^]*?)<\/script>/g)].map((found) => found[1]);
  assert.equal(running.length, 2);
  const { bytesOfLetters } = runInThisContext(`${readFileSync(new URL("../../src/page/letters.js", import.meta.url), "utf8")}\n({ bytesOfLetters })`);
  const unpacked = gunzipSync(bytesOfLetters(/id="packed-scripts">([^]*?)<\/script>/.exec(text)[1]));
  const style = /<style>([^]*?)<\/style>/.exec(text)[1];
  const policy = policyOf(text);
  for (const one of [...running, unpacked, style]) assert.ok(policy.includes(sum(one)), `${sum(one)} is not in ${policy}`);
  assert.equal(policy.match(/sha256-/g).length, 4);
});

test("it asks for no other file, and carries no style or handler in its markup", () => {
  const markup = html().replace(/<script[^]*?<\/script>/g, "").replace(/<style>[^]*?<\/style>/g, "");
  assert.ok(!/\b(src|href|action|style|on[a-z]+)=/i.test(markup), "the markup has an attribute that loads or acts");
});

test("it is ASCII, which a browser reads faster, whatever names it holds", () => {
  for (const name of ["carpet", "names"]) assert.ok(readFileSync(pageFile(name)).every((byte) => byte < 128), name);
});
