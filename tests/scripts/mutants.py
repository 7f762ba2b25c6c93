"""Which small changes of the core's arithmetic no test finds: prints those that tests/mutants.csv does not explain.

    cargo install cargo-mutants; pip install tree-sitter==0.26.1 tree-sitter-rust==0.24.2
    python tests/scripts/mutants.py --rooms water,mix --minutes 60

All changes that `cargo mutants --list` makes of the core are compiled into one copy of it, in target/mutants, each behind a switch that
a variable of the environment turns on. Each test runs by itself once, to learn which changes it reaches; then each change meets the tests
that reach it, the quickest first, until one fails. What was tried stays tried while the text of its function is the same. Texts are left
out, and so are tests that need paper or the desk; what stands in a `const` or beside a `let` in a condition cannot be switched.
"""

import argparse
import collections
import csv
import hashlib
import itertools
import json
import os
import pathlib
import re
import subprocess
import sys
import time
from concurrent.futures import ThreadPoolExecutor

import tree_sitter
import tree_sitter_rust

ROOT = pathlib.Path(__file__).resolve().parents[2]
OUT = ROOT / "target/mutants"
TREE = OUT / "tree"
ROOMS = "quantity,water,rig,loads,mix,stock,season,weather,day,label,ground"
SUMS = {"+", "-", "*", "/", "%", "+=", "-=", "*=", "/=", "%="}
CARGO = ["cargo", "--config", "profile.dev.package.tankard-core.opt-level=1"]
ENV = dict(os.environ, CARGO_TARGET_DIR=str(OUT / "target"), CARGO_PROFILE_DEV_DEBUG="0",
           PROPTEST_CASES="16", PROPTEST_RNG_SEED="2031", PROPTEST_MAX_SHRINK_ITERS="0", INSTA_UPDATE="no")
LINTS = b"""[workspace.lints.rust]
warnings = "allow"
arithmetic_overflow = "allow"
overflowing_literals = "allow"
unconditional_panic = "allow"
"""
SWITCH = """
static ACTIVE: std::sync::LazyLock<usize> = std::sync::LazyLock::new(|| {
    let id = std::env::var("MUTANT").ok().and_then(|id| id.parse().ok()).unwrap_or(0);
    if id > 0 { std::panic::set_hook(Box::new(|_| std::process::exit(101))); }
    id
});
static SEEN: [std::sync::atomic::AtomicBool; COUNT] = [const { std::sync::atomic::AtomicBool::new(false) }; COUNT];
#[allow(missing_docs)]
pub fn mutant(id: usize) -> bool {
    if *ACTIVE == 0 && !SEEN[id].swap(true, std::sync::atomic::Ordering::Relaxed) {
        if let Some(path) = std::env::var_os("MUTANTS_SEEN") {
            let file = std::fs::OpenOptions::new().append(true).create(true).open(path);
            let _ = std::io::Write::write_all(&mut file.unwrap(), format!("{id}\\n").as_bytes());
        }
    }
    *ACTIVE == id
}
"""


def listed(rooms):
    """The changes of these rooms, each with the text that it is known by."""
    command = ["cargo", "mutants", "--list", "--json", "-p", "tankard-core"]
    nth, found = collections.Counter(), []
    for change in json.loads(subprocess.run(command, cwd=ROOT, stdout=subprocess.PIPE, text=True, check=True).stdout):
        path = change["file"].removeprefix("crates/core/src/")
        function = change["function"] or {"function_name": "", "return_type": ""}
        returned = function["return_type"] + change["replacement"]
        room = re.split(r"[/.]", path)[0]
        if room not in rooms or path.endswith(("words.rs", "sheet.rs", "tell.rs", "names.rs")) or "/sheet/" in path:
            continue
        if change["genre"] == "FnValue" and re.search(r"impl |::std::iter|String|\bstr\b|\bSay\b|fmt::Result", returned):
            continue
        lines = (ROOT / change["file"]).read_text().split("\n")
        row, column = (change["span"]["start"][part] - 1 for part in ("line", "column"))
        span = function.get("span", change["span"])
        name = change["name"].split(": ", 1)[1].removesuffix(" in " + function["function_name"])
        end = change["span"]["end"]["column"] - 1 if "Operator" in change["genre"] else column
        mark = f"«{lines[row][column:end]}»" if end > column else ""
        at = lines[row][:column].lstrip() + mark + lines[row][end:]
        known = (path, function["function_name"], name, at)
        nth[known] += 1
        body = "\n".join(lines[span["start"]["line"] - 1:span["end"]["line"]])
        key = "|".join([*known, str(nth[known]), hashlib.sha256(body.encode()).hexdigest()[:12]])
        place = row, len(lines[row][:column].encode())
        text = change["replacement"].strip()
        found.append(dict(known=known, key=key, file=change["file"], genre=change["genre"], place=place, text=text, room=room))
    for id, change in enumerate(found, 1):
        change["id"] = id
    return found


def copied(changes):
    """The workspace without paper, desk and the tests that need them, and without what is changed."""
    parts = ("crates/core/", "crates/file/", "tests/", "assets/", "demo-farm/", "Cargo.")
    changed = {change["file"] for change in changes} | {"crates/core/src/lib.rs"}
    for path in (TREE / "tests/tests").glob("*.rs"):
        if not (ROOT / "tests/tests" / path.name).exists():
            path.unlink()
    for name in subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True).stdout.split("\n"):
        if not name.startswith(parts) or name in changed or not (ROOT / name).exists():
            continue
        content = (ROOT / name).read_bytes()
        if re.fullmatch(r"tests/tests/\w+\.rs", name) and re.search(rb"\b(tankard|tankard_paper|egui)::", content):
            continue
        if name == "Cargo.toml":
            content = re.sub(rb"members = .*\ndefault.*", b'members = ["crates/core", "crates/file", "tests"]', content)
            content = re.sub(rb"(?s)\[workspace\.lints.*?(?=\[profile)", LINTS, content)
        if name == "tests/Cargo.toml":
            content = re.sub(rb"(?m)^(tankard|tankard-paper|egui|criterion)\.workspace.*\n", b"", content)
        write(TREE / name, content)


def write(path, content):
    if not path.exists() or path.read_bytes() != content:
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)


def switched(source, changes):
    """The source with each change behind its switch, in a line of its own that ends with its number; and those that it could not place."""
    at = collections.defaultdict(list)
    for change in changes:
        at[change["genre"], change["place"]].append(change)

    def of(node, genre):
        return at.pop((genre, tuple(node.start_point)), [])

    def raw(*nodes):
        return [re.sub(rb"//.*", b"", source[node.start_byte:node.end_byte]).replace(b"\n", b" ") for node in nodes]

    def branch(change, code):
        return b"if crate::mutant(%d) {\n%b //~%d\n} else " % (change["id"], code, change["id"])

    def text(node):
        parts, end = [], node.start_byte
        for child in node.children:
            parts += [source[end:child.start_byte], render(child)]
            end = child.end_byte
        return b"".join(parts) + source[end:node.end_byte]

    def render(node):
        kind, branches = node.type, []
        if kind in ("const_item", "static_item", "attribute_item", "macro_invocation"):
            return source[node.start_byte:node.end_byte]
        if kind == "function_item" and any(child.type == "function_modifiers" and b"const" in child.text for child in node.children):
            return source[node.start_byte:node.end_byte]
        if kind in ("binary_expression", "compound_assignment_expr") and "let_condition" not in {child.type for child in node.children}:
            operator = node.child_by_field_name("operator")
            left, right = raw(node.child_by_field_name("left"), node.child_by_field_name("right"))
            form = b"%b %b %b" if kind == "compound_assignment_expr" else b"(%b) %b (%b)"
            branches = [branch(change, form % (left, change["text"].encode(), right)) for change in of(operator, "BinaryOperator")]
        elif kind == "unary_expression":
            branches = [branch(change, raw(node.children[-1])[0]) for change in of(node, "UnaryOperator")]
        elif kind == "struct_expression":
            for field in node.child_by_field_name("body").children:
                for change in of(field, "StructField"):
                    whole, start = source[node.start_byte:node.end_byte], field.start_byte - node.start_byte
                    code = whole[:start] + whole[start + len(field.text):].lstrip().removeprefix(b",")
                    branches.append(branch(change, re.sub(rb"//.*", b"", code).replace(b"\n", b" ")))
        body = text(node)
        if node.parent and node.parent.type == "match_pattern" and node.parent.child_by_field_name("condition") == node:
            branches += [branch(change, change["text"].encode()) for change in of(node, "MatchArmGuard")]
        if kind == "match_arm":
            pattern = node.child_by_field_name("pattern")
            for change in of(node, "MatchArm"):
                if pattern.child_by_field_name("condition") is None:
                    end = pattern.end_byte - node.start_byte
                    assert body[:end] == source[node.start_byte:pattern.end_byte]
                    body = body[:end] + b" if\n!crate::mutant(%d) //~%d\n" % (change["id"], change["id"]) + body[end:]
        if kind == "block" and node.parent.type == "function_item":
            first = next((child for child in node.named_children if not child.type.endswith(("comment", "attribute_item"))), None)
            for change in of(first, "FnValue") if first else []:
                body = b"{ if crate::mutant(%d) {\nreturn %b; //~%d\n}" % (change["id"], change["text"].encode(), change["id"]) + body[1:]
        return b"(" + b"".join(branches) + b"{(" + body + b")})" if branches else body

    parser = tree_sitter.Parser(tree_sitter.Language(tree_sitter_rust.language()))
    done = text(parser.parse(source).root_node)
    return done, {change["id"] for missing in at.values() for change in missing}


def cargo(*command):
    """Whether a command of cargo ends well, and what it says."""
    done = subprocess.run([*CARGO, *command, "--message-format=json"], cwd=TREE, env=ENV, stdout=subprocess.PIPE, text=True)
    return done.returncode == 0, [json.loads(line) for line in done.stdout.splitlines()]


def built(changes, tests):
    """The changes that compile and can be placed, by number, and the programs of tests that hold them."""
    dropped = {key for key in (OUT / "dropped").read_text().split("\n")} if (OUT / "dropped").exists() else set()
    while True:
        left = [change for change in changes if change["key"] not in dropped]
        unplaced = set()
        for file, there in itertools.groupby(changes, lambda change: change["file"]):
            code, missing = switched((ROOT / file).read_bytes(), [change for change in there if change["key"] not in dropped])
            unplaced |= missing
            write(TREE / file, code)
        lib = (ROOT / "crates/core/src/lib.rs").read_text() + SWITCH.replace("COUNT", str(len(changes) + 1))
        write(TREE / "crates/core/src/lib.rs", lib.encode())
        compiles, messages = cargo("check", "-p", "tankard-core")
        if compiles:
            break
        errors = [message["message"] for message in messages if message["reason"] == "compiler-message"]
        failed = set().union(*[blamed(error) for error in errors if error["level"] == "error"])
        if not failed:
            sys.exit("core does not compile with its changes, and no change is to blame")
        print(f"{len(failed)} changes do not compile", flush=True)
        dropped |= {change["key"] for change in left if change["id"] in failed | unplaced}
        (OUT / "dropped").write_text("\n".join(sorted(dropped)))
    programs = []
    named = [part for test in tests for part in ("--test", test)] or ["--tests"]
    for package in (["-p", "tankard-core", "--lib"], ["-p", "tankard-tests", *named]):
        compiles, messages = cargo("test", *package, "--no-run")
        if not compiles:
            sys.exit("the tests do not compile")
        for message in messages:
            if message["reason"] == "compiler-artifact" and message["executable"] and message["profile"]["test"]:
                programs.append((message["executable"], str(pathlib.Path(message["manifest_path"]).parent)))
    return {change["id"]: change for change in left if change["id"] not in unplaced}, programs


def blamed(message):
    """Which changes an error of the compiler comes from: those in its lines, else the nearest above."""
    spans = sorted(message["spans"], key=lambda span: not span["is_primary"])
    for span in spans:
        lines = (TREE / span["file_name"]).read_text().split("\n")
        ids = re.findall(r"//~(\d+)", "\n".join(lines[span["line_start"] - 1:span["line_end"]]))
        if ids:
            return {int(id) for id in ids}
    for span in spans[:1]:
        lines = (TREE / span["file_name"]).read_text().split("\n")[:span["line_start"]]
        ids = re.findall(r"//~(\d+)", "\n".join(lines))
        return {int(id) for id in ids[-1:]}
    return set()


def ran(program, tests, seconds=None, **env):
    """Whether these tests pass within the seconds, and the processor time that they take."""
    exe, folder = program
    command = [*(["timeout", str(seconds)] if seconds else []), exe, "--exact", "--test-threads=1", *tests]
    nowhere = subprocess.DEVNULL
    process = subprocess.Popen(command, cwd=folder, env=ENV | env, stdout=nowhere, stderr=nowhere)
    _, status, usage = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    return process.returncode == 0, usage.ru_utime + usage.ru_stime


def learnt(programs, pool):
    """Of each test which changes it reaches, and its time."""
    def one(program, test):
        seen = OUT / f"seen-{hashlib.sha256((program[0] + test).encode()).hexdigest()[:16]}"
        seen.unlink(missing_ok=True)
        passes, cost = ran(program, [test], MUTANTS_SEEN=str(seen))
        ids = [int(id) for id in seen.read_text().split()] if seen.exists() else []
        seen.unlink(missing_ok=True)
        return dict(program=program, test=test, cost=cost, ids=ids, passes=passes)

    tests = []
    for program in programs:
        names = subprocess.run([program[0], "--list"], cwd=program[1], capture_output=True, text=True, check=True).stdout.split("\n")
        tests += [(program, name.removesuffix(": test")) for name in names if name.endswith(": test")]
    found = list(pool.map(lambda pair: one(*pair), tests))
    print("left out, as they fail without any change:", *[test["test"] for test in found if not test["passes"]], flush=True)
    return [test for test in found if test["passes"]]


def tried(id, tests, most):
    """"found" by a test, "alive", or "partly" where tests were left out that together take longer than this."""
    spent, size, outcome = 0.0, 4, "alive"
    tests = sorted(tests, key=lambda test: test["cost"] * len(test["ids"]))
    while tests:
        batch, tests, size = tests[:size], tests[size:], size * 3
        by_program = collections.defaultdict(list)
        for test in batch:
            if spent + test["cost"] > most:
                outcome = "partly"
            else:
                by_program[test["program"]].append(test)
                spent += test["cost"]
        for program, some in by_program.items():
            if not ran(program, [test["test"] for test in some], 20 + 30 * sum(test["cost"] for test in some), MUTANT=str(id))[0]:
                return "found"
    return outcome


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--rooms", default=ROOMS, help="parts of the core, with commas; all that reckon where none is named")
    options.add_argument("--tests", default="", help="files of tests/tests, with commas; all where none is named")
    options.add_argument("--minutes", type=float, default=60, help="how long to try changes for")
    options.add_argument("--seconds", type=float, default=20, help="how long the tests of one change may take together")
    options.add_argument("--jobs", type=int, default=os.cpu_count())
    chosen = options.parse_args()
    OUT.mkdir(parents=True, exist_ok=True)
    changes = listed(chosen.rooms.split(","))
    copied(changes)
    switched_in, programs = built(changes, [test for test in chosen.tests.split(",") if test])
    outcomes = dict(line.rsplit("\t", 1) for line in (OUT / "results").read_text().splitlines()) if (OUT / "results").exists() else {}
    until = time.time() + 60 * chosen.minutes
    with ThreadPoolExecutor(chosen.jobs) as pool, (OUT / "results").open("a") as results:
        reaching = collections.defaultdict(list)
        for test in learnt(programs, pool):
            for id in test["ids"]:
                reaching[id].append(test)

        def one(change):
            if time.time() < until:
                outcome = tried(change["id"], reaching[change["id"]], chosen.seconds) if change["id"] in reaching else "unreached"
                outcomes[change["key"]] = outcome
                results.write(f"{change['key']}\t{outcome}\n")
                results.flush()

        order = {"BinaryOperator": 1, "UnaryOperator": 1, "MatchArmGuard": 1}
        todo = [change for change in switched_in.values() if outcomes.get(change["key"], "alive") != "found"]
        todo.sort(key=lambda change: (change["key"] in outcomes, 0 if change["text"] in SUMS else order.get(change["genre"], 2)))
        list(pool.map(one, todo))
    told(changes, switched_in, outcomes)


def told(changes, switched_in, outcomes):
    """The table of the rooms, and the changes that no test finds and tests/mutants.csv does not explain."""
    rooms = collections.defaultdict(collections.Counter)
    for change in changes:
        rooms[change["room"]].update(["listed", outcomes.get(change["key"], "untried") if change["id"] in switched_in else "not viable"])
    columns = ["listed", "not viable", "unreached", "found", "alive", "partly", "untried"]
    print("| room |", " | ".join(columns), "|")
    for room, counts in rooms.items():
        print("|", room, "|", " | ".join(str(counts[column]) for column in columns), "|")
    with (ROOT / "tests/mutants.csv").open(newline="") as file:
        explained = {tuple(row[:4]) for row in csv.reader(file)}
    not_found = [change for change in switched_in.values() if outcomes.get(change["key"]) in ("alive", "partly", "unreached")]
    new = [change for change in not_found if change["known"] not in explained]
    for change in new:
        print(outcomes[change["key"]], "#%d" % change["id"], *change["known"], sep="  ")
    sys.exit(bool(new))


main()
