"""check_house_rules.py ROOT: the house rules a machine can see. Prints each fault; exit 1 when there is one.

- pure modules (values ... demo_facility) hold no clock, random device, thread, file, console or mutable global;
- load_ and save_ name database work, so they stand in store and operations only;
- no function is called process_, handle_ or manage_;
- a code file is at most 500 lines long.
"""
import pathlib
import re
import sys

root = pathlib.Path(sys.argv[1])
engine = root / "engine"
order = re.findall(r"^add_subdirectory\((\w+)\)", (engine / "CMakeLists.txt").read_text(), re.M)
pure = order[: order.index("store")]
impure = re.compile(r"#\s*include\s*<(random|iostream|fstream|thread|mutex|filesystem|cstdlib|ctime)>"
                    r"|system_clock|steady_clock|random_device|\bgetenv\b|\bprintf\(")
faults = []
types = {}  # name of a type -> the header that has it: one namespace, so one name, one type

for path in sorted(engine.rglob("*")):
    if path.suffix not in {".h", ".cpp"}:
        continue
    module = path.relative_to(engine).parts[0]
    lines = path.read_text().splitlines()
    if len(lines) > 500:
        faults.append(f"{path}: {len(lines)} lines; split it at 500")
    if "tests" in path.parts:
        continue
    if path.suffix == ".h":
        for name in re.findall(r"^(?:struct|class|enum class) (\w+)(?: final)?(?: ?:(?!:)[^;{]*)? ?\{", "\n".join(lines), re.M):
            if types.setdefault(name, path) != path:
                faults.append(f"{path}: {name} is also a type of {types[name]}; the linker takes two of one name for one")
    for number, line in enumerate(lines, 1):
        code = line.split("//")[0]
        if module in pure and impure.search(code):
            faults.append(f"{path}:{number}: {module} is pure, but this reaches the outside: {line.strip()}")
        if module not in {"store", "operations"} and re.search(r"\b(load|save)_\w+\(", code):
            if not re.search(r"\b(load_words|load_means|load_test|load_share|load_kg|load_lb)\b", code):
                faults.append(f"{path}:{number}: load_ and save_ are for the database: {line.strip()}")
        if re.search(r"\b(process|handle|manage)_\w+\(", code):
            faults.append(f"{path}:{number}: name what it does: {line.strip()}")

print("\n".join(faults) or f"house rules hold in {len(order)} modules")
sys.exit(1 if faults else 0)
