#!/usr/bin/env python3
"""Every source cited is in docs/sources.md, and every source listed there is cited.

Cited means: [Key], [Key, table 2] or [KeyA; KeyB] in a text or a comment; a key in a `source` or `sources` column of
data/*.csv; a quoted key that ends in a year in a C++ file. Prints one line a fault and exits 1; otherwise exits 0.
"""
import csv
import pathlib
import re
import sys

ROOT = pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else pathlib.Path(__file__).parent.parent).resolve()
LIST = ROOT / "docs/sources.md"
TREES = ["engine", "data", "docs", "tests", "web", "apps", "bench"]
KINDS = {".h", ".cpp", ".md", ".csv", ".ts", ".svelte", ".sql", ".txt", ".py", ".R"}
SKIPPED = {"node_modules", "dist", "build", ".svelte-kit"}

ENTRY = re.compile(r"^- \[([A-Za-z0-9]+)\] \S")
BRACKET = re.compile(r"\[([A-Z][A-Za-z0-9]*(?:[,;][^\]\[]*)?)\](?!\()")
KEY = re.compile(r"(?=[A-Za-z]*[a-z])[A-Z][A-Za-z]+(?:[A-Z0-9][A-Za-z0-9]*)$|[A-Z]{3,}[0-9]{4}[a-z]?$")
QUOTED = re.compile(r'"([A-Z][A-Za-z]+(?:18|19|20)[0-9]{2}[a-z]?)"')
CODE = {".h", ".cpp", ".ts", ".svelte", ".sql", ".py", ".R"}
COMMENT = re.compile(r"^\s*(?://|\*|/\*|--|#|<!--)|\s(?://|--)\s(.*)$")


def text_files():
    for tree in TREES:
        for path in sorted((ROOT / tree).rglob("*")):
            parts = set(path.relative_to(ROOT).parts)
            if path.suffix in KINDS and path.is_file() and path != LIST and not parts & SKIPPED:
                yield path


def bracketed(line, suffix):
    if suffix in CODE:
        found = COMMENT.search(line)
        if not found:
            return
        line = line[found.start():]
    for inside in BRACKET.findall(line):
        for part in inside.split(";"):
            word = part.split(",")[0].strip()
            if KEY.match(word):
                yield word


def tabled(path):
    lines = path.read_text(encoding="utf-8").splitlines(keepends=True)
    first = next((i for i, line in enumerate(lines) if line.strip() and not line.startswith("#")), len(lines))
    reader = csv.DictReader(lines[first:])
    for row in reader:
        for column in ("source", "sources"):
            for key in (row.get(column) or "").split(";"):
                if key.strip():
                    yield first + reader.line_num, key.strip()


def main():
    known, faults = {}, []
    for number, line in enumerate(LIST.read_text(encoding="utf-8").splitlines(), 1):
        entry = ENTRY.match(line)
        if entry and entry[1] in known:
            faults.append(f"docs/sources.md:{number}: [{entry[1]}] is listed twice")
        if entry:
            known[entry[1]] = number
    words = set()
    for path in text_files():
        name = path.relative_to(ROOT)
        text = path.read_text(encoding="utf-8", errors="replace")
        words.update(re.findall(r"[A-Za-z0-9]+", text))
        uses = [(n, key) for n, line in enumerate(text.splitlines(), 1) for key in bracketed(line, path.suffix)]
        if path.suffix == ".cpp" and "tests" not in name.parts:
            uses += [(n, key) for n, line in enumerate(text.splitlines(), 1) for key in QUOTED.findall(line)]
        if name.parts[0] == "data" and path.suffix == ".csv":
            uses += list(tabled(path))
        faults += [f"{name}:{n}: [{key}] is not in docs/sources.md" for n, key in uses if key not in known]
    faults += [f"docs/sources.md:{n}: [{key}] is cited nowhere" for key, n in known.items() if key not in words]
    print("\n".join(faults) or f"{len(known)} sources, all cited, none missing")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
