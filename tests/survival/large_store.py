"""A store of a million movements: how long a copy, the way back, the check and the bringing together take."""

import shutil
import sqlite3
from contextlib import closing

import survival_bench as bench_of

MOVEMENTS, LOTS, LONGEST = 1_000_000, 1000, 10.0


def columns_of(database, table, given):
    """The columns of an insertion and what goes into them: what is given, and a mark where the table has one."""
    names = [row[1] for row in database.execute(f"PRAGMA table_info({table})")]
    values = dict(given, **({"mark": "lower(hex(randomblob(16)))"} if "mark" in names else {}))
    return f"INSERT INTO {table} ({', '.join(values)}) SELECT {', '.join(values.values())}"


def fill(path, movements):
    """Bags of one thing, each used so often, straight into the tables; the balances are the sums."""
    with closing(sqlite3.connect(path)) as database, database:
        triggers = database.execute("SELECT name, sql FROM sqlite_master WHERE type = 'trigger' AND tbl_name LIKE 'stock%'").fetchall()
        for name, _ in triggers:
            database.execute(f"DROP TRIGGER {name}")
        (item,) = database.execute("SELECT id FROM stock_item WHERE folded = 'brown crumb'").fetchone()
        numbers = "WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i + 1 < {}) "
        lot = columns_of(database, "stock_lot", {"id": "1000 + i", "item_id": str(item), "state": "'dry'", "got_on": "'2026-01-01'",
                                                 "opened_on": "'2026-01-02'", "refrozen": "0", "shop": "''"})
        entry = columns_of(database, "stock_entry", {"id": "10000 + i", "what": f"CASE WHEN i < {LOTS} THEN 'bought' ELSE 'used' END",
                                                     "happened_on": "'2026-01-02'", "item_id": str(item), "session": "''"})
        database.execute(numbers.format(LOTS) + lot + " FROM n")
        database.execute(numbers.format(movements) + entry + " FROM n")
        database.execute(numbers.format(movements) + "INSERT INTO stock_movement SELECT 10000 + i, 1000 + i % ?, "
                         "CASE WHEN i < ? THEN 2000000000 ELSE -1000 - i % 97 END FROM n", (LOTS, LOTS))
        database.execute("UPDATE stock_lot SET left_mg = (SELECT sum(milligrams) FROM stock_movement WHERE lot_id = stock_lot.id)")
        database.execute("UPDATE stock_item SET left_mg = (SELECT sum(left_mg) FROM stock_lot WHERE item_id = stock_item.id)"
                         " WHERE left_mg > 0 OR id = ?", (item,))
        for _, sql in triggers:
            database.execute(sql)


def movements_in(path):
    with closing(sqlite3.connect(path)) as database:
        return database.execute("SELECT count(*) FROM stock_movement").fetchone()[0]


def another(store, other):
    """As if a second machine had gone its own way from the half on: every other entry is one that the first has not."""
    shutil.copy(store, other)
    with closing(sqlite3.connect(other)) as database, database:
        if any(row[1] == "mark" for row in database.execute("PRAGMA table_info(stock_entry)")):
            database.execute("UPDATE stock_entry SET mark = lower(hex(randomblob(16))) WHERE id % 2 AND id >= 10000 + ?", (LOTS,))


def run(bench, seed, movements):
    here = bench.folder("large")
    bench.must(["recipe", "list"], here)
    bench.must(["stock", "buy", "brown crumb", "1kg"], here)
    store = here / bench_of.STORE
    fill(store, movements)
    held, wrong, told = movements_in(store), [], []
    if unsound := bench_of.unsound(store):
        wrong.append(f"the store that was made: {unsound}")
    another(store, here / "other.db")

    def timed(line, bar=LONGEST):
        if not bench.has(line[0]):
            return None
        outcome = bench.run(line, here)
        told.append(f"{line[0]} {outcome.seconds:.1f} s ({outcome.worked:.1f} s of processor)")
        if outcome.status != 0:
            wrong.append(f"baitwright {' '.join(line)} ended with {outcome.status}: {(outcome.errors or outcome.output)[:300]}")
        elif outcome.seconds > bar:
            wrong.append(f"{line[0]} took {outcome.seconds:.1f} s")
        return outcome

    if timed(["backup", "kept.db"]) and movements_in(here / "kept.db") != held:
        wrong.append("the copy lacks movements")
    timed(["doctor"])
    if timed(["restore", "kept.db"]) and movements_in(store) != held:
        wrong.append("movements are lost on the way back")
    if timed(["merge", "other.db"]):
        new = (movements - LOTS) // 2
        if (after := movements_in(store)) != held + new:
            wrong.append(f"{after} movements after bringing two together, not {held + new}")
        if unsound := bench_of.unsound(store):
            wrong.append(f"after bringing two together: {unsound}")
    timed(["stock", "--json"], 2.0)
    return wrong, f"a store of {held} movements: {', '.join(told)}"
