"""`advisor plans` and `advisor plan --as`: what is printed at 80 and 40 columns, limits, taking a plan."""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from advisor.casefile import read_case
from advisor.rulebase.base import the_base

ROOT = Path(__file__).parents[2]


@pytest.fixture
def case(tmp_path: Path) -> Path:
    path = tmp_path / "tower.toml"
    shutil.copy(ROOT / "cases" / "tower_guard.toml", path)
    return path


def run(*args: str, columns: int = 80) -> subprocess.CompletedProcess[str]:
    env = {**os.environ, "PYTHONPATH": str(ROOT), "COLUMNS": str(columns)}
    return subprocess.run([sys.executable, "-m", "advisor", *args], env=env, capture_output=True, text=True, timeout=60)


def test_the_table_fits_80_and_40_columns(case: Path) -> None:
    for columns in (80, 40):
        told = run("plans", str(case), columns=columns)
        assert told.returncode == 0, told.stderr
        lines = told.stdout.splitlines()
        assert max(map(len, lines)) <= columns
        assert any(line.startswith("1. Quickest") for line in lines) and "What changes between them" in lines
        # No ids, no code words.
        assert "@" not in told.stdout and "fixes." not in told.stdout and "_" not in told.stdout


def test_the_plan_in_full_is_the_one_compared(case: Path) -> None:
    compared = json.loads(run("plans", str(case), "--json").stdout)
    plans = compared["plans"]
    assert compared["version"] == 1 and 2 <= len(plans) <= 4
    for number, told in enumerate(plans, 1):
        # By its number, its name, and its name with dashes: each plan another way, for each takes a process.
        called = (str(number), told["names"][0], told["names"][0].replace(" ", "-"))[number % 3]
        assert json.loads(run("plan", str(case), "--as", called, "--json").stdout) == told["plan"]
        assert told["plan"]["totals"]["minutes"]["likely"] == sum(s["minutes"]["likely"] for s in told["plan"]["steps"])
    wrong = run("plan", str(case), "--as", "cheapest")
    assert wrong.returncode == 2 and "no plan is called 'cheapest'" in wrong.stderr


def test_limits_for_one_run_and_the_one_that_bites(case: Path) -> None:
    full = json.loads(run("plans", str(case), "--json").stdout)["plans"]
    least = min(told["plan"]["totals"]["minutes"]["likely"] for told in full)
    fits = json.loads(run("plans", str(case), "--json", "--minutes", str(least)).stdout)
    assert {told["plan"]["totals"]["minutes"]["likely"] for told in fits["plans"]} == {least}
    short = run("plans", str(case), "--minutes", str(least - 7))
    assert short.returncode == 0 and f"{least - 7} minutes, and it takes {least}, 7 more" in short.stdout
    none = run("plan", str(case), "--as", "quickest", "--minutes", "1")
    assert none.returncode == 2 and "no plan keeps the limits" in none.stderr
    assert run("plans", str(case), "--hardest", "9").returncode == 2
    assert run("plans", str(case), "--money", "some").returncode == 2


def test_a_plan_is_taken_into_the_case_with_its_limits(case: Path) -> None:
    before = case.read_text(encoding="utf-8")
    told = json.loads(run("plans", str(case), "--weakest", "3", "--json").stdout)["plans"][0]
    done = run("plans", str(case), "--weakest", "3", "--take", "1")
    assert done.returncode == 0, done.stderr
    taken = read_case(case, the_base().questions()).case
    assert {f: c.fix for f, c in taken.choices.items()} == {f: c["fix"] for f, c in told["plan"]["choices"].items()}
    assert taken.limits.weakest == 3 and taken.log[-1].what.startswith("plan taken: quickest")
    # Nothing she wrote is gone.
    assert [line for line in before.splitlines() if line not in case.read_text(encoding="utf-8").splitlines()] == []
    now = json.loads(run("plans", str(case), "--json").stdout)["plans"]
    assert [each["as_it_stands"] for each in now].count(True) == 1
