"""Stability: what is told is what trying every mark of the tape finds, and the most fragile comes first."""

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from advisor.advise.follow import follow
from advisor.advise.stable import REACH, Stability, stability
from advisor.casefile import read_case
from advisor.core.advice import Advice
from advisor.core.case import Case, Known
from advisor.core.model import Key, Value
from advisor.figures.exact import inches
from advisor.report.stable import AMOUNTS, WORDS, stable_data, stable_lines
from tests.spine.worlds import BASE, case_of, choosing, world

CASES = Path(__file__).parents[2] / "cases"
MARK = {"in": Fraction(254, 160), "cm": Fraction(1)}
"""1/16 in, and 1 mm, in mm."""


def opened(name: str) -> Case:
    return read_case(CASES / f"{name}.toml", BASE.questions()).case


def done(case: Case, key: Key, value: Value) -> Mapping[str, tuple[str, bool]]:
    """What is done about what, worked out the long way: the answer put into the case, no sweep."""
    known = case.answers.get(key)
    assert isinstance(known, Known)
    other = replace(case, answers={**case.answers, key: replace(known, value=value)})
    return plan_of(other)


def plan_of(case: Case) -> Mapping[str, tuple[str, bool]]:
    advice = follow(BASE, world(case), case.choices, case.limits, told=False).advice
    taken = {option.finding: (option.fix, option.open) for option in advice.chosen()}
    return {finding.id: taken.get(finding.id, ("", False)) for finding in advice.findings}


def brute(case: Case, key: Key, sign: int) -> Fraction | None:
    """The nearest mark on one side that makes another plan, each of them tried in turn."""
    known, question, now = case.answers[key], BASE.garment(case.garment).questions[key], plan_of(case)
    assert isinstance(known, Known) and isinstance(known.value, Fraction)
    for count in range(1, REACH + 1):
        value = known.value + sign * count * MARK[case.tape]
        if question.least <= value <= question.most and done(case, key, value) != now:
            return value
    return None


def check(case: Case, found: Stability, keys: set[Key]) -> None:
    amounts = {amount.key: amount for amount in found.amounts}
    for key in sorted(keys):
        amount = amounts.get(key)
        for sign in (-1, 1):
            upset = amount and (amount.below if sign < 0 else amount.above)
            assert (upset.at if upset else None) == brute(case, key, sign), (key, sign)
            if upset and amount:
                assert upset.by == abs(upset.at - amount.mm)
        assert (amount is None) == (key in found.firm)


@pytest.mark.parametrize(
    ("name", "keys"),
    [
        ("moth_queen", {"waist.pinned", "waist.low_by"}),
        ("miller", {"back_pocket.gap", "waist.pinned"}),
        ("dock_hand", {"waist.narrow_by"}),
    ],
)
def test_every_mark_of_the_tape_tried_finds_the_same(name: str, keys: set[Key]) -> None:
    case = opened(name)
    check(case, stability(BASE, case), keys)


def test_on_a_metric_tape_too() -> None:
    case = case_of(tape="cm", waist__sits="low", waist__low_by="30 mm", waist__pinned="22 mm", trousers__edge="840 mm")
    check(case, stability(BASE, case), {"waist.low_by", "waist.pinned"})


def test_words_tried_one_by_one_find_the_same() -> None:
    case = opened("miller")
    found = {word.key: {other for other, _ in word.upsets} for word in stability(BASE, case).words}
    now = plan_of(case)
    for key, known in case.answers.items():
        question = BASE.garment(case.garment).questions[key]
        if question.kind == "word" and isinstance(known, Known) and question.seconds:
            upsets = {word for word in question.words if word != known.value and done(case, key, word) != now}
            assert found.get(key, set()) == upsets, key


def told(case: Case, everything: bool = False) -> tuple[list[str], Stability]:
    found, advice = stability(BASE, case), advice_of(case)
    return stable_lines(BASE, case, advice, found, everything), found


def advice_of(case: Case) -> Advice:
    return follow(BASE, world(case), case.choices, case.limits).advice


def test_the_most_fragile_come_first_and_eight_are_told() -> None:
    lines, found = told(opened("moth_queen"))
    distances = [amount.nearest.by for amount in found.amounts if amount.nearest]
    assert distances == sorted(distances) and len(distances) == len(found.amounts)
    shares = [len(word.upsets) / word.others for word in found.words]
    assert shares == sorted(shares, reverse=True)
    assert sum(line.startswith("  - ") for line in lines) == AMOUNTS + WORDS
    every, _ = told(opened("moth_queen"), everything=True)
    assert sum(line.startswith("  - ") for line in every) == len(found.amounts) + len(found.words)
    said = " ".join(" ".join(lines).split())
    assert f"hangs on {len(found.amounts) + len(found.words) - AMOUNTS - WORDS} more" in said
    pinned = "Cloth pinned out at the waist (1 3/8 in): at 1 5/8 in or more, 1/4 in off: "
    assert f"{pinned}Fold the upper edge into pleats" in said


def test_a_choice_that_would_be_ruled_out_is_told() -> None:
    # Chosen, darts are taken at any width; past what they can take they are ruled out, and that is another plan.
    case = choosing(opened("moth_queen"), too_wide__trousers="girth.fixes.back_darts")
    lines, found = told(case, everything=True)
    pinned = next(amount for amount in found.amounts if amount.key == "waist.pinned")
    assert pinned.above is not None
    check(case, found, {"waist.pinned"})
    assert "@" not in "".join(lines) and "fixes." not in "".join(lines)


def test_data_hold_all_of_it_in_her_unit() -> None:
    case = opened("moth_queen")
    found = stability(BASE, case)
    data = stable_data(BASE, case, found)
    assert data["reach"] == {"mm": float(inches("4")), "unit": "in", "text": "4 in"}
    assert len(data["amounts"]) == len(found.amounts) and len(data["answers"]) == len(found.words)
    given = [key for key, known in case.answers.items() if isinstance(known, Known)]
    assert {each["key"] for each in (*data["amounts"], *data["answers"])} | set(data["firm"]) == set(given)


def test_nothing_answered_is_nothing_to_be_off() -> None:
    lines, _ = told(case_of())
    assert "No single answer" in " ".join(lines)
