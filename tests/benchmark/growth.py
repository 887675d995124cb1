"""How the whole process grows with what it is asked about: its processor's time at sizes ten times apart, the exponent of the
last ten times, and the most memory at the largest size. The bar is growth in proportion, with some room: an exponent of 1.2."""

import math
import os
import sqlite3
import sys
from contextlib import closing

from bench import ROOT
from figures import Figure, told_seconds
from timing import in_turn

sys.path.insert(0, str(ROOT / "tests" / "survival"))
import large_store

BAR, MEMORY = 1.2, 500
HEAD = ('name = "big"\nlength = "5 h"\nwhy = "a"\npurpose = "b"\navoid = "c"\n[water]\ndepth = "2 m"\n'
        'temperature = "12 degC"\nclarity = "tinged"\n')


def add_ingredients(path, count):
    """Copies of brown crumb under other names, so that there are so many."""
    with closing(sqlite3.connect(path)) as store, store:
        (crumb,) = store.execute("SELECT id FROM ingredient WHERE folded = 'brown crumb'").fetchone()
        (most, held) = store.execute("SELECT max(id), count(*) FROM ingredient").fetchone()
        numbers = f"WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {count - held}) "
        for table, given in (("ingredient", {"id": f"{most} + i", "name": "'bag ' || i", "folded": "'bag ' || i"}),
                             ("ingredient_property", {"ingredient_id": f"{most} + i"}), ("pack", {"ingredient_id": f"{most} + i"})):
            of = "id" if table == "ingredient" else "ingredient_id"
            columns = [row[1] for row in store.execute(f"PRAGMA table_info({table})") if row[1] != "id" or table == "ingredient"]
            store.execute(f"INSERT INTO {table} ({', '.join(columns)}) {numbers} SELECT {', '.join(given.get(c, c) for c in columns)}"
                          f" FROM n, {table} WHERE {table}.{of} = {crumb}")


def add_logged(path, count):
    """The one logged mix of a store again and again, on other days and a little wetter or drier."""
    with closing(sqlite3.connect(path)) as store, store:
        numbers = f"WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {count - 1}) "
        given = {"id": "1 + i", "entry_id": "1 + i", "mark": "lower(hex(randomblob(16)))", "happened_on": "date('2026-11-24', -(i % 3000) || ' day')",
                 "water": "water * (0.9 + 0.01 * (i * 7919 % 21))"}
        for table in ("log_entry", "log_mix", "log_part"):
            columns = [row[1] for row in store.execute(f"PRAGMA table_info({table})")]
            store.execute(f"INSERT INTO {table} ({', '.join(columns)}) {numbers}"
                          f" SELECT {', '.join(given.get(c, c) for c in columns)} FROM n, {table} WHERE {'id' if table == 'log_entry' else 'entry_id'} = 1")


def of_ingredients(bench, size):
    path = bench.store(f"ingredients-{size}.db")
    add_ingredients(path, size)
    return {"`mix`": ["mix", "silt bed", "--wet-volume", "3l", "--store", path],
            "`find crumb`": ["find", "crumb", "--store", path],
            "`ingredient list`": ["ingredient", "list", "--store", path]}


def of_parts(bench, size):
    path = str(bench.folder / "parts.db")
    if not os.path.exists(path):
        add_ingredients(bench.store("parts.db"), 2000)
    recipe = bench.folder / f"parts-{size}.toml"
    recipe.write_text('name = "of many"\nfeel = "firm"\n' + "".join(f'[[part]]\nof = "bag {i + 1}"\nmass = "10 g"\n' for i in range(size)))
    return {"`mix`": ["mix", str(recipe), "--wet-volume", "3l", "--store", path]}


def of_put_ins(bench, size):
    path = str(bench.folder / "put-ins.db")
    if not os.path.exists(path):
        bench.store("put-ins.db")
    strategy = bench.folder / f"put-ins-{size}.toml"
    feed = f'[[feed]]\nevery = "{30 if size == 10 else 3} min"\nof = "silt bed"\nas = "ball"\nsize = "45 mm"\ncount = 1\n'
    strategy.write_text(HEAD + feed * max(1, size // 100))
    return {"`plan`": ["plan", str(strategy), "--store", path], "`cost`": ["cost", str(strategy), "--store", path]}


def of_sessions(bench, size):
    path = str(bench.folder / "sessions.db")
    if not os.path.exists(path):
        bench.store("sessions.db")
    return {"`shop`": ["shop", f"open carpet={size}", "--store", path]}


def of_movements(bench, size):
    path = str(bench.folder / f"movements-{size}.db")
    bench.must(["stock", "buy", "brown crumb", "1kg", "--store", path])
    large_store.fill(path, size)
    return {"`stock`": ["stock", "--store", path], "`stock use`": ["stock", "use", "brown crumb", "1g", "--store", path],
            "`mix --from-stock`": ["mix", "silt bed", "--from-stock", "--store", path], "`doctor`": ["doctor", "--store", path]}


def of_logs(bench, size):
    path = str(bench.folder / f"logs-{size}.db")
    bench.must(["log", "mix", "silt bed", "--dry", "1kg", "--water", "680ml", "--feel", "firm", "--store", path])
    add_logged(path, size)
    return {"`learn`": ["learn", "--store", path], "`log list`": ["log", "list", "--store", path],
            "`mix`": ["mix", "silt bed", "--wet-volume", "3l", "--store", path]}


WAYS = [("ingredients", of_ingredients, (200, 2000, 20_000, 200_000)), ("parts of a mix", of_parts, (1, 10, 100, 1000)),
        ("put-ins", of_put_ins, (10, 100, 1000, 10_000)), ("sessions", of_sessions, (1, 10, 100, 400)),
        ("movements", of_movements, (1000, 10_000, 100_000, 1_000_000)), ("logged mixes", of_logs, (10, 100, 1000, 10_000))]


def exponent(sizes, times):
    """Of the last step: 1 is in proportion, 0 is the same whatever the size."""
    return math.log(times[-1] / times[-2]) / math.log(sizes[-1] / sizes[-2])


def figures(bench):
    for what, make, sizes in WAYS:
        sizes = sizes[:-1] if bench.quick else sizes
        taken, lines = {}, {}
        for size in sizes:
            lines = make(bench, size)
            commands = {name: [bench.program, *line] for name, line in lines.items()}
            for name, times in in_turn(commands, bench.runs(5, 3) if size < 20_000 else 1, (0, 1)).items():
                taken.setdefault(name, []).append(times.median_busy())
        for name, times in taken.items():
            grown = exponent(sizes, times)
            peak = bench.peak_megabytes(lines[name], (0, 1))
            told = ", ".join(told_seconds(time) for time in times)
            yield Figure(f"{name} over {', '.join(f'{size:,}' for size in sizes)} {what}", f"{told}; {peak:.0f} MB at the most",
                         f"exponent at most {BAR}, under {MEMORY} MB", grown <= BAR and peak < MEMORY, f"exponent {grown:.2f}")
        for path in bench.folder.glob("*.db*"):
            path.unlink()
