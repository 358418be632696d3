"""Shirts and blouses: every option closes what it says or names what is left, and every slip is noticed."""

from collections.abc import Mapping

import pytest

from advisor.core.work import Option
from tests.rules.mutate import Worked, closes, notices, plan_for, worked

Answers = Mapping[str, str]

WIDE = {"body.fits": "wide", "body.pinned": "2 in"}
FELLED = {**WIDE, "body.side_seam": "felled"}
BACK = {**WIDE, "body.loose_at": "back"}
WAIST = {**WIDE, "body.loose_at": "waist"}
NARROW = {"body.fits": "narrow", "body.narrow_by": "1 in", "body.allowance": "3/4 in", "cloth.spare": "yes"}
HIP = {**NARROW, "body.tight_at": "hip"}
BROAD = {"shoulder.fits": "wide", "shoulder.wide_by": "1/2 in", "sleeve.fits": "long", "sleeve.long_by": "1/2 in"}
SCANT = {"shoulder.fits": "narrow", "shoulder.narrow_by": "1/8 in", "sleeve.fits": "short", "sleeve.short_by": "1/8 in"}
WORN = {"collar.worn": "fold", "cloth.spare": "yes"}
TIGHT = {"collar.fits": "tight", "collar.tight_by": "3/8 in"}
LOOSE = {"collar.fits": "loose", "collar.loose_by": "3/8 in"}
FRAYED = {"cuff.worn": "edge", "cloth.spare": "yes"}
A_LITTLE_LONG = {**FRAYED, "sleeve.fits": "long", "sleeve.long_by": "1/4 in"}
LONG = {"sleeve.fits": "long", "sleeve.long_by": "1 in", "cuff.grip": "slips"}
SHORT = {"sleeve.fits": "short", "sleeve.short_by": "1 in"}
SLIT = {"cuff.placket": "2 1/2 in"}
LOST = {"stand.missing": "one"}
TORN_OFF = {"stand.missing": "torn"}
NO_SPARE = {**TORN_OFF, "stand.spare": "no"}
HOLE = {"stand.hole": "frayed"}
TORN_HOLE = {"stand.hole": "torn"}
GAPES = {"stand.gape": "1/2 in"}
LOW_TAIL = {"tail.fits": "long", "tail.long_by": "2 in"}
STRAIGHT = {**LOW_TAIL, "tail.shape": "straight"}
HIGH_TAIL = {"tail.fits": "short", "tail.short_by": "1 in", "tail.turn_up": "1 1/2 in"}
CROOKED = {"tail.fits": "uneven", "tail.uneven_by": "3/4 in"}
SWEAT = {"stain.kind": "body"}
GREASE = {"stain.kind": "grease"}
OLD = {"stain.kind": "old", "stain.white": "yes", "stain.trial": "passed"}

CLOSING = [
    (WIDE, "body_wide@body", "body.fixes.take_in_sides"),
    (FELLED, "body_wide@body", "body.fixes.take_in_sides_felled"),
    (WAIST, "body_wide@body", "body.fixes.take_in_sides"),
    (WAIST, "body_wide@body", "body.fixes.back_darts"),
    ({**WAIST, "body.dart_room": "6 in"}, "body_wide@body", "body.fixes.back_darts"),
    (BACK, "body_wide@body", "body.fixes.back_pleat"),
    (WAIST, "body_wide@body", "body.fixes.back_tab"),
    ({**WIDE, "body.pinned": "1/16 in"}, "body_wide@body", "body.fixes.take_in_sides"),
    (NARROW, "body_narrow@body", "body.fixes.let_out_sides"),
    (NARROW, "body_narrow@body", "body.fixes.side_strips"),
    (NARROW, "body_narrow@body", "body.fixes.side_strips_other"),
    (HIP, "body_narrow@body", "body.fixes.hip_gussets"),
    (BROAD, "shoulder_wide@shoulder", "shoulder.fixes.move_armhole"),
    (BROAD, "shoulder_wide@shoulder", "shoulder.fixes.tuck"),
    ({"shoulder.fits": "wide", "shoulder.wide_by": "1/2 in"}, "shoulder_wide@shoulder", "shoulder.fixes.pad"),
    (SCANT, "shoulder_narrow@shoulder", "shoulder.fixes.let_out"),
    (WORN, "collar_worn@collar", "collar.fixes.turn"),
    (WORN, "collar_worn@collar", "collar.fixes.quilt_fold"),
    (WORN, "collar_worn@collar", "collar.fixes.new_leaf"),
    (WORN, "collar_worn@collar", "collar.fixes.contrast_leaf"),
    (WORN, "collar_worn@collar", "collar.fixes.leave_off"),
    (TIGHT, "collar_tight@collar", "collar.fixes.move_button"),
    (TIGHT, "collar_tight@collar", "collar.fixes.extender"),
    (LOOSE, "collar_loose@collar", "collar.fixes.move_button"),
    (LOOSE, "collar_loose@collar", "collar.fixes.tuck_stand"),
    (FRAYED, "cuff_worn@cuff", "cuff.fixes.turn"),
    (FRAYED, "cuff_worn@cuff", "cuff.fixes.bind"),
    (A_LITTLE_LONG, "cuff_worn@cuff", "cuff.fixes.face"),
    (FRAYED, "cuff_worn@cuff", "cuff.fixes.new_cuffs"),
    (FRAYED, "cuff_worn@cuff", "cuff.fixes.contrast_cuffs"),
    (LONG, "too_long@sleeve", "cuff.fixes.tuck_sleeves"),
    (LONG, "too_long@sleeve", "cuff.fixes.tighten_cuffs"),
    (LONG, "too_long@sleeve", "hems.fixes.cuff_again"),
    (SHORT, "too_short@sleeve", "cuff.fixes.deeper_cuffs"),
    (SHORT, "too_short@sleeve", "hems.fixes.insert_band"),
    (SLIT, "slit_short@cuff", "cuff.fixes.lengthen_slit"),
    (LOST, "button_missing@stand", "stand.fixes.sew_button"),
    (LOST, "button_missing@stand", "stand.fixes.from_below"),
    (LOST, "button_missing@stand", "stand.fixes.new_set"),
    (TORN_OFF, "button_missing@stand", "stand.fixes.back_and_sew"),
    (NO_SPARE, "button_missing@stand", "stand.fixes.back_and_sew"),
    (HOLE, "buttonhole_worn@stand", "stand.fixes.rework_hole"),
    (HOLE, "buttonhole_worn@stand", "stand.fixes.button_on_top"),
    (TORN_HOLE, "buttonhole_worn@stand", "stand.fixes.patch_hole"),
    (GAPES, "front_gapes@stand", "stand.fixes.hidden_snap"),
    (GAPES, "front_gapes@stand", "stand.fixes.hidden_button"),
    (GAPES, "front_gapes@stand", "stand.fixes.respace"),
    (GAPES, "front_gapes@stand", "stand.fixes.sew_shut"),
    (LOW_TAIL, "tail_long@tail", "tail.fixes.narrow_hem"),
    (STRAIGHT, "tail_long@tail", "tail.fixes.wide_hem"),
    (HIGH_TAIL, "tail_short@tail", "tail.fixes.let_down"),
    (HIGH_TAIL, "tail_short@tail", "tail.fixes.add_band"),
    (CROOKED, "tail_uneven@tail", "tail.fixes.level"),
    (SWEAT, "stained@stain", "stain.fixes.soak_cold"),
    (GREASE, "stained@stain", "stain.fixes.soap_grease"),
    (OLD, "stained@stain", "stain.fixes.bleach"),
    (OLD, "stained@stain", "stain.fixes.cover"),
    ({"worn.burst": "burst"}, "seam_burst@worn", "wear.fixes.resew"),
    ({"worn.holes": "open", "worn.hole": "1/2 in"}, "worn_through@worn", "wear.fixes.patch_under"),
]
"""Answers, finding, and a fix that closes it with nothing left."""


def named(case: tuple[Answers, str, str]) -> str:
    return f"{case[2]} {' '.join(case[0].values())}"


def on_shirt(answers: Answers, finding: str, fix: str, tape: str = "in", **also: str) -> Worked:
    """The shirt with that fix chosen, and others by finding and fix where the names of both allow it."""
    return worked(answers, finding, fix, also, garment="shirt", tape=tape)


@pytest.mark.parametrize("case", CLOSING, ids=named)
def test_the_option_closes_its_finding_and_every_slip_is_noticed(case: tuple[Answers, str, str]) -> None:
    work = on_shirt(*case)
    closes(work)
    assert notices(work) > 0


LEFT = [
    (WIDE, "body_wide@body"),
    (NARROW, "body_narrow@body"),
    ({"shoulder.fits": "wide", "shoulder.wide_by": "3/4 in"}, "shoulder_wide@shoulder"),
    ({"shoulder.fits": "narrow", "shoulder.narrow_by": "1/4 in"}, "shoulder_narrow@shoulder"),
    (WORN, "collar_worn@collar"),
    (TIGHT, "collar_tight@collar"),
    (LOOSE, "collar_loose@collar"),
    (FRAYED, "cuff_worn@cuff"),
    (LONG, "too_long@sleeve"),
    (SHORT, "too_short@sleeve"),
    (SLIT, "slit_short@cuff"),
    (LOST, "button_missing@stand"),
    (HOLE, "buttonhole_worn@stand"),
    (GAPES, "front_gapes@stand"),
    (LOW_TAIL, "tail_long@tail"),
    (HIGH_TAIL, "tail_short@tail"),
    (CROOKED, "tail_uneven@tail"),
    (OLD, "stained@stain"),
]


@pytest.mark.parametrize(("answers", "finding"), LEFT, ids=[finding for _, finding in LEFT])
def test_it_may_always_be_left_and_then_is_named(answers: Answers, finding: str) -> None:
    closes(on_shirt(answers, finding, "general.fixes.leave"), frozenset({finding}))


@pytest.mark.parametrize(("answers", "finding"), LEFT, ids=[finding for _, finding in LEFT])
def test_a_ladder_from_quick_to_lasting_in_plain_words(answers: Answers, finding: str) -> None:
    options = offered(answers, finding)
    closing = [option for option in options.values() if option.closes]
    assert closing and "general.fixes.leave" in options
    for found in options.values():
        words = [found.title, found.reason, found.why, found.wrong_when, *found.cautions]
        words += [r.words for r in found.rulings] + [op.says for op in found.work.ops]
        assert not [text for text in words if "_" in text.replace("{", "\0").split("\0")[0]]


def offered(answers: Answers, finding: str) -> dict[str, Option]:
    """The options for a finding, by fix."""
    return {o.fix: o for o in plan_for(answers, garment="shirt").advice.options_for(finding)}


@pytest.mark.parametrize("fix", ["body.fixes.take_in_sides", "body.fixes.back_pleat"])
def test_closes_on_a_metric_tape_too(fix: str) -> None:
    # 2 1/16 in is off the marks of a tape in millimeters, and the parts still add up.
    work = on_shirt({**WIDE, "body.pinned": "2 1/16 in"}, "body_wide@body", fix, tape="cm")
    closes(work)
    assert notices(work) > 0


PAIRS = [
    # (answers, finding, quicker or easier, longer lasting or less seen, the axis on which the second wins)
    (WAIST, "body_wide@body", "body.fixes.back_tab", "body.fixes.back_darts", "durability"),
    (BROAD, "shoulder_wide@shoulder", "shoulder.fixes.tuck", "shoulder.fixes.move_armhole", "visibility"),
    (WORN, "collar_worn@collar", "collar.fixes.quilt_fold", "collar.fixes.new_leaf", "durability"),
    (WORN, "collar_worn@collar", "collar.fixes.quilt_fold", "collar.fixes.turn", "visibility"),
    (FRAYED, "cuff_worn@cuff", "cuff.fixes.bind", "cuff.fixes.turn", "visibility"),
    (LONG, "too_long@sleeve", "cuff.fixes.tuck_sleeves", "hems.fixes.cuff_again", "durability"),
    (GAPES, "front_gapes@stand", "stand.fixes.hidden_snap", "stand.fixes.hidden_button", "durability"),
    (TIGHT, "collar_tight@collar", "collar.fixes.extender", "collar.fixes.move_button", "durability"),
]


@pytest.mark.parametrize("pair", PAIRS, ids=lambda pair: f"{pair[2]} {pair[3]}")
def test_two_rivals_differ_on_a_named_axis(pair: tuple[Answers, str, str, str, str]) -> None:
    answers, finding, quick, better, axis = pair
    options = offered(answers, finding)
    one, other = options[quick].grades, options[better].grades
    assert one.difficulty <= other.difficulty
    if axis == "durability":
        assert other.durability > one.durability
    else:
        assert other.visibility < one.visibility
