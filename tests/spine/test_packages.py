"""What is on disk is what is installed."""

import tomllib
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def test_the_list_of_packages_is_complete() -> None:
    listed = set(tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["setuptools"]["packages"])
    on_disk = {".".join(path.parent.relative_to(ROOT).parts) for path in (ROOT / "advisor").rglob("__init__.py")}
    assert listed == on_disk | {"advisor.cases", "advisor.rules"}


def test_the_top_level_holds_only_what_was_agreed() -> None:
    allowed = {
        "README.md",
        "DEVELOPERS.md",
        "pyproject.toml",
        "LICENSE",
        "requirements.lock",
        "advisor",
        "rules",
        "tests",
        "cases",
    }
    made = {"build", "dist", "alteration_advisor.egg-info"}
    odd = {path.name for path in ROOT.iterdir() if not path.name.startswith(".")} - allowed - made
    assert odd == set()
