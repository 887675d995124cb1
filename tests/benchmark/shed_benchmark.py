#!/usr/bin/env python3
"""Commands of a store that has seen much against the same commands of a new one.

Usage: shed_benchmark.py BAITWRIGHT [RUNS]
The full store holds 5,000 ingredients, a lot or more in the shed of each, and a ledger of 200,000 movements; the new one
the shipped library and a bag of each ingredient of the mix. Both are asked alternately (100 times each by default). The
bar: the median of the full store within twice that of the new one plus 1 ms. Exit status 1 where it is not.
"""
import os, random, shutil, sqlite3, statistics, subprocess, sys, tempfile, time

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


def milliseconds(command):
    start = time.perf_counter()
    pid = os.posix_spawn(command[0], command, os.environ, file_actions=[
        (os.POSIX_SPAWN_OPEN, 1, "/dev/null", os.O_WRONLY, 0)])
    _, status = os.waitpid(pid, 0)
    elapsed = time.perf_counter() - start
    if status != 0:
        sys.exit(f"failed: {command}")
    return elapsed * 1e3


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


def main():
    program = os.path.abspath(sys.argv[1])
    runs = int(sys.argv[2]) if len(sys.argv) > 2 else 100
    late = False
    with tempfile.TemporaryDirectory() as folder:
        new, full = os.path.join(folder, "new.db"), os.path.join(folder, "full.db")
        for name in ("brown crumb", "maize meal", "fishmeal, brown", "ground fishmeal pellet"):
            subprocess.run([program, "stock", "buy", name, "5kg", "--store", new], stdout=subprocess.DEVNULL, check=True)
        with sqlite3.connect(new) as store:
            store.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        shutil.copy(new, full)
        movements, ingredients = fill(full)
        print(f"full store: {movements} movements, {ingredients} ingredients, {os.path.getsize(full) / 1e6:.0f} MB")
        for command in COMMANDS:
            times = {new: [], full: []}
            for _ in range(runs):
                for store in times:
                    times[store].append(milliseconds([program, *command, "--store", store]))
            young, old = (statistics.median(times[store]) for store in (new, full))
            bar = 2 * young + 1
            late = late or old > bar
            print(f"{'LATE' if old > bar else 'ok  '} new {young:6.2f} ms, full {old:6.2f} ms, bar {bar:6.2f} ms  {' '.join(command)}")
    sys.exit(late)


main()
