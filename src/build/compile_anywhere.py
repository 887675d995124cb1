#!/usr/bin/env python3
"""Compiles a file to the same bytes whatever folder it lies in: compile_anywhere.py SOURCE BUILD [CACHE ...] -- COMPILER ARGUMENT ...

Clang orders some instructions by where in memory it keeps them, and the names of the files that it reads and of the folder that it
runs in shift that. So the text is put together first, with the folders SOURCE and BUILD taken out of its line marks, and is compiled
by itself, in a folder whose name is always as long; CACHE is what runs the compiler then (ccache). What is not the compiling of one
file runs as it is.
"""

import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

LINE_MARK = re.compile(rb'^# \d+ "[^\n]*$', re.MULTILINE)
# What only the putting together takes: whether its value follows in an argument of its own.
FOR_THE_TEXT = {"-D": False, "-I": False, "-ffile-prefix-map=": False, "-isystem": True, "-MD": False, "-MT": True, "-MF": True}


def run(command, folder=None):
    where = {"cwd": folder, "env": {**os.environ, "PWD": folder}} if folder else {}
    status = subprocess.run(command, check=False, **where).returncode
    if status:
        sys.exit(status)


def without_folders(text, folders):
    """The text whose line marks name files from the folders on: [(b"/home/me/bait", b"."), ...], the inner ones first."""
    def mark(found):
        line = found.group()
        for folder, name in folders:
            line = line.replace(b'"' + folder + b"/", b'"' + name + b"/")
        return line

    return LINE_MARK.sub(mark, text)


def for_the_text_alone(arguments):
    """What is left of the arguments where all files are in the text already."""
    left, following = [], iter(arguments)
    for argument in following:
        option = next((option for option in FOR_THE_TEXT if argument.startswith(option)), None)
        if option is None:
            left.append(argument)
        elif FOR_THE_TEXT[option] and argument == option:
            next(following, None)
    return left


def main():
    source, build, *cache = sys.argv[1:sys.argv.index("--")]
    command = sys.argv[sys.argv.index("--") + 1:]
    if not {"-c", "-o"} <= set(command):
        run(cache + command)
        return
    which, where = command.index("-c"), command.index("-o") + 1
    made = command[where]
    with tempfile.TemporaryDirectory(prefix="bait-", dir="/tmp") as folder:
        text = pathlib.Path(folder, "text.cxx")
        to_text = command.copy()
        to_text[which], to_text[where] = "-E", str(text)
        run(to_text)
        text.write_bytes(without_folders(text.read_bytes(), [(build.encode(), b"build"), (source.encode(), b".")]))
        command[where], command[which + 1] = "text.o", text.name
        run(cache + for_the_text_alone(command) + ["-ffile-compilation-dir=."], folder)
        shutil.move(pathlib.Path(folder, "text.o"), made)


main()
