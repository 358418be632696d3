"""Fastenings of a band, belt loops, pocket bags, linings, fallen and frayed hems: closed, spoiled, ranked.

Facts held here, each with the record of rules/sources.toml that it comes from (all seen as excerpts): LTA-POCKET (new
lower halves twice the width of the bag and 1 in, 4 to 6 in long), LININGSEAM (1/16 in from the folds, 1 in past the
opening), BIASHEM (1/8 in of sound cloth), HSW-HEM (web is tried on a seam allowance first). The rest of what the fixes
say is common practice, no source.
"""

from collections.abc import Mapping

import pytest

from advisor.core.work import Option
from tests.rules.mutate import base, closes, notices, plan_for, worked

Answers = Mapping[str, str]
LOST, OUT = {"band.fastening": "lost"}, {"band.fastening": "torn"}
LOOP, LOOP_OUT = {"band.carries": "loops", "band.loop": "off"}, {"band.carries": "loops", "band.loop": "torn"}
LINED = {"lining.there": "there"}
MENDS = [
    ("trousers", LOST, "band_unfastened@band", "band.fixes.sew_button"),
    ("trousers", OUT, "band_unfastened@band", "band.fixes.sew_button"),
    ("skirt", LOST, "band_unfastened@band", "band.fixes.hook_and_bar"),
    ("skirt", OUT, "band_unfastened@band", "band.fixes.hook_and_bar"),
    ("jeans", LOST, "band_unfastened@band", "band.fixes.pin_it"),
    ("jeans", LOOP, "loop_off@band", "band.fixes.sew_loop"),
    ("jeans", LOOP_OUT, "loop_off@band", "band.fixes.sew_loop"),
    ("trousers", {"pocket_bag.bag": "holed"}, "pocket_holed@pocket_bag", "pockets.fixes.seam_above"),
    ("trousers", {"pocket_bag.bag": "holed"}, "pocket_holed@pocket_bag", "pockets.fixes.patch_bag"),
    ("jeans", {"pocket_bag.bag": "worn"}, "pocket_holed@pocket_bag", "pockets.fixes.half_bag"),
    ("skirt", {**LINED, "lining.state": "seam"}, "lining_torn@lining", "lining.fixes.resew_lining"),
    ("skirt", {**LINED, "lining.state": "torn"}, "lining_torn@lining", "lining.fixes.patch_lining"),
    ("skirt", {**LINED, "lining.state": "torn"}, "lining_torn@lining", "lining.fixes.take_lining_out"),
    ("skirt", {**LINED, "lining.state": "torn"}, "lining_torn@lining", "lining.fixes.renew_lining"),
    ("trousers", {"leg.edge": "down"}, "hem_down@leg", "hems.fixes.sew_again_by_hand"),
    ("skirt", {"edge.edge": "down"}, "hem_down@edge", "hems.fixes.sew_again_by_machine"),
    ("one_piece", {"leg.edge": "down"}, "hem_down@leg", "hems.fixes.fuse_again"),
    ("jeans", {"leg.edge": "frayed"}, "edge_frayed@leg", "hems.fixes.kick_tape"),
    ("skirt", {"edge.edge": "frayed"}, "edge_frayed@edge", "hems.fixes.bind_edge"),
]


@pytest.mark.parametrize(("garment", "answers", "finding", "fix"), MENDS)
def test_the_mend_closes_and_leaving_out_any_step_is_noticed(
    garment: str, answers: Answers, finding: str, fix: str
) -> None:
    work = worked(answers, finding, fix, garment=garment)
    closes(work)
    assert notices(work) == len(work.option.work.ops)


@pytest.mark.parametrize(
    ("garment", "answers", "finding"), sorted({(g, tuple(sorted(a.items())), f) for g, a, f, _ in MENDS})
)
def test_each_may_be_left_and_is_named_then(garment: str, answers: tuple[tuple[str, str], ...], finding: str) -> None:
    closes(worked(dict(answers), finding, "general.fixes.leave", garment=garment), frozenset({finding}))


def option(garment: str, answers: Answers, fix: str) -> Option:
    return next(o for o in plan_for(answers, garment=garment).advice.options if o.fix == fix)


@pytest.mark.parametrize(
    ("garment", "answers", "why"),
    [
        ("trousers", {"leg.edge": "down", "cloth.iron": "no"}, "hems.vetoes.fuse_hem_no_iron"),
        ("trousers", {"leg.edge": "down", "cloth.surface": "pile"}, "hems.vetoes.fuse_hem_on_pile"),
        ("skirt", {"edge.edge": "down", "cloth.kind": "coated"}, "hems.vetoes.fuse_hem_on_coated"),
    ],
)
def test_web_is_not_fused_where_heat_may_not_go(garment: str, answers: Answers, why: str) -> None:
    assert [ruling.rule for ruling in option(garment, answers, "hems.fixes.fuse_again").rulings] == [why]


def test_no_pin_on_a_child_and_none_but_a_child() -> None:
    pinned = option("trousers", {**LOST, "wearer.age": "child"}, "band.fixes.pin_it")
    assert [ruling.rule for ruling in pinned.rulings] == ["band.vetoes.pin_on_child"]
    assert option("trousers", LOST, "band.fixes.pin_it").open


def test_a_hem_that_is_made_anew_is_not_mended_besides() -> None:
    long = {"leg.fits": "long", "leg.long_by": "2 in"}
    for state in ("down", "frayed"):
        plan = plan_for({**long, "leg.edge": state}, garment="trousers")
        assert {f.id for f in plan.advice.findings if f.place == "leg"} == {"too_long@leg"}, state
        assert plan.remains == ()
    let_down = plan_for({"leg.fits": "short", "leg.short_by": "1 in", "leg.edge": "frayed"}, garment="trousers")
    assert "edge_frayed@leg" in {f.id for f in let_down.advice.findings}, "a worn edge let down stays worn"


PAIRS = [
    ("pockets.fixes.seam_above", "pockets.fixes.half_bag", "durability", "difficulty"),
    ("pockets.fixes.seam_above", "pockets.fixes.patch_bag", "durability", ""),
    ("hems.fixes.fuse_again", "hems.fixes.sew_again_by_hand", "durability", ""),
    ("hems.fixes.sew_again_by_hand", "hems.fixes.sew_again_by_machine", "durability", "visibility"),
    ("lining.fixes.patch_lining", "lining.fixes.renew_lining", "durability", "difficulty"),
    ("band.fixes.pin_it", "band.fixes.sew_button", "durability", ""),
    ("band.fixes.sew_button", "band.fixes.hook_and_bar", "", "difficulty"),
]


@pytest.mark.parametrize(("quick", "lasting", "more", "costs"), PAIRS)
def test_rivals_differ_on_a_named_axis(quick: str, lasting: str, more: str, costs: str) -> None:
    first, second = base().fixes[quick], base().fixes[lasting]
    assert not more or getattr(second, more) > getattr(first, more)
    assert not costs or getattr(second, costs) > getattr(first, costs)


@pytest.mark.parametrize(
    ("garment", "answers", "fix", "told"),
    [
        ("jeans", {"pocket_bag.bag": "worn"}, "pockets.fixes.half_bag", "twice as wide as the bag and 1 in more"),
        ("jeans", {"pocket_bag.bag": "worn"}, "pockets.fixes.half_bag", "4 to 6 in long"),
        ("skirt", {**LINED, "lining.state": "seam"}, "lining.fixes.resew_lining", "1/16 in from the folds"),
        ("skirt", {**LINED, "lining.state": "seam"}, "lining.fixes.resew_lining", "1 in past the opening"),
        ("skirt", {"edge.edge": "frayed"}, "hems.fixes.bind_edge", "1/8 in inside the sound cloth"),
    ],
)
def test_published_figures_are_in_the_instructions(garment: str, answers: Answers, fix: str, told: str) -> None:
    assert told in " ".join(op.says for op in option(garment, answers, fix).work.ops)
    assert base().fixes[fix].source not in ("common-practice", "from-memory")
