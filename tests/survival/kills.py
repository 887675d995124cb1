"""Kills at random moments of every kind of write. A run that is killed must leave each file as it was or as the same run
leaves it when nobody kills it; what was told to be done must be done; and nothing else may be there after the next run."""

import random
import sqlite3
from contextlib import closing

import survival_bench as bench_of

MIX = """[[mix]]
name = "wind mix"
feel = "soft"
[[mix.part]]
of = "brown crumb"
share = 3
[[mix.part]]
of = "maize meal"
share = 1
"""
FILES = {
    "mix.toml": MIX,
    "strategy.toml": 'name = "short day"\nlength = "3 h"\n[[feed]]\nat = "0 min"\nof = "silt bed"\nas = "ball"\n'
                     'size = "50 mm"\ncount = 6\n',
    "bag.toml": 'name = "dark crumb"\nkind = "base"\nloose_density = "400 g/l"\nabsorption = "0.6 g/g"\n',
    "bags.csv": "name,kind,loose_density,absorption\npale crumb,base,400 g/l,0.6 g/g\ngrey crumb,base,420 g/l,0.7 g/g\n",
    "notes.toml": '[[session]]\nstrategy = "open carpet"\non = 2026-11-21\nlength = "4 h"\npage = "5d1f0c9a"\n'
                  '[[session.mixed]]\nof = "wind mix"\ndry = "500 g"\nwater = "300 ml"\nfeel = "soft"\n'
                  '[[session.catch]]\nfish = "bream"\ncount = 2\n' + MIX +
                  '[[stock]]\nid = "a1"\nwhat = "buy"\nof = "brown crumb"\namount = "2x1 kg"\nprice = "£2.10"\non = 2026-11-20\n'
                  '[[stock]]\nid = "a2"\nwhat = "use"\nof = "brown crumb"\namount = "375 g"\non = 2026-11-21\n',
}
SHED = [["stock", "buy", name, "20kg", "--price", "£9.50"]
        for name in ("brown crumb", "fishmeal, brown", "ground fishmeal pellet", "maize meal")]
SETTING = SHED + [
    ["stock", "keep", "silt bed", "1.2kg", "--frozen"], ["stock", "use", "brown crumb", "250g"],
    ["price", "maize meal", "--pack", "1kg", "--is", "£1.90", "--shop", "the mill", "--new-shop"],
    ["recipe", "copy", "silt bed", "--as", "pit bed"], ["recipe", "copy", "silt bed", "--as", "gone bed"],
    ["recipe", "remove", "gone bed"], ["ingredient", "add", "red crumb", "--like", "brown crumb", "--set", "colour=red"],
    ["log", "mix", "silt bed", "--dry", "1kg", "--water", "680ml", "--feel", "firm"],
    ["log", "mix", "silt bed", "--dry", "1kg", "--water", "720ml", "--feel", "firm"],
    ["log", "bag", "brown crumb"], ["usual", "--pump", "80ml"]]

# A kind of write: the command it needs, and what is typed. Where there are several lines, the last one is killed.
KINDS = [
    ["ingredient add", "bag.toml"], ["ingredient add", "blue crumb", "--like", "brown crumb"],
    ["ingredient measure", "brown crumb", "--absorption", "0.7 g/g"], ["ingredient rename", "red crumb", "--as", "rust crumb"],
    ["ingredient remove", "red crumb"], ["ingredient import", "bags.csv"], ["recipe add", "mix.toml"],
    ["recipe copy", "silt bed", "--as", "best bed"], ["recipe rename", "pit bed", "--as", "old pit bed"],
    ["recipe remove", "pit bed"], ["recipe restore", "gone bed"], ["strategy add", "strategy.toml"],
    ["strategy copy", "open carpet", "--as", "my carpet"], ["stock buy", "brown crumb", "1kg", "--price", "£2.10"],
    ["stock keep", "silt bed", "900g", "--frozen"], ["stock count", "maize meal", "1900g"], ["stock use", "brown crumb", "250g"],
    ["stock waste", "brown crumb", "100g"], ["stock undo"], ["mix", "silt bed", "--dry-mass", "1kg", "--book"],
    ["price", "brown crumb", "--pack", "1kg", "--is", "£2.40"], ["price convert", "--to", "EUR", "--at", "1.17"],
    ["log add", "--planned", "open carpet"], ["log add", "--from", "notes.toml"],
    ["log mix", "silt bed", "--dry", "1kg", "--water", "700ml", "--feel", "soft"], ["log catch", "--fish", "roach", "--count", "30"],
    ["log weigh", "brown crumb", "--vessel", "1l", "--weighs", "420g"], ["log undo"], ["learn", "--apply"],
    ["usual", "--vessel", "1l", "--units", "metric"], ["recipe list"],
    ["backup", "kept.db"], ["backup", "folder"], ["restore", "other.db"], ["merge", "other.db"], ["import", "taken"],
    ["export", "--all", "out"], ["doctor", "--mend"],
]
WRITES_ELSEWHERE = ("backup", "restore", "export", "import", "merge", "doctor")
WITHOUT_STORE = "recipe list"  # the first run of all: it makes the store


def line_of(kind):
    return kind[0].split() + kind[1:]


def setting(bench):
    """The folder in which each killed run begins."""
    here = bench.folder("setting")
    for name, text in FILES.items():
        (here / name).write_text(text)
    (here / "folder").mkdir()
    for line in SETTING:
        bench.must(line, here)
    if bench.has("backup"):
        bench.must(["backup", "other.db"], here)
        for line in (["stock", "buy", "wheat bran", "3kg"], ["recipe", "copy", "silt bed", "--as", "their bed"],
                     ["log", "catch", "--fish", "tench", "--count", "1"]):
            bench.must(line + ["--store", "other.db"], here)
    if bench.has("export"):
        bench.must(["export", "--all", "taken", "--store", "other.db"], here)
    return here


def kinds_here(bench):
    return [kind for kind in KINDS if bench.has(kind[0]) and bench.has({"import": "merge"}.get(kind[0], kind[0]))]


def damaged_for(kind, here):
    """`doctor --mend` needs something to mend: a balance that is not the sum of its movements."""
    if kind[0] != "doctor":
        return
    with closing(sqlite3.connect(here / bench_of.STORE)) as database, database:
        triggers = database.execute("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").fetchall()
        for name, _ in triggers:
            database.execute(f"DROP TRIGGER {name}")
        database.execute("UPDATE stock_lot SET left_mg = left_mg + 7 WHERE id = 1")
        for _, sql in triggers:
            database.execute(sql)


class Kind:
    """One kind of write: from what it begins, and what it leaves when nobody kills it."""

    def __init__(self, bench, number, kind, base):
        self.bench, self.kind, self.line = bench, kind, line_of(kind)
        self.begins = bench.base / f"begins-{number}"
        bench_of.copy_of(base, self.begins)
        if kind[0] == WITHOUT_STORE:
            (self.begins / bench_of.STORE).unlink()
        damaged_for(kind, self.begins)
        self.before = bench_of.state_of(self.begins)
        ended = bench.base / f"ended-{number}"
        bench_of.copy_of(self.begins, ended)
        self.outcome = bench.run(self.line, ended)
        if self.outcome.status not in (0, 1):
            raise AssertionError(f"baitwright {self.line} ended with {self.outcome.status}: {self.outcome.errors[:600]}")
        self.after = bench_of.state_of(ended)
        self.seconds = min(bench.run(self.line, self.fresh()).seconds for _ in range(3))

    def fresh(self):
        here = self.bench.base / "killed"
        bench_of.copy_of(self.begins, here)
        return here

    def kill(self, chance):
        """How far it came (`before`, `after`, `told`), and what is wrong with what it left."""
        here = self.fresh()
        status, _, errors = self.bench.killed(self.line, here, self.seconds * chance.uniform(0.1, 1.1))
        if status not in (None, self.outcome.status):
            return "told", f"ended with {status}: {errors[:300]}"
        return self.left_behind(here, done=status is not None)

    def left_behind(self, here, done):
        """The same of a folder in which it was broken off, or done."""
        following = self.bench.run(["stock", "--json"], here)
        if following.status != 0:
            return "before", f"the next run ended with {following.status}: {following.errors[:300]}"
        names = {str(path.relative_to(here)) for path in here.rglob("*") if path.is_file()}
        state = bench_of.state_of(here)
        known = set(self.before) | set(self.after)
        wrong = self.wrong_in({name: held for name, held in state.items() if name in known}, done)
        return "told" if done else "after" if state == self.after else "before", wrong or self.stray(names - known, here)

    def stray(self, left, here):
        """What the next run left. What lies beside another file than the store is tidied by the next that writes there."""
        if left and self.kind[0] in WRITES_ELSEWHERE and all(not name.startswith(bench_of.STORE) for name in left):
            self.bench.run(self.line, here)
        left = sorted(name for name in left if (here / name).exists())
        return f"stray: {left}" if left else ""

    def wrong_in(self, state, done):
        for name in sorted(set(state) | set(self.before)):
            held = state.get(name)
            allowed = [one.get(name) for one in (self.before, self.after)]
            if held in allowed:
                continue
            if name == bench_of.STORE and held is not None and self.before.get(name) is None:
                continue  # made by the run that followed
            near = min(allowed, key=lambda one: one is None)
            return f"half a write, in {name}: {bench_of.difference(held, near)}"
        if done and state != self.after:
            return f"told, and not done: {bench_of.difference(state, self.after)}"
        return ""


def run(bench, seed, count):
    """Kills that went wrong; and a line with the figures."""
    base = setting(bench)
    kinds = [Kind(bench, number, kind, base) for number, kind in enumerate(kinds_here(bench))]
    came, wrong = {"before": 0, "after": 0, "told": 0}, []
    for number in range(count):
        kind = kinds[number % len(kinds)]
        how_far, fault = kind.kill(random.Random(f"{seed}:{number}"))
        came[how_far] += 1
        if fault:
            wrong.append(f"kill {number}, baitwright {' '.join(kind.line)}: {fault}")
    return wrong, (f"{count} kills over {len(kinds)} kinds of write: {came['before']} before it was written, "
                   f"{came['after']} once it was, {came['told']} once it was told; {len(wrong)} lost, half or stray")
