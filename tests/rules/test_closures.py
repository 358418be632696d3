"""The front opening: every option closes its finding, every slip is noticed, and the facts of the trade hold.

Facts marked "common practice, no source" come from the workroom; published ones carry the key of their source.
"""

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from mutate import Worked, base, closes, notices, plan_for, worked, world_for

from advisor.advise.advise import advise
from advisor.advise.plan import make_plan
from advisor.core.case import Choice
from advisor.core.figure import taken
from advisor.core.model import Change, Put
from advisor.core.work import Op, Option
from advisor.figures import inches

FIX = "closure.fixes."
RAISE = {"waist_low@bodice": "waist.fixes.raise_seam"}
LOW = {"waist.sits": "low", "waist.low_by": "1 1/2 in", "cloth.spare": "yes"}
SHORT = {"front.closure": "20 1/2 in", "cloth.spare": "yes"}
NONE = {"front.kind": "none", "cloth.spare": "yes"}
HAND = {"bench.buttonholes": "no"}
COVERED = {"front.setting": "covered"}
SNAPS = {"front.kind": "snaps"}
SNAPS_OFF = {"front.kind": "snaps", "snaps.state": "unwanted", "snaps.part": "edge", "cloth.spare": "yes"}

LONG_BY_KIND = (
    ({}, "shorten_zipper_bottom"),
    ({}, "shorten_zipper_top"),
    ({}, "new_zipper"),
    ({}, "buttons"),
    ({}, "buttons_over_fly"),
    ({}, "hidden_placket"),
    ({"front.teeth": "metal"}, "shorten_zipper_top"),
    ({"front.teeth": "metal"}, "new_zipper"),
    ({"front.teeth": "moulded"}, "shorten_zipper_bottom"),
    ({"front.kind": "separating"}, "shorten_zipper_top"),
    ({"front.kind": "separating"}, "new_zipper"),
    ({"front.kind": "separating"}, "hidden_placket"),
    ({"front.opening": "21 1/2 in"}, "new_zipper"),
    ({"front.worn": "worn"}, "new_zipper"),
    (COVERED, "shorten_zipper_bottom_covered"),
    (COVERED, "shorten_zipper_top_covered"),
    (COVERED, "new_zipper_covered"),
    (HAND, "buttons_by_hand"),
    (HAND, "buttons_over_fly_by_hand"),
    (HAND, "hidden_placket_by_hand"),
    ({"front.button_form": "thick", "front.button_thickness": "1/4 in"}, "hidden_placket"),
    ({"front.button_form": "ball", "front.button": "1/2 in"}, "buttons"),
    (SNAPS, "drop_lowest"),
    (SNAPS, "buttons"),
    (SNAPS, "buttons_over_fly"),
    (SNAPS, "hidden_placket"),
    ({"front.kind": "buttoned"}, "drop_lowest"),
)
OTHERS = (
    (SHORT, "closure_short@front", "new_zipper"),
    (SHORT | COVERED, "closure_short@front", "new_zipper_covered"),
    (SHORT, "closure_short@front", "sew_end_shut"),
    (SHORT, "closure_short@front", "hooks_at_top"),
    (SHORT, "closure_short@front", "buttons"),
    (SHORT, "closure_short@front", "buttons_over_fly"),
    (SHORT, "closure_short@front", "hidden_placket"),
    (SHORT | HAND, "closure_short@front", "buttons_by_hand"),
    (SHORT | SNAPS, "closure_short@front", "add_fastening"),
    (NONE, "closure_missing@front", "new_zipper"),
    (NONE, "closure_missing@front", "new_snaps"),
    (NONE, "closure_missing@front", "buttons"),
    (NONE, "closure_missing@front", "buttons_over_fly"),
    (NONE, "closure_missing@front", "hidden_placket"),
    (NONE | HAND, "closure_missing@front", "hidden_placket_by_hand"),
    ({"front.worn": "worn"}, "zipper_worn@front", "new_slider"),
    ({"front.worn": "worn"}, "zipper_worn@front", "new_zipper"),
    ({"front.worn": "broken"} | COVERED, "zipper_worn@front", "new_zipper_covered"),
    ({"front.kind": "buttoned", "front.hole_short_by": "1/8 in"}, "hole_misfits@front", "lengthen_holes"),
    ({"front.kind": "buttoned", "front.hole_long_by": "1/4 in"}, "hole_misfits@front", "shorten_holes"),
    ({"front.edge": "bare"}, "edge_bare@front", "face_edge"),
    ({"front.old_holes": "there"}, "edge_holed@front", "patch_edge"),
)


def shortened(fix: str, tape: str = "in", **answers: str) -> Worked:
    """A front 1 1/2 in too long for its opening because the waist went up, put right with `fix`."""
    told = {key.replace("__", "."): text for key, text in answers.items()}
    return worked(LOW | told, "closure_long@front", FIX + fix, RAISE, tape=tape)


def options(answers: Mapping[str, str], finding: str, also: Mapping[str, str] = RAISE) -> dict[str, Option]:
    """The options for a finding by the name of their fix."""
    choices = {id: Choice(fix) for id, fix in also.items()}
    advice = advise(base(), world_for(answers), choices)
    return {option.fix.removeprefix(FIX): option for option in advice.options_for(finding)}


def op(work: Worked, id: str) -> Op:
    return next(op for op in work.ops if op.id == id)


def figures(work: Worked) -> dict[str, Fraction]:
    """The lengths an option comes to, mm."""
    return {name: f.value for name, f in work.option.work.figures.items() if isinstance(f.value, Fraction)}


# --- every option closes its finding, and every slip in it is noticed


@pytest.mark.parametrize(
    ("answers", "fix"), LONG_BY_KIND, ids=lambda part: str(part) if isinstance(part, str) else None
)
def test_each_way_out_of_a_long_closure(answers: Mapping[str, str], fix: str) -> None:
    work = worked(LOW | answers, "closure_long@front", FIX + fix, RAISE)
    closes(work)
    assert notices(work) >= 2


@pytest.mark.parametrize(("answers", "finding", "fix"), OTHERS)
def test_each_way_out_of_the_other_findings(answers: Mapping[str, str], finding: str, fix: str) -> None:
    work = worked(answers, finding, FIX + fix)
    closes(work)
    assert notices(work) >= 2 or len(work.option.work.ops) == 1


@pytest.mark.parametrize("fix", ["shorten_zipper_bottom", "new_zipper", "buttons", "hidden_placket"])
def test_on_a_metric_tape_too(fix: str) -> None:
    work = shortened(fix, tape="cm")
    closes(work)
    notices(work)


@pytest.mark.parametrize("fix", ["new_snaps", "buttons", "hidden_placket"])
def test_snaps_taken_off_as_other_work_leave_a_front_to_close(fix: str) -> None:
    patched = {
        "metal_unwanted@snaps": "mending.fixes.take_metal_off",
        "holes_open@snaps": "mending.fixes.patch_under",
    }
    work = worked(SNAPS_OFF, "closure_missing@front", FIX + fix, patched)
    closes(work)
    assert notices(work) >= 4
    assert not any(op.id == "take off front.kind" for op in work.ops)


def test_tacks_left_out_can_be_made_later() -> None:
    fresh = world_for({})
    size = Change("front.hole", taken("hole", fresh.model.measures["front.hole_needed"], "front.hole_needed"))
    world = replace(fresh, model=fresh.model.apply((Put("front.kind", "placket"), size)))
    plan = make_plan(base(), world, {"placket_gapes@front": Choice(FIX + "tack_placket")})
    assert plan.remains == () and plan.blocked == ()
    assert [step.op.id for step in plan.steps] == ["tack front.placket"]


@pytest.mark.parametrize("fix", ["buttons", "hidden_placket", "drop_lowest"])
def test_bare_edges_and_old_holes_do_not_stand_in_the_way(fix: str) -> None:
    """They are findings of their own, with work of their own, whatever closes the front."""
    answers = LOW | SNAPS | {"front.edge": "bare", "front.old_holes": "there"}
    also = RAISE | {"edge_bare@front": FIX + "face_edge"}
    closes(worked(answers, "closure_long@front", FIX + fix, also))


@pytest.mark.parametrize("fix", ["new_snaps", "buttons", "hidden_placket"])
def test_snaps_taken_off_and_the_waist_raised(fix: str) -> None:
    also = RAISE | {
        "metal_unwanted@snaps": "mending.fixes.take_metal_off",
        "holes_open@snaps": "mending.fixes.patch_under",
    }
    work = worked(SNAPS_OFF | LOW, "closure_long@front", FIX + fix, also)
    closes(work)
    offered = {o.fix for o in work.plan.advice.options_for("closure_long@front")}
    assert FIX + "drop_lowest" not in offered
    assert work.plan.advice.finding("closure_missing@front") is None


def test_an_opening_raised_away_is_no_traceback() -> None:
    """A raise longer than the opening is nonsense, and says so instead of falling over."""
    answers = LOW | {"waist.low_by": "6 in", "front.opening": "4 in", "cloth.spare": "no"}
    found = options(answers, "closure_long@front")
    assert found and not found["hidden_placket"].open and not found["new_zipper"].open


def test_every_closure_ends_exactly_with_its_opening() -> None:
    for answers, fix in LONG_BY_KIND:
        choices = {"closure_long@front": Choice(FIX + fix), **{k: Choice(v) for k, v in RAISE.items()}}
        model = advise(base(), world_for(LOW | answers), choices).model
        assert model.measures["front.closure"] == model.measures["front.opening"], fix
        assert model.states["front.kind"] != "none", fix


# --- what is offered, and what is refused


def test_a_separating_zipper_is_shortened_from_the_top_only() -> None:
    found = options(LOW | {"front.kind": "separating"}, "closure_long@front")
    assert "shorten_zipper_top" in found and "shorten_zipper_bottom" not in found
    text = op(worked(LOW | {"front.kind": "separating"}, "closure_long@front", FIX + "shorten_zipper_top", RAISE),
              "cut front.zipper")  # fmt: skip
    assert "above the bottom stop" in text.says and not text.reversible


def test_metal_teeth_are_never_stitched_or_cut_over() -> None:
    """Metal is shortened from the top, where teeth are drawn (source IRONF)."""
    found = options(LOW | {"front.teeth": "metal"}, "closure_long@front")
    assert not found["shorten_zipper_bottom"].open and found["shorten_zipper_top"].open
    assert "metal" in found["shorten_zipper_bottom"].rulings[0].words
    stop = op(shortened("shorten_zipper_top", front__teeth="metal"), "stop front.zipper")
    assert "whip" not in stop.says and "Draw the teeth" in stop.says


def test_a_stop_comes_before_the_cut_and_the_slider_is_tried_on_it() -> None:
    for fix in ("shorten_zipper_bottom", "shorten_zipper_top"):
        work = shortened(fix)
        order = [op.id for op in work.ops]
        assert order.index("stop front.zipper") < order.index("cut front.zipper") < order.index("sew front.kind")
        assert "slider" in op(work, "cut front.zipper").check_before


def test_the_zipper_is_out_before_the_waist_is_opened_and_in_after_it_is_sewn() -> None:
    order = [op.id for op in shortened("shorten_zipper_bottom").ops]
    assert order.index("open front.kind") < order.index("open waist.seam")
    assert order.index("sew waist.seam") < order.index("sew front.kind")


def test_a_worn_zipper_is_changed_and_not_kept() -> None:
    for word in ("worn", "broken"):
        found = options(LOW | {"front.worn": word}, "closure_long@front")
        kept = [name for name in found if name.startswith("shorten_zipper")]
        assert kept and not any(found[name].open for name in kept)
        assert found["new_zipper"].open
    found = options({"front.worn": "broken"}, "zipper_worn@front", {})
    assert not found["new_slider"].open and found["new_zipper"].open


def test_a_worn_zipper_shortened_all_the_same_is_named_as_left() -> None:
    plan = plan_for(LOW | {"front.worn": "worn"}, {**RAISE, "closure_long@front": FIX + "shorten_zipper_bottom"})
    assert [finding.id for finding in plan.remains] == ["zipper_worn@front"]
    assert plan.blocked == ()


def test_a_worn_zipper_of_the_wrong_length_is_one_finding_and_not_two() -> None:
    found = {f.id for f in plan_for(LOW | {"front.worn": "worn"}, RAISE).advice.findings}
    assert "closure_long@front" in found and "zipper_worn@front" not in found


def test_what_must_be_hidden_is_closed_with_a_zipper_or_a_hidden_placket() -> None:
    found = options(LOW | {"front.show": "hidden"}, "closure_long@front")
    shut = {name for name, option in found.items() if not option.open}
    assert shut == {"buttons", "buttons_over_fly"}
    assert found["hidden_placket"].open


def test_a_placket_needs_cloth() -> None:
    found = options(LOW | {"cloth.spare": "no"}, "closure_long@front")
    words = found["hidden_placket"].rulings[0].words
    # 2 x (1 1/2 + 1/2) by 20 1/2 + 1/2 + 1 in.
    assert "4 in" in words and "22 in" in words
    assert found["buttons"].open


def test_a_lap_too_narrow_for_the_buttons_is_refused_with_both_numbers() -> None:
    found = options(LOW | {"front.button": "1 in"}, "closure_long@front")
    # Begun 1/2 + 1/8 in from the edge, 1 1/8 in long: it ends 1 3/4 in from the edge.
    assert "1 1/2 in" in found["buttons"].rulings[0].words and "1 3/4 in" in found["buttons"].rulings[0].words
    assert found["hidden_placket"].open
    narrow = options(LOW | {"front.button": "1 in", "front.overlap": "1 7/16 in"}, "closure_long@front")
    assert not narrow["hidden_placket"].open


def test_a_fly_needs_an_opening_that_runs_into_the_trousers() -> None:
    assert "buttons_over_fly" not in options(LOW | {"front.fly": "no"}, "closure_long@front")
    found = options(LOW | {"front.opening": "19 in"}, "closure_long@front")
    # 17 1/2 in less 14 in leaves 3 1/2 in.
    assert "3 1/2 in" in found["buttons_over_fly"].rulings[0].words


def test_without_buttonholes_on_the_machine_they_are_worked_by_hand_and_that_is_harder() -> None:
    machine = options(LOW, "closure_long@front")
    hand = options(LOW | HAND, "closure_long@front")
    for name in ("buttons", "buttons_over_fly", "hidden_placket"):
        assert f"{name}_by_hand" not in machine and name not in hand
        assert hand[f"{name}_by_hand"].grades.difficulty > machine[name].grades.difficulty
        assert hand[f"{name}_by_hand"].minutes.likely > machine[name].minutes.likely


def test_hooks_hold_no_more_than_two_inches() -> None:
    assert options({"front.closure": "20 in"}, "closure_short@front", {})["hooks_at_top"].open
    ruled = options({"front.closure": "19 15/16 in"}, "closure_short@front", {})["hooks_at_top"]
    assert not ruled.open and "2 1/16 in" in ruled.rulings[0].words


def test_an_opening_is_not_sewn_shut_above_the_waist() -> None:
    found = options({"front.opening": "15 in", "front.closure": "13 in"}, "closure_short@front", {})
    assert not found["sew_end_shut"].open


def test_past_the_trade_list_there_is_no_stock_zipper() -> None:
    """The list ends at 30 in (source UKSEW, T06-01)."""
    found = options(LOW | {"front.opening": "34 in"}, "closure_long@front")
    assert not found["new_zipper"].open and "30 in" in found["new_zipper"].rulings[0].words


# --- pairs, each on the axis it is a fact about (common practice, no source)


def test_keeping_a_zipper_is_easier_than_any_button_closure() -> None:
    """Axis: difficulty; on a plain front."""
    found = options(LOW, "closure_long@front")
    kept = max(found[n].grades.difficulty for n in ("shorten_zipper_bottom", "shorten_zipper_top", "new_zipper"))
    assert all(kept < found[n].grades.difficulty for n in ("buttons", "buttons_over_fly", "hidden_placket"))


def test_a_hidden_placket_outlasts_buttons_that_show() -> None:
    """Axis: durability."""
    found = options(LOW, "closure_long@front")
    for name in ("buttons", "buttons_over_fly"):
        assert found["hidden_placket"].grades.durability > found[name].grades.durability


def test_a_hidden_placket_takes_longer_than_buttons_or_a_zipper() -> None:
    """Axis: minutes."""
    found = options(LOW, "closure_long@front")
    for name in ("buttons", "new_zipper", "shorten_zipper_bottom"):
        assert found["hidden_placket"].minutes.likely > found[name].minutes.likely


def test_a_covered_zipper_is_harder_than_a_plain_one() -> None:
    """Axis: difficulty. A fly or a lined front is 4 of 5, a plain front 3."""
    plain, covered = options(LOW, "closure_long@front"), options(LOW | COVERED, "closure_long@front")
    for name in ("shorten_zipper_bottom", "shorten_zipper_top", "new_zipper"):
        assert (plain[name].grades.difficulty, covered[f"{name}_covered"].grades.difficulty) == (3, 4)


# --- the numbers of the trade


def test_overlap_one_and_a_half_makes_a_strip_of_three_before_allowances() -> None:
    """Common practice, no source: twice the overlap; the allowances come on top, 4 in to cut."""
    work = shortened("hidden_placket", front__overlap="1 1/2 in")
    assert figures(work)["strip_width_cut"] == inches(4)
    after = work.plan.advice.model
    assert after.measures["front.strip_width"] == inches(3)
    assert after.measures["front.strip_length"] == after.measures["front.opening"] == inches("20 1/2")


def test_a_buttonhole_is_an_eighth_longer_than_a_flat_button() -> None:
    """Common practice, and published: sources HB-BH, TIE3-72."""
    for width in ("1/2", "3/4", "1"):
        work = worked(
            LOW | {"front.button": f"{width} in", "front.overlap": "2 in"},
            "closure_long@front", FIX + "buttons", RAISE,
        )  # fmt: skip
        assert figures(work)["hole"] == inches(width) + inches("1/8")


def test_a_thick_button_takes_its_thickness_instead() -> None:
    """Published: 1 in wide and 1/4 in thick takes 1 1/4 in (source ABOUT)."""
    work = shortened(
        "hidden_placket", front__button="1 in", front__button_form="thick", front__button_thickness="1/4 in"
    )
    assert figures(work)["hole"] == inches("1 1/4")


def test_a_ball_takes_half_its_round_and_not_the_whole() -> None:
    """Half of pi x 1/2 in is 0.785 in; one page prints 1.696 in (source LSN365), about twice too long."""
    work = shortened("buttons", front__button="1/2 in", front__button_form="ball")
    assert abs(float(figures(work)["hole"] / inches(1)) - 0.785) < 0.001


@pytest.mark.parametrize("width", ["3/8", "1/2", "11/16", "3/4", "7/8"])
@pytest.mark.parametrize("tape", ["in", "cm"])
def test_a_hole_from_the_edge_starts_no_nearer_than_half_a_button(width: str, tape: str) -> None:
    """Common practice, no source; 1/8 in more, up to 1/4, is what is offered."""
    work = shortened("buttons", tape=tape, front__button=f"{width} in")
    start, half = figures(work)["start"], inches(width) / 2
    mark = work.world.tape.mark
    assert half < start <= half + inches("1/4")
    assert start % mark == 0 and figures(work)["floor"] == half


def test_the_new_stop_and_the_cut_of_a_coil_zipper() -> None:
    """Published: 16 in to 13 in is marked at 13 3/16 in, 3/4 in left below (source WZIP); LMD leaves 1 in."""
    work = worked({"front.opening": "13 in", "front.closure": "16 in", "cloth.spare": "yes"},
                  "closure_long@front", FIX + "shorten_zipper_bottom")  # fmt: skip
    found = figures(work)
    assert (found["mark"], found["tail"]) == (inches("13 3/16"), inches("3/4"))
    assert found["cut"] - found["mark"] == found["tail"]
    assert "20 to 25 whip stitches" in op(work, "stop front.zipper").says
    assert "1 in" in op(work, "cut front.zipper").says


def test_top_tape_kept_above_a_new_top_stop() -> None:
    """Published: 1 1/4 in kept, 1/2 in folded (source IRONF)."""
    found = figures(shortened("shorten_zipper_top"))
    assert found["cut"] - found["zipper_length"] == inches("1 1/4")
    assert found["fold"] == inches("1/2")


STOCK = (4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 20, 21, 22, 24, 26, 27, 28, 30)


@pytest.mark.parametrize("opening", ["12 in", "18 1/16 in", "19 in", "22 1/2 in", "25 in", "30 in"])
def test_the_zipper_to_buy_is_the_next_stock_length(opening: str) -> None:
    """The trade's list (source UKSEW, T06-01), the next length not under the opening, then shortened to it."""
    work = worked({"front.kind": "none", "front.opening": opening}, "closure_missing@front", FIX + "new_zipper")
    run = work.world.model.measures["front.opening"]
    wanted = next(length for length in STOCK if inches(length) >= run)
    assert figures(work)["buy"] == inches(wanted)
    assert ("shorten_by" in figures(work)) == (inches(wanted) > run)
    closes(work)
    assert any(f"{wanted} in" in need.amount for need in work.plan.materials)


def test_buttons_sit_at_the_stress_points_first_then_share_the_rest() -> None:
    """Sources HB-BH, MN-M35 (bust and waist); 3 to 3 1/2 in apart (IASRI-BTN); at a fly 2 in (common practice)."""
    work = shortened("buttons")
    spots = [f.value for name, f in work.option.work.figures.items() if name.startswith("button_")]
    assert inches(7) in spots and inches(14) in spots
    gaps = [(upper, lower - upper) for upper, lower in pairwise(spots)]
    assert all(gap <= inches("3 1/2") for _, gap in gaps)
    assert all(gap <= inches(2) for upper, gap in gaps if upper >= inches(14))
    assert spots[-1] == inches("19 1/2") and len(spots) == 8


@pytest.mark.parametrize("tape", ["in", "cm"])
@pytest.mark.parametrize("button", ["3/8", "3/4", "1 1/4", "2"])
@pytest.mark.parametrize(("bust", "waist"), [("7", "14"), ("1", "14"), ("13", "13 1/2"), ("9 5/16", "20"), ("7", "30")])
def test_a_row_adds_up_and_no_two_buttons_touch(tape: str, button: str, bust: str, waist: str) -> None:
    work = shortened(
        "hidden_placket", tape=tape, front__button=f"{button} in", front__overlap="4 in",
        front__top_to_bust=f"{bust} in", front__top_to_waist=f"{waist} in",
    )  # fmt: skip
    spots = [f.value for name, f in work.option.work.figures.items() if name.startswith("button_")]
    marks = op(work, "mark front.row")
    parts = [e.mm for e in marks.effects if isinstance(e, Change) and e.mm > 0]
    assert sum(parts) == inches("20 1/2")
    assert all(isinstance(spot, Fraction) and spot % work.world.tape.mark == 0 for spot in spots)
    assert all(lower - upper > inches(button) for upper, lower in pairwise(spots))


def test_seven_buttons_over_twenty_one_inches_stand_three_and_a_half_apart() -> None:
    """The published rule of even spacing: 21 in and 7 buttons make gaps of 3 1/2 in (source IASRI-BTN)."""
    work = shortened("hidden_placket", front__opening="24 1/8 in", front__top_to_waist="30 in",
                     front__top_to_bust="30 in")  # fmt: skip
    spots = [f.value for name, f in work.option.work.figures.items() if name.startswith("button_")]
    # First 5/8 in down, last 1 in above the end of 22 5/8 in: a run of 21 in.
    assert spots[-1] - spots[0] == inches(21)
    assert [b - a for a, b in pairwise(spots)] == [inches("3 1/2")] * 6


def test_tacks_lie_half_way_between_the_holes() -> None:
    found = figures(shortened("hidden_placket"))
    holes = [value for name, value in found.items() if name.startswith("button_")]
    tacks = [value for name, value in found.items() if name.startswith("tack_")]
    assert len(tacks) == len(holes) - 1
    assert all(t - a == b - t for t, (a, b) in zip(tacks, pairwise(holes), strict=True))


def test_buttons_and_fly_zipper_share_the_opening_at_the_waist() -> None:
    found = figures(shortened("buttons_over_fly"))
    assert found["fly"] == inches("6 1/2") and found["buy"] == inches(7)
    assert max(value for name, value in found.items() if name.startswith("button_")) == inches(14)
