#!/usr/bin/env python3
"""Whole-process time of `baitwright card` for each shipped strategy and format.

Usage: card_benchmark.py BAITWRIGHT [RUNS]
Prints the slowest strategy's median for each format, by the clock and of the processor alone (which other work on the
machine does not lengthen); the bar is 80 ms by the clock. Exit status 1 where a PDF takes longer.
"""
import json
import shutil

from bench import by_itself
from figures import Figure, told_seconds
from timing import in_turn

BAR = 0.080


def figures(bench, runs=None):
    store = bench.store("card.db")
    names = [entry["name"] for entry in json.loads(bench.must(["strategy", "list", "--json", "--store", store]))["strategies"]]
    for form in ("pdf", "svg", "png"):
        out = str(bench.folder / f"sheet.{form}")
        commands = {name: [bench.program, "card", name, "--start", "09:30", "-o", out, "--replace", "--store", store] for name in names}
        commands["nothing"] = [shutil.which("true")]
        times = in_turn(commands, runs or bench.runs(9, 3))
        nothing = times.pop("nothing").median()
        slowest = max(times, key=lambda name: times[name].median())
        took = times[slowest]
        yield Figure(f"`card` of the slowest shipped strategy, {form}",
                     f"{told_seconds(took.median())} ({told_seconds(took.median_busy())} of processor)",
                     f"under {told_seconds(BAR)}" if form == "pdf" else "", form != "pdf" or took.median() < BAR,
                     f"{took.median() / nothing:.0f}", "an empty process")


if __name__ == "__main__":
    by_itself(figures)
