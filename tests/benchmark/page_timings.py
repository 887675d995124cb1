"""The bank page on a processor slowed four times, in Chromium, against an empty page: what `tests/page/run --timings` says."""

import re
import subprocess
from pathlib import Path

from bench import ROOT
from figures import Figure

LONGEST_FILE = 900e3
LINE = re.compile(r"^(?P<what>[^\n]+?):\s+least (?P<least>[\d.]+) ms, median (?P<median>[\d.]+) ms, 95 % (?P<most>[\d.]+) ms$", re.M)


def program_with_page(bench):
    """The program, or the released one, where it was built with the engine that a page carries."""
    for program in (bench.program, str(ROOT / "build" / "release" / "baitwright")):
        if Path(program).exists():
            out = str(bench.folder / "bank.html")
            if subprocess.run([program, "page", "open carpet", "-o", out, "--replace"], capture_output=True).returncode in (0, 1):
                return program
    return None


def figures(bench):
    program = program_with_page(bench)
    if program is None:
        yield Figure("the bank page", "skipped: built without Emscripten's engine (`cmake --workflow --preset page`)")
        return
    size = (bench.folder / "bank.html").stat().st_size
    yield Figure("the file of a bank page", f"{size / 1e3:.0f} kB", f"at most {LONGEST_FILE / 1e3:.0f} kB", size <= LONGEST_FILE)
    if bench.quick:
        yield Figure("the page's times", "skipped in a quick run")
        return
    told = subprocess.run([str(ROOT / "tests" / "page" / "run"), program, "--timings"], capture_output=True, text=True)
    if told.returncode != 0:
        yield Figure("the page's times", f"skipped: tests/page/run --timings ended with {told.returncode}")
        return
    times = {found["what"].strip(): {key: float(found[key]) for key in ("least", "median", "most")} for found in LINE.finditer(told.stdout)}
    empty = times["an empty page drawn"]["median"]
    peer = f"an empty page: {empty:.0f} ms"
    for what, more in (("plain words drawn", 250), ("ready, engine open", 700)):
        took = times[what]["median"]
        yield Figure(f"the page opened, slowed four times: {what}", f"{took:.0f} ms", f"at most {more} ms over an empty page", took <= empty + more,
                     f"{took / empty:.2f}", peer)
    most = times["a move: asked, answered, texts set"]["most"]
    yield Figure("a move of a slider worked, slowed four times, 95 % of moves", f"{most:.1f} ms", "at most 16 ms", most <= 16)
