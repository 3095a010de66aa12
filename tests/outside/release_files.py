"""The files by which a release is made and installed: the workflow is YAML and names
files that exist, the desktop entry starts a program of the package and claims what the
file types are called, and the package takes only what there is."""

import configparser
import json
import re
import subprocess
import tomllib
import xml.etree.ElementTree as XML

import yaml

from common import ROOT, Checks

PACKAGE = ROOT / "viewer" / "package"
#: Types of the shared MIME database that the desktop entry may claim without bringing them.
KNOWN_TYPES = {"model/stl", "model/obj"}


def workflow(checks: Checks) -> None:
    text = (ROOT / ".github" / "workflows" / "release.yml").read_text(encoding="utf-8")
    jobs = yaml.safe_load(text)["jobs"]
    checks.check("jobs", set(jobs) == {"licences", "build", "publish"}, str(set(jobs)))
    systems = {row["system"].split("-")[0] for row in jobs["build"]["strategy"]["matrix"]["include"]}
    checks.check("systems", systems == {"linux", "windows", "macos"}, str(systems))
    commands = "\n".join(step.get("run", "") for job in jobs.values() for step in job["steps"])
    named = set(re.findall(r"(?<![\w/])(?:\.cargo|crates|viewer|test-meshes)/[\w./-]+", commands))
    made = {"crates/cli/archproof.cdx.json", "viewer/archproof-viewer.cdx.json"}
    for path in named - made:
        checks.check(f"the workflow names {path}", (ROOT / path).is_file())
    packages = set(re.findall(r"--package (\S+)", commands))
    names = {tomllib.loads(path.read_text())["package"]["name"] for path in ROOT.glob("crates/*/Cargo.toml")}
    checks.check("packages of the workflow", bool(packages) and packages <= names, str(packages - names))


def desktop(checks: Checks) -> None:
    entry = configparser.ConfigParser(interpolation=None)
    entry.optionxform = str
    entry.read(PACKAGE / "archproof-viewer.desktop", encoding="utf-8")
    entry = entry["Desktop Entry"]
    checks.check("program", entry["Exec"] == "archproof-viewer %f", entry["Exec"])
    checks.check("icon", (PACKAGE / f"{entry['Icon']}.svg").is_file(), entry["Icon"])
    XML.parse(PACKAGE / "archproof.svg")
    types = XML.parse(PACKAGE / "archproof.xml").getroot()
    brought = {one.attrib["type"] for one in types if one.tag.endswith("mime-type")}
    claimed = set(entry["MimeType"].strip(";").split(";"))
    checks.check("file types", claimed == KNOWN_TYPES | brought, str(claimed ^ (KNOWN_TYPES | brought)))


def assets(checks: Checks) -> None:
    folder = ROOT / "crates" / "cli"
    deb = tomllib.loads((folder / "Cargo.toml").read_text())["package"]["metadata"]["deb"]
    staged = (PACKAGE / "stage").read_text(encoding="utf-8")
    for source, *_ in deb["assets"]:
        made = source.removeprefix("../../target/package/")
        is_there = made.removesuffix("/*") in staged if made != source else (folder / source).is_file()
        checks.check(f"the package takes {source}", is_there)


def is_allowed(expression: str, allowed: set[str]) -> bool:
    """Whether a licence expression (SPDX, or the older `A/B`) can be met by these licences."""
    words = re.findall(r"[()]|[^\s()]+", re.sub(r"\s+WITH\s+", "-WITH-", expression.replace("/", " OR ")))
    plain = {"OR": "or", "AND": "and", "(": "(", ")": ")"}
    # Nothing but True, False, and, or, and parentheses is left to evaluate.
    return eval(" ".join(plain.get(word, str(word in allowed)) for word in words))


def licences(checks: Checks) -> None:
    rules = tomllib.loads((ROOT / ".cargo" / "deny.toml").read_text(encoding="utf-8"))
    allowed = set(rules["licenses"]["allow"])
    also = {one["crate"]: set(one["allow"]) for one in rules["licenses"]["exceptions"]}
    command = ["cargo", "metadata", "--format-version=1", "--locked"]
    for target in rules["graph"]["targets"]:
        command += ["--filter-platform", target]
    listed = json.loads(subprocess.run(command, cwd=ROOT, check=True, capture_output=True).stdout)
    used = {node["id"] for node in listed["resolve"]["nodes"]}
    for package in listed["packages"]:
        name, expression = package["name"], package["license"] or ""
        if package["id"] in used:
            fits = bool(expression) and is_allowed(expression, allowed | also.get(name, set()))
            checks.check(f"licence of {name}", fits, expression)


def main() -> None:
    checks = Checks()
    workflow(checks)
    desktop(checks)
    assets(checks)
    licences(checks)
    checks.close()


if __name__ == "__main__":
    main()
