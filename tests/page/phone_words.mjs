// What the program prints, as a phone tells it: where the program names what to type, the page has words of its own.
import assert from "node:assert/strict";

const pairs = [
  [/\(baitwrightingredientmeasure\)/g, ""],
  [/\(baitwrightwaterworksfromtheweight\)/g, "(Tubworksfromtheweight)"],
  [/givetheweightstobaitwrightingredientmeasure\./g, "writetheweightsdownforhome."],
  [/Saywhatapackcostswith:baitwrightprice"([^"]*)"/g, "Saywhatapackof$1costs."],
  [/,as'mix'saysinfull\./g, ",asMixsaysinfull."],
  [/lookthroughalist:baitwrightingredientlist/g, "lookthroughalist."],
];

/** All the letters of what the program prints, as the page tells them; rules and blanks only set them. */
export function lettersOnAPhone(printed) {
  const letters = printed.replace(/^ *-{5,}$/gm, "").replace(/\[ \] /g, "").replace(/\s+/g, "");
  return pairs.reduce((text, [typed, told]) => text.replace(typed, told), letters);
}

const quoted = (text) => [...text.matchAll(/'[^']+'/g)].map(([name]) => name);
const isTyped = (text) => /--[a-z]|baitwright |deg[CF]/.test(text);

/** The same refusals: their codes in their order, the names that they quote; in words without anything to type. */
export function assertSameRefusals(page, line, where) {
  assert.deepEqual(page.map((error) => error.code), line.map((error) => error.code), where);
  page.forEach((error, at) => {
    assert.ok(error.hint, `${where}: no hint`);
    assert.ok(!isTyped(error.message) && !isTyped(error.hint), `${where}: ${error.message}; ${error.hint}`);
    for (const name of quoted(line[at].message)) assert.ok(error.message.includes(name), `${where}: ${name} is not in "${error.message}"`);
    const field = /^(--[a-z-]+): /.exec(line[at].message);
    if (field) assert.equal(error.field, field[1], where);
  });
}
