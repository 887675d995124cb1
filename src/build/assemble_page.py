#!/usr/bin/env python3
"""Puts the pieces of the bank page into one HTML file: style, scripts, and the engine as base64 of gzip.

The same pieces give the same bytes. The policy in the head lets run just these scripts and this style, by their SHA-256, and
nothing from elsewhere (W3C, Content Security Policy Level 3).
"""

import argparse
import base64
import hashlib
import pathlib
import re
import subprocess
import sys

POLICY = ("default-src 'none'; script-src {scripts} 'wasm-unsafe-eval'; style-src {style}; img-src data: blob:; worker-src blob:; "
          "connect-src 'none'; base-uri 'none'; form-action 'none'")
PLACES = ("@POLICY@", "@STYLE@", "@ENGINE@", "@BRIDGE@", "@SCRIPT@")
DATA = ("@PLAIN@", "@BANK_DATA@", "@BANK_MORE@")  # for the program to fill


def refuse(message):
    sys.exit(f"assemble_page.py: {message}")


def read(path, forbidden):
    """The text of a piece, which must hold nothing that would end or upset the element it is put in."""
    text = pathlib.Path(path).read_text(encoding="utf-8")
    for words in (*forbidden, *PLACES, *DATA):
        if re.search(re.escape(words), text, re.IGNORECASE):
            refuse(f"{path} holds {words!r}, which cannot stand inside the page")
    return text


def hashed(text):
    return "'sha256-" + base64.b64encode(hashlib.sha256(text.encode("utf-8")).digest()).decode("ascii") + "'"


def packed(path, zopfli):
    """Base64 of gzip, which zopfli makes a good twentieth smaller than gzip does."""
    return base64.b64encode(subprocess.run([zopfli, "-c", path], stdout=subprocess.PIPE, check=True).stdout).decode("ascii")


def assembled(html, contents):
    """The page with each place filled; each must be there just once."""
    for place in (*contents, *DATA):
        if html.count(place) != 1:
            refuse(f"the HTML must hold {place} just once, not {html.count(place)} times")
    return re.sub("|".join(map(re.escape, contents)), lambda found: contents[found.group()], html)


def main():
    words = argparse.ArgumentParser(description="Assembles the bank page.")
    words.add_argument("--html", required=True)
    words.add_argument("--css", required=True)
    words.add_argument("--js", action="append", required=True, help="a script of the page; may be repeated")
    words.add_argument("--bridge", required=True, help="the script that starts the engine, on the page and in a worker")
    words.add_argument("--wasm", required=True, help="the engine")
    words.add_argument("--zopfli", required=True, help="the program that packs the engine")
    words.add_argument("-o", dest="output", required=True)
    given = words.parse_args()

    in_script = ("</script", "<script", "<!--")
    style = "\n" + read(given.css, ("</style", "<!--"))
    bridge = "\n" + read(given.bridge, in_script)
    script = "\n" + "\n".join(read(path, in_script) for path in given.js)
    policy = POLICY.format(scripts=f"{hashed(bridge)} {hashed(script)}", style=hashed(style))
    contents = dict(zip(PLACES, (policy, style, packed(given.wasm, given.zopfli), bridge, script)))
    page = assembled(pathlib.Path(given.html).read_text(encoding="utf-8"), contents)
    pathlib.Path(given.output).write_text(page, encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
