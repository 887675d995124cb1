"""Runs the program as a person would, on a terminal of its own, and says what it showed. What is run is named on the
command line."""
import errno
import fcntl
import os
import pty
import re
import select
import struct
import subprocess
import sys
import termios
import time
import unicodedata

PROGRAM = os.path.abspath(sys.argv[1])
ESC = "\x1b"


def environment(home, more):
    kept = {"PATH": os.environ["PATH"], "HOME": home, "XDG_DATA_HOME": home + "/data", "LC_ALL": "C.UTF-8",
            "TERM": "xterm-256color", "BAITWRIGHT_TODAY": "2026-11-25", "PAGER": "cat"}
    kept.update(more)
    return {name: value for name, value in kept.items() if value is not None}


class Shown:
    def __init__(self, text, status):
        self.text, self.status = text, status
        self.plain = re.sub(ESC + r"\[[0-9;]*[mK]", "", text)
        self.lines = self.plain.split("\n")

    def widest(self):
        return max(sum(2 if unicodedata.east_asian_width(letter) in "WF" else 1 for letter in line)
                   for line in self.lines)


def started(home, words, columns, rows, more, output=None):
    """The process, and the end of its terminal that we read. Its standard output may go elsewhere."""
    ours, theirs = pty.openpty()
    fcntl.ioctl(theirs, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))

    def own_terminal():
        os.setsid()
        fcntl.ioctl(theirs, termios.TIOCSCTTY, 0)

    process = subprocess.Popen([PROGRAM] + words, cwd=home, env=environment(home, more), stdin=theirs,
                               stdout=output if output is not None else theirs, stderr=theirs,
                               preexec_fn=own_terminal)
    os.close(theirs)
    return process, ours


def read_until_end(process, ours, seconds=300):
    shown = b""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        ready, _, _ = select.select([ours], [], [], 0.1)
        if ready:
            try:
                block = os.read(ours, 65536)
            except OSError as error:
                if error.errno == errno.EIO:
                    break
                raise
            if not block:
                break
            shown += block
    process.wait(timeout=5)
    os.close(ours)
    return Shown(shown.decode("utf-8", "replace").replace("\r\n", "\n"), process.returncode)


def on_terminal(home, *words, columns=80, rows=24, output=None, **more):
    return read_until_end(*started(home, list(words), columns, rows, more, output))


def in_pipe(home, *words, **more):
    run = subprocess.run([PROGRAM] + list(words), cwd=home, env=environment(home, more), stdin=subprocess.DEVNULL,
                         stdout=subprocess.PIPE, stderr=subprocess.PIPE, check=False)
    return Shown(run.stdout.decode(), run.returncode)
