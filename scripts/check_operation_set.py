"""check_operation_set.py ROOT OPENAPI_JSON: one word, every tree.

Every operation of the program (read from the OpenAPI document it prints) must have its header and source in
engine/operations, a guide page, a story that asks for it, a route in docs/openapi.json, and a page that calls it,
or stand in the short list of those that are for the terminal only. Prints each gap; exit 1 when there is one.
"""
import json
import pathlib
import re
import sys

root, printed = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
terminal_only = {"demo": "fills an empty store, once", "export_records": "writes files to a folder"}
document = json.loads(printed.read_text())
names = sorted(path.removeprefix("/api/") for path in document["paths"])
kept = json.loads((root / "docs/openapi.json").read_text())
stories = "\n".join(p.read_text() for p in (root / "tests/stories").glob("*.story"))
pages = "\n".join(p.read_text() for p in (root / "web/src").rglob("*") if p.suffix in {".ts", ".svelte"}
                  and "schema" not in p.name)
gaps = []

if kept != document:
    gaps.append("docs/openapi.json is not what the program prints: run ./dev generate")
for name in names:
    for suffix in (".h", ".cpp"):
        if not (root / "engine/operations" / (name + suffix)).exists():
            gaps.append(f"{name}: engine/operations/{name}{suffix} is missing")
    if not (root / "docs/guide" / (name + ".md")).exists():
        gaps.append(f"{name}: docs/guide/{name}.md is missing")
    if not re.search(rf"^When the coach asks {name}\b", stories, re.M):
        gaps.append(f"{name}: no story in tests/stories asks for it")
    if name not in terminal_only and f"/api/{name}" not in pages:
        gaps.append(f"{name}: no page calls /api/{name}")
for path in sorted((root / "engine/operations").glob("*.h")):
    text = path.read_text()
    if re.search(rf"Result<\w+> {path.stem}\(Workplace&", text) and path.stem not in names:
        gaps.append(f"{path.stem}: is an operation in engine/operations but not registered")

print("\n".join(gaps) or f"all {len(names)} operations are complete")
sys.exit(1 if gaps else 0)
