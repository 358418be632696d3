"""The formula object: callable, registered once, keeping its record; exact roots; tables."""

from fractions import Fraction
from math import isqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from advisor.errors import AdvisorError, KnowledgeError
from advisor.figures import (
    FORMULAS,
    Figure,
    FigureError,
    Row,
    Table,
    buttons,
    darts,
    figure,
    figures,
    formula,
    gathers,
    hems,
    inches,
    seams,
    trunk,
)
from advisor.figures.exact import INCH, PI, root, rounded
from advisor.figures.formula import Count, Mm, Word


def test_a_formula_is_called_like_the_function() -> None:
    assert seams.loss_at(inches(2), inches(4), inches(8)) == inches(1)
    assert seams.loss_at(total=inches(2), depth=inches(4), length=inches(8)) == inches(1)
    assert FORMULAS["seams.loss_at"] is seams.loss_at
    assert seams.loss_at.units == {"total": "mm", "depth": "mm", "length": "mm"}


def test_whole_numbers_stay_exact() -> None:
    third = seams.each(10, 3)
    assert third == Fraction(10, 3) and type(third) is Fraction


@pytest.mark.parametrize("wrong", [2.0, "2", True, None])
def test_what_is_not_exact_is_refused(wrong: object) -> None:
    with pytest.raises(FigureError, match="total is not an exact fraction"):
        seams.each_side(wrong)  # type: ignore[arg-type]


def test_a_figure_keeps_its_descent() -> None:
    pinned = Figure("waist.excess", inches(2), "as pinned", (), "case")
    found = figure(seams.loss_at, "gap.loss", total=pinned, depth=inches(4), length=inches(8))
    assert found.value == inches(1)
    assert (found.id, found.formula, found.unit) == ("gap.loss", "seams.loss_at", "mm")
    assert found.inputs == ("waist.excess", "depth", "length")
    assert dict(found.given) == {"total": inches(2), "depth": inches(4), "length": inches(8)}
    assert found.source == "common-practice"


def test_several_answers_are_numbered() -> None:
    found = figures(seams.in_order, "share", total=inches(3), caps=(inches(2), inches(2)))
    assert [(one.id, one.value) for one in found] == [("share.1", inches(2)), ("share.2", inches(1))]
    with pytest.raises(FigureError, match="several answers"):
        figure(seams.in_order, "share", total=inches(3), caps=(inches(2), inches(2)))


def test_a_list_of_figures_is_recorded_by_their_ids() -> None:
    caps = tuple(Figure(f"cap.{side}", inches(2), "as measured", (), "case") for side in ("left", "right"))
    found = figures(seams.evenly, "share", total=inches(3), caps=caps)
    assert found[0].inputs == ("total", "cap.left", "cap.right")
    assert sum(one.value for one in found) == inches(3)


def test_a_figure_of_another_unit_is_refused() -> None:
    fullness = figure(gathers.ratio, "quarter.ratio", long=inches(11), short=inches(9))
    with pytest.raises(FigureError, match=r"wants mm, the figure .* is ratio"):
        figure(seams.each_side, "side", total=fullness)


def test_names_are_checked_with_the_nearest_known() -> None:
    with pytest.raises(FigureError, match="did you mean 'depth'"):
        figure(seams.loss_at, "x", total=inches(1), depht=inches(1), length=inches(8))
    with pytest.raises(FigureError, match="length is missing"):
        seams.loss_at.record(total=inches(1), depth=inches(1))


def test_a_record_tells_the_formula_with_its_values() -> None:
    record = seams.loss_at.record(total=inches(2), depth=inches(4), length=inches(8))
    told = record.told(lambda value, unit: f"{value / INCH} in")
    assert told == "2 in x the larger of (0, 1 - 4 in / 8 in) = 1 in"
    rows = gathers.rows_at.record(allowance=inches("1/2"), rows=2)
    assert rows.told() == "127/10 mm, then 1/4 in nearer the raw edge, 2 rows in all = (127/10 mm, 127/20 mm)"


def test_ids_words_and_units_are_checked_when_a_formula_is_made() -> None:
    known = len(FORMULAS)
    with pytest.raises(KnowledgeError, match="two formulas"):

        @formula("seams.loss_at", words="{total}", source="common-practice", gives="mm")
        def again(total: Mm) -> Mm:
            return total

    with pytest.raises(KnowledgeError, match="differ: depth, total"):

        @formula("test.words", words="{depth}", source="common-practice", gives="mm")
        def wordless(total: Mm) -> Mm:
            return total

    with pytest.raises(KnowledgeError, match="says it gives count, returns mm"):

        @formula("test.unit", words="{total}", source="common-practice", gives="count")
        def unlike(total: Mm) -> Mm:
            return total

    with pytest.raises(KnowledgeError, match="no unit in the annotation"):

        @formula("test.bare", words="{total}", source="common-practice", gives="mm")
        def bare(total: Fraction) -> Fraction:
            return total

    assert len(FORMULAS) == known


def test_the_family_of_refusals() -> None:
    assert issubclass(FigureError, AdvisorError) and issubclass(FigureError, ValueError)
    with pytest.raises(FigureError) as refused:
        darts.most_for_length(inches(4), "wol")
    assert str(refused.value) == (
        "darts.most_for_length: no kind of cloth for darts called 'wol'\n  did you mean 'wool'?"
    )


def test_table_rows_and_their_figures() -> None:
    found = trunk.TRUNK_EASE.figure("trunk.wanted", "work", "least")
    assert (found.value, found.source, found.formula) == (inches(3), "from-memory", "table trunk ease")
    with pytest.raises(FigureError, match="the source sets no least"):
        hems.USUAL_DEPTH.end("circle skirt", "least")
    with pytest.raises(FigureError, match="did you mean 'circle skirt'"):
        hems.USUAL_DEPTH.row("circle skrt")
    with pytest.raises(KnowledgeError, match="two tables"):
        Table("hem depth", "again", "mm", {"x": (Row(None, Fraction(1), "common-practice"),)})


@settings(max_examples=60, deadline=None)
@given(st.fractions(min_value=0, max_value=10**8, max_denominator=10**6))
def test_a_root_is_the_nearest_thousandth(square: Fraction) -> None:
    """Held by squaring the midpoints on either side, in whole numbers."""
    found = root(square)
    half = Fraction(1, 2000)
    assert (found + half) ** 2 >= square
    assert found == 0 or (found - half) ** 2 <= square
    assert rounded(found) == found


def test_pi_is_bracketed_by_polygons() -> None:
    """Archimedes: 96 sides give 3 10/71 to 3 1/7; and 355/113 is right to six decimals."""
    assert Fraction(223, 71) < PI < Fraction(22, 7)
    assert abs(PI - Fraction(355, 113)) < Fraction(3, 10**7)
    assert isqrt(int(PI**2 * 10**20)) == int(PI * 10**10)


@settings(max_examples=40, deadline=None)
@given(st.fractions(min_value=0, max_value=500), st.integers(1, 12), st.fractions(min_value=1, max_value=200))
def test_parts_add_up_to_the_whole(total: Fraction, count: int, cap: Fraction) -> None:
    assert sum(seams.each(total, count) for _ in range(count)) == total
    caps = tuple(cap * place for place in range(1, count + 1))
    if sum(caps) >= total:
        for share in (seams.in_order(total, caps), seams.evenly(total, caps)):
            assert sum(share) == total
            assert all(0 <= part <= most for part, most in zip(share, caps, strict=True))
    gap = buttons.gap_even(Fraction(0), total + 1, count + 1)
    assert gap * count == total + 1


def test_counts_and_words_are_typed() -> None:
    @formula("test.typed", words="{cloth} x {places}", source="common-practice", gives="count")
    def typed(cloth: Word, places: Count) -> Count:
        return places + len(cloth)

    try:
        assert typed("wool", 2) == 6
        for wrong in (2.0, Fraction(2), True):
            with pytest.raises(FigureError, match="places is not a whole number"):
                typed("wool", wrong)  # type: ignore[arg-type]
        with pytest.raises(FigureError, match="cloth is not a word"):
            typed(3, 2)  # type: ignore[arg-type]
    finally:
        del FORMULAS["test.typed"]
