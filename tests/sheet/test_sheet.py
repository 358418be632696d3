"""The sheet on paper, looked at as a printer would draw it: by another library (pypdfium2), pixel by pixel."""

import itertools
from fractions import Fraction
from pathlib import Path

import numpy as np
import pypdfium2
import pytest
from numpy.typing import NDArray

from advisor.advise.plan import make_plan
from advisor.advise.world import world_of
from advisor.casefile import read_case
from advisor.core.advice import Plan
from advisor.core.case import Case
from advisor.figures.exact import inches
from advisor.ground import clean
from advisor.lengths import INCH_TAPE
from advisor.report.advice import teller_of
from advisor.rulebase.base import RuleBase, the_base
from advisor.sheet.content import Text, Tick, Title, blocks
from advisor.sheet.drawing import MARGIN, Drawing, framed, line
from advisor.sheet.pdf import CAPTION, EDGE, FOOT, Printed, print_sheet
from advisor.sheet.shapes import SHAPES
from advisor.sheet.templates import templates
from advisor.sheet.tiles import OVERLAP, tiles
from tests.ground.hostile import markup_strings, sequences
from tests.rules.mutate import plan_for
from tests.some_cases import some

DPI = 300
PIXEL = 25.4 / DPI
NEAR = 0.15
"""A line lies within this of its place, mm: two pixels at 300 dots to the inch."""
PAPER_MM = {"a4": (210, 297), "letter": (215.9, 279.4)}
CASES = Path(__file__).parents[2] / "cases"

Ink = NDArray[np.bool_]


def drawn(printed: Printed) -> list[Ink]:
    """Where ink lies on each page, from the top down."""
    return [page.render(scale=DPI / 72, grayscale=True).to_numpy() < 160 for page in opened(printed)]


def opened(printed: Printed) -> pypdfium2.PdfDocument:
    return pypdfium2.PdfDocument(printed.data)


def text_of(printed: Printed) -> str:
    return " ".join(" ".join(page.get_textpage().get_text_bounded() for page in opened(printed)).split())


def runs(row: Ink) -> list[tuple[float, float]]:
    """The unbroken runs of ink along a row, from and to, mm."""
    padded = np.concatenate(([False], row, [False])).astype(int)
    begins, ends = np.flatnonzero(np.diff(padded) == 1), np.flatnonzero(np.diff(padded) == -1)
    return [(b * PIXEL, e * PIXEL) for b, e in zip(begins, ends, strict=True)]


def case_of(name: str) -> tuple[RuleBase, Case, Plan]:
    base = the_base()
    case = read_case(CASES / name, base.questions()).case
    return base, case, make_plan(base, world_of(case, base.garment(case.garment)), case.choices, case.limits)


def sheet_of(name: str, paper: str = "a4") -> Printed:
    base, case, plan = case_of(name)
    return print_sheet(case.title, blocks(base, case, plan), templates(plan, teller_of(base, case)), paper)


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_the_page_is_the_paper_and_the_two_lines_are_true(paper: str) -> None:
    printed = sheet_of("chimney_imp.toml", paper)
    assert b"/PrintScaling /None" in printed.data
    assert len(opened(printed)) == printed.pages
    for page, ink in zip(opened(printed), drawn(printed), strict=True):
        assert [side / 72 * 25.4 for side in page.get_size()] == pytest.approx(PAPER_MM[paper], abs=0.01)
        foot = ink[round(-FOOT / PIXEL) :]
        found = {round(end - begin, 1) for row in foot for begin, end in runs(row) if end - begin > 90}
        # An inch is 25.4 mm by definition (16 CFR 500.19(a)); a stroke is as wide as it is thick.
        assert any(abs(long - 100) < NEAR + 0.2 for long in found)
        assert any(abs(long - 4 * 25.4) < NEAR + 0.2 for long in found)


def test_a_dart_is_as_wide_and_as_long_as_told() -> None:
    dart = SHAPES["dart"]("Dart", [inches("1/2"), inches(6)], INCH_TAPE)
    (ink,) = drawn(print_sheet("", [], [dart], "a4"))
    area = ink[round(CAPTION / 2 / PIXEL) : round((297 - FOOT) / PIXEL)]
    wide = [max((end - begin for begin, end in runs(row)), default=0.0) for row in area]
    top = int(np.argmax(wide))
    # By hand: 1/2 in from fold to stitching on both sides is an edge of 1 in; the fold line is 6 in long.
    assert wide[top] == pytest.approx(25.4, abs=NEAR + 0.3)
    middle = round((EDGE + float(dart.width) / 2) / PIXEL)
    point = np.flatnonzero(area[:, middle - 3 : middle + 4].any(axis=1))[-1]
    # Its two lines of stitching meet within half the last stitch.
    assert (point - top) * PIXEL == pytest.approx(6 * 25.4, abs=NEAR + 0.5)


def test_a_row_longer_than_a_page_goes_on_at_the_right_place() -> None:
    places = [inches(at) for at in (1, 5, 9, 13, 17, 20)]
    row = SHAPES["row"]("Row", places, INCH_TAPE)
    parts = tiles(row, Fraction(210 - 2 * EDGE), Fraction(297 - EDGE - FOOT - CAPTION))
    printed = print_sheet("", [], [row], "a4")
    assert len(parts) == printed.pages == 3
    seen = []
    for part, ink in zip(parts, drawn(printed), strict=True):
        area = ink[: round((297 - FOOT + 1) / PIXEL)]
        strip = area[:, round((EDGE + 4) / PIXEL) : round((EDGE + 22) / PIXEL)]
        edge = np.flatnonzero(area[:, round((EDGE + 3) / PIXEL) - 2 : round((EDGE + 3) / PIXEL) + 3].any(axis=1))
        # The strip's own foot on the last part, and where the part was cut off on the others.
        foot, low = edge[-1] * PIXEL, max(part.low, MARGIN)
        for number, at in enumerate(places, 1):
            up = float(row.height - MARGIN - at - low)
            if 0 < up < float(part.height) - 4:
                middle = round((foot - up) / PIXEL)
                # A mark is dashed right across the strip; nothing else is.
                marks = [y for y in range(middle - 3, middle + 4) if strip[y].mean() > 0.3]
                assert marks and abs(np.mean(marks) - (foot - up) / PIXEL) * PIXEL < NEAR + 0.1, (part.number, number)
                seen.append(number)
    assert set(seen) == {1, 2, 3, 4, 5, 6}


def test_parts_cover_the_whole_and_share_what_is_glued() -> None:
    wide = framed("", "", [line("cut", (Fraction(0), Fraction(0)), (Fraction(300), Fraction(500)))])
    parts = tiles(wide, Fraction(190), Fraction(250))
    assert [part.number for part in parts] == list(range(1, parts[0].count + 1))
    for side, low, size in (("width", "left", "width"), ("height", "low", "height")):
        spans = sorted({(getattr(part, low), getattr(part, low) + getattr(part, size)) for part in parts})
        assert spans[0][0] == 0 and spans[-1][1] == getattr(wide, side)
        assert all(one[1] - two[0] == OVERLAP for one, two in itertools.pairwise(spans))
    assert tiles(wide, Fraction(400), Fraction(600))[0].count == 1
    with pytest.raises(ValueError, match="larger than its overlap"):
        tiles(wide, OVERLAP, OVERLAP)


def test_the_same_plan_gives_the_same_bytes() -> None:
    assert sheet_of("moth_queen.toml").data == sheet_of("moth_queen.toml").data


@pytest.mark.parametrize("path", some(sorted(CASES.glob("*.toml")), 4), ids=lambda path: path.stem)
def test_every_case_has_a_sheet_with_all_its_steps(path: Path) -> None:
    base, case, plan = case_of(path.name)
    content = list(blocks(base, case, plan))
    steps = [block for block in content if isinstance(block, Tick) and block.number]
    assert [block.number for block in steps] == [str(n) for n in range(1, len(plan.steps) + 1)]
    final = [step for step in plan.steps if not step.op.reversible]
    assert sum("Cannot be undone" in block.first for block in steps) == len(final)
    found = templates(plan, teller_of(base, case))
    wanted = {step.op.template.kind for step in plan.steps if step.op.template is not None}
    assert bool(found) == bool(wanted)
    printed = text_of(print_sheet(case.title, content, found, "letter"))
    for step in steps:
        assert " ".join(step.text.split())[-25:] in printed


def test_equal_shapes_are_drawn_once_and_name_their_steps() -> None:
    base, case, plan = case_of("moth_queen.toml")
    darts = [d for d in templates(plan, teller_of(base, case)) if d.title.startswith("Dart")]
    sewn = [n for n, step in enumerate(plan.steps, 1) if step.op.template and step.op.template.kind == "dart"]
    assert len(sewn) == 2
    assert [d.title for d in darts] == [f"Dart, the trousers (steps {sewn[0]}, {sewn[1]})"]


def test_what_people_wrote_is_only_text() -> None:
    hostile = [*markup_strings()[:40], *sequences()[::40], "<b>bold</b>&amp;", "\N{SNOWMAN}"]
    for text in hostile:
        content = [Title(text, text), Text(text, text)]
        seen = text_of(print_sheet(text, content, [Drawing(text, text, *[Fraction(9)] * 2, ())], "a4"))
        shown = "".join(char if ord(char) < 0x250 else "?" for char in clean(text, limit=len(text)))
        assert " ".join(shown.split())[:20].strip() in seen or "?" in shown


@pytest.mark.parametrize(("pinned", "drawn_too"), [("2 in", True), ("2 1/16 in", False)])
def test_a_line_that_differs_from_layer_to_layer_is_told_and_not_drawn(pinned: str, drawn_too: bool) -> None:
    # By hand: half of 2 in is 1 in on both layers; 2 1/16 in are 33 marks, 17 on one layer and 16 on the other.
    plan = plan_for({"waist.pinned": pinned}, {"too_wide@trousers": "girth.fixes.center_back"})
    (op,) = [step.op for step in plan.steps if step.op.id == "baste trousers.center_back"]
    assert (op.template is not None) is drawn_too
