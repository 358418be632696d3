"""The table of places and troubles is derived from the cards, and agrees with what the advice offers."""

import json
import shutil
from pathlib import Path

import pytest
from click.testing import CliRunner

from advisor.cli.commands.rules import command
from advisor.errors import KnowledgeError
from advisor.report.matrix import LEAVE, Cell, cells_of, read_problems
from advisor.rulebase.base import read_base
from tests.rules.mutate import base
from tests.rules.test_case_files import NAMES, opened

SHAPE = read_problems(base())
CELLS: dict[tuple[str, str, str], Cell] = {
    (id, cell.place, cell.kind): cell
    for id, garment in base().garments.items()
    for cell in cells_of(base(), garment, SHAPE)
}


@pytest.mark.parametrize("name", NAMES)
def test_whatever_a_case_is_offered_stands_in_the_table(name: str) -> None:
    plan, garment = opened(name), _garment(name)
    for finding in plan.advice.findings:
        cell = CELLS[garment, finding.place, SHAPE.problems[finding.problem]]
        assert finding.problem in cell.problems
        assert {option.fix for option in plan.advice.options_for(finding.id)} <= set(cell.fixes)


def _garment(name: str) -> str:
    path = Path(__file__).parents[2] / "cases" / f"{name}.toml"
    return path.read_text(encoding="utf-8").partition('garment = "')[2].partition('"')[0]


def test_cells_counted_by_hand() -> None:
    hip = CELLS["skirt", "hip", "big"]
    assert hip.problems == ("hip_wide",)
    # rules/hip/answers/wide_*.py: two seams at center back, the sides, leaving it.
    assert hip.mark == "4" and LEAVE in hip.fixes
    assert CELLS["skirt", "edge", "level"].fixes == ("general.fixes.leave", "hems.fixes.level_edge")
    assert CELLS["jeans", "crotch", "small"].mark == "x"
    assert CELLS["trousers", "knee", "hole"].mark == "^"
    assert CELLS["shirt", "collar", "level"].mark == "."


def test_a_written_cannot_has_no_fix_and_a_place_without_a_number_no_problem() -> None:
    for key, cell in CELLS.items():
        assert not (cell.never and cell.fixes), key
        assert bool(cell.problems) == bool(cell.fixes), key


@pytest.mark.parametrize(
    ("old", "new", "what"),
    [
        ('too_wide = "big"\n', "", "no kind for 'too_wide'"),
        ('too_wide = "big"\n', 'too_wide = "big"\ntoo_wild = "big"\n', "nothing finds 'too_wild'"),
        ('too_wide = "big"\n', 'too_wide = "bog"\n', "no kind 'bog'"),
    ],
)
def test_a_problem_without_a_kind_is_named(tmp_path: Path, old: str, new: str, what: str) -> None:
    folder = tmp_path / "rules"
    shutil.copytree(base().folder, folder, ignore=shutil.ignore_patterns("__pycache__"))
    path = folder / "problems.toml"
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new), encoding="utf-8")
    with pytest.raises(KnowledgeError) as refusal:
        read_problems(read_base(folder))
    assert refusal.value.what == what


def test_the_command_prints_tables_and_data() -> None:
    run = CliRunner()
    lines = run.invoke(command, ["matrix"]).output.splitlines()
    assert max(map(len, lines)) <= 78
    assert [line for line in lines if line.startswith("full hip")]
    data = json.loads(run.invoke(command, ["matrix", "--garment", "jeans", "--json"]).output)
    assert data["version"] == 1 and list(data["garments"]) == ["jeans"]
    row = next(c for c in data["garments"]["jeans"] if (c["place"], c["kind"]) == ("hip", "big"))
    assert row["rungs"] == len(row["fixes"]) and row["leave"]
    assert all(1 <= grade <= 5 for fix in row["fixes"].values() for grade in fix.values())
