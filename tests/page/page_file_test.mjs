// The file itself: one, small, closed to the outside, and the same in any order of its pieces.
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { test } from "node:test";
import { pageFile } from "./browser.mjs";

const html = () => readFileSync(pageFile("carpet"), "utf8");
const policyOf = (text) => /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(text)[1];

test("a page is smaller than 1.1 MB, with several strategies too", () => {
  for (const name of ["carpet", "several"]) assert.ok(statSync(pageFile(name)).size < 1.1e6, `${name}: ${statSync(pageFile(name)).size} bytes`);
});

test("its policy lets nothing in from outside", () => {
  const policy = policyOf(html());
  for (const rule of ["default-src 'none'", "connect-src 'none'", "base-uri 'none'", "form-action 'none'"]) assert.ok(policy.includes(rule), `${rule} is missing in ${policy}`);
  assert.ok(!/unsafe-inline|'unsafe-eval'|https?:/.test(policy), policy);
});

test("the policy's sums are those of the scripts and the style (W3C, Content Security Policy Level 3, section 8.3)", () => {
  const text = html();
  const sum = (piece) => `'sha256-${createHash("sha256").update(piece).digest("base64")}'`;
  const scripts = [...text.matchAll(/<script(?: id="engine-script")?>([^]*?)<\/script>/g)].map((found) => sum(found[1]));
  const style = sum(/<style>([^]*?)<\/style>/.exec(text)[1]);
  const policy = policyOf(text);
  assert.equal(scripts.length, 2);
  for (const one of [...scripts, style]) assert.ok(policy.includes(one), `${one} is not in ${policy}`);
});

test("it asks for no other file, and carries no style or handler in its markup", () => {
  const markup = html().replace(/<script[^]*?<\/script>/g, "").replace(/<style>[^]*?<\/style>/g, "");
  assert.ok(!/\b(src|href|action|style|on[a-z]+)=/i.test(markup), "the markup has an attribute that loads or acts");
});

test("it is ASCII, which a browser reads faster, whatever names it holds", () => {
  for (const name of ["carpet", "names"]) assert.ok(readFileSync(pageFile(name)).every((byte) => byte < 128), name);
});
