// What the program says to the same question, in a store of its own, and whether a place tells it word for word.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { lettersOnAPhone } from "./phone_words.mjs";

const folder = mkdtempSync(join(tmpdir(), "told-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));

/** What the program prints; it may end with 1, where its answer is no. */
export const program = (...words) => programWith("store", ...words);

/** The same in another store, for what changes it. */
export function programWith(store, ...words) {
  const ran = spawnSync(process.env.BANK_PROGRAM, [...words, "--store", join(folder, `${store}.db`)], { encoding: "utf8", env: { ...process.env, LC_ALL: "C.UTF-8" } });
  assert.ok(ran.status === 0 || ran.status === 1, ran.stderr);
  return ran.stdout;
}

export const record = (...words) => JSON.parse(program(...words, "--json"));

/** All the letters, without what only sets them. */
export const letters = (text) => text.replace(/^ *-{5,}$/gm, "").replace(/\[ \] /g, "").replace(/\s+/g, "");

/** The pieces are the printed text, word for word and none left out; only their order is the page's own. */
export function assertToldAlike(pieces, printed, where = "") {
  const all = lettersOnAPhone(printed);
  for (const piece of pieces) assert.ok(all.includes(letters(piece)), `${where}: ${piece}\n${printed}`);
  assert.equal(pieces.map(letters).join("").length, all.length, `${where}\n${pieces.join("\n")}\n${printed}`);
}
