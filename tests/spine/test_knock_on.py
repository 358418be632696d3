"""A knock-on is a join that broke: nobody wrote "if the waist is raised the zipper is too long"."""

from fractions import Fraction
from pathlib import Path

import pytest

from advisor.advise.advise import advise
from advisor.advise.plan import make_plan
from tests.spine.worlds import BASE, case_of, choosing, world

RAISE = "waist.fixes.raise_seam"
LOW = case_of(waist__sits="low", waist__low_by="1 1/4 in")


def test_raising_the_waist_breaks_the_joins_it_crosses() -> None:
    before = world(LOW).model
    advice = advise(BASE, world(LOW), choosing(LOW, waist_low__bodice=RAISE).choices)
    broken = {
        join.id
        for join in advice.model.holding()
        if join.relation == "equal" and abs(advice.model.over(join)) > join.slack
    }
    whole = {join.id for join in before.holding() if join.relation == "equal" and abs(before.over(join)) > join.slack}
    # The fit it was meant for is mended; the closure and the leg's length, which run across the seam, are not.
    assert whole == {"fit:bodice.length~bodice.wanted"}
    assert broken == {"closure:front.closure~front.opening", "fit:leg.length~leg.wanted"}


def test_the_closure_finding_appears_with_the_raise_and_goes_without_it() -> None:
    with_raise = advise(BASE, world(LOW), choosing(LOW, waist_low__bodice=RAISE).choices)
    without = advise(BASE, world(LOW), {})
    closure = with_raise.finding("closure_long@front")
    assert closure is not None and closure.amount == Fraction(127, 4)
    assert without.finding("closure_long@front") is None


def test_the_trunk_loses_twice_the_raise() -> None:
    advice = advise(BASE, world(LOW), choosing(LOW, waist_low__bodice=RAISE).choices)
    lost = world(LOW).model.measures["trunk.loop"] - advice.model.measures["trunk.loop"]
    # Front and back each lose the raise: plain geometry of a loop crossed twice.
    assert lost == 2 * Fraction(127, 4)


def test_no_rule_names_both_the_raise_and_the_closure() -> None:
    for id, path in BASE.files.items():
        text = path.read_text(encoding="utf-8")
        if "closure" in id:
            assert "raise_seam" not in text and "waist_low" not in text, id
        if id in (RAISE, "waist.findings.seam_low", "waist.answers.raise_seam"):
            code = text.split('"""', 2)[2]
            assert "closure" not in code and "zipper" not in code, id


@pytest.mark.parametrize("path", sorted(Path(BASE.folder).glob("*/findings/*.py")), ids=lambda p: p.stem)
def test_finding_rules_know_no_fixes(path: Path) -> None:
    assert ".fixes." not in path.read_text(encoding="utf-8")


def test_the_plan_names_what_it_leaves() -> None:
    plan = make_plan(BASE, world(LOW), {})
    chosen = {option.finding for option in plan.advice.chosen() if option.closes}
    assert not chosen & {finding.id for finding in plan.remains}
