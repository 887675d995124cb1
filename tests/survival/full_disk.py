"""A disk that is full at every 64 kB of what a command writes: by a limit on the size of files, which any user may set,
and, where mounting is allowed, by a small file system in memory. The old store must be whole, or the new one."""

import os
import shutil
import subprocess

import kills
import survival_bench as bench_of

STEP = 64 << 10
WRITERS = ("stock buy", "recipe add", "log add", "backup", "restore", "merge", "import", "export", "doctor")


def broken_off(kind, outcome, here, by_signal):
    """What is wrong with how the run ended on a full disk, and with what it left."""
    done = outcome.status == kind.outcome.status
    if not done and not (outcome.status in (73, 74) and outcome.refused_well()) and not (by_signal and outcome.status < 0):
        return f"ended with {outcome.status}: {outcome.errors[:300]}"
    return kind.left_behind(here, done)[1]


def by_limit(bench, kind):
    """Each size, as the limit tells the program of it: by an error, and by the signal that ends it."""
    largest = max(path.stat().st_size for path in (bench.base / "killed").rglob("*") if path.is_file())
    for limit in range(0, largest + 2 * STEP, STEP):
        for ignores in (True, False):
            here = kind.fresh()
            outcome = bench.run(kind.line, here, limit=limit, ignores_size=ignores)
            yield limit, broken_off(kind, outcome, here, by_signal=not ignores)


class SmallDisk:
    """A file system of so many bytes; `mounted` is False where it is not allowed."""

    def __init__(self, place):
        self.place = place
        place.mkdir(exist_ok=True)
        self.mounted = False

    def mount(self, size):
        done = subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={size}", "tmpfs", str(self.place)], capture_output=True)
        self.mounted = done.returncode == 0
        return self.mounted

    def unmount(self):
        if self.mounted:
            subprocess.run(["umount", str(self.place)], check=True)
        self.mounted = False


def room_of(folder):
    block = 4096
    return sum(block * (1 + -(-path.stat().st_size // block)) for path in folder.rglob("*")) + 16 * block


def by_small_disk(bench, kind, disk):
    grows = room_of(bench.base / "killed") - room_of(kind.begins)
    for free in range(0, max(grows, 0) + (1 << 20), STEP):
        if not disk.mount(room_of(kind.begins) + free):
            return
        try:
            here = disk.place / "here"
            shutil.copytree(kind.begins, here)
            outcome = bench.run(kind.line, here)
            left = bench.base / "killed"
            bench_of.copy_of(here, left)  # what is left is looked at where there is room
        finally:
            disk.unmount()
        yield free, broken_off(kind, outcome, left, by_signal=False)


def run(bench, seed, _):
    base = bench.base / "setting"
    if not base.exists():
        kills.setting(bench)
    disk = SmallDisk(bench.base / "disk")
    wrong, limits, disks, kinds = [], 0, 0, 0
    for number, kind in enumerate(kind for kind in kills.kinds_here(bench) if kind[0] in WRITERS):
        attacked = kills.Kind(bench, f"full-{number}", kind, base)
        kinds += 1
        for size, fault in by_limit(bench, attacked):
            limits += 1
            if fault:
                wrong.append(f"files of {size >> 10} kB at most, baitwright {' '.join(attacked.line)}: {fault}")
        attacked.fresh()
        bench.run(attacked.line, bench.base / "killed")
        for size, fault in by_small_disk(bench, attacked, disk) if os.geteuid() == 0 else ():
            disks += 1
            if fault:
                wrong.append(f"{size >> 10} kB left on the disk, baitwright {' '.join(attacked.line)}: {fault}")
    small = f"{disks} small disks" if disks else "no small disks, for mounting is not allowed here"
    return wrong, f"full disk at every 64 kB of {kinds} kinds of write: {limits} limits and {small}; {len(wrong)} left what is not whole"
