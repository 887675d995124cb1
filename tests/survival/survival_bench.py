"""What the parts of `run` share: the program in a folder of its own, what a store holds, and how a run is killed."""

import hashlib
import os
import re
import resource
import shutil
import signal
import sqlite3
import subprocess
import tempfile
import time
from contextlib import closing
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
DAY = "2026-11-25"
STORE = "data/baitwright/baitwright.db"
BESIDE = ("-wal", "-shm", "-journal")
MARK = re.compile(r"^[0-9a-f]{32}$")


class Outcome:
    """How a run ended; `worked` is the processor's part of its seconds, where nothing else ran meanwhile."""

    def __init__(self, status, output, errors, seconds, worked):
        self.status, self.output, self.errors, self.seconds, self.worked = status, output, errors, seconds, worked

    def refused_well(self):
        return self.status in (1, 64, 65, 66, 73, 74, 75) and (self.status == 1 or "hint:" in self.errors)


class Bench:
    """Folders for the attacks, and the program that is run in them."""

    def __init__(self, program, where=None):
        self.program = str(Path(program).resolve())
        self.base = Path(tempfile.mkdtemp(prefix="baitwright-survival-", dir=where))
        self.verbs = set()

    def remove(self):
        shutil.rmtree(self.base, ignore_errors=True)

    def folder(self, name):
        here = self.base / name
        here.mkdir()
        return here

    def _started(self, line, here, limit=None, ignores_size=True):
        env = {"HOME": str(here), "XDG_DATA_HOME": str(here / "data"), "TMPDIR": str(here), "PATH": os.environ["PATH"],
               "BAITWRIGHT_TODAY": DAY, "NO_COLOR": "1", "LANG": "C.UTF-8"}

        def prepare():
            resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
            if limit is not None:
                signal.signal(signal.SIGXFSZ, signal.SIG_IGN if ignores_size else signal.SIG_DFL)
                resource.setrlimit(resource.RLIMIT_FSIZE, (limit, limit))
        return subprocess.Popen([self.program, *line], cwd=here, env=env, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE,
                                stderr=subprocess.PIPE, preexec_fn=prepare, restore_signals=False)

    def run(self, line, here, limit=None, ignores_size=True):
        begun, worked = time.monotonic(), self._worked()
        child = self._started(line, here, limit, ignores_size)
        output, errors = child.communicate(timeout=600)
        return Outcome(child.returncode, output.decode("utf-8", "replace"), errors.decode("utf-8", "replace"),
                       time.monotonic() - begun, self._worked() - worked)

    @staticmethod
    def _worked():
        used = resource.getrusage(resource.RUSAGE_CHILDREN)
        return used.ru_utime + used.ru_stime

    def must(self, line, here):
        outcome = self.run(line, here)
        if outcome.status != 0:
            raise AssertionError(f"baitwright {line} ended with {outcome.status}: {outcome.errors[:600]}")
        return outcome

    def killed(self, line, here, after):
        """Runs it, and kills it after so many seconds. None where it was killed, else how it had ended."""
        child = self._started(line, here)
        try:
            output, errors = child.communicate(timeout=after)
        except subprocess.TimeoutExpired:
            child.kill()
            output, errors = child.communicate()
        status = None if child.returncode == -signal.SIGKILL else child.returncode
        return status, output.decode("utf-8", "replace"), errors.decode("utf-8", "replace")

    def has(self, verb):
        """Whether the program knows a command."""
        if verb not in self.verbs:
            here = self.base / "asked"
            here.mkdir(exist_ok=True)
            if self.run(["help", *verb.split()], here).status != 0:
                return False
            self.verbs.add(verb)
        return True


def rows_of(path):
    """All that a store holds, table by table, without regard to what is random in it."""
    with closing(sqlite3.connect(path)) as database:
        tables = [name for (name,) in database.execute(
            "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name")]
        held = {table: sorted(map(repr, map(unmarked, database.execute(f'SELECT * FROM "{table}"')))) for table in tables}
        held["pragma"] = [database.execute("PRAGMA user_version").fetchone(), database.execute("PRAGMA application_id").fetchone()]
        return held


def unmarked(row):
    return tuple("a mark" if isinstance(value, str) and MARK.match(value) else value for value in row)


def unsound(path):
    """What is wrong with a store that ought to be whole: SQLite's own checks, and the shed's balances against the sums of
    the movements, reckoned here. Empty where nothing is."""
    with closing(sqlite3.connect(path)) as database:
        if (said := database.execute("PRAGMA integrity_check").fetchone()[0]) != "ok":
            return f"integrity: {said}"
        if database.execute("PRAGMA foreign_key_check").fetchone():
            return "a reference to what is not there"
        wrong = database.execute(
            "SELECT count(*) FROM stock_lot l WHERE left_mg <> max(0, ifnull("
            "(SELECT sum(milligrams) FROM stock_movement WHERE lot_id = l.id), 0))").fetchone()[0]
        return f"{wrong} balances are not the sum of their movements" if wrong else ""


def is_store(path):
    with open(path, "rb") as file:
        return file.read(16) == b"SQLite format 3\0"


KNOWN = {}  # what a file holds, by its bytes: most of those that are looked at are the same ones


def held_by(path):
    """A store's rows, or the bytes of what is none."""
    if not is_store(path):
        return path.read_bytes()
    alone = not any(Path(str(path) + side).exists() for side in BESIDE)
    digest = hashlib.sha256(path.read_bytes()).digest() if alone else None
    if digest in KNOWN:
        return KNOWN[digest]
    try:
        rows = rows_of(path)
    except sqlite3.DatabaseError as damage:
        return f"a store that is not whole: {damage}"
    if digest and len(KNOWN) < 400:
        KNOWN[digest] = rows
    return rows


def state_of(here):
    """Each file below the folder and what it holds; a store by its rows. What SQLite keeps beside a store is a part of it."""
    state = {}
    for path in sorted(here.rglob("*")):
        name = str(path.relative_to(here))
        if path.is_dir() or name.endswith(BESIDE):
            continue
        state[name] = held_by(path)
    return state


def copy_of(source, target):
    if target.exists():
        shutil.rmtree(target)
    shutil.copytree(source, target)


def difference(a, b):
    """The first thing in which two states differ, in words."""
    if isinstance(a, dict) and isinstance(b, dict):
        for name in sorted(set(a) | set(b)):
            if a.get(name) != b.get(name):
                return f"{name}: {difference(a.get(name), b.get(name))}"
    if isinstance(a, list) and isinstance(b, list):
        return f"only there {[row for row in a if row not in b][:2]}, only here {[row for row in b if row not in a][:2]}"[:600]
    return f"{str(a)[:80]} / {str(b)[:80]}"
