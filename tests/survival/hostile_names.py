"""Names that would do harm where they were taken for something else, through the whole round: into the library, into a
page's data, into the notes that a page saves, back into the log, and out of it again. All invented."""

import json
import random
import re
import tomllib
import zlib
from html.parser import HTMLParser

PIECES = ["<script>alert(1)", "</script", "<img src=x onerror=alert(1)>", "&lt;b&amp;", '"', "'", '"""', "'''", "\\", "\\u0000", "]]>",
          "-->", "<!--", "{{7*7}}", "${x}", "$(true)", "`id`", "%s%n", "=cmd|'", "+1", "@BANK_DATA@", "@PLAIN@", ";--", "' OR 1=1",
          "é", "ß", "ñandú", "żółw", "\U0001f41f", "e\u0301", "漢字", "İ", "crumb", "bed", " ", ",", "#", "[[mix]]", "null", "nan",
          "__proto__", "constructor", "a" * 40, "|", "*", "?", "=", "~", "0", "4 mm"]
UNFIT = ["\u202e", "\u200b", "\x1b[31m", "\n", "\x07", "\ufeff", "\u2028", "\ud800"]
MOST_LETTERS = 200


def any_name(chance, kind):
    name = " ".join("".join(chance.choice(PIECES) for _ in range(chance.randint(1, 6))).split())
    return f"{kind} {name}"[:MOST_LETTERS].strip()


def quoted(text):
    """As TOML writes it, which is as JSON does but for the delete character and letters beyond the first plane."""
    return json.dumps(text, ensure_ascii=False).replace("\x7f", "\\u007f")


def library_of(ingredient, mix, strategy):
    return (f'[[ingredient]]\nname = {quoted(ingredient)}\nkind = "base"\nloose_density = "450 g/l"\nabsorption = "0.5 g/g"\n'
            f'[[mix]]\nname = {quoted(mix)}\nfeel = "firm"\n[[mix.part]]\nof = "brown crumb"\nmass = "600 g"\n'
            f'[[mix.part]]\nof = {quoted(ingredient)}\nmass = "400 g"\n'
            f'[[strategy]]\nname = {quoted(strategy)}\nlength = "3 h"\n[[strategy.feed]]\nat = "0 min"\nof = {quoted(mix)}\n'
            'as = "cup"\nsize = "250 ml"\n')


def notes_of(ingredient, mix, strategy, fish, page):
    return (f'[[session]]\nstrategy = {quoted(strategy)}\non = 2026-11-21\nlength = "3 h"\npage = {quoted(page)}\nnote = {quoted(fish)}\n'
            f'[[session.put_in]]\nat = "12 min"\nof = {quoted(mix)}\n'
            f'[[session.mixed]]\nof = {quoted(mix)}\ndry = "1 kg"\nwater = "640 ml"\nfeel = "firm"\n'
            f'[[session.catch]]\nfish = {quoted(fish)}\ncount = 2\n'
            f'[[stock]]\nid = {quoted(page)}\nwhat = "buy"\nof = {quoted(ingredient)}\namount = "1 kg"\non = 2026-11-20\n')


class Elements(HTMLParser):
    """What is markup in a page, and what stands in its data."""

    def __init__(self):
        super().__init__()
        self.markup, self.data, self.inside = {}, {}, None

    def handle_starttag(self, tag, given):
        self.markup[tag] = self.markup.get(tag, 0) + 1
        self.inside = dict(given).get("id") if tag == "script" else None
        self.handlers = any(name.startswith("on") for name, _ in given)
        if self.handlers and tag == "img":
            self.markup["a handler"] = 1

    def handle_data(self, data):
        if self.inside:
            self.data[self.inside] = self.data.get(self.inside, "") + data


def bytes_of_letters(text):
    """As `src/page/letters.js` says how bytes are written: 13 bits in two letters, the lowest first."""
    letters = {chr(code): number for number, code in enumerate(code for code in range(33, 127) if chr(code) not in "<@\\")}
    held = bits = 0
    out = bytearray()
    for at in range(0, len(text), 2):
        two = at + 1 < len(text)
        held |= (letters[text[at]] + (len(letters) * letters[text[at + 1]] if two else 0)) << bits
        bits += 13 if two else 6
        while bits >= 8:
            out.append(held & 255)
            held, bits = held >> 8, bits - 8
    return bytes(out)


class Attack:
    def __init__(self, bench, seed):
        self.bench, self.seed = bench, seed
        self.here = bench.folder("names")
        bench.must(["recipe", "list"], self.here)
        self.pages = self.refused = 0
        self.plain = None  # the markup of a page with plain names
        self.carries_page = self.page_of("open carpet") is not None

    def page_of(self, strategy):
        outcome = self.bench.run(["page", strategy, "-o", "page.html", "--replace"], self.here)
        if outcome.status == 73 and "without the engine" in outcome.errors:
            return None
        assert outcome.status in (0, 1), f"{strategy!r}: {outcome.status}: {outcome.output[:300]}{outcome.errors[:300]}"
        page = Elements()
        page.feed((self.here / "page.html").read_text())
        return page

    def wrong_in_page(self, names):
        page = self.page_of(names["strategy"])
        self.pages += 1
        data = json.loads(page.data["bank-data"])
        library = json.loads(zlib.decompress(bytes_of_letters(page.data["packed-library"].strip())))["library"]
        if names["strategy"] not in data["strategies"]:
            return "the page does not know its strategy"
        for kind, key in (("mix", "mixes"), ("ingredient", "ingredients")):
            if names[kind] not in [entry["name"] for entry in library[key]]:
                return f"the page does not carry the {kind}"
        if set(page.markup) - set(self.plain.markup):
            return f"a name is markup in the page: {set(page.markup) - set(self.plain.markup)}"
        return ""

    def notes(self):
        outcome = self.bench.must(["log", "notes"], self.here)
        return tomllib.loads(outcome.output)

    def wrong_in_log(self, names, page):
        found = [session for session in self.notes().get("session", []) if session.get("page") == page]
        if len(found) != 1:
            return f"{len(found)} sessions of one page"
        session = found[0]
        for told, said in ((session["strategy"], names["strategy"]), (session["mixed"][0]["of"], names["mix"]),
                           (session["put_in"][0]["of"], names["mix"]), (session["catch"][0]["fish"], names["fish"]),
                           (session["note"], names["fish"])):
            if told != said:
                return f"{said!r} came back as {told!r}"
        held = json.loads(self.bench.must(["stock", names["ingredient"], "--json"], self.here).output)["items"]
        if [(item["name"], item["left_g"]) for item in held] != [(names["ingredient"], 1000)]:
            return f"the shed holds {held}"
        return ""

    def round(self, number):
        """What is wrong with one set of names; empty where nothing is."""
        chance = random.Random(f"{self.seed}:{number}")
        names = {kind: any_name(chance, f"{kind[0]}{number}") for kind in ("ingredient", "mix", "strategy", "fish")}
        (self.here / "lib.toml").write_text(library_of(names["ingredient"], names["mix"], names["strategy"]))
        added = self.bench.run(["recipe", "add", "lib.toml"], self.here)
        if added.status != 0:
            self.refused += 1
            return "" if added.refused_well() else f"adding {names} ended with {added.status}: {added.errors[:300]}"
        if self.carries_page:
            self.plain = self.plain or self.page_of("open carpet")
            if wrong := self.wrong_in_page(names):
                return f"{wrong}: {names}"
        page = f"page{number}"
        (self.here / "notes.toml").write_text(notes_of(names["ingredient"], names["mix"], names["strategy"], names["fish"], page))
        for again in (False, True):  # the second time brings nothing
            taken = self.bench.run(["log", "add", "--from", "notes.toml"], self.here)
            if taken.status != 0:
                return f"its notes ended with {taken.status}: {taken.errors[:400]}: {names}"
            if wrong := self.wrong_in_log(names, page):
                return f"{wrong}{' the second time' if again else ''}: {names}"
        return ""

    def refusal(self, letter):
        """Letters that no name may hold are refused with a hint, and nothing is written."""
        text = library_of("dust x", f"bad {letter} bed", "day x")
        (self.here / "lib.toml").write_bytes(text.encode("utf-8", "surrogatepass"))
        before = (self.here / "data/baitwright/baitwright.db").read_bytes()
        added = self.bench.run(["recipe", "add", "lib.toml"], self.here)
        if added.status != 65 or not added.refused_well() or letter in added.errors.replace("\n", "" if letter != "\n" else "\n x"):
            if letter != "\n" or added.status != 65:
                return f"a name with {letter!r} ended with {added.status}: {added.errors[:300]!r}"
        changed = before != (self.here / "data/baitwright/baitwright.db").read_bytes()
        return f"a name with {letter!r} was refused, and something written" if changed else ""


def run(bench, seed, count):
    attack = Attack(bench, seed)
    wrong = [fault for number in range(count) if (fault := attack.round(number))]
    wrong += [fault for letter in UNFIT if (fault := attack.refusal(letter))]
    pages = f"{attack.pages} pages" if attack.carries_page else "no page, for this program carries none"
    return wrong, f"{count} sets of hostile names there and back by notes, {pages}; {attack.refused} refused, {len(UNFIT)} unfit letters refused"
