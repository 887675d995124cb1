"""The tests built with slips in them: the batches that have some are compiled again, beside the tests' own build, and all
that is linked with them is linked again there."""

import re
import shutil
import subprocess
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
ROOMS = ["physics", "bait", "answers", "store"]


class Built:
    def __init__(self, build):
        self.build = Path(build).resolve()
        # As long a name as the build's own: cli_tests holds the program's path, which is put right in its copy.
        self.work = self.build.parent / "slip"[:len(self.build.name)].ljust(len(self.build.name), "_")
        self.work.mkdir(exist_ok=True)

    def commands(self, target):
        return subprocess.run(["ninja", "-t", "commands", target], cwd=self.build, check=True, capture_output=True, text=True).stdout.splitlines()

    def _told(self, command):
        return subprocess.run(["sh", "-c", command], cwd=self.build, capture_output=True, text=True)

    def _write_sources(self, slips):
        for number, slip in slips.items():
            target = self.work / "src" / slip.file
            if not target.exists():
                target.parent.mkdir(parents=True, exist_ok=True)
                target.write_text(f'#include "{HERE}/mutant_now.h"\n' + (ROOT / "src" / slip.file).read_text())
            lines = target.read_text().splitlines(True)
            lines[slip.line] = slip.joined.replace("{n}", str(number)) + "\n"
            target.write_text("".join(lines))

    def compile(self, slips):
        """Compiles every batch with a slip in it. The numbers of those that do not compile."""
        shutil.rmtree(self.work / "src", ignore_errors=True)
        self._write_sources(slips)
        bad, objects = set(), {}
        for room in ROOMS:
            for command in self.commands(f"src/{room}/libbaitwright_{room}.a"):
                if not (found := re.search(rf"-o (src/{room}/CMakeFiles/\S+\.o) -c (\S+)$", command)):
                    continue
                text = Path(found[2]).read_text() if "/Unity/" in found[2] else f'#include "{found[2]}"\n'
                for file in {slip.file for slip in slips.values()}:
                    text = text.replace(f'"{ROOT}/src/{file}"', f'"{self.work}/src/{file}"')
                objects.setdefault(room, []).append(found[1])
                if str(self.work) not in text:
                    continue
                batch, out = self.work / (found[1].replace("/", "-") + ".cxx"), self.work / found[1].replace("/", "-")
                objects[room][-1] = str(out)
                if self._held(out, found[1]) and batch.exists() and batch.read_text() == text and self._same(batch, slips):
                    continue
                batch.write_text(text)
                told = self._told(re.sub(r" -M[DTF]( \S+\.o(\.d)?)?", "", command[:found.start()]) + f" -o {out} -c {batch}")
                if told.returncode != 0:
                    named = self._named_in(told.stderr, slips)
                    if not named:
                        raise SystemExit(f"no slip is to blame:\n{told.stderr[:3000]}")
                    bad |= named
                    out.unlink(missing_ok=True)
                else:
                    batch.with_suffix(".slips").write_text(self._key(batch, slips))
        self.objects = objects
        return bad

    def _held(self, out, own):
        """Whether the batch was compiled after the build's own, which is made anew when anything that it reads has changed."""
        return out.exists() and out.stat().st_mtime >= (self.build / own).stat().st_mtime

    def _key(self, batch, slips):
        text = batch.read_text()
        return repr(sorted((number, slip.file, slip.joined) for number, slip in slips.items() if f"/{slip.file}\"" in text))

    def _same(self, batch, slips):
        held = batch.with_suffix(".slips")
        return held.exists() and held.read_text() == self._key(batch, slips)

    def _named_in(self, errors, slips):
        places = {(file, int(line)) for file, line in re.findall(rf"{re.escape(str(self.work))}/src/(\S+?):(\d+):", errors)}
        return {number for number, slip in slips.items() if (slip.file, slip.line + 1) in places}

    def link(self, programs):
        for room, objects in self.objects.items():
            archive = self.work / f"{room}.a"
            archive.unlink(missing_ok=True)
            subprocess.run(["ar", "qcs", str(archive), *objects], cwd=self.build, check=True)
        for target in ["baitwright", *programs]:
            command = next(line for line in reversed(self.commands(target)) if re.search(rf" -o (tests/\S+/)?{target} ", line))
            command = re.sub(rf" -o (tests/\S+/)?{target} ", f" -o {self.work}/{target} ", command.split(" && cd ")[0])
            for room in ROOMS:
                command = command.replace(f"src/{room}/libbaitwright_{room}.a", str(self.work / f"{room}.a"))
            told = self._told(command)
            if told.returncode != 0:
                raise SystemExit(f"{target} cannot be linked:\n{told.stderr[:3000]}")
        for module in self.build.glob("baitwright_*.so"):
            shutil.copy(module, self.work)
        for program in programs:
            path = self.work / program
            path.write_bytes(path.read_bytes().replace(f"{self.build}/baitwright".encode(), f"{self.work}/baitwright".encode()))
