#!/usr/bin/env python3
"""Whole-process time of `baitwright card` for each shipped strategy and format.

Usage: card_benchmark.py BAITWRIGHT [RUNS]
Prints the slowest strategy's median for each format, by the clock and of the processor alone (which other work on the
machine does not lengthen); the bar is 80 ms by the clock. Exit status 1 where a PDF takes longer.
"""
import json, os, resource, statistics, subprocess, sys, tempfile, time

BAR = 0.080


def once(command):
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    start = time.perf_counter()
    subprocess.run(command, stdout=subprocess.DEVNULL, check=True)
    elapsed = time.perf_counter() - start
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return elapsed, after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def main():
    program = os.path.abspath(sys.argv[1])
    runs = int(sys.argv[2]) if len(sys.argv) > 2 else 20
    slowest = {}
    with tempfile.TemporaryDirectory() as folder:
        store = os.path.join(folder, "store.db")
        told = subprocess.run([program, "strategy", "list", "--json", "--store", store], capture_output=True, check=True)
        for name in [entry["name"] for entry in json.loads(told.stdout)["strategies"]]:
            for form in ("pdf", "svg", "png"):
                command = [program, "card", name, "--start", "09:30", "-o", os.path.join(folder, "sheet." + form), "--replace", "--store", store]
                times = [once(command) for _ in range(runs)]
                clock, busy = (statistics.median(column) for column in zip(*times))
                slowest[form] = max(slowest.get(form, (0, 0, "")), (clock, busy, name))
    for form, (clock, busy, name) in slowest.items():
        print(f"{form}: {clock * 1e3:.1f} ms by the clock, {busy * 1e3:.1f} ms of processor ({name}, median of {runs})")
    sys.exit(slowest["pdf"][0] > BAR)


main()
