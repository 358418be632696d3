"""Trousers, jeans and skirts: every option closes what it says or names what is left, and every slip is noticed."""

from collections.abc import Mapping

import pytest

from tests.rules.mutate import base, closes, notices, worked
from tests.rules.test_small_mends import MENDS

Answers = Mapping[str, str]


def wide(place: str, pinned: str) -> dict[str, str]:
    """Too wide at a place, by what was pinned."""
    return {f"{place}.fits": "wide", f"{place}.pinned": pinned}


def narrow(place: str, by: str) -> dict[str, str]:
    """Too narrow at a place."""
    return {f"{place}.fits": "narrow", f"{place}.narrow_by": by}


LOW = {"crotch.fits": "low", "crotch.low_by": "1/2 in", "crotch.edge_at_line": "36 1/2 in"}
HIGH = {"crotch.fits": "high", "crotch.high_by": "1/2 in", "cloth.spare": "yes", "legs.inseam_allowance": "7/8 in"}
LITTLE_HIGH = {"crotch.fits": "high", "crotch.high_by": "1/4 in"}
LONG_BACK = {"seat.fits": "long", "seat.pinned": "1 in"}
SHORT_BACK = {"seat.fits": "short", "seat.short_by": "1 1/16 in", "cloth.spare": "yes"}
BOTH_WIDE = {**wide("hip", "1 in"), **wide("waist", "1 1/2 in")}
HIP_NARROW = {**narrow("hip", "1 in"), "hip.allowance": "1 in", "trousers.allowance": "1 in", "cloth.spare": "yes"}
ROOM = {"legs.inseam_allowance": "1 in", "legs.outseam_allowance": "1 in", "cloth.spare": "yes"}
FELLED = {"legs.inseam": "felled"}
HOLE = {"worn.holes": "open", "worn.hole": "3/4 in", "worn.weak": "1/4 in"}
KNEE = {**HOLE, "worn.where": "knee"}
THIN = {"worn.holes": "thin", "worn.weak": "2 in"}
LEATHER = {**HOLE, "cloth.kind": "coated"}
ELASTIC = {"band.kind": "elastic"}

TROUSERS = [
    (LOW, "crotch_low@crotch", "crotch.fixes.lift_at_waist"),
    (LOW, "crotch_low@crotch", "crotch.fixes.take_in_points"),
    (LITTLE_HIGH, "crotch_high@crotch", "crotch.fixes.lower_curve"),
    (HIGH, "crotch_high@crotch", "crotch.fixes.let_out_points"),
    (HIGH, "crotch_high@crotch", "crotch.fixes.gusset"),
    (HIGH, "crotch_high@crotch", "crotch.fixes.rise_band"),
    (HIGH, "crotch_high@crotch", "crotch.fixes.rise_band_of_other_cloth"),
    (LONG_BACK, "seat_long@seat", "seat.fixes.shorten_back"),
    (SHORT_BACK, "seat_short@seat", "seat.fixes.back_wedge"),
    (SHORT_BACK, "seat_short@seat", "seat.fixes.back_wedge_of_other_cloth"),
    (BOTH_WIDE, "hip_wide@hip", "hip.fixes.side_seams"),
    (BOTH_WIDE, "hip_wide@hip", "hip.fixes.center_back"),
    (wide("hip", "1 1/16 in"), "hip_wide@hip", "hip.fixes.side_seams"),
    (wide("hip", "1 in"), "hip_wide@hip", "hip.fixes.center_back"),
    (HIP_NARROW, "hip_narrow@hip", "hip.fixes.let_out_sides"),
    (HIP_NARROW, "hip_narrow@hip", "hip.fixes.let_out_center_back"),
    (HIP_NARROW, "hip_narrow@hip", "hip.fixes.side_strips"),
    ({**HIP_NARROW, **narrow("waist", "1/2 in")}, "hip_narrow@hip", "hip.fixes.side_strips_of_other_cloth"),
    (wide("waist", "2 in"), "too_wide@trousers", "girth.fixes.center_back"),
    (wide("waist", "2 in"), "too_wide@trousers", "girth.fixes.back_darts"),
    (wide("waist", "2 in"), "too_wide@trousers", "girth.fixes.side_seams"),
    (wide("waist", "2 in"), "too_wide@trousers", "girth.fixes.side_tabs"),
    (wide("waist", "2 in"), "too_wide@trousers", "girth.fixes.elastic_back"),
    (wide("waist", "2 in"), "too_wide@trousers", "girth.fixes.suspenders"),
    (wide("waist", "15/16 in"), "too_wide@trousers", "girth.fixes.pinch_band"),
    ({**wide("waist", "2 in"), **ELASTIC}, "too_wide@trousers", "girth.fixes.change_elastic"),
    ({**narrow("waist", "2 in"), **ELASTIC}, "too_narrow@trousers", "girth.fixes.change_elastic"),
    ({**narrow("waist", "1 in"), **ROOM, "trousers.allowance": "1 in"}, "too_narrow@trousers", "girth.fixes.let_out"),
    ({**narrow("waist", "1 in"), **ROOM}, "too_narrow@trousers", "girth.fixes.side_strips"),
    (wide("knee", "2 in"), "leg_wide@knee", "leg.fixes.inseams"),
    (wide("opening", "2 in"), "leg_wide@opening", "leg.fixes.outseams"),
    (wide("opening", "2 1/16 in"), "leg_wide@opening", "leg.fixes.both_seams"),
    ({**wide("thigh", "1 in"), **FELLED}, "leg_wide@thigh", "leg.fixes.inseams_felled"),
    ({**narrow("thigh", "1 in"), **ROOM}, "leg_narrow@thigh", "leg.fixes.let_out_inseams"),
    ({**narrow("thigh", "1 in"), **ROOM}, "leg_narrow@thigh", "leg.fixes.let_out_outseams"),
    ({**narrow("thigh", "2 in"), **ROOM}, "leg_narrow@thigh", "leg.fixes.let_out_both"),
    ({**narrow("knee", "1 in"), **ROOM}, "leg_narrow@knee", "leg.fixes.strips"),
    (narrow("knee", "1 in"), "leg_narrow@knee", "leg.fixes.strips_of_other_cloth"),
    (HOLE, "worn_through@worn", "wear.fixes.darn"),
    (HOLE, "worn_through@worn", "wear.fixes.iron_on"),
    (KNEE, "worn_through@worn", "wear.fixes.patch_under"),
    (KNEE, "worn_through@worn", "wear.fixes.patch_over"),
    (LEATHER, "worn_through@worn", "wear.fixes.glue_patch"),
    ({**THIN, "worn.where": "thigh"}, "worn_thin@worn", "wear.fixes.back_thin"),
    (THIN, "worn_thin@worn", "wear.fixes.fuse_stay"),
    ({"worn.burst": "burst"}, "seam_burst@worn", "wear.fixes.resew"),
    ({"worn.burst": "torn"}, "seam_burst@worn", "wear.fixes.resew_taped"),
    ({"worn.burst": "burst"}, "seam_burst@worn", "wear.fixes.pin_seam"),
]
"""Garment answers, finding, and a fix that closes it with nothing left."""

KEPT = {"leg.fits": "long", "leg.finish": "keep", "leg.long_by": "2 in"}
CUFFED = {"leg.fits": "long", "leg.finish": "turned", "leg.long_by": "1 in", "leg.turn_up": "5 in"}
ZIPPER = {"fly.worn": "broken"}

JEANS = [
    (wide("waist", "2 in"), "too_wide@jeans", "girth.fixes.center_back_felled"),
    (wide("waist", "1 in"), "too_wide@jeans", "girth.fixes.back_darts"),
    (BOTH_WIDE, "hip_wide@hip", "hip.fixes.center_back_felled"),
    (wide("knee", "2 in"), "leg_wide@knee", "leg.fixes.inseams_felled"),
    (wide("opening", "2 in"), "leg_wide@opening", "leg.fixes.outseams"),
    (LOW, "crotch_low@crotch", "crotch.fixes.lift_at_waist"),
    (HIGH, "crotch_high@crotch", "crotch.fixes.gusset"),
    (KEPT, "too_long@leg", "hems.fixes.edge_set_again"),
    (KEPT, "too_long@leg", "hems.fixes.tuck_above_edge"),
    (ZIPPER, "zipper_worn@fly", "closure.fixes.new_zipper_covered"),
    (KNEE, "worn_through@worn", "wear.fixes.patch_over"),
    (CUFFED, "too_long@leg", "hems.fixes.turned_cuff"),
]
LONG = {"edge.fits": "long", "edge.long_by": "2 in"}
SHORT = {"edge.fits": "short", "edge.short_by": "1 in"}
FLARED = {**LONG, "edge.round": "60 in", "edge.round_above": "59 in"}
LINED = {**LONG, "lining.there": "there"}
LINED_OFTEN = {"lining.there": "there", "lining.above": "0 in"}
VENTED = {**LONG, "vent.kind": "vent", "vent.length": "7 in"}
HOBBLED = {"vent.walks": "no", "vent.step": "7 1/16 in", "cloth.spare": "yes"}
SEAMED = {"skirt.center_seam": "plain"}

SKIRT = [
    (wide("waist", "2 in"), "too_wide@skirt", "girth.fixes.side_seams"),
    (wide("waist", "2 in"), "too_wide@skirt", "girth.fixes.back_darts"),
    ({**wide("waist", "2 in"), "band.kind": "faced"}, "too_wide@skirt", "girth.fixes.side_seams"),
    ({**wide("waist", "2 in"), **ELASTIC}, "too_wide@skirt", "girth.fixes.change_elastic"),
    (BOTH_WIDE, "hip_wide@hip", "hip.fixes.side_seams"),
    ({**BOTH_WIDE, **SEAMED}, "hip_wide@hip", "hip.fixes.center_back"),
    ({**narrow("hip", "1 in"), "hip.allowance": "1 in"}, "hip_narrow@hip", "hip.fixes.let_out_sides"),
    (LONG, "too_long@edge", "hems.fixes.deep_hem"),
    (FLARED, "too_long@edge", "hems.fixes.flared_hem"),
    (LONG, "too_long@edge", "hems.fixes.narrow_hem"),
    (LONG, "too_long@edge", "hems.fixes.face_hem"),
    (LONG, "too_long@edge", "hems.fixes.tuck_above_edge"),
    (SHORT, "too_short@edge", "hems.fixes.let_down"),
    (SHORT, "too_short@edge", "hems.fixes.face_hem"),
    (SHORT, "too_short@edge", "hems.fixes.add_band"),
    ({"edge.level": "drops"}, "hem_uneven@edge", "hems.fixes.level_edge"),
    (LINED, "lining_long@lining", "lining.fixes.tuck"),
    (LINED, "lining_long@lining", "lining.fixes.hem_again"),
    (LINED_OFTEN, "lining_long@lining", "lining.fixes.hem_again"),
    (VENTED, "vent_short@vent", "vent.fixes.lengthen"),
    (HOBBLED, "stride_short@vent", "vent.fixes.slits"),
    (HOBBLED, "stride_short@vent", "vent.fixes.godets"),
    (HOBBLED, "stride_short@vent", "vent.fixes.godets_of_other_cloth"),
    ({"zipper.worn": "broken"}, "zipper_worn@zipper", "closure.fixes.new_zipper"),
]
CLOSING = [
    *(("trousers", *case) for case in TROUSERS),
    *(("jeans", *case) for case in JEANS),
    *(("skirt", *case) for case in SKIRT),
]


def named(case: tuple[str, Answers, str, str]) -> str:
    return f"{case[0]} {case[3]} {' '.join(case[1].values())}"


@pytest.mark.parametrize("case", CLOSING, ids=named)
def test_the_option_closes_its_finding_and_every_slip_is_noticed(case: tuple[str, Answers, str, str]) -> None:
    garment, answers, finding, fix = case
    work = worked(answers, finding, fix, garment=garment)
    closes(work)
    assert notices(work) > 0


def test_every_fix_of_these_topics_is_tried() -> None:
    topics = ("hip", "crotch", "seat", "leg", "wear", "lining", "vent")
    wanted = {id for id in base().fixes if id.split(".")[0] in topics}
    # Making a mend again answers a slip and not a garment: no answer of hers makes the finding.
    tried = {fix for *_, fix in CLOSING} | {fix for *_, fix in MENDS}
    assert wanted - tried == {"wear.fixes.do_over"}
