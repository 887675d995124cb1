#!/usr/bin/env python3
"""Commands of a store that has seen much against the same commands of a new one.

Usage: shed_benchmark.py BAITWRIGHT [RUNS]
The full store holds 5,000 ingredients, a lot or more in the shed of each, and a ledger of 200,000 movements; the new one
the shipped library and a bag of each ingredient of the mix. Both are asked alternately (60 times each by default). The
bar: the median of the full store within twice that of the new one plus 1 ms. Exit status 1 where it is not.
"""
import os
import random
import shutil
import sqlite3

from bench import by_itself
from figures import Figure, told_seconds
from timing import in_turn

INGREDIENTS, MOVEMENTS = 5000, 200_000
MIX = "silt bed"
COMMANDS = [
    ["stock"],
    ["mix", MIX, "--wet-volume", "3l"],
    ["stock", "use", "brown crumb", "1g"],
    ["mix", MIX, "--from-stock"],
    ["mix", MIX, "--dry-mass", "10g", "--book"],
    ["stock", "count", "maize meal", "1kg"],
    ["stock", "undo"],
    ["stock", "history", "brown crumb"],
    ["price", "brown crumb", "--pack", "1kg", "--is", "£2.10"],
    ["price", "history", "brown crumb"],
    ["recipe", "show", MIX],
    ["cost", "open carpet"],
    ["compare", "open carpet", "tight balls"],
]


def copy_row(store, table, key, old, new):
    columns = [row[1] for row in store.execute(f"PRAGMA table_info({table})")]
    values = ", ".join("?" if column == key else column for column in columns)
    store.execute(f"INSERT INTO {table} SELECT {values} FROM {table} WHERE {key} = ?", (new, old))


def add_ingredients(store):
    """Copies of brown crumb under other names, with their properties, packs and cautions."""
    crumb, = store.execute("SELECT id FROM ingredient WHERE folded = 'brown crumb'").fetchone()
    columns = [row[1] for row in store.execute("PRAGMA table_info(ingredient)") if row[1] not in ("id", "name", "folded")]
    count, = store.execute("SELECT count(*) FROM ingredient").fetchone()
    for number in range(count, INGREDIENTS):
        name = f"bag {number} of the back shelf"
        new = store.execute(f"INSERT INTO ingredient (name, folded, {', '.join(columns)})"
                            f" SELECT ?, ?, {', '.join(columns)} FROM ingredient WHERE id = ?", (name, name, crumb)).lastrowid
        for table in ("ingredient_property", "pack", "caution"):
            copy_row(store, table, "ingredient_id", crumb, new)


def add_movements(store):
    """A purchase or two of everything, then uses, each of one lot and never all of it."""
    random.seed(20260301)
    lots = []
    for number, (name, folded) in enumerate(store.execute("SELECT name, folded FROM ingredient ORDER BY id").fetchall()):
        held = store.execute("SELECT id FROM stock_item WHERE folded = ?", (folded,)).fetchone()
        item = held[0] if held else store.execute(
            "INSERT INTO stock_item (name, folded, kind, last_on) VALUES (?, ?, 'ingredient', '2026-01-01')", (name, folded)).lastrowid
        for lot in range(1 + number % 2):
            best = f"202{7 + lot}-{1 + number % 12:02}-{1 + number % 28:02}"
            lots.append((store.execute("INSERT INTO stock_lot (item_id, state, got_on, best_before, refrozen, shop, mark)"
                                       " VALUES (?, 'dry', '2026-01-01', ?, 0, '', lower(hex(randomblob(16))))", (item, best)).lastrowid, item))
    def enter(what, lot, item, milligrams):
        entry = store.execute("INSERT INTO stock_entry (what, happened_on, item_id, session, mark)"
                              " VALUES (?, '2026-01-02', ?, '', lower(hex(randomblob(16))))",
                              (what, item)).lastrowid
        store.execute("INSERT INTO stock_movement VALUES (?, ?, ?)", (entry, lot, milligrams))
    for lot, item in lots:
        enter("bought", lot, item, 5_000_000)
    for _ in range(MOVEMENTS - len(lots)):
        enter("used", *random.choice(lots), -random.randint(1, 30_000))


def fill(path):
    store = sqlite3.connect(path)
    store.execute("BEGIN")
    add_ingredients(store)
    add_movements(store)
    store.execute("COMMIT")
    movements, = store.execute("SELECT count(*) FROM stock_movement").fetchone()
    ingredients, = store.execute("SELECT count(*) FROM ingredient").fetchone()
    store.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    store.close()
    return movements, ingredients


def figures(bench, runs=None):
    new, full = str(bench.folder / "new.db"), str(bench.folder / "full.db")
    for name in ("brown crumb", "maize meal", "fishmeal, brown", "ground fishmeal pellet"):
        bench.must(["stock", "buy", name, "5kg", "--store", new])
    with sqlite3.connect(new) as store:
        store.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    shutil.copy(new, full)
    movements, ingredients = fill(full)
    for command in COMMANDS:
        times = in_turn({store: [bench.program, *command, "--store", store] for store in (new, full)}, runs or bench.runs(60, 7))
        young, old = times[new].median(), times[full].median()
        bar = 2 * young + 0.001
        yield Figure(f"`{' '.join(command)}` of a full shed", told_seconds(old), f"under {told_seconds(bar)}", old <= bar, f"{old / young:.2f}",
                     f"a new store: {told_seconds(young)}")
    yield Figure("that full shed", f"{movements} movements, {ingredients} ingredients, {os.path.getsize(full) / 1e6:.0f} MB")


if __name__ == "__main__":
    by_itself(figures)
