"""A figure that was measured, held against its bar; and what is printed of it."""

from dataclasses import dataclass


@dataclass
class Figure:
    what: str
    figure: str
    bar: str = ""        # as told; empty where there is none
    met: bool = True     # whether the bar is kept
    ratio: str = ""      # to the peer
    peer: str = ""

    def row(self):
        verdict = "" if not self.bar else ", met" if self.met else ", **missed**"
        return f"| {self.what} | {self.figure} | {self.bar}{verdict} | {self.ratio} | {self.peer} |"

    def line(self):
        told = [f"{'ok    ' if self.met else 'MISSED'} {self.what}: {self.figure}"]
        if self.ratio or self.peer:
            told.append(f"{self.ratio} to {self.peer}" if self.ratio and self.peer else self.ratio or self.peer)
        if self.bar:
            told.append(f"bar {self.bar}")
        return "; ".join(told)


def told_seconds(seconds):
    for unit, size in (("s", 1), ("ms", 1e-3), ("us", 1e-6)):
        if seconds >= size:
            return f"{seconds / size:.3g} {unit}"
    return f"{seconds * 1e9:.3g} ns"


def under(what, seconds, bar, ratio="", peer=""):
    """A time that must stay under so many seconds."""
    return Figure(what, told_seconds(seconds), f"under {told_seconds(bar)}", seconds < bar, ratio, peer)
