"""A store of a million movements: copied, checked, brought back and brought together with another, as whole processes."""

import sqlite3
import sys
from contextlib import closing

from bench import ROOT
from figures import Figure, told_seconds
from timing import once

sys.path.insert(0, str(ROOT / "tests" / "survival"))
import large_store

BAR, MEMORY = 10.0, 500


def copied_by_sqlite(store, copy):
    """What any copy pays: SQLite's own, checked."""
    sqlite3_commands = f".backup {copy}"
    return ["/usr/bin/env", "sqlite3", store, sqlite3_commands, "pragma integrity_check"]


def figures(bench):
    movements = bench.runs(1_000_000, 50_000)
    bar, told = BAR, f"{movements:,} movements"
    store, other, kept = (str(bench.folder / name) for name in ("large.db", "other.db", "kept.db"))
    bench.must(["stock", "buy", "brown crumb", "1kg", "--store", store])
    large_store.fill(store, movements)
    large_store.another(store, other)
    with closing(sqlite3.connect(store)) as database:
        database.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    floor, _ = once(copied_by_sqlite(store, str(bench.folder / "floor.db")))
    peer = f"`sqlite3` copying and checking the same: {told_seconds(floor)}"
    for line, least in ((["backup", kept], bar), (["doctor"], bar), (["restore", kept], bar), (["merge", other], bar), (["stock", "--json"], 2.0)):
        clock, busy = once([bench.program, *line, "--store", store])
        name = " ".join(word for word in line if not word.startswith(str(bench.folder)))
        yield Figure(f"`{name}` of {told}", f"{told_seconds(clock)} ({told_seconds(busy)} of processor)", f"under {told_seconds(least)}",
                     clock < least, f"{clock / floor:.2f}", peer)
    peak = bench.peak_megabytes(["doctor", "--store", store])
    yield Figure(f"memory of `doctor` of {told}", f"{peak:.0f} MB", f"under {MEMORY} MB", peak < MEMORY)
