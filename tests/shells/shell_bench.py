"""A shell in a terminal of its own, which loads our completions, is typed into, and is asked what it would run."""

import fcntl
import os
import pathlib
import pty
import re
import select
import shutil
import struct
import subprocess
import tempfile
import termios
import time

SCRIPTS = pathlib.Path(__file__).resolve().parents[2] / "src/cli/completions"
PATIENCE = 20  # seconds for a shell on a busy machine to answer

# How each is begun, and what it is told first. `show` writes its words down, each closed by a byte of nothing.
BEGUN = {
    "bash": (
        ["--norc", "--noprofile", "-i"],
        """bind 'set bell-style none'; bind 'set page-completions off'; bind 'set completion-query-items 0'
bind 'set show-all-if-ambiguous on'; bind 'set enable-bracketed-paste off'
show() { printf '%s\\0' "$@" > "$HOME/shown.part"; mv "$HOME/shown.part" "$HOME/shown"; }
. SCRIPTS/baitwright.bash
""",
    ),
    "zsh": (
        ["-f", "-i"],
        """bindkey -e; unsetopt beep; setopt nohup; LISTMAX=1000; unset zle_bracketed_paste; setopt no_list_ambiguous
autoload -Uz compinit; compinit -u -d $HOME/known
show() { printf '%s\\0' "$@" > $HOME/shown.part; mv $HOME/shown.part $HOME/shown; }
. SCRIPTS/_baitwright
""",
    ),
    "fish": (
        ["--no-config", "-i"],
        """set -g fish_autosuggestion_enabled 0; set -g fish_greeting ''
function show; printf '%s\\0' $argv > $HOME/shown.part; mv $HOME/shown.part $HOME/shown; end
source SCRIPTS/baitwright.fish
""",
    ),
}


def quoted(words):
    return " ".join("'" + str(word).replace("'", "'\\''") + "'" for word in words)


def plain(screen):
    """Without what drives the terminal."""
    return re.sub(r"\x1b\[[0-9;?]*[a-zA-Z]|\x1b[()][A-Z0-9]|\x1b[=>]", "", screen)


class Shell:
    """In an empty folder, with a home and a store of its own."""

    def __init__(self, name, program):
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="baitwright-shell-"))
        tools = self.folder / "tools"
        tools.mkdir()
        (tools / "baitwright").symlink_to(pathlib.Path(program).resolve())
        self.environment = {
            "HOME": str(self.folder), "XDG_DATA_HOME": str(self.folder / "data"), "LC_ALL": "C.UTF-8",
            "PATH": f"{tools}:{os.environ['PATH']}", "TERM": "xterm", "BAITWRIGHT_TODAY": "2026-11-25",
        }
        here = self.folder / "here"
        here.mkdir()
        words, first = BEGUN[name]
        self.process, self.terminal = pty.fork()
        if self.process == 0:
            os.chdir(here)
            os.execvpe(name, [name, *words], self.environment)
        fcntl.ioctl(self.terminal, termios.TIOCSWINSZ, struct.pack("HHHH", 200, 200, 0, 0))
        self.screen = ""
        (self.folder / "first").write_text(first.replace("SCRIPTS", str(SCRIPTS)))
        self.settle()
        self.type(f". {self.folder}/first; show ready\r")
        self.shown()

    def close(self):
        os.kill(self.process, 9)
        os.waitpid(self.process, 0)
        os.close(self.terminal)
        shutil.rmtree(self.folder)

    def run(self, *words):
        """The program itself, beside the shell."""
        return subprocess.run(["baitwright", *words], env=self.environment, cwd=self.folder / "here", check=True,
                              capture_output=True, text=True, executable=self.folder / "tools/baitwright")

    def type(self, keys):
        os.write(self.terminal, keys.encode())

    def settle(self, quiet=0.4):
        """Reads until nothing has come for a while."""
        end = time.monotonic() + PATIENCE
        while time.monotonic() < end and select.select([self.terminal], [], [], quiet)[0]:
            self.screen += os.read(self.terminal, 65536).decode(errors="replace")

    def shown(self):
        """The words of the last `show`."""
        told, end = self.folder / "shown", time.monotonic() + PATIENCE
        while not told.exists():
            if time.monotonic() > end:
                raise AssertionError(f"the shell did not answer; on its screen: {self.screen[-600:]!r}")
            self.settle(0.05)
        words = told.read_text().split("\0")[:-1]
        told.unlink()
        self.settle(0.05)
        return words

    def completed(self, line):
        """The words of the line after a Tab at its end, as the shell would hand them to a program."""
        self.type(line)
        self.settle(0.1)
        self.type("\t")
        self.settle()
        self.type("\x01show \r")
        try:
            return self.shown()[1:]
        except AssertionError as unanswered:  # a quote is still open
            self.type("\x03")
            self.settle()
            return [str(unanswered)]

    def offered(self, line, wanted=()):
        """What stands on the screen after a Tab at the end of the line, which is then given up. What is wanted is waited
        for; where nothing is, a while."""
        self.type(line)
        self.settle(0.1)
        self.screen = ""
        self.type("\t")
        end = time.monotonic() + PATIENCE
        self.settle(0.4 if wanted else 2)
        while not all(word in plain(self.screen) for word in wanted) and time.monotonic() < end:
            self.settle(0.4)
        told = plain(self.screen)
        self.type("\x03")
        self.settle(0.2)
        return told
