"""Belt loops and the back label: they come off before a band is worked on, and whether they go back on is asked.

That the center loop of jeans comes off for the seam in the band and is sewn on again over it: source EHOWJ of
rules/sources.toml (excerpt seen); a denim shop's page, NINEL, says the same.
"""

import pytest

from advisor.core.stages import stage_index
from tests.rules.mutate import closes, notices, plan_for, worked

WIDE = {"waist.fits": "wide", "waist.pinned": "2 in"}
NARROW = {"waist.fits": "narrow", "waist.narrow_by": "1 in", "cloth.spare": "yes"}
LET_OUT = {**NARROW, "trousers.allowance": "1 in"}
LOOPS = "loops_off@band"


@pytest.mark.parametrize(
    ("garment", "answers", "finding", "fix"),
    [
        ("jeans", WIDE, "band_longer@band", "edges.fixes.seam_band"),
        ("trousers", LET_OUT, "band_shorter@band", "edges.fixes.new_band_of_other_cloth"),
        ("trousers", LET_OUT, "band_shorter@band", "edges.fixes.piece_band"),
        ("trousers", LET_OUT, "band_shorter@band", "edges.fixes.new_band"),
        ("skirt", {**WIDE, "band.carries": "label"}, "band_longer@band", "edges.fixes.seam_band"),
    ],
)
def test_whatever_is_done_to_a_band_its_loops_come_off_first(
    garment: str, answers: dict[str, str], finding: str, fix: str
) -> None:
    work = worked(answers, finding, fix, garment=garment)
    closes(work)
    ids = [op.id for op in work.ops]
    off, on, band = ids.index("take off band.carried"), ids.index("set band.carried"), ids.index("sew band.seam")
    assert off < band < on
    stages = [stage_index(op.stage) for op in work.ops]
    assert stages == sorted(stages)
    assert notices(work) > 5


def test_setting_them_again_is_noticed_and_leaving_them_off_is_named() -> None:
    work = worked(WIDE, LOOPS, "waist.fixes.set_loops", garment="jeans")
    closes(work)
    assert notices(work) == 1
    closes(worked(WIDE, LOOPS, "general.fixes.leave", garment="jeans"), frozenset({LOOPS}))


def test_a_bare_band_is_asked_for_nothing() -> None:
    plan = plan_for({**WIDE, "band.carries": "nothing"}, garment="jeans")
    assert LOOPS not in {finding.id for finding in plan.advice.findings}
    assert not [step.op.id for step in plan.steps if "carried" in step.op.id]


def test_the_words_name_what_sat_there() -> None:
    words = {
        word: next(
            f.words for f in plan_for({**WIDE, "band.carries": word}, garment="jeans").advice.findings if f.id == LOOPS
        )
        for word in ("loops", "label", "both")
    }
    assert "the belt loops came off" in words["loops"]
    assert "the label came off" in words["label"]
    assert "the belt loops and the label came off" in words["both"]
