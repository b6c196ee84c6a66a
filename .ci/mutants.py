#!/usr/bin/env python3
"""Runs the mutants that cargo-mutants lists, all laid into one library.

Each mutated function stands beside its original, which at its start goes to the mutant whose number the
environment names. So the library is compiled once, and a mutant costs no more than the tests that kill it. The
tests are compiled once too, and find the library at run time.
"""

import argparse
import collections
import concurrent.futures
import json
import os
import pathlib
import re
import resource
import shutil
import subprocess
import sys

RECORD = pathlib.Path("tests/measured/mutants.txt")
# In this order: what is quick and kills much comes first.
TESTS = ["cautions", "worked", "published", "identities", "edges", "references"]
# The quick round leaves out the slowest tests and draws little; what lives through it meets all of them.
SLOW = ["sweep::the_ends_of_ranges_have_plans_of_numbers", "sweep::anything_allowed_has_a_plan_of_numbers"]
FEW_DRAWS = {"PROPTEST_CASES": "20", "PROPTEST_MAX_SHRINK_ITERS": "0", "RUST_BACKTRACE": "0"}
# Seconds of processor time after which a mutant counts as one that never ends: all tests take 4.
ENDLESS = 60

SWITCH = """
static MUTANT: core::sync::atomic::AtomicU32 = core::sync::atomic::AtomicU32::new(u32::MAX);
#[inline]
pub(crate) fn mutant() -> u32 {
    let number = MUTANT.load(core::sync::atomic::Ordering::Relaxed);
    if number == u32::MAX { first() } else { number }
}
#[cold]
fn first() -> u32 {
    let number = std::env::var("MUTANT").ok().and_then(|number| number.parse().ok()).unwrap_or(0);
    MUTANT.store(number, core::sync::atomic::Ordering::Relaxed);
    number
}
"""


def mutated(lines, mutant):
    """A file's lines with the mutant's change, and by how many they became more."""
    rows = mutant["diff"].split("\n")[2:]
    at = int(re.match(r"@@ -(\d+)", rows[0]).group(1)) - 1
    put, end = [], at
    for row in rows[1:]:
        if row[:1] in ("-", " "):
            assert lines[end] == row[1:], f"the list is not of these sources: {mutant['name']}"
            end += 1
        if row[:1] in ("+", " "):
            put.append(row[1:])
    return lines[:at] + put + lines[end:], len(put) - (end - at)


def closing(text, at):
    """The place after the bracket that closes the one at a place."""
    depth = 0
    while True:
        depth += (text[at] in "([{<") - (text[at] in ")]}" or (text[at] == ">" and text[at - 1] != "-"))
        at += 1
        if depth == 0:
            return at


def arguments(text):
    """What a function hands on to another of the same parameters."""
    found, depth, start = [], 0, 0
    for at, letter in enumerate(text + ","):
        depth += (letter in "([{<") - (letter in ")]}" or (letter == ">" and text[at - 1] != "-"))
        if letter == "," and depth == 0:
            parameter = text[start:at].strip()
            start = at + 1
            if re.fullmatch(r"(&\s*)?(mut\s+)?self", parameter):
                found.append("self")
            elif parameter:
                found.append(re.sub(r"\bmut\s+", "", re.split(r":\s", parameter, maxsplit=1)[0]))
    return ", ".join(found)


def with_mutants(text, mutants, copies):
    """A function that goes to its mutants, and these after it; None where it cannot."""
    full = mutants[0]["function"]["function_name"]
    name = full.split("::")[-1]
    head = re.search(rf"\bfn {name}\b", text)
    if full.startswith("<impl") or re.search(rf"\bconst\s+fn {name}\b", text):
        return None
    at = closing(text, head.end()) if text[head.end()] == "<" else head.end()
    end = closing(text, at)
    given, brace = arguments(text[at + 1 : end - 1]), text.index("{", end) + 1
    whose = "Self::" if "::" in full else ""
    ways = " ".join(f"{m['id']} => return {whose}{name}__{m['id']}({given})," for m in mutants)
    switch = f" match crate::number::mutant() {{ {ways} _ => {{}} }}"
    put = [
        f"/*MUTANT {m['id']}*/ " + re.sub(rf"\bfn {name}\b", f"fn {name}__{m['id']}", copy, count=1)
        for m, copy in zip(mutants, copies)
    ]
    return "\n".join([text[:brace] + switch + text[brace:], *put])


def lay(mutants, tree):
    """Writes the sources with all mutants into the tree; gives those that have no place there."""
    shutil.rmtree(tree / "src", ignore_errors=True)
    shutil.copytree("src", tree / "src")
    functions, single = collections.defaultdict(lambda: collections.defaultdict(list)), []
    for mutant in mutants:
        if mutant["function"]:
            span = mutant["function"]["span"]
            functions[mutant["file"]][span["start"]["line"], span["end"]["line"]].append(mutant)
        else:
            single.append(mutant)
    for file, spans in functions.items():
        lines = pathlib.Path(file).read_text().split("\n")
        out = list(lines)
        for (first, last), here in sorted(spans.items(), reverse=True):
            copies = []
            for mutant in here:
                changed, more = mutated(lines, mutant)
                body = changed[first - 1 : last + more]
                copies.append("\n".join(row for row in body if not row.strip().startswith("///")))
            laid = with_mutants("\n".join(lines[first - 1 : last]), here, copies)
            if laid is None:
                single += here
            else:
                out[first - 1 : last] = laid.split("\n")
        (tree / file).write_text("\n".join(out))
    with (tree / "src/number.rs").open("a") as number:
        number.write(SWITCH)
    return single


def manifest(tree):
    """The package with the library found at run time, no lints, and no more dependencies than these tests need."""
    text = pathlib.Path("Cargo.toml").read_text()
    text = re.sub(r"(?ms)^\[(lints\.rust|dev-dependencies|profile\..*?)\]\n.*?(?=^\[|\Z)", "", text)
    text = text.replace("[lib]\n", '[lib]\ncrate-type = ["dylib"]\n')
    text += '\n[dev-dependencies]\napprox = "0.5"\n'
    text += 'proptest = { version = "1", default-features = false, features = ["std"] }\n'
    text += "\n[profile.dev]\ndebug = 0\nopt-level = 1\nincremental = false\n"
    (tree / "Cargo.toml").write_text(text)
    for name in ("Cargo.lock", "README.md"):
        shutil.copy(name, tree / name)
    for folder in ("tests", "benches"):
        shutil.rmtree(tree / folder, ignore_errors=True)
        shutil.copytree(folder, tree / folder)


def cargo(tree, *arguments):
    flags = os.environ | {"RUSTFLAGS": "-Cprefer-dynamic --cap-lints allow", "CARGO_TARGET_DIR": str(tree / "target")}
    command = ["cargo", *arguments, "--message-format=json"]
    run = subprocess.run(command, cwd=tree, env=flags, stdout=subprocess.PIPE, text=True)
    return run.returncode, [json.loads(row) for row in run.stdout.splitlines() if row.startswith("{")]


def unviable(tree, messages):
    """The numbers of the mutants that do not compile."""
    found = set()
    for message in messages:
        if message["reason"] != "compiler-message" or message["message"]["level"] != "error":
            continue
        numbers = set()
        # Where the mistake is first; what it is at odds with only where that is in no mutant.
        for span in sorted(message["message"]["spans"], key=lambda span: not span["is_primary"]):
            if numbers:
                break
            rows = (tree / span["file_name"]).read_text().split("\n") if (tree / span["file_name"]).exists() else []
            marks = (re.match(r"/\*MUTANT (\d+)\*/", row) for row in reversed(rows[: span["line_start"]]))
            nearest = next((mark for mark in marks if mark), None)
            if nearest:
                numbers.add(int(nearest.group(1)))
        if not numbers and message["message"]["spans"]:
            sys.exit(message["message"]["rendered"])
        found |= numbers
    return found


def build(mutants, tree):
    """Compiles all that compile; gives those that have no place, those that do not compile, and the tests."""
    tree.mkdir(parents=True, exist_ok=True)
    manifest(tree)
    wrong = set()
    for _ in range(6):
        single = lay([mutant for mutant in mutants if mutant["id"] not in wrong], tree)
        code, messages = cargo(tree, "check", "--lib")
        if code == 0:
            break
        wrong |= unviable(tree, messages)
    names = [option for test in TESTS for option in ("--test", test)]
    code, messages = cargo(tree, "test", "--no-run", *names)
    made = {m["target"]["name"]: m["executable"] for m in messages if m.get("executable")}
    if code or set(made) != set(TESTS):
        sys.exit("the tests do not compile")
    return single, wrong, [made[test] for test in TESTS]


def outcome(number, binaries, tree, quick):
    """What the tests make of a mutant: killed, endless, lives; and the test that tells."""
    sysroot = subprocess.check_output(["rustc", "--print", "sysroot"], text=True).strip()
    folders = [f"{tree}/target/debug/deps", *(str(at.parent) for at in pathlib.Path(sysroot).glob("lib/**/libstd-*.so"))]
    surroundings = {k: v for k, v in os.environ.items() if k != "PROPTEST_CASES"} | {
        "MUTANT": str(number), "LD_LIBRARY_PATH": ":".join(folders), "CARGO_MANIFEST_DIR": str(tree),
        "RUST_BACKTRACE": "0",
    }
    left_out = ["table", *(SLOW if quick else [])]
    options = ["--exact", *(word for name in left_out for word in ("--skip", name))]
    for binary in binaries:
        run = subprocess.run(
            [binary, *options], cwd=tree, env=surroundings | (FEW_DRAWS if quick else {}), capture_output=True,
            text=True, preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_CPU, (ENDLESS, ENDLESS + 5)),
        )
        told = re.search(r"^test (\S+) .*FAILED", run.stdout, re.M)
        test = f"{pathlib.Path(binary).name.rsplit('-', 1)[0]} {told.group(1) if told else ''}"
        if run.returncode == 101 and told:
            return "killed", test
        if run.returncode in (-9, -24):
            return "endless", test
        if run.returncode in (-6, -11):
            return "killed", f"{test}crashes"
        if run.returncode:
            sys.exit(f"{test} of mutant {number} did not run:\n{run.stdout[-500:]}{run.stderr[-500:]}")
    return "lives", ""


def key(mutant):
    """A mutant is known by its file and column, what it changes and its line's text: the line's number moves."""
    file, line, column, what = mutant["name"].split(":", 3)
    return f"{file}:{column}:{what} | {pathlib.Path(file).read_text().split(chr(10))[int(line) - 1].strip()}"


def recorded():
    """Which mutants are known to live, with the reason of each, and what stands before them."""
    head, reasons, now = [], {}, None
    for row in RECORD.read_text().split("\n") if RECORD.exists() else []:
        if row.startswith("src/"):
            now = row
            reasons[now] = []
        elif now is None:
            head.append(row)
        elif row.strip():
            reasons[now].append(row)
    return "\n".join(head).strip(), reasons


def alone(mutants, work):
    """The outcomes of the mutants that have no place in the library, each compiled by itself."""
    if not mutants:
        return {}
    wanted = [word for mutant in mutants for word in ("--re", f"^{re.escape(mutant['name'])}$")]
    subprocess.run(["cargo", "mutants", "--no-shuffle", "--output", str(work), "--timeout", "120", *wanted])
    found = {}
    for name, says in (("caught", "killed"), ("missed", "lives"), ("timeout", "endless"), ("unviable", "unviable")):
        rows = (work / f"mutants.out/{name}.txt").read_text().split("\n")
        found |= {mutant["id"]: (says, "alone") for mutant in mutants if mutant["name"] in rows}
    return found


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("work", type=pathlib.Path)
    parser.add_argument("--part", default="0/1")
    parser.add_argument("--file", default=".")
    parser.add_argument("--record", action="store_true")
    parser.add_argument("--jobs", type=int, default=os.cpu_count())
    asked = parser.parse_args()
    mutants = json.loads((asked.work / "list.json").read_text())
    for number, mutant in enumerate(mutants, 1):
        mutant["id"] = number
    first, step = (int(word) for word in asked.part.split("/"))
    mutants = [mutant for mutant in mutants if re.search(asked.file, mutant["file"])][first::step]
    if not mutants:
        print("no mutants: nothing of the core has changed")
        return
    tree = asked.work / "tree"
    single, wrong, binaries = build(mutants, tree)
    apart = {mutant["id"] for mutant in single}
    for quick in (True, False):
        found = outcome(0, binaries, tree, quick)
        if found[0] != "lives":
            sys.exit(f"without any mutant, {found[1]} fails")
    head, known = recorded()
    outcomes = {number: ("unviable", "") for number in wrong}

    def both(mutant):
        found = outcome(mutant["id"], binaries, tree, True)
        if found[0] == "lives" and (asked.record or key(mutant) not in known):
            found = outcome(mutant["id"], binaries, tree, False)
        return mutant["id"], found

    laid = [mutant for mutant in mutants if mutant["id"] not in wrong | apart]
    with concurrent.futures.ThreadPoolExecutor(asked.jobs) as pool:
        for done, (number, found) in enumerate(pool.map(both, laid), 1):
            outcomes[number] = found
            if done % 200 == 0:
                print(f"{done} of {len(laid)}", flush=True)
    outcomes |= alone(single, asked.work)

    with (asked.work / "outcomes.tsv").open("w") as table:
        for mutant in mutants:
            print(*outcomes[mutant["id"]], mutant["name"], sep="\t", file=table)
    count = collections.Counter(says for says, _ in outcomes.values())
    tried = len(outcomes) - count["unviable"]
    killed = count["killed"] + count["endless"]
    print(f"{len(outcomes)} mutants, {count['unviable']} do not compile; of {tried} the tests kill {killed}")
    print(f"({count['endless']} never end): {100 * killed / tried:.2f} %; {count['lives']} live")
    living = [key(mutant) for mutant in mutants if outcomes[mutant["id"]][0] == "lives"]
    if asked.record:
        rows = ["\n".join([name, *known.get(name, ["    NO REASON YET"])]) for name in living]
        RECORD.write_text(f"{head}\n\n" + "\n".join(rows) + "\n")
    unknown = [name for name in living if not known.get(name)]
    for name in unknown:
        print(f"lives: {name}")
    if unknown:
        sys.exit(1)


if __name__ == "__main__":
    main()
