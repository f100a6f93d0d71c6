"""check_module_edges.py ENGINE_DIR: every include edge between modules must be declared, and every declared edge used.

The build already refuses most backward edges; this sees the rest: an include that compiles through somebody else's
public link, an include by a path with "..", a declaration nobody needs. Prints each fault; exit 1 when there is one.
"""
import pathlib
import re
import sys

engine = pathlib.Path(sys.argv[1])
order = re.findall(r"^add_subdirectory\((\w+)\)", (engine / "CMakeLists.txt").read_text(), re.M)
keywords = {"USES", "USES_PRIVATELY"}
faults = []


def declared_by(module):
    call = re.search(r"engine_module\((.*?)\)", (engine / module / "CMakeLists.txt").read_text(), re.S).group(1)
    call = re.split(r"\bLINKS\b|\bTEST_LINKS\b", call)[0]
    return set(call.split()) - keywords  # holds the module itself, first


def included_by(path):
    for number, line in enumerate(path.read_text().splitlines(), 1):
        found = re.match(r'\s*#\s*include\s+"([^"]+)"', line)
        if found:
            yield number, found.group(1)


for place, module in enumerate(order):
    declared = declared_by(module)
    used = {module}
    for later in declared - set(order[: place + 1]):
        faults.append(f"{engine / module}/CMakeLists.txt: {module} declares {later}, which is not an earlier module")
    for path in sorted((engine / module).rglob("*")):
        if path.suffix not in {".h", ".cpp"} or "tests" in path.parts:
            continue
        for number, name in included_by(path):
            head = name.split("/")[0]
            if head not in order or "/" not in name:
                faults.append(f'{path}:{number}: write includes as "module/header.h", not "{name}"')
            elif head not in declared:
                faults.append(f"{path}:{number}: {module} does not declare that it uses {head}")
            used.add(head)
    for idle in sorted(declared - used):
        faults.append(f"{engine / module}/CMakeLists.txt: declares {idle} but never includes it")

print("\n".join(faults) or "module edges agree with their declarations: " + " -> ".join(order))
sys.exit(1 if faults else 0)
