// What the command-line program answers to a question, as JSON: what the page must agree with.
import { spawnSync } from "node:child_process";
import { join } from "node:path";

const store = () => join(process.env.BANK_PAGES, "asked.db");

export function askProgram(...words) {
  const { stdout, stderr, status } = spawnSync(process.env.BANK_PROGRAM, [...words, "--json", "--store", store()], { encoding: "utf8", env: { ...process.env, LC_ALL: "C.UTF-8" } });
  if (status > 1) throw new Error(`${words.join(" ")}: ${stdout}${stderr}`);
  return JSON.parse(stdout);
}
