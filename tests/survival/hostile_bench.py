"""The folder in which the program is attacked, and what must never come of it."""

import json
import os
import re
import resource
import shutil
import subprocess
import tempfile
import threading
from pathlib import Path

MOST_SECONDS, MOST_BYTES = float(os.environ.get("HOSTILE_SECONDS", "2")), 500 << 20
NOT_A_NUMBER = re.compile(r"(?<![\w'\"])-?(?:nan|inf)(?![\w'\"])", re.I)


def limited(most):
    def limit():
        resource.setrlimit(resource.RLIMIT_FSIZE, (200 << 20, 200 << 20))
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
        if most:
            resource.setrlimit(resource.RLIMIT_CPU, (10, 10))
            resource.setrlimit(resource.RLIMIT_AS, (2 * MOST_BYTES, 2 * MOST_BYTES))
    return limit


class Bench:
    """A folder with a store in it, laid anew for every case, and the program that is run there."""

    def __init__(self, program, limits):
        self.program, self.limits = str(Path(program).resolve()), limits
        self.base = Path(tempfile.mkdtemp(prefix="baitwright-hostile-"))
        self.here = self.base / "here"
        self.here.mkdir()
        for line in (["recipe", "list"], ["stock", "buy", "brown crumb", "3kg"],
                     ["stock", "keep", "silt bed", "1.2kg", "--frozen"],
                     ["price", "maize meal", "--pack", "1kg", "--is", "£1.90", "--shop", "the mill", "--new-shop"]):
            self.run(line)
        self.store = (self.here / "data/baitwright/baitwright.db").read_bytes()
        self.run(["export", "--all", "taken"])
        taken = self.here / "taken"
        self.taken = {str(path.relative_to(taken)): path.read_bytes() for path in sorted(taken.rglob("*")) if path.is_file()}

    def remove(self):
        shutil.rmtree(self.base)

    def lay(self, data, store=None, taken=None):
        """`store` is another store that lies there, `taken` the files of a folder that an export wrote."""
        shutil.rmtree(self.here)
        (self.here / "data/baitwright").mkdir(parents=True)
        (self.here / "data/baitwright/baitwright.db").write_bytes(self.store)
        (self.here / "lib").mkdir()
        for name in ("case.toml", "case.csv", "lib/case.toml"):
            (self.here / name).write_bytes(data)
        if store is not None:
            for name in ("case.db", "kept.db"):
                (self.here / name).write_bytes(store)
        for name, held in (taken or {}).items():
            path = self.here / "taken" / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(held)

    def run(self, line, data=b""):
        """Status (negative: the signal), output, errors, seconds of the processor, bytes at most."""
        env = {"HOME": str(self.here), "XDG_DATA_HOME": str(self.here / "data"), "PATH": os.environ["PATH"],
               "BAITWRIGHT_TODAY": "2026-11-25", "NO_COLOR": "1", "LANG": "C.UTF-8"}
        with open(self.base / "out", "w+b") as out, open(self.base / "err", "w+b") as err, \
                open(self.base / "in", "w+b") as given:
            given.write(data)
            given.seek(0)
            child = subprocess.Popen([os.fsencode(self.program)] + [word.encode("utf-8", "surrogateescape") for word in line],
                                     cwd=self.here, env=env, stdin=given, stdout=out, stderr=err,
                                     preexec_fn=limited(self.limits))
            clock = threading.Timer(120, child.kill)
            clock.start()
            _, raw, used = os.wait4(child.pid, 0)
            clock.cancel()
            child.returncode = os.waitstatus_to_exitcode(raw)
            out.seek(0)
            err.seek(0)
            return (child.returncode, out.read().decode("utf-8", "replace"), err.read().decode("utf-8", "replace"),
                    used.ru_utime + used.ru_stime, used.ru_maxrss * 1024)


def not_json(text):
    def refuse(constant):
        raise ValueError(constant)
    try:
        json.loads(text, parse_constant=refuse)
        return False
    except ValueError:
        return True


def numbers_gone_wrong(text, line, data):
    given = " ".join(line).lower() + data.decode("utf-8", "replace").lower()
    shown = [found.group().lower().lstrip("-") for found in NOT_A_NUMBER.finditer(text)]
    return any(not re.search(r"\b" + word, given) for word in shown) or re.search(r"\b(nan|inf) (g|kg|ml|l|pt|cm|m|%)\b", text)


def without_hint(errors, as_json):
    if as_json:
        return any(not error.get("hint") for error in json.loads(errors).get("errors", [{}]))
    return "hint:" not in errors


def wrong_with(outcome, line, data, limits):
    """What is wrong with a run, in words; empty where nothing is."""
    status, output, errors, seconds, size = outcome
    as_json = "--json" in line
    if status < 0:
        return f"ended by signal {-status}"
    if status not in (0, 1, 64, 65, 66, 73, 74, 75):
        return f"ended with {status}"
    if limits and seconds > MOST_SECONDS:
        return f"took {seconds:.1f} s"
    if limits and size > MOST_BYTES:
        return f"took {size >> 20} MB"
    if status < 2 and "error:" not in output and numbers_gone_wrong(output, line, data):
        return "printed nan or inf"
    asks_help = "help" in line or "--help" in line or "-h" in line or "--version" in line
    if as_json and not asks_help and not_json(errors if errors else output):
        return "printed what is no JSON"
    if status >= 64 and output:
        return "refused, and answered all the same"
    if status >= 64 and without_hint(errors, as_json):
        return "refused without a hint"
    if "\x1b" in output + errors:
        return "printed an escape of the input"
    return ""
