"""The facts a workroom starts from. Inches; common practice, no source, unless a line says otherwise."""

from itertools import pairwise

import pytest
from shapely import LineString, Point, affinity

from advisor.figures import (
    FigureError,
    Row,
    buttons,
    darts,
    elastic,
    gathers,
    hems,
    inches,
    letout,
    plackets,
    seams,
    trunk,
    waist,
    zippers,
)


def test_two_inches_at_center_back_go_into_two_darts_of_one() -> None:
    """The pockets are too near for the seam; exactly 1 in is still allowed in each dart."""
    total = inches(2)
    each = darts.most_each(inches("4"), "other")
    count = darts.needed_in_pairs(total, each)
    assert (each, count) == (inches(1), 2)
    assert darts.intake_each(total, count) == inches(1)
    assert darts.fold_to_stitch(inches(1)) == inches("1/2")
    assert seams.each_side(total) == inches(1)


def test_the_pockets_lose_what_the_seam_takes_at_their_level() -> None:
    """2 in running out over 8 in takes 1 in, not 2, from pockets 4 in down (similar triangles)."""
    left = seams.pocket_gap_left(inches(2), inches(2), inches(4), inches(8))
    assert left == inches(1)
    assert seams.pocket_edge_to_seam(left) < seams.POCKET_EDGE_LEAST


def test_a_short_dart_bears_less() -> None:
    """2 1/2 in of length bears 5/8 in; 1 in needs 4 in (from memory: 1:4)."""
    assert darts.most_each(inches("2 1/2"), "other") == inches("5/8")
    assert darts.length_needed(inches(1), "other") == inches(4)
    assert darts.needed(inches(2), inches("5/8")) == 4


def test_a_pinch_is_double_cloth() -> None:
    assert seams.pinch_to_loss(inches("1/2"), 1) == inches(1)
    assert seams.pinch_to_loss(inches("1/2"), 2) == inches(2)


def test_seam_allowance_lies_past_the_mark() -> None:
    assert inches("1/2") == trunk.DOMESTIC_ALLOWANCE
    assert trunk.cut_line(inches(15), trunk.DOMESTIC_ALLOWANCE) == inches("15 1/2")


def test_a_raised_waist_takes_twice_from_the_trunk() -> None:
    assert trunk.loop_loss(inches("1 1/2")) == inches(3)
    assert trunk.opening_left(inches(20), inches("1 1/2")) == inches("18 1/2")
    assert trunk.ease_left(inches(66), inches("1 1/2"), inches(61)) < trunk.TRUNK_EASE.end("work", "least")


def test_band_and_garment_close() -> None:
    loss = waist.garment_loss(inches(34), inches(31), inches(1))
    assert waist.to_ease_in(inches(34) - loss, inches(31)) == inches(1)
    assert waist.band_after(inches(34), inches(2)) == inches(32)


def test_placket_strip_is_twice_the_overlap_before_allowances() -> None:
    """1 1/2 in of overlap: 3 in finished, 4 in cut; cut at 3 it would overlap by 1 only."""
    assert plackets.strip_finished(inches("1 1/2")) == inches(3)
    assert plackets.strip_cut(inches("1 1/2"), inches("1/2")) == inches(4)
    assert plackets.overlap_if_cut(inches(3), inches("1/2")) == inches(1)


def test_buttonhole_is_button_and_an_eighth() -> None:
    """Source HB-BH; the rule by thickness agrees with it at 1/8 in of thickness and nowhere else."""
    assert buttons.hole_flat_thin(inches("3/4")) == inches("7/8")
    for thickness in ("1/16", "1/8", "3/16"):
        same = buttons.hole_thick(inches("3/4"), inches(thickness)) == buttons.hole_flat_thin(inches("3/4"))
        assert same == (thickness == "1/8")


def test_a_hole_from_the_edge_starts_half_a_button_in() -> None:
    """Pulled against the end of the hole, the button's rim is at the edge and not past it."""
    for size in ("3/8", "1/2", "3/4", "1 1/8"):
        start = buttons.start_floor(inches(size))
        assert start == inches(size) / 2
        rim = Point(float(start), 0).buffer(float(inches(size)) / 2, quad_segs=64)
        assert rim.bounds[0] == pytest.approx(0, abs=1e-9)
        assert start < buttons.start_offered(inches(size)) < buttons.start_offered_most(inches(size))


def test_the_two_edge_rules_agree_at_one_inch_only() -> None:
    """Sources HB-BH (3/4 of the button) and ASDP (half and 1/4 in)."""
    for size in ("1/2", "1", "1 1/2"):
        same = buttons.edge_three_quarters(inches(size)) == buttons.edge_half_and_quarter(inches(size))
        assert same == (size == "1")


def test_sleeve_and_leg_hems() -> None:
    assert hems.double_fold(hems.SLEEVE_FOLD) == inches(1)
    assert hems.two_turns(*hems.LEG_HEM) == inches(2)
    assert hems.cut_off(inches(3), hems.double_fold(hems.SLEEVE_FOLD)) == inches(2)


def test_a_flap_clears_the_mouth() -> None:
    """Laid 3/8 above the mouth, sewn at 1/8, turned down, topstitched at 1/4: the mouth stays open."""
    placed, sewn, second = plackets.FLAP_PLACED, plackets.FLAP_SEWN, plackets.FLAP_TOPSTITCHED
    assert (placed, sewn, second) == (inches("3/8"), inches("1/8"), inches("1/4"))
    assert plackets.flap_fold_above(placed, sewn) == inches("1/2")
    assert plackets.flap_clears_mouth(placed, sewn, second) == inches("1/4")
    assert plackets.flap_edge_covered(sewn, second) == inches("1/8")
    fold = float(placed + sewn)
    flap = affinity.scale(LineString([(0, float(placed)), (0, 90)]), 1, -1, origin=(0, fold))
    assert flap.contains(Point(0, fold - float(second))) and fold - float(second) > 0
    with pytest.raises(FigureError, match="close the pocket mouth"):
        plackets.flap_clears_mouth(inches("1/8"), inches("1/8"), inches("1/4"))


def test_gathers_are_judged_in_their_zone() -> None:
    """11 into 9 is 1.22 over the quarter and looks like a mistake; over a zone of 4 in it is 1.5."""
    quarter = gathers.ratio(inches(11), inches(9))
    zone = gathers.zone_fullness(gathers.excess(inches(11), inches(9)), inches(4))
    assert gathers.called(quarter, "cotton", gathers.FULLNESS.end("heavy", "most")) == "neither"
    assert gathers.called(zone, "cotton", gathers.FULLNESS.end("heavy", "most")) == "gathers"


@pytest.mark.parametrize(
    ("percent", "cloth", "usual", "word"),
    [
        (100, "coated", 2, "plain"),
        (101, "coated", 2, "ease"),
        (102, "coated", 2, "neither"),
        (105, "cotton", 2, "ease"),
        (106, "cotton", 2, "neither"),
        (110, "soft wool", 2, "ease"),
        (129, "soft wool", 2, "neither"),
        (130, "soft wool", 2, "gathers"),
        (200, "close", 2, "gathers"),
        (201, "close", 2, "too full"),
    ],
)
def test_what_a_fullness_is_called(percent: int, cloth: str, usual: int, word: str) -> None:
    """Take-up by cloth from memory; gathers from 1.3, common practice."""
    fullness = inches(percent) / inches(100)
    assert gathers.called(fullness, cloth, usual) == word


def test_allowances_let_out_on_both_sides() -> None:
    """Source SCL for the 3/8 in kept at a trouser back."""
    keep = letout.KEEP.end("trouser center back", "least")
    assert letout.holds(inches("1 1/2"), keep, 1) == inches("2 1/4")
    assert letout.holds(inches("3/8"), keep, 1) == 0
    assert letout.left_over(inches("1 1/2"), inches("2 1/4"), 1) == keep


def test_elastic_still_passes_the_hip() -> None:
    assert elastic.pass_margin(elastic.stretched(inches(42), inches(26), inches(3) / inches(2)), inches(38)) == 0
    assert elastic.CUT_SHARE[0] * 100 == 85 and elastic.CUT_SHARE[1] * 100 == 90


def test_left_and_right_within_a_quarter_are_averaged() -> None:
    assert trunk.level(inches("1 1/4"), inches("1 1/2")) == inches("1 3/8")
    with pytest.raises(FigureError, match="more than 1/4 in"):
        trunk.level(inches("1 1/4"), inches("1 9/16"))


def test_zipper_stock_on_either_side_of_an_opening() -> None:
    """Source UKSEW: no 19 in zipper is sold."""
    assert zippers.stock_shorter(inches("18 1/2")) == inches(18)
    assert zippers.stock_longer(inches("18 1/2")) == inches(20)
    with pytest.raises(FigureError, match="shorter than the opening"):
        zippers.shorten_by(inches(18), inches(20))


def test_buttons_stand_at_every_stress_point() -> None:
    first, last, bust, waistline = inches("1/2"), inches(24), inches("7 1/4"), inches("14 1/8")
    row = buttons.places(first, last, (waistline, bust), inches("3 1/2"))
    assert {first, last, bust, waistline} <= set(row)
    gaps = [lower - upper for upper, lower in pairwise(row)]
    assert max(gaps) <= inches("3 1/2") and sum(gaps) == last - first
    assert len(row) == 1 + sum(
        buttons.gaps_in(b - a, inches("3 1/2")) for a, b in [(first, bust), (bust, waistline), (waistline, last)]
    )


def test_disagreeing_sources_stand_side_by_side() -> None:
    """Sources OSU-L87, SINGER-HEM and ASG-HEM on a flared skirt."""
    found = [row.source for row in hems.USUAL_DEPTH.all_of("flared skirt")]
    assert found == ["OSU-L87", "SINGER-HEM", "ASG-HEM"]
    assert hems.USUAL_DEPTH.row("shirt") == Row(inches("3/8"), inches("5/8"), "ASG-HEM")
