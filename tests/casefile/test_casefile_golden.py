"""The first format, kept for ever: this file must always open with exactly these values.

Lengths by the definition of the inch, 25.4 mm, and the yard, 36 in (16 CFR 500.19(a)), each worked out.
"""

from fractions import Fraction

from wardrobe import GARMENTS, GOLDEN

from advisor import casefile
from advisor.casefile import parse_case, read_case
from advisor.core.case import Case, Choice, Entry, Known, Limits, Unknown
from advisor.ground import digest_of

CASE = Case(
    garment="one_piece",
    title="The keeper's wife, blue dress",
    tape="in",
    version=1,
    story='Given by the chorus after "The Long Fog".\n'
    "The new keeper's wife is shorter from neck to waist,\n"
    "and the zipper was put in backwards at some time.",
    answers={
        "waist.sits": Known("low", "told"),
        "waist.low_by": Known(Fraction("38.1"), "measured", "2026-11-25T09:30:00"),  # 1.5 x 25.4
        "waist.pinned": Known(Fraction("50.8"), "pinned", told="a fold 1/2 in deep at each of two places"),  # 2 x 25.4
        "waist.round": Known(Fraction("698.5"), "told"),  # 27.5 x 25.4
        "front.zipper_kind": Unknown("2026-11-25T09:40:00"),
        "front.zipper": Known(Fraction(555), "told"),
        "hem.depth": Known(Fraction(2095, 7), "told"),
        "hem.sweep": Known(Fraction("1028.7"), "told"),  # (36 + 4.5) x 25.4
    },
    choices={
        "waist_low@bodice": Choice("waist.fixes.raise_seam"),
        "too_wide@skirt": Choice("girth.fixes.paired_darts", "the side seams are piped"),
    },
    limits=Limits(4, 2, Fraction(1), Fraction(5, 4), Fraction(1, 3)),
    log=(
        Entry("2026-11-25T09:30:00", "waist.low_by: measured"),
        Entry("2026-11-25T09:40:00", "front.zipper_kind: cannot say"),
    ),
)


def test_the_golden_file_opens_with_exactly_these_values() -> None:
    before = GOLDEN.read_bytes()
    opened = read_case(GOLDEN, GARMENTS)
    assert opened.case == CASE
    assert opened.text == before.decode()
    assert opened.digest == digest_of(before)
    assert GOLDEN.read_bytes() == before


def test_unknown_is_kept_apart_from_not_asked() -> None:
    answers = read_case(GOLDEN, GARMENTS).case.answers
    assert isinstance(answers["front.zipper_kind"], Unknown)
    text = GOLDEN.read_text().replace("zipper_kind = { unknown = true", "# zipper_kind = {")
    assert "front.zipper_kind" not in parse_case(text, GARMENTS).answers


def test_the_example_in_the_package_is_a_case() -> None:
    text = str(casefile.__doc__).partition("A file looks like this:")[2].partition("Answers stand")[0]
    case = parse_case(text, GARMENTS)
    assert case.answers["waist.pinned"] == Known(
        Fraction("50.8"), "pinned", told="a fold 1/2 in deep at each of two places"
    )
    assert isinstance(case.answers["waist.round"], Unknown)
    told = {"visible": 3, "cutting": False, "buttonholes": False, "minutes": 120, "money": Fraction(20)}
    assert case.limits == Limits(4, 2, **told, prices=(("zipper", Fraction(9, 2)),)) and len(case.log) == 1
    assert case.record is not None and case.record.cards == {"waist.fixes.raise_seam": "7be01d35"}
    assert case.record.steps == {"level": (("cut bodice.edge", "1c22ab90"),)} and case.record.totals.likely == 90
