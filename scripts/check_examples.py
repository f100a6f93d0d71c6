"""check_examples.py ROOT AMENTUM: every method has its page, and every worked example on it is what the program says.

An example is a fenced block marked `example`: a line `amentum method NAME key=value ...`, then lines
`output = number unit`, or the sentence of a refusal. Numbers are compared to the decimals printed on the page.
"""
import json
import pathlib
import re
import shlex
import subprocess
import sys

root, program = pathlib.Path(sys.argv[1]), str(pathlib.Path(sys.argv[2]).resolve())
faults, examples = [], 0


def run(words):
    done = subprocess.run([program, "--json", *words], capture_output=True, text=True, cwd="/tmp",
                          env={"AMENTUM_STORE": ":memory:"})
    return json.loads(done.stdout)


def agrees(shown, value):
    decimals = len(shown.split(".")[1]) if "." in shown else 0
    return abs(float(shown) - value) <= 0.51 * 10 ** -decimals


def check_block(page, lines):
    answer = run(shlex.split(lines[0])[1:])
    for line in lines[1:]:
        found = re.match(r"(\w+) = (-?[\d.]+)", line)
        if not found:
            said = answer.get("refusal", {}).get("sentence", "") + " ".join(answer.get("notes", []))
            if line.removeprefix("Note: ").strip() not in said:
                yield f"{page}: says “{line}”, the program says “{said}”"
            continue
        output = answer.get("outputs", {}).get(found.group(1))
        if output is None:
            yield f"{page}: {lines[0]}: the program has no output {found.group(1)}: {json.dumps(answer)[:200]}"
        elif not agrees(found.group(2), output["value"]):
            yield f"{page}: {found.group(1)} is {found.group(2)} on the page, {output['value']} from the program"


for page in sorted((root / "docs/methods").glob("*.md")):
    for block in re.findall(r"```example\n(.*?)```", page.read_text(), re.S):
        lines = [line for line in block.splitlines() if line.strip()]
        groups, current = [], []
        for line in lines:
            if line.startswith("amentum "):
                current = []
                groups.append(current)
            current.append(line.strip())
        for group in groups:
            examples += 1
            faults += check_block(page.relative_to(root), group)

for method in run(["method"])["methods"]:
    page = root / "docs/methods" / (method["name"] + ".md")
    if not page.exists():
        faults.append(f"docs/methods/{method['name']}.md is missing")
    elif "```example" not in page.read_text():
        faults.append(f"docs/methods/{method['name']}.md has no worked example")

print("\n".join(faults) or f"{examples} worked examples agree with the program")
sys.exit(1 if faults else 0)
