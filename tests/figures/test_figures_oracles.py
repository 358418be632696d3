"""Every formula that gives a number agrees with something that reaches it another way."""

import os
from fractions import Fraction

import oracle_closure
import oracle_fit
import oracle_girth
import oracle_length
import oracle_making
import pytest
from figure_oracles import ORACLES, Draw, Oracle

from advisor.figures import FORMULAS

assert all((oracle_closure, oracle_fit, oracle_girth, oracle_length, oracle_making))
DRAWS = int(os.environ.get("ORACLE_DRAWS", "8"))
"""Comparisons for each formula; 60 makes over 10,000 in all."""


@pytest.mark.parametrize("held", ORACLES, ids=lambda held: held.formula.id)
def test_agrees_with_an_independent_road(held: Oracle) -> None:
    draw = Draw(held.formula.id)
    for _ in range(DRAWS):
        inputs = held.draw(draw)
        ours = held.formula(**inputs)
        theirs = held.answer(**{name: as_float(held, name, given) for name, given in inputs.items()})
        assert close(ours, theirs, held.within), f"{inputs}: {ours} against {theirs}"


def test_every_number_has_an_oracle() -> None:
    held = {oracle.formula.id for oracle in ORACLES}
    wanted = {key for key, formula in FORMULAS.items() if formula.gives != "word"}
    assert wanted - held == set()
    assert len(held) * DRAWS >= 500


def as_float(held: Oracle, name: str, given):
    if isinstance(given, tuple):
        return tuple(float(item) for item in given)
    if held.formula.units[name] in ("word", "count"):
        return given
    return float(given)


def close(ours, theirs, within: float) -> bool:
    if isinstance(ours, tuple):
        return len(ours) == len(theirs) and all(
            close(one, other, within) for one, other in zip(ours, theirs, strict=True)
        )
    assert isinstance(ours, int | Fraction)
    return abs(float(ours) - theirs) <= within
