"""How long processes take, and how much memory: what the parts of `run` measure with."""

import os
import statistics
import sys
import time
from dataclasses import dataclass, field


@dataclass
class Times:
    """What one command took, run by run: seconds by the clock, and of the processor."""

    clock: list = field(default_factory=list)
    busy: list = field(default_factory=list)

    def median(self):
        return statistics.median(self.clock)

    def median_busy(self):
        return statistics.median(self.busy)


def once(command, may_end_with=(0,)):
    """One run, its output thrown away: seconds by the clock and of the processor."""
    begun = time.perf_counter()
    pid = os.posix_spawn(command[0], command, os.environ, file_actions=[
        (os.POSIX_SPAWN_OPEN, 1, "/dev/null", os.O_WRONLY, 0), (os.POSIX_SPAWN_OPEN, 2, "/dev/null", os.O_WRONLY, 0)])
    _, status, used = os.wait4(pid, 0)
    elapsed = time.perf_counter() - begun
    if os.waitstatus_to_exitcode(status) not in may_end_with:
        sys.exit(f"ended with {os.waitstatus_to_exitcode(status)}: {' '.join(command)}")
    return elapsed, used.ru_utime + used.ru_stime


def in_turn(commands, runs, may_end_with=(0,)):
    """Each command so often, one after the other and again, so that what else the machine does falls on all alike."""
    times = {name: Times() for name in commands}
    for _ in range(runs):
        for name, command in commands.items():
            clock, busy = once(command, may_end_with)
            times[name].clock.append(clock)
            times[name].busy.append(busy)
    return times


def median_of(work, rounds):
    """Seconds of the processor that a function takes in this process: the median."""
    times = []
    for _ in range(rounds):
        begun = time.process_time()
        work()
        times.append(time.process_time() - begun)
    return statistics.median(times)
