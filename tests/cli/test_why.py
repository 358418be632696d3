"""why and why-not: in words of cloth and body, two levels first, and a flip that really flips."""

import re
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from advisor.advise.flips import flips
from advisor.advise.follow import follow
from advisor.advise.sweep import outcome
from advisor.casefile import read_case
from advisor.core.advice import Advice
from advisor.core.case import Case
from advisor.figures.called import CALLED, called
from advisor.figures.exact import inches
from advisor.report.why import why_lines
from tests.cli.saying import CASES, Say
from tests.some_cases import some
from tests.spine.worlds import BASE, world

PATHS = sorted(CASES.glob("*.toml"))
CODE = re.compile(r"\b[a-z]+_[a-z_0-9]+\b|\b[a-z]+\.[a-z_]+\b|@|>|~|[{}]")


def opened(path: Path) -> tuple[Case, Advice]:
    case = read_case(path, BASE.questions()).case
    return case, follow(BASE, world(case), case.choices, case.limits).advice


@pytest.mark.parametrize("path", some(PATHS, 4), ids=lambda path: path.stem)
@pytest.mark.parametrize("deep", [False, True], ids=["two levels", "all"])
def test_no_code_words_in_any_reason(path: Path, deep: bool) -> None:
    case, advice = opened(path)
    for item in (*advice.findings, *advice.options):
        lines = why_lines(BASE, case, advice, item, (), deep)
        assert len(lines) > 3 and not CODE.search("\n".join(lines)), lines


@pytest.mark.parametrize("path", some(PATHS, 4), ids=lambda path: path.stem)
def test_every_figure_told_has_a_name(path: Path) -> None:
    _, advice = opened(path)
    for option in advice.options:
        for figure in option.work.figures.values():
            plain = re.sub(r"[._]\d+$|_\d+$", "", figure.id)
            named = figure.id in BASE.garments["one_piece"].names or figure.id.count(".") == 1
            told = f"{figure.id} of {option.fix}: name it in advisor/figures/called.py"
            assert plain in CALLED or named or figure.id in CALLED, told


def test_what_figures_are_called_is_words() -> None:
    assert all(not CODE.search(words) and words == words.strip() for words in CALLED.values())
    assert called("button_3") == "button 3" and called("from_center.2") == "from the center, dart 2"
    assert called("not_met_yet") == "not met yet"


def test_two_levels_first_and_then_down_to_the_answers(say: Say) -> None:
    short = say("why", CASES / "moth_queen.toml", "6a")
    whole = say("why", CASES / "moth_queen.toml", "6a", "--all")
    depth = [len(line) - len(line.lstrip()) for line in short.raw.splitlines() if line.lstrip().startswith("- ")]
    assert max(depth) == 4, "two levels below the first line"
    assert "more behind these; ask for all of it" in short.out and "ask for all" not in whole.out
    assert "How far the waist seam is too low: 1 1/8 in, as measured" in whole.out
    assert "How far the waist seam is too low" not in short.out
    assert "common practice, no source" in whole.out


@pytest.mark.parametrize("name", ["moth_queen", "miller", "coachman", "gardener", "dock_hand", "tower_guard"])
def test_a_value_said_to_flip_does_and_one_mark_before_it_does_not(name: str) -> None:
    case, advice = opened(CASES / f"{name}.toml")
    mark = Fraction(254, 160) if case.tape == "in" else Fraction(1)
    ruled_out = [option for option in advice.options if option.rulings][:4]
    for option in ruled_out:
        for flip in flips(BASE, case, advice, option):

            def stands(value: Fraction | str, key: str = flip.key, id: str = option.id) -> bool:
                known = outcome(BASE, replace(case), {key: value})[0].advice
                return any(other.id == id and other.open for other in known.options)

            assert stands(flip.value), (option.id, flip)
            if isinstance(flip.value, Fraction):
                assert not stands(flip.value - mark if flip.upward else flip.value + mark), (option.id, flip)


def test_the_flip_is_told_as_an_amount_to_measure_for(say: Say) -> None:
    # By the card: 1 in is the most a center-back seam takes where only the waist is loose.
    said = say("why", CASES / "moth_queen.toml", "4e").out
    assert "It would be offered from 1 in down: cloth pinned out at the waist (now 1 3/8 in)." in said
    assert (
        "It would be offered with another answer to 'how far down the trousers are loose': "
        "'to the high hip, 3 to 4 in below' and not 'at the waist only'." in said
    )
    assert inches("1") < inches("1 3/8")


def test_the_rank_is_told_against_the_first(say: Say) -> None:
    queen = CASES / "moth_queen.toml"
    assert "It is the first in rank." in say("why", queen, "4a").out
    behind = say("why", queen, "4b").out
    assert "Behind 'Sew darts into the back, in pairs': difficulty 2 and not 3; lasts 3 and not 4" in behind
    assert "It leaves things as they are; 'Raise the waist seam' puts them right." in say("why", queen, "3c").out
    darned = say("why", queen, "2d").out
    assert "'Put a patch under the hole and zigzag it down' is at least as good on every count." in darned
