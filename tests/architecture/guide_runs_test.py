"""guide_runs_test.py ROOT [BUILD] [--write]: what docs/guide shows as the program's answer is what the program answers.

A run is a fenced block of one `./run ...` line and, in the next fenced block, its output; a last line `...` says that the
output goes on. Each is run on the invented hall (seed 1, 2026-06-01) with one block kept. --write puts the present
output into the pages, as long as it was before; read it before you keep it.
"""
import pathlib
import re
import shlex
import shutil
import subprocess
import sys
import tempfile

words = [word for word in sys.argv[1:] if word != "--write"]
root = pathlib.Path(words[0]).resolve()
program = (pathlib.Path(words[1]).resolve() if len(words) > 1 else root / "build") / "apps/amentum"
RUN = re.compile(r"```\n\./run ([^\n]*)\n```\n\n```\n(.*?)\n```", re.S)
place = pathlib.Path(tempfile.mkdtemp(prefix="amentum-guide-"))


def ask(store, arguments):
    done = subprocess.run([program, "--store", store, "--today", "2026-06-01", *arguments], capture_output=True, text=True)
    return [line.rstrip() for line in (done.stdout + done.stderr).rstrip("\n").split("\n")]


def fresh_store(arguments):
    for old in place.glob("page.store*"):
        old.unlink()
    if arguments[0] != "demo":  # which fills an empty one
        for part in place.glob("hall.store*"):
            shutil.copy(part, place / part.name.replace("hall", "page"))
    return place / "page.store"


ask(place / "hall.store", ["demo"])
ask(place / "hall.store", ["plan-block", "--athlete", "Marisol Quay", "--start", "2026-06-08"])
passed = failed = 0
for page in sorted((root / "docs/guide").glob("*.md")):
    text = page.read_text()
    for command, shown in RUN.findall(text):
        arguments = shlex.split(command)
        said, lines = ask(fresh_store(arguments), arguments), shown.split("\n")
        if lines[-1] == "...":
            expected = said[:len(lines) - 1] + ["..."]
        else:
            expected = said
        same = lines == expected and len(said) > len(lines) - 2
        passed, failed = passed + same, failed + (not same)
        print(("ok      " if same else "FAILED  ") + f"{page.name}: ./run {command}")
        for on_page, now in [pair for pair in zip(lines + [""] * 9, expected) if pair[0] != pair[1]][:3]:
            print(f"        the page: {on_page}\n        now:      {now}")
        if not same and "--write" in sys.argv:
            page.write_text(text := text.replace(shown, "\n".join(expected)))
shutil.rmtree(place)
print(f"{passed} passed, {failed} failed")
sys.exit(1 if failed or not passed else 0)
