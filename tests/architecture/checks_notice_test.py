"""checks_notice_test.py ROOT [BUILD]: a check that cannot fail proves nothing, so each is seen to fail on a copy broken
on purpose, and to pass on a copy that is whole. BUILD is where the program and the stories were built; ROOT/build."""
import json
import pathlib
import shutil
import subprocess
import sys
import tempfile

root = pathlib.Path(sys.argv[1]).resolve()
build = pathlib.Path(sys.argv[2]).resolve() if len(sys.argv) > 2 else root / "build"
passed = failed = 0


def run(*words, cwd=None):
    return subprocess.run(words, capture_output=True, text=True, cwd=cwd)


def expect(name, done, words=None):
    global passed, failed
    said = done.stdout + done.stderr
    noticed = done.returncode != 0 and (words is None or words in said)
    passed, failed = passed + noticed, failed + (not noticed)
    print(("ok      " if noticed else "FAILED  ") + name + ("" if noticed else f"\n        {said[-400:]}"))


def expect_whole(name, done):
    global passed, failed
    whole = done.returncode == 0
    passed, failed = passed + whole, failed + (not whole)
    print(("ok      " if whole else "FAILED  ") + name + ("" if whole else f"\n        {(done.stdout + done.stderr)[-400:]}"))


def copied(*parts):
    place = pathlib.Path(tempfile.mkdtemp(prefix="amentum-broken-"))
    for part in parts:
        target = place / part
        target.parent.mkdir(parents=True, exist_ok=True)
        if (root / part).is_dir():
            shutil.copytree(root / part, target, ignore=shutil.ignore_patterns("node_modules", "dist"))
        else:
            shutil.copy(root / part, target)
    return place


def append(path, text):
    path.write_text(path.read_text() + text)


def broken_engine(name, change, script, words):
    place = copied("engine")
    change(place / "engine")
    target = place / "engine" if script == "check_module_edges.py" else place
    done = run(sys.executable, root / "scripts" / script, target)
    expect(name, done, words) if words else expect_whole(name, done)
    shutil.rmtree(place)


edges, rules = "check_module_edges.py", "check_house_rules.py"
broken_engine("module edges that are as declared", lambda e: None, edges, None)
broken_engine("an include of a module that is not declared",
              lambda e: append(e / "measurement/growth.cpp", '#include "planning/plan_block.h"\n'), edges, "does not declare")
broken_engine("an include by a path upwards",
              lambda e: append(e / "reports/sentences.cpp", '#include "../values/kit.h"\n'), edges, "module/header.h")
broken_engine("a declared module that is never included",
              lambda e: (e / "reports/CMakeLists.txt").write_text("engine_module(reports USES values equipment)\n"), edges, "never includes")
broken_engine("a later module declared",
              lambda e: (e / "values/CMakeLists.txt").write_text("engine_module(values USES store)\n"), edges, "not an earlier module")
broken_engine("an engine that keeps the house rules", lambda e: None, rules, None)
broken_engine("two types of one name in two headers",
              lambda e: append(e / "planning/dose_curve.h", "struct Block {};\n"), rules, "is also a type of")
broken_engine("a clock in a pure module",
              lambda e: append(e / "values/interval.cpp", "// now\nauto t = std::chrono::system_clock::now();\n"), rules, "is pure")
broken_engine("a file too long", lambda e: append(e / "values/interval.cpp", "\n" * 501), rules, "split it")
broken_engine("a name that says nothing",
              lambda e: append(e / "values/interval.cpp", "void process_all();\n"), rules, "name what it does")

broken_engine("a verb of the database in a pure module",
              lambda e: append(e / "values/interval.cpp", "int load_all();\n"), rules, "for the database")

program = build / "apps/amentum"
printed = pathlib.Path(tempfile.mkdtemp()) / "openapi.json"
printed.write_text(run(program, "print-openapi").stdout)


def broken_set(name, change, words):
    place = copied("engine/operations", "docs", "tests/stories", "web/src")
    change(place)
    expect(name, run(sys.executable, root / "scripts/check_operation_set.py", place, printed), words)
    shutil.rmtree(place)


broken_set("an operation without a guide page", lambda p: (p / "docs/guide/roster.md").unlink(), "guide/roster.md is missing")
broken_set("an operation no story asks for",
           lambda p: [s.write_text(s.read_text().replace("asks judge_change", "asks nothing")) for s in (p / "tests/stories").glob("*.story")],
           "no story")
broken_set("an operation that no page calls", lambda p: shutil.rmtree(p / "web/src/pages/load_bar"), "no page calls /api/load_bar")
broken_set("an OpenAPI document that is old",
           lambda p: (p / "docs/openapi.json").write_text(json.dumps({"paths": {}})), "docs/openapi.json is not")
broken_set("an operation written but not registered",
           lambda p: (p / "engine/operations/wish.h").write_text("Result<WishAnswer> wish(Workplace&, const WishRequest&);\n"), "not registered")


def broken_build(name, files, words, target="all"):
    place = pathlib.Path(tempfile.mkdtemp(prefix="amentum-broken-"))
    (place / "CMakeLists.txt").write_text(
        f"cmake_minimum_required(VERSION 3.25)\nproject(p CXX)\nset(CMAKE_CXX_STANDARD 20)\nset(CMAKE_VERIFY_INTERFACE_HEADER_SETS ON)\n"
        f"include({root}/cmake/engine_module.cmake)\nadd_subdirectory(first)\nadd_subdirectory(second)\n")
    plain = {"first/CMakeLists.txt": "engine_module(first)\n", "second/CMakeLists.txt": "engine_module(second USES first)\n",
             "first/one.h": "#pragma once\n#include <string>\nstd::string one();\n", "first/one.cpp": '#include "first/one.h"\nstd::string one() { return {}; }\n',
             "second/two.h": "#pragma once\nint two();\n", "second/three.h": "#pragma once\nstruct Three {};\n", "second/two.cpp": '#include "second/two.h"\n#include "first/one.h"\nint two() { return 2; }\n'}
    for path, text in {**plain, **files}.items():
        (place / path).parent.mkdir(exist_ok=True)
        (place / path).write_text(text)
    done = run("cmake", "-S", place, "-B", place / "build", "-G", "Ninja")
    if done.returncode == 0:
        done = run("ninja", "-C", place / "build", target)
    expect(name, done, words) if words else expect_whole(name, done)
    shutil.rmtree(place)


headers = "all_verify_interface_header_sets"
broken_build("two honest modules build and verify", {}, None, headers)
broken_build("a header that does not compile alone", {"first/one.h": "#pragma once\nstd::string one();\n",
             "first/one.cpp": '#include <string>\n#include "first/one.h"\nstd::string one() { return {}; }\n'}, "one.h", headers)
broken_build("a header that its own source shows not to compile alone", {"first/one.h": "#pragma once\nstd::string one();\n"}, "one.h")
broken_build("a backward edge while configuring", {"first/CMakeLists.txt": "engine_module(first USES second)\n"}, "not an earlier module")
broken_build("an undeclared include while compiling", {"second/CMakeLists.txt": "engine_module(second)\n"}, "No such file")



def broken_page(name, change, words):
    place = copied("docs/methods")
    change(place / "docs/methods/one_rep_max.md")
    expect(name, run(sys.executable, root / "scripts/check_examples.py", place, program), words)
    shutil.rmtree(place)


broken_page("a worked example that is wrong",
            lambda page: page.write_text(page.read_text().replace("one_rep_max = 133.3333", "one_rep_max = 133.3433")), "from the program")
broken_page("a method without its page", lambda page: page.unlink(), "one_rep_max.md is missing")


def broken_list(name, change, words):
    place = copied("scripts", "engine", "data", "docs")
    change(place / "docs")
    expect(name, run(sys.executable, place / "scripts/check_sources.py", place), words)
    shutil.rmtree(place)


nobody = "Nobody" + "2020"  # in two pieces, so that this file does not itself cite it
broken_list("a source cited but not listed", lambda d: append(d / "glossary.md", f"\nSo they say [{nobody}].\n"), f"[{nobody}] is not in")
broken_list("a source listed but never cited", lambda d: append(d / "sources.md", f"- [{nobody}] Nobody A. Nothing. 2020.\n"), f"[{nobody}] is cited nowhere")


def broken_story(name, change, words):
    place = copied("tests/stories/load_bar.story")
    story = place / "tests/stories/load_bar.story"
    story.write_text(change(story.read_text()))
    expect(name, run(build / "tests/stories", story), words)
    shutil.rmtree(place)


broken_story("a story whose number is wrong", lambda s: s.replace("| 225  ", "| 226  "), "but it is 225")
broken_story("a story that waits for an answer there is not", lambda s: s.replace("not_above.total", "not_above.mass"), "the answer has no")
broken_story("a story that expects a refusal", lambda s: s.replace("Then the answer", "Then it is refused"), "not refused")
broken_story("a story with a step nobody understands", lambda s: s.replace("When the coach asks", "When the coach sings"), "not understood")

print(f"{passed} passed, {failed} failed")
sys.exit(1 if failed else 0)
