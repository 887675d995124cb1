#!/usr/bin/env python3
"""Puts the pieces of the bank page into one file: the style, the opener, and, packed, the other scripts and the engine.

The file is what the program carries beside it: a first line says of which version it is and how many bytes of HTML follow.
The same pieces give the same bytes. The policy in the head lets run just these scripts and this style, by their SHA-256, and
nothing from elsewhere (W3C, Content Security Policy Level 3); the opener lets the others run as they are unpacked.
"""

import argparse
import base64
import hashlib
import pathlib
import re
import subprocess
import sys
import tempfile

POLICY = ("default-src 'none'; script-src {scripts} 'wasm-unsafe-eval'; style-src {style}; img-src data: blob:; worker-src blob:; "
          "connect-src 'none'; base-uri 'none'; form-action 'none'")
PLACES = ("@POLICY@", "@STYLE@", "@OPENER@", "@BRIDGE@", "@SCRIPTS@", "@ENGINE@")
DATA = ("@PLAIN@", "@BANK_DATA@", "@BANK_LIBRARY@")  # for the program to fill
IN_SCRIPT = ("</script", "<script", "<!--")
IN_STYLE = ("</style", "<!--")
LETTERS = "".join(chr(code) for code in range(33, 127) if chr(code) not in "<@\\")  # 91, as letters.js reads them
END_OF_BRIDGE = "/* page */"  # where engine_aside.js cuts off what a worker runs


def refuse(message):
    sys.exit(f"assemble_page.py: {message}")


def read(path, forbidden):
    """The text of a piece, which must hold nothing that would end or upset the element it is put in."""
    text = pathlib.Path(path).read_text(encoding="utf-8")
    for words in (*forbidden, *PLACES, *DATA, END_OF_BRIDGE):
        if re.search(re.escape(words), text, re.IGNORECASE):
            refuse(f"{path} holds {words!r}, which cannot stand inside the page")
    return text


def without_comments(text, path):
    """The text without comments that have lines of their own, and without indentation: each line stays a line."""
    lines, comment = [], False
    for line in text.splitlines():
        bare = line.strip()
        if comment or bare.startswith("/*"):
            if "*/" in bare and not bare.endswith("*/"):
                refuse(f"{path} has a comment that ends within a line: {bare}")
            comment = not bare.endswith("*/")
        elif bare and not bare.startswith("//") and bare != '"use strict";':
            if bare.count("`") % 2:
                refuse(f"{path} has a template of several lines, which would lose its blanks: {bare}")
            lines.append(bare)
    return "\n".join(lines) + "\n"


def script(path):
    return without_comments(read(path, IN_SCRIPT), path)


def hashed(text):
    return "'sha256-" + base64.b64encode(hashlib.sha256(text.encode("utf-8")).digest()).decode("ascii") + "'"


def lettered(packed):
    """Bytes as letters: 13 bits in two, the lowest first; six or fewer that are left in one (src/page/letters.js)."""
    letters, held, bits = [], 0, 0
    for byte in packed:
        held |= byte << bits
        bits += 8
        if bits >= 13:
            value = held & 8191
            letters += LETTERS[value % 91], LETTERS[value // 91]
            held >>= 13
            bits -= 13
    if bits > 6:
        letters += LETTERS[held % 91], LETTERS[held // 91]
    elif bits:
        letters.append(LETTERS[held])
    return "".join(letters)


def zopflied(content, zopfli):
    """Gzip, which zopfli makes a good twentieth smaller than gzip does."""
    with tempfile.NamedTemporaryFile() as file:
        file.write(content)
        file.flush()
        return subprocess.run([zopfli, "-c", file.name], stdout=subprocess.PIPE, check=True).stdout


def policy(opener, bridge, scripts, style):
    return POLICY.format(scripts=" ".join(map(hashed, (opener, bridge, scripts))), style=hashed(style))


def pieces(css, opener, bridges, aside, pages):
    """The style, the opener, the bridge with what goes on aside, and the text of all the other scripts."""
    style = without_comments(read(css, IN_STYLE), css)
    bridge = '"use strict";\n' + "".join(map(script, bridges)) + END_OF_BRIDGE + "\n" + script(aside)
    scripts = '"use strict";\n' + "".join(map(script, pages))
    return style, script(opener), bridge, scripts


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
    words.add_argument("--opener", required=True, help="a script that any browser understands")
    words.add_argument("--bridge", action="append", required=True, help="a script for the page and its worker; may be repeated")
    words.add_argument("--aside", required=True, help="the script behind the bridge, for the page alone")
    words.add_argument("--js", action="append", required=True, help="a script of the page; may be repeated")
    words.add_argument("--wasm", required=True, help="the engine")
    words.add_argument("--zopfli", required=True, help="the program that packs")
    words.add_argument("--version", required=True, help="of the program that the page goes with")
    words.add_argument("-o", dest="output", required=True)
    given = words.parse_args()

    style, opener, bridge, scripts = pieces(given.css, given.opener, given.bridge, given.aside, given.js)
    contents = {
        "@POLICY@": policy(opener, bridge, scripts, style), "@STYLE@": style, "@OPENER@": opener, "@BRIDGE@": bridge,
        "@SCRIPTS@": lettered(zopflied(scripts.encode("utf-8"), given.zopfli)),
        "@ENGINE@": lettered(zopflied(pathlib.Path(given.wasm).read_bytes(), given.zopfli)),
    }
    page = assembled(pathlib.Path(given.html).read_text(encoding="utf-8"), contents)
    html = page.encode("utf-8")
    mark = f"baitwright page engine {given.version} of {len(html)} bytes\n"  # read by src/cli/page_engine.cpp
    pathlib.Path(given.output).write_bytes(mark.encode("ascii") + html)


if __name__ == "__main__":
    main()
