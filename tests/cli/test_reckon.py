"""One calculation alone: against published and everyday figures, on both tapes, and refused plainly."""

import json
from pathlib import Path

import pytest

from tests.cli.test_commands import run


def reckoned(tmp_path: Path, *args: str) -> dict[str, object]:
    done = run("reckon", *args, "--json", cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    data: dict[str, object] = json.loads(done.stdout)
    return data


@pytest.mark.parametrize(
    ("args", "text"),
    [
        # A pinch is double cloth: everyday fact, common practice, no source.
        (("seams.pinch_to_loss", "depth=1/2in", "places=2"), "2 in"),
        # About.com sewing, buttonhole placement, 1999: a 1 in button 1/4 in thick wants 1 1/4 in.
        (("buttons.hole_thick", "diameter=1in", "thickness=1/4in"), "1 1/4 in"),
        # L. I. Baldt, Clothing for Women, tucks: six tucks 1/2 in deep take 6 in.
        (("pleats.tucks_extra", "depth=1/2in", "tucks=6"), "6 in"),
    ],
)
def test_answers(tmp_path: Path, args: tuple[str, ...], text: str) -> None:
    value = reckoned(tmp_path, *args)["value"]
    assert isinstance(value, dict) and value["text"] == text


def test_the_other_tape(tmp_path: Path) -> None:
    value = reckoned(tmp_path, "seams.pinch_to_loss", "depth=13mm", "places=1", "--tape", "cm")["value"]
    assert value == {"mm": 26.0, "unit": "cm", "text": "2.6 cm"}


def test_the_list_is_whole(tmp_path: Path) -> None:
    from advisor.figures import FORMULAS

    data = json.loads(run("reckon", "--list", "--json", cwd=tmp_path).stdout)
    assert {topic["topic"] for topic in data["topics"]} == set(FORMULAS)
    assert all(topic["words"] and topic["source"] and topic["about"] for topic in data["topics"])


@pytest.mark.parametrize(
    ("args", "told"),
    [
        (("darts.nothing",), "no calculation"),
        (("seams.pinch_to_loss", "depth=1/2in"), "places is missing"),
        (("seams.pinch_to_loss", "deep=1/2in"), "did you mean 'depth'?"),
        (("seams.pinch_to_loss", "depth=1/2in", "places=1.5"), "no whole number"),
        (("seams.pinch_to_loss", "depth=27-28in", "places=1"), "range"),
        (("seams.pinch_to_loss", "depth"), "gives no value"),
        ((), "which calculation"),
        (("hems.circle_length", "radius=1in", "part=1e400"), "no number"),
        (("hems.circle_length", "radius=1in", "part=1/0"), "no number"),
        (("hems.circle_length", "radius=1in", "part=10000000"), "no number"),
        (("darts.from_center", "quarter=8in", "pairs=900000"), "more than any garment has"),
    ],
)
def test_refusals(tmp_path: Path, args: tuple[str, ...], told: str) -> None:
    done = run("reckon", *args, cwd=tmp_path)
    assert done.returncode == 2 and told in done.stderr and "Traceback" not in done.stderr


def test_no_code_word_reaches_the_person(tmp_path: Path) -> None:
    from advisor.figures import FORMULAS
    from advisor.report.reckoning import _about

    told = [_about(formula) for formula in FORMULAS.values()]
    assert any("Refused if" in text for text in told)
    assert not [text for text in told if "Error" in text or "`" in text]
