"""guide_runs_test.py ROOT [BUILD] [--write]: what docs/guide shows as the program's answer is what the program answers.

A run is a fenced block of one `./run ...` line and, in the next fenced block, its output; a last line `...` says that the
output goes on. Each is run on the invented hall (seed 1, 2026-06-01) with one block kept and the roster fitted. --write puts the present
output into the pages, as long as it was before; read it before you keep it.
"""
import concurrent.futures
import os
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


def said_on_fresh_store(number, arguments):
    store = place / f"{number}.store"
    if arguments[0] != "demo":  # which fills an empty one
        hall = "unfitted" if arguments[0] == "fit-roster" else "hall"
        for part in place.glob(f"{hall}.store*"):
            shutil.copy(part, place / part.name.replace(hall, str(number)))
    said = ask(store, arguments)
    for part in place.glob(f"{number}.store*"):
        part.unlink()
    return said


ask(place / "unfitted.store", ["demo"])
ask(place / "unfitted.store", ["plan-block", "--athlete", "Marisol Quay", "--start", "2026-06-08"])
for part in place.glob("unfitted.store*"):
    shutil.copy(part, place / part.name.replace("unfitted", "hall"))
ask(place / "hall.store", ["fit-roster"])  # once, and not in each run that asks the joint model
pages = {page: page.read_text() for page in sorted((root / "docs/guide").glob("*.md"))}
runs = [(page, command, shown) for page, text in pages.items() for command, shown in RUN.findall(text)]
with concurrent.futures.ThreadPoolExecutor(max_workers=os.cpu_count()) as pool:
    answers = list(pool.map(said_on_fresh_store, range(len(runs)), [shlex.split(command) for _, command, _ in runs]))

passed = failed = 0
for (page, command, shown), said in zip(runs, answers):
    lines = shown.split("\n")
    expected = said[:len(lines) - 1] + ["..."] if lines[-1] == "..." else said
    same = lines == expected and len(said) > len(lines) - 2
    passed, failed = passed + same, failed + (not same)
    print(("ok      " if same else "FAILED  ") + f"{page.name}: ./run {command}")
    for on_page, now in [pair for pair in zip(lines + [""] * 9, expected) if pair[0] != pair[1]][:3]:
        print(f"        the page: {on_page}\n        now:      {now}")
    if not same and "--write" in sys.argv:
        pages[page] = pages[page].replace(shown, "\n".join(expected))
        page.write_text(pages[page])
shutil.rmtree(place)
print(f"{passed} passed, {failed} failed")
sys.exit(1 if failed or not passed else 0)
