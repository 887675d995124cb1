"""Eight that write and eight that read at once, each run a process of its own, as people at one shed would."""

import json
import sqlite3
import threading
import time
from contextlib import closing

import survival_bench as bench_of

READING = [["stock", "--json"], ["log", "list", "--json"], ["recipe", "list", "--json"], ["stock", "history", "brown crumb", "--json"]]
LONGEST = 5.0


class Crowd:
    def __init__(self, bench, here, seconds):
        self.bench, self.here = bench, here
        self.end = time.monotonic() + seconds
        self.lock = threading.Lock()
        self.masses, self.fish, self.faults = [], [], []
        self.writes = self.refused_writes = self.reads = self.refused_reads = 0
        self.longest_refusal = self.slowest_read = 0.0

    def writer(self, who):
        number = 0
        while time.monotonic() < self.end:
            number += 1
            milligrams = 1_000_000 + who * 100_000 + number
            fish = f"fish {who} {number}"
            line = ["stock", "buy", "brown crumb", f"{milligrams} mg"] if number % 2 else ["log", "catch", "--fish", fish, "--count", "1"]
            outcome = self.bench.run(line, self.here)
            with self.lock:
                self.writes += 1
                if outcome.status == 0:
                    (self.masses.append(milligrams) if number % 2 else self.fish.append(fish))
                elif outcome.status == 75 and "hint:" in outcome.errors:
                    self.refused_writes += 1
                else:
                    self.faults.append(f"baitwright {' '.join(line)} ended with {outcome.status}: {outcome.errors[:300]}")

    def reader(self, who):
        number, refused_since = who, None
        while time.monotonic() < self.end:
            number += 1
            line = READING[number % len(READING)]
            begun = time.monotonic()
            outcome = self.bench.run(line, self.here)
            with self.lock:
                self.reads += 1
                if outcome.status == 0:
                    json.loads(outcome.output)
                    self.slowest_read = max(self.slowest_read, outcome.seconds)
                    refused_since = None
                elif outcome.status == 75:
                    refused_since = refused_since or begun
                    self.refused_reads += 1
                    self.longest_refusal = max(self.longest_refusal, time.monotonic() - refused_since)
                else:
                    self.faults.append(f"baitwright {' '.join(line)} ended with {outcome.status}: {outcome.errors[:300]}")

    def lost(self):
        with closing(sqlite3.connect(self.here / bench_of.STORE)) as database:
            masses = {mass for (mass,) in database.execute("SELECT milligrams FROM stock_movement")}
            fish = {name for (name,) in database.execute("SELECT name FROM log_entry WHERE what = 'catch'")}
        return [mass for mass in self.masses if mass not in masses] + [one for one in self.fish if one not in fish]


def run(bench, seed, seconds):
    here = bench.folder("crowd")
    bench.must(["recipe", "list"], here)
    bench.must(["stock", "buy", "brown crumb", "1kg"], here)
    crowd = Crowd(bench, here, seconds)
    people = [threading.Thread(target=at, args=(who,)) for who in range(1, 9) for at in (crowd.writer, crowd.reader)]
    for one in people:
        one.start()
    for one in people:
        one.join()
    wrong = list(crowd.faults)
    lost = crowd.lost()
    if lost:
        wrong.append(f"{len(lost)} acknowledged writes are lost: {lost[:5]}")
    if max(crowd.longest_refusal, crowd.slowest_read) > LONGEST:
        wrong.append(f"a reader waited {max(crowd.longest_refusal, crowd.slowest_read):.1f} s")
    if unsound := bench_of.unsound(here / bench_of.STORE):
        wrong.append(unsound)
    if not crowd.masses or not crowd.fish or not crowd.reads:
        wrong.append("nothing was written, or nothing read")
    return wrong, (f"8 writers and 8 readers for {seconds} s: {len(crowd.masses) + len(crowd.fish)} writes acknowledged, {len(lost)} lost, "
                   f"{crowd.refused_writes} told to try again; {crowd.reads} reads, the slowest {crowd.slowest_read:.2f} s, "
                   f"{crowd.refused_reads} refused")
