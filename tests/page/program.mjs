// What the command line's program answers, from a library as it ships: what the page shows is held against it.
import { spawnSync } from "node:child_process";
import assert from "node:assert/strict";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** What the program prints, as one line; or with --json its record. */
export function programSays(...args) {
  const folder = mkdtempSync(join(tmpdir(), "bank-"));
  try {
    const ran = spawnSync(process.env.BANK_PROGRAM, [...args, "--store", join(folder, "store.db")], { encoding: "utf8", env: { ...process.env, LC_ALL: "C.UTF-8" } });
    assert.equal(ran.status, 0, ran.stderr);
    return args.includes("--json") ? JSON.parse(ran.stdout) : ran.stdout.replace(/\s+/g, " ").trim();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
