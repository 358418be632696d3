"""The sheet as a PDF, laid out by reportlab: the plan first, then every template at its true size.

On each page stand a line of 100 mm and one of 4 in: a print dialog that fits pages to the paper shrinks a template
by one part in seventeen, and nothing else would show it.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from io import BytesIO
from pathlib import Path
from xml.sax.saxutils import escape

import reportlab
from reportlab.lib.enums import TA_LEFT, TA_RIGHT
from reportlab.lib.pagesizes import A4, letter
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase.pdfmetrics import registerFont
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import BaseDocTemplate, Flowable, Frame, KeepTogether, PageTemplate, Paragraph, Spacer, Table

from advisor.core.model import Mm
from advisor.ground import clean
from advisor.sheet.content import Block, Heading, Text, Tick, Title
from advisor.sheet.drawing import Drawing
from advisor.sheet.tiles import Tile, tiles

PAPERS = {"a4": A4, "letter": letter}
MM = 72 / 25.4
"""Points in a millimeter."""
EDGE, FOOT = 12, 27
"""Kept free at the sides and the top, and below for the lines to measure, mm."""
CAPTION = 20
"""Kept free over a template for its words, mm."""
RULED = {"100 mm": Fraction(100), "4 in": Fraction(508, 5)}
SMALL, BODY, LARGE = 7.5, 9.5, 15
FONT, BOLD = "Vera", "VeraBd"
STROKES: dict[str, tuple[float, list[float]]] = {
    "cut": (0.7, []), "stitch": (0.7, [4, 3]), "fold": (0.5, [8, 3, 1, 3]), "guide": (0.35, []),
}  # fmt: skip
NO_GLYPH = "?"


@dataclass(frozen=True)
class Printed:
    """The bytes of a sheet, and how many pages it has."""

    data: bytes
    pages: int


def print_sheet(title: str, content: Iterable[Block], drawings: Sequence[Drawing], paper: str) -> Printed:
    """The sheet on "a4" or "letter". The same content gives the same bytes. KeyError for another paper."""
    width, height = PAPERS[paper]
    room = Fraction(width / MM) - 2 * EDGE, Fraction(height / MM) - EDGE - FOOT
    flow: list[Flowable] = [part for block in content for part in _block(block, float(room[0]))]
    for drawing in drawings:
        flow += _template(drawing, room[0], room[1] - CAPTION)
    into, counted = BytesIO(), _Pages(title, paper)
    frame = Frame(
        EDGE * MM, FOOT * MM, float(room[0]) * MM, float(room[1]) * MM,
        leftPadding=0, rightPadding=0, topPadding=0, bottomPadding=0,
    )  # fmt: skip
    document = BaseDocTemplate(into, pagesize=(width, height), title=_drawable(title), invariant=1)
    document.addPageTemplates([PageTemplate(frames=[frame], onPage=counted.draw)])
    document.build(flow)
    return Printed(into.getvalue(), counted.pages)


@cache
def _fonts() -> Mapping[int, int]:
    """The two fonts made known to the layout; the shapes that both have, by character."""
    folder = Path(reportlab.__file__).parent / "fonts"
    fonts = [TTFont(name, str(folder / f"{name}.ttf")) for name in (FONT, BOLD)]
    for font in fonts:
        registerFont(font)
    plain, bold = (font.face.charToGlyph for font in fonts)
    return {char: shape for char, shape in plain.items() if char in bold}


def _style(size: float, font: str = FONT, before: float = 0, left: float = 0, right: bool = False) -> ParagraphStyle:
    # A heading, which is what has room before it, never stands alone at the foot of a page.
    return ParagraphStyle(
        f"{font}{size}{left}", fontName=font, fontSize=size, leading=size * 1.3, spaceBefore=before, spaceAfter=1.5,
        leftIndent=left, alignment=TA_RIGHT if right else TA_LEFT, keepWithNext=int(before > 0),
    )  # fmt: skip


def _drawable(text: str) -> str:
    """Text through the gate, with a mark for each character that the font has no shape for."""
    shapes = _fonts()
    return "".join(char if ord(char) in shapes else NO_GLYPH for char in clean(text, limit=len(text)))


def _words(text: str, style: ParagraphStyle) -> Paragraph:
    # The layout reads markup; what people wrote is only ever text.
    return Paragraph(escape(_drawable(text)), style)


def _block(block: Block, width: float) -> list[Flowable]:
    match block:
        case Title():
            return [_words(block.text, _style(LARGE, BOLD)), _words(block.under, _style(BODY)), Spacer(1, 4)]
        case Heading():
            return [_words(block.text, _style(BODY + 1.5, BOLD, before=8))]
        case Text():
            inner = [_words(block.inner, _style(BODY, BOLD, left=12))] if block.inner else []
            return [_words(block.text, _style(BODY)), *inner]
        case Tick():
            return [_tick(block, width)]


def _tick(block: Tick, width: float) -> Flowable:
    first = [_words(block.first, _style(BODY, BOLD))] if block.first else []
    cells: list[tuple[object, float]] = [(_Box(), 6.0)]
    if block.number:
        cells.append((_words(block.number, _style(BODY, BOLD)), 8.0))
    cells.append(([*first, _words(block.text, _style(BODY))], 0.0))
    if block.took:
        cells.append((_words(f"{block.took} ______", _style(SMALL, right=True)), 32.0))
    rest = width - sum(wide for _, wide in cells)
    table = Table([[cell for cell, _ in cells]], colWidths=[(wide or rest) * MM for _, wide in cells])
    table.setStyle(
        [
            ("VALIGN", (0, 0), (-1, -1), "TOP"),
            *((side, (0, 0), (-1, -1), 1.5) for side in ("TOPPADDING", "BOTTOMPADDING", "LEFTPADDING", "RIGHTPADDING")),
        ]
    )
    return KeepTogether([table])


class _Box(Flowable):  # type: ignore[misc]
    """An empty box to tick."""

    SIDE = 3.2 * MM

    def wrap(self, width: float, height: float) -> tuple[float, float]:
        return self.SIDE, self.SIDE

    def draw(self) -> None:
        self.canv.setLineWidth(0.6)
        self.canv.rect(0, 0, self.SIDE, self.SIDE)


def _template(drawing: Drawing, width: Mm, height: Mm) -> list[Flowable]:
    found = tiles(drawing, width, height)
    return [KeepTogether([*_caption(drawing, tile), _Shape(drawing, tile)]) for tile in found]


def _caption(drawing: Drawing, tile: Tile) -> list[Flowable]:
    part = f", part {tile.number} of {tile.count}: lay the crosses on each other" if tile.count > 1 else ""
    return [
        _words(f"{drawing.title}{part}", _style(BODY + 1.5, BOLD, before=8)),
        _words(drawing.tells, _style(BODY)),
    ]


class _Shape(Flowable):  # type: ignore[misc]
    """A part of a drawing at its true size."""

    def __init__(self, drawing: Drawing, tile: Tile) -> None:
        super().__init__()
        self.drawing, self.tile = drawing, tile

    def wrap(self, width: float, height: float) -> tuple[float, float]:
        return float(self.tile.width) * MM, float(self.tile.height) * MM

    def draw(self) -> None:
        canvas, tile = self.canv, self.tile
        canvas.saveState()
        frame = canvas.beginPath()
        frame.rect(0, 0, float(tile.width) * MM, float(tile.height) * MM)
        canvas.clipPath(frame, stroke=0)
        for line in self.drawing.lines:
            thick, dashes = STROKES[line.style]
            canvas.setLineWidth(thick)
            canvas.setDash(dashes)
            path = canvas.beginPath()
            path.moveTo(*self._at(line.points[0]))
            for point in line.points[1:]:
                path.lineTo(*self._at(point))
            canvas.drawPath(path)
        canvas.setDash([])
        canvas.setFont(FONT, SMALL)
        for words in self.drawing.words:
            canvas.drawString(*self._at(words.at), _drawable(words.text))
        if tile.count > 1:
            self._crosses()
        canvas.restoreState()

    def _at(self, point: tuple[Mm, Mm]) -> tuple[float, float]:
        return float(point[0] - self.tile.left) * MM, float(point[1] - self.tile.low) * MM

    def _crosses(self) -> None:
        """Crosses in the middle of what this part shares with its neighbors, where they draw theirs too."""
        self.canv.setLineWidth(0.3)
        for point in self.tile.crosses(self.drawing):
            x, y = self._at(point)
            self.canv.line(x - 5, y, x + 5, y)
            self.canv.line(x, y - 5, x, y + 5)


class _Pages:
    """What stands on every page."""

    def __init__(self, title: str, paper: str) -> None:
        self.title, self.paper, self.pages = title, paper, 0

    def draw(self, canvas: Canvas, _: BaseDocTemplate) -> None:
        self.pages += 1
        canvas.setViewerPreference("PrintScaling", "None")
        canvas.saveState()
        canvas.setFont(FONT, SMALL)
        canvas.drawString(EDGE * MM, 10 * MM, _drawable(f"{self.title}, page {self.pages}")[:110])
        left = float(EDGE)
        for words, long in RULED.items():
            self._ruled(canvas, left, 17 if words.endswith("mm") else 22, float(long), words)
        canvas.setFont(FONT, SMALL)
        paper = "A4" if self.paper == "a4" else "Letter"
        told = ("Measure these two lines. If they are not right,", f"print again on {paper} at actual size, 100 %.")
        for row, text in enumerate(told):
            canvas.drawRightString(canvas._pagesize[0] - EDGE * MM, (21 - 4 * row) * MM, text)
        canvas.restoreState()

    def _ruled(self, canvas: Canvas, left: float, up: float, long: float, words: str) -> None:
        canvas.setLineWidth(0.5)
        canvas.line(left * MM, up * MM, (left + long) * MM, up * MM)
        for end in (left, left + long):
            canvas.line(end * MM, (up - 1.5) * MM, end * MM, (up + 1.5) * MM)
        canvas.drawString((left + 2) * MM, (up + 0.8) * MM, words)
